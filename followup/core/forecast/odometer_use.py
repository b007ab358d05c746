"""Which odometer entries of a car its distance rests on, and what became of the others."""

from __future__ import annotations

from datetime import date

from followup.core.forecast.cars import Car
from followup.core.forecast.evidence import OdometerUse
from followup.core.forecast.usage import MOST_INTERVALS

# A mile of rounding is no correction.
_SAME_MILES = 1.0


def odometer_use(car: Car) -> OdometerUse:
    """The entries as the track took them; what is older than the oldest one it looks at is neither."""
    taken = dict(zip(car.track.days, car.track.miles, strict=True))
    by_day: dict[date, float] = {}
    for on, miles in car.history.odometers:
        by_day[on] = max(miles, by_day.get(on, 0.0))
    left_out, put_right = [], []
    for on, miles in sorted(by_day.items())[-MOST_INTERVALS:]:
        day = float(on.toordinal())
        if day not in taken:
            left_out.append((on, miles))
        elif abs(taken[day] - miles) > _SAME_MILES:
            put_right.append((on, miles, taken[day]))
    used = tuple((date.fromordinal(int(day)), miles) for day, miles in sorted(taken.items()))
    return OdometerUse(used, tuple(left_out), tuple(put_right))
