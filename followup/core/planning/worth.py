"""When an item, or the tires and brakes of a car together, are worth a text: one rule for the planner, for pacing and
for trying rules out.

q = cost of early / (cost of early + cost of late). An item whose work a visit does as soon as it lies near its limit
(`Item.near`: tires, brake pads) is not looked at alone: all of a car's are done at one visit, so that counts are when
the first of them is due, and whether the visit will find any of them near.
"""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import Literal

from followup.core.forecast.first_due import SHARED_BY_MILES, chance_of_first
from followup.core.forecast.window import DueCurve
from followup.core.shop import ShopRules

# What is hardly near its limit at the visit tells nothing of it, and is not read from the store for planning.
COUNTS_FROM = 0.10
# A worn item is a reason for the text where it is at least half as likely due as the likeliest.
_LIKELY = 0.5
_CLOSE_DAYS = 0.25
_LONGEST_DAYS = 20_000.0


@dataclass(frozen=True)
class WornAhead:
    """The curves of one tire or pad, made so many days ago."""

    curve: DueCurve
    near: DueCurve
    since_days: float = 0.0

    def chances(self, days: float) -> tuple[float, float]:
        """The chances of being due, and near, within so many days from today."""
        return self.curve.chance(self.since_days + days), self.near.chance(self.since_days + days)


def is_worth_a_text(chance: float, rules: ShopRules) -> bool:
    """Of what is not looked at together: by its chance of being due once the lead time is over."""
    return chance >= rules.send_at_chance


def worn_chances(chances: Sequence[tuple[float, float]]) -> tuple[float, float]:
    """The chance that the first of a car's tires and pads is due, and that any is near its limit, of both chances of
    each."""
    counted = [one for one in chances if one[1] >= COUNTS_FROM]
    shared = [SHARED_BY_MILES] * len(counted)
    first, near = (chance_of_first([one[which] for one in counted], shared) for which in (0, 1))
    return first, near


def worn_are_worth_a_text(chances: Sequence[tuple[float, float]], rules: ShopRules) -> bool:
    """By the chances of each tire and pad of a car, (due, near) once the lead time is over; False without any."""
    # No more than all of them together: most cars are far from it.
    if sum(due for due, _ in chances) < rules.send_worn_at_chance:
        return False
    first, near = worn_chances(chances)
    return first >= rules.send_worn_at_chance and near >= rules.near_at_chance


def are_reasons(chances: Sequence[tuple[float, float]]) -> list[bool]:
    """Which of a car's tires and pads that are worth a text together are the reason for it; the others may join."""
    most = max((due for due, near in chances if near >= COUNTS_FROM), default=0.0)
    return [near >= COUNTS_FROM and due >= _LIKELY * most for due, near in chances]


def days_until_worth(curve: DueCurve, rules: ShopRules) -> float:
    """Days from the curve's own day until what is not looked at together is worth a text; infinite where never."""
    return curve.quantile(rules.send_at_chance) - rules.lead_days


def days_until_worn_worth(worn: Sequence[WornAhead], rules: ShopRules, within_days: float = math.inf) -> float:
    """Days from today until a car's tires and pads are worth a text; below 0 where they were before.

    Infinite where never; where it is not `within_days` it may be infinite too.
    """
    if len(worn) == 1:
        return _alone(worn[0], rules) - rules.lead_days

    def chances(days: float) -> list[tuple[float, float]]:
        return [one.chances(days) for one in worn]

    # None sooner than where one has its share of either chance, none later than where one alone has all of both.
    low = max(_soonest(worn, "curve", rules.send_worn_at_chance), _soonest(worn, "near", rules.near_at_chance))
    if math.isinf(low) or low - rules.lead_days > within_days:
        return math.inf
    high = min(_alone(one, rules) for one in worn)
    found = _first_day(lambda days: worn_are_worth_a_text(chances(days), rules), low, min(high, _LONGEST_DAYS))
    return found - rules.lead_days


def _soonest(worn: Sequence[WornAhead], which: Literal["curve", "near"], chance: float) -> float:
    days = [getattr(one, which).quantile(chance / len(worn)) - one.since_days for one in worn]
    return min(days, default=math.inf)


def _alone(one: WornAhead, rules: ShopRules) -> float:
    near = one.near.quantile(max(rules.near_at_chance, COUNTS_FROM))
    return max(one.curve.quantile(rules.send_worn_at_chance), near) - one.since_days


def _first_day(is_worth: Callable[[float], bool], low: float, high: float) -> float:
    if not is_worth(high):
        return math.inf
    if is_worth(low):
        return low
    while high - low > _CLOSE_DAYS:
        middle = (low + high) / 2
        low, high = (low, middle) if is_worth(middle) else (middle, high)
    return high
