"""Items without measured wear: lives, service intervals, levels, dates and looks, gathered into batches.

Which model answers is the catalogue's order: the first that has what it needs.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date

import numpy as np

from followup.core.forecast.batch import Batch
from followup.core.forecast.cars import ItemHistory
from followup.core.forecast.history import Reading
from followup.core.forecast.lives import Amounts, Dates, DueTimes, Intervals, Lives
from followup.core.forecast.season import DAYS_A_YEAR, Array, Clock, calendar_clock, driving_clock, winter_clock
from followup.core.forecast.usage import UsageAhead
from followup.core.forecast.window import Because, SinceHow
from followup.core.item import MILES_PER_KM, AsFound, Dated, Interval, Level, Life, Limit, Looks
from followup.core.items import last_day_of, made_on
from followup.core.visit import Work

RENEWED = ("replaced", "serviced")
DONE = ("replaced", "serviced", "rotated", "adjusted")
FILLED = ("topped_off", "replaced", "serviced")
TimedModel = Life | Interval | Level | Dated | Looks
# The horizon at which a car's distance a day is taken for lives and intervals.
_USAGE_DAYS = 365.0


@dataclass(frozen=True)
class TimedItem:
    """One item with the model that answers for it; `limit` is what it is held against, if it has one."""

    of: ItemHistory
    model: TimedModel
    limit: Limit | None


@dataclass(frozen=True)
class _Since:
    """Since when a part is on: day and miles, and how that is known; None where it is not."""

    day: float | None
    miles: float | None
    how: SinceHow


def timed_model(one: ItemHistory) -> TimedModel:
    """The first model of the catalogue that has what it needs; looks where none has: there is no date then."""
    for model in one.item.models:
        if isinstance(model, Life | Interval):
            return model
        if isinstance(model, Level) and (_last_level(one) or _range_left(one) is not None):
            return model
        if isinstance(model, Dated) and _last_with(one, model.field) is not None:
            return model
        if isinstance(model, Looks) and one.last.entered.looks in model.look_again:
            return model
    return next((model for model in one.item.models if isinstance(model, Looks)), Looks())


def timed_batches(items: Sequence[TimedItem], usage: UsageAhead, kind: str) -> list[Batch]:
    """One batch for each kind of model, and for each clock of levels. `kind` is that of the limits."""
    lives_in_time = [one for one in items if isinstance(one.model, Life) and one.model.median_miles is None]
    lives_in_miles = [one for one in items if isinstance(one.model, Life) and one.model.median_miles is not None]
    batches = [_life_batch(ones, usage) for ones in (lives_in_time, lives_in_miles) if ones]
    intervals = [one for one in items if isinstance(one.model, Interval)]
    if intervals:
        batches.append(_interval_batch(intervals, usage, kind))
    for clock in {_clock_of(one.model) for one in items if isinstance(one.model, Level)}:
        of_clock = [one for one in items if isinstance(one.model, Level) and _clock_of(one.model) == clock]
        batches.append(_level_batch(of_clock, usage, _clock(clock)))
    dated = [one for one in items if isinstance(one.model, Dated | Looks)]
    if dated:
        batches.append(_date_batch(dated, kind))
    return batches


def _batch(
    items: Sequence[TimedItem],
    times: DueTimes,
    origin: Array,
    now: Sequence[float | str | None],
    because: Sequence[Because],
    clock: Clock | None = None,
) -> Batch:
    nobody = np.zeros(len(items), dtype=bool)
    limits = [_shown_limit(one) for one in items]
    return Batch([one.of for one in items], times, origin, clock or calendar_clock(), limits, now, because, nobody)


def _usage_of(items: Sequence[TimedItem], usage: UsageAhead) -> tuple[Array, Array]:
    rows = np.array([one.of.car.row for one in items])
    return usage.at(rows, np.full(len(rows), _USAGE_DAYS))


def _last_with(one: ItemHistory, name: str) -> Reading | None:
    return next((it for it in reversed(one.readings) if getattr(it.entered, name, None) is not None), None)


def _word(one: ItemHistory) -> str | None:
    """The word that was entered last: the level, the looks or what was found."""
    entered = one.last.entered
    return entered.level or entered.looks or entered.verdict or entered.found_as


def _now(one: ItemHistory) -> float | str | None:
    """What is shown: the number that was measured, the age of what has a date code, or the word."""
    made = made_on(one.last.entered)
    if made is not None:
        return round((one.car.as_of - made).days / DAYS_A_YEAR, 1)
    value = one.last.value
    return _word(one) if value is None else round(value, 2)


def _shown_limit(one: TimedItem) -> Limit | None:
    """The limit where it is one of what was measured: years of an age, the number of a reading."""
    is_measured = one.of.last.value is not None
    return one.limit if one.limit is not None and (one.limit.unit == "years" or is_measured) else None


def _because(model: str, since: _Since, one: ItemHistory, miles_per_day: float | None) -> Because:
    on = None if since.day is None else date.fromordinal(int(since.day))
    return Because(None, None, miles_per_day, len({it.on for it in one.readings}), on, since.how, model)


# Lives ----------------------------------------------------------------------------------------------------------


def _life_batch(items: Sequence[TimedItem], usage: UsageAhead) -> Batch:
    log_miles, variance = _usage_of(items, usage)
    rows = []
    because = []
    for one, rate in zip(items, np.exp(log_miles).tolist(), strict=True):
        assert isinstance(one.model, Life)
        since = _life_since(one.of, one.model)
        origin = float(one.of.last.on.toordinal()) if since.day is None else max(_last_day(one.of), since.day)
        age = 0.0 if since.day is None else origin - since.day
        miles = one.of.car.track.at(origin) - since.miles if since.miles is not None else age * rate
        seen = origin - float(one.of.readings[0].on.toordinal())
        rows.append((_median_days(one), _median_miles(one.model), one.model.log_spread, age, max(miles, 0.0),
                     since.day is not None, seen, origin))  # fmt: skip
        because.append(_because("life/1", since, one.of, None if one.model.median_miles is None else rate))
    median_days, median_miles, spread, age_days, age_miles, known, seen_days, origins = map(
        np.array, zip(*rows, strict=True)
    )
    lives = Lives(np.log(median_days), median_miles, spread, age_days, age_miles, known, seen_days, log_miles, variance)
    return _batch(items, lives, origins, [_now(one.of) for one in items], because)


def _median_days(one: TimedItem) -> float:
    """The median life; that of a part that measures weak is shorter; a shop's own age limit takes its place."""
    assert isinstance(one.model, Life)
    value = one.of.last.value
    weak = one.model.weak_below is not None and value is not None and value < one.model.weak_below
    usual = (
        one.limit.value * DAYS_A_YEAR if one.limit is not None and one.limit.unit == "years" else one.model.median_days
    )
    return usual + (one.model.weak_shift_days if weak else 0.0)


def _median_miles(model: Life) -> float:
    return math.log(model.median_miles) if model.median_miles is not None else math.inf


def _last_day(one: ItemHistory) -> float:
    return float(one.last.on.toordinal())


def _life_since(one: ItemHistory, model: Life) -> _Since:
    """Since when it is on: the latest that was told; else first use, where the car is younger than such a life."""
    told: list[tuple[float, float | None]] = []
    for reading in one.readings:
        on = made_on(reading.entered) or reading.entered.changed_on
        if on is not None:
            told.append((float(on.toordinal()), _told_miles(reading.entered.done_odometer, reading)))
    work = one.work_done(*RENEWED)
    if work is not None:
        told.append((float(work.on.toordinal()), work.odometer_miles))
    if told:
        day, miles = max(told, key=lambda it: it[0])
        return _Since(day, miles if miles is not None else one.car.track.at(day), "told")
    first_used = one.car.track.first_used
    is_young = first_used is not None and _last_day(one) - first_used < model.median_days
    has_few_miles = model.median_miles is None or one.car.track.at(_last_day(one)) < model.median_miles
    if first_used is not None and is_young and has_few_miles:
        return _Since(first_used, 0.0, "first_use")
    return _Since(None, None, "unknown")


def _told_miles(odometer: float | None, reading: Reading) -> float | None:
    if odometer is None:
        return None
    unit = reading.entered.unit if reading.entered.unit in ("mi", "km") else reading.distance_unit
    return odometer * (MILES_PER_KM if unit == "km" else 1.0)


# Intervals ------------------------------------------------------------------------------------------------------


def _interval_batch(items: Sequence[TimedItem], usage: UsageAhead, kind: str) -> Batch:
    log_miles, variance = _usage_of(items, usage)
    rows, because = [], []
    for one, rate in zip(items, np.exp(log_miles).tolist(), strict=True):
        assert isinstance(one.model, Interval)
        model = one.model if kind == "action" else replace(one.model, notice_days=0.0, notice_miles=0.0)
        since = _interval_since(one.of, model)
        origin = one.of.car.origin
        days_left, miles_left, is_known = _left_of_interval(one, model, since, origin)
        rows.append((days_left, miles_left, is_known, origin))
        because.append(_because("interval/1", since, one.of, rate))
    days, miles, known, origins = (np.array(column) for column in zip(*rows, strict=True))
    times = Intervals(days, miles, log_miles, np.maximum(variance, 1e-4), known)
    return _batch(items, times, origins, [_now(one.of) for one in items], because)


def _interval_since(one: ItemHistory, model: Interval) -> _Since:
    told: list[tuple[float, float | None]] = []
    for reading in one.readings:
        miles = _told_miles(reading.entered.done_odometer, reading)
        if reading.entered.done_on is not None:
            told.append((float(reading.entered.done_on.toordinal()), miles))
        elif miles is not None:
            told.append((min(_day_of(one, miles), float(reading.on.toordinal())), miles))
    work = one.work_done(*DONE)
    if work is not None:
        told.append((float(work.on.toordinal()), work.odometer_miles))
    if told:
        day, at = max(told, key=lambda it: it[0])
        return _Since(day, at if at is not None else one.car.track.at(day), "told")
    first_used = one.car.track.first_used
    if first_used is None:
        return _Since(None, None, "unknown")
    is_young = model.days is None or one.car.origin - first_used < model.days
    has_few_miles = model.miles is None or one.car.track.at(one.car.origin) < model.miles
    return _Since(first_used, 0.0, "first_use") if is_young and has_few_miles else _Since(None, None, "unknown")


def _day_of(one: ItemHistory, miles: float) -> float:
    """The day on which the car had so many miles, at its own rate."""
    car = one.car
    return car.origin - (car.track.at(car.origin) - miles) / car.track.miles_per_day


def _left_of_interval(one: TimedItem, model: Interval, since: _Since, origin: float) -> tuple[float, float, bool]:
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
    one: TimedItem, model: Interval, origin: float, odometer: float, since: _Since
) -> tuple[float, float] | None:
    last = one.of.last
    entered = last.entered
    if since.day is not None and since.day >= _last_day(one.of) and since.how == "told":
        return None
    miles = _told_miles(entered.due_odometer, last)
    if miles is not None or entered.due_on is not None:
        days_left = math.inf if entered.due_on is None else entered.due_on.toordinal() - origin - model.notice_days
        return days_left, math.inf if miles is None else miles - odometer - model.notice_miles
    if entered.life_percent is not None and one.limit is not None:
        share = (entered.life_percent - one.limit.value) / 100
        driven, passed = odometer - one.of.car.track.at(_last_day(one.of)), origin - _last_day(one.of)
        days_left = math.inf if model.days is None else model.days * share - passed
        return days_left, math.inf if model.miles is None else model.miles * share - driven
    return None


# Levels ---------------------------------------------------------------------------------------------------------


def _clock_of(model: TimedModel) -> float | None:
    """What tells the clocks of levels apart: None for miles, else how much more is used in winter."""
    assert isinstance(model, Level)
    return None if model.amount_per_day is None else model.winter_factor


def _clock(factor: float | None) -> Clock:
    return driving_clock() if factor is None else winter_clock(factor)


def _last_level(one: ItemHistory) -> Reading | None:
    return next((it for it in reversed(one.readings) if it.entered.level not in (None, "not_readable")), None)


def _range_left(one: ItemHistory) -> float | None:
    return one.last.value if one.item.unit == "mi" else None


def _level_batch(items: Sequence[TimedItem], usage: UsageAhead, clock: Clock) -> Batch:
    log_miles, variance = _usage_of(items, usage)
    rows, now, because = [], [], []
    for one, log_rate, miles_variance in zip(items, log_miles.tolist(), variance.tolist(), strict=True):
        assert isinstance(one.model, Level)
        by_miles = one.model.amount_per_day is None
        left, per_day, day, word, is_range = _left_of_level(one, one.model, math.exp(log_rate))
        spread = math.sqrt((0.0 if is_range else one.model.log_spread**2) + (miles_variance if by_miles else 0.0))
        rows.append((math.log(max(left, 1e-9) / per_day), spread, left <= 0, day))
        now.append(word)
        filled = one.of.work_done(*FILLED)
        since = _Since(None, None, "unknown") if filled is None else _Since(float(filled.on.toordinal()), None, "told")
        because.append(_because("level/1", since, one.of, math.exp(log_rate) if by_miles else None))
    log_days, spreads, is_due, origins = (np.array(column) for column in zip(*rows, strict=True))
    return _batch(items, Amounts(log_days, spreads, is_due), origins, now, because, clock)


def _left_of_level(
    one: TimedItem, model: Level, miles_per_day: float
) -> tuple[float, float, float, float | str | None, bool]:
    """Amount left until due, amount used a day, the day that is true of, what is shown, and whether it is a range."""
    amounts = dict(model.amounts)
    reading, filled = _last_level(one.of), one.of.work_done(*FILLED)
    if filled is not None and (reading is None or filled.on >= reading.on):
        return amounts[model.due_at], _used_a_day(model, miles_per_day), float(filled.on.toordinal()), "full", False
    left = _range_left(one.of)
    if left is not None:
        due_at = one.limit.value if one.limit is not None else 0.0
        return left - due_at, miles_per_day, _last_day(one.of), round(left, 0), True
    assert reading is not None and reading.entered.level is not None
    word = reading.entered.level
    day = float(reading.on.toordinal())
    return amounts[model.due_at] - amounts[word], _used_a_day(model, miles_per_day), day, word, False


def _used_a_day(model: Level, miles_per_day: float) -> float:
    if model.amount_per_day is not None:
        return model.amount_per_day
    return (model.amount_per_1000_miles or 1.0) * miles_per_day / 1000


# Dates and looks ------------------------------------------------------------------------------------------------


def _date_batch(items: Sequence[TimedItem], kind: str) -> Batch:
    days = [_due_day(one, kind) for one in items]
    origins = np.array([one.of.car.origin for one in items])
    because = [
        _because("date/1" if isinstance(one.model, Dated) else "looks/1", _Since(None, None, "unknown"), one.of, None)
        for one in items
    ]
    return _batch(items, Dates(np.array(days) - origins), origins, [_now(one.of) for one in items], because)


def _due_day(one: TimedItem, kind: str) -> float:
    """The day by the sticker, or on which to look again; infinite where the looks say nothing."""
    if isinstance(one.model, Dated):
        reading = _last_with(one.of, one.model.field)
        assert reading is not None
        notice = one.model.notice_days if kind == "action" else 0.0
        return last_day_of(getattr(reading.entered, one.model.field)).toordinal() - notice
    assert isinstance(one.model, Looks)
    renewed: Work | None = one.of.work_done("replaced", "repaired", "serviced")
    looked = _last_with(one.of, "looks")
    if looked is None or looked.entered.looks not in one.model.look_again:
        return math.inf
    if renewed is not None and renewed.on >= looked.on:
        return math.inf
    return float(looked.on.toordinal()) + one.model.look_again_days


def found_due(one: ItemHistory) -> bool:
    """True where the last reading found it due by words that stand before all models: cracked, replace, leaking."""
    entered = one.last.entered
    for model in one.item.models:
        if isinstance(model, Looks) and entered.looks in model.due_now:
            return True
        if isinstance(model, AsFound) and getattr(entered, model.field, None) in model.due_now:
            return True
    return False
