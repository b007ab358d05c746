"""The grammar of clock times: hours as people type them; ranges and bounds of them are in `hour_spans.py`."""

from __future__ import annotations

from followup.core.replies.judging import moves_before
from followup.core.replies.mentions import Hour, Text
from followup.core.replies.words.entry import word_set

FoundHour = tuple[Hour, int]
_SHORT_PARTS = {
    "morning": "am", "early": "am", "afternoon": "pm", "evening": "pm", "tonight": "pm", "dawn": "am", "midnight": "am",
}  # fmt: skip
_MINUTES_PAST = {"past": 1, "after": 1, "to": -1, "before": -1, "of": -1, "until": -1}


def hour(text: Text, at: int) -> FoundHour | None:
    """A clock time at this place: `9`, `9:30`, `930am`, `half past 3`, `25 to 7`, `las tres y media`, `noon`."""
    while text.cat(at) == "the" and text.word(at) not in ("el", "los", "lo"):
        at += 1
    by_minutes = _told_by_minutes(text, at)
    found = by_minutes or _written(text, at)
    if not found:
        return None
    told = _with_half(text, *found)
    return _before_twelve(text, told, by_minutes[1] - 1) if told and by_minutes else told


def _before_twelve(text: Text, found: FoundHour, number_at: int) -> FoundHour:
    """`quarter to 12 pm` lies before noon: am and pm belong to the hour that is named, not to the one before it."""
    told, end = found
    is_of_twelve = text.value(number_at) == 12 and told.hour == 11 and told.half
    if not is_of_twelve or (text.cat(end - 1) != "ampm" and text.name(end - 1) != "afternoon"):
        return found
    return Hour(told.hour, told.minute, "am" if told.half == "pm" else "pm"), end


def _written(text: Text, at: int) -> FoundHour | None:
    cat = text.cat(at)
    if cat == "clock":
        hours, minutes = text.symbols[at].numbers[:2]
        return (Hour(hours % 24, minutes), at + 1) if hours <= 24 and minutes < 60 else None
    if cat == "decimal":
        return _decimal(text, at)
    if cat == "part" and text.name(at) in ("noon", "midnight"):
        return Hour(12, 0, "pm" if text.name(at) == "noon" else "am"), at + 1
    if cat != "num" or text.word(at + 1) == ":" or (text.word(at - 1) == ":" and text.cat(at - 2) == "num"):
        return None
    number = text.value(at)
    if number == 20 and text.word(at) == "twenty" and 0 < text.value(at + 1) < 4 and text.cat(at + 1) == "num":
        at, number = at + 1, 20 + text.value(at + 1)
    if len(text.word(at)) in (3, 4) and text.word(at).isdigit():
        return _run_together(text, at, number)
    if text.cat(at + 1) == "ordinal" and number in (20, 30) and not text.word(at).isdigit():
        return None
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
    if hours > 23 or minutes > 59 or (2000 <= number <= 2100 and not has_half and text.word(at - 1) != "at"):
        return None
    if not has_half and number % 5:
        return None
    return Hour(hours, minutes, "am" if text.word(at).startswith("0") and hours else None, has_half), at + 1


def _spoken(text: Text, at: int, number: int) -> FoundHour | None:
    """The hour with the minutes said after it: `three thirty`, `3 30`, `tres y media`, `cuatro menos cuarto`."""
    after, word = text.cat(at + 1), text.word(at + 1)
    if word in ("h", "hrs", "hr"):
        minutes_at = at + 2
        if word == "h" and text.cat(minutes_at) == "num" and len(text.word(minutes_at)) == 2:
            return (Hour(number % 24, text.value(minutes_at)), at + 3) if text.value(minutes_at) < 60 else None
        if number > 12 or text.word(at - 1) in ("at", "las", "la"):
            return Hour(number % 24, 0, None), at + 2
    if after == "oclock":
        return Hour(number % 24, 0), at + 2
    if after in ("half_after", "quarter_after"):
        return Hour(number, text.value(at + 1)), at + 2
    if after == "quarter_before":
        return Hour((number - 1) or 12, 45), at + 2
    found = _minutes_in_spanish(text, at, number) or _minutes_after(text, at, number)
    return found or (Hour(number % 24, 0, None, number > 12 and text.name(at + 1) == "hour"), at + 1)


def _minutes_in_spanish(text: Text, at: int, number: int) -> FoundHour | None:
    """`cuatro menos veinte`, `las tres y diez`."""
    word = text.word(at + 1)
    if word not in ("menos", "y") or text.cat(at + 2) != "num" or text.setting.language != "es":
        return None
    minutes, end = _minutes(text, at + 2)
    if not 5 <= minutes < 60 or minutes % 5:
        return None
    if word == "menos":
        return Hour((number - 1) or 12, 60 - minutes), end
    return (Hour(number, minutes), end) if minutes > 12 or text.word(at - 1) in ("las", "la") else None


_SHOWS_HOUR = (
    "at", "around", "by", "after", "before", "weekday", "relday", "ordinal", "month", "from", "between", "to", "until",
)  # fmt: skip


def _minutes_after(text: Text, at: int, number: int) -> FoundHour | None:
    """`three thirty`, `at 3 30`, `nine oh five`: an hour and its minutes as two numbers."""
    is_oh = text.word(at + 1) == "oh" or (text.word(at + 1) == "o" and text.setting.language != "es")
    if is_oh and text.cat(at + 2) == "num" and text.value(at + 2) < 10:
        return Hour(number, text.value(at + 2)), at + 3
    if text.cat(at + 1) != "num":
        return None
    minutes, end = _minutes(text, at + 1)
    if number > 12 or number == 0:
        is_said = not (text.word(at)[:1].isdigit() or text.word(at + 1)[:1].isdigit())
        is_day_time = is_said and 12 < number <= 23 and minutes in (*range(10, 20), 20, 30, 40, 45, 50)
        led_by = text.cat(at - 2 if number > 20 else at - 1)
        if is_day_time and (led_by in _SHOWS_HOUR or text.cat(end) in ("ampm", "relday", "weekday")):
            return Hour(number, minutes), end
        return (Hour(number % 24, text.value(at + 1)), at + 2) if _is_minutes_pair(text, at) else None
    is_told = text.cat(end) == "ampm" or text.cat(at - 1) in _SHOWS_HOUR or at == 0 or _has_part(text, end)
    is_told = is_told or text.word(at - 1) == "time"
    is_spelled = not text.word(at + 1).isdigit()
    is_told = is_told or (is_spelled and not text.word(at).isdigit() and (_ends(text, end) or _goes_on(text, end)))
    is_likely = minutes % 5 == 0 or is_spelled or text.cat(end) == "ampm"
    if 10 <= minutes < 60 and is_told and is_likely:
        return Hour(number, minutes), end + 1 if text.name(end) == "minute" else end
    return (Hour(number, minutes), end) if _is_minutes_pair(text, at) else None


def _is_minutes_pair(text: Text, at: int) -> bool:
    """`2 05 pm`, `at 21 35`: two numbers of digits, the second of two, with something that shows a time."""
    minutes, end = text.word(at + 1), at + 2
    if not (minutes.isdigit() and len(minutes) == 2 and int(minutes) < 60 and text.word(at).isdigit()):
        return False
    if text.cat(end) == "ampm" or _has_part(text, end):
        return True
    is_expected = text.setting.asked in ("day", "time", "slot", "confirm") and int(minutes) % 5 == 0
    is_led = text.cat(at - 1) in (*_SHOWS_HOUR, "mark", "") or text.word(at - 1) in _LEADS_PAIR
    is_led = is_led or (is_expected and text.cat(at - 1) == "word" and text.word(at - 1) not in _COUNTS)
    if is_led and _ends(text, end):
        return True
    is_sure = text.value(at) > 12 or is_expected
    return is_led and is_sure and _goes_on(text, end)


def _ends(text: Text, at: int) -> bool:
    """Whether a clause ends at this place."""
    return text.cat(at) in ("", "mark", "in")


def _has_part(text: Text, at: int) -> bool:
    """Whether a part of the day is told for the time that ends here: `in the evening`, `at night`."""
    part_at = text.skip(at, "in", "the", "at")
    return text.cat(part_at) == "part" and part_at - at <= 2


_LEADS_PAIR = word_set(
    "las la be time ok yes yeah yep sure would is does will do my only said mean meant prefer like then"
) | {
    "make it",
    "make that",
    "i mean",
    "i meant",
}
_COUNTS = word_set(
    "option number no pads tires brakes front rear left right size unit apartment highway route room code are"
)
_GOES_ON = word_set(
    "then please i we is if works would thanks ok under for suits will be can that so work good fine should",
    "appointment instead sounds it suit suits possible available free only",
    "exactly might could may too yes yeah",
)


def _goes_on(text: Text, at: int) -> bool:
    """Whether a reply goes on here after its time, so that two numbers before it count nothing."""
    if text.cat(at) == "month":
        return text.cat(text.skip(at + 1, "the")) in ("num", "ordinal")
    if text.cat(at) == "the":
        return text.cat(at + 1) in ("num", "ordinal")
    is_to = text.cat(at) == "to" and text.cat(at + 1) not in ("num", "clock")
    is_date = text.cat(at) in ("num", "ordinal") and text.cat(at + 1) == "month"
    return (
        is_to
        or is_date
        or text.cat(at) in ("date", "onward", "orearlier", "oclock", "on", "weekday", "relday", "and", "or")
        or text.word(at) in _GOES_ON
    )


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
        minutes, end = text.value(at), at + 1
    elif cat == "num":
        minutes, end = _minutes(text, at)
        end = end + 1 if text.name(end) == "minute" else end
    else:
        return None
    way = _way(text, end)
    number_at = text.skip(end + 1, "the")
    number = text.value(number_at)
    if way is None or text.cat(number_at) != "num" or not 1 <= number <= 24:
        return _past_noon(text, minutes, way, number_at)
    if cat == "num" and not _are_minutes(text, at, minutes, way, end, number):
        return None
    if way == 1:
        return Hour(number, minutes), number_at + 1
    return Hour((number - 1) or 12, 60 - minutes), number_at + 1


def _way(text: Text, at: int) -> int | None:
    """1 where the minutes are told past the hour, -1 where they are told to it, None where neither is."""
    word = text.word(at)
    if word == "from" and text.name(at - 1) == "minute":
        return 1
    if word in ("para", "pa", "til", "till"):
        return -1
    return None if word in ("through", "thru", "later than") else _MINUTES_PAST.get(text.cat(at))


def _are_minutes(text: Text, at: int, minutes: int, way: int, end: int, number: int) -> bool:
    """Whether a number before an hour is its minutes and not the start of a range (`9 to 11`, `10 to 4`)."""
    word = text.word(end)
    if text.name(end - 1) == "minute":
        return True
    if way == 1:
        return word == "past"
    if word in ("para", "pa"):
        return minutes >= 5 and minutes % 5 == 0
    if minutes % 5 == 0 and minutes >= 20:
        return True
    if word not in ("to", "til", "till") or minutes not in (5, 10, 15):
        return False
    is_led = text.cat(at - 1) in _LEADS_TO_ONE or text.word(at - 1) in _LEADS_WORD
    is_told = text.word(at - 1) in ("is", "be", ":") and (
        "time" in (text.word(at - 2), text.word(at - 3)) or text.cat(at - 2) in ("onward", "orearlier")
    )
    is_moved = moves_before(text, at)
    is_led = is_led or is_told or (text.word(at - 1) == "my" and not is_moved)
    is_led = is_led or (is_moved and text.cat(at - 1) == "mark")
    return is_led or (minutes == 15 and number <= 12) or _is_no_range(text, minutes, number, end + 2)


_LEADS_WORD = ("time", "make it", "make that", "arrive", "arriving", "there")
_LEADS_TO_ONE = ("at", "around", "by", "after", "before", "to")
"""What stands before one time and never before a range."""


def _is_no_range(text: Text, first: int, last: int, end: int) -> bool:
    """Whether hours so far apart are no visit (`5 to 3`, `10 to 4 in the afternoon`), so the first are minutes."""
    is_early = text.name(end) == "am" or text.name(text.skip(end, "in", "the")) == "morning"
    if first == last or (first == 5 and (last < 5 or last > 10 or is_early)):
        return True
    return first > last and _has_part(text, end)


def _past_noon(text: Text, minutes: int, way: int | None, at: int) -> FoundHour | None:
    if way is None or text.cat(at) != "part" or text.name(at) not in ("noon", "midnight"):
        return None
    is_noon = text.name(at) == "noon"
    if way == 1:
        return Hour(12, minutes, "pm" if is_noon else "am"), at + 1
    return Hour(11, 60 - minutes, "am" if is_noon else "pm"), at + 1


def _with_half(text: Text, told: Hour, end: int) -> FoundHour | None:
    """The hour with am, pm or a part of the day that follows it."""
    is_number = text.cat(end - 1) == "num" and told.minute == 0 and text.word(end - 1) != "00"
    is_plain = told.is_plain and not is_number
    after = end
    is_hour_unit = text.name(after) == "hour" and text.cat(after) == "unit" and text.setting.language == "es"
    if text.cat(after) == "oclock" or is_hour_unit:
        after, is_plain = after + 1, True
    half = _written_half(text, after)
    if half and told.hour == 0 and text.cat(after) == "ampm":
        return Hour(12, told.minute, half, True), after + 1
    if half:
        told = Hour(told.hour, told.minute, half if told.hour <= 12 else None, True)
        return told, _after_same_part(text, after + 1, half)
    if told.hour > 12:
        return Hour(told.hour, told.minute, None, is_plain or told.minute > 0), _after_same_part(text, after, "pm")
    return _with_part(text, Hour(told.hour, told.minute, told.half, is_plain), after)


def _written_half(text: Text, at: int) -> str | None:
    """`am` or `pm` as written at this place, `9a` and `3p` too; None where neither stands there."""
    if text.cat(at) == "ampm":
        return text.name(at)
    if text.word(at) not in ("a", "p") or text.cat(at - 1) not in ("num", "clock"):
        return None
    is_glued = text.symbols[at].start == text.symbols[at - 1].end
    is_lone = text.setting.language == "en" and (text.word(at) == "p" or text.cat(at + 1) in ("", "mark", "dash", "or"))
    return text.word(at) + "m" if is_glued or is_lone else None


def _with_part(text: Text, told: Hour, end: int) -> FoundHour:
    """The hour with the half-day that a part of the day after it tells: `3 in the afternoon`."""
    part_at = text.skip(end, "in", "the", "at", "of", "on")
    half = _SHORT_PARTS.get(text.name(part_at)) if text.cat(part_at) == "part" else None
    is_one_night = text.word(end - 1) == "one" and text.cat(end) in ("at", "part")
    if half is None or told.half is not None or part_at - end > 3 or is_one_night:
        return told, end
    if text.word(part_at) in _NIGHT and told.hour in (12, 1, 2, 3, 4):
        half = "am"
    elif text.word(part_at) == "midnight":
        return told, end
    if (half == "am" and told.hour == 12 and text.word(part_at) not in _NIGHT) or text.name(part_at) == "tonight":
        return told, end
    return Hour(told.hour, told.minute, half, True), part_at + 1


_NIGHT = ("night", "nite", "midnight", "la noche", "por la noche", "de la noche")


def _after_same_part(text: Text, at: int, half: str) -> int:
    """The place after a part of the day that only says again which half-day it is: `8pm in the evening`."""
    part_at = text.skip(at, "in", "the", "at", "of")
    if text.cat(part_at) == "part" and part_at - at <= 2 and _SHORT_PARTS.get(text.name(part_at)) == half:
        return at if text.name(part_at) == "tonight" else part_at + 1
    return at
