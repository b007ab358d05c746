"""Look at booking requests: what was asked beside what was understood, what is free, and what happened so far.

Reads only. Times are found as they are free now; whoever presses Confirm is checked again by `settle_requests`.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, replace
from datetime import date, datetime, timedelta

from followup.core.item import Catalogue
from followup.core.items import catalogue_of
from followup.core.planning.slots import (
    MissedTime,
    Taken,
    Wanted,
    free_times,
    hours_of,
    labor_left,
    missed_times,
    why_not_free,
)
from followup.core.shop import Shop
from followup.core.wall import day_of, start_of
from followup.storage import corrections, requests, seen, shops, slots
from followup.storage.rows import Row
from followup.storage.seen import SeenBooking, SeenReading
from followup.storage.store import Connection, Store

LOOK_AHEAD = timedelta(days=28)
# Enough to choose from by one look; a time that is not shown can be typed.
NAMED_TIMES, OTHER_TIMES, TIMES_A_DAY = 6, 8, 3
APART = timedelta(minutes=60)
# A time that the customer did not name must leave them the way to the shop.
NOT_SOONER = timedelta(hours=2)
STANDING = ("confirmed",)
OVER = ("kept", "missed", "closed")
MOST_OVER = 50


@dataclass(frozen=True)
class FreeTime:
    """A time at which all that the request needs is free; `is_named`: within what the customer asked for.

    `labor_left` are the planned hours of that day that are still free, by the skills that the request needs.
    """

    start: datetime
    is_named: bool
    labor_left: tuple[tuple[str, float], ...]


@dataclass(frozen=True)
class Move:
    """One thing that happened to a request."""

    at: datetime
    who: str
    from_state: str
    to_state: str
    says: str


@dataclass(frozen=True)
class RequestPage:
    """All that an advisor needs for one request.

    `asked_time` is the one time that the customer chose, `asked_time_because` why it is not free (None: it is).
    `missed` are the times that the customer named and that are not free.
    `replaces` is the booking that stands until this one is confirmed; `parts_known` False: ask once, then offer.
    `inbound_id` is the text that asked for it, where it came by text; `meant` what somebody said was meant by it.
    """

    booking: SeenBooking
    readings: tuple[tuple[str, str, SeenReading | None], ...]
    free: tuple[FreeTime, ...]
    asked_time: datetime | None
    asked_time_because: str | None
    parts_known: bool
    missed: tuple[MissedTime, ...]
    moves: tuple[Move, ...]
    replaces: SeenBooking | None
    inbound_id: int | None
    meant: str | None
    meant_by: str | None


@dataclass(frozen=True)
class RequestList:
    """Requests that wait, bookings that stand, and the last ones that are over."""

    waiting: tuple[SeenBooking, ...]
    standing: tuple[SeenBooking, ...]
    over: tuple[SeenBooking, ...]


def look_at_requests(store: Store, shop_id: int) -> RequestList:
    """Every open request, every booking that stands, and the last that are over."""
    with store.read() as connection:
        over = requests.requests_of_shop(connection, shop_id, OVER)
        over.sort(key=lambda row: row["changed_at"], reverse=True)
        return RequestList(
            _seen(connection, shop_id, requests.open_requests(connection, shop_id)),
            _seen(connection, shop_id, requests.requests_of_shop(connection, shop_id, STANDING)),
            _seen(connection, shop_id, over[:MOST_OVER]),
        )


def look_at_request(store: Store, shop_id: int, request_id: int, now: datetime) -> RequestPage | None:
    """One request; None where the shop has none of that id."""
    with store.read() as connection:
        row = requests.load_request(connection, shop_id, request_id)
        if row is None:
            return None
        shop = shops.load_shop(connection, shop_id)
        used = slots.taken(connection, shop, now, but=row)
        wanted = slots.wanted_by(row, shop)
        booking = seen.see_booking(connection, shop_id, row)
        replaced = requests.load_request(connection, shop_id, row["replaces_id"]) if row["replaces_id"] else None
        asked = row["slot_at"] if row["state"] in requests.OPEN else None
        corrected = corrections.correction_of(connection, row["inbound_id"]) if row["inbound_id"] else None
        return RequestPage(
            booking=booking,
            readings=_readings(connection, row, catalogue_of(shop)),
            free=_free(shop, used, wanted, now),
            asked_time=asked,
            asked_time_because=why_not_free(shop, used, wanted, asked, now) if asked else None,
            parts_known=_are_parts_known(row),
            missed=tuple(missed_times(shop, used, wanted, now)) if _are_parts_known(row) else (),
            moves=tuple(
                Move(one["at"], one["who"], one["from_state"], one["to_state"], one["says"] or "")
                for one in requests.moves_of_request(connection, request_id)
            ),
            replaces=seen.see_booking(connection, shop_id, replaced) if replaced else None,
            inbound_id=row["inbound_id"] if row["understood"] else None,
            meant=corrected["meant"]["meaning"] if corrected else None,
            meant_by=corrected["who"] if corrected else None,
        )


def look_at_free_times(
    store: Store, shop_id: int, items: Iterable[tuple[str, str]], now: datetime
) -> tuple[FreeTime, ...]:
    """The next free times for work on these items, for a booking that is made while the customer is on the phone."""
    with store.read() as connection:
        shop = shops.load_shop(connection, shop_id)
        catalogue = catalogue_of(shop)
        hours = hours_of(catalogue[item] for item, _ in items if item in catalogue)
        return _free(shop, slots.taken(connection, shop, now), Wanted(hours), now)


def _seen(connection: Connection, shop_id: int, found: Iterable[Row]) -> tuple[SeenBooking, ...]:
    return tuple(seen.see_booking(connection, shop_id, row) for row in found)


def _readings(
    connection: Connection, row: Row, catalogue: Catalogue
) -> tuple[tuple[str, str, SeenReading | None], ...]:
    last = seen.last_readings(connection, row["vehicle_id"], catalogue)
    return tuple((item, position, last.get((item, position))) for item, position in row["items"])


def _are_parts_known(row: Row) -> bool:
    return row["parts"] in ("not_needed", "in_stock") or bool(row["parts"] == "ordered" and row["parts_on"])


def _free(shop: Shop, used: list[Taken], wanted: Wanted, now: datetime) -> tuple[FreeTime, ...]:
    """Those that the customer named first, then others, a few a day, from the first day that was named on."""
    until = now + LOOK_AHEAD
    named = free_times(shop, used, wanted, now, until) if wanted.windows else []
    named = _thinned(shop, named, NAMED_TIMES, NAMED_TIMES)
    anywhere = free_times(shop, used, replace(wanted, windows=()), now, until, most=1_000)
    begin = min((start_of(day_of(opens, shop.zone), shop.zone) for opens, _ in wanted.windows), default=now)
    near = [one for one in anywhere if one >= max(begin, now + NOT_SOONER)]
    anywhere = near or anywhere
    others = [one for one in _thinned(shop, anywhere, OTHER_TIMES + NAMED_TIMES, TIMES_A_DAY) if one not in named]
    shown = [(start, True) for start in named] + [(start, False) for start in others[:OTHER_TIMES]]
    return tuple(
        FreeTime(start, is_named, _labor(shop, day_of(start, shop.zone), used, wanted)) for start, is_named in shown
    )


def _thinned(shop: Shop, times: Iterable[datetime], most: int, most_a_day: int) -> list[datetime]:
    """Times an hour apart, so many a day: quarter hours side by side are no choice."""
    kept: list[datetime] = []
    a_day: dict[date, int] = {}
    for start in times:
        on = day_of(start, shop.zone)
        if (kept and timedelta(0) <= start - kept[-1] < APART) or a_day.get(on, 0) >= most_a_day:
            continue
        kept.append(start)
        a_day[on] = a_day.get(on, 0) + 1
    return kept[:most]


def _labor(shop: Shop, on: date, used: list[Taken], wanted: Wanted) -> tuple[tuple[str, float], ...]:
    left = labor_left(shop, on, used)
    return tuple((skill, left.get(skill, 0.0)) for skill in sorted(wanted.hours))
