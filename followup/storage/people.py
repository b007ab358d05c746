"""Persons, their phones, cars and the ties between them."""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import asdict, fields
from datetime import date, datetime
from typing import Any

from sqlalchemy import Connection, select, update

from followup.core.customer import Person, Phone
from followup.core.vehicle import Vehicle
from followup.storage import rows, tables
from followup.storage.rows import Row

_VEHICLE_FIELDS = {one.name for one in fields(Vehicle)}
_PHONES = select(tables.phones).where(
    tables.phones.c.shop_id == rows.given("shop_id"), tables.phones.c.number.in_(rows.among("numbers"))
)
_USES = tables.person_phones.c
_TIES = (
    select(tables.persons)
    .add_columns(_USES.phone_id, _USES.to_on, _USES.ended_because)
    .select_from(tables.persons.join(tables.person_phones, _USES.person_id == tables.persons.c.id))
    .where(_USES.phone_id.in_(rows.among("phone_ids")))
    .order_by(tables.persons.c.id)
)
_HAS = tables.ties.c
_ALL_CARS = (
    select(tables.vehicles)
    .add_columns(_HAS.person_id)
    .select_from(tables.vehicles.join(tables.ties, _HAS.vehicle_id == tables.vehicles.c.id))
    .where(_HAS.to_on.is_(None), _HAS.role != "payer")
    .order_by(tables.vehicles.c.id)
)
_CARS = _ALL_CARS.where(_HAS.shop_id == rows.given("shop_id"))
_CARS_OF_PERSONS = _ALL_CARS.where(
    rows.beside(_HAS.shop_id) == rows.given("shop_id"), _HAS.person_id.in_(rows.among("person_ids"))
)

# A database takes only so many values in one statement.
_AT_ONCE = 1_000


def phone_of(row: Row) -> Phone:
    """The plain value of a phone's row."""
    return Phone(
        row["id"], row["number"], tuple(row["zones"]), row["line"], row["language"], row["bad_because"],
        row["held_because"],
    )  # fmt: skip


def person_of(row: Row) -> Person:
    """The plain value of a person's row."""
    return Person(**{one.name: row[one.name] for one in fields(Person)})


def vehicle_of(row: Row) -> Vehicle:
    """The plain value of a vehicle's row."""
    facts = {key: value for key, value in row["facts"].items() if key in _VEHICLE_FIELDS}
    first_used = facts.get("first_used_on")
    return Vehicle(
        **{**facts, "code": row["code"], "first_used_on": date.fromisoformat(first_used) if first_used else None}
    )


def keep_phone(
    connection: Connection, shop_id: int, number: str, zones: tuple[str, ...], line: str, now: datetime
) -> int:
    """The id of that number at the shop, added if it is new. A new number starts without consent."""
    found = find_phone(connection, shop_id, number)
    if found:
        return int(found["id"])
    return rows.add(
        connection, tables.phones, shop_id=shop_id, number=number, zones=list(zones), line=line, created_at=now
    )


def find_phone(connection: Connection, shop_id: int, number: str) -> Row | None:
    """The phone's row by its E.164 number."""
    return rows.first(connection, rows.equal(tables.phones, "shop_id", "number"), shop_id=shop_id, number=number)


def change_phone(connection: Connection, phone_id: int, **values: Any) -> None:
    """Change what is known of a phone (language, bad_because, line)."""
    rows.change(connection, tables.phones, phone_id, **values)


def keep_person(
    connection: Connection,
    shop_id: int,
    code: str,
    name: str | None,
    language: str | None,
    told_on: date,
    now: datetime,
    *,
    is_fleet: bool = False,
) -> int:
    """The id of that customer, added or brought up to date; older news never overwrites newer."""
    table = tables.persons
    found = rows.first(connection, select(table).where(table.c.shop_id == shop_id, table.c.code == code))
    if found is None:
        return rows.add(
            connection, table, shop_id=shop_id, code=code, name=name, language=language, told_on=told_on,
            created_at=now, is_fleet=is_fleet,
        )  # fmt: skip
    if found["told_on"] is None or told_on >= found["told_on"]:
        news = {key: value for key, value in (("name", name), ("language", language)) if value is not None}
        rows.change(connection, table, found["id"], told_on=told_on, **news)
    return int(found["id"])


def keep_vehicle(connection: Connection, shop_id: int, vehicle: Vehicle, told_on: date, now: datetime) -> int:
    """The id of that car, added or brought up to date; what is not told stays as it was."""
    table = tables.vehicles
    told = {key: _plain(value) for key, value in asdict(vehicle).items() if value is not None and key != "code"}
    found = rows.first(connection, select(table).where(table.c.shop_id == shop_id, table.c.code == vehicle.code))
    if found is None:
        facts = {**told, "told_on": told_on.isoformat()}
        return rows.add(connection, table, shop_id=shop_id, code=vehicle.code, facts=facts, created_at=now)
    is_news = told_on.isoformat() >= found["facts"].get("told_on", "")
    facts = {**found["facts"], **told} if is_news else {**told, **found["facts"]}
    facts["told_on"] = max(told_on.isoformat(), found["facts"].get("told_on", ""))
    if facts != found["facts"]:
        rows.change(connection, table, found["id"], facts=facts)
    return int(found["id"])


def _plain(value: Any) -> Any:
    return value.isoformat() if isinstance(value, date) else value


def tie_phone(connection: Connection, shop_id: int, person_id: int, phone_id: int, from_on: date) -> None:
    """The person uses the phone from that day on."""
    rows.add_new(
        connection, tables.person_phones, shop_id=shop_id, person_id=person_id, phone_id=phone_id, from_on=from_on
    )


def tie_vehicle(
    connection: Connection, shop_id: int, person_id: int, vehicle_id: int, role: str, from_on: date
) -> None:
    """The person owns, drives or pays for the car from that day on."""
    rows.add_new(
        connection, tables.ties, shop_id=shop_id, person_id=person_id, vehicle_id=vehicle_id, role=role, from_on=from_on
    )


def end_phone_ties(connection: Connection, phone_id: int, on: date, because: str) -> None:
    """The number no longer belongs to whom we thought: nothing leaves on that tie until a person looked."""
    table = tables.person_phones
    connection.execute(
        update(table)
        .where(table.c.phone_id == phone_id, table.c.to_on.is_(None))
        .values(to_on=on, ended_because=because)
    )


def phones_of_numbers(connection: Connection, shop_id: int, numbers: Collection[str]) -> dict[str, Row]:
    """Those of these E.164 numbers that the shop has, with their rows."""
    return {row["number"]: row for row in rows.every(connection, _PHONES, shop_id=shop_id, numbers=numbers)}


def ties_of_phones(connection: Connection, phone_ids: Collection[int]) -> dict[int, list[Row]]:
    """Persons who use each phone or used it, with `phone_id`, when and why that ended; who uses it now last."""
    ties = rows.every(connection, _TIES, phone_ids=phone_ids)
    return _by(sorted(ties, key=lambda one: one["to_on"] or date.max), "phone_id")


def end_vehicle_ties(connection: Connection, vehicle_id: int, person_ids: list[int], on: date, because: str) -> None:
    """These persons no longer have the car."""
    table = tables.ties
    connection.execute(
        update(table)
        .where(table.c.vehicle_id == vehicle_id, table.c.person_id.in_(person_ids), table.c.to_on.is_(None))
        .values(to_on=on, ended_because=because)
    )


def persons_of_phone(connection: Connection, phone_id: int) -> list[Row]:
    """Persons who use the phone now."""
    join = tables.persons.join(tables.person_phones, tables.person_phones.c.person_id == tables.persons.c.id)
    query = (
        select(tables.persons)
        .select_from(join)
        .where(tables.person_phones.c.phone_id == phone_id, tables.person_phones.c.to_on.is_(None))
    )
    return rows.every(connection, query.order_by(tables.persons.c.id))


def phones_of_person(connection: Connection, person_id: int) -> list[Row]:
    """Phones that the person uses now."""
    join = tables.phones.join(tables.person_phones, tables.person_phones.c.phone_id == tables.phones.c.id)
    query = (
        select(tables.phones)
        .select_from(join)
        .where(tables.person_phones.c.person_id == person_id, tables.person_phones.c.to_on.is_(None))
    )
    return rows.every(connection, query.order_by(tables.phones.c.id))


def numbers_of_vehicle(connection: Connection, vehicle_id: int) -> list[str]:
    """The numbers (E.164) of all who own or drive the car now."""
    return numbers_of_vehicles(connection, [vehicle_id])


def numbers_of_vehicles(connection: Connection, vehicle_ids: Collection[int]) -> list[str]:
    """The numbers (E.164) of all who own or drive one of the cars now, each once, in the order of the store."""
    used, tied, phones = tables.person_phones, tables.ties, tables.phones
    theirs = used.join(tied, used.c.person_id == tied.c.person_id).join(phones, phones.c.id == used.c.phone_id)
    query = select(phones.c.id, phones.c.number).select_from(theirs)
    query = query.where(tied.c.to_on.is_(None), used.c.to_on.is_(None)).distinct()
    found: dict[int, str] = {}
    every = sorted(vehicle_ids)
    for begin in range(0, len(every), _AT_ONCE):
        some = query.where(tied.c.vehicle_id.in_(every[begin : begin + _AT_ONCE]))
        found.update((phone_id, number) for phone_id, number in connection.execute(some))
    return [found[phone_id] for phone_id in sorted(found)]


def vehicles_of_persons(connection: Connection, person_ids: list[int]) -> list[Row]:
    """Cars that these persons own or drive now, each once."""
    tied = select(tables.ties.c.vehicle_id).where(
        tables.ties.c.person_id.in_(person_ids), tables.ties.c.to_on.is_(None), tables.ties.c.role != "payer"
    )
    # Not DISTINCT over a join: PostgreSQL cannot compare the cars' facts, which are JSON.
    query = select(tables.vehicles).where(tables.vehicles.c.id.in_(tied))
    return rows.every(connection, query.order_by(tables.vehicles.c.id))


def drivers_of_vehicle(connection: Connection, vehicle_id: int) -> list[Row]:
    """Persons who own or drive the car now."""
    join = tables.persons.join(tables.ties, tables.ties.c.person_id == tables.persons.c.id)
    query = (
        select(tables.persons)
        .select_from(join)
        .where(tables.ties.c.vehicle_id == vehicle_id, tables.ties.c.to_on.is_(None), tables.ties.c.role != "payer")
    )
    return rows.every(connection, query.distinct().order_by(tables.persons.c.id))


def load_vehicle(connection: Connection, shop_id: int, vehicle_id: int) -> Row | None:
    """The vehicle's row, if it is this shop's."""
    return rows.first(connection, rows.equal(tables.vehicles, "id", "shop_id"), id=vehicle_id, shop_id=shop_id)


def load_person(connection: Connection, shop_id: int, person_id: int) -> Row | None:
    """The person's row, if it is this shop's and was not forgotten."""
    table = tables.persons
    mine = (table.c.id == person_id, table.c.shop_id == shop_id, table.c.forgotten_at.is_(None))
    return rows.first(connection, select(table).where(*mine))


def load_phone(connection: Connection, shop_id: int, phone_id: int) -> Row | None:
    """The phone's row, if it is this shop's and was not forgotten."""
    table = tables.phones
    mine = (table.c.id == phone_id, table.c.shop_id == shop_id, table.c.forgotten_at.is_(None))
    return rows.first(connection, select(table).where(*mine))


def all_phones(connection: Connection, shop_id: int) -> list[Row]:
    """Every phone of the shop."""
    table = tables.phones
    query = select(table).where(table.c.shop_id == shop_id, table.c.forgotten_at.is_(None)).order_by(table.c.id)
    return rows.every(connection, query)


def all_vehicles(connection: Connection, shop_id: int) -> list[Row]:
    """Every car of the shop."""
    table = tables.vehicles
    return rows.every(connection, select(table).where(table.c.shop_id == shop_id).order_by(table.c.id))


def find_vehicle(connection: Connection, shop_id: int, code: str) -> Row | None:
    """The vehicle's row by the shop's own id for it."""
    return rows.first(connection, rows.equal(tables.vehicles, "shop_id", "code"), shop_id=shop_id, code=code)


def find_person(connection: Connection, shop_id: int, code: str) -> Row | None:
    """The person's row by the shop's own id for the customer."""
    return rows.first(connection, rows.equal(tables.persons, "shop_id", "code"), shop_id=shop_id, code=code)


def all_persons(connection: Connection, shop_id: int) -> list[Row]:
    """Every person of the shop, by name."""
    table = tables.persons
    query = select(table).where(table.c.shop_id == shop_id, table.c.forgotten_at.is_(None))
    query = query.order_by(table.c.name, table.c.id)
    return rows.every(connection, query)


def change_person(connection: Connection, person_id: int, **values: Any) -> None:
    """Change what is known of a person."""
    rows.change(connection, tables.persons, person_id, **values)


def persons_by_phone(connection: Connection, shop_id: int) -> dict[int, list[Row]]:
    """Persons by the phones that they use now, of the whole shop."""
    link = tables.person_phones
    join = tables.persons.join(link, link.c.person_id == tables.persons.c.id)
    query = select(tables.persons).add_columns(link.c.phone_id).select_from(join)
    query = query.where(link.c.shop_id == shop_id, link.c.to_on.is_(None))
    return _by(rows.every(connection, query.order_by(tables.persons.c.id)), "phone_id")


def vehicles_by_person(connection: Connection, shop_id: int, person_ids: list[int] | None) -> dict[int, list[Row]]:
    """Cars by the persons who own or drive them now; of these persons, or of all of the shop."""
    if person_ids is None:
        return _by(rows.every(connection, _CARS, shop_id=shop_id), "person_id")
    return _by(rows.every(connection, _CARS_OF_PERSONS, shop_id=shop_id, person_ids=person_ids), "person_id")


def _by(found: list[Row], key: str) -> dict[int, list[Row]]:
    grouped: dict[int, list[Row]] = {}
    for row in found:
        grouped.setdefault(row[key], []).append(row)
    return grouped
