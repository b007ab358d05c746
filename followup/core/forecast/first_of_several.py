"""When the first of several items is due, for many cars at once: the arithmetic of `first_due.py` on arrays.

Heavy (numpy, scipy). Rows are items; `group` says which car each belongs to.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from scipy.special import log_ndtr, ndtri, roots_hermitenorm

from followup.core.forecast.first_due import shared_of
from followup.core.forecast.lives import DueTimes
from followup.core.forecast.season import Array
from followup.core.forecast.window import CURVE_CHANCES, DueWindow

USUAL_NODES = 15
_LONGEST_DAYS = 20_000.0
_HALVINGS = 24


@dataclass(frozen=True)
class FirstOfSeveral:
    """Due times of the first item of each group (0, 1, 2 ...): a `DueTimes` whose rows are the groups.

    `shared` is the share of each item's chance that it has in common with the others of its group, 0 to under 1. Where
    it comes near to 1, the chance given the common number is steep: it then needs more `nodes`.
    """

    times: DueTimes
    group: np.ndarray
    shared: Array
    nodes: int = USUAL_NODES

    @property
    def groups(self) -> int:
        """How many groups there are."""
        return int(self.group.max()) + 1 if len(self.group) else 0

    def chance_by(self, days: Array) -> Array:
        """P(the first is due by `days`), groups."""
        chance = np.clip(self.times.chance_by(np.asarray(days, dtype=float)[self.group]), 0.0, 1.0)
        probit = ndtri(chance)
        at, weights = roots_hermitenorm(self.nodes)
        none_due = np.zeros(self.groups)
        pull, scale = np.sqrt(self.shared), np.sqrt(1 - self.shared)
        for node, weight in zip(at, weights / weights.sum(), strict=True):
            log_alive = log_ndtr(-(probit - pull * node) / scale)
            none_due += weight * np.exp(np.maximum(self._total(log_alive), -700.0))
        most, total = np.zeros(self.groups), self._total(chance)
        np.maximum.at(most, self.group, chance)
        return np.asarray(np.minimum(np.maximum(1 - none_due, most), np.minimum(total, 1.0)))

    def quantile(self, chance: float) -> Array:
        """Days by which the first of each group is due with that chance; 0 where already, infinite where never.

        Halved between now and where the earliest alone is, to a hundredth of a day.
        """
        alone = self._least(self.times.quantile(chance))
        low, high = np.zeros(self.groups), np.minimum(alone, _LONGEST_DAYS)
        is_never = (self.chance_by(high) < chance) & np.isinf(alone)
        is_already = self.chance_by(np.zeros(self.groups)) >= chance
        for _ in range(_HALVINGS):
            middle = (low + high) / 2
            is_due = self.chance_by(middle) >= chance
            low, high = np.where(is_due, low, middle), np.where(is_due, middle, high)
            if (high - low).max(initial=0.0) < 0.01:
                break
        return np.where(is_already, 0.0, np.where(is_never, np.inf, high))

    def _total(self, of: Array) -> Array:
        return np.bincount(self.group, of, minlength=self.groups).astype(float)

    def _least(self, of: Array) -> Array:
        least = np.full(self.groups, np.inf)
        np.minimum.at(least, self.group, of)
        return least


@dataclass(frozen=True)
class CurveTimes:
    """Curves of due windows as arrays: `already` (rows,), `days` (rows, `CURVE_CHANCES`), infinite where never."""

    already: Array
    days: Array

    def chance_by(self, days: Array) -> Array:
        """The chance of being due by `days`, rows; in between along straight lines, as `DueCurve.chance`."""
        days = np.asarray(days, dtype=float)
        knots = np.array(CURVE_CHANCES)
        right = np.sum(self.days <= days[:, None], axis=1)
        row, last = np.arange(len(days)), len(knots) - 1
        left = np.clip(right - 1, 0, last)
        day_before = np.where(right > 0, self.days[row, left], 0.0)
        before = np.where(right > 0, np.maximum(knots[left], self.already), self.already)
        at = np.clip(right, 0, last)
        day_after, after = self.days[row, at], np.maximum(knots[at], before)
        is_between = np.isfinite(day_after) & (day_after > day_before)
        width = np.where(is_between, day_after - day_before, 1.0)
        share = np.where(is_between, (days - day_before) / width, 0.0)
        found = np.where(right > last, 1.0, before + share * (after - before))
        return np.where(days < 0, 0.0, found)

    def quantile(self, chance: float) -> Array:
        """Days until that chance, rows; infinite where it is never reached."""
        knots = np.array(CURVE_CHANCES)
        right = int(np.searchsorted(knots, chance))
        if right == len(knots):
            return self.days[:, -1]
        if right == 0 or knots[right] == chance:
            found = self.days[:, right]
        else:
            share = (chance - knots[right - 1]) / (knots[right] - knots[right - 1])
            left = self.days[:, right - 1]
            with np.errstate(invalid="ignore"):
                between = left + share * (self.days[:, right] - left)
            found = np.where(np.isinf(self.days[:, right]), np.inf, between)
        return np.where(chance <= self.already, 0.0, found)


def first_of_windows(windows: Sequence[DueWindow]) -> tuple[FirstOfSeveral, tuple[str, ...]]:
    """The first item of each car of these windows, days counted from their `as_of`; and the cars, in their order."""
    cars = {code: number for number, code in enumerate(dict.fromkeys(one.vehicle for one in windows))}
    already = np.array([1.0 if one.is_past else one.curve.already for one in windows])
    days = np.array([one.curve.days for one in windows]).reshape(len(windows), len(CURVE_CHANCES))
    group = np.array([cars[one.vehicle] for one in windows], dtype=int)
    return FirstOfSeveral(CurveTimes(already, days), group, np.array([shared_of(one) for one in windows])), tuple(cars)
