"""The same week with real processes: the pages under their own server, the worker as its own process, both killed.

A `SimulatedShop` whose program is not in this process. The worker is `followup work --until`, which asks a keeper of
time that it go on (a provider to which nobody texts, since the other one may be away); so the world is stepped while it
waits for the answer. What is killed dies by SIGKILL: the
worker where the troubles say (once between two steps, and the next one at the point itself), the pages around a commit,
both where the server is down. Hooks go over the wire; a connection that breaks is no answer.
"""

from __future__ import annotations

import os
import signal
import threading
from collections.abc import Collection, Iterator, Mapping
from contextlib import contextmanager, suppress
from dataclasses import dataclass
from datetime import datetime, timedelta
from http.client import HTTPConnection, HTTPException
from pathlib import Path
from random import Random
from typing import Any
from urllib.parse import urlencode, urlsplit

from followup import scheduler
from followup.rehearsal.faults.fate import Fates
from followup.rehearsal.faults.nursery import Ended, Nursery
from followup.rehearsal.faults.provider import Provider
from followup.rehearsal.faults.shop import clock_in
from followup.rehearsal.faults.worker import AFTER_COMMIT, BEFORE_COMMIT, Order, stepped_now
from followup.rehearsal.week.premises import Premises
from followup.rehearsal.week.shop_life import AFTER_A_KILL, WHILE_IT_IS_AWAY, SimulatedShop
from followup.settings import read_settings
from followup.storage import machine
from followup.wiring import House, open_house

LEFT_OUT = ("learn", "score")
_OPENS_WITHIN_SECONDS, _LOOKS_EVERY_SECONDS = 30.0, 0.02
_MOST_COMMITS_OF_PAGES = 40
_PAUSE = threading.Event()


@dataclass(frozen=True)
class Point:
    """Where a process is struck, and the how manieth time that it comes there."""

    at: str
    nth: int


class Outside:
    """Pages and worker of one shop as processes of a nursery."""

    def __init__(self, premises: Premises, provider: str, keeper: str, nursery: Nursery, seed: int) -> None:
        self._premises, self._keeper, self._nursery = premises, keeper, nursery
        self._environment = {**premises.environment(provider), "FOLLOWUP_WEB_THREADS": "4"}
        random = Random(f"pages {seed}")
        self._pages_strike: Point | None = Point(
            random.choice((BEFORE_COMMIT, AFTER_COMMIT)), random.randint(1, _MOST_COMMITS_OF_PAGES)
        )
        self._strike: Point | None = None
        self._pages: int | None = None
        self._worker: int | None = None
        self._is_open = True
        # The nursery answers one question at a time; hooks are posted by threads of the provider.
        self._lock = threading.RLock()
        self.kills = self.kills_of_pages = 0

    @contextmanager
    def running(self) -> Iterator[Outside]:
        """The program runs; every process has ended afterwards."""
        before = machine.database_now
        with clock_in(self._premises.clock_file):
            machine.database_now = stepped_now
            self._house = open_house(read_settings(self._environment))
            try:
                self._open_pages()
                yield self
            finally:
                self.end_worker()
                self._end_pages()
                self._house.close()
                machine.database_now = before

    @property
    def house(self) -> House:
        """For whoever looks at the database, and for staff."""
        return self._house

    @property
    def hooks_open(self) -> bool:
        """Whether the pages run."""
        return self._is_open

    @hooks_open.setter
    def hooks_open(self, is_open: bool) -> None:
        self._is_open = is_open
        if is_open:
            self._open_pages()
        else:
            self._end_pages()

    def post(self, url: str, form: dict[str, str], headers: dict[str, str]) -> int | None:
        """What a provider posts to a hook; None where nobody answers. Pages that died are started again after it."""
        if not self._is_open:
            return None
        link = HTTPConnection("127.0.0.1", self._premises.port, timeout=20)
        try:
            link.request("POST", urlsplit(url).path, urlencode(form), headers)
            return link.getresponse().status
        except (OSError, HTTPException):
            with self._lock:
                if self._pages is not None and self._ended(self._pages, 5.0):
                    self.kills_of_pages += 1
                    self._pages = self._pages_strike = None
                    self._open_pages()
            return None
        finally:
            link.close()

    def kill_at(self, point: str, nth: int) -> None:
        """The worker is killed now, and the next one when it comes to that point so often."""
        self._strike = Point(point, nth)
        self.kill_worker()

    def kill_worker(self) -> None:
        """The worker dies, whatever it is doing."""
        if self._worker is not None:
            os.kill(self._worker, signal.SIGKILL)

    def end_worker(self) -> None:
        """No worker is left when this returns."""
        if self._worker is not None:
            self.kill_worker()
            with self._lock:
                self._nursery.wait([self._worker])
            self._worker = None

    def work(self, until: datetime) -> bool:
        """A worker works until that instant of the program's clock, or until it dies: then False."""
        strike, self._strike = self._strike, None
        self._worker = self._start(("work", "--until", until.isoformat()), strike, f"{__name__}:leave_out")
        while not (ended := self._ended(self._worker, _LOOKS_EVERY_SECONDS)):
            # Whoever posts a hook meanwhile may need the nursery too.
            _PAUSE.wait(0.001)
        self._worker = None
        if ended[0].how == "killed":
            self.kills += 1
            return False
        if ended[0].number:
            raise RuntimeError(f"the worker failed\n{self._log('work').read_text(errors='replace')[-4000:]}")
        return True

    def _ended(self, pid: int, seconds: float) -> list[Ended]:
        with self._lock:
            return self._nursery.wait([pid], seconds)

    def _open_pages(self) -> None:
        with self._lock:
            self._pages = self._start(("web",), self._pages_strike)
        for _ in range(int(_OPENS_WITHIN_SECONDS / _LOOKS_EVERY_SECONDS)):
            with suppress(OSError, HTTPException):
                link = HTTPConnection("127.0.0.1", self._premises.port, timeout=5)
                link.request("GET", "/static/followup.css")
                link.getresponse().read()
                link.close()
                return
            _PAUSE.wait(_LOOKS_EVERY_SECONDS)
        raise TimeoutError(f"the pages did not open\n{self._log('web').read_text(errors='replace')[-4000:]}")

    def _end_pages(self) -> None:
        with self._lock:
            if self._pages is not None:
                os.kill(self._pages, signal.SIGKILL)
                self._nursery.wait([self._pages])
            self._pages = None

    def _start(self, arguments: tuple[str, ...], strike: Point | None, change: str | None = None) -> int:
        order = Order(
            arguments, self._environment, str(self._log(arguments[0])), time_keeper=self._keeper,
            at=strike.at if strike else None, nth=strike.nth if strike else 1, change=change,
        )  # fmt: skip
        with self._lock:
            return self._nursery.start(order)

    def _log(self, command: str) -> Path:
        return self._premises.folder / f"{command}.log"


def leave_out() -> None:
    """In the worker's process: learning and scoring change no promise and take time."""
    scheduler.TICKS = tuple(tick for tick in scheduler.TICKS if tick.name not in LEFT_OUT)


class ShopOfProcesses(SimulatedShop):
    """A simulated shop whose pages and worker are processes of the nursery."""

    def __init__(self, premises: Premises, nursery: Nursery, seed: int, begins_at: datetime, **others: Any) -> None:
        self._nursery, self._ends_at = nursery, begins_at
        super().__init__(premises, seed, begins_at, **others)

    def make_program(  # type: ignore[override]  # it has all that the life of a shop asks of its program
        self, _without: Collection[str], _every: Mapping[str, timedelta], _one_in: int
    ) -> Outside:
        """The program as processes."""
        self._keeper = Provider(Fates(self.seed), self.world.now, self.give_time)
        return Outside(self.premises, self.provider.address, self._keeper.address, self._nursery, self.seed)

    def set_clock(self, instant: datetime) -> None:
        """Processes read the time from a file."""
        self.premises.set_clock(instant)

    def __enter__(self) -> ShopOfProcesses:
        self._stack.enter_context(self._keeper)
        super().__enter__()
        return self

    def give_time(self, instant: datetime) -> None:
        """A worker asks that time go on; where the provider is away further than it asks, as in every trial."""
        if self._provider_is_away:
            instant = max(instant, self.world.program_now() + WHILE_IT_IS_AWAY)
        self.world.pass_time(min(instant, self._ends_at + self.world.wrong_by))

    def live(self, until: datetime) -> None:
        """Let it live until that instant of true time."""
        program: Outside = self.program  # type: ignore[assignment]  # made by make_program
        self._ends_at = until
        while self.world.at < until:
            wrong_by = self.world.wrong_by
            if self.is_down:
                self.world.pass_time(until + wrong_by)
            # A clock that is ahead may be set right meanwhile: then another one goes on.
            elif not program.work(until + min(wrong_by, timedelta(0))):
                self.world.pass_time(self.world.program_now() + AFTER_A_KILL)

    def _server_goes(self, hooks_alone: bool) -> bool:
        if not hooks_alone:
            self.program.kill_worker()  # type: ignore[attr-defined]  # made by make_program
        return super()._server_goes(hooks_alone)
