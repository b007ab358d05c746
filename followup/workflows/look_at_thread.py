"""Look at the thread with one phone: what was written, why each text left, what was understood, and what may leave.

Reads only.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime
from typing import Any

from followup.core.consent import ConsentEntry, ConsentStanding
from followup.core.conversation.state import PERSON_STAYS
from followup.core.planning.number_rules import by_a_person, may_text
from followup.core.planning.picture import NumberPicture
from followup.core.text import reason
from followup.core.wall import day_of
from followup.storage import alerts, consents, inbox, inspections, numbers, outbox, people, requests, seen, shops
from followup.storage.rows import Row
from followup.storage.seen import SeenAlert, SeenBooking
from followup.storage.store import Connection, Store


@dataclass(frozen=True)
class Line:
    """One text. Of ours: `reason`, `kind`, `state`, `delivery`, `because` (why it was written), `state_because`.

    Of theirs: `meanings`, `certainty`, `outcome`. `text` is "" where the words are put together as it leaves.
    """

    at: datetime
    who: str
    is_theirs: bool
    text: str
    language: str
    reason: str = ""
    kind: str = ""
    state: str = ""
    delivery: str | None = None
    because: str = ""
    state_because: str | None = None
    meanings: tuple[str, ...] = ()
    certainty: float | None = None
    pictures: int = 0
    inbound_id: int | None = None


@dataclass(frozen=True)
class Customer:
    """A person who uses the phone."""

    id: int
    name: str | None
    language: str | None
    paused_until: date | None
    is_deceased: bool
    is_fleet: bool


@dataclass(frozen=True)
class Car:
    """A car of theirs with its last odometer."""

    id: int
    label: str
    plate: str | None
    odometer_miles: float | None
    read_on: date | None


@dataclass(frozen=True)
class ThreadPage:
    """The thread. `silent_because` says why the machine does not answer here; `may_not_write` why nobody may."""

    phone_id: int
    number: str
    line: str
    bad_because: str | None
    held_because: str | None
    persons: tuple[Customer, ...]
    cars: tuple[Car, ...]
    lines: tuple[Line, ...]
    standing: ConsentStanding
    ledger: tuple[ConsentEntry, ...]
    silent_because: str | None
    has_symptom: bool
    may_not_write: str | None
    alerts: tuple[SeenAlert, ...]
    bookings: tuple[SeenBooking, ...]
    today: date


def look_at_thread(
    store: Store,
    shop_id: int,
    phone_id: int,
    now: datetime,
    *,
    needs_registration: bool = False,
    secret: str | None = None,
) -> ThreadPage | None:
    """The thread with a phone; None where the shop has none of that id."""
    with store.read() as connection:
        phone = people.load_phone(connection, shop_id, phone_id)
        if phone is None:
            return None
        persons = people.persons_of_phone(connection, phone_id)
        ids = [one["id"] for one in persons]
        state, _ = inbox.conversation_of(connection, phone_id)
        shop = shops.load_shop(connection, shop_id)
        number = numbers.number_picture(
            connection, shop, phone["number"], now, needs_registration=needs_registration, secret=secret
        )
        about = [row for row in alerts.alerts_of_phone(connection, phone_id) if _is_open(row)]
        booked = requests.requests_of_persons(connection, ids) if ids else []
        cars = people.vehicles_of_persons(connection, ids) if ids else []
        return ThreadPage(
            phone_id=phone_id,
            number=phone["number"],
            line=phone["line"],
            bad_because=phone["bad_because"],
            held_because=phone["held_because"],
            persons=tuple(_customer(row) for row in persons),
            cars=tuple(_car(connection, row) for row in cars),
            lines=_lines(connection, shop_id, phone_id),
            standing=number.consent,
            ledger=tuple(consents.ledger(connection, shop_id, phone["number"], secret)),
            silent_because=_silent_because(state, now),
            has_symptom=bool(state.get("open_symptom")),
            may_not_write=_may_not_write(number, now),
            alerts=tuple(seen.see_alert(connection, shop_id, row) for row in about),
            bookings=tuple(seen.see_booking(connection, shop_id, row) for row in booked[:10]),
            today=day_of(now, shop.zone),
        )


def _is_open(row: Row) -> bool:
    """A request's own alert is the request, which is shown with the bookings."""
    return row["closed_at"] is None and not (row["kind"] == "request" and row["request_id"])


def _customer(row: Row) -> Customer:
    return Customer(row["id"], row["name"], row["language"], row["paused_until"], row["is_deceased"], row["is_fleet"])


def _car(connection: Connection, row: Row) -> Car:
    known = [
        (one["inspected_on"], one["odometer_miles"])
        for one in inspections.bodies_of_vehicle(connection, row["id"])
        if one["odometer_miles"] is not None
    ]
    known += [(one["on"], one["miles"]) for one in inspections.odometers_told(connection, row["id"])]
    read_on, miles = max(known, default=(None, None))
    return Car(row["id"], seen.car_words(row), people.vehicle_of(row).plate, miles, read_on)


def _silent_because(state: dict[str, Any], now: datetime) -> str | None:
    if state.get("open_symptom"):
        return "a symptom is open: only its outcome gives the thread back"
    if state.get("is_frozen"):
        return "a serious matter is open"
    person_at = state.get("person_at")
    if person_at and now - datetime.fromisoformat(person_at) < PERSON_STAYS:
        return "a person has it, for 24 hours after the last word"
    return None


def _may_not_write(number: NumberPicture, now: datetime) -> str | None:
    found = may_text(by_a_person(number), number, now)
    return None if found.next_at else f"{found.says} Call instead."


def _lines(connection: Connection, shop_id: int, phone_id: int) -> tuple[Line, ...]:
    ours = [_our_line(connection, shop_id, row) for row in outbox.texts_of_phone(connection, phone_id)]
    theirs = [_their_line(row) for row in inbox.inbound_of_phone(connection, phone_id)]
    return tuple(sorted([*ours, *theirs], key=lambda line: (line.at, not line.is_theirs)))


def _our_line(connection: Connection, shop_id: int, row: Row) -> Line:
    about = reason(row["reason"])
    author = seen.staff_name(connection, shop_id, row["author_id"]) if row["author_id"] else "by itself"
    return Line(
        at=row["sent_at"] or row["in_flight_at"] or row["due_at"],
        who=author,
        is_theirs=False,
        text=row["body"] or str(row["facts"].get("message", "")),
        language=row["language"],
        reason=about.words,
        kind=about.kind,
        state=row["state"],
        delivery=row["delivery"],
        because="; ".join(str(row["facts"][name]) for name in ("because", "hour_says") if row["facts"].get(name)),
        state_because=row["state_because"],
    )


def _their_line(row: Row) -> Line:
    meaning: dict[str, Any] = row["meaning"] or {}
    return Line(
        at=row["received_at"],
        who="customer",
        is_theirs=True,
        text=row["body"],
        language=meaning.get("language") or "und",
        meanings=tuple(meaning.get("meanings", ())),
        certainty=meaning.get("certainty"),
        pictures=row["pictures"],
        inbound_id=row["id"],
    )
