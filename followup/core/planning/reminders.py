"""When the reminder of a confirmed booking leaves: the day before, within the hours, never just after the news."""

from __future__ import annotations

from datetime import datetime, time, timedelta
from zoneinfo import ZoneInfo

from followup.core.planning.hours import Where, next_moment
from followup.core.shop import Shop, instant

REMIND_FROM = time(10)
# Whoever was told the time less than a day before needs no reminder of it.
TOLD_RECENTLY = timedelta(hours=24)
LEAST_BEFORE_VISIT = timedelta(hours=2)


def reminder_at(shop: Shop, starts_at: datetime, told_at: datetime, where: Where) -> datetime | None:
    """The instant (aware UTC) of the reminder; None where none is to leave.

    `told_at` is when the customer was last told this time (the confirmation). It leaves on the day that lies
    `reminder_days` before the visit, from 10:00 at the shop on, and at least two hours before the visit.
    """
    day = starts_at.astimezone(ZoneInfo(shop.zone)).date() - timedelta(days=shop.rules.reminder_days)
    leaves_at = next_moment("visit", instant(day, REMIND_FROM, shop.zone), shop, where)
    if leaves_at is None or leaves_at - told_at < TOLD_RECENTLY or starts_at - leaves_at < LEAST_BEFORE_VISIT:
        return None
    return leaves_at
