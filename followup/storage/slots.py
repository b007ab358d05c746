"""What bookings and held offers use up of the shop, as the plain values of `core/planning/slots.py`."""

from __future__ import annotations

from datetime import datetime, timedelta

from sqlalchemy import Connection

from followup.core.planning.slots import Parts, Taken, Wanted
from followup.core.replies.contract import TimeWindow
from followup.core.shop import Shop
from followup.core.wall import to_utc
from followup.storage import requests
from followup.storage.rows import Row


def taken(connection: Connection, shop: Shop, now: datetime, *, but: int | None = None) -> list[Taken]:
    """Confirmed bookings, and offers that are still held; `but` leaves one request out (its own time is free to it)."""
    found: list[Taken] = []
    for row in requests.requests_of_shop(connection, shop.id, ("confirmed", "offered")):
        if row["id"] == but:
            continue
        needs = frozenset(row["needs"])
        if row["state"] == "confirmed" and row["slot_at"]:
            found.append(Taken(row["slot_at"], row["hours"], needs))
        elif row["offered_until"] and row["offered_until"] > now:
            found += [
                Taken(to_utc(datetime.fromisoformat(start), shop.zone), row["hours"], needs, row["offered_until"])
                for start in row["offered"]
            ]
    return found


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
