"""A background writer that keeps to the rule of the house: short transactions with a pause between, without end.

`python -m followup.rehearsal.bench.hot_writer DATABASE_URL`
"""

from __future__ import annotations

import sys
import threading

from followup.storage.store import Store, make_engine

ROWS_AT_ONCE = 1_000
PAUSE_SECONDS = 0.005


def write_for_ever(url: str) -> None:
    """Write rows, as a sweep over all cars does, until it is ended."""
    store, pause = Store(make_engine(url)), threading.Event()
    rows = [("x" * 120,)] * ROWS_AT_ONCE
    with store.write() as connection:
        connection.exec_driver_sql("CREATE TABLE IF NOT EXISTS bench_rows (id INTEGER PRIMARY KEY, body TEXT)")
    while True:
        with store.write() as connection:
            connection.exec_driver_sql("INSERT INTO bench_rows (body) VALUES (?)", rows)
        pause.wait(PAUSE_SECONDS)


if __name__ == "__main__":
    write_for_ever(sys.argv[1])
