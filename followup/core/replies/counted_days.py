"""The grammar of counted weekdays: `the first Tuesday of October`, `3 Fridays from now`, `Friday after next`."""

from __future__ import annotations

from datetime import timedelta

from followup.core.replies import calendar_days as cal
from followup.core.replies.mentions import Days, Text

Found = tuple[Days, int]
_SUITS = ("works", "is", "would", "please", "then", "sounds", "suits")


def counted_weekday(text: Text, at: int) -> Found | None:
    """A weekday told by its number in a month, or by how many of them lie ahead."""
    start = text.skip(at, "the", "on", "in")
    if text.cat(start + 1) != "weekday":
        return None
    if text.cat(start) == "num" and text.cat(start + 2) == "ahead":
        count = text.value(start)
        if not 1 <= count <= 20:
            return None
        first = cal.next_weekday(text.today, text.value(start + 1))
        return Days((first + timedelta(7 * (count - 1)),)), start + 3
    if text.cat(start) in ("ordinal", "last"):
        return _in_month(text, start)
    return None


def _of_the_coming_months(text: Text, at: int) -> Found | None:
    """`the third Tuesday`: of this month if it is still ahead, else of the next one."""
    follows = text.cat(at + 2) in ("", "mark", "at", "part", "ampm", "in") or text.word(at + 2) in _SUITS
    is_led = text.cat(at - 1) in ("the", "on") and follows
    if text.cat(at) != "ordinal" or not 2 <= text.value(at) <= 4 or not is_led:
        return None
    first = text.today.replace(day=1)
    both = (cal.nth_weekday_of_month(cal.add_months(first, n), text.value(at + 1), text.value(at)) for n in (0, 1))
    return next(((Days((day,)), at + 2) for day in both if day and day >= text.today), None)


def _in_month(text: Text, at: int) -> Found | None:
    month_at = text.skip(at + 2, "of", "in", "the")
    if month_at == at + 2:
        return _of_the_coming_months(text, at)
    weekday, number = text.value(at + 1), text.value(at)
    if text.cat(month_at) == "month":
        first, end = cal.next_first_of_month(text.today, text.value(month_at)), month_at + 1
        if text.value(month_at) == text.today.month:
            first = text.today.replace(day=1)
    elif text.cat(month_at) == "unit" and text.name(month_at) == "month" and month_at - at <= 4:
        first, end = text.today.replace(day=1), month_at + 1
    elif text.cat(month_at) in ("next", "this") and text.name(month_at + 1) == "month":
        months = 1 if text.cat(month_at) == "next" else 0
        first, end = cal.add_months(text.today.replace(day=1), months), month_at + 2
    else:
        return None
    if text.cat(at) == "last":
        last = cal.last_day_of_month(first)
        day = last - timedelta((last.weekday() - weekday) % 7)
    else:
        day = first + timedelta((weekday - first.weekday()) % 7 + 7 * (number - 1))
    return (Days((day,)), end) if day >= text.today and day.month == first.month else None
