"""Say that this database is the shop now: until somebody does, a copy sends nothing.

In one transaction: where the shop is, a line in the audit trail of each of its shops, and what is planned for a moment
that has passed is held for a person, because it may have left from where the shop was before. Done twice, the second
changes nothing.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from followup.storage import installation, shops
from followup.storage.installation import Standing
from followup.storage.store import Connection, Store

DID = "said that this database is the shop now"
# What keeps a database from sending, and what to do.
_SAYS = {
    "copy": "this database is a copy{since}: it sends nothing",
    "elsewhere": "this database was copied or moved here{since}: it sends nothing",
    "moving": "it is being moved to another database: nothing is sent meanwhile",
    "moved": "this database was moved to another one: it sends and keeps nothing any more",
    "arriving": "a move to this database has begun and is not done: it sends nothing",
}
_DO = {
    "moving": "wait; if the move is broken off, this one sends again within a minute",
    "moved": "set FOLLOWUP_DATABASE_URL to the new one",
    "arriving": "run `followup db move` again where the shop was",
}
_HERE = "if it is the shop now, run `followup db here` or press it on the owner's page, once nothing else sends for it"


@dataclass(frozen=True)
class WhereItIs:
    """How the database stands in words; `says` is empty where all is well."""

    state: str
    says: str = ""
    do: str = ""


def where_it_is(store: Store) -> WhereItIs:
    """Look whether this database sends."""
    with store.read() as connection:
        return in_words(connection)


def in_words(connection: Connection) -> WhereItIs:
    """The same within a transaction."""
    found = installation.standing(connection)
    if found.state in ("new", "here"):
        return WhereItIs(found.state)
    return WhereItIs(found.state, _SAYS[found.state].format(since=_since(found)), _DO.get(found.state, _HERE))


def _since(found: Standing) -> str:
    return f" and knows nothing since {found.gap_from_at:%Y-%m-%d %H:%M} UTC" if found.gap_from_at else ""


def move_in(store: Store, now: datetime) -> bool:
    """A database of which nobody ever said where it is, is the shop here from now on; whether this one sends."""
    with store.read() as connection:
        found = installation.standing(connection)
    if found.state != "new":
        return found.sends
    with store.write() as connection:
        return installation.move_in(connection, now).sends


def take_over(store: Store, who: str, now: datetime) -> int | None:
    """This is the shop now; how many texts wait for a person's word. None: it was the shop already."""
    with store.write() as connection:
        before = in_words(connection)
        if before.state == "here":
            return None
        held = installation.take_over(connection, now, who)
        for shop_id, _ in shops.shop_codes(connection):
            shops.note(connection, shop_id, now, who, DID, before.state, None, {"held": held})
    return held
