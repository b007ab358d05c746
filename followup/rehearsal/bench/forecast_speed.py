"""How many items a second the arithmetic of the forecast does on one core, beside a loop of `numpy.polyfit`.

What is timed starts from arrays: cleaning and sorting what came in happens once a visit, not once a forecast.
"""

from __future__ import annotations

import time
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from statistics import median

import numpy as np

from followup.core.forecast.cars import intervals_of
from followup.core.forecast.due import worn_axles
from followup.core.forecast.history import CarHistory
from followup.core.forecast.odometer import age_years
from followup.core.forecast.passage import Passage, first_passage
from followup.core.forecast.priors import PUBLISHED
from followup.core.forecast.season import Array, driving_clock
from followup.core.forecast.usage import OdometerIntervals, UsageAhead, predict_usage
from followup.core.forecast.wear import STRAIGHTNESS_VARIANCE, WearBelief
from followup.core.forecast.wear_arrays import WearSets, believe_sets, picked, sets_as_arrays

_ROUNDS = 9
_LOOP_ITEMS = 2_000
# The chance that is asked beside the three points.
_WITHIN_DAYS = 90.0


@dataclass(frozen=True)
class Speed:
    """Items a second of processor time, medians of interleaved rounds."""

    items: int
    forecast_only: float
    whole_batch: float
    polyfit_loop: float


@dataclass(frozen=True)
class _Arrays:
    """All that the arithmetic needs of some cars; a row a side that is on a car."""

    sets: WearSets
    intervals: OdometerIntervals
    origin: Array
    ages: Array
    rows: np.ndarray
    sides: np.ndarray
    cars: np.ndarray
    limit: Array

    def usage(self) -> UsageAhead:
        """The distance a day ahead of each car."""
        return predict_usage(self.intervals, self.origin, self.ages, PUBLISHED.usage)

    def belief(self) -> WearBelief:
        """Rate and value of each row, from the readings of all sets."""
        return picked(believe_sets(self.sets, STRAIGHTNESS_VARIANCE), self.rows, self.sides)

    def forecast(self, belief: WearBelief, usage: UsageAhead) -> Passage:
        """Due times of each row, with the points and the chance that a window is made of."""
        at, spread = self.sets.replaced_at[self.rows], self.sets.replaced_spread[self.rows]
        passage = first_passage(belief, self.limit, at, spread, usage, self.cars)
        for chance in (0.1, 0.5, 0.9):
            passage.quantile(chance)
        passage.chance_by(np.full(len(self.rows), _WITHIN_DAYS))
        return passage


def _as_arrays(histories: Sequence[CarHistory]) -> _Arrays:
    axles = [one for one in worn_axles(histories, "last") if not one.is_by_time]
    cars = list({id(one.car): one.car for one in axles}.values())
    place = {id(car): row for row, car in enumerate(cars)}
    sets = sets_as_arrays(axles)
    current = {int(sets.axle[row]): row for row in np.nonzero(sets.is_current)[0]}
    sides = [(number, min(side, 1)) for number, axle in enumerate(axles) for side in range(len(axle.sides))]
    return _Arrays(
        sets,
        intervals_of(cars, PUBLISHED.usage),
        driving_clock().at(np.array([car.origin for car in cars])),
        np.array([age_years(car.track.first_used, car.origin) for car in cars]),
        np.array([current[number] for number, _ in sides]),
        np.array([side for _, side in sides]),
        np.array([place[id(axles[number].car)] for number, _ in sides]),
        np.array([axles[number].limit for number, _ in sides]),
    )


def measure_speed(histories: Sequence[CarHistory], progress: Callable[[int], object] | None = None) -> Speed:
    """Time the arithmetic and the loop in turns; each round takes all items of these cars at once."""
    arrays = _as_arrays(histories)
    belief, usage = arrays.belief(), arrays.usage()
    lines = _lines(histories)
    items = len(arrays.rows)
    only, whole, loop = [], [], []
    for _ in range(_ROUNDS):
        only.append(items / _took(lambda: arrays.forecast(belief, usage)))
        whole.append(items / _took(lambda: arrays.forecast(arrays.belief(), arrays.usage())))
        loop.append(len(lines) / _took(lambda: [np.polyfit(days, values, 1) for days, values in lines]))
        if progress:
            progress(1)
    return Speed(items, median(only), median(whole), median(loop))


def _took(run: Callable[[], object]) -> float:
    began = time.process_time()
    run()
    return max(time.process_time() - began, 1e-9)


def _lines(histories: Sequence[CarHistory]) -> list[tuple[Array, Array]]:
    """Days and values of items read at least twice: what a loop of least squares would fit."""
    found: dict[tuple[str, str, str], list[tuple[float, float]]] = {}
    for car in histories:
        for one in car.readings:
            if one.value is not None:
                key = (car.vehicle.code, one.item, one.position)
                found.setdefault(key, []).append((float(one.on.toordinal()), one.value))
    several = [np.array(one) for one in found.values() if len({day for day, _ in one}) > 1][:_LOOP_ITEMS]
    return [(one[:, 0] - one[-1, 0], one[:, 1]) for one in several]
