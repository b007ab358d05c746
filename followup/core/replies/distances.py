"""The grammar of days counted from now or from a named day: `in two weeks`, `3 days before Easter`."""

from __future__ import annotations

from datetime import date, timedelta

from followup.core.replies import calendar_days as cal
from followup.core.replies import days as day_rules
from followup.core.replies.mentions import Days, Text
from followup.core.replies.written_dates import day_of_month

Found = tuple[Days, int]
WEEK = timedelta(7)
FROM_ON = {
    "a partir de", "a partir del", "starting", "starting from", "as of", "beginning at", "beginning", "desde",
    "desde el", "apartir de", "apartir del", "from", "no earlier than", "no sooner than", "starting at",
    "on or after", "commencing",
}  # fmt: skip
"""Words of `after` that mean the named day too."""


def week_span(monday: date) -> Days:
    """A whole Monday-Sunday week."""
    return Days((monday, monday + timedelta(6)), is_span=True, week=monday)


def distance(text: Text, at: int) -> Found | None:
    """`in two weeks`, `10 days from now`, `a week from Friday`, `dentro de tres dias`, `two weeks after the 5th`."""
    is_rough = False
    start, has_in = at, text.cat(at) == "in" or text.word(at) == "after"
    if has_in:
        start = text.skip(at + 1, "the")
        is_rough = text.cat(start) == "around"
        start = text.skip(start, "around")
        if text.cat(start) in ("next", "coming", "this"):
            return _next_few(text, start + 1)
    if _lasts(text, at) and not has_in:
        return None
    if text.cat(start) == "next" and text.cat(start + 1) in ("num", "couple", "few"):
        return _next_few(text, start + 1)
    count, unit_at, is_loose = _count(text, start)
    is_loose = is_loose or is_rough
    is_counted = text.cat(unit_at + 1) == "ahead" or text.word(unit_at + 1) == "later"
    if count and text.cat(unit_at) == "weekday" and is_counted:
        coming = cal.next_weekday(text.today, text.value(unit_at))
        return Days((coming + WEEK * (min(count, 60) - 1),)), unit_at + 2
    if count is None or text.cat(unit_at) not in ("unit", "weekend"):
        return None
    end = unit_at + 1
    if text.word(end) in ("ago", "old") or text.word(at - 1) in ("hace", "every", "each"):
        return Days(()), end + 1
    back = _back_from(text, count, unit_at, is_loose, end + 1) if text.cat(end) == "before" else None
    if back:
        return back
    base, end, is_anchored = _base(text, end)
    if not (has_in or is_anchored):
        return None
    return _added(text, base, count, unit_at, is_loose, end)


_BOOKED = ("me", "us", "it", "her", "him", "down", "in", "appointment", "slot", "car", "truck")
"""Before `for a week from Friday`: what is booked for that day, and not what lasts a week."""


def _lasts(text: Text, at: int) -> bool:
    """Whether a number of days tells how long something lasts (`for 3 days`) and not when (`for 3 days from now`)."""
    if text.word(at - 1) != "for":
        return text.word(at - 1) in ("stay", "staying", "spend")
    unit_at = _count(text, at)[1]
    is_when = text.cat(unit_at + 1) in ("ahead", "relday")
    is_when = is_when or (text.cat(unit_at + 1) == "on" and text.cat(unit_at + 2) == "weekday")
    is_when = is_when or (text.cat(unit_at + 1) == "from" and text.word(at - 2) in _BOOKED)
    return not is_when or text.word(at - 2) in (
        "stay",
        "staying",
        "rent",
        "away",
        "gone",
        "out",
        "back",
        "here",
        "there",
    )


def _count(text: Text, at: int) -> tuple[int | None, int, bool]:
    """A number of units (None without one), the place of the unit, and whether it is a loose number."""
    cat, word = text.cat(at), text.word(at)
    if cat == "couple":
        return 2, text.skip(at + 1, "of"), True
    if cat == "few":
        return 3, text.skip(at + 1, "of"), True
    if cat == "num":
        or_at = at + 1
        if text.cat(or_at) in ("or", "dash", "to") and text.cat(or_at + 1) == "num":
            return text.value(at), or_at + 2, True
        if text.word(at + 1) == "more":
            return text.value(at), at + 2, False
        return text.value(at), at + 1, False
    if cat == "a" or word in ("una", "un"):
        if text.cat(at + 1) in ("couple", "few"):
            return _count(text, at + 1)
        return 1, at + 1, False
    if cat == "unit" and text.word(at) in ("week", "month") and text.cat(at + 1) == "ahead":
        return 1, at, False
    if text.word(at) == "week" and text.word(at + 1) == "from" and _opens_a_phrase(text, at):
        return 1, at, False
    return None, at, False


def _opens_a_phrase(text: Text, at: int) -> bool:
    """Whether a `week` is not the end of `next week`, `the week`, `of the week`: then it is one week."""
    return text.cat(at - 1) in ("", "mark", "at", "word", "in", "on") and text.word(at - 1) not in ("all", "last")


def _base(text: Text, at: int) -> tuple[date, int, bool]:
    """What the distance is counted from: a named day, else today; and whether words say so."""
    if text.cat(at) == "ahead":
        return text.today, at + 1, True
    if text.cat(at) == "after" and text.word(at) in FROM_ON:
        return text.today, at, False
    if text.cat(at) in ("from", "after") or text.word(at) in ("desde", "despues de"):
        start = at + 1
        if text.word(start) == "now":
            return text.today, start + 1, True
        if text.cat(start) == "relday" and text.value(start) < 0:
            return text.today + timedelta(text.value(start)), start + 1, True
        for rule in (*day_rules.RULES, day_of_month):
            found = rule(text, start)
            if found and len(found[0].days) == 1:
                return found[0].days[0], found[1], True
    start = text.skip(at, "on")
    for rule in (day_rules.named_day, day_rules.weekday):
        found = rule(text, start)
        if found and len(found[0].days) == 1 and text.name(at - 1) in ("week", "fortnight"):
            return found[0].days[0], found[1], True
    return text.today, at, False


def _back_from(text: Text, count: int, unit_at: int, is_loose: bool, at: int) -> Found | None:
    """`two weeks before Easter`, `three days before the 20th`: counted back from a named day that lies ahead."""
    length = {"day": 1, "week": 7, "fortnight": 14}.get(text.name(unit_at), 0)
    for rule in (*day_rules.RULES, day_of_month):
        found = rule(text, at)
        if found and len(found[0].days) == 1 and length:
            day = found[0].days[0] - timedelta(min(count, 60) * length)
            days = (day, day + timedelta(1)) if is_loose else (day,)
            return (Days(days, is_span=is_loose) if day >= text.today else Days((), is_impossible=True)), found[1]
    return None


def _added(text: Text, base: date, count: int, unit_at: int, is_loose: bool, end: int) -> Found | None:
    unit = text.name(unit_at)
    if unit == "day":
        if text.setting.language == "es" and count in (8, 15):
            count -= 1  # Spanish counts the day from which it counts: ocho días are a week
        day = base + timedelta(min(count, 400))
        return (Days((day, day + timedelta(1)), is_span=True) if is_loose and count > 1 else Days((day,))), end
    if unit == "workday":
        return Days((cal.add_workdays(base, min(count, 60)),)), end
    if unit in ("week", "fortnight"):
        weeks = count * (2 if unit == "fortnight" else 1)
        day = base + WEEK * min(weeks, 60)
        if is_loose:
            return week_span(cal.monday_of(day)), end
        return Days((day,)), end
    if unit == "month":
        day = cal.add_months(base, min(count, 60))
        return Days((day,), is_later=base == text.today), end
    if unit == "year":
        return Days((cal.add_months(base, 12 * min(count, 5)),), is_later=True), end
    return None


def _next_few(text: Text, at: int) -> Found | None:
    """`in the next few days`, `within the next two weeks`: from now on that long."""
    count, unit_at, _ = _count(text, at)
    unit = text.name(unit_at)
    if count is None or unit not in ("day", "week"):
        return None
    last = text.today + timedelta(count * (7 if unit == "week" else 1))
    return Days((text.today, last), is_span=True), unit_at + 1
