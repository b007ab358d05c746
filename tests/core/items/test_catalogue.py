"""A walk over every item: nothing about one may be forgotten."""

from datetime import UTC, date, datetime
from typing import Any, get_args

import pytest

from followup.core import item as item_words
from followup.core.inspection import InspectionLine, Reading, read_line
from followup.core.inspection_check import check_reading
from followup.core.item import AsFound, Dated, DistanceWear, Interval, Item, Level, Life, Looks, Rise
from followup.core.items import ALL, BY_CODE, item, measured, present_condition
from followup.core.vehicle import POSITIONS, POWERTRAINS, Vehicle
from tests.core.lines import line_text

NOW = datetime(2026, 3, 2, 12, tzinfo=UTC)
GASOLINE = Vehicle("V-1", powertrain="gasoline", driven="front", vehicle_class="car")

every_item = pytest.mark.parametrize("one", ALL, ids=lambda one: one.code)


def test_codes_are_unique_and_found() -> None:
    assert len(BY_CODE) == len(ALL)
    assert all(item(one.code) is one for one in ALL)


def test_the_catalogue_holds_what_the_trade_looks_at() -> None:
    # The table of items that technicians take, as agreed (common practice).
    wanted = {
        "oil_service", "engine_oil", "tire_tread", "tire_age", "tire_pressure", "spare", "tpms", "tire_rotation",
        "alignment", "brake_pad", "brake_shoe", "parking_brake_shoe", "brake_rotor", "brake_fluid", "coolant",
        "washer_fluid", "battery", "wiper_blade", "cabin_filter", "engine_air_filter", "drive_belt", "hoses", "lights",
        "leaks", "suspension_play", "windshield", "exhaust", "timing_belt", "diesel_exhaust_fluid",
        "inspection_sticker", "emissions_sticker", "registration_sticker", "set_change",
    }  # fmt: skip
    assert {one.code for one in ALL} == wanted


@every_item
def test_an_item_knows_itself(one: Item) -> None:
    assert one.words and one.fields and one.models
    assert one.job.work and one.job.hours > 0
    assert set(one.positions) <= {*POSITIONS, ""}
    assert one.positions == ("",) or "" not in one.positions
    assert one.powertrains and set(one.powertrains) <= set(POWERTRAINS)
    for limit, kind in ((one.action_limit, "action"), (one.legal_limit, "legal")):
        assert limit is None or limit.kind == kind
    if one.action_limit is not None and one.legal_limit is not None:
        assert one.legal_limit.is_reached_by(one.action_limit.value, one.action_limit.unit) is False


@every_item
def test_every_field_is_a_field_of_the_contract(one: Item) -> None:
    for field in one.fields:
        assert field.name in Reading.model_fields, field.name
        assert field.words
        if field.kind in ("number", "numbers"):
            assert field.units and field.least is not None and field.most is not None
        if field.kind == "choice":
            assert field.choices
    names = {field.name for field in one.fields}
    assert not one.measured_by or one.measure is not None or names & set(one.measured_by) or one.unit is None


@every_item
def test_every_model_finds_its_field_and_its_numbers(one: Item) -> None:
    names = {field.name for field in one.fields}
    for model in one.models:
        match model:
            case DistanceWear():
                prior = model.prior(GASOLINE, one.positions[0])
                assert prior.new_value > prior.usually_replaced_at > 0
                assert prior.rate_per_1000_miles > 0
                assert one.action_limit is not None and prior.new_value > one.action_limit.value
            case Level():
                assert "level" in names and model.due_at in dict(model.amounts)
                assert (model.amount_per_day is None) != (model.amount_per_1000_miles is None)
            case Life():
                assert model.median_days > 0 and model.log_spread > 0
            case Interval():
                assert model.days or model.miles
            case Rise():
                assert model.per_year > 0 and not one.falls
            case Looks():
                assert "looks" in names
                assert {*model.due_now, *model.look_again} <= set(item_words.LOOKS)
            case AsFound():
                assert not model.choices or model.field in names
                assert set(model.due_now) <= set(model.choices)
            case Dated():
                assert model.field in names


def _sample(one: Item, name: str) -> dict[str, Any]:
    field = one.field(name)
    assert field is not None
    unit = {"unit": field.units[0]} if len(field.units) > 1 else {}
    middle = ((field.least or 0) + (field.most or 0)) / 2
    value: dict[str, Any] = {
        "number": middle, "numbers": [middle, middle], "date": "2026-02-01", "date_code": "0821", "month": "2027-01",
        "yes_no": True, "text": "x",
    }  # fmt: skip
    return {name: value[field.kind] if field.kind != "choice" else field.choices[0], **unit}


@every_item
def test_each_field_can_be_told_and_is_judged(one: Item) -> None:
    for field in one.fields:
        told = {"item": one.code, "position": one.positions[0], **_sample(one, field.name)}
        powertrain = one.powertrains[0]
        line = read_line(line_text(readings=[told], vehicle={"id": "V", "powertrain": powertrain}), NOW, BY_CODE)
        assert isinstance(line, InspectionLine)
        car = line.vehicle.vehicle()
        assert present_condition(one, line.readings[0], car, {}, date(2026, 3, 2)) in get_args(item_words.Condition)


@every_item
def test_every_number_out_of_range_is_refused(one: Item) -> None:
    for field in one.fields:
        if field.kind != "number" or field.least is None or field.most is None:
            continue
        for number in (field.least - 1, field.most + 1):
            told = {"item": one.code, "position": one.positions[0], field.name: number, "unit": field.units[0]}
            faults = check_reading("readings.0", told, None, None, None, BY_CODE)
            assert [fault.field for fault in faults] == [f"readings.0.{field.name}"]


@every_item
@pytest.mark.parametrize("why", item_words.NOT_CHECKED)
def test_every_item_may_be_not_checked(one: Item, why: str) -> None:
    told = {"item": one.code, "position": one.positions[0], "not_checked": why}
    vehicle = {"id": "V", "powertrain": one.powertrains[0]}
    line = read_line(line_text(readings=[told], vehicle=vehicle), NOW, BY_CODE)
    assert isinstance(line, InspectionLine)
    found = present_condition(one, line.readings[0], line.vehicle.vehicle(), {}, date(2026, 3, 2))
    assert found == "not checked"


@pytest.mark.parametrize(
    ("name", "words"), [("level", item_words.LEVELS), ("looks", item_words.LOOKS)], ids=["levels", "looks"]
)
def test_every_word_of_the_contract_is_taken(name: str, words: tuple[str, ...]) -> None:
    for one in (one for one in ALL if one.field(name)):
        for word in words:
            told = {"item": one.code, "position": one.positions[0], name: word}
            assert check_reading("readings.0", told, None, None, None, BY_CODE) == []
            Reading.model_validate(told)


@pytest.mark.parametrize("did", item_words.DID)
def test_every_kind_of_work_is_taken(did: str) -> None:
    work = [{"item": "washer_fluid" if did == "topped_off" else "tire_tread", "did": did}]
    assert read_line(line_text(work_done=work), NOW, BY_CODE)


@pytest.mark.parametrize("how", item_words.HOW)
def test_every_way_of_reading_is_taken(how: str) -> None:
    assert Reading.model_validate({"item": "brake_pad", "how": how}).how == how


@pytest.mark.parametrize(
    ("powertrain", "missing"),
    [
        # Common practice: what a car cannot have.
        ("electric", {"oil_service", "engine_oil", "engine_air_filter", "timing_belt", "drive_belt", "hoses",
                      "exhaust", "emissions_sticker", "diesel_exhaust_fluid"}),
        ("gasoline", {"diesel_exhaust_fluid"}),
        ("diesel", set()),
        ("hybrid", {"diesel_exhaust_fluid"}),
        ("plug_in", {"diesel_exhaust_fluid"}),
    ],
)  # fmt: skip
def test_which_items_a_powertrain_has(powertrain: str, missing: set[str]) -> None:
    car = Vehicle("V", powertrain=powertrain)
    assert {one.code for one in ALL if not one.exists_on(car)} == missing
    assert all(one.exists_on(Vehicle("V")) for one in ALL)


def _rate(code: str, position: str, driven: str | None = None, powertrain: str | None = None) -> float:
    model = next(model for model in item(code).models if isinstance(model, DistanceWear))
    return model.prior(Vehicle("V", driven=driven, powertrain=powertrain), position).rate_per_1000_miles


def test_priors_follow_the_drive() -> None:
    # Published default priors (design): pads x .4 electric and x .6 hybrid, tires x 1.2 electric; front and rear rates.
    assert _rate("tire_tread", "front_left", driven="front") == 0.21
    assert _rate("tire_tread", "rear_left", driven="rear") == 0.185
    assert _rate("tire_tread", "front_left") == 0.21
    assert _rate("tire_tread", "front_left", driven="all", powertrain="electric") == pytest.approx(0.18 * 1.2)
    assert _rate("brake_pad", "front_left", powertrain="electric") == pytest.approx(0.165 * 0.4)
    assert _rate("brake_pad", "rear_right", powertrain="plug_in") == pytest.approx(0.115 * 0.6)


def test_front_pads_last_about_48000_miles() -> None:
    # From memory (median pad life to 3 mm in the trade): 48,000 mi.
    assert (11 - 3) / _rate("brake_pad", "front_left") == pytest.approx(48, abs=1)


def test_brake_fluid_is_never_topped_off_free() -> None:
    # A low level is looked into (pads, leaks) before anything is filled (a maker's manual).
    free = {one.code for one in ALL if one.is_top_off_free}
    assert "brake_fluid" not in free
    assert {"washer_fluid", "coolant", "engine_oil"} <= free


def test_a_reading_of_words_alone_has_no_number() -> None:
    assert measured(item("coolant"), Reading(item="coolant", level="low")) is None
