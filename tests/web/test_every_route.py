"""Every route of the URL map on a real shop with real rows behind it: each page is there, and each form is read.

A new route fails here until `full_shop.variables` has something for its variable parts.
"""

from __future__ import annotations

from typing import Any

import pytest
from flask import Flask
from flask.testing import FlaskClient

from followup.rehearsal.demo_shop import PASSWORD
from followup.web.app import create_app
from followup.web.security import who_may_use
from followup.workflows.keep_tokens import new_token
from tests.web.conftest import token_on
from tests.web.full_shop import LOGINS, TOKEN, variables
from tests.web.test_headers import check_headers
from tests.web.url_map import WRITING, contents, keys_used, routes
from tests.workflows.demo import Demo

# What a page needs to be asked with.
QUERIES: dict[str, dict[str, Any]] = {"owner.ask_to_revoke": {"name": TOKEN}}
# They end the session that the walk goes by.
LAST = ("login.end_sessions", "login.sign_out")


@pytest.fixture
def app(full: Demo) -> Flask:
    """The pages of the full shop."""
    return create_app(full.house)


def _sign_in(app: Flask, role: str) -> FlaskClient:
    client = app.test_client()
    form = {"login": LOGINS[role], "password": PASSWORD, "csrf_token": token_on(client, "/sign-in")}
    assert client.post("/sign-in", data=form).status_code == 303
    return client


def test_every_variable_part_has_something_and_nothing_is_left_over(app: Flask, full: Demo) -> None:
    found = variables(full.house, full.shop_id)
    assert len(list(routes(app, found))) > 70
    assert keys_used(app, found) == set(found)


@pytest.mark.parametrize("role", LOGINS)
def test_every_page_is_there_for_whom_it_is(app: Flask, full: Demo, role: str) -> None:
    client = _sign_in(app, role)
    before = contents(full.house)
    for route in routes(app, variables(full.house, full.shop_id)):
        allowed = who_may_use(app, route.endpoint)
        if route.method != "GET" or not isinstance(allowed, frozenset):
            continue
        answer = client.get(route.address, query_string=QUERIES.get(route.endpoint))
        if role in allowed:
            expected = 303 if route.endpoint == "login.home" else 200
            assert answer.status_code == expected, f"{route}: {answer.status_code} {answer.text[-300:]}"
        else:
            assert answer.status_code == 403, str(route)
        check_headers(answer)
    assert contents(full.house) == before, "looking changed something"


def test_every_form_is_read_and_an_empty_one_is_told_or_taken(app: Flask, full: Demo) -> None:
    client = _sign_in(app, "owner")
    walked = [route for route in routes(app, variables(full.house, full.shop_id)) if route.method in WRITING]
    for route in sorted(walked, key=lambda one: one.endpoint in LAST):
        if isinstance(who_may_use(app, route.endpoint), frozenset):
            if route.endpoint in LAST:
                client = _sign_in(app, "owner")
            answer = client.post(route.address, data={"csrf_token": token_on(client, "/account")})
            assert answer.status_code in (303, 400, 409, 422), f"{route}: {answer.status_code}"
            check_headers(answer)


def test_hooks_and_the_interface_are_there_and_ask_for_their_proof(app: Flask, full: Demo) -> None:
    token = new_token(full.house.store, full.shop_id, "a test", full.house.now(), "a test")
    client, walked = app.test_client(), 0
    for route in routes(app, variables(full.house, full.shop_id)):
        proof = who_may_use(app, route.endpoint)
        if proof in ("signature", "token"):
            without = client.open(route.address, method=route.method)
            assert without.status_code == (403 if proof == "signature" else 401), str(route)
            check_headers(without)
            walked += 1
        if proof == "token":
            bearer = {"Authorization": f"Bearer {token}"}
            answer = client.open(route.address, method=route.method, headers=bearer)
            assert answer.status_code == (200 if route.method == "GET" else 415), f"{route}: {answer.status_code}"
    assert walked >= 4
