"""Look up texts of which nobody knows whether they went out.

1. The provider's list is asked for a text of that wording to that number since the attempt began: found is proof.
2. Not found is no proof (lists lag): it is looked for again after 2, 10 and 60 minutes.
3. After the last look it is `held` and shown to an advisor; only a person's click sends it again.

A delivery report that names the attempt settles it at any time (`keep_status`). Looking twice does no harm.
"""

from __future__ import annotations

from datetime import datetime, timedelta

from followup.storage import outbox, shops
from followup.storage.rows import Row
from followup.storage.store import Store
from followup.transports.transport import Found, LookUpFailed, Transport

LOOK_AGAIN_AFTER = (timedelta(minutes=2), timedelta(minutes=10), timedelta(minutes=60))
# The provider's clock may run behind ours.
CLOCKS_DIFFER = timedelta(minutes=2)


def look_up_unknown(store: Store, transport: Transport, shop_id: int, now: datetime) -> int:
    """Look up every text whose next look has come; how many were found."""
    with store.read() as connection:
        shop = shops.load_shop(connection, shop_id)
        due = outbox.unknown_texts(connection, shop_id, now)
    return sum(_look(store, transport, shop.texts_from, row, now) for row in due)


def _look(store: Store, transport: Transport, sender: str, row: Row, now: datetime) -> bool:
    try:
        found = transport.find_sent(row["number"], sender, row["body"] or "", row["in_flight_at"] - CLOCKS_DIFFER)
    except LookUpFailed:
        found = []
    with store.write() as connection:
        mine = next((one for one in found if not outbox.is_bound(connection, one.provider_id)), None)
        if mine is not None:
            outbox.move(connection, row["id"], row["attempt"], "unknown", "sent", **_proof(mine))
            return True
        if row["looks"] < len(LOOK_AGAIN_AFTER):
            outbox.change_text(
                connection, row["id"], looks=row["looks"] + 1, look_at=now + LOOK_AGAIN_AFTER[row["looks"]]
            )
        else:
            outbox.move(
                connection, row["id"], row["attempt"], "unknown", "held", state_because="not sure that it went out"
            )
    return False


def _proof(found: Found) -> dict[str, object]:
    return {
        "provider_id": found.provider_id,
        "sent_at": found.created_at,
        "delivery": found.status,
        "state_because": "found in the provider's list",
    }
