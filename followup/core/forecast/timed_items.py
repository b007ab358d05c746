"""Items without measured wear: which model answers for one, and the batches of all; dates and looks themselves.

Which model answers is the catalogue's order: the first that has what it needs.
"""

from __future__ import annotations

import math
from collections.abc import Sequence

import numpy as np

from followup.core.forecast.batch import Batch
from followup.core.forecast.cars import ItemHistory
from followup.core.forecast.interval_items import interval_batch
from followup.core.forecast.level_items import last_level, level_batches, range_left
from followup.core.forecast.life_items import life_batch
from followup.core.forecast.lives import Dates
from followup.core.forecast.timed import Since, TimedItem, TimedModel, batch_of, because_of, last_with, now_shown
from followup.core.forecast.usage import UsageAhead
from followup.core.item import AsFound, Dated, Interval, Level, Life, Looks
from followup.core.items import last_day_of
from followup.core.visit import Work


def timed_model(one: ItemHistory) -> TimedModel:
    """The first model of the catalogue that has what it needs; looks where none has: there is no date then."""
    for model in one.item.models:
        if isinstance(model, Life | Interval):
            return model
        if isinstance(model, Level) and (last_level(one) or range_left(one) is not None):
            return model
        if isinstance(model, Dated) and last_with(one, model.field) is not None:
            return model
        if isinstance(model, Looks) and one.last.entered.looks in model.look_again:
            return model
    return next((model for model in one.item.models if isinstance(model, Looks)), Looks())


def timed_batches(items: Sequence[TimedItem[TimedModel]], usage: UsageAhead, kind: str) -> list[Batch]:
    """One batch for each kind of model, and for each clock of levels. `kind` is that of the limits."""
    lives = [TimedItem(one.of, one.model, one.limit) for one in items if isinstance(one.model, Life)]
    intervals = [TimedItem(one.of, one.model, one.limit) for one in items if isinstance(one.model, Interval)]
    levels = [TimedItem(one.of, one.model, one.limit) for one in items if isinstance(one.model, Level)]
    dated = [TimedItem(one.of, one.model, one.limit) for one in items if isinstance(one.model, Dated | Looks)]
    in_time = [one for one in lives if one.model.median_miles is None]
    in_miles = [one for one in lives if one.model.median_miles is not None]
    batches = [life_batch(ones, usage) for ones in (in_time, in_miles) if ones]
    if intervals:
        batches.append(interval_batch(intervals, usage, kind))
    batches += level_batches(levels, usage)
    if dated:
        batches.append(_date_batch(dated, kind))
    return batches


def _date_batch(items: Sequence[TimedItem[Dated | Looks]], kind: str) -> Batch:
    days = [_due_day(one, kind) for one in items]
    origins = np.array([one.of.car.origin for one in items])
    because = [
        because_of("date/1" if isinstance(one.model, Dated) else "looks/1", Since(None, None, "unknown"), one.of, None)
        for one in items
    ]
    return batch_of(items, Dates(np.array(days) - origins), origins, [now_shown(one.of) for one in items], because)


def _due_day(one: TimedItem[Dated | Looks], kind: str) -> float:
    """The day by the sticker, or on which to look again; infinite where the looks say nothing."""
    if isinstance(one.model, Dated):
        reading = last_with(one.of, one.model.field)
        assert reading is not None
        notice = one.model.notice_days if kind == "action" else 0.0
        return last_day_of(getattr(reading.entered, one.model.field)).toordinal() - notice
    renewed: Work | None = one.of.work_done("replaced", "repaired", "serviced")
    looked = last_with(one.of, "looks")
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
