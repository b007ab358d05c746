"""Column kinds that the tables share: aware UTC instants, JSON, words out of a list."""

from __future__ import annotations

import json
from collections.abc import Callable, Iterable
from datetime import UTC, datetime
from functools import lru_cache
from typing import Any

from sqlalchemy import (
    CheckConstraint,
    Column,
    DateTime,
    Dialect,
    ForeignKey,
    Integer,
    MetaData,
    String,
    Text,
    TypeDecorator,
)
from sqlalchemy.types import JSON

NAMING = {
    "ix": "ix_%(table_name)s_%(column_0_N_name)s",
    "uq": "uq_%(table_name)s_%(column_0_N_name)s",
    "ck": "ck_%(table_name)s_%(constraint_name)s",
    "fk": "fk_%(table_name)s_%(column_0_name)s",
    "pk": "pk_%(table_name)s",
}
metadata = MetaData(naming_convention=NAMING)


class NaiveInstant(ValueError):
    """An instant without a time zone was handed to the store: give an aware UTC datetime."""


class UtcDateTime(TypeDecorator[datetime]):
    """An aware UTC instant. SQLite keeps no zone, so what comes back is made aware again; naive values are refused."""

    impl = DateTime(timezone=True)
    cache_ok = True

    def process_bind_param(self, value: datetime | None, dialect: Dialect) -> datetime | None:
        """Refuse naive instants; turn the rest into UTC."""
        if value is None:
            return None
        if value.tzinfo is None:
            raise NaiveInstant(NaiveInstant.__doc__)
        utc = value.astimezone(UTC)
        return utc.replace(tzinfo=None) if dialect.name == "sqlite" else utc

    def process_result_value(self, value: datetime | None, dialect: Dialect) -> datetime | None:
        """Give back an aware UTC instant."""
        if value is None:
            return None
        return value.replace(tzinfo=UTC) if value.tzinfo is None else value.astimezone(UTC)


# Some 13 kB each: the windows that come up within a quarter at several thousand cars.
_READ_AT_MOST = 10_000


@lru_cache(_READ_AT_MOST)
def _read_text(kept: str) -> Any:
    return json.loads(kept)


class KeptJson(TypeDecorator[Any]):
    """JSON that is read far more often than it is written: each night the windows of all cars, few of which are new.

    What was read of SQLite before is given back, the same value to all who ask: nobody may change it.
    """

    impl = JSON(none_as_null=True)
    cache_ok = True

    def result_processor(self, dialect: Dialect, coltype: object) -> Callable[[Any], Any] | None:
        """Reads each text once, as long as there are not too many others; drivers that read JSON themselves do so."""
        if dialect.name == "sqlite":
            return _read_text
        return self.impl_instance.dialect_impl(dialect).result_processor(dialect, coltype)


def key() -> Column[Any]:
    """The primary key."""
    return Column("id", Integer, primary_key=True)


def shop() -> Column[Any]:
    """Every row belongs to a shop."""
    return Column("shop_id", Integer, ForeignKey("shops.id"), nullable=False, index=True)


def ref(name: str, table: str, *, needed: bool = True, indexed: bool = True) -> Column[Any]:
    """A reference to another table's row."""
    return Column(name, Integer, ForeignKey(f"{table}.id"), nullable=not needed, index=indexed)


def at(name: str, *, needed: bool = True, indexed: bool = False) -> Column[Any]:
    """An instant, aware UTC."""
    return Column(name, UtcDateTime, nullable=not needed, index=indexed)


def word(name: str, *, needed: bool = True, indexed: bool = False, default: str | None = None) -> Column[Any]:
    """A short text."""
    return Column(name, String(200), nullable=not needed, index=indexed, default=default)


def words(name: str, *, needed: bool = True) -> Column[Any]:
    """A long text."""
    return Column(name, Text, nullable=not needed)


def data(name: str, *, needed: bool = True) -> Column[Any]:
    """A JSON value; `None` is SQL NULL."""
    return Column(name, JSON(none_as_null=True), nullable=not needed)


def kept_data(name: str) -> Column[Any]:
    """The same where nobody changes what was read."""
    return Column(name, KeptJson, nullable=False)


def one_of(column: str, allowed: Iterable[str]) -> CheckConstraint:
    """The column holds one of these words: text with a check, not an enumerated type, so that migrations stay plain."""
    listed = ", ".join(f"'{one}'" for one in allowed)
    return CheckConstraint(f"{column} IN ({listed})", name=f"{column}_known")
