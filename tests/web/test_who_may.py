"""Every route says who may use it, and nobody else can: walks the URL map with every role and with none."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from flask import Flask
from flask.testing import FlaskClient

from followup.web.security import who_may_use
from tests.web.conftest import token_on
from tests.web.house import ROLES, TestHouse
from tests.web.url_map import WRITING, contents, routes

# The only pages that need no session; a new one must be added here by hand.
# Those of calendars are opened by the secret in their address.
PUBLIC = {"health.health", "static", "login.sign_in", "calendars.feed", "calendars.visit"}
BY_PROOF = {"webhook": "signature", "api": "token"}


def test_every_route_declares_who_may_use_it(app: Flask) -> None:
    for route in routes(app):
        declared = who_may_use(app, route.endpoint)
        assert declared is not None, f"{route.endpoint} declares nothing"
        person = route.endpoint.partition(".")[0]
        if isinstance(declared, frozenset):
            assert declared <= set(ROLES)
        elif declared == "public":
            assert route.endpoint in PUBLIC
        else:
            # Only hooks and the token interface are free of form tokens, and each by its own proof.
            assert declared == BY_PROOF.get(person), route.endpoint


def test_without_a_session_only_the_public_pages_answer(app: Flask) -> None:
    for route in routes(app):
        if isinstance(who_may_use(app, route.endpoint), frozenset):
            response = app.test_client().open(route.address, method=route.method)
            if route.method == "GET":
                assert (response.status_code, response.headers["Location"].partition("?")[0]) == (303, "/sign-in")
            else:
                assert response.status_code in (303, 400), str(route)


@pytest.mark.parametrize("role", ROLES)
def test_each_role_opens_its_pages_and_no_others(
    app: Flask, house: TestHouse, signed_in: Callable[[str], FlaskClient], role: str
) -> None:
    client = signed_in(role)
    before = contents(house)
    for route in routes(app):
        declared = who_may_use(app, route.endpoint)
        if not isinstance(declared, frozenset):
            continue
        if role not in declared:
            form = {"csrf_token": token_on(client, "/account")} if route.method in WRITING else None
            assert client.open(route.address, method=route.method, data=form).status_code == 403, str(route)
        elif route.method == "GET":
            assert client.get(route.address).status_code in (200, 303, 404), str(route)
    assert contents(house) == before


@pytest.mark.parametrize("role", ROLES)
def test_looking_changes_nothing(
    app: Flask, house: TestHouse, signed_in: Callable[[str], FlaskClient], role: str
) -> None:
    client = signed_in(role)
    before = contents(house)
    for route in routes(app):
        if route.method == "GET":
            client.get(route.address)
            client.head(route.address)
    assert contents(house) == before


def test_the_links_at_the_top_lead_where_one_may_go(signed_in: Callable[[str], FlaskClient]) -> None:
    technician, owner = signed_in("technician").get("/account").text, signed_in("owner").get("/account").text
    assert "/owner/staff" in owner
    assert "/owner/staff" not in technician
    assert "/advisor/" not in technician
    assert "/shop-floor/" in technician


@pytest.mark.parametrize(
    ("role", "home"),
    [("technician", "/shop-floor/"), ("advisor", "/advisor/"), ("manager", "/manager/"), ("owner", "/advisor/")],
)
def test_everybody_begins_where_their_work_is(signed_in: Callable[[str], FlaskClient], role: str, home: str) -> None:
    assert signed_in(role).get("/").headers["Location"] == home
