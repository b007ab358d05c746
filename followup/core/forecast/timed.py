"""What lives, intervals and levels of items have in common: since when, driven how far, shown how."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date
from typing import Generic, TypeVar

import numpy as np

from followup.core.forecast.batch import Batch
from followup.core.forecast.cars import ItemHistory
from followup.core.forecast.history import Reading
from followup.core.forecast.lives import DueTimes
from followup.core.forecast.season import DAYS_A_YEAR, Array, Clock, calendar_clock
from followup.core.forecast.usage import UsageAhead
from followup.core.forecast.window import Because, SinceHow
from followup.core.item import MILES_PER_KM, Dated, Interval, Level, Life, Limit, Looks
from followup.core.items import made_on

TimedModel = Life | Interval | Level | Dated | Looks
Model = TypeVar("Model", bound=TimedModel, covariant=True)
# The horizon at which a car's distance a day is taken for lives and intervals.
_USAGE_DAYS = 365.0


@dataclass(frozen=True)
class TimedItem(Generic[Model]):
    """One item with the model that answers for it; `limit` is what it is held against, if it has one."""

    of: ItemHistory
    model: Model
    limit: Limit | None


@dataclass(frozen=True)
class Since:
    """Since when a part is on: day and miles, and how that is known; None where it is not."""

    day: float | None
    miles: float | None
    how: SinceHow


def batch_of(
    items: Sequence[TimedItem[TimedModel]],
    times: DueTimes,
    origin: Array,
    now: Sequence[float | str | None],
    because: Sequence[Because],
    clock: Clock | None = None,
) -> Batch:
    nobody = np.zeros(len(items), dtype=bool)
    limits = [_shown_limit(one) for one in items]
    return Batch([one.of for one in items], times, origin, clock or calendar_clock(), limits, now, because, nobody)


def usage_of_items(items: Sequence[TimedItem[TimedModel]], usage: UsageAhead) -> tuple[Array, Array]:
    rows = np.array([one.of.car.row for one in items])
    return usage.at(rows, np.full(len(rows), _USAGE_DAYS))


def last_with(one: ItemHistory, name: str) -> Reading | None:
    return next((it for it in reversed(one.readings) if getattr(it.entered, name, None) is not None), None)


def _word(one: ItemHistory) -> str | None:
    """The word that was entered last: the level, the looks or what was found."""
    entered = one.last.entered
    return entered.level or entered.looks or entered.verdict or entered.found_as


def now_shown(one: ItemHistory) -> float | str | None:
    """What is shown: the number that was measured, the age of what has a date code, or the word."""
    made = made_on(one.last.entered)
    if made is not None:
        return round((one.car.as_of - made).days / DAYS_A_YEAR, 1)
    value = one.last.value
    return _word(one) if value is None else round(value, 2)


def _shown_limit(one: TimedItem[TimedModel]) -> Limit | None:
    """The limit where it is one of what was measured: years of an age, the number of a reading."""
    is_measured = one.of.last.value is not None
    return one.limit if one.limit is not None and (one.limit.unit == "years" or is_measured) else None


def because_of(model: str, since: Since, one: ItemHistory, miles_per_day: float | None) -> Because:
    on = None if since.day is None else date.fromordinal(int(since.day))
    return Because(None, None, miles_per_day, len({it.on for it in one.readings}), on, since.how, model)


def last_day(one: ItemHistory) -> float:
    return float(one.last.on.toordinal())


def told_miles(odometer: float | None, reading: Reading) -> float | None:
    if odometer is None:
        return None
    unit = reading.entered.unit if reading.entered.unit in ("mi", "km") else reading.distance_unit
    return odometer * (MILES_PER_KM if unit == "km" else 1.0)
