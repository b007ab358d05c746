"""How forecasts came out: the scores of a car are replaced as a whole whenever more or other things are known of it."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, datetime
from typing import Any

from sqlalchemy import ColumnElement, Connection, Table, delete, exists, func, select

from followup.storage import learned_priors, rows, tables
from followup.storage.rows import Row


def cars_to_score(connection: Connection, shop_id: int) -> list[tuple[int, str]]:
    """(vehicle id, what is known) of cars that were inspected, and of which something else is known than when their
    forecasts were scored last: the last versions of inspections, the lines of work, the priors in use."""
    inspected, work, scored = tables.inspections, tables.work_done, tables.scored_vehicles
    last = _newest(connection, inspected, shop_id, inspected.c.is_current.is_(True))
    done = _newest(connection, work, shop_id)
    query = select(scored.c.vehicle_id, scored.c.known).where(scored.c.shop_id == shop_id)
    before = {row["vehicle_id"]: row["known"] for row in rows.every(connection, query)}
    # What is looked back on is forecast by the priors that are in use.
    used = learned_priors.in_use(connection, shop_id)
    version = f" priors {used['version']}" if used else ""
    known = {vehicle_id: f"{newest} {done.get(vehicle_id, '-')}{version}" for vehicle_id, newest in last.items()}
    # A correction may leave a car without any inspection.
    known |= {vehicle_id: "" for vehicle_id in before if vehicle_id not in known}
    return sorted((vehicle_id, one) for vehicle_id, one in known.items() if before.get(vehicle_id) != one)


def _newest(connection: Connection, table: Table, shop_id: int, *conditions: ColumnElement[bool]) -> dict[int, str]:
    """The newest row of each car and how many there are: a correction of either changes one of them."""
    newest, count = func.max(table.c.id).label("newest"), func.count().label("count")
    query = select(table.c.vehicle_id, newest, count).where(table.c.shop_id == shop_id, *conditions)
    query = query.group_by(table.c.vehicle_id)
    return {row["vehicle_id"]: f"{row['newest']}/{row['count']}" for row in rows.every(connection, query)}


def windows_ever(connection: Connection, vehicle_id: int) -> list[Row]:
    """All windows of a car that were ever kept, oldest first; `is_used` where a planned text rests on one."""
    table, uses = tables.due_windows, tables.window_uses
    is_used = exists().where(uses.c.window_id == table.c.id).label("is_used")
    return rows.every(connection, select(table, is_used).where(table.c.vehicle_id == vehicle_id).order_by(table.c.id))


def replace_scores(
    connection: Connection, shop_id: int, vehicle_id: int, known: str, scores: list[dict[str, Any]], now: datetime
) -> None:
    """Keep these scores as all that there are of the car; the same scores again change nothing but the instant."""
    table, scored = tables.forecast_scores, tables.scored_vehicles
    connection.execute(delete(table).where(table.c.vehicle_id == vehicle_id))
    connection.execute(delete(scored).where(scored.c.vehicle_id == vehicle_id))
    if scores:
        common = {"shop_id": shop_id, "vehicle_id": vehicle_id, "scored_at": now}
        connection.execute(table.insert(), [{**one, **common} for one in scores])
    rows.add(connection, scored, shop_id=shop_id, vehicle_id=vehicle_id, known=known, scored_at=now)


def scores_of_shop(connection: Connection, shop_id: int) -> list[Row]:
    """The scores of a shop in the order of time."""
    table = tables.forecast_scores
    query = select(table).where(table.c.shop_id == shop_id)
    return rows.every(connection, query.order_by(table.c.scored_on, table.c.vehicle_id, table.c.id))


def columns_of_scores(
    connection: Connection, shop_id: int, names: Sequence[str], since: date | None
) -> dict[str, Sequence[Any]]:
    """Columns of the scores of readings from `since` on (None: all), by name.

    Two are not the table's: `is_look_back`, no window was kept; `is_used`, a planned text rests on the window.
    """
    table, uses = tables.forecast_scores, tables.window_uses
    worked_out = {
        "is_look_back": table.c.window_id.is_(None),
        "is_used": exists().where(uses.c.window_id == table.c.window_id),
    }
    wanted = [worked_out[name].label(name) if name in worked_out else table.c[name] for name in names]
    query = select(*wanted).where(table.c.shop_id == shop_id)
    if since is not None:
        query = query.where(table.c.scored_on >= since)
    found = list(zip(*connection.execute(query).fetchall(), strict=True)) or [()] * len(names)
    return dict(zip(names, found, strict=True))


def note_use(connection: Connection, shop_id: int, text_id: int, vehicle_id: int, items: list[tuple[str, str]]) -> None:
    """Note that a planned text rests on the car's present windows of these items (code, position)."""
    table = tables.due_windows
    query = select(table.c.id, table.c.item, table.c.position).where(
        table.c.vehicle_id == vehicle_id, table.c.is_current.is_(True)
    )
    for row in rows.every(connection, query):
        if (row["item"], row["position"]) in items:
            rows.add_new(connection, tables.window_uses, shop_id=shop_id, window_id=row["id"], text_id=text_id)
