"""The grammar of clock times: hours as people type them, ranges, `after`, `before`, `around`, parts of the day."""

from __future__ import annotations

from datetime import timedelta

from followup.core.replies.mentions import Hour, Hours, Instant, PartOfDay, Text

FoundHour = tuple[Hour, int]
_TO = ("to", "dash", "until")
_SHORT_PARTS = {"morning": "am", "early": "am", "afternoon": "pm", "evening": "pm", "tonight": "pm", "dawn": "am"}
_MINUTES_PAST = {"past": 1, "after": 1, "to": -1, "before": -1, "of": -1, "until": -1}


def hour(text: Text, at: int) -> FoundHour | None:
    """A clock time at this place: `9`, `9:30`, `930am`, `half past 3`, `25 to 7`, `las tres y media`, `noon`."""
    at = text.skip(at, "the")
    found = _told_by_minutes(text, at) or _written(text, at)
    if not found:
        return None
    told, end = found
    return _with_half(text, told, end)


def _written(text: Text, at: int) -> FoundHour | None:
    cat = text.cat(at)
    if cat == "clock":
        hours, minutes = text.symbols[at].numbers[:2]
        return (Hour(hours % 24, minutes), at + 1) if hours <= 24 and minutes < 60 else None
    if cat == "decimal":
        return _decimal(text, at)
    if cat == "part" and text.name(at) in ("noon", "midnight"):
        return Hour(12, 0, "pm" if text.name(at) == "noon" else "am"), at + 1
    if cat != "num" or text.word(at + 1) == ":" or text.word(at - 1) == ":":
        return None
    number = text.value(at)
    if len(text.word(at)) in (3, 4) and text.word(at).isdigit():
        return _run_together(text, at, number)
    if not 0 <= number <= 24 or (number == 0 and text.word(at) != "00" and not _is_minutes_pair(text, at)):
        return None
    return _spoken(text, at, number)


def _decimal(text: Text, at: int) -> FoundHour | None:
    hours, minutes = text.symbols[at].numbers
    written = text.word(at)
    if "," in written or len(written.split(".")[1]) != 2 or hours > 24 or minutes > 59:
        return None
    return Hour(hours % 24, minutes, None, text.cat(at + 1) == "ampm"), at + 1


def _run_together(text: Text, at: int, number: int) -> FoundHour | None:
    """`930`, `1530`, `0900`; a number that can be a year needs am or pm."""
    hours, minutes = divmod(number, 100)
    has_half = text.cat(at + 1) == "ampm"
    if hours > 23 or minutes > 59 or (2000 <= number <= 2100 and not has_half):
        return None
    if not has_half and number % 5:
        return None
    return Hour(hours, minutes, "am" if text.word(at).startswith("0") and hours else None, has_half), at + 1


def _spoken(text: Text, at: int, number: int) -> FoundHour | None:
    """The hour with the minutes said after it: `three thirty`, `3 30`, `tres y media`, `cuatro menos cuarto`."""
    after = text.cat(at + 1)
    if (
        text.word(at + 1) == "h"
        and text.cat(at + 2) == "num"
        and len(text.word(at + 2)) == 2
        and text.value(at + 2) < 60
    ):
        return Hour(number % 24, text.value(at + 2)), at + 3
    if text.word(at + 1) in ("h", "hrs") and (number > 12 or text.word(at - 1) in ("at", "las", "la")):
        return Hour(number % 24, 0, None), at + 2
    if after == "oclock":
        return Hour(number % 24, 0), at + 2
    if after in ("half_after", "quarter_after"):
        return Hour(number, text.value(at + 1)), at + 2
    if after == "quarter_before":
        return Hour((number - 1) or 12, 45), at + 2
    if text.word(at + 1) in ("menos", "y") and text.cat(at + 2) == "num" and text.setting.language == "es":
        minutes, end = _minutes(text, at + 2)
        if (
            5 <= minutes < 60
            and minutes % 5 == 0
            and (text.word(at + 1) == "menos" or minutes > 12 or text.word(at - 1) in ("las", "la"))
            and not (
                text.word(at + 1) == "y" and minutes <= 12 and text.word(at + 2).isdigit() is False and minutes == 12
            )
        ):
            if text.word(at + 1) == "menos":
                return Hour((number - 1) or 12, 60 - minutes), end
            return Hour(number, minutes), end
    if after == "num" and 1 <= number <= 12:
        minutes, end = _minutes(text, at + 1)
        is_told = (
            text.cat(end) == "ampm"
            or text.cat(at - 1) in ("at", "around", "by", "after", "before", "weekday", "relday", "ordinal", "month")
            or at == 0
        )
        is_spelled = not text.word(at + 1).isdigit()
        if 10 <= minutes < 60 and is_told and (minutes % 5 == 0 or is_spelled or text.cat(end) == "ampm"):
            return Hour(number, minutes), end + 1 if text.name(end) == "minute" else end
        if _is_minutes_pair(text, at):
            return Hour(number, minutes), end
        if text.word(at + 1) in ("o", "oh") and text.cat(at + 2) == "num":
            return Hour(number, text.value(at + 2)), at + 3
    if after == "num" and (number > 12 or number == 0) and _is_minutes_pair(text, at):
        return Hour(number % 24, text.value(at + 1)), at + 2
    if text.word(at + 1) in ("oh", "o") and text.cat(at + 2) == "num" and text.value(at + 2) < 10:
        return Hour(number, text.value(at + 2)), at + 3
    return Hour(number % 24, 0, None, number > 12 and text.name(at + 1) == "hour"), at + 1


def _is_minutes_pair(text: Text, at: int) -> bool:
    """`2 05 pm`, `at 21 35`: two numbers of digits, the second of two, with something that shows a time."""
    minutes, end = text.word(at + 1), at + 2
    if not (minutes.isdigit() and len(minutes) == 2 and int(minutes) < 60 and text.word(at).isdigit()):
        return False
    is_led = text.cat(at - 1) in ("at", "around", "by", "after", "before", "weekday", "relday", "ordinal", "month", "")
    return text.cat(end) in ("ampm", "part") or (is_led and text.cat(end) in ("", "mark", "in"))


def _minutes(text: Text, at: int) -> tuple[int, int]:
    """Minutes in words or digits, `twenty five` as one number, and the place after them."""
    value, end = text.value(at), at + 1
    spelled = not text.word(at).isdigit()
    if spelled and value in (20, 30, 40, 50) and text.cat(end) == "num" and 0 < text.value(end) < 10:
        return value + text.value(end), end + 1
    if spelled and value in (20, 30, 40, 50) and text.word(end) == "y" and 0 < text.value(end + 1) < 10:
        return value + text.value(end + 1), end + 2
    return value, end


def _told_by_minutes(text: Text, at: int) -> FoundHour | None:
    """`half past 3`, `quarter to 4`, `ten past 3`, `20 minutes to 8`, `half 3` (UK), `cuarto para las 4`."""
    cat = text.cat(at)
    if cat == "half" and text.cat(at + 1) == "num" and 1 <= text.value(at + 1) <= 23:
        return Hour(text.value(at + 1), 30), at + 2
    if cat == "quarter_of":
        number_at = text.skip(at + 1, "the")
        return (Hour((text.value(number_at) - 1) or 12, 45), number_at + 1) if text.cat(number_at) == "num" else None
    if cat == "a" and text.cat(at + 1) == "quarter":
        at += 1
    if text.cat(at) == "quarter":
        minutes, end = 15, at + 1
    elif cat == "num":
        minutes, end = _minutes(text, at)
        end = end + 1 if text.name(end) == "minute" else end
    else:
        return None
    way = _MINUTES_PAST.get(text.cat(end)) if text.word(end) not in ("through", "thru", "later than") else None
    if text.word(end) == "from" and text.name(end - 1) == "minute":
        way = 1
    if text.word(end) in ("para", "pa", "til", "till"):
        way = -1
    number_at = text.skip(end + 1, "the")
    if way is None or text.cat(number_at) not in ("num",) or not 1 <= text.value(number_at) <= 24:
        return _past_noon(text, minutes, way, number_at)
    if (
        (
            cat == "num"
            and (text.word(end) == "to" or way == -1)
            and not ((minutes % 5 == 0 and minutes >= 20) or text.name(end - 1) == "minute")
        )
        and not (minutes == 15 and text.word(end) in ("to", "til", "till") and text.value(number_at) <= 12)
        and not (
            minutes in (5, 10, 15)
            and text.word(end) in ("to", "til", "till")
            and text.cat(at - 1) in ("at", "around", "by")
        )
        and not (text.word(end) in ("para", "pa") and minutes >= 5 and minutes % 5 == 0)
    ):
        return None
    if cat == "num" and way == 1 and text.word(end) not in ("past",) and text.name(end - 1) != "minute":
        return None
    number = text.value(number_at)
    if way == 1:
        return Hour(number, minutes), number_at + 1
    return Hour((number - 1) or 12, 60 - minutes), number_at + 1


def _past_noon(text: Text, minutes: int, way: int | None, at: int) -> FoundHour | None:
    if way is None or text.cat(at) != "part" or text.name(at) not in ("noon", "midnight"):
        return None
    is_noon = text.name(at) == "noon"
    if way == 1:
        return Hour(12, minutes, "pm" if is_noon else "am"), at + 1
    return Hour(11, 60 - minutes, "am" if is_noon else "pm"), at + 1


def _with_half(text: Text, told: Hour, end: int) -> FoundHour | None:
    """The hour with am, pm or a part of the day that follows it."""
    is_plain = told.is_plain and not (text.cat(end - 1) == "num" and text.word(end - 1).isdigit() and told.minute == 0)
    is_plain = is_plain and not (told.minute == 0 and text.cat(end - 1) == "num")
    after = end
    if text.cat(after) == "oclock":
        after, is_plain = after + 1, True
    if text.name(after) == "hour" and text.cat(after) == "unit" and text.setting.language == "es":
        after, is_plain = after + 1, True
    if text.cat(after) == "ampm":
        half = text.name(after)
        if told.hour == 0:
            return Hour(12, told.minute, half, True), after + 1
        end = _after_same_part(text, after + 1, half)
        return Hour(told.hour, told.minute, half if told.hour <= 12 else None, True), end
    if told.hour > 12:
        return Hour(told.hour, told.minute, None, is_plain or told.minute > 0), _after_same_part(text, after, "pm")
    if (
        text.word(after) in ("a", "p")
        and text.cat(end - 1) in ("num", "clock")
        and text.symbols[after].start == text.symbols[after - 1].end
    ):
        return Hour(told.hour, told.minute, text.word(after) + "m", True), after + 1
    if (
        text.word(after) in ("p", "a")
        and text.cat(end - 1) in ("num", "clock")
        and text.setting.language == "en"
        and _is_glued(text, after)
    ):
        return Hour(told.hour, told.minute, text.word(after) + "m", True), after + 1
    part_at = text.skip(after, "in", "the", "at", "of", "on")
    if text.word(end - 1) == "one" and text.cat(after) in ("at", "part"):
        return Hour(told.hour, told.minute, told.half, is_plain), after
    if (
        text.cat(part_at) == "part"
        and text.name(part_at) in _SHORT_PARTS
        and told.half is None
        and part_at - after <= 3
    ):
        half = _SHORT_PARTS[text.name(part_at)]
        if text.word(part_at) in ("night", "nite", "la noche", "por la noche", "de la noche") and told.hour in (
            12,
            1,
            2,
            3,
            4,
        ):
            half = "am"
        if not (half == "am" and told.hour == 12) and told.hour <= 12 and text.name(part_at) != "tonight":
            return Hour(told.hour, told.minute, half, True), part_at + 1
    return Hour(told.hour, told.minute, told.half, is_plain), after


def _after_same_part(text: Text, at: int, half: str) -> int:
    """The place after a part of the day that only says again which half-day it is: `8pm in the evening`."""
    part_at = text.skip(at, "in", "the", "at", "of")
    if text.cat(part_at) == "part" and part_at - at <= 2 and _SHORT_PARTS.get(text.name(part_at)) == half:
        return at if text.name(part_at) == "tonight" else part_at + 1
    return at


def _is_glued(text: Text, at: int) -> bool:
    """A lone `a` or `p` straight after a number stands for am or pm: `9 a`, `3 p` were `9a`, `3p`."""
    return text.word(at) == "p" or text.cat(at + 1) in ("", "mark", "dash", "or")


def time_range(text: Text, at: int) -> tuple[Hours, int] | None:
    """`between 1 and 3`, `from 9 to 11`, `9-11am`, `de 9 a 11`."""
    start, opener = at, text.cat(at)
    is_opened = opener in ("between", "from") or (
        opener == "of" and text.setting.language == "es" and text.word(at) == "de"
    )
    if is_opened:
        start = text.skip(at + 1, "the", "like", "around", "at")
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
    if not last:
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


def bounded_hour(text: Text, at: int) -> tuple[Hours, int, bool] | None:
    """`after 3`, `before 10`, `by 2`, `around 10`, `10ish`, `3 or later`; the last value: whether words show a time."""
    kinds = {"after": "after", "before": "before", "by": "by", "around": "around", "until": "by"}
    kind = kinds.get(text.cat(at))
    start = (
        text.skip(at, "after", "before", "by", "around", "until", "at", "the", "in", "any")
        if kind
        else text.skip(at, "at")
    )
    found = hour(text, start)
    if not found:
        return None
    told, end = found
    is_shown = bool(kind) or told.is_plain or start > at or text.word(start) in ("las", "la")
    if text.cat(end) == "dash" and text.cat(end + 1) == "ish":
        end += 1
    if text.cat(end) == "ish":
        kind, end, is_shown = kind or "around", end + 1, True
        if text.cat(end) == "ampm":
            told, end = Hour(told.hour, told.minute, text.name(end)), end + 1
    elif text.cat(end) == "onward" or (text.word(end) == "on" and text.cat(end + 1) in ("", "mark") and kind is None):
        kind, end, is_shown = "after", end + 1, True
    elif text.cat(end) == "orearlier":
        kind, end, is_shown = "by", end + 1, True
    if text.cat(at) == "from" and kind is None:
        kind = "after"
    return Hours(kind or "at", told), end, is_shown


def part_of_day(text: Text, at: int) -> tuple[PartOfDay, int] | None:
    """A named part of the day, am or pm alone, a bare `early`."""
    start = text.skip(at, "in", "the", "at", "on", "around", "any", "of", "by")
    if text.cat(start) == "part":
        return PartOfDay(text.name(start)), start + 1
    if text.cat(start) == "ampm":
        if text.word(start) == "am" and not _is_half_day(text, start):
            return None
        return PartOfDay("morning" if text.name(start) == "am" else "afternoon"), start + 1
    return None


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


def instant(text: Text, at: int) -> tuple[Instant, int] | None:
    """`in 2 hours`, `in half an hour`, `in 20 min`, `en media hora`."""
    start = at + 1 if text.cat(at) == "in" else at
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
    return Instant(text.setting.now + timedelta(minutes=minutes)), start + 2
