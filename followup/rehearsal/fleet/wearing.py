"""Week by week parts wear and owners have them replaced and rotated; after a car's last visit nothing is done."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from followup.core.forecast.season import Array
from followup.rehearsal.fleet.driving import WEEK
from followup.rehearsal.fleet.habits import Wearing

# Left and right of the front axle, then of the rear.
FRONT, REAR = slice(0, 2), slice(2, 4)
AXLES = (FRONT, REAR)
_SIDES = 4
# Days without end: not due as long as the weeks were lived.
NEVER = np.inf


@dataclass(frozen=True)
class Happening:
    """One axle of one car was `replaced`, or `rotated` with the other, at the end of that week of the car's life."""

    car: int
    week: int
    axle: int
    did: str
    is_told: bool


@dataclass
class Parts:
    """One set of four on every car, as it is at the end of a week; arrays (cars, 4).

    `seen` (cars, visits, 4) fills with the true values at the visits, `due_days` (cars, 4) with the days from the last
    visit until the limit.
    """

    wearing: Wearing
    new_value: Array
    pace: Array
    random: np.random.Generator
    value: Array
    new: Array
    of_part: Array
    misaligned: Array
    change_at: Array
    rotates: np.ndarray
    next_rotation: Array
    seen: Array
    due_days: Array
    happened: list[Happening]


def fresh_parts(
    wearing: Wearing, new_value: Array, rate: Array, driver: Array, visits: int, random: np.random.Generator
) -> Parts:
    """A set on every new car: `new_value` (cars,), or (cars, 4) where axles differ; `rate` (cars, 4) unit per 1,000 mi.

    `driver` (cars,) is how hard each driver is on it, as a log.
    """
    cars = len(driver)
    usual = np.broadcast_to(new_value if new_value.ndim == 2 else new_value[:, None], (cars, _SIDES)).copy()
    crooked = random.random((cars, 2)) < wearing.misaligned_share
    parts = Parts(
        wearing=wearing,
        new_value=usual,
        pace=wearing.pace * rate * np.exp(driver)[:, None],
        random=random,
        value=np.zeros((cars, _SIDES)),
        new=np.zeros((cars, _SIDES)),
        of_part=np.ones((cars, _SIDES)),
        misaligned=np.where(np.repeat(crooked, 2, axis=1), wearing.misaligned_pace, 1.0),
        change_at=np.zeros((cars, 2)),
        rotates=random.random(cars) < wearing.rotating_share,
        next_rotation=_until_rotation(wearing, cars, random),
        seen=np.full((cars, visits, _SIDES), np.nan),
        due_days=np.full((cars, _SIDES), NEVER),
        happened=[],
    )
    for axle in (0, 1):
        put_on(parts, np.arange(cars), axle)
    return parts


def _until_rotation(wearing: Wearing, cars: int, random: np.random.Generator) -> Array:
    return np.asarray(wearing.rotation_miles * np.exp(random.normal(0.0, 0.25, cars)))


def put_on(parts: Parts, cars: np.ndarray, axle: int) -> None:
    """New parts on that axle of those cars; the sides of a pair differ a little."""
    wearing, random, where = parts.wearing, parts.random, AXLES[axle]
    new = parts.new_value[cars, where] + random.normal(0.0, wearing.new_spread, (len(cars), 1))
    pair = random.normal(0.0, wearing.between_sets, (len(cars), 1))
    parts.new[cars, where] = parts.value[cars, where] = new
    parts.of_part[cars, where] = np.exp(pair + random.normal(0.0, wearing.between_sides, (len(cars), 2)))
    parts.change_at[cars, axle] = random.uniform(*wearing.owners_change_at, len(cars))


def wear_a_week(parts: Parts, miles: Array, week: int, last_week: Array, is_on: np.ndarray) -> None:
    """One week more: `miles` (cars,) driven in it; `is_on` where this set is on the car."""
    wearing = parts.wearing
    bend = 1 + wearing.bend * (2 * parts.value / parts.new - 1)
    worn = parts.pace * parts.of_part * parts.misaligned * bend * (miles * is_on / 1000)[:, None]
    before = parts.value
    parts.value = np.maximum(before - worn, 0.0)
    ahead = week > last_week
    crossed = ahead[:, None] & np.isinf(parts.due_days) & (parts.value <= wearing.limit)
    if crossed.any():
        share = np.clip((before - wearing.limit) / np.maximum(worn, 1e-9), 0.0, 1.0)
        days = WEEK * (week - last_week[:, None] - 1 + share)
        parts.due_days = np.where(crossed, days, parts.due_days)


def do_the_work(parts: Parts, miles: Array, week: int, last_week: Array, is_on: np.ndarray) -> None:
    """What owners have done at the end of that week, after whatever was read in it; nothing from the last visit on."""
    may = (week < last_week) & is_on
    _have_changed(parts, week, may)
    if parts.wearing.rotating_share:
        _have_rotated(parts, miles, week, may)


def _have_changed(parts: Parts, week: int, may: np.ndarray) -> None:
    wearing, random = parts.wearing, parts.random
    worn_out = np.stack(
        [parts.value[:, where].min(axis=1) < parts.change_at[:, axle] for axle, where in enumerate(AXLES)]
    )
    worn_out &= may
    cars = np.nonzero(worn_out.any(axis=0))[0]
    if not len(cars):
        return
    all_four = random.random(len(cars)) < wearing.all_four_share
    is_told = random.random(len(cars)) < wearing.told_share
    for axle in (0, 1):
        changed = worn_out[axle, cars] | all_four
        put_on(parts, cars[changed], axle)
        parts.happened += [
            Happening(int(car), week, axle, "replaced", bool(told))
            for car, told in zip(cars[changed], is_told[changed], strict=True)
        ]


def _have_rotated(parts: Parts, miles: Array, week: int, may: np.ndarray) -> None:
    parts.next_rotation = parts.next_rotation - miles
    cars = np.nonzero(parts.rotates & may & (parts.next_rotation < 0))[0]
    if not len(cars):
        return
    rotate(parts, cars)
    is_told = parts.random.random(len(cars)) < parts.wearing.rotation_told_share
    parts.happened += [
        Happening(int(car), week, axle, "rotated", bool(told))
        for car, told in zip(cars, is_told, strict=True)
        for axle in (0, 1)
    ]


def rotate(parts: Parts, cars: np.ndarray) -> None:
    """Front and rear change places on those cars; the next time comes after some thousand miles."""
    for name in ("value", "new", "of_part"):
        of = getattr(parts, name)
        of[cars] = of[cars][:, [2, 3, 0, 1]]
    parts.next_rotation[cars] = _until_rotation(parts.wearing, len(cars), parts.random)
