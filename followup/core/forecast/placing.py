"""Where the readings of one item's places fell among what their windows led to expect.

By the date, with the distance driven uncertain (what a due window says), and at the odometer that was read (the wear
alone). What only untold work explains is told apart, so that a count can be shown without it, and with it as misses.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date

import numpy as np

from followup.core.forecast.cars import Car, make_ready
from followup.core.forecast.forecast_score import ForecastScore
from followup.core.forecast.history import CarHistory, Reading
from followup.core.forecast.next_reading import expected_after, expected_on
from followup.core.forecast.priors import ShopPriors
from followup.core.forecast.same_part import ReadPlace, same_parts
from followup.core.forecast.season import Array
from followup.core.forecast.value_ahead import ValueAhead
from followup.core.forecast.window import DueWindow
from followup.core.item import Item, converted

_ROUNDING = 1e-6


@dataclass(frozen=True)
class ReadAgain:
    """A window and the number that was read next: its value and variance in the item's unit, its score so far.

    `value` is what was entered and `reads_low_by`, half a mark where the shop's gauges are read down.
    """

    index: int
    item: Item
    window: DueWindow
    ahead: ValueAhead
    reading: Reading
    value: float
    variance: float
    reads_low_by: float
    score: ForecastScore

    @property
    def limit(self) -> float:
        """The limit that the window was held against, on the scale of `value`; below everything where it had none."""
        limit = self.window.limit
        if limit is None:
            return -np.inf
        return converted(limit.value, limit.unit, self.item.unit or limit.unit) + self.reads_low_by

    @property
    def is_drawn(self) -> bool:
        """True where the value was drawn from several numbers of the part, so that it lies on no mark of the gauge."""
        return bool(self.reading.several)


def place_together(together: Sequence[ReadAgain], history: CarHistory, priors: ShopPriors) -> list[ForecastScore]:
    """The scores of places of one item that were forecast on one day and read on another."""
    read_on = together[0].reading.on
    if together[0].item.goes_with_tires and _has_several_sets(history, read_on):
        return [replace(one.score, how="other_set") for one in together]
    car = make_ready(0, history, read_on, priors.usage)
    ahead, values = [one.ahead for one in together], np.array([one.value for one in together])
    noise = np.array([one.variance for one in together])
    by_date = expected_on(ahead, [float(read_on.toordinal())] * len(ahead), noise)
    miles = [_miles_between(one, car) for one in together]
    is_known = together[0].reading.odometer_miles is not None
    by_odometer = expected_after(ahead, miles, noise)
    places = [ReadPlace(one.window.position, one.ahead, one.value, one.variance, gone)
              for one, gone in zip(together, miles, strict=True)]  # fmt: skip
    how = same_parts(places, together[0].item, car.history.vehicle, priors)
    columns = zip(
        together, how, _chances_of_due(together), by_date.place(values), by_odometer.place(values), by_date.mean,
        by_date.crps(values), strict=True,
    )  # fmt: skip
    return [
        replace(
            one.score,
            how=same,
            chance=None if one.window.is_past else float(chance),
            was_due=None if one.window.is_past else one.value <= one.limit + _ROUNDING,
            place=float(place),
            place_at_odometer=float(at_odometer) if is_known else None,
            expected=float(expected),
            found=float(one.value),
            crps=float(crps),
        )
        for one, same, chance, place, at_odometer, expected, crps in columns
    ]


def _has_several_sets(history: CarHistory, until: date) -> bool:
    """True where labels tell of more than one set of tires: what was read may be the other one."""
    labels = {one.tire_set for one in history.readings if one.on <= until and one.item == "tire_tread"}
    return len(labels - {None}) > 1


def _miles_between(one: ReadAgain, car: Car) -> float:
    begin, end = float(one.ahead.on.toordinal()), float(one.reading.on.toordinal())
    return max(car.track.at(end) - car.track.at(begin), 0.0)


def _chances_of_due(together: Sequence[ReadAgain]) -> Array:
    """The chance that the number read would be at the limit: with its error, up to half a mark above the limit."""
    half = np.array([0.0 if one.is_drawn else one.ahead.gauge_step / 2 for one in together])
    # The gauge's own share of the variance is in the half mark.
    noise = np.array([one.variance for one in together]) - half**2 / 3
    days = [float(one.reading.on.toordinal()) for one in together]
    expected = expected_on([one.ahead for one in together], days, np.maximum(noise, 1e-6))
    return expected.place(np.array([one.limit for one in together]) + half)
