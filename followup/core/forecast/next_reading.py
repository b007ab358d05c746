"""What the next reading should show by a forecast that was kept, and where among that it fell.

A due window says by when a value reaches a limit. Asked for the value that was read in place of the limit, it says by
when that should have been read: the chance it gives for the day of the reading (`place`, the probability integral
transform) lies below 10 % one time in ten if the forecast says what it knows, below 50 % one time in two, and so on
(Dawid 1984; Gneiting, Balabdaoui & Raftery 2007). So whether a window held can be counted without waiting for the
limit: nothing is censored but what was changed unmeasured.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from scipy.special import ndtr

from followup.core.forecast.score import crps_of_normals
from followup.core.forecast.season import Array, driving_clock
from followup.core.forecast.value_ahead import ValueAhead

# The log rate is integrated over an even grid, which for a normal is as good as exact.
_GRID: Array = np.linspace(-5.0, 5.0, 41)
_WEIGHTS: Array = np.exp(-(_GRID**2) / 2) / np.exp(-(_GRID**2) / 2).sum()
_LEAST_VARIANCE = 1e-4
_LEAST_MILES = 1e-6


@dataclass(frozen=True)
class ExpectedReading:
    """The distribution of the next reading of rows of items: a mixture of normals (rows, parts), in the item's unit."""

    means: Array
    spreads: Array

    def place(self, value: Array) -> Array:
        """The chance that was given to a reading of `value` (rows,) or less."""
        return np.asarray(ndtr((np.asarray(value)[:, None] - self.means) / self.spreads) @ _WEIGHTS)

    def density(self, value: Array) -> Array:
        """The density at `value` (rows,), a unit."""
        score = (np.asarray(value)[:, None] - self.means) / self.spreads
        return np.asarray((np.exp(-(score**2) / 2) / self.spreads) @ _WEIGHTS / np.sqrt(2 * np.pi))

    def crps(self, value: Array) -> Array:
        """The continuous ranked probability score of `value` (rows,), exact."""
        return crps_of_normals(_WEIGHTS, self.means, self.spreads, value)

    @property
    def mean(self) -> Array:
        """What was to be expected, rows."""
        return np.asarray(self.means @ _WEIGHTS)


def expected_on(ahead: Sequence[ValueAhead], days: Sequence[float], noise_variance: Array) -> ExpectedReading:
    """The reading of each row on a day (`date.toordinal`): the value, its wear and the distance are uncertain.

    `noise_variance` (rows,) is that of reading it.
    """
    clock = driving_clock()
    begins = clock.at(np.array([float(one.on.toordinal()) for one in ahead]))
    gone = np.maximum(clock.at(np.asarray(days, dtype=float)) - begins, 1e-3)
    usage = [_usage(one, days_ahead) for one, days_ahead in zip(ahead, gone.tolist(), strict=True)]
    log_miles, variance = (np.array(column) for column in zip(*usage, strict=True))
    return _expected(ahead, log_miles + np.log(gone / 1000), variance, noise_variance)


def expected_after(ahead: Sequence[ValueAhead], miles: Sequence[float], noise_variance: Array) -> ExpectedReading:
    """The same after so many miles as the odometer shows: the distance is known, the wear alone is judged."""
    driven = np.maximum(np.asarray(miles, dtype=float) / 1000, _LEAST_MILES)
    return _expected(ahead, np.log(driven), np.zeros(len(ahead)), noise_variance)


def _usage(one: ValueAhead, days: float) -> tuple[float, float]:
    """Log of miles per effective day and its variance over so many days ahead, read between those kept, in log days."""
    knots = [entry[0] for entry in one.miles]
    at = np.log(np.clip(days, knots[0], knots[-1]))
    read = [float(np.interp(at, np.log(knots), [entry[column] for entry in one.miles])) for column in (1, 2)]
    return read[0], read[1]


def _expected(
    ahead: Sequence[ValueAhead], log_thousands: Array, variance: Array, noise_variance: Array
) -> ExpectedReading:
    value, value_variance, log_rate, rate_variance, covariance = (
        np.array([getattr(one, name) for one in ahead])
        for name in ("value", "value_variance", "log_rate", "log_rate_variance", "covariance")
    )
    both = np.maximum(rate_variance + variance, 1e-8)
    step, pull = np.sqrt(both), covariance / np.sqrt(both)
    worn = np.exp((log_rate + log_thousands)[:, None] + step[:, None] * _GRID)
    own = np.maximum(value_variance - pull**2, _LEAST_VARIANCE) + noise_variance
    return ExpectedReading(
        value[:, None] + pull[:, None] * _GRID - worn, np.broadcast_to(np.sqrt(own)[:, None], worn.shape)
    )
