"""One set of rules on arrays: from which day each car is to be told, before anything happens and after a visit."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date, time, timedelta
from typing import Literal

import numpy as np
from numpy.typing import NDArray

from followup.core.forecast.window import DueCurve
from followup.core.planning.hours import Where, may_leave, next_moment
from followup.core.planning.what_if.cars import CarAhead, ItemAhead
from followup.core.planning.what_if.draws import DAYS, Array
from followup.core.planning.worth import WornAhead, days_until_worn_worth, days_until_worth
from followup.core.shop import Shop, ShopRules, closed_because, instant

Kind = Literal["ours", "reminder"]
REMIND_AFTER_DAYS = 182
NEVER_DAY = 30_000
_UNTRIED = -NEVER_DAY


@dataclass(frozen=True)
class Plan:
    """`told` and `legal` (cars, items): the day from which each item is a reason for a text as things stand, NEVER_DAY
    where none; `ratio`, `legal_ratio`: after a visit, the share of the days that are truly left after which it reaches
    the shop's chance. `may_leave` (days): whether invites leave that day; `open_on` (days): the next day, that one
    or later, on which the shop is open."""

    kind: Kind
    rules: ShopRules
    told: NDArray[np.int32]
    legal: NDArray[np.int32]
    ratio: Array
    legal_ratio: Array
    may_leave: NDArray[np.bool_]
    open_on: NDArray[np.int32]


def plan_for(shop: Shop, rules: ShopRules, cars: Sequence[CarAhead], today: date, kind: Kind = "ours") -> Plan:
    """These rules for these cars."""
    shop = replace(shop, rules=rules)
    most = max((len(one.items) for one in cars), default=0)
    told, legal = (np.full((len(cars), most), NEVER_DAY, dtype=np.int32) for _ in range(2))
    ratio, legal_ratio = (np.full((len(cars), most), np.inf, dtype=np.float32) for _ in range(2))
    for at, car in enumerate(cars):
        if kind == "reminder":
            told[at, :1] = max((_UNTRIED if car.last_visit is None else car.last_visit) + REMIND_AFTER_DAYS, 0)
            continue
        for number, (item, days) in enumerate(zip(car.items, _days_until(car.items, rules), strict=True)):
            if not item.may_be_told:
                continue
            told[at, number] = _first_day(days)
            ratio[at, number] = _ratio(item.curve, _alone(item, rules) + rules.lead_days)
            if item.legal is not None:
                days = days_until_worth(item.legal, rules)
                legal[at, number] = _first_day(days - item.since_days)
                legal_ratio[at, number] = _ratio(item.legal, days + rules.lead_days)
    dates = [today + timedelta(days=number) for number in range(DAYS + 60)]
    leaves = np.array([_may_leave(shop, day) for day in dates[:DAYS]])
    is_open = [closed_because(shop, day) is None for day in dates]
    following = np.zeros(len(dates), dtype=np.int32)
    later = len(dates) - 1
    for number in range(len(dates) - 1, -1, -1):
        later = number if is_open[number] else later
        following[number] = later
    return Plan(kind, rules, told, legal, ratio, legal_ratio, leaves, following)


def _days_until(items: Sequence[ItemAhead], rules: ShopRules) -> list[float]:
    """Days from today until each item, or what wears together, is worth a text."""
    worn = [WornAhead(one.curve, one.near, one.since_days) for one in items if one.near is not None and one.may_be_told]
    together = days_until_worn_worth(worn, rules, DAYS)
    return [together if one.near is not None else days_until_worth(one.curve, rules) - one.since_days for one in items]


def _alone(item: ItemAhead, rules: ShopRules) -> float:
    """Days from its curve until the item is worth a text with no other beside it, as it mostly is after a visit."""
    if item.near is None:
        return days_until_worth(item.curve, rules)
    return days_until_worn_worth([WornAhead(item.curve, item.near)], rules)


def _first_day(days: float) -> int:
    """The first whole day that is so many days from today or later."""
    return NEVER_DAY if days > DAYS else max(int(np.ceil(days - 1e-9)), 0)


def _ratio(curve: DueCurve, day: float) -> float:
    """How the day from which it is worth a text, the lead time later, lies to the even one of being due: kept by a
    window that a new reading has moved."""
    median = curve.quantile(0.5)
    return 1.0 if np.isinf(median) or median <= 0 else day / median


def _may_leave(shop: Shop, day: date) -> bool:
    """Whether invites leave at all on that day by the shop's own clock."""
    begin = instant(day, time(0), shop.zone)
    moment = next_moment("invite", begin, shop, Where((), None))
    return moment is not None and moment < begin + timedelta(days=1) and may_leave("invite", moment, shop, Where()).may
