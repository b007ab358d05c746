"""One process of the program in a trial: the real command line, ended or stopped at a named point.

What differs from a process that a shop runs: leases go by the clock that the trial steps, the provider's client waits
for a fraction of a second, and the process may be told to end at a point or at its n-th transaction.
"""

from __future__ import annotations

import importlib
import json
import os
import signal
import sys
import threading
from collections.abc import Callable, Iterator
from contextlib import contextmanager, nullcontext
from dataclasses import asdict, dataclass, field
from datetime import datetime
from functools import cache, partial
from http.client import HTTPConnection
from importlib.metadata import entry_points
from pathlib import Path
from urllib.parse import urlencode, urlsplit

from followup import clock, points
from followup.rehearsal.faults.provider import TIME
from followup.storage import machine
from followup.storage.store import Connection, Store
from followup.transports import twilio

READ_SECONDS = 0.25
BEFORE_COMMIT, AFTER_COMMIT = "before commit", "after commit"


@dataclass(frozen=True)
class Order:
    """What a process is to run, and where it is to end: at the `nth` time that it comes to point `at`.

    Where there is a `time_keeper`, the process asks there that time go on, and does not move the clock itself.
    `at` is a point of `points.POINTS`, or before or after a commit of any transaction. `does` is `kill` or `stop`.
    `change` names a function (`module:function`) that changes the program first: naive designs are tried so.
    """

    arguments: tuple[str, ...]
    environment: dict[str, str]
    log: str
    time_keeper: str | None = None
    at: str | None = None
    nth: int = 1
    does: str = "kill"
    change: str | None = None

    def to_json(self) -> str:
        """One line."""
        return json.dumps(asdict(self))

    @staticmethod
    def from_json(line: str) -> Order:
        """The order of one line."""
        given = json.loads(line)
        return Order(**{**given, "arguments": tuple(given["arguments"])})


@dataclass
class _Trap:
    """Counts how often a point was reached, and sends this process its signal."""

    order: Order
    seen: int = field(default=0)

    # Held while a transaction of any thread writes, where the process is to stand still.
    writing: threading.RLock = field(default_factory=threading.RLock)

    def __call__(self, point: str) -> None:
        if point != self.order.at:
            return
        self.seen += 1
        if self.seen != self.order.nth:
            return
        if self.order.does == "stop":
            # Between two transactions of every thread: else all others wait for the database's lock while no time can
            # go on, and the trial shows what any database does whose writer stands still.
            with self.writing:
                os.kill(os.getpid(), signal.SIGSTOP)
        else:
            os.kill(os.getpid(), signal.SIGKILL)


def run(order: Order) -> int:
    """Become the process that was ordered, with its words in its log; its exit status."""
    log = os.open(order.log, os.O_WRONLY | os.O_CREAT | os.O_APPEND, 0o600)
    nothing = os.open(os.devnull, os.O_RDONLY)
    for here, there in ((nothing, 0), (log, 1), (log, 2)):
        os.dup2(here, there)
    return become(order)


def become(order: Order) -> int:
    """Run what was ordered in this process; its exit status."""
    for name in [one for one in os.environ if one.startswith("FOLLOWUP_")]:
        del os.environ[name]
    os.environ.update(order.environment)
    machine.database_now = stepped_now
    twilio.CONNECT_SECONDS, twilio.READ_SECONDS = 2.0, READ_SECONDS
    if order.time_keeper:
        clock.move_to = partial(_ask_for_time, order.time_keeper)
    if order.change:
        module, _, name = order.change.partition(":")
        getattr(importlib.import_module(module), name)()
    _arm(order)
    try:
        _command()(args=list(order.arguments), prog_name="followup", standalone_mode=False)
    except SystemExit as ended:
        return int(ended.code or 0)
    return 0


@cache
def _command() -> Callable[..., object]:
    """The command line as it is installed."""
    (found,) = entry_points(group="console_scripts", name="followup")
    command: Callable[..., object] = found.load()
    return command


def stepped_now(connection: Connection) -> datetime:
    """What leases go by where time is stepped."""
    return clock.now()


def _ask_for_time(keeper: str, instant: datetime) -> None:
    parts = urlsplit(keeper)
    link = HTTPConnection(parts.hostname or "", parts.port, timeout=60)
    link.request("GET", f"{TIME}?{urlencode({'to': instant.isoformat()})}")
    link.getresponse().read()
    link.close()


def _arm(order: Order) -> None:
    if order.at is None:
        return
    trap = _Trap(order)
    points.listen(trap)
    if order.at in (BEFORE_COMMIT, AFTER_COMMIT) or order.does == "stop":
        _listen_to_commits(trap)


def _listen_to_commits(trap: _Trap) -> None:
    """Every transaction of the process counts, whatever it is about."""
    plain = Store.write

    @contextmanager
    def write(self: Store) -> Iterator[Connection]:
        with trap.writing if trap.order.does == "stop" else nullcontext(), plain(self) as connection:
            yield connection
            trap(BEFORE_COMMIT)
        trap(AFTER_COMMIT)

    Store.write = write  # type: ignore[method-assign]  # only in this process, which is a trial's


if __name__ == "__main__":
    sys.exit(run(Order.from_json(Path(sys.argv[1]).read_text(encoding="utf-8"))))
