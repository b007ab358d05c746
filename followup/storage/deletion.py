"""Take a customer out: names, numbers and texts go, readings stay without a person, of the ledger a keyed hash stays.

Rows that others count, or that keep a thing from happening twice, stay without their words: a text of ours is one of
the month's figures, and a text of theirs is known again by the provider's id when its list is read. The rows of person
and phone stay as nobody's, so that what belonged together is still counted as one.
"""

from __future__ import annotations

from contextlib import closing
from datetime import datetime
from typing import Any

from sqlalchemy import ColumnElement, Connection, Engine, and_, delete, or_, select, update

from followup.storage import drafts, fleet_lists, people, rows, tables
from followup.storage.rows import Row

BECAUSE = "the customer was deleted"
# What the contract needs of a customer, in an inspection that stays.
_NOBODY = {"id": "deleted"}
# What of a car names its owner.
_OF_THE_OWNER = ("plate", "vin")
_NOT_GONE = ("planned", "claimed", "unknown", "held")


def empty_log(engine: Engine) -> None:
    """Let SQLite bring its log into the file, where what went is overwritten."""
    if engine.dialect.name == "sqlite":
        with closing(engine.raw_connection()) as raw:
            raw.cursor().execute("PRAGMA wal_checkpoint(TRUNCATE)")


def phones_ever(connection: Connection, person_id: int) -> list[Row]:
    """Every phone that is or was the person's."""
    link, phones = tables.person_phones, tables.phones
    mine = select(link.c.phone_id).where(link.c.person_id == person_id)
    return rows.every(connection, select(phones).where(phones.c.id.in_(mine)).order_by(phones.c.id))


def cars_ever(connection: Connection, person_id: int) -> list[Row]:
    """Every car that is or was the person's, or in which they came."""
    ties, brought, cars = tables.ties, tables.inspections, tables.vehicles
    tied = select(ties.c.vehicle_id).where(ties.c.person_id == person_id)
    came = select(brought.c.vehicle_id).where(brought.c.person_id == person_id)
    query = select(cars).where(or_(cars.c.id.in_(tied), cars.c.id.in_(came)))
    return rows.every(connection, query.order_by(cars.c.id))


def others_of_phone(connection: Connection, person_id: int, phone_id: int) -> list[Row]:
    """Other persons who use the phone now: it stays theirs."""
    return [one for one in people.persons_of_phone(connection, phone_id) if one["id"] != person_id]


def is_in_flight(connection: Connection, phone_ids: list[int]) -> bool:
    """True while a text to one of the phones is being handed over."""
    table = tables.texts
    query = select(table.c.id).where(table.c.phone_id.in_(phone_ids), table.c.state == "in_flight")
    return rows.first(connection, query.limit(1)) is not None


def queued(connection: Connection, phone_ids: list[int]) -> list[Row]:
    """Texts to the phones that would leave yet, or of which nobody knows whether they left."""
    table = tables.texts
    query = select(table).where(table.c.phone_id.in_(phone_ids), table.c.state.in_(_NOT_GONE))
    return rows.every(connection, query.order_by(table.c.id))


def open_alerts(connection: Connection, person_id: int, phone_ids: list[int]) -> list[Row]:
    """Alerts about the person or the phones that have no outcome."""
    table = tables.alerts
    query = select(table).where(_about(person_id, phone_ids), table.c.closed_at.is_(None))
    return rows.every(connection, query.order_by(table.c.id))


def forget_phone(connection: Connection, phone: Row, now: datetime) -> None:
    """The number and all that was texted to it and from it; the lines of its ledger keep their hash, time and kind."""
    phone_id, shop_id, number = phone["id"], phone["shop_id"], phone["number"]
    _forget_texts(connection, tables.texts.c.phone_id == phone_id)
    _forget_inbound(connection, phone_id, now)
    _forget_letters(connection, shop_id, number, now)
    for table in (tables.conversations, tables.person_phones):
        connection.execute(delete(table).where(table.c.phone_id == phone_id))
    shown = tables.test_phone_texts
    connection.execute(delete(shown).where(shown.c.shop_id == shop_id, shown.c.number == number))
    ledger = tables.consents
    mine = (ledger.c.shop_id == shop_id, ledger.c.number == number)
    connection.execute(update(ledger).where(*mine).values(number=None, words=""))
    rows.change(
        connection, tables.phones, phone_id, number=f"forgotten {phone_id}", zones=[], line="unknown", language=None,
        bad_because=None, held_because=None, reassigned=None, reassigned_asked_on=None, forgotten_at=now,
    )  # fmt: skip


def forget_person(connection: Connection, person_id: int, phone_ids: list[int], now: datetime) -> None:
    """The name, who has which car, and the words of bookings and alerts. What stood is at an end."""
    for table in (tables.ties, tables.person_phones):
        connection.execute(delete(table).where(table.c.person_id == person_id))
    _forget_alerts(connection, _about(person_id, phone_ids), now)
    requests = tables.booking_requests
    mine = requests.c.person_id == person_id
    nothing: dict[str, Any] = {"verbatim": "", "understood": None, "note": None, "wanted": [], "avoid": []}
    connection.execute(update(requests).where(mine).values(**nothing))
    fleet_lists.forget(connection, person_id)
    links = tables.visit_links
    connection.execute(delete(links).where(links.c.request_id.in_(select(requests.c.id).where(mine))))
    moves = tables.booking_moves
    connection.execute(update(moves).where(moves.c.request_id.in_(select(requests.c.id).where(mine))).values(says=None))
    # No customer of the contract has a code that begins with a space.
    rows.change(
        connection, tables.persons, person_id, code=f" forgotten {person_id}", name=None, language=None,
        paused_until=None, is_deceased=False, is_fleet=False, advisor_id=None, told_on=None, forgotten_at=now,
    )  # fmt: skip


def forget_drafts(connection: Connection, shop_id: int, person: Row, numbers: set[str]) -> None:
    """Forms that are being filled about a car that was never here, where the customer was typed into them."""
    drafts.forget_typed(connection, shop_id, person["name"], numbers)


def forget_in_car(connection: Connection, person_id: int, phone_ids: list[int], car: Row) -> None:
    """The customer in the car's inspections, all their versions; where nobody else has the car, also what names it to
    the world. The words of texts about it go where it was theirs alone."""
    drafts.forget_car(connection, car["id"])
    is_theirs_alone = not people.drivers_of_vehicle(connection, car["id"])
    table = tables.inspections
    mine = table.c.vehicle_id == car["id"] if is_theirs_alone else table.c.person_id == person_id
    query = select(table.c.id, table.c.body, table.c.person_id).where(table.c.vehicle_id == car["id"], mine)
    for row in rows.every(connection, query):
        body = dict(row["body"])
        if row["person_id"] == person_id:
            body["customer"] = _NOBODY
        if is_theirs_alone:
            body["vehicle"] = _without(body["vehicle"])
        rows.change(connection, table, row["id"], body=body)
    if is_theirs_alone:
        rows.change(connection, tables.vehicles, car["id"], facts=_without(car["facts"]))
        texts = tables.texts.c
        _forget_texts(connection, and_(texts.vehicle_id == car["id"], texts.phone_id.in_(phone_ids)))


def _without(facts: dict[str, Any]) -> dict[str, Any]:
    return {name: value for name, value in facts.items() if name not in _OF_THE_OWNER}


def _about(person_id: int, phone_ids: list[int]) -> ColumnElement[bool]:
    table = tables.alerts
    return or_(table.c.person_id == person_id, table.c.phone_id.in_(phone_ids))


def _forget_texts(connection: Connection, which: ColumnElement[bool]) -> None:
    """Who is sending one finds out before the first byte: its state is another one."""
    table = tables.texts
    dropped = {"state": "dropped", "state_because": BECAUSE}
    connection.execute(update(table).where(which, table.c.state.in_(_NOT_GONE)).values(**dropped))
    # Its number stays one of the row's own, since a number has one text of a reason and try.
    nothing: dict[str, Any] = {"number": "", "body": None, "facts": {}, "offered": None, "provider_id": None}
    connection.execute(update(table).where(which).values(**nothing))


def _forget_inbound(connection: Connection, phone_id: int, now: datetime) -> None:
    table, corrections = tables.inbound, tables.reading_corrections
    mine = table.c.phone_id == phone_id
    connection.execute(delete(corrections).where(corrections.c.inbound_id.in_(select(table.c.id).where(mine))))
    unread = update(table).where(mine, table.c.handled_at.is_(None))
    connection.execute(unread.values(handled_at=now, outcome=BECAUSE))
    nothing: dict[str, Any] = {"number": "", "body": "", "raw": {}, "context": None, "meaning": None}
    connection.execute(update(table).where(mine).values(**nothing))


def _forget_alerts(connection: Connection, which: ColumnElement[bool], now: datetime) -> None:
    """Also what staff were texted of them."""
    table, texts = tables.alerts, tables.texts
    told = select(table.c.id).where(which)
    mine = texts.c.alert_id.in_(told)
    connection.execute(
        update(texts).where(mine, texts.c.state.in_(_NOT_GONE)).values(state="dropped", state_because=BECAUSE)
    )
    connection.execute(update(texts).where(mine).values(body=None, facts={}))
    is_open = update(table).where(which, table.c.closed_at.is_(None))
    connection.execute(is_open.values(closed_at=now, acknowledged_at=now))
    connection.execute(update(table).where(which).values(says=BECAUSE, outcome=BECAUSE))


def _forget_letters(connection: Connection, shop_id: int, number: str, now: datetime) -> None:
    """Texts of theirs that fitted no shop at first."""
    table = tables.dead_letters
    is_here = or_(table.c.shop_id == shop_id, table.c.shop_id.is_(None))
    for row in rows.every(connection, select(table).where(is_here)):
        if number in (row["body"] or {}).values():
            rows.change(connection, table, row["id"], body={}, settled_at=row["settled_at"] or now)
