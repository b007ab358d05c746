"""What the coming weeks hold, and what texts that are out are expected to bring: values of `core/planning/pacing`."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import replace
from datetime import datetime, timedelta

from sqlalchemy import Connection, select

from followup.core.items import catalogue_of
from followup.core.planning.paced import PACED_REASON
from followup.core.planning.pacing.brought import Brought
from followup.core.planning.pacing.room import Room, TextOut, ToLeave, added, expected, expected_of_placed, room_of
from followup.core.planning.pacing.weeks import LANDING_SHARES, week_of
from followup.core.planning.slots import hours_of
from followup.core.shop import Shop
from followup.core.wall import day_of
from followup.storage import outbox, requests, results, rows, slots, tables
from followup.storage.brought import brought_by_texts
from followup.storage.rows import Row

_BRINGS_WORK = (PACED_REASON, "set_change")
_STILL_LANDS = timedelta(weeks=len(LANDING_SHARES))
Expected = dict[str, list[float]]


def look_at_room(connection: Connection, shop: Shop, now: datetime) -> tuple[Room, Expected]:
    """The weeks from tomorrow on, and what the texts that are out are expected to use of them."""
    there = room_of(shop, slots.taken(connection, shop, now), day_of(now, shop.zone))
    there = replace(there, brought=brought_by_texts(connection, shop.id, now))
    return there, expected(there, _texts_out(connection, shop, there.brought, now))


def with_placed(
    connection: Connection, shop: Shop, room: Room, used: Expected, placed: Iterable[Row], now: datetime
) -> Expected:
    """The same with the invites that are placed and have not become texts since."""
    return added(used, expected_of_rows(room, not_out_yet(connection, shop, placed, now)))


def not_out_yet(connection: Connection, shop: Shop, placed: Iterable[Row], now: datetime) -> list[Row]:
    """Placed invites that have not become texts since."""
    became = {
        (phone_id, row["vehicle_id"]): row["planned_at"]
        for phone_id, found in outbox.invites_by_phone(connection, shop.id, now - _STILL_LANDS, now).items()
        for row in found
    }
    return [one for one in placed if not _is_after(became.get((one["phone_id"], one["vehicle_id"])), one["made_at"])]


def expected_of_rows(room: Room, placed: Iterable[Row]) -> Expected:
    """What placed invites are expected to use of the weeks."""
    to_leave = [
        ToLeave(week_of(room.begins_on, one["begins_on"]), one["chance"], one["hours"])
        for one in placed
        if one["begins_on"]
    ]
    return expected_of_placed(room, to_leave)


def _is_after(at: datetime | None, made_at: datetime) -> bool:
    return at is not None and at >= made_at


def _texts_out(connection: Connection, shop: Shop, brought: Brought, now: datetime) -> Iterator[TextOut]:
    """Invites about work that have brought no answer in work yet, and wishes that wait for a time."""
    since, catalogue = now - _STILL_LANDS, catalogue_of(shop)
    heard_at = _heard_at(connection, shop, since)
    stopped = {row["number"] for row in results.stops_since(connection, shop.id, since)}
    for found in outbox.invites_by_phone(connection, shop.id, since, now).values():
        last = {row["vehicle_id"]: row for row in found if row["reason"] in _BRINGS_WORK}
        for vehicle_id, row in last.items():
            at = row["sent_at"] or max(row["due_at"], now)
            if row["number"] in stopped or heard_at.get(vehicle_id, since) > at:
                continue
            hours = hours_of(catalogue[item] for item, _ in row["facts"].get("items", ()) if item in catalogue)
            yield TextOut(day_of(at, shop.zone), brought.chance(row["try_no"]), hours)
    for row in requests.open_requests(connection, shop.id):
        # What is held for it is used up already, and a move leaves the old time to somebody else.
        if not slots.is_held(row, now) and row["replaces_id"] is None:
            yield TextOut(day_of(row["asked_at"], shop.zone), 1.0, row["hours"])


def _heard_at(connection: Connection, shop: Shop, since: datetime) -> dict[int, datetime]:
    """When a car was last booked, came, or its customer said that it rests: its text brings nothing more."""
    heard: dict[int, datetime] = {}
    for table, at in (
        (tables.booking_requests, tables.booking_requests.c.asked_at), (tables.visits, tables.visits.c.opened_at),
    ):  # fmt: skip
        query = select(table.c.vehicle_id, at.label("at")).where(table.c.shop_id == shop.id, at >= since)
        for row in rows.every(connection, query):
            heard[row["vehicle_id"]] = max(row["at"], heard.get(row["vehicle_id"], row["at"]))
    table = tables.rests
    query = select(table.c.vehicle_id, tables.inbound.c.received_at.label("at")).select_from(
        table.join(tables.inbound, table.c.inbound_id == tables.inbound.c.id)
    )
    for row in rows.every(connection, query.where(table.c.shop_id == shop.id, tables.inbound.c.received_at >= since)):
        heard[row["vehicle_id"]] = max(row["at"], heard.get(row["vehicle_id"], row["at"]))
    return heard
