"""The shop's own items from the row to the booking: kept with versions, a second look at the words, asked for in lines,
forecast, planned, texted in both languages, booked; and what becomes of them when they are switched off."""

from __future__ import annotations

import json
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Any

import pytest
from sqlalchemy import select

from followup.core.item import Item
from followup.core.wording_checks import check_wording
from followup.storage import numbers, own_items, requests, shops, staff, tables, windows
from followup.storage.outbox import load_reason
from followup.storage.pictures import gather_known, why_not_any_more
from followup.storage.rows import Row
from followup.workflows.forecast_windows import count_cars_with_news, forecast_windows
from followup.workflows.keep_inspections import keep_inspections
from followup.workflows.keep_own_item import (
    approve_own_item,
    bring_back_own_item,
    keep_own_item,
    switch_own_item,
)
from followup.workflows.keep_top_off import keep_top_off, what_is_topped_off
from followup.workflows.keep_visit import Advice, WorkDone, add_advice, add_work, open_visit
from followup.workflows.look_at_car import look_at_car
from followup.workflows.look_at_requests import look_at_request
from followup.workflows.plan_texts import look_at_plan, plan_texts
from followup.workflows.send_texts.body import body_of, facts_of
from followup.workflows.settle_requests import book_by_phone
from tests.core.own_rows import EVERY_KIND, ROWS
from tests.workflows.counter import NOW, SECRET, Counter, line, open_counter

every_row = pytest.mark.parametrize("row", EVERY_KIND, ids=lambda row: row["name"])
SHOE = ROWS["brake_shoe"]


@dataclass
class Shop:
    """The counter's shop, with a manager who writes items and an advisor who looks at them."""

    counter: Counter
    manager_id: int

    @property
    def who(self) -> tuple[int, str]:
        """The manager, as an author."""
        return self.manager_id, "Theo Lindqvist"

    def add(self, row: dict[str, Any], *, approved: bool = True) -> str:
        """Keep a row as a new item; its code."""
        kept = keep_own_item(self.counter.store, self.counter.shop_id, row, None, 0, *self.who, "", NOW)
        assert kept.code and kept.version == 1, kept.faults
        if approved:
            self.approve(kept.code, 1)
        return kept.code

    def approve(self, code: str, version: int) -> str | None:
        """The advisor looks at the words."""
        store, shop_id, staff_id = self.counter.store, self.counter.shop_id, self.counter.staff_id
        return approve_own_item(store, shop_id, code, version, staff_id, "Avery Stone", NOW)

    def change(self, code: str, based_on: int, row: dict[str, Any]) -> int | None:
        """Keep a next version."""
        store, shop_id = self.counter.store, self.counter.shop_id
        return keep_own_item(store, shop_id, row, code, based_on, *self.who, "", NOW).version

    def item(self, code: str) -> Item:
        """The item as it stands."""
        return next(one for one in self.counter.shop().own_items if one.code == code)

    def read(self, readings: list[dict[str, Any]], name: str = "I-2", on: str = "2026-10-25", **more: Any) -> str:
        """Bring an inspection in, forecast; what became of the line."""
        store, shop_id = self.counter.store, self.counter.shop_id
        told = line(inspection=name, inspected_at=f"{on}T09:10", odometer=48_400, readings=readings, **more)
        (kept,) = keep_inspections(store, shop_id, [told], NOW, "test", SECRET)
        forecast_windows(store, shop_id, NOW)
        return kept.outcome

    def window(self, code: str) -> Row | None:
        """The present window of that item."""
        with self.counter.store.read() as connection:
            rows = windows.windows_of(connection, self.counter.vehicle_id)
        return next((row for row in rows if row["item"] == code), None)

    def planned(self, now: datetime = NOW) -> list[Row]:
        """Invites that are planned now."""
        plan_texts(self.counter.store, self.counter.shop_id, now)
        return [row for row in self.counter.texts("planned") if row["kind"] == "invite"]

    def said(self, row: Row, language: str) -> str:
        """The words of a text in that language, which pass every check."""
        with self.counter.store.read() as connection:
            shop, row = shops.load_shop(connection, self.counter.shop_id), {**row, "language": language}
            text = body_of(connection, shop, row, NOW).text
            facts = facts_of(connection, shop, row, NOW)
        assert check_wording(text, row["reason"], language, facts) == [], text
        return text


@pytest.fixture
def shop(database_url: str) -> Shop:
    """The shop with its one customer, who has nothing due but lights that are dim."""
    counter = open_counter(database_url)
    with counter.store.write() as connection:
        manager_id = staff.add(connection, counter.shop_id, "theo", "Theo Lindqvist", "manager", "no password", NOW)
        connection.execute(tables.due_windows.delete())
        connection.execute(tables.inspections.delete())
    return Shop(counter, manager_id)


def due(row: dict[str, Any], code: str) -> dict[str, Any]:
    """A reading that finds it due."""
    told: dict[str, Any] = {"item": code, **({"position": row["positions"][0]} if row.get("positions") else {})}
    if row.get("unit"):
        return {**told, "value": row["action_limit"], "unit": row["unit"]}
    return told | {
        "life": {"changed_on": "2021-06-01", "looks": "dirty"},
        "interval": {"done_on": "2025-01-10", "done_odometer": 20_000, "unit": "mi"},
        "level": {"level": "low"}, "found": {"found_as": "does_not_work"},
    }[row["kind"]]  # fmt: skip


@every_row
def test_every_kind_goes_the_whole_way(shop: Shop, row: dict[str, Any]) -> None:
    """Line -> window -> plan -> text in both languages -> booking request with its labor hours -> pages' pictures."""
    counter, code = shop.counter, shop.add(row)
    assert shop.read([due(row, code)]) == "new"
    seen = look_at_car(counter.store, counter.shop_id, counter.vehicle_id, NOW)
    assert seen is not None
    (place,) = (found for _, found in seen.places)
    assert [one.item for one in place] == [code] and place[0].condition == "due now"
    window = shop.window(code)
    assert (window is not None) == shop.item(code).is_forecast
    if window is not None:
        assert [one.item for one in seen.due] == [code]
        (text,) = shop.planned()
        assert text["reason"] == ("free_service" if row.get("is_top_off_free") else "due_work")
        assert row["en"]["name"] in shop.said(text, "en").lower()
        assert row["es"]["name"] in shop.said(text, "es").lower()
    position = row.get("positions", [""])[0] if row.get("positions") else ""
    at = NOW + timedelta(days=7)
    made = book_by_phone(
        counter.store, counter.shop_id, counter.person_id, counter.vehicle_id, at, [(code, position)], counter.by, NOW,
        overrules=True,
    )  # fmt: skip
    with counter.store.read() as connection:
        request = requests.load_request(connection, counter.shop_id, made)
    assert request is not None and request["hours"] == {row["skill"]: row["hours"]}
    page = look_at_request(counter.store, counter.shop_id, made, NOW)
    assert page is not None and page.readings[0][0] == code and page.readings[0][2] is not None
    (confirmation,) = (one for one in counter.texts("planned") if one["reason"] == "confirmation")
    assert row["en"]["work"] in shop.said(confirmation, "en")
    assert row["es"]["work"] in shop.said(confirmation, "es")


def test_without_a_second_look_no_text_names_it(shop: Shop) -> None:
    code = shop.add(SHOE, approved=False)
    assert shop.read([due(SHOE, code)]) == "new"
    assert shop.window(code) is not None and shop.planned() == []
    assert shop.approve(code, 1) is None
    (text,) = shop.planned()
    assert "hitch shoes" in shop.said(text, "en").lower() or "hitch shoe" in shop.said(text, "en").lower()
    store, shop_id = shop.counter.store, shop.counter.shop_id
    with pytest.raises(LookupError):
        approve_own_item(store, shop_id, code, 7, shop.counter.staff_id, "Avery Stone", NOW)


def test_the_author_alone_cannot_approve(shop: Shop) -> None:
    code = shop.add(SHOE, approved=False)
    store, shop_id = shop.counter.store, shop.counter.shop_id
    assert approve_own_item(store, shop_id, code, 1, *shop.who, NOW) is not None
    assert not shop.item(code).is_named


def test_new_words_wait_while_the_old_ones_are_said_and_new_numbers_count_at_once(shop: Shop) -> None:
    code = shop.add(SHOE)
    other = {**SHOE, "hours": 2, "en": {**SHOE["en"], "work": "another shoe"}}
    assert shop.change(code, 1, other) == 2
    item = shop.item(code)
    assert item.job.hours == 2 and item.phrases and item.phrases["en"]["work"] == SHOE["en"]["work"]
    assert shop.approve(code, 2) is None
    assert (shop.item(code).phrases or {})["en"]["work"] == "another shoe"
    # Words of another unit would say something else now: they wait although they did not change.
    words = {"en": {**other["en"], "number": "clicks"}, "es": {**other["es"], "number": "clics"}}
    assert shop.change(code, 2, {**other, "unit": "clicks", **words}) == 3
    assert not shop.item(code).is_named


def test_a_version_goes_by_what_its_author_saw(shop: Shop) -> None:
    code = shop.add(SHOE)
    assert shop.change(code, 1, {**SHOE, "hours": 2}) == 2
    assert shop.change(code, 1, {**SHOE, "hours": 3}) is None
    assert shop.change(code, 2, {**SHOE, "hours": 2}) is None
    store, shop_id = shop.counter.store, shop.counter.shop_id
    assert bring_back_own_item(store, shop_id, code, 1, 2, *shop.who, NOW).version == 3
    assert shop.item(code).job.hours == SHOE["hours"] and shop.item(code).is_named
    with pytest.raises(LookupError):
        bring_back_own_item(store, shop_id, code, 9, 3, *shop.who, NOW)
    with pytest.raises(LookupError):
        keep_own_item(store, shop_id, SHOE, "own_nothing", 0, *shop.who, "", NOW)


def test_two_items_of_one_name_have_codes_of_their_own(shop: Shop) -> None:
    assert [shop.add(SHOE) for _ in range(3)] == ["own_hitch_shoe", "own_hitch_shoe_2", "own_hitch_shoe_3"]
    assert shop.add({**SHOE, "name": "Brake pad"}) == "own_brake_pad"


def test_a_changed_limit_makes_the_windows_anew(shop: Shop) -> None:
    code = shop.add(SHOE)
    shop.read([{"item": code, "position": "rear_left", "value": 2.5, "unit": "mm"}])
    before = shop.window(code)
    assert before and not before["body"]["is_past"]
    assert count_cars_with_news(shop.counter.store, shop.counter.shop_id) == 0
    later = NOW + timedelta(hours=1)
    changed = {**SHOE, "action_limit": 3}
    store, shop_id = shop.counter.store, shop.counter.shop_id
    assert keep_own_item(store, shop_id, changed, code, 1, *shop.who, "", later).version == 2
    assert count_cars_with_news(store, shop_id) == 1
    forecast_windows(store, shop_id, later + timedelta(minutes=1))
    after = shop.window(code)
    assert after and after["body"]["is_past"] and after["body"]["limit"]["value"] == 3
    assert count_cars_with_news(store, shop_id) == 0


def test_switched_off_it_is_neither_planned_nor_sent_and_its_history_stays(shop: Shop) -> None:
    counter, code = shop.counter, shop.add(SHOE)
    store, shop_id = counter.store, counter.shop_id
    shop.read([due(SHOE, code)])
    (text,) = shop.planned()
    assert switch_own_item(store, shop_id, code, False, *shop.who, NOW)
    assert not switch_own_item(store, shop_id, code, False, *shop.who, NOW)
    # The old window is still there: nobody plans by it, and what was planned by it is no longer wanted.
    assert shop.window(code) is not None
    assert all(not plan.decision.text for plan in look_at_plan(store, shop_id, NOW))
    with store.read() as connection:
        known = numbers.know(connection, shop_id, [text["number"]], NOW)
        gathered, why = gather_known(connection, shop_id, known), load_reason(connection, text["reason_id"])
        assert why_not_any_more(gathered, shops.load_shop(connection, shop_id), text, why, NOW) is not None
    seen = look_at_car(store, shop_id, counter.vehicle_id, NOW)
    assert seen is not None and seen.due == () and seen.places[0][1][0].item == code
    # A line that still tells it is kept: the reading is history, and nothing is forecast from it.
    later = NOW + timedelta(minutes=1)
    assert (
        shop.read([{"item": code, "position": "rear_left", "value": 1.5, "unit": "mm"}], "I-3", "2026-11-01") == "new"
    )
    forecast_windows(store, shop_id, later, [counter.vehicle_id])
    assert shop.window(code) is None
    assert switch_own_item(store, shop_id, code, True, *shop.who, later)
    forecast_windows(store, shop_id, later + timedelta(minutes=1))
    again = shop.window(code)
    assert again is not None and again["body"]["is_past"] and again["body"]["measured"]["value"] == 1.5


def test_lines_with_own_items_come_back_as_they_were_told_and_change_nothing_twice(shop: Shop) -> None:
    counter, code = shop.counter, shop.add(SHOE)
    reading = {"item": code, "position": "rear", "unit": "32nds", "value": 3}
    work = [{"item": code, "position": "rear", "did": "adjusted"}]
    assert shop.read([reading], work_done=work) == "new"
    assert shop.read([reading], work_done=work) == "unchanged"
    with counter.store.read() as connection:
        body = connection.execute(select(tables.inspections.c.body)).scalars().one()
    assert body["readings"] == [{**reading, "value": 3.0}] and body["work_done"] == work
    (again,) = keep_inspections(counter.store, counter.shop_id, [json.dumps(body)], NOW, "export", SECRET)
    assert again.outcome == "unchanged"
    (other,) = keep_inspections(
        counter.store,
        counter.shop_id,
        [line(inspection="I-9", readings=[{"item": "own_x", "value": 1}])],
        NOW,
        "x",
        SECRET,
    )
    assert other.outcome == "rejected" and "add it as the shop's own" in other.faults[0].says


def test_another_shop_does_not_know_it(shop: Shop) -> None:
    code = shop.add(SHOE)
    with shop.counter.store.write() as connection:
        facts = {
            "name": "Oak Street Auto",
            "zone": "America/Chicago",
            "phone": "+13125550102",
            "texts_from": "+13125550103",
        }
        other = shops.add_shop(connection, NOW, "oak", facts)
        assert shops.load_shop(connection, other).own_items == ()
        assert own_items.versions(connection, other, code) == []
    told = line(readings=[due(SHOE, code)])
    (kept,) = keep_inspections(shop.counter.store, other, [told], NOW, "test", SECRET)
    assert kept.outcome == "rejected"


def test_a_top_off_of_an_own_fluid_is_free_and_begins_its_forecast_anew(shop: Shop) -> None:
    counter, code = shop.counter, shop.add(ROWS["coolant"])
    shop.read([{"item": code, "level": "low"}])
    offered = {item.code: much for item, much in what_is_topped_off(counter.store, counter.shop_id, None)}
    assert offered[code] == ""
    later = NOW + timedelta(minutes=1)
    wrong = keep_top_off(counter.store, counter.shop_id, counter.vehicle_id, [code], "a cup", None, "Rui", later)
    assert wrong == {}
    forecast_windows(counter.store, counter.shop_id, later + timedelta(minutes=1))
    window = shop.window(code)
    assert window and not window["body"]["is_past"] and window["body"]["now"] == "full"


def test_work_and_advice_at_the_counter_take_own_items(shop: Shop) -> None:
    counter, code = shop.counter, shop.add(SHOE)
    store, shop_id = counter.store, counter.shop_id
    visit_id = open_visit(store, shop_id, counter.vehicle_id, None, "Avery Stone", NOW)
    assert visit_id is not None
    assert add_work(store, shop_id, visit_id, WorkDone(code, "rear", "replaced"), "Avery Stone", NOW) == {}
    advice = Advice(code, "rear_left", "declined", "time", None, "Avery Stone")
    assert add_advice(store, shop_id, visit_id, advice, "Avery Stone", NOW) == {}
    assert "position" in add_work(store, shop_id, visit_id, WorkDone(code, "front", "replaced"), "Avery Stone", NOW)
    assert "item" in add_work(store, shop_id, visit_id, WorkDone("own_x", "", "replaced"), "Avery Stone", NOW)


def test_what_was_done_stands_in_the_audit_trail(shop: Shop) -> None:
    code = shop.add(SHOE)
    switch_own_item(shop.counter.store, shop.counter.shop_id, code, False, *shop.who, NOW)
    with shop.counter.store.read() as connection:
        rows = connection.execute(select(tables.audit).order_by(tables.audit.c.id)).mappings().all()
    mine = [row for row in rows if code in row["subject"]]
    assert [row["did"] for row in mine] == ["added an item", "looked at the words of an item", "changed an item"]
    assert mine[2]["before"]["is_in_use"] and not mine[2]["after"]["is_in_use"]
