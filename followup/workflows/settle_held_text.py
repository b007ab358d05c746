"""Settle a text of which nobody knows whether it went out: a person decides, never the machine.

- Send again: held becomes planned. It is asked once more before it leaves, like any other text.
- Leave it: held becomes dropped; nothing leaves.

A text that was settled in the meantime (its delivery report came, a colleague was first) is left as it is.
"""

from __future__ import annotations

from datetime import datetime, timedelta

from followup.core.text import VALID_FOR
from followup.storage import inbox, outbox, shops
from followup.storage.rows import Row
from followup.storage.store import Connection, Store

_AS_LONG = timedelta(hours=12)


def send_again(store: Store, shop_id: int, text_id: int, who: str, now: datetime) -> bool:
    """Plan a held text once more; False where it is not held any more.

    Whoever presses it wants it to leave now, so a validity that ran out while it was held begins anew.
    """
    with store.write() as connection:
        text = _held(connection, shop_id, text_id)
        if text is None:
            return False
        until = text["valid_until"]
        if until is not None and until <= now:
            until = now + VALID_FOR.get(text["kind"], _AS_LONG)
        moved = outbox.move(
            connection, text_id, text["attempt"], "held", "planned", due_at=now, valid_until=until, claimed_by=None,
            claimed_until=None, state_because="sent again by a person's click", looks=0, look_at=None,
            refused_count=0,
        )  # fmt: skip
        if moved:
            shops.note(connection, shop_id, now, who, "sent a held text again", f"text {text_id}")
        return moved


def leave_it(store: Store, shop_id: int, text_id: int, who: str, now: datetime) -> bool:
    """Let a held text be; False where it is not held any more."""
    with store.write() as connection:
        text = _held(connection, shop_id, text_id)
        if text is None:
            return False
        because = "it may have gone out; a person left it"
        moved = outbox.move(connection, text_id, text["attempt"], "held", "dropped", state_because=because)
        if moved:
            shops.note(connection, shop_id, now, who, "left a held text", f"text {text_id}")
        return moved


def settle_letter(store: Store, shop_id: int, letter_id: int, who: str, now: datetime) -> bool:
    """A person looked at what fits nobody; False where there is no such letter, or it was settled before."""
    with store.write() as connection:
        done = inbox.settle_dead_letter(connection, shop_id, letter_id, now)
        if done:
            shops.note(connection, shop_id, now, who, "settled a dead letter", f"dead letter {letter_id}")
        return done


def _held(connection: Connection, shop_id: int, text_id: int) -> Row | None:
    text = outbox.load_text(connection, text_id)
    return text if text is not None and text["shop_id"] == shop_id and text["state"] == "held" else None
