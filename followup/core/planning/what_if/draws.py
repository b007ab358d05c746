"""What chance brings in each world: due days out of the windows, answers, delays, visits of the customers' own accord.

The same draws for all rules that are compared, so that they differ by the rules alone. Arrays are (worlds, cars, ...);
items are padded to the most that a car has, days are counted from today, infinite where nothing comes.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from scipy.special import ndtr

from followup.core.forecast.window import CURVE_CHANCES, DueCurve
from followup.core.planning.what_if.cars import CarAhead
from followup.core.planning.what_if.odds import Odds

Array = NDArray[np.float32]
WEEKS = 26
DAYS = 7 * WEEKS
# Texts to one car in half a year, at most; and visits of its own accord that are drawn.
MOST_TEXTS, MOST_OWN = 8, 4
_CHANCES = np.array((0.0, *CURVE_CHANCES, 1.0))
_NO_DATE = 36_500.0


@dataclass(frozen=True)
class Draws:
    """`due`, `legal` (worlds, cars, items); `answer` uniform and `delay` in days (worlds, cars, texts); `own` the days
    of visits of their own accord, ascending (worlds, cars, visits)."""

    due: Array
    legal: Array
    answer: Array
    delay: NDArray[np.int16]
    own: Array

    @property
    def worlds(self) -> int:
        """How many."""
        return len(self.due)


@dataclass(frozen=True)
class Curves:
    """The due curves of all items on one grid: rows are items, `car` and `place` say whose and which; `days` and
    `legal` (items, grid) count from the day on which the curves were made, `since` days ago."""

    cars: int
    most: int
    car: NDArray[np.intp]
    place: NDArray[np.intp]
    days: NDArray[np.float64]
    legal: NDArray[np.float64]
    since: NDArray[np.float64]
    shared: NDArray[np.float64]


def curves_of(cars: Sequence[CarAhead]) -> Curves:
    """All curves of these cars."""
    rows = [(at, place, item) for at, car in enumerate(cars) for place, item in enumerate(car.items)]
    return Curves(
        len(cars), max((len(one.items) for one in cars), default=0),
        np.array([at for at, _, _ in rows], dtype=np.intp), np.array([place for _, place, _ in rows], dtype=np.intp),
        _on_grid([item.curve for _, _, item in rows]), _on_grid([item.legal for _, _, item in rows]),
        np.array([item.since_days for _, _, item in rows], dtype=float),
        np.array([item.shared for _, _, item in rows], dtype=float),
    )  # fmt: skip


def _on_grid(curves: Sequence[DueCurve | None]) -> NDArray[np.float64]:
    """Rows of days on the grid of chances; of what has no curve none ever comes."""
    grid = np.full((len(curves), len(_CHANCES)), _NO_DATE)
    known = [one for one in curves if one is not None]
    already = np.array([one.already for one in known])
    days = np.array([(0.0, *one.days, np.inf) for one in known]).reshape(len(known), len(_CHANCES))
    days[already[:, None] >= _CHANCES] = 0.0
    rows = np.flatnonzero([one is not None for one in curves])
    grid[rows] = np.maximum.accumulate(np.where(np.isinf(days), _NO_DATE, days), axis=1)
    return grid


def draw(curves: Curves, odds: Odds, worlds: int, random: np.random.Generator) -> Draws:
    """Draw that many worlds for these cars."""
    shape, items = (worlds, curves.cars), len(curves.car)
    common = random.standard_normal(shape)[:, curves.car]
    chance = ndtr(
        np.sqrt(curves.shared) * common + np.sqrt(1 - curves.shared) * random.standard_normal((worlds, items))
    )
    right = np.clip(np.searchsorted(_CHANCES, chance), 1, len(_CHANCES) - 1)
    share = (chance - _CHANCES[right - 1]) / (_CHANCES[right] - _CHANCES[right - 1])
    due, legal = (np.full((*shape, curves.most), np.inf, dtype=np.float32) for _ in range(2))
    for found, grid in ((due, curves.days), (legal, curves.legal)):
        found[:, curves.car, curves.place] = _between(grid, right, share, curves.since)
    answer = random.random((*shape, MOST_TEXTS), dtype=np.float32)
    landed, weeks = random.random(answer.shape, dtype=np.float32), np.zeros(answer.shape, dtype=np.int16)
    # A handful of bounds: asked one by one, that is several times as fast as searching each number's place.
    for bound in np.cumsum(odds.landing)[:-1]:
        weeks += landed >= bound
    delay = 7 * weeks + random.integers(1, 8, answer.shape).astype(np.int16)
    gaps = random.exponential(365.25 / max(odds.own_visits_a_year, 1e-9), (*shape, MOST_OWN))
    return Draws(due, legal, answer, delay, np.cumsum(gaps, axis=2).astype(np.float32))


def _between(
    grid: NDArray[np.float64], right: NDArray[np.intp], share: NDArray[np.float64], since: NDArray[np.float64]
) -> NDArray[np.float64]:
    """Along straight lines between the points of the grid; what ends without a date never comes."""
    at = right + np.arange(len(grid)) * grid.shape[1]
    before, after = grid.take(at - 1), grid.take(at)
    days = before + share * (after - before)
    return np.where(days >= _NO_DATE / 2, np.inf, days - since)
