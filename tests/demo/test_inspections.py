"""The demo's file: the same bytes every time, no fault and no doubt in it, and what the demo needs is there."""

import json
import os
import subprocess
import sys
from collections import defaultdict
from datetime import UTC, datetime
from pathlib import Path

import pytest

from followup.core.consent import HOW
from followup.core.inspection import InspectionLine, VisitLine, read_line
from followup.core.inspection_doubts import doubts_of
from followup.core.items import BY_CODE, item, reading_value
from followup.core.vehicle import POWERTRAINS

ROOT = Path(__file__).parents[2]
FOLDER = ROOT / "demo_data"
# The Monday on which the demo begins, by the shop's wall clock.
NOW = datetime(2026, 11, 23, 7, 30, tzinfo=UTC)


@pytest.fixture(scope="module")
def lines() -> list[InspectionLine | VisitLine]:
    """Every line; reading one with a fault raises."""
    text = (FOLDER / "inspections.jsonl").read_text(encoding="utf-8")
    return [read_line(line, NOW, BY_CODE) for line in text.splitlines()]


@pytest.fixture(scope="module")
def inspections(lines: list[InspectionLine | VisitLine]) -> list[InspectionLine]:
    """The inspections alone."""
    return [line for line in lines if isinstance(line, InspectionLine)]


def test_the_generator_writes_the_same_bytes_again(tmp_path: Path) -> None:
    to = tmp_path / "again.jsonl"
    run = [sys.executable, str(FOLDER / "make_inspections.py"), "--to", str(to)]
    subprocess.run(run, check=True, env={**os.environ, "PYTHONPATH": str(ROOT), "PYTHONHASHSEED": "7"})
    assert to.read_bytes() == (FOLDER / "inspections.jsonl").read_bytes()


def test_nothing_in_it_is_doubtful(inspections: list[InspectionLine]) -> None:
    earlier: dict[str, list[InspectionLine]] = defaultdict(list)
    for line in inspections:
        assert doubts_of(line, earlier[line.vehicle.id]) == []
        earlier[line.vehicle.id].append(line)


def test_numbers_are_from_the_range_kept_for_fiction(inspections: list[InspectionLine]) -> None:
    # North American Numbering Plan: 555-0100 to 555-0199 are for fictional use.
    staff = json.loads((FOLDER / "staff.json").read_text(encoding="utf-8"))
    shop = json.loads((FOLDER / "shop.json").read_text(encoding="utf-8"))
    numbers = [line.customer.phone for line in inspections] + [one["phone"] for one in staff]
    numbers += [shop[name] for name in ("phone", "texts_from", "roadside_phone")]
    for number in filter(None, numbers):
        assert number.startswith("+1") and number[5:10] == "55501" and len(number) == 12, number


def test_the_town_holds_what_the_demo_shows(lines: list[InspectionLine | VisitLine]) -> None:
    cars = {line.vehicle.id: line for line in lines if isinstance(line, InspectionLine)}
    assert 75 <= len(cars) <= 90
    assert {line.vehicle.powertrain for line in cars.values()} == set(POWERTRAINS)
    assert {line.customer.language for line in cars.values()} == {"en", "es"}
    assert any(line.vehicle.run_flat for line in cars.values())
    assert any(line.vehicle.rear_brakes == "drum" for line in cars.values())
    tire_sets = {line.tires_on for line in lines if isinstance(line, InspectionLine)}
    assert tire_sets == {None, "winter", "summer"}
    assert any(line.customer.phone is None for line in cars.values())
    assert sum(line.customer.fleet for line in cars.values()) == 5
    assert any(isinstance(line, VisitLine) and line.closed_at is None for line in lines)
    people = defaultdict(set)
    for line in cars.values():
        people[line.customer.phone].add(line.customer.id)
    assert any(len(ids) > 1 for number, ids in people.items() if number)
    first_consents = [line.customer.consent for line in lines if isinstance(line, InspectionLine)]
    hows = {consent.how for consent in first_consents if consent}
    assert hows == set(HOW)


def test_something_comes_due_soon_after_the_demo_begins(inspections: list[InspectionLine]) -> None:
    last = {line.vehicle.id: line for line in inspections}
    near = {"tire_tread": 0, "brake_pad": 0, "washer_fluid": 0}
    for line in last.values():
        for code, most in (("tire_tread", 5.5), ("brake_pad", 4.0)):
            values = [reading_value(item(code), one) for one in line.readings if one.item == code]
            near[code] += min((value for value in values if value is not None), default=99) <= most
        near["washer_fluid"] += any(one.item == "washer_fluid" and one.level == "low" for one in line.readings)
    assert all(count >= 8 for count in near.values()), near


def test_visits_name_cars_that_came_before(lines: list[InspectionLine | VisitLine]) -> None:
    seen: set[str] = set()
    for line in lines:
        if isinstance(line, InspectionLine):
            seen.add(line.vehicle.id)
        else:
            assert line.vehicle in seen


def test_staff_hold_every_role() -> None:
    staff = json.loads((FOLDER / "staff.json").read_text(encoding="utf-8"))
    assert {one["role"] for one in staff} == {"technician", "advisor", "manager", "owner"}
    assert len({one["login"] for one in staff}) == len(staff)
