"""See whether anything waits at an instant, so that a stepped clock may pass it by. Nothing is changed."""

from __future__ import annotations

from datetime import datetime

from followup.storage import queue
from followup.storage.store import Store


def is_anything_waiting(store: Store, shop_id: int, now: datetime) -> bool:
    """Whether a text, an answer or the telling of an alert of the shop is due at this instant."""
    with store.read() as connection:
        return queue.is_anything_waiting(connection, shop_id, now)
