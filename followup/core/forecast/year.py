"""The turn of the year in days as `date.toordinal` counts them. Plain numbers without numpy."""

from __future__ import annotations

DAYS_A_YEAR = 365.25
# 1 January 2000. A year of 365.25 days drifts by less than a day in a century.
NEW_YEAR = 730120.0
# November to March, in days of the year counted from 1 January.
WINTER_ENDS, WINTER_BEGINS = 90.0, 304.0


def day_of_year(day: float) -> float:
    """Days since 1 January of a calendar day, in years of 365.25 days."""
    return (day - NEW_YEAR) % DAYS_A_YEAR
