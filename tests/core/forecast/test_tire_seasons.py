"""Labelled tires: their clock stands still while they are off the car, in the past and ahead."""

from __future__ import annotations

import math
from datetime import date, timedelta
from typing import Any

import numpy as np
import pytest

from followup.core.forecast.due import forecast_cars
from followup.core.forecast.priors import ShopPriors
from followup.core.forecast.season import SeasonalClock, driving_clock
from followup.core.forecast.tire_seasons import USUAL, Season, TireSeasons, season_of, tire_seasons
from followup.core.forecast.window import DueWindow
from tests.core.forecast.told import history, pad, tread, visit, window, windows

# Nobody's tires ever come off here: what a labelled set is held against.
ALWAYS_ON = {"tire_tread": 6.0}


def pace(day: date) -> float:
    """How fast a car is driven on that day against the mean: the published formula, 195 the busiest day."""
    return 1 + 0.10 * math.cos(2 * math.pi * (day.timetuple().tm_yday - 195) / 365.25)


def is_winter(day: date) -> bool:
    """November to March."""
    return day.month >= 11 or day.month <= 3


def driven(begin: date, days: int, *, only_winter: bool) -> float:
    """Days of mean driving in so many calendar days, one by one."""
    walked = (begin + timedelta(days=day) for day in range(days))
    return sum(pace(day) for day in walked if is_winter(day) or not only_winter)


@pytest.mark.parametrize("on", ["2026-01-10", "2026-03-20", "2026-11-15"])
def test_edge_seasonal_set_off_the_car(on: str) -> None:
    """Day by day: what the same tires use up if they are never off is used up only on the days of winter."""
    depth, begin = 7.6, date.fromisoformat(on)
    never_off = window(visit(on, 60_000, tread(depth)), limits=ALWAYS_ON)
    seasonal = window(visit(on, 60_000, tread(depth), tire_set="winter"))
    assert seasonal.limit == never_off.limit
    for chance in (0.1, 0.25, 0.5, 0.75, 0.9):
        needed = driven(begin, round(never_off.curve.quantile(chance)), only_winter=False)
        day = 0
        while driven(begin, day, only_winter=True) < needed:
            day += 1
        # A day that hits the very end of a winter may fall on either side of the summer.
        assert seasonal.curve.quantile(chance) == pytest.approx(day, abs=2)
    assert seasonal.likely is not None and is_winter(seasonal.likely)


def test_a_set_that_came_off_has_not_worn_since() -> None:
    """Seen on in March; by the end of October the car was driven 7,000 miles more, on other tires but for a week."""
    in_march = visit("2026-03-25", 60_000, tread(8), tire_set="winter")
    oil = {"item": "washer_fluid", "level": "ok"}
    later = windows(in_march, visit("2026-10-25", 67_000, oil))["tire_tread", "front_left"]
    assert later.now == pytest.approx(window(in_march).now, abs=0.1)
    unlabelled = windows(visit("2026-03-25", 60_000, tread(8)), visit("2026-10-25", 67_000, oil))
    assert unlabelled["tire_tread", "front_left"].now == pytest.approx(8 - 7 * 0.21, abs=0.4)


def two_sets(**last: Any) -> list[dict[str, Any]]:
    """Winter tires measured in March, summer tires put on in May and measured in September."""
    return [
        visit("2025-11-20", 40_000, tread(9), tread(9, "front_right"), tire_set="winter"),
        visit("2026-03-10", 44_000, tread(8), tread(8, "front_right"), tire_set="winter"),
        visit("2026-05-01", 46_000, tread(7), tread(7, "front_right"), tire_set="summer"),
        visit("2026-09-10", 50_000, tread(6), tread(6, "front_right"), tire_set="summer", **last),
    ]


def with_stored(visits: list[dict[str, Any]], **more: Any) -> dict[tuple[str, str | None], DueWindow]:
    """Tread windows by position and stored set."""
    found = forecast_cars([history(*visits)], "last", with_stored_sets=True, **more)
    return {(one.position, one.stored_set): one for one in found if one.item == "tire_tread"}


def test_a_stored_set_has_a_window_named_as_such() -> None:
    found = with_stored(two_sets())
    assert set(found) == {(side, one) for side in ("front_left", "front_right") for one in (None, "winter")}
    stored = found["front_left", "winter"]
    # Winter tires are recommended at 6/32; it was measured twice and wore only to the day on which it came off.
    assert stored.limit is not None and stored.limit.value == 6
    assert stored.because.readings_used == 2
    assert stored.now == pytest.approx(8 - 0.3, abs=0.4)
    assert stored.likely is not None and is_winter(stored.likely)
    assert DueWindow.from_json(stored.to_json()).stored_set == "winter"


def test_windows_of_what_is_on_the_car_do_not_hang_on_what_is_asked_for() -> None:
    plain = forecast_cars([history(*two_sets())], "last")
    asked = forecast_cars([history(*two_sets())], "last", with_stored_sets=True)
    assert [one.to_json() for one in plain] == [one.to_json() for one in asked if one.stored_set is None]


def test_the_label_of_the_tires_says_nothing_of_the_pads() -> None:
    visits = [
        visit("2025-03-10", 40_000, pad(9), tire_set="winter"),
        visit("2025-09-10", 46_000, pad(8), tire_set="summer"),
        visit("2026-03-10", 52_000, pad(7), tire_set="winter"),
    ]
    bare = [{name: value for name, value in one.items() if name != "tire_set"} for one in visits]
    assert window(*visits).to_json() == window(*bare).to_json()


def of_year(text: str) -> float:
    """A day, for labels."""
    return float(date.fromisoformat(text).toordinal())


def test_the_season_of_the_place_moves_to_what_was_seen() -> None:
    season = season_of("winter", [], USUAL)
    assert season is not None and season.holds(of_year("2026-02-01")) and not season.holds(of_year("2026-07-01"))
    early = season_of("winter", [(of_year("2025-10-10"), "winter")], USUAL)
    late = season_of("winter", [(of_year("2026-04-20"), "winter")], USUAL)
    assert early is not None and early.holds(of_year("2027-10-11")) and not early.holds(of_year("2027-10-08"))
    assert late is not None and late.holds(of_year("2027-04-18")) and not late.holds(of_year("2027-04-23"))
    summer = season_of("summer", [(of_year("2025-10-10"), "winter"), (of_year("2026-04-20"), "summer")], USUAL)
    assert summer is not None and not summer.holds(of_year("2026-10-20")) and summer.holds(of_year("2026-08-01"))


def test_a_set_that_stays_on_all_year_has_no_season() -> None:
    assert season_of("winter", [(of_year("2026-07-10"), "winter")], USUAL) is None
    assert season_of("summer", [(of_year("2026-01-10"), "summer")], USUAL) is None
    assert season_of("all_season", [(of_year("2026-05-10"), "all_season")], USUAL) is None
    assert season_of("summer", [(of_year("2026-05-10"), "summer")], tire_seasons("FL")) is None
    assert season_of("winter", [(of_year("2026-03-10"), "winter")], tire_seasons("FL")) is not None


def test_where_winter_is_long_the_tires_stay_on_longer() -> None:
    reading = visit("2026-01-10", 60_000, tread(8), tire_set="winter")
    usual, long = (window(reading, priors=ShopPriors(tire_seasons=tire_seasons(state))) for state in ("OH", "MN"))
    assert usual.likely is not None and long.likely is not None
    assert long.likely < usual.likely


@pytest.mark.parametrize(("begins", "length"), [(304.0, 151.0), (90.0, 214.0), (0.0, 10.0), (200.0, 365.25)])
def test_a_seasonal_clock_agrees_with_the_days_one_by_one(begins: float, length: float) -> None:
    plain = driving_clock()
    clock = SeasonalClock(plain.days, plain.shown, np.array([begins]), np.array([length]))
    season = Season(begins, length)
    day = of_year("2025-02-03")
    counted = 0.0
    for _ in range(1_000):
        counted += plain.at(np.array([day + 1]))[0] - plain.at(np.array([day]))[0] if season.holds(day + 0.5) else 0.0
        day += 1
    begin = of_year("2025-02-03")
    passed = clock.at(np.array([day]))[0] - clock.at(np.array([begin]))[0]
    # The two days on which a season changes count by the half.
    assert passed == pytest.approx(counted, abs=3)


@pytest.mark.parametrize("begins", [304.0, 90.0])
def test_a_seasonal_clock_is_undone_by_its_day(begins: float) -> None:
    plain = driving_clock()
    days = np.arange(of_year("2024-01-01"), of_year("2028-01-01"), 1.7)
    rows = np.full(len(days), begins)
    clock = SeasonalClock(plain.days, plain.shown, rows, np.full(len(days), 150.0))
    shown = clock.at(days)
    back = clock.day(shown)
    assert (np.diff(shown) >= -1e-6).all()
    # In the season the same day, out of it the day on which it ended.
    assert (back <= days + 1e-5).all()
    assert clock.at(back) == pytest.approx(shown, abs=1e-5)
    assert math.isinf(clock.day(np.full(len(days), np.inf))[0])


def test_the_seasons_are_a_setting() -> None:
    short = TireSeasons(winter_begins=334.0, winter_ends=59.0)
    season = season_of("winter", [], short)
    assert season is not None and season.length == pytest.approx(365.25 - 334 + 59)
