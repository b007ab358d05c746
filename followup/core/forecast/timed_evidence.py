"""What the windows of items without measured wear rest on: lives, intervals, levels, dates, looks."""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import replace
from datetime import date, timedelta

import numpy as np
from scipy.special import ndtri

from followup.core.day_words import day_words, month_words
from followup.core.forecast.batch import Batch
from followup.core.forecast.cars import ItemHistory
from followup.core.forecast.evidence import Evidence, ShownLine, ShownPoint, ShownReading, Wide
from followup.core.forecast.history import Reading
from followup.core.forecast.lives import Amounts, Intervals, Lives
from followup.core.forecast.odometer_use import odometer_use
from followup.core.forecast.season import Array
from followup.core.forecast.timed_items import timed_model
from followup.core.forecast.window import CURVE_CHANCES, DueWindow
from followup.core.item import Interval, Level, Looks

_CHANCES = (0.1, 0.5, 0.9)
_HIGH = float(ndtri(0.9))
_MOST_READINGS = 10
_STEPS = 16


def timed_evidence(batch: Batch, windows: Sequence[DueWindow]) -> list[Evidence]:
    """The evidence of the rows of a batch that was not measured; `windows` are the same rows'."""
    of: Callable[[Batch, int, DueWindow], Evidence] = _of_words
    if isinstance(batch.times, Lives):
        of = _of_life
    elif isinstance(batch.times, Intervals):
        of = _of_interval
    elif isinstance(batch.times, Amounts):
        passed = _amounts_passed(batch)
        return [_of_level(batch, row, window, passed[:, row]) for row, window in enumerate(windows)]
    return [of(batch, row, window) for row, window in enumerate(windows)]


def _of_words(batch: Batch, row: int, window: DueWindow) -> Evidence:
    """Dates and looks: nothing to draw."""
    return Evidence(unit="", readings=_readings(batch.of[row], window, None))


def _of_life(batch: Batch, row: int, window: DueWindow) -> Evidence:
    """The share of such parts that is still good, by day: all of them up to the last look."""
    times, one = batch.times, batch.of[row]
    assert isinstance(times, Lives)
    is_known = bool(times.is_known[row])
    spread = math.exp(_HIGH * float(times.log_spread[row]))
    median = math.exp(float(times.log_median_days[row]))
    by_miles = math.isfinite(float(times.log_median_miles[row]))
    looked_on = date.fromordinal(int(batch.origin[row]))
    begin = min(window.because.since_on or one.readings[0].on, looked_on)
    points = {begin: 1.0, looked_on: 1.0}
    if window.as_of > looked_on:
        points[window.as_of] = 1 - window.curve.already
    for chance, days in zip(CURVE_CHANCES, window.curve.days, strict=True):
        if math.isfinite(days) and days > 0 and chance >= window.curve.already:
            points[window.as_of + timedelta(days=round(days))] = 1 - chance
    return Evidence(
        unit="share",
        readings=_readings(one, window, 1.0),
        lines=(ShownLine("good", tuple(ShownPoint(on, share) for on, share in sorted(points.items()))),),
        odometer=odometer_use(one.car) if by_miles else None,
        miles_a_day_between=_between(times.log_miles, times.miles_variance, row) if by_miles else None,
        wide="life" if is_known else "since",
        interval=(None, math.exp(float(times.log_median_miles[row]))) if by_miles else None,
        life_days=(median / spread, median, median * spread),
    )


def _of_interval(batch: Batch, row: int, window: DueWindow) -> Evidence:
    """How much of the interval is used up, by miles and by days: 100 percent is when it is recommended."""
    times, one = batch.times, batch.of[row]
    assert isinstance(times, Intervals)
    model = timed_model(one)
    assert isinstance(model, Interval)
    origin, miles_left = batch.origin[row], float(times.miles_left[row])
    days_left = float(batch.clock.day(batch.clock.at(origin) + times.days_left[row]) - origin)
    rate, swing = math.exp(float(times.log_miles[row])), math.exp(_HIGH * math.sqrt(float(times.miles_variance[row])))
    found = Evidence(
        unit="percent used",
        readings=_readings(one, window, None),
        odometer=odometer_use(one.car) if model.miles is not None else None,
        miles_a_day_between=_between(times.log_miles, times.miles_variance, row) if model.miles is not None else None,
        interval=(model.days, model.miles),
    )
    if not times.is_known[row]:
        return replace(found, wide="since")
    lines = []
    if model.days is not None and math.isfinite(days_left):
        whole = max(model.days - model.notice_days, 1.0)
        lines.append(ShownLine("days", _used_up(batch, row, window, 1 - days_left / whole, (1 / whole,))))
    if model.miles is not None and math.isfinite(miles_left):
        whole = max(model.miles - model.notice_miles, 1.0)
        rates = (rate / whole, rate / swing / whole, rate * swing / whole)
        lines.append(ShownLine("miles", _used_up(batch, row, window, 1 - miles_left / whole, rates)))
    by_miles_first = miles_left / rate < days_left
    return replace(found, lines=tuple(lines), wide="distance" if by_miles_first and miles_left > 0 else None)


def _used_up(
    batch: Batch, row: int, window: DueWindow, used: float, a_day: tuple[float, ...]
) -> tuple[ShownPoint, ...]:
    """From nothing on the day it was done to what is used by the last day, and on at its rate; in percent."""
    origin = date.fromordinal(int(batch.origin[row]))
    since = window.because.since_on
    ends = [on for on in (window.early, window.likely, window.late) if on is not None]
    end = max((max(ends, default=origin) - origin).days * 1.1, 60.0)
    days = sorted({*np.linspace(0, end, _STEPS).round().tolist(), *((on - origin).days for on in ends if on > origin)})
    points = [ShownPoint(since, 0.0)] if since is not None and since < origin and used > 0 else []
    for day in days:
        likely, *band = (100 * max(used + one * day, 0.0) for one in a_day)
        points.append(ShownPoint(origin + timedelta(days=day), likely, *band))
    return tuple(points)


def _amounts_passed(batch: Batch) -> Array:
    """Calendar days after the origin by which each row has run out, at each chance (chances, rows)."""
    begin = batch.clock.at(batch.origin)
    return np.stack([batch.clock.day(begin + batch.times.quantile(chance)) - batch.origin for chance in _CHANCES])


def _of_level(batch: Batch, row: int, window: DueWindow, passed: Array) -> Evidence:
    """What is left above empty, by day: straight between what was seen and the mark at which it is due."""
    one = batch.of[row]
    model = timed_model(one)
    assert isinstance(model, Level)
    amounts = dict(model.amounts)
    empty = max(amounts.values())
    is_range = isinstance(window.now, float)
    due_at = (window.limit.value if window.limit else 0.0) if is_range else empty - amounts[model.due_at]
    now = float(window.now) if isinstance(window.now, float) else empty - amounts.get(str(window.now), empty)
    marks = () if is_range else tuple((word, empty - below) for word, below in model.amounts)
    by_miles = model.amount_per_day is None
    found = Evidence(
        unit="mi" if is_range else "marks",
        readings=_readings(one, window, None if is_range else dict(marks)),
        marks=marks,
        due_at=due_at,
        odometer=odometer_use(one.car) if by_miles else None,
        wide=_widest_level(model, is_range),
    )
    if now <= due_at or not np.isfinite(passed).all() or passed[0] <= 0:
        return found
    origin = date.fromordinal(int(batch.origin[row]))
    days = sorted({*np.linspace(0, 1.1 * passed[2], _STEPS).round().tolist(), *np.round(passed).tolist()})
    points = []
    for day in days:
        low, likely, high = (max(now - (now - due_at) * day / it, 0.0) for it in passed.tolist())
        points.append(ShownPoint(origin + timedelta(days=day), likely, low, high))
    return replace(found, lines=(ShownLine("amount", tuple(points)),))


def _widest_level(model: Level, is_range: bool) -> Wide:
    return "distance" if is_range or model.log_spread < 0.3 else "rate"


def _between(log_miles: Array, variance: Array, row: int) -> tuple[float, float]:
    swing = _HIGH * math.sqrt(float(variance[row]))
    return math.exp(float(log_miles[row]) - swing), math.exp(float(log_miles[row]) + swing)


def _readings(one: ItemHistory, window: DueWindow, good: float | dict[str, float] | None) -> tuple[ShownReading, ...]:
    """The latest readings: `good` is where one that found it good stands, or the place of each word."""
    since = window.because.since_on
    looks = next((model for model in one.item.models if isinstance(model, Looks)), Looks())
    found = []
    for reading in one.readings[-_MOST_READINGS:]:
        measured, unit, word = _measured(reading)
        value = good.get(word) if isinstance(good, dict) else None if word in (*looks.due_now, "replace") else good
        if good is None and isinstance(measured, float) and unit == "mi":
            value = measured
        is_before = since is not None and window.because.since_how == "told" and reading.on < since
        found.append(
            ShownReading(reading.on, measured, unit, value, None, reading.odometer_miles,
                         "replaced" if is_before else None)
        )  # fmt: skip
    return tuple(found)


def _measured(reading: Reading) -> tuple[float | str, str, str]:
    """What was entered: the number and its unit where there is one, and the word."""
    entered = reading.entered
    word = entered.level or entered.looks or entered.verdict or entered.found_as or ""
    if reading.number is not None:
        return float(reading.number.value), reading.number.unit, word
    if entered.good_until:
        return month_words(entered.good_until), "", word
    if word or entered.date_code:
        return word or entered.date_code or "", "", word
    if entered.due_odometer is not None:
        return f"due at {entered.due_odometer:,.0f} {entered.unit or reading.distance_unit}", "", word
    named = (("done", entered.done_on), ("changed", entered.changed_on), ("due", entered.due_on))
    return next((f"{did} {day_words(on)}" for did, on in named if on is not None), ""), "", word
