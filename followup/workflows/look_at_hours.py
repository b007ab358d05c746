"""Look at when this shop's customers answer, and whether texts at a learned hour were answered sooner. Reads only."""

from __future__ import annotations

from collections import defaultdict
from dataclasses import dataclass
from datetime import datetime, time
from statistics import median

from followup.core.planning.answer_hours import HOURS, QUICK_HOURS, AnswerHabit, Heard, learn_curve, quick_chance
from followup.core.planning.best_hour import ENOUGH_ANSWERS
from followup.core.planning.hours import LEGAL_FROM, LEGAL_TO
from followup.core.planning.wording_trial import difference, interval
from followup.core.shop import Shop, wall_time
from followup.storage import answer_hours, shops
from followup.storage.store import Store

# What each group is called; texts that kept the usual hour for another reason are not held against the others.
GROUPS = {"learned": "learned hour", "usual": "usual hour, by lot", "drawn": "any hour, by lot"}


@dataclass(frozen=True)
class HourOfDay:
    """An hour on the shop's wall clock: how many answers came in it, and of 100 texts that leave in its middle how many
    are answered within `QUICK_HOURS`; `is_open` where invites may leave in it on some weekday."""

    hour: int
    answers: int
    quick: float
    is_open: bool


@dataclass(frozen=True)
class Group:
    """The texts whose hour was chosen in one way: how many, answered within `QUICK_HOURS` (with a 95 % interval, 0-1),
    and the median hours to an answer of those answered within a day."""

    words: str
    texts: int
    quick: int
    low: float
    high: float
    median_hours: float | None


@dataclass(frozen=True)
class HoursSeen:
    """Everything of the section. `gain` are the bounds (-1 to 1) of the learned hours' share of quick answers minus the
    usual hour's; None while one of both has no texts."""

    is_on: bool
    texts: int
    answers: int
    hours: tuple[HourOfDay, ...]
    groups: tuple[Group, ...]
    gain: tuple[float, float] | None
    needed: int = ENOUGH_ANSWERS
    quick_hours: float = QUICK_HOURS

    @property
    def best(self) -> HourOfDay | None:
        """The open hour that promises most; None where too little was heard."""
        if self.answers < self.needed:
            return None
        return max((one for one in self.hours if one.is_open), key=lambda one: one.quick, default=None)


def look_at_hours(store: Store, shop_id: int, now: datetime) -> HoursSeen:
    """What was learned by now."""
    with store.read() as connection:
        shop = shops.load_shop(connection, shop_id)
        found = answer_hours.heard_of_invites(connection, shop_id, now)
    curve = learn_curve((one for _, one in found), shop.zone)
    habit = AnswerHabit(curve)
    shown = range(LEGAL_FROM.hour, LEGAL_TO.hour)
    by_group: dict[str, list[Heard]] = defaultdict(list)
    for row, one in found:
        # Only texts of which it is known by now whether they were answered quickly.
        if (now - one.left_at).total_seconds() >= QUICK_HOURS * 3600:
            by_group[str(row["facts"].get("hour", ""))].append(one)
    groups = {code: _group(words, by_group[code]) for code, words in GROUPS.items() if by_group[code]}
    both = groups.get("usual"), groups.get("learned")
    return HoursSeen(
        is_on=shop.rules.learns_hours,
        texts=curve.texts,
        answers=curve.answers,
        hours=tuple(
            HourOfDay(hour, curve.answered[hour], 100 * quick_chance(habit, hour + 0.5), _is_open(shop, hour))
            for hour in range(HOURS)
            if hour in shown
        ),
        groups=tuple(groups.values()),
        gain=difference((both[0].quick, both[0].texts), (both[1].quick, both[1].texts))
        if both[0] and both[1]
        else None,
    )


def _is_open(shop: Shop, hour: int) -> bool:
    """Whether invites may leave in the whole of that hour on some weekday, by the shop's own rule."""
    return any(
        wall_time(opens) <= time(hour) and wall_time(closes) >= time(hour + 1)
        for opens, closes in shop.rules.invite_hours.values()
    )


def _group(words: str, heard: list[Heard]) -> Group:
    took = [one.took_hours for one in heard if one.took_hours is not None]
    quick = sum(hours <= QUICK_HOURS for hours in took)
    low, high = interval(quick, len(heard))
    return Group(words, len(heard), quick, low, high, median(took) if took else None)
