"""Pace invites: place all that come up in the coming twelve weeks, so that the shop can take whom it invites.

1. At the first tick of a shop's day, and where its rules changed since, unless that is done already.
2. What the weeks hold is read, with bookings, held times and what the texts that are out are expected to bring; and
   every phone is decided ahead, week by week, by the planner's own decision.
3. `core/planning/pacing` places them: by the linear program, or by regret.
4. The night's run is begun, its rows are kept some at a time, and it is ended: from then on planning goes by it.

If the process dies in between, the run before it counts, and the next tick does this one anew. What is news between two
nights is placed by `plan_texts` into what is left.
"""

from __future__ import annotations

import logging
from dataclasses import replace
from datetime import datetime, timedelta
from itertools import islice
from typing import Any

from followup.core.planning.paced import PACED_REASON
from followup.core.planning.pacing.ahead import messages_of_phone
from followup.core.planning.pacing.message import Message
from followup.core.planning.pacing.pace import Placing, pace, solve
from followup.core.planning.pacing.room import Room
from followup.core.planning.pacing.weeks import WEEKS
from followup.core.planning.picture import CarPicture
from followup.core.shop import Shop
from followup.core.wall import day_of
from followup.storage import paced, pictures, room, shops
from followup.storage.rows import Row
from followup.storage.store import Store

_ROWS_AT_ONCE = 500


def pace_invites(store: Store, shop_id: int, now: datetime, *, needs_registration: bool = False) -> int | None:
    """Place every invite; how many. None where it is done for today, or the shop does not pace."""
    with store.read() as connection:
        shop = shops.load_shop(connection, shop_id)
        today = day_of(now, shop.zone)
        if not shop.rules.paces_invites or paced.has_ended(connection, shop_id, today, shop.rules_version):
            return None
        there, used = room.look_at_room(connection, shop, now)
        gathered = list(pictures.gather_ahead(connection, shop, now, timedelta(weeks=WEEKS + 1)))
    messages = [one for some in gathered for one in _messages(some, shop, there, now, needs_registration)]
    placing = pace(messages, there, used, solve)
    vehicles = {one["code"]: one["id"] for some in gathered for found in some.vehicles.values() for one in found}
    with store.write() as connection:
        run = paced.begin_run(connection, shop_id, today, shop.rules_version, now)
    if run is None:
        return None
    found = iter(_rows(run, messages, placing, there, vehicles, now))
    while some := list(islice(found, _ROWS_AT_ONCE)):
        with store.write() as connection:
            paced.keep_new(connection, some)
    return _end(store, run, messages, placing, now)


def _messages(
    gathered: pictures.Gathered, shop: Shop, there: Room, now: datetime, needs_registration: bool
) -> list[Message]:
    # What an earlier night said must not keep it from being placed anew.
    anew = replace(gathered, placed={})
    found: list[Message] = []
    for phone in anew.phones:
        curves = pictures.curves_of_phone(anew, phone["id"], day_of(now, shop.zone))

        def pictures_at(moment: datetime, phone: Row = phone) -> list[CarPicture]:
            return pictures.pictures_of_phone(anew, shop, phone, moment, needs_registration=needs_registration)

        found += messages_of_phone(pictures_at, curves, there, now)
    return found


def _rows(
    run: Row, messages: list[Message], placing: Placing, there: Room, vehicles: dict[str, int], now: datetime
) -> list[dict[str, Any]]:
    return [
        paced.row_of(run, one, week, full, there, vehicles[one.key[1]], now)
        for one, week, full in zip(messages, placing.weeks, placing.full, strict=True)
    ]


def _end(store: Store, run: Row, messages: list[Message], placing: Placing, now: datetime) -> int | None:
    waiting = sum(week > one.first_week for one, week in zip(messages, placing.weeks, strict=True))
    body = {"invites": len(messages), "waiting": waiting, "cost": round(placing.cost, 3), "reason": PACED_REASON}
    with store.write() as connection:
        is_ours = paced.end_run(connection, run, now, placing.how, body)
    if waiting:
        logging.getLogger(__name__).info("%s of %s invites wait for room (%s)", waiting, len(messages), placing.how)
    return len(messages) if is_ours else None
