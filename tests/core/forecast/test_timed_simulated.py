"""Items that age, run low or come round, each against a simulation that knows nothing of the formulas.

Numbers of the trade (median lives, marks, intervals) are those of the catalogue, common practice; the simulations draw
with a named seed and walk day by day where the day matters.
"""

from __future__ import annotations

import math
from datetime import date, timedelta
from typing import Any

import numpy as np
import pytest

from followup.core.forecast.cars import make_ready, usage_of
from followup.core.forecast.lives import Intervals, Lives
from followup.core.forecast.priors import UsagePrior
from followup.core.forecast.window import DueWindow
from tests.core.forecast.told import history, visit, window

DAY = date(2026, 1, 10)
DRAWS = 100_000


def one(value: float) -> np.ndarray:
    """An array of one row."""
    return np.array([value], dtype=float)


def pace(day: date) -> float:
    """How far people drive on that day against the mean of the year: 10 % more on its 195th day (assumption)."""
    return 1 + 0.10 * math.cos(2 * math.pi * (day.timetuple().tm_yday - 195) / 365.25)


def usage_ahead(*visits: dict[str, Any]) -> tuple[float, float]:
    """Log miles a day of mean driving over the next year, and its variance, of that car."""
    car = make_ready(0, history(*visits), DAY, UsagePrior())
    log_miles, variance = usage_of([car], UsagePrior()).at(np.array([0]), np.array([365.0]))
    return float(log_miles[0]), float(variance[0])


def walk(total: np.ndarray, rate: np.ndarray, begin: date, by_season: bool = True) -> np.ndarray:
    """The days after which each row has used up its `total` at `rate` a day of mean driving, day by day."""
    left, days = total.copy(), np.full(len(total), np.inf)
    for day in range(1, 4000):
        # What is driven on a day is driven by its evening.
        left -= rate * (pace(begin + timedelta(days=day - 1)) if by_season else 1.0)
        days[(left <= 0) & np.isinf(days)] = day
        if np.isfinite(days).all():
            break
    return days


def holds(found: DueWindow, days: np.ndarray, *, within: float = 2.0) -> None:
    """The window's three dates and its chances are those of the simulated days from `DAY`."""
    for on, point in ((found.early, 0.1), (found.likely, 0.5), (found.late, 0.9)):
        assert on is not None
        expected = float(np.quantile(days, point))
        assert (on - DAY).days == pytest.approx(expected, abs=max(within, 0.015 * expected)), point
    for until, chance in found.chances:
        assert chance == pytest.approx((days <= until).mean(), abs=0.015), until


def drawn_lives(median_days: float, spread: float, age_days: float, seed: int) -> np.ndarray:
    """Days left of lives that are still good at that age."""
    lives = median_days * np.exp(spread * np.random.default_rng(seed).standard_normal(20 * DRAWS))
    return lives[lives > age_days] - age_days


def test_battery_still_good_at_its_age() -> None:
    """Condition of age: of drawn lives only those count that were still good; the two vectors are among them."""
    median = 4.5 * 365.25
    for age, chance in ((1461.0, 0.205679), (4383.0, 0.304127)):
        left = drawn_lives(median, 0.35, age, seed=41)
        assert (left <= 180).mean() == pytest.approx(chance, abs=0.004 if age < 2000 else 0.05)
    told = {"item": "battery", "cca": 600, "cca_rated": 640, "changed_on": (DAY - timedelta(days=1461)).isoformat()}
    holds(window(visit("2026-01-10", 60_000, told)), drawn_lives(median, 0.35, 1461, seed=41), within=4)


def test_weak_battery_has_a_shorter_life() -> None:
    """Under 80 % of its rated amperes the median is a year and a half less (common practice)."""
    told = {"item": "battery", "cca": 500, "cca_rated": 640, "changed_on": (DAY - timedelta(days=900)).isoformat()}
    holds(window(visit("2026-01-10", 60_000, told)), drawn_lives(4.5 * 365.25 - 548, 0.35, 900, seed=42), within=4)


def test_wiper_blades_of_known_age() -> None:
    told = {"item": "wiper_blade", "position": "front", "looks": "even", "changed_on": "2025-09-10"}
    found = window(visit("2026-01-10", 60_000, told))
    holds(found, drawn_lives(274.0, 0.35, (DAY - date(2025, 9, 10)).days, seed=43))


def test_part_of_unknown_age_met_in_a_long_row_of_replacements() -> None:
    """A row of wiper blades, each replaced as it ends, looked into on a random day: the days to the next end."""
    random = np.random.default_rng(44)
    ends = np.cumsum(274.0 * np.exp(0.35 * random.standard_normal((4000, 60))), axis=1)
    at = random.uniform(3000, 9000, 4000)
    left = np.array([row[np.searchsorted(row, looked)] - looked for row, looked in zip(ends, at, strict=True)])
    told = {"item": "wiper_blade", "position": "front", "looks": "even"}
    car = {"id": "V-1", "first_used_on": "2010-01-01"}
    found = window(visit("2026-01-10", 160_000, told, vehicle=car))
    assert found.because.since_how == "unknown"
    assert dict(found.chances)[90] == pytest.approx((left <= 90).mean(), abs=0.025)
    assert dict(found.chances)[180] == pytest.approx((left <= 180).mean(), abs=0.025)


@pytest.mark.parametrize(("age_days", "age_miles"), [(0.0, 0.0), (300.0, 9_000.0)])
def test_filter_by_months_or_miles_whichever_first(age_days: float, age_miles: float) -> None:
    """A filter's own luck shortens or lengthens both; the rate of driving is drawn beside it; day by day."""
    random = np.random.default_rng(45)
    luck = np.exp(0.35 * random.standard_normal(30_000))
    rate = np.exp(np.log(30.0) + 0.3 * random.standard_normal(30_000))
    is_good = (548 * luck > age_days) & (15_000 * luck > age_miles)
    luck, rate = luck[is_good], rate[is_good]
    by_time = 548 * luck - age_days
    due = np.minimum(by_time, walk(15_000 * luck - age_miles, rate, DAY, by_season=False))
    lives = Lives(
        one(math.log(548)), one(math.log(15_000)), one(0.35), one(age_days), one(age_miles), np.array([True]), one(0.0),
        one(math.log(30.0)), one(0.09),
    )  # fmt: skip
    for days in (60.0, 180.0, 365.0, 600.0):
        assert lives.chance_by(one(days))[0] == pytest.approx((due <= days).mean(), abs=0.012)


@pytest.mark.parametrize(("days_left", "miles_left"), [(244.0, 7_000.0), (150.0, 7_000.0), (400.0, 3_000.0)])
def test_interval_day_by_day(days_left: float, miles_left: float) -> None:
    """A log-normal distance a day, walked day by day to the miles or the days, whichever comes first."""
    random = np.random.default_rng(46)
    rate = np.exp(math.log(30.0) + 0.25 * random.standard_normal(30_000))
    due = np.minimum(walk(np.full(30_000, miles_left), rate, DAY, by_season=False), days_left)
    interval = Intervals(one(days_left), one(miles_left), one(math.log(30.0)), one(0.0625), np.array([True]))
    for days in (60.0, 120.0, 149.0, 150.0, 200.0, 243.0, 244.0):
        # A walker arrives in the evening of a day: half a day later than the formula on the mean.
        expected = (
            ((due <= days).mean() + (due <= days + 1).mean()) / 2 if days + 1 < days_left else (due <= days).mean()
        )
        assert interval.chance_by(one(days))[0] == pytest.approx(expected, abs=0.012), days


@pytest.mark.parametrize(
    ("told", "miles_left", "days_left"),
    [
        # 7,500 miles less 500, 274 days less 30 (middle of the trade's ranges).
        ({"done_on": "2026-01-10", "done_odometer": 60_000}, 7_000.0, 244.0),
        # By its sticker, in the winter months in which people drive less than in the mean of the year.
        ({"due_odometer": 63_500}, 3_000.0, math.inf),
    ],
    ids=["since it was done", "by its sticker"],
)
def test_oil_service_of_a_car_day_by_day(told: dict[str, Any], miles_left: float, days_left: float) -> None:
    visits = (
        visit("2025-01-10", 50_000, {"item": "oil_service", "life_percent": 80}),
        visit("2026-01-10", 60_000, {"item": "oil_service", **told}),
    )
    log_miles, variance = usage_ahead(*visits)
    rate = np.exp(log_miles + math.sqrt(variance) * np.random.default_rng(47).standard_normal(20_000))
    due = np.minimum(walk(np.full(20_000, miles_left), rate, DAY), days_left)
    holds(window(*visits), due, within=1.5)


def test_fluid_by_days_that_goes_faster_in_winter() -> None:
    """Washer fluid from `ok` to `low`: 70 days of summer, 40 of winter (common practice), walked day by day."""
    random = np.random.default_rng(48)
    slowness = np.exp(0.6 * random.standard_normal(20_000))
    left, due = slowness.copy(), np.full(20_000, np.inf)
    for day in range(1, 3000):
        on = DAY + timedelta(days=day - 1)
        left -= 1 / 40 if on.month in (11, 12, 1, 2, 3) else 1 / 70
        due[(left <= 0) & np.isinf(due)] = day
    holds(window(visit("2026-01-10", 60_000, {"item": "washer_fluid", "level": "ok"})), due)


def test_coolant_by_days_alone() -> None:
    """From `ok` to `low` in 18 months at the median, log spread .6, no winter in it: plain log-normal quantiles."""
    found = window(visit("2026-01-10", 60_000, {"item": "coolant", "level": "ok"}))
    assert found.likely == DAY + timedelta(days=548)
    assert found.early == DAY + timedelta(days=round(548 * math.exp(-0.6 * 1.2815516)))
    assert found.late == DAY + timedelta(days=round(548 * math.exp(0.6 * 1.2815516)))


@pytest.mark.parametrize(("level", "quarts"), [("ok", 0.5), ("full", 0.9)])
def test_engine_oil_by_miles_day_by_day(level: str, quarts: float) -> None:
    """A quart every 4,000 miles at the median, log spread .7 (common practice), on top of the spread of the driving."""
    told = {"item": "engine_oil", "level": level}
    visits = visit("2025-01-10", 50_000, {"item": "oil_service", "life_percent": 80}), visit("2026-01-10", 60_000, told)
    log_miles, variance = usage_ahead(*visits)
    random = np.random.default_rng(49)
    miles = np.exp(log_miles + math.sqrt(variance) * random.standard_normal(20_000))
    used = miles / 4_000 * np.exp(0.7 * random.standard_normal(20_000))
    found = next(it for it in _windows(*visits) if it.item == "engine_oil")
    holds(found, walk(np.full(20_000, quarts), used, DAY))


def _windows(*visits: dict[str, Any]) -> list[DueWindow]:
    from followup.core.forecast.due import forecast_cars

    return forecast_cars([history(*visits)], "last")


def test_top_off_is_a_recorded_reset() -> None:
    """From full to low it takes one and a half times as long as from ok to low (marks of the catalogue)."""
    low = {"item": "coolant", "level": "low"}
    filled = window(visit("2026-01-10", 60_000, low, work_done=[{"item": "coolant", "did": "topped_off"}]))
    assert filled.now == "full"
    assert filled.likely == DAY + timedelta(days=round(1.5 * 548))
    # Three months on, the same dates: the reset counts, not the day on which it is looked at.
    later = window(
        visit("2026-01-10", 60_000, low, work_done=[{"item": "coolant", "did": "topped_off"}]), as_of="2026-04-10"
    )
    assert later.likely == filled.likely


def test_oil_service_fills_the_engine_up() -> None:
    low = {"item": "engine_oil", "level": "low"}
    done = [{"item": "oil_service", "did": "serviced"}]
    found = window(visit("2026-01-10", 60_000, low, work_done=done))
    assert found.now == "full"
    assert not found.is_past


def test_brake_fluid_water_rises_year_by_year() -> None:
    """1.0 % a year from 0 at the change, log spread .3 (common practice), drawn and weighed by what was read.

    Rates that fit 1.2 % after 1.2 years count; from there each rises on to 3 % at its own rate.
    """
    random = np.random.default_rng(50)
    rate = np.exp(0.3 * random.standard_normal(400_000))
    years = (DAY - date(2024, 10, 30)).days / 365.25
    start = random.normal(0.0, 0.2, 400_000)
    # What the strip shows: read to .3 %, and rounded to a tenth.
    weight = np.exp(-((1.2 - start - rate * years) ** 2) / (2 * (0.3**2 + 0.1**2 / 12)))
    days = (3.0 - start - rate * years) / rate * 365.25
    told = {"item": "brake_fluid", "water_percent": 1.2, "changed_on": "2024-10-30"}
    found = window(visit("2026-01-10", 60_000, told))
    order = np.argsort(days)
    drawn = np.interp([0.1, 0.5, 0.9], np.cumsum(weight[order]) / weight.sum(), days[order])
    for on, expected in zip((found.early, found.likely, found.late), drawn, strict=True):
        assert on is not None
        # The model also allows for a bend of the line and a reading error of its own: within a tenth.
        assert (on - DAY).days == pytest.approx(expected, rel=0.10)


@pytest.mark.parametrize(("limit", "years"), [(None, 6), (10.0, 10)])
def test_tire_age_by_its_date_code(limit: float | None, years: int) -> None:
    """Look at six years, replace at ten (makers' manuals; both are settings of the shop). Week 8 of 2021 began on
    Sunday, February 21 (49 CFR 574.5)."""
    told = {"item": "tire_age", "position": "front_left", "date_code": "0821"}
    limits = None if limit is None else {"tire_age": limit}
    found = window(visit("2026-01-10", 60_000, told), limits=limits)
    made = date(2021, 2, 21)
    due = made + timedelta(days=round(years * 365.25))
    assert found.likely is not None and found.early is not None and found.late is not None
    assert abs((found.likely - due).days) <= 2
    # A rule, not a life: all within the small spread of .03 that keeps the arithmetic smooth.
    assert (found.late - found.early).days < 0.09 * years * 365.25
    assert found.limit is not None and (found.limit.value, found.limit.unit) == (float(years), "years")


@pytest.mark.parametrize("code", ["inspection_sticker", "emissions_sticker", "registration_sticker"])
@pytest.mark.parametrize(("month", "last"), [("2026-02", date(2026, 2, 28)), ("2028-02", date(2028, 2, 29))])
def test_stickers_end_with_their_month(code: str, month: str, last: date) -> None:
    """Due 45 days before the last day of the month on it, leap years and all (calendar); the law: on that day."""
    told = {"item": code, "good_until": month}
    found = window(visit("2026-01-10", 60_000, told))
    assert found.early == found.likely == found.late == max(last - timedelta(days=45), DAY)
    legal = window(visit("2026-01-10", 60_000, told), kind="legal")
    assert legal.early == legal.late == last


@pytest.mark.parametrize(
    ("item", "position", "looks", "days"),
    [
        ("brake_rotor", "front_left", "scored", 182),
        ("brake_rotor", "front_left", "heat_spots", 182),
        ("brake_rotor", "front_left", "pitted", 182),
        ("brake_rotor", "front_left", "rust_lip", None),
        ("brake_rotor", "front_left", "cracked", 0),
        ("brake_shoe", "rear_left", "leaking", 0),
        ("brake_shoe", "rear_left", "dirty", 0),
        ("brake_shoe", "rear_left", "even", None),
    ],
)
def test_looks_are_due_now_or_looked_at_again_or_fine(item: str, position: str, looks: str, days: int | None) -> None:
    """Common practice: scored, pitted, heat spots are looked at again in half a year; cracked, leaking, dirty now."""
    found = window(visit("2026-01-10", 60_000, {"item": item, "position": position, "looks": looks}))
    expected = None if days is None else DAY + timedelta(days=days)
    assert found.early == found.likely == found.late == expected
    assert found.is_past is (days == 0)
