"""The grammar of spans of hours: ranges, `after`, `before`, `around` an hour, parts of the day, `in 2 hours`."""

from __future__ import annotations

from datetime import timedelta

from followup.core.replies.clock_times import hour
from followup.core.replies.judging import comes_now, moves_before
from followup.core.replies.mentions import Hour, Hours, Instant, PartOfDay, Text

_TO = ("to", "dash", "until")


def time_range(text: Text, at: int) -> tuple[Hours, int] | None:
    """`between 1 and 3`, `from 9 to 11`, `9-11am`, `de 9 a 11`."""
    start, opener = at, text.cat(at)
    is_opened = opener in ("between", "from") or (
        opener == "of" and text.setting.language == "es" and text.word(at) == "de"
    )
    if is_opened:
        start = text.skip(at + 1, "the", "like", "around", "at")
    elif opener == "at":
        start = text.skip(at, "at")
    first = hour(text, start)
    if not first:
        return None
    joint = first[1]
    joins = text.cat(joint) in _TO or (
        text.setting.language == "es" and text.word(joint) in ("a", "y", "al", "hasta", "a las")
    )
    joins = joins or (opener == "between" and text.cat(joint) in ("and", "or"))
    if not joins or (text.word(joint) in ("y",) and opener != "between"):
        return None
    last = hour(text, text.skip(joint + 1, "the", "like", "around", "at"))
    if not last or _is_move(text, at, joint):
        return None
    if first[0].hour > 12 and (last[0].half or last[0].hour <= 12):
        return None
    is_dash = text.cat(joint) == "dash"
    is_sure = is_opened or first[0].is_plain or last[0].is_plain or is_dash or text.cat(joint) == "to"
    if not is_sure and not (text.setting.language == "es" and text.word(start) in ("las", "la")):
        return None
    if last[0].hour == first[0].hour and last[0].minute == first[0].minute:
        return None
    return Hours("between", first[0], last[0]), last[1]


def _is_move(text: Text, at: int, joint: int) -> bool:
    """`move my 9am to 2pm`, `change it from 9 to 11`: an old time and a new one, no range."""
    if text.cat(joint) != "to" or text.cat(at) == "between" or text.cat(at - 1) == "to":
        return False
    return moves_before(text, at)


def bounded_hour(text: Text, at: int) -> tuple[Hours, int, bool] | None:
    """`after 3`, `before 10`, `by 2`, `around 10`, `10ish`, `3 or later`; the last value: whether words show a time."""
    kinds = {"after": "after", "before": "before", "by": "by", "around": "around", "until": "by"}
    kind = kinds.get(text.cat(at))
    is_from = text.cat(at) == "from" and not moves_before(text, at)
    start = (
        text.skip(at, "after", "before", "by", "around", "until", "at", "the", "in", "any")
        if kind
        else text.skip(at + 1 if is_from else at, "at")
    )
    found = hour(text, start)
    if not found:
        return None
    told, end = found
    is_shown = bool(kind) or told.is_plain or start > at + is_from or text.word(start) in ("las", "la")
    is_shown = is_shown or (text.word(start - 1) == "time" and text.cat(start - 2) == "the")
    if text.cat(end) == "dash" and text.cat(end + 1) == "ish":
        end += 1
    if text.cat(end) == "ish":
        kind, end, is_shown = kind or "around", end + 1, True
        if text.cat(end) == "ampm":
            told, end = Hour(told.hour, told.minute, text.name(end)), end + 1
    elif (text.cat(end) == "onward" and _ends_on(text, end)) or (
        text.word(end) == "on"
        and (text.cat(end + 1) in ("", "mark") or (is_from and not _names_day(text, end + 1)))
        and kind is None
        and text.word(end - 1) != "one"
    ):
        kind, end, is_shown = "after", end + 1, True
    elif text.cat(end) == "orearlier":
        kind, end, is_shown = "by", end + 1, True
    if is_from and kind is None:
        kind = "after"
    bound = _told_as_bound(text, at) if kind is None else None
    if bound:
        kind, is_shown = bound, True
    return Hours(kind or "at", told), end, is_shown


def _names_day(text: Text, at: int) -> bool:
    return text.cat(at) in (
        "weekday",
        "relday",
        "month",
        "date",
        "ordinal",
        "num",
        "the",
        "any",
        "next",
        "this",
        "holiday",
    )


def _ends_on(text: Text, at: int) -> bool:
    """Whether `and on` at this place means later too, and is not the start of `and on Monday`."""
    return text.word(at) != "and on" or text.cat(at + 1) in ("", "mark")


def _told_as_bound(text: Text, at: int) -> str | None:
    """`the earliest I can do is 9`, `my latest would be 3`: the bound that the words before an hour make of it."""
    if text.word(at - 1) not in ("is", "be"):
        return None
    before = [text.cat(n) for n in range(max(0, at - 8), at - 1)]
    if any(cat == "mark" for cat in before):
        return None
    return "after" if "onward" in before else "by" if "orearlier" in before else None


def _about_noon(text: Text, at: int, start: int) -> tuple[Hours, int] | None:
    """`around noon`, `noonish`: an hour either side of noon, as with any other hour."""
    if text.name(start) != "noon":
        return None
    if text.word(start) == "noonish":
        return Hours("around", Hour(12, 0, "pm")), start + 1
    if text.cat(at) == "by" and start == at + 1:
        return Hours("by", Hour(12, 0, "pm")), start + 1
    is_ish = text.cat(start + 1) == "ish"
    if not is_ish and "around" not in (text.cat(at), text.cat(start - 1), text.cat(at - 1)):
        return None
    return Hours("around", Hour(12, 0, "pm")), start + (2 if is_ish else 1)


def part_of_day(text: Text, at: int) -> tuple[PartOfDay | Hours, int] | None:
    """A named part of the day, am or pm alone, a bare `early`."""
    start = text.skip(at, "in", "the", "at", "on", "around", "any", "of", "by")
    if text.cat(start) == "part":
        about_noon = _about_noon(text, at, start)
        if about_noon:
            return about_noon
        is_no_time = _is_greeting(text, start) or is_of_nights(text, start)
        return None if is_no_time else (PartOfDay(text.name(start)), start + 1)
    if text.cat(start) == "ampm":
        if text.word(start) == "am" and not _is_half_day(text, start):
            return None
        return PartOfDay("morning" if text.name(start) == "am" else "afternoon"), start + 1
    return None


_STAYS = ("stay", "trip", "booking", "break", "package", "rental", "reservation", "loan")


def is_of_nights(text: Text, at: int) -> bool:
    """`a four night stay`: the night at this place is one of several, and no part of a day."""
    if text.word(at) not in ("night", "nite") or text.cat(at - 1) != "num":
        return False
    return text.cat(at - 2) == "a" or text.word(at + 1) in _STAYS


_GREETED = ("all", "buddy", "guys", "folks", "team", "sir", "maam", "there", "everyone", "mate", "yall", "to")


def _is_greeting(text: Text, at: int) -> bool:
    """`Morning! Thursday works`, `evening guys`: a greeting at the start and no time."""
    if at > 0 or text.word(at) not in ("morning", "mornin", "afternoon", "evening"):
        return False
    is_cried = text.word(1) == "!" and any(text.cat(n) == "word" for n in range(2, min(len(text.symbols), 9)))
    return text.word(1) in _GREETED or is_cried


def _is_half_day(text: Text, at: int) -> bool:
    """Whether a lone `am` is the half-day and not the verb."""
    if text.word(at + 1) in (
        "i",
        "so",
        "not",
        "a",
        "the",
        "just",
        "going",
        "looking",
        "interested",
        "ok",
        "free",
        "able",
    ):
        return False
    return text.cat(at - 1) in ("relday", "weekday", "num", "the", "in", "or", "any", "", "this", "month", "ordinal")


def _is_all(text: Text, at: int) -> bool:
    """Whether nothing but marks stands beside this symbol."""
    return all(one.category == "mark" for place, one in enumerate(text.symbols) if place != at)


def instant(text: Text, at: int) -> tuple[Instant, int] | None:
    """`in 2 hours`, `in half an hour`, `in 20 min`, `en media hora`."""
    if text.cat(at) == "now":
        is_answer = text.setting.asked in ("day", "time", "slot") and _is_all(text, at)
        return (Instant(text.setting.now), at + 1) if is_answer or comes_now(text, at) else None
    start = text.skip(at + 1, "around") if text.cat(at) == "in" else at
    if text.word(start) == "less" and text.word(start + 1) == "than":
        start += 2
    if text.cat(start) == "half_hour" and (text.cat(at) == "in" or text.cat(start + 1) == "ahead"):
        return Instant(text.setting.now + timedelta(minutes=30)), start + (1 if text.cat(at) == "in" else 2)
    number = 1 if text.cat(start) in ("a",) or text.word(start) in ("una", "un") else text.value(start)
    if text.cat(start) == "couple":
        number = 2
    unit = text.name(start + 1)
    is_ahead = text.cat(at) == "in" or text.cat(start + 2) == "ahead"
    if (
        not is_ahead
        or unit not in ("hour", "minute")
        or not 0 < number < 600
        or text.cat(start) not in ("num", "a", "couple")
    ):
        return None
    minutes = number * (60 if unit == "hour" else 1)
    if text.word(start + 2) == "and" and text.word(start + 3) == "a" and text.cat(start + 4) == "half":
        return Instant(text.setting.now + timedelta(minutes=minutes + 30 * (unit == "hour"))), start + 5
    if text.cat(start + 2) == "half_after" and unit == "hour":
        return Instant(text.setting.now + timedelta(minutes=minutes + text.value(start + 2))), start + 3
    return Instant(text.setting.now + timedelta(minutes=minutes)), start + 2
