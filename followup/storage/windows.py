"""Due windows as they were forecast; all are kept, so that the next reading can score them."""

from __future__ import annotations

import math
from bisect import bisect_left
from collections.abc import Collection, Iterator, Mapping
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from typing import Any

from sqlalchemy import ColumnElement, Connection, Select, Table, delete, func, or_, select, update

from followup.core.forecast.window import CURVE_CHANCES
from followup.storage import learned_priors, marks, rows, shops, tables
from followup.storage.rows import Row

# A database takes only so many values in one statement.
_AT_ONCE = 1_000
# An inspection with its work makes some marks of a car; more are read at the next look.
_MARKS_A_CAR = 20
# The column `near_on` stands for this chance: no rule asks for less unless a manager says so.
NEAR_CHANCE = 0.10
_NEAR_PLACE = bisect_left(CURVE_CHANCES, NEAR_CHANCE) - 1
NEVER_ON = date(9999, 12, 31)
_LONGEST_DAYS = 100_000.0
_CURRENT = (
    tables.due_windows.c.vehicle_id.in_(rows.among("vehicle_ids")), tables.due_windows.c.is_current.is_(True)
)  # fmt: skip
_END_WINDOWS = update(tables.due_windows).where(*_CURRENT).values(is_current=False)
_ADD_WINDOWS = tables.due_windows.insert()
_FORGET_FORECASTS = delete(tables.forecast_vehicles).where(
    tables.forecast_vehicles.c.vehicle_id.in_(rows.among("vehicle_ids"))
)


def replace_windows(
    connection: Connection,
    shop_id: int,
    vehicle_id: int,
    as_of: date,
    windows: list[tuple[str, str, dict[str, Any]]],
    now: datetime,
) -> None:
    """Keep (item, position, body) as the car's present windows; the earlier ones stay, no longer current."""
    replace_windows_of_cars(connection, shop_id, [(vehicle_id, as_of, windows)], now)


def replace_windows_of_cars(
    connection: Connection,
    shop_id: int,
    cars: list[tuple[int, date, list[tuple[str, str, dict[str, Any]]]]],
    now: datetime,
) -> None:
    """The same for several cars, in as many statements as for one."""
    vehicle_ids = [vehicle_id for vehicle_id, *_ in cars]
    connection.execute(_END_WINDOWS, {"vehicle_ids": vehicle_ids})
    made = [
        {
            "shop_id": shop_id, "vehicle_id": vehicle_id, "item": item, "position": position, "as_of": as_of,
            "body": body, "is_current": True, "made_at": now, "near_on": near_on(as_of, body),
        }
        for vehicle_id, as_of, windows in cars
        for item, position, body in windows
    ]  # fmt: skip
    if made:
        connection.execute(_ADD_WINDOWS, made)
    marks.mark_windows(connection, shop_id, vehicle_ids)


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
    connection: Connection,
    shop_id: int,
    today: date,
    within_days: float,
    chance: float,
    vehicle_ids: Collection[int] | None = None,
) -> dict[int, list[Row]]:
    """Of `all_windows` (of these cars, or of all) those that may be due within so many days with at least that chance,
    by either limit; and all those of cars of which something was declined or put off, whose items come up whatever
    their chance.

    What lies further ahead is most of it, and is not even read.
    """
    table = tables.due_windows
    near = _is_near(today, within_days, chance)
    if near is None:
        return _of_cars(all_windows(connection, shop_id), vehicle_ids)
    if vehicle_ids is None:
        vehicle_ids = cars_with_near_windows(connection, shop_id, today, within_days, chance)
    put_off = _put_off(connection, shop_id)
    found: dict[int, list[Row]] = {}
    for some in _some_at_a_time(vehicle_ids):
        wanted = or_(near, table.c.vehicle_id.in_(put_off.intersection(some)))
        query = select(table).where(table.c.vehicle_id.in_(some), table.c.is_current.is_(True), wanted)
        for row in rows.every(connection, query.order_by(table.c.id)):
            found.setdefault(row["vehicle_id"], []).append(row)
    return found


def cars_with_near_windows(
    connection: Connection, shop_id: int, today: date, within_days: float, chance: float
) -> set[int]:
    """The cars that `near_windows` finds something of."""
    table, near = tables.due_windows, _is_near(today, within_days, chance)
    query = select(table.c.vehicle_id).where(table.c.shop_id == shop_id, table.c.is_current.is_(True))
    if near is not None:
        query = query.where(near)
    return set(connection.execute(query).scalars()) | _put_off(connection, shop_id)


def read_later(
    connection: Connection, today: date, within_days: float, chance: float, vehicle_ids: Collection[int]
) -> dict[int, date]:
    """By car the first day on which `near_windows` would find one more of its windows than it does today."""
    if chance < NEAR_CHANCE:
        return {}
    table, within = tables.due_windows, timedelta(days=math.floor(within_days))
    query = select(table.c.vehicle_id, func.min(table.c.near_on)).group_by(table.c.vehicle_id)
    query = query.where(table.c.is_current.is_(True), table.c.near_on > today + within, table.c.near_on < NEVER_ON)
    found: dict[int, date] = {}
    for some in _some_at_a_time(vehicle_ids):
        found.update((car, day - within) for car, day in connection.execute(query.where(table.c.vehicle_id.in_(some))))
    return found


def cars_asked_again(connection: Connection, shop_id: int, by: date) -> set[int]:
    """Cars of which somebody wanted to hear again on a day up to that one."""
    rests, advised = tables.rests, tables.recommendations
    queries = (
        select(rests.c.vehicle_id).where(rests.c.shop_id == shop_id, rests.c.because == "later", rests.c.until <= by),
        select(advised.c.vehicle_id).where(
            advised.c.shop_id == shop_id, advised.c.decision == "later", advised.c.until <= by
        ),
    )
    return {vehicle_id for query in queries for (vehicle_id,) in connection.execute(query.distinct())}


def _put_off(connection: Connection, shop_id: int) -> set[int]:
    """Cars of which something was declined, or put off to a day: it comes up on that day, or is a call to make."""
    rests, advised = tables.rests, tables.recommendations
    queries = (
        select(rests.c.vehicle_id).where(rests.c.shop_id == shop_id, rests.c.because == "later"),
        select(advised.c.vehicle_id).where(advised.c.shop_id == shop_id, advised.c.decision.in_(("declined", "later"))),
    )
    return {vehicle_id for query in queries for (vehicle_id,) in connection.execute(query.distinct())}


def _some_at_a_time(vehicle_ids: Collection[int]) -> Iterator[list[int]]:
    every = sorted(vehicle_ids)
    for begin in range(0, len(every), _AT_ONCE):
        yield every[begin : begin + _AT_ONCE]


def _of_cars(found: dict[int, list[Row]], vehicle_ids: Collection[int] | None) -> dict[int, list[Row]]:
    return found if vehicle_ids is None else {one: found[one] for one in vehicle_ids if one in found}


def near_on(as_of: date, body: Mapping[str, Any]) -> date:
    """The first day on which either limit may be reached with `NEAR_CHANCE` or more; `NEVER_ON` where there is none.

    It is the day on which a chance a little lower is reached: before it the chance itself is not.
    """
    legal = body.get("legal")
    days = [body["curve"]["days"][_NEAR_PLACE], *([legal["curve"]["days"][_NEAR_PLACE]] if legal else [])]
    if legal and legal["is_past"]:
        days.append(0.0)
    soonest = min((one for one in days if one is not None), default=None)
    return NEVER_ON if soonest is None or soonest > _LONGEST_DAYS else as_of + timedelta(days=math.ceil(soonest))


def _is_near(today: date, within_days: float, chance: float) -> ColumnElement[bool] | None:
    """Whether a present window is near; None where any may be, for less is asked than the column was made for."""
    if chance < NEAR_CHANCE:
        return None
    column = tables.due_windows.c.near_on
    return or_(column <= today + timedelta(days=math.floor(within_days)), column.is_(None))


def _asked_of_cars() -> tuple[tuple[Select[Any], Select[Any]], ...]:
    """What is known of each car that was inspected: of all of a shop, and of some."""
    inspected, visits = tables.inspections, tables.visits
    parts = (
        (inspected, (inspected.c.is_current.is_(True),), func.max(inspected.c.id)),
        (tables.work_done, (), func.max(tables.work_done.c.id)),
        (tables.odometer_tellings, (), func.max(tables.odometer_tellings.c.id)),
        (visits, (visits.c.odometer_miles.is_not(None),), func.sum(visits.c.odometer_miles)),
    )
    found = []
    for table, conditions, newest in parts:
        query = select(table.c.vehicle_id, newest.label("newest"), func.count().label("count"))
        query = query.where(table.c.shop_id == rows.given("shop_id"), *conditions).group_by(table.c.vehicle_id)
        found.append((query, query.where(table.c.vehicle_id.in_(rows.among("vehicle_ids")))))
    return tuple(found)


_KNOWN_OF_CARS = _asked_of_cars()


def known_of_cars(
    connection: Connection, shop_id: int, rules: str, vehicle_ids: list[int] | None = None
) -> dict[int, str]:
    """What is known of each car that was inspected, in a word that is another one as soon as something else is known:
    the present inspections, the lines of work, the odometers told by text and those of visits; with the `rules`.

    Not an instant: what is kept while a forecast is made has an earlier one and is seen by none.
    """
    given: dict[str, Any] = {"shop_id": shop_id}
    given |= {} if vehicle_ids is None else {"vehicle_ids": vehicle_ids}
    found: dict[int, list[str]] = {}
    for place, (of_all, of_some) in enumerate(_KNOWN_OF_CARS):
        for car, newest, count in connection.execute(of_all if vehicle_ids is None else of_some, given):
            found.setdefault(car, ["-"] * len(_KNOWN_OF_CARS))[place] = f"{newest}/{count}"
    return {vehicle_id: " ".join((*told, rules)) for vehicle_id, told in found.items()}


def take_turn(connection: Connection, vehicle_ids: list[int]) -> None:
    """Wait for whoever keeps a forecast of one of these cars, and keep others waiting until this transaction ends.

    SQLite has one writer at a time anyway.
    """
    if connection.dialect.name == "postgresql":
        for vehicle_id in sorted(vehicle_ids):
            key = func.hashtextextended(f"forecast of car {vehicle_id}", 0)
            connection.execute(select(func.pg_advisory_xact_lock(key)))


def note_forecasts(connection: Connection, shop_id: int, known: Mapping[int, str], rules: str, now: datetime) -> None:
    """Note what was known of cars when they were forecast last, by which rules, and when that was."""
    table = tables.forecast_vehicles
    connection.execute(_FORGET_FORECASTS, {"vehicle_ids": list(known)})
    made = [
        {"shop_id": shop_id, "vehicle_id": car, "known": word, "rules": rules, "forecast_at": now}
        for car, word in known.items()
    ]
    connection.execute(table.insert(), made)


def rules_of_forecast(connection: Connection, shop_id: int) -> str:
    """What the forecasts of all cars go by, in a word that is another one as soon as a limit, another rule of the
    forecast or the priors in use are changed."""
    priors = learned_priors.in_use(connection, shop_id)
    changed_at = shops.forecast_rules_changed_at(connection, shop_id)
    return f"rules {changed_at or '-'} priors {priors['version'] if priors else '-'}"


@dataclass(frozen=True)
class News:
    """Cars to be forecast anew, in the order of their ids, and marks of others, of which nothing else is known."""

    cars: list[int]
    idle_marks: list[int]


def look_for_news(connection: Connection, shop_id: int, most: int | None = None) -> News:
    """Cars of which something else is known than when they were forecast last, or whose forecasts went by other
    rules or priors; at most so many of them, those that were marked first."""
    rules = rules_of_forecast(connection, shop_id)
    marked = marks.forecast_marks(connection, shop_id, None if most is None else _MARKS_A_CAR * most)
    found = _with_news(connection, shop_id, rules, {car for _, car in marked})
    idle = [mark for mark, car in marked if car not in found]
    if most is None or len(found) < most:
        found |= set(_by_other_rules(connection, shop_id, rules, most))
    return News(sorted(found)[:most], idle)


def cars_with_news(connection: Connection, shop_id: int) -> list[int]:
    """All cars to be forecast anew."""
    return look_for_news(connection, shop_id).cars


def _with_news(connection: Connection, shop_id: int, rules: str, vehicle_ids: Collection[int]) -> set[int]:
    """Those of these cars of which something else is known than when they were forecast last."""
    table = tables.forecast_vehicles
    query, found = select(table.c.vehicle_id, table.c.known), set()
    for some in _some_at_a_time(vehicle_ids):
        before = {row["vehicle_id"]: row["known"] for row in rows.every(connection, query.where(_is_one(table, some)))}
        known = known_of_cars(connection, shop_id, rules, some)
        found |= {car for car, word in known.items() if before.get(car) != word}
    return found


def _is_one(table: Table, vehicle_ids: Collection[int]) -> ColumnElement[bool]:
    return table.c.vehicle_id.in_(vehicle_ids)


def _by_other_rules(connection: Connection, shop_id: int, rules: str, most: int | None) -> Iterator[int]:
    table = tables.forecast_vehicles
    # Two ranges of the index, both of them empty on most days.
    for is_other in (table.c.rules < rules, table.c.rules > rules):
        query = select(table.c.vehicle_id).where(table.c.shop_id == shop_id, is_other).limit(most)
        yield from connection.execute(query).scalars()
