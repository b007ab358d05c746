"""A batch: items of one kind of model, with their due times as arrays, turned into due windows all at once."""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from datetime import date, timedelta
from functools import cached_property

import numpy as np

from followup.core.forecast.cars import ItemHistory
from followup.core.forecast.evidence import Evidence
from followup.core.forecast.lives import DueTimes
from followup.core.forecast.season import Array, Clock
from followup.core.forecast.value_ahead import ValueAhead
from followup.core.forecast.window import CURVE_CHANCES, Because, DueCurve, DueWindow
from followup.core.item import Limit

CHANCE_DAYS = (30, 90, 180, 365)
EARLY, LIKELY, LATE = 0.10, 0.50, 0.90


@dataclass(frozen=True)
class Batch:
    """Rows of items: `times` count on `clock` from the calendar day `origin`; the other columns go into the windows.

    `is_past` marks what was measured at its limit or found due: such a row is due on `as_of`, whatever its `times`.
    `ahead` tells what a row of worn items rests on; it is asked only where a window is kept for scoring.
    `evidence` tells of worn items what pages show of a window, given the rows' windows; of others, `timed_evidence`
    does. `near` makes the times at which items come so near to their limit that a visit does the work.
    """

    of: Sequence[ItemHistory]
    times: DueTimes
    origin: Array
    clock: Clock
    limits: Sequence[Limit | None]
    now: Sequence[float | str | None]
    because: Sequence[Because]
    is_past: np.ndarray
    ahead: Callable[[int], ValueAhead] | None = None
    evidence: Callable[[Sequence[DueWindow]], list[Evidence]] | None = None
    near: Callable[[], DueTimes] | None = None

    def windows(self, horizon_days: int, quantiles: Sequence[float]) -> list[DueWindow]:
        """The due windows of the rows, points and chances counted from each car's `as_of`, nothing before it."""
        asked = sorted({EARLY, LIKELY, LATE, *CURVE_CHANCES, *quantiles})
        rising = np.maximum.accumulate(np.stack([self._days_until(chance) for chance in asked]), axis=0)
        days = dict(zip(asked, rising, strict=True))
        curves = np.stack([days[chance] for chance in CURVE_CHANCES], axis=1)
        already = self._chance_within(0.0)
        within = np.stack([already, *(self._chance_within(float(days)) for days in CHANCE_DAYS)], axis=1)
        chances = np.maximum.accumulate(within, axis=1)[:, 1:]
        beyond = 1 - np.maximum(self._chance_within(float(horizon_days)), already)
        points = np.stack([days[point] for point in (EARLY, LIKELY, LATE)], axis=1)
        others = np.stack([days[point] for point in quantiles], axis=1) if quantiles else np.empty((len(self.of), 0))
        return [
            self._window(row, already, curves, chances, beyond, points, others, horizon_days, quantiles)
            for row in range(len(self.of))
        ]

    def near_curves(self) -> list[DueCurve | None]:
        """The curve of coming near its limit of each row; None where the item's work is never done early."""
        if self.near is None or not any(one.item.near for one in self.of):
            return [None] * len(self.of)
        nearer = replace(self, times=self.near())
        days = np.stack([nearer._days_until(chance) for chance in CURVE_CHANCES], axis=1)
        rising, already = np.maximum.accumulate(days, axis=1), nearer._chance_within(0.0)
        return [
            DueCurve(float(already[row]), tuple(rising[row].tolist())) if one.item.near else None
            for row, one in enumerate(self.of)
        ]

    @cached_property
    def _as_of(self) -> Array:
        return np.array([float(one.car.as_of.toordinal()) for one in self.of])

    def _days_until(self, chance: float) -> Array:
        """Calendar days after `as_of`, not before it; infinite where never."""
        day = self.clock.day(self.clock.at(self.origin) + self.times.quantile(chance))
        return np.where(self.is_past, 0.0, np.maximum(day - self._as_of, 0.0))

    def _chance_within(self, days: float) -> Array:
        passed = np.maximum(self.clock.at(self._as_of + days) - self.clock.at(self.origin), 0.0)
        return np.where(self.is_past, 1.0, np.clip(self.times.chance_by(passed), 0.0, 1.0))

    def _window(
        self,
        row: int,
        already: Array,
        curves: Array,
        chances: Array,
        beyond: Array,
        points: Array,
        others: Array,
        horizon_days: int,
        quantiles: Sequence[float],
    ) -> DueWindow:
        one = self.of[row]
        as_of = one.car.as_of
        early, likely, late = (_date_after(as_of, days, horizon_days) for days in points[row].tolist())
        within = [None if days > horizon_days else days for days in others[row].tolist()]
        return DueWindow(
            one.car.history.vehicle.code,
            one.item.code,
            one.position,
            as_of,
            self.limits[row],
            self.now[row],
            early,
            likely,
            late,
            DueCurve(float(already[row]), tuple(curves[row].tolist())),
            tuple(zip(CHANCE_DAYS, chances[row].tolist(), strict=True)),
            float(beyond[row]),
            self.because[row],
            bool(self.is_past[row]),
            tuple(zip(quantiles, within, strict=True)),
            stored_set=one.stored_set,
        )


def _date_after(as_of: date, days: float, horizon_days: int) -> date | None:
    return None if math.isinf(days) or days > horizon_days else as_of + timedelta(days=round(days))
