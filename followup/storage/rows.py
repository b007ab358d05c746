"""The three statements that every aggregate needs, for SQLite and PostgreSQL alike.

To make a statement and to look up how it is compiled takes four times as long as to ask it. So what is asked for each
text that leaves is made once, with places for values (`given`, `among`), which `first` and `every` fill by their names;
what adds or changes rows is made once a table. `equal` makes the plainest question once: rows by some of their columns.
"""

from __future__ import annotations

from collections.abc import Collection
from functools import cache, lru_cache
from typing import Any

from sqlalchemy import (
    BindParameter,
    ColumnElement,
    Connection,
    Executable,
    Insert,
    Select,
    Table,
    Update,
    bindparam,
    insert,
    literal_column,
    select,
    update,
)
from sqlalchemy.dialects import postgresql, sqlite

Row = dict[str, Any]


def add(connection: Connection, table: Table, **values: Any) -> int:
    """Insert one row and return its id."""
    found = connection.execute(_adding(table), values).inserted_primary_key
    assert found is not None
    return int(found[0])


def add_new(connection: Connection, table: Table, **values: Any) -> int | None:
    """Insert one row unless a unique key has it already (then None): uniqueness is the database's own."""
    found = connection.execute(_adding_new(table, connection.dialect.name), values).first()
    return int(found[0]) if found else None


def change(connection: Connection, table: Table, row_id: int, **values: Any) -> None:
    """Change one row by its id."""
    connection.execute(_changing(table), {**values, "of_row": row_id})


def change_all(connection: Connection, table: Table, row_ids: Collection[int], values: dict[str, Any]) -> int:
    """Change several rows alike, by their ids; how many there were."""
    if not row_ids:
        return 0
    return connection.execute(_changing_all(table), {**values, "of_rows": row_ids}).rowcount


@cache
def _adding(table: Table) -> Insert:
    return insert(table)


@cache
def _adding_new(table: Table, dialect: str) -> Executable:
    adding: Any = (sqlite if dialect == "sqlite" else postgresql).insert(table)
    ignoring: Executable = adding.on_conflict_do_nothing().returning(table.c.id)
    return ignoring


@cache
def _changing(table: Table) -> Update:
    return update(table).where(table.c.id == bindparam("of_row"))


@cache
def _changing_all(table: Table) -> Update:
    return update(table).where(table.c.id.in_(bindparam("of_rows", expanding=True)))


@cache
def equal(table: Table, *names: str) -> Select[Any]:
    """The rows of a table whose columns of these names are what is given for them."""
    return select(table).where(*(table.c[name] == bindparam(name) for name in names))


def given(name: str) -> BindParameter[Any]:
    """A place in a statement for a value that comes when it is asked."""
    return bindparam(name)


def among(name: str) -> BindParameter[Any]:
    """The same for the values of an IN."""
    return bindparam(name, expanding=True)


def beside(column: ColumnElement[Any]) -> ColumnElement[Any]:
    """The column's value, for which no index is taken: where another index names the few rows that are wanted.

    SQLite holds the index over `shop_id` for the better one of the two, since it does not know how many rows a shop
    has, and would read all of them.
    """
    return column + literal_column("0")


def first(connection: Connection, query: Select[Any], **values: Any) -> Row | None:
    """The first row by column name, or None; `values` for the statement's places."""
    found = connection.execute(query, values)
    row = found.first()
    return {str(name): value for name, value in zip(found.keys(), row, strict=True)} if row is not None else None


def every(connection: Connection, query: Select[Any], **values: Any) -> list[Row]:
    """All rows by column name; `values` for the statement's places."""
    found = connection.execute(query, values)
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
    """A shop's rows of a table by a reference, in the order of their ids; `wanted` None takes all of the shop.

    `conditions` that are made once are cheapest: the statement is kept by them.
    """
    asked: dict[str, Any] = {"shop_id": shop_id} if wanted is None else {"shop_id": shop_id, "wanted": wanted}
    found: dict[int, list[Row]] = {}
    for row in every(connection, _grouping(table, by, wanted is None, conditions), **asked):
        found.setdefault(row[by], []).append(row)
    return found


@lru_cache(maxsize=64)
def _grouping(table: Table, by: str, is_all: bool, conditions: tuple[ColumnElement[bool], ...]) -> Select[Any]:
    column = table.c[by]
    of_shop = table.c.shop_id if is_all else beside(table.c.shop_id)
    mine = (of_shop == given("shop_id"), column.is_not(None), *conditions)
    query = select(table).where(*mine).order_by(table.c.id)
    return query if is_all else query.where(column.in_(among("wanted")))
