"""Fleets' weekly lists: who agreed to one, on which weekday it leaves, and which car has which unit number."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date, datetime

from sqlalchemy import Connection, delete, select, update

from followup.storage import rows, tables
from followup.storage.rows import Row


def standing_lists(connection: Connection, shop_id: int) -> list[Row]:
    """Every list of a shop that stands."""
    table = tables.fleet_lists
    query = select(table).where(table.c.shop_id == shop_id, table.c.ended_at.is_(None))
    return rows.every(connection, query.order_by(table.c.id))


def list_of_person(connection: Connection, shop_id: int, person_id: int) -> Row | None:
    """The list that stands for that contact."""
    return next((one for one in standing_lists(connection, shop_id) if one["person_id"] == person_id), None)


def units_of(connection: Connection, list_id: int) -> dict[int, str]:
    """The unit numbers of a list by the car's id."""
    table = tables.fleet_units
    found = rows.every(connection, select(table).where(table.c.list_id == list_id).order_by(table.c.id))
    return {row["vehicle_id"]: row["unit"] for row in found}


def keep_list(
    connection: Connection,
    shop_id: int,
    person_id: int,
    phone_id: int,
    weekday: int,
    agreed_on: date,
    how: str,
    staff_id: int,
    now: datetime,
    units: Mapping[int, str],
) -> int:
    """Keep a list in place of the one that stood for that contact; its id."""
    end_list(connection, shop_id, person_id, now)
    made = rows.add(
        connection, tables.fleet_lists, shop_id=shop_id, person_id=person_id, phone_id=phone_id, weekday=weekday,
        agreed_on=agreed_on, how=how, made_by=staff_id, made_at=now,
    )  # fmt: skip
    for vehicle_id, unit in units.items():
        rows.add(connection, tables.fleet_units, shop_id=shop_id, list_id=made, vehicle_id=vehicle_id, unit=unit)
    return made


def end_list(connection: Connection, shop_id: int, person_id: int, now: datetime) -> bool:
    """End the list of that contact; False where none stood."""
    table = tables.fleet_lists
    done = connection.execute(
        update(table)
        .where(table.c.shop_id == shop_id, table.c.person_id == person_id, table.c.ended_at.is_(None))
        .values(ended_at=now)
    )
    return done.rowcount > 0


def forget(connection: Connection, person_id: int) -> None:
    """The lists of a customer who is deleted."""
    table = tables.fleet_lists
    mine = select(table.c.id).where(table.c.person_id == person_id)
    connection.execute(delete(tables.fleet_units).where(tables.fleet_units.c.list_id.in_(mine)))
    connection.execute(delete(table).where(table.c.person_id == person_id))
