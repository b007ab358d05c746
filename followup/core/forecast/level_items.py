"""Items that run low: washer fluid, coolant, engine oil, diesel exhaust fluid."""

from __future__ import annotations

import math
from collections.abc import Sequence

import numpy as np

from followup.core.forecast.batch import Batch
from followup.core.forecast.cars import ItemHistory
from followup.core.forecast.history import Reading
from followup.core.forecast.lives import Amounts
from followup.core.forecast.season import Clock, driving_clock, winter_clock
from followup.core.forecast.timed import Since, TimedItem, batch_of, because_of, last_day, usage_of_items
from followup.core.forecast.usage import UsageAhead
from followup.core.item import Level

_FILLED = ("topped_off", "replaced", "serviced")
# Stands for the clock of miles among the winter factors.
_BY_MILES = 0.0


def _winter_of(model: Level) -> float:
    """What tells the clocks of levels apart: how much more is used in winter."""
    return _BY_MILES if model.amount_per_day is None else model.winter_factor


def _clock(winter: float) -> Clock:
    return driving_clock() if winter == _BY_MILES else winter_clock(winter)


def last_level(one: ItemHistory) -> Reading | None:
    return next((it for it in reversed(one.readings) if it.entered.level not in (None, "not_readable")), None)


def range_left(one: ItemHistory) -> float | None:
    return one.last.value if one.item.unit == "mi" else None


def level_batches(items: Sequence[TimedItem[Level]], usage: UsageAhead) -> list[Batch]:
    """One batch for each clock: miles, and each winter factor."""
    clocks = sorted({_winter_of(one.model) for one in items})
    return [_level_batch([one for one in items if _winter_of(one.model) == it], usage, _clock(it)) for it in clocks]


def _level_batch(items: Sequence[TimedItem[Level]], usage: UsageAhead, clock: Clock) -> Batch:
    log_miles, variance = usage_of_items(items, usage)
    rows, now, because = [], [], []
    for one, log_rate, miles_variance in zip(items, log_miles.tolist(), variance.tolist(), strict=True):
        by_miles = one.model.amount_per_day is None
        left, per_day, day, word, is_range = _left_of_level(one, one.model, math.exp(log_rate))
        spread = math.sqrt((0.0 if is_range else one.model.log_spread**2) + (miles_variance if by_miles else 0.0))
        rows.append((math.log(max(left, 1e-9) / per_day), spread, left <= 0, day))
        now.append(word)
        filled = one.of.work_done(*_FILLED)
        since = Since(None, None, "unknown") if filled is None else Since(float(filled.on.toordinal()), None, "told")
        because.append(because_of("level/1", since, one.of, math.exp(log_rate) if by_miles else None))
    log_days, spreads, is_due, origins = (np.array(column) for column in zip(*rows, strict=True))
    return batch_of(items, Amounts(log_days, spreads, is_due), origins, now, because, clock)


def _left_of_level(
    one: TimedItem[Level], model: Level, miles_per_day: float
) -> tuple[float, float, float, float | str | None, bool]:
    """Amount left until due, amount used a day, the day that is true of, what is shown, and whether it is a range."""
    amounts = dict(model.amounts)
    reading, filled = last_level(one.of), one.of.work_done(*_FILLED)
    if filled is not None and (reading is None or filled.on >= reading.on):
        return amounts[model.due_at], _used_a_day(model, miles_per_day), float(filled.on.toordinal()), "full", False
    left = range_left(one.of)
    if left is not None:
        due_at = one.limit.value if one.limit is not None else 0.0
        return left - due_at, miles_per_day, last_day(one.of), round(left, 0), True
    assert reading is not None and reading.entered.level is not None
    word = reading.entered.level
    day = float(reading.on.toordinal())
    return amounts[model.due_at] - amounts[word], _used_a_day(model, miles_per_day), day, word, False


def _used_a_day(model: Level, miles_per_day: float) -> float:
    if model.amount_per_day is not None:
        return model.amount_per_day
    return (model.amount_per_1000_miles or 1.0) * miles_per_day / 1000
