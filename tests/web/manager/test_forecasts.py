"""How right the forecasts were, as a manager reads it: the demo shop's three years, and a shop that has just begun."""

from __future__ import annotations

import re
from collections.abc import Callable
from html import unescape

from flask.testing import FlaskClient

from followup.core.forecast.score_words import headline
from followup.rehearsal.demo_shop import PASSWORD
from followup.web.app import create_app
from followup.web.manager.forecasts import MOST_QUARTERS
from followup.workflows.look_at_scores import look_at_scores
from tests.web.conftest import token_on
from tests.web.manager.conftest import Member
from tests.workflows.demo import Demo


def words(page: str) -> str:
    """What is written on a page, on one line."""
    return re.sub(r"\s+", " ", unescape(re.sub(r"<[^>]+>", " ", page)))


def signed_in(demo: Demo, login: str) -> FlaskClient:
    client = create_app(demo.house).test_client()
    form = {"csrf_token": token_on(client, "/sign-in"), "login": login, "password": PASSWORD}
    assert client.post("/sign-in", data=form).status_code == 303
    return client


def test_the_demo_shop_sees_its_three_years(demo: Demo) -> None:
    client = signed_in(demo, "theo")
    page = client.get("/manager/forecasts?days=all").text
    card = look_at_scores(demo.house.store, demo.shop_id)
    assert words(headline(card.usual)) in words(page)
    for held in card.held:
        assert f"{held.held:,} of {held.count:,}, {100 * held.share:.0f} %" in words(page)
    for picture in ("All windows", "By quarter", "By item", "By kind of forecast", "The chance of being found due"):
        assert f"{picture}: said and" in page
    assert len(re.findall(r"<svg", page)) == 6
    assert "Wiper blades" in page and "12 V battery" in page
    assert card.endings["changed"] and "changed before anybody read them again" in page
    # Every picture has its table; each of its lines is a row.
    lines = 3 + min(len(card.by_quarter), MOST_QUARTERS) + 2 + len(card.by_readings) + 3 + len(card.bands)
    assert page.count('class="said-mark"') == lines


def test_a_period_counts_its_own(demo: Demo) -> None:
    client = signed_in(demo, "theo")
    whole, part = client.get("/manager/forecasts").text, client.get("/manager/forecasts?days=90").text
    assert 'aria-current="true">The last 90 days' in part
    assert words(whole) != words(part)


def test_a_shop_that_has_just_begun_is_told_so(member: Callable[[str], Member]) -> None:
    page = member("manager").page("/manager/forecasts")
    assert "No window was scored yet" in page
    assert "<svg" not in page and "Found due at the next look" not in page


def test_managers_find_it_at_the_top(member: Callable[[str], Member]) -> None:
    assert 'href="/manager/forecasts"' in member("manager").page("/manager/")
    assert 'href="/manager/forecasts"' not in member("advisor").page("/advisor/")
