"""Consent on the tablet and the fifteen-second form, as their pages."""

from __future__ import annotations

import json

import pytest
from flask.testing import FlaskClient

from followup.storage import consents, inspections, people
from followup.wording import consent_words
from tests.core.lines import line_told
from tests.web.conftest import token_on
from tests.web.technician.conftest import Floor

NUMBER = "+13125550147"


@pytest.fixture
def person(floor: Floor) -> int:
    """A customer with a number and a car."""
    told = line_told(
        customer={"id": "C-1", "name": "Ada Moreno", "phone": NUMBER, "language": "es"},
        vehicle={"id": "V-1", "label": "2021 gray SUV", "plate": "TEST 31"},
    )
    floor.house.keep_inspection(floor.shop_id, json.dumps(told), "test")
    with floor.house.store.read() as connection:
        row = people.find_person(connection, floor.shop_id, "C-1")
    assert row is not None
    return int(row["id"])


def covers(floor: Floor) -> frozenset[str]:
    """What the number's ledger allows."""
    with floor.house.store.read() as connection:
        return consents.standing_of(connection, floor.shop_id, NUMBER).covers


def post(client: FlaskClient, page: str, address: str, form: dict[str, str]) -> tuple[int, str]:
    """Send a form with the token that a page holds."""
    answer = client.post(address, data={**form, "csrf_token": token_on(client, page)})
    return answer.status_code, answer.text


@pytest.mark.parametrize("language", ["en", "es"])
def test_the_tablet_shows_the_exact_words_and_no_way_into_the_house(floor: Floor, person: int, language: str) -> None:
    client = floor.sign_in("advisor")
    page = client.get(f"/shop-floor/consent/{person}/1/tablet/{language}").text
    words = consent_words(language, "Elm Street Auto", "(312) 555-0101")
    for text in (words.title, words.visits, words.upkeep, words.own_number, words.notes, "(312) 555-0147"):
        assert text in page
    assert f'lang="{language}"' in page
    assert "<nav" not in page
    assert "checked" not in page, "nothing is ticked before the customer ticks it"


def test_the_customer_ticks_and_confirms(floor: Floor, person: int) -> None:
    client = floor.sign_in("advisor")
    address = f"/shop-floor/consent/{person}/1/tablet/es"
    form = {"visits": "yes", "upkeep": "yes", "version": consent_words("es", "x", "y").version}
    status, page = post(client, address, address, form)
    assert (status, covers(floor)) == (422, frozenset())
    assert 'id="error-own_number"' in page
    status, page = post(client, address, address, {**form, "own_number": "yes"})
    assert (status, covers(floor)) == (200, {"visits", "upkeep", "offers"})
    assert "Gracias" in page


def test_words_that_have_changed_since_are_read_again(floor: Floor, person: int) -> None:
    client = floor.sign_in("advisor")
    address = f"/shop-floor/consent/{person}/1/tablet/en"
    status, page = post(client, address, address, {"visits": "yes", "version": "1999-01"})
    assert (status, covers(floor)) == (422, frozenset())
    assert "The words have changed" in page


def test_spoken_consent_is_the_advisors_and_technicians_see_none_of_it(floor: Floor, person: int) -> None:
    client = floor.sign_in("advisor")
    page = f"/shop-floor/consent/{person}"
    assert post(client, page, f"{page}/1/spoken", {})[0] == 303
    assert covers(floor) == {"visits"}
    assert floor.sign_in("technician").get(page).status_code == 403
    assert client.get("/shop-floor/consent/999").status_code == 404
    assert client.get(f"/shop-floor/consent/{person}/999/tablet/en").status_code == 404
    assert client.get(f"/shop-floor/consent/{person}/1/tablet/fr").status_code == 404


def test_a_number_is_added_as_it_is_told(floor: Floor, person: int) -> None:
    client = floor.sign_in("advisor")
    page = f"/shop-floor/consent/{person}"
    assert post(client, page, f"{page}/number", {"number": "12"})[0] == 422
    assert post(client, page, f"{page}/number", {"number": "(312) 555-0148"})[0] == 303
    assert "(312) 555-0148" in client.get(page).text


def test_a_top_off_is_one_form(floor: Floor, person: int) -> None:
    client = floor.sign_in("technician")
    page = "/shop-floor/top-off"
    form = {"q": "test31", "what": "washer_fluid", "how_much": "to the mark", "odometer": "", "unit": "mi"}
    assert post(client, page, page, form)[0] == 303
    with floor.house.store.read() as connection:
        car = people.find_vehicle(connection, floor.shop_id, "V-1")
        assert car is not None
        assert [one["did"] for one in inspections.work_of_vehicle(connection, car["id"])] == ["topped_off"]


def test_where_several_cars_fit_one_is_chosen_and_nothing_typed_is_lost(floor: Floor, person: int) -> None:
    other = line_told(inspection="I-2", customer={"id": "C-2", "name": "Eli Moreno"}, vehicle={"id": "V-2"})
    second = floor.house.keep_inspection(floor.shop_id, json.dumps(other), "test").vehicle_id
    client = floor.sign_in("technician")
    page = "/shop-floor/top-off"
    form = {"q": "moreno", "what": "coolant", "how_much": "1 quart"}
    status, shown = post(client, page, page, form)
    assert status == 422
    assert "Several cars fit" in shown
    assert 'value="1 quart"' in shown
    assert 'value="coolant" checked' in shown
    assert post(client, page, page, {**form, "car": str(second)})[0] == 303
    status, shown = post(client, page, page, {**form, "q": "nobody"})
    assert status == 422
    assert "No car fits" in shown
