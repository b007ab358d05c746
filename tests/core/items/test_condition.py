"""The condition that a reading shows by itself, in words."""

from datetime import date
from typing import Any

import pytest

from followup.core.inspection import Reading
from followup.core.items import item, present_condition
from followup.core.vehicle import Vehicle

ON = date(2026, 3, 2)


def _condition(**told: Any) -> str:
    reading = Reading.model_validate(told)
    return present_condition(item(reading.item), reading, Vehicle("V"), {}, ON)


@pytest.mark.parametrize(
    ("told", "condition"),
    [
        ({"item": "tire_tread", "value": 4.0, "unit": "32nds"}, "due now"),
        ({"item": "tire_tread", "value": 5.0, "unit": "32nds"}, "fine"),
        ({"item": "tire_tread", "value": 8.0, "unit": "32nds", "looks": "inner_edge"}, "keep an eye on it"),
        ({"item": "tire_tread", "value": 8.0, "unit": "32nds", "looks": "cracked"}, "due now"),
        ({"item": "brake_rotor", "looks": "rust_lip"}, "fine"),
        ({"item": "brake_rotor", "looks": "scored"}, "keep an eye on it"),
        ({"item": "wiper_blade", "looks": "streaks"}, "due now"),
        ({"item": "washer_fluid", "level": "low"}, "due now"),
        ({"item": "washer_fluid", "level": "ok"}, "fine"),
        ({"item": "engine_oil", "level": "not_readable"}, "not checked"),
        ({"item": "battery", "cca": 480.0, "cca_rated": 640.0}, "due now"),  # 75 % of rated: common practice
        ({"item": "battery", "cca": 500.0, "cca_rated": 640.0}, "keep an eye on it"),
        ({"item": "battery", "cca": 540.0, "cca_rated": 640.0}, "fine"),
        ({"item": "battery", "verdict": "replace", "cca": 600.0, "cca_rated": 640.0}, "due now"),
        ({"item": "brake_fluid", "copper_ppm": 201.0}, "due now"),  # an association's guideline: above 200 ppm
        ({"item": "brake_fluid", "copper_ppm": 200.0}, "fine"),
        ({"item": "tire_pressure", "unit": "psi", "found": 31.0, "placard": 35.0}, "due now"),  # 10 % under
        ({"item": "tire_pressure", "unit": "psi", "found": 32.0, "placard": 35.0}, "fine"),
        ({"item": "lights", "found_as": "does_not_work"}, "due now"),
        ({"item": "windshield", "found_as": "chip"}, "keep an eye on it"),
        ({"item": "tpms", "lamp": "flashing"}, "due now"),
        ({"item": "oil_service", "life_percent": 15.0}, "due now"),
        ({"item": "oil_service", "life_percent": 16.0}, "fine"),
        ({"item": "coolant", "unit": "F", "freeze_point": -34.0}, "fine"),  # half and half (common practice)
        ({"item": "coolant", "unit": "F", "freeze_point": 0.0}, "due now"),
    ],
)  # fmt: skip
def test_a_reading_in_words(told: dict[str, Any], condition: str) -> None:
    assert _condition(**told) == condition


@pytest.mark.parametrize(("month", "condition"), [("2026-02", "due now"), ("2026-03", "due soon"), ("2026-06", "fine")])
def test_a_sticker_counts_to_the_end_of_its_month(month: str, condition: str) -> None:
    # Common practice: the sticker's month counts to its last day; told 45 days before.
    assert _condition(item="inspection_sticker", good_until=month) == condition


@pytest.mark.parametrize(("code", "condition"), [("1020", "fine"), ("0920", "due now"), ("319", "due now")])
def test_tires_are_looked_at_from_six_years(code: str, condition: str) -> None:
    # Owners' manuals: six years. Week 9 of 2020 began on Sunday 2020-03-01, week 10 on 2020-03-08.
    assert _condition(item="tire_age", position="front_left", date_code=code) == condition


def test_nothing_is_fine_that_was_not_looked_at() -> None:
    assert _condition(item="brake_pad", position="front_left", not_checked="no_time") == "not checked"
    assert _condition(item="wiper_blade", position="front", changed_on=date(2026, 1, 1)) == "not checked"
    electric = Vehicle("V", powertrain="electric")
    reading = Reading(item="engine_oil", level="low")
    assert present_condition(item("engine_oil"), reading, electric, {}, ON) == "not checked"
