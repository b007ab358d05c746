"""The provider refuses the whole account or number: the owner is told once, until texts leave again.

Not by a text: it would meet the same refusal. It stands on the pages, and `followup doctor` names it.
"""

from __future__ import annotations

from datetime import datetime

from followup.storage import alerts
from followup.storage.rows import Row
from followup.storage.store import Connection, Store
from followup.transports.transport import ProvenRefused

KIND = "texts_refused"


def tell_owner(connection: Connection, text: Row, refused: ProvenRefused, now: datetime) -> None:
    """Raise the alert where none is open."""
    if alerts.open_of_kind(connection, text["shop_id"], KIND):
        return
    code = f" ({refused.code})" if refused.code else ""
    alerts.raise_alert(
        connection, shop_id=text["shop_id"], kind=KIND, says=f"{refused.words}{code}", raised_at=now, next_at=now,
        raised_by=f"text:{text['public_id']}:{text['attempt']}",
    )  # fmt: skip


def note_that_texts_leave(store: Store, shop_id: int, now: datetime) -> None:
    """Close what is open: the provider takes texts again."""
    with store.read() as connection:
        still_open = alerts.open_of_kind(connection, shop_id, KIND)
    for alert in still_open:
        with store.write() as connection:
            alerts.close(connection, shop_id, alert["id"], "the provider takes texts again", now)
