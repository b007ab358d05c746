"""Items that are due at a date or a distance since they were last done: oil service, rotation, timing belt."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import replace

import numpy as np

from followup.core.forecast.batch import Batch
from followup.core.forecast.cars import ItemHistory
from followup.core.forecast.lives import Intervals
from followup.core.forecast.season import Array, Clock, driving_clock
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
from followup.core.item import Interval

_DONE = ("replaced", "serviced", "rotated", "adjusted")


def interval_batch(items: Sequence[TimedItem[Interval]], usage: UsageAhead, kind: str) -> Batch:
    log_miles, variance = usage_of_items(items, usage)
    rows, because = [], []
    for one, rate in zip(items, np.exp(log_miles).tolist(), strict=True):
        model = one.model if kind == "action" else replace(one.model, notice_days=0.0, notice_miles=0.0)
        since = _interval_since(one.of, model)
        origin = one.of.car.origin
        days_left, miles_left, is_known = _left_of_interval(one, model, since, origin)
        rows.append((days_left, miles_left, is_known, origin))
        because.append(because_of("interval/1", since, one.of, rate))
    days, miles, known, origins = (np.array(column) for column in zip(*rows, strict=True))
    clock = driving_clock()
    times = Intervals(_as_shown(clock, origins, days), miles, log_miles, np.maximum(variance, 1e-4), known)
    return batch_of(items, times, origins, [now_shown(one.of) for one in items], because, clock)


def _as_shown(clock: Clock, origins: Array, days: Array) -> Array:
    """Calendar days left, as the clock of driving counts them: miles go by that clock, and both must go by one."""
    ends = clock.at(origins + np.where(np.isinf(days), 0.0, days))
    return np.where(np.isinf(days), np.inf, ends - clock.at(origins))


def _interval_since(one: ItemHistory, model: Interval) -> Since:
    told: list[tuple[float, float | None]] = []
    for reading in one.readings:
        miles = told_miles(reading.entered.done_odometer, reading)
        if reading.entered.done_on is not None:
            told.append((float(reading.entered.done_on.toordinal()), miles))
        elif miles is not None:
            told.append((min(_day_of(one, miles), float(reading.on.toordinal())), miles))
    work = one.work_done(*_DONE)
    if work is not None:
        told.append((float(work.on.toordinal()), work.odometer_miles))
    if told:
        day, at = max(told, key=lambda it: it[0])
        return Since(day, at if at is not None else one.car.track.at(day), "told")
    first_used = one.car.track.first_used
    if first_used is None:
        return Since(None, None, "unknown")
    is_young = model.days is None or one.car.origin - first_used < model.days
    has_few_miles = model.miles is None or one.car.track.at(one.car.origin) < model.miles
    return Since(first_used, 0.0, "first_use") if is_young and has_few_miles else Since(None, None, "unknown")


def _day_of(one: ItemHistory, miles: float) -> float:
    """The day on which the car had so many miles, at its own rate."""
    car = one.car
    return car.origin - (car.track.at(car.origin) - miles) / car.track.miles_per_day


def _left_of_interval(
    one: TimedItem[Interval], model: Interval, since: Since, origin: float
) -> tuple[float, float, bool]:
    """Days and miles left at the origin (infinite where the interval has none), and whether that is known.

    What a sticker or a display says comes before what the interval says, if no work was done since.
    """
    odometer = one.of.car.track.at(origin)
    said = _said_by_sticker(one, model, origin, odometer, since)
    if said is not None:
        return (*said, True)
    days = math.inf if model.days is None else model.days - model.notice_days
    miles = math.inf if model.miles is None else model.miles - model.notice_miles
    if since.day is None or since.miles is None:
        return days, miles, False
    return days - (origin - since.day), miles - (odometer - since.miles), True


def _said_by_sticker(
    one: TimedItem[Interval], model: Interval, origin: float, odometer: float, since: Since
) -> tuple[float, float] | None:
    last = one.of.last
    entered = last.entered
    if since.day is not None and since.day >= last_day(one.of) and since.how == "told":
        return None
    miles = told_miles(entered.due_odometer, last)
    if miles is not None or entered.due_on is not None:
        days_left = math.inf if entered.due_on is None else entered.due_on.toordinal() - origin - model.notice_days
        return days_left, math.inf if miles is None else miles - odometer - model.notice_miles
    if entered.life_percent is not None and one.limit is not None:
        share = (entered.life_percent - one.limit.value) / 100
        driven, passed = odometer - one.of.car.track.at(last_day(one.of)), origin - last_day(one.of)
        days_left = math.inf if model.days is None else model.days * share - passed
        return days_left, math.inf if model.miles is None else model.miles * share - driven
    return None
