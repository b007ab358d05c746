"""Rows as people see them: names and words in place of ids, for every page that lists alerts, bookings or readings."""

from __future__ import annotations

import json
from collections.abc import Iterable
from dataclasses import dataclass, fields
from datetime import date, datetime
from typing import Any

from sqlalchemy import Connection, select

from followup.core.booking import ICALENDAR_STATUS
from followup.core.forecast.first_due import FirstDue, first_due
from followup.core.forecast.window import DueWindow
from followup.core.inspection import Reading
from followup.core.item import Catalogue
from followup.core.items import Measured, catalogue_of, measured
from followup.core.replies.contract import TimeWindow
from followup.core.shop import Shop
from followup.storage import alerts, inbox, inspections, people, rows, staff, tables
from followup.storage.rows import Row

ItemAt = tuple[str, str]


@dataclass(frozen=True)
class Whom:
    """The customer and the car that a row is about; what is not known is None."""

    phone_id: int | None = None
    number: str | None = None
    line: str | None = None
    person_id: int | None = None
    name: str | None = None
    vehicle_id: int | None = None
    car: str | None = None
    plate: str | None = None


def whom(connection: Connection, shop_id: int, row: Row) -> Whom:
    """Customer and car of a row with `phone_id`, `person_id` and `vehicle_id` (each may be missing or None).

    Where the row names only a phone, a person or a car, the others are those that are tied to it now.
    """
    vehicle = people.load_vehicle(connection, shop_id, row["vehicle_id"]) if row.get("vehicle_id") else None
    person = people.load_person(connection, shop_id, row["person_id"]) if row.get("person_id") else None
    phone = people.load_phone(connection, shop_id, row["phone_id"]) if row.get("phone_id") else None
    # Whom the row names and who was deleted is nobody, not who has the car now.
    is_unnamed = not row.get("person_id")
    if person is None and is_unnamed and phone is not None:
        person = next(iter(people.persons_of_phone(connection, phone["id"])), None)
    if person is None and is_unnamed and vehicle is not None:
        person = next(iter(people.drivers_of_vehicle(connection, vehicle["id"])), None)
    if phone is None and person is not None:
        phone = next(iter(people.phones_of_person(connection, person["id"])), None)
    return Whom(
        phone_id=phone["id"] if phone else None,
        number=phone["number"] if phone else None,
        line=phone["line"] if phone else None,
        person_id=person["id"] if person else None,
        name=person["name"] if person else None,
        vehicle_id=vehicle["id"] if vehicle else None,
        car=car_words(vehicle) if vehicle else None,
        plate=people.vehicle_of(vehicle).plate if vehicle else None,
    )


_WINDOW_FIELDS = {one.name for one in fields(DueWindow)}


def window_of(row: Row) -> DueWindow:
    """The due window of a kept row."""
    return DueWindow.from_json({name: value for name, value in row["body"].items() if name in _WINDOW_FIELDS})


def first_due_of(found: Iterable[Row], shop: Shop, today: date) -> FirstDue | None:
    """When the first of a car's windows is due; what the shop tops off free is no work and does not count."""
    catalogue = catalogue_of(shop)
    off = {code for code, item in catalogue.items() if not item.is_in_use}
    free = {code for code in shop.free_services if code in catalogue and catalogue[code].is_top_off_free}
    return first_due([window_of(row) for row in found if row["item"] not in free | off], today)


def car_words(vehicle: Row) -> str:
    """How staff call the car: its label, or the shop's own id for it."""
    return people.vehicle_of(vehicle).label or str(vehicle["code"])


@dataclass(frozen=True)
class Told:
    """A member of staff who was told of an alert, and how."""

    name: str
    at: datetime
    how: str


@dataclass(frozen=True)
class SeenAlert:
    """An alert; `verbatim` is what the customer wrote, `says` what the program adds; `calling` who pressed it."""

    id: int
    kind: str
    whom: Whom
    says: str
    verbatim: str | None
    raised_at: datetime
    told: tuple[Told, ...]
    calling: str | None
    calling_at: datetime | None
    closed_at: datetime | None
    outcome: str | None
    request_id: int | None


def see_alert(connection: Connection, shop_id: int, row: Row) -> SeenAlert:
    """An alert with its customer, car, verbatim words and who was told."""
    inbound = inbox.load_inbound(connection, row["inbound_id"]) if row["inbound_id"] else None
    return SeenAlert(
        id=row["id"],
        kind=row["kind"],
        whom=whom(connection, shop_id, row),
        says=row["says"],
        verbatim=inbound["body"] if inbound else None,
        raised_at=row["raised_at"],
        told=tuple(
            Told(staff_name(connection, shop_id, one["staff_id"]), one["at"], one["how"])
            for one in alerts.tellings(connection, row["id"])
        ),
        calling=staff_name(connection, shop_id, row["acknowledged_by"]) if row["acknowledged_by"] else None,
        calling_at=row["acknowledged_at"],
        closed_at=row["closed_at"],
        outcome=row["outcome"],
        request_id=row["request_id"],
    )


def staff_name(connection: Connection, shop_id: int, staff_id: int) -> str:
    """The name of a member of staff."""
    member = staff.member(connection, shop_id, staff_id)
    return member.name if member else "somebody who has left"


@dataclass(frozen=True)
class SeenBooking:
    """A booking request or a booking. `offered` are wall times at the shop; `status` is iCalendar's word, in small
    letters; `wanted` and `avoid` are the windows that were understood, `certainty` how surely."""

    id: int
    version: int
    state: str
    status: str
    whom: Whom
    came_from: str
    verbatim: str
    items: tuple[ItemAt, ...]
    needs: tuple[str, ...]
    hours: dict[str, float]
    parts: str
    parts_on: date | None
    payer: str
    wanted: tuple[TimeWindow, ...]
    avoid: tuple[TimeWindow, ...]
    meanings: tuple[str, ...]
    certainty: float | None
    language: str | None
    slot_at: datetime | None
    offered: tuple[datetime, ...]
    offered_until: datetime | None
    asked_at: datetime
    closed_because: str | None
    replaces_id: int | None


def see_booking(connection: Connection, shop_id: int, row: Row) -> SeenBooking:
    """A booking request with its customer and car, and what was understood."""
    understood: dict[str, Any] = row["understood"] or {}
    return SeenBooking(
        id=row["id"],
        version=row["version"],
        state=row["state"],
        status=ICALENDAR_STATUS[row["state"]].lower(),
        whom=whom(connection, shop_id, row),
        came_from=row["came_from"],
        verbatim=row["verbatim"],
        items=tuple((item, position) for item, position in row["items"]),
        needs=tuple(row["needs"]),
        hours=dict(row["hours"]),
        parts=row["parts"],
        parts_on=row["parts_on"],
        payer=row["payer"],
        wanted=tuple(TimeWindow.model_validate(one) for one in row["wanted"]),
        avoid=tuple(TimeWindow.model_validate(one) for one in row["avoid"]),
        meanings=tuple(understood.get("meanings", ())),
        certainty=understood.get("certainty"),
        language=understood.get("language"),
        slot_at=row["slot_at"],
        offered=tuple(datetime.fromisoformat(one) for one in row["offered"]),
        offered_until=row["offered_until"],
        asked_at=row["asked_at"],
        closed_because=row["closed_because"],
        replaces_id=row["replaces_id"],
    )


@dataclass(frozen=True)
class SeenReading:
    """The last reading of an item at a position: its number as it was entered, or its words; `not_checked` why not."""

    item: str
    position: str
    on: date
    measured: Measured | None
    reading: Reading


def last_readings(connection: Connection, vehicle_id: int, catalogue: Catalogue) -> dict[ItemAt, SeenReading]:
    """The last reading of each item and position of a car that says something, by (item, position)."""
    found: dict[ItemAt, SeenReading] = {}
    for row in inspections.bodies_of_vehicle(connection, vehicle_id):
        for told in row["body"].get("readings", []):
            item = catalogue.get(told["item"])
            if item is None:
                continue
            reading = Reading.model_validate_json(json.dumps(told))
            at = (reading.item, reading.position)
            if reading.not_checked is not None and at in found:
                continue
            found[at] = SeenReading(*at, row["inspected_on"], measured(item, reading), reading)
    return found


def text_rows(connection: Connection, shop_id: int, state: str, since: datetime) -> list[Row]:
    """Texts to customers in that state that were planned since then, the oldest first."""
    table = tables.texts
    query = select(table).where(
        table.c.shop_id == shop_id, table.c.state == state, table.c.kind != "alert", table.c.planned_at >= since
    )
    return rows.every(connection, query.order_by(table.c.id))
