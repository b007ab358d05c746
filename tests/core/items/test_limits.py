"""Limits and units against published rules: a change of unit flips no verdict."""

import pytest

from followup.core.inspection import Reading
from followup.core.item import Item, Limit, UnlikeUnits, converted
from followup.core.items import is_at_limit, item, reading_value


def _tread(value: float, unit: str) -> Reading:
    return Reading(item="tire_tread", position="front_left", value=value, unit=unit)


def _is_below_the_law(reading: Reading, limits: dict[str, float] | None = None) -> bool:
    return is_at_limit(item(reading.item), reading, "legal", limits or {})


@pytest.mark.parametrize(
    ("value", "unit", "is_below"),
    [
        # 49 CFR 570.9(a), a guide for States (from memory): tread at least 2/32 in, that is 1.5875 mm.
        (2, "32nds", False),
        (1, "32nds", True),
        (1.99, "32nds", True),
        (1.5875, "mm", False),
        (1.5874, "mm", True),
        (1.6, "mm", False),
    ],
)
def test_legal_tread_in_any_unit_49_cfr_570_9(value: float, unit: str, is_below: bool) -> None:
    assert _is_below_the_law(_tread(value, unit)) is is_below


@pytest.mark.parametrize(
    ("limit", "value", "unit", "is_below"),
    [
        # Road Vehicles (C&U) Regulations 1986, reg. 27(4)(f): at least 1.6 mm. 2/32 in is 1.5875 mm and is below.
        (Limit(1.6, "mm", "legal"), 1.6, "mm", False),
        (Limit(1.6, "mm", "legal"), 1.59, "mm", True),
        (Limit(1.6, "mm", "legal"), 2, "32nds", True),
        # 49 CFR 570.62(a): vehicles over 10,000 lb, 4/32 in on the front wheels.
        (Limit(4, "32nds", "legal"), 4, "32nds", False),
        (Limit(4, "32nds", "legal"), 3.175, "mm", False),
        (Limit(4, "32nds", "legal"), 3.17, "mm", True),
        # DVSA MOT inspection manual, cars, 1.1.13(a): a lining below 1.5 mm is dangerous: 1.5 passes, 1.49 does not.
        (Limit(1.5, "mm", "legal"), 1.5, "mm", False),
        (Limit(1.5, "mm", "legal"), 1.49, "mm", True),
        # 49 CFR 570.5(c) (from memory): 1/32 in of lining, that is 0.79375 mm.
        (Limit(1, "32nds", "legal"), 0.79375, "mm", False),
        (Limit(1, "32nds", "legal"), 0.79, "mm", True),
        # 49 CFR 393.47(d): commercial hydraulic brakes 1/16 in, about 1.6 mm; 2/32 in is the same length.
        (Limit(2, "32nds", "legal"), 0.0625, "in", False),
    ],
)
def test_a_legal_limit_is_kept_in_any_unit(limit: Limit, value: float, unit: str, is_below: bool) -> None:
    assert limit.is_reached_by(value, unit) is is_below


@pytest.mark.parametrize("thirty_seconds", range(1, 25))
def test_every_32nd_equals_itself_in_millimeters(thirty_seconds: int) -> None:
    # Arithmetic: an inch is 25.4 mm by definition, so both are the same length and neither flips the verdict.
    limit = Limit(thirty_seconds, "32nds", "legal")
    millimeters = thirty_seconds * 25.4 / 32
    assert not limit.is_reached_by(thirty_seconds, "32nds")
    assert not limit.is_reached_by(millimeters, "mm")
    assert limit.is_reached_by(millimeters - 0.001, "mm")


@pytest.mark.parametrize(
    ("code", "at", "above", "unit"),
    [
        ("tire_tread", 4, 5, "32nds"),  # AAA 2018: replace at 4/32 in for wet roads
        ("tire_tread", 3.175, 3.2, "mm"),
        ("brake_pad", 3, 3.1, "mm"),  # common practice
        ("brake_shoe", 2, 2.1, "mm"),  # common practice
    ],
)
def test_the_shop_recommends_at_its_limit(code: str, at: float, above: float, unit: str) -> None:
    found = item(code)
    place = found.positions[0]
    low = Reading.model_validate({"item": code, "position": place, "value": float(at), "unit": unit})
    high = Reading.model_validate({"item": code, "position": place, "value": float(above), "unit": unit})
    assert is_at_limit(found, low, "action", {})
    assert not is_at_limit(found, high, "action", {})


def test_winter_tires_are_recommended_earlier() -> None:
    # Common practice: 6/32 in for winter tires.
    six = _tread(6, "32nds")
    assert is_at_limit(item("tire_tread"), six, "action", {}, "winter")
    assert not is_at_limit(item("tire_tread"), six, "action", {}, "summer")
    assert not is_at_limit(item("tire_tread"), six, "action", {})


def test_the_shop_may_set_its_own_limit() -> None:
    assert is_at_limit(item("tire_tread"), _tread(5, "32nds"), "action", {"tire_tread": 5})


def test_the_lowest_of_several_counts() -> None:
    # Maryland COMAR 11.22.04.06: refused below 2/32 in any two major grooves, so the lowest counts and not the mean.
    across = Reading(item="tire_tread", position="front_left", unit="32nds", across=(6, 6, 1))
    assert reading_value(item("tire_tread"), across) == 1
    assert _is_below_the_law(across)
    pad = Reading(item="brake_pad", position="front_left", unit="mm", inner=2.5, outer=7.0)
    assert reading_value(item("brake_pad"), pad) == 2.5


def test_a_rotor_is_measured_against_its_own_stamp() -> None:
    # 49 CFR 570.59(b), MOT 1.1.14: the minimum is the one that is stamped on the rotor.
    worn = Reading(item="brake_rotor", position="front_left", unit="mm", value=22.8, minimum=22.4)
    good = Reading(item="brake_rotor", position="front_left", unit="mm", value=24.1, minimum=22.4)
    inches = Reading(item="brake_rotor", position="front_left", unit="in", value=0.9, minimum=0.8)
    unstamped = Reading(item="brake_rotor", position="front_left", unit="mm", value=24.1)
    assert is_at_limit(item("brake_rotor"), worn, "action", {})
    assert not is_at_limit(item("brake_rotor"), good, "action", {})
    assert reading_value(item("brake_rotor"), inches) == pytest.approx(2.54)
    assert reading_value(item("brake_rotor"), unstamped) is None


def test_brake_fluid_rises_to_its_limit() -> None:
    # Common practice: changed at 3 % of water; 49 CFR 571.116 tests "wet" fluid at 3.7 %.
    fluid = item("brake_fluid")
    assert is_at_limit(fluid, Reading(item="brake_fluid", water_percent=3.0), "action", {})
    assert not is_at_limit(fluid, Reading(item="brake_fluid", water_percent=2.9), "action", {})


def test_a_value_beside_another_in_its_own_unit() -> None:
    oil = Reading(item="oil_service", unit="mi", done_odometer=41_000, life_percent=15)
    assert reading_value(item("oil_service"), oil) == 15
    assert is_at_limit(item("oil_service"), oil, "action", {})
    coolant = Reading(item="coolant", unit="C", freeze_point=-37)
    assert reading_value(item("coolant"), coolant) == pytest.approx(-34.6)


def test_what_cannot_be_compared_is_refused() -> None:
    with pytest.raises(UnlikeUnits):
        converted(3, "mm", "psi")


def _units_of(one: Item) -> set[str]:
    return {unit for field in one.fields for unit in field.units}


def test_limits_are_in_units_that_the_item_knows() -> None:
    worked_out = {"percent", "years"}
    for code in ("tire_tread", "tire_age", "brake_pad", "brake_shoe", "brake_rotor", "battery", "coolant"):
        one = item(code)
        for limit in (one.action_limit, one.legal_limit):
            assert limit is None or limit.unit in _units_of(one) | worked_out, code
