"""The grammar of weekends: `this weekend`, `the weekend after Easter`, `the weekend of the 20th`."""

from __future__ import annotations

from datetime import date, timedelta

from followup.core.replies import calendar_days as cal
from followup.core.replies import days as day_rules
from followup.core.replies.distances import WEEK
from followup.core.replies.mentions import Days, Text
from followup.core.replies.written_dates import day_of_month

Found = tuple[Days, int]
LAST_WORKDAY = 4


def weekend(text: Text, at: int) -> Found | None:
    """`this weekend`, `next weekend`, `the weekend`: its open days."""
    start = text.skip(at, "the", "on", "in", "any", "of")
    modifier = text.cat(start) if text.cat(start) in ("this", "next", "coming", "last") else ""
    at_weekend = start + 1 if modifier else start
    if text.cat(at_weekend) != "weekend":
        return None
    if modifier == "last":
        return _last_of_month(text, at_weekend + 1) or (Days(()), at_weekend + 1)
    end = at_weekend + 1
    if text.cat(end) in ("next", "coming_after") and text.word(end + 1) not in ("week", "semana"):
        modifier, end = ("next" if text.cat(end) == "next" else "coming"), end + 1
    monday = cal.monday_of(text.today) + (WEEK if modifier == "next" else WEEK * 0)
    if text.cat(end) in ("after", "before") and not modifier:
        beside = _weekend_beside(text, end)
        if beside:
            return beside
    some_day = day_rules.some_day_of_month(text, end)
    if some_day:
        return some_day
    if text.cat(end) == "of":
        named = single_day(text, end + 1)
        if named:
            return _weekend_of(named[0]), named[1]
    if text.setting.language == "es" and modifier == "next" and text.today.weekday() < 5:
        monday -= WEEK
    days = (monday + timedelta(5), monday + timedelta(6))
    return Days(tuple(day for day in days if day >= text.today), is_open_days=True), end


def _last_of_month(text: Text, at: int) -> Found | None:
    """`the last weekend in May`, `of the month`: its last Saturday, and the Sunday after it."""
    month_at = text.skip(at, "of", "in", "the")
    if month_at == at or not (text.cat(month_at) == "month" or text.name(month_at) == "month"):
        return None
    first = text.today.replace(day=1)
    if text.cat(month_at) == "month" and text.value(month_at) != first.month:
        first = cal.next_first_of_month(text.today, text.value(month_at))
    saturday = cal.nth_weekday_of_month(first, 5, -1)
    if saturday is None:
        return None
    return Days((saturday, saturday + timedelta(1)), is_open_days=True), month_at + 1


def _weekend_of(day: date) -> Days:
    """The weekend that holds a day; one told by a day in the middle of a week is asked about."""
    monday = cal.monday_of(day)
    is_told_wrong = day.weekday() < LAST_WORKDAY
    return Days((monday + timedelta(5), monday + timedelta(6)), is_open_days=True, disagrees=is_told_wrong)


def _weekend_beside(text: Text, at: int) -> Found | None:
    """`the weekend after Easter`, `the weekend before the 20th`, `the weekend after next`."""
    is_after = text.cat(at) == "after"
    if is_after and text.cat(at + 1) == "next":
        saturday, end = cal.monday_of(text.today) + timedelta(19), at + 2
        return Days((saturday, saturday + timedelta(1)), is_open_days=True), end
    start = text.skip(at + 1, "the")
    for rule in (*day_rules.RULES, day_of_month):
        found = rule(text, at + 1) or rule(text, start)
        if found and len(found[0].days) == 1:
            day = found[0].days[0]
            saturday = cal.next_weekday(day, 5) if is_after else day - timedelta((day.weekday() + 1) % 7 + 1)
            days = (saturday, saturday + timedelta(1))
            return Days(tuple(one for one in days if one >= text.today), is_open_days=True), found[1]
    return None


def single_day(text: Text, at: int) -> tuple[date, int] | None:
    """The day that stands here, and the place after it."""
    start = text.skip(at, "the")
    for rule in (*day_rules.RULES, day_of_month):
        found = rule(text, at) or rule(text, start)
        if found and found[0].days:
            return found[0].days[0], found[1]
    return None
