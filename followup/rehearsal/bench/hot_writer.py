"""A background writer that keeps to the rule of the house: short transactions with a pause between, without end.

`python -m followup.rehearsal.bench.hot_writer DATABASE_URL`
"""

from __future__ import annotations

import sys
import threading

from sqlalchemy import text

from followup.storage.store import Store, make_engine

ROWS_AT_ONCE = 1_000
PAUSE_SECONDS = 0.005


def write_for_ever(url: str) -> None:
    """Write rows, as a sweep over all cars does, until it is ended."""
    store, pause = Store(make_engine(url)), threading.Event()
    row = {"body": "x" * 120}
    with store.write() as connection:
        connection.execute(text("CREATE TABLE IF NOT EXISTS bench_rows (id INTEGER PRIMARY KEY, body TEXT)"))
    while True:
        with store.write() as connection:
            connection.execute(text("INSERT INTO bench_rows (body) VALUES (:body)"), [row] * ROWS_AT_ONCE)
        pause.wait(PAUSE_SECONDS)


if __name__ == "__main__":
    write_for_ever(sys.argv[1])
