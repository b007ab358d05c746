"""Due windows as they were forecast; all are kept, so that the next reading can score them."""

from __future__ import annotations

from bisect import bisect_left
from datetime import date, datetime
from typing import Any

from sqlalchemy import Connection, delete, func, select, update

from followup.core.forecast.window import CURVE_CHANCES
from followup.storage import learned_priors, rows, shops, tables
from followup.storage.rows import Row

# A database takes only so many values in one statement.
_AT_ONCE = 5_000


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


def near_windows(
    connection: Connection, shop_id: int, today: date, within_days: float, chance: float
) -> dict[int, list[Row]]:
    """Of `all_windows` those that may be due within so many days with at least that chance, by either limit; and all
    those of cars of which something was advised or put off, whose items come up whatever their chance.

    What lies further ahead is most of it, and is not even read.
    """
    table, place = tables.due_windows, bisect_left(CURVE_CHANCES, chance) - 1
    if place < 0:
        return all_windows(connection, shop_id)
    curve, legal = (table.c.body[(*path, "days", place)].as_float() for path in (("curve",), ("legal", "curve")))
    query = select(table.c.id, table.c.vehicle_id, table.c.as_of, curve, legal,
                   table.c.body[("legal", "is_past")].as_boolean())  # fmt: skip
    query = query.where(table.c.shop_id == shop_id, table.c.is_current.is_(True))
    put_off = {
        vehicle_id
        for other in (tables.rests, tables.recommendations)
        for (vehicle_id,) in connection.execute(select(other.c.vehicle_id).where(other.c.shop_id == shop_id).distinct())
    }
    wanted = [
        window_id
        for window_id, vehicle_id, as_of, due_in, legal_in, is_past in connection.execute(query)
        if is_past or vehicle_id in put_off
        # The day on which a lower chance is reached: before it the chance that is asked for is not.
        or any(days is not None and days <= (today - as_of).days + within_days for days in (due_in, legal_in))
    ]  # fmt: skip
    found: dict[int, list[Row]] = {}
    for begin in range(0, len(wanted), _AT_ONCE):
        query = select(table).where(table.c.id.in_(wanted[begin : begin + _AT_ONCE])).order_by(table.c.id)
        for row in rows.every(connection, query):
            found.setdefault(row["vehicle_id"], []).append(row)
    return found


def known_of_cars(
    connection: Connection, shop_id: int, rules: str, vehicle_ids: list[int] | None = None
) -> dict[int, str]:
    """What is known of each car that was inspected, in a word that is another one as soon as something else is known:
    the present inspections, the lines of work, the odometers told by text and those of visits; with the `rules`.

    Not an instant: what is kept while a forecast is made has an earlier one and is seen by none.
    """
    inspected, visits = tables.inspections, tables.visits
    parts = (
        (inspected, (inspected.c.is_current.is_(True),), func.max(inspected.c.id)),
        (tables.work_done, (), func.max(tables.work_done.c.id)),
        (tables.odometer_tellings, (), func.max(tables.odometer_tellings.c.id)),
        (visits, (visits.c.odometer_miles.is_not(None),), func.sum(visits.c.odometer_miles)),
    )
    found: dict[int, list[str]] = {}
    for place, (table, conditions, newest) in enumerate(parts):
        query = select(table.c.vehicle_id, newest.label("newest"), func.count().label("count"))
        query = query.where(table.c.shop_id == shop_id, *conditions).group_by(table.c.vehicle_id)
        if vehicle_ids is not None:
            query = query.where(table.c.vehicle_id.in_(vehicle_ids))
        for row in rows.every(connection, query):
            told = found.setdefault(row["vehicle_id"], ["-"] * len(parts))
            told[place] = f"{row['newest']}/{row['count']}"
    return {vehicle_id: " ".join((*told, rules)) for vehicle_id, told in found.items()}


def take_turn(connection: Connection, vehicle_ids: list[int]) -> None:
    """Wait for whoever keeps a forecast of one of these cars, and keep others waiting until this transaction ends.

    SQLite has one writer at a time anyway.
    """
    if connection.dialect.name == "postgresql":
        for vehicle_id in sorted(vehicle_ids):
            key = func.hashtextextended(f"forecast of car {vehicle_id}", 0)
            connection.execute(select(func.pg_advisory_xact_lock(key)))


def note_forecast(connection: Connection, shop_id: int, vehicle_id: int, known: str, now: datetime) -> None:
    """Note what was known of the car when it was forecast last, and when that was."""
    table = tables.forecast_vehicles
    connection.execute(delete(table).where(table.c.vehicle_id == vehicle_id))
    rows.add(connection, table, shop_id=shop_id, vehicle_id=vehicle_id, known=known, forecast_at=now)


def rules_of_forecast(connection: Connection, shop_id: int) -> str:
    """What the forecasts of all cars go by, in a word that is another one as soon as a limit, another rule of the
    forecast or the priors in use are changed."""
    priors = learned_priors.in_use(connection, shop_id)
    changed_at = shops.forecast_rules_changed_at(connection, shop_id)
    return f"rules {changed_at or '-'} priors {priors['version'] if priors else '-'}"


def cars_with_news(connection: Connection, shop_id: int) -> list[int]:
    """Cars of which something else is known than when they were forecast last, or whose forecasts went by other
    rules or priors."""
    table = tables.forecast_vehicles
    query = select(table.c.vehicle_id, table.c.known).where(table.c.shop_id == shop_id)
    before = {row["vehicle_id"]: row["known"] for row in rows.every(connection, query)}
    rules = rules_of_forecast(connection, shop_id)
    found = known_of_cars(connection, shop_id, rules)
    return sorted(vehicle_id for vehicle_id, known in found.items() if before.get(vehicle_id) != known)
