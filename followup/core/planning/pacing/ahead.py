"""Which invites of a phone come up in the weeks that are paced, found by asking the planner's own decision ahead.

Each car is decided as if its week had come and nothing else had happened until then; the first week in which the
planner would write about work that is coming due is its first week.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from datetime import datetime, time

from followup.core.forecast.window import DueCurve
from followup.core.items import catalogue_of
from followup.core.planning.decide import decide
from followup.core.planning.joining import is_at_legal, triggers
from followup.core.planning.paced import PACED_REASON
from followup.core.planning.pacing.message import Message, costs_of
from followup.core.planning.pacing.room import Room
from followup.core.planning.pacing.weeks import POSTPONED, WEEKS
from followup.core.planning.picture import CarPicture, ItemAt, PlannedText
from followup.core.planning.slots import hours_of
from followup.core.planning.stops import stops_against
from followup.core.planning.worth import WornAhead, days_until_worn_worth, days_until_worth
from followup.core.shop import ShopRules, instant

# What stops an invite now and is over by itself; anything else waits for somebody, and such a car is not looked ahead.
_PASSES = frozenset({"just_closed", "paused", "hours"})


@dataclass(frozen=True)
class ItemCurve:
    """The due curves of one item, made so many days ago; `legal` where its limit is the law's, `near` where a
    visit does its work when it is near."""

    curve: DueCurve
    since_days: int
    legal: DueCurve | None = None
    near: DueCurve | None = None


Curves = Mapping[ItemAt, ItemCurve]
PicturesAt = Callable[[datetime], Sequence[CarPicture]]


def messages_of_phone(
    pictures_at: PicturesAt, curves: Mapping[str, Curves], room: Room, now: datetime
) -> Iterator[Message]:
    """The invites of one phone in their order, spaced as one invite a phone in so many days asks for.

    `curves` are those of each car by its code; pictures must not hold what was paced before.
    """
    present = {one.vehicle: one for one in pictures_at(now)}
    found: list[tuple[int, CarPicture, PlannedText]] = []
    for vehicle, picture in present.items():
        if all(stop.rule in _PASSES for stop in stops_against(picture, PACED_REASON, now)):
            found += _first_of(vehicle, picture, pictures_at, curves.get(vehicle, {}), room, now)
    earliest = 0
    for week, picture, text in sorted(
        found, key=lambda one: (one[0], not one[2].is_legal, -one[2].chance, one[1].vehicle)
    ):
        first = max(week, earliest)
        earliest = first + -(-picture.shop.rules.invite_every_days // 7)
        if first < WEEKS:
            yield message_of(picture, text, curves[picture.vehicle], room, first)


def _first_of(
    vehicle: str, picture: CarPicture, pictures_at: PicturesAt, curves: Curves, room: Room, now: datetime
) -> Iterator[tuple[int, CarPicture, PlannedText]]:
    for week in range(_first_week(picture, curves, room, now), WEEKS):
        moment = now if week == 0 else instant(room.begin_of(week), time(12), picture.shop.zone)
        then = picture if week == 0 else next(one for one in pictures_at(moment) if one.vehicle == vehicle)
        decision = decide(then, moment)
        if decision.text and decision.text.reason == PACED_REASON:
            yield week, then, decision.text
            return
        if any(one.rule == "tries" for one in decision.why_not):
            return


def _first_week(picture: CarPicture, curves: Curves, room: Room, now: datetime) -> int:
    """The first week in which anything can trigger a text: a chance that reaches the shop's, or a day that the
    customer named."""
    rules, today = picture.shop.rules, picture.day(now)
    days = _days_until(curves.values(), rules, 7.0 * WEEKS)
    named = [one.until for one in picture.rests] + [one.until for one in picture.recommendations]
    days += [float((day - today).days) for day in named if day and day > today]
    if triggers(picture.due, rules):
        return 0
    first = min(days, default=float("inf"))
    if first == float("inf"):
        return POSTPONED
    since_monday = (room.today - room.begins_on).days
    return max(0, int((first + since_monday) // 7))


def _days_until(items: Iterable[ItemCurve], rules: ShopRules, within_days: float) -> list[float]:
    """Days from today until each of a car's items, or what wears together, or a legal limit is worth a text; what is
    not within so many days may be infinite."""
    items = list(items)
    alone = [one for one in items if one.near is None]
    worn = [WornAhead(one.curve, one.near, one.since_days) for one in items if one.near is not None]
    days = [days_until_worth(one.curve, rules) - one.since_days for one in alone]
    days += [days_until_worth(one.legal, rules) - one.since_days for one in items if one.legal is not None]
    return [max(one, 0.0) for one in (*days, days_until_worn_worth(worn, rules, within_days))]


def may_come_up(curves: Iterable[ItemCurve], rules: ShopRules, within_days: float) -> bool:
    """Whether something of a car, by all of its `curves`, is worth a text within so many days, whatever stops it."""
    return any(days <= within_days for days in _days_until(curves, rules, within_days))


def message_of(picture: CarPicture, text: PlannedText, curves: Curves, room: Room, first_week: int) -> Message:
    """That invite as something to be placed."""
    rules, catalogue = picture.shop.rules, catalogue_of(picture.shop)
    hours = hours_of(catalogue[item] for item, _ in text.items if item in catalogue)
    chance = room.brought.chance(text.try_number)
    jobs = _jobs(picture, text, curves)
    costs = costs_of(jobs, chance, first_week, room, rules.send_at_chance)
    return Message((text.phone_id, text.vehicle, text.reason), hours, chance, costs, first_week, text.is_legal)


def _jobs(picture: CarPicture, text: PlannedText, curves: Curves) -> list[tuple[DueCurve, int]]:
    """The curve of each job that triggers the text, that of its place which is due first: what rides along does not
    press. Where nothing but a wish triggers it, all that it names."""
    rules, catalogue = picture.shop.rules, catalogue_of(picture.shop)
    named = [one for one in picture.due if one.at in text.items and one.at in curves]
    of_job: dict[str, tuple[float, DueCurve, int]] = {}
    reasons = triggers(picture.due, rules)
    for due in [one for one in named if one in reasons] or named:
        mine = curves[due.at]
        curve = mine.legal if mine.legal is not None and is_at_legal(due, rules) else mine.curve
        work = catalogue[due.item].job.work if due.item in catalogue else due.item
        if work not in of_job or due.chance_by_lead > of_job[work][0]:
            of_job[work] = due.chance_by_lead, curve, mine.since_days
    return [(curve, since) for _, curve, since in of_job.values()]
