"""Planning reads only the windows that may come up: it comes to the same texts and calls as by all of them."""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime, timedelta
from typing import Any

import pytest
from sqlalchemy import Table, update

from followup.core.planning.decide import decide_for_phone
from followup.core.planning.pacing.weeks import WEEKS
from followup.core.planning.picture import PhoneTask, PlannedText
from followup.core.shop import Shop
from followup.core.wall import day_of
from followup.storage import candidates, people, pictures, room, rows, shops, tables, windows
from followup.workflows.pace_invites import _messages
from tests.workflows.demo import Demo

AT_ONCE = 20
Said = tuple[str, PlannedText | None, tuple[PhoneTask, ...]]
# The first and the last weeks of the demo's next year: in one of them it is written before winter.
DAYS = (1, 20, 45, 90, 200, 290, 320, 400)


def _said(demo: Demo, now: datetime, *, near: bool) -> list[Said]:
    """The text and the calls of every car; whether the odometer is asked along is asked again before it is kept."""
    with demo.house.store.read() as connection:
        shop = shops.load_shop(connection, demo.shop_id)
        gathered = pictures.gather(connection, demo.shop_id, now, near=shop if near else None)
    found: list[Said] = []
    for phone in gathered.phones:
        of_phone = pictures.pictures_of_phone(gathered, shop, phone, now, needs_registration=False)
        for vehicle, decision in decide_for_phone(of_phone, now):
            text = decision.text
            key = None if text is None else PlannedText(**{**vars(text), "asks_odometer": False})
            found.append((vehicle, key, decision.phone_tasks))
    return found


def test_the_same_texts_and_calls(demo: Demo) -> None:
    texts = 0
    for days in DAYS:
        now = demo.house.now() + timedelta(days=days)
        by_all, by_near = _said(demo, now, near=False), _said(demo, now, near=True)
        assert by_all == by_near
        texts += sum(text is not None for _, text, _ in by_all)
    assert texts > 40


def _shop(demo: Demo) -> Shop:
    with demo.house.store.read() as connection:
        return shops.load_shop(connection, demo.shop_id)


def test_what_lies_ahead_is_not_read(demo: Demo) -> None:
    shop, now = _shop(demo), demo.house.now()
    with demo.house.store.read() as connection:
        everything = sum(map(len, windows.all_windows(connection, demo.shop_id).values()))
        near = sum(map(len, pictures.gather(connection, demo.shop_id, now, near=shop).windows.values()))
        ahead = timedelta(weeks=WEEKS + 1)
        in_weeks = sum(
            map(len, pictures.gather(connection, demo.shop_id, now, near=shop, ahead=ahead).windows.values())
        )
    assert 0 < near < in_weeks < everything


def test_what_was_put_off_is_read_however_far_it_lies(demo: Demo) -> None:
    """A customer may have named the day on which to hear of it again."""
    shop, now = _shop(demo), demo.house.now()
    with demo.house.store.read() as connection:
        every = windows.all_windows(connection, demo.shop_id)
        near = pictures.gather(connection, demo.shop_id, now, near=shop).windows
    car = next(one for one, found in every.items() if len(near.get(one, ())) < len(found))
    with demo.house.store.write() as connection:
        rows.add(
            connection, tables.rests, shop_id=demo.shop_id, vehicle_id=car, item=every[car][0]["item"], position="",
            because="later", from_on=day_of(now, shop.zone), until=day_of(now, shop.zone),
        )  # fmt: skip
    with demo.house.store.read() as connection:
        again = pictures.gather(connection, demo.shop_id, now, near=shop).windows
    assert again[car] == every[car]


def _numbers_by_all(demo: Demo, now: datetime) -> set[str]:
    """The numbers to which the planner's own rules, asked of every phone with every window, have something to say."""
    with demo.house.store.read() as connection:
        shop = shops.load_shop(connection, demo.shop_id)
        gathered = pictures.gather(connection, demo.shop_id, now)
    found = set()
    for phone in gathered.phones:
        of_phone = pictures.pictures_of_phone(gathered, shop, phone, now, needs_registration=False)
        decided = [decision for _, decision in decide_for_phone(of_phone, now)]
        found |= {phone["number"]} if any(one.text or one.phone_tasks for one in decided) else set()
    return found


def _forget_all_but_tires(demo: Demo) -> None:
    """Of every car of the demo a fluid, a filter or the wipers are near: without them most are quiet."""
    table = tables.due_windows
    with demo.house.store.write() as connection:
        connection.execute(update(table).where(table.c.item != "tire_tread").values(is_current=False))
        connection.execute(tables.recommendations.delete())


def test_who_is_not_looked_at_has_no_reason(demo: Demo) -> None:
    """Nobody to whom the rules, asked with every window, have something to say is left out; most of the others are."""
    _forget_all_but_tires(demo)
    counts = []
    for days in DAYS:
        now = demo.house.now() + timedelta(days=days)
        with demo.house.store.read() as connection:
            shop = shops.load_shop(connection, demo.shop_id)
            looked_at = candidates.numbers_to_look_at(connection, shop, now)
            everybody = len(people.all_phones(connection, demo.shop_id))
        assert _numbers_by_all(demo, now) <= set(looked_at)
        counts.append(len(looked_at))
    assert min(counts) < everybody / 2
    # Before winter, and once all were not seen for long.
    assert max(counts) == everybody


def test_a_visit_a_recall_and_a_missed_booking_are_looked_at(demo: Demo) -> None:
    """Each alone is a reason by `core/planning/send_rule.py`."""
    _forget_all_but_tires(demo)
    now = demo.house.now()
    with demo.house.store.read() as connection:
        shop = shops.load_shop(connection, demo.shop_id)
        before = set(candidates.numbers_to_look_at(connection, shop, now))
        quiet = next(one for one in people.all_phones(connection, demo.shop_id) if one["number"] not in before)
        person = people.persons_of_phone(connection, quiet["id"])[0]
        car = people.vehicles_of_persons(connection, [person["id"]])[0]["id"]
    known = {"shop_id": demo.shop_id, "vehicle_id": car}
    booking = {"person_id": person["id"], "state": "missed", "came_from": "text", "verbatim": "", "wanted": {},
               "avoid": {}, "needs": {}, "items": [], "hours": {}, "offered": []}  # fmt: skip
    events: tuple[tuple[Table, dict[str, Any]], ...] = (
        (tables.recalls, {"code": "R-1", "entered_on": day_of(now, shop.zone), "done_by": "us", "entered_by": "sam"}),
        (tables.visits, {"code": "V-new", "opened_at": now - timedelta(days=3), "closed_at": now - timedelta(days=2)}),
        (tables.booking_requests, {**booking, "slot_at": now - timedelta(days=13), "asked_at": now, "changed_at": now}),
    )
    for table, values in events:
        with demo.house.store.write() as connection:
            kept = rows.add(connection, table, **known, **values)
            assert quiet["number"] in candidates.numbers_to_look_at(connection, shop, now)
            connection.execute(table.delete().where(table.c.id == kept))
            assert quiet["number"] not in candidates.numbers_to_look_at(connection, shop, now)


def test_pacing_looks_only_at_whose_work_comes_up_and_finds_the_same_invites(
    demo: Demo, monkeypatch: pytest.MonkeyPatch
) -> None:
    """Also where so many phones are looked at that they are read some at a time."""
    monkeypatch.setattr(pictures, "_PHONES_AT_ONCE", AT_ONCE)
    usual, ahead = _shop(demo), timedelta(weeks=WEEKS + 1)
    # By such rules hardly any work of the coming weeks is worth a text.
    hardly = replace(usual, rules=replace(usual.rules, lead_days=0, send_at_chance=0.999, send_worn_at_chance=0.999))
    looked_at, found = [], 0
    for days, shop in ((1, usual), (90, usual), (1, hardly), (30, hardly)):
        now = demo.house.now() + timedelta(days=days)
        with demo.house.store.read() as connection:
            there, _ = room.look_at_room(connection, shop, now)
            some = list(pictures.gather_ahead(connection, shop, now, ahead))
            everybody = pictures.gather(connection, demo.shop_id, now, near=shop, ahead=ahead)
        by_some = [message for one in some for message in _messages(one, shop, there, now, False)]
        by_all = _messages(everybody, shop, there, now, False)
        assert by_some == by_all
        looked_at.append(sum(len(one.phones) for one in some) / len(everybody.phones))
        found += len(by_all)
    assert found > 40 and min(looked_at) < 1 and max(looked_at) * len(everybody.phones) > AT_ONCE
