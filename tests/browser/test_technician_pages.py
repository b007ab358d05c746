"""The technician's form as people use it: digits jump on, one press does for several fields, doubts are accepted."""

from __future__ import annotations

import json
from collections.abc import Iterator

import pytest
from playwright.sync_api import Page, expect

from tests.browser.look import sign_in
from tests.browser.served import served
from tests.core.lines import line_told
from tests.web.house import PASSWORD
from tests.web.technician.conftest import Floor, floor

__all__ = ["floor"]
FORM = "/shop-floor/cars/1/inspect"


@pytest.fixture
def base(floor: Floor) -> Iterator[str]:
    """A shop with one car that was here in spring."""
    tread = {"item": "tire_tread", "position": "front_left", "unit": "32nds", "across": [6, 6, 5]}
    told = line_told(
        customer={"id": "C-1", "name": "Ada Moreno", "phone": "+13125550147"}, readings=[tread], odometer=41_230,
        unit="mi", vehicle={"id": "V-1", "label": "2021 gray compact SUV", "plate": "TEST 31"},
    )  # fmt: skip
    floor.house.keep_inspection(floor.shop_id, json.dumps(told), "test")
    with served(floor.app) as address:
        yield address


def field(page: Page, name: str):  # type: ignore[no-untyped-def]  # one of playwright's locators
    """The field of that name."""
    return page.locator(f'[id="field-{name}"]')


def test_digits_jump_on_and_enter_sends_nothing(base: str, page: Page) -> None:
    """No tread is deeper than 24/32, so 6 is whole at once and 1 waits for its second digit."""
    sign_in(page, base, "technician", PASSWORD)
    page.goto(f"{base}{FORM}")
    field(page, "r.tire_tread.front_left.across.1").focus()
    page.keyboard.type("6107")
    for number, typed in enumerate(("6", "10", "7"), start=1):
        expect(field(page, f"r.tire_tread.front_left.across.{number}")).to_have_value(typed)
    expect(field(page, "r.tire_age.front_left.date_code")).to_be_focused()
    page.keyboard.press("Enter")
    assert page.url == f"{base}{FORM}"
    field(page, "r.brake_pad.front_left.inner").focus()
    page.keyboard.type("6.57")
    expect(field(page, "r.brake_pad.front_left.inner")).to_have_value("6.5")
    expect(field(page, "r.brake_pad.front_left.outer")).to_have_value("7")


def test_same_as_left_lowest_only_and_not_checked_are_one_press(base: str, page: Page) -> None:
    sign_in(page, base, "technician", PASSWORD)
    page.goto(f"{base}{FORM}")
    field(page, "r.tire_tread.rear_left.across.1").fill("5")
    field(page, "same.rear_right").check()
    expect(field(page, "r.tire_tread.rear_right.across.1")).to_have_value("5")
    page.get_by_role("button", name="Not checked: Brake shoe, Left rear").click()
    expect(field(page, "n.brake_shoe.rear_left")).to_have_value("no_time")
    field(page, "lowest").check()
    expect(field(page, "r.tire_tread.front_left.across.1")).to_be_hidden()
    expect(field(page, "r.tire_tread.front_left.value")).to_be_visible()


def test_doubts_are_accepted_by_a_second_press(base: str, page: Page) -> None:
    sign_in(page, base, "technician", PASSWORD)
    page.goto(f"{base}{FORM}")
    field(page, "odometer").fill("4,123")
    page.locator('[name="r.washer_fluid.car.level"][value="low"]').check()
    page.get_by_role("button", name="Keep the inspection").click()
    expect(page.get_by_role("alert")).to_contain_text("less than the 41,230 mi")
    expect(field(page, "odometer")).to_have_value("4,123")
    page.get_by_role("button", name="It is right: keep it").click()
    expect(page.get_by_role("heading", level=1)).to_have_text("Kept: 2021 gray compact SUV")
