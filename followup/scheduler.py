"""The ticking clock: which workflow runs how often. It decides nothing: each tick asks our own tables what is due.

APScheduler only ticks, in its own process, in UTC intervals, without a store of its own; what is due stands in our
tables. How long ago a tick ran is asked by `clock.py`, from the heartbeats: a clock that was moved on is caught up with
in one tick, and nothing fires twice when hours repeat. Only the process that holds the lease acts.
"""

from __future__ import annotations

import logging
import os
import secrets
import signal
import threading
from collections.abc import Callable
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Any

from followup import clock
from followup.wiring import House

_LOG = logging.getLogger(__name__)
LOOK_EVERY_SECONDS = 1
WAIT_FOR_LEASE_SECONDS = 0.05
LEASE_LASTS = timedelta(seconds=15)


@dataclass(frozen=True)
class Tick:
    """One workflow and how often it runs."""

    name: str
    every: timedelta
    run: Callable[[House, int], object]


# In the order in which they follow from each other within one look.
TICKS: tuple[Tick, ...] = (
    Tick("answer", timedelta(seconds=2), House.answer),
    Tick("tell", timedelta(seconds=2), House.tell),
    Tick("forecast", timedelta(seconds=20), House.forecast_and_plan),
    Tick("plan", timedelta(hours=6), House.plan),
    Tick("score", timedelta(seconds=20), House.score_some),
    Tick("send", timedelta(seconds=1), House.send),
    Tick("look_up", timedelta(seconds=10), House.look_up),
    Tick("settle", timedelta(minutes=10), House.settle),
    Tick("learn", timedelta(minutes=30), House.learn_at_night),
)


def run_due(house: House, worker: str) -> int:
    """Run every tick whose time has come, if this process holds the lease; how many ran."""
    now = house.now()
    if house.take_lease("clock", worker, LEASE_LASTS) is None:
        return 0
    beats, ran = house.last_beats(), 0
    for tick in TICKS:
        last = beats.get(tick.name)
        # A heartbeat ahead of now: the clock was moved back.
        if last is not None and last <= now and now - last < tick.every:
            continue
        for shop_id, code in house.shops():
            try:
                tick.run(house, shop_id)
            except Exception:
                # One shop's trouble must not stop the others, nor the next tick.
                _LOG.exception("the tick %s failed for shop %s", tick.name, code)
        house.beat(tick.name)
        ran += 1
    return ran


def run_until(house: House, until: datetime) -> int:
    """Step a clock that can be moved through every due tick up to `until`, and return how many ran.

    Between two steps nothing can be due: a step goes to the next planned text, the next telling of an alert, or the
    next round of planning, whichever is first. Only the process that holds the lease moves the clock; another one waits
    for it. The lease, which goes by real time, is given back at the end.
    """
    worker, ran, pause = _worker(), 0, threading.Event()
    try:
        while True:
            ran += _run_all_now(house, worker)
            now = house.now()
            if now >= until:
                return ran
            if house.take_lease("clock", worker, LEASE_LASTS) is None:
                pause.wait(WAIT_FOR_LEASE_SECONDS)
                continue
            clock.move_to(min(until, max(house.next_due(now), now + timedelta(seconds=2))))
    finally:
        house.give_back_lease("clock", worker)


def _run_all_now(house: House, worker: str) -> int:
    """Run what is due at this instant until nothing new comes of it (an answer that must be sent, an alert)."""
    ran = run_due(house, worker)
    for shop_id, _ in house.shops():
        house.answer(shop_id)
        house.tell(shop_id)
        while house.send(shop_id, worker).sent:
            ran += 1
            house.tell(shop_id)
    return ran


def tick_for_ever(house: House) -> None:
    """Tick until SIGTERM or SIGINT; a round that has begun is ended first."""
    from apscheduler.schedulers.background import BackgroundScheduler

    worker, stopped = _worker(), threading.Event()
    options: dict[str, Any] = {"misfire_grace_time": None, "coalesce": True, "max_instances": 1}
    ticking = BackgroundScheduler(timezone="UTC", job_defaults=options)
    ticking.add_job(_look, "interval", seconds=LOOK_EVERY_SECONDS, args=(house, worker))
    for name in (signal.SIGTERM, signal.SIGINT):
        signal.signal(name, lambda *_: stopped.set())
    ticking.start()
    _LOG.info("ticking as %s", worker)
    stopped.wait()
    ticking.shutdown(wait=True)
    house.give_back_lease("clock", worker)


def _look(house: House, worker: str) -> None:
    try:
        run_due(house, worker)
    except Exception:
        _LOG.exception("a look failed; the next one tries again")


def _worker() -> str:
    return f"{os.getpid()}-{secrets.token_hex(4)}"
