"""What happened at a shop since an instant, for the page that counts it: texts, replies, bookings, alerts, stops."""

from __future__ import annotations

from datetime import date, datetime

from sqlalchemy import Connection, func, select

from followup.storage import rows, tables
from followup.storage.rows import Row


def texts_sent(connection: Connection, shop_id: int, since: datetime) -> list[Row]:
    """Texts to customers that left since then, oldest first."""
    table = tables.texts
    query = select(table).where(
        table.c.shop_id == shop_id, table.c.state == "sent", table.c.kind != "alert", table.c.sent_at >= since
    )
    return rows.every(connection, query.order_by(table.c.sent_at, table.c.id))


def customers_invited(connection: Connection, shop_id: int, since: datetime) -> int:
    """Phones to which an invite left since then."""
    table = tables.texts
    query = select(func.count(table.c.phone_id.distinct())).where(
        table.c.shop_id == shop_id, table.c.state == "sent", table.c.kind == "invite", table.c.sent_at >= since
    )
    return int(connection.execute(query).scalar_one())


def replies(connection: Connection, shop_id: int, since: datetime) -> list[Row]:
    """Texts that came in since then, oldest first."""
    table = tables.inbound
    query = select(table).where(table.c.shop_id == shop_id, table.c.received_at >= since)
    return rows.every(connection, query.order_by(table.c.received_at, table.c.id))


def requests_since(connection: Connection, shop_id: int, since: datetime) -> list[Row]:
    """Booking requests that were asked for since then, oldest first."""
    table = tables.booking_requests
    query = select(table).where(table.c.shop_id == shop_id, table.c.asked_at >= since)
    return rows.every(connection, query.order_by(table.c.asked_at, table.c.id))


def moves_since(connection: Connection, shop_id: int, since: datetime) -> list[Row]:
    """Moves of booking requests into another state since then."""
    table = tables.booking_moves
    query = select(table).where(table.c.shop_id == shop_id, table.c.at >= since, table.c.from_state != table.c.to_state)
    return rows.every(connection, query.order_by(table.c.id))


def slots_between(connection: Connection, shop_id: int, first: datetime, last: datetime) -> list[Row]:
    """Bookings with a slot from `first` on and before `last` that stand or were kept."""
    table = tables.booking_requests
    query = select(table).where(
        table.c.shop_id == shop_id, table.c.state.in_(("confirmed", "kept")), table.c.slot_at >= first,
        table.c.slot_at < last,
    )  # fmt: skip
    return rows.every(connection, query.order_by(table.c.slot_at))


def vehicles_with_bookings(connection: Connection, shop_id: int) -> set[int]:
    """Cars with a booking request that waits or a booking that stands."""
    table = tables.booking_requests
    query = select(table.c.vehicle_id).where(
        table.c.shop_id == shop_id, table.c.state.in_(("asked", "offered", "confirmed"))
    )
    return {row["vehicle_id"] for row in rows.every(connection, query)}


def alerts_since(connection: Connection, shop_id: int, since: datetime) -> list[Row]:
    """Alerts that were raised since then, and older ones that nobody has answered yet."""
    table = tables.alerts
    is_open = table.c.acknowledged_at.is_(None) & table.c.closed_at.is_(None)
    query = select(table).where(table.c.shop_id == shop_id, (table.c.raised_at >= since) | is_open)
    return rows.every(connection, query.order_by(table.c.raised_at, table.c.id))


def stops_since(connection: Connection, shop_id: int, since: datetime) -> list[Row]:
    """Lines of the ledger by which a number stopped all texts since then."""
    table = tables.consents
    query = select(table).where(table.c.shop_id == shop_id, table.c.event == "taken_back", table.c.at >= since)
    return rows.every(connection, query.order_by(table.c.id))


def phones_agreed(connection: Connection, shop_id: int, on: date) -> set[int]:
    """Phones whose numbers had agreed to texts about upkeep by that day, whatever came of it since."""
    ledger, phones = tables.consents, tables.phones
    query = (
        select(phones.c.id, ledger.c.covers)
        .select_from(ledger.join(phones, (phones.c.number == ledger.c.number) & (phones.c.shop_id == ledger.c.shop_id)))
        .where(
            ledger.c.shop_id == shop_id,
            ledger.c.event.in_(("given", "given_again")),
            ledger.c.given_on <= on,
            ledger.c.how.not_in(("spoken", "imported_unproven")),
            ledger.c.is_own_and_adult.is_(True),
        )
    )
    return {row["id"] for row in rows.every(connection, query) if "upkeep" in row["covers"]}


def phones_that_came(connection: Connection, shop_id: int, since: datetime) -> set[int]:
    """Phones of persons whose cars came for a visit that was opened since then."""
    visits, ties, phones = tables.visits, tables.ties, tables.person_phones
    query = (
        select(phones.c.phone_id)
        .select_from(
            visits.join(ties, ties.c.vehicle_id == visits.c.vehicle_id).join(
                phones, phones.c.person_id == ties.c.person_id
            )
        )
        .where(visits.c.shop_id == shop_id, visits.c.opened_at >= since)
        .distinct()
    )
    return {row["phone_id"] for row in rows.every(connection, query)}


def invites_with_try(connection: Connection, shop_id: int, since: datetime, reason: str) -> list[Row]:
    """Invites of that reason that left since then: phone, car, number of the try, when."""
    table = tables.texts
    query = select(table.c.phone_id, table.c.vehicle_id, table.c.try_no, table.c.sent_at).where(
        table.c.shop_id == shop_id, table.c.state == "sent", table.c.reason == reason, table.c.sent_at >= since
    )
    return rows.every(connection, query.order_by(table.c.sent_at, table.c.id))


def visits_since(connection: Connection, shop_id: int, since: datetime) -> list[Row]:
    """Visits that were opened since then: car, when."""
    table = tables.visits
    query = select(table.c.vehicle_id, table.c.opened_at).where(table.c.shop_id == shop_id, table.c.opened_at >= since)
    return rows.every(connection, query.order_by(table.c.opened_at, table.c.id))
