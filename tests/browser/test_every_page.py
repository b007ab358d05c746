"""Every page of the URL map, with a full shop behind it: WCAG A and AA by axe, no sideways scroll, light and dark."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from playwright.sync_api import Page
from sqlalchemy import Table, func, select

from followup.rehearsal.demo_shop import PASSWORD
from followup.storage import tables
from followup.web.app import create_app
from followup.web.security import who_may_use
from tests.browser.look import check_page, sign_in
from tests.browser.served import served
from tests.web.full_shop import LOGINS, held_number, variables
from tests.web.test_every_route import QUERIES
from tests.web.url_map import routes
from tests.workflows.counter import NUMBER
from tests.workflows.demo import Demo

# Files to keep, which a browser does not show.
FILES = ("manager.corrected_readings", "manager.numbers_to_check")
FOLDERS = ("login", "technician", "advisor", "manager", "owner", "phone")


def _pages(full: Demo) -> Iterator[tuple[str, str]]:
    """The folder and address of every page that needs a session."""
    app = create_app(full.house)
    for route in routes(app, variables(full.house, full.shop_id)):
        if route.endpoint in FILES:
            continue
        if route.method == "GET" and isinstance(who_may_use(app, route.endpoint), frozenset):
            query = "&".join(f"{name}={value}" for name, value in QUERIES.get(route.endpoint, {}).items())
            yield route.endpoint.partition(".")[0], f"{route.address}{'?' if query else ''}{query}"
    yield from _others(full)


def _others(full: Demo) -> Iterator[tuple[str, str]]:
    """Pages that look otherwise by what they are asked for, or by what they are about."""
    ids = variables(full.house, full.shop_id)
    car, person, phone = ids["vehicle_id"], ids["person_id"], ids["phone_id"]
    yield "technician", "/shop-floor/?q=marlow"
    yield "technician", f"/shop-floor/cars/{car}/inspect?part=lift&anew=yes"
    yield "technician", f"/shop-floor/cars/{car}/inspect?draft={ids['draft_id']}"
    yield "technician", f"/shop-floor/top-off?car={car}"
    yield "technician", f"/shop-floor/consent/{person}/{phone}/tablet/es"
    yield "advisor", "/advisor/find?q=marlow"
    yield "advisor", f"/advisor/may-text?number=%2B{NUMBER[1:]}"
    yield "advisor", f"/advisor/may-text?number=%2B{held_number(full.house, full.shop_id)[0][1:]}"
    yield "manager", "/manager/wording/due_work/es"
    yield "manager", "/manager/wording/free_service/en"
    yield "phone", "/phone/?number=12"
    for table, column, address in (
        (tables.booking_requests, "state", "/advisor/requests"), (tables.alerts, "kind", "/advisor/alerts"),
    ):  # fmt: skip
        for row_id in _one_of_each(full, table, column):
            yield "advisor", f"{address}/{row_id}"


def _one_of_each(full: Demo, table: Table, column: str) -> list[int]:
    query = select(func.min(table.c.id)).group_by(table.c[column])
    with full.house.store.read() as connection:
        return list(connection.execute(query).scalars())


def test_every_page_belongs_to_a_folder_that_is_walked(full: Demo) -> None:
    assert {folder for folder, _ in _pages(full)} == set(FOLDERS)


@pytest.mark.parametrize("folder", FOLDERS)
def test_every_page(full: Demo, page: Page, folder: str) -> None:
    faults = []
    with served(create_app(full.house)) as base:
        sign_in(page, base, LOGINS["owner"], PASSWORD)
        for address in (address for of, address in _pages(full) if of == folder):
            faults += check_page(page, f"{base}{address}")
    assert not faults, "\n".join(faults)
