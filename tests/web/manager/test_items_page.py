"""The manager's pages of the shop's own items: a preview before anything is kept, all errors at once, nothing lost,
a second look at the words, off and on, the way back; and what the other pages make of an item then."""

from __future__ import annotations

import json
import re
from collections.abc import Callable
from html import unescape
from typing import Any

import pytest
from flask.testing import FlaskClient
from sqlalchemy import func, select

from followup.core.own_item_check import read_own_item
from followup.storage import tables
from followup.web.manager.own_item_form import NAMES, row_of, shown
from tests.core.own_rows import EVERY_KIND, ROWS
from tests.web import hostile
from tests.web.conftest import token_on
from tests.web.house import TestHouse

SignIn = Callable[[str], FlaskClient]
every_row = pytest.mark.parametrize("row", EVERY_KIND, ids=lambda row: row["name"])
ADDRESS = "/manager/items/own_hitch_shoe"


def sent(row: dict[str, Any], **changes: Any) -> dict[str, Any]:
    """What a browser sends of the form that holds this row."""
    given = {**shown(read_own_item(row)), **changes}
    return {name: "yes" if value is True else value for name, value in given.items() if value is not False}


def press(client: FlaskClient, address: str, form: dict[str, Any], on: str = "/manager/items/new") -> Any:
    """Send a form with the token of a page."""
    return client.post(address, data={**form, "csrf_token": token_on(client, on)})


def add(client: FlaskClient, row: dict[str, Any]) -> str:
    """Add an item; the address of its page."""
    answer = press(client, "/manager/items/new", sent(row, does="keep"))
    assert answer.status_code == 303, unescape(re.sub(r"<[^>]+>", " ", answer.text))
    return str(answer.location)


def versions(house: TestHouse) -> int:
    """How many versions are kept."""
    with house.store.read() as connection:
        return int(connection.execute(select(func.count()).select_from(tables.own_items)).scalar_one())


@every_row
def test_the_form_holds_every_row_and_gives_it_back(row: dict[str, Any]) -> None:
    from werkzeug.datastructures import MultiDict

    own = read_own_item(row)
    form = MultiDict(
        (name, one) for name, value in sent(row).items() for one in (value if isinstance(value, list) else [value])
    )
    assert set(form) <= NAMES
    again = read_own_item({**row_of(form), "is_in_use": True})
    # What is typed is rounded as it is shown.
    assert json.loads(json.dumps(again.row(), default=str)).keys() == own.row().keys()
    for name, value in own.row().items():
        assert again.row()[name] == (pytest.approx(value, rel=1e-4) if isinstance(value, float) else value), name


@every_row
def test_a_preview_shows_form_texts_and_forecast_and_keeps_nothing(
    house: TestHouse, signed_in: SignIn, row: dict[str, Any]
) -> None:
    page = press(signed_in("manager"), "/manager/items/new", sent(row, does="look"))
    assert page.status_code == 200 and versions(house) == 0
    text = unescape(page.text)
    assert "On the inspection form" in text and "What a customer reads, Spanish" in text
    assert ("hitch shoe" in text) and ("zapata" in text)
    assert re.search(r"sent in \d parts?", text)
    assert ("What the forecast says" in text) == (row["kind"] != "found")
    assert "Elm Street Auto: " in text


def test_everything_that_is_wrong_is_told_at_once_and_nothing_typed_is_lost(
    house: TestHouse, signed_in: SignIn
) -> None:
    form = sent(
        ROWS["brake_shoe"], does="keep", hours="an hour", least="12", most="0", name="", because="for the fleet"
    )
    form |= {"en.why": "It is urgent {now}.", "per_1000_miles": "0,035", "months": "7"}
    page = press(signed_in("manager"), "/manager/items/new", form)
    assert page.status_code == 422 and versions(house) == 0
    for field in ("hours", "most", "name", "en.why"):
        assert f'id="error-{field}"' in page.text, field
    # The kind that is not chosen keeps what was typed for it, in case it is chosen after all.
    for typed in ("an hour", "for the fleet", "It is urgent {now}.", "0,035", 'value="7"'):
        assert typed in unescape(page.text), typed


def test_words_and_numbers_are_told_in_one_go(house: TestHouse, signed_in: SignIn) -> None:
    form = sent(ROWS["brake_shoe"], does="look", hours="x", most="1") | {"en.why": "Worn ones are dangerous."}
    page = press(signed_in("manager"), "/manager/items/new", form)
    assert page.status_code == 422
    for told in ("Labor hours: give a number", "Recommend work at: lies outside", "“dangerous” may not be said"):
        assert told in unescape(page.text), told


def test_what_no_text_says_is_refused_in_the_customers_words_too(house: TestHouse, signed_in: SignIn) -> None:
    manager = signed_in("manager")
    for words in ("Worn ones are dangerous.", "It will last.", "See https://elsewhere.example/now", "Only $40."):
        page = press(manager, "/manager/items/new", sent(ROWS["brake_shoe"], does="keep") | {"en.why": words})
        assert page.status_code == 422 and versions(house) == 0, words
        assert 'id="field-en"' in page.text


def test_a_second_person_looks_at_the_words_and_a_change_of_words_waits_again(
    house: TestHouse, signed_in: SignIn
) -> None:
    manager, advisor = signed_in("manager"), signed_in("advisor")
    assert add(manager, ROWS["brake_shoe"]).endswith(ADDRESS)
    assert "No text names it yet" in manager.get(ADDRESS).text
    press(manager, f"{ADDRESS}/versions/1/look", {}, ADDRESS)
    assert "No text names it yet" in manager.get(ADDRESS).text
    press(advisor, f"{ADDRESS}/versions/1/look", {}, ADDRESS)
    assert "In use." in manager.get(ADDRESS).text
    # Other numbers, the same words: nothing to look at.
    press(manager, ADDRESS, sent({**ROWS["brake_shoe"], "hours": 2}, does="keep", based_on="1"), ADDRESS)
    assert "In use." in manager.get(ADDRESS).text
    form = sent(ROWS["brake_shoe"], does="keep", based_on="2") | {"en.work": "another hitch shoe"}
    press(manager, ADDRESS, form, ADDRESS)
    assert "Texts say the words of version 2" in manager.get(ADDRESS).text
    press(manager, f"{ADDRESS}/versions/1/back", {"based_on": "3"}, ADDRESS)
    assert "In use." in manager.get(ADDRESS).text and versions(house) == 4


def test_two_people_at_once_cannot_undo_each_other(house: TestHouse, signed_in: SignIn) -> None:
    manager = signed_in("manager")
    add(manager, ROWS["brake_shoe"])
    for hours, status in ((2, 303), (3, 422)):
        form = sent({**ROWS["brake_shoe"], "hours": hours}, does="keep", based_on="1")
        assert press(manager, ADDRESS, form, ADDRESS).status_code == status
    assert versions(house) == 2


def test_switched_off_it_is_asked_for_no_more_and_comes_back(house: TestHouse, signed_in: SignIn) -> None:
    manager, technician = signed_in("manager"), signed_in("technician")
    add(manager, ROWS["brake_shoe"])
    field = 'name="r.own_hitch_shoe.rear_left.value"'
    assert field in technician.get("/shop-floor/inspect").text
    press(manager, f"{ADDRESS}/switch", {}, ADDRESS)
    assert field not in technician.get("/shop-floor/inspect").text
    assert "Switched off" in manager.get(ADDRESS).text and "switched off" in manager.get("/manager/items").text
    press(manager, f"{ADDRESS}/switch", {"is_in_use": "yes"}, ADDRESS)
    assert field in technician.get("/shop-floor/inspect").text and versions(house) == 3


def test_who_may_what(house: TestHouse, signed_in: SignIn) -> None:
    add(signed_in("manager"), ROWS["brake_shoe"])
    technician, advisor = signed_in("technician"), signed_in("advisor")
    for address in ("/manager/items", "/manager/items/new", ADDRESS):
        assert technician.get(address).status_code == 403, address
    assert advisor.get(ADDRESS).status_code == 200 and 'name="per_1000_miles"' not in advisor.get(ADDRESS).text
    assert advisor.get("/manager/items/new").status_code == 403
    assert advisor.post(f"{ADDRESS}/switch", data={"csrf_token": token_on(advisor, ADDRESS)}).status_code == 403
    assert advisor.get("/manager/items/own_nothing").status_code == 404


def test_hostile_names_and_words_act_on_no_page(house: TestHouse, signed_in: SignIn) -> None:
    """Source: OWASP ASVS 5.0, 1.2.1. Names may hold any printable sign; every page that shows one escapes it."""
    manager = signed_in("manager")
    for number, text in enumerate(text for text in hostile.HOSTILE if text.isprintable()):
        names = {"name": f"{text[:38]}{number:02}", "work": text[:60], "because": text}
        answer = press(manager, "/manager/items/new", sent(ROWS["brake_shoe"], **names, does="keep"))
        assert answer.status_code == 303, answer.text
        look = press(manager, "/manager/items/new", sent(ROWS["brake_shoe"], does="look") | {"en.name": text[:40]})
        for page in (manager.get(answer.location).text, look.text):
            assert not hostile.faults(page), (text, hostile.faults(page))
    for page in (manager.get("/manager/items").text, signed_in("technician").get("/shop-floor/inspect").text):
        assert hostile.MARK in page and not hostile.faults(page)


def test_a_field_that_the_form_does_not_have_is_refused(house: TestHouse, signed_in: SignIn) -> None:
    page = press(signed_in("manager"), "/manager/items/new", {**sent(ROWS["brake_shoe"], does="keep"), "code": "own_x"})
    assert page.status_code == 422 and "do not fit together" in page.text and versions(house) == 0
