"""The items that a shop added: versions of their rows, the newest counts; words count once a second person looked."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from datetime import datetime
from itertools import pairwise
from typing import Any

from sqlalchemy import Connection, desc, select, update

from followup.core.item import Item
from followup.core.own_item import LANGUAGES, OwnItem, item_of
from followup.storage import rows, tables
from followup.storage.rows import Row

# What words are written for: those of a time when it was otherwise say something else now.
_SAID_OF = ("unit", "positions", "kind")
_ALL = (
    select(tables.own_items).where(tables.own_items.c.shop_id == rows.given("shop_id")).order_by(tables.own_items.c.id)
)


def add_version(
    connection: Connection,
    shop_id: int,
    own: OwnItem,
    author_id: int,
    now: datetime,
    because: str,
    looked: Row | None = None,
) -> int:
    """Keep a new version of a row and return its number. `looked` is a version whose words are the same: whoever
    looked at those has looked at these."""
    found = versions(connection, shop_id, own.code)
    version = found[0]["version"] + 1 if found else 1
    rows.add(
        connection, tables.own_items, shop_id=shop_id, code=own.code, version=version, body=own.row(),
        author_id=author_id, written_at=now, because=because,
        looked_at=looked["looked_at"] if looked else None, looked_at_by=looked["looked_at_by"] if looked else None,
    )  # fmt: skip
    return version


def versions(connection: Connection, shop_id: int, code: str) -> list[Row]:
    """All versions of one item, newest first."""
    table = tables.own_items
    query = select(table).where(table.c.shop_id == shop_id, table.c.code == code)
    return rows.every(connection, query.order_by(desc(table.c.version)))


def all_versions(connection: Connection, shop_id: int) -> dict[str, list[Row]]:
    """The versions of every item by its code, newest first; items in the order in which they were added."""
    found: dict[str, list[Row]] = {}
    for row in rows.every(connection, _ALL, shop_id=shop_id):
        found.setdefault(row["code"], []).insert(0, row)
    return found


def changed_at(connection: Connection, shop_id: int) -> datetime | None:
    """When an item was last changed in what it is forecast by; None where none was. A new one has no readings yet."""
    changes = [
        after["written_at"]
        for found in all_versions(connection, shop_id).values()
        for after, before in pairwise(found)
        if _but_words(after["body"]) != _but_words(before["body"])
    ]
    return max(changes, default=None)


def _but_words(body: dict[str, Any]) -> dict[str, Any]:
    return {name: value for name, value in body.items() if name not in LANGUAGES}


def look_at(connection: Connection, shop_id: int, code: str, version: int, staff_id: int, now: datetime) -> bool:
    """A second person approves the words of a version; False where that is its author, or somebody did before."""
    table = tables.own_items
    done = connection.execute(
        update(table)
        .where(
            table.c.shop_id == shop_id, table.c.code == code, table.c.version == version,
            table.c.looked_at.is_(None), table.c.author_id != staff_id,
        )
        .values(looked_at=now, looked_at_by=staff_id)
    )  # fmt: skip
    return done.rowcount == 1


def items_of(connection: Connection, shop_id: int) -> tuple[Item, ...]:
    """The shop's own items as they stand, in the order in which they were added."""
    return tuple(standing(found) for found in all_versions(connection, shop_id).values())


def standing(found: list[Row]) -> Item:
    """The item that its versions (newest first) make: the newest row, with the words that may be used."""
    own = own_of(found[0])
    said = looked_at(found)
    return item_of(replace(own, words=own_of(said).words if said else {}))


def looked_at(found: Iterable[Row]) -> Row | None:
    """The newest version whose words may be used: a second person looked at them, and they still fit what it is."""
    newest: dict[str, Any] | None = None
    for row in found:
        newest = newest or row["body"]
        if row["looked_at"] and all(row["body"].get(name) == newest.get(name) for name in _SAID_OF):
            return row
    return None


def own_of(row: Row) -> OwnItem:
    """The row of a version."""
    return OwnItem.of_row({**row["body"], "code": row["code"]})
