"""The owner deletes a customer on a page that first says what goes, what stays and what stands.

Source: this project's own rules (the owner alone; a booking or a symptom is told before; nothing by a look).
"""

from __future__ import annotations

from collections.abc import Callable

import pytest
from flask.testing import FlaskClient

from followup.storage import people
from tests.web.conftest import token_on
from tests.web.house import TestHouse
from tests.workflows import counter as counters
from tests.workflows.counter import Counter

Clients = Callable[[str], FlaskClient]


@pytest.fixture
def counter(house: TestHouse) -> Counter:
    return counters.fill(house.store, 1, 1)


def _address(counter: Counter) -> str:
    return f"/owner/customers/{counter.person_id}/delete"


def _is_there(counter: Counter) -> bool:
    with counter.store.read() as connection:
        return people.load_person(connection, 1, counter.person_id) is not None


def test_only_the_owner_may_and_a_look_deletes_nothing(signed_in: Clients, counter: Counter) -> None:
    for role in ("technician", "advisor", "manager"):
        assert signed_in(role).get(_address(counter)).status_code == 403
    shown = signed_in("owner").get(_address(counter)).text
    assert "Delete Ana Marlow?" in shown and "This cannot be undone." in shown
    assert "Settle this first" not in shown
    assert _is_there(counter)
    assert signed_in("owner").get("/owner/customers/999/delete").status_code == 404


def test_what_stands_is_told_before_it_is_confirmed(signed_in: Clients, counter: Counter) -> None:
    owner = signed_in("owner")
    counter.ask(state="confirmed", slot_at=counters.NOW)
    counter.remember(open_symptom="brakes")
    counter.plan()
    shown = owner.get(_address(counter)).text
    for words in ("A booking stands", "reported a symptom", "One text waits and is dropped"):
        assert words in shown
    old = {"csrf_token": token_on(owner, "/account"), "mark": ""}
    refused = owner.post(_address(counter), data=old)
    assert (refused.status_code, "Something else stands by now" in refused.text) == (409, True)
    assert _is_there(counter)


def test_it_is_deleted_and_its_pages_are_gone(signed_in: Clients, counter: Counter) -> None:
    owner = signed_in("owner")
    thread, car = f"/advisor/threads/{counter.phone_id}", f"/advisor/cars/{counter.vehicle_id}"
    assert _address(counter) in owner.get(thread).text and _address(counter) in owner.get(car).text
    assert _address(counter) not in signed_in("advisor").get(thread).text
    done = owner.post(_address(counter), data={"csrf_token": token_on(owner, "/account"), "mark": ""})
    assert done.status_code == 303
    assert owner.get(thread).status_code == 404
    assert owner.get(_address(counter)).status_code == 404
    shown = owner.get(car)
    assert shown.status_code == 200 and "Ana Marlow" not in shown.text and "TEST 147" not in shown.text
    assert "Ana Marlow" not in owner.get("/advisor/find?q=").text
