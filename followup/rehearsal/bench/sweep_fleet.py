"""A group of many shops for the bench of the sweep: one is made by the program's own workflows, the others are its
copies, row by row within the database. So a million cars stand there in minutes, with windows as they really are.

What pages alone show of a window's reasons (`due_evidence`) is left out of the copies: no sweep reads it.
"""

from __future__ import annotations

import json
from collections.abc import Callable
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Any

from sqlalchemy import ColumnElement, Connection, Table, bindparam, delete, func, literal, select, text, update

from followup.rehearsal.years.crowd import MOST, phone_of
from followup.rehearsal.years.fleet import LivingFleet
from followup.rehearsal.years.opening import begins_at
from followup.storage import looks, shops, staff, tables, windows
from followup.storage.store import Store
from followup.workflows.forecast_windows import forecast_windows
from followup.workflows.keep_inspections import keep_inspections
from followup.workflows.plan_texts import plan_texts

# The cars of one shop, at most.
CARS_A_SHOP = 500
# So many days are planned and sent in the first shop, so that the day's sweep is an ordinary one.
_LIVED_DAYS = 8
_SECRET = "only-for-the-bench"
# In the order in which they refer to each other; what is not listed is empty in the first shop.
_COPIED = (
    tables.phones, tables.persons, tables.person_phones, tables.vehicles, tables.ties, tables.consents, tables.visits,
    tables.inspections, tables.work_done, tables.recommendations, tables.due_windows, tables.forecast_vehicles,
    tables.reasons, tables.texts, tables.window_uses,
)  # fmt: skip
# Unique over all shops, so each copy has its own.
_ITS_OWN = ("public_id",)


@dataclass(frozen=True)
class Group:
    """How many cars and present windows there are, and the instant of the day's sweep."""

    shops: int
    cars: int
    windows: int
    now: datetime


def build_group(store: Store, vehicles: int, seed: int, progress: Callable[[int], object]) -> Group:
    """Fill an empty database with about so many cars; progress is told of each shop."""
    cars = min(vehicles, CARS_A_SHOP)
    now = _first_shop(store, cars, seed)
    progress(1)
    wanted = max(vehicles // cars, 1)
    with store.read() as connection:
        spans = {table: _last_id(connection, table) for table in _COPIED}
    for number in range(1, wanted):
        with store.write() as connection:
            _copy(connection, number, spans, now)
        progress(1)
    with store.write() as connection:
        _go_on_counting(connection)
        connection.execute(text("ANALYZE"))
        made = tables.due_windows
        query = select(func.count()).select_from(made).where(made.c.is_current.is_(True))
        count = int(connection.execute(query).scalar_one())
    return Group(wanted, wanted * cars, count, now + timedelta(days=1))


def _first_shop(store: Store, cars: int, seed: int) -> datetime:
    """A shop with a year on file, whose invites of the first days have left."""
    fleet = LivingFleet.drawn(cars, 4, seed)
    lines = sorted(fleet.live_before(), key=lambda line: str(line["inspected_at"]))
    now = begins_at(fleet) + timedelta(hours=5)
    with store.write() as connection:
        shop_id = shops.add_shop(connection, now, "s0", _facts(0))
        staff.add(connection, shop_id, "sam", "Sam Field", "owner", "no password", now)
    told = (json.dumps(line) for line in lines)
    for kept in keep_inspections(store, shop_id, told, now, "a bench", _SECRET, accepts_doubtful=True):
        if kept.outcome != "new":
            raise ValueError(f"a line of the fleet was not kept: {kept}")
    forecast_windows(store, shop_id, now)
    texts = tables.texts
    for day in range(_LIVED_DAYS):
        # On the first day all who are due at once are written to, as never again.
        plan_texts(store, shop_id, now + timedelta(days=day))
        with store.write() as connection:
            planned = update(texts).where(texts.c.state == "planned")
            connection.execute(planned.values(state="sent", sent_at=texts.c.due_at))
    return now + timedelta(days=_LIVED_DAYS - 1)


def _facts(number: int) -> dict[str, str]:
    # The other end of the crowd's numbers: no customer has them.
    own = phone_of(MOST - 1 - number)
    return {"name": f"Shop {number}", "zone": "America/Chicago", "phone": own, "texts_from": own, "state": "IL"}


def _last_id(connection: Connection, table: Table) -> int:
    return int(connection.execute(select(func.coalesce(func.max(table.c.id), 0))).scalar_one())


def _copy(connection: Connection, number: int, spans: dict[Table, int], now: datetime) -> None:
    """The first shop once more, each row by its id and a multiple of how many there are."""
    shop_id = shops.add_shop(connection, now, f"s{number}", _facts(number))
    by_name = {table.name: span for table, span in spans.items()}
    for table in _COPIED:
        told = [_copied(column, number, by_name, shop_id) for column in table.columns]
        query = select(*told).where(table.c.shop_id == 1, table.c.id <= spans[table])
        connection.execute(table.insert().from_select([column.name for column in table.columns], query))
    _copy_looks(connection, number, by_name, shop_id)
    # What is known of a car names its rows, so that a copy would be news.
    known = windows.known_of_cars(connection, shop_id, windows.rules_of_forecast(connection, shop_id))
    cars = tables.forecast_vehicles
    noted = update(cars).where(cars.c.vehicle_id == bindparam("car")).values(known=bindparam("word"))
    connection.execute(noted, [{"car": car, "word": word} for car, word in known.items()])


def _copy_looks(connection: Connection, number: int, spans: dict[str, int], shop_id: int) -> None:
    """What was not looked at since it changed is marked in the copy as it is in the first shop, and nothing else: that
    it was copied is no change of a customer."""
    marked, looked = tables.plan_marks, tables.plan_looks
    for table in (marked, tables.forecast_marks):
        connection.execute(delete(table).where(table.c.shop_id == shop_id))
    of = {"phone_id": "phones", "person_id": "persons", "vehicle_id": "vehicles"}
    told = [marked.c[column] + number * spans[name] for column, name in of.items()]
    query = select(literal(shop_id), *told).where(marked.c.shop_id == 1)
    connection.execute(marked.insert().from_select(["shop_id", *of], query))
    word = looks.word_of(connection, shops.load_shop(connection, shop_id), needs_registration=False)
    first = looked.alias()
    theirs = select(first.c.look_at).where(first.c.phone_id == looked.c.phone_id - number * spans["phones"])
    kept = update(looked).where(looked.c.shop_id == shop_id)
    connection.execute(kept.values(word=word, look_at=theirs.scalar_subquery()))


def _copied(column: Any, number: int, spans: dict[str, int], shop_id: int) -> ColumnElement[Any]:
    if column.name == "shop_id":
        return literal(shop_id)
    if column.primary_key:
        return column + number * spans[column.table.name]  # type: ignore[no-any-return]  # a column of any type
    if column.name in _ITS_OWN:
        return column + f"-{number}"  # type: ignore[no-any-return]  # a column of any type
    refers_to = next((one.column.table.name for one in column.foreign_keys), None)
    return column if refers_to not in spans else column + number * spans[refers_to]  # type: ignore[no-any-return]  # a column of any type


def _go_on_counting(connection: Connection) -> None:
    """PostgreSQL counts ids by itself only where it gave them."""
    if connection.dialect.name == "postgresql":
        for table in _COPIED:
            name = f"'{table.name}'"
            connection.execute(
                text(f"SELECT setval(pg_get_serial_sequence({name}, 'id'), (SELECT max(id) FROM {table.name}) + 1)")
            )


def tell_odometers(store: Store, group: Group, every: int) -> int:
    """The day's news: of one in so many cars an odometer reading is told; how many."""
    cars, told = tables.inspections, tables.odometer_tellings
    query = select(cars.c.shop_id, cars.c.vehicle_id, func.max(cars.c.odometer_miles))
    query = query.where(cars.c.vehicle_id % every == 0).group_by(cars.c.shop_id, cars.c.vehicle_id)
    known = {"on": group.now.date(), "told_by": "a bench", "told_at": group.now}
    with store.write() as connection:
        found = [
            {"shop_id": shop_id, "vehicle_id": car, "miles": miles + 700.0, **known}
            for shop_id, car, miles in connection.execute(query)
        ]
        if found:
            connection.execute(told.insert(), found)
    return len(found)
