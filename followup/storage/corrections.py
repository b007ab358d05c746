"""Readings of texts that an advisor put right: one a text, the latest counts."""

from __future__ import annotations

from datetime import datetime
from typing import Any

from sqlalchemy import Connection, select, update

from followup.storage import rows, tables
from followup.storage.rows import Row


def keep_correction(connection: Connection, inbound: Row, meant: dict[str, Any], staff_id: int, now: datetime) -> None:
    """Keep what was meant by a text beside what was read; a second correction takes the place of the first."""
    table = tables.reading_corrections
    done = connection.execute(
        update(table)
        .where(table.c.inbound_id == inbound["id"])
        .values(meant=meant, corrected_by=staff_id, corrected_at=now)
    )
    if done.rowcount == 0:
        rows.add(
            connection, table, shop_id=inbound["shop_id"], inbound_id=inbound["id"], reply=inbound["context"],
            reading=inbound["meaning"], meant=meant, corrected_by=staff_id, corrected_at=now,
        )  # fmt: skip


def correction_of(connection: Connection, inbound_id: int) -> Row | None:
    """The correction of one text, with the name of who made it; None where there is none."""
    table, staff = tables.reading_corrections, tables.staff
    query = select(table, staff.c.name.label("who")).join(staff, staff.c.id == table.c.corrected_by)
    return rows.first(connection, query.where(table.c.inbound_id == inbound_id))


def corrections_of_shop(connection: Connection, shop_id: int) -> list[Row]:
    """Every correction of the shop, the oldest first."""
    table = tables.reading_corrections
    return rows.every(
        connection, select(table).where(table.c.shop_id == shop_id).order_by(table.c.corrected_at, table.c.id)
    )
