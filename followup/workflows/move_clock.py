"""Move the clock of a demonstration on, and the sessions of the staff with it.

1. Work out where to: a step (not before half past ten of its day), or half past ten of the next day on which the shop
   is open.
2. Move the sessions first: to whoever looks at the pages no real time goes by, and nobody should be signed out.
3. Move the clock. If the process dies in between, sessions last a little longer; nothing else has changed.

The clock itself refuses where FOLLOWUP_CLOCK names no file (`ClockNotMovable`).
"""

from __future__ import annotations

from datetime import datetime, time, timedelta
from zoneinfo import ZoneInfo

from followup import clock
from followup.core.shop import Shop, closed_because, instant
from followup.storage import shops, staff
from followup.storage.store import Store

STEPS: dict[str, timedelta] = {
    "day": timedelta(days=1),
    "week": timedelta(weeks=1),
    "three_weeks": timedelta(weeks=3),
}
NEXT_MORNING = "next_morning"
# In the first hour in which invites leave, so that what is due that day can be seen.
MORNING = time(10, 30)
SATURDAY = 5


def move_clock(store: Store, shop_id: int, step: str, now: datetime) -> datetime:
    """Move the clock by one of `STEPS`, or to the next working morning; the new instant. `KeyError` for another."""
    with store.read() as connection:
        shop = shops.load_shop(connection, shop_id)
    by = next_morning(shop, now) - now if step == NEXT_MORNING else not_before_morning(shop, now + STEPS[step]) - now
    if not clock.can_be_moved():
        raise clock.ClockNotMovable(clock.ClockNotMovable.__doc__)
    with store.write() as connection:
        staff.shift_sessions(connection, by)
    clock.move_by(by)
    return clock.now()


def not_before_morning(shop: Shop, at: datetime) -> datetime:
    """That instant, or 10:30 of its day where it is earlier: before, no invite leaves and nothing could be seen."""
    return max(at, instant(at.astimezone(ZoneInfo(shop.zone)).date(), MORNING, shop.zone))


def next_morning(shop: Shop, now: datetime) -> datetime:
    """The next 10:30, Monday to Friday, of a day on which the shop is open (aware UTC)."""
    today = now.astimezone(ZoneInfo(shop.zone)).date()
    days = (today + timedelta(days=number) for number in range(60))
    for day in days:
        at = instant(day, MORNING, shop.zone)
        if at > now and day.weekday() < SATURDAY and closed_because(shop, day) is None:
            return at
    return now + STEPS["day"]
