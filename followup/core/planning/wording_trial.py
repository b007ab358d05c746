"""Two wordings of a reason side by side: what came of each, what may be concluded, and when it must end by itself.

Rates come with intervals: Wilson's score interval for one (Wilson 1927), Newcombe's hybrid of two of them for a
difference (Newcombe 1998, method 10). Nothing is concluded before as many customers read each wording as the manager
set at the beginning: who looks every day and ends at the first difference finds one in two trials of the same text.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import ceil, sqrt
from statistics import NormalDist

# A customer counts in what happened within so many days after the first text of the trial.
ANSWERED_WITHIN_DAYS = 7
BOOKED_WITHIN_DAYS = 14
STOPPED_WITHIN_DAYS = 7
# Fewer stops than this are chance, whatever the rate.
LEAST_STOPS = 3
LEAST_EACH, MOST_EACH = 20, 5000


@dataclass(frozen=True)
class Arm:
    """One wording's customers: how many read it, and of them how many answered, booked, stopped."""

    customers: int = 0
    answered: int = 0
    booked: int = 0
    stopped: int = 0


@dataclass(frozen=True)
class Verdict:
    """What may be said of booking: `better` "first", "second" or None; `is_early` while too few have read it.

    `low`, `high`: how many more of 100 customers book by the second than by the first, 95 % interval.
    """

    better: str | None
    is_early: bool
    low: float
    high: float


def interval(count: int, of: int, level: float = 0.95) -> tuple[float, float]:
    """The rate's lower and upper bound (0-1) by Wilson's score interval; (0, 1) of nothing.

    `ValueError` where `count` is not between 0 and `of`.
    """
    if not 0 <= count <= of:
        raise ValueError(f"{count} of {of}")
    if of == 0:
        return 0.0, 1.0
    z = NormalDist().inv_cdf((1 + level) / 2)
    rate, square = count / of, z * z / of
    middle, half = rate + square / 2, z * sqrt(rate * (1 - rate) / of + square / (4 * of))
    low, high = (middle - half) / (1 + square), (middle + half) / (1 + square)
    # Where all or none did, the bound is the end itself; rounding would miss it.
    return 0.0 if count == 0 else low, 1.0 if count == of else high


def difference(first: tuple[int, int], second: tuple[int, int], level: float = 0.95) -> tuple[float, float]:
    """Bounds (-1 to 1) of the second rate minus the first, each (count, of): Newcombe's hybrid score interval."""
    if not first[1] or not second[1]:
        return -1.0, 1.0
    rate_1, rate_2 = first[0] / first[1], second[0] / second[1]
    (low_1, high_1), (low_2, high_2) = interval(*first, level), interval(*second, level)
    between = rate_2 - rate_1
    low = between - sqrt((rate_2 - low_2) ** 2 + (high_1 - rate_1) ** 2)
    high = between + sqrt((high_2 - rate_2) ** 2 + (rate_1 - low_1) ** 2)
    return low, high


def customers_needed(rate: float, more: float, level: float = 0.95, power: float = 0.8) -> int:
    """Customers for each wording, so that `more` (0-1) above `rate` is found with that power, two-sided (Fleiss)."""
    other = rate + more
    mean = (rate + other) / 2
    z_level, z_power = NormalDist().inv_cdf((1 + level) / 2), NormalDist().inv_cdf(power)
    spread = z_level * sqrt(2 * mean * (1 - mean)) + z_power * sqrt(rate * (1 - rate) + other * (1 - other))
    return ceil((spread / more) ** 2)


def verdict(first: Arm, second: Arm, planned_each: int) -> Verdict:
    """What may be concluded about bookings."""
    low, high = difference((first.booked, first.customers), (second.booked, second.customers))
    is_early = min(first.customers, second.customers) < planned_each
    better = None if is_early else "second" if low > 0 else "first" if high < 0 else None
    return Verdict(better, is_early, low, high)


def has_many_stops(arm: Arm, most_per_100: float) -> bool:
    """Whether more customers stopped than the shop bears; it is told early rather than late."""
    return arm.stopped >= LEAST_STOPS and arm.stopped * 100 > most_per_100 * arm.customers
