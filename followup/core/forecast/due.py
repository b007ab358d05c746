"""From histories of cars to due windows, all cars at once.

Heavy (numpy, scipy): import it where it is called. What it returns (`window.py`) is light.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date
from itertools import groupby
from typing import Literal

import numpy as np

from followup.core.forecast.cars import Car, ItemHistory, items_of, make_ready, usage_of
from followup.core.forecast.history import CarHistory
from followup.core.forecast.priors import PUBLISHED, ShopPriors
from followup.core.forecast.timed import TimedItem, TimedModel
from followup.core.forecast.timed_evidence import timed_evidence
from followup.core.forecast.timed_items import found_due, timed_batches, timed_model
from followup.core.forecast.wear import STRAIGHTNESS_VARIANCE
from followup.core.forecast.wear_batch import wear_batches
from followup.core.forecast.wear_items import WearAxle, axles_of, stored_sets, wear_limit
from followup.core.forecast.window import HORIZON_DAYS, DueWindow
from followup.core.item import Limit
from followup.core.items import is_at_limit, present_condition

Kind = Literal["action", "legal"]
# Work after which a reading of the same day or before says nothing more about what is on the car.
_ANEW = ("replaced", "repaired", "serviced", "topped_off", "adjusted", "rotated")
# Enough cars for the arrays to pay, few enough to stay small.
_CHUNK = 2_000


def forecast_cars(
    histories: Sequence[CarHistory],
    as_of: date | Literal["last"],
    kind: Kind = "action",
    limits: Mapping[str, float] | None = None,
    horizon_days: int = HORIZON_DAYS,
    quantiles: Sequence[float] = (),
    priors: ShopPriors = PUBLISHED,
    *,
    with_ahead: bool = False,
    with_stored_sets: bool = False,
    with_evidence: bool = False,
    with_near: bool = False,
) -> list[DueWindow]:
    """Due windows of every item with a reading up to `as_of`: by car as given, by the catalogue, then by position.

    `as_of` "last" is each car's latest inspection. `limits` are the shop's own limits of that kind by item code,
    `priors` what is usual there. `with_ahead` also tells what each worn item rests on (`DueWindow.ahead`);
    `with_stored_sets` adds at the end labelled tires that are not the ones seen on last; `with_evidence` adds to each
    window what pages show of its reasons; `with_near` the chance that a visit finds the item near its limit.
    """
    found: list[DueWindow] = []
    for begin in range(0, len(histories), _CHUNK):
        chunk = histories[begin : begin + _CHUNK]
        more = _More(with_ahead, with_stored_sets, with_evidence, with_near)
        found += _forecast_chunk(chunk, as_of, kind, limits or {}, horizon_days, quantiles, priors, more)
    return found


@dataclass(frozen=True)
class _More:
    """What is asked for besides the windows themselves."""

    ahead: bool
    stored_sets: bool
    evidence: bool
    near: bool


def _forecast_chunk(
    histories: Sequence[CarHistory],
    as_of: date | Literal["last"],
    kind: Kind,
    limits: Mapping[str, float],
    horizon_days: int,
    quantiles: Sequence[float],
    priors: ShopPriors,
    more: _More,
) -> list[DueWindow]:
    cars = _made_ready(histories, as_of, priors)
    if not cars:
        return []
    usage = usage_of(cars, priors.usage)
    items = [one for car in cars for one in items_of(car)]
    axles, timed = _gathered(items, kind, limits, priors)
    # They are reckoned in any case: they tell how fast this car wears its tires.
    stored = [one for axle in axles for one in axle.sides if more.stored_sets and one.stored_set is not None]
    batches = wear_batches(axles, usage, STRAIGHTNESS_VARIANCE) + timed_batches(timed, usage, kind)
    windows: dict[_Key, DueWindow] = {}
    for batch in batches:
        known = replace(batch, is_past=np.array([is_past(one, kind, limits) for one in batch.of]))
        told = known.windows(horizon_days, quantiles)
        if more.near:
            told = [replace(window, near=one) for window, one in zip(told, known.near_curves(), strict=True)]
        if more.ahead and (ahead := batch.ahead) is not None:
            told = [replace(window, ahead=ahead(row)) for row, window in enumerate(told)]
        if more.evidence:
            seen = batch.evidence(told) if batch.evidence else timed_evidence(batch, told)
            told = [replace(window, evidence=one) for window, one in zip(told, seen, strict=True)]
        windows.update(zip((_key(one) for one in batch.of), told, strict=True))
    return [windows[_key(one)] for one in [*items, *stored]]


def worn_axles(
    histories: Sequence[CarHistory], as_of: date | Literal["last"], priors: ShopPriors = PUBLISHED
) -> list[WearAxle]:
    """The axles of all measured wear with their sets of parts, as the forecast sees them."""
    cars = _made_ready(histories, as_of, priors)
    return _gathered([one for car in cars for one in items_of(car)], "action", {}, priors)[0]


def _made_ready(histories: Sequence[CarHistory], as_of: date | Literal["last"], priors: ShopPriors) -> list[Car]:
    cars: list[Car] = []
    for history in histories:
        on = history.last_inspected_on if as_of == "last" else as_of
        if on is not None and any(reading.on <= on for reading in history.readings):
            cars.append(make_ready(len(cars), history, on, priors.usage))
    return cars


_Key = tuple[int, str, str, str | None]


def _key(one: ItemHistory) -> _Key:
    return one.car.row, one.item.code, one.position, one.stored_set


def _gathered(
    items: Sequence[ItemHistory], kind: Kind, limits: Mapping[str, float], priors: ShopPriors
) -> tuple[list[WearAxle], list[TimedItem[TimedModel]]]:
    """Each item under the model that answers for it."""
    axles: list[WearAxle] = []
    timed: list[TimedItem[TimedModel]] = []
    for _, of_car in groupby(items, key=lambda one: one.car.row):
        for _, group in groupby(of_car, key=lambda one: one.item.code):
            worn: list[ItemHistory] = []
            limit_of: dict[str, Limit] = {}
            for one in group:
                if (limit := wear_limit(one, kind, limits)) is not None:
                    worn.append(one)
                    limit_of[one.position] = limit
                else:
                    limit = one.item.limit(kind, limits, one.last.tire_set)
                    timed.append(TimedItem(one, timed_model(one), limit))
            if worn:
                axles += axles_of(worn, limit_of, priors)
            for of_set in stored_sets(worn):
                own = {one.position: wear_limit(one, kind, limits) for one in of_set}
                axles += axles_of(of_set, {place: limit for place, limit in own.items() if limit}, priors)
    return axles, timed


def is_past(one: ItemHistory, kind: Kind, limits: Mapping[str, float]) -> bool:
    """True where the last reading itself found it due, and nothing was done to it since."""
    if any(work.on >= one.last.on and work.did in _ANEW for work in one.work):
        return False
    if found_due(one) or is_at_limit(one.item, one.last.entered, kind, limits, one.last.tire_set):
        return True
    if kind == "legal":
        return False
    condition = present_condition(
        one.item, one.last.entered, one.car.history.vehicle, limits, one.last.on, one.last.tire_set
    )
    return condition == "due now"
