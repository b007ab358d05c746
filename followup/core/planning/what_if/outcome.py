"""What would come of rules, in words' reach: means with the range that holds eight worlds in ten, and car by car."""

from __future__ import annotations

from collections.abc import Generator, Mapping, Sequence
from dataclasses import dataclass

import numpy as np

from followup.core.planning.what_if.cars import CarAhead
from followup.core.planning.what_if.draws import DAYS, WEEKS, Draws, curves_of, draw
from followup.core.planning.what_if.items import items_ahead
from followup.core.planning.what_if.lives import Lives, Tally
from followup.core.planning.what_if.odds import Odds
from followup.core.planning.what_if.plan import NEVER_DAY, Plan

WORLDS = 200
# So many worlds at a time: a batch of 5,000 cars fits into 150 MiB; and after how many days it is told how far it is.
_AT_ONCE, _TOLD_EVERY = 100, 26
RANGE = (10.0, 90.0)


@dataclass(frozen=True)
class Range:
    """The mean of all worlds and what eight of ten lie between."""

    mean: float
    low: float
    high: float

    @staticmethod
    def of(values: np.ndarray) -> Range:
        """Of one value a world."""
        low, high = np.percentile(values, RANGE)
        return Range(float(values.mean()), float(low), float(high))


@dataclass(frozen=True)
class Outcome:
    """Half a year under one set of rules. Counts a week but `stops` (in all); shares from 0 to 1: `wasted` of prompted
    visits at which nothing was near its limit, `past_action` and `past_legal` of all visits. `hours` by skill and week:
    mean labor hours of all visits. `first_text` by car: the middle day of its first text, None where most worlds have
    none."""

    texts: Range
    prompted: Range
    own: Range
    stops: Range
    wasted: Range
    past_action: Range
    past_legal: Range
    hours: Mapping[str, Sequence[float]]
    hours_a_week: Range
    first_text: Mapping[str, int | None]


def outcomes(
    plans: Sequence[Plan],
    cars: Sequence[CarAhead],
    odds: Odds,
    skills: Sequence[str],
    random: np.random.Generator,
    worlds: int = WORLDS,
) -> Generator[float, None, list[Outcome]]:
    """Each plan in the same worlds: yields the share that is done, and returns what came of each."""
    lived: list[list[Lives]] = [[] for _ in plans]
    curves, items, done, left = curves_of(cars), items_ahead(cars), 0, worlds
    while left > 0:
        draws = draw(curves, odds, min(left, _AT_ONCE), random)
        left -= draws.worlds
        for number, plan in enumerate(plans):
            lives = Lives(plan, draws, cars, odds, tuple(skills), items)
            for day in lives.live():
                if (day + 1) % _TOLD_EVERY == 0:
                    yield (done + draws.worlds * (day + 1) / DAYS) / (worlds * len(plans))
            done += draws.worlds
            lived[number].append(lives)
    return [_outcome([one.tally for one in parts], [one.first_text for one in parts], cars) for parts in lived]


def live(
    plan: Plan, draws: Draws, cars: Sequence[CarAhead], odds: Odds, skills: Sequence[str]
) -> tuple[Tally, np.ndarray]:
    """One plan in these worlds, and the day of each car's first text (worlds, cars)."""
    lives = Lives(plan, draws, cars, odds, tuple(skills), items_ahead(cars))
    for _ in lives.live():
        pass
    return lives.tally, lives.first_text


def _outcome(tallies: Sequence[Tally], days: Sequence[np.ndarray], cars: Sequence[CarAhead]) -> Outcome:
    tally = tallies[0]
    for other in tallies[1:]:
        tally = tally.joined(other)
    prompted, own = tally.prompted.sum(axis=1), tally.own.sum(axis=1)
    visits = np.maximum(prompted + own, 1.0)
    middle = np.median(np.concatenate(days), axis=0)
    return Outcome(
        texts=Range.of(tally.texts.sum(axis=1) / WEEKS), prompted=Range.of(prompted / WEEKS),
        own=Range.of(own / WEEKS), stops=Range.of(tally.stops),
        wasted=Range.of(tally.wasted / np.maximum(prompted, 1.0)), past_action=Range.of(tally.past_action / visits),
        past_legal=Range.of(tally.past_legal / visits),
        hours={name: tally.hours[:, :, at].mean(axis=0).tolist() for at, name in enumerate(tally.skills)},
        hours_a_week=Range.of(tally.hours.sum(axis=(1, 2)) / WEEKS),
        first_text={car.key: None if day >= NEVER_DAY else int(day) for car, day in zip(cars, middle, strict=True)},
    )  # fmt: skip
