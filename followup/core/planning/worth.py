"""When an item, or the tires and brakes of a car together, are worth a text: one rule for the planner, for pacing and
for trying rules out.

q = cost of early / (cost of early + cost of late). An item whose work a visit does as soon as it lies near its limit
(`Item.near`: tires, brake pads) is not looked at alone: all of a car's are done at one visit, so that counts are when
the first of them is due, and whether the visit will find any of them near.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from functools import lru_cache
from typing import Literal

from followup.core.forecast.first_due import SHARED_BY_MILES, chance_of_first
from followup.core.forecast.window import DueCurve
from followup.core.shop import ShopRules

# What will hardly be due even when others would join it counts for nothing: planning does not read it.
COUNTS_FROM = 0.10
# A worn item is a reason for the text where it is at least half as likely due as the likeliest.
_LIKELY = 0.5
_CLOSE_DAYS = 0.25
_LONGEST_DAYS = 20_000.0


@dataclass(frozen=True)
class _Asked:
    """The rules by which worn items are worth a text."""

    send_worn_at_chance: float
    near_at_chance: float
    joined_within_days: int


@dataclass(frozen=True)
class Worn:
    """The chances of one tire or pad: `due` and `near` its limit once the lead time is over, `joined` of being due
    within the days after that in which others join."""

    due: float
    near: float
    joined: float

    @property
    def counts(self) -> bool:
        """Whether it is looked at together with the others."""
        return self.joined >= COUNTS_FROM


@dataclass(frozen=True)
class WornAhead:
    """The curves of one tire or pad, made so many days ago."""

    curve: DueCurve
    near: DueCurve
    since_days: float = 0.0

    def on(self, days: float, rules: ShopRules | _Asked) -> Worn:
        """Its chances where so many days from today the lead time is over."""
        by = self.since_days + days
        joined = self.curve.chance(by + max(rules.joined_within_days, 0))
        return Worn(self.curve.chance(by), self.near.chance(by), joined)


def is_worth_a_text(chance: float, rules: ShopRules) -> bool:
    """Of what is not looked at together: by its chance of being due once the lead time is over."""
    return chance >= rules.send_at_chance


def first_due(worn: Sequence[Worn]) -> float:
    """The chance that the first of a car's tires and pads is due."""
    return _of_first([one.due for one in worn if one.counts])


def worn_are_worth_a_text(worn: Sequence[Worn], rules: ShopRules | _Asked) -> bool:
    """Of a car's tires and pads together: the first is likely enough due, any likely enough near its limit, and one
    alone not hardly due. False without any."""
    counted = [one for one in worn if one.counts]
    # No more than all of them together: most cars are far from it.
    if sum(one.due for one in counted) < rules.send_worn_at_chance or all(one.due < COUNTS_FROM for one in counted):
        return False
    is_near = _of_first([one.near for one in counted]) >= rules.near_at_chance
    return is_near and first_due(counted) >= rules.send_worn_at_chance


def _of_first(chances: list[float]) -> float:
    return chance_of_first(chances, [SHARED_BY_MILES] * len(chances))


def are_reasons(worn: Sequence[Worn]) -> list[bool]:
    """Which of a car's tires and pads that are worth a text together are the reason for it; the others may join."""
    most = max((one.due for one in worn if one.counts), default=0.0)
    return [one.counts and one.due >= _LIKELY * most for one in worn]


def days_until_worth(curve: DueCurve, rules: ShopRules) -> float:
    """Days from the curve's own day until what is not looked at together is worth a text; infinite where never."""
    return curve.quantile(rules.send_at_chance) - rules.lead_days


def days_until_worn_worth(worn: Sequence[WornAhead], rules: ShopRules, within_days: float = math.inf) -> float:
    """Days from today until a car's tires and pads are worth a text; below 0 where they were before.

    Infinite where never; where it is not `within_days` it may be infinite too.
    """
    if len(worn) == 1:
        return _alone(worn[0], rules) - rules.lead_days
    # None sooner than where one has its share of either chance, none later than where one alone has all of both.
    low = max(_soonest(worn, "curve", rules.send_worn_at_chance), _soonest(worn, "near", rules.near_at_chance))
    if math.isinf(low) or low - rules.lead_days > within_days:
        return math.inf
    # Counted from the day of the newest curve, not from today: asked each night, it is the same until one is made anew.
    newest = min(one.since_days for one in worn)
    curves = tuple(replace(one, since_days=one.since_days - newest) for one in worn)
    asked = _Asked(rules.send_worn_at_chance, rules.near_at_chance, rules.joined_within_days)
    return _day_worth(curves, asked) - newest - rules.lead_days


@lru_cache(maxsize=20_000)
def _day_worth(worn: tuple[WornAhead, ...], rules: _Asked) -> float:
    """The first day on which several worn items are worth a text once the lead time is over; infinite where never."""

    def is_worth(days: float) -> bool:
        return worn_are_worth_a_text([one.on(days, rules) for one in worn], rules)

    low = max(_soonest(worn, "curve", rules.send_worn_at_chance), _soonest(worn, "near", rules.near_at_chance))
    high = min(_alone(one, rules) for one in worn)
    return _first_day(is_worth, low, min(high, _LONGEST_DAYS))


def _soonest(worn: Sequence[WornAhead], which: Literal["curve", "near"], chance: float) -> float:
    days = [getattr(one, which).quantile(chance / len(worn)) - one.since_days for one in worn]
    return min(days, default=math.inf)


def _alone(one: WornAhead, rules: ShopRules | _Asked) -> float:
    due = one.curve.quantile(max(rules.send_worn_at_chance, COUNTS_FROM))
    return max(due, one.near.quantile(rules.near_at_chance)) - one.since_days


def _first_day(is_worth: Callable[[float], bool], low: float, high: float) -> float:
    if not is_worth(high):
        return math.inf
    if is_worth(low):
        return low
    while high - low > _CLOSE_DAYS:
        middle = (low + high) / 2
        low, high = (low, middle) if is_worth(middle) else (middle, high)
    return high
