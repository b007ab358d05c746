"""How the windows of one car came out, by what was read next.

For each window the next day on which its item was looked at counts, and no other:

* Work in between ends it: a part that was changed or moved before anybody read it says nothing of the old one. What
  was read on the day of the work was read before it.
* Pads and tires are measured: where the reading fell among what the window led to expect (`placing.py`).
* What is measured or looked at was found due or not, and the window gave a chance of that. A window on what had been
  found due already is no forecast, nor is a date on a sticker.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import replace
from datetime import date

from followup.core.forecast.forecast_score import MEASURED_ITEMS, ForecastScore, How
from followup.core.forecast.history import CarHistory, Reading, axle_of, touches
from followup.core.forecast.placing import ReadAgain, place_together
from followup.core.forecast.priors import PUBLISHED, ShopPriors
from followup.core.forecast.wear_items import value_and_variance
from followup.core.forecast.window import DueWindow
from followup.core.item import Item
from followup.core.items import present_condition
from followup.core.vehicle import AXLES
from followup.core.visit import Work

_CHANGED = ("replaced", "repaired", "serviced", "topped_off", "adjusted")
# What forecasts nothing: a date on a sticker, looks that are looked at again, the age that a tire has by its code.
_NO_FORECAST = ("date/1", "looks/1")
_NO_FORECAST_ITEMS = ("tire_age",)


def score_windows(
    windows: Sequence[DueWindow],
    history: CarHistory,
    limits: Mapping[str, float],
    priors: ShopPriors = PUBLISHED,
) -> list[ForecastScore | None]:
    """The scores of windows of one car, in their order; None where nothing came yet, or nothing can be said.

    `limits` are the shop's own action limits; `history` is all that is known by now.
    """
    scores: list[ForecastScore | None] = [None] * len(windows)
    read_again: dict[tuple[date, date, str], list[ReadAgain]] = {}
    for index, window in enumerate(windows):
        item = history.catalogue.get(window.item)
        score, reading = _first_news(window, history) if item is not None else (None, None)
        if item is None or score is None or reading is None:
            scores[index] = score
        elif (read := _measured(item, index, window, reading, score, priors)) is not None:
            read_again.setdefault((window.as_of, reading.on, window.item), []).append(read)
        else:
            scores[index] = _looked_at(item, window, reading, score, history, limits)
    for together in read_again.values():
        for read, score in zip(together, place_together(together, history, priors), strict=True):
            scores[read.index] = score
    return scores


def _first_news(window: DueWindow, history: CarHistory) -> tuple[ForecastScore | None, Reading | None]:
    """What came first after the window: work that ended it (its score, None), or the reading (both), or nothing."""
    # A set that was not on the car when it was forecast cannot be told from the one that is read next.
    if window.stored_set is not None:
        return None, None
    if window.because.model in _NO_FORECAST or window.item in _NO_FORECAST_ITEMS:
        return None, None
    reading = min(
        (one for one in history.readings if one.on > window.as_of and _speaks_of(window, one)),
        key=lambda one: (one.on, one.position != window.position),
        default=None,
    )
    work = [(one.on, how) for one in history.work if one.on > window.as_of and (how := _ended_by(window, one))]
    work = [one for one in work if reading is None or one[0] < reading.on]
    used = window.because.readings_used
    if work:
        on, how = min(work)
        return ForecastScore(window.item, window.position, window.as_of, on, how, used), None
    if reading is None:
        return None, None
    return ForecastScore(window.item, window.position, window.as_of, reading.on, "measured", used), reading


def _speaks_of(window: DueWindow, reading: Reading) -> bool:
    if reading.item != window.item or reading.entered.not_checked is not None:
        return False
    return (
        reading.position == window.position
        or not reading.position
        or not window.position
        or window.position in AXLES.get(reading.position, ())
    )


def _ended_by(window: DueWindow, work: Work) -> How | None:
    """How work ends a window, or None where it does not concern it."""
    is_rotation = work.did == "rotated" or (work.item == "tire_rotation" and work.did in _CHANGED)
    if window.item == "tire_tread" and is_rotation and work.item in ("tire_tread", "tire_rotation"):
        return "moved"
    if work.item != window.item or work.did not in (*_CHANGED, "rotated"):
        return None
    # Both sides of an axle are replaced together, whichever was written down.
    is_of_axle = work.did == "replaced" and axle_of(work.position) == axle_of(window.position)
    return "changed" if is_of_axle or touches(work.position, window.position) else None


def _measured(
    item: Item, index: int, window: DueWindow, reading: Reading, score: ForecastScore, priors: ShopPriors
) -> ReadAgain | None:
    """A pad or tire that was measured; None for others, and where words alone were entered."""
    if window.ahead is None or window.item not in MEASURED_ITEMS:
        return None
    ahead = window.ahead
    found = value_and_variance(item, reading, ahead.reading_error, ahead.gauge_step)
    if found is None:
        return None
    reads_low_by = ahead.gauge_step / 2 if priors.gauges_round_down else 0.0
    return ReadAgain(index, item, window, ahead, reading, found[0] + reads_low_by, found[1], reads_low_by, score)


def _looked_at(
    item: Item,
    window: DueWindow,
    reading: Reading,
    score: ForecastScore,
    history: CarHistory,
    limits: Mapping[str, float],
) -> ForecastScore | None:
    """Found due or not, by the words and numbers of the reading itself."""
    if window.is_past:
        return None
    condition = present_condition(item, reading.entered, history.vehicle, limits, reading.on, reading.tire_set)
    if condition == "not checked":
        return None
    chance = window.chance_due_by(reading.on)
    return replace(score, how="looked_at", chance=chance, was_due=condition == "due now")
