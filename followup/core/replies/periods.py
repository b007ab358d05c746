"""The grammar of longer times: weeks, weekends, `in two weeks`, `after` or `before` a day; months in `months.py`."""

from __future__ import annotations

import re
from collections.abc import Callable
from datetime import date, timedelta

from followup.core.replies import calendar_days as cal
from followup.core.replies import days as day_rules
from followup.core.replies.counted_days import counted_weekday
from followup.core.replies.distances import FROM_ON, WEEK, distance, week_span
from followup.core.replies.mentions import Days, Text
from followup.core.replies.months import last_day_of_month, month, season, section_before
from followup.core.replies.weekends import single_day, weekend
from followup.core.replies.written_dates import day_of_month

Found = tuple[Days, int]


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
    if after == "after" and text.word(at + 1) in FROM_ON:
        return (None, at) if text.cat(at - 1) in ("a", "num") else _week_around(text, text.skip(at + 2, "on"), WEEK * 0)
    if after == "after":
        return _week_around(text, at + 2, WEEK)
    if after in ("of", "before"):
        return _week_around(text, at + 2, WEEK * 0 if after == "of" else -WEEK)
    return None, at


def _week_around(text: Text, at: int, shift: timedelta) -> tuple[date | None, int]:
    found = single_day(text, at)
    return (cal.monday_of(found[0]) + shift, found[1]) if found else (None, at)


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


_BRING = re.compile(r"\b(?:bring|swing|drop|stop|come|run) (?:(?:the|my|her|him|our) )?(?:\w+ )?$")


def bounded_day(text: Text, at: int) -> Found | None:
    """`after the 15th`, `before Friday`, `by the 20th`, `until March 3`: a span of days, or when to ask again."""
    bound = text.cat(at)
    if bound not in ("after", "before", "by", "until"):
        return None
    if text.word(at).startswith("back") and text.word(at - 1) in ("go", "going", "come", "coming", "went", "bring"):
        return None
    if text.word(at) == "by" and _BRING.search(text.plain[: text.symbols[at].start]):
        return None  # `bring it by Wednesday` comes on that day
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
        first = day if "not" in text.word(at) or text.word(at) in FROM_ON else day + timedelta(1)
        return Days((first, first + timedelta(6)), is_span=True, bound="after", anchor=day), end
    if text.cat(text.skip(start, "the")) == "late" and len(days.days) > 1:
        day, bound = days.days[-1], "by"  # `before the end of the month` is any day of it
    last = day if bound == "by" else day - timedelta(1)
    if last < text.today:
        return Days((), is_impossible=True), end
    return Days((text.today, last), is_span=True, bound="before", anchor=day, is_up_to=bound == "by"), end


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
