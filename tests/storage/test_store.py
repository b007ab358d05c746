"""Transactions: readers cannot write, writers wait for each other and lose nothing, instants keep their zone."""

from __future__ import annotations

import sqlite3
import threading
from collections.abc import Iterator
from datetime import UTC, datetime, timedelta, timezone
from pathlib import Path

import pytest
from sqlalchemy import select, text
from sqlalchemy.exc import DatabaseError, StatementError

from followup.storage import inbox, machine, people, rows, schema, shops, tables
from followup.storage import store as store_module
from followup.storage.store import DATABASE_TROUBLE, Store, make_engine

NOW = datetime(2026, 11, 23, 15, 0, tzinfo=UTC)
SHOP_FACTS = {
    "name": "Elm Street Auto",
    "zone": "America/Chicago",
    "phone": "+13125550101",
    "texts_from": "+13125550100",
}


@pytest.fixture
def store(database_url: str) -> Iterator[Store]:
    engine = make_engine(database_url)
    schema.upgrade(engine)
    made = Store(engine)
    yield made
    made.close()


def test_a_reader_cannot_write(store: Store) -> None:
    with pytest.raises(DatabaseError), store.read() as connection:
        machine.beat(connection, ["x"], NOW)
    with store.read() as connection:
        assert machine.last_beats(connection) == {}


def test_an_error_undoes_everything(store: Store) -> None:
    with pytest.raises(RuntimeError), store.write() as connection:
        machine.beat(connection, ["x"], NOW)
        raise RuntimeError
    with store.read() as connection:
        assert machine.last_beats(connection) == {}


def test_instants_come_back_aware_and_in_utc(store: Store) -> None:
    there = NOW.astimezone(timezone(timedelta(hours=-6)))
    with store.write() as connection:
        machine.beat(connection, ["x"], there)
    with store.read() as connection:
        found = machine.last_beats(connection)["x"]
    assert found == NOW
    assert found.utcoffset() == timedelta(0)


def test_a_naive_instant_is_refused(store: Store) -> None:
    with pytest.raises(StatementError), store.write() as connection:
        machine.beat(connection, ["x"], NOW.replace(tzinfo=None))


def test_many_writers_lose_no_increment(store: Store) -> None:
    """Measured with the driver's defaults: 120 of 160 increments of 4 threads were lost."""
    with store.write() as connection:
        connection.execute(text("CREATE TABLE counted (n INTEGER NOT NULL)"))
        connection.execute(text("INSERT INTO counted VALUES (0)"))

    def count() -> None:
        for _ in range(25):
            with store.write() as connection:
                lock = "" if connection.dialect.name == "sqlite" else " FOR UPDATE"
                found = connection.execute(text(f"SELECT n FROM counted{lock}")).scalar_one()
                connection.execute(text("UPDATE counted SET n = :n"), {"n": found + 1})

    threads = [threading.Thread(target=count) for _ in range(4)]
    for one in threads:
        one.start()
    for one in threads:
        one.join()
    with store.read() as connection:
        assert connection.execute(text("SELECT n FROM counted")).scalar_one() == 100


def test_many_may_do_a_thing_for_the_first_time_at_once(store: Store) -> None:
    """An update, and an insert where it found nothing, fails here on PostgreSQL."""
    with store.write() as connection:
        shop_id = shops.add_shop(connection, NOW, "elm", SHOP_FACTS)
        phone_id = people.keep_phone(connection, shop_id, "+13125550147", ("America/Chicago",), "mobile", NOW)
    failed: list[Exception] = []
    together = threading.Barrier(4)

    def begin(number: int) -> None:
        try:
            for turn in range(10):
                together.wait(10)
                with store.write() as connection:
                    machine.beat(connection, [f"tick {turn}"], NOW)
                    inbox.keep_conversation(connection, shop_id, phone_id, NOW, {"asked": number}, {})
        except Exception as error:
            failed.append(error)
            together.abort()

    threads = [threading.Thread(target=begin, args=(number,)) for number in range(4)]
    for thread in threads:
        thread.start()
    for thread in threads:
        thread.join()
    assert failed == []
    with store.read() as connection:
        assert len(machine.last_beats(connection)) == 10


def test_a_lease_has_one_holder_and_a_new_holder_a_new_term(store: Store) -> None:
    lasts = timedelta(seconds=60)
    with store.write() as connection:
        assert machine.take_lease(connection, "clock", "one", lasts) == 1
        assert machine.take_lease(connection, "clock", "two", lasts) is None
        assert machine.take_lease(connection, "clock", "one", lasts) == 1
        machine.give_back_lease(connection, "clock", "one")
        assert machine.take_lease(connection, "clock", "two", lasts) == 2
        assert machine.take_lease(connection, "clock", "one", lasts) is None


def test_a_row_that_is_there_is_not_added_again(store: Store) -> None:
    values = {"name": "Elm Street Shop", "zone": "America/Chicago", "phone": "+13125550100", "created_at": NOW}
    with store.write() as connection:
        first = rows.add_new(connection, tables.shops, code="elm", texts_from="+13125550101", **values)
        again = rows.add_new(connection, tables.shops, code="elm", texts_from="+13125550102", **values)
        found = rows.every(connection, select(tables.shops))
    assert first is not None
    assert again is None
    assert len(found) == 1


def test_who_waits_in_vain_for_the_one_writer_meets_trouble_of_the_database_and_may_try_again(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    """SQLite's SQLITE_BUSY (result code 5) after the time that a connection waits."""
    monkeypatch.setattr(store_module, "_BUSY_MS", 20)
    store = Store(make_engine(f"sqlite+pysqlite:///{tmp_path / 'shop.db'}"))
    schema.upgrade(store.engine)
    other = sqlite3.connect(tmp_path / "shop.db", isolation_level=None)
    other.execute("BEGIN IMMEDIATE")
    with pytest.raises(DATABASE_TROUBLE, match="locked"), store.write():
        raise AssertionError("there is one writer")
    other.execute("ROLLBACK")
    with store.write() as connection:
        machine.beat(connection, ["send"], datetime(2026, 11, 24, tzinfo=UTC))
    with store.read() as connection:
        assert machine.last_beats(connection) == {"send": datetime(2026, 11, 24, tzinfo=UTC)}
    other.close()
    store.close()
