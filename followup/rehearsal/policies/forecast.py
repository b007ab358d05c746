"""The real forecast asked for many cars at once: from which day on a text is due by the send rule.

F(day + lead) reaches q on the day that lies the lead time before the q-quantile of the due date.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Literal

import numpy as np

from followup.core.forecast.cars import usage_of
from followup.core.forecast.due import is_past, worn_axles
from followup.core.forecast.history import CarHistory
from followup.core.forecast.passage import first_passage
from followup.core.forecast.priors import PUBLISHED
from followup.core.forecast.season import Array, driving_clock
from followup.core.forecast.wear import STRAIGHTNESS_VARIANCE
from followup.core.forecast.wear_batch import BelievedAxles, believe_axles
from followup.core.forecast.wear_items import WearAxle
from followup.core.item import converted

Kind = Literal["action", "legal"]


def text_days(histories: Sequence[CarHistory], chance: Array, lead_days: int) -> tuple[Array, Array]:
    """For each car the day from which it is to be told of work, and of work at its legal limit; infinite where never.

    `chance` (cars,) is q of each. Days are `date.toordinal`.
    """
    axles = worn_axles(histories, "last")
    due = np.full((2, len(histories)), np.inf)
    if axles:
        believed = believe_axles(axles, STRAIGHTNESS_VARIANCE)
        kinds: tuple[Kind, ...] = ("action", "legal")
        for place, kind in enumerate(kinds):
            cars, days = _due_days(axles, believed, kind, chance)
            np.minimum.at(due[place], cars, days)
    return due[0] - lead_days, due[1] - lead_days


def _due_days(
    axles: Sequence[WearAxle], believed: BelievedAxles, kind: Kind, chance: Array
) -> tuple[np.ndarray, Array]:
    """Of every side: its car, and the day on which it is due with the car's chance."""
    of = [axles[number].sides[side] for number, side in believed.places]
    cars = list({one.car.row: one.car for one in of}.values())
    row = {one.row: place for place, one in enumerate(cars)}
    in_usage = np.array([row[one.car.row] for one in of])
    passage = first_passage(
        believed.belief,
        np.array([_limit(axles[number], kind) for number, _ in believed.places]),
        believed.replaced_at,
        believed.replaced_spread,
        usage_of(cars, PUBLISHED.usage),
        in_usage,
    )
    car = np.array([one.car.row for one in of])
    wanted, days = chance[car], np.full(len(of), np.inf)
    for one in np.unique(wanted):
        rows = np.nonzero(wanted == one)[0]
        days[rows] = passage.only(rows).quantile(float(one))
    clock, origin = driving_clock(), np.array([one.car.origin for one in of])
    due_on = clock.day(clock.at(origin) + days)
    return car, np.where([is_past(one, kind, {}) for one in of], origin, due_on)


def _limit(axle: WearAxle, kind: Kind) -> float:
    if kind == "action":
        return axle.limit
    legal = axle.item.legal_limit
    return -np.inf if legal is None else converted(legal.value, legal.unit, axle.item.unit or legal.unit)
