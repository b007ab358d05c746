"""What technicians write down of an invented fleet: with their own eyes and gauges, some of it wrong or left out."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from followup.core.forecast.season import Array
from followup.rehearsal.fleet.habits import FleetHabits, Reading

_OPERATORS = 8
_KM_PER_MILE = 1.609344


@dataclass(frozen=True)
class Written:
    """What was written at each visit: `value` (cars, visits, 4), NaN where left out, and the gauge's step there."""

    value: Array
    step: Array


def write_down(true: Array, new: Array, read: Reading, operator: np.ndarray, random: np.random.Generator) -> Written:
    """Read `true` (cars, visits, 4) with the operator's bias, noise and gauge; some are missing, some plainly wrong."""
    bias = random.normal(0.0, read.operator_bias, _OPERATORS)[operator]
    steps = np.array([step for step, _ in read.gauges])
    step = steps[random.choice(len(steps), operator.shape, p=[share for _, share in read.gauges])]
    value = true + bias[:, :, None] + random.normal(0.0, read.error, true.shape)
    gross = random.random(true.shape) < read.gross_share
    value = np.where(gross, random.random(true.shape) * new[:, None, :], value)
    value = np.maximum(np.round(value / step[:, :, None]) * step[:, :, None], 0.0)
    missing = random.random(true.shape) < read.missing_share
    return Written(np.where(missing, np.nan, value), step)


def operators(cars: int, visits: int, random: np.random.Generator) -> np.ndarray:
    """Who looked the car over, at each visit."""
    return np.asarray(random.integers(0, _OPERATORS, (cars, visits)))


def write_odometer(miles: Array, habits: FleetHabits, random: np.random.Generator) -> Array:
    """Odometers (cars, visits) as typed: some with one wrong digit, some in kilometers though called miles."""
    typed = np.maximum(np.round(miles), 1.0)
    wrong = random.random(miles.shape) < habits.typing_error_share
    for car, visit in zip(*np.nonzero(wrong), strict=True):
        typed[car, visit] = _mistyped(int(typed[car, visit]), random)
    kilometers = ~wrong & (random.random(miles.shape) < habits.kilometers_share)
    return np.where(kilometers, np.round(miles * _KM_PER_MILE), typed)


def _mistyped(miles: int, random: np.random.Generator) -> int:
    """One digit changed, two exchanged, or one left out."""
    digits = list(str(miles))
    place = int(random.integers(0, len(digits)))
    kind = random.random()
    if kind < 0.5 or len(digits) < 2:
        digits[place] = str(random.integers(0, 10))
    elif kind < 0.8:
        place = min(place, len(digits) - 2)
        digits[place], digits[place + 1] = digits[place + 1], digits[place]
    else:
        del digits[place]
    return int("".join(digits))
