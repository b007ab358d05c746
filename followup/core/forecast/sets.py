"""Sets of parts: what is on an axle together from one replacement to the next, and the readings that belong to it.

A new set begins where work says so, or where the readings themselves speak for it (a tread that grew). Both sides of
an axle are replaced together. `where` is in thousand miles (in years for what goes by time), values are in the item's
unit.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from itertools import pairwise
from math import exp, log, pi, sqrt

from followup.core.forecast.window import SinceHow
from followup.core.item import WearPrior

# Every density keeps this much for gross errors, spread over 12 units.
_GOOD, _GROSS = 0.98, 0.02 / 12
_NEVER = -1e9
# A told install that misses the next reading by more standard deviations is not believed.
_BELIEVED_WITHIN = 2.6
# A set is called seen where the readings speak at least so strongly for it (log of 0.8).
SEEN_AT = log(0.8)


@dataclass(frozen=True)
class AxleReading:
    """What was read on one axle on one day: value and variance by side."""

    day: float
    where: float
    sides: tuple[tuple[str, float, float], ...]

    def value(self, side: str) -> float | None:
        """The value of that side, or None."""
        return next((value for name, value, _ in self.sides if name == side), None)

    @property
    def mean(self) -> float:
        """Mean over the sides that were read."""
        return sum(value for _, value, _ in self.sides) / len(self.sides)


@dataclass(frozen=True)
class Change:
    """Work that began a new set: `replaced`, or `rotated` with the side each one came from."""

    day: float
    where: float
    is_rotation: bool
    came_from: tuple[tuple[str, str], ...] = ()


@dataclass(frozen=True)
class Observation:
    """One value that a set is known by; `is_reading` False for what is only inferred (new when it was put on)."""

    where: float
    value: float
    variance: float
    side: str
    is_reading: bool = True


@dataclass(frozen=True)
class PartSet:
    """One set: its observations in time, and since when it is on; `is_moved` where it came from the other axle."""

    observations: tuple[Observation, ...]
    reaches_first_reading: bool
    since_how: SinceHow
    since_day: float | None = None
    is_moved: bool = False

    @property
    def readings(self) -> int:
        """How many days it was read on."""
        return len({one.where for one in self.observations if one.is_reading})


@dataclass(frozen=True)
class ResetChances:
    """How often parts are replaced, or rotated between axles, per thousand miles; at most `most_...`."""

    replaced: float = 0.010
    most_replaced: float = 0.25
    rotated: float = 0.0
    most_rotated: float = 0.3

    def within(self, driven: float) -> tuple[float, float]:
        """The chances of a replacement and of a rotation within so many thousand miles."""
        return min(self.most_replaced, self.replaced * driven), min(self.most_rotated, self.rotated * driven)


TIRE_RESETS = ResetChances(replaced=0.012, rotated=0.03)
PAD_RESETS = ResetChances()
# By the year in place of thousand miles: a fluid is changed now and then.
TIME_RESETS = ResetChances(replaced=0.25)
# The same side of the other axle.
ACROSS_AXLES = {
    "front_left": "rear_left",
    "front_right": "rear_right",
    "rear_left": "front_left",
    "rear_right": "front_right",
}


def split_into_sets(
    readings: list[AxleReading],
    other_axle: list[AxleReading],
    changes: list[Change],
    prior: WearPrior,
    other_prior: WearPrior,
    resets: ResetChances,
) -> list[PartSet]:
    """The sets of one axle, oldest first; the last one is on the car. `other_axle` is where a rotation comes from."""
    other = {one.day: one for one in other_axle}
    sets: list[PartSet] = []
    begun = _begin(None, readings[0], _changes_in(changes, None, readings[0].day), prior, other, other_prior)
    current = [readings[0]]
    for before, reading in pairwise(readings):
        told = _changes_in(changes, before.day, reading.day)
        seen = "" if told else _change_seen(before, reading, other, prior, other_prior, resets)
        if told or seen:
            sets.append(_finished(begun, current))
            if seen == "rotated":
                told = [_as_rotated(before, reading)]
            begun = _begin(before, reading, told, prior, other, other_prior)
            if seen:
                begun = replace(begun, since_how="seen", since_day=reading.day)
            current = []
        current.append(reading)
    sets.append(_finished(begun, current))
    after = [one for one in changes if one.day >= readings[-1].day]
    if after:
        sets.append(_begin(readings[-1], None, after, prior, other, other_prior))
    return [one for one in sets if one.observations]


def _as_rotated(before: AxleReading, reading: AxleReading) -> Change:
    """A rotation that nobody told: somewhere between two readings, front to rear on the same side."""
    came_from = tuple((side, ACROSS_AXLES[side]) for side, _, _ in reading.sides)
    return Change(before.day, (before.where + reading.where) / 2, True, came_from)


def _changes_in(changes: list[Change], begin: float | None, end: float) -> list[Change]:
    """Work from the day of the last reading (it was read first, then done) up to the next one."""
    return [one for one in changes if (begin is None or one.day >= begin) and one.day < end]


def _finished(begun: PartSet, readings: list[AxleReading]) -> PartSet:
    found = [
        Observation(reading.where, value, variance, side)
        for reading in readings
        for side, value, variance in reading.sides
    ]
    return replace(begun, observations=(*begun.observations, *found))


def _begin(
    before: AxleReading | None,
    reading: AxleReading | None,
    told: list[Change],
    prior: WearPrior,
    other: dict[float, AxleReading],
    other_prior: WearPrior,
) -> PartSet:
    """A set without its readings yet: what was told about its beginning, unless the first reading contradicts it."""
    if not told:
        return PartSet((), before is None, "unknown")
    change = told[-1]
    if not change.is_rotation:
        inferred = _as_new(change, reading, prior)
    else:
        inferred = _as_moved(change, before, reading, other, prior, other_prior)
    return PartSet(inferred, False, "told", change.day, change.is_rotation)


def _as_new(change: Change, reading: AxleReading | None, prior: WearPrior) -> tuple[Observation, ...]:
    variance = prior.new_spread**2
    if reading is not None:
        worn = prior.rate_per_1000_miles * max(reading.where - change.where, 0.0)
        miss = reading.mean - prior.new_value + 1.05 * worn
        if abs(miss) > _BELIEVED_WITHIN * sqrt(variance + reading.sides[0][2] + (0.45 * worn) ** 2):
            return ()
    return (Observation(change.where, prior.new_value, variance, "", is_reading=False),)


def _as_moved(
    change: Change,
    before: AxleReading | None,
    reading: AxleReading | None,
    other: dict[float, AxleReading],
    prior: WearPrior,
    other_prior: WearPrior,
) -> tuple[Observation, ...]:
    """What a side is known by after a rotation: the last reading of the place it came from."""
    source = other.get(before.day) if before is not None else None
    if source is None or before is None:
        return ()
    worn_before = other_prior.rate_per_1000_miles * max(change.where - source.where, 0.0)
    found = []
    for side, came_from in change.came_from:
        value = source.value(came_from)
        if value is None:
            continue
        moved = value - 1.05 * worn_before
        variance = source.sides[0][2] + (0.42 * worn_before) ** 2
        read = reading.value(side) if reading is not None else None
        if reading is not None and read is not None:
            worn = prior.rate_per_1000_miles * max(reading.where - change.where, 0.0)
            spread = sqrt(variance + reading.sides[0][2] + (0.42 * worn) ** 2)
            if abs(read - moved + 1.05 * worn) > _BELIEVED_WITHIN * spread:
                continue
        found.append(Observation(change.where, moved, variance, side, is_reading=False))
    return tuple(found)


def _change_seen(
    before: AxleReading,
    reading: AxleReading,
    other: dict[float, AxleReading],
    prior: WearPrior,
    other_prior: WearPrior,
    resets: ResetChances,
) -> str:
    """What the readings themselves speak for against worn on: "replaced", "rotated", or "" for neither."""
    driven = max(reading.where - before.where, 0.01)
    replaced_prior, rotated_prior = resets.within(driven)
    pairs = _pairs(before, reading, prior)
    same = log(max(1 - replaced_prior - rotated_prior, 0.05)) + _log_worn_on(pairs, prior, driven)
    fresh = log(replaced_prior) + sum(log_new(value, variance, prior, driven) for value, _, variance in pairs)
    moved = _NEVER
    other_before, other_reading = other.get(before.day), other.get(reading.day)
    if rotated_prior > 0 and other_before is not None:
        moved = log(rotated_prior) + _log_moved(reading, other_before, other_prior, driven)
        if other_reading is not None:
            # Whatever left the other axle came to this one: a rotation has to explain both.
            of_other = _pairs(other_before, other_reading, other_prior)
            moved += _log_moved(other_reading, before, prior, driven) - max(
                _log_worn_on(of_other, other_prior, driven),
                log(replaced_prior)
                + sum(log_new(value, variance, other_prior, driven) for value, _, variance in of_other),
            )
    if max(fresh, moved) <= same + SEEN_AT:
        return ""
    return "rotated" if moved > fresh else "replaced"


# Value, the value before, and the variance of one of the two.
_Pair = tuple[float, float, float]


def _pairs(before: AxleReading, reading: AxleReading, prior: WearPrior) -> list[_Pair]:
    """The sides that were read both times, else one side then and the other now: these differ a little anyway."""
    same = [
        (value, earlier, variance)
        for side, value, variance in reading.sides
        if (earlier := before.value(side)) is not None
    ]
    if same:
        return same
    variance = sum(one[2] for one in reading.sides) / len(reading.sides)
    return [(reading.mean, before.mean, variance + prior.mate_error**2)]


def _log_worn_on(pairs: list[_Pair], prior: WearPrior, driven: float) -> float:
    worn = prior.rate_per_1000_miles * driven
    return sum(
        _log_density(value - earlier + 1.05 * worn, 2 * variance + (0.42 * worn) ** 2)
        for value, earlier, variance in pairs
    )


def log_new(value: float, variance: float, prior: WearPrior, driven: float) -> float:
    """Log density of a reading of a part that was new somewhere within the last so many thousand miles."""
    worn = prior.rate_per_1000_miles * driven
    return _log_density(value - prior.new_value + 0.5 * worn, prior.new_spread**2 + variance + (0.35 * worn) ** 2)


def _log_moved(reading: AxleReading, source: AxleReading, prior: WearPrior, driven: float) -> float:
    """Log density of the readings if they came from the other axle's places, left to left and right to right.

    `prior` is that of the axle they came from.
    """
    worn = prior.rate_per_1000_miles * driven
    total = 0.0
    for side, value, variance in reading.sides:
        earlier = source.value(ACROSS_AXLES.get(side, ""))
        if earlier is None:
            return _NEVER
        total += _log_density(value - earlier + 1.05 * worn, 2 * variance + (0.45 * worn) ** 2)
    return total


def _log_density(miss: float, variance: float) -> float:
    """The same of N(miss; 0, variance)."""
    return robust_log(exp(-(miss**2) / (2 * variance)) / sqrt(2 * pi * variance))


def robust_log(density: float) -> float:
    """Log of 0.98 times the density plus 0.02/12: one gross error does not make a new set."""
    return log(_GOOD * density + _GROSS)
