"""The grammar of counted weekdays: `the first Tuesday of October`, `3 Fridays from now`, `Friday after next`."""

from __future__ import annotations

from datetime import timedelta

from followup.core.replies import calendar_days as cal
from followup.core.replies.mentions import Days, Text

Found = tuple[Days, int]


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


def _in_month(text: Text, at: int) -> Found | None:
    month_at = text.skip(at + 2, "of", "in", "the")
    if month_at == at + 2:
        return None
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
