"""Several texts that are handed over at once: made ready together, and their receipts kept together, where that costs
nobody any time. What is slow in it is one transaction a text, as each commit waits for the disk (SQLite's
documentation on `synchronous`, PostgreSQL's on `commit_delay`)."""

from __future__ import annotations

import threading
from collections.abc import Mapping
from concurrent.futures import ThreadPoolExecutor
from typing import Any, cast

import pytest

from followup.rehearsal import crowd
from followup.storage import outbox, outcomes, schema
from followup.storage.store import Connection, Store, make_engine
from followup.transports.transport import OutgoingText, SentReceipt, Transport
from followup.workflows.send_texts import Sender, hand_over, outcome, send_texts
from followup.workflows.send_texts.hand_over import Room
from tests.workflows.counter import Wire

AT_ONCE, SECRET, LONG_SECONDS = 4, "only-for-tests", 20.0


class Together(Wire):
    """Answers none of four calls before all of them are there."""

    def __init__(self) -> None:
        super().__init__()
        self.all_there = threading.Barrier(AT_ONCE, timeout=LONG_SECONDS)

    def send(self, text: OutgoingText) -> SentReceipt:
        self.all_there.wait()
        return super().send(text)


def test_calls_that_end_together_are_kept_in_one_transaction(sqlite_url: str, monkeypatch: pytest.MonkeyPatch) -> None:
    store, kept = Store(make_engine(sqlite_url)), list[int]()
    keep_receipts = outcomes.keep_receipts

    def count(connection: Connection, receipts: Mapping[tuple[int, int], Any]) -> set[int]:
        kept.append(len(receipts))
        return keep_receipts(connection, receipts)

    monkeypatch.setattr(outcomes, "keep_receipts", count)
    # However busy the machine is: they wait for each other, and for nothing else.
    monkeypatch.setattr(outcome, "TOGETHER_SECONDS", LONG_SECONDS)
    schema.upgrade(store.engine)
    shop_id = crowd.add_crowd(store, 2 * AT_ONCE, SECRET)
    wire = Together()
    sender = Sender(
        cast(Transport, wire), "http://127.0.0.1", True, 1000.0, SECRET, threading.Event().wait, at_once=AT_ONCE
    )
    assert send_texts(store, shop_id, sender, lambda: crowd.OPENS_AT, "test").sent == 2 * AT_ONCE
    assert kept == [AT_ONCE, AT_ONCE]
    with store.read() as connection:
        rows = outbox.texts_of_shop(connection, shop_id)
    assert {row["provider_id"] for row in rows} == {f"SM{text.public_id}" for text in wire.handed}
    assert {row["state"] for row in rows} == {"sent"}
    store.close()


def test_all_are_made_ready_together_where_calls_take_no_time(monkeypatch: pytest.MonkeyPatch) -> None:
    # However busy the machine is: only what ends makes it go on.
    for limit in ("A_MOMENT_SECONDS", "ONE_UPON_ANOTHER_SECONDS"):
        monkeypatch.setattr(hand_over, limit, LONG_SECONDS)
    room = Room(AT_ONCE)
    room.take(AT_ONCE)
    with ThreadPoolExecutor(1) as other:
        waits = other.submit(lambda: room.wait(for_several=True))
        for _ in range(AT_ONCE):
            room.give()
        assert waits.result(LONG_SECONDS) == AT_ONCE


def test_half_is_made_ready_while_the_other_half_takes_its_time(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(hand_over, "A_MOMENT_SECONDS", 0.001)
    monkeypatch.setattr(hand_over, "ONE_UPON_ANOTHER_SECONDS", LONG_SECONDS)
    room = Room(2)
    room.take(2)
    first_ends = threading.Timer(0.5, room.give)
    first_ends.start()
    assert room.wait(for_several=True) == 1
    first_ends.join()
