"""The least that a sweep can be: rows of two numbers are read, three quantiles reckoned by NumPy's closed form, and
written, in transactions of 5,000 rows with a pause between. What the program's sweep stands beside.
"""

from __future__ import annotations

import sqlite3
import time
from collections.abc import Callable
from pathlib import Path
from typing import Any

import numpy as np
from scipy.special import ndtri
from sqlalchemy.engine import make_url

ROWS_AT_ONCE, PAUSE_SECONDS = 5_000, 0.005
_PROBITS = ndtri([0.1, 0.5, 0.9])
_TABLE = "bench_bare_windows"
_COLUMNS = "id INTEGER PRIMARY KEY, mu {0}, sd {0}, early {0}, likely {0}, late {0}"


def rows_a_second(url: str, folder: Path, rows: int, pause: Callable[[float], object]) -> float:
    """Rows a second of the whole: in a file of its own beside, or in a table of that PostgreSQL database."""
    numbers = np.random.default_rng(7001).normal(6.0, 0.8, rows)
    values = [(number, float(mu), 0.4) for number, mu in enumerate(numbers.tolist(), start=1)]
    if make_url(url).get_backend_name() == "sqlite":
        return rows / _sqlite(folder / "bare.db", values, pause)
    return rows / _postgresql(url, values, pause)


def arithmetic_a_second(rows: int) -> float:
    """Rows a second of the closed form alone."""
    known = np.random.default_rng(7001).normal(6.0, 0.8, (rows, 2))
    began = time.process_time()
    _quantiles(known[:, 0], known[:, 1])
    return rows / max(time.process_time() - began, 1e-9)


def _quantiles(mu: Any, sd: Any) -> Any:
    return np.exp(mu[:, None] + sd[:, None] * _PROBITS[None, :])


def _reckoned(found: list[tuple[int, float, float]]) -> list[tuple[float, float, float, int]]:
    known = np.array(found)
    days = _quantiles(known[:, 1], known[:, 2]).tolist()
    return [(*three, row[0]) for three, row in zip(days, found, strict=True)]


def _sqlite(file: Path, values: list[tuple[int, float, float]], pause: Callable[[float], object]) -> float:
    link = sqlite3.connect(file, isolation_level=None)
    for pragma in ("journal_mode=WAL", "synchronous=FULL", "secure_delete=ON"):
        link.execute(f"PRAGMA {pragma}")
    link.execute(f"CREATE TABLE {_TABLE} ({_COLUMNS.format('REAL')})")
    link.execute("BEGIN IMMEDIATE")
    link.executemany(f"INSERT INTO {_TABLE} (id, mu, sd) VALUES (?, ?, ?)", values)
    link.execute("COMMIT")
    began, last = time.perf_counter(), 0
    while found := link.execute(
        f"SELECT id, mu, sd FROM {_TABLE} WHERE id > ? ORDER BY id LIMIT {ROWS_AT_ONCE}", (last,)
    ).fetchall():
        news, last = _reckoned(found), found[-1][0]
        link.execute("BEGIN IMMEDIATE")
        link.executemany(f"UPDATE {_TABLE} SET early = ?, likely = ?, late = ? WHERE id = ?", news)
        link.execute("COMMIT")
        pause(PAUSE_SECONDS)
    took = time.perf_counter() - began
    link.close()
    return took


def _postgresql(url: str, values: list[tuple[int, float, float]], pause: Callable[[float], object]) -> float:
    import psycopg

    plain = make_url(url).set(drivername="postgresql").render_as_string(hide_password=False)
    with psycopg.connect(plain) as link, link.cursor() as cursor:
        cursor.execute(f"CREATE TABLE {_TABLE} ({_COLUMNS.format('DOUBLE PRECISION')})".encode())
        with cursor.copy(f"COPY {_TABLE} (id, mu, sd) FROM STDIN".encode()) as copy:
            for value in values:
                copy.write_row(value)
        link.commit()
        began, last = time.perf_counter(), 0
        query = f"SELECT id, mu, sd FROM {_TABLE} WHERE id > %s ORDER BY id LIMIT {ROWS_AT_ONCE}".encode()
        cursor.execute(b"CREATE TEMPORARY TABLE news (early float8, likely float8, late float8, id int)")
        while found := cursor.execute(query, (last,)).fetchall():
            news, last = _reckoned(found), found[-1][0]
            with cursor.copy(b"COPY news FROM STDIN") as copy:
                for row in news:
                    copy.write_row(row)
            cursor.execute(
                f"UPDATE {_TABLE} AS old SET early = news.early, likely = news.likely, late = news.late "
                "FROM news WHERE old.id = news.id".encode()
            )
            cursor.execute(b"TRUNCATE news")
            link.commit()
            pause(PAUSE_SECONDS)
        took = time.perf_counter() - began
        cursor.execute(f"DROP TABLE {_TABLE}".encode())
        link.commit()
    return took
