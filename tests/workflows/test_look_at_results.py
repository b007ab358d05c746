"""Counts of a small scenario, worked out by hand.

The customer of `counter` was invited on a Tuesday; what came of it is written down below, day by day. Too few to tell:
the rule of three, from memory (none in n leaves up to 3/n possible at 95 %).
"""

from __future__ import annotations

from datetime import UTC, datetime, timedelta

import pytest

from followup.core.consent import ConsentEntry
from followup.storage import alerts, consents, outbox, requests, windows
from followup.storage.rows import Row
from followup.web.manager.home import monday_lines, waited
from followup.workflows.look_at_results import ENOUGH_INVITES, ENOUGH_TEXTS, Results, look_at_results
from tests.workflows.counter import NOW, NUMBER, SECRET, Counter, open_counter

DAY, HOUR, MINUTE = timedelta(days=1), timedelta(hours=1), timedelta(minutes=1)
MONDAY = datetime(2026, 11, 30, 15, 0, tzinfo=UTC)


@pytest.fixture
def counter(database_url: str) -> Counter:
    """The shop with its one customer."""
    return open_counter(database_url)


def send(counter: Counter, at: datetime, code: str = "due_work", cause: str = "test") -> None:
    text_id = counter.plan(code, cause)
    with counter.store.write() as connection:
        outbox.change_text(connection, text_id, state="sent", sent_at=at, body="x", provider_id=f"p{text_id}")


def look(counter: Counter, now: datetime = MONDAY, days: int = 30) -> Results:
    return look_at_results(counter.store, counter.shop_id, now, days)


def move(counter: Counter, request: int, state: str, at: datetime, **values: object) -> Row:
    with counter.store.write() as connection:
        row = requests.load_request(connection, counter.shop_id, request)
        assert row is not None
        requests.change_request(connection, row, at, "Avery Stone", state, **values)
    return row


def test_nothing_happened_is_said_as_nothing(counter: Counter) -> None:
    seen = look(counter)
    assert (seen.invites, seen.replies, seen.stops, seen.brought.asked) == (0, 0, 0, 0)
    assert (seen.reply_wait.worst, seen.symptom_wait.worst) == (None, None)
    lines = monday_lines(seen)
    assert "Too few invites to tell" in lines[0]
    assert "too few for a rate" in lines[2]


def test_a_booking_that_an_invite_brought(counter: Counter) -> None:
    send(counter, NOW - HOUR)
    send(counter, NOW + HOUR, "confirmation", "c")
    made = counter.ask()  # two hours after the invite, at NOW
    move(counter, made, "confirmed", NOW + HOUR, slot_at=MONDAY + DAY)
    seen = look(counter)
    assert (seen.invites, seen.visit_texts, seen.outgoing) == (1, 1, 2)
    assert (seen.invites_answered, seen.replies) == (1, 1)
    assert (seen.brought.asked, seen.brought.confirmed, seen.brought.kept, seen.brought.hours) == (1, 1, 0, 1.0)
    assert seen.asked_by == {"text": 1}
    assert seen.moved_to["confirmed"] == 1
    assert {(words, sent) for _, words, sent in seen.reasons} == {
        ("work that is coming due", 1), ("the booking is confirmed", 1),
    }  # fmt: skip
    # A Tuesday of the week of that Monday; 29 planned hours a day, 24.65 of them sold, six days open.
    assert [(week.sold, round(week.planned, 2)) for week in seen.weeks] == [(1.0, 147.9), (0.0, 147.9)]


def test_kept_and_missed_count_once(counter: Counter) -> None:
    send(counter, NOW - HOUR)
    first, second = counter.ask(), counter.ask("and Thursday for the other thing", verbatim="other")
    for request in (first, second):
        move(counter, request, "confirmed", NOW + HOUR, slot_at=NOW + DAY)
    move(counter, first, "kept", NOW + 2 * DAY)
    move(counter, second, "missed", NOW + 2 * DAY)
    seen = look(counter)
    assert (seen.brought.asked, seen.brought.kept, seen.brought.missed) == (2, 1, 1)
    assert seen.brought.hours == 1.0


def test_a_booking_by_phone_or_long_after_is_not_the_texts(counter: Counter) -> None:
    send(counter, NOW - 15 * DAY)
    counter.ask()
    counter.ask("by phone", came_from="phone")
    seen = look(counter)
    assert (seen.brought.asked, sum(seen.asked_by.values())) == (0, 2)


def test_what_was_before_the_period_is_out_of_it(counter: Counter) -> None:
    send(counter, NOW - 20 * DAY)
    assert look(counter, NOW, 7).invites == 0
    assert look(counter, NOW, 30).invites == 1


def test_the_longest_waits(counter: Counter) -> None:
    answered = counter.alert("symptom_now", "brakes", inbound_id=counter.write_in("brakes feel odd"))
    with counter.store.write() as connection:
        alerts.acknowledge(connection, counter.shop_id, answered, counter.staff_id, NOW + 4 * MINUTE)
    waiting = counter.alert("price", "asks for a price", inbound_id=counter.write_in("how much"))
    seen = look(counter, NOW + 2 * HOUR)
    assert (seen.symptom_wait.worst, seen.symptom_wait.is_open) == (4 * MINUTE, False)
    assert (seen.reply_wait.worst, seen.reply_wait.is_open, seen.reply_wait.count) == (2 * HOUR, True, 2)
    assert "2 h 0 min for a person at worst and still waits" in monday_lines(seen)[2]
    with counter.store.write() as connection:
        alerts.close(connection, counter.shop_id, waiting, "told them", NOW + 3 * HOUR)
    assert look(counter, NOW + 9 * HOUR).reply_wait.worst == 3 * HOUR


def test_stops_and_complaints_become_rates_only_from_enough_texts(counter: Counter) -> None:
    stop = ConsentEntry(NUMBER, "taken_back", (), NOW, NOW.date(), "text_in")
    with counter.store.write() as connection:
        consents.append(connection, counter.shop_id, stop, SECRET, "test")
    counter.alert("complaint", "unhappy")
    for number in range(ENOUGH_TEXTS - 1):
        send(counter, NOW, cause=f"cause {number}")
    few = look(counter)
    assert (few.stops, few.complaints, few.per_100(few.stops)) == (1, 1, None)
    assert few.has_enough_invites
    assert few.invites >= ENOUGH_INVITES
    send(counter, NOW, cause="one more")
    enough = look(counter)
    assert enough.per_100(enough.stops) == 1.0
    assert "1.0 stops and 1.0 complaints per 100 texts" in monday_lines(enough)[2]


def test_cars_past_a_limit_wait_until_they_are_booked(counter: Counter) -> None:
    with counter.store.write() as connection:
        rows = windows.windows_of(connection, counter.vehicle_id)
        kept = [
            (one["item"], one["position"], {**one["body"], "is_past": one["item"] == "brake_pad", "legal": None})
            for one in rows
        ]
        assert any(body["is_past"] for _, _, body in kept)
        windows.replace_windows(connection, counter.shop_id, counter.vehicle_id, NOW.date(), kept, NOW)
    assert (look(counter).cars_past_limit, look(counter).cars_past_legal) == (1, 0)
    counter.ask()
    assert look(counter).cars_past_limit == 0


@pytest.mark.parametrize(
    ("time", "words"),
    [(59 * MINUTE, "59 min"), (61 * MINUTE, "1 h 1 min"), (25 * HOUR, "1 day 1 h"), (3 * DAY, "3 days 0 h")],
)
def test_waits_in_words(time: timedelta, words: str) -> None:
    assert waited(time) == words
