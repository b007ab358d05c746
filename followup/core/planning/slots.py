"""Free check-in times: a time is offered only if all that it needs is free on that day.

What is used up: the minutes of an advisor at check-in, the labor hours of a day by skill, waiting places, loaners,
shuttle seats. Jobs have hours by skill; the shares and numbers are the shop's rules.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field, replace
from datetime import date, datetime, timedelta
from zoneinfo import ZoneInfo

from followup.core.item import Item
from followup.core.shop import Shop, open_span, working_days_later

HoursBySkill = Mapping[str, float]
Span = tuple[datetime, datetime]
NOON_HOUR = 12


@dataclass(frozen=True)
class Taken:
    """A booking, or an offer that is held: what it uses of the shop. `held_until` None: it is no mere offer.

    `starts_at`, `held_until` are aware UTC; `needs` are those of the reply contract.
    """

    starts_at: datetime
    hours: HoursBySkill = field(default_factory=dict)
    needs: frozenset[str] = frozenset()
    held_until: datetime | None = None

    def ends_at(self) -> datetime:
        """When the car would be ready if all its work were done in a row."""
        return self.starts_at + timedelta(hours=sum(self.hours.values()))


@dataclass(frozen=True)
class Parts:
    """What is known of the parts: a state of `booking.PARTS`, with days of delivery or the day they are due."""

    state: str = "unknown"
    order_days: int | None = None
    due_on: date | None = None


@dataclass(frozen=True)
class Wanted:
    """What a booking asks for: labor hours by skill, needs, parts, and the windows that suit (() = any; aware UTC)."""

    hours: HoursBySkill
    needs: frozenset[str] = frozenset()
    parts: Parts = Parts("not_needed")
    windows: tuple[Span, ...] = ()


@dataclass(frozen=True)
class MissedTime:
    """A time, or a stretch from `start` to `end` (aware UTC), that a customer named and in which nothing is free;
    `because` says what is missing at a time."""

    start: datetime
    end: datetime
    because: str | None


def hours_of(items: Iterable[Item]) -> dict[str, float]:
    """Labor hours by skill of the jobs of these items; the same job on the same axle or car counts once."""
    hours: dict[str, float] = {}
    seen = set()
    for item in items:
        if item.job.work not in seen:
            seen.add(item.job.work)
            hours[item.job.skill] = hours.get(item.job.skill, 0.0) + item.job.hours
    return hours


def free_times(
    shop: Shop, taken: Iterable[Taken], wanted: Wanted, now: datetime, until: datetime, most: int = 100
) -> list[datetime]:
    """The check-in times (aware UTC) from `now` to `until` at which all that is wanted is free, earliest first.

    Parts that are to be ordered without a known day give none: a person asks first.
    """
    first = _parts_from(shop, wanted.parts, now)
    if first is None:
        return []
    counted = [one for one in taken if one.held_until is None or one.held_until > now]
    found: list[datetime] = []
    for day in _days(shop, now, until):
        if day < first:
            continue
        for start in _free_on(shop, day, counted, wanted):
            if now < start <= until and _suits(start, wanted):
                found.append(start)
                if len(found) >= most:
                    return found
    return found


def why_not_free(shop: Shop, taken: Iterable[Taken], wanted: Wanted, start: datetime, now: datetime) -> str | None:
    """What is missing for a booking at that very instant, in words; None where it is free."""
    counted = [one for one in taken if one.held_until is None or one.held_until > now]
    day = start.astimezone(ZoneInfo(shop.zone)).date()
    span = open_span(shop, day)
    first = _parts_from(shop, wanted.parts, now)
    if start <= now:
        return "that time is past"
    if first is None or day < first:
        return "the parts are not there by then"
    if span is None or not span[0] <= start < span[1]:
        return "the shop is closed then"
    return _full(shop, day, span, start, counted, wanted)


def missed_times(shop: Shop, used: list[Taken], wanted: Wanted, now: datetime) -> Iterator[MissedTime]:
    """Each time that was named and is not free: an advisor who is asked for it can say why."""
    for opens, closes in wanted.windows:
        if free_times(shop, used, replace(wanted, windows=((opens, closes),)), now, closes, most=1):
            continue
        is_one_time = closes - opens <= timedelta(minutes=shop.rules.check_in_minutes)
        yield MissedTime(opens, closes, why_not_free(shop, used, wanted, opens, now) if is_one_time else None)


def labor_left(shop: Shop, day: date, taken: Iterable[Taken]) -> dict[str, float]:
    """Planned labor hours of that day that are still free, by skill."""
    rules, zone = shop.rules, ZoneInfo(shop.zone)
    left = {skill: hours * rules.labor_share for skill, hours in rules.labor_hours.items()}
    for one in taken:
        if one.starts_at.astimezone(zone).date() == day:
            for skill, hours in one.hours.items():
                left[skill] = left.get(skill, 0.0) - hours
    return left


def _parts_from(shop: Shop, parts: Parts, now: datetime) -> date | None:
    """The first day that may be offered: parts plus one working day; None where nobody knows."""
    today = now.astimezone(ZoneInfo(shop.zone)).date()
    if parts.state in ("not_needed", "in_stock"):
        return today
    if parts.state == "ordered" and parts.due_on:
        return working_days_later(shop, max(parts.due_on, today), 1)
    if parts.state == "order" and parts.order_days is not None:
        return working_days_later(shop, today + timedelta(days=parts.order_days), 1)
    return None


def _days(shop: Shop, now: datetime, until: datetime) -> Iterator[date]:
    zone = ZoneInfo(shop.zone)
    day, last = now.astimezone(zone).date(), until.astimezone(zone).date()
    while day <= last:
        yield day
        day += timedelta(days=1)


def _free_on(shop: Shop, day: date, taken: list[Taken], wanted: Wanted) -> Iterator[datetime]:
    span = open_span(shop, day)
    if span is None:
        return
    start = span[0]
    while start < span[1]:
        if _full(shop, day, span, start, taken, wanted) is None:
            yield start
        start += timedelta(minutes=shop.rules.check_in_minutes)


def _suits(start: datetime, wanted: Wanted) -> bool:
    return not wanted.windows or any(opens <= start < closes for opens, closes in wanted.windows)


def _full(shop: Shop, day: date, span: Span, start: datetime, taken: list[Taken], wanted: Wanted) -> str | None:
    """The first thing that is used up at that time, in words."""
    rules, zone = shop.rules, ZoneInfo(shop.zone)
    that_day = [one for one in taken if one.starts_at.astimezone(zone).date() == day]
    minutes = timedelta(minutes=rules.check_in_minutes)
    if start + minutes > span[1]:
        return "too near to closing"
    at_once = [one for one in that_day if abs(one.starts_at - start) < minutes and "early_drop" not in one.needs]
    if "early_drop" not in wanted.needs and len(at_once) >= rules.advisors_at_check_in:
        return "no advisor is free to check the car in"
    left = labor_left(shop, day, that_day)
    for skill, hours in wanted.hours.items():
        if hours > left.get(skill, 0.0) + 1e-9:
            return f"not enough labor hours ({skill}) on that day"
    return _needs_full(shop, span, start, that_day, wanted)


def _needs_full(shop: Shop, span: Span, start: datetime, that_day: list[Taken], wanted: Wanted) -> str | None:
    rules, zone = shop.rules, ZoneInfo(shop.zone)
    if "wait" in wanted.needs:
        ends = start + timedelta(hours=sum(wanted.hours.values()))
        if ends > span[1]:
            return "the work would not be done before closing"
        waiting = [one for one in that_day if "wait" in one.needs]
        if _most_at_once([one for one in waiting if one.starts_at < ends and start < one.ends_at()], start) >= (
            rules.waiting_places
        ):
            return "no waiting place is free"
    if "loaner" in wanted.needs and sum("loaner" in one.needs for one in that_day) >= rules.loaners:
        return "no loaner is free"
    if "ride" in wanted.needs:
        is_morning = start.astimezone(zone).hour < NOON_HOUR
        riders = [one for one in that_day if "ride" in one.needs]
        same_half = [one for one in riders if (one.starts_at.astimezone(zone).hour < NOON_HOUR) == is_morning]
        if len(same_half) >= rules.shuttle_seats:
            return "no shuttle seat is free"
    return None


def _most_at_once(waiting: list[Taken], start: datetime) -> int:
    """The most customers who wait at one instant from `start` on; it changes only where one of them begins."""
    instants = [start, *(one.starts_at for one in waiting if one.starts_at > start)]
    return max(sum(one.starts_at <= at < one.ends_at() for one in waiting) for at in instants)
