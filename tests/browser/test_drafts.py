"""A form is kept as one types, and the page says how much of it is: with a network, without one, after a sign-out.

Source: trade practice; what the page says is held against the rows of the database.
"""

from __future__ import annotations

import json
from collections.abc import Iterator
from datetime import timedelta
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Page, expect
from sqlalchemy import select

from followup.rehearsal.faults.shop import stop_clock
from followup.storage import tables
from tests.browser.look import DESK, PHONE, axe, engine, picture, sideways, sign_in
from tests.browser.served import served
from tests.browser.test_technician_pages import field
from tests.core.lines import line_told
from tests.shop_of_tests import BEGIN
from tests.web.house import PASSWORD
from tests.web.technician.conftest import Floor, floor

__all__ = ["floor"]
TREAD, PAD = "r.tire_tread.front_left.across.1", "r.brake_pad.front_left.inner"
TABLET = (820, 1180)


@pytest.fixture
def base(floor: Floor) -> Iterator[str]:
    """A known car's pages."""
    told = line_told(customer={"id": "C-1", "name": "Ada Moreno"})
    kept = floor.house.keep_inspection(floor.shop_id, json.dumps(told), "test")
    with served(floor.app) as address:
        yield f"{address}/shop-floor/cars/{kept.vehicle_id}/inspect"


def _begin(page: Page, base: str) -> Any:
    sign_in(page, base.partition("/shop-floor")[0], "technician", PASSWORD)
    page.goto(base)
    return page.locator("#draft-sign")


def _fields(floor: Floor) -> list[dict[str, str]]:
    with floor.house.store.read() as connection:
        return list(connection.execute(select(tables.drafts.c.fields)).scalars())


def _held(page: Page) -> list[str]:
    return page.evaluate("Object.values(localStorage).filter((one) => one.includes('fields'))")


def test_it_is_kept_as_one_types_and_gone_on_with(floor: Floor, base: str, page: Page) -> None:
    sign = _begin(page, base)
    expect(sign).to_have_text("Nothing was filled in yet.")
    expect(page.get_by_role("button", name="Keep so far")).to_have_count(0)
    field(page, TREAD).fill("5")
    expect(sign).to_have_text("Kept at 9:00 am.")
    assert _fields(floor)[0][TREAD] == "5" and _held(page) == []
    # A press that fires no event of its own counts too.
    page.get_by_role("button", name="Not checked: Brake pad, Left rear").click()
    expect(sign).to_have_text("Kept at 9:00 am.")
    page.wait_for_function("document.querySelector('[name=draft]').value.endsWith('.2')")
    assert _fields(floor)[0]["n.brake_pad.rear_left"] == "no_time"
    page.evaluate(engine())
    for (width, height), scheme in ((PHONE, "light"), (TABLET, "dark"), (DESK, "light"), (PHONE, "dark")):
        page.set_viewport_size({"width": width, "height": height})
        page.emulate_media(color_scheme=scheme)  # type: ignore[arg-type]  # one of the two schemes
        assert sideways(page) == [] == axe(page)
        assert sign.bounding_box()["y"] < height, "the sign is in sight"
        picture(page, f"draft-form-{width}-{scheme}", whole=False)
    page.goto(base)
    page.get_by_role("link", name="Go on with what was filled in at 9:00 am").click()
    expect(field(page, TREAD)).to_have_value("5")
    page.get_by_role("button", name="Keep the inspection").click()
    expect(page.get_by_role("heading", level=1)).to_contain_text("Kept:")
    assert _fields(floor) == []


def test_without_a_network_it_says_so_and_sends_it_later(floor: Floor, base: str, page: Page) -> None:
    sign = _begin(page, base)
    page.context.set_offline(True)
    field(page, TREAD).fill("5")
    page.locator("summary").first.click()
    field(page, "vehicle.plate").fill("TEST 99")
    expect(sign).to_contain_text("Not kept yet: no connection (tried at")
    assert _fields(floor) == []
    (held,) = _held(page)
    assert TREAD in held and "TEST 99" not in held and "Moreno" not in held and "csrf" not in held
    page.context.set_offline(False)
    expect(sign).to_have_text("Kept at 9:00 am.")
    assert _fields(floor)[0][TREAD] == "5" and _fields(floor)[0]["vehicle.plate"] == "TEST 99" and _held(page) == []


def test_what_never_arrived_is_offered_by_the_tablet(floor: Floor, base: str, page: Page) -> None:
    _begin(page, base)
    # Also what a page sends as it is left finds no network.
    page.evaluate("() => { window.fetch = () => Promise.reject(new TypeError('no network')) }")
    field(page, TREAD).fill("5")
    page.wait_for_function("Object.keys(localStorage).some((one) => one.startsWith('followup form '))")
    # The battery dies: the page is gone, the server has nothing.
    page.goto("about:blank")
    page.goto(base)
    assert _fields(floor) == []
    expect(page.get_by_text("did not reach the shop: one field")).to_be_visible()
    picture(page, "draft-held-by-tablet")
    page.get_by_role("button", name="Put it in").click()
    expect(field(page, TREAD)).to_have_value("5")
    expect(page.locator("#draft-sign")).to_have_text("Kept at 9:00 am.")
    assert _fields(floor)[0][TREAD] == "5" and _held(page) == []


def test_a_login_that_ran_out_is_told_and_after_signing_in_elsewhere_it_goes_on(
    floor: Floor,
    base: str,
    page: Page,
    tmp_path: Path,
) -> None:
    sign = _begin(page, base)
    stop_clock(tmp_path / "clock", BEGIN + timedelta(hours=15))
    field(page, TREAD).fill("5")
    expect(sign).to_contain_text("Not kept yet: you are signed out.")
    with page.expect_popup() as opened:
        sign.get_by_role("link", name="Sign in").click()
    other = opened.value
    sign_in(other, base.partition("/shop-floor")[0], "technician", PASSWORD)
    other.close()
    # The page's own token is of the session before; it fetches the new one.
    expect(sign).to_contain_text("Kept", timeout=15_000)
    assert _fields(floor)[0][TREAD] == "5"
    page.get_by_role("button", name="Keep the inspection").click()
    expect(page.get_by_role("heading", level=1)).to_contain_text("Kept:")
