"""The grammar of longer times: weeks, weekends, `in two weeks`, `after` or `before` a day; months in `months.py`."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date, timedelta

from followup.core.replies import calendar_days as cal
from followup.core.replies import days as day_rules
from followup.core.replies.counted_days import counted_weekday
from followup.core.replies.mentions import Days, Text
from followup.core.replies.months import last_day_of_month, month, season, section_before
from followup.core.replies.written_dates import day_of_month

Found = tuple[Days, int]
WEEK = timedelta(7)
LAST_WORKDAY = 4


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
    if text.cat(at) == "after" and text.word(at) in _FROM_ON:
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


def week(text: Text, at: int) -> Found | None:
    """`next week`, `early next week`, `the week after next`, `the week of the 5th`, `la semana que viene`."""
    start = text.skip(at, "the", "on", "in", "any")
    section, start = section_before(text, start)
    start = text.skip(start, "the", "of")
    monday, end = _which_week(text, start)
    if monday is None and section and text.name(start) == "week" and text.cat(start) == "unit":
        monday, end = _current_or_next(text, section), start + 1
    if monday is None:
        return None
    if not section and text.cat(end) in ("ish",):
        end += 1
    if monday != cal.monday_of(monday):
        return Days((monday, cal.monday_of(monday) + timedelta(6)), is_span=True, week=cal.monday_of(monday)), end
    return _part_of_week(text, monday, section), end


def _which_week(text: Text, at: int) -> tuple[date | None, int]:
    this = cal.monday_of(text.today)
    cat, word = text.cat(at), text.word(at)
    if word == "rest" and text.name(text.skip(at + 1, "of", "the", "this")) == "week":
        return text.today, text.skip(at + 1, "of", "the", "this") + 1
    is_week_after = text.cat(at + 1) == "unit" and text.name(at + 1) == "week"
    if cat == "this" and is_week_after:
        return this, at + 2
    if cat in ("next", "coming") and is_week_after:
        if text.cat(at + 2) == "after" and text.cat(at + 3) == "next":
            return this + 2 * WEEK, at + 4
        return this + WEEK, at + 2
    if word in ("otra", "other") and is_week_after:
        return this + WEEK, at + 2
    if cat != "unit" or text.name(at) != "week":
        return None, at
    after = text.cat(at + 1)
    if after in ("coming_after", "next", "coming"):
        return this + WEEK, at + 2
    if after == "after" and text.cat(at + 2) == "next":
        return this + 2 * WEEK, at + 3
    if after == "after" and text.word(at + 1) in _FROM_ON:
        return (None, at) if text.cat(at - 1) in ("a", "num") else _week_around(text, text.skip(at + 2, "on"), WEEK * 0)
    if after == "after":
        return _week_around(text, at + 2, WEEK)
    if after in ("of", "before"):
        return _week_around(text, at + 2, WEEK * 0 if after == "of" else -WEEK)
    return None, at


def _week_around(text: Text, at: int, shift: timedelta) -> tuple[date | None, int]:
    found = _single_day(text, at)
    return (cal.monday_of(found[0]) + shift, found[1]) if found else (None, at)


def _single_day(text: Text, at: int) -> tuple[date, int] | None:
    """The day that stands here, and the place after it."""
    start = text.skip(at, "the")
    for rule in (*day_rules.RULES, day_of_month):
        found = rule(text, at) or rule(text, start)
        if found and found[0].days:
            return found[0].days[0], found[1]
    return None


def _current_or_next(text: Text, section: str) -> date:
    """The present week where the section's days are still ahead, else the next one."""
    this = cal.monday_of(text.today)
    last_wanted = {"early": 1, "mid": 2, "late": 4}.get(section, 4)
    return this if text.today <= this + timedelta(last_wanted) else this + WEEK


def _part_of_week(text: Text, monday: date, section: str) -> Days:
    if section in ("mid", "midweek"):
        return Days((monday + timedelta(2),))
    wanted = {"early": (0, 1), "late": (3, 4)}.get(section)
    if not wanted:
        return week_span(monday)
    days = tuple(monday + timedelta(n) for n in wanted)
    return Days(tuple(day for day in days if day >= text.today) or days)


def midweek(text: Text, at: int) -> Found | None:
    """`midweek` alone."""
    start = text.skip(at, "the", "on", "in")
    if text.cat(start) != "midweek":
        return None
    return Days((_current_or_next(text, "mid") + timedelta(2),)), start + 1


def weekend(text: Text, at: int) -> Found | None:
    """`this weekend`, `next weekend`, `the weekend`: its open days."""
    start = text.skip(at, "the", "on", "in", "any", "of")
    modifier = text.cat(start) if text.cat(start) in ("this", "next", "coming", "last") else ""
    at_weekend = start + 1 if modifier else start
    if text.cat(at_weekend) != "weekend":
        return None
    if modifier == "last":
        return Days(()), at_weekend + 1
    end = at_weekend + 1
    if text.cat(end) in ("next", "coming_after") and text.word(end + 1) not in ("week", "semana"):
        modifier, end = ("next" if text.cat(end) == "next" else "coming"), end + 1
    monday = cal.monday_of(text.today) + (WEEK if modifier == "next" else WEEK * 0)
    if text.cat(end) in ("after", "before") and not modifier:
        beside = _weekend_beside(text, end)
        if beside:
            return beside
    if text.cat(end) == "of":
        named = _single_day(text, end + 1)
        if named:
            return _weekend_of(named[0]), named[1]
    if text.setting.language == "es" and modifier == "next" and text.today.weekday() < 5:
        monday -= WEEK
    days = (monday + timedelta(5), monday + timedelta(6))
    return Days(tuple(day for day in days if day >= text.today), is_open_days=True), end


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


RULES: tuple[Callable[[Text, int], Found | None], ...] = (
    counted_weekday,
    distance,
    week,
    weekend,
    midweek,
    month,
    season,
    last_day_of_month,
)


def any_day(text: Text, at: int) -> Found | None:
    """The longest day or period that begins here."""
    found = [rule(text, at) for rule in (*day_rules.RULES, day_of_month, *RULES)]
    there = [one for one in found if one]
    return _onward(text, at, _with_weekday_beside(text, max(there, key=lambda one: one[1]))) if there else None


def _onward(text: Text, at: int, found: Found) -> Found:
    """`the 20th or later`, `from Monday on`: a day from which any day will do."""
    days, end = found
    is_on = text.word(end) == "on" and text.cat(at - 1) == "from" and text.cat(end + 1) in ("", "mark")
    if len(days.days) != 1 or days.is_later or not (text.cat(end) == "onward" or is_on):
        return found
    return Days((days.days[0], days.days[0] + timedelta(6)), is_span=True, bound="after", anchor=days.days[0]), end + 1


def _with_weekday_beside(text: Text, found: Found) -> Found:
    """`May 22 (Fri)`, `May 22, a Friday`: the date, checked against the weekday that is told after it."""
    days, end = found
    if days.month is None or len(days.days) != 1 or days.is_later:
        return found
    if text.word(end) == "(" and text.cat(end + 1) == "weekday" and text.word(end + 2) == ")":
        return day_rules.checked(text, text.value(end + 1), days, end + 3)
    weekday_at = text.skip(end + 1 if text.word(end) == "," else end, "a", "on")
    is_same = text.cat(weekday_at) == "weekday" and text.value(weekday_at) == days.days[0].weekday()
    return (days, weekday_at + 1) if is_same else found


def bounded_day(text: Text, at: int) -> Found | None:
    """`after the 15th`, `before Friday`, `by the 20th`, `until March 3`: a span of days, or when to ask again."""
    bound = text.cat(at)
    if bound not in ("after", "before", "by", "until"):
        return None
    if text.word(at).startswith("back") and text.word(at - 1) in ("go", "going", "come", "coming", "went", "bring"):
        return None
    start = text.skip(at + 1, "the", "on") if text.cat(at + 1) in ("the", "on") else at + 1
    found = _day_after_bound(text, at, start)
    if not found or not found[0].days:
        return found
    days, end = found
    if days.is_later and bound != "until":
        return days, end
    if days.is_span and bound == "after":
        first = days.days[-1] + timedelta(1)
        return Days((first, first + timedelta(6)), is_span=True, bound="after", anchor=days.days[-1]), end
    day = days.days[0]
    if bound == "until":
        return Days((day,), is_later=True, bound="until", anchor=day), end
    if bound == "after":
        first = day if "not" in text.word(at) or text.word(at) in _FROM_ON else day + timedelta(1)
        return Days((first, first + timedelta(6)), is_span=True, bound="after", anchor=day), end
    last = day if bound == "by" else day - timedelta(1)
    if last < text.today:
        return Days((), is_impossible=True), end
    return Days((text.today, last), is_span=True, bound="before", anchor=day, is_up_to=bound == "by"), end


_FROM_ON = {
    "a partir de", "a partir del", "starting", "starting from", "as of", "beginning at", "beginning", "desde",
    "desde el", "apartir de", "apartir del", "from", "no earlier than", "no sooner than", "starting at",
}  # fmt: skip


def _day_after_bound(text: Text, at: int, start: int) -> Found | None:
    found = any_day(text, at + 1) or any_day(text, start)
    if found:
        day_at = text.skip(found[1], "on")
        if found[0].week and text.cat(day_at) == "weekday":
            return Days((found[0].week + timedelta(text.value(day_at)),)), day_at + 1
        return found
    # Spanish bound words hold the article: `antes del 20`, `hasta el 12`.
    is_article = text.word(at).split(" ")[-1] in ("el", "del", "al") or text.word(at + 1) in ("el", "del")
    number_at = start if text.cat(start) == "num" else at + 1
    if text.setting.language == "es" and is_article and text.cat(number_at) == "num":
        day = cal.next_day_of_month(text.today, text.value(number_at))
        return (Days((day,)), number_at + 1) if day else (Days((), is_impossible=True), number_at + 1)
    return None
