"""Which moment within the allowed hours an invite leaves at: the usual one, or the hour at which an answer is likelier.

Nothing leaves outside `open_spans`, nothing waits for more than a day for its hour, and what must not wait (a recall, a
legal limit, everything that is no invite) leaves at the first moment that is allowed. One text in ten keeps the usual
hour and one in ten leaves at an hour drawn by lot: by the first it is seen whether the learned hours are better, by the
second other hours stay known.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from typing import Literal
from zoneinfo import ZoneInfo

from followup.core.planning.answer_hours import AnswerHabit, quick_chance
from followup.core.planning.hours import Where, next_moment, open_spans
from followup.core.shop import Shop

How = Literal["learned", "usual", "drawn", "few", "no_better", "full"]
# Shares of the texts: who keeps the usual hour, who leaves at any hour once there is enough, and until then.
SHARE_USUAL, SHARE_DRAWN, SHARE_DRAWN_AT_FIRST = 0.10, 0.10, 0.25
# So many answers of the shop are enough, and an hour is taken where quick answers are likelier by so much.
ENOUGH_ANSWERS = 60
BETTER_BY = 1.10
# A text must reach the phone within the hours: none leaves in their last minutes.
_BEFORE_CLOSE = timedelta(minutes=15)
_WAITS_AT_MOST = timedelta(hours=24)
_HOUR = timedelta(hours=1)
Slot = tuple[datetime, datetime]


@dataclass(frozen=True)
class HourPicture:
    """What the choice of an hour rests on: the habit, and how many invites are to leave in each hour already, by its
    beginning (aware UTC)."""

    habit: AnswerHabit
    load: Mapping[datetime, int] = field(default_factory=dict)


@dataclass(frozen=True)
class Leaving:
    """When it leaves (aware UTC) and how that hour was chosen; `how` None where hours are not chosen at all."""

    at: datetime
    how: How | None = None
    answers: int = 0
    own_answers: int = 0


def leaving(
    kind: str, now: datetime, shop: Shop, where: Where, hour: HourPicture | None,
    group: float = 0.0, in_hour: float = 0.0, in_minute: float = 0.0,
) -> Leaving | None:  # fmt: skip
    """When a text of that kind leaves; None where no hour fits all zones.

    `hour` None: at the first moment. Three numbers from 0 to below 1 are drawn for each text: its group, the hour that
    it leaves at where its group is drawn into any hour, and its place within an hour.
    """
    first = next_moment(kind, now, shop, where)
    if first is None or hour is None or kind != "invite" or not shop.rules.learns_hours:
        return None if first is None else Leaving(first)
    curve = hour.habit.curve
    has_enough = curve.answers >= ENOUGH_ANSWERS
    share_drawn = SHARE_DRAWN if has_enough else SHARE_DRAWN_AT_FIRST
    slots = [one for one in slots_of(kind, first, shop, where) if _is_free(one, hour, shop)]
    how: How = "full"
    if group < SHARE_USUAL:
        how = "usual"
    elif slots and group < SHARE_USUAL + share_drawn:
        slot = slots[int(in_hour * len(slots))]
        return Leaving(_within(slot, in_minute), "drawn", curve.answers, hour.habit.own_answers)
    elif not has_enough:
        how = "few"
    elif slots:
        best = max(slots, key=lambda one: (round(_chance(hour.habit, one, shop), 9), -one[0].timestamp()))
        if _chance(hour.habit, best, shop) >= BETTER_BY * _chance_at(hour.habit, first, shop):
            return Leaving(_within(best, in_minute), "learned", curve.answers, hour.habit.own_answers)
        how = "no_better"
    return Leaving(first, how, curve.answers, hour.habit.own_answers)


def slots_of(kind: str, first: datetime, shop: Shop, where: Where) -> list[Slot]:
    """The allowed time of the day from `first` on, cut at the full hours of the shop's wall clock (aware UTC)."""
    found: list[Slot] = []
    for opens, closes in open_spans(kind, first, shop, where, 2):
        at, end = max(opens, first), min(closes - _BEFORE_CLOSE, first + _WAITS_AT_MOST)
        while at < end:
            # Whole hours and those of zones that lie a quarter or half of one apart begin alike on the shop's clock.
            until = min(full_hour(at, shop.zone) + _HOUR, end)
            if until - at >= _BEFORE_CLOSE:
                found.append((at, until))
            at = until
    return found


def full_hour(at: datetime, zone: str) -> datetime:
    """The beginning of the wall clock's hour that `at` lies in (aware, in the zone of `at`)."""
    local = at.astimezone(ZoneInfo(zone))
    return at - timedelta(minutes=local.minute, seconds=local.second, microseconds=local.microsecond)


def says(one: Leaving) -> str:
    """Why it leaves at that hour, in words for the advisor; "" where hours are not chosen."""
    own = f", {one.own_answers} of them this customer's" if one.own_answers else ""
    return {
        "learned": f"at this hour, because a quick answer is likeliest then ({one.answers} answers{own})",
        "usual": "at the usual hour, as one text in ten does, to see whether other hours are better",
        "drawn": "at an hour drawn by lot, as some texts are, so that other hours are known too",
        "few": f"at the usual hour: of the shop's {ENOUGH_ANSWERS} answers that it takes {one.answers} are there",
        "no_better": f"at the usual hour: no other promises clearly more quick answers ({one.answers} answers{own})",
        "full": "at the usual hour: the better ones have as many invites as an hour may have",
    }.get(one.how or "", "")


def _is_free(slot: Slot, hour: HourPicture, shop: Shop) -> bool:
    return hour.load.get(full_hour(slot[0], shop.zone), 0) < shop.rules.invites_an_hour


def _within(slot: Slot, draw: float) -> datetime:
    """Evenly over the slot, so that an hour's texts do not leave together."""
    return (slot[0] + (slot[1] - slot[0]) * draw).replace(microsecond=0)


def _chance(habit: AnswerHabit, slot: Slot, shop: Shop) -> float:
    return _chance_at(habit, slot[0] + (slot[1] - slot[0]) / 2, shop)


def _chance_at(habit: AnswerHabit, at: datetime, shop: Shop) -> float:
    local = at.astimezone(ZoneInfo(shop.zone))
    return quick_chance(habit, local.hour + local.minute / 60)
