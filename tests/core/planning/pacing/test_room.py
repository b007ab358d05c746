"""What the weeks hold, when visits come of a text, what waiting costs.

Sources: the expected losses of the project's reference numbers (a log-normal due date, checked there by Monte Carlo);
the slots of `core/planning/slots.py`; the rest by hand.
"""

from __future__ import annotations

import math
from dataclasses import replace
from datetime import UTC, date, datetime
from itertools import pairwise
from statistics import NormalDist

import pytest
from hypothesis import given
from hypothesis import strategies as st

from followup.core.forecast.window import CURVE_CHANCES, DueCurve
from followup.core.planning.pacing.message import costs_of, expected_loss
from followup.core.planning.pacing.room import CHECK_IN, TextOut, expected, room_of
from followup.core.planning.pacing.weeks import POSTPONED, landings, monday_of, week_of
from followup.core.planning.slots import Taken
from tests.core.planning.cars import SHOP, shop
from tests.core.planning.pacing.drawn import room

# A Tuesday; the week begins on March 9.
TODAY = date(2026, 3, 10)
_NOON = datetime(2026, 3, 12, 17, 0, tzinfo=UTC)


@given(st.floats(-40, 90), st.floats(-10, 60))
def test_what_is_ahead_of_a_day_and_what_is_behind_make_the_whole(leaves: float, day: float) -> None:
    assert sum(landings(leaves).values()) == pytest.approx(1.0)
    ahead = sum(landings(leaves, day).values())
    behind = sum(landings(leaves).values()) - ahead
    gone = day - leaves
    shares = (0.35, 0.30, 0.20, 0.15)
    by_hand = sum(share * min(max(gone / 7 - number, 0), 1) for number, share in enumerate(shares))
    assert behind == pytest.approx(by_hand, abs=1e-6)


def test_a_week_after_a_text_is_spread_over_its_seven_days() -> None:
    assert landings(7.0) == pytest.approx({1: 0.35, 2: 0.30, 3: 0.20, 4: 0.15})
    assert landings(3.5) == pytest.approx({0: 0.175, 1: 0.325, 2: 0.25, 3: 0.175, 4: 0.075})


def test_weeks_are_counted_from_their_mondays() -> None:
    monday = monday_of(TODAY)
    assert monday == date(2026, 3, 9)
    assert [week_of(monday, day) for day in (date(2026, 3, 8), monday, date(2026, 3, 15), date(2026, 3, 16))] == [
        -1, 0, 0, 1,
    ]  # fmt: skip


def test_a_week_holds_its_open_days_less_what_is_given_away() -> None:
    """Six open days of 12 general hours x 0.85; this week four, from tomorrow. Memorial Day is the shop's holiday."""
    taken = [
        Taken(_NOON, {"general": 2.0}), Taken(_NOON, {"general": 1.0, "brakes": 7.5}, frozenset({"early_drop"})),
    ]  # fmt: skip
    there = room_of(SHOP, taken, TODAY)
    assert there.begins_on == date(2026, 3, 9)
    assert there.planned["general"][0] == pytest.approx(4 * 12 * 0.85)
    assert there.planned["general"][1] == pytest.approx(6 * 12 * 0.85)
    assert there.booked["general"][:2] == pytest.approx((3.0, 0.0))
    assert there.free["general"][0] == pytest.approx(4 * 12 * 0.85 - 3.0)
    # Brakes are overbooked on that day (6.8 hours): the other three days keep theirs.
    assert there.free["brakes"][0] == pytest.approx(3 * 8 * 0.85)
    # 7:30 to 18:00 in quarters, Saturday 8:00 to 14:00; an early drop takes no advisor's time.
    assert there.planned[CHECK_IN][1] == 5 * 42 + 24
    assert there.booked[CHECK_IN][0] == 1
    week_of_memorial_day = week_of(there.begins_on, date(2026, 5, 25))
    assert there.planned["general"][week_of_memorial_day] == pytest.approx(5 * 12 * 0.85)


def test_a_skill_without_hours_is_left_out() -> None:
    there = room_of(shop(labor_hours={"general": 12.0, "electric": 0.0}), [], TODAY)
    assert set(there.free) == {"general", CHECK_IN}


def test_texts_that_are_out_are_expected_for_what_is_left_of_their_four_weeks() -> None:
    there = replace(room({"tires": 10.0}), today=date(2026, 12, 6))
    # Left four weeks ago, two weeks ago.
    old = TextOut(date(2026, 11, 8), 0.35, {"tires": 2.0})
    assert sum(expected(there, [old])["tires"]) == pytest.approx(0.0)
    half = TextOut(date(2026, 11, 22), 0.35, {"tires": 2.0})
    # Who has not booked in two of four weeks: 0.35 x 0.35 of 1 - 0.35 x 0.65.
    left = 0.35 * 0.35 / (1 - 0.35 * 0.65)
    assert sum(expected(there, [half])["tires"]) == pytest.approx(2.0 * left)
    assert expected(there, [half])["tires"][1] == pytest.approx(2.0 * left * 0.20 / 0.35)
    assert sum(expected(there, [half])[CHECK_IN]) == pytest.approx(left)
    # A wish that waits for an advisor comes for sure.
    wish = TextOut(date(2026, 10, 1), 1.0, {"tires": 1.0})
    assert sum(expected(there, [wish])["tires"]) == pytest.approx(1.0)


@pytest.mark.parametrize(
    ("middle", "spread", "odds", "best_day", "least"),
    [(200.0, 0.5, (1, 4), 131.303, 124.8056), (365.0, 0.35, (1, 9), 233.074, 188.6453)],
)
def test_the_loss_of_a_visit_is_that_of_the_reference(
    middle: float, spread: float, odds: tuple[int, int], best_day: float, least: float
) -> None:
    """Least loss of a log-normal due date at the quantile that the balance says; twenty dots stand for the curve."""
    normal = NormalDist(math.log(middle), spread)
    curve = DueCurve(0.0, tuple(math.exp(normal.inv_cdf(chance)) for chance in CURVE_CHANCES))
    scale = sum(odds)
    at_best = scale * expected_loss(curve, best_day, odds[0] / scale)
    assert at_best == pytest.approx(least, rel=0.03)
    assert at_best <= scale * min(expected_loss(curve, best_day + away, odds[0] / scale) for away in (-30.0, 30.0))


def test_waiting_costs_more_each_week_and_nothing_before_the_first() -> None:
    curve = DueCurve.certain(10.0)
    there = room({"tires": 1.0})
    costs = costs_of([(curve, 0)], 0.35, 2, there, 0.25)
    assert costs[:2] == (0.0, 0.0) and len(costs) == POSTPONED + 1
    # Due already by then: each week adds seven days late at .75, times the chance of a visit.
    assert [b - a for a, b in pairwise(costs[2:])] == pytest.approx([0.35 * 0.75 * 7] * 10, abs=1e-5)
    # Far from due: earlier or later is alike, and the earlier week is taken.
    far = costs_of([(DueCurve.certain(900.0), 0)], 0.35, 0, there, 0.25)
    assert all(0 < b - a < 1e-5 for a, b in pairwise(far))
    # Two jobs lose twice as much.
    assert costs_of([(curve, 0)] * 2, 0.35, 0, there, 0.25)[-1] == pytest.approx(
        2 * costs_of([(curve, 0)], 0.35, 0, there, 0.25)[-1], abs=1e-4
    )
