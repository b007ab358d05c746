"""Leases and heartbeats: which process acts, and whether the clock still ticks."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import UTC, datetime, timedelta
from functools import cache
from typing import Any

from sqlalchemy import Connection, Executable, select, update
from sqlalchemy.dialects import postgresql, sqlite
from sqlalchemy.exc import IntegrityError

from followup.storage import rows, tables

_BEATS = select(tables.heartbeats)
_LEASES = tables.leases.c
_LEASE = select(tables.leases).where(_LEASES.name == rows.given("name"))
# Renewed at each look, so made once.
_TAKE = update(tables.leases).where(
    _LEASES.name == rows.given("of_name"), _LEASES.term == rows.given("seen_term"),
    _LEASES.holder == rows.given("seen_holder"),
)  # fmt: skip


def database_now(connection: Connection) -> datetime:
    """The instant that leases go by: the database's clock. A trial that steps time puts its own in this one's place."""
    return database_clock(connection)


def database_clock(connection: Connection) -> datetime:
    """The database's own clock, the same for every process; never a trial's."""
    if connection.dialect.name == "sqlite":
        # Past SQLAlchemy: it reads no table, and each text asks several times.
        driver: Any = connection.connection.dbapi_connection
        (told,) = driver.execute("SELECT strftime('%Y-%m-%dT%H:%M:%f', 'now')").fetchone()
        return datetime.fromisoformat(told).replace(tzinfo=UTC)
    found: datetime = connection.exec_driver_sql("SELECT clock_timestamp()").scalar_one()
    return found


def take_lease(connection: Connection, name: str, holder: str, lasts: timedelta) -> int | None:
    """Take or renew the lease; its term, or None where another process holds it.

    A new holder raises the term, so that what an earlier holder still does can be told apart.
    """
    table, now = tables.leases, database_now(connection)
    found = rows.first(connection, _LEASE, name=name)
    if found is None:
        try:
            with connection.begin_nested():
                connection.execute(table.insert().values(name=name, holder=holder, term=1, until=now + lasts))
        except IntegrityError:
            return None
        return 1
    if found["holder"] != holder and found["until"] > now:
        return None
    term = found["term"] if found["holder"] == holder else found["term"] + 1
    seen = {"of_name": name, "seen_term": found["term"], "seen_holder": found["holder"]}
    done = connection.execute(_TAKE, {**seen, "holder": holder, "term": term, "until": now + lasts})
    return term if done.rowcount == 1 else None


def keep_lease(connection: Connection, name: str, holder: str, term: int, lasts: timedelta) -> bool:
    """Renew a lease in its term; False where it ran out or another process holds it: then nothing is changed."""
    table, now = tables.leases, database_now(connection)
    done = connection.execute(
        update(table)
        .where(table.c.name == name, table.c.holder == holder, table.c.term == term, table.c.until > now)
        .values(until=now + lasts)
    )
    return done.rowcount == 1


def lease_left(connection: Connection, name: str, holder: str, term: int) -> timedelta:
    """How long the lease lasts yet for its holder in that term; nothing where it is over."""
    table = tables.leases
    query = select(table.c.until).where(table.c.name == name, table.c.holder == holder, table.c.term == term)
    found = rows.first(connection, query)
    return max(timedelta(0), found["until"] - database_now(connection)) if found else timedelta(0)


def is_leased(connection: Connection, name: str) -> bool:
    """True while any process holds it."""
    found = rows.first(connection, select(tables.leases.c.until).where(tables.leases.c.name == name))
    return found is not None and found["until"] > database_now(connection)


def give_back_lease(connection: Connection, name: str, holder: str) -> None:
    """Let another process take over at once."""
    table = tables.leases
    now = database_now(connection)
    connection.execute(update(table).where(table.c.name == name, table.c.holder == holder).values(until=now))


def beat(connection: Connection, names: Iterable[str], now: datetime) -> None:
    """Say that these ticks ran."""
    # In one statement: two processes may say it for the first time at once. In one order, so that none waits in turn.
    connection.execute(_saying(connection.dialect.name), [{"name": name, "at": now} for name in sorted(names)])


@cache
def _saying(dialect: str) -> Executable:
    first: Any = (sqlite if dialect == "sqlite" else postgresql).insert(tables.heartbeats)
    said: Executable = first.on_conflict_do_update(index_elements=["name"], set_={"at": first.excluded.at})
    return said


def last_beats(connection: Connection) -> dict[str, datetime]:
    """When each tick last ran."""
    return {row["name"]: row["at"] for row in rows.every(connection, _BEATS)}
