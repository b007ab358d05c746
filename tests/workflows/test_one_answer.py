"""The page, the command and sending give one answer: a text leaves where `may_text` says so, and only there.

Bars: this project's trade rules; hours and stops by 47 CFR 64.1200(a)(10), (c)(1).
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import timedelta
from typing import Any, cast

import pytest

from followup.core.consent import ConsentEntry
from followup.storage import consents, inbox, outbox, people, requests, shops
from followup.transports.transport import Transport
from followup.workflows.look_at_may_text import look_at_may_text
from followup.workflows.send_texts import Sender, send_texts
from tests.workflows.counter import NOW, NUMBER, SECRET, Counter, Wire, open_counter


@pytest.fixture
def counter(memory_url: str) -> Counter:
    """A shop with one customer who agreed to everything."""
    return open_counter(memory_url)


def phone(**values: Any) -> Callable[[Counter], None]:
    def change(counter: Counter) -> None:
        with counter.store.write() as connection:
            people.change_phone(connection, counter.phone_id, **values)

    return change


def rules(**values: Any) -> Callable[[Counter], None]:
    def change(counter: Counter) -> None:
        with counter.store.write() as connection:
            changed = replace(shops.load_shop(connection, counter.shop_id).rules, **values)
            shops.save_rules(connection, counter.shop_id, changed, "test", NOW, "test")

    return change


def ledger(event: Any, *covers: str, how: str = "text_in") -> Callable[[Counter], None]:
    def change(counter: Counter) -> None:
        with counter.store.write() as connection:
            entry = ConsentEntry(NUMBER, event, covers, NOW, NOW.date(), how)
            consents.append(connection, counter.shop_id, entry, SECRET, "test")

    return change


def death(counter: Counter) -> None:
    with counter.store.write() as connection:
        people.change_person(connection, counter.person_id, is_deceased=True)


def unread(counter: Counter) -> None:
    with counter.store.write() as connection:
        inbox.keep_raw(
            connection, shop_id=counter.shop_id, provider_id="in-1", number=NUMBER, phone_id=counter.phone_id,
            body="stop", raw={}, received_at=NOW,
        )  # fmt: skip


def end_ties(counter: Counter, because: str) -> None:
    with counter.store.write() as connection:
        people.end_phone_ties(connection, counter.phone_id, NOW.date(), because)


def ask_without_consent(counter: Counter) -> None:
    ledger("narrowed", "visits", "upkeep", "offers")(counter)
    counter.ask(state="confirmed", slot_at=NOW + timedelta(days=1))


def remember(**state: Any) -> Callable[[Counter], None]:
    return lambda counter: counter.remember(**state)


CASES: dict[str, tuple[Callable[[Counter], None], bool]] = {
    "well": (lambda _counter: None, True),
    "stopped": (ledger("taken_back"), False),
    "narrowed to visits": (ledger("narrowed", "upkeep", "offers"), True),
    "narrowed away": (ledger("narrowed", "visits"), False),
    "landline": (phone(line="landline"), False),
    "bad": (phone(bad_because="21614"), False),
    "held": (phone(held_because="the check says yes"), False),
    "all sending stopped": (rules(is_sending_stopped=True), False),
    "everything off": (rules(is_everything_off=True), False),
    "a death": (death, False),
    "unread": (unread, False),
    "a stranger's": (lambda counter: end_ties(counter, "a stranger's number, by their word"), False),
    "asked for by text": (lambda counter: ask_without_consent(counter), True),
    "a symptom": (remember(open_symptom="today"), False),
    "a serious matter": (remember(is_frozen=True), False),
    "a complaint": (lambda counter: counter.alert("complaint", "unhappy") and None, True),
    "a person writes": (remember(person_at=NOW.isoformat()), True),
    "in Hawaii": (phone(zones=["Pacific/Honolulu"]), False),
}


@pytest.mark.parametrize("case", CASES)
@pytest.mark.parametrize("hours", [0, 12])
def test_sending_does_what_the_page_says(counter: Counter, case: str, hours: int) -> None:
    change, is_allowed = CASES[case]
    change(counter)
    now = NOW + timedelta(hours=hours)
    seen = look_at_may_text(counter.store, counter.shop_id, NUMBER, now, secret=SECRET).answers["visits"]
    wire = Wire()
    with counter.store.read() as connection:
        booked = requests.requests_of_shop(connection, counter.shop_id, ("confirmed",))
    request_id = booked[0]["id"] if booked else None
    made = counter.plan("car_ready", "ready", facts={}, valid_until=NOW + timedelta(days=2), request_id=request_id)
    sender = Sender(cast(Transport, wire), "https://texts.example", True, None, SECRET, lambda _seconds: None)
    send_texts(counter.store, counter.shop_id, sender, lambda: now, "test")
    assert bool(wire.handed) is seen.may is (is_allowed and hours == 0)
    with counter.store.read() as connection:
        row = outbox.load_text(connection, made)
    assert row is not None
    if not seen.may:
        assert row["state"] == ("planned" if seen.next_at else "dropped")
        assert row["due_at"] == seen.next_at or row["state_because"] in [one.says for one in seen.because]


def test_invites_that_left_count_for_spacing_and_caps(counter: Counter) -> None:
    for n, (days, state) in enumerate(((16, "sent"), (29, "unknown"), (40, "sent"), (3, "dropped"), (2, "failed"))):
        made, at = counter.plan("due_work", f"earlier {n}"), NOW - timedelta(days=days)
        with counter.store.write() as connection:
            outbox.change_text(connection, made, state=state, sent_at=at, due_at=at)
    at_ten = NOW + timedelta(hours=2)
    seen = look_at_may_text(counter.store, counter.shop_id, NUMBER, at_ten, secret=SECRET).answers
    assert [one.rule for one in seen["upkeep"].because] == ["cap_30"] and seen["visits"].may
    assert seen["upkeep"].next_at is not None and (seen["upkeep"].next_at - NOW).days in (1, 2)
