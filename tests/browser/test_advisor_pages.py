"""The advisor's pages as people see them, with a full shop behind them: WCAG A and AA, 360 px, light and dark."""

from __future__ import annotations

from pathlib import Path

import pytest
from playwright.sync_api import Page

from followup.web.app import create_app
from tests.browser.look import check_page, sign_in
from tests.browser.served import served
from tests.web.advisor.conftest import ADVISOR_ID
from tests.web.house import PASSWORD, build
from tests.workflows.counter import NOW, SECRET, fill, line

PAGES = (
    "", "requests", "requests/1", "requests/2", "requests/3", "alerts/2", "calls", "find", "threads/1", "cars/1",
    "cars/1/book", "visits/2",
)  # fmt: skip
READINGS = [
    *({"item": "tire_tread", "position": one, "unit": "32nds", "value": value} for one, value in
      (("front_left", 5), ("rear_left", 6), ("rear_right", 6), ("front_right", 4))),
    *({"item": "brake_pad", "position": one, "unit": "mm", "inner": value, "outer": value + 1} for one, value in
      (("front_left", 4), ("rear_left", 7), ("rear_right", 7), ("front_right", 3))),
    {"item": "brake_rotor", "position": "front_left", "not_checked": "no_time"},
    {"item": "washer_fluid", "level": "low"},
    {"item": "lights", "found_as": "dim"},
]  # fmt: skip


@pytest.fixture
def base(tmp_path: Path):  # type: ignore[no-untyped-def]  # a generator of pytest's
    """A shop in which something of everything has happened."""
    house = build(f"sqlite+pysqlite:///{tmp_path / 'pages.db'}")
    house.ledger_secret = SECRET  # type: ignore[attr-defined]  # the real house has it; the small one does not
    counter = fill(house.store, 1, ADVISOR_ID, line(readings=READINGS))
    from followup.workflows import answer_alert, keep_visit, settle_requests

    counter.ask("Tuesday at 9 works, I will wait", needs=["wait"])
    counter.ask("Some day next week?", wanted=[], parts="unknown", understood=None)
    counter.alert("symptom_now", "brakes", inbound_id=counter.write_in("The pedal feels soft since this morning"))
    called = counter.alert("price", "what it costs", inbound_id=counter.write_in("what will the pads run me"))
    answer_alert.say_calling(house.store, 1, called, ADVISOR_ID, NOW)
    counter.alert("phone_task", "front pads past the legal limit, told at the last visit")
    counter.remember(open_symptom="now")
    counter.hold()
    counter.plan(cause="planned")
    counter.write_in("yes please", meaning={"meanings": ["accept"], "certainty": 0.75, "language": "en"})
    booked = counter.ask("Wednesday at 10", wanted=[])
    settle_requests.confirm_request(house.store, 1, booked, 1, NOW.replace(hour=21), counter.by, NOW, overrules=True)
    visit = keep_visit.open_visit(house.store, 1, counter.vehicle_id, 49_000, "Avery Stone", NOW)
    assert visit is not None
    keep_visit.add_work(house.store, 1, visit, keep_visit.WorkDone("wiper_blade", "", "replaced"), "Avery Stone", NOW)
    advice = keep_visit.Advice("brake_pad", "front", "declined", "price", None, "Avery Stone")
    keep_visit.add_advice(house.store, 1, visit, advice, "Avery Stone", NOW)
    with served(create_app(house)) as address:
        yield address


def test_every_page_of_the_advisor(base: str, page: Page) -> None:
    sign_in(page, base, "advisor", PASSWORD)
    faults = []
    for path in PAGES:
        assert page.goto(f"{base}/advisor/{path}").ok, path  # type: ignore[union-attr]  # a page that was asked for
        faults += check_page(page, f"{base}/advisor/{path}")
        for details in page.locator("details").all():
            details.evaluate("one => { one.open = true }")
        assert page.evaluate("document.documentElement.scrollWidth <= document.documentElement.clientWidth"), path
    assert not faults, "\n".join(faults)


def test_a_request_is_confirmed_by_keyboard(base: str, page: Page) -> None:
    sign_in(page, base, "advisor", PASSWORD)
    page.goto(f"{base}/advisor/requests/1")
    page.get_by_role("button", name="Confirm Tue, Dec 1, 2026, 9:00 am").first.focus()
    page.keyboard.press("Enter")
    page.get_by_role("status").get_by_text("Confirmed. The customer is told.").wait_for()
