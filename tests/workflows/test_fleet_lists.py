"""A fleet's weekly list through the workflows: kept, planned, sent once a week, stopped. Source: trade rules."""

from __future__ import annotations

from datetime import date, datetime, timedelta
from typing import cast

import pytest

from followup.core.planning.fleet_list import week_of
from followup.core.wording_checks import check_wording
from followup.storage import people
from followup.transports.transport import InboundText, Transport
from followup.workflows import settle_requests
from followup.workflows.answer_inbound import answer_waiting
from followup.workflows.forecast_windows import forecast_windows
from followup.workflows.keep_fleet_list import end_fleet_list, keep_fleet_list, look_at_fleet
from followup.workflows.keep_inbound import keep_inbound
from followup.workflows.plan_fleet_lists import plan_fleet_lists
from followup.workflows.plan_texts import plan_texts
from followup.workflows.send_texts import Sender, send_texts
from tests.workflows.counter import NOW, NUMBER, SECRET, Counter, Wire, fill, line, open_counter

DAY = timedelta(days=1)
TUESDAY = 1
# 11:00 AM at the shop on a Tuesday: invites may leave.
LEAVES = NOW + timedelta(hours=2)
AGREED = date(2026, 11, 20)
WORN = [
    *({"item": "brake_pad", "position": one, "unit": "mm", "value": 3} for one in ("front_left", "front_right")),
    {"item": "tire_tread", "position": "rear_left", "unit": "32nds", "value": 3},
]


@pytest.fixture
def counter(memory_url: str) -> Counter:
    """A shop with a contact whose car has worn parts."""
    counter = open_counter(memory_url)
    worn = line(inspection="I-2", inspected_at="2026-10-29T09:10", odometer=49_000, readings=WORN)
    fill(counter.store, counter.shop_id, counter.staff_id, worn)
    forecast_windows(counter.store, counter.shop_id, NOW, [counter.vehicle_id])
    return counter


def keep(counter: Counter, unit: str = "12", weekday: int = TUESDAY, how: str = "signed_paper") -> dict[str, str]:
    """Write the list down."""
    units = {counter.vehicle_id: unit}
    return keep_fleet_list(
        counter.store, counter.shop_id, counter.person_id, weekday, AGREED, how, units, counter.staff_id, NOW
    )


def send(counter: Counter, now: datetime) -> list[str]:
    """Plan and let everything leave that may at that moment; the bodies."""
    plan_texts(counter.store, counter.shop_id, now)
    plan_fleet_lists(counter.store, counter.shop_id, now)
    wire = Wire()
    sender = Sender(cast(Transport, wire), "https://texts.example", True, None, SECRET, lambda _s: None)
    send_texts(counter.store, counter.shop_id, sender, lambda: now, "test")
    return [text.body for text in wire.handed]


def test_one_list_a_week_by_unit_number_in_place_of_invites(counter: Counter) -> None:
    assert keep(counter) == {}
    told = {days: send(counter, LEAVES + days * DAY) for days in range(22)}
    assert [days for days, bodies in told.items() if bodies] == [0, 7, 14, 21], "no invite, and no cap of invites"
    (body,) = told[0]
    assert "12: " in body and "brake pads" in body and "(312) 555-0100" in body
    facts = {"shop": "Elm Street Auto", "shop_phone": "(312) 555-0100", "units": ["12: front brake pads"]}
    assert check_wording(body, "fleet_list", "en", facts) == []


def test_planning_again_plans_nothing_twice_and_a_day_late_is_not_lost(counter: Counter) -> None:
    keep(counter)
    assert [plan_fleet_lists(counter.store, counter.shop_id, LEAVES + DAY) for _ in range(3)] == [1, 0, 0]


@pytest.mark.parametrize(("day", "week"), [(0, None), (1, "2026-W48"), (3, "2026-W48"), (4, None)])
def test_a_list_is_of_its_week_and_two_days_late_at_most(day: int, week: str | None) -> None:
    assert week_of(date(2026, 11, 23) + day * DAY, TUESDAY) == week


def test_the_week_over_new_year_has_one_name() -> None:
    """ISO 8601: December 31, 2026 and January 1, 2027 are of week 53."""
    assert week_of(date(2026, 12, 31), 3) == week_of(date(2027, 1, 1), 3) == "2026-W53"


def test_a_unit_that_is_booked_falls_off_the_list(counter: Counter) -> None:
    keep(counter)
    at = NOW + 3 * DAY
    plan_fleet_lists(counter.store, counter.shop_id, NOW)
    settle_requests.book_by_phone(
        counter.store, counter.shop_id, counter.person_id, counter.vehicle_id, at, [], counter.by, NOW, overrules=True
    )
    assert not any("12:" in body for body in send(counter, LEAVES))


def test_its_stop_stops_it(counter: Counter) -> None:
    keep(counter)
    assert len(send(counter, LEAVES)) == 1
    keep_inbound(counter.store, InboundText("in-stop", NUMBER, "+13125550101", "STOP"), LEAVES + timedelta(minutes=5))
    answer_waiting(counter.store, counter.shop_id, LEAVES + timedelta(minutes=5), SECRET)
    send(counter, LEAVES + timedelta(minutes=5))
    assert [send(counter, LEAVES + days * DAY) for days in (7, 14)] == [[], []]
    seen = look_at_fleet(counter.store, counter.shop_id, counter.person_id)
    assert seen is not None and seen.why_not == "The number asked us to stop texting."


def test_an_ended_list_leaves_no_more_and_invites_come_again(counter: Counter) -> None:
    keep(counter)
    plan_fleet_lists(counter.store, counter.shop_id, NOW)
    assert end_fleet_list(counter.store, counter.shop_id, counter.person_id, counter.staff_id, NOW)
    assert not end_fleet_list(counter.store, counter.shop_id, counter.person_id, counter.staff_id, NOW)
    (body,) = send(counter, LEAVES)
    assert "12:" not in body and "blue wagon" in body
    with counter.store.read() as connection:
        person = people.load_person(connection, counter.shop_id, counter.person_id)
    assert person is not None and not person["is_fleet"]


@pytest.mark.parametrize(
    ("how", "wrong"),
    [({"weekday": 6}, "weekday"), ({"how": "spoken"}, "how"), ({"unit": ""}, ""), ({"unit": "x" * 13}, "unit_1")],
)
def test_what_makes_no_sense_is_told_by_its_field(counter: Counter, how: dict[str, object], wrong: str) -> None:
    assert list(keep(counter, **how)) == [wrong]  # type: ignore[arg-type]  # the test's own values
