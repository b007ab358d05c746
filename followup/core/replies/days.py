"""The grammar of days: weekdays, holidays, days told from today; dates as written are in `written_dates.py`."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import date, timedelta

from followup.core.replies import calendar_days as cal
from followup.core.replies.holidays import holiday_in, next_holiday
from followup.core.replies.mentions import Days, Text
from followup.core.replies.words.entry import word_set
from followup.core.replies.written_dates import (
    Found,
    day_of_month,
    days_of_one_month,
    impossible_day,
    is_year,
    month_after,
    month_and_day,
    numeric_date,
    one_day,
)

SOON = timedelta(28)
"""How far ahead a weekday and a date that disagree are asked about."""


def weekday(text: Text, at: int) -> Found | None:
    """`Friday`, `this Friday`, `next Friday`, `Friday week`, `Friday the 5th`, `el viernes que viene`."""
    start = text.skip(at, "the", "on", "any")
    part = {"early": "early", "late": "late_afternoon"}.get(text.cat(start))
    if part and text.word(start) in ("early", "late", "later", "temprano"):
        start = text.skip(start + 1, "on", "the")
    else:
        part = None
    modifier = text.cat(start) if text.cat(start) in ("this", "next", "coming", "last") else ""
    day_at = start + 1 if modifier else start
    if text.cat(day_at) != "weekday" or _is_no_weekday(text, day_at):
        return None
    if modifier == "last":
        return (Days(()), day_at + 1) if text.word(start) in ("last", "previous") else None
    number, end = text.value(day_at), day_at + 1
    if text.setting.language == "es" and text.word(end) in ("pasado", "anterior"):
        return Days(()), end + 1
    if text.word(end) == "." and (
        text.cat(end + 1) in ("ordinal", "month", "num", "date") or text.word(end + 1) == ","
    ):
        end += 1
    found = _with_a_date(text, number, end)
    if found and not _is_instead(text, start, end, found[0]):
        return found
    beside = _beside_a_named_date(text, number, start, end) or some_day_of_month(text, end)
    if beside:
        return beside
    in_weeks = None if modifier else _weeks_from_now(text, end)
    if in_weeks:
        return one_day(cal.weekday_of_week(text.today + timedelta(7 * in_weeks[0]), number)), in_weeks[1]
    days, end = _modified(text, number, modifier, end)
    weeks, end = _weeks_on(text, end)
    if weeks:
        return one_day(days.days[0] + timedelta(7 * weeks)), end
    if text.cat(end) == "part" and text.word(end) == "temprano":
        return days, end
    return replace(days, part=part), end


def some_day_of_month(text: Text, at: int) -> Found | None:
    """`a Saturday in May`, `any weekend in May`: no day of the coming week, so the month is when to ask again."""
    if text.cat(at) != "in" or text.cat(at + 1) != "month" or text.cat(at + 2) in ("num", "ordinal", "the"):
        return None
    if text.value(at + 1) == text.today.month:
        return None
    first = cal.next_first_of_month(text.today, text.value(at + 1))
    return Days((first,), is_later=True, month=first), at + 2


def _beside_a_named_date(text: Text, number: int, start: int, end: int) -> Found | None:
    """`the Friday before Labor Day`, `the Monday after the 20th`, `de hoy en ocho`."""
    if text.cat(end) not in ("after", "before"):
        return None
    found = holiday(text, end + 1)
    if not found and text.cat(start - 1) == "the":
        found = month_and_day(text, end + 1) or day_of_month(text, text.skip(end + 1, "the"))
    if not found or len(found[0].days) != 1:
        return None
    day = found[0].days[0]
    if text.cat(end) == "after":
        return one_day(cal.next_weekday(day, number)), found[1]
    told = day - timedelta((day.weekday() - number - 1) % 7 + 1)
    return (one_day(told), found[1]) if told >= text.today else None


def _is_instead(text: Text, start: int, end: int, both: Days) -> bool:
    """`not today, the 8th of April`: two days that disagree because the second is meant instead of the first."""
    return both.disagrees and text.word(end) == "," and text.word(start - 1) in ("not", "no", "never")


_SITTERS = word_set("i just it car has we us he she they who all been")


def _is_no_weekday(text: Text, at: int) -> bool:
    """Short names that are words of their own: `sat in the car`, `the sun`, `mon` of another tongue."""
    word, before, after = text.word(at), text.word(at - 1), text.word(at + 1)
    if word == "sun":
        return before in ("the", "in", "hot") or after in ("is", "visor", "roof", "screen")
    if word == "sat":
        is_there = after in ("there", "together", "down", "here", "outside")
        return before in _SITTERS or is_there or (after in ("in", "for", "around") and not _is_clock(text, at + 2))
    if word == "wed":
        return before in ("newly", "to", "get")
    if word == "tu":
        return text.setting.language == "es" or before in ("i",)
    return word == "mar" and text.setting.language == "es" and before in ("al", "el") and after in ("y",)


def _is_clock(text: Text, at: int) -> bool:
    """Whether a time of the day stands here: `around 9`, `in the morning`, but not `for 3 hours`."""
    start = text.skip(at, "the", "a")
    is_number = text.cat(start) in ("num", "clock") and text.cat(start + 1) not in ("unit", "word")
    return is_number or text.cat(start) in ("part", "half", "quarter", "quarter_of")


def _modified(text: Text, number: int, modifier: str, end: int) -> Found:
    """The weekday as its modifiers before and after it say."""
    today, coming = text.today, cal.next_weekday(text.today, number)
    following = cal.weekday_of_week(today + timedelta(7), number)
    after = text.cat(end)
    english = text.setting.language != "es"
    if text.word(end) == "week" and english and text.cat(end + 1) not in ("of", "after"):
        return one_day(coming + timedelta(7)), end + 1
    in_week = _of_a_week(text, end)
    if in_week is not None and not modifier:
        monday = cal.monday_of(text.today) + timedelta(7 * in_week[0])
        return Days((monday + timedelta(number),), weekday=number, week=monday), in_week[1]
    if text.cat(end) == "in" and text.cat(end + 1) == "a" and text.word(end + 2) == "week":
        return one_day(coming + timedelta(7)), end + 3
    if after == "after" and text.cat(end + 1) == "next" and text.cat(end + 2) != "unit":
        return one_day(coming + timedelta(7)), end + 2
    if modifier == "next" and english:
        if text.word(start_of := end) == "after" and text.cat(start_of + 1) == "next":
            return one_day(following + timedelta(7)), end + 2
        return one_day(following), end
    if modifier == "this":
        is_ahead = cal.weekday_of_week(today, number) > today
        if number == today.weekday() and text.setting.hours.left_of(today, text.setting.now):
            return one_day(today), end
        return one_day(cal.weekday_of_week(today, number) if is_ahead else coming), end
    if after in ("coming_after", "coming") or (
        after == "next" and text.word(end + 1) not in ("semana", "week", "month", "mes")
    ):
        return one_day(coming), end + 1
    if modifier in ("coming", "next"):
        return one_day(coming), end
    if _is_the_other(text, end - 1):
        return one_day(following), end
    return Days((coming,), weekday=number), end


def _is_the_other(text: Text, at: int) -> bool:
    """Whether it is `el otro jueves`, the one of the week after this."""
    return (
        text.setting.language == "es" and text.word(at - 1) == "otro" and text.word(at - 2) in ("el", "para el", "al")
    )


def _weeks_from_now(text: Text, at: int) -> tuple[int, int] | None:
    """How many weeks on `two weeks from now`, `in three weeks` is after a weekday, and the place after it."""
    has_in = text.cat(at) == "in"
    start = at + 1 if has_in else at
    count = 2 if text.cat(start) == "couple" else text.value(start) if text.cat(start) == "num" else 0
    is_told = text.name(start + 1) == "week" and (has_in or text.cat(start + 2) == "ahead")
    if not 2 <= count <= 12 or not is_told:
        return None
    return count, start + 2 + (text.cat(start + 2) == "ahead")


def _of_a_week(text: Text, at: int) -> tuple[int, int] | None:
    """How many weeks on `of next week`, `this week`, `la semana que viene` is, and the place after it."""
    start = text.skip(at, "of", "in", "the") if text.word(text.skip(at, "of", "in", "the")) != "," else at
    cat = text.cat(start)
    if cat in ("this", "next", "coming") and text.name(start + 1) == "week" and text.cat(start + 1) == "unit":
        if text.cat(start + 2) == "after":
            return None
        return (0 if cat == "this" else 1), start + 2
    if text.name(start) == "week" and text.cat(start + 1) in ("coming_after", "next"):
        return 1, start + 2
    return None


def _with_a_date(text: Text, number: int, end: int) -> Found | None:
    """`Friday the 5th`, `Friday, March 5`, `viernes 5`: the date, checked against the weekday."""
    start = text.skip(end, "the", "on") if text.word(end) != "," else text.skip(end + 1, "the", "on")
    found = numeric_date(text, start) or month_and_day(text, start)
    if not found and "ordinal" in (text.cat(start), text.cat(start + 1) if text.value(start) in (20, 30) else ""):
        found = day_of_month(text, start)
    least = 1 if text.setting.language == "es" else 13
    if not found and text.cat(start) == "num" and start == end and least <= text.value(start) <= 31:
        if text.cat(start + 1) in ("ampm", "oclock", "unit", "half_after", "quarter_after", "past", "num"):
            return None
        day = cal.next_day_of_month(text.today, text.value(start))
        found = (one_day(day), start + 1) if day else None
    if not found or not found[0].days:
        return found
    return checked(text, number, found[0], found[1])


def checked(text: Text, number: int, dated: Days, end: int) -> Found:
    """A date with the weekday told beside it: both days where they do not agree in the coming weeks."""
    told = dated.days[0]
    if told.weekday() == number:
        return dated, end
    coming = cal.next_weekday(text.today, number)
    if told - text.today > SOON:
        return (dated if dated.month else _next_that_agrees(number, told)), end
    nearest = min((coming + timedelta(7 * n) for n in range(4)), key=lambda day: abs((day - told).days))
    return Days(tuple(sorted({told, nearest})), disagrees=True), end


def _next_that_agrees(weekday_wanted: int, told: date) -> Days:
    """The next date with the same day of the month on which the weekday is right; the date itself where none is."""
    months = (cal.make_date(told.year + (told.month + n) // 12, (told.month + n) % 12 + 1, told.day) for n in range(12))
    agreeing = next((day for day in months if day and day.weekday() == weekday_wanted), told)
    return Days((agreeing,), month=agreeing.replace(day=1))


def holiday(text: Text, at: int) -> Found | None:
    """`Thanksgiving`, `the day after Christmas`, `the Friday before Labor Day`, `la víspera de Navidad`."""
    start = text.skip(at, "the", "on")
    shift, after_start = _shift_from(text, start)
    start = after_start
    start = text.skip(start, "the", "of")
    if text.cat(start) != "holiday":
        return None
    if (
        text.word(start) in ("the new year", "new year", "new years")
        and text.cat(start - 1) in ("in", "after")
        and shift == 0
    ):
        return None
    day = next_holiday(text.today, text.name(start))
    if shift:
        day += timedelta(shift)
        if day < text.today:
            day = holiday_in(day.year + 1, text.name(start)) + timedelta(shift)
    end = start + 1
    year, after_year = _year_told(text, end)
    if year and shift == 0:
        return one_day(holiday_in(year, text.name(start))), after_year
    if text.cat(end) == "weekend" and shift == 0:
        saturday = day - timedelta((day.weekday() + 2) % 7 if day.weekday() in (5, 6, 0, 1) else day.weekday() - 5)
        return Days((saturday, saturday + timedelta(1)), is_open_days=True), end + 1
    if text.cat(end) == "unit" and text.word(end) == "week":
        return _span(cal.monday_of(day), cal.monday_of(day) + timedelta(6), week=cal.monday_of(day)), end + 1
    if text.word(end) == "eve":
        day -= timedelta(1)
        end += 1
    return one_day(day), end


def _year_told(text: Text, at: int) -> tuple[int, int]:
    """The year in `2027`, `of next year`, `this year` after a holiday, and the place after it; 0 where none is told."""
    start = text.skip(at, "of", "in")
    if is_year(text, start):
        return text.value(start), start + 1
    if text.cat(start) in ("next", "this") and text.name(start + 1) == "year":
        return text.today.year + (text.cat(start) == "next"), start + 2
    return 0, at


def _shift_from(text: Text, at: int) -> tuple[int, int]:
    """Days between a holiday and what is meant, in `day after`, `dia antes de`; 0 where there is no such word."""
    if text.cat(at) == "unit" and text.word(at) in ("day", "dia") and text.cat(at + 1) in ("after", "before"):
        return (1 if text.cat(at + 1) == "after" else -1), at + 2
    if text.word(at) == "day before":
        return -1, at + 1
    if text.word(at - 1) == "el dia" and text.cat(at) in ("after", "before"):
        return (1 if text.cat(at) == "after" else -1), at + 1
    return 0, at


def named_day(text: Text, at: int) -> Found | None:
    """`today`, `tomorrow`, `the day after tomorrow`, `tomorrow week`."""
    start = text.skip(at, "on")
    if text.cat(start) == "this" and text.cat(start + 1) == "part" and text.name(start + 1) not in ("lunch", "noon"):
        return one_day(text.today), start + 1
    if text.cat(start) == "this" and text.word(start + 1) == "manana":
        return replace(one_day(text.today), part="morning"), start + 2
    if text.cat(start) == "late" and text.word(start).endswith(("end of", "end")):
        found = weekday(text, start + 1) or named_day(text, start + 1)
        return (replace(found[0], part="end_of_day"), found[1]) if found else None
    if text.cat(start) != "relday" or (text.word(start) == "tom" and not _is_tomorrow(text, start)):
        return None
    shift, end = text.value(start), start + 1
    if shift >= 0 and text.word(end) == "week" and text.setting.language != "es":
        return one_day(text.today + timedelta(shift + 7)), end + 1
    if shift < 0:
        return Days(()), end
    weeks, end = _weeks_on(text, end)
    day = text.today + timedelta(shift + 7 * weeks)
    found = _beside_a_date(text, day, end)
    return (one_day(day), end) if _is_instead(text, start, end, found[0]) else found


def _weeks_on(text: Text, at: int) -> tuple[int, int]:
    """Weeks that `en ocho` and `en quince` (days, counted as Spanish does) add to a day, and the place after them."""
    weeks = {8: 1, 15: 2}.get(text.value(at + 1), 0) if text.word(at) == "en" else 0
    if text.word(at) == "en" and text.name(at + 2) == "week" and 1 <= text.value(at + 1) <= 8:
        return text.value(at + 1), at + 3
    if not weeks or text.setting.language != "es":
        return 0, at
    end = at + 2
    if text.cat(end) == "unit":
        return (weeks, end + 1) if text.name(end) == "day" else (0, at)
    return weeks, end


def _beside_a_date(text: Text, day: date, end: int) -> Found:
    """`today, March 5`: the day and the date that is told beside it; both where they are not the same."""
    start = end + 1 if text.word(end) in (",", "(") else end
    found = month_and_day(text, start) if text.cat(text.skip(start, "the")) in ("month", "ordinal", "num") else None
    if not found or len(found[0].days) != 1:
        return one_day(day), end
    return (found[0] if found[0].days == (day,) else Days((day, *found[0].days), disagrees=True)), found[1]


_NAMES_TOM = word_set(
    "to with from tell ask call is and by dr mr uncle thanks hi hey hello thank name im its it this not see"
)


def _is_tomorrow(text: Text, at: int) -> bool:
    """Whether `tom` is short for tomorrow and not a name."""
    if text.word(at - 1) in _NAMES_TOM or text.cat(at - 1) == "and" or text.word(at - 1) == text.word(at + 1) == ",":
        return False
    after = text.cat(at + 1)
    return after != "word" or text.word(at + 1) in ("works", "is", "if", "please", "would", "if", "morn")


def _span(first: date, last: date, week: date | None = None) -> Days:
    return Days((first, last), is_span=True, week=week)


def weekday_of_month(text: Text, at: int) -> Found | None:
    """`the first Friday of next month`, `last Monday in March`, `el primer lunes de abril`."""
    start = text.skip(at, "the", "on")
    is_last = text.cat(start) == "last"
    if not (is_last or (text.cat(start) == "ordinal" and text.value(start) <= 5)) or text.cat(start + 1) != "weekday":
        return None
    first, end = month_after(text, start + 2)
    month_at = text.skip(start + 2, "of", "in", "the")
    if first is None and text.cat(month_at) == "month" and month_at > start + 2:
        this = text.today.replace(day=1)
        is_this = text.value(month_at) == this.month
        first, end = this if is_this else cal.next_first_of_month(text.today, text.value(month_at)), month_at + 1
    if first is None:
        return None
    nth = -1 if is_last else text.value(start)
    found = cal.nth_weekday_of_month(first, text.value(start + 1), nth)
    return (one_day(found) if found and found >= text.today else Days((), is_impossible=True)), end


RULES: tuple[Callable[[Text, int], Found | None], ...] = (
    impossible_day,
    numeric_date,
    weekday,
    holiday,
    month_and_day,
    days_of_one_month,
    named_day,
    weekday_of_month,
)
