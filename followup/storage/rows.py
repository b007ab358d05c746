"""The three statements that every aggregate needs, for SQLite and PostgreSQL alike."""

from __future__ import annotations

from typing import Any

from sqlalchemy import ColumnElement, Connection, Select, Table, insert, select, update
from sqlalchemy.dialects import postgresql, sqlite

Row = dict[str, Any]


def add(connection: Connection, table: Table, **values: Any) -> int:
    """Insert one row and return its id."""
    found = connection.execute(insert(table).values(**values)).inserted_primary_key
    assert found is not None
    return int(found[0])


def add_new(connection: Connection, table: Table, **values: Any) -> int | None:
    """Insert one row unless a unique key has it already (then None): uniqueness is the database's own."""
    dialect = sqlite if connection.dialect.name == "sqlite" else postgresql
    statement = dialect.insert(table).values(**values).on_conflict_do_nothing().returning(table.c.id)
    found = connection.execute(statement).first()
    return int(found[0]) if found else None


def change(connection: Connection, table: Table, row_id: int, **values: Any) -> None:
    """Change one row by its id."""
    connection.execute(update(table).where(table.c.id == row_id).values(**values))


def first(connection: Connection, query: Select[Any]) -> Row | None:
    """The first row by column name, or None."""
    found = connection.execute(query).mappings().first()
    return {str(name): value for name, value in found.items()} if found is not None else None


def every(connection: Connection, query: Select[Any]) -> list[Row]:
    """All rows by column name."""
    found = connection.execute(query)
    # Not by mappings(): planning reads thousands of rows at a time, and pairing names once is half the work.
    names = [str(name) for name in found.keys()]  # noqa: SIM118  # a result's keys, which is no dictionary
    return [dict(zip(names, row, strict=True)) for row in found]


def grouped(
    connection: Connection,
    table: Table,
    by: str,
    shop_id: int,
    wanted: list[int] | None,
    *conditions: ColumnElement[bool],
) -> dict[int, list[Row]]:
    """A shop's rows of a table by a reference, in the order of their ids; `wanted` None takes all of the shop."""
    column = table.c[by]
    query = select(table).where(table.c.shop_id == shop_id, column.is_not(None), *conditions).order_by(table.c.id)
    if wanted is not None:
        query = query.where(column.in_(wanted))
    found: dict[int, list[Row]] = {}
    for row in every(connection, query):
        found.setdefault(row[by], []).append(row)
    return found
