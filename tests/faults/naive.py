"""Naive designs of sending, coming in and moving, put in the place of the real one in a trial's processes.

The harness must catch all of them: one that cannot show them failing tests nothing.
"""

from __future__ import annotations

import secrets
import threading
from datetime import datetime
from typing import Any

from sqlalchemy import Connection, update

from followup.storage import inbox, machine, moving, outbox, outcomes, tables
from followup.transports.transport import NotAccepted, OutcomeUnknown, OutgoingText, SentReceipt
from followup.transports.twilio import Twilio
from followup.wiring import House


def retry_when_in_doubt() -> None:
    """At least once: whatever was not said to be taken is sent again, and so is what was in flight at a crash."""
    send = Twilio.send

    def send_or_retry(self: Twilio, text: OutgoingText) -> SentReceipt:
        try:
            return send(self, text)
        except OutcomeUnknown:
            raise NotAccepted from None

    def send_lost_again(connection: Connection, shop_id: int, _first_look: datetime) -> int:
        table = tables.texts
        lost = [table.c.shop_id == shop_id, table.c.state == "in_flight"]
        lost.append(table.c.claimed_until < machine.database_now(connection))
        return connection.execute(update(table).where(*lost).values(state="planned")).rowcount

    Twilio.send = send_or_retry  # type: ignore[method-assign]  # in a trial's process alone
    outcomes.mark_lost_in_flight = send_lost_again


def mark_then_call() -> None:
    """At most once: a text counts as sent before it is handed over."""
    move = outbox.move

    def move_ahead(connection: Connection, text_id: int, attempt: int, before: Any, after: str, **values: Any) -> bool:
        is_leaving = after == "in_flight"
        if is_leaving:
            values["sent_at"] = values["in_flight_at"]
        return move(connection, text_id, attempt, before, "sent" if is_leaving else after, **values)

    def keep_id(
        connection: Connection, text_id: int, _attempt: int, provider_id: str, status: str, _now: datetime
    ) -> bool:
        outbox.change_text(connection, text_id, provider_id=provider_id, delivery=status)
        return True

    outbox.move = move_ahead
    outcomes.keep_receipt = keep_id
    outcomes.with_time_left = lambda _connection, attempts, _needs: set(attempts)


def acknowledge_first() -> None:
    """A hook is answered at once and what it brought is kept a moment later."""
    receive = House.receive_text

    def receive_later(self: House, fields: Any) -> bool:
        threading.Thread(target=receive, args=(self, fields)).start()
        return True

    House.receive_text = receive_later  # type: ignore[method-assign]  # in a trial's process alone


def count_each_post() -> None:
    """Each hook is a new text, whatever id it names."""
    keep = inbox.keep_raw

    def keep_always(connection: Connection, **values: Any) -> int | None:
        return keep(connection, **{**values, "provider_id": f"{values['provider_id']} {secrets.token_hex(4)}"})

    inbox.keep_raw = keep_always


def copy_and_go_on() -> None:
    """A move copies every row, and the old database is left as it was."""
    moving.close = lambda *_: None
