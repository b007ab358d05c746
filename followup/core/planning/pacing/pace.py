"""Place all invites of a shop: legal limits first, the others by the program or by regret; and say why one waits."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from typing import Literal

from followup.core.planning.pacing.board import Board
from followup.core.planning.pacing.greedy import by_regret
from followup.core.planning.pacing.message import Message, total_cost
from followup.core.planning.pacing.not_solved import NotSolved
from followup.core.planning.pacing.room import CHECK_IN, Room
from followup.core.planning.pacing.weeks import POSTPONED, WEEKS

How = Literal["all fit", "linear program", "regret"]
Solver = Callable[[Sequence[Message], Board], list[int]]


@dataclass(frozen=True)
class Placing:
    """The week of each message, as they were given, and what there was too little of for it to leave before; `how` the
    ones that may wait were placed, and what that costs."""

    weeks: tuple[int, ...]
    full: tuple[tuple[str, ...], ...]
    how: How
    cost: float


def pace(
    messages: Sequence[Message], room: Room, used: Mapping[str, Sequence[float]], solver: Solver | None = None
) -> Placing:
    """Place the messages in what `room` has beside what is `used` already. `solver` None: by regret alone."""
    weeks = [POSTPONED] * len(messages)
    board = Board(room, used)
    legal = [at for at, one in enumerate(messages) if one.is_legal]
    others = [at for at, one in enumerate(messages) if not one.is_legal]
    for at in sorted(legal, key=lambda at: (messages[at].first_week, -messages[at].costs[POSTPONED])):
        weeks[at] = _not_kept_waiting(messages[at], board)
        board.put(messages[at], weeks[at])
    placed, how, board = _place([messages[at] for at in others], board, solver)
    for at, week in zip(others, placed, strict=True):
        weeks[at] = week
    full = tuple(_full(board, one, week) for one, week in zip(messages, weeks, strict=True))
    return Placing(tuple(weeks), full, how, total_cost(messages, weeks))


def _not_kept_waiting(message: Message, board: Board) -> int:
    """A legal limit waits for no expectations; only where nothing at all is free for its visit it comes later."""
    return next(week for week in message.weeks if board.has_any(message, week))


def _place(messages: Sequence[Message], board: Board, solver: Solver | None) -> tuple[list[int], How, Board]:
    """By regret and by the solver, whichever is cheaper: whole messages make the one no worse than the other for sure
    only where there are many. Where all leave in their first week there is nothing to solve."""
    greedy_board = board.copy()
    greedy = by_regret(messages, greedy_board)
    if solver is None or all(week == one.first_week for week, one in zip(greedy, messages, strict=True)):
        return greedy, "regret" if solver is None else "all fit", greedy_board
    solver_board = board.copy()
    try:
        solved = solver(messages, solver_board)
    except NotSolved:
        return greedy, "regret", greedy_board
    if total_cost(messages, solved) <= total_cost(messages, greedy):
        return solved, "linear program", solver_board
    return greedy, "regret", greedy_board


def solve(messages: Sequence[Message], board: Board) -> list[int]:
    """The linear program. Raises `NotSolved` where it fails, takes too long, or where SciPy is missing."""
    try:
        # Imported here: numpy and scipy take longer than a page may.
        from followup.core.planning.pacing.linear import by_linear_program
    except ImportError as missing:
        raise NotSolved(str(missing)) from missing
    try:
        return by_linear_program(messages, board).placed
    except (ArithmeticError, MemoryError, ValueError) as failed:
        raise NotSolved(str(failed)) from failed


def _full(board: Board, message: Message, week: int) -> tuple[str, ...]:
    """What there is too little of in the week before that of a message that waits."""
    if week == message.first_week:
        return ()
    if message.is_legal:
        free, landing = board.room.free, board.landings[week - 1]
        return tuple(
            name
            for name, each in message.uses.items()
            if name in free and all(free[name][at] < each for at, _ in landing)
        )
    board.take(message, week)
    found = board.full(message, week - 1)
    board.put(message, week)
    return tuple(found)


def why_it_waits(room: Room, week: int, full: Sequence[str]) -> str:
    """In words, for the advisor: until when, and what is full until then."""
    begin = room.begin_of(min(week, WEEKS))
    until = f"{begin:%B} {begin.day}"
    skills = [name for name in full if name != CHECK_IN]
    parts = [f"{' and '.join(skills)} hours"] if skills else []
    parts += ["check-in times"] if CHECK_IN in full else []
    because = " and ".join(parts) or "hours"
    when = f"past the week of {until}" if week == POSTPONED else f"until the week of {until}"
    return f"we wait {when} because {because} are full"
