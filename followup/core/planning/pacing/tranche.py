"""The week's tranche of a season of set changes: as many cars as the check-in times and labor hours of the weeks after
can take beside all else.

Cars that may need other work at the same visit come first, the others in an order drawn by lot for the season.
"""

from __future__ import annotations

from collections.abc import Iterable
from datetime import datetime

from followup.core.items import catalogue_of
from followup.core.planning.draw import drawn
from followup.core.planning.pacing.board import Board
from followup.core.planning.pacing.message import Message
from followup.core.planning.pacing.weeks import POSTPONED
from followup.core.planning.picture import CarPicture, SetChange
from followup.core.planning.set_change import REASON, SET_AT, joined_with
from followup.core.planning.slots import hours_of


def tranche(pictures: Iterable[CarPicture], due: SetChange, board: Board, now: datetime) -> list[CarPicture]:
    """Whom to invite this week, in their order: as many as fit what is left on the board, which keeps them.

    One car a phone: the other one of a phone comes when spacing lets it.
    """
    phones: set[int] = set()
    found = []
    for picture in order(pictures, due, now):
        message = message_of(picture, board.room.brought.chance(1), now)
        if picture.phone.id in phones or not board.fits(message, 0):
            continue
        board.put(message, 0)
        phones.add(picture.phone.id)
        found.append(picture)
    return found


def order(pictures: Iterable[CarPicture], due: SetChange, now: datetime) -> list[CarPicture]:
    """Those first whose visit would do other work too, then by a lot that is drawn once for the season."""
    what_for = f"sets {due.season_id}"
    return sorted(
        pictures, key=lambda one: (not joined_with(one, now), drawn(what_for, one.phone.id), one.vehicle)
    )  # fmt: skip


def message_of(picture: CarPicture, chance: float, now: datetime) -> Message:
    """The invite as something that is placed: what its visit uses, and the chance that one comes of it."""
    catalogue = catalogue_of(picture.shop)
    hours = hours_of(catalogue[item] for item, _ in (SET_AT, *joined_with(picture, now)) if item in catalogue)
    key = (picture.phone.id, picture.vehicle, REASON)
    return Message(key, hours, chance, (0.0,) * (POSTPONED + 1))
