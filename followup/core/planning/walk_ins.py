"""Free services that a customer is invited to: low fluids that are topped off free. A walk-in, so nothing is booked."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import datetime, timedelta

from followup.core.planning.candidate import Candidate
from followup.core.planning.item_stops import item_stop
from followup.core.planning.joining import is_trigger
from followup.core.planning.picture import CarPicture, DueItem

LEAK_CHECK_AFTER_TOP_OFFS = 2
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
    low = [
        one
        for one in picture.due
        if is_free(picture, one, now) and is_trigger(one, picture.shop.rules) and not item_stop(picture, one, now)
    ]
    if low:
        known_on = max((one.measured_on for one in low if one.measured_on), default=None)
        names = tuple(sorted(one.at for one in low))
        says = f"low, and topped off free: {', '.join(item for item, _ in names)}"
        chance = max(one.chance_by_lead for one in low)
        yield Candidate("free_service", f"car {picture.vehicle}, low {known_on}", says, names, False, chance)
