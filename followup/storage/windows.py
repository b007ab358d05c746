"""Due windows as they were forecast; all are kept, so that the next reading can score them."""

from __future__ import annotations

from datetime import date, datetime
from typing import Any

from sqlalchemy import Connection, false, func, or_, select, union_all, update

from followup.storage import learned_priors, rows, shops, tables
from followup.storage.rows import Row


def replace_windows(
    connection: Connection,
    shop_id: int,
    vehicle_id: int,
    as_of: date,
    windows: list[tuple[str, str, dict[str, Any]]],
    now: datetime,
) -> None:
    """Keep (item, position, body) as the car's present windows; the earlier ones stay, no longer current."""
    table = tables.due_windows
    connection.execute(
        update(table).where(table.c.vehicle_id == vehicle_id, table.c.is_current.is_(True)).values(is_current=False)
    )
    made = [
        {
            "shop_id": shop_id, "vehicle_id": vehicle_id, "item": item, "position": position, "as_of": as_of,
            "body": body, "is_current": True, "made_at": now,
        }
        for item, position, body in windows
    ]  # fmt: skip
    if made:
        connection.execute(table.insert(), made)


def windows_of(connection: Connection, vehicle_id: int) -> list[Row]:
    """The present windows of a car, in the order in which they were forecast."""
    table = tables.due_windows
    query = select(table).where(table.c.vehicle_id == vehicle_id, table.c.is_current.is_(True))
    return rows.every(connection, query.order_by(table.c.id))


def all_windows(connection: Connection, shop_id: int) -> dict[int, list[Row]]:
    """The present windows of every car of the shop, by vehicle id, in one read."""
    table = tables.due_windows
    query = select(table).where(table.c.shop_id == shop_id, table.c.is_current.is_(True)).order_by(table.c.id)
    found: dict[int, list[Row]] = {}
    for row in rows.every(connection, query):
        found.setdefault(row["vehicle_id"], []).append(row)
    return found


def cars_with_news(connection: Connection, shop_id: int) -> list[int]:
    """Cars whose inspections, visits, work or odometer changed after their windows were made, or that have none.

    Where the shop changed a limit or another rule of the forecast since, or goes by other priors, these are all of its
    cars.
    """
    inspected, told = tables.inspections, tables.odometer_tellings
    made = (
        select(tables.due_windows.c.vehicle_id, func.max(tables.due_windows.c.made_at).label("made_at"))
        .where(tables.due_windows.c.shop_id == shop_id)
        .group_by(tables.due_windows.c.vehicle_id)
        .subquery()
    )
    news = union_all(
        select(inspected.c.vehicle_id, inspected.c.received_at.label("at")).where(inspected.c.shop_id == shop_id),
        select(told.c.vehicle_id, told.c.told_at.label("at")).where(told.c.shop_id == shop_id),
        select(tables.work_done.c.vehicle_id, tables.work_done.c.kept_at.label("at")).where(
            tables.work_done.c.shop_id == shop_id
        ),
    ).subquery()
    priors = learned_priors.in_use(connection, shop_id)
    changes = (shops.forecast_rules_changed_at(connection, shop_id), priors["at"] if priors else None)
    changed_at = max((one for one in changes if one is not None), default=None)
    is_outdated = made.c.made_at < changed_at if changed_at is not None else false()
    query = (
        select(news.c.vehicle_id)
        .select_from(news.outerjoin(made, made.c.vehicle_id == news.c.vehicle_id))
        .where(or_(made.c.made_at.is_(None), news.c.at > made.c.made_at, is_outdated))
        .distinct()
        .order_by(news.c.vehicle_id)
    )
    return [row["vehicle_id"] for row in rows.every(connection, query)]
