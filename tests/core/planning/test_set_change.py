"""Set changes: who has two sets, how a week's tranche fits what the shop can take, in which order, and when it is over.

Which labels mean a change is common practice, from memory; shares and chances of visits are those of the pacing design.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from typing import Any

import pytest

from followup.core.consent import ConsentStanding
from followup.core.customer import Phone
from followup.core.planning.decide import decide, still_wanted
from followup.core.planning.pacing.board import Board
from followup.core.planning.pacing.room import CHECK_IN
from followup.core.planning.pacing.tranche import order, tranche
from followup.core.planning.pacing.weeks import LANDING_SHARES
from followup.core.planning.picture import CarPicture, DueItem, EarlierInvite, Rest, SetChange
from followup.core.planning.set_change import SetsKnown, changes_to, usual_set, why_not_now
from followup.core.visit import Visit, Work
from tests.core.planning.cars import MEASURED_ON, NOW, PHONE, car
from tests.core.planning.pacing.drawn import SUNDAY, room

SEASON = SetChange(7, "winter", date(2026, 3, 2), date(2026, 4, 30))
# A text leaves on Monday, so that the week after it lasts from Tuesday to Monday: six of its days in this week, one in
# the next. The second calendar week gets most.
LARGEST = LANDING_SHARES[0] / 7 + LANDING_SHARES[1] * 6 / 7
FALL, SPRING = date(2025, 11, 20), date(2026, 4, 2)
PAD = DueItem("brake_pad", "front_left", 0.05, 0.4, MEASURED_ON)


def drawn_car(**changes: Any) -> CarPicture:
    """A car whose turn it is; nothing else is due on it."""
    return car(**{"due": (), "set_change": SEASON, **changes})


def several(count: int, **changes: Any) -> list[CarPicture]:
    """Cars of so many phones."""
    return [
        drawn_car(vehicle=f"C{number}", phone=replace(PHONE, id=number), **changes) for number in range(1, count + 1)
    ]


@pytest.mark.parametrize(
    ("known", "to_winter", "to_summer"),
    [
        (SetsKnown(), False, False),
        (SetsKnown(((FALL, "winter"),)), False, True),
        (SetsKnown(((FALL, "winter"), (SPRING, "summer"))), True, False),
        (SetsKnown(((FALL, "winter"), (SPRING, "all_season"))), True, False),
        (SetsKnown(((SPRING, "summer"),)), True, False),
        (SetsKnown(((SPRING, "all_season"),)), False, False),
        (SetsKnown(((SPRING, "all_season"),), other="stored_here"), True, False),
        (SetsKnown(((SPRING, "summer"),), other="none"), False, False),
        # Changed here since it was last seen: what was on is off.
        (SetsKnown(((FALL, "winter"),), changed_on=(SPRING,)), True, False),
        (SetsKnown(((FALL, "winter"),), changed_on=(date(2025, 10, 1),)), False, True),
    ],
)
def test_who_changes_to_which_set(known: SetsKnown, to_winter: bool, to_summer: bool) -> None:
    assert changes_to(known, "winter", "IL") is to_winter
    assert changes_to(known, "summer", "IL") is to_summer


def test_where_hardly_anybody_has_winter_tires_summer_ones_mean_nothing() -> None:
    assert not changes_to(SetsKnown(((SPRING, "summer"),)), "winter", "FL")
    assert (usual_set("IL", date(2026, 9, 28)), usual_set("IL", date(2026, 3, 10))) == ("winter", "summer")


def test_whoever_was_drawn_is_told_once_with_what_joins_the_visit() -> None:
    text = decide(drawn_car(due=(PAD,)), NOW).text
    assert text is not None
    assert (text.reason, text.items) == ("set_change", (("set_change", ""), PAD.at))
    told = EarlierInvite("set_change", text.raised_by, 1, NOW, "C1", text.items)
    later = NOW + timedelta(days=20)
    assert decide(drawn_car(due=(PAD,), invites=(told,)), later).text is None


def test_what_is_due_by_itself_rides_along_but_a_legal_limit_goes_first() -> None:
    due = replace(PAD, chance_by_lead=0.5, chance_near=0.9)
    text = decide(drawn_car(due=(due,)), NOW).text
    assert text is not None and (text.reason, text.items[1:]) == ("set_change", (due.at,))
    legal = decide(drawn_car(due=(replace(due, chance_legal=0.9),)), NOW).text
    assert legal is not None and (legal.reason, legal.is_legal) == ("due_work", True)


@pytest.mark.parametrize(
    "changes",
    [
        {"set_change": None},
        {"set_change": replace(SEASON, until_on=date(2026, 3, 9))},
        {"visits": (Visit("V9", datetime(2026, 3, 3, 15, 0, tzinfo=UTC), datetime(2026, 3, 3, 20, 0, tzinfo=UTC)),)},
        {"work": (Work("set_change", "", "replaced", date(2026, 3, 4)),)},
        {"rests": (Rest("set_change", "", "no", date(2026, 3, 4)),)},
        {"rests": (Rest("set_change", "", "done", date(2026, 3, 4)),)},
        {"consent": ConsentStanding(frozenset({"visits"}), False, None)},
        {"consent": ConsentStanding(frozenset({"visits", "upkeep"}), True, None)},
    ],
)
def test_who_is_not_invited(changes: dict[str, Any]) -> None:
    assert decide(drawn_car(), NOW).text is not None
    text = decide(drawn_car(**changes), NOW).text
    assert text is None or text.reason == "after_visit"
    if changes.get("set_change", SEASON) is SEASON:
        assert why_not_now(drawn_car(**changes), SEASON, NOW) is not None


def test_what_was_changed_or_said_before_the_season_counts_for_the_one_before() -> None:
    before = {
        "work": (Work("set_change", "", "replaced", date(2025, 11, 4)),),
        "rests": (Rest("set_change", "", "done", date(2025, 11, 4)),),
    }
    assert decide(drawn_car(**before), NOW).text is not None


def test_a_text_that_has_not_left_is_dropped_when_the_season_ends_or_is_paused() -> None:
    picture = drawn_car()
    text = decide(picture, NOW).text
    assert text is not None
    planned = EarlierInvite(text.reason, text.raised_by, 1, text.leaves_at, "C1", text.items)
    standing = replace(picture, invites=(planned,))
    assert still_wanted(text, standing, NOW, NOW) is None
    for gone in (None, replace(SEASON, until_on=date(2026, 3, 9))):
        stop = still_wanted(text, replace(standing, set_change=gone), NOW, NOW)
        assert stop is not None and stop.rule == "reason_ended"


@pytest.mark.parametrize("hours", [0.5, 3.0, 12.0])
def test_a_tranche_is_as_large_as_the_weeks_after_can_take(hours: float) -> None:
    """Worked out by hand: a change takes 0.6 labor hours of the tire skill; 35 in 100 of its texts bring one."""
    board = Board(room({"tires": hours, CHECK_IN: 500.0}))
    found = tranche(several(200), SEASON, board, NOW)
    assert len(found) == int(hours / (0.35 * 0.6 * LARGEST) + 1e-9)
    assert all(left >= -1e-9 for left in board.left["tires"])


def test_check_in_times_bound_it_too_and_a_full_shop_invites_nobody() -> None:
    assert len(tranche(several(200), SEASON, Board(room({"tires": 500.0, CHECK_IN: 1.0})), NOW)) == int(
        1 / (0.35 * LARGEST)
    )
    assert tranche(several(20), SEASON, Board(room({"tires": 0.0, CHECK_IN: 50.0})), NOW) == []


def test_what_is_expected_already_makes_the_tranche_smaller() -> None:
    there = room({"tires": 12.0, CHECK_IN: 500.0})
    weeks = len(there.free["tires"])
    half = {"tires": [6.0] * weeks, CHECK_IN: [0.0] * weeks}
    full = tranche(several(200), SEASON, Board(there), NOW)
    assert len(tranche(several(200), SEASON, Board(there, half), NOW)) == pytest.approx(len(full) / 2, abs=1)


def test_who_needs_other_work_comes_first_and_the_others_by_a_lot_of_the_season() -> None:
    cars = several(60)
    needing = replace(cars[40], due=(PAD,))
    found = order([*cars[:40], needing, *cars[41:]], SEASON, NOW)
    assert found[0] is needing
    lot = [one.phone.id for one in order(cars, SEASON, NOW)]
    assert lot == [one.phone.id for one in order(reversed(cars), SEASON, NOW)] != sorted(lot)
    assert lot != [one.phone.id for one in order(cars, replace(SEASON, season_id=8), NOW)], "another year, another lot"
    # Fair: over many seasons each of sixty is among the first ten about one time in six.
    first = [
        sum(one.phone.id == 5 for one in order(cars, replace(SEASON, season_id=season), NOW)[:10])
        for season in range(300)
    ]
    # Binomial of 300 at 1/6: mean 50, standard deviation 6.5; within three of them.
    assert 30 < sum(first) < 70


def test_a_phone_with_two_cars_is_drawn_for_one_of_them() -> None:
    two = [drawn_car(vehicle="C1"), drawn_car(vehicle="C2")]
    found = tranche(two, SEASON, Board(room({"tires": 50.0, CHECK_IN: 50.0}, SUNDAY)), NOW)
    assert len(found) == 1 and isinstance(found[0].phone, Phone)
