"""Migrations produce the database that the tables describe, up and down, on both kinds of database."""

from __future__ import annotations

from alembic import command
from sqlalchemy import CheckConstraint, inspect, text

from followup.storage import mark_triggers, schema
from followup.storage.store import make_engine
from followup.storage.tables import metadata


def test_migrations_make_what_the_tables_say(database_url: str) -> None:
    engine = make_engine(database_url)
    schema.upgrade(engine)
    with engine.connect() as connection:
        assert schema.differences(connection) == []
    assert schema.is_up_to_date(engine)
    engine.dispose()


def test_migrations_make_the_checks_that_the_tables_have(database_url: str) -> None:
    # Alembic's comparison leaves CHECK constraints out.
    engine = make_engine(database_url)
    schema.upgrade(engine)
    seen = inspect(engine)
    for name, table in metadata.tables.items():
        wanted = {one.name for one in table.constraints if isinstance(one, CheckConstraint)}
        assert {one["name"] for one in seen.get_check_constraints(name)} == wanted, name
    engine.dispose()


def test_migrations_make_the_triggers_that_set_marks(database_url: str) -> None:
    """Alembic's comparison leaves triggers out; a table that a migration makes anew would lose them."""
    engine = make_engine(database_url)
    schema.upgrade(engine)
    kept = {
        "sqlite": "SELECT name, tbl_name AS of_table FROM sqlite_master WHERE type = 'trigger'",
        "postgresql": "SELECT tgname AS name, relname AS of_table FROM pg_trigger "
        "JOIN pg_class ON pg_class.oid = tgrelid WHERE NOT tgisinternal",
    }
    with engine.connect() as connection:
        found = {row[0]: row[1] for row in connection.execute(text(kept[connection.dialect.name]))}
    wanted = {"consents_unchanged": "consents", "consents_kept": "consents", **mark_triggers.trigger_names()}
    assert found == wanted
    engine.dispose()


def test_migrations_lead_back_to_an_empty_database(database_url: str) -> None:
    engine = make_engine(database_url)
    schema.upgrade(engine)
    with schema.migrating(engine) as connection:
        command.downgrade(schema._config(connection), "base")
    assert set(inspect(engine).get_table_names()) == {"alembic_version"}
    schema.upgrade(engine)
    with engine.connect() as connection:
        assert schema.differences(connection) == []
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
    assert without == {"shops", "leases", "heartbeats", "installation"}


def test_upgrading_twice_changes_nothing(database_url: str) -> None:
    engine = make_engine(database_url)
    schema.upgrade(engine)
    before = sorted(inspect(engine).get_table_names())
    schema.upgrade(engine)
    assert sorted(inspect(engine).get_table_names()) == before
    engine.dispose()
