"""What a shop's cars tell about wear, as arrays: every set of parts of one item, with all its observations.

Made once from the published priors; the fits then act on arrays alone. An observation's variance is kept in parts, so
that a reading error that was learned can take the place of the published one.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, fields, replace
from typing import TypeVar

import numpy as np

from followup.core.forecast.cars import Car, ItemHistory, items_of
from followup.core.forecast.priors import EVERY, ShopPriors, WearLesson, traits_of
from followup.core.forecast.season import Array
from followup.core.forecast.sets import Observation, PartSet
from followup.core.forecast.wear_items import WearAxle, axles_of, doubt_of, gauge_step, wear_limit
from followup.core.item import Limit, WearPrior

# That a part was new when it was put on is believed as long as the first reading comes within this share of the way
# from new to where such parts are replaced; later, an untold replacement is too likely.
_INSTALL_BELIEVED_FOR = 0.4

_Entry = tuple[int, float, float, float, float, float, int, bool]
Rows = TypeVar("Rows", "Observations", "Ends")


@dataclass(frozen=True)
class Observations:
    """One row an observation of the set of that row (`of_set`).

    `back` is how far before the car's last day (thousand miles, or years), `side` 0 or 1 (-1: of the axle). Its
    variance is `own` (the published reading error) plus `rounding` (the gauge) plus `doubt`.
    """

    of_set: np.ndarray
    back: Array
    value: Array
    own: Array
    rounding: Array
    doubt: Array
    side: np.ndarray
    is_reading: np.ndarray


@dataclass(frozen=True)
class Ends:
    """How each set ended (sets,): replaced `after` so much more distance than its last reading, which showed `left`.

    NaN where it is still on, was only moved, or goes by time: a fluid is changed by the calendar, not because it is
    used up. `replaced_at`, `replaced_spread` are the values at which such parts are usually replaced.
    """

    left: Array
    after: Array
    replaced_at: Array
    replaced_spread: Array


@dataclass(frozen=True)
class WearTable:
    """All sets of one item, a row each.

    `car` is the row of the car, `log_rate` the published one, `has_trait` (sets, traits) is 1 where the set has the
    trait.
    """

    item: str
    traits: tuple[str, ...]
    between_cars: float
    between_items: float
    car: np.ndarray
    log_rate: Array
    mate_error: Array
    has_trait: Array
    ends: Ends
    observations: Observations

    def of_cars(self, is_chosen: np.ndarray) -> WearTable:
        """The sets of the chosen cars alone; `is_chosen` by the row of the car."""
        keeps = is_chosen[self.car]
        seen = _rows(self.observations, keeps[self.observations.of_set])
        number = np.cumsum(keeps) - 1
        return replace(
            self,
            car=self.car[keeps],
            log_rate=self.log_rate[keeps],
            mate_error=self.mate_error[keeps],
            has_trait=self.has_trait[keeps],
            ends=_rows(self.ends, keeps),
            observations=replace(seen, of_set=number[seen.of_set]),
        )

    def mean_factors(self, lesson: WearLesson | None) -> tuple[tuple[str, float], ...]:
        """How many times the published rate the shop's own axles wear, by axle: geometric means over its sets."""
        taught = dict(lesson.log_rate) if lesson else {}
        added = self.has_trait @ np.array([taught.get(trait, 0.0) for trait in self.traits])
        axles = [trait for trait in self.traits if trait.startswith("axle=") and " " not in trait]
        found = [(axle.removeprefix("axle="), self.has_trait[:, self.traits.index(axle)] > 0) for axle in axles]
        found = found or [("", np.ones(len(self.car), dtype=bool))]
        return tuple((axle, round(float(np.exp(added[rows].mean())), 4)) for axle, rows in found if rows.any())


def _rows(table: Rows, keeps: np.ndarray) -> Rows:
    """The same arrays with the rows that are kept."""
    return replace(table, **{one.name: getattr(table, one.name)[keeps] for one in fields(table)})


def wear_axles(cars: Iterable[Car], usual: ShopPriors) -> dict[str, list[WearAxle]]:
    """The worn axles of every car by item, as a forecast sees them."""
    found: dict[str, list[WearAxle]] = defaultdict(list)
    for car in cars:
        worn: dict[str, list[ItemHistory]] = defaultdict(list)
        limit_of: dict[str, dict[str, Limit]] = defaultdict(dict)
        for one in items_of(car):
            limit = wear_limit(one, "action", {})
            if limit is not None:
                worn[one.item.code].append(one)
                limit_of[one.item.code][one.position] = limit
        for code, group in worn.items():
            found[code] += axles_of(group, limit_of[code], usual)
    return dict(found)


def wear_table(item: str, axles: Sequence[WearAxle]) -> WearTable:
    """The sets of all these axles of one item, which were made from the published priors."""
    traits: dict[str, int] = {EVERY: 0}
    traits_of_set: list[list[int]] = []
    per_set: list[tuple[int, float, float]] = []
    ends: list[tuple[float, float, float, float]] = []
    entries: list[_Entry] = []
    for axle in axles:
        prior, vehicle = axle.prior, axle.car.history.vehicle
        told = [traits.setdefault(one, len(traits)) for one in traits_of(vehicle, axle.sides[0].position)]
        for parts, following in zip(axle.sets, (*axle.sets[1:], None), strict=True):
            entries += _entries(len(per_set), axle, _believed(parts.observations, prior))
            left, after = _end(axle, parts, following)
            ends.append((left, after, prior.usually_replaced_at, prior.replaced_spread))
            per_set.append((axle.car.row, float(np.log(prior.rate_per_1000_miles)), prior.mate_error))
            traits_of_set.append(told)
    has_trait = np.zeros((len(per_set), len(traits)))
    for row, told in enumerate(traits_of_set):
        has_trait[row, told] = 1.0
    car, log_rate, mate_error = (np.array(column) for column in zip(*per_set, strict=True))
    return WearTable(
        item,
        tuple(traits),
        float(np.mean([axle.prior.between_cars for axle in axles])),
        float(np.mean([axle.prior.between_items for axle in axles])),
        car,
        log_rate,
        mate_error,
        has_trait,
        Ends(*(np.array(column) for column in zip(*ends, strict=True))),
        Observations(*(np.array(column) for column in zip(*entries, strict=True))),
    )


def _believed(observations: Sequence[Observation], prior: WearPrior) -> list[Observation]:
    """Without what was new too long before the first reading: who knows what was done in between without a word."""
    first = min((one.where for one in observations if one.is_reading), default=np.inf)
    most = _INSTALL_BELIEVED_FOR * (prior.new_value - prior.usually_replaced_at)
    return [
        one
        for one in observations
        if one.is_reading or one.side or (first - one.where) * prior.rate_per_1000_miles <= most
    ]


def _end(axle: WearAxle, parts: PartSet, following: PartSet | None) -> tuple[float, float]:
    """What the last reading of this set showed, and the distance from there to its replacement; NaN where none."""
    readings = [one for one in parts.observations if one.is_reading]
    if following is None or following.is_moved or axle.is_by_time or not readings or not following.observations:
        return np.nan, np.nan
    last = readings[-1].where
    shown = [one.value for one in readings if one.where == last]
    return sum(shown) / len(shown), max(following.observations[0].where - last, 0.0)


def _entries(row: int, axle: WearAxle, observations: Sequence[Observation]) -> list[_Entry]:
    """The rows of one set's observations."""
    rounding = gauge_step(axle.sides, axle.prior) ** 2 / 12
    side_of = {one.position: min(side, 1) for side, one in enumerate(axle.sides)}
    by_day: dict[float, list[float]] = defaultdict(list)
    for one in observations:
        if one.is_reading:
            by_day[one.where].append(one.value)
    doubts = {where: doubt_of(values) for where, values in by_day.items()}
    found: list[_Entry] = []
    for one in observations:
        back, side = max(axle.end_at - one.where, 0.0), side_of.get(one.side, -1)
        if one.is_reading:
            doubt = doubts[one.where]
            own = max(one.variance - rounding - doubt, 1e-4)
            found.append((row, back, one.value, own, rounding, doubt, side, True))
        else:
            found.append((row, back, one.value, 0.0, 0.0, one.variance, side, False))
    return found
