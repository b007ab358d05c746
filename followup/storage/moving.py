"""The whole of a database in another one: every row, and where the next ids begin, compared by count and checksum.

What is copied stands still meanwhile, because whoever copies holds SQLite's one write lock. The target is filled in one
transaction: if the process dies, it is as empty as it was.
"""

from __future__ import annotations

import hashlib
import json
from collections.abc import Callable, Iterable, Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass, field
from datetime import date, datetime
from typing import Any

from sqlalchemy import JSON, Connection, Integer, String, Table, Text, cast, func, inspect, select, text, update

from followup.storage import installation, rows, tables
from followup.storage.columns import KeptJson
from followup.storage.installation import Standing

# Leases are of processes that stay behind; where the shop is, is written anew; marks are set there by what is copied.
_LEFT_BEHIND = (
    tables.leases, tables.installation, tables.plan_marks, tables.forecast_marks, tables.plan_looks,
)  # fmt: skip
_ROWS_AT_ONCE = 1000
_CHECKSUM_BITS = 256


@dataclass(frozen=True)
class MovedTable:
    """How many rows a table has here and there, and a checksum of each that does not go by their order."""

    name: str
    here: int
    there: int
    checksum_here: str
    checksum_there: str

    @property
    def is_same(self) -> bool:
        """True where every row is there as it is here."""
        return self.here == self.there and self.checksum_here == self.checksum_there


@dataclass
class _Sum:
    """Adds up rows, so that each counts as often as it is there, in whatever order they come."""

    rows: int = 0
    _total: int = field(default=0)

    def add(self, values: Iterable[Any]) -> None:
        """Count one more row."""
        told = json.dumps(list(values), default=_plain, ensure_ascii=False)
        self._total += int.from_bytes(hashlib.sha256(told.encode()).digest())
        self.rows += 1

    def checksum(self) -> str:
        """Of all rows so far."""
        return f"{self._total % (1 << _CHECKSUM_BITS):0{_CHECKSUM_BITS // 4}x}"


def _plain(value: Any) -> str:
    if isinstance(value, date | datetime):
        return value.isoformat()
    raise TypeError(f"no checksum of a {type(value).__name__}")


def moved_tables() -> list[Table]:
    """The tables that move, those first to which others refer."""
    return [one for one in tables.metadata.sorted_tables if one not in _LEFT_BEHIND]


def does_not_fit(connection: Connection) -> list[str]:
    """What SQLite keeps and PostgreSQL refuses: words that are longer than their column."""
    found = []
    for table in moved_tables():
        for column in table.columns:
            most = column.type.length if isinstance(column.type, String) else None
            if most is not None:
                query = select(func.count()).select_from(table).where(func.length(column) > most)
                count = connection.execute(query).scalar_one()
                found += [f"{count} of {table.name}.{column.name} are longer than {most} characters"] if count else []
    return found


def texts_under_way(connection: Connection) -> int:
    """How many texts are in flight: some process may be handing them over."""
    query = select(func.count()).select_from(tables.texts).where(tables.texts.c.state == "in_flight")
    return int(connection.execute(query).scalar_one())


def settle_under_way(connection: Connection, first_look: datetime) -> int:
    """What is claimed has provably not left and is planned again; what is in flight is unknown and looked up, also by
    the process that sends from the new place. How many are in doubt."""
    table = tables.texts
    free = {"claimed_by": None, "claimed_until": None}
    connection.execute(update(table).where(table.c.state == "claimed").values(state="planned", **free))
    because = "the database was moved while it was handed over"
    doubted = update(table).where(table.c.state == "in_flight")
    return connection.execute(doubted.values(state="unknown", state_because=because, look_at=first_look)).rowcount


def standing_there(connection: Connection) -> Standing | None:
    """How the target stands: None where it is empty, `foreign` where it holds something else than ours."""
    names = inspect(connection).get_table_names()
    if not names:
        return None
    if tables.installation.name not in names:
        return Standing("foreign")
    found = rows.first(connection, select(tables.installation))
    return Standing(found["state"], found["code"], found["other"] or "") if found else Standing("foreign")


def empty(connection: Connection) -> None:
    """Take everything out of a target whose move was broken off: nothing ever left from there."""
    for name in inspect(connection).get_table_names():
        connection.execute(text(f'DROP TABLE "{name}" CASCADE'))


def copy(source: Connection, target: Connection, told: Callable[[str], object]) -> list[MovedTable]:
    """Copy every row and read all of them back; what is told of each table as it is done."""
    copied = {}
    for table in moved_tables():
        copied[table.name] = sum_here = _Sum()
        with _writer(target, table) as write:
            for row in _rows_of(source, table):
                sum_here.add(row)
                write(row)
        _go_on_counting(target, table)
        told(f"{table.name}: {sum_here.rows} rows copied")
    return [_compared(target, table, copied[table.name]) for table in moved_tables()]


def _compared(target: Connection, table: Table, here: _Sum) -> MovedTable:
    there = _Sum()
    for row in _rows_of(target, table):
        there.add(row)
    return MovedTable(table.name, here.rows, there.rows, here.checksum(), there.checksum())


def _rows_of(connection: Connection, table: Table) -> Iterator[Sequence[Any]]:
    # JSON as its text: both keep it so, and reading it would take most of the time.
    columns = [cast(one, Text) if isinstance(one.type, (JSON, KeptJson)) else one for one in table.columns]
    # In the order of their ids: a row that names another one of its own table names an earlier one.
    query = select(*columns).order_by(*table.primary_key.columns)
    yield from connection.execute(query.execution_options(yield_per=_ROWS_AT_ONCE))


@contextmanager
def _writer(connection: Connection, table: Table) -> Iterator[Callable[[Sequence[Any]], object]]:
    """PostgreSQL's own way of many rows: several times as fast as statements, and who writes to the shop waits."""
    names = ", ".join(f'"{one.name}"' for one in table.columns)
    driver: Any = connection.connection.cursor()
    with driver, driver.copy(f'COPY "{table.name}" ({names}) FROM STDIN') as copying:
        yield copying.write_row


def _go_on_counting(connection: Connection, table: Table) -> None:
    """The next id follows the highest: rows that came with theirs have moved no sequence."""
    keys = list(table.primary_key.columns)
    if len(keys) == 1 and isinstance(keys[0].type, Integer):
        name = keys[0].name
        sequence = f"pg_get_serial_sequence('{table.name}', '{name}')"
        highest = f'SELECT setval({sequence}, max("{name}")) FROM "{table.name}" HAVING max("{name}") IS NOT NULL'
        connection.execute(text(highest))


def close(connection: Connection, now: datetime, who: str, other: str) -> None:
    """This database is the shop no more and keeps nothing any more."""
    installation.say(connection, "moved", now, who, other=other)
    installation.close_for_ever(connection)
