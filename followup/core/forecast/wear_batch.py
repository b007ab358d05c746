"""Worn items of many cars at once: from axles with their sets of parts to due times.

Which set of parts it is (the first, a later one) is decided for the axle; each side is forecast with its own readings,
its mate's counting for less.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from functools import partial

import numpy as np

from followup.core.forecast.batch import Batch
from followup.core.forecast.passage import first_passage, still_in_use
from followup.core.forecast.season import (
    DAYS_A_YEAR,
    Array,
    Clock,
    SeasonalClock,
    calendar_clock,
    driving_clock,
)
from followup.core.forecast.sets import PartSet
from followup.core.forecast.usage import HORIZONS, UsageAhead
from followup.core.forecast.value_ahead import ValueAhead
from followup.core.forecast.wear import (
    ORIGINAL,
    WearBelief,
)
from followup.core.forecast.wear_arrays import believe_sets, picked, sets_as_arrays
from followup.core.forecast.wear_evidence import WornRows
from followup.core.forecast.wear_items import WearAxle, gauge_step
from followup.core.forecast.window import Because, SinceHow

BY_DISTANCE, BY_TIME = "distance-wear/1", "time-wear/1"


@dataclass(frozen=True)
class BelievedAxles:
    """What is believed of the parts that are on the cars: `places` are (number of the axle, side), a row each."""

    places: list[tuple[int, int]]
    belief: WearBelief
    replaced_at: Array
    replaced_spread: Array


def wear_batches(axles: Sequence[WearAxle], usage: UsageAhead, straightness: float) -> list[Batch]:
    """One batch by distance, one by time; empty ones are left out."""
    by_distance = [one for one in axles if not one.is_by_time]
    by_time = [one for one in axles if one.is_by_time]
    batches = []
    if by_distance:
        batches.append(_batch(by_distance, usage, straightness))
    if by_time:
        cars = max(one.car.row for one in by_time) + 1
        # A year is a year: 1,000 "miles" of it in 365.25 days, without spread.
        steady = np.full((cars, len(HORIZONS)), np.log(1000 / DAYS_A_YEAR))
        batches.append(_batch(by_time, UsageAhead(steady, np.full_like(steady, 1e-6)), straightness))
    return batches


def _batch(axles: Sequence[WearAxle], usage: UsageAhead, straightness: float) -> Batch:
    return _told(axles, believe_axles(axles, straightness), usage)


def believe_axles(axles: Sequence[WearAxle], straightness: float) -> BelievedAxles:
    """Wear rate and value on the car's last day of every side, by its own readings, its mate's and the other axles'."""
    sets = sets_as_arrays(axles)
    beliefs = believe_sets(sets, straightness)
    current = {int(sets.axle[row]): row for row in np.nonzero(sets.is_current)[0]}
    places = [(number, side) for number, axle in enumerate(axles) for side in range(len(axle.sides))]
    rows = np.array([current[number] for number, _ in places])
    belief = picked(beliefs, rows, np.array([min(side, 1) for _, side in places]))
    return BelievedAxles(places, belief, sets.replaced_at[rows], sets.replaced_spread[rows])


def _told(axles: Sequence[WearAxle], believed: BelievedAxles, usage: UsageAhead) -> Batch:
    """The batch of the sets that are on the cars, a row a side."""
    places, belief = believed.places, believed.belief
    of = [axles[number].sides[side] for number, side in places]
    cars = np.array([one.car.row for one in of])
    origin = np.array([one.car.origin for one in of])
    clock = _clock([axles[number] for number, _ in places])
    limit = np.array([axles[number].limit for number, _ in places])
    replaced_at, replaced_spread = believed.replaced_at, believed.replaced_spread
    times = first_passage(belief, limit, replaced_at, replaced_spread, usage, cars)
    as_of = np.array([float(one.car.as_of.toordinal()) for one in of])
    gone = np.maximum(clock.at(as_of) - clock.at(origin), 0.0)
    daily = np.exp(usage.at_reference(cars))
    in_use = still_in_use(belief, replaced_at, replaced_spread)
    now = np.maximum(in_use.value - np.exp(in_use.log_rate) * daily * gone / 1000, 0.0)
    shown = [
        float(round(value if axles[number].sides[side].item.falls else axles[number].shown_limit.value - value, 2))
        for value, (number, side) in zip(now.tolist(), places, strict=True)
    ]
    because = [
        _because(axles[number], axles[number].sets[-1], side, rate, miles, original)
        for (number, side), rate, miles, original in zip(
            places, np.exp(in_use.log_rate).tolist(), daily.tolist(), belief.chances[ORIGINAL].tolist(), strict=True
        )
    ]
    limits = [axles[number].shown_limit for number, _ in places]
    ahead = None if axles[0].is_by_time else partial(_ahead, axles, places, in_use, usage)
    worn = WornRows(axles, places, belief, limit, replaced_at, replaced_spread, usage, cars, origin, clock)
    nobody = np.zeros(len(of), dtype=bool)
    nearer = limit + np.array([one.item.near or 0.0 for one in of])
    near = partial(first_passage, belief, nearer, replaced_at, replaced_spread, usage, cars)
    return Batch(of, times, origin, clock, limits, shown, because, nobody, ahead, worn.evidence, near)


def _ahead(
    axles: Sequence[WearAxle], places: list[tuple[int, int]], belief: WearBelief, usage: UsageAhead, row: int
) -> ValueAhead:
    """What the window of a row rests on."""
    axle = axles[places[row][0]]
    car = axle.car
    miles = zip(HORIZONS.tolist(), usage.log_rate[car.row].tolist(), usage.variance[car.row].tolist(), strict=True)
    return ValueAhead(
        date.fromordinal(int(car.origin)),
        float(belief.value[row]),
        float(belief.value_variance[row]),
        float(belief.log_rate[row]),
        float(belief.log_rate_variance[row]),
        float(belief.covariance[row]),
        axle.prior.reading_error,
        gauge_step(axle.sides, axle.prior),
        tuple(miles),
    )


def _clock(axles: Sequence[WearAxle]) -> Clock:
    """The clock of rows of items: by the calendar, by driving, or by driving while a set of tires is on the car."""
    if axles[0].is_by_time:
        return calendar_clock()
    driving = driving_clock()
    if all(axle.scale.season is None for axle in axles):
        return driving
    begins = np.array([0.0 if axle.scale.season is None else axle.scale.season.begins for axle in axles])
    length = np.array([DAYS_A_YEAR if axle.scale.season is None else axle.scale.season.length for axle in axles])
    return SeasonalClock(driving.days, driving.shown, begins, length)


def _because(axle: WearAxle, on: PartSet, side: int, rate: float, miles: float, original: float) -> Because:
    how: SinceHow = on.since_how
    since = None if on.since_day is None else date.fromordinal(int(on.since_day))
    if how == "unknown" and original >= 0.5:
        how, since = "first_use", axle.car.history.vehicle.first_used_on
    position = axle.sides[side].position
    days = {one.where for one in on.observations if one.is_reading and one.side == position}
    unit = f"{axle.item.unit} a year" if axle.is_by_time else f"{axle.item.unit} per 1000 mi"
    return Because(
        float(rate), unit, None if axle.is_by_time else float(miles), len(days), since, how,
        BY_TIME if axle.is_by_time else BY_DISTANCE,
    )  # fmt: skip
