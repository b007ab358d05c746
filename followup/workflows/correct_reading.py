"""Keep what a customer meant by a text that was read wrongly, and show the text to whoever puts it right.

1. The text is taken with its context and what was read of it, as they were kept when it came.
2. The pair is kept; a second correction takes the place of the first.
3. What was meant is not done by this: a person has read the text and does it. Only a symptom, which nobody may miss,
   raises its alert in the same transaction, once; a stop is taken back by `take_back_consent` before this is called.

If the process dies, nothing was kept and the press can be repeated.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from typing import Any

from followup.core.replies.contract import Meant
from followup.storage import alerts, corrections, inbox
from followup.storage.rows import Row
from followup.storage.store import Connection, Store


@dataclass(frozen=True)
class TextRead:
    """A text of a customer and what was read of it. `meant` and the two after it: what somebody said was meant."""

    inbound_id: int
    phone_id: int | None
    text: str
    received_at: datetime
    meanings: tuple[str, ...]
    starts: tuple[str, ...]
    certainty: float | None
    meant: str | None = None
    meant_start: str | None = None
    corrected_by: str | None = None


def look_at_reading(store: Store, shop_id: int, inbound_id: int) -> TextRead | None:
    """One text that was read; None where the shop has none of that id, or nothing has read it yet."""
    with store.read() as connection:
        row = _read_text(connection, shop_id, inbound_id)
        if row is None:
            return None
        found = corrections.correction_of(connection, inbound_id)
        meaning: dict[str, Any] = row["meaning"]
        return TextRead(
            inbound_id=inbound_id,
            phone_id=row["phone_id"],
            text=row["body"],
            received_at=row["received_at"],
            meanings=tuple(meaning["meanings"]),
            starts=tuple(one["start"] for one in meaning.get("times", ())),
            certainty=meaning.get("certainty"),
            meant=found["meant"]["meaning"] if found else None,
            meant_start=found["meant"].get("start") if found else None,
            corrected_by=found["who"] if found else None,
        )


def correct_reading(store: Store, shop_id: int, inbound_id: int, meant: Meant, staff_id: int, now: datetime) -> bool:
    """Keep the correction; False where the shop has no such text, or nothing has read it yet."""
    with store.write() as connection:
        row = _read_text(connection, shop_id, inbound_id)
        if row is None:
            return False
        corrections.keep_correction(connection, row, meant.model_dump(mode="json"), staff_id, now)
        if meant.meaning == "symptom":
            alerts.raise_alert(
                connection, shop_id=shop_id, kind="symptom_now", phone_id=row["phone_id"], inbound_id=inbound_id,
                raised_at=now, next_at=now, raised_by=f"corrected:{inbound_id}",
                says="a symptom that was read as something else, in the customer's own words",
            )  # fmt: skip
    return True


def corrections_as_lines(store: Store, shop_id: int) -> list[dict[str, Any]]:
    """What `followup understand --replay` reads: one object a correction, the oldest first."""
    with store.read() as connection:
        kept = corrections.corrections_of_shop(connection, shop_id)
    return [{"reply": row["reply"], "read": row["reading"], "meant": row["meant"]} for row in kept]


def _read_text(connection: Connection, shop_id: int, inbound_id: int) -> Row | None:
    row = inbox.load_inbound(connection, inbound_id)
    return row if row and row["shop_id"] == shop_id and row["context"] and row["meaning"] else None
