"""Do the numbers that were read belong to the parts that were forecast, or did somebody change or move them untold?

The same weighing as in `sets.py` (design, step 1.2), with the forecast itself in place of the last reading: worn on as
expected, against put on new in between, against moved here from the other axle.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import log
from typing import Literal

import numpy as np

from followup.core.forecast.history import axle_of
from followup.core.forecast.next_reading import expected_after
from followup.core.forecast.priors import ShopPriors
from followup.core.forecast.sets import ACROSS_AXLES, SEEN_AT, log_new, robust_log
from followup.core.forecast.value_ahead import ValueAhead
from followup.core.forecast.wear_items import resets_of
from followup.core.item import DistanceWear, Item
from followup.core.vehicle import Vehicle

_LEAST_MILES = 10.0

SamePart = Literal["measured", "seems_changed", "seems_moved"]


@dataclass(frozen=True)
class ReadPlace:
    """A place of an item: what was believed of it, what was read there, with what variance, after how many miles."""

    position: str
    ahead: ValueAhead
    value: float
    variance: float
    miles: float


def same_parts(places: Sequence[ReadPlace], item: Item, vehicle: Vehicle, priors: ShopPriors) -> list[SamePart]:
    """For each place: the part that was forecast (`measured`), or one that seems changed or moved.

    Both sides of an axle are changed together; tires are moved between the axles together.
    """
    driven = max(max(one.miles for one in places), _LEAST_MILES) / 1000
    changed, moved = resets_of(item).within(driven)
    worn_on = log(max(1 - changed - moved, 0.05))
    own = _log_densities(places, [one.ahead for one in places])
    if moved > 0 and _seems_moved(places, own, log(moved) - worn_on):
        return ["seems_moved"] * len(places)
    found: dict[str, SamePart] = {}
    for axle in {axle_of(one.position) for one in places}:
        rows = [row for row, one in enumerate(places) if axle_of(one.position) == axle]
        fresh = sum(_log_fresh(places[row], item, vehicle, priors) for row in rows)
        is_fresh = fresh + log(changed) > sum(own[row] for row in rows) + worn_on + SEEN_AT
        found[axle] = "seems_changed" if is_fresh else "measured"
    return [found[axle_of(one.position)] for one in places]


def _seems_moved(places: Sequence[ReadPlace], own: Sequence[float], odds: float) -> bool:
    by_position = {one.position: one for one in places}
    crossed = [row for row, one in enumerate(places) if ACROSS_AXLES.get(one.position) in by_position]
    if not crossed:
        return False
    others = [by_position[ACROSS_AXLES[places[row].position]].ahead for row in crossed]
    moved = _log_densities([places[row] for row in crossed], others)
    return sum(moved) + odds > sum(own[row] for row in crossed) + SEEN_AT


def _log_densities(places: Sequence[ReadPlace], ahead: Sequence[ValueAhead]) -> list[float]:
    expected = expected_after(
        ahead, [max(one.miles, _LEAST_MILES) for one in places], np.array([one.variance for one in places])
    )
    return [robust_log(one) for one in expected.density(np.array([one.value for one in places])).tolist()]


def _log_fresh(place: ReadPlace, item: Item, vehicle: Vehicle, priors: ShopPriors) -> float:
    """Log density of the reading of a part that was new somewhere in between."""
    model = next(one for one in item.models if isinstance(one, DistanceWear))
    prior = priors.wear_prior(item.code, model.prior(vehicle, place.position), vehicle, place.position)
    return log_new(place.value, place.variance, prior, place.miles / 1000)
