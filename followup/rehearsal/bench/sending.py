"""`followup bench sending`: texts a second with every commit, beside a general-purpose queue whose jobs do nothing, and
whether a number's rate holds in every second. Loopback only; a minute or two.

Invites of a crowd are sent, since most is asked about them: consent, hours, visits, bookings, windows, earlier texts.
The provider is a process of its own. Its time and the sender's are one clock, the machine's.
"""

from __future__ import annotations

import json
import subprocess
import sys
import tempfile
import threading
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from http.client import HTTPConnection
from pathlib import Path
from statistics import median

from followup.core.segments import segments
from followup.rehearsal import crowd
from followup.rehearsal.bench import job_cycle
from followup.rehearsal.bench.bare_provider import LATENCY, TAKEN
from followup.rehearsal.bench.figures import Figure, at_least, at_most, beside
from followup.rehearsal.bench.job_cycle import Cycle
from followup.rehearsal.faults.provider import ACCOUNT, TOKEN
from followup.storage import outbox, schema
from followup.storage.store import Store, make_engine
from followup.transports.twilio import Twilio
from followup.workflows.send_texts import Sender, send_texts

AT_ONCE = 16
# How often it and the queue take turns.
_TURNS = 3
# What the design asks: texts a second without and with latency, and of the queue's jobs.
_FAST, _SLOW, _OF_JOBS = 250.0, 100.0, 1.2
_LATENCY_MS = 100
# Faster than any of it: the pace is measured by itself, at the rates of a short code and a long number.
_NO_LIMIT, _SHORT_CODE, _LONG_NUMBER = 1000.0, 100.0, 1.0
_PACED = {_SHORT_CODE: 120, _LONG_NUMBER: 6}
_SECRET = "only-for-the-bench"


@dataclass(frozen=True)
class Asked:
    """How many texts each run sends, and an empty PostgreSQL database to send from as well; None: SQLite alone."""

    texts: int = 600
    postgresql: str | None = None

    @property
    def steps(self) -> int:
        """How often progress is told."""
        return 7 * (2 if self.postgresql else 1) + (_TURNS if self.postgresql and job_cycle.is_installed() else 0)


def bench_sending(asked: Asked, progress: Callable[[int], object]) -> list[Figure]:
    """The figures of each database."""
    figures: list[Figure] = []
    with tempfile.TemporaryDirectory(prefix="sending") as folder, _provider() as provider:
        urls = {"SQLite": f"sqlite+pysqlite:///{Path(folder) / 'shop.db'}"}
        if asked.postgresql:
            urls["PostgreSQL"] = asked.postgresql
        for name, url in urls.items():
            with _filled(url, asked.texts) as store:
                progress(1)
                figures += _speed(_Bench(store, provider, asked.texts, progress), name, url)
    if not asked.postgresql:
        figures.append(Figure(f"PostgreSQL and {job_cycle.NAME}", "left out: no --postgresql"))
    return figures


@dataclass
class _Provided:
    """The provider's process and its address."""

    port: int

    @property
    def address(self) -> str:
        return f"http://127.0.0.1:{self.port}"

    def get(self, path: str) -> list[tuple[float, str]]:
        """What it says to that."""
        link = HTTPConnection("127.0.0.1", self.port, timeout=10)
        link.request("GET", path)
        found: list[tuple[float, str]] = json.loads(link.getresponse().read())
        link.close()
        return found


@dataclass
class _Bench:
    store: Store
    provider: _Provided
    texts: int
    progress: Callable[[int], object]

    def per_second(self, at_once: int, latency_ms: int) -> tuple[float, float]:
        """Texts a second, from the first claim to the last receipt, and the milliseconds of a processor for each."""
        self._plan_again()
        began, worked = time.perf_counter(), time.process_time()
        self._send(self.texts, at_once, latency_ms, _NO_LIMIT)
        took, worked = time.perf_counter() - began, time.process_time() - worked
        return self.texts / took, 1000 * worked / self.texts

    def cycle(self, url: str) -> Cycle:
        """The same for as many at once as jobs run, without latency, with the transactions that write for each."""
        before = job_cycle.writes_so_far(url)
        per_second, worked_ms = self.per_second(AT_ONCE, 0)
        # What planned them again wrote one.
        return Cycle(per_second, worked_ms, (job_cycle.writes_so_far(url) - before - 1) / self.texts)

    def most_in_a_second(self, rate: float) -> tuple[int, int]:
        """The most segments, and the most texts, that came to the provider within any second at that rate."""
        self._plan_again()
        self._send(_PACED[rate], AT_ONCE, 0, rate)
        came = [(at, segments(body).count) for at, body in self.provider.get(TAKEN)]
        windows = [[count for at, count in came if first <= at < first + 1] for first, _ in came]
        return max(map(sum, windows)), max(map(len, windows))

    def _send(self, texts: int, at_once: int, latency_ms: int, rate: float) -> None:
        self.provider.get(f"{LATENCY}{latency_ms}")
        transport = Twilio(ACCOUNT, [TOKEN], self.provider.address)
        sender = Sender(
            transport, "http://127.0.0.1", True, rate, _SECRET, threading.Event().wait, at_once=at_once
        )  # fmt: skip
        sent = 0
        # As the clock's ticks: what the number had no time for is left for the next round.
        while sent < texts:
            done = send_texts(self.store, 1, sender, lambda: crowd.OPENS_AT, "bench", texts - sent)
            if not done.sent + done.other:
                raise RuntimeError(f"{sent} of {texts} texts were sent")
            sent += done.sent
        self.progress(1)

    def _plan_again(self) -> None:
        """As if nothing had left yet."""
        with self.store.write() as connection:
            for row in outbox.texts_of_shop(connection, 1):
                outbox.change_text(
                    connection, row["id"], state="planned", sent_at=None, in_flight_at=None, provider_id=None
                )


def _speed(bench: _Bench, name: str, url: str) -> list[Figure]:
    bench.per_second(AT_ONCE, 0)
    alone, work_alone = bench.per_second(1, 0)
    fast, work = bench.per_second(AT_ONCE, 0)
    slow, _ = bench.per_second(AT_ONCE, _LATENCY_MS)
    figures = [
        beside(f"{name}, one at a time, no latency", alone, 0, "/s"),
        beside(f"{name}, one at a time, processor time a text", work_alone, 1, " ms"),
        beside(f"{name}, {AT_ONCE} at once, processor time a text", work, 1, " ms"),
        at_least(f"{name}, {AT_ONCE} at once, no latency", fast, _FAST, 0, "/s"),
        at_least(f"{name}, {AT_ONCE} at once, {_LATENCY_MS} ms latency", slow, _SLOW, 0, "/s"),
    ]
    for rate, texts in _PACED.items():
        most, together = bench.most_in_a_second(rate)
        words = f"{name}, {texts} texts at {rate:g} segments/s, most in a second"
        if rate > 1:
            figures.append(at_most(f"{words}: segments", most, rate, 0))
        else:
            # A text of several segments takes several seconds by itself.
            figures.append(at_most(f"{words}: texts", together, 1, 0))
    return figures + (_beside_jobs(bench, name, url) if name != "SQLite" else [])


def _beside_jobs(bench: _Bench, name: str, url: str) -> list[Figure]:
    """Both take turns, since other work on the machine changes from second to second; the middle ones are told."""
    if not job_cycle.is_installed():
        return [Figure(job_cycle.NAME, "left out: not installed")]
    job_cycle.jobs_cycle(url, bench.texts, AT_ONCE)
    ours, jobs = list[Cycle](), list[Cycle]()
    for _ in range(_TURNS):
        ours.append(bench.cycle(url))
        jobs.append(job_cycle.jobs_cycle(url, bench.texts, AT_ONCE))
    figures = [Figure(f"{name}, what a commit waits for", job_cycle.how_durable(url))]
    for who, turns in ((f"{name}, in turns with it", ours), (f"{job_cycle.NAME}, a job that does nothing", jobs)):
        words = f"{who}, {AT_ONCE} at once"
        figures += [
            beside(words, median(one.per_second for one in turns), 0, "/s"),
            beside(f"{words}, processor time each", median(one.worked_ms for one in turns), 1, " ms"),
            beside(f"{words}, transactions that write, each", median(one.writes for one in turns), 2),
        ]
    share = median(one.per_second / other.per_second for one, other in zip(ours, jobs, strict=True))
    return [*figures, at_least(f"{name}, ours of its {AT_ONCE} at once", share, _OF_JOBS, 2)]


@contextmanager
def _filled(url: str, texts: int) -> Iterator[Store]:
    store = Store(make_engine(url))
    try:
        schema.upgrade(store.engine)
        crowd.add_crowd(store, max(texts, *_PACED.values()), _SECRET)
        yield store
    finally:
        store.close()


@contextmanager
def _provider() -> Iterator[_Provided]:
    command = [sys.executable, "-m", "followup.rehearsal.bench.bare_provider"]
    process = subprocess.Popen(command, stdout=subprocess.PIPE, text=True)
    try:
        assert process.stdout is not None
        yield _Provided(int(process.stdout.readline()))
    finally:
        process.terminate()
        process.wait(20)
