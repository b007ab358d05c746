"""How many jobs that do nothing a general-purpose queue on PostgreSQL runs in a second: development only.

A job is added, fetched, run and finished, each with its commit, as a text is claimed, put in flight, handed over and
kept; but nothing is decided about it, and nobody is called.
"""

from __future__ import annotations

import asyncio
import time
from importlib import import_module
from importlib.util import find_spec
from typing import Any

NAME = "procrastinate"
_SCHEMES = ("postgresql+psycopg://", "postgresql://")


def is_installed() -> bool:
    """Whether it can be run here."""
    return find_spec(NAME) is not None


def jobs_per_second(url: str, jobs: int, at_once: int) -> float:
    """Jobs a second in that database, which gets the queue's own tables the first time."""
    return asyncio.run(_run(url.replace(*_SCHEMES, 1), jobs, at_once))


async def _run(address: str, jobs: int, at_once: int) -> float:
    queue = import_module(NAME)
    app: Any = queue.App(connector=queue.PsycopgConnector(conninfo=address))

    @app.task(name="nothing")  # type: ignore[untyped-decorator]  # not installed where the program runs
    async def nothing(n: int) -> None:
        return None

    async with app.open_async():
        if not await app.check_connection_async():
            await app.schema_manager.apply_schema_async()
        await nothing.batch_defer_async(*({"n": n} for n in range(jobs)))
        began = time.perf_counter()
        await app.run_worker_async(wait=False, concurrency=at_once, install_signal_handlers=False, listen_notify=False)
        return jobs / (time.perf_counter() - began)
