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


@dataclass(frozen=True)
class Scale:
    """The scale of one item of one car.

    `put_on` are the days on which a labelled set was seen on, in the order of time; (): no labels, or but one.
    """

    car: Car
    is_by_time: bool
    put_on: tuple[tuple[float, str], ...] = ()

    def at(self, day: float) -> float:
        """Thousand miles on that day (of the set that is on now, without those of others), or years."""
        if self.is_by_time:
            return day / DAYS_A_YEAR
        return self.car.thousand_miles(day) - self._of_others(day)

    def at_work(self, day: float, odometer_miles: float | None) -> float:
        """The same for work that told its own odometer, which is more exact than the line between visits."""
        if self.is_by_time or odometer_miles is None:
            return self.at(day)
        return self.at(day) + odometer_miles / 1000 - self.car.thousand_miles(day)

    def is_on(self, day: float) -> bool:
        """True where the set that is on now was on that day as well: from one label to the next."""
        return not self.put_on or self._label(day) == self.put_on[-1][1]

    @property
    def new_at(self) -> float | None:
        """Where on the scale the car was new with this set on; None where that is unknown."""
        if self.is_by_time:
            first_used = self.car.track.first_used
            return None if first_used is None else first_used / DAYS_A_YEAR
        is_first_set = not self.put_on or self.put_on[0][1] == self.put_on[-1][1] != "winter"
        return 0.0 if self.car.track.knows_new and is_first_set else None

    def _label(self, day: float) -> str:
        return next((label for begin, label in reversed(self.put_on) if begin <= day), self.put_on[0][1])

    def _of_others(self, day: float) -> float:
        """Thousand miles that were driven up to that day on other sets."""
        if not self.put_on:
            return 0.0
        mine = self.put_on[-1][1]
        driven = 0.0
        for (begin, label), (end, _) in pairwise((*self.put_on, (max(day, self.put_on[-1][0]), ""))):
            if label != mine and begin < day:
                driven += self.car.thousand_miles(min(end, day)) - self.car.thousand_miles(begin)
        return driven


def scale_of(car: Car, readings: Iterable[Reading], is_by_time: bool) -> Scale:
    """The scale by which the measured ones of these readings of one axle are counted."""
    labels = {float(one.on.toordinal()): one.tire_set for one in readings if one.tire_set and one.value is not None}
    put_on = tuple((day, label) for day, label in sorted(labels.items()) if label)
    return Scale(car, is_by_time, put_on if len({label for _, label in put_on}) > 1 else ())
