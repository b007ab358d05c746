"""What this shop's invites about due work brought in the last two years: each booking goes to the text before it."""

from __future__ import annotations

from bisect import bisect_right
from collections import defaultdict
from datetime import datetime, timedelta

from sqlalchemy import Connection

from followup.core.planning.paced import PACED_REASON
from followup.core.planning.pacing.brought import COUNTS_FOR_DAYS, Brought, learn_brought
from followup.storage import results
from followup.storage.rows import Row

_LOOKS_BACK, _COUNTS_FOR = timedelta(days=730), timedelta(days=COUNTS_FOR_DAYS)
_DAY = timedelta(days=1)
# A booking that was closed brings nobody; one that was missed did come of the text, and its hours were held.
_STANDS = frozenset({"asked", "offered", "confirmed", "kept", "missed"})


def brought_by_texts(connection: Connection, shop_id: int, now: datetime) -> Brought:
    """What is usual, moved towards what is counted. Texts of the last four weeks may be answered yet, and are left
    out."""
    texts = results.invites_with_try(connection, shop_id, now - _LOOKS_BACK, PACED_REASON)
    by_car: dict[int, list[Row]] = defaultdict(list)
    for one in texts:
        by_car[one["vehicle_id"]].append(one)
    booked: dict[int, set[datetime]] = defaultdict(set)
    days: list[float] = []
    for request in results.requests_since(connection, shop_id, now - _LOOKS_BACK):
        sent = by_car.get(request["vehicle_id"], [])
        at = bisect_right(sent, request["asked_at"], key=lambda one: one["sent_at"]) - 1
        if at < 0 or request["state"] not in _STANDS or request["asked_at"] > sent[at]["sent_at"] + _COUNTS_FOR:
            continue
        left_at, seen = sent[at]["sent_at"], booked[request["vehicle_id"]]
        if left_at > now - _COUNTS_FOR or left_at in seen:
            continue
        seen.add(left_at)
        if request["slot_at"] is not None:
            days.append((request["slot_at"] - left_at) / _DAY)
    old = [one for one in texts if one["sent_at"] <= now - _COUNTS_FOR]
    return learn_brought(((one["try_no"], one["sent_at"] in booked[one["vehicle_id"]]) for one in old), days)
