"""Interleavings of "a stop comes in" with planning, claiming and sending: no text after the opt-out's commit.

Each run stops the number at one named point of the sender's way (`followup/points.py`), in a thread of its own where
the sender is inside a transaction. A text counts as late where the stop was kept before the commit began that put the
text in flight. The two last tests blind the sender, to show that such a text would be seen.
Sources: 47 CFR 64.1200(a)(10); fault S11 of this project's list.
"""

from __future__ import annotations

import itertools
import threading
import time
from collections import Counter as Tally
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from datetime import UTC, datetime, timedelta
from random import Random
from typing import Any, cast

import pytest
from sqlalchemy import event

from followup import points
from followup.core.consent import ConsentEntry
from followup.core.planning import number_rules
from followup.storage import consents, outbox, people
from followup.transports.transport import InboundText, OptedOut, OutgoingText, SentReceipt, StatusReport, Transport
from followup.workflows.answer_inbound import answer_waiting
from followup.workflows.keep_inbound import keep_inbound
from followup.workflows.keep_status import keep_status
from followup.workflows.send_texts import Sender, send_texts
from followup.workflows.take_back_consent import take_back_consent
from tests.workflows.counter import SECRET, Counter, open_counter

NOW = datetime(2026, 11, 24, 16, 0, tzinfo=UTC)
SEED = 20_261_124
AREAS = (312, 217, 618, 309, 815, 847, 708, 773, 630, 224)
POINTS = (
    "before", "planned", "expired released", "claim written", "claim kept", "rendered", "in flight written",
    "in flight kept", "handing over", "answered",
)  # fmt: skip
# How a stop comes: a text that is answered at once, one that lies unread, the counter, a report of the provider.
WAYS = ("text", "text", "unread text", "counter", "provider")
# A person's words need the consent for visits; an answer needs only that no stop stands.
REASONS = ("from_a_person", "a_person_reads")
INSIDE = set(points.IN_A_TRANSACTION)
_PATIENCE = 0.02


@dataclass
class Race:
    """One number, one text to it and one stop. Times are of the monotonic clock."""

    counter: Counter
    number: str
    phone_id: int
    point: str
    way: str
    reason: str
    public_id: str = ""
    is_handed_over: bool = False
    in_flight_at: float | None = None
    stopped_at: float | None = None
    thread: threading.Thread | None = None
    failed: list[BaseException] = field(default_factory=list)

    def run(self, n: int) -> str:
        """Plan and send with the stop at its point; how it ended."""
        points.listen(self._reached)
        try:
            self._reached("before")
            self._plan(n)
            self._reached("planned")
            send_texts(self.counter.store, self.counter.shop_id, _sender(self._take), lambda: NOW, "race", most=5)
        finally:
            points.listen(None)
        if self.thread is None:
            self._stop()
        else:
            self.thread.join(30)
        assert not self.failed, self.failed
        assert self.stopped_at is not None
        if not self.is_handed_over:
            return "stopped"
        assert self.in_flight_at is not None
        return "late" if self.stopped_at < self.in_flight_at else "left before"

    def _plan(self, n: int) -> None:
        with self.counter.store.write() as connection:
            author = self.counter.staff_id if self.reason == "from_a_person" else None
            text_id = outbox.plan_text(
                connection, self.counter.shop_id, self.reason, f"race {n}", NOW, phone_id=self.phone_id,
                number=self.number, language="en", facts={"message": "Your keys are at the desk."}, author_id=author,
                valid_until=NOW + timedelta(hours=1),
            )  # fmt: skip
            assert text_id is not None
            row = outbox.load_text(connection, text_id)
            assert row is not None
            self.public_id = row["public_id"]

    def _reached(self, point: str) -> None:
        if threading.current_thread() is self.thread:
            return
        if point == self.point and self.thread is None:
            self.thread = threading.Thread(target=self._guarded)
            self.thread.start()
            # Inside a transaction the stop may have to wait for its end: as far as it comes.
            self.thread.join(_PATIENCE if point in INSIDE else 30)
        if point == "in flight written" and not self.is_handed_over:
            self.in_flight_at = time.monotonic()

    def _guarded(self) -> None:
        try:
            self._stop()
        except BaseException as error:
            self.failed.append(error)

    def _stop(self) -> None:
        store, shop_id = self.counter.store, self.counter.shop_id
        if self.way in ("text", "unread text"):
            keep_inbound(store, InboundText(f"in-{self.number}", self.number, "+13125550101", "please stop"), NOW)
        elif self.way == "counter":
            assert take_back_consent(store, shop_id, self.phone_id, "counter", "", "Avery Stone", NOW, SECRET)
        else:
            report = StatusReport(f"SM-{self.number}", "undelivered", 21610, OptedOut)
            assert keep_status(store, self._earlier(), 1, report, NOW, SECRET)
        self.stopped_at = time.monotonic()
        if self.way == "text":
            answer_waiting(store, shop_id, NOW, SECRET)

    def _earlier(self) -> str:
        """An earlier text to the number, which the provider reports on."""
        with self.counter.store.read() as connection:
            return str(outbox.texts_of_phone(connection, self.phone_id)[0]["public_id"])

    def _take(self, text: OutgoingText) -> SentReceipt:
        if text.public_id == self.public_id:
            self.is_handed_over = True
        return SentReceipt(f"SM{text.public_id}", "queued")


class _Wire:
    """A provider in this process."""

    name = "wire"
    address = "http://127.0.0.1:9"

    def __init__(self, take: Callable[[OutgoingText], SentReceipt]) -> None:
        self.send = take


def _sender(take: Callable[[OutgoingText], SentReceipt]) -> Sender:
    return Sender(cast(Transport, _Wire(take)), "https://texts.example", True, None, SECRET, lambda _seconds: None)


def _phones(counter: Counter, how_many: int) -> Iterator[tuple[str, int]]:
    """Numbers with consent, each with a text that left yesterday."""
    numbers = (f"+1{area}5550{last}" for last, area in itertools.product(range(102, 200), AREAS))
    yesterday = NOW - timedelta(days=1)
    made: list[tuple[str, int]] = []
    with counter.store.write() as connection:
        for number in itertools.islice(itertools.chain(numbers, _more()), how_many):
            phone_id = people.keep_phone(connection, counter.shop_id, number, ("America/Chicago",), "mobile", yesterday)
            entry = ConsentEntry(
                number, "given", ("visits",), yesterday, yesterday.date(), "tablet", "I agree.", "1", "en", True
            )
            consents.append(connection, counter.shop_id, entry, SECRET, "test")
            text_id = outbox.plan_text(
                connection, counter.shop_id, "from_a_person", "yesterday", yesterday, phone_id=phone_id, number=number,
                language="en", facts={"message": "hello"}, author_id=counter.staff_id,
            )  # fmt: skip
            assert text_id is not None
            outbox.change_text(connection, text_id, state="sent", sent_at=yesterday, in_flight_at=yesterday, attempt=1)
            made.append((number, phone_id))
    yield from made


def _more() -> Iterator[str]:
    yield from (f"+13315550{last}" for last in range(100, 200))


@contextmanager
def opened(database_url: str) -> Iterator[Counter]:
    """The shop; on SQLite without waiting for the disk, since nobody pulls the plug here."""
    counter = open_counter(database_url)
    engine = counter.store.engine
    if engine.dialect.name == "sqlite":
        event.listen(engine, "connect", lambda link, _record: link.execute("PRAGMA synchronous=OFF"))
    with engine.connect():
        yield counter
    counter.store.close()


def races(counter: Counter, runs: int, pairs: list[tuple[str, str]] | None = None) -> Tally[str]:
    """So many runs at points and in ways drawn from the seed; how they ended."""
    random, ended = Random(SEED), Tally[str]()
    mine: list[Race] = []
    for n, (number, phone_id) in enumerate(_phones(counter, runs)):
        point, way = random.choice(pairs or list(itertools.product(POINTS, WAYS)))
        race = Race(counter, number, phone_id, point, way, random.choice(REASONS))
        mine.append(race)
        ending = race.run(n)
        ended[ending] += 1
        assert ending != "late" or pairs, f"seed {SEED}, run {n}: {way} at {point!r}"
        if way == "unread text":
            answer_waiting(counter.store, counter.shop_id, NOW, SECRET)
        with counter.store.read() as connection:
            assert consents.standing_of(connection, counter.shop_id, number).is_stopped
        # The confirmation leaves now, so that the next run's points are those of its own text.
        _nothing_of(mine, _all_that_would_leave(counter, NOW))
    _nothing_of(mine, _all_that_would_leave(counter, NOW + timedelta(minutes=4)))
    return ended


def _nothing_of(races: list[Race], handed: list[OutgoingText]) -> None:
    assert not {one.public_id for one in races} & {text.public_id for text in handed}


# A first look with every check, all of them where processes are killed.
@pytest.mark.parametrize("runs", [100, pytest.param(1_000, marks=pytest.mark.faults)])
def test_no_text_leaves_after_the_stop_was_kept(database_url: str, runs: int) -> None:
    with opened(database_url) as counter:
        ended = races(counter, runs)
    print(f"{runs} interleavings, seed {SEED}: {dict(ended)}")
    assert ended["late"] == 0 and sum(ended.values()) == runs
    assert ended["stopped"] > runs // 4 and ended["left before"] > runs // 10, "both sides of the race were seen"


def _all_that_would_leave(counter: Counter, now: datetime) -> list[OutgoingText]:
    handed: list[OutgoingText] = []

    def take(text: OutgoingText) -> SentReceipt:
        handed.append(text)
        return SentReceipt(f"SM{text.public_id}", "queued")

    send_texts(counter.store, counter.shop_id, _sender(take), lambda: now, "after", most=5_000)
    return handed


def _blind(*_arguments: Any) -> Iterator[Any]:
    return iter(())


def test_a_sender_that_does_not_ask_again_would_be_seen(sqlite_url: str, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(number_rules, "stops_of_number", _blind)
    monkeypatch.setattr(number_rules, "_for_now", _blind)
    with opened(sqlite_url) as counter:
        ended = races(counter, 20, [("claim kept", "unread text")])
    assert ended["late"] == 20


def test_without_the_numbers_lock_it_would_be_seen(postgresql_url: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """SQLite has one writer at a time; two transactions of PostgreSQL pass each other."""
    monkeypatch.setattr(consents, "lock", lambda *_arguments: None)
    monkeypatch.setattr("tests.workflows.test_stop_races._PATIENCE", 5)
    with opened(postgresql_url) as counter:
        ended = races(counter, 20, [("in flight written", "unread text")])
    assert ended["late"] == 20
