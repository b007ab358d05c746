"""Effective days: calendar time stretched by the season, because people drive more in summer than in winter.

All rates are held in effective days; a date is mapped back at the very end, which keeps quantiles what they are.
"""

from __future__ import annotations

from functools import cache

import numpy as np
from numpy.typing import NDArray

Array = NDArray[np.float64]

DAYS_A_YEAR = 365.25
# Share by which the busiest day lies above the mean, and its day of the year (assumption of the design, section 1.0).
SUMMER_SHARE = 0.10
BUSIEST_DAY = 195.0
# Day 1 of a year, as `date.toordinal` counts them: 1 January 2000. The season drifts by less than a day in a century.
_NEW_YEAR = 730120.0
_FIRST_DAY, _LAST_DAY = 700000, 770000


@cache
def _table() -> tuple[Array, Array]:
    days = np.arange(_FIRST_DAY, _LAST_DAY, dtype=float)
    return days, _stretched(days)


def _stretched(days: Array) -> Array:
    turn = 2 * np.pi / DAYS_A_YEAR
    return np.asarray(days + SUMMER_SHARE / turn * np.sin(turn * (days - _NEW_YEAR + 1 - BUSIEST_DAY)))


def effective_day(day: Array) -> Array:
    """Effective day numbers of calendar day numbers (`date.toordinal`): the integral of
    1 + 0.10 cos(2 pi (day of year - 195) / 365.25)."""
    return _stretched(np.asarray(day, dtype=float))


def calendar_day(effective: Array) -> Array:
    """The inverse of `effective_day`, exact to 0.01 days (a table of days, read in between)."""
    days, stretched = _table()
    return np.interp(effective, stretched, days)
