"""What if in a browser: a rule is changed and tried, the answer is readable on a phone and a desk, nothing is kept."""

from __future__ import annotations

from playwright.sync_api import Page

from followup.rehearsal.demo_shop import PASSWORD
from followup.web.app import create_app
from tests.browser.look import LOOKS, axe, engine, picture, sideways, sign_in
from tests.browser.served import served
from tests.web.full_shop import LOGINS
from tests.workflows.demo import Demo


def test_a_rule_is_tried_and_read_before_it_is_kept(full: Demo, page: Page) -> None:
    before, faults = full.house.shop(full.shop_id).rules_version, []
    with served(create_app(full.house)) as base:
        sign_in(page, base, LOGINS["manager"], PASSWORD)
        page.goto(f"{base}/manager/timing")
        page.get_by_label("Lead time from a text to the visit, days").fill("45")
        page.get_by_role("button", name="See what it would change").click()
        page.get_by_role("heading", name="And now").wait_for(timeout=60_000)
        assert not page.locator("progress").first.is_visible()
        page.evaluate(engine())
        for (width, height), scheme in LOOKS:
            page.set_viewport_size({"width": width, "height": height})
            page.emulate_media(color_scheme=scheme)
            faults += [f"{width} px, {scheme}: {one}" for one in [*sideways(page), *axe(page)]]
            picture(page, f"manager-what-if-{width}-{scheme}")
        assert page.get_by_text("21 would become 45").is_visible()
        assert page.get_by_role("table", name="Cars that would be told on another day").get_by_role("link").count()
        page.get_by_role("button", name="Change them further").click()
        assert page.get_by_label("Lead time from a text to the visit, days").input_value() == "45"
    assert not faults, "\n".join(faults)
    assert full.house.shop(full.shop_id).rules_version == before
