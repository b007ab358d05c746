"""Inspections as CSV become the same lines as JSON."""

import csv
import json
from datetime import UTC, datetime

import pytest

from followup.core.inspection import BadLine, InspectionLine, Reading, VisitLine, content_hash, read_line
from followup.core.inspection_csv import csv_columns, csv_lines, csv_template
from followup.core.items import BY_CODE

NOW = datetime(2026, 11, 23, 9, 0, tzinfo=UTC)
FILE = """inspection,inspected_at,odometer,unit,customer.id,customer.phone,customer.consent.covers,customer.consent.how,\
customer.consent.given_on,vehicle.id,vehicle.class,vehicle.run_flat,item,position,unit,value,across,level,did,on,decision
I-1,2026-03-02T09:10,41230,mi,C-1,+13125550147,visits/upkeep,tablet,2026-03-02,V-1,suv,yes,tire_tread,front_left,32nds,,6/6/5,,,,
I-2,2026-03-02T10:10,9000,km,C-2,,,,,V-2,,,coolant,,,,,low,,,
I-1,,,,,,,,,,,,brake_pad,front_left,mm,6.5,,,,,
I-1,,,,,,,,,,,,washer_fluid,,,,,,topped_off,,
I-1,,40000,,,,,,,,,,oil_service,,,,,,serviced,2026-01-01,
I-1,,,,,,,,,,,,wiper_blade,front,,,,,,,later
"""  # noqa: E501  # a row of CSV is one line
AS_JSON = {
    "inspection": "I-1", "inspected_at": "2026-03-02T09:10", "odometer": 41230, "unit": "mi",
    "customer": {"id": "C-1", "phone": "+13125550147",
                 "consent": {"covers": ["visits", "upkeep"], "how": "tablet", "given_on": "2026-03-02"}},
    "vehicle": {"id": "V-1", "class": "suv", "run_flat": True},
    "readings": [{"item": "tire_tread", "position": "front_left", "unit": "32nds", "across": [6, 6, 5]},
                 {"item": "brake_pad", "position": "front_left", "unit": "mm", "value": 6.5}],
    "work_done": [{"item": "washer_fluid", "did": "topped_off"},
                  {"item": "oil_service", "did": "serviced", "on": "2026-01-01", "odometer": 40000}],
    "recommended": [{"item": "wiper_blade", "position": "front", "decision": "later"}],
}  # fmt: skip


def _lines(text: str) -> list[InspectionLine | VisitLine]:
    return [read_line(line.text, NOW, BY_CODE) for line in csv_lines(text)]


def test_rows_of_one_inspection_become_one_line() -> None:
    first, second = _lines(FILE)
    assert content_hash(first) == content_hash(read_line(json.dumps(AS_JSON), NOW, BY_CODE))
    assert isinstance(second, InspectionLine)
    assert (second.unit, second.readings[0].level) == ("km", "low")
    assert [line.row for line in csv_lines(FILE)] == [2, 3]


@pytest.mark.parametrize("delimiter", [";", "\t"])
def test_other_delimiters_and_a_byte_order_mark(delimiter: str) -> None:
    other = "\ufeff" + FILE.replace(",", delimiter).replace("\n", "\r\n")
    assert [content_hash(line) for line in _lines(other)] == [content_hash(line) for line in _lines(FILE)]


def test_the_unit_of_the_odometer_may_have_its_own_column() -> None:
    text = "inspection,inspected_at,odometer,odometer_unit,customer.id,vehicle.id,item,position,unit,value\n"
    text += "I-1,2026-03-02T09:10,41230,mi,C-1,V-1,brake_pad,front_left,mm,6.5\n"
    (line,) = _lines(text)
    assert isinstance(line, InspectionLine)
    assert (line.unit, line.readings[0].unit) == ("mi", "mm")


def test_two_parts_of_an_inspection_are_two_lines() -> None:
    text = "inspection,part,inspected_at,customer.id,vehicle.id,item,level,looks,position\n"
    text += "I-1,reception,2026-03-02T09:10,C-1,V-1,coolant,ok,,\nI-1,,,,,washer_fluid,low,,\n"
    text += "I-1,lift,2026-03-02T09:40,C-1,V-1,brake_rotor,,even,front_left\n"
    reception, lift = _lines(text)
    assert isinstance(reception, InspectionLine) and isinstance(lift, InspectionLine)
    assert [one.item for one in reception.readings] == ["coolant", "washer_fluid"]
    assert lift.part == "lift"


def test_visits_come_as_rows_too() -> None:
    text = "visit,vehicle.id,opened_at,closed_at,item,did\n"
    text += "RO-1,V-1,2026-03-02T09:00,2026-03-02T11:00,oil_service,serviced\nRO-1,,,,coolant,topped_off\n"
    (line,) = _lines(text)
    assert isinstance(line, VisitLine)
    assert (line.vehicle, [one.item for one in line.work_done]) == ("V-1", ["oil_service", "coolant"])


@pytest.mark.parametrize(
    ("row", "field"),
    [
        ("I-1,2026-03-02T09:10,41x30,mi,C-1,V-1,coolant,ok", "odometer"),
        ("I-1,2026-03-02T09:10,nan,mi,C-1,V-1,coolant,ok", "odometer"),
        ("I-1,2026-03-02T09:10,41230,mi,C-1,V-1,coolant,half", "readings.0.level"),
        ("I-1,2026-03-02T09:10,41230,mi,C-1,V-1,coolant,ok\nI-1,2026-03-03T09:10,,,,,battery,", "inspected_at"),
    ],
)
def test_faults_are_told_by_field(row: str, field: str) -> None:
    head = "inspection,inspected_at,odometer,unit,customer.id,vehicle.id,item,level\n"
    with pytest.raises(BadLine) as refused:
        _lines(head + row + "\n")
    assert field in [fault.field for fault in refused.value.faults]


def test_the_template_holds_every_column() -> None:
    (header,) = csv.reader([csv_template()])
    assert tuple(header) == csv_columns()
    assert len(set(header)) == len(header)
    assert set(Reading.model_fields) <= set(header)
    assert {"customer.phone", "vehicle.class", "customer.consent.words", "did", "decision", "across"} <= set(header)
    assert list(csv_lines(csv_template())) == []
