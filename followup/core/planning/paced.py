"""An invite that is paced into a later week waits: the shop never invites more cars than it can take.

Only work that is coming due is paced. Answers, texts about visits, recalls, missed bookings, questions and walk-ins
never wait for labor hours.
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import datetime

from followup.core.planning.picture import Because, CarPicture

PACED_REASON = "due_work"


def waits_for_room(picture: CarPicture, reason_code: str, now: datetime, *, is_legal: bool) -> Iterator[Because]:
    """Why it waits for a later week, if it does; an item at its legal limit only where nothing at all is free."""
    paced = picture.paced
    if paced is None or reason_code != PACED_REASON or not picture.shop.rules.paces_invites:
        return
    if is_legal and not paced.is_legal:
        return
    if paced.until_on is None or picture.day(now) < paced.until_on:
        yield Because("paced", paced.says)
