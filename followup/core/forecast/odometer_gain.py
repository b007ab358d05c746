"""How much better the distance ahead would be known if the customer told the odometer now: before anybody asks.

The variance of the best linear prediction depends on when the odometer was read, not on what it showed.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from datetime import date
from typing import Literal

import numpy as np

from followup.core.forecast.cars import Car, intervals_of, make_ready
from followup.core.forecast.history import CarHistory
from followup.core.forecast.odometer import age_years
from followup.core.forecast.priors import PUBLISHED, UsagePrior
from followup.core.forecast.season import Array, driving_clock
from followup.core.forecast.usage import MOST_INTERVALS, OdometerIntervals, predict_usage

# Days since the last odometer for which it is worked out: one that is asked for later gains at least as much.
ASKED_AFTER_DAYS = (90, 180, 365)
_HORIZON = 2

Gains = tuple[tuple[int, float], ...]


def variance_gained(
    histories: Sequence[CarHistory], as_of: date | Literal["last"], prior: UsagePrior = PUBLISHED.usage
) -> dict[str, Gains]:
    """For each car: (days since its last odometer, fall of the variance of the log distance over the next 200 days).

    A car whose intervals fill all places is left out: one more would not tell much.
    """
    cars: list[Car] = []
    for history in histories:
        on = history.last_inspected_on if as_of == "last" else as_of
        if on is not None:
            ready = make_ready(len(cars), history, on, prior)
            if ready.track.days:
                cars.append(ready)
    if not cars:
        return {}
    intervals = intervals_of(cars, prior)
    known = intervals.is_there.sum(axis=1)
    gains = [_gained(cars, intervals, known, float(days), prior) for days in ASKED_AFTER_DAYS]
    return {
        car.history.vehicle.code: tuple(
            (days, round(float(gain[row]), 6)) for days, gain in zip(ASKED_AFTER_DAYS, gains, strict=True)
        )
        for row, car in enumerate(cars)
        if known[row] < MOST_INTERVALS
    }


def _gained(
    cars: Sequence[Car], intervals: OdometerIntervals, known: np.ndarray, days: float, prior: UsagePrior
) -> Array:
    clock, last = driving_clock(), np.array([car.track.days[-1] for car in cars])
    ages = np.array([age_years(car.track.first_used, day + days) for car, day in zip(cars, last, strict=True)])
    begin, end = clock.at(last), clock.at(last + days)
    at = (np.arange(len(cars)), np.minimum(known, MOST_INTERVALS - 1))

    def with_one(of: np.ndarray, value: Array | bool) -> np.ndarray:
        more = of.copy()
        more[at] = value
        return more

    told = replace(
        intervals,
        start=with_one(intervals.start, begin),
        end=with_one(intervals.end, end),
        is_first=with_one(intervals.is_first, False),
        is_there=with_one(intervals.is_there, True),
    )
    before = predict_usage(intervals, end, ages, prior).variance[:, _HORIZON]
    return np.asarray(before - predict_usage(told, end, ages, prior).variance[:, _HORIZON])
