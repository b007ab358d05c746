"""Inspections as they come in: a doubtful one leaves nothing behind, and what a visit told explains what grew."""

from __future__ import annotations

import json
from typing import Any

from sqlalchemy import select

from followup.storage import tables
from tests.workflows.demo import Demo


def _line(code: str, at: str, miles: int, tread: int, **car: Any) -> str:
    return json.dumps({
        "inspection": code, "inspected_at": at, "odometer": miles, "unit": "mi",
        "customer": {"id": "C-777"}, "vehicle": {"id": "V-777", **car},
        "readings": [{"item": "tire_tread", "position": "front_left", "unit": "32nds", "value": tread}],
    })  # fmt: skip


def _facts(demo: Demo) -> dict[str, Any]:
    with demo.house.store.read() as connection:
        query = select(tables.vehicles.c.facts).where(tables.vehicles.c.code == "V-777")
        found: dict[str, Any] = connection.execute(query).scalar_one()
    return found


def test_a_doubtful_line_leaves_nothing_behind(demo: Demo) -> None:
    demo.house.keep_inspection(demo.shop_id, _line("I-1", "2026-03-02T09:00", 41000, 5, label="gray van"), "test")
    before = _facts(demo)
    doubtful = _line("I-2", "2026-10-02T09:00", 40000, 5, label="blue bus")
    assert demo.house.keep_inspection(demo.shop_id, doubtful, "test").outcome == "doubtful"
    assert _facts(demo) == before
    assert demo.house.keep_inspection(demo.shop_id, doubtful, "test", accepts_doubtful=True).outcome == "new"
    assert _facts(demo)["label"] == "blue bus"


def test_tread_that_grew_is_asked_about_unless_a_visit_told_of_new_tires(demo: Demo) -> None:
    demo.house.keep_inspection(demo.shop_id, _line("I-1", "2026-03-02T09:00", 41000, 4), "test")
    grown = _line("I-2", "2026-10-02T09:00", 46000, 10)
    assert demo.house.keep_inspection(demo.shop_id, grown, "test").outcome == "doubtful"
    visit = json.dumps({
        "visit": "RO-1", "vehicle": "V-777", "opened_at": "2026-06-01T09:00", "closed_at": "2026-06-01T16:00",
        "work_done": [{"item": "tire_tread", "position": "front", "did": "replaced"}],
    })  # fmt: skip
    assert demo.house.keep_inspection(demo.shop_id, visit, "test").outcome == "new"
    assert demo.house.keep_inspection(demo.shop_id, grown, "test").outcome == "new"
