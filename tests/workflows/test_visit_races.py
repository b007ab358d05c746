"""Interleavings of "a visit is opened" with claiming and sending: no invite after the visit was kept.

Each run opens the visit at one named point of the sender's way, in a thread of its own where the sender is inside a
transaction; the invite is sent alone or among others. It counts as late where the visit was kept before the commit
began that put it in flight. The last test takes the numbers' lock away, to show that such an invite would be seen.
Source: this project's trade rules ("no invite while the car is in the shop").
"""

from __future__ import annotations

import itertools
import json
import threading
import time
from collections import Counter as Tally
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from random import Random
from typing import Any, cast

import pytest
from sqlalchemy import delete, event, select, update

from followup import points
from followup.core.wall import to_wall
from followup.rehearsal import crowd
from followup.storage import consents, tables
from followup.storage.store import Store, make_engine
from followup.transports.transport import OutgoingText, SentReceipt, Transport
from followup.workflows.keep_inspections import keep_inspections
from followup.workflows.keep_visit import open_visit
from followup.workflows.send_texts import Sender, send_texts

NOW, SECRET = crowd.OPENS_AT, "only-for-tests"
SEED, CARS = 20_261_126, 20
POINTS = (
    "before", "expired released", "claim written", "claim kept", "rendered", "in flight written", "in flight kept",
    "handing over", "answered",
)  # fmt: skip
# At the counter, or by a line of a file or over HTTP.
WAYS = ("counter", "line")
AT_ONCE = (1, 4)
INSIDE = set(points.IN_A_TRANSACTION)
_PATIENCE = 0.02


@dataclass
class Race:
    """One car whose invite waits, and one visit. Times are of the monotonic clock."""

    store: Store
    car: dict[str, Any]
    point: str
    way: str
    at_once: int
    handed: list[str] = field(default_factory=list)
    in_flight_at: float | None = None
    opened_at: float | None = None
    thread: threading.Thread | None = None
    failed: list[BaseException] = field(default_factory=list)

    name, address = "wire", "http://127.0.0.1:9"

    def send(self, text: OutgoingText) -> SentReceipt:
        self.handed.append(text.public_id)
        return SentReceipt(f"SM{text.public_id}{text.attempt}", "queued")

    def run(self, n: int) -> str:
        """Send with the visit opened at its point; how it ended."""
        sender = Sender(
            cast(Transport, self), "https://texts.example", True, None, SECRET, lambda _seconds: None,
            at_once=self.at_once,
        )  # fmt: skip
        points.listen(lambda point: self._reached(point, n))
        try:
            self._reached("before", n)
            send_texts(self.store, 1, sender, lambda: NOW, "race", most=self.at_once)
        finally:
            points.listen(None)
        if self.thread is None:
            self._open(n)
        else:
            self.thread.join(30)
        assert not self.failed, self.failed
        assert self.opened_at is not None
        if self.car["public_id"] not in self.handed:
            return "stopped"
        assert self.in_flight_at is not None
        return "late" if self.opened_at < self.in_flight_at else "left before"

    def _reached(self, point: str, n: int) -> None:
        if threading.current_thread() is self.thread:
            return
        if point == self.point and self.thread is None:
            self.thread = threading.Thread(target=self._guarded, args=(n,))
            self.thread.start()
            # Inside a transaction the visit may have to wait for its end: as far as it comes.
            self.thread.join(_PATIENCE if point in INSIDE else 30)
        if point == "in flight written" and not self.handed:
            self.in_flight_at = time.monotonic()

    def _guarded(self, n: int) -> None:
        try:
            self._open(n)
        except BaseException as error:
            self.failed.append(error)

    def _open(self, n: int) -> None:
        if self.way == "counter":
            assert open_visit(self.store, 1, self.car["vehicle_id"], None, "Avery Stone", NOW)
        else:
            wall = to_wall(NOW, "America/Chicago").replace(tzinfo=None).isoformat(timespec="minutes")
            line = json.dumps({"visit": f"R-{n}", "vehicle": self.car["code"], "opened_at": wall})
            assert [one.outcome for one in keep_inspections(self.store, 1, [line], NOW, "test", SECRET)] == ["new"]
        self.opened_at = time.monotonic()


@contextmanager
def filled(database_url: str) -> Iterator[Store]:
    """A shop of some customers whose invites wait; on SQLite without waiting for the disk."""
    engine = make_engine(database_url)
    tables.metadata.create_all(engine)
    store = Store(engine)
    if engine.dialect.name == "sqlite":
        event.listen(engine, "connect", lambda link, _record: link.execute("PRAGMA synchronous=OFF"))
    assert crowd.add_crowd(store, CARS, SECRET) == 1
    yield store
    store.close()


def _cars(store: Store) -> list[dict[str, Any]]:
    """The first invite's car and three others, as they are when nothing has happened yet; the others' too."""
    texts, vehicles, visits = tables.texts, tables.vehicles, tables.visits
    with store.write() as connection:
        first = select(visits.c.id).where(visits.c.closed_at.is_(None))
        connection.execute(delete(visits).where(visits.c.id.in_(first)))
        connection.execute(
            update(texts).values(
                state="planned", sent_at=None, in_flight_at=None, provider_id=None, due_at=NOW, state_because=None
            )
        )
        query = select(texts.c.public_id, texts.c.vehicle_id, vehicles.c.code).order_by(texts.c.id)
        return [dict(row) for row in connection.execute(query.join(vehicles)).mappings()]


def races(store: Store, runs: int, drawn: list[tuple[str, str, int]] | None = None) -> Tally[str]:
    """So many runs at points and in ways drawn from the seed; how they ended."""
    random, ended = Random(SEED), Tally[str]()
    every = list(itertools.product(POINTS, WAYS, AT_ONCE))
    for n in range(runs):
        point, way, at_once = random.choice(drawn or every)
        # Alone the first of the queue is sent; among others any of the first four may be the one.
        car = _cars(store)[random.randrange(at_once)]
        ending = Race(store, car, point, way, at_once).run(n)
        ended[ending] += 1
        assert ending != "late" or drawn, f"seed {SEED}, run {n}: {way} at {point!r}, {at_once} at once"
    return ended


# A first look with every check, all of them where processes are killed.
@pytest.mark.parametrize("runs", [100, pytest.param(1_000, marks=pytest.mark.faults)])
def test_no_invite_leaves_after_the_visit_was_opened(database_url: str, runs: int) -> None:
    with filled(database_url) as store:
        ended = races(store, runs)
    print(f"{runs} interleavings, seed {SEED}: {dict(ended)}")
    assert ended["late"] == 0 and sum(ended.values()) == runs
    assert ended["stopped"] > runs // 5 and ended["left before"] > runs // 5, "both sides of the race were seen"


def test_without_the_numbers_lock_it_would_be_seen(postgresql_url: str, monkeypatch: pytest.MonkeyPatch) -> None:
    """SQLite has one writer at a time; two transactions of PostgreSQL pass each other."""
    monkeypatch.setattr(consents, "lock", lambda *_arguments: None)
    monkeypatch.setattr("tests.workflows.test_visit_races._PATIENCE", 5)
    with filled(postgresql_url) as store:
        ended = races(store, 10, [("rendered", "line", 1)])
    assert ended["late"] == 10
