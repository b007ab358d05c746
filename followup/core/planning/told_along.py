"""Which advisory is told in an invite that leaves anyway: by itself none is worth a text about paid work.

The others are for staff, who tell them at the next visit.
"""

from __future__ import annotations

from collections.abc import Iterable
from datetime import datetime

from followup.core.advisories import Advisory
from followup.core.planning.item_stops import item_stop
from followup.core.planning.picture import CarPicture, DueItem, ItemAt

# An invite is read on a phone: one line beside the items that it is about.
MOST_TOLD = 1
# Work with hours of its own, which a booking must hold; what else is asked for is looked at along with the visit.
_BOOKED = ("alignment", "tire_rotation")


def told_along(picture: CarPicture, named: Iterable[ItemAt], now: datetime) -> tuple[Advisory, ...]:
    """The advisories that an invite about the items `named` tells too, the most pressing first.

    None whose own item the invite names already (pads that are to be replaced are looked at anyway), none whose item
    rests or was decided on, none of a tire that nobody can point at. Beside tires that are named no rotation is
    suggested: tires that go are not turned round first.
    """
    items = {item for item, _ in named}
    found = [
        one
        for one in picture.advisories
        if one.about[0] not in items
        and not (one.code == "tire_rotation" and "tire_tread" in items)
        and _has_place(one)
        and not _rests(picture, one, now)
    ]
    return tuple(found[:MOST_TOLD])


def booked_with(advisories: Iterable[Advisory]) -> tuple[ItemAt, ...]:
    """The items that a booking made from such an invite holds for them."""
    return tuple(dict.fromkeys(one.about for one in advisories if one.about[0] in _BOOKED))


def _has_place(advisory: Advisory) -> bool:
    return advisory.position != "" or advisory.code in ("tire_four", "tire_rotation")


def _rests(picture: CarPicture, advisory: Advisory, now: datetime) -> bool:
    item, position = advisory.about
    return item_stop(picture, DueItem(item, position, 0.0, 0.0, advisory.on), now) is not None
