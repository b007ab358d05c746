"""A shop's own priors, kept only where they foretell its own last readings no worse than the published ones.

1. What the cars tell is brought into arrays, seen through the published priors.
2. The cars are dealt into folds. The last readings of each fold are foretold with priors fitted on the other folds,
   and with the published ones.
3. Part by part (driving, each item that wears) what is fitted on all cars is kept where its foretelling scored no
   worse; else what was in use stays, unless that is itself worse than the published.

Heavy (numpy, scipy): import it where it is called. What it returns (`learned.py`) is light.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace

import numpy as np

from followup.core.forecast.history import CarHistory
from followup.core.forecast.learn_check import HeldBack, usage_scores, wear_scores
from followup.core.forecast.learn_fit import Evidence, as_published, cars_that_tell, evidence_of, fit
from followup.core.forecast.learned import LEAST_CARS, USAGE, Learned, LearnedPart, Outcome, usage_found
from followup.core.forecast.priors import PUBLISHED, ShopPriors
from followup.core.forecast.season import Array

# How often `progress` is told of every car, at most.
PASSES = 4
# A small shop needs most of its cars for the fit.
_FOLDS, _FOLDS_OF_FEW, _FEW_CARS = 2, 5, 150
# Fewer readings that were held back judge nothing.
_LEAST_HELD_BACK = 8

Progress = Callable[[int], object]
Scores = dict[str, Array]


def learn(histories: Sequence[CarHistory], in_use: ShopPriors = PUBLISHED, progress: Progress | None = None) -> Learned:
    """What these cars teach, and the priors to be used from now on; `in_use` are those of today.

    `progress` is told of every car, up to `PASSES` times.
    """
    cars = [one for one in histories if one.last_inspected_on is not None]
    published = as_published(in_use)
    if not cars:
        return Learned(in_use, 0, ())
    evidence, held = evidence_of(cars, published, progress)
    own = fit(evidence, published)
    everyone = np.ones(len(cars), dtype=bool)
    scores = _Compared(
        _score(evidence, held, [(published, everyone)], progress),
        _score(evidence, held, _folds(evidence, published), progress),
    )
    names = [USAGE, *(table.item for table in evidence.tables)]
    if any(_is_own(name, in_use) and scores.is_worse(name) for name in names):
        scores = replace(scores, old=_score(evidence, held, [(in_use, everyone)], progress))
    parts = tuple(_part(name, evidence, own, published, in_use, scores) for name in names)
    return Learned(_chosen(parts, own, published, in_use), len(cars), parts)


@dataclass(frozen=True)
class _Compared:
    """Scores by part: of the published priors, of own ones fitted without the cars that they foretell, of those in use.

    Those in use were fitted on these cars, so that they look a little better than they are.
    """

    published: Scores
    own: Scores
    old: Scores | None = None

    def is_worse(self, name: str) -> bool:
        """True where the shop's own foretell worse than the published."""
        if not len(self.own.get(name, ())):
            return False
        return float(self.own[name].mean()) > float(self.published[name].mean())


def _folds(evidence: Evidence, published: ShopPriors) -> list[tuple[ShopPriors, np.ndarray]]:
    """Priors fitted without some cars, and which cars these are (True by row)."""
    cars = len(evidence.intervals.is_there)
    count = _FOLDS if cars > _FEW_CARS else _FOLDS_OF_FEW
    fold = np.arange(cars) % count
    return [(fit(evidence.of_cars(fold != one), published), fold == one) for one in range(count)]


def _score(
    evidence: Evidence,
    held: Sequence[HeldBack],
    priors: Sequence[tuple[ShopPriors, np.ndarray]],
    progress: Progress | None,
) -> Scores:
    """Scores by part, each car foretold with the priors that are meant for it."""
    found: dict[str, list[Array]] = {}
    for usual, is_meant in priors:
        # Driving is judged apart: readings are foretold at the odometer, told in the same way for all.
        of_wear = replace(usual, usage=PUBLISHED.usage)
        scored = wear_scores([one for one in held if is_meant[one.row]], of_wear, progress)
        scored[USAGE] = usage_scores(evidence.of_cars(is_meant).intervals, usual.usage)
        for name, scores in scored.items():
            found.setdefault(name, []).append(scores)
    return {name: np.concatenate(scores) for name, scores in found.items()}


def _part(
    name: str, evidence: Evidence, own: ShopPriors, published: ShopPriors, in_use: ShopPriors, scores: _Compared
) -> LearnedPart:
    """What becomes of one part."""
    cars = cars_that_tell(evidence, name)
    had = _is_own(name, in_use)
    if cars < LEAST_CARS or len(scores.own.get(name, ())) < _LEAST_HELD_BACK:
        return LearnedPart(name, "too_few", cars)
    by_published, by_own = float(scores.published[name].mean()), float(scores.own[name].mean())
    outcome: Outcome = "learned" if by_own <= by_published else "published"
    if outcome == "published" and had:
        by_old = float(scores.old[name].mean()) if scores.old else by_own
        outcome = "kept_old" if by_old <= by_published else "published"
    lesson = own.lesson(name)
    found = usage_found(own.usage, published.usage) if name == USAGE else evidence.table(name).mean_factors(lesson)
    return LearnedPart(
        name, outcome, cars, len(scores.own[name]), round(by_published, 4), round(by_own, 4), found
    )  # fmt: skip


def _is_own(name: str, in_use: ShopPriors) -> bool:
    return in_use.usage != PUBLISHED.usage if name == USAGE else in_use.lesson(name) is not None


def _chosen(parts: Sequence[LearnedPart], own: ShopPriors, published: ShopPriors, in_use: ShopPriors) -> ShopPriors:
    """Each part from where it was decided."""
    source = {"learned": own, "published": published, "kept_old": in_use, "too_few": in_use}
    of = {one.part: source[one.outcome] for one in parts}
    items = dict.fromkeys([*(one.part for one in parts), *(one.item for one in in_use.wear)])
    lessons = [of.get(item, in_use).lesson(item) for item in items if item != USAGE]
    return replace(
        published, usage=of.get(USAGE, in_use).usage, wear=tuple(lesson for lesson in lessons if lesson is not None)
    )
