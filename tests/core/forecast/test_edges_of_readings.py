"""Edges of what is read and how it is reckoned: gauges, limits, days, the size of numbers. One test each."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta
from itertools import pairwise

import numpy as np
import pytest

from followup.core.forecast.passage import first_passage
from followup.core.forecast.priors import PUBLISHED, UsagePrior
from followup.core.forecast.usage import HORIZONS, UsageAhead
from followup.core.forecast.wear import WearBelief, WearSums, sum_up
from followup.core.forecast.window import DueWindow
from tests.core.forecast.told import pad, tread, visit, window, windows

ROUNDED_DOWN = replace(PUBLISHED, gauges_round_down=True)


def likely_days(one: DueWindow) -> int:
    """Days from `as_of` to the likely date."""
    assert one.likely is not None
    return (one.likely - one.as_of).days


def test_edge_rising_readings_follow_the_prior() -> None:
    rising = window(visit("2025-01-10", 50_000, tread(7)), visit("2026-01-10", 60_000, tread(7.5)))
    once = window(visit("2026-01-10", 60_000, tread(7.5)))
    assert rising.because.wear_per_1000 is not None and once.because.wear_per_1000 is not None
    # A tread cannot grow: slower than usual, never a rate of nothing or less.
    assert 0.3 * once.because.wear_per_1000 < rising.because.wear_per_1000 < once.because.wear_per_1000
    assert likely_days(once) < likely_days(rising) < 3 * likely_days(once)


def test_edge_reading_at_the_limit_is_due_and_has_no_negative_dates() -> None:
    at = window(visit("2026-01-10", 60_000, tread(4)), as_of="2026-02-01")
    assert at.is_past
    assert at.early == at.likely == at.late == date(2026, 2, 1)
    # The law asks for at least its limit (49 CFR 570.9(a)): there the same number is no verdict, only likely.
    legal = window(visit("2026-01-10", 60_000, tread(2)), kind="legal")
    assert not legal.is_past
    assert legal.early == legal.as_of
    # Few leave a tire on so far: that it is still on speaks for a little more than was read.
    assert 0.1 < legal.curve.already < 0.5


def test_edge_reading_above_new_depth_lasts_as_long_as_a_new_one_or_longer() -> None:
    above = window(visit("2026-01-10", 60_000, tread(14)))
    new = window(visit("2026-01-10", 60_000, tread(10.3)))
    assert likely_days(new) < likely_days(above)


def test_edge_install_pseudo_reading_that_contradicts_tells_nothing() -> None:
    """New at 50,000 miles, 8 or 7 of 10.3/32 at 60,000: the second wears faster. 3.6/32 is not believed."""
    done = {"item": "tire_tread", "position": "front", "did": "replaced", "on": "2025-01-10", "odometer": 50_000}
    slower, faster, contradicted = (
        windows(visit("2025-01-11", 50_050, pad(9), work_done=[done]), visit("2026-01-10", 60_000, tread(depth)))[
            "tire_tread", "front_left"
        ]
        for depth in (8, 7, 3.6)
    )
    assert slower.because.since_how == "told"
    rates = [one.because.wear_per_1000 for one in (slower, faster, contradicted)]
    assert rates[0] is not None and rates[1] is not None and rates[2] is not None
    # .23 and .33 a thousand miles by two points each; with the contradicted install it would be .67.
    assert rates[0] + 0.02 < rates[1] < 0.33
    assert rates[2] < rates[1]
    assert contradicted.now == pytest.approx(3.6, abs=0.4)


@pytest.mark.parametrize(("days_apart", "is_used"), [(0, False), (4, False), (5, True), (30, True)])
def test_edge_visits_less_than_five_days_apart_tell_no_rate(days_apart: int, is_used: bool) -> None:
    """Within five days of a visit the odometer tells of a test drive, not of how far the car is driven."""
    day = (date(2026, 1, 10) + timedelta(days=days_apart)).isoformat()
    first = visit("2026-01-10", 60_000, tread(7))
    once = window(first)
    again = window(first, visit(day, 60_000 + 80 * max(days_apart, 1), tread(7), inspection="I-again"))
    assert once.because.distance_per_day is not None and again.because.distance_per_day is not None
    assert (again.because.distance_per_day > 1.03 * once.because.distance_per_day) is is_used


@pytest.mark.parametrize(
    ("unit", "step", "depth"), [("32nds", 1.0, 7.0), ("mm", 0.1, 5.6)], ids=["whole 32nds", "tenths of a millimeter"]
)
def test_edge_gauge_that_is_rounded_down_adds_half_a_step(unit: str, step: float, depth: float) -> None:
    """A gauge read down to its last mark shows half a step too little on the mean (arithmetic of rounding)."""
    down = window(visit("2026-01-10", 60_000, tread(depth, unit=unit)), priors=ROUNDED_DOWN)
    nearest = window(visit("2026-01-10", 60_000, tread(depth + step / 2, unit=unit)))
    plain = window(visit("2026-01-10", 60_000, tread(depth, unit=unit)))
    assert likely_days(plain) < likely_days(down)
    assert likely_days(down) == pytest.approx(likely_days(nearest), rel=0.02)


def test_edge_gauge_that_is_rounded_down_changes_no_verdict() -> None:
    # What was read is what was read: 4/32 is at the limit, whatever the habit.
    assert window(visit("2026-01-10", 60_000, tread(4)), priors=ROUNDED_DOWN).is_past


def test_edge_gauge_step_is_the_one_that_was_used() -> None:
    """0.1 mm against 1/32 in, both with their rounding variance r^2/12: .0106 and .0833 square 32nds."""
    coarse = window(visit("2026-01-10", 60_000, tread(7)), with_ahead=True).ahead
    fine = window(visit("2026-01-10", 60_000, tread(5.6, unit="mm")), with_ahead=True).ahead
    assert coarse is not None and fine is not None
    assert coarse.gauge_step == 1.0
    assert fine.gauge_step == pytest.approx(0.1 / (25.4 / 32))


def test_edge_threshold_change_reruns_only_the_passage() -> None:
    """What is believed of the tire does not depend on the limit; only the dates do."""
    visits = visit("2025-01-10", 50_000, tread(9)), visit("2026-01-10", 60_000, tread(7))
    at_4 = window(*visits, with_ahead=True)
    at_5 = window(*visits, limits={"tire_tread": 5.0}, with_ahead=True)
    assert (at_4.now, at_4.because, at_4.ahead) == (at_5.now, at_5.because, at_5.ahead)
    assert at_5.limit is not None and at_5.limit.value == 5.0
    assert likely_days(at_5) < likely_days(at_4)
    rate, miles = at_4.because.wear_per_1000, at_4.because.distance_per_day
    assert rate is not None and miles is not None
    # One 32nd more at the car's own rate and distance.
    assert likely_days(at_4) - likely_days(at_5) == pytest.approx(1000 / rate / miles, rel=0.1)


ROWS = 200


def believed(kind: type[np.floating]) -> tuple[WearBelief, UsageAhead]:
    """Beliefs of many rows, in numbers of that size; drawn at random (seeded)."""
    random = np.random.default_rng(32)
    value, variance = random.uniform(2, 11, ROWS), random.uniform(0.2, 1.0, ROWS)
    log_rate, rate_variance = np.log(random.uniform(0.08, 0.4, ROWS)), random.uniform(0.02, 0.15, ROWS)
    covariance = -0.5 * np.sqrt(variance * rate_variance)
    columns = (log_rate, rate_variance, value, variance, covariance, np.ones((3, ROWS)) / 3)
    miles = np.log(random.uniform(10, 60, (ROWS, len(HORIZONS))))
    usage = UsageAhead(miles.astype(kind), np.full_like(miles, 0.08).astype(kind))
    return WearBelief(*(one.astype(kind) for one in columns)), usage


def test_edge_float32_is_enough_for_the_passage() -> None:
    """Quantiles from beliefs in seven digits are those from beliefs in sixteen, to a day in a thousand."""
    found = []
    for kind in (np.float32, np.float64):
        belief, usage = believed(kind)
        fixed = [np.full(ROWS, one, dtype=kind) for one in (4.0, 3.2, 1.1)]
        passage = first_passage(belief, *fixed, usage, np.arange(ROWS))
        found.append(np.stack([passage.quantile(chance) for chance in (0.1, 0.5, 0.9)]))
    assert np.isfinite(found[1]).any()
    single, double = found
    assert ((np.abs(single - double) < 0.01 + 1e-3 * double) | (single == double)).all()


def test_edge_float32_is_not_enough_for_the_sums() -> None:
    """Odometers of 300,000 miles in thousands, a hundred miles apart: seven digits leave two of the distance.

    Sums of squares of such odometers about zero lose even sixteen; ours are counted from the end first.
    """
    miles = np.array([300.0, 300.1, 300.2])
    tread_32nds = 8 - 2.0 * (miles - 300.0)

    def slope(kind: type[np.floating]) -> float:
        told = miles.astype(kind)
        sums: WearSums = sum_up(np.zeros(3, dtype=int), told[-1] - told, tread_32nds.astype(kind), np.ones(3), 1)
        return float(sums.slope_sum[0] / sums.spread[0])

    def slope_about_zero(kind: type[np.floating]) -> float:
        told, value = miles.astype(kind), tread_32nds.astype(kind)
        spread = (told * told).sum() - told.sum() ** 2 / kind(3)
        return float(-((told * value).sum() - told.sum() * value.sum() / kind(3)) / spread)

    assert slope(np.float64) == pytest.approx(2.0, rel=1e-9)
    assert abs(slope(np.float32) - 2.0) > 1e-5
    assert not 1.9 < slope_about_zero(np.float32) < 2.1


def test_edge_model_year_unknown_is_not_new_at_the_first_visit() -> None:
    """Taken for new at its first visit, a car with 50,000 miles would seem driven without end."""
    car = {"id": "V-1", "class": "car"}
    unknown = window(visit("2026-01-10", 50_000, tread(7), vehicle=car))
    assert unknown.because.distance_per_day is not None
    # The published median for a car of unknown age: 10,500 miles a year, less or more by the season.
    usual = np.exp(UsagePrior().log_miles_per_day)
    assert unknown.because.distance_per_day == pytest.approx(usual, rel=0.05)


def test_edge_as_of_between_visits_and_long_after_never_goes_back() -> None:
    told = visit("2026-01-10", 60_000, tread(7))
    seen = [window(told, as_of=on) for on in ("2026-01-10", "2026-07-10", "2027-07-10", "2029-07-10", "2033-07-10")]
    for before, after in pairwise(seen):
        assert before.likely is not None and after.likely is not None and after.early is not None
        assert after.early >= after.as_of
        assert after.likely == max(before.likely, after.as_of)
        assert after.curve.already >= before.curve.already
