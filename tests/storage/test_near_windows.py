"""Which windows are read for planning is decided in the database, on SQLite and PostgreSQL alike."""

from __future__ import annotations

from datetime import date
from typing import Any

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
