"""What windows rest on is kept beside the present ones; stored tires stand there alone: no text is about them."""

from __future__ import annotations

import json
from datetime import timedelta

import pytest
from sqlalchemy import func, select

from followup.storage import evidence, tables, windows
from followup.workflows.forecast_windows import forecast_windows
from followup.workflows.keep_inspections import keep_inspections
from followup.workflows.look_at_car import look_at_car
from tests.workflows import counter as counters
from tests.workflows.counter import Counter


@pytest.fixture
def two_sets(database_url: str) -> Counter:
    """A car that was seen on winter tires in March and on summer tires in November."""
    counter = counters.open_counter(database_url)
    lines = []
    for number, (on, label, depth) in enumerate((("2026-03-10", "winter", 9), ("2026-11-20", "summer", 7))):
        tire = {"item": "tire_tread", "position": "front_left", "unit": "32nds", "value": depth}
        told = {"inspection": f"I-set-{number}", "inspected_at": f"{on}T09:00", "odometer": 40_000 + 9_000 * number}
        lines.append(counters.line(**told, tire_set=label, readings=[tire]))
    who = ("test", counters.SECRET)
    kept = list(keep_inspections(counter.store, counter.shop_id, lines, counters.NOW, *who, accepts_doubtful=True))
    assert [one.outcome for one in kept] == ["new", "new"]
    return counter


def test_evidence_stands_beside_the_present_windows_alone(two_sets: Counter) -> None:
    counter = two_sets
    for days in (0, 1):
        forecast_windows(counter.store, counter.shop_id, counters.NOW + timedelta(days=days), [counter.vehicle_id])
    with counter.store.read() as connection:
        present = windows.windows_of(connection, counter.vehicle_id)
        found = evidence.windows_with_evidence(connection, counter.vehicle_id)
        kept = connection.execute(select(func.count()).select_from(tables.due_evidence)).scalar_one()
    assert present and all("evidence" not in row["body"] for row in present)
    assert {row["body"]["stored_set"] for row in present} == {None}
    assert [one.stored_set for one in found].count("winter") == 1
    assert len(found) == kept == len(present) + 1
    assert all(one.evidence is not None for one in found)


def test_windows_kept_before_there_was_evidence_are_still_shown(two_sets: Counter) -> None:
    counter = two_sets
    forecast_windows(counter.store, counter.shop_id, counters.NOW, [counter.vehicle_id])
    with counter.store.write() as connection:
        connection.execute(tables.due_evidence.delete())
    page = look_at_car(counter.store, counter.shop_id, counter.vehicle_id, counters.NOW)
    assert page is not None and page.due and not page.stored
    assert all(one.window.evidence is None for one in page.due)


def test_stored_tires_are_seen_apart_from_what_is_due(two_sets: Counter) -> None:
    counter = two_sets
    forecast_windows(counter.store, counter.shop_id, counters.NOW, [counter.vehicle_id])
    page = look_at_car(counter.store, counter.shop_id, counter.vehicle_id, counters.NOW)
    assert page is not None
    assert [one.window.stored_set for one in page.stored] == ["winter"]
    assert all(one.window.stored_set is None for one in page.due)
    assert json.dumps([one.window.to_json() for one in page.stored])
