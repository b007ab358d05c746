"""Due times that do not come from measured wear: lives, intervals, levels, plain dates.

Each answers the same two questions as `passage.Passage`, for rows of items: the chance of being due within so many
days, and the days until a chance. Days count from each row's origin, on the clock that the caller holds.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from typing import Protocol

import numpy as np
from scipy.special import log_ndtr, ndtr, ndtri

from followup.core.forecast.season import Array

_NODES, _raw_weights = np.polynomial.hermite_e.hermegauss(9)
_WEIGHTS = _raw_weights / _raw_weights.sum()
_GRID = np.concatenate([[0.0], np.exp(np.linspace(np.log(0.5), np.log(20_000.0), 140))])
# A life with less spread than this is a rule (a tire's years): it ends at its median, whoever looked in between.
_RULE_SPREAD = 0.05


class DueTimes(Protocol):
    """Distributions of due times, one a row."""

    def chance_by(self, days: Array) -> Array:
        """P(due by `days`), rows."""
        ...

    def quantile(self, chance: float) -> Array:
        """Days by which each row is due with that chance; 0 where already, infinite where never."""
        ...


def chance_given_age(age: Array, days: Array, log_median: Array, log_spread: Array) -> Array:
    """P(due within `days`) of what is still good at `age`, life log-normal. The unit of time is free.

    Published nowhere; the two vectors of the tests were worked out apart from it.
    """

    def log_alive(at: Array) -> Array:
        score = (np.log(np.maximum(at, 1e-9)) - log_median) / log_spread
        return np.asarray(log_ndtr(-score))

    return np.asarray(-np.expm1(log_alive(age + days) - log_alive(age)))


def chance_of_unknown_age(days: Array, log_median: Array, log_spread: Array) -> Array:
    """P(due within `days`) of a part found in use at an unknown age, life log-normal.

    The time left of what is met at random in a long row of replacements has the density S(t) / mean life (renewal
    theory, Cox 1962); for a log-normal life its integral is t S(t) / mean + Phi(z - s).
    """
    score = (np.log(np.maximum(days, 1e-9)) - log_median) / log_spread
    mean = np.exp(log_median + log_spread**2 / 2)
    return np.asarray(days / mean * ndtr(-score) + ndtr(score - log_spread))


@dataclass(frozen=True)
class Lives:
    """Lives in time, and in miles where `log_median_miles` is finite (the first counts).

    Rows: `age_days`, `age_miles` since it was put on, `log_miles`, `miles_variance` of the miles a day ahead;
    `is_known` is False where nobody knows since when it is on, `seen_days` then how long it was seen good.
    One spread is shared by both scales: the part is a good one or a poor one, in days as in miles.
    """

    log_median_days: Array
    log_median_miles: Array
    log_spread: Array
    age_days: Array
    age_miles: Array
    is_known: np.ndarray
    seen_days: Array
    log_miles: Array
    miles_variance: Array

    def chance_by(self, days: Array) -> Array:
        """P(due by `days`), mean over the rates of driving where miles count."""
        if np.isinf(self.log_median_miles).all():
            return self._at_rate(days, np.exp(self.log_miles))
        total = np.zeros(len(self.age_days))
        for node, weight in zip(_NODES, _WEIGHTS, strict=True):
            total += weight * self._at_rate(days, np.exp(self.log_miles + np.sqrt(self.miles_variance) * node))
        return total

    def quantile(self, chance: float) -> Array:
        """Read off a grid of days, along straight lines on the probit scale."""
        table = self._probits
        target = float(ndtri(chance))
        right = np.sum(table < target, axis=1)
        last = len(_GRID) - 1
        at = np.clip(right, 1, last)
        row = np.arange(len(at))
        low, high = table[row, at - 1], table[row, at]
        share = np.clip((target - low) / np.maximum(high - low, 1e-9), 0.0, 1.0)
        days = _GRID[at - 1] + share * (_GRID[at] - _GRID[at - 1])
        return np.where(right == 0, 0.0, np.where(right > last, np.inf, days))

    @cached_property
    def _probits(self) -> Array:
        """Probits of the chance at each day of the grid (rows, days)."""
        chances = np.stack([self.chance_by(np.full(len(self.age_days), day)) for day in _GRID], axis=1)
        return np.asarray(ndtri(np.clip(chances, 1e-12, 1 - 1e-12)))

    def _at_rate(self, days: Array, rate: Array) -> Array:
        return np.where(self.is_known, self._of_known(days, rate), self._of_unknown(days, rate))

    def _used(self, days: Array, miles: Array) -> Array:
        """Log of the part of a life that is used up, by the scale that is further on."""
        by_time = np.log(np.maximum(days, 1e-9)) - self.log_median_days
        by_miles = np.log(np.maximum(miles, 1e-9)) - self.log_median_miles
        return np.maximum(by_time, by_miles)

    def _of_known(self, days: Array, rate: Array) -> Array:
        now = self._used(self.age_days, self.age_miles)
        then = self._used(self.age_days + days, self.age_miles + rate * days)
        plain = ndtr(then / self.log_spread)
        left = -np.expm1(log_ndtr(-then / self.log_spread) - log_ndtr(-now / self.log_spread))
        return np.where(self.log_spread <= _RULE_SPREAD, plain, left)

    def _of_unknown(self, days: Array, rate: Array) -> Array:
        log_median = np.minimum(self.log_median_days, self.log_median_miles - np.log(rate))
        seen = chance_of_unknown_age(self.seen_days, log_median, self.log_spread)
        then = chance_of_unknown_age(self.seen_days + days, log_median, self.log_spread)
        return np.asarray((then - seen) / np.maximum(1 - seen, 1e-9))


@dataclass(frozen=True)
class Intervals:
    """Due at `days_left` or `miles_left` (infinite: no such limit), whichever comes first; rows.

    Without spread but for the rate of driving: F(t) = 1 - (1 - F of the distance) 1[t < days left]. `log_miles`,
    `miles_variance` are of the miles a day ahead. Where nobody knows when it was last done (`is_known` False) the
    whole interval is as likely to end on one day as on another, up to `days_left`.
    """

    days_left: Array
    miles_left: Array
    log_miles: Array
    miles_variance: Array
    is_known: np.ndarray

    def chance_by(self, days: Array) -> Array:
        """P(due by `days`)."""
        score = np.log(np.maximum(days, 1e-9)) + self.log_miles - np.log(np.maximum(self.miles_left, 1e-9))
        by_miles = np.where(self.miles_left <= 0, 1.0, ndtr(score / np.sqrt(self.miles_variance)))
        # A millionth of a day is rounding between clocks, not time.
        known = 1 - (1 - by_miles) * (days < self.days_left - 1e-6)
        return np.where(self.is_known, known, np.clip(days / self._whole(), 0.0, 1.0))

    def quantile(self, chance: float) -> Array:
        """Days by which it is due with that chance."""
        median = np.log(np.maximum(self.miles_left, 1e-9)) - self.log_miles
        by_miles = np.where(self.miles_left <= 0, 0.0, np.exp(median + np.sqrt(self.miles_variance) * ndtri(chance)))
        known = np.maximum(np.minimum(by_miles, self.days_left), 0.0)
        return np.where(self.is_known, known, chance * self._whole())

    def _whole(self) -> Array:
        return np.maximum(np.minimum(self.days_left, self.miles_left / np.exp(self.log_miles)), 1.0)


@dataclass(frozen=True)
class Amounts:
    """An amount that runs out: log-normal days, exp(log_days + log_spread z); `is_due` where it has run out; rows."""

    log_days: Array
    log_spread: Array
    is_due: np.ndarray

    def chance_by(self, days: Array) -> Array:
        """P(run out by `days`)."""
        chance = ndtr((np.log(np.maximum(days, 1e-9)) - self.log_days) / self.log_spread)
        return np.where(self.is_due, 1.0, np.where(days > 0, chance, 0.0))

    def quantile(self, chance: float) -> Array:
        """Days by which it has run out with that chance."""
        return np.where(self.is_due, 0.0, np.exp(self.log_days + self.log_spread * ndtri(chance)))


@dataclass(frozen=True)
class Dates:
    """Due in exactly `days` (0: now, infinite: no date); rows."""

    days: Array

    def chance_by(self, days: Array) -> Array:
        """1 from the day on."""
        return np.where(days >= self.days, 1.0, 0.0)

    def quantile(self, chance: float) -> Array:
        """The day, whatever the chance."""
        del chance
        return self.days
