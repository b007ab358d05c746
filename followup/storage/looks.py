"""Whom planning has to look at: of whom something changed, and whose day has come (`core/planning/next_look.py`).

Each phone has a row with the instant of its next look. It counts as long as its word still says what all decisions go
by: the shop and its rules, and the version of the planner. After a change of these all phones are looked at once more:
those at once of whom there may be a reason (`candidates.py`), the others some in each round.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping
from dataclasses import asdict, dataclass
from datetime import datetime
from hashlib import sha256
from typing import Any

from sqlalchemy import Connection, Select, bindparam, select, update

from followup.core.shop import Shop
from followup.storage import candidates, marks, shops, tables

# To be raised with every change of a rule of `core/planning` or of what is read for it.
PLANNER = 1
# Of whom there is no reason now: so many are looked at besides in a round, until each has a row by the present word.
_MORE_AT_ONCE = 2_000
_LOOKS = tables.plan_looks
_KEEP = (
    update(_LOOKS)
    .where(_LOOKS.c.phone_id == bindparam("phone"), _LOOKS.c.version == bindparam("seen"))
    .values(word=bindparam("as_word"), look_at=bindparam("at"), version=bindparam("made"))
)


@dataclass(frozen=True)
class ToLookAt:
    """The numbers (E.164) in the order of the store, and the marks that are done with once they were looked at."""

    numbers: list[str]
    marks: list[int]


def word_of(connection: Connection, shop: Shop, *, needs_registration: bool) -> str:
    """What all decisions go by, in a word that is another one as soon as any of it is; `shop` as planning sees it."""
    told = (PLANNER, shops.state_of_shop(connection, shop.id), sorted(asdict(shop.rules).items()), needs_registration)
    return sha256(repr(told).encode()).hexdigest()[:16]


def to_look_at(connection: Connection, shop: Shop, now: datetime, word: str) -> ToLookAt:
    """Whom a round over all customers has to look at."""
    seen, wanted = marks.plan_marks(connection, shop.id)
    mine = _LOOKS.c.shop_id == shop.id
    due = select(_LOOKS.c.phone_id).where(mine, _LOOKS.c.word == word, _LOOKS.c.look_at <= now)
    wanted |= _ids(connection, due)
    old = {one for query in _of_other_words(shop.id, word) for one in _ids(connection, query)}
    found = _numbers(connection, shop.id, wanted)
    # None of those who were forgotten: their rows stay as they are.
    waiting = _numbers(connection, shop.id, old - wanted)
    if len(waiting) > _MORE_AT_ONCE:
        others = candidates.phones_to_look_at(connection, shop, now)
        found |= {phone_id: number for phone_id, number in others.items() if phone_id in waiting}
    found |= {phone_id: waiting[phone_id] for phone_id in sorted(waiting)[:_MORE_AT_ONCE]}
    return ToLookAt([found[phone_id] for phone_id in sorted(found)], seen)


def _of_other_words(shop_id: int, word: str) -> Iterator[Select[Any]]:
    # Two ranges of the index, both of them empty on most days.
    for is_other in (_LOOKS.c.word < word, _LOOKS.c.word > word):
        yield select(_LOOKS.c.phone_id).where(_LOOKS.c.shop_id == shop_id, is_other)


def _ids(connection: Connection, query: Select[Any]) -> set[int]:
    return set(connection.execute(query).scalars())


def _numbers(connection: Connection, shop_id: int, phone_ids: Collection[int]) -> dict[int, str]:
    table, found = tables.phones, dict[int, str]()
    query = select(table.c.id, table.c.number).where(table.c.shop_id == shop_id, table.c.forgotten_at.is_(None))
    for some in marks.some_at_a_time(phone_ids):
        found.update((phone_id, number) for phone_id, number in connection.execute(query.where(table.c.id.in_(some))))
    return found


def versions(connection: Connection, shop_id: int, numbers: Collection[str]) -> dict[int, int]:
    """By phone the version of its row; to be read before what is decided about. `numbers` fit one statement."""
    phones = tables.phones
    both = phones.join(_LOOKS, _LOOKS.c.phone_id == phones.c.id)
    query = select(phones.c.id, _LOOKS.c.version).select_from(both)
    query = query.where(phones.c.shop_id == shop_id, phones.c.number.in_(numbers))
    return {row[0]: row[1] for row in connection.execute(query)}


def keep(connection: Connection, word: str, looks: Mapping[int, datetime | None], seen: Mapping[int, int]) -> None:
    """Keep by phone when it is looked at next; not where another process looked at it since its version was `seen`."""
    made = [
        {"phone": phone_id, "seen": seen[phone_id], "as_word": word, "at": at, "made": seen[phone_id] + 1}
        for phone_id, at in looks.items()
        if phone_id in seen
    ]
    if made:
        connection.execute(_KEEP, made)
