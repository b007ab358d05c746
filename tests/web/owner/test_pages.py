"""The owner's pages: facts of the shop, the two switches, tokens, what a number needs, one's own alert phone.

Source: this project's own rules (who may what; no secret is shown; a switch asks once more).
"""

from __future__ import annotations

import re
from collections.abc import Callable
from pathlib import Path

import pytest
from flask.testing import FlaskClient
from sqlalchemy import select
from werkzeug.test import TestResponse

from followup.storage import inbox, installation, rows, staff, tables
from followup.storage.shops import load_shop
from followup.workflows.keep_tokens import standing_token
from followup.workflows.look_at_letters import look_at_letters
from followup.workflows.take_over import DID
from tests.web.conftest import token_on
from tests.web.house import BEGIN, TestHouse, build

Clients = Callable[[str], FlaskClient]
SHOP = {
    "name": "Elm Street Auto", "address": "4 Elm Street", "phone": "(312) 555-0100", "texts_from": "+13125550101",
    "roadside_phone": "", "zone": "America/Denver", "country": "us", "state": "co", "order": "month-first",
    "registration": "brand, campaign, 2026-11-01",
}  # fmt: skip
PAGES = (
    "/owner/shop", "/owner/stop", "/owner/stop/everything/stop", "/owner/number", "/owner/tokens", "/owner/here",
    "/owner/letters",
)  # fmt: skip


def press(client: FlaskClient, where: str, /, **fields: str) -> TestResponse:
    return client.post(where, data={"csrf_token": token_on(client, "/account"), **fields})


def test_the_pages_are_the_owners_alone(signed_in: Clients) -> None:
    owner, manager = signed_in("owner"), signed_in("manager")
    for address in PAGES:
        assert owner.get(address).status_code == 200, address
        assert manager.get(address).status_code == 403, address
    for address in ("/owner/stop/all/stop", "/owner/stop/everything/perhaps", "/owner/tokens/revoke?name=none"):
        assert owner.get(address).status_code == 404, address


def test_facts_of_the_shop_are_kept_in_one_way(signed_in: Clients, house: TestHouse) -> None:
    assert press(signed_in("owner"), "/owner/shop", **SHOP).status_code == 303
    with house.store.read() as connection:
        shop = load_shop(connection, 1)
        noted = rows.every(connection, select(tables.audit))
    assert (shop.phone, shop.zone, shop.country, shop.state) == ("+13125550100", "America/Denver", "US", "CO")
    assert (shop.roadside_phone, shop.registration) == (None, "brand, campaign, 2026-11-01")
    assert noted[-1]["did"] == "changed the shop"
    assert noted[-1]["after"]["zone"] == "America/Denver"


@pytest.mark.parametrize(
    ("fact", "value", "says"),
    [
        ("zone", "Elm Time", "no such zone"),
        ("phone", "12", "no phone number"),
        ("roadside_phone", "abc", "no phone number"),
        ("country", "USA", "two letters"),
        ("order", "year-first", "Choose one"),
        ("name", "x" * 61, "60 characters"),
    ],
)
def test_a_wrong_fact_is_told_in_words_and_nothing_is_kept(
    signed_in: Clients, house: TestHouse, fact: str, value: str, says: str
) -> None:
    answer = press(signed_in("owner"), "/owner/shop", **{**SHOP, fact: value})
    assert (answer.status_code, says in answer.text) == (422, True)
    with house.store.read() as connection:
        assert load_shop(connection, 1).zone == "America/Chicago"


def test_a_switch_asks_once_more_and_can_be_turned_back(signed_in: Clients, house: TestHouse) -> None:
    owner = signed_in("owner")
    assert "Stop all invites" in owner.get("/owner/stop/invites-and-visits/stop").text
    with house.store.read() as connection:
        assert not load_shop(connection, 1).rules.is_sending_stopped
    for turn, stands in (("stop", True), ("start", False)):
        for which, rule in (("invites-and-visits", "is_sending_stopped"), ("everything", "is_everything_off")):
            assert press(owner, f"/owner/stop/{which}", turn=turn).status_code == 303
            with house.store.read() as connection:
                assert getattr(load_shop(connection, 1).rules, rule) is stands
    assert press(owner, "/owner/stop/everything", turn="perhaps").status_code == 400
    with house.store.read() as connection:
        assert load_shop(connection, 1).rules_version == 4


def test_a_token_is_shown_once_and_ended_for_good(signed_in: Clients, house: TestHouse) -> None:
    owner = signed_in("owner")
    made = press(owner, "/owner/tokens", name="lift tablet")
    token = re.findall(r"<pre[^>]*>([^<]+)</pre>", made.text)[0]
    assert standing_token(house.store, token) is not None
    page = owner.get("/owner/tokens").text
    assert "lift tablet" in page
    assert token not in page
    assert press(owner, "/owner/tokens", name="lift tablet").status_code == 422
    assert "End the token of lift tablet?" in owner.get("/owner/tokens/revoke?name=lift+tablet").text
    assert press(owner, "/owner/tokens/revoke", name="lift tablet").status_code == 303
    assert standing_token(house.store, token) is None


def test_no_secret_stands_on_the_number_page(signed_in: Clients, house: TestHouse) -> None:
    secret = "0123456789abcdef-only-for-tests"
    changed = house.settings.model_copy(update={"twilio_auth_tokens": (secret,)})
    object.__setattr__(house, "settings", changed)
    page = signed_in("owner").get("/owner/number").text
    assert "kept secret" in page
    assert secret not in page
    assert "only-for-tests" not in page


def test_everybody_agrees_for_themselves_alone(signed_in: Clients, house: TestHouse) -> None:
    technician = signed_in("technician")
    refused = press(technician, "/owner/my-alerts", phone="(312) 555-0123")
    assert (refused.status_code, "Tick this" in refused.text) == (422, True)
    assert press(technician, "/owner/my-alerts", phone="12", agrees="yes").status_code == 422
    assert press(technician, "/owner/my-alerts", phone="(312) 555-0123", agrees="yes").status_code == 303

    def phones() -> list[str | None]:
        with house.store.read() as connection:
            return [staff.alert_phone(connection, 1, one.id) for one in staff.of_shop(connection, 1)
                    if one.role == "technician" or staff.alert_phone(connection, 1, one.id)]  # fmt: skip

    assert phones() == ["+13125550123"]
    assert press(technician, "/owner/my-alerts", phone="").status_code == 303
    assert phones() == [None]


def test_a_copy_says_at_the_top_that_it_sends_nothing_and_one_press_lets_it(
    signed_in: Clients, house: TestHouse
) -> None:
    owner, manager = signed_in("owner"), signed_in("manager")
    assert "Nothing is sent" not in owner.get("/owner/staff").text
    with house.store.write() as connection:
        installation.say(connection, "copy", house.now(), "a backup", gap_from_at=house.now())
    assert "Nothing is sent" in owner.get("/owner/staff").text
    page = owner.get("/owner/here").text
    assert "this database is a copy and knows nothing since 2026-11-24 15:00 UTC" in page
    assert (manager.get("/owner/here").status_code, press(manager, "/owner/here").status_code) == (403, 403)
    assert press(owner, "/owner/here").status_code == 303
    assert "Nothing is sent" not in owner.get("/owner/staff").text
    assert press(owner, "/owner/here").status_code == 303
    with house.store.read() as connection:
        assert installation.standing(connection).sends
        assert [one["did"] for one in rows.every(connection, select(tables.audit))].count(DID) == 1


def _keep_letter(house: TestHouse) -> None:
    """What somebody wrote to a number that no shop has."""
    body = {"from": "+13125550147", "to": "+13125550199", "body": "is my car ready"}
    with house.store.write() as connection:
        inbox.add_dead_letter(connection, None, BEGIN, "no shop texts from the number it was sent to", body, "SM1")


def test_what_fits_no_shop_is_shown_once_and_put_away(house: TestHouse, signed_in: Clients) -> None:
    for _ in range(2):
        _keep_letter(house)
    client = signed_in("owner")
    page = client.get("/owner/letters").text
    assert page.count("is my car ready") == 1 and "no shop texts from" in page and "0199" in page
    assert signed_in("advisor").get("/owner/letters").status_code == 403
    with house.store.read() as connection:
        (letter,) = inbox.dead_letters(connection, None)
    form = {"csrf_token": token_on(client, "/owner/letters")}
    assert client.post(f"/owner/letters/{letter['id']}/put-away", data=form).status_code == 303
    assert "Nothing waits" in client.get("/owner/letters").text
    client.post(f"/owner/letters/{letter['id']}/put-away", data=form)
    assert "put it away before" in client.get("/owner/letters").text


def test_where_there_are_several_shops_neither_words_nor_numbers_are_shown(tmp_path: Path) -> None:
    house = build(f"sqlite+pysqlite:///{tmp_path / 'two.db'}", ("elm", "oak"))
    _keep_letter(house)
    found = look_at_letters(house.store)
    assert not found.are_whole
    (letter,) = found.letters
    assert (letter.words, letter.said_by, letter.sent_to) == (None, "... 47", "+13125550199")
