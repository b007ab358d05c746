"""Clocks that run at another pace than the calendar: people drive more in summer, and spray more in winter.

All rates are held in the days of a clock; a date is mapped back at the very end, which keeps quantiles what they are.
Days are numbered as by `date.toordinal`.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache

import numpy as np
from numpy.typing import NDArray

from followup.core.forecast.year import DAYS_A_YEAR, NEW_YEAR, WINTER_BEGINS, WINTER_ENDS

__all__ = [
    "DAYS_A_YEAR",
    "Array",
    "Clock",
    "SeasonalClock",
    "calendar_clock",
    "driving_clock",
    "winter_clock",
]

Array = NDArray[np.float64]

# Share by which the busiest day lies above the mean, and its day of the year (assumptions).
SUMMER_SHARE = 0.10
BUSIEST_DAY = 195.0
# From 1917 to 2135.
_FIRST_DAY, _LAST_DAY = 700_000, 780_000


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


@dataclass(frozen=True)
class SeasonalClock(Clock):
    """A clock a row, each standing still outside the row's season: tires that are off the car do not wear.

    `begins` is the day of the year on which the season begins, `length` its days (rows,); a year or more: no season.
    `days` and `shown` are the clock that runs in the season; they must repeat from year to year.
    """

    begins: Array
    length: Array

    def at(self, day: Array) -> Array:
        """What each row's clock shows on its calendar day."""
        first = NEW_YEAR + self.begins
        year = np.floor((day - first) / DAYS_A_YEAR)
        passed = np.minimum(super().at(day) - super().at(first + year * DAYS_A_YEAR), self._a_season)
        return np.where(self._is_always_on, super().at(day), year * self._a_season + passed)

    def day(self, shown: Array) -> Array:
        """The calendar day on which each row's clock shows that, the first one where it stands still on it."""
        known = np.where(np.isinf(shown), 0.0, shown)
        # The end of a season, not the beginning of the next one, also where rounding says otherwise.
        year = np.ceil(known / self._a_season - 1e-9) - 1
        begin = super().at(NEW_YEAR + self.begins + year * DAYS_A_YEAR)
        day = super().day(begin + known - year * self._a_season)
        return np.where(self._is_always_on, super().day(shown), np.where(np.isinf(shown), np.inf, day))

    @property
    def _is_always_on(self) -> np.ndarray:
        return np.asarray(self.length >= DAYS_A_YEAR)

    @property
    def _a_season(self) -> Array:
        """How far the clock goes in one season."""
        first = NEW_YEAR + self.begins
        return np.asarray(super().at(first + np.minimum(self.length, DAYS_A_YEAR)) - super().at(first))


@cache
def driving_clock() -> Clock:
    """Effective days of driving: the integral of 1 + 0.10 cos(2 pi (day of the year - 195) / 365.25)."""
    days = np.arange(_FIRST_DAY, _LAST_DAY, dtype=float)
    turn = 2 * np.pi / DAYS_A_YEAR
    return Clock(days, days + SUMMER_SHARE / turn * np.sin(turn * (days - NEW_YEAR + 1 - BUSIEST_DAY)))


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
    of_year = (days - NEW_YEAR) % DAYS_A_YEAR
    pace = np.where((of_year < WINTER_ENDS) | (of_year >= WINTER_BEGINS), factor, 1.0)
    return Clock(days, np.concatenate([[0.0], np.cumsum(pace)[:-1]]))
