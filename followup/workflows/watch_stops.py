"""Watch how many customers stop the texts, so that it is never noticed late.

1. A trial of wordings in which more stop than the shop's bound allows, by either wording, ends by itself: the wording
   under which fewer stopped counts from then on, and a manager is told.
2. The same for all invites of the last 30 days, told once a month.

Each in one transaction; the alert's own key makes it once, whatever runs twice.
"""

from __future__ import annotations

from datetime import datetime, timedelta

from followup.core.planning.wording_trial import Arm, has_many_stops
from followup.core.shop import Shop
from followup.core.text import REASON_BY_CODE
from followup.core.wall import day_of
from followup.storage import alerts, results, shops, trials, wordings
from followup.storage.rows import Row
from followup.storage.store import Connection, Store

KIND = "many_stops"
LOOKED_BACK = timedelta(days=30)


def watch_stops(store: Store, shop_id: int, now: datetime) -> int:
    """End trials and tell a manager where too many stop; how many alerts were raised."""
    with store.read() as connection:
        shop = shops.load_shop(connection, shop_id)
        running = [(trial, trials.arms(connection, trial)) for trial in trials.open_trials(connection, shop_id)]
        invited = results.customers_invited(connection, shop_id, now - LOOKED_BACK)
        stopped = len(results.stops_since(connection, shop_id, now - LOOKED_BACK))
    raised, bound = 0, shop.rules.most_stops_per_100
    for trial, arms in running:
        if any(has_many_stops(arm, bound) for arm in arms):
            with store.write() as connection:
                raised += _end(connection, shop, trial, arms, now)
    if has_many_stops(Arm(customers=invited, stopped=stopped), bound):
        says = f"{stopped} stops on {invited} customers with invites in 30 days: look at what we say and how often"
        with store.write() as connection:
            raised += _tell(connection, shop, f"invites {day_of(now, shop.zone):%Y-%m}", says, now)
    return raised


def _end(connection: Connection, shop: Shop, trial: Row, arms: tuple[Arm, Arm], now: datetime) -> int:
    first, second = arms
    calmer = "second" if second.stopped * first.customers < first.stopped * second.customers else "first"
    counts = " and ".join(
        f"{one.stopped} of {one.customers} stopped by the {name}"
        for name, one in zip(("first", "second"), arms, strict=True)
    )
    because = f"it ended by itself: {counts}; the {calmer} wording is used"
    if not trials.end(connection, shop.id, trial["id"], now, because):
        return 0
    wordings.use(connection, trial, trial[f"{calmer}_id"], now)
    about = REASON_BY_CODE[trial["reason"]].words
    return _tell(connection, shop, f"trial {trial['id']}", f"the trial of wordings ({about}): {because}", now)


def _tell(connection: Connection, shop: Shop, key: str, says: str, now: datetime) -> int:
    raised = alerts.raise_alert(
        connection, shop_id=shop.id, kind=KIND, says=says, raised_by=key, raised_at=now, next_at=now
    )
    return int(raised is not None)
