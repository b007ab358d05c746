"""Transactions: one engine, writers that never wait in vain, readers on a read-only connection.

SQLite through its driver's defaults loses increments and fails deferred writers (measured); so every writer begins
with BEGIN IMMEDIATE, the journal is a write-ahead log, and what leaves is on the disk first (synchronous=FULL).
"""

from __future__ import annotations

import sqlite3
import threading
from collections.abc import Iterator
from contextlib import AbstractContextManager, contextmanager, nullcontext
from typing import Any

from sqlalchemy import Connection as Connection  # workflows hand it on; only storage may name sqlalchemy
from sqlalchemy import Engine, create_engine, event, text
from sqlalchemy.engine import make_url
from sqlalchemy.exc import DBAPIError, IntegrityError, InterfaceError, InternalError, OperationalError
from sqlalchemy.pool import QueuePool, StaticPool

from followup.storage.installation import SAYS_MOVED

_BUSY_MS = 10_000
_CONNECT_SECONDS = 5


def make_engine(url: str) -> Engine:
    """An engine for SQLite or PostgreSQL (`postgresql+psycopg://`), with the transaction rules of this module."""
    parsed = make_url(url)
    if parsed.get_backend_name() != "sqlite":
        reach = {"connect_timeout": _CONNECT_SECONDS}
        return create_engine(parsed, pool_pre_ping=True, pool_size=20, max_overflow=20, connect_args=reach)
    options: dict[str, Any] = {"connect_args": {"check_same_thread": False, "timeout": _BUSY_MS / 1000}}
    if parsed.database in (None, "", ":memory:"):
        options["poolclass"] = StaticPool
    else:
        # Kept open: opening one and its settings cost more than most transactions, and the last one that closes
        # writes the whole log back.
        options.update(poolclass=QueuePool, pool_size=20, max_overflow=20)
    engine = create_engine(parsed, **options)
    event.listen(engine, "connect", _set_up_sqlite)
    event.listen(engine, "begin", _begin_sqlite)
    return engine


def _set_up_sqlite(connection: Any, _record: Any) -> None:
    connection.isolation_level = None
    pragmas = ["journal_mode=WAL", "synchronous=FULL", f"busy_timeout={_BUSY_MS}", "foreign_keys=ON"]
    # What is changed or deleted is overwritten, so that a deleted customer does not live on between the rows.
    for pragma in (*pragmas, "secure_delete=ON"):
        connection.execute(f"PRAGMA {pragma}")


def _begin_sqlite(connection: Connection) -> None:
    if connection.get_execution_options().get("followup_reader", False):
        _tell_sqlite(connection, "BEGIN")
        return
    try:
        _tell_sqlite(connection, "BEGIN IMMEDIATE")
    except sqlite3.Error as refused:
        raise DBAPIError.instance("BEGIN IMMEDIATE", None, refused, sqlite3.Error) from refused


def _tell_sqlite(connection: Connection, words: str) -> None:
    """Say how a transaction begins, past SQLAlchemy: there are many short ones, and it takes most of their time."""
    driver: Any = connection.connection.dbapi_connection
    driver.execute(words)


class DatabaseMoved(RuntimeError):
    """The database was moved away: nothing is kept here any more. Set FOLLOWUP_DATABASE_URL to where it is now."""


# The database is away, full, locked, read-only or moved: nothing is wrong with what was to be written.
DATABASE_TROUBLE = (InterfaceError, InternalError, OperationalError, DatabaseMoved)


class Store:
    """The database. Use `with store.write() as connection:`; leaving it commits, an error undoes everything."""

    def __init__(self, engine: Engine) -> None:
        self.engine = engine
        # Who waits for SQLite's lock sleeps and looks again, so that some wait for seconds; the threads of one process
        # wait for each other instead, and one alone for other processes.
        is_sqlite = engine.dialect.name == "sqlite"
        self._turn: AbstractContextManager[object] = threading.RLock() if is_sqlite else nullcontext()

    @contextmanager
    def write(self) -> Iterator[Connection]:
        """A transaction that writes; one at a time on SQLite."""
        try:
            with self._turn, self.engine.begin() as connection:
                yield connection
        except IntegrityError as refused:
            if SAYS_MOVED in str(refused.orig):
                raise DatabaseMoved(DatabaseMoved.__doc__) from refused
            raise

    @contextmanager
    def read(self) -> Iterator[Connection]:
        """A consistent view that cannot write: pages read through it, so that no look changes anything."""
        with self.engine.connect().execution_options(followup_reader=True) as connection, connection.begin():
            if connection.dialect.name == "sqlite":
                _tell_sqlite(connection, "PRAGMA query_only=ON")
            else:
                connection.execute(text("SET TRANSACTION READ ONLY"))
            try:
                yield connection
            finally:
                if connection.dialect.name == "sqlite":
                    _tell_sqlite(connection, "PRAGMA query_only=OFF")

    def close(self) -> None:
        """Give back every connection."""
        self.engine.dispose()
