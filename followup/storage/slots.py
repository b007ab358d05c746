"""What bookings and held times use up of the shop, as the plain values of `core/planning/slots.py`."""

from __future__ import annotations

from datetime import datetime, timedelta

from sqlalchemy import Connection, func, select

from followup.core.planning.slots import Parts, Taken, Wanted
from followup.core.replies.contract import TimeWindow
from followup.core.shop import Shop, closes_next
from followup.core.wall import day_of, start_of, to_utc
from followup.storage import requests
from followup.storage.rows import Row


def lock(connection: Connection, shop_id: int) -> None:
    """Wait for whoever gives away times of that shop, and keep others waiting until this transaction ends.

    Without it two could each find the same time free. SQLite has one writer at a time anyway.
    """
    if connection.dialect.name == "postgresql":
        key = func.hashtextextended(f"times of shop {shop_id}", 0)
        connection.execute(select(func.pg_advisory_xact_lock(key)))


def taken(connection: Connection, shop: Shop, now: datetime, *, but: Row | None = None) -> list[Taken]:
    """Confirmed bookings, and times that are still held: offered, or chosen out of an offer and not confirmed yet.

    Who came today is worked on today, and who was missed may still come: what both use is given to nobody else.
    `but` leaves one request out, and the booking that it moves: their times are free to it.
    """
    own = (but["id"], but["replaces_id"]) if but else ()
    found: list[Taken] = []
    for row in requests.requests_of_times(connection, shop.id, start_of(day_of(now, shop.zone), shop.zone)):
        if row["id"] in own:
            continue
        needs = frozenset(row["needs"])
        if row["state"] in ("confirmed", *requests.ENDED_IN_THE_SHOP) and row["slot_at"]:
            found.append(Taken(row["slot_at"], row["hours"], needs))
        elif row["state"] == "asked":
            if row["slot_at"] and is_held(row, now):
                found.append(Taken(row["slot_at"], row["hours"], needs, row["offered_until"]))
        elif is_held(row, now):
            found += [
                Taken(to_utc(datetime.fromisoformat(start), shop.zone), row["hours"], needs, row["offered_until"])
                for start in row["offered"]
            ]
    return found


def is_held(request: Row, now: datetime) -> bool:
    """Whether what was offered, or was chosen out of it, is still kept free for that request."""
    return request["offered_until"] is not None and request["offered_until"] > now


def kept_until(connection: Connection, shop: Shop, request: Row, chosen: str | None, now: datetime) -> datetime | None:
    """Until when a time stays free for who chose it out of what was offered: until an advisor had a working day to
    confirm it. None where it was not offered, or is held no more."""
    if chosen is None or chosen not in request["offered"]:
        return None
    lock(connection, shop.id)
    until = now + timedelta(hours=shop.rules.offer_held_hours)
    return (closes_next(shop, until) or until) if is_held(request, now) else None


def wanted_by(request: Row, shop: Shop) -> Wanted:
    """What a request asks for, with the windows that it named as instants."""
    return Wanted(
        hours=request["hours"],
        needs=frozenset(request["needs"]),
        parts=Parts(state=request["parts"], due_on=request["parts_on"]),
        windows=tuple(_windows(request, shop)),
    )


def _windows(request: Row, shop: Shop) -> list[tuple[datetime, datetime]]:
    found = []
    for one in request["wanted"]:
        window = TimeWindow.model_validate(one)
        if window.start.startswith("T"):
            continue
        start = to_utc(datetime.fromisoformat(window.start), shop.zone)
        end = to_utc(datetime.fromisoformat(window.end), shop.zone) if window.end else None
        if window.grain == "time":
            # A point is met by the check-in that begins with it or next.
            found.append((start, start + timedelta(minutes=shop.rules.check_in_minutes)))
        elif end is not None:
            found.append((start, end))
    return found
