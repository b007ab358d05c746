"""How far a car is driven a day: from its odometer readings, its age and what is usual.

The log of the mean rate over an interval is mu + driver + wander over time (an Ornstein-Uhlenbeck process) + noise; the
best linear prediction for the days ahead comes from one small solve a car, for all cars at once. Intervals and horizons
are in effective days (`season.py`), rates in miles a day.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from followup.core.forecast.priors import UsagePrior
from followup.core.forecast.season import DAYS_A_YEAR, Array

# Horizons in days at which a prediction is made; `UsageAhead.at` reads in between, in log days.
HORIZONS: Array = np.array([30.0, 90.0, 200.0, 400.0, 800.0, 1500.0])
MOST_INTERVALS = 6
LEAST_INTERVAL_DAYS = 5.0
_REFERENCE_HORIZON = 2


@dataclass(frozen=True)
class OdometerIntervals:
    """Up to six intervals a car, arrays (cars, 6); `is_there` is False on padding.

    `log_rate` is the log of miles per effective day over [`start`, `end`], less the age offset; `is_first` marks the
    interval that begins at first use, whose date is known to about 90 days.
    """

    start: Array
    end: Array
    log_rate: Array
    is_first: np.ndarray
    is_there: np.ndarray


@dataclass(frozen=True)
class UsageAhead:
    """Mean and variance of the log of miles per effective day, arrays (cars, horizons)."""

    log_rate: Array
    variance: Array

    def at(self, car: np.ndarray, horizon_days: Array) -> tuple[Array, Array]:
        """Log rate and variance of `car` (indices) over the next `horizon_days`, read between `HORIZONS`."""
        where = np.log(np.clip(horizon_days, HORIZONS[0], HORIZONS[-1]))
        knots = np.log(HORIZONS)
        left = np.clip(np.searchsorted(knots, where) - 1, 0, len(knots) - 2)
        share = (where - knots[left]) / (knots[left + 1] - knots[left])

        def between(table: Array) -> Array:
            return np.asarray(table[car, left] * (1 - share) + table[car, left + 1] * share)

        return between(self.log_rate), between(self.variance)

    def at_reference(self, car: np.ndarray) -> Array:
        """Log rate over the next 200 days: the first guess from which the horizon of an item is found."""
        return np.asarray(self.log_rate[car, _REFERENCE_HORIZON])


def age_offset(from_years: Array, to_years: Array, prior: UsagePrior) -> Array:
    """Log of the mean over [from, to] years of age of the share of use left: 1 up to five years, then exponential."""
    knee, decline = prior.full_use_years, prior.decline_per_year

    def used(years: Array) -> Array:
        beyond = np.maximum(years - knee, 0.0)
        return np.asarray(np.minimum(years, knee) - np.expm1(-decline * beyond) / decline)

    length = np.maximum(to_years - from_years, 1e-6)
    return np.asarray(np.log(np.maximum(used(to_years) - used(from_years), 1e-9) / length))


def mean_correlation(lengths: Array) -> Array:
    """Variance of the mean of a unit Ornstein-Uhlenbeck process over an interval of so many wander times (g1)."""
    k = np.maximum(lengths, 1e-3)
    return np.asarray(np.where(lengths < 1e-3, 1 - lengths / 3, 2 * (k - 1 + np.exp(-k)) / k**2))


def edge_correlation(lengths: Array) -> Array:
    """Covariance of the mean over an interval of so many wander times with the process at its edge (h1)."""
    k = np.maximum(lengths, 1e-9)
    return np.asarray(-np.expm1(-k) / k)


def predict_usage(intervals: OdometerIntervals, origin: Array, age_years: Array, prior: UsagePrior) -> UsageAhead:
    """Log rate over the days from `origin` (cars,), for each horizon: the mean given the intervals, and its variance.

    `age_years` (cars,) is the age at `origin`; NaN where unknown (no decline is then applied).
    """
    covariance = interval_covariance(intervals, prior)
    surprise = np.where(intervals.is_there, intervals.log_rate - prior.log_miles_per_day, 0.0)
    length = _lengths(intervals)
    gap = np.maximum(origin[:, None] - intervals.end, 0.0)
    towards = prior.within_driver**2 * edge_correlation(length / prior.wander_days) * np.exp(-gap / prior.wander_days)
    ahead = edge_correlation(HORIZONS / prior.wander_days)
    cross = prior.between_drivers**2 + towards[:, :, None] * ahead
    cross = np.where(intervals.is_there[:, :, None], cross, 0.0)
    solved = np.linalg.solve(covariance, np.concatenate([surprise[:, :, None], cross], axis=2))
    explained = np.einsum("cih,cih->ch", cross, solved[:, :, 1:])
    own = (
        prior.between_drivers**2
        + prior.within_driver**2 * mean_correlation(HORIZONS / prior.wander_days)
        + prior.noise_days / HORIZONS
    )
    mean = prior.log_miles_per_day + np.einsum("cih,ci->ch", cross, solved[:, :, 0])
    age = np.nan_to_num(age_years, nan=0.0)[:, None]
    offset = np.where(np.isnan(age_years)[:, None], 0.0, age_offset(age, age + HORIZONS[None, :] / DAYS_A_YEAR, prior))
    return UsageAhead(mean + offset, np.maximum(own - explained, 1e-4))


def _lengths(intervals: OdometerIntervals) -> Array:
    return np.asarray(np.where(intervals.is_there, np.maximum(intervals.end - intervals.start, 1.0), 1.0))


def interval_covariance(intervals: OdometerIntervals, prior: UsagePrior) -> Array:
    """Covariance of the interval means of each car (cars, 6, 6); padding is an identity row."""
    length = _lengths(intervals)
    edge = edge_correlation(length / prior.wander_days)
    start, end, there = intervals.start, intervals.end, intervals.is_there
    gap = np.maximum(start[:, :, None] - end[:, None, :], start[:, None, :] - end[:, :, None])
    decay = np.exp(-np.maximum(gap, 0.0) / prior.wander_days)
    between = prior.between_drivers**2 + prior.within_driver**2 * edge[:, :, None] * edge[:, None, :] * decay
    own = (
        prior.between_drivers**2
        + prior.within_driver**2 * mean_correlation(length / prior.wander_days)
        + prior.noise_days / length
        + np.where(intervals.is_first, (prior.first_use_error_days / length) ** 2, 0.0)
    )
    between = np.where(there[:, :, None] & there[:, None, :], between, 0.0)
    diagonal = np.arange(MOST_INTERVALS)
    between[:, diagonal, diagonal] = np.where(there, own, 1.0) + 1e-4
    return np.asarray(between)
