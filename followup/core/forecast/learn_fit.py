"""A shop's own priors from its cars, as far as its records carry them."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace

import numpy as np

from followup.core.forecast.cars import Car, intervals_of, make_ready
from followup.core.forecast.history import CarHistory
from followup.core.forecast.learn_check import HeldBack, hold_back
from followup.core.forecast.learn_errors import learn_errors
from followup.core.forecast.learn_table import WearTable, wear_axles, wear_table
from followup.core.forecast.learn_usage import learn_usage
from followup.core.forecast.learn_wear import learn_wear, rates_of
from followup.core.forecast.learned import LEAST_CARS, USAGE
from followup.core.forecast.priors import PUBLISHED, ShopPriors, WearLesson
from followup.core.forecast.usage import OdometerIntervals
from followup.core.forecast.wear_items import WearAxle


class NeverInspected(ValueError):
    """A car that was never inspected teaches nothing: leave it out."""


@dataclass(frozen=True)
class Evidence:
    """What the cars tell, as arrays: odometer intervals (by the row of the car) and sets of worn parts by item."""

    intervals: OdometerIntervals
    tables: tuple[WearTable, ...]

    def of_cars(self, is_chosen: np.ndarray) -> Evidence:
        """The evidence of the chosen cars alone; `is_chosen` by the row of the car."""
        there = self.intervals.is_there & is_chosen[:, None]
        told = {**vars(self.intervals), "is_there": there}
        return Evidence(OdometerIntervals(**told), tuple(one.of_cars(is_chosen) for one in self.tables))

    def table(self, item: str) -> WearTable:
        """The sets of one item."""
        return next(one for one in self.tables if one.item == item)


def as_published(usual: ShopPriors) -> ShopPriors:
    """The published priors, with the facts of the shop that nobody learns (its seasons, its gauges)."""
    return replace(usual, usage=PUBLISHED.usage, wear=PUBLISHED.wear)


def evidence_of(
    histories: Sequence[CarHistory], published: ShopPriors, progress: Callable[[int], object] | None = None
) -> tuple[Evidence, list[HeldBack]]:
    """All that these cars tell, seen through the published priors, and their last readings to be foretold.

    Each must have been inspected.
    """
    cars: list[Car] = []
    held: list[HeldBack] = []
    axles: dict[str, list[WearAxle]] = {}
    for row, history in enumerate(histories):
        on = history.last_inspected_on
        if on is None:
            raise NeverInspected
        cars.append(make_ready(row, history, on, published.usage))
        of_car = wear_axles(cars[-1:], published)
        for item, found in of_car.items():
            axles.setdefault(item, []).extend(found)
        if (held_back := hold_back(row, history, of_car)) is not None:
            held.append(held_back)
        if progress:
            progress(1)
    tables = tuple(wear_table(item, found) for item, found in axles.items())
    return Evidence(intervals_of(cars, published.usage), tables), held


def fit(evidence: Evidence, published: ShopPriors) -> ShopPriors:
    """The priors that this evidence supports; what it does not support stays as published."""
    lessons = [lesson for table in evidence.tables if (lesson := lesson_of(table)) is not None]
    usage = published.usage
    if cars_that_tell(evidence, USAGE) >= LEAST_CARS:
        usage = learn_usage(evidence.intervals, usage)
    return replace(published, usage=usage, wear=tuple(lessons))


def cars_that_tell(evidence: Evidence, part: str) -> int:
    """How many cars tell a distance between two days, or how fast an item wears."""
    if part == USAGE:
        return int(evidence.intervals.is_there.any(axis=1).sum())
    table = evidence.table(part)
    return int(rates_of(table, learn_errors(table)).car.max(initial=-1)) + 1


def lesson_of(table: WearTable) -> WearLesson | None:
    """What the cars teach of one item; None where fewer than `LEAST_CARS` were read twice."""
    errors = learn_errors(table)
    fitted = learn_wear(rates_of(table, errors), table.between_cars, table.between_items)
    if fitted.cars < LEAST_CARS:
        return None
    return WearLesson(
        table.item,
        tuple((trait, round(float(found), 5)) for trait, found in zip(table.traits, fitted.corrections, strict=True)),
        round(fitted.between_cars / table.between_cars, 5),
        round(fitted.between_items / table.between_items, 5),
        round(errors.reading_error, 5),
        round(errors.mate_error, 5),
        fitted.cars,
    )
