"""What the next reading should show: against the normal's closed form, the due window itself, and simulation."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

import numpy as np
import pytest
from scipy import stats

from followup.core.forecast.next_reading import expected_after, expected_on
from followup.core.forecast.season import driving_clock
from followup.core.forecast.value_ahead import ValueAhead
from tests.core.forecast.told import pad, tread, visit, windows

BELIEF = ValueAhead(
    on=date(2026, 1, 5), value=7.0, value_variance=0.35, log_rate=np.log(0.2), log_rate_variance=0.12,
    covariance=-0.06, reading_error=0.5, gauge_step=0.5,
    miles=((30.0, 3.3, 0.20), (90.0, 3.3, 0.16), (200.0, 3.3, 0.13), (1500.0, 3.3, 0.11)),
)  # fmt: skip
NOISE = np.array([0.27])


def test_a_sure_rate_leaves_a_normal() -> None:
    """Value less wear, both sure but for the value's own spread: N(7 - 0.2 x 12; 0.35 + 0.27)."""
    sure = replace(BELIEF, log_rate_variance=0.0, covariance=0.0)
    expected = expected_after([sure], [12_000.0], NOISE)
    wanted = stats.norm(7.0 - 0.2 * 12, np.sqrt(0.35 + 0.27))
    for value in (3.2, 4.6, 5.5):
        assert expected.place(np.array([value]))[0] == pytest.approx(wanted.cdf(value), abs=1e-4)
        assert expected.density(np.array([value]))[0] == pytest.approx(wanted.pdf(value), abs=1e-4)
    assert expected.mean[0] == pytest.approx(4.6, abs=1e-3)


def _drawn(count: int, days: float, seed: int, faster: float = 1.0) -> np.ndarray:
    """Readings of a world that is as the belief says, wearing `faster` times as fast."""
    rng = np.random.default_rng(seed)
    clock = driving_clock()
    begin = float(BELIEF.on.toordinal())
    gone = float(clock.at(np.array([begin + days]))[0] - clock.at(np.array([begin]))[0])
    both = [[BELIEF.value_variance, BELIEF.covariance], [BELIEF.covariance, BELIEF.log_rate_variance]]
    value, log_rate = rng.multivariate_normal([BELIEF.value, BELIEF.log_rate], both, count).T
    variance = np.interp(np.log(gone), np.log([200, 1500]), [0.13, 0.11])
    miles = np.exp(rng.normal(3.3, np.sqrt(variance), count)) * gone
    return np.asarray(value - faster * np.exp(log_rate) * miles / 1000 + rng.normal(0, np.sqrt(NOISE[0]), count))


def test_places_are_even_where_the_belief_is_right() -> None:
    """The probability integral transform of a right forecast is uniform (Dawid 1984)."""
    read = _drawn(4_000, 400, seed=8)
    day = float((BELIEF.on + timedelta(days=400)).toordinal())
    places = expected_on([BELIEF] * len(read), [day] * len(read), np.repeat(NOISE, len(read))).place(read)
    assert stats.kstest(places, "uniform").pvalue > 0.01


def test_places_are_low_where_parts_wear_faster() -> None:
    read = _drawn(4_000, 400, seed=8, faster=1.4)
    day = float((BELIEF.on + timedelta(days=400)).toordinal())
    places = expected_on([BELIEF] * len(read), [day] * len(read), np.repeat(NOISE, len(read))).place(read)
    assert places.mean() < 0.36


def test_asked_for_the_limit_it_is_the_due_window() -> None:
    """A reading without error at the limit by a day is what the window calls due by that day (first passage)."""
    found = windows(
        visit("2024-03-01", 30_000, pad(8.0), pad(7.0, "front_right"), tread(8), tread(7, "front_right")),
        visit("2025-03-01", 41_000, pad(6.5), pad(6.0, "front_right"), tread(6), tread(6, "front_right")),
        with_ahead=True,
    )
    for window in found.values():
        assert window.ahead is not None and window.limit is not None
        for days in (60, 180, 365, 700):
            on = float((window.as_of + timedelta(days=days)).toordinal())
            place = expected_on([window.ahead], [on], np.zeros(1)).place(np.array([window.limit.value]))
            assert place[0] == pytest.approx(window.chance_due_within(days), abs=0.03)


def test_it_is_kept_with_the_window() -> None:
    again = ValueAhead.from_json(BELIEF.to_json())
    assert (again.on, again.miles) == (BELIEF.on, BELIEF.miles)
    for name in ("value", "value_variance", "log_rate", "log_rate_variance", "covariance", "reading_error"):
        assert getattr(again, name) == pytest.approx(getattr(BELIEF, name), abs=1e-6)
