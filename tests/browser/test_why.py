"""The reasons of due windows on a phone: no words of a picture touch, nothing is scrolled sideways, axe is content."""

from __future__ import annotations

from playwright.sync_api import Page
from sqlalchemy import select

from followup.rehearsal.demo_shop import PASSWORD
from followup.storage import tables
from followup.web.app import create_app
from tests.browser.look import PHONE, axe, engine, sideways, sign_in
from tests.browser.served import served
from tests.web.full_shop import LOGINS
from tests.workflows.demo import Demo

# Words whose boxes cross, and words that leave their picture; a box is a little higher than its letters.
TOUCHING = """() => {
    const found = []
    for (const picture of document.querySelectorAll('.wear-chart')) {
        const frame = picture.getBoundingClientRect()
        const words = [...picture.querySelectorAll('text')].map(one => [one.textContent, one.getBoundingClientRect()])
        words.forEach(([text, box], number) => {
            if (box.left < frame.left - 1 || box.right > frame.right + 1 || box.bottom > frame.bottom + 1)
                found.push(`${text} leaves its picture`)
            for (const [other, it] of words.slice(number + 1))
                if (box.left < it.right && it.left < box.right && box.top + 3 < it.bottom && it.top + 3 < box.bottom)
                    found.push(`${text} touches ${other}`)
        })
    }
    return found
}"""
OPEN = "document.querySelectorAll('details').forEach(one => { one.open = true })"


def test_reasons_are_readable_on_a_phone(full: Demo, page: Page) -> None:
    with full.house.store.read() as connection:
        car = (
            connection.execute(select(tables.due_evidence.c.vehicle_id).group_by(tables.due_evidence.c.vehicle_id))
            .scalars()
            .first()
        )
        kept = select(tables.inspections.c.id).where(tables.inspections.c.vehicle_id == car)
        inspection = connection.execute(kept).scalars().first()
    faults, pictures = [], 0
    with served(create_app(full.house)) as base:
        sign_in(page, base, LOGINS["advisor"], PASSWORD)
        page.set_viewport_size({"width": PHONE[0], "height": PHONE[1]})
        for address in (f"/advisor/cars/{car}", f"/shop-floor/inspections/{inspection}"):
            page.goto(f"{base}{address}")
            # Folded away: the list stays short.
            assert not page.locator(".wear-chart").first.is_visible()
            page.evaluate(OPEN)
            page.evaluate(engine())
            pictures += page.locator(".wear-chart").count()
            faults += [f"{address}: {one}" for one in [*page.evaluate(TOUCHING), *sideways(page), *axe(page)]]
            assert page.get_by_text("driven about").first.is_visible()
    assert not faults, "\n".join(faults)
    assert pictures >= 10
