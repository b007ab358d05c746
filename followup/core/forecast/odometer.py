"""What a car's odometer showed on any day: wrong entries put right or left out, gaps filled in.

Each entry may be as read, kilometers typed as miles, or wrong; the cheapest explanation of up to six entries wins.
Costs are negative log chances (assumptions).
"""

from __future__ import annotations

from bisect import bisect_right
from dataclasses import dataclass
from itertools import pairwise
from math import exp, log, sqrt

from followup.core.forecast.priors import UsagePrior
from followup.core.forecast.season import DAYS_A_YEAR
from followup.core.forecast.usage import LEAST_INTERVAL_DAYS, MOST_INTERVALS
from followup.core.item import MILES_PER_KM

# Kilometers cost a little less than a plain wrong entry: if they cost more, leaving out would always win, and
# an entry that fits so well once converted is worth keeping.
_COST_KM, _COST_WRONG, _COST_DECREASE = 4.2, 4.6, 60.0
# A car may come to stand still (once), and then goes on as it last went: else all entries of a parked car would be
# called wrong.
_COST_PARKED, _COST_GOES_ON = 9.0, 1.0
_FIRST_SPREAD = 0.62
_BEAMS = 12


@dataclass(frozen=True)
class OdometerTrack:
    """Days (`date.toordinal`) and miles, rising; `first_used` is the day of mile 0, None where unknown.

    `is_told` is False where no odometer was ever entered: the miles are then guessed from age.
    """

    days: tuple[float, ...]
    miles: tuple[float, ...]
    first_used: float | None
    is_told: bool
    miles_per_day: float

    def at(self, day: float) -> float:
        """Miles on that day: between two entries on the line, beyond the last at the car's own rate."""
        if not self.days:
            return self.miles_per_day * (day - self.first_used) if self.first_used is not None else 0.0
        if day >= self.days[-1]:
            return self.miles[-1] + self.miles_per_day * (day - self.days[-1])
        days, miles = self.days, self.miles
        if self.first_used is not None and self.first_used < days[0]:
            days, miles = (self.first_used, *days), (0.0, *miles)
        if day < days[0]:
            return max(miles[0] - self.miles_per_day * (days[0] - day), 0.0)
        right = bisect_right(days, day)
        share = (day - days[right - 1]) / (days[right] - days[right - 1])
        return miles[right - 1] + share * (miles[right] - miles[right - 1])

    @property
    def knows_new(self) -> bool:
        """True where the miles since new are known, told or guessed from the age."""
        return self.is_told or self.first_used is not None


def track(entries: list[tuple[float, float]], first_used: float | None, prior: UsagePrior) -> OdometerTrack:
    """Clean the entries (day, miles), in order of time."""
    kept = _cleaned(_one_a_day(entries)[-MOST_INTERVALS:], first_used, prior)
    start = [(first_used, 0.0)] if first_used is not None else []
    usual = exp(prior.log_miles_per_day)
    rate = usual
    ends = [*start, *kept]
    if len(ends) > 1 and ends[-1][0] - ends[-2][0] >= LEAST_INTERVAL_DAYS:
        rate = (ends[-1][1] - ends[-2][1]) / (ends[-1][0] - ends[-2][0])
    return OdometerTrack(
        tuple(day for day, _ in kept), tuple(miles for _, miles in kept), first_used, bool(kept), max(rate, 0.05)
    )


def _one_a_day(entries: list[tuple[float, float]]) -> list[tuple[float, float]]:
    by_day: dict[float, float] = {}
    for day, miles in entries:
        by_day[day] = max(miles, by_day.get(day, 0.0))
    return sorted(by_day.items())


@dataclass(frozen=True)
class _Path:
    cost: float
    kept: tuple[tuple[float, float], ...]
    last: tuple[float, float] | None
    log_rates: tuple[float, ...]

    def with_entry(self, day: float, miles: float, cost: float, prior: UsagePrior) -> _Path:
        """This path and one entry more, at the cost of its step."""
        kept = (*self.kept, (day, miles))
        if self.last is None:
            return _Path(self.cost + cost, kept, (day, miles), self.log_rates)
        length = day - self.last[0]
        if miles < self.last[1] or (length >= LEAST_INTERVAL_DAYS and miles <= self.last[1]):
            return _Path(self.cost + cost + _COST_DECREASE, kept, (day, miles), self.log_rates)
        if length < LEAST_INTERVAL_DAYS:
            return _Path(self.cost + cost, kept, (day, miles), self.log_rates)
        log_rate = log((miles - self.last[1]) / length)
        usual = sum(self.log_rates) / len(self.log_rates) if self.log_rates else prior.log_miles_per_day
        spread = 0.36 + 1.8 / sqrt(length) if self.log_rates else _FIRST_SPREAD
        step = min(((log_rate - usual) / spread) ** 2, 400.0) / 2
        if self.log_rates:
            step = min(step, ((log_rate - self.log_rates[-1]) / spread) ** 2 / 2 + _COST_GOES_ON)
        if log_rate < usual:
            step = min(step, _COST_PARKED)
        return _Path(self.cost + cost + step, kept, (day, miles), (*self.log_rates, log_rate))


def _cleaned(
    entries: list[tuple[float, float]], first_used: float | None, prior: UsagePrior
) -> list[tuple[float, float]]:
    begin = _Path(0.0, (), (first_used, 0.0) if first_used is not None else None, ())
    as_read = begin
    for day, miles in entries:
        as_read = as_read.with_entry(day, miles, 0.0, prior)
    # Every other explanation costs at least one wrong entry.
    if as_read.cost <= _COST_WRONG or (len(entries) == 1 and first_used is None):
        return list(as_read.kept)
    paths = [begin]
    for day, miles in entries:
        longer = [path.with_entry(day, miles, 0.0, prior) for path in paths]
        longer += [path.with_entry(day, miles * MILES_PER_KM, _COST_KM, prior) for path in paths]
        longer += [_Path(path.cost + _COST_WRONG, path.kept, path.last, path.log_rates) for path in paths]
        paths = sorted(longer, key=lambda path: path.cost)[:_BEAMS]
    return _rising(list(paths[0].kept))


def _rising(kept: list[tuple[float, float]]) -> list[tuple[float, float]]:
    """Without what still falls: an entry below the one before it is no distance."""
    rising = kept[:1]
    for before, entry in pairwise(kept):
        if entry[1] >= max(before[1], rising[-1][1]):
            rising.append(entry)
    return rising


def age_years(first_used: float | None, day: float) -> float:
    """Age of the car on that day, in years; NaN where its first use is unknown."""
    return float("nan") if first_used is None else max(day - first_used, 0.0) / DAYS_A_YEAR
