"""The real forecast asked for many cars at once: from which day on a text is due by the send rule.

A car is to be told on the day that lies the lead time before the chances of its first item of being due, and of any of
being near its limit, reach what is asked.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property
from typing import Literal

import numpy as np

from followup.core.forecast.cars import Car, ItemHistory, usage_of
from followup.core.forecast.due import is_past, worn_axles
from followup.core.forecast.first_due import SHARED_BY_MILES
from followup.core.forecast.first_of_several import FirstOfSeveral
from followup.core.forecast.history import CarHistory
from followup.core.forecast.passage import Passage, first_passage
from followup.core.forecast.priors import PUBLISHED
from followup.core.forecast.season import Array, driving_clock
from followup.core.forecast.usage import UsageAhead
from followup.core.forecast.wear import STRAIGHTNESS_VARIANCE
from followup.core.forecast.wear_batch import BelievedAxles, believe_axles
from followup.core.forecast.wear_items import WearAxle
from followup.core.item import converted
from followup.core.planning.worth import COUNTS_FROM
from followup.core.shop import ShopRules

Kind = Literal["action", "legal"]
_MET = 1e6


def text_days(histories: Sequence[CarHistory], rules: Sequence[ShopRules]) -> tuple[Array, Array]:
    """For each car the day from which it is to be told of work, and of work at its legal limit; infinite where never.

    `rules` are those of each car. Days are `date.toordinal`.
    """
    due = np.full((2, len(histories)), np.inf)
    axles = worn_axles(histories, "last")
    if not axles:
        return due[0], due[1]
    sides = _Sides.of_axles(axles, believe_axles(axles, STRAIGHTNESS_VARIANCE))
    action, near = sides.passage("action", 0.0), sides.passage("action", sides.near)
    for one in {id(it): it for it in rules}.values():
        is_so = np.array([it is one for it in rules])
        rows = np.nonzero(is_so[sides.car])[0]
        cars, group = np.unique(sides.car[rows], return_inverse=True)
        if len(cars):
            passed = _first_worth(action.only(rows), near.only(rows), group, one)
            due[0, cars] = sides.day(passed, rows[np.unique(group, return_index=True)[1]])
    plain = np.array([it.send_at_chance for it in rules])[sides.car]
    np.minimum.at(due[1], sides.car, sides.legal_days(plain))
    lead = np.array([one.lead_days for one in rules])
    return due[0] - lead, due[1] - lead


@dataclass(frozen=True)
class _Counted:
    """A passage of rows, of which those count that will not hardly be due when others would join, as `Worn.counts`."""

    passage: Passage
    action: Passage
    joined_days: int

    def chance_by(self, days: Array) -> Array:
        """P(passed by `days` effective days), rows."""
        counts = self.action.chance_by(days + self.joined_days) >= COUNTS_FROM
        return np.where(counts, self.passage.chance_by(days), 0.0)

    def quantile(self, chance: float) -> Array:
        """Effective days by which each row is passed with that chance, and counts."""
        return np.maximum(self.passage.quantile(chance), self.action.quantile(COUNTS_FROM) - self.joined_days)


def _first_worth(action: Passage, near: Passage, group: np.ndarray, rules: ShopRules) -> Array:
    """Effective days until each group (a car) is worth a text, as `worn_are_worth_a_text` has it."""
    passed = np.full(int(group.max()) + 1, np.inf)
    np.minimum.at(passed, group, action.quantile(COUNTS_FROM))
    for passage, chance in ((action, rules.send_worn_at_chance), (near, rules.near_at_chance)):
        if chance > 0:
            counted = _Counted(passage, action, rules.joined_within_days)
            first = FirstOfSeveral(counted, group, np.full(len(group), SHARED_BY_MILES))
            passed = np.maximum(passed, first.quantile(chance))
    return passed


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

    def passage(self, kind: Kind, above: Array | float) -> Passage:
        """When each is so much above its limit; what was read at it has passed."""
        limit = np.array([_limit(self.axles[number], kind) for number, _ in self.believed.places])
        is_met = np.array([is_past(one, kind, {}) for one in self.of])
        # What was read at its limit lies far below it: passed already, with certainty.
        return first_passage(
            self.believed.belief, np.where(is_met, _MET, limit + above), self.believed.replaced_at,
            self.believed.replaced_spread, self._usage, self._usage_row,
        )  # fmt: skip

    def legal_days(self, chance: Array) -> Array:
        """The day on which each is at its legal limit with its chance."""
        passage, passed = self.passage("legal", 0.0), np.zeros(len(self.of))
        for one in np.unique(chance):
            rows = np.nonzero(chance == one)[0]
            passed[rows] = passage.only(rows).quantile(float(one))
        return self.day(passed, np.arange(len(self.of)))

    def day(self, passed: Array, rows: np.ndarray) -> Array:
        """The days on which so many effective days have passed since the last visit of these rows' cars."""
        clock, origin = driving_clock(), np.array([self.of[row].car.origin for row in rows.tolist()])
        return clock.day(clock.at(origin) + passed)

    @cached_property
    def _usage(self) -> UsageAhead:
        return usage_of(self._cars, PUBLISHED.usage)

    @cached_property
    def _usage_row(self) -> np.ndarray:
        row = {one.row: place for place, one in enumerate(self._cars)}
        return np.array([row[car] for car in self.car.tolist()])

    @cached_property
    def _cars(self) -> list[Car]:
        return list({one.car.row: one.car for one in self.of}.values())


def _limit(axle: WearAxle, kind: Kind) -> float:
    if kind == "action":
        return axle.limit
    legal = axle.item.legal_limit
    return -np.inf if legal is None else converted(legal.value, legal.unit, axle.item.unit or legal.unit)
