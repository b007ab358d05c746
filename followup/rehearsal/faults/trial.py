"""One trial: real processes on a copy of the shop, struck where the plan says, until every text is at an end.

Time goes on only when a process has done all that is due and asks for the next instant, or after a strike. Delivery
reports come when they are due, whether a process runs or not.
"""

from __future__ import annotations

import os
import signal
import socket
import threading
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from random import Random

from followup.points import BETWEEN, POINTS
from followup.rehearsal.faults.fate import Fates
from followup.rehearsal.faults.judge import Struck, Verdict, is_open, judge
from followup.rehearsal.faults.nursery import Ended, Nursery
from followup.rehearsal.faults.provider import Provider
from followup.rehearsal.faults.shop import BEGINS_AT, WROTE, Shop, demo_address, kept_port
from followup.rehearsal.faults.worker import AFTER_COMMIT, BEFORE_COMMIT, Order
from followup.storage import inbox, outbox, people, shops
from followup.storage.rows import Row
from followup.storage.store import Store, make_engine

AT_THE_PROVIDER = "taken, not answered"
ENDS_AT = BEGINS_AT + timedelta(hours=7)
# What was due by then has come to an end by the end: its last look is after 73 minutes, later where steps are long.
DUE_BY = BEGINS_AT + timedelta(hours=3)
# Then the lease of the process that was killed has run out.
AFTER_A_KILL = timedelta(seconds=16)
# Twice the lease of a claim.
STANDS_STILL = timedelta(seconds=120)
BEFORE_IT_IS_WOKEN = timedelta(seconds=100)
# Time goes on in longer and longer steps: what waits for its next look waits together.
BETWEEN_STEPS = tuple(timedelta(seconds=one) for one in (2, 20, 20, 40, 60, 120, 300, 600, 900))
_IN_PLANNING_AND_SENDING = 60
_FLOWS_EVERY_SECONDS, _FLOWS_BY = 0.2, timedelta(seconds=1)
_PAUSE = threading.Event()


@dataclass(frozen=True)
class Strike:
    """Where a process of a step is struck."""

    at: str
    nth: int
    does: str = "kill"


@dataclass(frozen=True)
class Plan:
    """What is done to a trial: strikes, each as soon as the one before has struck; how many senders run beside at
    first; whether the provider cannot be reached at first; how it answers the `first` request to each number."""

    seed: int
    strikes: tuple[Strike, ...] = ()
    beside: int = 0
    is_unreachable_first: bool = False
    change: str | None = None
    first: tuple[str, ...] = ()


def drawn_plan(seed: int) -> Plan:
    """One or two kills at named points or at the provider, sometimes beside a second sender."""
    random = Random(f"plan {seed}")
    places = [*POINTS, AT_THE_PROVIDER]
    # Every place in turn, so that few runs see them all.
    first = Strike(places[seed % len(places)], random.randint(1, 4))
    more = [Strike(random.choice(places), random.randint(1, 4)) for _ in range(random.randint(0, 1))]
    return Plan(seed, (first, *more), beside=int(random.random() < 0.25), is_unreachable_first=random.random() < 0.15)


def drawn_crash(seed: int) -> Plan:
    """A kill just before or after a commit of any transaction, from reading what came in to sending."""
    random = Random(f"crash {seed}")
    return Plan(
        seed, (Strike(random.choice((BEFORE_COMMIT, AFTER_COMMIT)), random.randint(1, _IN_PLANNING_AND_SENDING)),)
    )


def drawn_stop(seed: int) -> Plan:
    """A process that stands still past its lease, between two transactions, and then goes on."""
    random = Random(f"stop {seed}")
    return Plan(seed, (Strike(BETWEEN[seed % len(BETWEEN)], random.randint(1, 4), "stop"),))


def run(plan: Plan, shop: Shop, nursery: Nursery) -> Verdict:
    """The verdict on one trial. Every process that it started has ended when it returns."""
    return run_with_posts(plan, shop, nursery)[0]


def run_with_posts(plan: Plan, shop: Shop, nursery: Nursery) -> tuple[Verdict, Provider, list[Row]]:
    """The same with the provider, which keeps every request, and the texts as they ended."""
    with Trial(plan, shop, nursery).with_provider_and_pages() as trial:
        trial.go_to_the_end()
        return trial.verdict(), trial.provider, trial.texts()


@dataclass
class Trial:
    """A trial under way: its processes, its provider and its time."""

    plan: Plan
    shop: Shop
    nursery: Nursery
    at: datetime = BEGINS_AT
    kills: int = 0
    struck: int = 0
    steps: int = 0
    halves: list[str] = field(default_factory=list)
    running: set[int] = field(default_factory=set)
    beside: set[int] = field(default_factory=set)
    standing: dict[int, datetime] = field(default_factory=dict)
    lock: threading.RLock = field(default_factory=threading.RLock)

    @contextmanager
    def with_provider_and_pages(self) -> Iterator[Trial]:
        """The trial with its provider and pages; whatever runs at its end is ended."""
        self.shop.set_clock(self.at)
        self.store = Store(make_engine(self.shop.url))
        with (
            kept_port() as self.nowhere,
            Provider(Fates(self.plan.seed, first=self.plan.first), lambda: self.at, self.give_time) as self.provider,
        ):
            self.pages = self.start("web", self.provider.address)
            try:
                _wait_for(self.shop.port)
                yield self
            finally:
                for pid in (self.pages, *self.running, *self.standing):
                    os.kill(pid, signal.SIGKILL)
                    self.nursery.wait([pid])
                self.store.close()

    def go_on_at(self, shop: Shop) -> None:
        """The shop lies elsewhere from now on: new pages, and new processes by its settings."""
        os.kill(self.pages, signal.SIGKILL)
        self.nursery.wait([self.pages])
        self.store.close()
        self.shop, self.store = shop, Store(make_engine(shop.url))
        self.pages = self.start("web", self.provider.address)
        _wait_for(shop.port)

    def go_to_the_end(self) -> None:
        """Let processes run, and a new one for each that was struck, until all have ended by themselves."""
        if self.plan.is_unreachable_first:
            self.beside.add(self._work(BEGINS_AT, provider=demo_address(self.nowhere)))
        for _ in range(self.plan.beside):
            self.beside.add(self._work(BEGINS_AT))
        while self.running or self.standing or self.at < ENDS_AT:
            if self.running <= self.beside:
                self._work_on()
            if sum(self._take_note(one) for one in self._next_ended()):
                self._note_halves()
                self.struck += 1
                self.pass_time(self.at + AFTER_A_KILL)

    def _next_ended(self) -> list[Ended]:
        """Those that ended or stopped; asked again and again, because one may be woken meanwhile."""
        for _ in range(400):
            ended = self.nursery.wait(list(self.running), 0.2)
            if ended:
                return ended
        raise TimeoutError(f"seed {self.plan.seed}: a process did not end\n{self._last_words()}")

    def _work_on(self) -> None:
        """Start the process that goes to the end, unless its strike ends it; one that is to stand still has only as
        much to do as comes before it is woken, so that it ends then."""
        strike = self.plan.strikes[self.struck] if self.struck < len(self.plan.strikes) else None
        is_early = self.at < BEGINS_AT + BEFORE_IT_IS_WOKEN
        if strike is not None and strike.does == "stop" and is_early:
            self._work(BEGINS_AT + BEFORE_IT_IS_WOKEN, strike)
        else:
            self._work(ENDS_AT, strike if strike is not None and strike.does == "kill" else None)

    def give_time(self, instant: datetime) -> None:
        """The same for a process that asks for it, once those beside have done their work of this instant and ended."""
        for _ in range(2000):
            if not self.beside:
                break
            _PAUSE.wait(0.01)
        self.pass_time(instant)

    def pass_time(self, instant: datetime) -> None:
        """Let time go on to that instant, or further where nothing is due before; never back."""
        with self.lock:
            self.steps += 1
            gap = BETWEEN_STEPS[min(self.steps, len(BETWEEN_STEPS)) - 1]
            instant = min(ENDS_AT, max(instant, self.at + gap) if self._something_is_open() else ENDS_AT)
            while (due := self.provider.next_report_at()) is not None and due <= instant:
                self._set(max(self.at, due))
                self.provider.report_due()
            self._set(instant)
            for pid, since in list(self.standing.items()):
                if self.at - since >= STANDS_STILL:
                    del self.standing[pid]
                    self.running.add(pid)
                    self.beside.add(pid)
                    os.kill(pid, signal.SIGCONT)

    def verdict(self) -> Verdict:
        """What came of it."""
        with self.store.read() as connection:
            shop_id = shops.shop_codes(connection)[0][0]
            unanswered = [f"inbound {one} was never answered" for one in inbox.unhandled(connection, shop_id)]
        self._note_halves()
        orphans = [*self.halves, *unanswered]
        stood = STANDS_STILL + BETWEEN_STEPS[-1] if any(one.does == "stop" for one in self.plan.strikes) else None
        struck = Struck(self.kills, stood_still=stood or timedelta(0))
        return judge(self.plan.seed, self.texts(), orphans, self.provider, struck, DUE_BY)

    def texts(self) -> list[Row]:
        """Every text of the shop as it stands."""
        with self.store.read() as connection:
            return outbox.texts_of_shop(connection, shops.shop_codes(connection)[0][0])

    def flow(self, ended: threading.Event) -> None:
        """Let time go on by itself, some times as fast as real time, until that event."""
        while not ended.wait(_FLOWS_EVERY_SECONDS):
            with self.lock:
                self._set(self.at + _FLOWS_BY)
                self.provider.report_due()

    def _set(self, instant: datetime) -> None:
        self.at = max(self.at, instant)
        self.shop.set_clock(self.at)

    def _work(self, until: datetime, strike: Strike | None = None, provider: str | None = None) -> int:
        pid = self.start("work", provider or self.provider.address, strike, "--until", until.isoformat())
        self.running.add(pid)
        self.provider.when_taken = lambda _count: None
        if strike is not None and strike.at == AT_THE_PROVIDER:
            wanted = len(self.provider.posts) + strike.nth
            self.provider.when_taken = lambda count: os.kill(pid, signal.SIGKILL) if count == wanted else None
        return pid

    def start(self, command: str, provider: str, strike: Strike | None = None, *more: str) -> int:
        """Start a command with its provider at that address; its process."""
        at = strike.at if strike and strike.at != AT_THE_PROVIDER else None
        return self.nursery.start(
            Order(
                arguments=(command, *more), environment=self.shop.environment(provider),
                log=str(self.shop.folder / f"{command}.log"), time_keeper=self.provider.address, at=at,
                nth=strike.nth if strike else 1, does=strike.does if strike else "kill",
                change=None if command == "web" else self.plan.change,
            )
        )  # fmt: skip

    def _take_note(self, ended: Ended) -> bool:
        """Note how a process ended; whether it was struck."""
        with self.lock:
            self.running.discard(ended.pid)
            self.beside.discard(ended.pid)
            self.provider.when_taken = lambda _count: None
            if ended.how == "stopped":
                self.standing[ended.pid] = self.at
                return True
            if ended.how == "killed":
                self.kills += 1
                return True
        if ended.number:
            raise RuntimeError(f"seed {self.plan.seed}: a process failed\n{self._last_words()}")
        return False

    def _last_words(self) -> str:
        return (self.shop.folder / "work.log").read_text(encoding="utf-8", errors="replace")[-4000:]

    def _something_is_open(self) -> bool:
        if self.standing:
            return True
        with self.store.read() as connection:
            shop_id = shops.shop_codes(connection)[0][0]
            if inbox.unhandled(connection, shop_id):
                return True
            return any(is_open(row, DUE_BY) for row in outbox.texts_of_shop(connection, shop_id))

    def _note_halves(self) -> None:
        """Decisions and their texts are written together: none of them stands alone, whenever a process ended."""
        with self.store.read() as connection:
            shop_id = shops.shop_codes(connection)[0][0]
            self.halves += [
                f"reason {row['id']} has no text" for row in outbox.reasons_without_text(connection, shop_id)
            ]
            waiting = set(inbox.unhandled(connection, shop_id))
            for number in WROTE:
                phone = people.find_phone(connection, shop_id, number)
                assert phone is not None
                handled = [row for row in inbox.inbound_of_phone(connection, phone["id"]) if row["id"] not in waiting]
                answers = [row for row in outbox.texts_of_phone(connection, phone["id"]) if row["kind"] == "answer"]
                if len(handled) != len(answers):
                    self.halves.append(f"{len(handled)} texts were handled and {len(answers)} answered")


def _wait_for(port: int) -> None:
    for _ in range(2000):
        try:
            socket.create_connection(("127.0.0.1", port), timeout=1).close()
            return
        except OSError:
            _PAUSE.wait(0.005)
    raise TimeoutError("the pages did not open")
