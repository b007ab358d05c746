"""Consent is taken back in any way, at once, and what stands goes to the phone; the ledger itself only grows.

Sources: 47 CFR 64.1200(a)(10) and (a)(11) (any reasonable way), (a)(12) (one confirmation; silence means all), (d)(6),
Virginia 2026 (a record for ten years and more); else this project's own trade rules.
"""

from __future__ import annotations

from collections.abc import Callable
from datetime import timedelta
from typing import Any, cast

import pytest
from sqlalchemy import delete, update
from sqlalchemy.exc import DatabaseError

from followup.core.consent import ConsentEntry, last_given_on
from followup.storage import consents, inbox, outbox, people, schema, shops, tables
from followup.storage.store import Store, make_engine
from followup.transports.transport import InboundText, OptedOut, StatusReport, Transport
from followup.workflows.answer_inbound import answer_waiting
from followup.workflows.keep_inbound import keep_inbound
from followup.workflows.keep_inspections import keep_inspections
from followup.workflows.keep_status import keep_status
from followup.workflows.look_at_may_text import look_at_may_text
from followup.workflows.send_texts import Sender, send_texts
from followup.workflows.take_back_consent import take_back_consent
from followup.workflows.take_consent import Ticked, take_on_tablet
from tests.workflows.counter import CONSENT, NOW, NUMBER, SECRET, Counter, Wire, line, open_counter


@pytest.fixture
def counter(memory_url: str) -> Counter:
    """A shop with one customer who agreed to everything."""
    return open_counter(memory_url)


def send(counter: Counter, minutes: float = 0, *, is_registered: bool = True) -> list[str]:
    """Let everything leave that may; the bodies."""
    wire = Wire()
    sender = Sender(cast(Transport, wire), "https://texts.example", is_registered, None, SECRET, lambda _s: None)
    now = NOW + timedelta(minutes=minutes)
    send_texts(counter.store, counter.shop_id, sender, lambda: now, "test")
    return [text.body for text in wire.handed]


def write(counter: Counter, body: str, minutes: float = 0, *, late: float = 0) -> None:
    """The customer writes, and is answered so many minutes later."""
    at = NOW + timedelta(minutes=minutes)
    keep_inbound(counter.store, InboundText(f"in-{body}-{minutes}", NUMBER, "+13125550101", body), at)
    answer_waiting(counter.store, counter.shop_id, at + timedelta(minutes=late), SECRET)


def is_stopped(counter: Counter) -> bool:
    with counter.store.read() as connection:
        return consents.standing_of(connection, counter.shop_id, NUMBER).is_stopped


def tasks(counter: Counter) -> list[str]:
    return [row["says"] for row in counter.alerts() if row["kind"] == "phone_task"]


def say_a_word(counter: Counter, message: str, minutes: float = 0) -> int:
    """Plan a person's own words."""
    return counter.plan(
        "from_a_person", message, facts={"message": message}, author_id=counter.staff_id,
        due_at=NOW + timedelta(minutes=minutes), valid_until=NOW + timedelta(days=2),
    )  # fmt: skip


def by_text(counter: Counter) -> None:
    write(counter, "please take me off your list")


def by_provider(counter: Counter) -> None:
    made = say_a_word(counter, "an earlier one")
    with counter.store.write() as connection:
        row = outbox.load_text(connection, made)
        assert row is not None
        outbox.change_text(connection, made, state="sent", sent_at=NOW, in_flight_at=NOW, attempt=1)
    report = StatusReport("SM1", "undelivered", 21610, OptedOut)
    assert keep_status(counter.store, row["public_id"], 1, report, NOW, SECRET)


def told(how: Any) -> Callable[[Counter], None]:
    def tell(counter: Counter) -> None:
        assert take_back_consent(counter.store, counter.shop_id, counter.phone_id, how, "", "Avery", NOW, SECRET)

    return tell


WAYS = {
    "text": by_text, "provider": by_provider, "counter": told("counter"), "phone": told("phone"),
    "e-mail": told("e-mail"),
}  # fmt: skip


@pytest.mark.parametrize("way", WAYS)
def test_every_way_stops_the_number_empties_the_queue_and_calls_about_a_booking(counter: Counter, way: str) -> None:
    booked = counter.ask(state="confirmed", slot_at=NOW + timedelta(days=3))
    say_a_word(counter, "your keys are here", minutes=1)
    WAYS[way](counter)
    assert is_stopped(counter)
    assert [row["state"] for row in counter.texts() if row["facts"].get("message") == "your keys are here"] == [
        "dropped"
    ]
    assert len(tasks(counter)) == 1 and "booking" in tasks(counter)[0]
    assert counter.request(booked)["state"] == "confirmed", "a stop does not release the slot"
    bodies = send(counter, 2)
    assert len(bodies) == (1 if way == "text" else 0), "one confirmation, of a stop by text alone"
    with counter.store.read() as connection:
        line = consents.ledger(connection, counter.shop_id, NUMBER)[-1]
    assert line.how == {"text": "text_in"}.get(way, way) and line.event == "taken_back"


@pytest.mark.parametrize("way", ["counter", "provider"])
def test_a_stop_while_a_symptom_is_open_is_called_about(counter: Counter, way: str) -> None:
    counter.remember(open_symptom="today")
    WAYS[way](counter)
    assert any("symptom" in one for one in tasks(counter))


def test_the_confirmation_of_a_stop_never_comes_late(counter: Counter) -> None:
    # 64.1200(a)(12): within five minutes, else none.
    write(counter, "stop", late=6)
    assert is_stopped(counter) and send(counter, 6) == []


def test_what_is_queued_waits_while_we_ask_whether_all_was_meant(counter: Counter) -> None:
    counter.ask(state="confirmed", slot_at=NOW + timedelta(days=3))
    kept = say_a_word(counter, "your keys are here", minutes=2)
    write(counter, "fewer texts please")
    assert len(send(counter)) == 1, "the question leaves"
    assert len(tasks(counter)) == 1, "silence is a stop, and a booking stands"
    assert send(counter, 3) == []
    assert counter.texts("planned")[-1]["id"] == kept, "it waits"
    write(counter, "no, keep them coming", 10)
    assert not is_stopped(counter)
    assert [one for one in send(counter, 11) if "keys" in one]


def test_unanswered_it_is_a_stop(counter: Counter) -> None:
    say_a_word(counter, "your keys are here", minutes=2)
    write(counter, "fewer texts please")
    send(counter)
    assert send(counter, 24 * 60 + 1) == []
    assert counter.texts("planned") == [] and is_stopped(counter)


def test_a_part_may_be_taken_back_at_the_counter(counter: Counter) -> None:
    invite = counter.plan(due_at=NOW + timedelta(minutes=2), valid_until=NOW + timedelta(days=2))
    take_back_consent(
        counter.store, counter.shop_id, counter.phone_id, "phone", "only about visits", "Avery", NOW, SECRET,
        keeps_visits=True,
    )  # fmt: skip
    with counter.store.read() as connection:
        now = consents.standing_of(connection, counter.shop_id, NUMBER)
        assert (now.covers, now.is_stopped) == ({"visits"}, False)
    assert [row["id"] for row in counter.texts("dropped")] == [invite]


@pytest.mark.parametrize("state", [{}, {"asked": "confirm_stop"}, {"open_symptom": "now"}, {"is_frozen": True},
                                   {"person_at": NOW.isoformat()}], ids=str)  # fmt: skip
@pytest.mark.parametrize("is_over", [False, True])
def test_help_is_always_answered(counter: Counter, state: dict[str, Any], is_over: bool) -> None:
    # CTIA Messaging Principles 5.1.3: with brand and a number, whatever the subscription; at any hour.
    counter.remember(**state)
    if is_over:
        told("counter")(counter)
    write(counter, "HELP", 14 * 60)
    (body,) = [one for one in send(counter, 14 * 60) if "STOP" in one]
    assert "Elm Street Auto" in body and "(312) 555-0100" in body


def test_an_answer_after_an_outage_waits_for_the_morning(counter: Counter) -> None:
    # Written at 22:00, handled at 1:00: nobody is woken; from 8:00 on it leaves.
    write(counter, "how long does it take?", 13 * 60, late=3 * 60)
    assert send(counter, 16 * 60) == []
    assert len(send(counter, 23 * 60 + 1)) == 1


def test_nothing_leaves_to_us_numbers_without_the_registration(counter: Counter) -> None:
    say_a_word(counter, "your keys are here")
    write(counter, "HELP")
    assert send(counter, is_registered=False) == []
    assert [row["state_because"] for row in counter.texts("dropped")] == [
        "the shop's registration with the carriers is not in the settings"
    ] * 2
    assert any("could not be told by text" in one for one in tasks(counter)), "somebody calls instead"


def test_nothing_overtakes_a_text_that_nobody_has_read(counter: Counter) -> None:
    say_a_word(counter, "your keys are here")
    keep_inbound(counter.store, InboundText("in-1", NUMBER, "+13125550101", "stop"), NOW)
    assert send(counter) == []
    answer_waiting(counter.store, counter.shop_id, NOW, SECRET)
    assert not [one for one in send(counter, 1) if "keys" in one]


def test_a_line_of_the_ledger_is_never_changed_nor_taken_out(database_url: str) -> None:
    """By the database itself, made from the tables or by the migrations."""
    table = tables.consents
    migrated = make_engine(database_url)
    schema.upgrade(migrated)
    store = Store(migrated)
    with store.write() as connection:
        facts = {"name": "Elm", "zone": "America/Chicago", "phone": "+13125550100", "texts_from": "+13125550101"}
        shop_id = shops.add_shop(connection, NOW, "elm", facts)
        entry = ConsentEntry(NUMBER, "given", ("visits",), NOW, NOW.date(), "tablet", "I agree.")
        consents.append(connection, shop_id, entry, SECRET, "test")
    for statement in (
        delete(table),
        update(table).values(covers=["offers"]),
        update(table).values(event="given_again"),
    ):
        with pytest.raises(DatabaseError, match="only grows"), store.write() as connection:
            connection.execute(statement)
    store.close()


def test_the_tables_of_a_new_database_guard_the_ledger_too(counter: Counter) -> None:
    with pytest.raises(DatabaseError, match="only grows"), counter.store.write() as connection:
        connection.execute(delete(tables.consents))


def forget(counter: Counter) -> None:
    """What is left of a person who was deleted: hash, time and kind."""
    with counter.store.write() as connection:
        connection.execute(update(tables.consents).values(number=None, words=""))


def test_a_stop_outlives_the_number(counter: Counter) -> None:
    told("counter")(counter)
    forget(counter)
    seen = look_at_may_text(counter.store, counter.shop_id, NUMBER, NOW, secret=SECRET)
    assert {one.because[0].rule for one in seen.answers.values()} == {"stop"}
    say_a_word(counter, "your keys are here")
    assert send(counter) == []
    other = look_at_may_text(counter.store, counter.shop_id, NUMBER, NOW, secret="another key")
    assert other.answers["visits"].because[0].rule == "no_consent", "the hash is keyed"


def test_an_old_consent_that_comes_in_again_meets_the_stop_of_its_hash(counter: Counter) -> None:
    told("counter")(counter)
    forget(counter)
    with counter.store.write() as connection:
        old = ConsentEntry(NUMBER, "given", ("visits",), NOW, (NOW - timedelta(days=9)).date(), "signed_paper", "paper")
        consents.append(connection, counter.shop_id, old, SECRET, "import")
    assert is_stopped(counter), "the line was given before the stop, which is known again"


def test_the_newest_consent_that_stands_is_what_the_check_asks_about() -> None:
    def line(event: Any, days: int, **more: Any) -> ConsentEntry:
        at = NOW + timedelta(days=days)
        return ConsentEntry(NUMBER, event, ("visits",), at, at.date(), more.pop("how", "tablet"), f"words {days}")

    def last(*lines: ConsentEntry) -> int | None:
        found = last_given_on(lines)
        return (found - NOW.date()).days if found else None

    assert last(line("given", 0), line("given", 5)) == 5
    assert last(line("given", 0), line("given", 5, how="imported_unproven")) == 0, "what proves nothing is no consent"
    assert last(line("given", 0), line("taken_back", 5)) is None
    assert last(line("given", 0), line("taken_back", 5), line("given_again", 9)) == 9


def test_a_number_that_writes_takes_texts_whatever_was_said_of_it(counter: Counter) -> None:
    with counter.store.write() as connection:
        people.change_phone(connection, counter.phone_id, bad_because="21614 not a mobile number")
    write(counter, "how long does it take?")
    assert len(send(counter)) == 1
    with counter.store.read() as connection:
        assert inbox.times_of_phone(connection, counter.phone_id) == (NOW, None)
        phone = people.load_phone(connection, counter.shop_id, counter.phone_id)
    assert phone is not None and phone["bad_because"] is None


def agree_on_tablet(counter: Counter) -> None:
    ticked = Ticked(visits=True, upkeep=True, is_own_and_adult=True)
    assert take_on_tablet(
        counter.store, counter.shop_id, counter.phone_id, counter.person_id, "en", ticked, SECRET, "Avery", NOW
    ) == "kept"  # fmt: skip


@pytest.mark.parametrize(("minutes", "leaves"), [(0, True), (3.9, True), (5, False), (60, False)])
def test_a_consent_is_confirmed_within_five_minutes_or_not_at_all(
    counter: Counter, minutes: float, leaves: bool
) -> None:
    # CTIA Messaging Principles 5.1: one confirmation with name, how often, rates, HELP and STOP.
    agree_on_tablet(counter)
    bodies = send(counter, minutes)
    assert len(bodies) == leaves
    for words in ("Elm Street Auto", "rates", "HELP", "STOP") if leaves else ():
        assert words in bodies[0]
    assert send(counter, minutes + 1) == [], "once"


@pytest.mark.parametrize(("hour", "leaves"), [(9, True), (22, False)])
def test_a_consent_that_a_file_brings_at_night_wakes_nobody(memory_url: str, hour: int, leaves: bool) -> None:
    engine = make_engine(memory_url)
    tables.metadata.create_all(engine)
    store = Store(engine)
    facts = {"name": "Elm", "zone": "America/Chicago", "phone": "+13125550100", "texts_from": "+13125550101"}
    with store.write() as connection:
        shop_id = shops.add_shop(connection, NOW, "elm", facts)
    customer = {"id": "C-1", "phone": NUMBER, "consent": {**CONSENT, "given_on": "2026-11-24"}}
    at = NOW + timedelta(hours=hour - 9)
    assert [one.outcome for one in keep_inspections(store, shop_id, [line(customer=customer)], at, "file", SECRET)] == [
        "new"
    ]
    with store.read() as connection:
        queued = outbox.queued_texts(connection, shop_id)
    assert [row["reason"] for row in queued] == (["opted_in"] if leaves else [])
