"""The test phone on the real house: an answer goes over HTTP through the signed hook, and the clock can be moved.

Source of the way: this project's own rule that the test phone posts to the same hook as a provider, by the same scheme.
"""

from __future__ import annotations

import re
import threading
from collections.abc import Iterator
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

import pytest
from flask.testing import FlaskClient
from waitress.server import create_server

from followup import clock
from followup.storage import inbox, people, test_phone
from followup.transports import local_phone
from followup.web.app import create_app
from followup.wiring import House
from followup.workflows.move_clock import next_morning, not_before_morning
from tests.shop_of_tests import BEGIN, open_test_house
from tests.web.conftest import token_on

NUMBER = "+13125550147"
PAGE = "/phone/13125550147"


@pytest.fixture
def served(tmp_path: Path, monkeypatch: pytest.MonkeyPatch, sqlite_url: str) -> Iterator[tuple[House, int]]:
    """The real house with its hook answering at its public address on this machine."""
    house, shop_id = open_test_house(sqlite_url, tmp_path, monkeypatch)
    server: Any = create_server(create_app(house), host="127.0.0.1", port=0, threads=4)
    settings = house.settings.model_copy(update={"public_base_url": f"http://127.0.0.1:{server.effective_port}"})
    house.settings = settings
    thread = threading.Thread(target=server.run, daemon=True)
    thread.start()
    yield house, shop_id
    server.close()
    thread.join(5)
    house.close()


@pytest.fixture
def client(served: tuple[House, int]) -> FlaskClient:
    """A technician at the pages of that house."""
    from followup import passwords
    from followup.storage import staff

    house, shop_id = served
    with house.store.write() as connection:
        hashed = passwords.hash_password("green lamp on the bench")
        staff.add(connection, shop_id, "kim", "Kim Ash", "technician", hashed, house.now())
    client = create_app(house).test_client()
    form = {"login": "kim", "password": "green lamp on the bench", "csrf_token": token_on(client, "/sign-in")}
    assert client.post("/sign-in", data=form).status_code == 303
    return client


def press(client: FlaskClient, address: str, **fields: str) -> Any:
    return client.post(address, data={"csrf_token": token_on(client, "/account"), **fields})


def test_an_answer_comes_in_by_the_signed_hook(served: tuple[House, int], client: FlaskClient) -> None:
    house, shop_id = served
    assert press(client, PAGE, words="Hi, who is this?").status_code == 303
    with house.store.read() as connection:
        phone = people.find_phone(connection, shop_id, NUMBER)
        assert phone is not None, "only the hook's own workflow makes a phone's row"
        assert [one["body"] for one in inbox.inbound_of_phone(connection, phone["id"])] == ["Hi, who is this?"]
    assert "Hi, who is this?" in client.get(PAGE).text


def test_a_wrong_signature_is_not_taken_and_said(
    served: tuple[House, int], client: FlaskClient, monkeypatch: pytest.MonkeyPatch
) -> None:
    house, shop_id = served
    monkeypatch.setattr("followup.wiring.signed_post", lambda *_: {local_phone.SIGNATURE_HEADER: "forged"})
    answer = press(client, PAGE, words="let me in")
    assert (answer.status_code, "did not take it" in answer.text) == (502, True)
    with house.store.read() as connection:
        assert people.find_phone(connection, shop_id, NUMBER) is None


def test_nothing_is_posted_to_another_machine(
    served: tuple[House, int], client: FlaskClient, monkeypatch: pytest.MonkeyPatch
) -> None:
    posted: list[str] = []
    monkeypatch.setattr("requests.post", lambda url, **_: posted.append(url))
    served[0].settings = served[0].settings.model_copy(update={"public_base_url": "http://192.0.2.7"})
    assert press(client, PAGE, words="hello").status_code == 502
    assert posted == []


def test_the_list_names_the_latest_phone_first(served: tuple[House, int], client: FlaskClient) -> None:
    house, shop_id = served
    with house.store.write() as connection:
        test_phone.keep(connection, shop_id, "+13125550120", "to_phone", "older", "a", BEGIN)
        test_phone.keep(connection, shop_id, "+13125550121", "to_phone", "newer", "b", BEGIN.replace(minute=30))
    numbers = re.findall(r'href="/phone/(\d+)"', client.get("/phone/").text)
    assert numbers == ["13125550121", "13125550120"]


@pytest.mark.parametrize("address", ["/phone/12", "/phone/+13125550147", "/phone/abc", "/phone/00000000000"])
def test_what_is_no_number_is_not_there(client: FlaskClient, address: str) -> None:
    assert client.get(address).status_code == 404


def test_empty_words_are_asked_for(client: FlaskClient) -> None:
    answer = press(client, PAGE, words="  ")
    assert (answer.status_code, "Fill this in." in answer.text) == (422, True)


def test_three_weeks_later_nobody_is_signed_out(served: tuple[House, int], client: FlaskClient) -> None:
    assert press(client, "/phone/clock", step="three_weeks").status_code == 303
    assert (clock.now() - BEGIN).days == 21
    assert "Tue, Dec 15, 2026" in client.get("/phone/").text


def test_the_next_morning_is_no_holiday(served: tuple[House, int]) -> None:
    # 2026-11-26 is Thanksgiving (fourth Thursday of November, 5 U.S.C. 6103), 2026-11-28 a Saturday.
    shop = served[0].shop(served[1])
    wednesday_noon = BEGIN.replace(day=25, hour=18)
    friday = next_morning(shop, wednesday_noon)
    assert friday.isoformat() == "2026-11-27T16:30:00+00:00"
    assert next_morning(shop, friday).isoformat() == "2026-11-30T16:30:00+00:00"


def test_a_step_lands_when_invites_leave(served: tuple[House, int]) -> None:
    """Trade: invites leave from 10:00; a newcomer who presses at nine should see what leaves."""
    nine = datetime(2026, 12, 14, 15, 0, tzinfo=UTC)
    afternoon = datetime(2026, 12, 14, 21, 0, tzinfo=UTC)
    shop = served[0].shop(served[1])
    assert not_before_morning(shop, nine) == nine.replace(hour=16, minute=30)
    assert not_before_morning(shop, afternoon) == afternoon


def test_another_step_or_a_clock_that_stands_is_refused(
    served: tuple[House, int], client: FlaskClient, monkeypatch: pytest.MonkeyPatch
) -> None:
    assert press(client, "/phone/clock", step="century").status_code == 400
    served[0].now = lambda: BEGIN  # type: ignore[method-assign]  # the real clock would end the session
    monkeypatch.delenv("FOLLOWUP_CLOCK")
    assert press(client, "/phone/clock", step="day").status_code == 400


def test_where_a_provider_sends_there_is_no_test_phone(served: tuple[House, int], client: FlaskClient) -> None:
    served[0].settings = served[0].settings.model_copy(update={"transport": "twilio"})
    assert client.get("/phone/").status_code == 404
    assert press(client, PAGE, words="hello").status_code == 404
    assert "Test phone" not in client.get("/account").text
