"""A season of set changes lived through: begun by a manager, drawn week by week, told, booked, paused, over."""

from __future__ import annotations

import json
from dataclasses import dataclass
from datetime import UTC, date, datetime, timedelta
from typing import Any

import pytest

from followup.core.wording_checks import check_wording
from followup.storage import outbox, people, requests, rows, set_seasons, shops, tables
from followup.storage.rows import Row
from followup.workflows.change_rules import change_rules
from followup.workflows.draw_set_changes import draw_set_changes
from followup.workflows.keep_inspections import keep_inspections
from followup.workflows.keep_set_season import ALREADY, begin_season, change_season
from followup.workflows.look_at_sets import SeasonSeen, look_at_sets
from followup.workflows.plan_texts import plan_texts
from followup.workflows.send_texts.body import body_of, facts_of
from followup.workflows.send_texts.check import ask_once_more
from followup.workflows.send_texts.sight import look
from tests.workflows import counter as counters
from tests.workflows.counter import CONSENT, NOW, SECRET, Counter

CARS = 40
# A Monday, 9:00 at the shop.
MONDAY = datetime(2026, 11, 30, 15, 0, tzinfo=UTC)
WEEK = timedelta(weeks=1)
UNTIL = date(2027, 1, 10)
# So little time for tires that a week takes few: a day of 2 hours, of which 85 % are planned.
LITTLE = {"labor_hours": {"general": 12.0, "tires": 0.4, "brakes": 8.0, "electric": 3.0}}


@dataclass
class Fleet:
    """The shop with forty more customers who have two sets of tires."""

    counter: Counter

    def season(self) -> SeasonSeen:
        """What the manager's page shows."""
        seen = look_at_sets(self.counter.store, self.counter.shop_id, MONDAY).season
        assert seen is not None
        return seen

    def drawn(self) -> list[Row]:
        """Who was drawn so far."""
        with self.counter.store.read() as connection:
            season = set_seasons.open_season(connection, self.counter.shop_id)
            assert season is not None
            return set_seasons.drawn(connection, season["id"])

    def texts(self, *states: str) -> list[Row]:
        """The invites of the season."""
        with self.counter.store.read() as connection:
            found = outbox.texts_of_shop(connection, self.counter.shop_id)
        return [one for one in found if one["reason"] == "set_change" and (not states or one["state"] in states)]

    def tick(self, at: datetime) -> int:
        """What the clock does: draw, plan; all that is planned leaves at once."""
        drawn = draw_set_changes(self.counter.store, self.counter.shop_id, at)
        plan_texts(self.counter.store, self.counter.shop_id, at)
        with self.counter.store.write() as connection:
            for row in self.texts("planned"):
                outbox.change_text(connection, row["id"], state="sent", sent_at=at, in_flight_at=at)
        return drawn


def _line(number: int, **others: Any) -> str:
    told = json.loads(counters.line(inspection=f"S-{number}", inspected_at="2026-05-04T10:00", tire_set="summer"))
    consent = CONSENT if number else {**CONSENT, "covers": ["visits"]}
    told["customer"] = {"id": f"S-{number}", "name": f"Customer {number}", "phone": f"+1312555{1100 + number}"[:12],
                        "language": "en", "consent": consent}  # fmt: skip
    told["vehicle"] = {"id": f"S-{number}", "label": "green van", "class": "van", "powertrain": "gasoline"}
    told["readings"] = [{"item": "set_change", "found_as": "stored_here" if number % 2 else "with_customer"},
                        {"item": "lights", "found_as": "works"}]  # fmt: skip
    return json.dumps({**told, **others})


@pytest.fixture
def fleet(database_url: str) -> Fleet:
    """Forty customers; number 0 has agreed to texts about visits alone."""
    counter = counters.open_counter(database_url)
    answer = change_rules(counter.store, counter.shop_id, ["timing"], {**LITTLE, "writes_before_winter": False,
                          "invites_unseen": False}, counter.shop().rules_version, "Theo", "", NOW)  # fmt: skip
    assert answer.version, answer.wrong
    lines = [_line(number) for number in range(CARS)]
    kept = list(keep_inspections(counter.store, counter.shop_id, lines, NOW, "test", SECRET, accepts_doubtful=True))
    assert {one.outcome for one in kept} == {"new"}, [one.faults for one in kept][:3]
    return Fleet(counter)


def _begin(fleet: Fleet, at: datetime = MONDAY) -> int:
    counter = fleet.counter
    assert begin_season(counter.store, counter.shop_id, "winter", UNTIL, counter.staff_id, "Theo", at) is None
    with counter.store.read() as connection:
        season = set_seasons.open_season(connection, counter.shop_id)
    assert season is not None
    return int(season["id"])


def test_week_by_week_only_as_many_as_the_shop_can_take(fleet: Fleet) -> None:
    _begin(fleet)
    first = fleet.tick(MONDAY)
    # 0.4 hours x 85 % on six open days are 2.04 a week; in the fullest week fall 30.7 % of visits of 0.6 hours, of
    # which 35 in 100 texts bring one: 31 texts.
    assert 20 <= first <= 31
    assert fleet.tick(MONDAY + timedelta(hours=2)) == 0, "a week is drawn once"
    assert len(fleet.texts()) == first == len({one["phone_id"] for one in fleet.texts()})
    second = fleet.tick(MONDAY + WEEK)
    assert 0 < second < first, "those of the first week may come yet"
    for number in range(2, 5):
        fleet.tick(MONDAY + number * WEEK)
    assert len(fleet.drawn()) == CARS - 1, "all but the one without consent"
    assert len(fleet.texts()) == CARS - 1, "each once"
    seen = fleet.season()
    assert (seen.total("invited"), seen.to_go, seen.not_reached_count) == (CARS - 1, 0, 1)
    assert "agreed" in seen.not_reached[0].says or "consent" in seen.not_reached[0].says


def test_a_manager_sees_invited_booked_and_to_go_and_pauses(fleet: Fleet) -> None:
    season_id, counter = _begin(fleet), fleet.counter
    first = fleet.tick(MONDAY)
    car = fleet.texts()[0]
    with counter.store.write() as connection:
        person = people.persons_of_phone(connection, car["phone_id"])[0]
        requests.add_request(
            connection, MONDAY, "customer", shop_id=counter.shop_id, phone_id=car["phone_id"], person_id=person["id"],
            vehicle_id=car["vehicle_id"], state="confirmed", came_from="text", verbatim="ok", wanted=[],
            items=[["set_change", ""]], hours={"tires": 0.6}, slot_at=MONDAY + timedelta(days=3),
        )  # fmt: skip
    seen = fleet.season()
    assert (seen.total("invited"), seen.total("booked"), seen.to_go) == (first, 1, CARS - 1 - first)
    assert change_season(counter.store, counter.shop_id, season_id, "pause", "Theo", MONDAY)
    assert fleet.tick(MONDAY + WEEK) == 0 and fleet.season().is_paused
    assert change_season(counter.store, counter.shop_id, season_id, "go_on", "Theo", MONDAY)
    assert fleet.tick(MONDAY + WEEK) > 0
    with counter.store.read() as connection:
        did = [row["did"] for row in rows.every(connection, tables.audit.select().order_by(tables.audit.c.id))]
    assert did[-3:] == ["began a season of set changes", "paused a season of set changes",
                        "let a season of set changes go on"]  # fmt: skip


def test_the_words_and_what_has_not_left_is_dropped_by_a_pause(fleet: Fleet) -> None:
    season_id, counter = _begin(fleet), fleet.counter
    assert draw_set_changes(counter.store, counter.shop_id, MONDAY) > 0
    assert plan_texts(counter.store, counter.shop_id, MONDAY) > 0
    _check_words(fleet)
    text = fleet.texts("planned")[0]
    noon = MONDAY + timedelta(hours=3)
    with counter.store.read() as connection:
        sight = look(connection, counter.shop(), [text], noon, "")
        before = ask_once_more(connection, counter.shop(), text, sight, noon, needs_registration=False)
    assert change_season(counter.store, counter.shop_id, season_id, "pause", "Theo", noon)
    with counter.store.read() as connection:
        sight = look(connection, counter.shop(), [text], noon, "")
        after = ask_once_more(connection, counter.shop(), text, sight, noon, needs_registration=False)
    assert (before.what, after.what, after.because) == ("send", "drop", "the reason for it no longer stands")


def test_who_was_here_is_not_invited_and_with_the_last_day_it_is_over(fleet: Fleet) -> None:
    counter = fleet.counter
    _begin(fleet)
    assert begin_season(counter.store, counter.shop_id, "winter", UNTIL, 1, "Theo", MONDAY) == ALREADY
    with counter.store.write() as connection:
        for row in people.all_vehicles(connection, counter.shop_id):
            if row["code"] in ("S-3", "S-4"):
                rows.add(connection, tables.visits, shop_id=counter.shop_id, code=f"V-{row['id']}",
                         vehicle_id=row["id"], opened_at=MONDAY, closed_at=MONDAY)  # fmt: skip
    for number in range(5):
        fleet.tick(MONDAY + number * WEEK)
    assert len(fleet.texts()) == CARS - 3
    after = datetime(2027, 1, 11, 15, 0, tzinfo=UTC)
    assert draw_set_changes(counter.store, counter.shop_id, after) == 0
    page = look_at_sets(counter.store, counter.shop_id, after)
    assert page.season is None and page.past[0].because == "the season's last day is over"
    assert begin_season(counter.store, counter.shop_id, "summer", date(2026, 1, 1), 1, "Theo", after) is not None


WORDS = {"en": "time to put winter tires on your green van?", "es": "poner llantas de invierno a su green van?"}


def _check_words(fleet: Fleet) -> None:
    counter = fleet.counter
    for language, words in WORDS.items():
        row = {**fleet.texts()[0], "language": language}
        with counter.store.read() as connection:
            shop = shops.load_shop(connection, counter.shop_id)
            text = body_of(connection, shop, row, MONDAY).text
            facts = facts_of(connection, shop, row, MONDAY)
        assert words in text
        assert check_wording(text, "set_change", language, facts) == []
        assert row["asks"] == "visit" and ["set_change", ""] in row["facts"]["items"]
