"""Cars made ready for a forecast: the odometer put right, the distance a day ahead, and each item's own readings."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date

import numpy as np

from followup.core.forecast.history import CarHistory, Reading, axle_of, touches
from followup.core.forecast.odometer import OdometerTrack, age_years, track
from followup.core.forecast.priors import UsagePrior
from followup.core.forecast.season import driving_clock
from followup.core.forecast.usage import (
    LEAST_INTERVAL_DAYS,
    MOST_INTERVALS,
    OdometerIntervals,
    UsageAhead,
    age_offset,
    predict_usage,
)
from followup.core.item import Item, in_use
from followup.core.vehicle import AXLES
from followup.core.visit import Work


@dataclass(frozen=True)
class Car:
    """One car as known on `as_of`. Days are `date.toordinal`; `origin` is the last day on which anything was noted."""

    row: int
    history: CarHistory
    as_of: date
    track: OdometerTrack
    origin: float

    def thousand_miles(self, day: float) -> float:
        """The odometer on that day, in thousand miles."""
        return self.track.at(day) / 1000


@dataclass(frozen=True)
class ItemHistory:
    """One item at one position of one car: its readings in the order of time, and the work that concerns it.

    `stored_set` is the label of a set of tires that is not the one seen on last; None: what is on the car.
    """

    car: Car
    item: Item
    position: str
    readings: tuple[Reading, ...]
    work: tuple[Work, ...]
    stored_set: str | None = None

    @property
    def last(self) -> Reading:
        """The latest reading, of a stored set its own."""
        if self.stored_set is None:
            return self.readings[-1]
        return next(one for one in reversed(self.readings) if one.tire_set == self.stored_set)

    def work_done(self, *did: str) -> Work | None:
        """The latest work of these kinds, or None."""
        return next((one for one in reversed(self.work) if one.did in did), None)


def make_ready(row: int, history: CarHistory, as_of: date, prior: UsagePrior) -> Car:
    """The car as known on `as_of`; nothing later is looked at."""
    known = history.until(as_of)
    first_used = known.vehicle.first_used_on
    seen = [*(one[0] for one in known.odometers), *(one.on for one in known.readings), *(one.on for one in known.work)]
    begin = float(first_used.toordinal()) if first_used else None
    if begin is not None and seen and begin > min(seen).toordinal():
        begin = None
    entries = [(float(on.toordinal()), miles) for on, miles in known.odometers]
    origin = float(max(seen, default=as_of).toordinal())
    return Car(row, known, as_of, track(entries, begin, prior), origin)


def usage_of(cars: list[Car], prior: UsagePrior) -> UsageAhead:
    """The distance a day ahead of each car, from its origin on, in effective days."""
    origin = np.array([car.origin for car in cars])
    ages = np.array([age_years(car.track.first_used, car.origin) for car in cars])
    return predict_usage(intervals_of(cars, prior), driving_clock().at(origin), ages, prior)


def intervals_of(cars: list[Car], prior: UsagePrior) -> OdometerIntervals:
    """The last six intervals between kept odometer entries of each car; `prior` tells how use falls with age."""
    shape = (len(cars), MOST_INTERVALS)
    start, end, log_rate = np.zeros(shape), np.ones(shape), np.zeros(shape)
    is_first, is_there = np.zeros(shape, dtype=bool), np.zeros(shape, dtype=bool)
    clock = driving_clock()
    found = [(row, *one) for row, car in enumerate(cars) for one in _intervals(car.track)]
    if found:
        rows, places, begins, ends, miles, firsts, ages = (np.array(column) for column in zip(*found, strict=True))
        began, ended = clock.at(begins), clock.at(ends)
        used = age_offset(ages, ages + (ends - begins) / 365.25, prior)
        at = (rows, places)
        start[at], end[at], is_first[at], is_there[at] = began, ended, firsts, True
        log_rate[at] = np.log(miles / (ended - began)) - np.where(np.isnan(ages), 0.0, used)
    return OdometerIntervals(start, end, log_rate, is_first, is_there)


def _intervals(track: OdometerTrack) -> list[tuple[int, float, float, float, bool, float]]:
    """(place, begin, end, miles, is first, age at its begin) of the last six intervals between kept entries."""
    ends = list(zip(track.days, track.miles, strict=True))
    begin = (track.first_used, 0.0) if track.first_used is not None else None
    found: list[tuple[float, float, float, bool, float]] = []
    for day, miles in ends:
        if begin is not None and day - begin[0] < LEAST_INTERVAL_DAYS:
            continue
        if begin is not None and miles > begin[1]:
            is_first = begin[0] == track.first_used
            found.append((begin[0], day, miles - begin[1], is_first, age_years(track.first_used, begin[0])))
        begin = (day, miles)
    return [(place, *one) for place, one in enumerate(found[-MOST_INTERVALS:])]


def items_of(car: Car) -> Iterator[ItemHistory]:
    """Every item with a reading that says something, by the catalogue, then by position."""
    by_item: dict[str, list[Reading]] = defaultdict(list)
    for reading in car.history.readings:
        if reading.entered.not_checked is None:
            by_item[reading.item].append(reading)
    for item in in_use(car.history.catalogue):
        readings = by_item.get(item.code)
        if not readings or not item.is_forecast or not item.exists_on(car.history.vehicle):
            continue
        by_position = _by_position(item, readings)
        order = {position: place for place, position in enumerate((*item.positions, *AXLES, ""))}
        for position in sorted(by_position, key=lambda one: order.get(one, len(order))):
            yield ItemHistory(car, item, position, tuple(by_position[position]), _work_on(car, item, position))


def _by_position(item: Item, readings: list[Reading]) -> dict[str, list[Reading]]:
    """Readings by the position they are told at; an axle's go to its sides only where those were read too."""
    told = {reading.position for reading in readings}
    found: dict[str, list[Reading]] = defaultdict(list)
    for reading in readings:
        sides = [side for side in item.places(reading.position) if side != reading.position]
        for position in sides if told & set(sides) else [reading.position]:
            found[position].append(reading)
    return found


# Work on one item that concerns another: new tires are neither old nor due for a rotation, and a rotation moves treads.
# An oil service fills the engine up as well.
_CONCERNS = {
    "engine_oil": ("oil_service",),
    "tire_age": ("tire_tread",),
    "tire_rotation": ("tire_tread",),
    "tire_tread": ("tire_rotation",),
}


def _work_on(car: Car, item: Item, position: str) -> tuple[Work, ...]:
    codes = (item.code, *_CONCERNS.get(item.code, ()))
    return tuple(
        one
        for one in car.history.work
        if one.item in codes and (touches(one.position, position) or axle_of(one.position) == axle_of(position))
    )
