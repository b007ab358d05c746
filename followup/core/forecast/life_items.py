"""Items that age from their replacement: battery, wiper blades, filters, tires by their date code."""

from __future__ import annotations

import math
from collections.abc import Sequence

import numpy as np

from followup.core.forecast.batch import Batch
from followup.core.forecast.cars import ItemHistory
from followup.core.forecast.lives import Lives
from followup.core.forecast.season import DAYS_A_YEAR
from followup.core.forecast.timed import (
    Since,
    TimedItem,
    batch_of,
    because_of,
    last_day,
    now_shown,
    told_miles,
    usage_of_items,
)
from followup.core.forecast.usage import UsageAhead
from followup.core.item import Life
from followup.core.items import made_on

_RENEWED = ("replaced", "serviced")


def life_batch(items: Sequence[TimedItem[Life]], usage: UsageAhead) -> Batch:
    log_miles, variance = usage_of_items(items, usage)
    rows = []
    because = []
    for one, rate in zip(items, np.exp(log_miles).tolist(), strict=True):
        since = _life_since(one.of, one.model)
        origin = float(one.of.last.on.toordinal()) if since.day is None else max(last_day(one.of), since.day)
        age = 0.0 if since.day is None else origin - since.day
        miles = one.of.car.track.at(origin) - since.miles if since.miles is not None else age * rate
        seen = origin - float(one.of.readings[0].on.toordinal())
        rows.append((_median_days(one), _median_miles(one.model), one.model.log_spread, age, max(miles, 0.0),
                     since.day is not None, seen, origin))  # fmt: skip
        because.append(because_of("life/1", since, one.of, None if one.model.median_miles is None else rate))
    median_days, median_miles, spread, age_days, age_miles, known, seen_days, origins = map(
        np.array, zip(*rows, strict=True)
    )
    lives = Lives(np.log(median_days), median_miles, spread, age_days, age_miles, known, seen_days, log_miles, variance)
    return batch_of(items, lives, origins, [now_shown(one.of) for one in items], because)


def _median_days(one: TimedItem[Life]) -> float:
    """The median life; that of a part that measures weak is shorter; a shop's own age limit takes its place."""
    value = one.of.last.value
    weak = one.model.weak_below is not None and value is not None and value < one.model.weak_below
    usual = (
        one.limit.value * DAYS_A_YEAR if one.limit is not None and one.limit.unit == "years" else one.model.median_days
    )
    return usual + (one.model.weak_shift_days if weak else 0.0)


def _median_miles(model: Life) -> float:
    return math.log(model.median_miles) if model.median_miles is not None else math.inf


def _life_since(one: ItemHistory, model: Life) -> Since:
    """Since when it is on: the latest that was told; else first use, where the car is younger than such a life."""
    told: list[tuple[float, float | None]] = []
    for reading in one.readings:
        on = made_on(reading.entered) or reading.entered.changed_on
        if on is not None:
            told.append((float(on.toordinal()), told_miles(reading.entered.done_odometer, reading)))
    work = one.work_done(*_RENEWED)
    if work is not None:
        told.append((float(work.on.toordinal()), work.odometer_miles))
    if told:
        day, miles = max(told, key=lambda it: it[0])
        return Since(day, miles if miles is not None else one.car.track.at(day), "told")
    first_used = one.car.track.first_used
    is_young = first_used is not None and last_day(one) - first_used < model.median_days
    has_few_miles = model.median_miles is None or one.car.track.at(last_day(one)) < model.median_miles
    if first_used is not None and is_young and has_few_miles:
        return Since(first_used, 0.0, "first_use")
    return Since(None, None, "unknown")
