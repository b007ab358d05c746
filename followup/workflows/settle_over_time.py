"""Settle what time has settled: offers that were not taken go back, bookings whose day came, forms left half filled.

An offer's request waits for an advisor again. A booking was kept where a visit of its car was opened on its day; where
none was, somebody is asked whether they came, once: that nothing was written down is no proof that nobody came.

Each request is its own transaction that names the version it saw; if another process was first, nothing happens.
"""

from __future__ import annotations

from datetime import datetime, timedelta

from followup.core.shop import Shop
from followup.core.wall import day_of, start_of, to_wall
from followup.storage import alerts, drafts, inspections, outbox, requests, shops
from followup.storage.requests import SomebodyWasFirst
from followup.storage.rows import Row
from followup.storage.store import Connection, Store

WHO = "the clock"


def settle_over_time(store: Store, shop_id: int, now: datetime) -> int:
    """Give back offers whose time is over, settle bookings whose day came, throw old drafts away; how many."""
    with store.read() as connection:
        shop = shops.load_shop(connection, shop_id)
        offered = requests.requests_of_shop(connection, shop_id, ("offered",))
        today = day_of(now, shop.zone)
        booked = [
            row
            for row in requests.requests_of_shop(connection, shop_id, ("confirmed",))
            if row["slot_at"] and day_of(row["slot_at"], shop.zone) <= today
        ]
        came = {row["id"] for row in booked if _came(connection, shop, row)}
        too_old = drafts.are_kept_before(connection, shop_id, shop.drafts_count_from(now))
    over = [row for row in offered if row["offered_until"] and row["offered_until"] <= now]
    missing = [row for row in booked if row["id"] not in came and day_of(row["slot_at"], shop.zone) < today]
    return (
        sum(_give_back(store, shop_id, row, now) for row in over)
        + sum(_was_kept(store, shop_id, row, now) for row in booked if row["id"] in came)
        + sum(_ask(store, shop, row, now) for row in missing)
        + (_forget_drafts(store, shop, now) if too_old else 0)
    )


def _forget_drafts(store: Store, shop: Shop, now: datetime) -> int:
    with store.write() as connection:
        return drafts.forget_old(connection, shop.id, shop.drafts_count_from(now))


def _came(connection: Connection, shop: Shop, booking: Row) -> bool:
    """Whether a visit of the car was opened on the booking's day."""
    begins = start_of(day_of(booking["slot_at"], shop.zone), shop.zone)
    visits = inspections.visits_of_vehicle(connection, booking["vehicle_id"])
    return any(begins <= one["opened_at"] < begins + timedelta(days=1) for one in visits)


def _was_kept(store: Store, shop_id: int, booking: Row, now: datetime) -> bool:
    try:
        with store.write() as connection:
            requests.change_request(connection, booking, now, WHO, "kept", "a visit was opened on its day")
            outbox.drop_planned(
                connection, shop_id, "the booking was kept", request_id=booking["id"], kinds=("visit",),
                reason_codes=("confirmation", "reminder"),
            )  # fmt: skip
    except SomebodyWasFirst:
        return False
    return True


def _ask(store: Store, shop: Shop, booking: Row, now: datetime) -> bool:
    """List it for the end of the day; the key lists it once, however often this is asked."""
    at = to_wall(booking["slot_at"], shop.zone)
    with store.read() as connection:
        if alerts.is_raised(connection, shop.id, "listed", _key(booking)):
            return False
    with store.write() as connection:
        made = alerts.raise_alert(
            connection, shop_id=shop.id, kind="listed", phone_id=booking["phone_id"], person_id=booking["person_id"],
            vehicle_id=booking["vehicle_id"], request_id=booking["id"], raised_by=_key(booking), raised_at=now,
            says=f"booked for {at:%Y-%m-%d %H:%M} and no visit was opened that day: did they come?", next_at=now,
        )  # fmt: skip
    return made is not None


def _key(booking: Row) -> str:
    return f"request:{booking['id']}:did they come"


def _give_back(store: Store, shop_id: int, request: Row, now: datetime) -> bool:
    try:
        with store.write() as connection:
            requests.change_request(
                connection,
                request,
                now,
                WHO,
                "asked",
                "the offered times were not taken",
                offered=[],
                offered_until=None,
            )
            outbox.drop_planned(
                connection, shop_id, "the offer is over", request_id=request["id"], kinds=("visit",),
                reason_codes=("offer_times",),
            )  # fmt: skip
            alerts.raise_alert(
                connection, shop_id=shop_id, kind="request", phone_id=request["phone_id"],
                person_id=request["person_id"], vehicle_id=request["vehicle_id"], request_id=request["id"],
                says="the offered times were not taken", raised_by=f"request:{request['id']}:{request['version']}",
                raised_at=now, next_at=now,
            )  # fmt: skip
    except SomebodyWasFirst:
        return False
    return True
