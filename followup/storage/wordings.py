"""The shop's own wording: versions with their author; a version is used only after a second person looked at it."""

from __future__ import annotations

from datetime import datetime

from sqlalchemy import Connection, desc, select, update

from followup.storage import rows, tables
from followup.storage.rows import Row

_OWN = tables.wordings.c
_OF_TEXT = [_OWN[name] == rows.given(name) for name in ("shop_id", "reason", "language")]
_VERSIONS = select(tables.wordings).where(*_OF_TEXT).order_by(desc(_OWN.version))


def add_version(
    connection: Connection, shop_id: int, reason: str, language: str, source: str, author_id: int, now: datetime
) -> int:
    """Keep a new version of the shop's own text; it waits for a second person's look. Returns its number."""
    found = versions(connection, shop_id, reason, language)
    version = found[0]["version"] + 1 if found else 1
    rows.add(
        connection, tables.wordings, shop_id=shop_id, reason=reason, language=language, version=version,
        source=source, author_id=author_id, written_at=now,
    )  # fmt: skip
    return version


def versions(connection: Connection, shop_id: int, reason: str, language: str) -> list[Row]:
    """All versions, newest first."""
    return rows.every(connection, _VERSIONS, shop_id=shop_id, reason=reason, language=language)


def in_use(connection: Connection, shop_id: int, reason: str, language: str) -> Row | None:
    """The newest version that a second person looked at and that was not ended; None: the shipped text."""
    return next(
        (row for row in versions(connection, shop_id, reason, language) if row["looked_at"] and not row["ended_at"]),
        None,
    )


def look_at(connection: Connection, shop_id: int, wording_id: int, staff_id: int, now: datetime) -> bool:
    """A second person approves a version; False where that is its author, or somebody did before."""
    table = tables.wordings
    done = connection.execute(
        update(table)
        .where(
            table.c.id == wording_id, table.c.shop_id == shop_id, table.c.looked_at.is_(None),
            table.c.author_id != staff_id, table.c.ended_at.is_(None),
        )
        .values(looked_at=now, looked_at_by=staff_id)
    )  # fmt: skip
    return done.rowcount == 1


def end(connection: Connection, shop_id: int, wording_id: int, now: datetime) -> bool:
    """Take a version out of use: the one before it, or the shipped text, counts again."""
    table = tables.wordings
    done = connection.execute(
        update(table)
        .where(table.c.id == wording_id, table.c.shop_id == shop_id, table.c.ended_at.is_(None))
        .values(ended_at=now)
    )
    return done.rowcount == 1


def use(connection: Connection, trial: Row, wording_id: int | None, now: datetime) -> None:
    """Let that wording of a trial count (None: the shipped text): the newest that stands does, so that those which are
    newer end."""
    for row in versions(connection, trial["shop_id"], trial["reason"], trial["language"]):
        if row["id"] == wording_id:
            return
        if row["looked_at"] and not row["ended_at"]:
            end(connection, trial["shop_id"], row["id"], now)


def of_shop(connection: Connection, shop_id: int) -> list[Row]:
    """Every version of every own text of the shop, newest first."""
    table = tables.wordings
    return rows.every(connection, select(table).where(table.c.shop_id == shop_id).order_by(desc(table.c.id)))


def texts_of_reason(connection: Connection, shop_id: int, reason: str, most: int) -> list[Row]:
    """The newest texts of that reason that were planned or sent, for previews on real cars."""
    table = tables.texts
    query = select(table).where(table.c.shop_id == shop_id, table.c.reason == reason).order_by(desc(table.c.id))
    return rows.every(connection, query.limit(most))
