"""The demo shop after a morning on which something of everything happened, and an address for every route.

The real house, filled by the program's own workflows: texts were sent and answered, requests and alerts stand open, a
car is in the shop, a wording waits for its second look. `variables` names a row of it for each variable part of the URL
map, by `endpoint.name` where a name means different things, else by its name.
"""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date, timedelta
from pathlib import Path
from typing import Any

import pytest
from sqlalchemy import Table, select

from followup.storage import inbox, outcomes, shops, staff, tables, wordings
from followup.wiring import House
from followup.workflows import (
    answer_alert,
    change_rules,
    check_reassigned,
    keep_draft,
    keep_feeds,
    keep_own_item,
    keep_set_season,
    keep_tokens,
    keep_trial,
    keep_visit,
    keep_wording,
    settle_requests,
)
from followup.workflows.look_at_wording import look_at_wording
from tests.core.own_rows import ROWS
from tests.workflows import counter as counters
from tests.workflows.demo import Demo, open_demo

LOGINS = {"technician": "rui", "advisor": "noor", "manager": "theo", "owner": "ines"}
TOKEN = "the tablets"
FEED = "the counter's tablet"
OWN_ITEM = "own_hitch_shoe"
READINGS = [
    *({"item": "tire_tread", "position": one, "unit": "32nds", **read} for one, read in
      (("front_left", {"value": 5}), ("rear_left", {"value": 5}), ("rear_right", {"across": [6, 6, 3]}),
       ("front_right", {"value": 4}))),
    *({"item": "brake_pad", "position": one, "unit": "mm", "inner": inner, "outer": outer} for one, inner, outer in
      (("front_left", 4, 5), ("rear_left", 6, 7), ("rear_right", 4, 7), ("front_right", 3, 4))),
    {"item": "brake_rotor", "position": "front_left", "not_checked": "no_time"},
    {"item": "washer_fluid", "level": "low"},
    {"item": "lights", "found_as": "dim"},
    {"item": OWN_ITEM, "position": "rear_left", "unit": "mm", "value": 2.5},
    {"item": OWN_ITEM, "position": "rear_right", "not_checked": "no_time"},
]  # fmt: skip


def fill_up(template: Path, folder: Path) -> None:
    """Copy the demo shop of the template and let its first day and a customer's whole story happen."""
    with pytest.MonkeyPatch.context() as patch:
        demo = open_demo(template, folder, patch)
        _let_a_day_pass(demo)
        _add_an_item(demo)
        advisor = _member(demo, "advisor")
        counter = counters.fill(demo.house.store, demo.shop_id, advisor.id, counters.line(readings=READINGS))
        _ask_and_alert(counter)
        _write_and_wait(counter)
        _bring_the_car_in(counter)
        _change_what_managers_change(demo)
        _fill_in_halves(demo, counter)
        demo.house.learn(demo.shop_id, "nightly")
        demo.house.close()


def _let_a_day_pass(demo: Demo) -> None:
    """Invites leave; four customers answer, the machine answers them, and the clock stands at the counter's morning."""
    demo.run("2026-11-23T17:00")
    with demo.house.store.read() as connection:
        sent = select(tables.texts.c.number).where(tables.texts.c.kind == "invite", tables.texts.c.state == "sent")
        numbers = list(dict.fromkeys(connection.execute(sent).scalars()))
    answers = ("Thursday at 10 works for me", "what will that cost?", "my brakes are grinding right now", "STOP")
    for number, words in zip(numbers, answers, strict=False):
        demo.write(number, words)
    demo.run("2026-11-24T09:00")


def _add_an_item(demo: Demo) -> None:
    """An item of the shop's own, with words that somebody looked at, and others that wait for it."""
    store, shop_id, now, row = demo.house.store, demo.shop_id, demo.house.now(), ROWS["brake_shoe"]
    manager, advisor = _member(demo, "manager"), _member(demo, "advisor")
    who = (manager.id, manager.name)
    kept = keep_own_item.keep_own_item(store, shop_id, row, None, 0, *who, "for trailers", now)
    assert kept.code == OWN_ITEM, kept.faults
    assert keep_own_item.approve_own_item(store, shop_id, OWN_ITEM, 1, advisor.id, advisor.name, now) is None
    other = {**row, "en": {**row["en"], "work": "a new shoe for the hitch"}}
    assert keep_own_item.keep_own_item(store, shop_id, other, OWN_ITEM, 1, *who, "plainer", now).version == 2


def _ask_and_alert(counter: counters.Counter) -> None:
    counter.ask("Tuesday at 9 works, I will wait", needs=["wait"])
    counter.ask("Some day next week?", wanted=[], parts="unknown", understood=None)
    counter.alert("symptom_now", "brakes", inbound_id=counter.write_in("The pedal feels soft since this morning"))
    called = counter.alert("price", "what it costs", inbound_id=counter.write_in("what will the pads run me"))
    answer_alert.say_calling(counter.store, counter.shop_id, called, counter.staff_id, counters.NOW)
    counter.alert("phone_task", "front pads past the legal limit, told at the last visit")
    counter.remember(open_symptom="now")


def _write_and_wait(counter: counters.Counter) -> None:
    counter.hold()
    counter.plan(cause="planned")
    counter.read_in("yes please")
    with counter.store.write() as connection:
        body = {"From": counters.NUMBER, "Body": "a text that came to no shop"}
        inbox.add_dead_letter(connection, counter.shop_id, counters.NOW, "no shop of that number", body)
        nobodys = {"from": counters.NUMBER, "to": "+13125550199", "body": "a text for nobody here"}
        inbox.add_dead_letter(connection, None, counters.NOW, "no shop texts from the number it was sent to", nobodys)
    booked = counter.ask("Wednesday at 10", wanted=[])
    at = counters.NOW.replace(hour=21)
    settle_requests.confirm_request(
        counter.store, counter.shop_id, booked, 1, at, counter.by, counters.NOW, overrules=True
    )


def _bring_the_car_in(counter: counters.Counter) -> None:
    store, shop_id, who, now = counter.store, counter.shop_id, "Noor Haddad", counters.NOW
    visit = keep_visit.open_visit(store, shop_id, counter.vehicle_id, 49_000, who, now)
    assert visit is not None
    keep_visit.add_work(store, shop_id, visit, keep_visit.WorkDone("wiper_blade", "", "replaced"), who, now)
    advice = keep_visit.Advice("brake_pad", "front", "declined", "price", None, who)
    keep_visit.add_advice(store, shop_id, visit, advice, who, now)


def _fill_in_halves(demo: Demo, counter: counters.Counter) -> None:
    """Two forms that nobody finished: the owner's of a known car, the technician's of a new one."""
    for login, vehicle_id in (("owner", counter.vehicle_id), ("technician", None)):
        typed = keep_draft.TypedSoFar(vehicle_id, "", f"F-{login}", None, {"odometer": "49,100"}, "a page")
        answer = keep_draft.keep_draft(demo.house.store, demo.shop_id, _member(demo, login).id, typed, demo.house.now())
        assert answer.draft_id and not answer.why_not


def _change_what_managers_change(demo: Demo) -> None:
    """A wording that waits for its second look, a second version of the rules, a closed account, a token."""
    store, shop_id, now, manager = demo.house.store, demo.shop_id, demo.house.now(), _member(demo, "manager")
    seen = look_at_wording(store, shop_id, "due_work", "en")
    assert seen
    source = f"{seen.shipped.strip()} Thank you."
    kept = keep_wording.keep_wording(store, shop_id, "due_work", "en", source, manager.id, manager.name, now)
    assert kept.version, kept.faults
    _try_two_wordings(demo)
    until_on = now.date() + timedelta(days=40)
    assert keep_set_season.begin_season(store, shop_id, "winter", until_on, manager.id, manager.name, now) is None
    rules = change_rules.change_rules(
        store, shop_id, ["timing"], {"loaners": 2}, demo.house.shop(shop_id).rules_version, manager.name,
        "a second car", now,
    )  # fmt: skip
    assert rules.version, rules.wrong
    keep_tokens.new_token(store, shop_id, TOKEN, now, "Ines Calloway")
    advisor = _member(demo, "advisor")
    keep_feeds.new_feed(store, shop_id, FEED, is_own=False, staff_id=advisor.id, now=now)
    number, on = held_number(demo.house, shop_id)
    check_reassigned.keep_answers(store, shop_id, f"number,consent_on,answer\n{number},{on},yes\n", manager.name, now)
    with store.write() as connection:
        gone = staff.add(connection, shop_id, "olive", "Olive Brandt", "advisor", "no password", now)
        staff.set_active(connection, gone, False)


def _try_two_wordings(demo: Demo) -> None:
    """A trial of the free service's invite against the shipped words."""
    store, shop_id, now, code = demo.house.store, demo.shop_id, demo.house.now(), "free_service"
    manager, owner = _member(demo, "manager"), _member(demo, "owner")
    seen = look_at_wording(store, shop_id, code, "en")
    assert seen
    source = f"{seen.shipped.strip()} Thank you."
    kept = keep_wording.keep_wording(store, shop_id, code, "en", source, manager.id, manager.name, now)
    with store.read() as connection:
        row = wordings.versions(connection, shop_id, code, "en")[0]
    assert row["version"] == kept.version, kept.faults
    assert keep_wording.approve_wording(store, shop_id, row["id"], owner.id, owner.name, now) is None
    assert keep_trial.begin_trial(store, shop_id, code, "en", 0, 1, 50, manager.id, manager.name, now) is None


def held_number(house: House, shop_id: int) -> tuple[str, date]:
    """The number that the check of reassigned numbers holds, with the day that it was asked as of."""
    found = check_reassigned.numbers_to_check(house.store, shop_id)
    return next(one for one in found if one[0] != counters.NUMBER)


def _member(demo: Demo, role: str) -> staff.StaffMember:
    with demo.house.store.read() as connection:
        return next(one for one in staff.of_shop(connection, demo.shop_id) if one.login == LOGINS[role])


def variables(house: House, shop_id: int) -> Mapping[str, Any]:
    """What stands in each variable part of the URL map."""
    with house.store.read() as connection:

        def newest(table: Table, **with_values: Any) -> Any:
            query = select(table.c.id).where(*(table.c[name] == value for name, value in with_values.items()))
            found = connection.execute(query.order_by(table.c.id.desc())).scalars().first()
            assert found is not None, table.name
            return found

        def read_text() -> Any:
            query = select(tables.inbound.c.id).where(tables.inbound.c.context.is_not(None))
            return connection.execute(query.order_by(tables.inbound.c.id.desc())).scalars().first()

        phone = newest(tables.phones, number=counters.NUMBER)
        held = outcomes.held_texts(connection, shop_id)[0]
        rules, duty = (shops.newest_version(connection, shop_id, kind) for kind in ("rules", "duty"))
        assert rules and duty
        return {
            "filename": "followup.css", "digits": counters.NUMBER[1:], "language": "en", "code": "due_work",
            "which": "everything", "turn": "stop", "phone_id": phone, "vehicle_id": newest(tables.vehicles, code="V-1"),
            "person_id": newest(tables.persons, code="C-1"), "visit_id": newest(tables.visits),
            "inbound_id": read_text(),
            "inspection_id": newest(tables.inspections, code="I-1"),
            "alert_id": newest(tables.alerts, kind="symptom_now"),
            "request_id": newest(tables.booking_requests, state="asked"), "text_id": held["id"],
            "advisor.settle_letter.letter_id": newest(tables.dead_letters, shop_id=shop_id),
            "owner.put_away.letter_id": newest(tables.dead_letters, shop_id=None),
            "staff_id": newest(tables.staff, login="rui"),
            "trial_id": newest(tables.wording_trials), "wording_id": newest(tables.wordings, reason="due_work"),
            "manager.back_to.version": rules["version"],
            "manager.duty_back_to.version": duty["version"], "manager.use_learned.version": 1,
            "item_code": OWN_ITEM, "item_version": 1, "public_id": held["public_id"], "attempt": held["attempt"],
            "draft_id": newest(tables.drafts, code="F-owner"),
            "season_id": newest(tables.set_seasons), "step": "pause",
            "feed_id": newest(tables.calendar_feeds), "token": "nobodys", "calendars.visit.code": "nobodys",
        }  # fmt: skip
