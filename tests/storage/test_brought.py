"""What invites brought, out of texts and bookings: each booking goes to the text before it, once."""

from __future__ import annotations

from datetime import datetime, timedelta
from typing import Any

from followup.core.planning.pacing.brought import USUAL
from followup.storage import outbox, requests
from followup.storage.brought import brought_by_texts
from followup.storage.room import look_at_room
from tests.workflows import counter as counters
from tests.workflows.counter import NOW, NUMBER, Counter

DAY = timedelta(days=1)


def _sent(connection: Any, counter: Counter, at: datetime, try_no: int = 1) -> None:
    made = outbox.plan_text(
        connection, counter.shop_id, "due_work", f"known {at}", at, phone_id=counter.phone_id, number=NUMBER,
        language="en", facts={"items": []}, vehicle_id=counter.vehicle_id, try_no=try_no,
    )  # fmt: skip
    assert made is not None
    outbox.change_text(connection, made, state="sent", sent_at=at)


def _booked(connection: Any, counter: Counter, asked_at: datetime, slot_at: datetime, state: str = "kept") -> None:
    requests.add_request(
        connection, asked_at, "customer", shop_id=counter.shop_id, phone_id=counter.phone_id,
        person_id=counter.person_id, vehicle_id=counter.vehicle_id, state=state, came_from="phone", verbatim="",
        wanted=[], items=[], hours={}, slot_at=slot_at,
    )  # fmt: skip


def test_each_booking_goes_to_the_text_before_it(database_url: str) -> None:
    counter = counters.open_counter(database_url)
    with counter.store.write() as connection:
        first, second, third, late = (NOW - days * DAY for days in (300, 288, 100, 10))
        for at, number in ((first, 1), (second, 2), (third, 1), (late, 1)):
            _sent(connection, counter, at, number)
        # The second text brought it: nine days later, so in its second week.
        _booked(connection, counter, second + 2 * DAY, second + 9 * DAY)
        # The same text is not booked twice; nothing comes of what was called off, nor of a text long before.
        _booked(connection, counter, second + 3 * DAY, second + 10 * DAY)
        _booked(connection, counter, third + DAY, third + 5 * DAY, "closed")
        _booked(connection, counter, third + 40 * DAY, third + 41 * DAY)
        # The last one may be answered yet.
        _booked(connection, counter, late + DAY, late + 2 * DAY, "confirmed")
        found = brought_by_texts(connection, counter.shop_id, NOW)
        there, _ = look_at_room(connection, counter.shop(), NOW)
    assert (found.texts, found.visits) == ((2, 1), 1)
    assert found.booked == ((0 + 35) / 102, (1 + 20) / 101)
    assert found.landing[1] > USUAL.landing[1]
    assert there.brought == found, "pacing goes by it"
