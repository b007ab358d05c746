"""Reports that come late beside whoever sends, on PostgreSQL: each takes its locks in one order, so nobody is ended.

Source: PostgreSQL's documents on explicit locking: two that hold what the other one wants are found after a second, and
one of them is rolled back (deadlock_timeout); the defense is one order for all.
"""

import threading
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from datetime import timedelta
from typing import Any, cast

import pytest

from followup.core.consent import ConsentStanding
from followup.storage import consents, outbox, outcomes
from followup.storage.rows import Row
from followup.transports.transport import OptedOut, SentReceipt, StatusReport, Transport
from followup.workflows.keep_status import keep_status
from followup.workflows.send_texts import Sender, send_texts
from followup.workflows.send_texts.outcome import Receipts
from tests.workflows.counter import NOW, NUMBER, SECRET, Counter, Wire, open_counter

OVER = timedelta(seconds=-1)
# Who stands for so long waits for a lock.
A_WHILE_SECONDS = 0.5


@pytest.fixture
def counter(postgresql_url: str) -> Counter:
    """The shop with its one customer; SQLite has one writer and no such locks."""
    return open_counter(postgresql_url)


def _claimed(counter: Counter, cause: str, flies: bool) -> Row:
    """A text whose worker is gone: claimed, or in flight, with a lease that ran out."""
    text_id = counter.plan(cause=cause)
    with counter.store.write() as connection:
        assert outbox.claim(connection, text_id, "gone", OVER) == 1
        if flies:
            assert outbox.move(connection, text_id, 1, "claimed", "in_flight", in_flight_at=NOW, body="hello")
    return _load(counter, text_id)


def _load(counter: Counter, text_id: int) -> Row:
    with counter.store.read() as connection:
        found = outbox.load_text(connection, text_id)
    assert found is not None
    return found


def _report(counter: Counter, row: Row, problem: type[OptedOut] | None) -> bool:
    said = StatusReport("SM1", "failed" if problem else "delivered", 21610 if problem else None, problem)
    return keep_status(counter.store, row["public_id"], 1, said, NOW, SECRET)


def _pause_after(target: Any, name: str, pause: Callable[[], object], patch: pytest.MonkeyPatch) -> None:
    """Let whoever calls it stand still in its transaction after the call."""
    real = getattr(target, name)

    def and_stand(*arguments: Any, **named: Any) -> Any:
        found = real(*arguments, **named)
        pause()
        return found

    patch.setattr(target, name, and_stand)


def test_a_late_report_of_an_opt_out_and_a_round_of_sending_do_not_want_each_others_texts(
    counter: Counter, monkeypatch: pytest.MonkeyPatch
) -> None:
    waiting, flying = _claimed(counter, "waits", flies=False), _claimed(counter, "flies", flies=True)
    has_bound, round_over = threading.Event(), threading.Event()

    def stand() -> None:
        has_bound.set()
        round_over.wait(A_WHILE_SECONDS)

    _pause_after(outcomes, "bind_delivery", stand, monkeypatch)
    sender = Sender(
        cast(Transport, Wire()), "", True, None, SECRET, threading.Event().wait, holds_back=("visit", "invite")
    )  # fmt: skip
    with ThreadPoolExecutor(1) as other:
        reported = other.submit(_report, counter, flying, OptedOut)
        assert has_bound.wait(20)
        # It finds the claim that is over, and the text in flight that the report holds.
        send_texts(counter.store, counter.shop_id, sender, lambda: NOW, "test")
        round_over.set()
        assert reported.result(20)
    assert (_load(counter, waiting["id"])["state"], _load(counter, flying["id"])["state"]) == ("dropped", "sent")
    with counter.store.read() as connection:
        standing: ConsentStanding = consents.standing_of(connection, counter.shop_id, NUMBER, SECRET)
    assert standing.is_stopped


def test_a_report_and_the_receipt_of_the_same_text_do_not_want_what_the_other_holds(
    counter: Counter, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The list had shown its id for another text, which both of them take it back from."""
    alike, flying = _claimed(counter, "alike", flies=True), _claimed(counter, "flies", flies=True)
    with counter.store.write() as connection:
        found = {"provider_id": "SM1", "state_because": outcomes.FOUND_IN_LIST, "sent_at": NOW, "delivery": "queued"}
        assert outbox.move(connection, alike["id"], 1, "in_flight", "sent", **found)
    has_given_up, report_waits = threading.Event(), threading.Event()

    def stand() -> None:
        has_given_up.set()
        report_waits.wait(A_WHILE_SECONDS)

    _pause_after(outcomes, "give_up_found", stand, monkeypatch)
    with ThreadPoolExecutor(1) as other:
        kept = other.submit(Receipts(counter.store).keep, flying, SentReceipt("SM1", "queued"), NOW)
        assert has_given_up.wait(20)
        assert _report(counter, flying, None)
        report_waits.set()
        kept.result(20)
    assert (_load(counter, alike["id"])["state"], _load(counter, flying["id"])["state"]) == ("unknown", "sent")
    assert _load(counter, flying["id"])["provider_id"] == "SM1"
