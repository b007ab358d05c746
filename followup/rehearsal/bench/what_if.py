"""`followup bench what-if`: what would come of other rules, told beforehand, against the planner asked day by day.

For three changes of the rules the range that is told is held against the mean of a full replay in worlds of its own:
`decide_for_phone` on real pictures, every day, with answers and due dates drawn anew. And how long 5,000 cars take.
"""

from __future__ import annotations

import time
from collections.abc import Callable, Generator, Mapping
from dataclasses import dataclass, replace

import numpy as np

from followup.core.planning.what_if.draws import WEEKS, curves_of, draw
from followup.core.planning.what_if.odds import Odds
from followup.core.planning.what_if.outcome import Outcome, Range, outcomes
from followup.core.planning.what_if.plan import plan_for
from followup.core.shop import ShopRules
from followup.rehearsal.bench.figures import Figure, at_most
from followup.rehearsal.bench.many_cars import SHOP, TODAY, many_cars
from followup.rehearsal.bench.replay import Replayed, replay

CHANGES: Mapping[str, ShopRules] = {
    "two weeks earlier": replace(SHOP.rules, lead_days=35),
    "too late counts more": replace(SHOP.rules, send_at_chance=0.15),
    "one text a reason": replace(SHOP.rules, tries=1),
}
MOST_SECONDS, MOST_WIDE, MOST_TEXTS_WIDE = 10.0, 0.20, 1.0
SKILLS = tuple(SHOP.rules.labor_hours)


@dataclass(frozen=True)
class Asked:
    """Cars that are replayed and in how many worlds; cars of which it is told how long they take."""

    cars: int
    worlds: int
    timed: int
    seed: int

    @property
    def steps(self) -> int:
        """How often `progress` is told of one step."""
        return len(CHANGES) * self.worlds + 1


def bench_what_if(asked: Asked, progress: Callable[[int], object]) -> list[Figure]:
    """The whole table."""
    figures = [Figure("cars; worlds of the replay; seed", f"{asked.cars}; {asked.worlds}; {asked.seed}")]
    pictures, cars = many_cars(asked.cars, asked.seed)
    for number, (name, rules) in enumerate(CHANGES.items()):
        plan = plan_for(SHOP, rules, cars, TODAY)
        told = drained(outcomes([plan], cars, Odds(), SKILLS, np.random.default_rng(asked.seed)))[0]
        # Other worlds than those by which it was told.
        random = np.random.default_rng(asked.seed + 1 + number)
        draws = draw(curves_of(cars), Odds(), asked.worlds, random)
        lived = replay(SHOP, pictures, cars, plan, draws, Odds(), TODAY, lambda _: progress(1))
        figures += _held(name, told, lived)
    return [*figures, _seconds(asked, progress)]


def drained(steps: Generator[float, None, list[Outcome]]) -> list[Outcome]:
    """What came of it, without being told how far it is."""
    while True:
        try:
            next(steps)
        except StopIteration as ended:
            found: list[Outcome] = ended.value
            return found


def _held(name: str, told: Outcome, lived: Replayed) -> list[Figure]:
    texts = lived.texts.sum(axis=1) / WEEKS
    return [
        _one(f"{name}: texts a week", told.texts, float(texts.mean()), MOST_TEXTS_WIDE),
        _one(f"{name}: visits from texts a week", told.prompted, float(lived.prompted.mean()) / WEEKS, MOST_TEXTS_WIDE),
        _one(f"{name}: stops", told.stops, float(lived.stops.mean()), None),
    ]


def _one(check: str, told: Range, lived: float, wide: float | None) -> Figure:
    """Whether the range holds the replay's mean; where `wide`, also that it is at most a fifth or so many units wide
    to either side."""
    half = (told.high - told.low) / 2
    holds = told.low <= lived <= told.high
    is_narrow = wide is None or half <= max(MOST_WIDE * told.mean, wide)
    found = f"told {told.mean:.2f} ({told.low:.2f} to {told.high:.2f}), replayed {lived:.2f}"
    asked = "holds it" + (f", +- 20 % or {wide:g} at most" if wide is not None else "")
    return Figure(check, found, asked, bool(holds and is_narrow))


def _seconds(asked: Asked, progress: Callable[[int], object]) -> Figure:
    _, cars = many_cars(asked.timed, asked.seed)
    begun = time.perf_counter()
    plans = [plan_for(SHOP, rules, cars, TODAY) for rules in (SHOP.rules, CHANGES["two weeks earlier"])]
    plans.append(plan_for(SHOP, SHOP.rules, cars, TODAY, "reminder"))
    drained(outcomes(plans, cars, Odds(), SKILLS, np.random.default_rng(asked.seed)))
    progress(1)
    took = time.perf_counter() - begun
    return at_most(f"seconds for {asked.timed:,} cars, three sets of rules", took, MOST_SECONDS, 1)
