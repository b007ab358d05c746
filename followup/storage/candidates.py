"""Which phones planning has to look at: those with a car of which there may be a reason to write or to call now.

Each rule of `core/planning` begins with something that the database can be asked for many cars at once; whoever is
found here is decided about by all of the rules. Most cars of a shop are not found on most days, and cost nothing.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator
from datetime import date, datetime, timedelta
from typing import Any

from sqlalchemy import ColumnElement, Connection, Select, Table, func, or_, select

from followup.core.planning import set_change
from followup.core.planning.seasonal import SEASONAL, before_winter
from followup.core.planning.send_rule import AFTER_VISIT_UNTIL, MISSED_IS_OLD_AFTER_DAYS, lowest_chance
from followup.core.planning.walk_ins import UNSEEN_AGAIN_AFTER, unseen_since
from followup.core.shop import Shop
from followup.core.wall import day_of, start_of
from followup.storage import outbox, set_seasons, tables, windows

_A_DAY = timedelta(days=1)
# A database takes only so many values in one statement.
_AT_ONCE = 1_000


def numbers_to_look_at(connection: Connection, shop: Shop, now: datetime) -> list[str]:
    """The numbers (E.164) of those phones, in the order of the store."""
    found = phones_to_look_at(connection, shop, now)
    return [found[phone_id] for phone_id in sorted(found)]


def phones_to_look_at(connection: Connection, shop: Shop, now: datetime) -> dict[int, str]:
    """The same by the phone's id."""
    found: dict[int, str] = {}
    for cars, told in (
        (_with_reasons(connection, shop, now), set()),
        _before_winter(connection, shop, day_of(now, shop.zone)),
        _long_unseen(connection, shop, now),
        _changing_sets(connection, shop),
    ):
        for phone_id, number, car in _phones_of(connection, shop, cars):
            # Whoever else has the car may not have been told.
            if (phone_id, car) not in told:
                found[phone_id] = number
    return found


def _phones_of(connection: Connection, shop: Shop, cars: Collection[int]) -> Iterator[tuple[int, str, int]]:
    """(phone, number, car) of who owns or drives these cars now."""
    used, tied, phones = tables.person_phones, tables.ties, tables.phones
    theirs = phones.join(used, used.c.phone_id == phones.c.id).join(tied, tied.c.person_id == used.c.person_id)
    is_now = (
        phones.c.shop_id == shop.id, phones.c.forgotten_at.is_(None), used.c.to_on.is_(None), tied.c.to_on.is_(None),
        tied.c.role != "payer",
    )  # fmt: skip
    query = select(phones.c.id, phones.c.number, tied.c.vehicle_id).select_from(theirs).where(*is_now)
    every = sorted(cars)
    for begin in range(0, len(every), _AT_ONCE):
        some = query.where(tied.c.vehicle_id.in_(every[begin : begin + _AT_ONCE]))
        yield from ((phone_id, number, car) for phone_id, number, car in connection.execute(some))


def _with_reasons(connection: Connection, shop: Shop, now: datetime) -> set[int]:
    """Cars with something near its limit or put off, and those that something happened to."""
    today, rules = day_of(now, shop.zone), shop.rules
    found = windows.cars_with_near_windows(connection, shop.id, today, rules.lead_days, lowest_chance(rules))
    for query in _events(shop, now):
        found |= _ids(connection, query)
    return found


def _events(shop: Shop, now: datetime) -> Iterator[Select[tuple[int]]]:
    """Recalls that are open, bookings that were missed, visits that were closed."""
    recalls, bookings, visits = tables.recalls, tables.booking_requests, tables.visits
    yield _cars(recalls, shop, recalls.c.ended_at.is_(None))
    fresh = now - timedelta(days=MISSED_IS_OLD_AFTER_DAYS) - _A_DAY
    yield _cars(bookings, shop, bookings.c.state == "missed", bookings.c.slot_at >= fresh)
    yield _cars(visits, shop, visits.c.closed_at >= now - AFTER_VISIT_UNTIL)


def _before_winter(connection: Connection, shop: Shop, today: date) -> tuple[set[int], set[tuple[int, int]]]:
    """While it is written before winter: every car, and to whom it was written already."""
    season = before_winter(shop, today) if shop.rules.writes_before_winter else None
    if season is None:
        return set(), set()
    # A day late, so that none is missed by the hour at which it was told.
    since = start_of(season.from_on + _A_DAY, shop.zone)
    return _every_car(connection, shop), _told(connection, shop, SEASONAL, since)


def _long_unseen(connection: Connection, shop: Shop, now: datetime) -> tuple[set[int], set[tuple[int, int]]]:
    """Cars that were not here for as long as the shop says, and to whom it was written of which within a year."""
    since = unseen_since(shop, day_of(now, shop.zone))
    if since is None or not shop.free_services:
        return set(), set()
    visits, work, inspected = tables.visits, tables.work_done, tables.inspections
    begins = start_of(since + _A_DAY, shop.zone)
    found = _every_car(connection, shop)
    for query in (
        _cars(visits, shop, or_(visits.c.opened_at >= begins, visits.c.closed_at >= begins)),
        _cars(work, shop, work.c.on > since),
        _cars(inspected, shop, inspected.c.is_current.is_(True), inspected.c.inspected_on > since),
    ):
        found -= _ids(connection, query)
    return found, _told(connection, shop, ("long_unseen",), now - UNSEEN_AGAIN_AFTER)


def _changing_sets(connection: Connection, shop: Shop) -> tuple[set[int], set[tuple[int, int]]]:
    """Cars whose turn it is to change their set of tires, and to whom it was written in that season."""
    drawn = set_seasons.drawn_cars(connection, shop.id)
    if not drawn:
        return set(), set()
    begun = start_of(min(one.began_on for one in drawn.values()), shop.zone)
    return {car for _, car in drawn}, _told(connection, shop, (set_change.REASON,), begun)


def _every_car(connection: Connection, shop: Shop) -> set[int]:
    table = tables.vehicles
    return _ids(connection, select(table.c.id).where(table.c.shop_id == shop.id))


def _ids(connection: Connection, query: Select[Any]) -> set[int]:
    return set(connection.execute(query).scalars())


def _cars(table: Table, shop: Shop, *conditions: ColumnElement[bool]) -> Select[tuple[int]]:
    return select(table.c.vehicle_id).where(table.c.shop_id == shop.id, *conditions)


def _told(connection: Connection, shop: Shop, reasons: Collection[str], since: datetime) -> set[tuple[int, int]]:
    """(phone, car) to whom and of which that was written since then."""
    table = tables.texts
    at = func.coalesce(table.c.sent_at, table.c.due_at)
    left = (table.c.reason.in_(reasons), table.c.state.in_(outbox.MAY_HAVE_LEFT), at > since)
    query = select(table.c.phone_id, table.c.vehicle_id).where(table.c.shop_id == shop.id, *left)
    return {(phone_id, car) for phone_id, car in connection.execute(query)}
