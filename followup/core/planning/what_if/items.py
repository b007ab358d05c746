"""What is done at a visit, on arrays: made once for all worlds and all rules that are compared."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from followup.core.planning.what_if.cars import CarAhead


@dataclass(frozen=True)
class ItemsAhead:
    """What is done at a visit, (cars, items), padded: `near` days before it is due an item is near its limit, `hours`
    of its work; `skill` its place in `skills`; `work` the first place of the same car with the same work. `count`
    (cars): how many items a car has."""

    near: NDArray[np.float32]
    hours: NDArray[np.float32]
    skill: NDArray[np.intp]
    work: NDArray[np.intp]
    count: NDArray[np.intp]
    skills: tuple[str, ...]


def items_ahead(cars: Sequence[CarAhead]) -> ItemsAhead:
    """The items of these cars."""
    most = max((len(one.items) for one in cars), default=0)
    near, hours = (np.zeros((len(cars), most), dtype=np.float32) for _ in range(2))
    skill, work = (np.zeros((len(cars), most), dtype=np.intp) for _ in range(2))
    skills: dict[str, int] = {}
    for at, car in enumerate(cars):
        works: dict[str, int] = {}
        for number, item in enumerate(car.items):
            near[at, number], hours[at, number] = item.near_days, item.hours
            skill[at, number] = skills.setdefault(item.skill, len(skills))
            work[at, number] = works.setdefault(item.work, number)
    count = np.array([len(one.items) for one in cars], dtype=np.intp)
    return ItemsAhead(near, hours, skill, work, count, tuple(skills))
