"""Ways in which a database goes away from a running process. It watches for a file; while that is there, its disk is
full, or its database may only be read."""

from __future__ import annotations

import os
import resource
import signal
import threading
from pathlib import Path
from typing import Any

from sqlalchemy import event
from sqlalchemy.engine import Engine

from followup.transports import twilio

FILE = "away"
# Files that are longer cannot be written to: the database's log is, the clock's is not.
_LONGEST_BYTES = 4096
_EVERY_SECONDS = 0.01


def _away() -> Path:
    return Path(os.environ["FOLLOWUP_CLOCK"]).parent / FILE


def patient() -> None:
    """It waits for the provider's answer until the database is away."""
    twilio.READ_SECONDS = 30.0


def full() -> None:
    """No file can be written to beyond its first bytes, which is what a full disk is to a database."""
    patient()
    signal.signal(signal.SIGXFSZ, signal.SIG_IGN)
    hard = resource.getrlimit(resource.RLIMIT_FSIZE)[1]

    def watch() -> None:
        while True:
            resource.setrlimit(resource.RLIMIT_FSIZE, (_LONGEST_BYTES if _away().exists() else hard, hard))
            threading.Event().wait(_EVERY_SECONDS)

    threading.Thread(target=watch, daemon=True).start()


def read_only() -> None:
    """Every write is refused by the database itself."""
    patient()

    @event.listens_for(Engine, "begin")
    def begin(connection: Any) -> None:
        # A reader sets it by itself, and unsets it at its end.
        if not connection.get_execution_options().get("followup_reader", False):
            connection.exec_driver_sql(f"PRAGMA query_only={'ON' if _away().exists() else 'OFF'}")
