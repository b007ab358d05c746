"""Finds what lies too far apart on one car: inner and outer pad, both sides, across a tire, between axles, all four.

A difference counts only where it is beyond the shop's bound and, given how far readings miss, truly so with the chance
that the shop asks for: with a gauge of whole 32nds one mark is no finding.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from itertools import combinations

from followup.core.advisories.bounds import BOUND_BY_CODE, BOUNDS, bound_in, is_beyond
from followup.core.advisories.present import (
    ALIGNMENT,
    PAD,
    ROTATION,
    TOGETHER,
    TREAD,
    Spot,
    chance_beyond,
    is_rotation,
    present,
    variance_of,
)
from followup.core.forecast.history import Reading
from followup.core.item import Interval
from followup.core.items import BY_CODE
from followup.core.rotation import axle, has_two_sizes, possible_patterns
from followup.core.shop import ShopRules
from followup.core.vehicle import AXLES, CORNERS, WALKING_ORDER, Vehicle
from followup.core.visit import Work

# Work after which uneven tires have been seen to.
_ALIGNED = ("adjusted", "serviced", "repaired", "replaced")
# Where no odometer is told: a rotation is not advised again so soon after one.
_ROTATED_LATELY = timedelta(days=182)


@dataclass(frozen=True)
class Advisory:
    """One finding: the rule's `code`, where (a place, an axle, or "" for the car), what was read (`spots`), and how far
    the highest and the lowest number lie apart, beside the bound, all in `unit`, which is the one that was entered.

    `chance` is the chance that the true difference is beyond the bound; `lowest_at` says which part of a tire is
    lower ("inner edge", "outer edge", "both edges", "center", "one side"), "" where it is not about one tire.
    """

    code: str
    position: str
    spots: tuple[Spot, ...]
    highest: float
    lowest: float
    unit: str
    bound: float
    chance: float
    lowest_at: str = ""

    @property
    def difference(self) -> float:
        """How far the highest and the lowest lie apart."""
        return round(self.highest - self.lowest, 6)

    @property
    def on(self) -> date:
        """The day of the last of its readings."""
        return max(spot.on for spot in self.spots)

    @property
    def key(self) -> str:
        """Which advisory of a car it is: its rule and its place."""
        return f"{self.code} {self.position}".strip()

    @property
    def about(self) -> tuple[str, str]:
        """The item of the catalogue, and its position, that the work belongs to: what rests it rests this too."""
        if self.code.startswith("pad_"):
            return PAD, min(self.spots, key=lambda spot: spot.lowest).position
        if self.code == "tire_four":
            return TREAD, min(self.spots, key=lambda spot: spot.value_in(self.unit)).read_at
        return (ROTATION, "") if self.code == "tire_rotation" else (ALIGNMENT, "")


@dataclass(frozen=True)
class _Car:
    vehicle: Vehicle
    rules: ShopRules
    tires: tuple[Spot, ...]
    pads: tuple[Spot, ...]
    work: Sequence[Work]


def advisories_of(
    vehicle: Vehicle, readings: Iterable[Reading], work: Sequence[Work], rules: ShopRules, as_of: date
) -> tuple[Advisory, ...]:
    """Every advisory that the present readings give on the day `as_of`: brakes first, then around the car.

    `readings` and `work` in any order; the store's or a history's. A place that was not measured is never compared.
    """
    known = list(readings)
    tires, pads = (tuple(present(item, known, work, as_of)) for item in (TREAD, PAD))
    car = _Car(vehicle, rules, tires, pads, [one for one in work if one.on <= as_of])
    found = [*_inner_outer(car), *_sides(car, pads, "pad_sides"), *_four(car), *_across(car), *_axles(car)]
    found += _rotation(car)
    order = [one.code for one in BOUNDS]
    return tuple(sorted(found, key=lambda one: (order.index(one.code), WALKING_ORDER.index(one.position))))


def _inner_outer(car: _Car) -> Iterator[Advisory]:
    for spot in car.pads:
        inner, outer = spot.reading.entered.inner, spot.reading.entered.outer
        if inner is not None and outer is not None:
            yield from _within(car, "pad_inner_outer", spot, (inner, outer))


def _across(car: _Car) -> Iterator[Advisory]:
    for spot in car.tires:
        grooves = spot.reading.entered.across
        if len(grooves) > 1 and not _is_aligned(car, spot):
            yield from _within(car, "tire_across", spot, grooves, lowest_at(grooves))


def _within(car: _Car, code: str, spot: Spot, numbers: Sequence[float], where: str = "") -> Iterator[Advisory]:
    """Numbers of one reading against each other."""
    variance = 2 * variance_of(car.vehicle, spot, spot.unit)
    yield from _judged(car, code, spot.position, (spot,), max(numbers), min(numbers), spot.unit, variance, where)


def _judged(
    car: _Car, code: str, position: str, spots: tuple[Spot, ...], highest: float, lowest: float, unit: str,
    variance: float, where: str = "",
) -> Iterator[Advisory]:  # fmt: skip
    bound = bound_in(code, unit, car.rules)
    chance = chance_beyond(highest - lowest, bound, variance)
    if is_beyond(code, highest - lowest, bound, chance, car.rules):
        yield Advisory(code, position, spots, highest, lowest, unit, bound, chance, where)


def lowest_at(grooves: Sequence[float]) -> str:
    """Which part of a tire is lower, by grooves from the outer to the inner edge; with two grooves only "one side"."""
    if len(grooves) < 3:
        return "one side"
    outer, inner = grooves[0], grooves[-1]
    center = sum(grooves[1:-1]) / (len(grooves) - 2)
    is_level = abs(outer - inner) <= (max(grooves) - min(grooves)) / 2
    if is_level:
        return "center" if center < min(outer, inner) else "both edges"
    return "inner edge" if inner < outer else "outer edge"


def _axles(car: _Car) -> Iterator[Advisory]:
    yield from _sides(car, [spot for spot in car.tires if not _is_aligned(car, spot)], "tire_axle")


def _sides(car: _Car, spots: Iterable[Spot], code: str) -> Iterator[Advisory]:
    """Both sides of each axle, where both were measured."""
    at = {spot.position: spot for spot in spots}
    for position, (left, right) in AXLES.items():
        if left in at and right in at:
            yield from _furthest(car, code, position, (at[left], at[right]))


def _furthest(car: _Car, code: str, position: str, spots: Sequence[Spot]) -> Iterator[Advisory]:
    """The two that lie furthest apart among spots that were measured together."""
    unit = _unit_of(spots, code)
    ordered = sorted(spots, key=lambda spot: spot.value_in(unit))
    pairs = [pair for pair in combinations(ordered, 2) if abs(pair[0].on - pair[1].on) <= TOGETHER]
    if not pairs:
        return
    low, high = max(pairs, key=lambda pair: pair[1].value_in(unit) - pair[0].value_in(unit))
    variance = variance_of(car.vehicle, low, unit) + variance_of(car.vehicle, high, unit)
    shown = tuple(spot for spot in spots if abs(spot.on - low.on) <= TOGETHER)
    yield from _judged(car, code, position, shown, high.value_in(unit), low.value_in(unit), unit, variance)


def _unit_of(spots: Iterable[Spot], code: str) -> str:
    """The unit that was entered; where several were, the bound's."""
    units = {spot.unit for spot in spots}
    return units.pop() if len(units) == 1 else BOUND_BY_CODE[code].unit


def _four(car: _Car) -> Iterator[Advisory]:
    """All-wheel drive: the tires belong together, wherever a rotation has brought them since."""
    if car.vehicle.driven == "all" and not has_two_sizes(car.vehicle) and len(car.tires) > 1:
        yield from _furthest(car, "tire_four", "", car.tires)


def _rotation(car: _Car) -> Iterator[Advisory]:
    """Front against rear by the mean of both sides, where tires may go from one axle to the other."""
    at = {spot.position: spot for spot in car.tires}
    if not all(place in at for place in CORNERS):
        return
    spots = tuple(at[place] for place in CORNERS)
    is_together = max(spot.on for spot in spots) - min(spot.on for spot in spots) <= TOGETHER
    can_move = any(one.is_between_axles for one in possible_patterns(car.vehicle))
    if not (is_together and can_move) or _is_rotated_lately(car, spots[0]):
        return
    unit = _unit_of(spots, "tire_rotation")
    front, rear = (sum(at[place].value_in(unit) for place in places) / 2 for places in AXLES.values())
    variance = sum(variance_of(car.vehicle, spot, unit) for spot in spots) / 4
    yield from _judged(car, "tire_rotation", "", spots, max(front, rear), min(front, rear), unit, variance)


def _is_rotated_lately(car: _Car, spot: Spot) -> bool:
    """A rotation since the reading, or shortly before it: then the axles lie apart because of it, and even out."""
    interval = next(one.miles for one in BY_CODE[ROTATION].models if isinstance(one, Interval))
    for work in (one for one in car.work if is_rotation(one) and _is_between_axles(one)):
        if work.on >= spot.on:
            return True
        if work.odometer_miles is not None and spot.reading.odometer_miles is not None and interval:
            if spot.reading.odometer_miles - work.odometer_miles < interval:
                return True
        elif spot.on - work.on < _ROTATED_LATELY:
            return True
    return False


def _is_aligned(car: _Car, spot: Spot) -> bool:
    return any(one.item == ALIGNMENT and one.did in _ALIGNED and one.on >= spot.on for one in car.work)


def _is_between_axles(work: Work) -> bool:
    return not work.moved or any(axle(source) != axle(place) for source, place in work.moved)
