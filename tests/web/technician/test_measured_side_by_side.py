"""What the readings of a car show side by side, on the technician's result page and on the advisor's page of the car.

The bounds are practice of the trade (see the tests of advisories); here only that staff read them, and when they go.
"""

from __future__ import annotations

import json
from typing import Any

import pytest

from followup.workflows import keep_visit
from tests.core.lines import line_text
from tests.web.hostile import HOSTILE, check_shown
from tests.web.technician.conftest import Floor
from tests.web.technician.test_inspection_form import fill

SIZES = {"tire_size_front": "235/50R18", "tire_size_rear": "235/50R18"}
HEADING = "Measured side by side"


def _tread(position: str, *across: float) -> dict[str, Any]:
    return {"item": "tire_tread", "position": position, "unit": "32nds", "across": list(across)}


def _pad(position: str, inner: float, outer: float) -> dict[str, Any]:
    return {"item": "brake_pad", "position": position, "unit": "mm", "inner": inner, "outer": outer}


UNEVEN = [_tread("front_left", 7, 7, 3), _tread("front_right", 7, 7, 7), _pad("rear_right", 7, 4)]


def _keep(floor: Floor, on: str = "2026-11-20", *, accepts_doubtful: bool = True, **changes: Any) -> tuple[int, int]:
    """Keep an inspection; the ids of car and inspection."""
    told = {"vehicle": {"id": "V-1", "driven": "front", **SIZES}, "readings": UNEVEN, "odometer": 41_000, "unit": "mi"}
    line = line_text(inspection=f"I {on}", inspected_at=f"{on}T09:00", **(told | changes))
    kept = floor.house.keep_inspection(floor.shop_id, line, "a test", accepts_doubtful=accepts_doubtful)
    assert kept.vehicle_id is not None, kept.faults
    assert kept.inspection_id is not None, kept.doubts
    return kept.vehicle_id, kept.inspection_id


def test_technicians_and_advisors_read_what_was_measured(floor: Floor) -> None:
    car, inspection = _keep(floor)
    technician = floor.sign_in("technician").get(f"/shop-floor/inspections/{inspection}").text
    advisor = floor.sign_in("advisor").get(f"/advisor/cars/{car}").text
    for page in (technician, advisor):
        assert HEADING in page
        said = [
            "<strong>Right rear brake pads:</strong> inner 7 mm, outer 4 mm on November 20: 3 mm apart.",
            "More than 2 mm between inner and outer pad: slides and caliper looked at.",
            "<strong>Left front tire:</strong> 7/32, 7/32 and 3/32 (outer, center, inner) on November 20: 4/32 apart, "
            "lower at the inner edge. More than 2/32 across one tire: alignment and pressure check.",
            "<strong>Front tires:</strong> left front 3/32, right front 7/32 on November 20: 4/32 apart.",
        ]
        assert [one for one in said if one not in page] == []
        # Brakes first.
        assert [page.index(one) for one in said] == sorted(page.index(one) for one in said)
    assert "front and rear changed, same side" in advisor


def test_nothing_is_said_where_nothing_lies_apart(floor: Floor) -> None:
    car, inspection = _keep(floor, readings=[_tread("front_left", 7, 7, 5), _pad("rear_right", 6, 4)])
    assert HEADING not in floor.sign_in("technician").get(f"/shop-floor/inspections/{inspection}").text
    assert HEADING not in floor.sign_in("advisor").get(f"/advisor/cars/{car}").text


def test_it_goes_when_the_work_is_done(floor: Floor) -> None:
    car, _ = _keep(floor)
    advisor, now = floor.sign_in("advisor"), floor.house.now()
    visit = keep_visit.open_visit(floor.house.store, floor.shop_id, car, 41_200, "a test", now)
    assert visit is not None
    for item, position, did, gone in (
        ("brake_pad", "rear", "serviced", "Right rear brake pads:"),
        ("alignment", "", "adjusted", "Left front tire:"),
    ):
        assert gone in advisor.get(f"/advisor/cars/{car}").text
        done = keep_visit.WorkDone(item, position, did)
        keep_visit.add_work(floor.house.store, floor.shop_id, visit, done, "a test", now)
        assert gone not in advisor.get(f"/advisor/cars/{car}").text
    assert HEADING not in advisor.get(f"/advisor/cars/{car}").text


def test_it_goes_with_the_next_reading_and_with_a_correction(floor: Floor) -> None:
    car, first = _keep(floor, "2026-11-18")
    client = floor.sign_in("technician")
    assert HEADING in client.get(f"/shop-floor/inspections/{first}").text
    _, second = _keep(floor, "2026-11-20", readings=[_tread("front_left", 7, 7, 6), _pad("rear_right", 6, 5)])
    assert HEADING not in client.get(f"/shop-floor/inspections/{second}").text
    # It was a slip of the finger, and is put right.
    _, wrong = _keep(floor, "2026-11-21", readings=[_tread("front_left", 7, 7, 1), _pad("rear_right", 6, 5)])
    assert "Left front tire:" in client.get(f"/shop-floor/inspections/{wrong}").text
    _keep(floor, "2026-11-21", readings=[_tread("front_left", 7, 7, 7), _pad("rear_right", 6, 5)])
    assert HEADING not in floor.sign_in("advisor").get(f"/advisor/cars/{car}").text


def test_the_shops_own_bounds_count_at_once(floor: Floor) -> None:
    car, _ = _keep(floor, readings=[_tread("front_left", 7, 7, 5)])
    manager, advisor = floor.sign_in("manager"), floor.sign_in("advisor")
    assert HEADING not in advisor.get(f"/advisor/cars/{car}").text
    page = manager.get("/manager/timing").text
    assert "Uneven wear and rotation" in page
    assert "2.5 as usual" in page
    from followup.workflows.change_rules import change_rules

    news = {"advisory_bounds": {"tire_across": 1.0}}
    kept = change_rules(floor.house.store, floor.shop_id, ["timing"], news, 0, "Theo", "", floor.house.now())
    assert kept.wrong == {}
    assert "More than 1/32 across one tire" in advisor.get(f"/advisor/cars/{car}").text


@pytest.mark.parametrize("text", HOSTILE)
def test_hostile_sizes_stay_text(floor: Floor, text: str) -> None:
    told = "".join(char for char in text if char.isprintable()).strip()[:100] or "x"
    sizes = {"tire_size_front": told, "tire_size_rear": "265/45R18"}
    car, _ = _keep(floor, vehicle={"id": "V-1", "driven": "rear", **sizes})
    check_shown(floor.sign_in("advisor").get(f"/advisor/cars/{car}").text, told)
    check_shown(floor.sign_in("technician").get(f"/shop-floor/cars/{car}/inspect").text, told)


def test_a_rotation_that_the_tires_do_not_allow_is_asked_about_once(floor: Floor) -> None:
    vehicle = {"id": "V-1", "driven": "rear", "tire_size_front": "235/50R18", "tire_size_rear": "265/45R18"}
    car, _ = _keep(floor, vehicle=vehicle, readings=[_tread("front_left", 7, 7, 7)])
    client, address = floor.sign_in("technician"), f"/shop-floor/cars/{car}/inspect"
    assert "left and right changed; because front (235/50R18) and rear (265/45R18) sizes differ" in (
        client.get(address).text
    )
    typed = {"r__washer_fluid__car__level": "ok"}
    answer = fill(client, address, rotation="rearward", **typed)
    assert answer.status_code == 409
    assert "sizes differ: please look again; if it is right, say so" in answer.text
    assert 'id="error-rotation"' in answer.text
    assert fill(client, address, rotation="sides", **typed).status_code == 303


def test_it_is_asked_of_a_car_that_nobody_has_seen_before(floor: Floor) -> None:
    vehicle = {"id": "V-9", "directional": True, **SIZES}
    moved = {"front_left": "rear_right", "rear_right": "front_left"}
    work = [{"item": "tire_tread", "did": "rotated", "moved": moved}]
    line = line_text(vehicle=vehicle, work_done=work, readings=[{"item": "washer_fluid", "level": "ok"}])
    kept = floor.house.keep_inspection(floor.shop_id, line, "a test")
    assert kept.outcome == "doubtful"
    assert [one.field for one in kept.doubts] == ["work_done.0.moved"] * 2
    assert json.loads(line)["vehicle"]["id"] == "V-9"
    assert floor.house.keep_inspection(floor.shop_id, line, "a test", accepts_doubtful=True).outcome == "new"
