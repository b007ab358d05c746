"""200 concurrent doubles on each database: planned twice, sent by two processes, pressed by two people, and one text.

Source: fault S12 of this project's list; uniqueness is the database's (number, reason, try).
"""

from __future__ import annotations

import threading
from collections.abc import Callable
from datetime import UTC, datetime, timedelta
from typing import Any, cast

from followup.storage import inbox, outbox
from followup.transports.transport import InboundText, OutgoingText, SentReceipt, Transport
from followup.workflows.answer_inbound import answer_inbound, answer_waiting
from followup.workflows.keep_inbound import keep_inbound
from followup.workflows.send_texts import Sender, send_texts
from followup.workflows.settle_held_text import send_again
from tests.workflows.counter import NUMBER, SECRET, Counter, open_counter

NOW = datetime(2026, 11, 24, 16, 0, tzinfo=UTC)
TRIES = 200


class _Wire:
    """A provider in this process that counts what it was handed."""

    name = "wire"
    address = "http://127.0.0.1:9"

    def __init__(self) -> None:
        self.handed: list[OutgoingText] = []

    def send(self, text: OutgoingText) -> SentReceipt:
        self.handed.append(text)
        return SentReceipt(f"SM{text.public_id}-{text.attempt}", "queued")


def _at_once(*deeds: Callable[[], Any]) -> list[Any]:
    """Do all of it at the same moment, each in a thread of its own."""
    gate, done = threading.Barrier(len(deeds)), list[Any]([None] * len(deeds))
    failed: list[BaseException] = []

    def run(place: int, deed: Callable[[], Any]) -> None:
        gate.wait(10)
        try:
            done[place] = deed()
        except BaseException as error:
            failed.append(error)

    threads = [threading.Thread(target=run, args=one) for one in enumerate(deeds)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join(30)
    assert not failed, failed
    return done


def _plan(counter: Counter, cause: str) -> int | None:
    with counter.store.write() as connection:
        return outbox.plan_text(
            connection, counter.shop_id, "from_a_person", cause, NOW, phone_id=counter.phone_id, number=NUMBER,
            language="en", facts={"message": cause}, author_id=counter.staff_id, valid_until=NOW + timedelta(hours=1),
        )  # fmt: skip


def test_planned_and_sent_twice_at_once_it_is_one_row_and_one_text(database_url: str) -> None:
    counter, wire = open_counter(database_url), _Wire()
    sender = Sender(cast(Transport, wire), "https://texts.example", True, None, SECRET, lambda _seconds: None)
    store, shop_id = counter.store, counter.shop_id

    def send(worker: str) -> None:
        send_texts(store, shop_id, sender, lambda: NOW, worker, most=2)

    with store.engine.connect():
        for n in range(TRIES):
            cause = f"double {n}"
            made = _at_once(
                lambda cause=cause: _plan(counter, cause), lambda cause=cause: _plan(counter, cause),
                lambda: send("one"), lambda: send("two"),
            )  # fmt: skip
            assert [one is None for one in made[:2]].count(True) == 1, "one of the two made the row"
        send("one")
    assert [text.body.count("double") for text in wire.handed] == [1] * TRIES
    assert len({text.body for text in wire.handed}) == TRIES
    mine = [row for row in counter.texts("sent") if row["reason"] == "from_a_person"]
    assert len(mine) == TRIES and all(row["attempt"] == 1 for row in mine)
    store.close()


def test_two_people_who_press_send_again_send_it_once(database_url: str) -> None:
    counter, wire = open_counter(database_url), _Wire()
    sender = Sender(cast(Transport, wire), "https://texts.example", True, None, SECRET, lambda _seconds: None)
    store, shop_id, pressed = counter.store, counter.shop_id, 0
    with store.engine.connect():
        for n in range(TRIES // 4):
            text_id = _plan(counter, f"held {n}")
            assert text_id is not None
            with store.write() as connection:
                outbox.change_text(connection, text_id, state="held", attempt=1)
            told = _at_once(
                *(lambda who=who, one=text_id: send_again(store, shop_id, one, who, NOW) for who in ("Ana", "Ben")),
                lambda: send_texts(store, shop_id, sender, lambda: NOW, "one", most=2),
                lambda: send_texts(store, shop_id, sender, lambda: NOW, "two", most=2),
            )  # fmt: skip
            pressed += sum(bool(one) for one in told[:2])
        send_texts(store, shop_id, sender, lambda: NOW, "one", most=10)
    assert pressed == TRIES // 4, "one press of each two counted"
    assert len({text.body for text in wire.handed}) == len(wire.handed) == TRIES // 4
    store.close()


def test_two_stops_at_once_are_confirmed_once(database_url: str) -> None:
    """47 CFR 64.1200(a)(12): one confirmation, none for a second STOP, also where two processes answer them."""
    counter = open_counter(database_url)
    store, shop_id = counter.store, counter.shop_id
    with store.engine.connect():
        for n in range(25):
            at = NOW + timedelta(minutes=10 * n)
            for which in ("a", "b"):
                keep_inbound(store, InboundText(f"{which}{n}", NUMBER, "+13125550101", "stop"), at)
            with store.read() as connection:
                waiting = inbox.unhandled(connection, shop_id)
            _at_once(*(lambda one=one, at=at: answer_inbound(store, one, at, SECRET) for one in waiting))
            keep_inbound(store, InboundText(f"c{n}", NUMBER, "+13125550101", "start"), at + timedelta(minutes=1))
            answer_waiting(store, shop_id, at + timedelta(minutes=1), SECRET)
    assert sum(row["reason"] == "stopped" for row in counter.texts()) == 25
    store.close()
