"""The grammar of months, seasons and years: `end of the month`, `first week of April`, `in the spring`, `next year`."""

from __future__ import annotations

from datetime import date, timedelta

from followup.core.replies import calendar_days as cal
from followup.core.replies.mentions import Days, Text

Found = tuple[Days, int]


def section_before(text: Text, at: int) -> tuple[str, int]:
    """`early`, `mid` or `late` before a period, and the place after it."""
    if text.cat(at) in ("early", "mid", "late"):
        return text.cat(at), at + 1
    if text.cat(at) == "part" and text.name(at) == "early":
        return "early", text.skip(at + 1, "in", "on")
    if text.cat(at) == "midweek":
        return "midweek", at
    if text.cat(at) == "ordinal" and text.value(at) == 1 and text.word(at + 1) in ("part", "half"):
        return "early", text.skip(at + 2, "of")
    return "", at


def month(text: Text, at: int) -> Found | None:
    """`end of the month`, `first week of April`, `mid March`, `next month`, `in June`, `a finales de mayo`."""
    start = text.skip(at, "the", "on", "any")
    section, after = _month_section(text, start)
    has_in = text.cat(start) in ("in", "until", "after", "before", "by") and not section
    if has_in:
        after = start + 1
    after = text.skip(after, "of", "the", "in")
    first, end = _which_month(text, after, bool(section) or has_in)
    if first is None or ((section or has_in) and _is_day_of_month(text, end)):
        return None
    if section:
        return _part_of_month(first, section), end
    if first == text.today.replace(day=1):
        return (Days((text.today, cal.last_day_of_month(first)), is_span=True), end) if not has_in else None
    return Days((first,), is_later=True, month=first), end


def _is_day_of_month(text: Text, at: int) -> bool:
    """Whether a day follows the name of the month: `early on April 29` is a day, no part of the month."""
    is_short = text.word(at) == "." and len(text.word(at - 1)) <= 4 and text.word(at - 1) not in ("may", "june", "july")
    day_at = text.skip(at + 1 if is_short else at, "the")
    is_day = text.cat(day_at) in ("ordinal", "num") and 1 <= text.value(day_at) <= 31
    return text.cat(at - 1) == "month" and is_day and text.cat(day_at + 1) not in ("ampm", "unit")


def last_day_of_month(text: Text, at: int) -> Found | None:
    """`the last day of March`, `el último día del mes`."""
    start = text.skip(at, "the", "on")
    if text.cat(start) != "last" or text.name(start + 1) != "day" or text.cat(start - 1) == "ordinal":
        return None
    month_at = text.skip(start + 2, "of", "the")
    first, end = _which_month(text, month_at, True)
    return (Days((cal.last_day_of_month(first),)), end) if first else None


def _month_section(text: Text, at: int) -> tuple[str, int]:
    section, after = section_before(text, at)
    if section in ("early", "mid", "late"):
        return section, after
    if text.cat(at) in ("ordinal", "last") and text.name(text.skip(at + 1, "of")) == "week":
        number = 0 if text.cat(at) == "last" else text.value(at)
        if number <= 4:
            return ("late" if number == 0 else f"week{number}"), at + 2
    if text.name(at) == "week" and text.word(at) == "ultima semana":
        return "late", at + 1
    if text.name(at) == "week" and text.cat(at + 1) in ("ordinal", "last"):
        return "late" if text.cat(at + 1) == "last" else f"week{text.value(at + 1)}", at + 2
    return "", at


def _which_month(text: Text, at: int, is_announced: bool) -> tuple[date | None, int]:
    """The first day of the month named here; a name alone needs a word before it (`may` and `march` are verbs)."""
    first = text.today.replace(day=1)
    cat = text.cat(at)
    if cat in ("next", "coming", "this") and text.name(at + 1) == "month":
        return cal.add_months(first, 0 if cat == "this" else 1), at + 2
    if text.name(at) == "month" and cat == "unit":
        if text.cat(at + 1) in ("coming_after", "next"):
            return cal.add_months(first, 1), at + 2
        return (first, at + 1) if is_announced and text.cat(at - 1) != "num" else (None, at)
    modifier = cat in ("next", "this", "coming")
    name_at = at + 1 if modifier else at
    if text.cat(name_at) != "month" or not (is_announced or modifier or _is_bare_month(text, name_at)):
        return None, at
    number = text.value(name_at)
    if number == text.today.month:
        return first, name_at + 1
    return cal.next_first_of_month(text.today, number), name_at + 1


def _is_bare_month(text: Text, at: int) -> bool:
    """A month's name that stands alone and is no verb: `June would be better`."""
    is_verb = text.word(at) in ("may", "march", "mar", "dec", "ago", "jun", "jan")
    if is_verb and text.word(at - 1) in ("like", "come", "until") and text.cat(at + 1) in ("", "mark"):
        return True
    return not is_verb and text.cat(at + 1) not in ("num",)


def _part_of_month(first: date, section: str) -> Days:
    last = cal.last_day_of_month(first)
    if section == "late":
        return Days((last - timedelta(6), last), is_span=True)
    shift = {"early": 0, "week1": 0, "week2": 7, "mid": 10, "week3": 14, "week4": 21}[section]
    return Days((first + timedelta(shift), first + timedelta(shift + 6)), is_span=True)


def season(text: Text, at: int) -> Found | None:
    """`in the spring`, `after the holidays`, `next year`: when to ask again."""
    start = text.skip(
        at, "in", "on", "until", "after", "before", "the", "early", "late", "around", "this", "next", "of", "coming"
    )
    between = {text.cat(n) for n in range(at, start)}
    if text.cat(start) == "season":
        if not (
            between & {"in", "until", "after", "before", "this", "next", "early", "coming"}
            or text.word(start - 1) in ("en el", "para el", "por el", "come", "like")
            or (text.cat(at) == "at" and text.word(at) in ("para", "por"))
        ):
            return None
        if text.word(start + 1) in ("tires", "tire", "wheels", "coil", "coils", "suspension", "set", "off", "apart"):
            return None
        return Days((cal.next_first_of_month(text.today, text.value(start)),), is_later=True), start + 1
    if text.cat(start) == "holidays" and between & {"after", "until", "in"}:
        return Days((_after_holidays(text.today),), is_later=True), start + 1
    is_year = text.cat(start) == "unit" and text.name(start) == "year"
    if is_year and "next" in between:
        return Days((date(text.today.year + 1, 1, 1),), is_later=True), start + 1
    if is_year and text.cat(start + 1) in ("coming_after", "next"):
        return Days((date(text.today.year + 1, 1, 1),), is_later=True), start + 2
    if text.cat(start) == "holiday" and text.name(start) == "new_year" and between & {"in", "after"}:
        return Days((_after_holidays(text.today),), is_later=True), start + 1
    return None


def _after_holidays(today: date) -> date:
    this_year = date(today.year, 1, 2)
    return this_year if this_year > today else date(today.year + 1, 1, 2)
