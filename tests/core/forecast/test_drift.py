"""The test of drift: its false alarms are bounded, by exact sums and by simulation, and real drift is found."""

from __future__ import annotations

from datetime import date, timedelta
from itertools import product

import numpy as np
import pytest
from scipy import stats

from followup.core.forecast.drift import ALARM_AT, GOOD_PLACE, GOOD_SHARE, evidence_outside, find_drift


@pytest.mark.parametrize("share", [0.74, 0.8, 0.86])
def test_evidence_is_not_expected_to_grow(share: float) -> None:
    """The mean over all 1,024 outcomes of ten windows, exactly: at most 1 (a supermartingale; Ville 1939)."""
    total = 0.0
    for outcome in product((0.0, 1.0), repeat=10):
        chance = np.prod([share if one else 1 - share for one in outcome])
        total += chance * evidence_outside(np.array(outcome), GOOD_SHARE)[-1]
    assert total <= 1 + 1e-12


def _visits(count: int, seed: int, spread: float = 1.0, shift: float = 0.0) -> tuple[np.ndarray, np.ndarray]:
    """Visits of four places that share half of what they err by: the share of 80 % windows held, the mean place."""
    rng = np.random.default_rng(seed)
    errors = (rng.normal(size=(count, 1)) + rng.normal(size=(count, 4))) * np.sqrt(0.5) * spread + shift
    places = stats.norm.cdf(errors)
    return ((places >= 0.1) & (places <= 0.9)).mean(axis=1), places.mean(axis=1)


def _alarms(shops: int, visits: int, spread: float, shift: float = 0.0) -> float:
    """The share of shops that are ever alarmed when they look after each visit."""
    alarmed = 0
    for seed in range(shops):
        held, places = _visits(visits, seed, spread, shift)
        evidence = (evidence_outside(held, GOOD_SHARE) + evidence_outside(places, GOOD_PLACE)) / 2
        alarmed += bool((evidence >= ALARM_AT).any())
    return alarmed / shops


# The spread of errors with which 74 % or 86 % of the 80 % windows hold: the edges of what is good enough.
TOO_WIDE, TOO_NARROW = (stats.norm.ppf(0.9) / stats.norm.ppf(0.5 + share / 2) for share in (0.86, 0.74))


@pytest.mark.parametrize("spread", [1.0, TOO_WIDE, TOO_NARROW], ids=["as it says", "86 % hold", "74 % hold"])
def test_false_alarms_are_rare_however_often_one_looks(spread: float) -> None:
    """At most 5 % of shops, ever; here 200 shops that look after each of 300 visits (three standard errors allowed)."""
    assert _alarms(200, 300, spread) <= 0.05 + 3 * np.sqrt(0.05 * 0.95 / 200)


def test_windows_that_are_too_narrow_are_found() -> None:
    """Six in ten hold where eight are told."""
    assert _alarms(40, 300, stats.norm.ppf(0.9) / stats.norm.ppf(0.8)) > 0.95


def test_a_bias_is_found_though_most_windows_hold() -> None:
    assert _alarms(40, 400, 1.0, shift=-0.5) > 0.9


def test_what_goes_wrong_now_is_not_hidden_by_good_years() -> None:
    good, bad = _visits(600, 1), _visits(120, 2, shift=-1.2)
    days = [date(2024, 1, 1) + timedelta(days=day) for day in range(720)]
    held, places = (np.concatenate(pair) for pair in zip(good, bad, strict=True))
    assert find_drift(days[:600], held[:600], places[:600]) is None
    found = find_drift(days, held, places)
    assert found is not None and found.direction == "more_worn" and found.evidence >= ALARM_AT
    assert abs((found.since_on - days[600]).days) < 30


@pytest.mark.parametrize(
    ("spread", "shift", "direction"),
    [(2.2, 0.0, "too_few"), (0.4, 0.0, "too_many"), (1.0, 1.2, "less_worn"), (1.0, -1.2, "more_worn")],
)
def test_the_direction_is_told(spread: float, shift: float, direction: str) -> None:
    held, places = _visits(300, 3, spread, shift)
    days = [date(2026, 1, 1) + timedelta(days=day) for day in range(300)]
    found = find_drift(days, held, places)
    assert found is not None and found.direction == direction


def test_nothing_is_no_drift() -> None:
    assert find_drift([], np.array([]), np.array([])) is None
