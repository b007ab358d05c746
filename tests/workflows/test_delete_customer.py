"""A customer is deleted: names, numbers and texts go, readings stay, the ledger keeps a keyed hash and no more.

Source: this project's own rules. What is gone is asked of the database itself: every column of every table is searched,
and on SQLite the bytes of the file and its log, so that nothing hangs on what the program thinks it deleted.
"""

from __future__ import annotations

import json
from datetime import timedelta
from pathlib import Path

import pytest
from sqlalchemy import select
from sqlalchemy.engine import make_url

from followup.core.consent import ConsentEntry
from followup.storage import alerts, consents, inbox, outbox, people, rows, stops, tables, windows
from followup.storage.histories import history_of
from followup.workflows.delete_customer import DeletionPicture, delete_customer, look_at_deletion
from followup.workflows.find_customers import find_customers
from followup.workflows.forecast_windows import forecast_windows
from followup.workflows.keep_draft import TypedSoFar, keep_draft
from followup.workflows.keep_inspections import keep_inspections
from tests.workflows.counter import CONSENT, NOW, NUMBER, SECRET, Counter, line, open_counter

# Names, digits and words that stand in no other place of the small shop.
TRACES = ("Ana Marlow", NUMBER, NUMBER[1:], "TEST 147", "hinge squeals", "I agree.", "asked her to call")
LATER = NOW + timedelta(days=30)


@pytest.fixture
def counter(database_url: str) -> Counter:
    return open_counter(database_url)


def _let_something_of_everything_happen(counter: Counter) -> None:
    inbound = counter.read_in("the left hinge squeals, can I come Tuesday at 9")
    with counter.store.write() as connection:
        # As a provider names it, not by its words.
        rows.change(connection, tables.inbound, inbound, provider_id="SM0")
    request = counter.ask("hinge squeals, Tuesday at 9", inbound_id=inbound, note="asked her to call")
    with counter.store.write() as connection:
        alerts.raise_alert(
            connection, shop_id=counter.shop_id, kind="symptom_now", phone_id=counter.phone_id, inbound_id=inbound,
            says="Ana Marlow: hinge squeals", raised_by=f"inbound:{inbound}", raised_at=NOW,
        )  # fmt: skip
    counter.plan(facts={"items": [], "name": "Ana Marlow"}, cause="one")
    counter.hold(cause="two")
    counter.remember(open_symptom="hinge squeals")
    with counter.store.write() as connection:
        sent = outbox.plan_text(
            connection, counter.shop_id, "due_work", "three", NOW, phone_id=counter.phone_id, number=NUMBER,
            language="en", facts={"items": []}, vehicle_id=counter.vehicle_id, request_id=request,
        )  # fmt: skip
        assert sent is not None
        outbox.change_text(connection, sent, state="sent", sent_at=NOW, body="Ana Marlow, hello", provider_id="SM1")
        rows.add(
            connection, tables.visit_links, shop_id=counter.shop_id, request_id=request, code="abc", made_at=NOW
        )  # fmt: skip
        letter = {"from": NUMBER, "to": "+13125550109", "body": "hinge squeals"}
        inbox.add_dead_letter(connection, counter.shop_id, NOW, "no shop", letter, "SM2")
        told = {"inbound_id": inbound, "meaning": {}, "context": {}, "shop_id": counter.shop_id}
        rows.add(
            connection, tables.reading_corrections, shop_id=counter.shop_id, inbound_id=told["inbound_id"],
            reply={"text": "hinge squeals"}, reading={}, meant={}, corrected_by=counter.staff_id, corrected_at=NOW,
        )  # fmt: skip
        rows.add(
            connection, tables.test_phone_texts, shop_id=counter.shop_id, number=NUMBER, direction="to_phone",
            body="Ana Marlow, hello", at=NOW, provider_id="SM3",
        )  # fmt: skip
    _fill_in_half(counter)


def _fill_in_half(counter: Counter) -> None:
    """What is half filled about their car, and about a car that they are about to bring."""
    new_customer = {"customer.name": "Ana Marlow", "customer.phone": NUMBER}
    for vehicle_id, fields in ((counter.vehicle_id, {"vehicle.plate": "TEST 147"}), (None, new_customer)):
        typed = TypedSoFar(vehicle_id, "", f"F-{vehicle_id}", None, fields, "a page")
        assert keep_draft(counter.store, counter.shop_id, counter.staff_id, typed, NOW).draft_id


def _look(counter: Counter) -> DeletionPicture:
    found = look_at_deletion(counter.store, counter.shop_id, counter.person_id, NOW)
    assert found is not None
    return found


def _delete(counter: Counter, mark: str | None = None) -> str:
    mark = _look(counter).mark if mark is None else mark
    return delete_customer(counter.store, counter.shop_id, counter.person_id, mark, "ines", NOW, SECRET)


def _traces(counter: Counter) -> list[str]:
    found = []
    with counter.store.read() as connection:
        for table in tables.metadata.sorted_tables:
            for row in rows.every(connection, select(table)):
                told = json.dumps(row, default=str)
                found += [f"{table.name} {row.get('id')}: {one}" for one in TRACES if one in told]
    return found


def test_the_search_finds_what_is_there(counter: Counter) -> None:
    _let_something_of_everything_happen(counter)
    found = {one.partition(" ")[0] for one in _traces(counter)}
    assert found >= {
        "phones", "persons", "consents", "inspections", "vehicles", "texts", "inbound", "booking_requests", "alerts",
        "dead_letters", "reading_corrections", "test_phone_texts", "conversations",
        "drafts",
    }  # fmt: skip


def test_nothing_of_them_is_left_in_any_column(counter: Counter) -> None:
    _let_something_of_everything_happen(counter)
    assert _delete(counter) == "deleted"
    assert _traces(counter) == []
    with counter.store.read() as connection:
        lines = rows.every(connection, select(tables.consents).order_by(tables.consents.c.id))
        noted = rows.every(connection, select(tables.audit))[-1]
    # The consent that stood is taken back: hash, time and kind stay.
    assert [(one["event"], one["number"], one["words"]) for one in lines] == [
        ("given", None, ""), ("taken_back", None, ""),
    ]  # fmt: skip
    assert {one["number_hash"] for one in lines} == {consents.hash_number(NUMBER, SECRET)}
    assert (noted["did"], noted["who"]) == ("deleted a customer", "ines")
    assert find_customers(counter.store, counter.shop_id, "", NOW) == ()


def test_not_a_byte_of_them_is_left_in_the_file(sqlite_url: str) -> None:
    counter = open_counter(sqlite_url)
    _let_something_of_everything_happen(counter)
    file = Path(str(make_url(sqlite_url).database))
    whole = [file, file.with_name(file.name + "-wal")]

    def found() -> set[str]:
        held = b"".join(one.read_bytes() for one in whole if one.exists())
        return {one for one in TRACES if one.encode() in held}

    assert found() == set(TRACES)
    # Also not where a row lay before it grew.
    for name in ("Ana Marlow the second", "Ana Marlow the third of that name"):
        with counter.store.write() as connection:
            people.change_person(connection, counter.person_id, name=name)
    assert _delete(counter) == "deleted"
    assert found() == set()


def test_readings_stay_without_a_person_and_are_forecast_as_before(counter: Counter) -> None:
    with counter.store.read() as connection:
        before = history_of(connection, counter.shop(), counter.vehicle_id)
        windows_before = [row["body"] for row in windows.windows_of(connection, counter.vehicle_id)]
    assert _delete(counter) == "deleted"
    forecast_windows(counter.store, counter.shop_id, NOW, [counter.vehicle_id])
    with counter.store.read() as connection:
        after = history_of(connection, counter.shop(), counter.vehicle_id)
        windows_after = [row["body"] for row in windows.windows_of(connection, counter.vehicle_id)]
        assert people.drivers_of_vehicle(connection, counter.vehicle_id) == []
    assert before is not None and after is not None
    assert (after.readings, after.odometers, after.work) == (before.readings, before.odometers, before.work)
    assert windows_after == windows_before


def test_what_waits_is_dropped_and_what_stands_is_closed(counter: Counter) -> None:
    _let_something_of_everything_happen(counter)
    seen = _look(counter)
    assert [one.kind for one in seen.stands] == ["request", "alert", "symptom"]
    assert seen.queued == 2
    _delete(counter)
    with counter.store.read() as connection:
        states = [one["state"] for one in outbox.texts_of_shop(connection, counter.shop_id)]
        (request,) = rows.every(connection, select(tables.booking_requests))
        left = rows.every(connection, select(tables.visit_links))
    assert states == ["dropped", "dropped", "sent"]
    assert (request["state"], request["closed_because"]) == ("closed", "the customer was deleted")
    assert left == []
    assert counter.alerts() == []


def test_what_came_to_stand_meanwhile_is_shown_first(counter: Counter) -> None:
    mark = _look(counter).mark
    counter.ask()
    assert _delete(counter, mark) == "changed"
    assert _traces(counter)
    assert _delete(counter) == "deleted"
    assert look_at_deletion(counter.store, counter.shop_id, counter.person_id, NOW) is None
    assert _delete(counter, "") == "nobody"


def test_a_text_that_is_being_handed_over_is_waited_for(counter: Counter) -> None:
    text = counter.plan()
    with counter.store.write() as connection:
        outbox.change_text(connection, text, state="in_flight", attempt=1)
    assert _delete(counter) == "in_flight"
    assert counter.texts("in_flight")


def test_a_number_of_two_stays_with_the_other(counter: Counter) -> None:
    other = line("Ben Okoro", inspection="I-2", customer={"id": "C-2", "name": "Ben Okoro", "phone": NUMBER},
                 vehicle={"id": "V-2", "class": "car"})  # fmt: skip
    list(keep_inspections(counter.store, counter.shop_id, [other], NOW, "test", SECRET))
    seen = _look(counter)
    assert [one.others for one in seen.numbers] == [("Ben Okoro",)]
    assert _delete(counter) == "deleted"
    with counter.store.read() as connection:
        assert [one["name"] for one in people.persons_of_phone(connection, counter.phone_id)] == ["Ben Okoro"]
        assert consents.standing_of(connection, counter.shop_id, NUMBER, SECRET).covers
        held = json.dumps(rows.every(connection, select(tables.persons)), default=str)
    assert "Ana Marlow" not in held


@pytest.mark.parametrize("was_stopped", [True, False])
def test_an_old_file_that_brings_the_number_again_lets_nothing_leave(counter: Counter, was_stopped: bool) -> None:
    if was_stopped:
        with counter.store.write() as connection:
            stop = ConsentEntry(NUMBER, "taken_back", (), NOW, NOW.date(), "counter")
            stops.take_back(connection, counter.shop_id, stop, SECRET, "avery")
    assert _delete(counter) == "deleted"
    # The very line changes nothing; a corrected one brings the customer back, and the stop with them.
    (same,) = keep_inspections(counter.store, counter.shop_id, [line()], LATER, "test", SECRET)
    assert (same.outcome, _traces(counter)) == ("unchanged", [])
    (again,) = keep_inspections(counter.store, counter.shop_id, [line("Ana M. Marlow")], LATER, "test", SECRET)
    assert again.outcome == "corrected"
    with counter.store.read() as connection:
        now = consents.standing_of(connection, counter.shop_id, NUMBER, SECRET)
    assert (now.is_stopped, now.covers) == (True, frozenset())
    # A consent that was given after it counts.
    fresh = {**CONSENT, "given_on": "2026-12-20"}
    customer = {"id": "C-1", "name": "Ana Marlow", "phone": NUMBER, "consent": fresh}
    list(keep_inspections(counter.store, counter.shop_id, [line(customer=customer)], LATER, "test", SECRET))
    with counter.store.read() as connection:
        assert consents.standing_of(connection, counter.shop_id, NUMBER, SECRET).covers


def test_their_texts_do_not_come_back_from_the_providers_list(counter: Counter) -> None:
    counter.write_in("hinge squeals")
    _delete(counter)
    with counter.store.write() as connection:
        again = inbox.keep_raw(
            connection, shop_id=counter.shop_id, provider_id=f"in-hinge squeals-{NOW}", number=NUMBER, phone_id=None,
            body="hinge squeals", raw={}, received_at=NOW,
        )  # fmt: skip
    assert again is None
