"""Answer an alert: "I am calling" stops its clocks, an outcome closes it.

1. "I am calling" names who does it; whoever was first stands, and queued texts to staff about it are not sent.
2. The outcome closes the alert. Where it was the last open symptom of its phone, the thread may speak again: that is
   the only way in which a symptom ends.

Each is one transaction; if the process dies, all of it happened or nothing.
"""

from __future__ import annotations

from datetime import datetime

from followup.storage import alerts, inbox, shops
from followup.storage.rows import Row
from followup.storage.store import Connection, Store


def say_calling(store: Store, shop_id: int, alert_id: int, staff_id: int, now: datetime) -> bool:
    """ "I am calling"; False where somebody said so before, or there is no such alert."""
    with store.write() as connection:
        return alerts.acknowledge(connection, shop_id, alert_id, staff_id, now)


def close_alert(
    store: Store, shop_id: int, alert_id: int, outcome: str, staff_id: int, who: str, now: datetime
) -> bool:
    """Write down how it ended; False where it was closed before, or there is no such alert."""
    with store.write() as connection:
        alert = alerts.load_alert(connection, shop_id, alert_id)
        if alert is None or not alerts.close(connection, shop_id, alert_id, outcome, now):
            return False
        alerts.acknowledge(connection, shop_id, alert_id, staff_id, now)
        shops.note(connection, shop_id, now, who, "closed an alert", f"alert {alert_id}", after={"outcome": outcome})
        if alert["kind"].startswith("symptom"):
            _end_symptom(connection, shop_id, alert, now)
    return True


def _end_symptom(connection: Connection, shop_id: int, alert: Row, now: datetime) -> None:
    phone_id = alert["phone_id"]
    if phone_id is None or _has_open_symptom(connection, phone_id):
        return
    state, thread = inbox.conversation_of(connection, phone_id)
    if state.get("open_symptom"):
        state["open_symptom"] = None
        inbox.keep_conversation(connection, shop_id, phone_id, now, state, thread)


def _has_open_symptom(connection: Connection, phone_id: int) -> bool:
    return any(
        row["closed_at"] is None and row["kind"].startswith("symptom")
        for row in alerts.alerts_of_phone(connection, phone_id)
    )
