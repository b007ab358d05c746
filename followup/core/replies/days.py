"""The grammar of days: weekdays, dates, holidays, days told from today. Weeks and months are in `periods.py`."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import date, timedelta

from followup.core.replies import calendar_days as cal
from followup.core.replies.mentions import Days, Text

Found = tuple[Days, int]
"""Days and the place after them."""

SOON = timedelta(28)
"""How far ahead a weekday and a date that disagree are asked about."""

_NOT_A_DAY = {
    "one", "ones", "option", "slot", "time", "times", "available", "opening", "openings", "appointment", "thing",
    "choice", "street", "st", "ave", "avenue", "floor", "gear", "grade", "place", "opcion",
    "cita", "hora", "vez", "row", "car", "owner", "reminder", "message", "text",
}  # fmt: skip
_AFTER_VERB_MAY = {"i", "we", "you", "be", "have", "not", "need", "come", "take", "want", "work"}
_DEL = ("el", "del", "al", "dia")


def numeric_date(text: Text, at: int) -> Found | None:
    """`3/5`, `3/5/26`, `2026-03-05`, by the shop's order unless only the other order is a date."""
    if text.cat(at) != "date":
        return None
    numbers = text.symbols[at].numbers
    if numbers == (24, 7) or text.cat(at + 1) in ("unit",):
        return None
    if len(numbers) == 3 and numbers[0] > 31:
        found = cal.make_date(*numbers)
        return (_one(found), at + 1) if found else (Days((), is_impossible=True), at + 1)
    return _ordered_date(text, at, numbers)


def _ordered_date(text: Text, at: int, numbers: tuple[int, ...]) -> Found | None:
    month_first = (numbers[0], numbers[1])
    orders = [month_first, month_first[::-1]]
    if text.setting.order == "day-first":
        orders.reverse()
    for month, day in orders:
        if len(numbers) == 3:
            year = numbers[2] + 2000 if numbers[2] < 100 else numbers[2]
            found = cal.make_date(year, month, day)
        else:
            found = cal.next_month_day(text.today, month, day) if 1 <= month <= 12 else None
        if found:
            return replace(_one(found), month=found.replace(day=1)), at + 1
    looks_like_date = 1 <= orders[0][0] <= 12 and 1 <= orders[0][1] <= 31
    return (Days((), is_impossible=True), at + 1) if looks_like_date else None


def month_and_day(text: Text, at: int) -> Found | None:
    """`March 5`, `Mar. the 5th, 2027`, `5 March`, `the 5th of March`, `5 de marzo`."""
    start = text.skip(at, "on", "this", "next", "coming", "the")
    if text.cat(start) == "month":
        day_at = text.skip(start + 1, "the", "slash", "dash")
        if text.word(day_at) == ".":
            day_at += 1
        number, end = _day_number(text, day_at)
        if number is None or text.cat(end) in ("ampm", "oclock"):
            return None
        return _dated(text, text.value(start), number, end)
    start = text.skip(at, "the", "on")
    number, after = _day_number(text, start)
    if number is None:
        return None
    if text.word(after) in ("day", "dia"):
        after += 1
    month_at = text.skip(after, "of", "slash", "dash")
    if text.word(month_at) == "." and text.cat(month_at + 1) == "month":
        month_at += 1
    if text.word(month_at) in ("mes", "-", "/"):
        month_at += 1
    if text.cat(month_at) != "month" or _is_verb_may(text, start, after, month_at):
        return None
    end = text.skip(month_at + 1, "of")
    return _dated(text, text.value(month_at), number, end if _is_year(text, end) else month_at + 1)


def _is_verb_may(text: Text, start: int, after: int, at: int) -> bool:
    """`9 may work`: the verb, not the month."""
    return text.word(at) == "may" and text.cat(at + 1) == "word" and at == after and text.cat(start) == "num"


def _day_number(text: Text, at: int) -> tuple[int | None, int]:
    """A day of the month, `5th`, `22`, `twenty second`, and the place after it; None where there is none."""
    is_tens = text.cat(at) == "num" and text.value(at) in (20, 30) and not text.word(at)[:1].isdigit()
    if is_tens and text.cat(at + 1) in ("ordinal", "num") and 0 < text.value(at + 1) < 10:
        return text.value(at) + text.value(at + 1), at + 2
    if text.cat(at) in ("num", "ordinal") and 1 <= text.value(at) <= 31:
        return text.value(at), at + 1
    return None, at


def _is_year(text: Text, at: int) -> bool:
    return text.cat(at) == "num" and len(text.word(at)) == 4 and 2000 <= text.value(at) <= 2100


def _dated(text: Text, month: int, day: int, end: int) -> Found:
    year_at = end + 1 if text.word(end) in (",", "-", "/") else end
    if _is_year(text, year_at):
        found = cal.make_date(text.value(year_at), month, day)
        end = year_at + 1
    else:
        found = cal.next_month_day(text.today, month, day)
    if not found:
        return Days((), is_impossible=True), end
    return replace(_one(found), month=found.replace(day=1)), end


def day_of_month(text: Text, at: int) -> Found | None:
    """`the 5th`, `5th`, `the 5th of next month`, `el 5`, `el dia 5`."""
    start = text.skip(at, "the", "on")
    if text.word(start) == "dia" and text.cat(start + 1) == "num":
        start += 1
    cat, number = text.cat(start), text.value(start)
    end = start + 1
    if cat == "ordinal" and number == 20 and text.cat(start - 1) != "num" and text.word(start) == "twentieth":
        pass
    if cat == "num" and number in (20, 30) and text.cat(start + 1) == "ordinal" and text.value(start + 1) < 10:
        number, cat, end = number + text.value(start + 1), "ordinal", start + 2
    if cat not in ("ordinal", "num") or not 1 <= number <= 39:
        return None
    if not _stands_for_a_day(text, at, start, end, cat):
        return None
    if text.word(end) in ("day", "dia") and text.cat(end + 1) == "of":
        end += 1
    following, after = _month_after(text, end)
    if following:
        found = cal.make_date(following.year, following.month, number)
        end = after
    else:
        found = _in_the_month_named(text, number) or cal.next_day_of_month(text.today, number)
    return (_one(found) if found else Days((), is_impossible=True)), end


def _stands_for_a_day(text: Text, at: int, start: int, end: int, cat: str) -> bool:
    after = text.word(end)
    before = text.word(start - 1)
    if (
        after in _NOT_A_DAY
        or before == "$"
        or text.cat(end) in ("unit", "ampm", "oclock", "half_after", "quarter_after")
    ):
        return False
    if text.cat(end) == "part" and cat == "num":
        return False
    spelled = not text.word(start)[:1].isdigit()
    if cat == "ordinal":
        has_month = text.cat(text.skip(end, "of", "the")) in ("month", "next", "this")
        if spelled and text.value(start) < 4 and end == start + 1:
            is_alone = (
                text.word(start - 1) == "the" and text.word(start - 2) == "on" and text.cat(end) in ("", "mark", "at")
            )
            return has_month or (is_alone and not text.setting.has_offer)
        return not (text.setting.has_offer and text.value(start) < 4 and text.setting.asked == "slot" and not has_month)
    if text.setting.language == "es":
        is_day = before in ("el", "dia", "el dia", "para el", "pal") or before.split(" ")[-1] in _DEL
        return (is_day and text.cat(end) not in ("of",)) or (is_day and text.cat(text.skip(end, "of", "the")) == "next")
    if before == "the" and text.word(start - 2) in ("on", "by", "before", "after", "until", "till", "til"):
        return True
    if before == "on" and text.word(start).isdigit() and (text.value(start) > 12 or text.cat(end) == "at"):
        return True
    return before == "the" and text.value(start) > 12 and not spelled


def _month_after(text: Text, at: int) -> tuple[date | None, int]:
    """The first of the month in `of next month`, `de este mes`, and the place after it."""
    start = text.skip(at, "of", "the")
    first = text.today.replace(day=1)
    if text.cat(start) in ("next", "coming", "this") and text.word(start + 1) in ("month", "mes"):
        return cal.add_months(first, 0 if text.cat(start) == "this" else 1), start + 2
    if text.word(start) == "mes" and text.cat(start + 1) in ("coming_after", "next"):
        return cal.add_months(first, 1), start + 2
    return None, at


def _in_the_month_named(text: Text, number: int) -> date | None:
    if text.month is None:
        return None
    found = cal.make_date(text.month.year, text.month.month, number)
    return found if found and found >= text.today else None


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
    if text.cat(day_at) != "weekday" or modifier == "last" or _is_no_weekday(text, day_at):
        return None
    number, end = text.value(day_at), day_at + 1
    if text.word(end) == "." and text.cat(end + 1) in ("ordinal", "month"):
        end += 1
    found = _with_a_date(text, number, end)
    if found:
        return found
    days, end = _modified(text, number, modifier, end)
    if text.cat(end) == "part" and text.word(end) == "temprano":
        return days, end
    return replace(days, part=part), end


def _is_no_weekday(text: Text, at: int) -> bool:
    """Short names that are words of their own: `sat in the car`, `the sun`, `mon` of another tongue."""
    word, before, after = text.word(at), text.word(at - 1), text.word(at + 1)
    if word == "sun":
        return before in ("the", "in", "hot") or after in ("is", "visor", "roof", "screen")
    if word == "sat":
        return before in ("i", "just", "it", "car", "has", "we") or after in ("in", "there", "for", "around")
    if word == "wed":
        return before in ("newly", "to", "get")
    if word == "tu":
        return text.setting.language == "es" or before in ("i",)
    return word == "mar" and text.setting.language == "es" and before in ("al", "el") and after in ("y",)


def _modified(text: Text, number: int, modifier: str, end: int) -> Found:
    """The weekday as its modifiers before and after it say."""
    today, coming = text.today, cal.next_weekday(text.today, number)
    following = cal.weekday_of_week(today + timedelta(7), number)
    after = text.cat(end)
    english = text.setting.language != "es"
    if text.word(end) == "week" and english and text.cat(end + 1) not in ("of", "after"):
        return _one(coming + timedelta(7)), end + 1
    in_week = _of_a_week(text, end)
    if in_week is not None and not modifier:
        return _one(cal.weekday_of_week(text.today + timedelta(7 * in_week[0]), number)), in_week[1]
    if text.cat(end) == "in" and text.cat(end + 1) == "a" and text.word(end + 2) == "week":
        return _one(coming + timedelta(7)), end + 3
    if after == "after" and text.cat(end + 1) == "next" and text.cat(end + 2) != "unit":
        return _one(coming + timedelta(7)), end + 2
    if modifier == "next" and english:
        if text.word(start_of := end) == "after" and text.cat(start_of + 1) == "next":
            return _one(following + timedelta(7)), end + 2
        return _one(following), end
    if modifier == "this":
        is_ahead = cal.weekday_of_week(today, number) > today
        if number == today.weekday() and text.setting.hours.left_of(today, text.setting.now):
            return _one(today), end
        return _one(cal.weekday_of_week(today, number) if is_ahead else coming), end
    if after in ("coming_after", "coming") or (
        after == "next" and text.word(end + 1) not in ("semana", "week", "month", "mes")
    ):
        return _one(coming), end + 1
    if modifier in ("coming", "next"):
        return _one(coming), end
    return Days((coming,), weekday=number), end


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
    if not found and text.cat(start) in ("ordinal",):
        found = day_of_month(text, start)
    least = 1 if text.setting.language == "es" else 13
    if not found and text.cat(start) == "num" and start == end and least <= text.value(start) <= 31:
        if text.cat(start + 1) in ("ampm", "oclock", "unit", "half_after", "quarter_after"):
            return None
        day = cal.next_day_of_month(text.today, text.value(start))
        found = (_one(day), start + 1) if day else None
    if not found or not found[0].days:
        return found
    return _checked(text, number, found[0], found[1])


def _checked(text: Text, number: int, dated: Days, end: int) -> Found:
    told = dated.days[0]
    if told.weekday() == number:
        return dated, end
    coming = cal.next_weekday(text.today, number)
    if told - text.today > SOON:
        return dated, end
    nearest = min((coming + timedelta(7 * n) for n in range(4)), key=lambda day: abs((day - told).days))
    return Days(tuple(sorted({told, nearest})), disagrees=True), end


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
    day = cal.next_holiday(text.today, text.name(start))
    if shift:
        day += timedelta(shift)
        if day < text.today:
            day = cal.holiday_in(day.year + 1, text.name(start)) + timedelta(shift)
    end = start + 1
    if text.cat(end) == "unit" and text.word(end) == "week":
        return _span(cal.monday_of(day), cal.monday_of(day) + timedelta(6), week=cal.monday_of(day)), end + 1
    if text.word(end) == "eve":
        day -= timedelta(1)
        end += 1
    return _one(day), end


def _shift_from(text: Text, at: int) -> tuple[int, int]:
    """Days between a holiday and what is meant, in `day after`, `dia antes de`; 0 where there is no such word."""
    if text.cat(at) == "unit" and text.word(at) in ("day", "dia") and text.cat(at + 1) in ("after", "before"):
        return (1 if text.cat(at + 1) == "after" else -1), at + 2
    return 0, at


def named_day(text: Text, at: int) -> Found | None:
    """`today`, `tomorrow`, `the day after tomorrow`, `tomorrow week`."""
    start = text.skip(at, "on")
    if text.cat(start) == "this" and text.cat(start + 1) == "part" and text.name(start + 1) not in ("lunch", "noon"):
        return _one(text.today), start + 1
    if text.cat(start) == "this" and text.word(start + 1) == "manana":
        return replace(_one(text.today), part="morning"), start + 2
    if text.cat(start) != "relday":
        return None
    shift, end = text.value(start), start + 1
    if shift >= 0 and text.word(end) == "week" and text.setting.language != "es":
        return _one(text.today + timedelta(shift + 7)), end + 1
    if shift < 0:
        return Days(()), end
    return _one(text.today + timedelta(shift)), end


def _one(day: date) -> Days:
    return Days((day,))


def _span(first: date, last: date, week: date | None = None) -> Days:
    return Days((first, last), is_span=True, week=week)


def weekday_of_month(text: Text, at: int) -> Found | None:
    """`the first Friday of next month`, `last Monday in March`, `el primer lunes de abril`."""
    start = text.skip(at, "the", "on")
    is_last = text.cat(start) == "last"
    if not (is_last or (text.cat(start) == "ordinal" and text.value(start) <= 5)) or text.cat(start + 1) != "weekday":
        return None
    first, end = _month_after(text, start + 2)
    month_at = text.skip(start + 2, "of", "in", "the")
    if first is None and text.cat(month_at) == "month" and month_at > start + 2:
        this = text.today.replace(day=1)
        is_this = text.value(month_at) == this.month
        first, end = this if is_this else cal.next_first_of_month(text.today, text.value(month_at)), month_at + 1
    if first is None:
        return None
    nth = -1 if is_last else text.value(start)
    found = cal.nth_weekday_of_month(first, text.value(start + 1), nth)
    return (_one(found) if found and found >= text.today else Days((), is_impossible=True)), end


RULES: tuple[Callable[[Text, int], Found | None], ...] = (
    numeric_date,
    weekday,
    holiday,
    month_and_day,
    named_day,
    weekday_of_month,
)
