"""Cross-site requests change nothing: every route that writes, without a token, with a foreign one, by another method.

Source of the demand: OWASP ASVS 5.0, 3.5.1 to 3.5.3.
"""

from __future__ import annotations

from collections.abc import Callable

from flask import Flask
from flask.testing import FlaskClient

from followup.web.security import who_may_use
from followup.web.technician.drafts import SHOWN_AGAIN
from tests.web.conftest import token_on
from tests.web.house import TestHouse
from tests.web.url_map import WRITING, contents, routes

BY_PROOF = ("signature", "token")


def test_a_form_without_its_token_is_refused(
    app: Flask, house: TestHouse, signed_in: Callable[[str], FlaskClient]
) -> None:
    client, stranger = signed_in("owner"), signed_in("owner")
    foreign = token_on(stranger, "/account")
    before = contents(house)
    walked = 0
    for route in routes(app):
        if route.method not in WRITING or who_may_use(app, route.endpoint) in BY_PROOF:
            continue
        for form in ({}, {"csrf_token": ""}, {"csrf_token": "made-up"}, {"csrf_token": foreign}):
            response = client.open(route.address, method=route.method, data=form)
            assert response.status_code == 400, str(route)
            # A long form is shown again with what was typed; of a car that is not there nothing is.
            is_shown = route.endpoint in SHOWN_AGAIN and "/cars/" not in route.address
            said = "signed in anew" if is_shown else "too old"
            assert said in response.text
        in_the_address = client.open(
            f"{route.address}?csrf_token={token_on(client, '/account')}", method=route.method, data={}
        )
        assert in_the_address.status_code == 400, str(route)
        walked += 1
    assert walked >= 6
    assert contents(house) == before


def test_a_form_with_its_token_is_taken_even_a_day_later(
    house: TestHouse, signed_in: Callable[[str], FlaskClient]
) -> None:
    client = signed_in("owner")
    token = token_on(client, "/account")
    answer = client.post("/account/sessions/end", data={"csrf_token": token})
    assert answer.status_code == 303


def test_a_hidden_method_field_is_no_other_method(app: Flask, signed_in: Callable[[str], FlaskClient]) -> None:
    client = signed_in("owner")
    form = {"csrf_token": token_on(client, "/account"), "_method": "DELETE"}
    assert client.post("/owner/staff", data=form, headers={"X-HTTP-Method-Override": "DELETE"}).status_code == 422


def test_every_form_of_the_pages_carries_a_token(app: Flask, signed_in: Callable[[str], FlaskClient]) -> None:
    client = signed_in("owner")
    forms = 0
    for route in routes(app):
        if route.method == "GET" and isinstance(who_may_use(app, route.endpoint), frozenset):
            page = client.get(route.address).text
            for form in page.split("<form")[1:]:
                if 'method="post"' in form.partition(">")[0]:
                    assert 'name="csrf_token"' in form.partition("</form>")[0], str(route)
                    forms += 1
    assert forms >= 6
