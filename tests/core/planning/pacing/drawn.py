"""Drawn messages and rooms, small enough for every placing to be tried."""

from __future__ import annotations

from datetime import date
from random import Random

from followup.core.planning.pacing.message import Message
from followup.core.planning.pacing.room import CHECK_IN, Room
from followup.core.planning.pacing.weeks import ALL_WEEKS, POSTPONED

MONDAY = date(2026, 11, 30)
SUNDAY = date(2026, 11, 29)


def room(free: dict[str, float], today: date = SUNDAY) -> Room:
    """So many free hours in each week; check-in times enough unless said. The weeks begin the day after `today`."""
    weekly = {name: (hours,) * ALL_WEEKS for name, hours in {CHECK_IN: 1000.0, **free}.items()}
    return Room(MONDAY, today, weekly, dict.fromkeys(weekly, (0.0,) * ALL_WEEKS), weekly)


def message(
    at: int, hours: dict[str, float], slope: float, chance: float = 0.35, first: int = 0, *, is_legal: bool = False
) -> Message:
    """A message each week of which costs `slope` more."""
    costs = tuple(slope * max(week - first, 0) for week in range(POSTPONED + 1))
    return Message((at, "", ""), hours, chance, costs, first, is_legal)


def draw_messages(draw: Random, count: int, last_first: int = 3) -> list[Message]:
    """Messages of one or two skills with costs that bend upward."""
    found = []
    for at in range(count):
        first, slope, bend = draw.randint(0, last_first), draw.uniform(0.1, 3), draw.uniform(0, 0.4)
        hours = {skill: draw.choice((0.4, 1.0, 1.5)) for skill in draw.sample(("tires", "brakes"), draw.choice((1, 2)))}
        costs = tuple(slope * max(week - first, 0) + bend * max(week - first, 0) ** 2 for week in range(POSTPONED + 1))
        found.append(Message((at, "", ""), hours, draw.choice((0.2, 0.35)), costs, first))
    return found
