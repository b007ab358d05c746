"""Both databases start and answer, so that a storage test that fails does not fail for want of a database."""

from sqlalchemy import create_engine, inspect, text

from tests.databases import PostgreSQL


def test_database_answers(database_url: str) -> None:
    engine = create_engine(database_url)
    with engine.connect() as connection:
        assert connection.execute(text("SELECT 1")).scalar_one() == 1
    engine.dispose()


def test_every_test_gets_an_empty_database_of_its_own(postgresql: PostgreSQL) -> None:
    first, second = (create_engine(postgresql.new_database()) for _ in range(2))
    with first.begin() as connection:
        connection.execute(text("CREATE TABLE mark (id INTEGER PRIMARY KEY)"))
    assert inspect(first).get_table_names() == ["mark"]
    assert inspect(second).get_table_names() == []
    first.dispose()
    second.dispose()
