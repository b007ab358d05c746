"""`followup bench start`: how long the program takes to start, beside the least that could start, in one run.

Each round starts all of them one after the other; the figures are medians. Other work on the machine stretches what a
clock shows, so the processor time stands beside it. As where it is installed, bytecode is there: a first round, which
does not count, writes it.
"""

from __future__ import annotations

import os
import resource
import subprocess
import sys
import tempfile
import threading
import time
from collections import defaultdict
from collections.abc import Callable
from dataclasses import dataclass
from http.client import HTTPConnection
from pathlib import Path
from statistics import median

from followup.rehearsal.bench.figures import Figure, at_most, beside
from followup.rehearsal.bench.hooks import free_port
from followup.rehearsal.faults.provider import TOKEN
from followup.rehearsal.faults.shop import Shop, demo_address
from followup.storage import schema
from followup.storage.store import Store, make_engine

HELP, BARE_HELP = "followup --help", "a click command of one line"
PAGES, BARE_PAGES = "followup web, first page", "bare Flask application, first answer"
# What the design asks, in milliseconds.
_HELP_WITHIN, _PAGE_WITHIN = 300.0, 800.0
_LONGEST_SECONDS = 60.0
_ONE_LINE = "import click; click.command()(lambda: None)(['--help'])"


@dataclass(frozen=True)
class Asked:
    """How often each is started."""

    rounds: int = 5

    @property
    def steps(self) -> int:
        """How often progress is told."""
        return 4 * (self.rounds + 1)


@dataclass(frozen=True)
class _Took:
    """Milliseconds by the clock and of a processor."""

    clock: float
    worked: float


def bench_start(asked: Asked, progress: Callable[[int], object]) -> list[Figure]:
    """The figures of each start."""
    found: dict[str, list[_Took]] = defaultdict(list)
    with tempfile.TemporaryDirectory(prefix="start") as name:
        ports = free_port(), free_port()
        folder, shop = Path(name), Shop(Path(name), f"sqlite+pysqlite:///{Path(name) / 'shop.db'}", ports[0])
        store = Store(make_engine(shop.url))
        schema.upgrade(store.engine)
        store.close()
        settings = shop.environment(demo_address(9))
        del settings["FOLLOWUP_CLOCK"]
        bytecode = {"PYTHONPYCACHEPREFIX": str(folder / "bytecode")}
        settings.update(bytecode)
        program, bare = [sys.executable, "-m"], str(folder / "bare.db")
        hook = [*program, "followup.rehearsal.bench.bare_hook", str(ports[1]), bare, "http://127.0.0.1", TOKEN, "4"]
        starts: dict[str, Callable[[], _Took]] = {
            HELP: lambda: _until_its_end([*program, "followup.cli", "--help"], bytecode),
            BARE_HELP: lambda: _until_its_end([sys.executable, "-c", _ONE_LINE], bytecode),
            PAGES: lambda: _until_it_answers([*program, "followup.cli", "web"], settings, ports[0], "/sign-in", 200),
            BARE_PAGES: lambda: _until_it_answers(hook, bytecode, ports[1], "/", 404),
        }
        for _ in range(asked.rounds + 1):
            for name_of, start in starts.items():
                found[name_of].append(start())
                progress(1)
    return _figures({name_of: took[1:] for name_of, took in found.items()})


def _until_its_end(command: list[str], settings: dict[str, str]) -> _Took:
    began, worked = time.perf_counter(), _worked()
    subprocess.run(command, check=True, stdout=subprocess.DEVNULL, env=_environment(settings))
    return _Took(1000 * (time.perf_counter() - began), 1000 * (_worked() - worked))


def _until_it_answers(command: list[str], settings: dict[str, str], port: int, path: str, status: int) -> _Took:
    began, worked = time.perf_counter(), _worked()
    with subprocess.Popen(command, stderr=subprocess.DEVNULL, env=_environment(settings)) as process:
        try:
            while _status(port, path) != status:
                if process.poll() is not None or time.perf_counter() - began > _LONGEST_SECONDS:
                    raise TimeoutError(f"{command[2]} did not answer")
                threading.Event().wait(0.005)
            took = 1000 * (time.perf_counter() - began)
        finally:
            process.terminate()
            process.wait(_LONGEST_SECONDS)
    return _Took(took, 1000 * (_worked() - worked))


def _status(port: int, path: str) -> int | None:
    link = HTTPConnection("127.0.0.1", port, timeout=10)
    try:
        link.request("GET", path)
        return link.getresponse().status
    except OSError:
        return None
    finally:
        link.close()


def _worked() -> float:
    """Seconds of a processor that ended children have had."""
    used = resource.getrusage(resource.RUSAGE_CHILDREN)
    return used.ru_utime + used.ru_stime


def _environment(settings: dict[str, str]) -> dict[str, str]:
    others = ("PYTHONDONTWRITEBYTECODE", "PYTHONPYCACHEPREFIX")
    plain = {name: one for name, one in os.environ.items() if not name.startswith("FOLLOWUP_") and name not in others}
    return {**plain, **settings}


def _figures(found: dict[str, list[_Took]]) -> list[Figure]:
    clock = {name: median(one.clock for one in took) for name, took in found.items()}
    worked = {name: median(one.worked for one in took) for name, took in found.items()}
    figures = []
    for name, bare, within in ((HELP, BARE_HELP, _HELP_WITHIN), (PAGES, BARE_PAGES, _PAGE_WITHIN)):
        figures += [
            at_most(f"{name}", clock[name], within, 0, " ms"),
            beside(f"{name}, processor time", worked[name], 0, " ms"),
            beside(f"{bare}", clock[bare], 0, " ms"),
            beside(f"{bare}, processor time", worked[bare], 0, " ms"),
            beside(f"{name}, of {bare}: clock", clock[name] / clock[bare], 2),
            beside(f"{name}, of {bare}: processor time", worked[name] / worked[bare], 2),
        ]
    return figures
