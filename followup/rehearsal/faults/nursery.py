"""Starts the processes of a trial quickly: one process has everything imported, and every other is a fork of it.

They are real processes with memory, connections and signals of their own; only the second that Python takes to import
the program is saved. Told what to do by lines of JSON on its standard input; answers each by one line.
"""

from __future__ import annotations

import gc
import json
import os
import signal
import subprocess
import sys
import threading
import traceback
from dataclasses import dataclass
from importlib import import_module
from pathlib import Path

from followup.rehearsal.faults.worker import Order, become, run

# What the commands import only when they are called.
_NEEDED = (
    "alembic.command", "alembic.script", "followup.cli.web", "followup.cli.work", "followup.scheduler",
    "followup.storage.migrations", "followup.web.app", "twilio.rest", "waitress",
)  # fmt: skip
_OPTIONAL = ("psycopg", "sqlalchemy.dialects.postgresql.psycopg")
_EVERY_SECONDS = 0.003


@dataclass(frozen=True)
class Ended:
    """How a process stands: `exited` with a status, `killed` by a signal, or `stopped` by one."""

    pid: int
    how: str
    number: int


class Nursery:
    """The parent of a trial's processes; use as a context."""

    def __init__(self, folder: Path, first: Order) -> None:
        """`first` is run to its end before any other, so that what is loaded at first use is loaded once."""
        self._folder = folder
        self._first = first

    def __enter__(self) -> Nursery:
        command = [sys.executable, "-m", __name__]
        with (self._folder / "nursery.log").open("ab") as log:
            self._process = subprocess.Popen(
                command, stdin=subprocess.PIPE, stdout=subprocess.PIPE, stderr=log, text=True, bufsize=1
            )
        self._ask({"first": self._first.to_json()})
        return self

    def __exit__(self, *_: object) -> None:
        assert self._process.stdin is not None
        self._process.stdin.close()
        self._process.wait(timeout=20)

    def start(self, order: Order) -> int:
        """Start a process; its id."""
        return int(self._ask({"start": order.to_json()}))

    def wait(self, pids: list[int], seconds: float = 60) -> list[Ended]:
        """Those of these processes that ended or stopped, as soon as there is one; [] where time ran out."""
        found: list[dict[str, object]] = json.loads(self._ask({"wait": pids, "seconds": seconds}))
        return [Ended(**one) for one in found]  # type: ignore[arg-type]  # as they were written

    def _ask(self, question: dict[str, object]) -> str:
        assert self._process.stdin is not None and self._process.stdout is not None
        self._process.stdin.write(json.dumps(question) + "\n")
        self._process.stdin.flush()
        answer = self._process.stdout.readline()
        if not answer:
            raise RuntimeError("the nursery ended: see nursery.log")
        return answer


def serve() -> None:
    """Import everything, then do what each line says."""
    for name in _NEEDED:
        import_module(name)
    for name in _OPTIONAL:
        if name.split(".")[0] == "sqlalchemy" or _is_there(name):
            import_module(name)
    alive: set[int] = set()
    try:
        _obey(alive)
    finally:
        # Whoever gave the orders is gone: nobody is left behind.
        for pid in alive:
            os.kill(pid, signal.SIGKILL)


def _obey(alive: set[int]) -> None:
    """Do what each line says, and keep in `alive` which processes have not ended."""
    for line in sys.stdin:
        asked = json.loads(line)
        if "first" in asked:
            answer: object = become(Order.from_json(asked["first"]))
            # What every fork has alike is looked through by none of them again, and none copies its pages for it.
            gc.collect()
            gc.freeze()
        elif "start" in asked:
            answer = pid = _start(asked["start"])
            alive.add(pid)
        else:
            answer = found = _wait(asked["wait"], asked["seconds"])
            alive -= {int(str(one["pid"])) for one in found if one["how"] != "stopped"}
        print(json.dumps(answer), flush=True)


def _is_there(name: str) -> bool:
    from importlib.util import find_spec

    return find_spec(name) is not None


def _start(order: str) -> int:
    pid = os.fork()
    if pid:
        return pid
    status = 70
    try:
        status = run(Order.from_json(order))
    except BaseException:
        traceback.print_exc()
    finally:
        sys.stdout.flush()
        sys.stderr.flush()
        os._exit(status)


def _wait(pids: list[int], seconds: float) -> list[dict[str, object]]:
    pause = threading.Event()
    for _ in range(max(1, int(seconds / _EVERY_SECONDS))):
        found = []
        for pid in pids:
            ended, status = os.waitpid(pid, os.WNOHANG | os.WUNTRACED)
            if ended:
                found.append({"pid": pid, "how": _how(status), "number": _number(status)})
        if found:
            return found
        pause.wait(_EVERY_SECONDS)
    return []


def _how(status: int) -> str:
    return "stopped" if os.WIFSTOPPED(status) else "killed" if os.WIFSIGNALED(status) else "exited"


def _number(status: int) -> int:
    if os.WIFSTOPPED(status):
        return os.WSTOPSIG(status)
    return os.WTERMSIG(status) if os.WIFSIGNALED(status) else os.WEXITSTATUS(status)


if __name__ == "__main__":
    serve()
