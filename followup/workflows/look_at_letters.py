"""Look at what came in and fits no shop of this machine: a number that no shop texts from, another account, a report
about no text of ours. Its owner puts each away once it was looked at.

On a machine of several shops it may be another shop's customer who wrote: then nobody is shown the words or the whole
number, only what it takes to see that a number is not set right.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from followup.storage import inbox, shops
from followup.storage.rows import Row
from followup.storage.store import Store

_LAST_DIGITS = 2


@dataclass(frozen=True)
class Letter:
    """One of them; `said_by` is a whole number, or its last digits where the words are not shown either."""

    id: int
    at: datetime
    because: str
    sent_to: str | None
    said_by: str | None
    words: str | None


@dataclass(frozen=True)
class Letters:
    """All that wait, the latest first."""

    letters: tuple[Letter, ...]
    are_whole: bool


def look_at_letters(store: Store) -> Letters:
    """What waits for somebody to look at it."""
    with store.read() as connection:
        are_whole = len(shops.shop_codes(connection)) == 1
        found = inbox.dead_letters(connection, None)
    return Letters(tuple(_letter(row, are_whole) for row in found), are_whole)


def put_letter_away(store: Store, shop_id: int, letter_id: int, who: str, now: datetime) -> bool:
    """Somebody of that shop looked at it; False where there is no such letter, or it was put away before."""
    with store.write() as connection:
        done = inbox.settle_dead_letter(connection, None, letter_id, now)
        if done:
            shops.note(connection, shop_id, now, who, "settled a dead letter", f"dead letter {letter_id}")
        return done


def _letter(row: Row, is_whole: bool) -> Letter:
    body = row["body"] if isinstance(row["body"], dict) else {}
    number = body.get("from")
    if number and not is_whole:
        number = f"... {number[-_LAST_DIGITS:]}"
    words = body.get("body") if is_whole else None
    return Letter(row["id"], row["at"], row["because"], body.get("to"), number, words)
