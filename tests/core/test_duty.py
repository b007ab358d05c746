"""Duty: who is told at which minute, out of hours, and the open hours that nobody watches.

The clocks are this project's own rules, after common practice of the trade.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given
from hypothesis import strategies as st

from followup.core.duty import CLOCKS, Alert, Roster, Telling, Watch, gaps, may_say_alerted, next_step
from followup.core.shop import WEEKDAYS, Shop, is_open

SHOP = Shop(1, "Elm Street Garage", "America/Chicago", "+13125550100", "+13125550101", state="IL")
ANN, BEN, CAM, MANAGER, OWNER, ON_CALL = 11, 12, 13, 21, 31, 41
WEEK = {day: (Watch("07:30", "12:00", (ANN, BEN, CAM)), Watch("12:00", "18:00", (BEN, CAM))) for day in WEEKDAYS[:5]}
ROSTER = Roster(WEEK | {"sat": (Watch("08:00", "14:00", (CAM,)),)}, MANAGER, OWNER)
WITH_ON_CALL = replace(ROSTER, on_call=ON_CALL)


def at(wall: str) -> datetime:
    """The instant of a wall time at the shop."""
    return datetime.fromisoformat(wall).replace(tzinfo=ZoneInfo(SHOP.zone)).astimezone(UTC)


def told(kind: str, raised: str, roster: Roster = ROSTER) -> list[tuple[float, tuple[int, ...]]]:
    """All tellings of an alert that nobody acknowledges: minutes after it was raised, and who."""
    alert, found = Alert(kind, at(raised)), []
    while step := next_step(alert, roster, SHOP):
        found.append(((step.at - alert.raised_at) / timedelta(minutes=1), step.told))
        alert = replace(alert, steps_done=step.steps_done)
    return found


@pytest.mark.parametrize(
    ("kind", "steps"),
    [
        ("symptom_now", [(0, (ANN,)), (5, (ANN, BEN, CAM)), (15, (OWNER,))]),
        ("symptom_today", [(0, (ANN,)), (15, (MANAGER,))]),
        ("legal_words", [(0, (MANAGER,)), (15, (OWNER,))]),
        ("call_me", [(0, (ANN,)), (30, (MANAGER,))]),
        ("complaint", [(0, (ANN,)), (30, (MANAGER,))]),
        ("request", [(0, (ANN,)), (60, (MANAGER,))]),
        ("judgment", [(0, (ANN,)), (60, (MANAGER,))]),
        ("unclear", [(480, (BEN,))]),
    ],
)
def test_the_clocks_of_an_open_hour(kind: str, steps: list[tuple[float, tuple[int, ...]]]) -> None:
    assert told(kind, "2026-03-10T10:00") == steps


def test_who_is_told_follows_the_hour_in_which_the_clock_runs_out() -> None:
    assert told("symptom_now", "2026-03-10T11:57") == [(0, (ANN,)), (5, (BEN, CAM)), (15, (OWNER,))]
    assert ROSTER.told_at(SHOP, at("2026-03-10T07:30")) == (ANN, BEN, CAM)
    assert ROSTER.told_at(SHOP, at("2026-03-10T18:00")) == (), "the closing minute is nobody's"
    assert told("symptom_now", "2026-03-10T17:58")[1] == (5, (MANAGER,)), "nobody is on duty after closing"


def test_after_hours_the_on_call_person_is_told_at_once() -> None:
    assert told("symptom_now", "2026-03-10T22:40", WITH_ON_CALL)[0] == (0, (ON_CALL,))
    assert told("symptom_today", "2026-03-10T22:40", WITH_ON_CALL)[0] == (0, (ON_CALL,))
    assert may_say_alerted("symptom_now", WITH_ON_CALL, SHOP, at("2026-03-10T22:40"))


def test_without_one_it_stands_first_in_the_mornings_calls() -> None:
    step = next_step(Alert("symptom_now", at("2026-03-10T22:40")), ROSTER, SHOP)
    assert step == Telling(at("2026-03-11T07:30"), (ANN,), 1, "first call")
    assert not may_say_alerted("symptom_now", ROSTER, SHOP, at("2026-03-10T22:40"))
    assert may_say_alerted("symptom_now", ROSTER, SHOP, at("2026-03-10T10:00"))
    saturday = next_step(Alert("symptom_now", at("2026-03-14T15:00")), ROSTER, SHOP)
    assert saturday is not None and saturday.at == at("2026-03-16T07:30"), "Sunday is closed"


def test_a_request_at_night_wakes_nobody() -> None:
    assert told("request", "2026-03-10T22:40", WITH_ON_CALL)[0] == (530, (ANN,))


def test_i_am_calling_stops_the_clocks_and_the_outcome_closes() -> None:
    alert = Alert("symptom_now", at("2026-03-10T10:00"), 1)
    assert next_step(replace(alert, is_acknowledged=True), ROSTER, SHOP) is None
    assert next_step(replace(alert, is_closed=True), ROSTER, SHOP) is None
    assert next_step(replace(alert, steps_done=3), ROSTER, SHOP) is None


def test_an_open_hour_that_nobody_watches_is_a_gap() -> None:
    monday = date(2026, 3, 9)
    assert gaps(ROSTER, SHOP, monday) == []
    late = Roster(WEEK | {"mon": (Watch("08:00", "12:00", (ANN,)), Watch("13:00", "17:30", (BEN,)))}, MANAGER, OWNER)
    found = gaps(late, SHOP, monday, 5)
    assert [(one.from_at, one.to_at) for one in found] == [
        (at("2026-03-09T07:30"), at("2026-03-09T08:00")),
        (at("2026-03-09T12:00"), at("2026-03-09T13:00")),
        (at("2026-03-09T17:30"), at("2026-03-09T18:00")),
    ]
    assert len(gaps(Roster(), SHOP, monday, 7)) == 6, "six open days"
    empty = Roster(WEEK | {"mon": (Watch("07:30", "18:00", ()),)}, MANAGER, OWNER)
    assert len(gaps(empty, SHOP, monday, 5)) == 1, "a watch without people watches nothing"


@given(st.sampled_from(sorted(CLOCKS)), st.integers(0, 60 * 24 * 300), st.booleans())
def test_every_alert_reaches_somebody_at_a_time_of_its_own(kind: str, minutes: int, has_on_call: bool) -> None:
    raised_at = datetime(2026, 1, 5, tzinfo=UTC) + timedelta(minutes=minutes)
    alert, last = Alert(kind, raised_at), raised_at
    roster = WITH_ON_CALL if has_on_call else ROSTER
    for _ in CLOCKS[kind].steps:
        step = next_step(alert, roster, SHOP)
        assert step is not None and step.told and step.at >= last
        if step.how == "first call":
            assert is_open(SHOP, step.at) or step.steps_done > 1
        last, alert = step.at, replace(alert, steps_done=step.steps_done)
    assert next_step(alert, roster, SHOP) is None
    if is_open(SHOP, raised_at) and CLOCKS[kind].is_at_once:
        assert last - raised_at <= timedelta(minutes=60)


def test_a_request_goes_to_the_manager_after_the_shops_own_minutes() -> None:
    """A rule of the shop: sixty minutes unless it says otherwise."""
    raised_at = at("2026-03-10T10:00")
    for minutes in (60, 20):
        shop = replace(SHOP, rules=replace(SHOP.rules, write_back_minutes=minutes))
        telling = next_step(Alert("request", raised_at, 1), ROSTER, shop)
        assert telling is not None
        assert telling.at - raised_at == timedelta(minutes=minutes)
