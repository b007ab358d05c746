"""Addresses at which calendars read bookings: feeds by the hash of their token, visits by their short code."""

from __future__ import annotations

import hashlib
import secrets
from datetime import date, datetime

from sqlalchemy import Connection, or_, select, update

from followup.core.calendar_entry import MOVED, Booked, first_of
from followup.core.replies.contract import TimeWindow
from followup.core.shop import Shop
from followup.core.told_times import day_of_window
from followup.core.wall import to_utc
from followup.storage import requests, rows, tables
from followup.storage.rows import Row

# Without signs that look alike; 12 of them are 70 bits.
_SIGNS = "abcdefghijkmnopqrstuvwxyzABCDEFGHJKLMNPQRSTUVWXYZ23456789"
CODE_LENGTH = 12


def hash_of(token: str) -> str:
    """What is kept of a feed's secret address."""
    return hashlib.sha256(token.encode()).hexdigest()


def add_feed(
    connection: Connection,
    shop_id: int,
    name: str,
    advisor_id: int | None,
    token_hash: str,
    made_by: int,
    now: datetime,
) -> int:
    """Keep a feed by the hash of its token; `advisor_id` None: of the whole shop."""
    return rows.add(
        connection, tables.calendar_feeds, shop_id=shop_id, name=name, advisor_id=advisor_id, token_hash=token_hash,
        made_by=made_by, made_at=now,
    )  # fmt: skip


def standing_feed(connection: Connection, token_hash: str) -> Row | None:
    """The feed of that token; None where it was withdrawn, or its maker or its advisor has left."""
    feeds, staff = tables.calendar_feeds, tables.staff
    active = select(staff.c.id).where(staff.c.is_active.is_(True))
    query = select(feeds).where(
        feeds.c.token_hash == token_hash, feeds.c.withdrawn_at.is_(None), feeds.c.made_by.in_(active),
        or_(feeds.c.advisor_id.is_(None), feeds.c.advisor_id.in_(active)),
    )  # fmt: skip
    return rows.first(connection, query)


def feeds_of_shop(connection: Connection, shop_id: int) -> list[Row]:
    """Every feed of a shop, the newest first."""
    table = tables.calendar_feeds
    return rows.every(connection, select(table).where(table.c.shop_id == shop_id).order_by(table.c.id.desc()))


def withdraw_feed(connection: Connection, shop_id: int, feed_id: int, now: datetime) -> bool:
    """End a feed; False where it had ended."""
    table = tables.calendar_feeds
    done = connection.execute(
        update(table)
        .where(table.c.id == feed_id, table.c.shop_id == shop_id, table.c.withdrawn_at.is_(None))
        .values(withdrawn_at=now)
    )
    return done.rowcount == 1


def link_visit(connection: Connection, shop: Shop, request: Row, now: datetime) -> None:
    """Give the visit that this request is about a short code, where it has none yet."""
    code = "".join(secrets.choice(_SIGNS) for _ in range(CODE_LENGTH))
    first = _first_of(connection, shop, request)
    rows.add_new(connection, tables.visit_links, shop_id=shop.id, request_id=first, code=code, made_at=now)


def code_of_visit(connection: Connection, shop: Shop, request: Row) -> str | None:
    """The short code of the visit that this request is about, if it has one."""
    table = tables.visit_links
    query = select(table.c.code).where(table.c.request_id == _first_of(connection, shop, request))
    found = rows.first(connection, query)
    return str(found["code"]) if found else None


def _first_of(connection: Connection, shop: Shop, request: Row) -> int:
    return first_of(request["id"], {one.id: one for one in bookings_of(connection, [request], shop)})


def find_link(connection: Connection, code: str) -> Row | None:
    """The visit's link of that code."""
    return rows.first(connection, select(tables.visit_links).where(tables.visit_links.c.code == code))


def requests_since(connection: Connection, shop_id: int, since: datetime, advisor_id: int | None) -> list[Row]:
    """Requests and bookings that stand, and those that changed since then; of the whole shop, or of one advisor's
    customers."""
    table, persons = tables.booking_requests, tables.persons
    query = select(table).where(
        table.c.shop_id == shop_id,
        or_(table.c.state.in_((*requests.OPEN, "confirmed")), table.c.changed_at >= since),
    )
    if advisor_id is not None:
        theirs = select(persons.c.id).where(persons.c.shop_id == shop_id, persons.c.advisor_id == advisor_id)
        query = query.where(table.c.person_id.in_(theirs))
    return rows.every(connection, query.order_by(table.c.id))


def requests_of_visit(connection: Connection, first_id: int) -> list[Row]:
    """The request that began a visit, and those that took over one after the other, the newest last."""
    table = tables.booking_requests
    found = rows.every(connection, select(table).where(table.c.id == first_id))
    while found and found[-1]["closed_because"] == MOVED:
        later = rows.every(connection, select(table).where(table.c.replaces_id == found[-1]["id"]).order_by(table.c.id))
        took_over = _took_over(connection, later)
        later = [one for one in later if one["id"] in took_over]
        if not later:
            break
        found.append(later[-1])
    return found


def bookings_of(connection: Connection, found: list[Row], shop: Shop) -> list[Booked]:
    """These requests as calendars need them, with all whose time they moved, in the order in which they were made."""
    table, known = tables.booking_requests, {row["id"]: row for row in found}
    missing = {row["replaces_id"] for row in found} - {None, *known}
    while missing:
        earlier = rows.every(connection, select(table).where(table.c.id.in_(missing)))
        known |= {row["id"]: row for row in earlier}
        missing = {row["replaces_id"] for row in earlier} - {None, *known}
    took_over = _took_over(connection, list(known.values()))
    return [_booked(known[one], shop, one in took_over) for one in sorted(known)]


def _took_over(connection: Connection, found: list[Row]) -> set[int]:
    """Those of them that were confirmed in place of another; a wish for another time may come to nothing."""
    moves, wishes = tables.booking_moves, [row["id"] for row in found if row["replaces_id"]]
    query = select(moves.c.request_id).where(moves.c.request_id.in_(wishes), moves.c.to_state == "confirmed")
    return set(connection.execute(query).scalars()) if wishes else set()


def _booked(row: Row, shop: Shop, took_over: bool) -> Booked:
    return Booked(
        row["id"], row["state"], row["version"], row["changed_at"], tuple(_times(row, shop)),
        row["replaces_id"] if took_over else None, row["state"] == "closed" and row["closed_because"] == MOVED,
    )  # fmt: skip


def _times(row: Row, shop: Shop) -> list[datetime | date]:
    if row["state"] == "offered":
        return [to_utc(datetime.fromisoformat(one), shop.zone) for one in row["offered"]]
    if row["slot_at"]:
        return [row["slot_at"]]
    for one in map(TimeWindow.model_validate, row["wanted"]):
        day = day_of_window(one)
        if day is not None:
            return [to_utc(datetime.fromisoformat(one.start), shop.zone) if one.grain == "time" else day]
    return []
