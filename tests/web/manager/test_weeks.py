"""The coming weeks: each bar in proportion and inside the picture, the table says the same, who waits is named."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import replace
from datetime import date, timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from followup.storage import paced, people, shops
from followup.web.weeks_chart import LEFT_PERCENT, RIGHT_PERCENT, lay_out
from followup.workflows.look_at_weeks import look_at_weeks
from tests.web.house import TestHouse
from tests.web.manager.conftest import Member

Members = Callable[[str], Member]
MONDAY = date(2026, 11, 30)
amounts = st.floats(0, 500)


@given(st.lists(st.tuples(amounts, amounts, amounts, amounts), min_size=1, max_size=12))
def test_bars_lie_end_to_end_inside_the_picture(weeks: list[tuple[float, float, float, float]]) -> None:
    drawn = lay_out([(MONDAY + timedelta(weeks=at), *one) for at, one in enumerate(weeks)])
    most = max(max(holds, booked + out + placed) for holds, booked, out, placed in weeks) or 1.0
    for line, (holds, *parts) in zip(drawn.weeks, weeks, strict=True):
        assert len(line.parts) == sum(hours > 0 for hours in parts)
        at = LEFT_PERCENT
        for part in line.parts:
            assert part.x == pytest.approx(at) and part.width >= 0
            at = part.x + part.width
        assert at <= RIGHT_PERCENT + 1e-6 and LEFT_PERCENT <= line.holds_x <= RIGHT_PERCENT + 1e-6
        assert at - LEFT_PERCENT == pytest.approx(sum(parts) / most * (RIGHT_PERCENT - LEFT_PERCENT), abs=1e-6)
        assert line.holds_x - LEFT_PERCENT == pytest.approx(holds / most * (RIGHT_PERCENT - LEFT_PERCENT), abs=1e-6)
        assert line.y < drawn.height


def _words(page: str) -> str:
    return re.sub(r"\s+", " ", re.sub(r"<[^>]+>", " ", page))


def test_a_shop_that_has_not_placed_yet_sees_what_the_weeks_hold(house: TestHouse, member: Members) -> None:
    page = _words(member("manager").page("/manager/weeks"))
    assert "Invites have not been placed yet" in page and "Nothing is booked or expected yet." in page
    seen = look_at_weeks(house.store, 1, house.now())
    assert set(seen.weeks) == {"general", "tires", "brakes", "electric", "check_in"}
    assert all(len(found) == 12 for found in seen.weeks.values())
    assert "Tires and alignment: labor hours" in page and "Check-in times" in page


def test_who_waits_is_named_with_the_reason_and_counted_in_its_week(house: TestHouse, member: Members) -> None:
    manager, now = member("manager"), house.now()
    begins_on = look_at_weeks(house.store, 1, now).weeks["tires"][2].begins_on
    says = f"we wait until the week of {begins_on:%B} {begins_on.day} because tires hours are full"
    with house.store.write() as connection:
        phone, car = people.all_phones(connection, 1)[0], people.all_vehicles(connection, 1)[0]
        run = paced.begin_run(connection, 1, now.date(), shops.load_shop(connection, 1).rules_version, now)
        assert run is not None
        row = {
            "shop_id": 1, "run_id": run["id"], "phone_id": phone["id"], "vehicle_id": car["id"], "reason": "due_work",
            "first_on": begins_on - timedelta(weeks=2), "begins_on": begins_on, "says": says, "is_legal": False,
            "chance": 0.35, "hours": {"tires": 2.0}, "made_at": now + timedelta(hours=1),
        }  # fmt: skip
        paced.keep_new(connection, [row])
        assert paced.end_run(connection, run, now, "linear program", {"invites": 1, "waiting": 1})
    page = _words(manager.page("/manager/weeks"))
    assert says in page and "1 invite waits for room" in page
    seen = look_at_weeks(house.store, 1, now)
    assert seen.leaving[2] == 1 and sum(seen.leaving) == 1
    assert sum(one.placed for one in seen.weeks["tires"]) == pytest.approx(0.7)
    assert seen.weeks["tires"][2].placed == pytest.approx(0.7 * 0.35 * 6 / 7)
    # What a manager looks for first is said first; only tires are asked for here.
    share, fullest = max(
        ((one.placed / one.holds, one) for one in seen.weeks["tires"] if one.holds), key=lambda found: found[0]
    )
    assert share > 0 and f"The fullest is the week of {fullest.begins_on:%b} {fullest.begins_on.day}: " in page
    with house.store.write() as connection:
        rules = shops.load_shop(connection, 1).rules
        shops.save_rules(connection, 1, replace(rules, paces_invites=False), "Lee Fox", now, "test")
    assert "Invites are not paced" in _words(manager.page("/manager/weeks"))
