"""Free services that a customer is invited to: fluids that are topped off free. A walk-in, so nothing is booked.

Either a fluid may be low by now, or the car was not seen for long.
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date, datetime, timedelta

from followup.core.planning.candidate import Candidate
from followup.core.planning.item_stops import item_stop
from followup.core.planning.joining import triggers
from followup.core.planning.picture import CarPicture, DueItem
from followup.core.shop import Shop

LEAK_CHECK_AFTER_TOP_OFFS = 2
_DAYS_A_MONTH = 365.25 / 12
UNSEEN_AGAIN_AFTER = timedelta(days=365)
LEAK_CHECKED_FLUIDS = frozenset({"coolant", "engine_oil"})


def is_free(picture: CarPicture, due: DueItem, now: datetime) -> bool:
    """True where the shop tops it off free; one that was topped off twice in a year is a leak to be checked instead."""
    if not due.is_free_top_off or due.item not in picture.shop.free_services:
        return False
    year_ago = picture.day(now) - timedelta(days=365)
    times = sum(one.item == due.item and one.did == "topped_off" and one.on > year_ago for one in picture.work)
    return due.item not in LEAK_CHECKED_FLUIDS or times < LEAK_CHECK_AFTER_TOP_OFFS


def free_now(picture: CarPicture, now: datetime) -> tuple[DueItem, ...]:
    """What this car has that the shop tops off free, and that no no, no work and no advice rests; also what was never
    read on it."""
    seen = [one for one in picture.due if one.item in picture.free_top_offs]
    read = {one.item for one in seen}
    seen += [DueItem(code, "", 0.0, 0.0, is_free_top_off=True) for code in picture.free_top_offs if code not in read]
    return tuple(one for one in seen if is_free(picture, one, now) and not item_stop(picture, one, now))


def free_service(picture: CarPicture, now: datetime) -> Iterator[Candidate]:
    """Low fluids that the shop tops off free."""
    free = (one for one in picture.due if is_free(picture, one, now) and not item_stop(picture, one, now))
    low = triggers(free, picture.shop.rules)
    if low:
        known_on = max((one.measured_on for one in low if one.measured_on), default=None)
        names = tuple(sorted(one.at for one in low))
        says = f"low, and topped off free: {', '.join(item for item, _ in names)}"
        chance = max(one.chance_by_lead for one in low)
        yield Candidate("free_service", f"car {picture.vehicle}, low {known_on}", says, names, False, chance)


def long_unseen(picture: CarPicture, now: datetime) -> Iterator[Candidate]:
    """What the shop gives free, to a car that was not seen for the shop's months: once for each time away, and at most
    once a year."""
    since, last = unseen_since(picture.shop, picture.day(now)), seen_on(picture)
    if since is None or last is None or last > since:
        return
    mine = [one for one in picture.invites if one.reason == "long_unseen" and one.vehicle == picture.vehicle]
    if any(now < one.at + UNSEEN_AGAIN_AFTER for one in mine):
        return
    names = tuple(sorted(one.at for one in free_now(picture, now)))
    if names:
        says = f"not seen since {last}; topped off free: {', '.join(item for item, _ in names)}"
        yield Candidate("long_unseen", f"car {picture.vehicle}, seen {last}", says, names)


def unseen_since(shop: Shop, today: date) -> date | None:
    """The day after which a car was not seen for long if it was not seen; None where nobody is invited for that."""
    rules = shop.rules
    return today - timedelta(days=round(rules.unseen_months * _DAYS_A_MONTH)) if rules.invites_unseen else None


def seen_on(picture: CarPicture) -> date | None:
    """The last day on which the car was here: a visit, work, a top-off, a reading; None where it never was."""
    days = [picture.day(one.closed_at or one.opened_at) for one in picture.visits]
    days += [one.on for one in picture.work]
    days += [one.measured_on for one in picture.due if one.measured_on]
    return max(days, default=None)
