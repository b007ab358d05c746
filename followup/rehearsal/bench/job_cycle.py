"""How many jobs that do nothing a general-purpose queue on PostgreSQL runs in a second: development only.

A job is fetched, run and finished, with a commit of its own for each of the two, as a text is claimed, put in flight,
handed over and kept; but nothing is decided about it, and nobody is called. Jobs are added, and texts planned, before
the time begins. Both write to one server with the same settings, and as many jobs run at once as texts are handed over.
"""

from __future__ import annotations

import asyncio
import time
from dataclasses import dataclass
from importlib import import_module
from importlib.util import find_spec
from typing import Any

NAME = "procrastinate"
_SCHEMES = ("postgresql+psycopg://", "postgresql://")


def is_installed() -> bool:
    """Whether it can be run here."""
    return find_spec(NAME) is not None


@dataclass(frozen=True)
class Cycle:
    """Jobs (or texts) a second, the milliseconds of a processor that this process had for each, and the transactions
    that wrote for each."""

    per_second: float
    worked_ms: float
    writes: float


def jobs_cycle(url: str, jobs: int, at_once: int) -> Cycle:
    """So many jobs in that database, which gets the queue's own tables the first time."""
    return asyncio.run(_run(url, jobs, at_once))


def writes_so_far(url: str) -> int:
    """How many transactions of that server have written: each took a number. Does not take one itself."""
    return int(_told(url, "SELECT pg_snapshot_xmax(pg_current_snapshot())"))


def how_durable(url: str) -> str:
    """What a commit waits for on that server."""
    return ", ".join(f"{name} {_told(url, f'SHOW {name}')}" for name in ("fsync", "synchronous_commit"))


def _told(url: str, asked: str) -> str:
    with import_module("psycopg").connect(url.replace(*_SCHEMES, 1)) as link:
        return str(link.execute(asked).fetchone()[0])


async def _run(url: str, jobs: int, at_once: int) -> Cycle:
    address = url.replace(*_SCHEMES, 1)
    queue = import_module(NAME)
    app: Any = queue.App(connector=queue.PsycopgConnector(conninfo=address))

    @app.task(name="nothing")  # type: ignore[untyped-decorator]  # not installed where the program runs
    async def nothing(n: int) -> None:
        return None

    async with app.open_async():
        if not await app.check_connection_async():
            await app.schema_manager.apply_schema_async()
        await nothing.batch_defer_async(*({"n": n} for n in range(jobs)))
        before = writes_so_far(url)
        began, worked = time.perf_counter(), time.process_time()
        await app.run_worker_async(wait=False, concurrency=at_once, install_signal_handlers=False, listen_notify=False)
        took, worked = time.perf_counter() - began, time.process_time() - worked
        return Cycle(jobs / took, 1000 * worked / jobs, (writes_so_far(url) - before) / jobs)
