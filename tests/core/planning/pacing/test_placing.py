"""Placing invites in weeks: against brute force, another solver and another formulation, and never above what is free.

Oracles: every placing tried; `scipy.optimize.milp` on whole messages; the program written anew with dense matrices and
solved by the simplex method.
"""

from __future__ import annotations

import itertools
import sys
from datetime import date
from random import Random

import numpy as np
import pytest
from scipy.optimize import Bounds, LinearConstraint, linprog, milp

from followup.core.planning.pacing.board import Board
from followup.core.planning.pacing.greedy import by_arrival, by_regret
from followup.core.planning.pacing.linear import by_linear_program
from followup.core.planning.pacing.message import Message, total_cost
from followup.core.planning.pacing.not_solved import NotSolved
from followup.core.planning.pacing.pace import pace, solve, why_it_waits
from followup.core.planning.pacing.room import CHECK_IN, Room
from followup.core.planning.pacing.weeks import ALL_WEEKS, POSTPONED, WEEKS
from tests.core.planning.pacing.drawn import draw_messages, message, room

# 35, 30, 20 and 15 % in the four weeks from Tuesday on, a seventh of each in the calendar's next week.
SHARES = (0.35 * 6 / 7, (0.35 + 0.30 * 6) / 7, (0.30 + 0.20 * 6) / 7, (0.20 + 0.15 * 6) / 7, 0.15 / 7)


def _hours(messages: list[Message], weeks: list[int] | tuple[int, ...], name: str) -> list[float]:
    """Expected hours by week, reckoned anew: a text of a Monday brings its visits from Tuesday on."""
    found = [0.0] * ALL_WEEKS
    for one, week in zip(messages, weeks, strict=True):
        for number, share in enumerate(SHARES if week < WEEKS else ()):
            found[week + number] += one.chance * one.uses.get(name, 0.0) * share
    return found


def _is_within(messages: list[Message], weeks: list[int] | tuple[int, ...], there: Room) -> bool:
    return all(
        used <= free + 1e-9
        for name, weekly in there.free.items()
        for used, free in zip(_hours(messages, weeks, name), weekly, strict=True)
    )


def _dense(messages: list[Message], there: Room) -> tuple[np.ndarray, np.ndarray, np.ndarray, list[tuple[int, int]]]:
    """The program in another formulation: postponed is what is left of one, so the weeks of a message sum to at most
    one, and each week's cost is what it spares beside postponing."""
    places = [(at, week) for at, one in enumerate(messages) for week in range(one.first_week, WEEKS)]
    spares = np.array([messages[at].costs[week] - messages[at].costs[POSTPONED] for at, week in places])
    rows, bounds = [], []
    for at in range(len(messages)):
        rows.append([1.0 if whose == at else 0.0 for whose, _ in places])
        bounds.append(1.0)
    for name, weekly in there.free.items():
        for week, free in enumerate(weekly):
            rows.append([
                messages[at].chance * messages[at].uses.get(name, 0.0) * SHARES[week - begin]
                if 0 <= week - begin < len(SHARES) else 0.0
                for at, begin in places
            ])  # fmt: skip
            bounds.append(free)
    return spares, np.array(rows), np.array(bounds), places


@pytest.mark.parametrize("seed", range(12))
def test_the_program_costs_what_another_formulation_and_solver_say(seed: int) -> None:
    draw = Random(seed)
    messages, there = (
        draw_messages(draw, 25, 8),
        room({"tires": draw.uniform(0.2, 1.5), "brakes": draw.uniform(0.2, 1)}),
    )
    solved = by_linear_program(messages, Board(there))
    spares, rows, bounds, _ = _dense(messages, there)
    other = linprog(spares, A_ub=rows, b_ub=bounds, bounds=(0, None), method="highs-ds")
    assert solved.bound == pytest.approx(other.fun + sum(one.costs[POSTPONED] for one in messages))
    assert total_cost(messages, solved.placed) >= solved.bound - 1e-6
    assert _is_within(messages, solved.placed, there)


@pytest.mark.parametrize("seed", range(3))
def test_where_check_in_times_are_what_is_short_the_program_knows(seed: int) -> None:
    messages, there = draw_messages(Random(50 + seed), 40, 8), room({"tires": 9.0, "brakes": 9.0, CHECK_IN: 0.6})
    solved = by_linear_program(messages, Board(there))
    spares, rows, bounds, _ = _dense(messages, there)
    other = linprog(spares, A_ub=rows, b_ub=bounds, bounds=(0, None), method="highs-ds")
    assert solved.bound == pytest.approx(other.fun + sum(one.costs[POSTPONED] for one in messages))
    assert _is_within(messages, solved.placed, there)


@pytest.mark.parametrize("seed", range(8))
def test_whole_messages_lie_between_the_program_and_what_whole_programs_find(seed: int) -> None:
    """The best whole placing by branch and bound is dearer than the divided one and never dearer than ours."""
    draw = Random(100 + seed)
    messages, there = draw_messages(draw, 14, 2), room({"tires": 0.9, "brakes": 0.8})
    spares, rows, bounds, _ = _dense(messages, there)
    best = milp(spares, constraints=LinearConstraint(rows, ub=bounds), integrality=np.ones(len(spares)),
                bounds=Bounds(0, 1), options={"mip_rel_gap": 0})  # fmt: skip
    whole = best.fun + sum(one.costs[POSTPONED] for one in messages)
    ours = pace(messages, there, {}, solve)
    assert by_linear_program(messages, Board(there)).bound <= whole + 1e-6
    assert whole - 1e-6 <= ours.cost <= 1.15 * whole
    assert _is_within(messages, ours.weeks, there)


@pytest.mark.parametrize("seed", range(6))
def test_against_every_placing_tried(seed: int) -> None:
    """Four messages, nine places each: of 9^4 placings the cheapest that fits."""
    draw = Random(200 + seed)
    messages, there = draw_messages(draw, 4, 0), room({"tires": 0.25, "brakes": 0.25})
    tried = itertools.product([*range(8), POSTPONED], repeat=4)
    best = min(total_cost(messages, weeks) for weeks in tried if _is_within(messages, weeks, there))
    ours = pace(messages, there, {}, solve)
    assert _is_within(messages, ours.weeks, there)
    assert by_linear_program(messages, Board(there)).bound <= best + 1e-9
    # Of both ways the cheaper one; with so few that each fills a third of a week, neither need be the best.
    assert best - 1e-9 <= ours.cost <= pace(messages, there, {}).cost


@pytest.mark.parametrize("place", [by_regret, by_arrival, lambda m, b: by_linear_program(m, b).placed])
@pytest.mark.parametrize("seed", range(6))
def test_expected_hours_never_pass_the_free_ones(place: object, seed: int) -> None:
    assert callable(place)
    draw = Random(300 + seed)
    messages = draw_messages(draw, 120, 10)
    there = room({"tires": draw.uniform(0.0, 3.0), "brakes": draw.uniform(0.0, 3.0)})
    placed = place(messages, Board(there))
    assert _is_within(messages, placed, there)
    assert all(week >= one.first_week for one, week in zip(messages, placed, strict=True))


def test_where_all_fit_nobody_waits_and_nothing_is_solved() -> None:
    def never(_messages: object, _board: object) -> list[int]:
        raise AssertionError

    messages = draw_messages(Random(1), 50)
    found = pace(messages, room({"tires": 1000.0, "brakes": 1000.0}), {}, never)
    assert found.how == "all fit"
    assert list(found.weeks) == [one.first_week for one in messages]
    assert not any(found.full)


def test_who_loses_most_by_waiting_goes_first_not_who_came_first() -> None:
    """Room for one visit a week: the last that came loses most."""
    messages = [message(at, {"tires": 1.0}, slope, 1.0) for at, slope in enumerate((1.0, 2.0, 9.0))]
    there = room({"tires": 0.5})
    for found in (pace(messages, there, {}, solve), pace(messages, there, {})):
        assert found.weeks[2] < found.weeks[1] < found.weeks[0]
        assert found.full[2] == () and found.full[0] == ("tires",)
    assert by_arrival(messages, Board(there))[0] == 0


def test_a_legal_limit_waits_for_no_expectations_but_for_nothing_being_free() -> None:
    """Expected hours are over what is free already; a job of an hour fits the week all the same."""
    legal = message(0, {"brakes": 1.0}, 1.0, is_legal=True)
    used = {"brakes": [5.0] * ALL_WEEKS}
    found = pace([legal, message(1, {"brakes": 1.0}, 50.0)], room({"brakes": 4.0}), used, solve)
    assert found.weeks == (0, POSTPONED)
    nothing = room({"brakes": 0.5})
    assert pace([legal], nothing, {}, solve).weeks == (POSTPONED,)
    assert pace([legal], nothing, {}, solve).full == (("brakes",),)


def test_what_the_shop_plans_no_hours_for_is_not_paced() -> None:
    assert pace([message(0, {"electric": 2.0}, 1.0)], room({"tires": 1.0}), {}, solve).weeks == (0,)


def test_without_an_answer_of_the_solver_it_is_placed_by_regret(monkeypatch: pytest.MonkeyPatch) -> None:
    messages, there = draw_messages(Random(5), 40), room({"tires": 0.8, "brakes": 0.8})
    usual = pace(messages, there, {})
    assert usual.how == "regret" and any(usual.full)
    with pytest.raises(NotSolved):
        by_linear_program(draw_messages(Random(6), 600), Board(there), 1e-4)

    def too_slow(_messages: object, _board: object) -> list[int]:
        raise NotSolved

    assert pace(messages, there, {}, too_slow) == usual
    # SciPy is missing: its module cannot be imported.
    monkeypatch.delitem(sys.modules, "followup.core.planning.pacing.linear")
    monkeypatch.setitem(sys.modules, "scipy.optimize", None)
    assert pace(messages, there, {}, solve) == usual


def test_who_waits_is_told_until_when_and_what_is_full() -> None:
    there = room({"tires": 1.0})
    assert why_it_waits(there, 1, ("tires",)) == "we wait until the week of December 7 because tires hours are full"
    words = why_it_waits(there, POSTPONED, ("tires", "brakes", "check_in"))
    assert words == ("we wait past the week of February 22 because tires and brakes hours and check-in times are full")


def test_whoever_waits_could_not_have_left_a_week_earlier() -> None:
    messages, there = draw_messages(Random(9), 150, 6), room({"tires": 1.6, "brakes": 1.6})
    found = pace(messages, there, {}, solve)
    for at, (one, week) in enumerate(zip(messages, found.weeks, strict=True)):
        if week > one.first_week:
            earlier = [*found.weeks[:at], week - 1, *found.weeks[at + 1 :]]
            assert found.full[at] and not _is_within(messages, earlier, there)


def test_the_first_week_counts_from_tomorrow() -> None:
    """Left on a Thursday, three of the seven days after it lie in this week."""
    thursday = room({"tires": 1.0}, today=date(2026, 12, 3))
    shares = dict(Board(thursday).landings[0])
    assert shares[0] == pytest.approx(0.35 * 3 / 7)
    assert sum(shares.values()) == pytest.approx(1.0)
