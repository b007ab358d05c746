"""Placing all at once: the linear program of what each message costs in each week, rounded to whole messages."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

import numpy as np
from scipy.optimize import linprog
from scipy.sparse import coo_array

from followup.core.planning.pacing.board import Board, move_up
from followup.core.planning.pacing.greedy import by_regret
from followup.core.planning.pacing.message import Message
from followup.core.planning.pacing.not_solved import NotSolved
from followup.core.planning.pacing.room import CHECK_IN
from followup.core.planning.pacing.weeks import POSTPONED

# Long before the ticks of other shops would miss it.
TIME_LIMIT_SECONDS = 10.0
_WHOLE = 1.0 - 1e-6
_NEARLY_FULL = 0.2
# What check-in times are short of by no more than this share is put right where whole messages are placed.
_REPAIRED, _TOLERANCE = 0.02, 1e-7


@dataclass(frozen=True)
class Solved:
    """The week of each message; `bound` is what the program itself costs, which no placing can be below; `split` is
    the share of messages that it had divided between weeks."""

    placed: list[int]
    bound: float
    split: float


def by_linear_program(messages: Sequence[Message], board: Board, seconds: float = TIME_LIMIT_SECONDS) -> Solved:
    """Place the messages on what is left of the board. Raises `NotSolved` where the solver fails or takes too long.

    A message that is divided goes to its larger part where that still fits, else to the cheapest week that does: so
    the expected hours never exceed the free ones.
    """
    if not messages:
        return Solved([], 0.0, 0.0)
    of, weeks, costs = _columns(messages)
    total: Any = coo_array((np.ones(len(of)), (of, np.arange(len(of)))), shape=(len(messages), len(of))).tocsr()
    used, free = _hours(messages, board, of, weeks)
    near = _may_be_short(messages, board)
    found = _solved(costs, used[near], free[near], total, seconds)
    if np.any(used @ found.x > free * (1.0 + _REPAIRED) + _TOLERANCE):
        found = _solved(costs, used, free, total, seconds)
    shares = np.asarray(found.x)
    placed, split = _rounded(messages, board, of, weeks, shares)
    move_up(board, messages, placed)
    return Solved(placed, float(found.fun or 0.0), split)


def _may_be_short(messages: Sequence[Message], board: Board) -> np.ndarray:
    """The rows that are asked for at first: of check-in times only weeks that regret nearly fills.

    They are seldom short, and every message uses them: with all their rows it takes half as long again.
    """
    probe = board.copy()
    by_regret(messages, probe)
    return np.array([
        name != CHECK_IN or left <= _NEARLY_FULL * before
        for name, weekly in board.left.items()
        for before, left in zip(weekly, probe.left[name], strict=True)
    ])  # fmt: skip


def _solved(costs: np.ndarray, used: Any, free: np.ndarray, total: Any, seconds: float) -> Any:
    # The interior point method: on thousands of messages it takes a fifth of the simplex method's time, and its
    # crossover ends at a corner, where few messages are divided.
    found = linprog(
        costs, A_ub=used, b_ub=free, A_eq=total, b_eq=np.ones(total.shape[0]), bounds=(0, None), method="highs-ipm",
        options={"time_limit": seconds, "presolve": False},
    )  # fmt: skip
    if not found.success:
        raise NotSolved(str(found.message))
    return found


def _columns(messages: Sequence[Message]) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """The variables: which message, which week, what it costs there."""
    of = np.repeat(np.arange(len(messages)), [len(one.weeks) for one in messages])
    weeks = np.concatenate([np.array(one.weeks) for one in messages])
    costs = np.concatenate([np.array(one.costs[one.first_week :]) for one in messages])
    return of, weeks, costs


def _hours(messages: Sequence[Message], board: Board, of: np.ndarray, weeks: np.ndarray) -> tuple[Any, np.ndarray]:
    """Expected hours of each variable by what is used up and week, and what is left of it."""
    names = list(board.left)
    length = len(board.left[names[0]])
    uses = np.array([[one.chance * one.uses.get(name, 0.0) for name in names] for one in messages])
    rows, columns, values = [], [], []
    for week, landings in enumerate(board.landings):
        mine = np.flatnonzero(weeks == week)
        for at, share in landings:
            for number in range(len(names)):
                hours = uses[of[mine], number] * share
                some = hours > 0
                rows.append(np.full(int(some.sum()), number * length + at))
                columns.append(mine[some])
                values.append(hours[some])
    shape = (len(names) * length, len(of))
    used: Any = coo_array((np.concatenate(values), (np.concatenate(rows), np.concatenate(columns))), shape=shape)
    free = np.array([max(each, 0.0) for name in names for each in board.left[name]])
    return used.tocsr(), free


def _rounded(
    messages: Sequence[Message], board: Board, of: np.ndarray, weeks: np.ndarray, shares: np.ndarray
) -> tuple[list[int], float]:
    """Whole messages: first those that the program did not divide, then the divided ones, the dearest to wait first."""
    begins = np.concatenate([[0], np.flatnonzero(np.diff(of)) + 1])
    largest = np.maximum.reduceat(shares, begins)
    placed, divided = [POSTPONED] * len(messages), []
    for at, one in enumerate(messages):
        mine = slice(begins[at], begins[at] + len(one.weeks))
        placed[at] = int(weeks[mine][int(np.argmax(shares[mine]))])
        if largest[at] < _WHOLE:
            divided.append(at)
        elif board.fits(one, placed[at]):
            board.put(one, placed[at])
        else:
            # The solver's own tolerance: a hair too much.
            divided.append(at)
    for at in sorted(divided, key=lambda at: messages[at].costs[placed[at]] - messages[at].costs[POSTPONED]):
        if not board.fits(messages[at], placed[at]):
            placed[at] = board.cheapest(messages[at])
        board.put(messages[at], placed[at])
    return placed, float((largest < _WHOLE).mean())
