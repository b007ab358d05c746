"""The pages and hooks as a shop runs them: one process of their own, on a port of this machine."""

from __future__ import annotations

import socket
import subprocess
import sys
import threading
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from tests.transports.account import ACCOUNT
from tests.web.webhook.conftest import BASE, TOKEN


@contextmanager
def served_hooks(folder: Path, proxies: int) -> Iterator[int]:
    """The pages as a shop runs them, in a process of their own; the port."""
    with socket.socket() as free:
        free.bind(("127.0.0.1", 0))
        port = int(free.getsockname()[1])
    secret = "only-for-tests-0123456789abcdef"
    environment = {
        "FOLLOWUP_DATABASE_URL": f"sqlite+pysqlite:///{folder / 'served.db'}", "FOLLOWUP_PUBLIC_BASE_URL": BASE,
        "FOLLOWUP_SECRET_KEY": secret, "FOLLOWUP_LEDGER_HASH_KEY": secret, "FOLLOWUP_TRANSPORT": "twilio",
        "FOLLOWUP_TWILIO_ACCOUNT_SID": ACCOUNT, "FOLLOWUP_TWILIO_AUTH_TOKENS": TOKEN,
        "FOLLOWUP_TRUSTED_PROXIES": str(proxies),
    }  # fmt: skip
    command = [sys.executable, "-m", "followup.cli", "web", "--port", str(port)]
    with (folder / "log").open("wb") as log:
        process = subprocess.Popen(command, env=environment, stdout=log, stderr=log)
    try:
        for _ in range(600):
            try:
                socket.create_connection(("127.0.0.1", port), 1).close()
                break
            except OSError:
                threading.Event().wait(0.05)
        yield port
    finally:
        process.terminate()
        process.wait(20)
