"""Look at the phone list: everybody whom a person calls because no text may say it, the oldest first.

Reads only.
"""

from __future__ import annotations

from followup.storage import alerts, seen
from followup.storage.seen import SeenAlert
from followup.storage.store import Store

# What nobody is woken for: calls that planning asks for, numbers and cars that changed hands, replies to look at.
KINDS = ("phone_task", "tie", "unclear", "listed")


def look_at_phone_list(store: Store, shop_id: int) -> tuple[SeenAlert, ...]:
    """Who is to be called and why; calls before what is only to be looked at."""
    with store.read() as connection:
        found = [row for row in alerts.open_alerts(connection, shop_id) if row["kind"] in KINDS]
        found.sort(key=lambda row: (KINDS.index(row["kind"]), row["raised_at"]))
        return tuple(seen.see_alert(connection, shop_id, row) for row in found)
