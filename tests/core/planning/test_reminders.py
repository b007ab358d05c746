"""The reminder of a booking: the day before, within visit hours (common practice), never right after the news."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

import pytest

from followup.core.planning.hours import Where
from followup.core.planning.reminders import reminder_at
from tests.core.planning.cars import SHOP, shop

VISIT = datetime(2026, 3, 16, 14, 0, tzinfo=UTC)  # Monday 9:00 in Chicago
EARLY = datetime(2026, 3, 9, 15, 0, tzinfo=UTC)
HOME = Where(("America/Chicago",))


def test_it_leaves_the_day_before_at_ten_sundays_too() -> None:
    assert reminder_at(SHOP, VISIT, EARLY, HOME) == datetime(2026, 3, 15, 15, 0, tzinfo=UTC)
    two = reminder_at(shop(reminder_days=2), VISIT, EARLY, HOME)
    assert two == datetime(2026, 3, 14, 15, 0, tzinfo=UTC)


def test_it_waits_for_the_hours_of_every_zone() -> None:
    west = Where(("Pacific/Honolulu",))  # 8:00 there is 13:00 in Chicago
    assert reminder_at(SHOP, VISIT, EARLY, west) == datetime(2026, 3, 15, 18, 0, tzinfo=UTC)


@pytest.mark.parametrize(("hours", "leaves"), [(23, False), (24, True)])
def test_whoever_was_told_within_a_day_is_not_reminded(hours: int, leaves: bool) -> None:
    told = datetime(2026, 3, 15, 15, 0, tzinfo=UTC) - timedelta(hours=hours)
    assert (reminder_at(SHOP, VISIT, told, HOME) is not None) is leaves
