"""`followup bench sweep`: a day's sweep over a group of shops, beside the least that a sweep can be, in one run.

What the program does for every car in a day is to ask what is news and of whom there may be a reason to write; windows
are kept as curves, which age by themselves. A car is forecast anew where something else is known of it, and all of them
after a change of limits or priors. Each is measured, at the size that is asked for; what is asked of a million cars is
held against the same pace. The hook is posted to while it goes on. Loopback only.
"""

from __future__ import annotations

import json
import math
import subprocess
import sys
import tempfile
import threading
from collections.abc import Callable
from contextlib import ExitStack
from dataclasses import dataclass
from pathlib import Path

from followup.rehearsal.bench import bare_sweep
from followup.rehearsal.bench.figures import Figure, at_most, beside
from followup.rehearsal.bench.hooks import ADDRESS, BODIES, free_port, running_process, wait_for
from followup.rehearsal.bench.posting import Answers, Poster, post_at
from followup.rehearsal.bench.sweep_fleet import CARS_A_SHOP, Group, build_group, tell_odometers
from followup.rehearsal.faults.provider import ACCOUNT, TOKEN
from followup.rehearsal.faults.shop import Shop, demo_address
from followup.storage import schema, shops
from followup.storage.store import Store, make_engine

_MILLION = 1_000_000
# What the design asks of a million cars: seconds of a full sweep by database; of one car in a hundred; and besides.
_FULL, _CHANGED, _EVERY = {"SQLite": 60.0, "PostgreSQL": 180.0}, 2.0, 100
_MOST_MIB, _LONGEST_MS, _P99_MS, _MOST_MS = 300.0, 25.0, 250.0, 1000.0
_RATE = 20
# Cars that are forecast anew, as after a change of the priors: enough to tell how long each takes.
_ANEW = 400
_BARE_ROWS = 200_000


@dataclass(frozen=True)
class Asked:
    """About how many cars; how long the hook is posted to, in seconds; an empty PostgreSQL database, or None."""

    vehicles: int = 20_000
    seconds: float = 8.0
    seed: int = 7001
    postgresql: str | None = None

    @property
    def steps(self) -> int:
        """How often progress is told: each shop is built, and looked at twice."""
        return 3 * max(self.vehicles // CARS_A_SHOP, 1) * (2 if self.postgresql else 1)


def bench_sweep(asked: Asked, progress: Callable[[int], object]) -> list[Figure]:
    """The figures of each database."""
    figures: list[Figure] = []
    with tempfile.TemporaryDirectory(prefix="sweep") as name:
        urls = {"SQLite": f"sqlite+pysqlite:///{Path(name) / 'group.db'}"}
        if asked.postgresql:
            urls["PostgreSQL"] = asked.postgresql
        for database, url in urls.items():
            store = Store(make_engine(url))
            try:
                schema.upgrade(store.engine)
                group = build_group(store, asked.vehicles, asked.seed, progress)
                bench = _Bench(store, url, Path(name), group, progress)
                figures += _measured(bench, database, asked.seconds)
            finally:
                store.close()
    if not asked.postgresql:
        figures.append(Figure("PostgreSQL", "left out: no --postgresql"))
    return figures


@dataclass
class _Bench:
    store: Store
    url: str
    folder: Path
    group: Group
    progress: Callable[[int], object]

    def day(self, anew: int = 0, *, is_told: bool = True) -> dict[str, float]:
        """One day's sweep, in a process of its own."""
        command = [sys.executable, "-m", "followup.rehearsal.bench.sweep_day", self.url, self.group.now.isoformat()]
        with subprocess.Popen([*command, str(anew)], stdout=subprocess.PIPE, text=True) as process:
            assert process.stdout is not None
            last = ""
            for line in process.stdout:
                if is_told and not line.startswith("{"):
                    self.progress(1)
                last = line
        if process.returncode:
            raise RuntimeError("the sweep failed")
        found: dict[str, float] = json.loads(last)
        return found

    def hook_beside(self, seconds: float) -> Answers:
        """How long the hook takes while one sweep follows the other, with cars that are forecast anew."""
        with ExitStack() as stack:
            shop = Shop(self.folder, self.url, free_port())
            more = {"FOLLOWUP_PUBLIC_BASE_URL": ADDRESS, "FOLLOWUP_WEB_THREADS": "16"}
            environment = shop.environment(demo_address(9), **more)
            del environment["FOLLOWUP_CLOCK"]
            command = [sys.executable, "-m", "followup.cli", "web"]
            stack.enter_context(running_process(command, environment, self.folder))
            with self.store.read() as connection:
                to = shops.load_shop(connection, 1).texts_from
            poster = Poster(shop.port, ADDRESS, ACCOUNT, TOKEN, to)
            wait_for(shop.port)
            post_at(poster, BODIES, _RATE, 1)
            found: list[Answers] = []
            posting = threading.Thread(target=lambda: found.append(post_at(poster, BODIES, _RATE, seconds)))
            posting.start()
            while posting.is_alive():
                self.day(_ANEW, is_told=False)
            posting.join()
        return found[0]


def _measured(bench: _Bench, name: str, seconds: float) -> list[Figure]:
    group = bench.group
    quiet = bench.day(_ANEW)
    changed = tell_odometers(bench.store, group, _EVERY)
    news = bench.day()
    answers = bench.hook_beside(seconds)
    bare = bare_sweep.rows_a_second(bench.url, bench.folder, _BARE_ROWS, threading.Event().wait)
    a_million = _MILLION / group.cars
    anew = quiet["anew_seconds"] / max(quiet["anew"], 1.0)
    anew_worked = quiet["anew_worked"] / max(quiet["anew"], 1.0)
    # However many cars the fleet has, by how long each with news took; where none had any, nothing was measured.
    of_one = _MILLION / _EVERY / news["cars"] if news["cars"] else math.inf
    of_news, of_news_worked = news["forecast"] * of_one, news["forecast_worked"] * of_one
    looked, decided = quiet["look"] * a_million, quiet["plan"] * a_million
    return [
        Figure(f"{name}: cars; shops; windows", f"{group.cars:,}; {group.shops:,}; {group.windows:,}"),
        *_pace(f"{name}, the day's sweep", quiet["seconds"] * a_million, quiet["worked"] * a_million, _FULL[name]),
        beside(f"{name}, of it looking for news", looked, 1, " s"),
        beside(f"{name}, of it deciding who is written to", decided, 1, " s"),
        Figure(f"{name}: told anew; forecast anew in one day", f"{changed:,}; {news['cars']:,.0f}"),
        *_pace(f"{name}, news of one in {_EVERY}", of_news, of_news_worked, _CHANGED),
        *_pace(f"{name}, all forecast anew", anew * _MILLION, anew_worked * _MILLION, _FULL[name]),
        at_most(f"{name}, memory", max(quiet["mib"], news["mib"]), _MOST_MIB, 0, " MiB"),
        at_most(f"{name}, longest write", 1000 * max(quiet["longest"], news["longest"]), _LONGEST_MS, 1, " ms"),
        beside(
            f"{name}, longest write, of a processor",
            1000 * max(quiet["longest_worked"], news["longest_worked"]),
            1,
            " ms",
        ),
        at_most(f"{name}, hook beside it, p99", answers.at(99), _P99_MS, 1, " ms"),
        at_most(f"{name}, hook beside it, max", answers.at(100), _MOST_MS, 1, " ms"),
        at_most(f"{name}, hook beside it, not accepted", answers.refused, 0, 0),
        beside(f"{name}, bare prototype, eight windows of a million cars", 8 * _MILLION / bare, 1, " s"),
        beside(f"{name}, the day's sweep, of the bare one", quiet["seconds"] * a_million * bare / (8 * _MILLION), 2),
        beside("the closed form alone", bare_sweep.arithmetic_a_second(_MILLION), 0, " windows/s"),
    ]


def _pace(what: str, seconds: float, worked: float, most: float) -> list[Figure]:
    """What a million cars would take at the pace that was measured, and how much of that a processor works."""
    return [
        at_most(f"{what}, a million cars at that pace", seconds, most, 1, " s"),
        beside(f"{what}, the same, of a processor", worked, 1, " s"),
    ]
