"""The real forecast asked for many cars at once: from which day on a text is due by the send rule.

A chance of being due or near within the lead time reaches what is asked on the day that lies the lead time before that
quantile.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal

import numpy as np

from followup.core.forecast.cars import ItemHistory, usage_of
from followup.core.forecast.due import is_past, worn_axles
from followup.core.forecast.history import CarHistory
from followup.core.forecast.passage import first_passage
from followup.core.forecast.priors import PUBLISHED
from followup.core.forecast.season import Array, driving_clock
from followup.core.forecast.wear import STRAIGHTNESS_VARIANCE
from followup.core.forecast.wear_batch import BelievedAxles, believe_axles
from followup.core.forecast.wear_items import WearAxle
from followup.core.item import converted
from followup.core.shop import ShopRules

Kind = Literal["action", "legal"]


def text_days(histories: Sequence[CarHistory], rules: Sequence[ShopRules]) -> tuple[Array, Array]:
    """For each car the day from which it is to be told of work, and of work at its legal limit; infinite where never.

    `rules` are those of each car. Days are `date.toordinal`.
    """
    due = np.full((2, len(histories)), np.inf)
    axles = worn_axles(histories, "last")
    if not axles:
        return due[0], due[1]
    believed = believe_axles(axles, STRAIGHTNESS_VARIANCE)
    sides = _Sides.of_axles(axles, believed)
    worn, near, plain = (
        np.array([getattr(rules[car], name) for car in sides.car.tolist()])
        for name in ("send_worn_at_chance", "near_at_chance", "send_at_chance")
    )
    told = np.maximum(sides.days("action", 0.0, worn), sides.days("action", sides.near, near))
    np.minimum.at(due[0], sides.car, told)
    np.minimum.at(due[1], sides.car, sides.days("legal", 0.0, plain))
    lead = np.array([one.lead_days for one in rules])
    return due[0] - lead, due[1] - lead


@dataclass(frozen=True)
class _Sides:
    """Every side of every axle: its car, and what is believed of it; `near` is `Item.near` of each."""

    axles: Sequence[WearAxle]
    believed: BelievedAxles
    of: Sequence[ItemHistory]
    car: np.ndarray
    near: Array

    @staticmethod
    def of_axles(axles: Sequence[WearAxle], believed: BelievedAxles) -> _Sides:
        of = [axles[number].sides[side] for number, side in believed.places]
        near = np.array([one.item.near or 0.0 for one in of])
        return _Sides(axles, believed, of, np.array([one.car.row for one in of]), near)

    def days(self, kind: Kind, above: Array | float, chance: Array) -> Array:
        """The day on which each is so much above its limit, or below that, with its chance; chance 0 asks nothing."""
        cars = list({one.car.row: one.car for one in self.of}.values())
        row = {one.row: place for place, one in enumerate(cars)}
        passage = first_passage(
            self.believed.belief,
            np.array([_limit(self.axles[number], kind) for number, _ in self.believed.places]) + above,
            self.believed.replaced_at,
            self.believed.replaced_spread,
            usage_of(cars, PUBLISHED.usage),
            np.array([row[car] for car in self.car.tolist()]),
        )
        passed = np.zeros(len(self.of))
        for one in np.unique(chance[chance > 0]):
            rows = np.nonzero(chance == one)[0]
            passed[rows] = passage.only(rows).quantile(float(one))
        clock, origin = driving_clock(), np.array([one.car.origin for one in self.of])
        is_met = np.array([is_past(one, kind, {}) for one in self.of])
        return np.where(is_met, origin, clock.day(clock.at(origin) + passed))


def _limit(axle: WearAxle, kind: Kind) -> float:
    if kind == "action":
        return axle.limit
    legal = axle.item.legal_limit
    return -np.inf if legal is None else converted(legal.value, legal.unit, axle.item.unit or legal.unit)
