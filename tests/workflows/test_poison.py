"""A row that nobody can work on fails with its reason, and its neighbors go on in the same tick; an account that the
provider refuses is told to the owner once, until texts leave again.

Fault S15 of this project's list; the provider's error pages: 20003 is the refused account, 21211 a bad number.
"""

from __future__ import annotations

import threading
import time
from datetime import timedelta
from typing import Any, cast

import pytest

from followup.core.duty import Roster
from followup.storage import alerts, inbox, outbox, people, shops, staff
from followup.storage.rows import Row
from followup.transports.transport import (
    AccountRefused,
    BadNumber,
    NotRegistered,
    OutgoingText,
    ProvenRefused,
    SentReceipt,
    Transport,
)
from followup.workflows import tell_staff as telling
from followup.workflows.answer_inbound import answer_waiting
from followup.workflows.look_for_trouble import look_for_trouble
from followup.workflows.send_texts import Sender, SentCount, send_texts
from followup.workflows.tell_staff import tell_staff
from tests.workflows.counter import NOW, NUMBER, SECRET, Counter, open_counter

TICK_SECONDS = 1.0


@pytest.fixture
def counter(database_url: str) -> Counter:
    return open_counter(database_url)


class Wire:
    """A provider that takes every text, unless it is to refuse."""

    name = "wire"
    address = "http://127.0.0.1:9"

    def __init__(self, refuses: ProvenRefused | None = None) -> None:
        self.refuses = refuses
        self.handed: list[str] = []
        self.at_once = self.most_at_once = 0
        self.lock = threading.Lock()
        self.takes_seconds = 0.0

    def send(self, text: OutgoingText) -> SentReceipt:
        with self.lock:
            self.handed.append(text.public_id)
            self.at_once += 1
            self.most_at_once = max(self.most_at_once, self.at_once)
        threading.Event().wait(self.takes_seconds)
        with self.lock:
            self.at_once -= 1
        if self.refuses:
            raise self.refuses
        return SentReceipt(f"SM{text.public_id}", "queued")


def send(counter: Counter, wire: Wire, later: timedelta = timedelta(0), **how: Any) -> SentCount:
    sender = Sender(
        cast(Transport, wire), "https://texts.example", True, None, SECRET, lambda _seconds: None, **how
    )  # fmt: skip
    return send_texts(counter.store, counter.shop_id, sender, lambda: NOW + later, "test")


def row_of(counter: Counter, text_id: int) -> Row:
    with counter.store.read() as connection:
        found = outbox.load_text(connection, text_id)
    assert found is not None
    return found


def change(counter: Counter, text_id: int, **values: Any) -> None:
    with counter.store.write() as connection:
        outbox.change_text(connection, text_id, **values)


def test_poison_fails_with_a_reason_and_its_neighbors_leave_in_the_same_tick(counter: Counter) -> None:
    """Facts of no shape, a reason that has no words, a language without templates, a number that is none."""
    poison = {
        "no facts": counter.plan("help", "facts"), "no words": counter.plan("help", "words"),
        "no language": counter.plan("help", "language"), "no number": counter.plan("help", "number"),
    }  # fmt: skip
    change(counter, poison["no facts"], facts=[1], reason="from_a_person")
    change(counter, poison["no words"], reason="no_such_reason")
    change(counter, poison["no language"], language="xx")
    change(counter, poison["no number"], number="not a number")
    good = [counter.plan("help", f"good {n}") for n in range(3)]
    began = time.monotonic()
    send(counter, Wire())
    took = time.monotonic() - began
    rows = {name: row_of(counter, text_id) for name, text_id in poison.items()}
    assert [row_of(counter, one)["state"] for one in good] == ["sent"] * 3
    assert {name: row["state"] for name, row in rows.items() if row["state"] not in ("failed", "dropped")} == {}
    assert all(row["state_because"] for row in rows.values())
    assert rows["no words"]["state"] == rows["no language"]["state"] == "failed"
    print(f"4 poison rows and 3 good ones in {took * 1000:.0f} ms")
    assert took < TICK_SECONDS


def test_a_bad_number_fails_and_its_neighbors_leave(counter: Counter) -> None:
    first = counter.plan("help", "bad")
    assert send(counter, Wire(BadNumber(21211))).other == 1
    found = row_of(counter, first)
    assert (found["state"], found["error_code"]) == ("failed", "21211")
    assert found["state_because"]


def test_a_reply_that_cannot_be_answered_keeps_no_other_waiting(
    counter: Counter, monkeypatch: pytest.MonkeyPatch
) -> None:
    with counter.store.write() as connection:
        made = [
            inbox.keep_raw(
                connection, shop_id=counter.shop_id, provider_id=f"in {body}", number=NUMBER,
                phone_id=counter.phone_id, body=body, raw={"body": body}, received_at=NOW,
            )
            for body in ("poison", "please stop")
        ]  # fmt: skip
    assert all(made)
    from followup.workflows import answer_inbound as answering

    plain = answering.hear

    def hear(body: str, reply: Any) -> Any:
        if body == "poison":
            raise RuntimeError("nobody can read it")
        return plain(body, reply)

    monkeypatch.setattr(answering, "hear", hear)
    assert answer_waiting(counter.store, counter.shop_id, NOW, SECRET) == 1
    with counter.store.read() as connection:
        assert len(inbox.unhandled(connection, counter.shop_id)) == 1


def test_an_alert_that_cannot_be_told_silences_no_other(counter: Counter, monkeypatch: pytest.MonkeyPatch) -> None:
    with counter.store.write() as connection:
        staff_id = staff.add(connection, counter.shop_id, "kim", "Kim Lane", "owner", "none", NOW)
        shops.save_duty(connection, counter.shop_id, Roster(manager=staff_id, owner=staff_id), "test", NOW)
    first, second = counter.alert("price", "first"), counter.alert("call_me", "second")
    plain = telling.tell_one

    def tell_one(connection: Any, shop: Any, roster: Any, alert: Row, now: Any) -> int:
        if alert["id"] == first:
            raise KeyError(alert["kind"])
        return plain(connection, shop, roster, alert, now)

    monkeypatch.setattr(telling, "tell_one", tell_one)
    assert tell_staff(counter.store, counter.shop_id, NOW) == 1
    with counter.store.read() as connection:
        assert alerts.tellings(connection, second) and not alerts.tellings(connection, first)


@pytest.mark.parametrize("refusal", [AccountRefused(20003), NotRegistered(30034)])
def test_the_owner_is_told_once_that_the_provider_refuses_everything(counter: Counter, refusal: ProvenRefused) -> None:
    for n in range(3):
        counter.plan("help", f"{n}")
    wire = Wire(refusal)
    done = send(counter, wire)
    # The first refusal makes the number rest: the others are not even tried.
    assert len(wire.handed) == 1 and done.rests_until is not None
    send(counter, wire, timedelta(hours=1))
    mine = [one for one in counter.alerts() if one["kind"] == "texts_refused"]
    assert len(mine) == 1 and str(refusal.code) in mine[0]["says"]
    trouble = look_for_trouble(counter.store, NOW, needs_registration=False)
    assert any("the provider refuses every text since" in one for one in trouble)
    # Staff are not told of it by a text, which would meet the same.
    tell_staff(counter.store, counter.shop_id, NOW)
    with counter.store.read() as connection:
        assert [row["kind"] for row in outbox.texts_of_shop(connection, counter.shop_id)] == ["answer"] * 3
        assert people.find_phone(connection, counter.shop_id, NUMBER)
    wire.refuses = None
    counter.plan("help", "later", valid_until=NOW + timedelta(hours=9))
    assert send(counter, wire, timedelta(hours=2)).sent >= 1
    assert not [one for one in counter.alerts() if one["kind"] == "texts_refused"]
    assert not any("refuses" in one for one in look_for_trouble(counter.store, NOW, needs_registration=False))


def test_several_are_handed_over_at_once_and_no_more(counter: Counter) -> None:
    ids = [counter.plan("help", f"{n}") for n in range(12)]
    wire = Wire()
    wire.takes_seconds = 0.2
    assert send(counter, wire, at_once=4).sent == 12
    assert wire.most_at_once == 4 and len(set(wire.handed)) == 12
    assert {row_of(counter, one)["state"] for one in ids} == {"sent"}


def test_a_refusal_of_all_ends_the_round_also_where_several_are_at_once(counter: Counter) -> None:
    ids = [counter.plan("help", f"{n}") for n in range(12)]
    wire = Wire(AccountRefused(20003))
    wire.takes_seconds = 0.05
    assert send(counter, wire, at_once=4).rests_until is not None
    assert len(wire.handed) <= 8
    assert {row_of(counter, one)["state"] for one in ids} == {"planned"}
