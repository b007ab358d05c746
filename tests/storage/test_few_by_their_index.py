"""What decides about a few numbers is found by an index over them, however many rows their shop has.

SQLite's planner takes each equality for as good as another where nothing has counted the rows (its documentation, "The
SQLite Query Optimizer Overview", on ANALYZE), so the plans are those of a database that was never analyzed.
"""

from __future__ import annotations

from typing import Any

from sqlalchemy import Connection, event

from followup.rehearsal import crowd
from followup.storage import numbers, pictures, schema
from followup.storage.store import Store, make_engine

# Of these a shop has one open row at most, or its own handful.
_FEW_OF_A_SHOP = ("set_seasons",)


def _reads(connection: Connection, shop_id: int) -> list[tuple[str, Any]]:
    asked: list[tuple[str, Any]] = []

    def keep(_connection: Any, _cursor: Any, statement: str, values: Any, _context: Any, _many: bool) -> None:
        asked.append((statement, values))

    event.listen(connection.engine, "before_cursor_execute", keep)
    wanted = [crowd.number_of(customer) for customer in range(2)]
    known = numbers.know(connection, shop_id, wanted, crowd.OPENS_AT, secret="only-for-tests")
    gathered = pictures.gather_known(connection, shop_id, known)
    event.remove(connection.engine, "before_cursor_execute", keep)
    assert len(gathered.phones) == 2
    assert sum(map(len, gathered.windows.values())) == 6
    assert {number for number, one in known.standings.items() if one.allows("upkeep")} == set(wanted)
    return asked


def test_no_read_about_a_few_numbers_goes_through_all_rows_of_the_shop(sqlite_url: str) -> None:
    store = Store(make_engine(sqlite_url))
    schema.upgrade(store.engine)
    shop_id = crowd.add_crowd(store, 3, "only-for-tests")
    with store.read() as connection:
        asked = _reads(connection, shop_id)
        assert len(asked) >= 15
        for statement, values in asked:
            plan = [row[3] for row in connection.exec_driver_sql(f"EXPLAIN QUERY PLAN {statement}", values)]
            of_all = [one for one in plan if "_shop_id (shop_id=?)" in one or one.startswith("SCAN")]
            assert all(any(f" {few} " in one for few in _FEW_OF_A_SHOP) for one in of_all), (statement, plan)
    store.close()
