"""Booking requests with their moves; a request changes only if nobody changed it since it was looked at."""

from __future__ import annotations

from datetime import datetime
from typing import Any

from sqlalchemy import Connection, and_, or_, select, update

from followup.core.booking import check_move
from followup.storage import rows, tables
from followup.storage.rows import Row

OPEN = ("asked", "offered")
ENDED_IN_THE_SHOP = ("kept", "missed")
_REQUESTS = tables.booking_requests.c
_ONE = select(tables.booking_requests).where(
    _REQUESTS.id == rows.given("request_id"), _REQUESTS.shop_id == rows.given("shop_id")
)
_OF_STATES = select(tables.booking_requests).where(
    _REQUESTS.shop_id == rows.given("shop_id"), _REQUESTS.state.in_(rows.among("states"))
)
_ASKED_FIRST = _OF_STATES.order_by(_REQUESTS.asked_at)
_BY_SLOT = _OF_STATES.order_by(_REQUESTS.slot_at, _REQUESTS.id)
_BY_SLOT_SINCE = _BY_SLOT.where(_REQUESTS.slot_at >= rows.given("since"))
_HAS_ENDED = and_(_REQUESTS.state.in_(ENDED_IN_THE_SHOP), _REQUESTS.slot_at >= rows.given("since"))
_OF_TIMES = (
    select(tables.booking_requests)
    .where(
        _REQUESTS.shop_id == rows.given("shop_id"), or_(_REQUESTS.state.in_(("confirmed", *OPEN)), _HAS_ENDED)
    )
    .order_by(_REQUESTS.slot_at, _REQUESTS.id)
)  # fmt: skip


class SomebodyWasFirst(Exception):
    """Somebody changed this in the meantime: look at it again."""


def add_request(connection: Connection, now: datetime, who: str, **values: Any) -> int:
    """Add a booking request in the state that `values` names."""
    made = rows.add(
        connection, tables.booking_requests, asked_at=now, changed_at=now,
        **{"wanted": [], "avoid": [], "needs": [], "items": [], "hours": {}, "offered": [], "verbatim": "", **values},
    )  # fmt: skip
    _note_move(connection, values["shop_id"], made, now, who, "", values["state"], "")
    return made


def change_request(
    connection: Connection,
    request: Row,
    now: datetime,
    who: str,
    to_state: str | None = None,
    says: str = "",
    **values: Any,
) -> None:
    """Change a request as it was looked at, and keep the move. `SomebodyWasFirst` where it is another version now,
    `WrongMove` where its state cannot go there."""
    table = tables.booking_requests
    state = to_state or request["state"]
    if state != request["state"]:
        check_move(request["state"], state)
    done = connection.execute(
        update(table)
        .where(table.c.id == request["id"], table.c.version == request["version"])
        .values(state=state, changed_at=now, version=request["version"] + 1, **values)
    )
    if done.rowcount != 1:
        raise SomebodyWasFirst(SomebodyWasFirst.__doc__)
    _note_move(connection, request["shop_id"], request["id"], now, who, request["state"], state, says)


def note(connection: Connection, request: Row, now: datetime, who: str, says: str) -> None:
    """Write down something about a request that changes no state."""
    _note_move(connection, request["shop_id"], request["id"], now, who, request["state"], request["state"], says)


def _note_move(
    connection: Connection, shop_id: int, request_id: int, now: datetime, who: str, old: str, new: str, says: str
) -> None:
    rows.add(
        connection, tables.booking_moves, shop_id=shop_id, request_id=request_id, at=now, who=who, from_state=old,
        to_state=new, says=says,
    )  # fmt: skip


def load_request(connection: Connection, shop_id: int, request_id: int) -> Row | None:
    """One request, if it is this shop's."""
    return rows.first(connection, _ONE, request_id=request_id, shop_id=shop_id)


def open_requests(connection: Connection, shop_id: int) -> list[Row]:
    """Requests that wait for the shop or the customer, the oldest first."""
    return rows.every(connection, _ASKED_FIRST, shop_id=shop_id, states=OPEN)


def requests_of_shop(connection: Connection, shop_id: int, states: tuple[str, ...]) -> list[Row]:
    """Requests in these states, by their slot."""
    return rows.every(connection, _BY_SLOT, shop_id=shop_id, states=states)


def bookings_since(connection: Connection, shop_id: int, states: tuple[str, ...], since: datetime) -> list[Row]:
    """The same for times since then alone."""
    return rows.every(connection, _BY_SLOT_SINCE, shop_id=shop_id, states=states, since=since)


def requests_of_times(connection: Connection, shop_id: int, since: datetime) -> list[Row]:
    """Requests that are open, bookings that stand, and those that came, or were missed, at a time since then."""
    return rows.every(connection, _OF_TIMES, shop_id=shop_id, since=since)


def requests_of_persons(connection: Connection, person_ids: list[int]) -> list[Row]:
    """Every request of these persons, the newest first."""
    table = tables.booking_requests
    query = select(table).where(table.c.person_id.in_(person_ids)).order_by(table.c.id.desc())
    return rows.every(connection, query)


def is_asked_for_by_text(connection: Connection, phone_id: int) -> bool:
    """True where a request or booking stands that the phone asked for by text."""
    table = tables.booking_requests
    query = select(table.c.id).where(
        table.c.phone_id == phone_id, table.c.came_from == "text", table.c.state.in_((*OPEN, "confirmed"))
    )
    return rows.first(connection, query.limit(1)) is not None


def requests_of_vehicle(connection: Connection, vehicle_id: int) -> list[Row]:
    """Every request for a car, the newest first."""
    table = tables.booking_requests
    return rows.every(connection, select(table).where(table.c.vehicle_id == vehicle_id).order_by(table.c.id.desc()))


def moves_of_request(connection: Connection, request_id: int) -> list[Row]:
    """What happened to a request, oldest first."""
    table = tables.booking_moves
    return rows.every(connection, select(table).where(table.c.request_id == request_id).order_by(table.c.id))
