"""Note that a customer is running late: the booking stands, its history says so, the alert about it is closed."""

from __future__ import annotations

from datetime import datetime

from followup.storage import alerts, requests
from followup.storage.store import Store


def note_running_late(store: Store, shop_id: int, request_id: int, staff_id: int, who: str, now: datetime) -> bool:
    """Write it down; False where the shop has no such booking that stands.

    Nothing of the booking changes, so whoever has its page open is not told that somebody was first.
    """
    with store.write() as connection:
        request = requests.load_request(connection, shop_id, request_id)
        if request is None or request["state"] != "confirmed":
            return False
        requests.note(connection, request, now, who, "running late")
        for alert in alerts.open_alerts(connection, shop_id):
            if alert["kind"] == "running_late" and alert["person_id"] == request["person_id"]:
                alerts.acknowledge(connection, shop_id, alert["id"], staff_id, now)
                alerts.close(connection, shop_id, alert["id"], "noted: running late", now)
    return True
