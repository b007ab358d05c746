"""The advisor's pages with one customer behind them, and a browser's stand-in that is signed in."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

import pytest
from flask.testing import FlaskClient
from werkzeug.test import TestResponse

from tests.web.conftest import token_on
from tests.web.house import TestHouse
from tests.workflows.counter import Counter, fill

ADVISOR_ID = 2


@pytest.fixture
def counter(house: TestHouse) -> Counter:
    """One customer of the house's shop, with an inspected car."""
    return fill(house.store, 1, ADVISOR_ID)


@dataclass
class Advisor:
    """A signed-in advisor: reads pages and presses buttons."""

    client: FlaskClient

    def page(self, address: str) -> str:
        """The words of a page that must be there."""
        answer = self.client.get(address)
        assert answer.status_code == 200, (address, answer.status_code, answer.text[:500])
        return answer.text

    def press(self, address: str, **fields: object) -> TestResponse:
        """Send a form with its token."""
        return self.client.post(address, data={"csrf_token": token_on(self.client, "/account"), **fields})


@pytest.fixture
def advisor(signed_in: Callable[[str], FlaskClient], counter: Counter) -> Advisor:
    """An advisor in front of the pages."""
    return Advisor(signed_in("advisor"))
