"""The real program within this process: its pages as a hook calls them, and its worker, which can be killed.

A kill is an exception at a named point that nothing in the program catches: what a transaction held is undone, nothing
after it is done, and another worker goes on. Whether a real process dies like that is tried in `rehearsal/faults`.
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterator, Mapping
from contextlib import contextmanager
from dataclasses import replace
from datetime import datetime, timedelta
from itertools import count
from typing import Any
from urllib.parse import urlsplit

from followup import clock, points, scheduler
from followup.rehearsal.faults.provider import Provider
from followup.rehearsal.faults.shop import clock_in
from followup.rehearsal.faults.worker import stepped_now
from followup.rehearsal.week.direct import DirectProvider, Wire, post_directly
from followup.rehearsal.week.premises import Premises
from followup.settings import read_settings
from followup.storage import machine
from followup.transports import twilio
from followup.wiring import House, open_house

# The provider of a rehearsal is near; where it keeps silent nobody should wait for long.
READ_SECONDS = 0.1


PostForm = Callable[[str, dict[str, str], dict[str, str]], int]
"""Posts a form with its headers to a path of the hooks: the status of the answer."""


class Killed(BaseException):
    """The worker ends here."""


class _AloneHere(scheduler.Acting):
    """Within one step nobody else comes: the lease that it began with holds. Real processes are tried elsewhere."""

    def still(self, *, is_long: bool = False) -> bool:
        """Whether it began with the lease."""
        return self.term is not None


class Inside:
    """Pages and worker of one shop, which read the time from `now`. `without` names ticks of the clock that are left
    out, `every` those that run at another pace. One in `one_in` calls goes over the wire: see `direct.py`; with 0
    there are no pages and no network."""

    def __init__(
        self,
        premises: Premises,
        provider: Provider,
        now: Callable[[], datetime],
        without: Collection[str] = (),
        every: Mapping[str, timedelta] = {},
        one_in: int = 1,
    ) -> None:
        self._premises, self._provider, self._now = premises, provider, now
        self._wire = Wire(one_in)
        self._ticks = tuple(
            replace(tick, every=every.get(tick.name, tick.every))
            for tick in scheduler.TICKS
            if tick.name not in without
        )
        self._settings = read_settings(premises.environment(provider.address))
        self._numbers = count(1)
        self.kills = 0
        self.hooks_open = True
        self._waits_for: tuple[str, int] | None = None

    @contextmanager
    def running(self) -> Iterator[Inside]:
        """The program runs; what it changes in this process is as before afterwards."""
        before = clock.now, machine.database_now, twilio.CONNECT_SECONDS, twilio.READ_SECONDS
        with clock_in(self._premises.clock_file):
            # A file that is written at each step and read at each look would take longer than the look.
            clock.now = self._now
            machine.database_now, twilio.CONNECT_SECONDS, twilio.READ_SECONDS = stepped_now, 2.0, READ_SECONDS
            points.listen(self._pass)
            self._pages = self._open()
            self._pages.answers_at_once = False
            self._over_the_wire = self._by_pages() if self._wire.one_in else self._directly
            self._open_worker()
            try:
                yield self
            finally:
                self._work.close()
                self._pages.close()
                points.listen(None)
                clock.now, machine.database_now, twilio.CONNECT_SECONDS, twilio.READ_SECONDS = before

    @property
    def house(self) -> House:
        """The pages' part of it, for whoever looks at the database."""
        return self._pages

    def post(self, url: str, form: dict[str, str], headers: dict[str, str]) -> int | None:
        """What a provider posts to a hook; None while nobody is there."""
        if not self.hooks_open:
            return None
        post = self._over_the_wire if self._wire.has_its_turn("hook") else self._directly
        return post(urlsplit(url).path, form, headers)

    def _by_pages(self) -> PostForm:
        from followup.web.app import create_app

        client = create_app(self._pages).test_client()

        def post(path: str, form: dict[str, str], headers: dict[str, str]) -> int:
            given: Any = {name: value for name, value in headers.items() if name != "Content-Type"}
            return client.post(path, data=form, headers=given).status_code

        return post

    def _directly(self, path: str, form: dict[str, str], _headers: dict[str, str]) -> int:
        return post_directly(self._pages, path, form)

    def _open(self) -> House:
        house = open_house(self._settings)
        if self._wire.one_in != 1:
            house.transport = DirectProvider(self._provider, self._wire)
        return house

    def kill_at(self, point: str, nth: int) -> None:
        """The worker is killed when it comes to that point so often from now on."""
        self._waits_for = (point, nth)

    def work_now(self) -> datetime | None:
        """Let the worker do all that is due; when something is due next, or None where it was killed."""
        try:
            scheduler.run_all_now(self._work, self._worker, self._ticks, self._acting)
        except Killed:
            self.kills += 1
            self._work.close()
            self._open_worker()
            return None
        now = self._work.now()
        return max(self._work.next_due(now), now + timedelta(seconds=2))

    def end_worker(self) -> None:
        """The machine goes down and comes up again: another worker, which knows nothing but the database."""
        self._work.close()
        self._open_worker()

    def _open_worker(self) -> None:
        self._work = self._open()
        self._worker = f"worker {next(self._numbers)}"
        self._acting = _AloneHere(self._work, self._worker)
        if not self._work.move_in():
            raise RuntimeError("This database sends nothing: it is a copy.")

    def _pass(self, point: str) -> None:
        if self._waits_for is None or self._waits_for[0] != point:
            return
        left = self._waits_for[1] - 1
        self._waits_for = (point, left) if left else None
        if not left:
            raise Killed
