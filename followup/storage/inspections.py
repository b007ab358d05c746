"""Inspections as they were entered (in versions), visits, work done and what was recommended."""

from __future__ import annotations

from datetime import datetime
from typing import Any

from sqlalchemy import Connection, delete, select, update

from followup.storage import rows, tables
from followup.storage.rows import Row

# All of a car, as the forecast reads it: made once, since it is asked for one car after the other.
_INSPECTED, _DONE, _CAME, _SAID = tables.inspections, tables.work_done, tables.visits, tables.odometer_tellings
_BODIES = (
    select(_INSPECTED)
    .where(_INSPECTED.c.vehicle_id == rows.given("vehicle_id"), _INSPECTED.c.is_current.is_(True))
    .order_by(_INSPECTED.c.inspected_at, _INSPECTED.c.id)
)
_WORK = select(_DONE).where(_DONE.c.vehicle_id == rows.given("vehicle_id")).order_by(_DONE.c.on, _DONE.c.id)
_VISITS = select(_CAME).where(_CAME.c.vehicle_id == rows.given("vehicle_id")).order_by(_CAME.c.opened_at)
_TOLD = select(_SAID).where(_SAID.c.vehicle_id == rows.given("vehicle_id")).order_by(_SAID.c.on)


def current_part(connection: Connection, shop_id: int, code: str, part: str) -> Row | None:
    """The present version of that part of an inspection, or None."""
    table = tables.inspections
    query = select(table).where(
        table.c.shop_id == shop_id, table.c.code == code, table.c.part == part, table.c.is_current.is_(True)
    )
    return rows.first(connection, query)


def was_kept(connection: Connection, shop_id: int, code: str, part: str, content_hash: str) -> bool:
    """True where some version of that part has this very content."""
    table = tables.inspections
    mine = (table.c.shop_id == shop_id, table.c.code == code, table.c.part == part)
    query = select(table.c.id).where(*mine, table.c.content_hash == content_hash)
    return rows.first(connection, query.limit(1)) is not None


def keep_inspection(connection: Connection, **values: Any) -> int:
    """Keep one inspection as the next version of its (code, part); the work and advice of the one before go with it."""
    before = current_part(connection, values["shop_id"], values["code"], values["part"])
    version = 1
    if before:
        version = before["version"] + 1
        rows.change(connection, tables.inspections, before["id"], is_current=False)
        for table in (tables.work_done, tables.recommendations):
            connection.execute(delete(table).where(table.c.inspection_id == before["id"]))
    return rows.add(connection, tables.inspections, version=version, is_current=True, **values)


def bodies_of_vehicle(connection: Connection, vehicle_id: int) -> list[Row]:
    """All current inspections of a car with their bodies, in order of time."""
    return rows.every(connection, _BODIES, vehicle_id=vehicle_id)


def load_inspection(connection: Connection, shop_id: int, inspection_id: int) -> Row | None:
    """One inspection by its id, if it is this shop's."""
    table = tables.inspections
    return rows.first(connection, select(table).where(table.c.id == inspection_id, table.c.shop_id == shop_id))


def add_work(connection: Connection, **values: Any) -> None:
    """Keep one line of work."""
    rows.add(connection, tables.work_done, **values)


def add_recommendation(connection: Connection, **values: Any) -> None:
    """Keep one recommendation with what the customer decided."""
    rows.add(connection, tables.recommendations, **values)


def work_of_vehicle(connection: Connection, vehicle_id: int) -> list[Row]:
    """All work on a car, oldest first."""
    return rows.every(connection, _WORK, vehicle_id=vehicle_id)


def recommendations_of_vehicle(connection: Connection, vehicle_id: int) -> list[Row]:
    """All recommendations for a car, oldest first."""
    table = tables.recommendations
    return rows.every(
        connection, select(table).where(table.c.vehicle_id == vehicle_id).order_by(table.c.on, table.c.id)
    )


def find_visit(connection: Connection, shop_id: int, code: str) -> Row | None:
    """A visit by the shop's own id for it."""
    table = tables.visits
    return rows.first(connection, select(table).where(table.c.shop_id == shop_id, table.c.code == code))


def keep_visit(
    connection: Connection,
    shop_id: int,
    code: str,
    vehicle_id: int,
    opened_at: datetime,
    closed_at: datetime | None,
    odometer_miles: float | None,
    *,
    content_hash: str | None = None,
    is_from_inspection: bool = False,
) -> int:
    """Open a visit, or bring the one of that code up to date; returns its id. An inspection that names a visit never
    opens one again that was closed, nor changes when it was opened."""
    found = find_visit(connection, shop_id, code)
    if found is None:
        return rows.add(
            connection, tables.visits, shop_id=shop_id, code=code, vehicle_id=vehicle_id, opened_at=opened_at,
            closed_at=closed_at, odometer_miles=odometer_miles, content_hash=content_hash,
        )  # fmt: skip
    news: dict[str, Any] = {}
    if not is_from_inspection:
        news = {"opened_at": opened_at, "closed_at": closed_at or found["closed_at"], "content_hash": content_hash}
    if odometer_miles is not None:
        news["odometer_miles"] = odometer_miles
    if news:
        rows.change(connection, tables.visits, found["id"], **news)
    return int(found["id"])


def clear_visit_lines(connection: Connection, visit_id: int) -> None:
    """Take away the work and advice that came with the visit itself, before its newer lines are kept."""
    for table in (tables.work_done, tables.recommendations):
        connection.execute(delete(table).where(table.c.visit_id == visit_id, table.c.inspection_id.is_(None)))


def close_visit(connection: Connection, shop_id: int, visit_id: int, closed_at: datetime) -> bool:
    """Close an open visit; False where somebody was first or there is none."""
    table = tables.visits
    done = connection.execute(
        update(table)
        .where(table.c.id == visit_id, table.c.shop_id == shop_id, table.c.closed_at.is_(None))
        .values(closed_at=closed_at)
    )
    return done.rowcount == 1


def load_visit(connection: Connection, shop_id: int, visit_id: int) -> Row | None:
    """One visit by its id, if it is this shop's."""
    table = tables.visits
    return rows.first(connection, select(table).where(table.c.id == visit_id, table.c.shop_id == shop_id))


def visits_of_vehicle(connection: Connection, vehicle_id: int) -> list[Row]:
    """All visits of a car, oldest first."""
    return rows.every(connection, _VISITS, vehicle_id=vehicle_id)


def open_visits(connection: Connection, shop_id: int) -> list[Row]:
    """Cars that are in the shop."""
    table = tables.visits
    query = select(table).where(table.c.shop_id == shop_id, table.c.closed_at.is_(None)).order_by(table.c.opened_at)
    return rows.every(connection, query)


def is_in_shop(connection: Connection, vehicle_id: int) -> bool:
    """True while a visit of the car is open."""
    table = tables.visits
    query = select(table.c.id).where(table.c.vehicle_id == vehicle_id, table.c.closed_at.is_(None))
    return rows.first(connection, query.limit(1)) is not None


def add_odometer_telling(connection: Connection, **values: Any) -> None:
    """Keep an odometer reading that a customer told by text."""
    rows.add(connection, tables.odometer_tellings, **values)


def odometers_told(connection: Connection, vehicle_id: int) -> list[Row]:
    """Odometer readings told by text, oldest first."""
    return rows.every(connection, _TOLD, vehicle_id=vehicle_id)


def add_rest(connection: Connection, **values: Any) -> None:
    """Keep that an item rests: the customer said no, later, or that it has been done."""
    rows.add(connection, tables.rests, **values)


def rests_of_vehicle(connection: Connection, vehicle_id: int) -> list[Row]:
    """What rests on a car, oldest first."""
    table = tables.rests
    return rows.every(connection, select(table).where(table.c.vehicle_id == vehicle_id).order_by(table.c.id))


def add_recall(connection: Connection, **values: Any) -> int | None:
    """Keep a recall that staff entered for a car; None where it was entered before."""
    return rows.add_new(connection, tables.recalls, **values)


def recalls_of_vehicle(connection: Connection, vehicle_id: int) -> list[Row]:
    """Open recalls of a car."""
    table = tables.recalls
    query = select(table).where(table.c.vehicle_id == vehicle_id, table.c.ended_at.is_(None))
    return rows.every(connection, query.order_by(table.c.id))
