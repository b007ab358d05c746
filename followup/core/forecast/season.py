"""Clocks that run at another pace than the calendar: people drive more in summer, and spray more in winter.

All rates are held in the days of a clock; a date is mapped back at the very end, which keeps quantiles what they are.
Days are numbered as by `date.toordinal`.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]

DAYS_A_YEAR = 365.25
# Share by which the busiest day lies above the mean, and its day of the year (assumptions).
SUMMER_SHARE = 0.10
BUSIEST_DAY = 195.0
# 1 January 2000. A year of 365.25 days drifts by less than a day in a century.
_NEW_YEAR = 730120.0
# From 1917 to 2135.
_FIRST_DAY, _LAST_DAY = 700_000, 780_000
# November to March, in days of the year counted from 1 January.
_WINTER_ENDS, _WINTER_BEGINS = 90.0, 304.0


@dataclass(frozen=True)
class Clock:
    """A table of calendar days and the same days on the clock, rising; read in between."""

    days: Array
    shown: Array

    def at(self, day: Array) -> Array:
        """What the clock shows on those calendar days."""
        return np.interp(day, self.days, self.shown)

    def day(self, shown: Array) -> Array:
        """The calendar days on which the clock shows that; infinite stays infinite."""
        return np.where(np.isinf(shown), np.inf, np.interp(shown, self.shown, self.days))


@cache
def driving_clock() -> Clock:
    """Effective days of driving: the integral of 1 + 0.10 cos(2 pi (day of the year - 195) / 365.25)."""
    days = np.arange(_FIRST_DAY, _LAST_DAY, dtype=float)
    turn = 2 * np.pi / DAYS_A_YEAR
    return Clock(days, days + SUMMER_SHARE / turn * np.sin(turn * (days - _NEW_YEAR + 1 - BUSIEST_DAY)))


@cache
def calendar_clock() -> Clock:
    """The calendar itself."""
    days = np.array([_FIRST_DAY, _LAST_DAY], dtype=float)
    return Clock(days, days)


@cache
def winter_clock(factor: float) -> Clock:
    """Days of use where `factor` times as much is used from November to March."""
    if factor == 1.0:
        return calendar_clock()
    days = np.arange(_FIRST_DAY, _LAST_DAY, dtype=float)
    of_year = (days - _NEW_YEAR) % DAYS_A_YEAR
    pace = np.where((of_year < _WINTER_ENDS) | (of_year >= _WINTER_BEGINS), factor, 1.0)
    return Clock(days, np.concatenate([[0.0], np.cumsum(pace)[:-1]]))
