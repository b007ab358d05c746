"""Settle what time has settled: offers that were not taken go back, and their request waits for an advisor again.

Each request is its own transaction that names the version it saw; if another process was first, nothing happens.
"""

from __future__ import annotations

from datetime import datetime

from followup.storage import alerts, outbox, requests
from followup.storage.requests import SomebodyWasFirst
from followup.storage.rows import Row
from followup.storage.store import Store

WHO = "the clock"


def settle_over_time(store: Store, shop_id: int, now: datetime) -> int:
    """Give back offers whose time is over; how many."""
    with store.read() as connection:
        offered = requests.requests_of_shop(connection, shop_id, ("offered",))
    over = [row for row in offered if row["offered_until"] and row["offered_until"] <= now]
    return sum(_give_back(store, shop_id, row, now) for row in over)


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
