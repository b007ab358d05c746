"""The database goes away while texts are sent: the disk is full, it may only be read, or nobody is let in for a minute.

Real processes over HTTP. No text leaves without a row that says so; what was handed over is kept when the database is
back; the process stays; the health page turns red within ten seconds. Fault S9 of this project's list.
"""

from __future__ import annotations

import json
import os
import signal
import threading
import time
from collections import Counter
from collections.abc import Callable, Iterator
from contextlib import AbstractContextManager, contextmanager
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from urllib.error import HTTPError
from urllib.request import urlopen

import psycopg
import pytest
from sqlalchemy.engine import make_url

from followup.rehearsal.faults.fate import ANSWERED, Fates
from followup.rehearsal.faults.provider import Provider
from followup.rehearsal.faults.shop import BEGINS_AT, Shop
from followup.rehearsal.faults.worker import Order
from followup.storage import outbox
from followup.storage.rows import Row
from followup.storage.store import Store, make_engine
from tests.faults.away import FILE
from tests.faults.ground import Ground

WITHIN_SECONDS = 10
GONE_AFTER = 3


def _wait_until(holds: Callable[[], bool], seconds: float = 60) -> float:
    """How long it took."""
    began = time.monotonic()
    while not holds():
        assert time.monotonic() - began < seconds
        threading.Event().wait(0.05)
    return time.monotonic() - began


def _health(shop: Shop) -> tuple[int, list[str]]:
    try:
        with urlopen(f"http://127.0.0.1:{shop.port}/health", timeout=WITHIN_SECONDS) as answer:
            return 200, json.loads(answer.read())["because"]
    except HTTPError as refused:
        return refused.code, json.loads(refused.read())["because"]


@contextmanager
def _nobody_is_let_in(shop: Shop) -> Iterator[None]:
    url = make_url(shop.url)
    where = {"host": url.query["host"], "port": url.query["port"], "user": url.username, "dbname": "postgres"}
    with psycopg.connect(**where, autocommit=True) as link:  # type: ignore[arg-type]  # words of the address
        link.execute(f"ALTER DATABASE {url.database} ALLOW_CONNECTIONS false")
        link.execute("SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE datname = %s", [url.database])
        try:
            yield
        finally:
            link.execute(f"ALTER DATABASE {url.database} ALLOW_CONNECTIONS true")


@contextmanager
def _file_is_there(shop: Shop) -> Iterator[None]:
    (shop.folder / FILE).touch()
    try:
        yield
    finally:
        (shop.folder / FILE).unlink()


def _rows(shop: Shop) -> list[Row]:
    store = Store(make_engine(shop.url))
    with store.read() as connection:
        found = outbox.texts_of_shop(connection, 1)
    store.close()
    return found


@dataclass
class Trial:
    """A shop whose pages and sender run, and the time that they go by."""

    ground: Ground
    shop: Shop
    change: str
    at: datetime = BEGINS_AT
    pids: list[int] = field(default_factory=list)
    asked: threading.Event = field(default_factory=threading.Event)
    go_on: threading.Event = field(default_factory=threading.Event)

    def when_taken(self, count: int) -> None:
        """The provider has taken it, and answers only when the database is away."""
        if count == GONE_AFTER:
            self.asked.set()
            self.go_on.wait(30)

    @contextmanager
    def running(self) -> Iterator[Provider]:
        """The pages, the sender and the provider; what runs at the end is ended."""
        self.shop.set_clock(self.at)
        with Provider(Fates(5, first=(ANSWERED,)), lambda: self.at) as provider:
            provider.when_taken = self.when_taken
            try:
                for command in ("web", "work"):
                    change = self.change if command == "work" else None
                    environment = self.shop.environment(provider.address)
                    order = Order((command,), environment, str(self.shop.folder / command), change=change)
                    self.pids.append(self.ground.nursery.start(order))
                yield provider
                assert self.ground.nursery.wait(self.pids, 0.1) == [], "a process ended"
            finally:
                for pid in self.pids:
                    os.kill(pid, signal.SIGKILL)
                    self.ground.nursery.wait([pid])

    def step(self, seconds: int) -> None:
        """Let time go on, and the ticks of that instant run."""
        self.at += timedelta(seconds=seconds)
        self.shop.set_clock(self.at)
        threading.Event().wait(0.3)

    def is_over(self) -> bool:
        """Whether all that is due has come to an end, some seconds later."""
        self.step(2)
        waiting = ("planned", "claimed", "in_flight", "unknown")
        return not any(row["state"] in waiting and row["due_at"] <= self.at for row in _rows(self.shop))

    def is_red(self) -> bool:
        """Whether the health page says that something is wrong."""
        return _health(self.shop)[0] == 503


@pytest.mark.parametrize(
    ("kind", "change", "goes_away"),
    [
        ("sqlite", "tests.faults.away:full", _file_is_there),
        ("sqlite", "tests.faults.away:read_only", _file_is_there),
        ("postgresql", "tests.faults.away:patient", _nobody_is_let_in),
    ],
    ids=["full", "read-only", "away"],
)
def test_nothing_is_lost_or_sent_twice_while_the_database_is_away(
    both: Ground, kind: str, change: str, goes_away: Callable[[Shop], AbstractContextManager[None]]
) -> None:
    with both.shop(kind) as shop:
        trial = Trial(both, shop, change)
        with trial.running() as provider:
            assert trial.asked.wait(60), (shop.folder / "work").read_text()[-3000:]
            in_flight = [row["public_id"] for row in _rows(shop) if row["state"] == "in_flight"]
            assert in_flight == [provider.posts[-1].public_id]
            with goes_away(shop):
                threading.Event().wait(0.1)
                trial.go_on.set()
                gone_at = trial.at
                trial.step(5)
                red_after = _wait_until(trial.is_red, WITHIN_SECONDS)
                while trial.at < gone_at + timedelta(seconds=60):
                    trial.step(5)
                assert len(provider.posts) == GONE_AFTER, "a text left without a row that says so"
                assert trial.is_red()
            took = _wait_until(trial.is_over)
            _wait_until(lambda: not trial.is_red(), WITHIN_SECONDS)
            rows = _rows(shop)
    taken = Counter(post.public_id for post in provider.taken)
    assert max(taken.values()) == 1, "a text was sent twice"
    due = [row for row in rows if row["due_at"] <= gone_at]
    assert {row["state"] for row in due} <= {"sent", "dropped"} and len(due) > GONE_AFTER
    assert {row["public_id"] for row in rows if row["state"] == "sent"} == set(taken)
    print(f"red after {red_after:.1f} s, all done {took:.1f} s after it was back, {len(taken)} sent")
