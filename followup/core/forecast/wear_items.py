"""Items that wear from new to a limit: tread, pads, shoes, rotors by distance, brake fluid by time.

What rises towards its limit is turned round (what is left of it falls), and what goes by time has years in place of
thousand miles, so that one arithmetic serves all. Neither asks for the other: a shop may add items of each sort.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date
from itertools import groupby
from math import sqrt

from followup.core.forecast.cars import Car, ItemHistory
from followup.core.forecast.history import Reading, axle_of
from followup.core.forecast.priors import ShopPriors
from followup.core.forecast.scale import Scale, scale_of
from followup.core.forecast.sets import (
    ACROSS_AXLES,
    PAD_RESETS,
    TIME_RESETS,
    TIRE_RESETS,
    AxleReading,
    Change,
    PartSet,
    ResetChances,
    split_into_sets,
)
from followup.core.item import HOW_VARIANCE, MM_PER_UNIT, DistanceWear, Fall, Item, Limit, Rise, WearPrior, converted

# The same number at so many places, or last time's numbers after so many miles: perhaps copied, not measured. Such
# readings count for half (assumptions).
_SAME_PLACES, _SAME_AFTER_MILES, _COPIED_VARIANCE = 4, 3_000, 2.0
# Standard deviation of the grooves of one tire, 32nds, and of the two linings of one brake, mm (assumptions).
_GROOVE_SPREAD, _LINING_SPREAD = 0.5, 0.35
# How many grooves' worth the usual spread weighs against that of the tire itself (assumption).
_USUAL_WEIGHS = 4
# e_n: expected highest of n standard normals (order statistics), for 1 to 12 of them.
_HIGHEST_OF = (0.0, 0.5642, 0.8463, 1.0294, 1.1630, 1.2672, 1.3522, 1.4236, 1.4850, 1.5388, 1.5864, 1.6292)
# Sides further apart than this are doubted, both of them.
_SIDES_APART = 3.0
# What a gauge may be cut to, in the unit that was entered; so many readings must agree before a coarse one is believed.
_GAUGES = (1.0, 0.5, 0.1, 0.01, 0.001)
_AGREEING = 4


@dataclass(frozen=True)
class WearAxle:
    """One item on one axle of one car: its sides, what is usual for it, and its sets of parts, the last one on the car.

    `limit` is in the item's unit, turned round with the values where they rise; `new_at` is where on the scale
    (thousand miles, or years) the car was new, None where unknown, `end_at` where it is on the car's last day.
    `scale` is what its wear is counted by.
    """

    sides: tuple[ItemHistory, ...]
    prior: WearPrior
    limit: float
    shown_limit: Limit
    is_by_time: bool
    sets: tuple[PartSet, ...]
    new_at: float | None
    end_at: float
    scale: Scale

    @property
    def car(self) -> Car:
        """The car it is on."""
        return self.sides[0].car

    @property
    def item(self) -> Item:
        """The item of the catalogue."""
        return self.sides[0].item


def wear_model(one: ItemHistory) -> DistanceWear | Rise | None:
    """The wear model that has what it needs (a measured number), or None."""
    for model in one.item.models:
        if isinstance(model, DistanceWear | Rise) and any(it.value is not None for it in one.readings):
            return model
    return None


def wear_limit(one: ItemHistory, kind: str, limits: Mapping[str, float]) -> Limit | None:
    """The limit that it wears to; None where it is not forecast by measured wear."""
    limit = one.item.limit(kind, limits, one.last.tire_set)
    return limit if limit is not None and wear_model(one) is not None else None


def axles_of(histories: Sequence[ItemHistory], limit_of: dict[str, Limit], usual: ShopPriors) -> list[WearAxle]:
    """The axles of one item of one car; `histories` are its positions, `limit_of` the limit of each.

    `usual` is what the shop expects before anything was measured.
    """
    by_axle = {axle: tuple(sides) for axle, sides in groupby(_by_axle(histories), lambda one: axle_of(one.position))}
    priors = {axle: _prior(sides[0], limit_of[sides[0].position], usual) for axle, sides in by_axle.items()}
    copied = _perhaps_copied(histories)
    item = histories[0].item
    scales = {axle: _scale(sides, usual) for axle, sides in by_axle.items()}
    read = {
        axle: _axle_readings(sides, priors[axle], limit_of, copied, scales[axle], usual.gauges_round_down)
        for axle, sides in by_axle.items()
    }
    resets = resets_of(item)
    found = []
    for axle, sides in by_axle.items():
        other, scale = _other_axle(axle), scales[axle]
        shown = limit_of[sides[0].position]
        sets = split_into_sets(
            read[axle],
            read.get(other, []),
            _changes(sides, resets, scale),
            priors[axle],
            priors.get(other, priors[axle]),
            resets,
        )
        found.append(
            WearAxle(
                sides, priors[axle], _in_own_unit(shown, item) if item.falls else 0.0, shown, _goes_by_time(item),
                tuple(sets), scale.new_at, scale.at(sides[0].car.origin), scale,
            )
        )  # fmt: skip
    return found


def _scale(sides: Sequence[ItemHistory], usual: ShopPriors) -> Scale:
    """The scale of an axle; the label of a line is that of its tires, and says nothing of its pads."""
    one = sides[0]
    readings = [it for side in sides for it in side.readings] if one.item.goes_with_tires else []
    return scale_of(one.car, readings, _goes_by_time(one.item), one.stored_set, usual.tire_seasons)


def stored_sets(histories: Sequence[ItemHistory]) -> list[list[ItemHistory]]:
    """The places of one item once more for each labelled set that was measured but is not the one seen on last."""
    if not histories or not histories[0].item.goes_with_tires:
        return []
    labels = {
        (reading.on, reading.tire_set)
        for one in histories
        for reading in one.readings
        if reading.tire_set and reading.value is not None
    }
    if len(labels) < 2:
        return []
    last = max(labels, key=lambda one: one[0])[1]
    others = sorted({label for _, label in labels if label and label != last})
    return [[replace(one, stored_set=label) for one in histories if _was_read(one, label)] for label in others]


def _was_read(one: ItemHistory, label: str) -> bool:
    return any(reading.tire_set == label and reading.value is not None for reading in one.readings)


def _by_axle(histories: Sequence[ItemHistory]) -> list[ItemHistory]:
    return sorted(histories, key=lambda one: axle_of(one.position))


def _other_axle(axle: str) -> str:
    return {"front": "rear", "rear": "front"}.get(axle, "")


def _goes_by_time(item: Item) -> bool:
    return any(isinstance(model, Rise) for model in item.models)


def resets_of(item: Item) -> ResetChances:
    """How often such parts are replaced or moved."""
    if _goes_by_time(item):
        return TIME_RESETS
    return TIRE_RESETS if item.goes_with_tires else PAD_RESETS


def _in_own_unit(limit: Limit, item: Item) -> float:
    return converted(limit.value, limit.unit, item.unit or limit.unit)


def _prior(one: ItemHistory, limit: Limit, usual: ShopPriors) -> WearPrior:
    return usual.wear_prior(one.item.code, _published(one, limit), one.car.history.vehicle, one.position)


def _published(one: ItemHistory, limit: Limit) -> WearPrior:
    for model in one.item.models:
        if isinstance(model, DistanceWear):
            prior = model.prior(one.car.history.vehicle, one.position)
            return prior if one.item.falls else _turned(prior, limit.value)
        if isinstance(model, Rise):
            prior = _prior_by_year(model, limit.value)
            return prior if one.item.falls else _turned(prior, limit.value)
    raise KeyError(one.item.code)


def _turned(prior: WearPrior, limit: float) -> WearPrior:
    """The same of what is left to the limit, for what rises towards it."""
    return replace(prior, new_value=limit - prior.new_value, usually_replaced_at=limit - prior.usually_replaced_at)


def _prior_by_year(model: Rise, limit: float) -> WearPrior:
    """What is expected of an item that goes with time; years stand in place of thousand miles."""
    beyond = -model.replaced_beyond if isinstance(model, Fall) else model.replaced_beyond
    return WearPrior(
        new_value=model.start,
        new_spread=model.new_spread,
        rate_per_1000_miles=model.per_year,
        between_cars=model.log_spread * 0.8,
        between_items=model.log_spread * 0.6,
        reading_error=model.reading_error,
        gauge_step=model.gauge_step,
        mate_error=model.mate_error,
        usually_replaced_at=limit + beyond,
        replaced_spread=model.replaced_spread,
    )


def _perhaps_copied(histories: Sequence[ItemHistory]) -> set[date]:
    """Days on which one number stands at every place of the car, or all numbers are those of the time before."""
    by_day: dict[date, dict[str, float]] = {}
    for one in histories:
        for reading in one.readings:
            if reading.value is not None:
                by_day.setdefault(reading.on, {})[one.position] = reading.value
    track = histories[0].car.track
    found, before = set(), None
    for on, values in sorted(by_day.items()):
        is_one_number = len(values) >= _SAME_PLACES and len(set(values.values())) == 1
        is_last_times = before is not None and len(values) >= _SAME_PLACES and values == by_day[before]
        driven = track.at(on.toordinal()) - track.at(before.toordinal()) if before else 0.0
        if is_one_number or (is_last_times and driven >= _SAME_AFTER_MILES):
            found.add(on)
        before = on
    return found


def _axle_readings(
    sides: Sequence[ItemHistory],
    prior: WearPrior,
    limit_of: dict[str, Limit],
    copied: set[date],
    scale: Scale,
    rounds_down: bool,
) -> list[AxleReading]:
    """What was read on the axle, day by day, values turned round where they rise.

    A gauge that is read down to its last full mark shows half a step less than there is, on the mean.
    """
    gauge = gauge_step(sides, prior)
    reads_low_by = gauge / 2 if rounds_down else 0.0
    by_day: dict[date, dict[str, tuple[float, float]]] = {}
    for one in sides:
        for reading in one.readings:
            found = value_and_variance(one.item, reading, prior.reading_error, gauge)
            if found is None or not scale.is_on(reading.on.toordinal()):
                continue
            value, variance = found
            variance *= _COPIED_VARIANCE if reading.on in copied else 1.0
            value = value + reads_low_by if one.item.falls else limit_of[one.position].value - value
            by_day.setdefault(reading.on, {})[one.position] = (value, variance)
    days = ((float(on.toordinal()), values) for on, values in sorted(by_day.items()))
    return [AxleReading(day, scale.at(day), _doubted(values)) for day, values in days]


def doubt_of(values: Sequence[float]) -> float:
    """Variance that is added to both sides where they lie far apart: one is probably wrong, nobody knows which."""
    apart = max(values) - min(values)
    return (apart / 2) ** 2 if apart > _SIDES_APART else 0.0


def _doubted(values: dict[str, tuple[float, float]]) -> tuple[tuple[str, float, float], ...]:
    """Both sides, with what is doubted of them."""
    doubt = doubt_of([value for value, _ in values.values()])
    return tuple((side, value, variance + doubt) for side, (value, variance) in values.items())


def value_and_variance(item: Item, reading: Reading, reading_error: float, gauge: float) -> tuple[float, float] | None:
    """The number that counts in the item's unit and the variance of reading it; None for words alone.

    `reading_error` is the standard deviation with the wheel off, `gauge` the width that numbers are rounded to.
    """
    value = reading.value
    if value is None:
        return None
    variance = reading_error**2 * HOW_VARIANCE.get(reading.entered.how or "", 1.0) + gauge**2 / 12
    if not reading.several or item.unit is None or not item.falls:
        return value, variance
    numbers = [converted(one, reading.entered.unit or item.unit, item.unit) for one in reading.several]
    spread = _groove_spread(numbers, variance) if reading.entered.across else _LINING_SPREAD
    return _lowest_of(numbers, variance, spread)


def _lowest_of(numbers: list[float], variance: float, spread: float) -> tuple[float, float]:
    """The lowest number of one part, each first drawn towards their mean: the lowest of noisy readings lies too low.

    `spread` is how far the true ones differ, tau; k = tau^2 / (tau^2 + sigma^2). Drawn so, the lowest lies too high by
    the mean of the least of n such numbers, e_n tau (1 - sqrt k), which is taken off. The variance is that of a number
    so drawn.
    """
    mean = sum(numbers) / len(numbers)
    kept = spread**2 / (spread**2 + variance)
    too_high = _HIGHEST_OF[min(len(numbers), len(_HIGHEST_OF)) - 1] * spread * (1 - sqrt(kept))
    return mean + kept * (min(numbers) - mean) - too_high, variance * (kept + (1 - kept) ** 2 / len(numbers))


def _groove_spread(grooves: list[float], variance: float) -> float:
    """tau of this tire: the usual one, more where its own grooves lie apart by more than readings miss.

    What they show weighs n - 1, the usual one `_USUAL_WEIGHS`: a tire that is truly worn to one side must not be drawn
    back to its mean, or it would be forecast late.
    """
    usual, freedom = _GROOVE_SPREAD**2, len(grooves) - 1
    mean = sum(grooves) / len(grooves)
    shown = sum((one - mean) ** 2 for one in grooves)
    seen = (shown + _USUAL_WEIGHS * (usual + variance)) / (freedom + _USUAL_WEIGHS) - variance
    return sqrt(max(usual, seen))


def gauge_step(sides: Sequence[ItemHistory], prior: WearPrior) -> float:
    """The step of the gauge that was used on this axle, in the item's unit.

    The usual step unless the numbers say otherwise: finer where one of them lies between its marks, coarser where
    several all lie on coarser ones.
    """
    item = sides[0].item
    numbers = [found for one in sides for it in one.readings if (found := it.number) is not None]
    if not numbers or item.unit is None:
        return prior.gauge_step
    unit = numbers[0].unit
    scale = converted(1.0, unit, item.unit) if unit in MM_PER_UNIT and item.unit in MM_PER_UNIT else 1.0
    fitting = [step for step in _GAUGES if all(_is_on_mark(one.value, step) for one in numbers)]
    coarsest = (fitting or [_GAUGES[-1]])[0] * scale
    usual = prior.gauge_step if unit == item.unit else 0.1 * scale if unit == "mm" else scale
    return coarsest if coarsest < usual or len(numbers) >= _AGREEING else usual


def _is_on_mark(value: float, step: float) -> bool:
    return abs(value / step - round(value / step)) < 1e-4


def _changes(sides: Sequence[ItemHistory], resets: ResetChances, scale: Scale) -> list[Change]:
    """Work that began a new set on this axle, in the order of time."""
    item = sides[0].item
    found = []
    for work in {id(one): one for side in sides for one in side.work}.values():
        day = float(work.on.toordinal())
        if not scale.is_on(day):
            continue
        where = scale.at_work(day, work.odometer_miles)
        is_rotation = work.did == "rotated" or (work.item != item.code and work.did == "serviced")
        if is_rotation and resets.rotated:
            came_from = _came_from(work.moved, sides)
            if came_from:
                found.append(Change(day, where, True, came_from))
        elif (
            work.item == item.code
            and work.did in ("replaced", "serviced")
            and (work.did == "replaced" or _goes_by_time(item))
        ):
            found.append(Change(day, where, False))
    if _goes_by_time(item):
        told = {it.entered.changed_on for one in sides for it in one.readings if it.entered.changed_on is not None}
        found += [Change(float(on.toordinal()), scale.at(on.toordinal()), False) for on in told]
    return sorted(found, key=lambda one: one.day)


def _came_from(moved: tuple[tuple[str, str], ...], sides: Sequence[ItemHistory]) -> tuple[tuple[str, str], ...]:
    """Where each side of the axle came from; front to rear on the same side where it was not told.

    () where nothing came from the other axle: side to side changes nothing for the pair.
    """
    positions = {one.position for one in sides}
    into = (
        {place: source for source, place in moved if place in positions}
        if moved
        else {place: ACROSS_AXLES[place] for place in positions if place in ACROSS_AXLES}
    )
    return tuple(into.items()) if any(axle_of(source) != axle_of(place) for place, source in into.items()) else ()
