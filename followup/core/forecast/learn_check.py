"""Whether priors are right: each car's last reading, foretold from the visits before it.

A reading is foretold at the odometer that was then found, so that the wear is judged and not the driving; the last
distance between two odometer entries judges the driving. Tires that were rotated or replaced in between say nothing,
and are left out as far as anybody knows of it. Scores are mean CRPS: the less, the better.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from datetime import timedelta

import numpy as np

from followup.core.forecast.cars import make_ready
from followup.core.forecast.history import CarHistory
from followup.core.forecast.learn_table import wear_axles
from followup.core.forecast.passage import still_in_use
from followup.core.forecast.priors import ShopPriors, UsagePrior
from followup.core.forecast.score import crps_of_normals
from followup.core.forecast.season import Array
from followup.core.forecast.usage import OdometerIntervals, interval_covariance
from followup.core.forecast.wear import STRAIGHTNESS_VARIANCE, WearBelief
from followup.core.forecast.wear_batch import BelievedAxles, believe_axles
from followup.core.forecast.wear_items import WearAxle, doubt_of, gauge_step


@dataclass(frozen=True)
class HeldReading:
    """One side's last reading: what it showed, and where (thousand miles, or years).

    `rounding` is the gauge's share of its variance, `care` how many times the usual error's the rest is.
    """

    position: str
    value: float
    where: float
    rounding: float
    care: float


@dataclass(frozen=True)
class HeldBack:
    """A car without its last inspection, and by item what that inspection read."""

    row: int
    before: CarHistory
    readings: dict[str, tuple[HeldReading, ...]]


def hold_back(row: int, history: CarHistory, axles: dict[str, list[WearAxle]]) -> HeldBack | None:
    """The car without its last inspection; None where nothing that was read then can be foretold.

    `axles` are those of the whole history.
    """
    last = history.last_inspected_on
    if last is None:
        return None
    readings = {item: tuple(one for axle in found for one in _held(axle, history)) for item, found in axles.items()}
    readings = {item: found for item, found in readings.items() if found}
    before = history.until(last - timedelta(days=1))
    return HeldBack(row, before, readings) if readings and before.readings else None


def _held(axle: WearAxle, history: CarHistory) -> list[HeldReading]:
    """What was read of an axle on the car's last day, of a set that was read before."""
    if all(one.last.on != history.last_inspected_on for one in axle.sides):
        return []
    read = [parts for parts in axle.sets if any(one.is_reading for one in parts.observations)]
    seen = [one for one in read[-1].observations if one.is_reading] if read else []
    if len({one.where for one in seen}) < 2:
        return []
    last = [one for one in seen if one.where == seen[-1].where]
    rounding = gauge_step(axle.sides, axle.prior) ** 2 / 12
    doubt = doubt_of([one.value for one in last])
    usual = axle.prior.reading_error**2
    return [
        HeldReading(one.side, one.value, one.where, rounding, max(one.variance - rounding - doubt, 0.0) / usual)
        for one in last
    ]


def wear_scores(
    cars: Sequence[HeldBack], usual: ShopPriors, progress: Callable[[int], object] | None = None
) -> dict[str, Array]:
    """CRPS of every held-back reading by item, foretold with these priors, in the order of the cars."""
    axles: dict[str, list[WearAxle]] = {}
    for one in cars:
        on = one.before.last_inspected_on
        if on is not None:
            ready = make_ready(one.row, one.before, on, usual.usage)
            for item, found in wear_axles([ready], usual).items():
                axles.setdefault(item, []).extend(found)
        if progress:
            progress(1)
    held = {(one.row, item): found for one in cars for item, found in one.readings.items()}
    return {item: _scores(item, found, held) for item, found in axles.items()}


def _scores(item: str, axles: list[WearAxle], held: dict[tuple[int, str], tuple[HeldReading, ...]]) -> Array:
    believed = believe_axles(axles, STRAIGHTNESS_VARIANCE)
    rows: list[int] = []
    told: list[tuple[float, float, float]] = []
    for row, (number, side) in enumerate(believed.places):
        axle = axles[number]
        for one in held.get((axle.car.row, item), ()):
            if one.position == axle.sides[side].position and one.where >= axle.end_at:
                error = axle.prior.reading_error**2 * one.care + one.rounding
                rows.append(row)
                told.append((one.value, one.where - axle.end_at, error))
    if not rows:
        return np.zeros(0)
    value, distance, error_variance = np.array(told).T
    mean, variance = _foretold(believed, np.array(rows), distance)
    return crps_of_normals(np.ones(1), mean[:, None], np.sqrt(variance + error_variance)[:, None], value)


def _foretold(believed: BelievedAxles, rows: np.ndarray, distance: Array) -> tuple[Array, Array]:
    """Mean and variance of what is left after so much more distance, of what is still on the car then.

    That is the value less a log-normal rate times the distance; worn parts were replaced by then and are not read.
    """
    belief = believed.belief
    spread = belief.log_rate_variance[rows]
    rate = np.exp(belief.log_rate[rows] + spread / 2)
    worn_variance = (rate * distance) ** 2 * np.expm1(spread)
    variance = belief.value_variance[rows] + worn_variance - 2 * distance * rate * belief.covariance[rows]
    ahead = WearBelief(
        belief.log_rate[rows],
        spread,
        belief.value[rows] - rate * distance,
        np.maximum(variance, 1e-4),
        np.zeros_like(spread),
        belief.chances[:, rows],
    )
    in_use = still_in_use(ahead, believed.replaced_at[rows], believed.replaced_spread[rows])
    return in_use.value, in_use.value_variance


def usage_scores(intervals: OdometerIntervals, prior: UsagePrior) -> Array:
    """CRPS of the log rate of each car's last interval given those before it; cars with an interval, in their order.

    The last of several normal variables given the others has the variance one over its entry of the inverse covariance.
    """
    some = intervals.is_there.any(axis=1)
    told = OdometerIntervals(*(getattr(intervals, name)[some] for name in vars(intervals)))
    if not some.any():
        return np.zeros(0)
    precision = np.linalg.inv(interval_covariance(told, prior))
    surprise = np.where(told.is_there, told.log_rate - prior.log_miles_per_day, 0.0)
    last = told.is_there.shape[1] - 1 - np.argmax(told.is_there[:, ::-1], axis=1)
    car = np.arange(len(last))
    own = precision[car, last, last]
    miss = np.einsum("ci,ci->c", precision[car, last], surprise) / own
    return crps_of_normals(np.ones(1), np.zeros((len(car), 1)), np.sqrt(1 / own)[:, None], miss)
