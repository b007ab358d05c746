"""The ticking clock: which workflow runs how often. It decides nothing: each tick asks our own tables what is due.

APScheduler only ticks, in its own process, in UTC intervals, without a store of its own; what is due stands in our
tables. How long ago a tick ran is asked by `clock.py`, from the heartbeats: a clock that was moved on is caught up with
in one tick, and nothing fires twice when hours repeat. Only the process that holds the lease acts, and it asks before
each tick whether it still does: one that stood still meanwhile stands down. What it was in the middle of is fenced by
the rows themselves.

What talks to the provider may take half a minute a call, so it runs in a lane of its own for each shop (`Lanes`): no
shop waits for another's calls, and nothing else waits for any.
"""

from __future__ import annotations

import logging
import os
import secrets
import signal
import threading
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass
from datetime import datetime, timedelta
from functools import partial
from typing import Any

from followup import clock
from followup.wiring import EVERY, HEAR_EVERY, House
from followup.workflows.draw_set_changes import draw_set_changes
from followup.workflows.look_for_waiting import is_anything_waiting

_LOG = logging.getLogger(__name__)
LOOK_EVERY_SECONDS = 1
MOST_LANES = 32
WAIT_FOR_LEASE_SECONDS = 0.05
LEASE_LASTS = timedelta(seconds=15)
KEEP_LEASE_EVERY_SECONDS = 5
LEASE = "clock"
LONG_FROM = timedelta(seconds=20)
# So many ticks of one kind that did not run are told in the log.
MISSED = 3


@dataclass(frozen=True)
class Tick:
    """One workflow and how often it runs.

    `most`: how much of its work one look does, over all shops; the next look goes on. So nothing else waits for it.
    """

    name: str
    every: timedelta
    run: Callable[..., object]
    talks_to_provider: bool = False
    most: int | None = None

    @property
    def may_take_long(self) -> bool:
        """What runs every few seconds is quick, and the provider is waited for in a lane."""
        return self.every >= LONG_FROM and not self.talks_to_provider


def _draw(house: House, shop_id: int) -> None:
    """Draw whose turn it is to change sets of tires, and write to them at once."""
    if draw_set_changes(house.store, shop_id, house.now(), needs_registration=house.needs_registration):
        house.plan(shop_id)


# About half a second of forecasts, so that an answer or a stop never waits behind the news of a large shop.
FORECAST_A_LOOK = 40
# In the order in which they follow from each other within one look.
TICKS: tuple[Tick, ...] = (
    Tick("hear", HEAR_EVERY, House.hear, talks_to_provider=True),
    Tick("answer", EVERY["answer"], House.answer),
    Tick("tell", timedelta(seconds=2), House.tell),
    Tick("forecast", timedelta(seconds=20), House.forecast_and_plan, most=FORECAST_A_LOOK),
    Tick("pace", timedelta(minutes=10), House.pace),
    Tick("draw", timedelta(minutes=10), _draw),
    Tick("plan", timedelta(hours=6), House.plan),
    Tick("score", timedelta(seconds=20), House.score_some),
    Tick("send", EVERY["send"], House.send, talks_to_provider=True),
    Tick("look_up", timedelta(seconds=10), House.look_up, talks_to_provider=True),
    Tick("settle", timedelta(minutes=10), House.settle),
    Tick("watch_stops", timedelta(minutes=10), House.watch_stops),
    Tick("learn", timedelta(minutes=30), House.learn_at_night),
)


class Lanes:
    """A thread for each (tick, shop) that is busy; a lane that is still busy is left alone."""

    def __init__(self, most: int = MOST_LANES) -> None:
        self._pool = ThreadPoolExecutor(most, thread_name_prefix="lane")
        self._busy: set[tuple[str, int]] = set()
        self._lock = threading.Lock()

    def start(self, lane: tuple[str, int], work: Callable[[], object]) -> bool:
        """Run it beside all else; False where the lane is busy."""
        with self._lock:
            if lane in self._busy:
                return False
            self._busy.add(lane)
        self._pool.submit(self._run, lane, work)
        return True

    def end(self) -> None:
        """Wait until every lane is free; nothing more starts."""
        self._pool.shutdown(wait=True, cancel_futures=True)

    def _run(self, lane: tuple[str, int], work: Callable[[], object]) -> None:
        try:
            work()
        finally:
            with self._lock:
                self._busy.discard(lane)


class Acting:
    """The term in which this process holds the clock's lease, if it does."""

    def __init__(self, house: House, worker: str) -> None:
        self.house, self.worker = house, worker
        self.term: int | None = None
        # Shops whose turn comes first at the next look, by the tick that had more to do than one look does.
        self.left: dict[str, list[tuple[int, str]]] = {}

    def begin(self) -> bool:
        """Take the lease or renew it; False where another process holds it."""
        before, self.term = self.term, self.house.take_lease(LEASE, self.worker, LEASE_LASTS)
        if self.term is not None and self.term != before:
            _LOG.info("acting as %s in term %s", self.worker, self.term)
        return self.term is not None

    def still(self, *, is_long: bool = False) -> bool:
        """Whether this process may act yet."""
        term = self.term
        if term is None:
            return False
        if self.house.keep_lease(LEASE, self.worker, term, LEASE_LASTS, is_long=is_long):
            return True
        _LOG.warning("%s stood still past its lease of term %s and stands down", self.worker, term)
        self.term = None
        return False


def run_due(
    house: House,
    worker: str,
    lanes: Lanes | None = None,
    acting: Acting | None = None,
    ticks: tuple[Tick, ...] | None = None,
) -> int:
    """Run every tick whose time has come, if this process holds the lease; how many ran.

    With `lanes` what talks to the provider is only started here; without, it has ended when this returns. The
    heartbeats of quick ticks are written together, but never wait for one that may take long.
    """
    now, acting = house.now(), acting or Acting(house, worker)
    if not acting.begin():
        return 0
    beats, every_shop, ran = house.last_beats(), house.shops(), 0
    to_say: list[str] = []
    for tick in TICKS if ticks is None else ticks:
        last = beats.get(tick.name)
        # A heartbeat ahead of now: the clock was moved back.
        if last is not None and last <= now and now - last < tick.every:
            continue
        if last is not None and now - last > MISSED * tick.every and tick.name not in acting.left:
            _LOG.info("%s ran last at %s: what was missed is caught up with in this tick", tick.name, last)
        if tick.may_take_long and to_say:
            house.beat(to_say)
            to_say = []
        is_done = _run_for_all(house, tick, acting, every_shop, lanes)
        if not acting.still():
            return ran
        if not is_done:
            continue
        to_say.append(tick.name)
        ran += 1
    if to_say:
        house.beat(to_say)
    return ran


def _run_for_all(
    house: House, tick: Tick, acting: Acting, every_shop: list[tuple[int, str]], lanes: Lanes | None
) -> bool:
    """Run the tick for every shop; False where the next look has to go on with it, or this process may act no more."""
    # Who steps a clock has no next look at the same instant.
    left = tick.most if lanes is not None else None
    waiting = acting.left.pop(tick.name, None) or every_shop
    for place, (shop_id, code) in enumerate(waiting, start=1):
        if not acting.still():
            return False
        work = partial(_run_tick, house, tick, shop_id, code, left)
        if lanes is not None and tick.talks_to_provider:
            lanes.start((tick.name, shop_id), work)
            continue
        done = work()
        if left is None:
            continue
        left -= done
        if left <= 0:
            # It may have more to do: after the others.
            acting.left[tick.name] = [*waiting[place:], (shop_id, code)]
            return False
    return True


def _run_tick(house: House, tick: Tick, shop_id: int, code: str, most: int | None = None) -> int:
    """How much of its work was done, where only so much is done at once."""
    try:
        done = tick.run(house, shop_id) if most is None else tick.run(house, shop_id, most)
    except Exception:
        # One shop's trouble must not stop the others, nor the next tick.
        _LOG.exception("the tick %s failed for shop %s", tick.name, code)
        return 0
    return done if isinstance(done, int) and most is not None else 0


def run_until(house: House, until: datetime) -> int:
    """Step a clock that can be moved through every due tick up to `until`, and return how many ran.

    Between two steps nothing can be due: a step goes to the next planned text, the next telling of an alert, or the
    next round of planning, whichever is first. Only the process that holds the lease moves the clock; another one waits
    for it. The lease, which goes by real time, is given back at the end.
    """
    worker, ran, pause = _worker(), 0, threading.Event()
    try:
        while True:
            ran += run_all_now(house, worker)
            now = house.now()
            if now >= until:
                return ran
            if house.take_lease(LEASE, worker, LEASE_LASTS) is None:
                pause.wait(WAIT_FOR_LEASE_SECONDS)
                continue
            clock.move_to(min(until, max(house.next_due(now), now + timedelta(seconds=2))))
    finally:
        house.give_back_lease(LEASE, worker)


def run_all_now(house: House, worker: str, ticks: tuple[Tick, ...] | None = None, acting: Acting | None = None) -> int:
    """Run what is due at this instant until nothing new comes of it (an answer that must be sent, an alert)."""
    ran = run_due(house, worker, acting=acting, ticks=ticks)
    for shop_id, _ in house.shops():
        if not is_anything_waiting(house.store, shop_id, house.now()):
            continue
        house.answer(shop_id)
        house.tell(shop_id)
        while house.send(shop_id, worker).sent:
            ran += 1
            house.tell(shop_id)
    return ran


def tick_for_ever(house: House) -> None:
    """Tick until SIGTERM or SIGINT; a text that is being handed over is ended first, the others stay planned."""
    from apscheduler.schedulers.background import BackgroundScheduler

    worker, stopped, lanes = _worker(), house.stopping, Lanes()
    acting = Acting(house, worker)
    options: dict[str, Any] = {"misfire_grace_time": None, "coalesce": True, "max_instances": 1}
    ticking = BackgroundScheduler(timezone="UTC", job_defaults=options)
    ticking.add_job(_look, "interval", seconds=LOOK_EVERY_SECONDS, args=(house, worker, lanes, acting))
    ticking.add_job(_keep_lease, "interval", seconds=KEEP_LEASE_EVERY_SECONDS, args=(acting,))
    for name in (signal.SIGTERM, signal.SIGINT):
        signal.signal(name, lambda *_: stopped.set())
    ticking.start()
    _LOG.info("ticking as %s", worker)
    stopped.wait()
    ticking.shutdown(wait=True)
    lanes.end()
    house.give_back_lease(LEASE, worker)


def _keep_lease(acting: Acting) -> None:
    """Keep the lease while a look takes long; a process that stands still keeps nothing."""
    try:
        acting.still(is_long=True)
    except Exception as away:
        _LOG.warning("the lease could not be kept (%s)", type(away).__name__)


def _look(house: House, worker: str, lanes: Lanes, acting: Acting) -> None:
    try:
        if house.has_moved():
            _LOG.error("the database was moved away: nothing is done here any more, so this process ends")
            house.stopping.set()
            return
        run_due(house, worker, lanes, acting)
    except Exception:
        _LOG.exception("a look failed; the next one tries again")


def _worker() -> str:
    return f"{os.getpid()}-{secrets.token_hex(4)}"
