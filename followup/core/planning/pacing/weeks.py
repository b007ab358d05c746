"""The weeks that are paced, and in which of them the visits come that a text brings."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, timedelta

# Weeks in which an invite may leave; one that fits none of them is postponed.
WEEKS = 12
POSTPONED = WEEKS
# In the first, second, third and fourth week after a text (as the project's design has them; `brought` learns from them
# on).
LANDING_SHARES = (0.35, 0.30, 0.20, 0.15)
# The last texts of the twelve weeks still bring visits in these: the first one comes the day after the text.
ALL_WEEKS = WEEKS + len(LANDING_SHARES) + 1
# Of so many texts a booking comes: of the first and of the second about one reason (assumption of the design).
BOOKED_ON_TRY = (0.35, 0.20)
_DAYS = 7


def monday_of(day: date) -> date:
    """The Monday of that day's week."""
    return day - timedelta(days=day.weekday())


def week_of(begins_on: date, day: date) -> int:
    """The number of a day's week, counted from the week that begins on that Monday; negative before."""
    return (monday_of(day) - begins_on).days // _DAYS


def landings(
    leaves: float, begins: float = float("-inf"), shares: Sequence[float] = LANDING_SHARES
) -> dict[int, float]:
    """The share of a text's visits in each week, by its number; a week after the text is spread over its seven days.

    `leaves` is the day after it leaves, in days since the Monday of week 0. Visits before the day `begins` are left
    out, so that the shares of a text that left a while ago sum to what is still ahead.
    """
    found: dict[int, float] = {}
    for number, share in enumerate(shares):
        first = leaves + _DAYS * number
        at, last = max(first, begins), first + _DAYS
        while at < last - 1e-9:
            week = int((at + 1e-9) // _DAYS)
            until = min(last, _DAYS * (week + 1.0))
            found[week] = found.get(week, 0.0) + share * (until - at) / _DAYS
            at = until
    return found
