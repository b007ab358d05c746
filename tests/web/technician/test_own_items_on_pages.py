"""The shop's own items on the pages of everybody and over HTTP: form, result, correction, the car, a visit, the
interface for programs, files."""

from __future__ import annotations

import json
from html import unescape
from pathlib import Path
from typing import Any

import pytest
from click.testing import CliRunner
from sqlalchemy import select

from followup.cli.import_file import import_file
from followup.core.item import NOT_CHECKED
from followup.storage import inspections, people, tables
from followup.web.app import create_app
from followup.workflows.keep_own_item import approve_own_item, keep_own_item, switch_own_item
from followup.workflows.keep_tokens import new_token
from tests.core.lines import line_told
from tests.core.own_rows import CLICKS, EVERY_KIND, ROWS, reading
from tests.web.technician.conftest import Floor
from tests.web.technician.test_inspection_form import fields_on, fill, kept_of

every_row = pytest.mark.parametrize("row", EVERY_KIND, ids=lambda row: row["name"])


def add(floor: Floor, row: dict[str, Any]) -> str:
    """Add an item, with words that somebody looked at; its code."""
    store, shop_id, now = floor.house.store, floor.shop_id, floor.house.now()
    with store.read() as connection:
        ids = {row.login: row.id for row in connection.execute(select(tables.staff))}
    kept = keep_own_item(store, shop_id, row, None, 0, ids["manager"], "Manager Example", "", now)
    assert kept.code, kept.faults
    assert approve_own_item(store, shop_id, kept.code, 1, ids["owner"], "Owner Example", now) is None
    return kept.code


def told(row: dict[str, Any], code: str, **more: Any) -> dict[str, Any]:
    """An inspection with a reading of it."""
    vehicle = {"id": "V-1", "powertrain": "gasoline", "first_used_on": "2023-03-02"}
    return line_told(readings=[reading(row, code, 2, 24_000)], odometer=36_000, unit="mi", vehicle=vehicle, **more)


@every_row
def test_the_form_has_every_field_of_it_and_what_is_typed_comes_back(floor: Floor, row: dict[str, Any]) -> None:
    code, client = add(floor, row), floor.sign_in("technician")
    item = next(one for one in floor.house.shop(floor.shop_id).own_items if one.code == code)
    fields = fields_on(client)
    for position in item.positions:
        key = f"{code}.{position or 'car'}"
        for field in item.fields:
            assert f"r.{key}.{field.name}" in fields.names
            assert set(field.choices) <= set(fields.choices.get(f"r.{key}.{field.name}", field.choices))
        assert set(NOT_CHECKED) <= set(fields.choices[f"n.{key}"])
    entered = reading(row, code, 2, 24_000)
    key = f"{code}.{item.positions[0] or 'car'}"
    typed = {
        f"r.{key}.{name}": str(value) for name, value in entered.items() if name not in ("item", "position", "unit")
    }
    answer = fill(client, vehicle__id="V-9", customer__name="Noa Prell", odometer="36,000", unit="mi", **typed)
    assert answer.status_code == 303, unescape(answer.text)
    (body,) = kept_of(floor, "V-9")
    (kept,) = body["readings"]
    assert {**kept, "unit": entered.get("unit")} == {**entered, "unit": entered.get("unit")}
    result = client.get(answer.location)
    assert row["name"] in unescape(result.text) and "Correct" in result.text
    again = fields_on(client, f"{answer.location}/correct")
    assert {name: again.sent.get(name) for name in typed}.keys() == typed.keys()
    assert all(again.sent[name] not in ("", None) for name in typed)


@every_row
def test_the_advisors_pages_name_it(floor: Floor, row: dict[str, Any]) -> None:
    code = add(floor, row)
    kept = floor.house.keep_inspection(floor.shop_id, json.dumps(told(row, code)), "test")
    client = floor.sign_in("advisor")
    page = unescape(client.get(f"/advisor/cars/{kept.vehicle_id}").text)
    assert row["name"] in page and code not in page
    book = unescape(client.get(f"/advisor/cars/{kept.vehicle_id}/book").text)
    assert row["name"] in book


def test_a_program_is_told_of_it_and_may_bring_readings(floor: Floor) -> None:
    code, client = add(floor, ROWS["brake_shoe"]), create_app(floor.house).test_client()
    token = new_token(floor.house.store, floor.shop_id, "front desk", floor.house.now(), "test")
    headers = {"Authorization": f"Bearer {token}"}
    described = client.get("/api/v1/openapi.json", headers=headers).get_json()
    items = described["components"]["schemas"]["Reading"]["properties"]["item"]["description"]
    assert code in items and "tire_tread" in items
    answer = client.post("/api/v1/inspections", json=told(ROWS["brake_shoe"], code), headers=headers)
    assert (answer.status_code, answer.get_json()["outcome"]) == (201, "new")
    strange = told(ROWS["brake_shoe"], "own_x", inspection="I-2")
    answer = client.post("/api/v1/inspections", json=strange, headers=headers)
    assert answer.status_code == 422
    (fault,) = answer.get_json()["faults"]
    assert fault["field"] == "readings.0.item" and 'there is no item "own_x"' in fault["says"]
    store, now = floor.house.store, floor.house.now()
    switch_own_item(store, floor.shop_id, code, False, 1, "Manager Example", now)
    described = client.get("/api/v1/openapi.json", headers=headers).get_json()
    assert code not in described["components"]["schemas"]["Reading"]["properties"]["item"]["description"]


@pytest.mark.parametrize("kind", ["jsonl", "csv"])
def test_files_bring_readings_of_it(floor: Floor, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, kind: str) -> None:
    code = add(floor, CLICKS)
    monkeypatch.setenv("FOLLOWUP_DATABASE_URL", str(floor.house.settings.database_url))
    for name in ("FOLLOWUP_SECRET_KEY", "FOLLOWUP_LEDGER_HASH_KEY"):
        monkeypatch.setenv(name, "only-for-tests-0123456789abcdef")
    file = tmp_path / f"inspections.{kind}"
    if kind == "jsonl":
        file.write_text(json.dumps(told(CLICKS, code)), encoding="utf-8")
    else:
        file.write_text(
            "inspection,inspected_at,odometer,odometer_unit,customer.id,vehicle.id,item,value,unit\n"
            f"I-1,2026-03-02T09:10,36000,mi,C-1,V-1,{code},9.2,clicks\n",
            encoding="utf-8",
        )
    done = CliRunner().invoke(import_file, [str(file)])
    assert done.exit_code == 0, done.output
    with floor.house.store.read() as connection:
        car = people.find_vehicle(connection, floor.shop_id, "V-1")
        assert car is not None
        (row,) = inspections.bodies_of_vehicle(connection, car["id"])
    assert row["body"]["readings"] == [{"item": code, "value": 9.2, "unit": "clicks"}]


def test_what_rises_is_not_doubted_for_rising(floor: Floor) -> None:
    """A lining that grew is asked about; play that grew is what it was measured for."""
    play = {**CLICKS, "unit": "mm", "name": "Hitch gap"}
    code, rows = add(floor, play), {"2026-03-02": 3, "2026-09-02": 6}
    for on, value in rows.items():
        line = told(play, code, inspection=on, inspected_at=f"{on}T09:00") | {"odometer": 30_000 + 1_000 * value}
        line["readings"] = [{"item": code, "unit": "mm", "value": value}]
        assert floor.house.keep_inspection(floor.shop_id, json.dumps(line), "test").outcome == "new"
