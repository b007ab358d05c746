"""Marks: what changed of whom, set by the database itself in the transaction of the change (`mark_triggers.py`).

Whoever plans or forecasts looks at what is marked, so that a round costs what changed and not what there is. A mark is
a row of its own: who looks reads the marks first, then what they are about, and takes out the very marks that it read.
What is changed meanwhile has a mark that was not among them, so that it is looked at again; nobody waits for anybody.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator

from sqlalchemy import Connection, delete, insert, select

from followup.storage import rows, tables

# A database takes only so many values in one statement; and so many are taken out at once, for who waits to write.
_AT_ONCE = 500
_MARK = insert(tables.plan_marks)
_TAKE_OUT = delete(tables.forecast_marks).where(tables.forecast_marks.c.id.in_(rows.among("marks")))


def mark_windows(connection: Connection, shop_id: int, vehicle_ids: Collection[int]) -> None:
    """Note that the due windows of these cars are others."""
    connection.execute(_MARK, [{"shop_id": shop_id, "vehicle_id": one} for one in vehicle_ids])


def forecast_marks(connection: Connection, shop_id: int, most: int | None = None) -> list[tuple[int, int]]:
    """The oldest marks of what is known of cars, at most so many: (mark, car)."""
    table = tables.forecast_marks
    query = select(table.c.id, table.c.vehicle_id).where(table.c.shop_id == shop_id).order_by(table.c.id).limit(most)
    return [(mark, car) for mark, car in connection.execute(query)]


def forecast_marks_of(connection: Connection, vehicle_ids: Collection[int]) -> dict[int, list[int]]:
    """The marks of what is known of these cars, by the car."""
    table = tables.forecast_marks
    found: dict[int, list[int]] = {}
    for some in some_at_a_time(vehicle_ids):
        query = select(table.c.id, table.c.vehicle_id).where(table.c.vehicle_id.in_(some))
        for mark, car in connection.execute(query):
            found.setdefault(car, []).append(mark)
    return found


def plan_marks_of_cars(connection: Connection, vehicle_ids: Collection[int]) -> list[int]:
    """The marks of what planning looks at of these cars."""
    table, found = tables.plan_marks, list[int]()
    for some in some_at_a_time(vehicle_ids):
        found += connection.execute(select(table.c.id).where(table.c.vehicle_id.in_(some))).scalars()
    return found


def plan_marks(connection: Connection, shop_id: int) -> tuple[list[int], set[int]]:
    """All marks of what planning looks at, and the phones that they are about as persons and cars stand now."""
    table, used, tied = tables.plan_marks, tables.person_phones, tables.ties
    mine = table.c.shop_id == shop_id
    of_persons = table.join(used, used.c.person_id == table.c.person_id)
    of_cars = table.join(tied, tied.c.vehicle_id == table.c.vehicle_id).join(used, used.c.person_id == tied.c.person_id)
    is_now = used.c.to_on.is_(None)
    queries = (
        select(table.c.phone_id).where(mine, table.c.phone_id.is_not(None)),
        select(used.c.phone_id).select_from(of_persons).where(mine, is_now),
        select(used.c.phone_id).select_from(of_cars).where(mine, is_now, tied.c.to_on.is_(None)),
    )
    marks = list(connection.execute(select(table.c.id).where(mine)).scalars())
    return marks, {one for query in queries for one in connection.execute(query.distinct()).scalars()}


def take_out_forecast_marks(connection: Connection, marks: Collection[int]) -> None:
    """Take out marks of what is known of cars, by their ids."""
    for some in some_at_a_time(marks):
        connection.execute(_TAKE_OUT, {"marks": some})


def take_out_plan_marks(connection: Connection, marks: Collection[int]) -> None:
    """The same of what planning looks at."""
    for some in some_at_a_time(marks):
        connection.execute(delete(tables.plan_marks).where(tables.plan_marks.c.id.in_(some)))


def some_at_a_time(ids: Collection[int]) -> Iterator[list[int]]:
    """Ids in their order, as many as one statement takes."""
    every = sorted(ids)
    for begin in range(0, len(every), _AT_ONCE):
        yield every[begin : begin + _AT_ONCE]
