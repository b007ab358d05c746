"""The pages are killed around their commits while a form is filled section by section: what was acknowledged is there.

Source: this project's bar that nothing is lost, with real processes; the page behaves as `draft.js` does: it sends all
of the form again, with what it knew last, until it is answered.
"""

from __future__ import annotations

import json
import os
import re
import signal
from collections.abc import Callable
from dataclasses import dataclass, field
from http.client import HTTPConnection, HTTPException
from random import Random
from urllib.parse import urlencode

import pytest

from followup import passwords
from followup.rehearsal.faults.shop import BEGINS_AT, Shop, demo_address
from followup.rehearsal.faults.worker import AFTER_COMMIT, BEFORE_COMMIT, Order
from followup.storage import shops, staff
from followup.storage.store import Store, make_engine
from followup.workflows.look_at_drafts import look_at_drafts
from tests.faults.ground import SEED, Ground
from tests.web.house import PASSWORD

NOBODY = demo_address(9)
ADDRESS = "/shop-floor/inspect"


@dataclass
class Tablet:
    """A browser's tab that fills one form, over as many lives of the pages as it takes."""

    port: int
    cookie: str = ""
    sent: dict[str, str] = field(default_factory=dict)
    told: int = 0
    acknowledged: int = 0

    def ask(self, method: str, path: str, form: dict[str, str] | None = None) -> tuple[int, str]:
        """One request; `OSError` or `HTTPException` where nobody answers."""
        link = HTTPConnection("127.0.0.1", self.port, timeout=10)
        headers = {"Cookie": self.cookie, "Accept": "application/json" if path.endswith("/draft") else "text/html"}
        if form is not None:
            headers["Content-Type"] = "application/x-www-form-urlencoded"
        try:
            link.request(method, path, urlencode(form) if form is not None else None, headers)
            answer = link.getresponse()
            if cookie := answer.getheader("Set-Cookie"):
                self.cookie = cookie.partition(";")[0]
            return answer.status, answer.read().decode()
        finally:
            link.close()

    def sign_in(self) -> None:
        """Sign in as people do, and open the form of a new car."""
        form = {"login": "kim", "password": PASSWORD, "csrf_token": self._hidden("csrf_token", "/sign-in")}
        assert self.ask("POST", "/sign-in", form)[0] == 303
        page = self.ask("GET", ADDRESS)[1]
        for name in ("csrf_token", "inspection", "page", "inspected_at"):
            found = re.search(rf'name="{name}"[^>]*? value="([^"]+)"', page)
            assert found, name
            self.sent[name] = found[1]

    def fill_in(self) -> None:
        """One more section, and keep so far; what was answered counts as acknowledged."""
        self.told += 1
        self.sent["odometer"] = str(self.told)
        status, body = self.ask("POST", "/shop-floor/draft", self.sent)
        assert status == 200, body
        self.sent["draft"] = json.loads(body)["draft"]
        self.acknowledged = self.told

    def _hidden(self, name: str, path: str) -> str:
        found = re.search(rf'name="{name}" value="([^"]+)"', self.ask("GET", path)[1])
        assert found, name
        return found[1]


def _fill_while_killed(ground: Ground, kind: str, kills: int, seed: int) -> None:
    random = Random(f"drafts {SEED} {seed}")
    with ground.shop(kind) as shop:
        shop.set_clock(BEGINS_AT)
        store = Store(make_engine(shop.url))
        with store.write() as connection:
            shop_id = shops.shop_codes(connection)[0][0]
            hashed = passwords.hash_password(PASSWORD)
            staff.add(connection, shop_id, "kim", "Kim Example", "technician", hashed, BEGINS_AT)
        tablet = Tablet(shop.port)
        try:
            _end(ground, _start(ground, shop), tablet.sign_in)
            for _ in range(kills):
                at = random.choice((BEFORE_COMMIT, AFTER_COMMIT))
                _let_die(ground, _start(ground, shop, at, random.randint(1, 6)), tablet)
                found = [int(one.fields["odometer"]) for one in look_at_drafts(store, shop_id, BEGINS_AT)]
                # What was sent after it and not answered may be there too.
                assert len(found) <= 1 and tablet.acknowledged <= max(found, default=0) <= tablet.told, (seed, found)
            _end(ground, _start(ground, shop), tablet.fill_in)
            (seen,) = look_at_drafts(store, shop_id, BEGINS_AT)
            assert seen.fields["odometer"] == str(tablet.told) == str(tablet.acknowledged)
        finally:
            store.close()


def _start(ground: Ground, shop: Shop, at: str | None = None, nth: int = 1) -> int:
    order = Order(("web",), shop.environment(NOBODY), str(shop.folder / "web.log"), at=at, nth=nth)
    return ground.nursery.start(order)


def _let_die(ground: Ground, pid: int, tablet: Tablet) -> None:
    """Fill in section by section until the pages are gone."""
    while not any(ended.how == "killed" for ended in ground.nursery.wait([pid], 0.003)):
        try:
            tablet.fill_in()
        except (OSError, HTTPException):
            continue


def _end(ground: Ground, pid: int, act: Callable[[], None]) -> None:
    """Act once the pages are there, and kill them afterwards."""
    while True:
        try:
            act()
            break
        except (OSError, HTTPException):
            assert not ground.nursery.wait([pid], 0.02), "the pages ended by themselves"
    os.kill(pid, signal.SIGKILL)
    ground.nursery.wait([pid])


@pytest.mark.parametrize(("kind", "kills"), [("sqlite", 3), ("postgresql", 2)])
def test_kills_between_sections_lose_nothing_that_was_acknowledged(both: Ground, kind: str, kills: int) -> None:
    _fill_while_killed(both, kind, kills, 0)


@pytest.mark.faults
@pytest.mark.parametrize("kind", ["sqlite", "postgresql"])
def test_forty_kills_lose_nothing_that_was_acknowledged(both: Ground, kind: str) -> None:
    for seed in range(1, 5):
        _fill_while_killed(both, kind, 10, seed)
