"""By when a phone is to be looked at again though nothing is changed: before that instant it gets no text and no call.

Planning looks at a phone when something of it is changed, and at this instant. Each rule of `decide` that goes by the
calendar says here from when on it may come to something else; where a rule cannot say it, that is now. Too early an
instant costs a look, too late a one would cost a text, so everything here errs to the early side (a test plans a year
with and without it).
"""

from __future__ import annotations

import math
from bisect import bisect_left
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass
from datetime import date, datetime, timedelta

from followup.core.forecast.window import CURVE_CHANCES, DueCurve
from followup.core.planning.item_stops import item_stop
from followup.core.planning.pacing.ahead import Curves, ItemCurve
from followup.core.planning.picture import CarPicture, ItemAt
from followup.core.planning.seasonal import WASHER_IS_KNOWN_DAYS, before_winter, next_before_winter
from followup.core.planning.send_rule import (
    AFTER_VISIT_FROM,
    ODOMETER_AFTER_DAYS,
    ODOMETER_FROM_CHANCE,
    candidates,
)
from followup.core.planning.stops_ahead import ends_of
from followup.core.planning.walk_ins import UNSEEN_AGAIN_AFTER, is_free, seen_on, unseen_since
from followup.core.planning.worth import WornAhead, worn_are_worth_a_text
from followup.core.wall import start_of

_A_YEAR = timedelta(days=366)
# What wears together is looked ahead so far; then it is looked at again.
_WORN_AHEAD_DAYS = 128
# To find its day to so many costs as much as a look.
_CLOSE_ENOUGH_DAYS = 4
_FAR, _LONGEST_DAYS = date(9999, 1, 1), 100_000.0
# What is reached within so little of a day may be a matter of rounding.
_CLOSE_DAYS = 1e-6


@dataclass(frozen=True)
class Ahead:
    """What a car's picture does not hold of the days to come.

    `curves`: of what planning reads of it today. `reads_more_on`: the first day on which it reads more of it, None
    where it never does. `odometer_on`: days from which a reading of the odometer would tell more.
    """

    curves: Curves
    reads_more_on: date | None = None
    odometer_on: tuple[date, ...] = ()


def next_look(pictures: Iterable[CarPicture], ahead: Mapping[str, Ahead], now: datetime) -> datetime | None:
    """The first instant (aware UTC) at which `decide` may come to a text or a new call for one of a phone's cars;
    None: never while nothing is changed.

    It is asked where it comes to no text now, and the calls that it comes to are kept. `ahead` is by the car's code.
    """
    found: list[datetime] = []
    for picture in pictures:
        for candidate in candidates(picture, now):
            found += ends_of(picture, candidate, now)
        today = picture.day(now)
        days = [day for day in _days(picture, ahead[picture.vehicle], today, now) if today < day < _FAR]
        found += [start_of(day, picture.shop.zone) for day in days]
        found += [at for at in _instants(picture, now) if at > now]
    return min(found, default=None)


def _instants(picture: CarPicture, now: datetime) -> Iterator[datetime]:
    visit = picture.last_closed()
    if visit is not None and visit.closed_at is not None and picture.shop.rules.asks_after_visit:
        yield visit.closed_at + AFTER_VISIT_FROM
    for one in picture.invites:
        if one.reason == "long_unseen":
            yield one.at + UNSEEN_AGAIN_AFTER


def _days(picture: CarPicture, ahead: Ahead, today: date, now: datetime) -> Iterator[date]:
    """Days from which on there may be a reason that there is not today; those that are past mean nothing."""
    if ahead.reads_more_on is not None:
        # The day may have come since its windows were read.
        yield max(ahead.reads_more_on, today + timedelta(days=1))
    yield from _due_days(picture, ahead.curves, today, now)
    yield from _rest_days(picture)
    yield from _odometer_days(picture, ahead, today)
    yield from _winter_days(picture, ahead.curves, today)
    since, last = unseen_since(picture.shop, today), seen_on(picture)
    if since is not None and last is not None and picture.free_top_offs:
        yield last + (today - since)
    yield from (picture.day(one.starts_at) for one in picture.bookings if one.starts_at and one.state == "missed")
    if picture.shop.rules.without_invites_share:
        # It is drawn anew each year.
        yield date(today.year + 1, 1, 1)


def reached_after(curve: DueCurve, chance: float) -> float:
    """The least number of days after which `curve.chance` reaches that chance; infinite where it never does.

    Not `quantile`, which reads between the points as they were kept: a chance begins at what there was already.
    """
    if chance <= curve.already:
        return 0.0
    right = bisect_left(CURVE_CHANCES, chance)
    if right == len(CURVE_CHANCES):
        return curve.days[-1]
    left_day = curve.days[right - 1] if right else 0.0
    before = max(CURVE_CHANCES[right - 1], curve.already) if right else curve.already
    if math.isinf(curve.days[right]):
        return math.inf
    share = (chance - before) / (CURVE_CHANCES[right] - before)
    return left_day + share * max(curve.days[right] - left_day, 0.0)


def _day(today: date, days: float) -> date:
    """So many days ahead, rounded down, but not to today, on which it is not reached yet; past days stay past."""
    if days > _LONGEST_DAYS:
        return _FAR
    whole = math.floor(days)
    return today + timedelta(days=max(whole, 1) if days > -_CLOSE_DAYS else whole)


def _due_days(picture: CarPicture, curves: Curves, today: date, now: datetime) -> Iterator[date]:
    """When work is worth a text, one item after the other, what wears together, and by its legal limit."""
    rules = picture.shop.rules
    mine = [(at, curves[at]) for at in dict.fromkeys(one.at for one in picture.due) if at in curves]
    for _, one in mine:
        if one.near is None:
            yield _reached_on(one, rules.send_at_chance, rules.lead_days, today)
        if one.legal is not None:
            legal = ItemCurve(one.legal, one.since_days)
            yield _reached_on(legal, rules.send_at_chance, rules.lead_days, today)
    # Free ones and those that rest are in no due work; when a rest is over, it is looked at again.
    resting = {one.at for one in picture.due if item_stop(picture, one, now)}
    free = {one.at for one in picture.due if is_free(picture, one, now)}
    worn = {at: one for at, one in mine if one.near is not None and at not in resting}
    for together in (worn.keys() - free, worn.keys() & free):
        yield from _worn_days(picture, [worn[at] for at in sorted(together)], today)


def _reached_on(one: ItemCurve, chance: float, within_days: float, today: date) -> date:
    return _day(today, reached_after(one.curve, chance) - one.since_days - within_days)


def _worn_days(picture: CarPicture, mine: list[ItemCurve], today: date) -> Iterator[date]:
    rules = picture.shop.rules
    worn = [WornAhead(one.curve, one.near, one.since_days) for one in mine if one.near is not None]
    if not worn:
        return

    def is_worth(days: int) -> bool:
        return worn_are_worth_a_text([one.on(rules.lead_days + days, rules) for one in worn], rules)

    if is_worth(0):
        # Which of them are the reason may change each day, and with it whether it was told before: but for those that
        # were measured before the last visit, or on the same day.
        if len({_known_on(picture, one.at) for one in picture.due if one.chance_near is not None}) > 1:
            yield today + timedelta(days=1)
        return
    # None of them is due before one has its share of the chance.
    first = max(
        min(reached_after(one.curve, rules.send_worn_at_chance / len(worn)) - one.since_days for one in worn),
        min(reached_after(one.near, rules.near_at_chance / len(worn)) - one.since_days for one in worn),
    )
    low, high = 0, _WORN_AHEAD_DAYS
    if first - rules.lead_days > high or not is_worth(high):
        yield _day(today, max(first - rules.lead_days, high))
        return
    while high - low > _CLOSE_ENOUGH_DAYS:
        middle = (low + high) // 2
        low, high = (low, middle) if is_worth(middle) else (middle, high)
    yield today + timedelta(days=low + 1)


def _known_on(picture: CarPicture, at: ItemAt) -> date | None:
    """What stands in the reason of an item: the day of its last reading, or that of the last visit if that is later."""
    visit = picture.last_closed()
    days = [one.measured_on for one in picture.due if one.at == at and one.measured_on]
    days += [picture.day(visit.closed_at)] if visit and visit.closed_at else []
    return max(days, default=None)


def _rest_days(picture: CarPicture) -> Iterator[date]:
    """When what rests an item is over, or the customer wanted to hear of it again."""
    rules = picture.shop.rules
    no, declined = timedelta(days=rules.rest_after_no_days), timedelta(days=rules.rest_after_declined_days)
    for rest in picture.rests:
        yield rest.until or rest.from_on + (declined if rest.because == "later" else no)
    for advised in picture.recommendations:
        yield advised.on + declined
        if advised.until:
            yield advised.until
    # Two top-offs within a year are no free service.
    yield from (one.on + _A_YEAR for one in picture.work if one.did == "topped_off")


def _odometer_days(picture: CarPicture, ahead: Ahead, today: date) -> Iterator[date]:
    """When the odometer may be asked for: of a car seen once, by what it would tell and how near work is."""
    visit, rules = picture.last_closed(), picture.shop.rules
    if visit is None or visit.closed_at is None or len(picture.visits) != 1:
        return
    yield picture.day(visit.closed_at) + timedelta(days=ODOMETER_AFTER_DAYS)
    yield from ahead.odometer_on
    for one in ahead.curves.values():
        yield _reached_on(one, ODOMETER_FROM_CHANCE, rules.lead_days, today)


def _winter_days(picture: CarPicture, curves: Curves, today: date) -> Iterator[date]:
    """When it is written to this phone before winter, this year or next; when a battery comes near, and when washer
    fluid was not seen for long."""
    shop, rules = picture.shop, picture.shop.rules
    if not rules.writes_before_winter:
        return
    coming, present = next_before_winter(shop, today), before_winter(shop, today)
    if coming is not None:
        yield coming.opens_for(picture.phone.id)
    if present is None:
        return
    yield present.opens_for(picture.phone.id)
    within = rules.lead_days + rules.joined_within_days
    for (item, _), one in curves.items():
        if item == "battery":
            yield _reached_on(one, rules.join_at_chance, within, today)
    known = [one.on for one in picture.work if one.item == "washer_fluid"]
    known += [one.measured_on for one in picture.due if one.item == "washer_fluid" and one.measured_on]
    yield from (day + timedelta(days=WASHER_IS_KNOWN_DAYS) for day in known)
