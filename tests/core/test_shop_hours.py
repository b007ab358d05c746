"""When the shop is open: hours to the minute, closed days, holidays, midnight, the days on which clocks change."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, date, datetime
from zoneinfo import ZoneInfo

import pytest

from followup.core.shop import (
    Shop,
    ShopRules,
    closed_because,
    closed_days,
    closes_next,
    instant,
    is_open,
    opens_next,
    wall_time,
    working_days_later,
)

SHOP = Shop(1, "Elm Street Garage", "America/Chicago", "+13125550100", "+13125550101", state="IL")


def at(wall: str) -> datetime:
    """The instant of a wall time at the shop."""
    return datetime.fromisoformat(wall).replace(tzinfo=ZoneInfo(SHOP.zone)).astimezone(UTC)


@pytest.mark.parametrize(
    ("wall", "expected"),
    [
        ("2026-03-10T07:29:59", False),
        ("2026-03-10T07:30:00", True),
        ("2026-03-10T17:59:59", True),
        ("2026-03-10T18:00:00", False),
        ("2026-03-14T13:59:59", True),
        ("2026-03-14T14:00:00", False),
        ("2026-03-15T10:00:00", False),
        # 5 U.S.C. 6103(a): Labor Day is the first Monday of September, in 2026 the 7th.
        ("2026-09-07T10:00:00", False),
        # Columbus Day is a holiday too, but workshops open (common practice).
        ("2026-10-12T10:00:00", True),
    ],
)
def test_the_opening_minute_is_open_and_the_closing_minute_is_not(wall: str, expected: bool) -> None:
    assert is_open(SHOP, at(wall)) is expected


def test_the_next_opening_and_the_end_of_the_working_day() -> None:
    friday_night = at("2026-03-13T22:40")
    assert opens_next(SHOP, friday_night) == at("2026-03-14T08:00")
    assert closes_next(SHOP, friday_night) == at("2026-03-14T14:00")
    assert opens_next(SHOP, at("2026-03-14T14:00")) == at("2026-03-16T07:30")
    assert closes_next(SHOP, at("2026-03-10T17:59:59")) == at("2026-03-10T18:00")
    assert closes_next(SHOP, at("2026-03-10T18:00")) == at("2026-03-11T18:00")


def test_days_closed_besides_say_why() -> None:
    shop = replace(SHOP, rules=ShopRules(closed_on=["2026-03-11"]))
    assert closed_because(shop, date(2026, 3, 11)) == "a day on which the shop is closed"
    assert closed_because(shop, date(2026, 3, 12)) is None
    assert closed_because(SHOP, date(2026, 11, 26)) == "Thanksgiving Day"
    assert closed_days(shop, date(2026, 3, 9), date(2026, 3, 16)) == (date(2026, 3, 11),), "Sunday is no exception"
    everyday = replace(SHOP, rules=ShopRules(closed_on_holidays=False))
    assert closed_because(everyday, date(2026, 11, 26)) is None


def test_round_the_clock_has_no_gap_at_midnight() -> None:
    week = dict.fromkeys(("mon", "tue", "wed", "thu", "fri", "sat", "sun"), ("00:00", "23:59"))
    shop = replace(SHOP, rules=ShopRules(open_hours=week))
    assert is_open(shop, at("2026-03-10T23:59:30")) and is_open(shop, at("2026-03-11T00:00"))


def test_wall_times_on_the_days_on_which_clocks_change() -> None:
    # 15 U.S.C. 260a: 2:00 becomes 3:00 on 8 March 2026; 1:00-2:00 comes twice on 1 November 2026.
    assert instant(date(2026, 3, 8), wall_time("02:30"), SHOP.zone) == datetime(2026, 3, 8, 8, 30, tzinfo=UTC)
    assert instant(date(2026, 11, 1), wall_time("01:30"), SHOP.zone) == datetime(2026, 11, 1, 6, 30, tzinfo=UTC)
    assert instant(date(2026, 11, 1), wall_time("08:00"), SHOP.zone) == datetime(2026, 11, 1, 14, 0, tzinfo=UTC)


def test_working_days_leave_out_closed_ones() -> None:
    assert working_days_later(SHOP, date(2026, 3, 13), 1) == date(2026, 3, 14)
    assert working_days_later(SHOP, date(2026, 3, 14), 1) == date(2026, 3, 16)
    assert working_days_later(SHOP, date(2026, 5, 23), 1) == date(2026, 5, 26), "Sunday and Memorial Day"
