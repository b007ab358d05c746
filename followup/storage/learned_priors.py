"""What a shop's cars taught, run by run, and which priors its forecasts go by. Nothing is ever thrown away."""

from __future__ import annotations

from datetime import datetime
from typing import Any

from sqlalchemy import Connection, desc, select
from sqlalchemy.exc import IntegrityError

from followup.core.forecast.learned import SOURCES
from followup.storage import rows, tables
from followup.storage.rows import Row

__all__ = ["SOURCES", "has_news", "in_use", "keep", "newest", "version_of", "versions"]


def keep(
    connection: Connection,
    shop_id: int,
    now: datetime,
    author: str,
    source: str,
    is_used: bool,
    body: dict[str, Any] | None,
    based_on: int,
) -> int | None:
    """Keep a run, or a way back, as the version after `based_on`; its number, or None where there is such a one.

    `body` is `Learned.to_json`; None: as published.
    """
    last = newest(connection, shop_id)
    if (last["version"] if last else 0) != based_on:
        return None
    try:
        with connection.begin_nested():
            rows.add(
                connection, tables.learned_priors, shop_id=shop_id, version=based_on + 1, at=now, author=author,
                source=source, is_used=is_used, cars=body["cars"] if body else 0, body=body,
            )  # fmt: skip
    except IntegrityError:
        return None
    return based_on + 1


def newest(connection: Connection, shop_id: int) -> Row | None:
    """The newest version, used or not."""
    return next(iter(versions(connection, shop_id, most=1)), None)


def in_use(connection: Connection, shop_id: int) -> Row | None:
    """The version that forecasts go by; None where they go by the published values and nobody ever said otherwise."""
    table = tables.learned_priors
    query = select(table).where(table.c.shop_id == shop_id, table.c.is_used.is_(True))
    return rows.first(connection, query.order_by(desc(table.c.version)).limit(1))


def version_of(connection: Connection, shop_id: int, version: int) -> Row | None:
    """One version."""
    table = tables.learned_priors
    return rows.first(connection, select(table).where(table.c.shop_id == shop_id, table.c.version == version))


def versions(connection: Connection, shop_id: int, most: int = 50) -> list[Row]:
    """The last versions, newest first."""
    table = tables.learned_priors
    query = select(table).where(table.c.shop_id == shop_id).order_by(desc(table.c.version)).limit(most)
    return rows.every(connection, query)


def has_news(connection: Connection, shop_id: int, since: datetime) -> bool:
    """Whether anything was inspected, done or told after that."""
    for table, at in (
        (tables.inspections, tables.inspections.c.received_at),
        (tables.work_done, tables.work_done.c.kept_at),
        (tables.odometer_tellings, tables.odometer_tellings.c.told_at),
    ):
        if rows.first(connection, select(table.c.id).where(table.c.shop_id == shop_id, at > since).limit(1)):
            return True
    return False
