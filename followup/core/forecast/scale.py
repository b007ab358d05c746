"""Where a part stands on the scale that it wears by: thousand miles, or years.

Tires of a labelled set (summer, winter) wear only while they are on the car: their miles stand still in between, and
the readings of the other set are not theirs.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from itertools import pairwise

from followup.core.forecast.cars import Car
from followup.core.forecast.history import Reading
from followup.core.forecast.season import DAYS_A_YEAR
from followup.core.forecast.tire_seasons import USUAL, WINTER, Season, TireSeasons, season_of


@dataclass(frozen=True)
class Scale:
    """The scale of one item of one car.

    `put_on` are the days on which a labelled set was seen on, in the order of time; (): no labels, or but one. `mine`
    is the set that is looked at, `last_seen` the last day on which any was seen, `season` when it is on; None: always.
    """

    car: Car
    is_by_time: bool
    put_on: tuple[tuple[float, str], ...] = ()
    mine: str | None = None
    last_seen: float = 0.0
    season: Season | None = None

    def at(self, day: float) -> float:
        """Thousand miles on that day (of this set, without those of others), or years."""
        if self.is_by_time:
            return day / DAYS_A_YEAR
        return self.car.thousand_miles(day) - self._of_others(day)

    def at_work(self, day: float, odometer_miles: float | None) -> float:
        """The same for work that told its own odometer, which is more exact than the line between visits."""
        if self.is_by_time or odometer_miles is None:
            return self.at(day)
        return self.at(day) + odometer_miles / 1000 - self.car.thousand_miles(day)

    def is_on(self, day: float) -> bool:
        """True where this set was on that day: from one label to the next."""
        return not self.put_on or self._label(day) == self.mine

    @property
    def new_at(self) -> float | None:
        """Where on the scale the car was new with this set on; None where that is unknown."""
        if self.is_by_time:
            first_used = self.car.track.first_used
            return None if first_used is None else first_used / DAYS_A_YEAR
        is_first_set = not self.put_on or self.put_on[0][1] == self.mine != WINTER
        return 0.0 if self.car.track.knows_new and is_first_set else None

    def _label(self, day: float) -> str:
        return next((label for begin, label in reversed(self.put_on) if begin <= day), self.put_on[0][1])

    def _of_others(self, day: float) -> float:
        """Thousand miles that were driven up to that day on other sets."""
        driven = 0.0
        for (begin, label), (end, _) in pairwise(self.put_on):
            if label != self.mine and begin < day:
                driven += self.car.thousand_miles(min(end, day)) - self.car.thousand_miles(begin)
        return driven + self._off_since(day)

    def _off_since(self, day: float) -> float:
        """The same since the last label: out of season, or all of them where another set of no season is on."""
        if day <= self.last_seen:
            return 0.0
        if self.season is None:
            is_stored = bool(self.put_on) and self.put_on[-1][1] != self.mine
            return self.car.thousand_miles(day) - self.car.thousand_miles(self.last_seen) if is_stored else 0.0
        driven, begin = 0.0, self.last_seen
        while begin < day:
            end = min(self.season.next_change(begin), day)
            if not self.season.holds((begin + end) / 2):
                driven += self.car.thousand_miles(end) - self.car.thousand_miles(begin)
            begin = end
        return driven


def scale_of(
    car: Car,
    readings: Iterable[Reading],
    is_by_time: bool,
    mine: str | None = None,
    usual: TireSeasons = USUAL,
) -> Scale:
    """The scale by which the measured ones of these readings of one axle are counted.

    `mine` is the labelled set that is looked at, the one that was on last unless said.
    """
    labels = {float(one.on.toordinal()): one.tire_set for one in readings if one.tire_set and one.value is not None}
    seen = tuple((day, label) for day, label in sorted(labels.items()) if label)
    if not seen or is_by_time:
        return Scale(car, is_by_time)
    mine = mine or seen[-1][1]
    put_on = seen if len({label for _, label in seen}) > 1 else ()
    return Scale(car, is_by_time, put_on, mine, seen[-1][0], season_of(mine, seen, usual))
