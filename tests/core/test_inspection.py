"""Reading a line of the inspection contract: what is taken, and every fault told at once with what to do."""

import json
from datetime import UTC, datetime
from typing import Any

import pytest

from followup.core.inspection import BadLine, InspectionLine, VisitLine, content_hash, read_line
from followup.core.items import BY_CODE
from followup.core.visit import Work
from tests.core.lines import line_text, line_told

NOW = datetime(2026, 11, 23, 9, 0, tzinfo=UTC)


def _read(**changes: Any) -> InspectionLine:
    line = read_line(line_text(**changes), NOW, BY_CODE)
    assert isinstance(line, InspectionLine)
    return line


def _faults(text: str) -> dict[str, str]:
    with pytest.raises(BadLine) as refused:
        read_line(text, NOW, BY_CODE)
    return {fault.field: fault.says for fault in refused.value.faults}


def _faults_of(**changes: Any) -> dict[str, str]:
    return _faults(line_text(**changes))


FULL = {
    "inspection": "I-900", "inspected_at": "2026-03-02T09:10", "odometer": 41230, "unit": "mi", "technician": "R. Tam",
    "customer": {"id": "C-17", "name": "Ada Quill", "phone": "+13125550147", "language": "en",
                 "consent": {"covers": ["visits", "upkeep"], "given_on": "2026-03-02", "how": "signed_paper",
                             "words": "...", "words_version": "2026-01", "language": "en",
                             "number_is_own_and_adult": True}},
    "vehicle": {"id": "V-31", "label": "2021 gray compact SUV", "class": "suv", "driven": "all",
                "first_used_on": "2021-05-01", "run_flat": True, "oil_check": "display", "powertrain": "gasoline",
                "vin": None, "plate": "TEST 31", "rear_brakes": "disc", "parking_brake": "electric",
                "tire_size_front": "235/50R18", "tire_size_rear": "235/50R18", "directional": False},
    "tire_set": "winter",
    "readings": [
        {"item": "tire_tread", "position": "front_left", "unit": "32nds", "across": [6, 6, 5]},
        {"item": "tire_tread", "position": "rear_left", "unit": "mm", "value": 5.1},
        {"item": "tire_age", "position": "front_left", "date_code": "0821"},
        {"item": "brake_pad", "position": "front_left", "unit": "mm", "inner": 6.5, "outer": 7.0, "how": "wheel_off"},
        {"item": "brake_shoe", "position": "rear", "not_checked": "drum"},
        {"item": "brake_rotor", "position": "front_left", "unit": "mm", "value": 24.1, "minimum": 22.4,
         "looks": "even"},
        {"item": "brake_fluid", "water_percent": 1.8, "changed_on": "2024-06-01"},
        {"item": "engine_oil", "level": "not_readable"}, {"item": "coolant", "level": "low"},
        {"item": "battery", "volts": 12.5, "cca": 540, "cca_rated": 640},
        {"item": "wiper_blade", "position": "front", "looks": "streaks"}],
    "work_done": [{"item": "coolant", "did": "topped_off"}],
    "recommended": [{"item": "wiper_blade", "position": "front", "decision": "later", "until": "2026-05-01"}],
    "visit": "RO-88121",
}  # fmt: skip


def test_a_full_line_of_the_contract_is_taken() -> None:
    line = read_line(json.dumps(FULL), NOW, BY_CODE)
    assert isinstance(line, InspectionLine)
    assert line.readings[0].across == (6, 6, 5)
    assert line.vehicle.vehicle().vehicle_class == "suv"
    assert (line.odometer_miles, line.tires_on) == (41230, "winter")


def test_the_least_that_is_required() -> None:
    line = _read()
    assert (line.inspection, line.odometer_miles, line.visit) == ("I-1", None, None)


@pytest.mark.parametrize("name", ["inspected_at", "customer", "vehicle", "readings"])
def test_what_is_required_is_missed(name: str) -> None:
    assert name in _faults_of(**{name: None})


def test_a_visit_is_opened_and_closed() -> None:
    opened = read_line('{"visit":"RO-1","vehicle":"V-1","opened_at":"2026-03-02T09:00","closed_at":null}', NOW, BY_CODE)
    assert isinstance(opened, VisitLine)
    assert opened.closed_at is None
    assert "opened_at" in _faults('{"visit":"RO-1","vehicle":"V-1"}')
    late = '{"visit":"RO-1","vehicle":"V-1","opened_at":"2026-03-02T09:00","closed_at":"2026-03-01T09:00"}'
    assert "closed_at" in _faults(late)


def test_kilometers_are_turned_into_miles() -> None:
    # The international mile is 1.609344 km by definition.
    assert _read(odometer=160934.4, unit="km").odometer_miles == pytest.approx(100_000)


def test_all_faults_are_told_at_once() -> None:
    told = line_told(
        inspected_at="2026-03-02T09:10Z",
        odometer="41,230",
        customer={"id": "C", "phone": "312 555 0147"},
        vehicle={"id": "V", "powertrain": "electric", "clas": "suv"},
        readings=[
            {"item": "engine_oil", "level": "ok"},
            {"item": "tyre_tread", "value": 3},
            {"item": "tire_tread", "position": "front_left", "value": 30, "unit": "32nds"},
            {"item": "tire_age", "position": "spare", "date_code": "5421"},
            {"item": "brake_pad", "position": "front_left", "value": 40, "unit": "percent"},
        ],
    )
    faults = _faults(json.dumps(told))
    assert set(faults) == {
        "inspected_at", "odometer", "customer.phone", "vehicle.clas", "readings.0.item", "readings.1.item",
        "readings.2.value", "readings.3.date_code", "readings.4.unit",
    }  # fmt: skip
    assert "did you mean class" in faults["vehicle.clas"]
    assert "did you mean tire_tread" in faults["readings.1.item"]
    assert "enter mm" in faults["readings.4.unit"]
    assert "electric car" in faults["readings.0.item"]


@pytest.mark.parametrize(
    ("changes", "field"),
    [
        ({"inspected_at": "2026-11-23T09:30"}, "inspected_at"),
        ({"inspected_at": "2026-13-01T09:30"}, "inspected_at"),
        ({"inspected_at": "0026-03-02T09:10"}, "inspected_at"),
        ({"odometer": 41230}, "unit"),
        ({"odometer": -1, "unit": "mi"}, "odometer"),
        ({"odometer": True, "unit": "mi"}, "odometer"),
        ({"inspection": " "}, "inspection"),
        ({"inspection": "a\u0000b"}, "inspection"),
        ({"readings": []}, "readings"),
        ({"vehicle": {"id": "V", "first_used_on": "2027-01-01"}}, "vehicle.first_used_on"),
        ({"customer": {"id": "C", "consent": {"covers": ["visits"], "given_on": "2026-01-01", "how": "tablet"}}},
         "customer.phone"),
        ({"customer": {"id": "C", "phone": "+13125550147",
                       "consent": {"covers": [], "given_on": "2026-01-01", "how": "tablet"}}},
         "customer.consent.covers"),
        ({"tire_set": "studded"}, "tire_set"),
        ({"work_done": [{"item": "brake_fluid", "did": "topped_off"}]}, "work_done.0.did"),
        ({"work_done": [{"item": "coolant", "did": "flushed"}]}, "work_done.0.did"),
        ({"work_done": [{"item": "coolant", "did": "serviced", "on": "2026-03-03"}]}, "work_done.0.on"),
        ({"work_done": [{"item": "coolant", "did": "serviced", "odometer": 5}]}, "work_done.0.unit"),
        ({"work_done": [{"item": "tire_tread", "did": "rotated", "moved": {"front_left": "roof"}}]},
         "work_done.0.moved"),
        ({"recommended": [{"item": "nothing", "decision": "later"}]}, "recommended.0.item"),
    ],
)  # fmt: skip
def test_what_is_impossible_about_the_line(changes: dict[str, Any], field: str) -> None:
    assert list(_faults_of(**changes)) == [field]


@pytest.mark.parametrize(
    ("reading", "field"),
    [
        ({"item": "tire_tread", "position": "front_left", "value": 30, "unit": "32nds"}, "value"),
        ({"item": "tire_tread", "position": "front_left", "value": 24, "unit": "mm"}, "value"),
        ({"item": "tire_tread", "position": "front_left", "across": [6, 31], "unit": "32nds"}, "across"),
        ({"item": "tire_tread", "position": "front_left", "value": 6}, "unit"),
        ({"item": "tire_tread", "position": "front_left", "value": 6, "unit": "psi"}, "unit"),
        ({"item": "tire_tread", "value": 6, "unit": "mm"}, "position"),
        ({"item": "brake_fluid", "position": "front", "water_percent": 2}, "position"),
        ({"item": "brake_pad", "position": "front_left", "unit": "%", "value": 3}, "unit"),
        ({"item": "brake_pad", "position": "front_left", "life_percent": 40}, "life_percent"),
        ({"item": "brake_pad", "position": "front_left", "pad_percent": 40}, "pad_percent"),
        ({"item": "tire_age", "position": "front_left", "date_code": "0010"}, "date_code"),
        ({"item": "tire_age", "position": "front_left", "date_code": "1026"}, "date_code"),
        ({"item": "washer_fluid", "level": "half"}, "level"),
        ({"item": "washer_fluid", "volts": 12}, "volts"),
        ({"item": "brake_fluid", "changed_on": "2026-03-03"}, "changed_on"),
        ({"item": "spare", "kind": "doughnut"}, "kind"),
        ({"item": "brake_pad", "position": "front_left", "unit": "mm", "value": 5, "not_checked": "no_time"},
         "not_checked"),
        ({"item": "inspection_sticker", "good_until": "2026-13"}, "good_until"),
    ],
)  # fmt: skip
def test_what_is_impossible_about_a_reading(reading: dict[str, Any], field: str) -> None:
    assert list(_faults_of(readings=[reading])) == [f"readings.0.{field}"]


def test_an_empty_reading_and_one_told_twice() -> None:
    assert list(_faults_of(readings=[{"item": "battery"}])) == ["readings.0"]
    level = {"item": "coolant", "level": "ok"}
    assert list(_faults_of(readings=[level, level])) == ["readings.1"]
    assert _read(readings=[level, {"item": "coolant", "looks": "even"}])


@pytest.mark.parametrize(
    "text",
    [
        "",
        "{",
        "[]",
        "null",
        "[" * 5000,
        '{"inspection": NaN}',
        '{"inspection":"a","inspection":"b"}',
        '{"a":"\\ud800"}',
    ],
)
def test_what_is_no_line_at_all(text: str) -> None:
    assert _faults(text)


def test_a_key_that_stands_twice() -> None:
    twice = line_text(odometer=41230, unit="mi").replace('"odometer": 41230', '"odometer": 41230, "odometer": 14230')
    assert "stands twice" in _faults(twice)[""]


def test_a_clock_that_runs_a_little_ahead_is_borne() -> None:
    assert _read(inspected_at="2026-11-23T09:09")


def test_a_shops_own_item_is_a_row_of_the_catalogue() -> None:
    line = line_text(readings=[{"item": "roof_rack", "level": "ok"}])
    assert read_line(line, NOW, {**BY_CODE, "roof_rack": BY_CODE["washer_fluid"]})
    assert list(_faults(line)) == ["readings.0.item"]


def test_the_hash_knows_content_not_form() -> None:
    one = content_hash(_read(odometer=41230, unit="mi"))
    assert one == content_hash(_read(unit="mi", odometer=41230.0))
    spaced = json.dumps(line_told(odometer=41230, unit="mi", visit=None) | {"part": None}, indent=1)
    assert one == content_hash(read_line(spaced, NOW, BY_CODE))
    assert one != content_hash(_read(odometer=41231, unit="mi"))


def test_what_was_told_reads_back_the_same() -> None:
    line = read_line(json.dumps(FULL), NOW, BY_CODE)
    again = read_line(json.dumps(line.told()), NOW, BY_CODE)
    assert again == line
    assert content_hash(again) == content_hash(line)


def test_work_carries_its_own_day_and_odometer() -> None:
    line = _read(
        odometer=41230,
        unit="mi",
        work_done=[
            {"item": "oil_service", "did": "serviced"},
            {"item": "tire_tread", "position": "front", "did": "replaced", "on": "2026-01-05", "odometer": 40000},
            {"item": "battery", "did": "replaced", "on": "2025-01-05"},
        ],
    )
    on = line.inspected_at.date()
    here, there, then = (one.work(on, line.odometer_miles, line.unit) for one in line.work_done)
    assert here == Work("oil_service", "", "serviced", on, 41230)
    assert (there.on.isoformat(), there.odometer_miles) == ("2026-01-05", 40000)
    assert then.odometer_miles is None  # Nobody told what the odometer showed on that day.
