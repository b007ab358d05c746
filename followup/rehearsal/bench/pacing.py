"""`followup bench pacing`: the linear program beside greedy by regret and order of arrival, on drawn messages.

Each set of messages is drawn by a seed: jobs out of the catalogue, due dates log-normal, first week by the send rule.
The free hours of a week are, by what is used up, a twelfth of what all messages are expected to need, strewn by what
is booked already; "0.6" has so much of that. The cost is the loss that is expected of all, in the manager's balance.
"""

from __future__ import annotations

import math
import os
import random
import time
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import date
from statistics import NormalDist

from followup.core.forecast.window import CURVE_CHANCES, DueCurve
from followup.core.item import Item
from followup.core.items import ALL
from followup.core.planning.pacing.board import Board
from followup.core.planning.pacing.greedy import by_arrival, by_regret
from followup.core.planning.pacing.linear import by_linear_program
from followup.core.planning.pacing.message import Message, costs_of, total_cost
from followup.core.planning.pacing.room import CHECK_IN, Room
from followup.core.planning.pacing.weeks import ALL_WEEKS, BOOKED_ON_TRY, WEEKS
from followup.core.planning.slots import hours_of
from followup.core.shop import ShopRules
from followup.rehearsal.bench.figures import Figure, at_most, beside

SIZES = (300, 1_000, 3_000)
SHARES_OF_ROOM = (1.0, 0.6)
# A Monday; the messages are placed the night before.
TODAY = date(2026, 11, 30)
GAP_AT_MOST_PERCENT, SECONDS_AT_MOST, OVER_AT_MOST = 7.0, 1.0, 1e-6
_DONE_ON_THE_SECOND_TRY = 0.25
_MEDIAN_DAYS, _SPREADS = (7.0, 240.0), (0.3, 0.7)
_BOOKED = (0.0, 0.5)
# As the rules are shipped: 42 check-in times a day beside 24.65 labor hours.
_CHECK_INS_AN_HOUR = 1.7


@dataclass(frozen=True)
class Asked:
    """How many sets of each size are drawn, and the seed of the first."""

    rounds: int
    seed: int

    @property
    def steps(self) -> int:
        """How many sets are placed in all."""
        return self.rounds * len(SIZES) * len(SHARES_OF_ROOM)


@dataclass(frozen=True)
class Round:
    """What came of one set: costs by way, seconds by way, the share that the program divided, hours over the free."""

    costs: dict[str, float]
    seconds: dict[str, float]
    bound: float
    least: float
    split: float
    over: float


def bench_pacing(asked: Asked, progress: Callable[[int], object]) -> list[Figure]:
    """The whole table."""
    figures = []
    for size in SIZES:
        for share in SHARES_OF_ROOM:
            rounds = []
            for number in range(asked.rounds):
                rounds.append(_round(random.Random(f"{asked.seed + number} {size}"), size, share))
                progress(1)
            figures += _figures(f"{size:,} messages, {share:g} of the room", rounds)
    return [*figures, beside("load of this machine, last minute", os.getloadavg()[0])]


def _round(draw: random.Random, size: int, share: float) -> Round:
    rules, jobs = ShopRules(), [one for one in ALL if one.job.hours > 0 and not one.is_top_off_free]
    drawn = [_drawn(draw, jobs, rules) for _ in range(size)]
    room = _room(draw, [(hours, chance) for hours, chance, _, _ in drawn], share)
    messages = [
        Message(
            (at, "", ""), hours, chance, costs_of([(curve, 0)], chance, first, room, rules.send_at_chance), first
        )
        for at, (hours, chance, curve, first) in enumerate(drawn)
    ]  # fmt: skip
    costs, seconds, over = {}, {}, 0.0
    bound = split = 0.0
    for name in ("program", "regret", "arrival"):
        board = Board(room)
        started = time.process_time()
        if name == "program":
            solved = by_linear_program(messages, board)
            placed, bound, split = solved.placed, solved.bound, solved.split
        else:
            placed = (by_regret if name == "regret" else by_arrival)(messages, board)
        seconds[name] = time.process_time() - started
        costs[name] = total_cost(messages, placed)
        over = max(over, _over(room, messages, placed))
    return Round(costs, seconds, bound, sum(one.costs[one.first_week] for one in messages), split, over)


def _drawn(
    draw: random.Random, jobs: Sequence[Item], rules: ShopRules
) -> tuple[dict[str, float], float, DueCurve, int]:
    """Hours, chance of a booking, due curve and first week of one message; one that is due too late is drawn anew."""
    while True:
        items = draw.sample(jobs, draw.choice((1, 1, 1, 2, 3)))
        middle = math.exp(draw.uniform(*(math.log(days) for days in _MEDIAN_DAYS)))
        spread = draw.uniform(*_SPREADS)
        normal = NormalDist(math.log(middle), spread)
        curve = DueCurve(0.0, tuple(math.exp(normal.inv_cdf(chance)) for chance in CURVE_CHANCES))
        first = max(0, math.ceil((curve.quantile(rules.send_at_chance) - rules.lead_days) / 7))
        if first < WEEKS:
            chance = BOOKED_ON_TRY[draw.random() < _DONE_ON_THE_SECOND_TRY]
            return hours_of(items), chance, curve, first


def _room(draw: random.Random, drawn: Sequence[tuple[dict[str, float], float]], share: float) -> Room:
    """A twelfth of all expected hours each week, less what is booked, the more the nearer the week."""
    skills = list(ShopRules().labor_hours)
    need = {skill: sum(chance * hours.get(skill, 0.0) for hours, chance in drawn) for skill in skills}
    planned = {skill: (share * need[skill] / WEEKS / (1 - _BOOKED[1] / 4),) * ALL_WEEKS for skill in skills}
    planned[CHECK_IN] = (_CHECK_INS_AN_HOUR * sum(weekly[0] for weekly in planned.values()),) * ALL_WEEKS
    names = list(planned)
    booked = {
        name: tuple(hours * draw.uniform(*_BOOKED) * max(1 - week / 6, 0.0) for week, hours in enumerate(weekly))
        for name, weekly in planned.items()
    }
    free = {name: tuple(a - b for a, b in zip(planned[name], booked[name], strict=True)) for name in names}
    return Room(TODAY, date.fromordinal(TODAY.toordinal() - 1), planned, booked, free)


def _over(room: Room, messages: Sequence[Message], placed: Sequence[int]) -> float:
    """By how many hours the expected ones pass the free ones at most, reckoned anew from the placing alone."""
    board = Board(room)
    for one, week in zip(messages, placed, strict=True):
        board.put(one, week)
    return max(0.0, *(-left for weekly in board.left.values() for left in weekly))


def _figures(about: str, rounds: Sequence[Round]) -> list[Figure]:
    gaps = {name: _worst_gap(rounds, name, 0.0) for name in ("program", "regret", "arrival")}
    beyond = {name: _worst_gap(rounds, name, 1.0) for name in gaps}
    return [
        at_most(f"{about}: greedy by regret above the program, worst", gaps["regret"], GAP_AT_MOST_PERCENT, 2, " %"),
        beside(f"{about}: the program rounded to whole messages above it", gaps["program"], 2, " %"),
        beside(f"{about}: order of arrival above it", gaps["arrival"], 1, " %"),
        beside(f"{about}: of the avoidable loss alone, by regret", beyond["regret"], 1, " %"),
        beside(f"{about}: of the avoidable loss alone, by arrival", beyond["arrival"], 1, " %"),
        at_most(f"{about}: CPU seconds of the program, longest", max(one.seconds["program"] for one in rounds),
                SECONDS_AT_MOST, 2, " s"),
        beside(f"{about}: CPU seconds by regret, longest", max(one.seconds["regret"] for one in rounds), 2, " s"),
        beside(f"{about}: messages that the program divides", 100 * max(one.split for one in rounds), 1, " %"),
        at_most(f"{about}: hours expected above free, at most", max(one.over for one in rounds), OVER_AT_MOST, 6, " h"),
    ]  # fmt: skip


def _worst_gap(rounds: Sequence[Round], name: str, without: float) -> float:
    """The widest gap to the program's bound in per cent; `without` 1 leaves out what no placing could spare."""
    return max(100 * (one.costs[name] - one.bound) / max(one.bound - without * one.least, 1e-9) for one in rounds)
