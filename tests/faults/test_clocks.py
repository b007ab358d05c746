"""One acting clock among real processes: one acts, another takes over from one that was killed or stood still, and the
one that stood still stands down before it acts; missed ticks are made up for once.

Faults C1 to C3 of this project's list. Leases go by the clock that the trial steps, processes by real time.
"""

from __future__ import annotations

import os
import signal
import threading
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from pathlib import Path

import pytest

from followup import scheduler
from followup.rehearsal.faults.fate import ANSWERED, Fates
from followup.rehearsal.faults.nursery import Nursery
from followup.rehearsal.faults.provider import Provider
from followup.rehearsal.faults.shop import BEGINS_AT, Shop
from followup.rehearsal.faults.worker import Order
from followup.storage import machine, rows, tables
from followup.storage.rows import Row
from followup.storage.store import Store, make_engine
from tests.faults.ground import Ground

TTL = scheduler.LEASE_LASTS
A_MOMENT = timedelta(seconds=1)


@dataclass
class Clocks:
    """Two processes that tick, and the time that they go by."""

    shop: Shop
    store: Store
    nursery: Nursery
    provider: Provider
    pids: list[int]
    at: datetime
    logs: dict[int, Path] = field(default_factory=dict)

    def step(self, by: timedelta) -> None:
        self.at += by
        self.shop.set_clock(self.at)

    def lease(self) -> Row:
        with self.store.read() as connection:
            found = rows.first(connection, tables.leases.select())
        assert found is not None
        return found

    def holder(self) -> int:
        return int(self.lease()["holder"].split("-")[0])

    def beats(self) -> dict[str, datetime]:
        with self.store.read() as connection:
            return machine.last_beats(connection)

    def log(self, pid: int) -> str:
        file = self.logs[pid]
        return file.read_text(encoding="utf-8") if file.exists() else ""

    def wait_until(self, holds: Callable[[], bool], seconds: float = 20) -> float:
        """How long it took."""
        began = time.monotonic()
        while not holds():
            assert time.monotonic() - began < seconds, [self.log(pid)[-1500:] for pid in self.pids]
            threading.Event().wait(0.02)
        return time.monotonic() - began


@contextmanager
def two_clocks(ground: Ground, kind: str) -> Iterator[Clocks]:
    """Two of them on one shop; whichever was first acts."""
    with ground.shop(kind) as shop:
        store = Store(make_engine(shop.url))
        clocks = Clocks(shop, store, ground.nursery, None, [], BEGINS_AT)  # type: ignore[arg-type]  # set below
        with Provider(Fates(5, first=(ANSWERED,)), lambda: clocks.at) as provider:
            clocks.provider = provider
            shop.set_clock(BEGINS_AT)
            try:
                for n in range(2):
                    log = shop.folder / f"log{n}"
                    pid = ground.nursery.start(Order(("work",), shop.environment(provider.address), str(log)))
                    clocks.pids.append(pid)
                    clocks.logs[pid] = log
                clocks.wait_until(lambda: all("ticking" in clocks.log(pid) for pid in clocks.pids))
                clocks.wait_until(lambda: "send" in clocks.beats())
                yield clocks
            finally:
                for pid in clocks.pids:
                    os.kill(pid, signal.SIGKILL)
                    ground.nursery.wait([pid])
                store.close()


def _other(clocks: Clocks, pid: int) -> int:
    return next(one for one in clocks.pids if one != pid)


@pytest.mark.parametrize("kind", ["sqlite", "postgresql"])
def test_one_acts_and_the_other_takes_over_from_one_that_was_killed(both: Ground, kind: str) -> None:
    with two_clocks(both, kind) as clocks:
        first, term = clocks.holder(), clocks.lease()["term"]
        second = _other(clocks, first)
        for _ in range(3):
            clocks.step(timedelta(seconds=4))
            clocks.wait_until(lambda: clocks.beats()["send"] == clocks.at)
            assert (clocks.holder(), clocks.lease()["term"]) == (first, term)
        assert "acting as" not in clocks.log(second)
        os.kill(first, signal.SIGKILL)
        killed_at = clocks.at
        clocks.nursery.wait([first])
        clocks.pids.remove(first)
        clocks.step(TTL - A_MOMENT)
        threading.Event().wait(1.5)
        assert clocks.holder() == first, "a lease lasts as long as it was promised to"
        clocks.step(2 * A_MOMENT)
        took = clocks.wait_until(lambda: clocks.holder() == second)
        assert clocks.lease()["term"] == term + 1
        assert clocks.at - killed_at + timedelta(seconds=took) <= 2 * TTL
        clocks.wait_until(lambda: clocks.beats()["send"] == clocks.at)
        taken = [post.public_id for post in clocks.provider.taken]
        assert len(taken) == len(set(taken))
        print(f"{kind}: taken over {(clocks.at - killed_at).seconds} s of its time + {took:.1f} s after the kill")


def test_one_that_stood_still_past_its_lease_stands_down_before_it_acts(ground: Ground) -> None:
    with two_clocks(ground, "sqlite") as clocks:
        first, term = clocks.holder(), clocks.lease()["term"]
        second = _other(clocks, first)
        # It is stopped while nothing of it writes, else nobody could write on SQLite until it goes on.
        clocks.step(A_MOMENT)
        clocks.wait_until(lambda: clocks.beats()["send"] == clocks.at)
        threading.Event().wait(0.3)
        os.kill(first, signal.SIGSTOP)
        clocks.step(TTL + A_MOMENT)
        clocks.wait_until(lambda: clocks.holder() == second)
        os.kill(first, signal.SIGCONT)
        clocks.wait_until(lambda: "stands down" in clocks.log(first) or clocks.log(first).count("term") == 1)
        for _ in range(3):
            clocks.step(timedelta(seconds=4))
            clocks.wait_until(lambda: clocks.beats()["send"] == clocks.at)
            assert (clocks.holder(), clocks.lease()["term"]) == (second, term + 1)
        assert clocks.log(first).count("acting as") == 1
        taken = [post.public_id for post in clocks.provider.taken]
        assert len(taken) == len(set(taken))
