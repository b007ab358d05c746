"""`followup bench hooks`: how long a provider waits for our hook, beside the least that a hook can be, in one run.

Both are served by the same server with as many threads, keep what comes on the disk before they answer, and stand
beside a background writer of their own. Loopback only; it takes about two minutes.
"""

from __future__ import annotations

import os
import socket
import subprocess
import sys
import tempfile
import threading
from collections.abc import Callable, Iterator
from contextlib import ExitStack, contextmanager
from dataclasses import dataclass, replace
from pathlib import Path

from followup.rehearsal.bench.figures import Figure, at_least, at_most, beside
from followup.rehearsal.bench.posting import Answers, Poster, post_as_fast_as_taken, post_at
from followup.rehearsal.faults.provider import ACCOUNT, TOKEN
from followup.rehearsal.faults.shop import Shop, demo_address, fill_shop
from followup.storage import shops
from followup.storage.store import Store, make_engine

ADDRESS = "https://texts.example"
_THREADS = 16
BODIES = ("thanks", "Thursday at 9 works", "how much is it?", "STOP", "call me please", "what time do you close?")
_RATES = (20, 200)
# What the provider's patience and the design ask: milliseconds.
_P99 = {20: 50.0, 200: 100.0}
_P99_BESIDE, _MOST = 250.0, 1000.0
_OF_BARE = 0.7
OURS, BARE = "our hook", "bare Flask hook with one insert"


@dataclass(frozen=True)
class Asked:
    """How long each rate is held, in seconds, and how many are posted as fast as they are taken."""

    seconds: float = 8.0
    saturating: int = 2_000

    @property
    def steps(self) -> int:
        """How often progress is told."""
        return 2 * (2 * len(_RATES) + 1)


def bench_hooks(asked: Asked, progress: Callable[[int], object]) -> list[Figure]:
    """The figures of both hooks."""
    with tempfile.TemporaryDirectory(prefix="hooks") as name, ExitStack() as stack:
        both = _serve_both(Path(name), stack)
        found: dict[tuple[str, str], Answers] = {}
        for poster in both.values():
            post_at(poster.who, BODIES, 20, 2)
        for kind in ("alone", "beside a writer"):
            with ExitStack() as writers:
                if kind != "alone":
                    for one in both.values():
                        writers.enter_context(_running("hot_writer", one.url))
                for rate in _RATES:
                    for name_of, one in both.items():
                        found[name_of, f"{rate}/s {kind}"] = post_at(one.who, BODIES, rate, asked.seconds)
                        progress(1)
        for name_of, one in both.items():
            found[name_of, "saturated"] = post_as_fast_as_taken(one.who, BODIES, asked.saturating)
            progress(1)
    return _figures(found)


@dataclass(frozen=True)
class _Served:
    who: Poster
    url: str


def _serve_both(folder: Path, stack: ExitStack) -> dict[str, _Served]:
    own, bare = folder / "ours", folder / "bare"
    own.mkdir()
    bare.mkdir()
    ports = [free_port(), free_port()]
    shop = Shop(own, f"sqlite+pysqlite:///{own / 'shop.db'}", ports[0])
    fill_shop(shop, is_planned=False)
    store = Store(make_engine(shop.url))
    with store.read() as connection:
        to = shops.load_shop(connection, shops.shop_codes(connection)[0][0]).texts_from
    store.close()
    environment = shop.environment(demo_address(9), FOLLOWUP_PUBLIC_BASE_URL=ADDRESS, FOLLOWUP_WEB_THREADS="16")
    # The hook goes by the real time, as in a shop.
    del environment["FOLLOWUP_CLOCK"]
    stack.enter_context(running_process([sys.executable, "-m", "followup.cli", "web"], environment, own))
    database = str(bare / "bare.db")
    arguments = [str(ports[1]), database, ADDRESS + "/hooks/texts", TOKEN, str(_THREADS)]
    stack.enter_context(_running("bare_hook", *arguments))
    ours = _Served(Poster(ports[0], ADDRESS, ACCOUNT, TOKEN, to), shop.url)
    least = _Served(replace(ours.who, port=ports[1]), f"sqlite+pysqlite:///{database}")
    for one in (ours, least):
        wait_for(one.who.port)
    return {OURS: ours, BARE: least}


@contextmanager
def _running(module: str, *arguments: str) -> Iterator[None]:
    with running_process([sys.executable, "-m", f"followup.rehearsal.bench.{module}", *arguments], {}, None):
        yield


@contextmanager
def running_process(command: list[str], environment: dict[str, str], folder: Path | None) -> Iterator[None]:
    """A process that ends with the block; its words go to a log in that folder."""
    plain = {name: value for name, value in os.environ.items() if not name.startswith("FOLLOWUP_")}
    with (folder / "log" if folder else Path(os.devnull)).open("wb") as log:
        process = subprocess.Popen(command, env={**plain, **environment}, stdout=log, stderr=log)
    try:
        yield
    finally:
        process.terminate()
        process.wait(20)


def free_port() -> int:
    """A port of this machine that nobody listens at."""
    with socket.socket() as free:
        free.bind(("127.0.0.1", 0))
        return int(free.getsockname()[1])


def wait_for(port: int) -> None:
    """Wait until somebody listens there; `TimeoutError` after half a minute."""
    for _ in range(600):
        try:
            socket.create_connection(("127.0.0.1", port), timeout=1).close()
            return
        except OSError:
            threading.Event().wait(0.05)
    raise TimeoutError("the hook did not open")


def _figures(found: dict[tuple[str, str], Answers]) -> list[Figure]:
    figures = []
    for (name, when), answers in found.items():
        if when == "saturated":
            continue
        p99 = _P99_BESIDE if "beside" in when else _P99[int(when.split("/")[0])]
        words = f"{name}, {when}"
        figures.append(beside(f"{words}, p50", answers.at(50), unit=" ms"))
        if name == OURS:
            figures.append(at_most(f"{words}, p99", answers.at(99), p99, 1, " ms"))
            figures.append(at_most(f"{words}, max", answers.at(100), _MOST, 1, " ms"))
            figures.append(at_most(f"{words}, not accepted", answers.refused, 0, 0))
        else:
            figures.append(beside(f"{words}, p99", answers.at(99), unit=" ms"))
            figures.append(beside(f"{words}, max", answers.at(100), unit=" ms"))
    ours, bare = found[OURS, "saturated"], found[BARE, "saturated"]
    figures.append(beside(f"{OURS}, saturated", ours.per_second, 0, "/s"))
    figures.append(beside(f"{BARE}, saturated", bare.per_second, 0, "/s"))
    figures.append(at_most(f"{OURS}, saturated, max", ours.at(100), _MOST, 1, " ms"))
    figures.append(at_least("saturated, ours of the bare one", ours.per_second / bare.per_second, _OF_BARE, 2))
    return figures
