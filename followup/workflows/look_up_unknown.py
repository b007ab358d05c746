"""Look up texts of which nobody knows whether they went out.

1. The provider's list is asked for a text of that wording to that number since the attempt began: found is proof.
2. Not found is no proof (lists lag): it is looked for again after 2, 10 and 60 minutes.
   A list that could not be read is no look: it is asked again soon.
3. After the last look it is `held` and shown to an advisor; only a person's click sends it again.

A delivery report that names the attempt settles it at any time (`keep_status`). Looking twice does no harm.
"""

from __future__ import annotations

from datetime import datetime, timedelta

from followup.points import reached
from followup.storage import outbox, outcomes, shops
from followup.storage.rows import Row
from followup.storage.store import Store
from followup.transports.transport import Found, LookUpFailed, Transport

LOOK_AGAIN_AFTER = (timedelta(minutes=2), timedelta(minutes=10), timedelta(minutes=60))
NOT_READ_AGAIN_AFTER = timedelta(minutes=2)
# The provider's clock may run behind ours.
CLOCKS_DIFFER = timedelta(minutes=2)


def look_up_unknown(store: Store, transport: Transport, shop_id: int, now: datetime) -> int:
    """Look up every text whose next look has come; how many were found."""
    with store.read() as connection:
        due = outcomes.unknown_texts(connection, shop_id, now)
        if not due:
            return 0
        shop = shops.load_shop(connection, shop_id)
    return sum(_look(store, transport, shop.texts_from, row, now) for row in due)


def _look(store: Store, transport: Transport, sender: str, row: Row, now: datetime) -> bool:
    try:
        found = transport.find_sent(row["number"], sender, row["body"] or "", row["in_flight_at"] - CLOCKS_DIFFER)
    except LookUpFailed:
        found = None
    reached("looked")
    with store.write() as connection:
        mine = next((one for one in found or () if not outcomes.is_bound(connection, one.provider_id)), None)
        to_state, news = _next(row, found, mine, now)
        outbox.move(connection, row["id"], row["attempt"], "unknown", to_state, **news)
        reached("look written")
    return mine is not None


def _next(row: Row, found: list[Found] | None, mine: Found | None, now: datetime) -> tuple[str, dict[str, object]]:
    """What this look makes of the text, and what is noted with it."""
    if mine is not None:
        return "sent", _proof(mine)
    if found is None:
        return "unknown", {"look_at": now + NOT_READ_AGAIN_AFTER}
    if row["looks"] < len(LOOK_AGAIN_AFTER):
        return "unknown", {"looks": row["looks"] + 1, "look_at": now + LOOK_AGAIN_AFTER[row["looks"]]}
    return "held", {"state_because": "not sure that it went out", "look_at": None}


def _proof(found: Found) -> dict[str, object]:
    return {
        "provider_id": found.provider_id,
        "sent_at": found.created_at,
        "delivery": found.status,
        "state_because": outcomes.FOUND_IN_LIST,
    }
