"""The pages with a real database behind them, and browsers' stand-ins that are signed in."""

from __future__ import annotations

import re
from collections.abc import Callable
from pathlib import Path

import pytest
from flask import Flask
from flask.testing import FlaskClient

from followup.web.app import create_app
from tests.web.house import PASSWORD, TestHouse, build


@pytest.fixture
def house(tmp_path: Path) -> TestHouse:
    """One shop, one member a role."""
    return build(f"sqlite+pysqlite:///{tmp_path / 'web.db'}")


@pytest.fixture
def app(house: TestHouse) -> Flask:
    """The pages of that house."""
    return create_app(house)


@pytest.fixture
def signed_in(app: Flask) -> Callable[[str], FlaskClient]:
    """Call it with a role: a client that has signed in by the page."""

    def sign_in(role: str) -> FlaskClient:
        client = app.test_client()
        form = {"login": role, "password": PASSWORD, "csrf_token": token_on(client, "/sign-in")}
        assert client.post("/sign-in", data=form).status_code == 303
        return client

    return sign_in


def token_on(client: FlaskClient, address: str) -> str:
    """The form token that a page holds."""
    found = re.search(r'name="csrf_token" value="([^"]+)"', client.get(address).text)
    assert found, f"no form on {address}"
    return found[1]
