"""Placing one after the other: by regret, where the linear program cannot be had; by arrival, for the benchmark."""

from __future__ import annotations

from collections.abc import Sequence

from followup.core.planning.pacing.board import Board, move_up
from followup.core.planning.pacing.message import Message
from followup.core.planning.pacing.weeks import POSTPONED, WEEKS

# What takes no labor hours still takes somebody's time.
_LEAST_HOURS = 0.1


def by_regret(messages: Sequence[Message], board: Board) -> list[int]:
    """The week of each message. The weeks are filled one after the other; in each the message comes first that would
    lose most, for each hour that is expected of it, by waiting one week more."""
    placed = [POSTPONED] * len(messages)
    for week in range(WEEKS):
        waiting = [at for at, one in enumerate(messages) if placed[at] == POSTPONED and one.first_week <= week]
        for at in sorted(waiting, key=lambda at: (-_regret(messages[at], week), messages[at].key)):
            if board.fits(messages[at], week):
                board.put(messages[at], week)
                placed[at] = week
    # What was placed later may have left a gap that it need not have.
    move_up(board, messages, placed)
    return placed


def _regret(message: Message, week: int) -> float:
    lost = message.costs[week + 1] - message.costs[week]
    return lost / (message.chance * max(sum(message.hours.values()), _LEAST_HOURS))


def by_arrival(messages: Sequence[Message], board: Board) -> list[int]:
    """The week of each message as they come: only to be compared with."""
    placed = []
    for one in messages:
        placed.append(board.cheapest(one))
        board.put(one, placed[-1])
    return placed
