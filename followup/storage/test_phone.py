"""What the built-in test phone shows: texts that were delivered to it and what was answered on it."""

from __future__ import annotations

from datetime import datetime

from sqlalchemy import Connection, func, select

from followup.storage import rows, tables
from followup.storage.rows import Row


def keep(
    connection: Connection, shop_id: int, number: str, direction: str, body: str, provider_id: str, now: datetime
) -> int:
    """Keep one text under the provider's id; `direction` is "to_phone" or "from_phone". The same id is kept once."""
    table = tables.test_phone_texts
    found = rows.first(connection, select(table.c.id).where(table.c.provider_id == provider_id))
    if found:
        return int(found["id"])
    return rows.add(
        connection,
        table,
        shop_id=shop_id,
        number=number,
        direction=direction,
        body=body,
        provider_id=provider_id,
        at=now,
    )


def texts_of(connection: Connection, shop_id: int, number: str) -> list[Row]:
    """All texts of that number, oldest first."""
    table = tables.test_phone_texts
    query = select(table).where(table.c.shop_id == shop_id, table.c.number == number)
    return rows.every(connection, query.order_by(table.c.id))


def texts_since(connection: Connection, shop_id: int, direction: str, since: datetime) -> list[Row]:
    """All texts in that direction since then, oldest first."""
    table = tables.test_phone_texts
    query = select(table).where(table.c.shop_id == shop_id, table.c.direction == direction, table.c.at >= since)
    return rows.every(connection, query.order_by(table.c.id))


def numbers(connection: Connection, shop_id: int) -> list[Row]:
    """Numbers with texts: `number`, `count`, `last_at`, the latest first."""
    table = tables.test_phone_texts
    last_at = func.max(table.c.at).label("last_at")
    query = select(table.c.number, func.count().label("count"), last_at).where(table.c.shop_id == shop_id)
    return rows.every(connection, query.group_by(table.c.number).order_by(last_at.desc(), table.c.number))
