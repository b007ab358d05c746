"""Answer a text that came in: understand it, decide by the conversation's table, and carry out what was decided.

1. The text is taken in this transaction; where another process was first there is nothing to do.
2. Everything that the understanding needs is read: what was asked and offered, the booking that stands, the cars.
3. The meaning and the decision are pure (`core/replies`, `core/conversation`).
4. Its effects are carried out: answers become rows like any other text, requests, consent, alerts, rests.

All of it is one transaction: if the process dies, nothing happened and the clock's tick answers the text again.
"""

from __future__ import annotations

import logging
from dataclasses import replace
from datetime import datetime

from followup.core.conversation import respond
from followup.core.conversation.listen import hear, stops_first
from followup.core.replies.understand import understand
from followup.storage import consents, inbox
from followup.storage.store import DATABASE_TROUBLE, Store
from followup.workflows.answer_inbound.effects import carry_out
from followup.workflows.answer_inbound.thread import Thread, open_thread, reply_in

_LOG = logging.getLogger(__name__)


def answer_inbound(store: Store, inbound_id: int, now: datetime, secret: str) -> bool:
    """Answer one kept text; False where it was answered before. `secret` keys the ledger's hash of numbers."""
    with store.write() as connection:
        kept = inbox.load_inbound(connection, inbound_id)
        if kept is None or kept["handled_at"] is not None:
            return False
        # The number before the row, as whoever keeps a text does: a duplicate that is kept now would wait for the row
        # with the lock in its hand, and each for the other.
        consents.lock(connection, kept["shop_id"], kept["number"])
        row = inbox.begin_handling(connection, inbound_id, now)
        if row is None:
            return False
        thread = open_thread(connection, row, now)
        asked_of = reply_in(connection, thread)
        reply = understand(asked_of)
        heard = replace(hear(row["body"], reply), pictures=row["pictures"])
        step = respond(thread.state, heard, thread.around, now)
        carry_out(connection, thread, reply, step.effects, secret)
        thread.keep(connection, step.state)
        inbox.keep_meaning(
            connection, inbound_id, asked_of.model_dump(mode="json"), reply.model_dump(mode="json"), step.why
        )
    return True


def answer_waiting(store: Store, shop_id: int, now: datetime, secret: str) -> int:
    """Answer every kept text of the shop that nothing answered yet, stops first; how many were answered.

    One that cannot be answered keeps nobody else waiting: it is tried again, and `followup doctor` names it.
    """
    with store.read() as connection:
        waiting = inbox.waiting(connection, shop_id)
    answered = 0
    for place in stops_first((one["number"], one["body"]) for one in waiting):
        inbound_id = waiting[place]["id"]
        try:
            answered += answer_inbound(store, inbound_id, now, secret)
        except DATABASE_TROUBLE:
            raise
        except Exception:
            _LOG.exception("inbound %s could not be answered", inbound_id)
    return answered


__all__ = ["Thread", "answer_inbound", "answer_waiting"]
