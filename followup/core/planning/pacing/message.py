"""One invite that is to be placed: what its visit uses, how likely one comes of it, and what each week costs."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, field

from followup.core.forecast.window import HORIZON_DAYS, DueCurve
from followup.core.planning.pacing.room import Room, uses_of
from followup.core.planning.pacing.weeks import POSTPONED, landings

# Of two weeks that cost the same the earlier one is taken.
_EARLIER = 1e-6


@dataclass(frozen=True)
class Message:
    """`first_week` is the first week in which the send rule lets it leave; `costs` are those of each week and of
    postponing, in the manager's balance of days too early to days too late; weeks before the first cost nothing and
    are never taken. `is_legal`: it is about a legal limit and never waits while anything is free.
    """

    key: tuple[int, str, str]
    hours: Mapping[str, float]
    chance: float
    costs: tuple[float, ...]
    first_week: int = 0
    is_legal: bool = False
    uses: Mapping[str, float] = field(init=False)

    def __post_init__(self) -> None:
        object.__setattr__(self, "uses", uses_of(self.hours))

    @property
    def weeks(self) -> range:
        """The weeks that it may be placed in, the last of them standing for postponed."""
        return range(self.first_week, POSTPONED + 1)


def expected_loss(curve: DueCurve, on_day: float, cost_early: float) -> float:
    """What a visit so many days after the curve's own day is expected to lose: days too early at `cost_early`, days
    too late at 1 minus that. The curve counts as its twenty equally likely days."""
    lost = 0.0
    dots = curve.dots()
    for due in dots:
        early = min(due, HORIZON_DAYS) - on_day
        lost += early * cost_early if early > 0 else -early * (1.0 - cost_early)
    return lost / len(dots)


def costs_of(
    jobs: Iterable[tuple[DueCurve, int]], chance: float, first_week: int, room: Room, cost_early: float
) -> tuple[float, ...]:
    """The cost of each week and of postponing. `jobs` are the curve of each job and the days since it was made.

    No week costs less than one before it: pacing delays what does not fit, and when a text is worth it is the send
    rule's to say. Postponed is as if it left in the week after the last.
    """
    curves = list(jobs)
    today = (room.today - room.begins_on).days
    # By the day of a visit, in days since the first Monday: asked for again and again, since the weeks overlap.
    known: dict[float, float] = {}

    def loss(day: float) -> float:
        if day not in known:
            known[day] = sum(expected_loss(curve, day - today + since, cost_early) for curve, since in curves)
        return known[day]

    costs, least = [], 0.0
    for week in range(POSTPONED + 1):
        if week >= first_week:
            shares = landings(room.leaves(week), shares=room.brought.landing)
            cost = sum(share * loss(7.0 * number + 3.5) for number, share in shares.items())
            least = max(least, chance * cost) + _EARLIER * chance
        costs.append(least)
    return tuple(costs)


def total_cost(messages: Sequence[Message], placed: Sequence[int]) -> float:
    """What a placing costs in all."""
    return sum(one.costs[week] for one, week in zip(messages, placed, strict=True))
