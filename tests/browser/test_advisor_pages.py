"""The advisor's pages by keyboard alone."""

from __future__ import annotations

from playwright.sync_api import Page

from followup.rehearsal.demo_shop import PASSWORD
from followup.storage import requests
from followup.web.app import create_app
from tests.browser.look import sign_in
from tests.browser.served import served
from tests.web.full_shop import LOGINS
from tests.workflows.demo import Demo


def test_a_request_is_confirmed_by_keyboard(full: Demo, page: Page) -> None:
    with full.house.store.read() as connection:
        standing = requests.requests_of_shop(connection, full.shop_id, ("asked",))
    asked = next(one for one in standing if one["verbatim"].startswith("Tuesday at 9"))
    with served(create_app(full.house)) as base:
        sign_in(page, base, LOGINS["advisor"], PASSWORD)
        page.goto(f"{base}/advisor/requests/{asked['id']}")
        page.get_by_role("button", name="Confirm Tue, Dec 1, 2026, 9:00 am").first.focus()
        page.keyboard.press("Enter")
        page.get_by_role("status").get_by_text("Confirmed. The customer is told.").wait_for()
