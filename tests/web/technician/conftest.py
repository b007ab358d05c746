"""The real house behind the technician's pages, with staff of each role signed in by the page."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from pathlib import Path

import pytest
from flask import Flask
from flask.testing import FlaskClient

from followup import passwords
from followup.storage import staff
from followup.web.app import create_app
from followup.wiring import House
from tests.shop_of_tests import BEGIN, open_test_house
from tests.web.conftest import token_on
from tests.web.house import PASSWORD, ROLES


@dataclass
class Floor:
    """The house, its shop, its pages, and somebody signed in for each role."""

    house: House
    shop_id: int
    app: Flask
    sign_in: Callable[[str], FlaskClient]


@pytest.fixture
def floor(sqlite_url: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Floor]:
    """A shop floor on a database of its own; the clock stands at `BEGIN`, 9 o'clock at the shop."""
    house, shop_id = open_test_house(sqlite_url, tmp_path, monkeypatch)
    hashed = passwords.hash_password(PASSWORD)
    with house.store.write() as connection:
        for role in ROLES:
            staff.add(connection, shop_id, role, f"{role.title()} Example", role, hashed, BEGIN)
    app = create_app(house)

    def sign_in(role: str) -> FlaskClient:
        client = app.test_client()
        form = {"login": role, "password": PASSWORD, "csrf_token": token_on(client, "/sign-in")}
        assert client.post("/sign-in", data=form).status_code == 303
        return client

    yield Floor(house, shop_id, app, sign_in)
    house.close()
