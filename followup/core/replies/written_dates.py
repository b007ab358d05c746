"""The grammar of written dates: `3/5`, `March 5`, `the 5th of next month`, by the shop's order of day and month."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

from followup.core.replies import calendar_days as cal
from followup.core.replies.judging import moves_before
from followup.core.replies.mentions import Days, Text

Found = tuple[Days, int]
"""Days and the place after them."""

_NOT_A_DAY = {
    "one", "ones", "option", "slot", "time", "times", "available", "opening", "openings", "appointment", "thing",
    "choice", "street", "st", "ave", "avenue", "floor", "gear", "grade", "place", "opcion",
    "cita", "hora", "vez", "row", "car", "owner", "reminder", "message", "text",
    "president", "century", "meeting", "visit", "event", "birthday", "anniversary", "attempt",
}  # fmt: skip
_OF_A_DAY_TOO = {"available", "opening", "openings", "slot", "appointment"}
"""After a high ordinal these speak of the day: `is the 14th available`."""
_AFTER_VERB_MAY = {"i", "we", "you", "be", "have", "not", "need", "come", "take", "want", "work", "suit", "do", "fit"}
_DEL = ("el", "del", "al", "dia")


def numeric_date(text: Text, at: int) -> Found | None:
    """`3/5`, `3/5/26`, `2026-03-05`, by the shop's order unless only the other order is a date."""
    if text.cat(at) == "num" and text.cat(at + 1) == "num" and is_year(text, at + 2):
        return _spaced_date(text, at)
    if text.cat(at) in ("decimal", "num"):
        return _dotted_date(text, at)
    if text.cat(at) != "date":
        return None
    numbers = text.symbols[at].numbers
    if numbers == (24, 7) or text.cat(at + 1) in ("unit",):
        return None
    if len(numbers) == 3 and numbers[0] > 31:
        found = cal.make_date(*numbers)
        return (one_day(found), at + 1) if found else (Days((), is_impossible=True), at + 1)
    return _ordered_date(text, at, numbers)


def _spaced_date(text: Text, at: int) -> Found | None:
    """`03 05 2026`: day, month and year with nothing but spaces between them."""
    numbers = (text.value(at), text.value(at + 1), text.value(at + 2))
    if not all(text.word(n).isdigit() for n in (at, at + 1, at + 2)):
        return None
    found = _ordered_date(text, at, numbers)
    return (found[0], at + 3) if found else None


def _dotted_date(text: Text, at: int) -> Found | None:
    """`on 4.22`, `on 4-22`, `4-22 at 8am`: a date only after `on` or before an hour, and where it is no clock time."""
    if text.word(at - 1) not in ("on", "el", "dia", "del") and not _is_before_an_hour(text, at + 3):
        return None
    if text.cat(at) == "decimal" and "." in text.word(at):
        numbers, end = text.symbols[at].numbers, at + 1
    elif text.cat(at + 1) == "dash" and text.cat(at + 2) == "num":
        numbers, end = (text.value(at), text.value(at + 2)), at + 3
    else:
        return None
    if max(numbers) > 31 or max(numbers) <= 12 or text.cat(end) in ("ampm", "oclock"):
        return None
    found = _ordered_date(text, at, numbers)
    return (found[0], end) if found else None


def _is_before_an_hour(text: Text, at: int) -> bool:
    """Whether an hour that shows itself as one follows: `, 8am`, `at 8:30`."""
    start = at + 1 if text.word(at) == "," or text.cat(at) == "at" else at
    return start > at and (text.cat(start) == "clock" or (text.cat(start) == "num" and text.cat(start + 1) == "ampm"))


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
            return replace(one_day(found), month=found.replace(day=1)), at + 1
    looks_like_date = 1 <= orders[0][0] <= 12 and 1 <= orders[0][1] <= 31
    return (Days((), is_impossible=True), at + 1) if looks_like_date else None


def month_and_day(text: Text, at: int) -> Found | None:
    """`March 5`, `Mar. the 5th, 2027`, `5 March`, `the 5th of March`, `5 de marzo`; in `2 June 23rd` the last two."""
    start = text.skip(at, "on", "this", "next", "coming", "the")
    if text.cat(start) == "month":
        day_at = text.skip(start + 1, "the", "slash", "dash")
        if text.word(day_at) == "." or (text.word(day_at) == "," and _is_day_and_year(text, day_at + 1)):
            day_at += 1
        number, end = _day_number(text, day_at)
        is_of_us = text.word(end) == "of" and text.word(end + 1) in ("us", "them", "you")
        if number is None or text.cat(end) in ("ampm", "oclock") or is_of_us:
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
    if text.cat(start) == "num" and text.cat(text.skip(month_at + 1, "the")) == "ordinal":
        return None
    end = text.skip(month_at + 1, "of")
    return _dated(text, text.value(month_at), number, end if is_year(text, end) else month_at + 1)


def days_of_one_month(text: Text, at: int) -> Found | None:
    """`12-14 March`, `the 12th or 13th of March`: several days before the name of their month."""
    first_at = text.skip(at, "the")
    joint = text.cat(first_at + 1)
    last_at = text.skip(first_at + 2, "the")
    month_at = text.skip(last_at + 1, "of")
    days = text.value(first_at), text.value(last_at)
    are_days = all(text.cat(n) in ("num", "ordinal") for n in (first_at, last_at)) and 1 <= days[0] < days[1] <= 31
    if not are_days or joint not in ("dash", "to", "and", "or") or text.cat(month_at) != "month":
        return None
    if joint == "to" and moves_before(text, at):
        return None
    if text.cat(month_at + 1) in ("num", "ordinal", "the") or text.cat(at - 1) in ("at", "around", "after", "before"):
        return None
    first, last = (cal.next_month_day(text.today, text.value(month_at), day) for day in days)
    if not first or not last or first > last or _is_verb_may(text, last_at, month_at, month_at):
        return None
    is_span = text.cat(at - 1) == "between" or joint not in ("and", "or")
    both = (first, last) if not is_span else cal.days_until(first, last)
    return Days(both, month=first.replace(day=1)), month_at + 1


def _is_day_and_year(text: Text, at: int) -> bool:
    """Whether a day of the month and a year follow: `Sept, 03, 2026`."""
    return text.cat(at) in ("num", "ordinal") and is_year(text, at + 1 + (text.word(at + 1) == ","))


def _is_verb_may(text: Text, start: int, after: int, at: int) -> bool:
    """`9 may work`: the verb, not the month."""
    return text.word(at) == "may" and text.word(at + 1) in _AFTER_VERB_MAY and at == after and text.cat(start) == "num"


def _day_number(text: Text, at: int) -> tuple[int | None, int]:
    """A day of the month, `5th`, `22`, `twenty second`, and the place after it; None where there is none."""
    is_tens = text.cat(at) == "num" and text.value(at) in (20, 30) and not text.word(at)[:1].isdigit()
    if is_tens and text.cat(at + 1) in ("ordinal", "num") and 0 < text.value(at + 1) < 10:
        return text.value(at) + text.value(at + 1), at + 2
    if text.cat(at) in ("num", "ordinal") and 1 <= text.value(at) <= 31:
        return text.value(at), at + 1
    return None, at


def impossible_day(text: Text, at: int) -> Found | None:
    """`el 35 de marzo`: a number that no month has as a day."""
    start = text.skip(at, "the", "on")
    month_at = text.skip(start + 1, "of")
    is_told = start > at and text.cat(start) == "num" and month_at > start + 1 and text.cat(month_at) == "month"
    return (Days((), is_impossible=True), month_at + 1) if is_told and 31 < text.value(start) < 100 else None


def is_year(text: Text, at: int) -> bool:
    """Whether a year stands at this place."""
    return text.cat(at) == "num" and len(text.word(at)) == 4 and 2000 <= text.value(at) <= 2100


def _dated(text: Text, month: int, day: int, end: int) -> Found:
    year_at = end + 1 if text.word(end) in (",", "-", "/") else end
    if is_year(text, year_at):
        found = cal.make_date(text.value(year_at), month, day)
        end = year_at + 1
    else:
        found = cal.next_month_day(text.today, month, day)
    if not found:
        return Days((), is_impossible=True), end
    return replace(one_day(found), month=found.replace(day=1)), end


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
    following, after = month_after(text, end)
    if following:
        found = cal.make_date(following.year, following.month, number)
        end = after
    else:
        found = _in_the_month_named(text, number) or cal.next_day_of_month(text.today, number)
    return (one_day(found) if found else Days((), is_impossible=True)), end


_ALSO_OF_A_DAY = {"available", "opening", "openings", "appointment", "slot"}
"""Of those words the ones that a later day can have too: `the 14th available`, but `the first available`."""


def _stands_for_a_day(text: Text, at: int, start: int, end: int, cat: str) -> bool:
    after = text.word(end)
    if cat == "ordinal" and text.value(start) > 4 and after in _ALSO_OF_A_DAY:
        after = ""
    before = text.word(start - 1)
    if (
        (after in _NOT_A_DAY and not (after in _OF_A_DAY_TOO and cat == "ordinal" and text.value(start) > 4))
        or (after == "of" and text.word(end + 1) in ("us", "them", "you"))
        or before == "$"
        or text.cat(end) in ("ampm", "oclock", "half_after", "quarter_after", "last")
        or (text.cat(end) == "unit" and not (text.word(end) in ("day", "dia") and text.cat(end + 1) == "of"))
    ):
        return False
    if text.cat(end) == "part" and cat == "num" and before not in ("el", "dia", "el dia"):
        return False
    spelled = not text.word(start)[:1].isdigit()
    if cat == "ordinal":
        has_month = text.cat(text.skip(end, "of", "the")) in ("month", "next", "this")
        is_of_month = text.cat(end) == "of" and text.name(text.skip(end, "of", "the")) == "month"
        has_month = has_month or (is_of_month and text.cat(start - 2) != "after")
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


def month_after(text: Text, at: int) -> tuple[date | None, int]:
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


def one_day(day: date) -> Days:
    """A single day."""
    return Days((day,))
