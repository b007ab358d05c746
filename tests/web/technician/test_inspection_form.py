"""The inspection form: made of the whole catalogue, and the same as a line of the contract, whatever is typed."""

from __future__ import annotations

import json
import re
from html.parser import HTMLParser
from pathlib import Path
from typing import Any

import pytest
from flask.testing import FlaskClient
from werkzeug.datastructures import MultiDict
from werkzeug.test import TestResponse

from followup.core.inspection import InspectionLine, content_hash, read_line
from followup.core.item import NOT_CHECKED
from followup.core.items import ALL, BY_CODE
from followup.core.vehicle import POWERTRAINS, Vehicle
from followup.storage import inspections, people
from followup.web.sheet import sheet
from followup.web.technician.entered import read_sheet
from followup.web.technician.typed import as_typed, content
from tests.core.lines import line_told
from tests.shop_of_tests import BEGIN
from tests.web.hostile import HOSTILE, check_shown
from tests.web.technician.conftest import Floor

DEMO = Path("demo_data/inspections.jsonl")
NEW = "/shop-floor/inspect"


class Fields(HTMLParser):
    """What a form would send as it stands: name to value, and every value that may be chosen."""

    def __init__(self, page: str) -> None:
        super().__init__()
        self.sent: dict[str, str] = {}
        self.choices: dict[str, list[str]] = {}
        self.names: list[str] = []
        self._select = ""
        self._is_ours = False
        self.feed(page)

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        """Note one field."""
        found = dict(attrs)
        if tag == "form":
            self._is_ours = "sheet" in (found.get("class") or "")
        if not self._is_ours:
            return
        name, value = found.get("name") or "", found.get("value") or ""
        if tag in ("input", "select") and name:
            self.names.append(name)
        if tag == "input" and found.get("type") in ("radio", "checkbox"):
            self.choices.setdefault(name, []).append(value)
            if "checked" in found:
                self.sent[name] = value
        elif tag == "input" and name:
            self.sent[name] = value
        elif tag == "select":
            self._select = name
            self.sent.setdefault(name, "")
        elif tag == "option":
            self.choices.setdefault(self._select, []).append(value)
            if "selected" in found:
                self.sent[self._select] = value


def fields_on(client: FlaskClient, address: str = NEW) -> Fields:
    """The fields of the form at that address."""
    answer = client.get(address)
    assert answer.status_code == 200
    # What could not be kept before is offered again: it is gone on with.
    if half_filled := re.search(r'href="([^"]+[?&]draft=\d+|[^"]+;draft=\d+)">Go on', answer.text):
        answer = client.get(half_filled[1].replace("&amp;", "&"))
    return Fields(answer.text)


def fill(client: FlaskClient, address: str = NEW, **typed: str) -> TestResponse:
    """Fill the form as it stands with what is typed (dots written as `__`), and send it."""
    sent = fields_on(client, address).sent
    return client.post(address, data=sent | {name.replace("__", "."): value for name, value in typed.items()})


def kept_of(floor: Floor, code: str) -> list[dict[str, Any]]:
    """The bodies that are kept of a car."""
    with floor.house.store.read() as connection:
        car = people.find_vehicle(connection, floor.shop_id, code)
        assert car is not None
        return [row["body"] for row in inspections.bodies_of_vehicle(connection, car["id"])]


@pytest.mark.parametrize("powertrain", [None, *POWERTRAINS])
def test_every_item_of_the_catalogue_has_its_fields_on_the_form(floor: Floor, powertrain: str | None) -> None:
    told = line_told(vehicle={"id": "V-1", **({"powertrain": powertrain} if powertrain else {})})
    kept = floor.house.keep_inspection(floor.shop_id, json.dumps(told), "test")
    fields = fields_on(floor.sign_in("technician"), f"/shop-floor/cars/{kept.vehicle_id}/inspect")
    for item in ALL:
        is_there = item.exists_on(Vehicle("V-1", powertrain=powertrain))
        for position in item.positions:
            key = f"{item.code}.{position or 'car'}"
            assert (f"n.{key}" in fields.names) == is_there, key
            for field in item.fields if is_there else ():
                name = f"r.{key}.{field.name}"
                if field.kind == "numbers":
                    assert {f"{name}.1", f"{name}.2", f"{name}.3"} <= set(fields.names)
                else:
                    assert name in fields.names
                if field.choices:
                    assert set(field.choices) <= set(fields.choices[name]), name
                if len(field.units) > 1:
                    family = "unit" if field.units == ("mi", "km") else f"units.{'-'.join(field.units)}"
                    assert fields.choices[family] == list(field.units)
            if is_there:
                assert set(NOT_CHECKED) <= set(fields.choices[f"n.{key}"])


def test_the_sheet_walks_around_the_car_in_two_parts() -> None:
    """The order is the trade's: left front, left rear, right rear, right front."""
    reception, lift = sheet(Vehicle("V-1"))
    assert [station.words for station in lift.stations][:4] == ["Left front", "Left rear", "Right rear", "Right front"]
    assert [station.left for station in lift.stations][:4] == [None, None, "rear_left", "front_left"]
    assert {row.item.part for row in reception.rows} == {"reception"}
    assert {row.item.part for row in lift.rows} == {"lift"}


def test_what_is_typed_is_what_the_line_would_say() -> None:
    """Every line of the demo, typed into the form, comes back with the same content."""
    lines = 0
    for text in DEMO.read_text(encoding="utf-8").splitlines():
        line = read_line(text, BEGIN, BY_CODE)
        if not isinstance(line, InspectionLine):
            continue
        told = {**line.told(), "customer": {"id": line.customer.id}}
        # A sheet for a car of which nothing is known asks for everything.
        parts = sheet(Vehicle("V-1"), line.part)
        sent = MultiDict({**as_typed(told, parts), "stay": "open" if line.visit else "day"})
        entered = read_sheet(sent, parts, line.technician or "", line.vehicle.id, "")
        assert entered.wrong == {}
        again = read_line(json.dumps({k: v for k, v in entered.line.items() if v != ""}), BEGIN, BY_CODE).told()
        assert content(again, BY_CODE) == content(told, BY_CODE), told["inspection"]
        lines += 1
    assert lines > 200


def test_a_new_car_is_kept_and_its_windows_are_shown_in_words(floor: Floor) -> None:
    client = floor.sign_in("technician")
    answer = fill(
        client, vehicle__id="V-9", vehicle__label="2019 blue pickup", customer__name="Noa Prell", odometer="48,210",
        **{"r.tire_tread.front_left.across.1": "3", "r.tire_tread.front_left.across.2": "4",
           "r.tire_tread.front_left.across.3": "5", "r.washer_fluid.car.level": "low", "topped.washer_fluid.car": "yes",
           "n.brake_shoe.rear_left": "drum", "advice.0.item": "wiper_blade", "advice.0.position": "front",
           "advice.0.decision": "later", "advice.0.until": "2027-01-15"},
    )  # fmt: skip
    assert answer.status_code == 303
    body = kept_of(floor, "V-9")[0]
    assert body["readings"] == [
        {"item": "washer_fluid", "level": "low"},
        {"item": "tire_tread", "position": "front_left", "unit": "32nds", "across": [3.0, 4.0, 5.0]},
        {"item": "brake_shoe", "position": "rear_left", "not_checked": "drum"},
    ]
    assert (body["odometer"], body["unit"], body["technician"]) == (48210.0, "mi", "Technician Example")
    assert body["work_done"] == [{"item": "washer_fluid", "did": "topped_off"}]
    assert body["recommended"] == [
        {"item": "wiper_blade", "position": "front", "decision": "later", "until": "2027-01-15"}
    ]
    page = client.get(answer.headers["Location"]).text
    assert "3/4/5 32nds" in page
    assert "due now" in page
    assert "not checked" in page
    assert not re.search(r"\d %|555-", page)


def test_faults_stand_beside_their_fields_and_nothing_typed_is_lost(floor: Floor) -> None:
    client = floor.sign_in("technician")
    typed = {
        "r.tire_tread.front_left.value": "30", "r.tire_age.front_left.date_code": "5421",
        "r.battery.car.volts": "twelve", "work.0.item": "coolant", "vehicle.label": "a <b>blue</b> car",
    }  # fmt: skip
    answer = fill(client, **typed)
    assert answer.status_code == 422
    assert Fields(answer.text).sent.items() >= typed.items()
    assert 'id="error-r.battery.car.volts"' in answer.text
    answer = fill(client, **{**typed, "r.battery.car.volts": "12.6"})
    assert answer.status_code == 422
    for name in ("r.tire_tread.front_left.value", "r.tire_age.front_left.date_code", "work.0.did"):
        assert f'id="error-{name}"' in answer.text, name
    assert "a &lt;b&gt;blue&lt;/b&gt; car" in answer.text


def test_doubts_are_asked_about_once_and_the_second_press_keeps_the_same_content(floor: Floor) -> None:
    client = floor.sign_in("technician")
    first = line_told(odometer=50_000, unit="mi")
    kept = floor.house.keep_inspection(floor.shop_id, json.dumps(first), "test")
    address = f"/shop-floor/cars/{kept.vehicle_id}/inspect"
    answer = fill(client, address, odometer="5,000", **{"r.washer_fluid.car.level": "ok"})
    assert answer.status_code == 409
    assert 'id="error-odometer"' in answer.text
    assert "It is right: keep it" in answer.text
    asked = Fields(answer.text).sent
    other = client.post(address, data=asked | {"odometer": "6,000", "accept": "yes"})
    assert other.status_code == 409, "what was changed after is asked about anew"
    assert client.post(address, data=asked | {"accept": "yes"}).status_code == 303
    assert [body["odometer"] for body in kept_of(floor, "V-1")] == [50_000.0, 5_000.0]


def test_sending_twice_keeps_one_inspection(floor: Floor) -> None:
    client = floor.sign_in("technician")
    sent = fields_on(client).sent | {"vehicle.id": "V-9", "customer.name": "Noa", "r.coolant.car.level": "ok"}
    # A new car's ids are made when it is kept, so the second time the car is known by the first.
    assert client.post(NEW, data=sent).status_code == 303
    sent["customer"] = kept_of(floor, "V-9")[0]["customer"]["id"]
    assert client.post(NEW, data=sent).status_code == 303
    assert len(kept_of(floor, "V-9")) == 1


def test_same_as_left_and_not_checked_fill_what_stays_empty(floor: Floor) -> None:
    client = floor.sign_in("technician")
    fill(
        client, f"{NEW}?part=lift", vehicle__id="V-9", same__rear_right="yes", rest__lift="no_lift",
        **{"r.tire_tread.rear_left.value": "6", "r.brake_pad.rear_right.value": "4.5", "units.32nds-mm": "mm",
           "r.brake_pad.rear_left.value": "5", "h.brake_pad.rear_left": "wheel_on"},
    )  # fmt: skip
    body = kept_of(floor, "V-9")[0]
    read = {(one["item"], one.get("position", "")): one for one in body["readings"]}
    assert body["part"] == "lift"
    assert read["tire_tread", "rear_right"] == {
        "item": "tire_tread", "position": "rear_right", "value": 6.0, "unit": "mm",
    }  # fmt: skip
    assert read["brake_pad", "rear_right"]["value"] == 4.5
    assert read["brake_pad", "rear_left"]["how"] == "wheel_on"
    assert read["leaks", ""] == {"item": "leaks", "not_checked": "no_lift"}
    assert len(read) == len(body["readings"]) == sum(len(one.positions) for one in ALL if one.part == "lift")


def test_two_people_fill_two_parts_of_one_inspection_and_the_visit_closes(floor: Floor) -> None:
    client = floor.sign_in("technician")
    fill(client, f"{NEW}?part=reception", vehicle__id="V-9", stay="open", **{"r.lights.car.found_as": "works"})
    with floor.house.store.read() as connection:
        car = people.find_vehicle(connection, floor.shop_id, "V-9")
        assert car is not None
        assert len(inspections.open_visits(connection, floor.shop_id)) == 1
    assert "lift is still to do" in client.get("/shop-floor/").text
    address = f"/shop-floor/cars/{car['id']}/inspect?part=lift"
    fill(client, address, stay="close", **{"r.leaks.car.found_as": "dry"})
    reception, lift = kept_of(floor, "V-9")
    assert (reception["inspection"], reception["visit"]) == (lift["inspection"], lift["visit"])
    with floor.house.store.read() as connection:
        assert inspections.open_visits(connection, floor.shop_id) == []


def test_a_correction_begins_with_what_was_kept(floor: Floor) -> None:
    client = floor.sign_in("technician")
    answer = fill(client, vehicle__id="V-9", odometer="12000", **{"r.brake_pad.front_left.inner": "6.5"})
    page = client.get(f"{answer.headers['Location']}/correct")
    sent = Fields(page.text).sent
    assert sent["r.brake_pad.front_left.inner"] == "6.5"
    with floor.house.store.read() as connection:
        car = people.find_vehicle(connection, floor.shop_id, "V-9")
    assert car is not None
    again = client.post(f"/shop-floor/cars/{car['id']}/inspect", data=sent | {"r.brake_pad.front_left.inner": "5.5"})
    assert again.status_code == 303
    assert [body["readings"][0]["inner"] for body in kept_of(floor, "V-9")] == [5.5]


def test_what_the_form_cannot_show_is_not_corrected_on_it(floor: Floor) -> None:
    """A correction takes the place of what was kept: a note that the form has no field for would be lost."""
    client = floor.sign_in("technician")
    for code, reading in (("I-1", {}), ("I-2", {"note": "smells of fuel"})):
        told = line_told(inspection=code, readings=[{"item": "coolant", "level": "low", **reading}])
        kept = floor.house.keep_inspection(floor.shop_id, json.dumps(told), "test")
        address = f"/shop-floor/inspections/{kept.inspection_id}"
        assert ("Correct it" in client.get(address).text) == (code == "I-1")
        assert client.get(f"{address}/correct").status_code == (200 if code == "I-1" else 404)


def test_the_last_reading_stands_beside_its_field(floor: Floor) -> None:
    told = line_told(
        readings=[{"item": "tire_tread", "position": "front", "unit": "32nds", "across": [6, 6, 5]}],
        odometer=41_230,
        unit="mi",
    )
    kept = floor.house.keep_inspection(floor.shop_id, json.dumps(told), "test")
    page = floor.sign_in("technician").get(f"/shop-floor/cars/{kept.vehicle_id}/inspect").text
    assert page.count("last time 6/6/5 32nds on Mar 2, 2026") == 2
    assert "last time 41,230 mi on Mar 2, 2026" in page


def test_a_car_that_is_read_in_kilometers_is_asked_in_kilometers(floor: Floor) -> None:
    """And tires that were read in mm in mm: the unit that somebody forgets to choose is the one that was meant."""
    readings = [{"item": "tire_tread", "position": "front_left", "unit": "mm", "value": 5.1}]
    told = line_told(odometer=80_000, unit="km", readings=readings)
    kept = floor.house.keep_inspection(floor.shop_id, json.dumps(told), "test")
    answer = floor.sign_in("technician").get(f"/shop-floor/cars/{kept.vehicle_id}/inspect")
    sent = Fields(answer.text).sent
    assert (sent["unit"], sent["units.32nds-mm"]) == ("km", "mm")
    assert "last time 80,000 km on Mar 2, 2026" in answer.text


@pytest.mark.parametrize("name", ["made_up", "r.tire_tread.front_left.life", "customer.consent", "work.99.item"])
def test_a_field_that_the_page_does_not_have_is_refused(floor: Floor, name: str) -> None:
    answer = fill(floor.sign_in("technician"), **{name: "1", "r.coolant.car.level": "ok"})
    assert answer.status_code == 422
    assert "do not fit together" in answer.text


def test_technicians_neither_see_nor_enter_numbers(floor: Floor) -> None:
    client, advisor = floor.sign_in("technician"), floor.sign_in("advisor")
    told = line_told(customer={"id": "C-1", "name": "Ada Moreno", "phone": "+13125550147"})
    kept = floor.house.keep_inspection(floor.shop_id, json.dumps(told), "test")
    for address in (f"/shop-floor/cars/{kept.vehicle_id}/inspect", f"/shop-floor/inspections/{kept.inspection_id}",
                    "/shop-floor/?q=ada", "/shop-floor/top-off"):  # fmt: skip
        page = client.get(address).text
        assert "555" not in page, address
    assert "customer.phone" not in fields_on(client).names
    assert fill(client, **{"customer.phone": "+13125550148", "r.coolant.car.level": "ok"}).status_code == 422
    answer = fill(advisor, vehicle__id="V-9", **{"customer.phone": "+13125550148", "r.coolant.car.level": "ok"})
    assert answer.status_code == 303


@pytest.mark.parametrize("words", ["TEST 31", "test31", "moreno", "gray suv", "V-31"])
def test_a_car_is_found_by_plate_name_or_label(floor: Floor, words: str) -> None:
    told = line_told(
        customer={"id": "C-1", "name": "Ada Moreno"},
        vehicle={"id": "V-31", "label": "2021 gray SUV", "plate": "TEST 31"},
    )
    floor.house.keep_inspection(floor.shop_id, json.dumps(told), "test")
    client = floor.sign_in("technician")
    assert "2021 gray SUV" in client.get("/shop-floor/", query_string={"q": words}).text
    assert "2021 gray SUV" not in client.get("/shop-floor/", query_string={"q": f"{words} x"}).text


@pytest.mark.parametrize("hostile", HOSTILE)
def test_texts_from_outside_do_nothing_on_these_pages(floor: Floor, hostile: str) -> None:
    hostile = hostile[:110]
    told = line_told(customer={"id": "C-1", "name": hostile}, vehicle={"id": "V-1", "label": hostile})
    kept = floor.house.keep_inspection(floor.shop_id, json.dumps(told), "test")
    client = floor.sign_in("advisor")
    for address in (f"/shop-floor/cars/{kept.vehicle_id}/inspect", f"/shop-floor/inspections/{kept.inspection_id}",
                    "/shop-floor/?q=V-1", f"/shop-floor/top-off?car={kept.vehicle_id}"):  # fmt: skip
        check_shown(client.get(address).text, hostile)


def test_nothing_measured_is_no_inspection(floor: Floor) -> None:
    answer = fill(floor.sign_in("technician"), vehicle__id="V-9")
    assert answer.status_code == 422
    assert "Nothing was measured yet" in answer.text


def test_another_shops_car_is_not_there(floor: Floor) -> None:
    client = floor.sign_in("technician")
    assert client.get("/shop-floor/cars/999/inspect").status_code == 404
    assert client.get("/shop-floor/inspections/999").status_code == 404


def test_content_is_told_apart_by_what_it_says() -> None:
    """The form's line and the file's line with the same content are one inspection."""
    told = line_told(readings=[{"item": "tire_tread", "position": "front_left", "unit": "32nds", "value": 6}])
    parts = sheet(Vehicle("V-1"))
    sent = MultiDict({**as_typed(told, parts), "customer": "C-1", "stay": "day"})
    entered = read_sheet(sent, parts, "", "V-1", "")
    again = {name: value for name, value in entered.line.items() if value}
    typed, filed = (read_line(json.dumps(one), BEGIN, BY_CODE) for one in (again, told))
    assert content_hash(typed) == content_hash(filed)
