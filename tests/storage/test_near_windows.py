"""Which windows are read for planning is decided in the database, on SQLite and PostgreSQL alike."""

from __future__ import annotations

from datetime import date, timedelta
from importlib import import_module
from pathlib import Path
from typing import Any

from sqlalchemy import select, update

from followup.core.forecast.window import CURVE_CHANCES, DueCurve
from followup.storage import rows, tables, windows
from followup.storage.store import Store, make_engine
from tests.shop_of_tests import BEGIN, add_shop

TODAY = date(2026, 11, 24)


def _body(day: float, legal: DueCurve | None = None, *, is_past: bool = False) -> dict[str, Any]:
    return {
        "curve": DueCurve(0.0, tuple(day + number for number in range(len(CURVE_CHANCES)))).to_json(),
        "legal": {"curve": legal.to_json(), "is_past": is_past} if legal else None,
    }


def test_near_by_either_limit_or_put_off(database_url: str) -> None:
    store = Store(make_engine(database_url))
    shop_id = add_shop(store)
    never = DueCurve.certain(float("inf"))
    bodies = {
        "near": _body(10.0), "far": _body(300.0), "legally near": _body(300.0, DueCurve.certain(20.0)),
        "legally never": _body(300.0, never), "legally past": _body(300.0, never, is_past=True),
    }  # fmt: skip
    with store.write() as connection:
        cars = [
            rows.add(connection, tables.vehicles, shop_id=shop_id, code=code, facts={}, created_at=BEGIN)
            for code in "AB"
        ]
        for car in cars:
            found = [(item, "", body) for item, body in bodies.items()]
            windows.replace_windows(connection, shop_id, car, TODAY, found, BEGIN)
        rows.add(
            connection, tables.rests, shop_id=shop_id, vehicle_id=cars[1], item="far", position="", because="later",
            from_on=TODAY,
        )  # fmt: skip
    with store.read() as connection:
        near = windows.near_windows(connection, shop_id, TODAY, 35, 0.1)
        # By the rule that nothing is left out where there is no lower chance to go by.
        everything = windows.near_windows(connection, shop_id, TODAY, 35, 0.0001)
    store.close()
    assert [row["item"] for row in near[cars[0]]] == ["near", "legally near", "legally past"]
    assert len(near[cars[1]]) == len(bodies) == len(everything[cars[0]])


def test_a_rule_that_asks_for_less_reads_everything(database_url: str) -> None:
    """A manager may set 1 % for tires and pads (`ShopRules.send_worn_at_chance`): the column stands for 10 %."""
    store = Store(make_engine(database_url))
    shop_id = add_shop(store)
    with store.write() as connection:
        car = rows.add(connection, tables.vehicles, shop_id=shop_id, code="A", facts={}, created_at=BEGIN)
        windows.replace_windows(connection, shop_id, car, TODAY, [("far", "", _body(300.0))], BEGIN)
    with store.read() as connection:
        assert windows.near_windows(connection, shop_id, TODAY, 35, windows.NEAR_CHANCE) == {}
        assert list(windows.near_windows(connection, shop_id, TODAY, 35, 0.05)) == [car]
        assert windows.cars_with_near_windows(connection, shop_id, TODAY, 35, 0.05) == {car}
    # As an earlier version keeps it, which knows no such column.
    with store.write() as connection:
        connection.execute(update(tables.due_windows).values(near_on=None))
    with store.read() as connection:
        assert list(windows.near_windows(connection, shop_id, TODAY, 35, windows.NEAR_CHANCE)) == [car]
    store.close()


def test_the_day_is_the_first_on_which_the_chance_may_be_reached(database_url: str) -> None:
    """By the curve itself: the day before, the chance is lower by `DueCurve.chance`."""
    curve = DueCurve(0.0, tuple(7.3 * number for number in range(1, len(CURVE_CHANCES) + 1)))
    body = {"curve": curve.to_json(), "legal": None}
    on = windows.near_on(TODAY, body)
    assert curve.chance((on - TODAY).days - 1) < windows.NEAR_CHANCE
    assert curve.chance((on - TODAY).days + 8) >= windows.NEAR_CHANCE
    store = Store(make_engine(database_url))
    shop_id = add_shop(store)
    with store.write() as connection:
        car = rows.add(connection, tables.vehicles, shop_id=shop_id, code="A", facts={}, created_at=BEGIN)
        windows.replace_windows(connection, shop_id, car, TODAY, [("one", "", body)], BEGIN)
    with store.read() as connection:
        assert connection.execute(select(tables.due_windows.c.near_on)).scalar_one() == on
        for today, cars in ((on - timedelta(days=1), set()), (on, {car})):
            found = windows.cars_with_near_windows(connection, shop_id, today, 0, windows.NEAR_CHANCE)
            assert found == cars
    store.close()


def test_the_migration_fills_in_the_same_days(database_url: str) -> None:
    """What stood in the database before there was the column, by what is kept since."""
    migration = import_module("followup.storage.migrations.versions.0021_near_windows")
    store = Store(make_engine(database_url))
    shop_id = add_shop(store)
    never = DueCurve.certain(float("inf"))
    found = [
        ("near", "", _body(10.0)), ("legal", "", _body(300.5, DueCurve.certain(20.3))), ("never", "", _body(2e6)),
        ("past", "", _body(300.0, never, is_past=True)), ("unknown", "", _body(40.0, never)),
    ]  # fmt: skip
    days = select(tables.due_windows.c.item, tables.due_windows.c.near_on).order_by(tables.due_windows.c.id)
    with store.write() as connection:
        car = rows.add(connection, tables.vehicles, shop_id=shop_id, code="A", facts={}, created_at=BEGIN)
        windows.replace_windows(connection, shop_id, car, TODAY, found, BEGIN)
        kept = connection.execute(days).all()
        connection.execute(update(tables.due_windows).values(near_on=None))
        migration._fill(connection)
        assert connection.execute(days).all() == kept
    assert len({day for _, day in kept}) == len(found)
    store.close()


def test_windows_are_read_of_their_text_once(tmp_path: Path) -> None:
    """Each night asks for the windows of all cars; SQLite keeps them as text, of which a value is made once."""
    store = Store(make_engine(f"sqlite:///{tmp_path / 'shop.db'}"))
    shop_id, body = add_shop(store), _body(10.0)
    with store.write() as connection:
        car = rows.add(connection, tables.vehicles, shop_id=shop_id, code="A", facts={}, created_at=BEGIN)
        windows.replace_windows(connection, shop_id, car, TODAY, [("oil_service", "", body)], BEGIN)
    read = []
    for _ in range(2):
        with store.read() as connection:
            (row,) = windows.windows_of(connection, car)
            read.append(row["body"])
    assert read[0] == body and read[0] is read[1]
    # What is forecast anew is another text, and another value.
    with store.write() as connection:
        windows.replace_windows(connection, shop_id, car, TODAY, [("oil_service", "", _body(20.0))], BEGIN)
        (row,) = windows.windows_of(connection, car)
    assert row["body"] == _body(20.0)
    store.close()
