"""The manager's pages with one customer behind them, and staff who are signed in."""

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
    # The real house has these; the small one for pages does not.
    return fill(house.store, 1, ADVISOR_ID)


@dataclass
class Member:
    """A signed-in member of staff: reads pages and presses buttons."""

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
def member(signed_in: Callable[[str], FlaskClient], counter: Counter) -> Callable[[str], Member]:
    """Call it with a role."""
    return lambda role: Member(signed_in(role))
