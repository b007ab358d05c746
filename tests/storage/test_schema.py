"""Migrations produce the database that the tables describe, up and down, on both kinds of database."""

from __future__ import annotations

from sqlalchemy import inspect

from followup.storage import schema
from followup.storage.store import make_engine
from followup.storage.tables import metadata


def test_migrations_make_what_the_tables_say(database_url: str) -> None:
    engine = make_engine(database_url)
    schema.upgrade(engine)
    with engine.connect() as connection:
        assert schema.differences(connection) == []
    assert schema.is_up_to_date(engine)
    engine.dispose()


def test_a_database_without_a_table_is_told(database_url: str) -> None:
    engine = make_engine(database_url)
    schema.upgrade(engine)
    with engine.begin() as connection:
        metadata.tables["heartbeats"].drop(connection)
    with engine.connect() as connection:
        assert any("heartbeats" in one for one in schema.differences(connection))
    engine.dispose()


def test_every_row_belongs_to_a_shop() -> None:
    without = {name for name, table in metadata.tables.items() if "shop_id" not in table.c}
    # The shops themselves, and what belongs to the machine.
    assert without == {"shops", "leases", "heartbeats"}


def test_upgrading_twice_changes_nothing(database_url: str) -> None:
    engine = make_engine(database_url)
    schema.upgrade(engine)
    before = sorted(inspect(engine).get_table_names())
    schema.upgrade(engine)
    assert sorted(inspect(engine).get_table_names()) == before
    engine.dispose()
