"""Sets of parts as arrays, and what is believed of them: two rounds of the wear model over any number of cars.

The first round is what each axle's own readings say, the second the same with what the car's other axles say as prior.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from followup.core.forecast.pooling import pooled_prior
from followup.core.forecast.season import Array
from followup.core.forecast.wear import WearBelief, WearRows, believe, chances_of, explanations, sum_up
from followup.core.forecast.wear_items import WearAxle

# The straightness variance belongs to readings of half a unit's error; finer gauges bear less of it.
_USUAL_ERROR = 0.5
_BOTH = -1


@dataclass(frozen=True)
class WearSets:
    """Every set of every axle as arrays: one row a set, one entry an observation."""

    axle: np.ndarray
    end: Array
    new_at: Array
    new_value: Array
    new_spread: Array
    replaced_at: Array
    replaced_spread: Array
    mate_error: Array
    reading_error: Array
    usual: Array
    between_cars: Array
    between_items: Array
    group: np.ndarray
    reaches_first: np.ndarray
    is_current: np.ndarray
    row: np.ndarray
    where: Array
    value: Array
    variance: Array
    side: np.ndarray
    is_reading: np.ndarray

    def rows(self, side: int) -> WearRows:
        """Rows for one side (0, 1), its mate's readings counting for less, or for the axle (`_BOTH`)."""
        mate = self.mate_error[self.row] ** 2
        if side == _BOTH:
            extra = np.where(self.side >= 0, mate / 2, 0.0)
        else:
            extra = np.where((self.side >= 0) & (self.side != side), mate, 0.0)
        variance = self.variance + np.where(self.is_reading, extra, 0.0)
        count = len(self.axle)
        back = np.maximum(self.end[self.row] - self.where, 0.0)
        nearest, first = np.full(count, np.inf), np.full(count, -np.inf)
        np.minimum.at(nearest, self.row, back)
        np.maximum.at(first, self.row[self.is_reading], back[self.is_reading])
        is_last = back <= nearest[self.row] + 1e-9
        last = sum_up(self.row[is_last], back[is_last], self.value[is_last], variance[is_last], count)
        original = np.nan_to_num(self.end - self.new_at, nan=0.0)
        return WearRows(
            sum_up(self.row, back, self.value, variance, count),
            last.weight,
            last.value,
            last.distance,
            self.reaches_first & ~np.isnan(self.new_at) & np.isfinite(first),
            original,
            np.maximum(original - np.where(np.isfinite(first), first, 0.0), 0.05),
            self.new_value,
            self.new_spread,
            self.replaced_at,
            self.replaced_spread,
        )


def sets_as_arrays(axles: Sequence[WearAxle]) -> WearSets:
    """The sets of all axles; what only a sum needs of them."""
    groups: dict[tuple[int, str], int] = {}
    per_set, per_observation = [], []
    for number, axle in enumerate(axles):
        group = groups.setdefault((axle.car.row, axle.item.code), len(groups))
        sides = {one.position: min(side, 1) for side, one in enumerate(axle.sides)}
        prior, end = axle.prior, axle.end_at
        for one in axle.sets:
            per_set.append(
                (
                    number, end, np.nan if axle.new_at is None else axle.new_at, prior.new_value, prior.new_spread,
                    prior.usually_replaced_at, prior.replaced_spread, prior.mate_error, prior.reading_error,
                    np.log(prior.rate_per_1000_miles), prior.between_cars, prior.between_items, group,
                    one.reaches_first_reading, one is axle.sets[-1],
                )
            )  # fmt: skip
            row = len(per_set) - 1
            per_observation += [
                (row, it.where, it.value, it.variance, sides.get(it.side, -1), it.is_reading) for it in one.observations
            ]
    columns = [np.array(column) for column in zip(*per_set, strict=True)]
    entries = [np.array(column) for column in zip(*per_observation, strict=True)]
    return WearSets(*columns, *entries)


def believe_sets(sets: WearSets, straightness: float) -> list[WearBelief]:
    """Log rate and value at the end of every set, for its one side and for its other."""
    both = sets.rows(_BOTH)
    population = sets.between_cars**2 + sets.between_items**2
    evidence, log_rate, variance = explanations(both, sets.usual, population)
    chances = chances_of(evidence)
    mean = (chances * log_rate).sum(axis=0)
    spread = np.maximum((chances * (variance + log_rate**2)).sum(axis=0) - mean**2, 1e-5)
    prior, prior_variance = pooled_prior(sets.group, sets.usual, sets.between_cars, sets.between_items, mean, spread)
    chances = chances_of(explanations(both, prior, prior_variance)[0])
    bend = np.minimum(straightness, straightness * (sets.reading_error / _USUAL_ERROR) ** 2)
    return [believe(sets.rows(side), prior, prior_variance, chances, bend) for side in (0, 1)]


def picked(beliefs: list[WearBelief], rows: np.ndarray, sides: np.ndarray) -> WearBelief:
    """The beliefs of those rows, each of its side (0 or 1)."""

    def pick(name: str) -> Array:
        both = np.stack([getattr(belief, name) for belief in beliefs])
        return np.asarray(both[sides, rows])

    return WearBelief(
        pick("log_rate"),
        pick("log_rate_variance"),
        pick("value"),
        pick("value_variance"),
        pick("covariance"),
        np.stack([belief.chances for belief in beliefs])[sides, :, rows].T,
    )
