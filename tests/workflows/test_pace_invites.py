"""Pacing on a real database: nobody is invited whom the shop cannot take, who waits is told why, legal limits do not.

Eight cars whose tires are at the shop's limit (four tires: 1.2 labor hours a visit) at a shop with few tire hours.
Sources: this project's rules for the trade; the expected hours are reckoned by hand.
"""

from __future__ import annotations

import json
from collections.abc import Iterator
from dataclasses import replace
from datetime import date, datetime, timedelta
from pathlib import Path
from typing import Any

import pytest
from sqlalchemy import select, update

from followup import clock
from followup.core.planning.pacing.weeks import ALL_WEEKS
from followup.core.shop import closed_because
from followup.core.wall import to_wall
from followup.storage import outbox, paced, room, shops, tables
from followup.storage.rows import Row
from followup.wiring import House
from followup.workflows import pace_invites as pacing
from followup.workflows.look_at_car import look_at_car
from followup.workflows.pace_invites import pace_invites
from followup.workflows.plan_texts import look_at_plan, plan_texts
from tests.shop_of_tests import BEGIN, open_test_house
from tests.workflows.counter import line

CARS = 8
PLACES = ("front_left", "front_right", "rear_left", "rear_right")
# 1.25 hours x .85 on six days: 6.4 a week, and 4.25 of this one from Wednesday on. Each text expects .35 x 1.2 hours.
FEW = {"general": 12.0, "tires": 0.25, "brakes": 8.0, "electric": 3.0}
_NOTHING = (0.0,) * ALL_WEEKS


@pytest.fixture
def house(database_url: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[House]:
    """A shop in Chicago on a Tuesday morning, with cars that are due and few tire hours."""
    opened, _ = open_test_house(database_url, tmp_path, monkeypatch)
    _rules(opened, labor_hours=FEW)
    _bring_in(opened, range(CARS))
    yield opened
    opened.close()


def _rules(house: House, **rules: Any) -> None:
    with house.store.write() as connection:
        shop = shops.load_shop(connection, 1)
        shops.save_rules(connection, 1, replace(shop.rules, **rules), "Lee Fox", house.now(), "test")


def _bring_in(house: House, cars: range, tread: float = 4.0, code: str = "I") -> None:
    lines = []
    for number in cars:
        told = json.loads(line(name=f"Driver {number}", label=f"car {number}"))
        told["inspection"] = f"{code}-{number}"
        told["customer"] |= {"id": f"C-{number}", "phone": f"+1312555{100 + number:04}"}
        told["vehicle"] |= {"id": f"V-{number}", "plate": f"TEST {number}"}
        told["readings"] = [
            {"item": "tire_tread", "position": place, "unit": "32nds", "value": tread} for place in PLACES
        ]
        lines.append(json.dumps(told))
    assert {one.outcome for one in house.keep_inspections(1, lines, "test")} == {"new"}
    house.forecast(1)


def _placed(house: House) -> list[Row]:
    with house.store.read() as connection:
        return list(paced.placed_invites(connection, 1, house.now()).values())


def _planned(house: House) -> list[Row]:
    with house.store.read() as connection:
        return [row for row in outbox.queued_texts(connection, 1) if row["reason"] == "due_work"]


def _used(house: House) -> dict[str, list[float]]:
    """What the texts that are out are expected to use, as it stands now."""
    with house.store.read() as connection:
        return room.look_at_room(connection, shops.load_shop(connection, 1), house.now())[1]


def _expected_within_free(house: House, before: dict[str, list[float]] | None = None) -> bool:
    """Whether what texts out and placed invites are expected to use fits every week, as it stands now. What was
    expected `before` anything was placed may be more: who has not come yet comes the more surely."""
    now = house.now()
    with house.store.read() as connection:
        shop = shops.load_shop(connection, 1)
        there, used = room.look_at_room(connection, shop, now)
        used = room.with_placed(connection, shop, there, used, paced.placed_invites(connection, 1, now).values(), now)
    return all(
        each <= max(free, old) + 1e-9
        for name in there.free
        for each, free, old in zip(used[name], there.free[name], before[name] if before else _NOTHING, strict=True)
    )


def test_some_leave_the_others_wait_and_are_told_why(house: House) -> None:
    house.plan(1)
    texts, rows = _planned(house), _placed(house)
    assert 0 < len(texts) < CARS and len(rows) == CARS
    waiting = [row for row in rows if row["says"]]
    assert len(waiting) == CARS - len(texts)
    assert all(row["begins_on"] is None or row["begins_on"] > date(2026, 11, 24) for row in waiting)
    assert _expected_within_free(house)
    told = [why.says for one in look_at_plan(house.store, 1, house.now()) for why in one.decision.why_not]
    assert sum(says.startswith("we wait until the week of ") and says.endswith("because tires hours are full")
               for says in told) == len([row for row in waiting if row["begins_on"]])  # fmt: skip
    page = look_at_car(house.store, 1, waiting[0]["vehicle_id"], house.now())
    assert page is not None
    assert waiting[0]["says"] in [why.says for why in page.plans[0].decision.why_not]


def test_twice_is_once_and_another_day_or_other_rules_are_anew(house: House) -> None:
    assert pace_invites(house.store, 1, house.now()) == CARS
    first = _placed(house)
    assert pace_invites(house.store, 1, house.now()) is None
    assert _placed(house) == first
    _rules(house, labor_hours={**FEW, "tires": 6.0})
    assert pace_invites(house.store, 1, house.now()) == CARS
    assert not any(row["says"] for row in _placed(house))
    clock.move_to(BEGIN + timedelta(days=1))
    assert pace_invites(house.store, 1, house.now()) == CARS
    _rules(house, paces_invites=False)
    assert pace_invites(house.store, 1, house.now()) is None
    assert house.plan(1) == CARS


def test_a_night_that_died_in_between_is_begun_anew(house: House, monkeypatch: pytest.MonkeyPatch) -> None:
    def dies(*_: object) -> None:
        raise KeyboardInterrupt

    monkeypatch.setattr(pacing, "_ROWS_AT_ONCE", 3)
    with monkeypatch.context() as patched:
        patched.setattr(paced, "end_run", dies)
        with pytest.raises(KeyboardInterrupt):
            pace_invites(house.store, 1, house.now())
    with house.store.read() as connection:
        assert len(connection.execute(select(tables.paced_invites)).all()) == CARS
    assert _placed(house) == []
    assert pace_invites(house.store, 1, house.now()) == CARS
    assert len(_placed(house)) == CARS


def test_who_waits_leaves_when_its_week_comes(house: House) -> None:
    """Nobody answers: the visits of the first texts do not come, so that in time all are invited."""
    house.plan(1)
    first = {row["number"] for row in _planned(house)}
    for days in range(1, 36):
        clock.move_to(BEGIN + timedelta(days=days))
        if closed_because(house.shop(1), to_wall(house.now(), "America/Chicago").date()):
            continue  # nothing leaves on such a day, so what is planned leaves later than it was placed for
        _all_left(house)
        before = _used(house)
        house.plan(1)
        assert _expected_within_free(house, before), days
    with house.store.read() as connection:
        all_texts = [row for row in outbox.texts_of_shop(connection, 1) if row["reason"] == "due_work"]
    assert {row["number"] for row in all_texts} > first
    assert len({row["number"] for row in all_texts}) == CARS


def _all_left(house: House) -> None:
    table = tables.texts
    with house.store.write() as connection:
        connection.execute(update(table).where(table.c.state == "planned").values(state="sent", sent_at=table.c.due_at))


def test_a_legal_limit_does_not_wait_for_expectations(house: House) -> None:
    house.plan(1)
    _bring_in(house, range(20, 23), tread=1.0)
    house.plan(1)
    told = {row["number"] for row in _planned(house) if row["facts"]["is_legal"]}
    assert told == {f"+1312555{100 + number:04}" for number in range(20, 23)}


def test_what_is_news_between_two_nights_goes_into_what_is_left(house: House) -> None:
    house.plan(1)
    before = len(_planned(house))
    _bring_in(house, range(30, 34))
    house.plan(1)
    assert len(_placed(house)) == CARS + 4
    assert len(_planned(house)) == before, "all that is left of the near weeks is given away"
    assert _expected_within_free(house)
    # A car that is measured anew is news too, and is placed once more, in the same night's run.
    waiting = next(row for row in _placed(house) if row["says"])
    clock.move_to(BEGIN + timedelta(hours=1))
    with house.store.write() as connection:
        of_car = tables.due_windows.c.vehicle_id == waiting["vehicle_id"]
        connection.execute(update(tables.due_windows).where(of_car).values(made_at=house.now()))
    plan_texts(house.store, 1, house.now())
    again = next(row for row in _placed(house) if row["vehicle_id"] == waiting["vehicle_id"])
    assert again["run_id"] == waiting["run_id"] and again["made_at"] == house.now()


def test_nothing_waits_for_a_night_that_is_long_past(house: House) -> None:
    """Where no night places anything any more, invites leave as if nothing were paced."""
    house.plan(1)
    assert any(row["says"] for row in _placed(house))
    clock.move_to(BEGIN + timedelta(days=4))
    assert _placed(house) == []
    planned = plan_texts(house.store, 1, house.now())
    assert planned > 0


def test_the_shop_that_cannot_pace_plans_all_the_same(house: House, monkeypatch: pytest.MonkeyPatch) -> None:
    def broken(*_: object) -> None:
        raise RuntimeError

    monkeypatch.setattr(pacing, "pace", broken)
    assert house.plan(1) == CARS


def test_the_day_of_the_shop_counts_not_that_of_the_clock(house: House) -> None:
    assert pace_invites(house.store, 1, BEGIN) == CARS
    # 23:30 in Chicago is the next day in UTC.
    late = datetime.fromisoformat("2026-11-25T05:30:00+00:00")
    assert pace_invites(house.store, 1, late) is None
    assert pace_invites(house.store, 1, late + timedelta(hours=1)) == CARS
