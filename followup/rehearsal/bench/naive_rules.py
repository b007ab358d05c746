"""Rules of thumb to be better than: what somebody with a pencil, or a spreadsheet, would make of the same readings.

Each gives one number of days; the band around it is fitted on other cars whose truth is known, which is more than any
shop has.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date

import numpy as np

from followup.core.forecast.history import CarHistory, axle_of, touches
from followup.core.forecast.season import DAYS_A_YEAR, Array
from followup.core.item import DistanceWear
from followup.core.items import BY_CODE
from followup.rehearsal.fleet.build import Fleet, Key

_MILES_A_YEAR = 12_000.0
# A reading that grew by more than this is of another set.
_GREW = 2.0


@dataclass(frozen=True)
class Seen:
    """What a rule sees of one item: days and values of the readings since the last change, and the car's numbers."""

    days: Array
    values: Array
    odometer: float | None
    new_value: float
    limit: float
    visits: int


Rule = Callable[[Seen, float], float]


def two_point_line(seen: Seen, horizon_days: float) -> float:
    """Days until a line through the last two readings meets the limit."""
    if len(seen.days) < 2 or seen.days[-1] == seen.days[-2]:
        return new_minus_now(seen, horizon_days)
    slope = (seen.values[-1] - seen.values[-2]) / (seen.days[-1] - seen.days[-2])
    return _met(seen.values[-1], slope, seen.limit, horizon_days)


def new_minus_now(seen: Seen, horizon_days: float) -> float:
    """Days at (new - now) / odometer of wear a mile and 12,000 miles a year."""
    if not seen.odometer:
        return horizon_days
    a_mile = (seen.new_value - seen.values[-1]) / seen.odometer
    return _met(seen.values[-1], -a_mile * _MILES_A_YEAR / DAYS_A_YEAR, seen.limit, horizon_days)


def least_squares(seen: Seen, horizon_days: float) -> float:
    """Days until the least-squares line over all readings meets the limit."""
    if len(set(seen.days.tolist())) < 2:
        return new_minus_now(seen, horizon_days)
    slope, level = np.polyfit(seen.days - seen.days[-1], seen.values, 1)
    return _met(level, slope, seen.limit, horizon_days)


RULES: Mapping[str, Rule] = {
    "line through the last two readings": two_point_line,
    "new minus now, 12,000 miles a year": new_minus_now,
    "least squares over all readings": least_squares,
}


def _met(value: float, slope: float, limit: float, horizon_days: float) -> float:
    """Flat or rising: the horizon. At the limit: now."""
    if value <= limit:
        return 0.0
    return float(min((value - limit) / -slope, horizon_days)) if slope < 0 else horizon_days


def seen_by_rules(fleet: Fleet, histories: Sequence[CarHistory]) -> dict[Key, Seen]:
    """What the rules see of every item whose truth is known."""
    found: dict[Key, Seen] = {}
    by_code = {one.vehicle.code: one for one in histories}
    for key in fleet.due_days:
        found[key] = _seen(by_code[key[0]], *key[1:])
    return found


def _seen(car: CarHistory, code: str, position: str) -> Seen:
    item = BY_CODE[code]
    told = [one for one in car.readings if one.item == code and one.position == position]
    read = sorted((one.on, one.value) for one in told if one.value is not None)
    since = max(
        (one.on for one in car.work if one.item == code and _concerns(one.position, position)), default=date.min
    )
    kept = [one for one in read if one[0] >= since] or read[-1:]
    begin = max((place for place in range(1, len(kept)) if kept[place][1] > kept[place - 1][1] + _GREW), default=0)
    kept = kept[begin:]
    model = next(one for one in item.models if isinstance(one, DistanceWear))
    assert item.action_limit is not None
    return Seen(
        np.array([float(on.toordinal()) for on, _ in kept]),
        np.array([value for _, value in kept]),
        car.odometers[-1][1] if car.odometers else None,
        model.prior(car.vehicle, position).new_value,
        item.action_limit.value,
        len(car.odometers),
    )


def _concerns(told: str, position: str) -> bool:
    return touches(told, position) or axle_of(told) == axle_of(position)


def points_of(rule: Rule, seen: Mapping[Key, Seen], horizon_days: float) -> Array:
    """The rule's days for each item, in the order of `seen`."""
    return np.array([rule(one, horizon_days) for one in seen.values()])


def fitted_bands(points: Array, truth: Array, visits: np.ndarray, levels: Array) -> dict[int, Array]:
    """Quantiles of truth over point, by the number of the car's visits, on cars whose truth is known."""
    ratio = truth / np.maximum(points, 1.0)
    return {int(count): np.quantile(ratio[visits == count], levels) for count in np.unique(visits)}


def with_bands(points: Array, visits: np.ndarray, bands: Mapping[int, Array], horizon_days: float) -> Array:
    """Quantiles of each item (rows, levels) by the fitted bands, none past the horizon."""
    factors = np.stack([bands[int(count)] for count in visits])
    return np.minimum(np.maximum(points, 1.0)[:, None] * factors, horizon_days)
