"""Reading the times of a text: mentions are found, judged (wanted, ruled out, taken back, no visit time), and joined."""

from __future__ import annotations

import re
from dataclasses import dataclass, replace
from datetime import date

from followup.core.replies import clock_times, periods
from followup.core.replies.judging import is_no_visit, is_ruled_out, is_taken_back, moves
from followup.core.replies.mentions import Days, Hour, Hours, Instant, Mention, PartOfDay, Setting, Text
from followup.core.replies.symbols import read_symbols
from followup.core.replies.windows import Choice, days_until

_GLUE = {"at", "on", "in", "the", "any", "of", "around", "from", "a", "this", "between", "coming"}
_NO_HOUR_AFTER = frozenset(
    [
        "people",
        "persons",
        "adults",
        "kids",
        "cars",
        "car",
        "vehicles",
        "tires",
        "tire",
        "wheels",
        "brakes",
        "miles",
        "mile",
        "mi",
        "km",
        "k",
        "kms",
        "kilometers",
        "millas",
        "dollars",
        "bucks",
        "percent",
        "guys",
        "times",
        "others",
        "more",
        "years",
        "year",
        "old",
        "month",
        "months",
        "day",
        "days",
        "week",
        "weeks",
        "of",
        "pads",
        "llantas",
        "carros",
        "personas",
        "veces",
        "cosas",
        "things",
        "weeks",
        "ones",
        "options",
        "rooms",
        "guests",
        "tickets",
        "nights",
        "lbs",
        "psi",
        "mm",
        "in",
        "dolares",
        "%",
        "$",
        "mph",
        "ago",
        "kilometros",
        "thousand",
        "grand",
        "messages",
        "texts",
        "calls",
    ]
)
_WORDS_THAT_OPEN = frozenset({"otra", "otro", "other"})
"""Words outside the lists with which a time can begin."""
_GOES_WITH_HOUR = frozenset(
    [
        "works",
        "work",
        "is",
        "would",
        "please",
        "sounds",
        "good",
        "if",
        "can",
        "ok",
        "fine",
        "be",
        "better",
        "best",
        "suits",
        "would",
        "will",
        "then",
        "thanks",
        "should",
        "instead",
        "me",
        "esta",
        "si",
        "seria",
        "porfavor",
        "sale",
        "funciona",
        "queda",
        "it",
        "perfect",
        "great",
        "would",
        "for",
        "sharp",
        "y",
        "for",
        "that",
        "perfecto",
        "mejor",
        "gracias",
    ]
)
_HALF_OF_PART = {
    "first_thing": "am", "early": "am", "morning": "am", "late_morning": "am", "afternoon": "pm", "after_lunch": "pm",
    "late_afternoon": "pm", "evening": "pm", "tonight": "pm", "end_of_day": "pm", "lunch": "pm", "noon": "pm",
}  # fmt: skip


@dataclass(frozen=True)
class Read:
    """The times that a text holds."""

    choices: tuple[Choice, ...] = ()
    later: tuple[Days, ...] = ()
    """When to ask again, as told."""
    is_any: bool = False
    other: tuple[Mention, ...] = ()
    """Mentions that are no visit times."""
    has_bare_hour: bool = False


def read_times(plain: str, setting: Setting) -> tuple[Read, Text]:
    """All times of a plain text."""
    text = Text(read_symbols(plain, setting.language), setting, plain)
    found = _scan(text)
    kept: list[Mention] = []
    other: list[Mention] = []
    for number, one in enumerate(found):
        after = found[number + 1] if number + 1 < len(found) else None
        follows_other = (
            bool(other) and number > 0 and found[number - 1] is other[-1] and _is_one_phrase(text, other[-1], one)
        )
        (other if follows_other or is_no_visit(text, one, after) else kept).append(one)
    kept = _without_taken_back(text, kept)
    later = tuple(one.value for one in kept if isinstance(one.value, Days) and one.value.is_later)
    visit = [one for one in kept if not (isinstance(one.value, Days) and one.value.is_later)]
    choices = tuple(_propagated(_joined(text, visit)))
    bare = any(isinstance(one.value, Hours) and not one.value.first.is_plain for one in visit)
    return Read(choices, later, _is_any(plain), tuple(other), bare), text


def _is_one_phrase(text: Text, one: Mention, following: Mention) -> bool:
    """Whether only glue stands between two mentions, so that they are one time."""
    return all(part in _GLUE for part in _between(text, one, following))


def _is_any(plain: str) -> bool:
    return bool(_ANY.search(plain))


_ANY = re.compile(
    r"\b(any ?time|any ?day|whenever|im flexible|flexible|asap|as soon as (possible|you can)|"
    r"soonest|earliest (you have|available|possible|opening|appointment)"
    r"|first available|next available|cualquier (dia|hora|momento)|cuando (sea|puedan|quieran|"
    r"gusten|tengan)|lo antes posible|lo mas pronto( posible)?|cuanto antes|right away|"
    r"today or tomorrow soon)\b"
)


def _scan(text: Text) -> list[Mention]:
    found: list[Mention] = []
    at = 0
    while at < len(text.symbols):
        if text.cat(at) in ("word", "mark") and text.word(at) not in _WORDS_THAT_OPEN:
            at += 1
            continue
        one = _mention_at(text, at, found[-1] if found else None)
        if one is None or one.end <= at:
            at += 1
            continue
        if isinstance(one.value, Days) and one.value.month:
            text.month = one.value.month
        if isinstance(one.value, PartOfDay) and one.value.name == "tonight":
            found.append(Mention(Days((text.today,)), one.start, one.end))
        if not (isinstance(one.value, Days) and not one.value.days and not one.value.is_impossible):
            found.append(one)
        at = one.end
    return found


def _mention_at(text: Text, at: int, previous: Mention | None) -> Mention | None:
    """The longest thing that begins here."""
    candidates: list[Mention] = []
    for rule in (
        clock_times.instant,
        periods.bounded_day,
        periods.any_day,
        clock_times.time_range,
        clock_times.part_of_day,
    ):
        got = rule(text, at)
        if got:
            candidates.append(Mention(got[0], at, got[1]))
    day = _day_of_the_same_month(text, at, previous)
    if day:
        candidates.insert(0, day)
    hour = clock_times.bounded_hour(text, at)
    if hour and _is_hour(text, at, hour, previous):
        candidates.append(Mention(hour[0], at, hour[1]))
    candidates = [one for one in candidates if not _is_cut_range(text, one, previous)]
    return max(candidates, key=lambda one: one.end) if candidates else None


def _is_cut_range(text: Text, one: Mention, previous: Mention | None) -> bool:
    """A range of two bare numbers counts only where it can be hours."""
    if not isinstance(one.value, Hours) or one.value.kind != "between" or one.value.last is None:
        return False
    if text.word(one.end) in _NO_HOUR_AFTER or (text.cat(one.end) == "unit" and text.name(one.end) not in ("hour",)):
        return True
    return text.word(one.start - 1) in ("$", "#")


def _day_of_the_same_month(text: Text, at: int, previous: Mention | None) -> Mention | None:
    """`March 5 or 6`, `the 5th to the 8th`: a number after a day of the month."""
    if not previous or not isinstance(previous.value, Days) or not previous.value.month or previous.end != at - 1:
        return None
    number_at = text.skip(at, "the")
    if text.cat(at - 1) not in ("or", "and", "to", "dash") or text.cat(number_at) not in ("num", "ordinal"):
        return None
    if text.cat(number_at + 1) in ("ampm", "oclock", "month") or not 1 <= text.value(number_at) <= 31:
        return None
    month = previous.value.month
    try:
        day = month.replace(day=text.value(number_at))
    except ValueError:
        return None
    return Mention(Days((day,), month=month), at, number_at + 1) if day >= text.today else None


def _is_hour(text: Text, at: int, got: tuple[Hours, int, bool], previous: Mention | None) -> bool:
    """Whether a bare number is an hour: what stands around it must say so."""
    told, end, is_shown = got
    after, before = text.word(end), text.word(at - 1)
    if (after in _NO_HOUR_AFTER and not (after == "of" and told.first.is_plain)) or before in (
        "$",
        "#",
        "option",
        "number",
        "opcion",
        "numero",
    ):
        return False
    if text.cat(end) == "unit" and not told.first.is_plain:
        return False
    if told.first.is_plain or (told.first.minute and is_shown):
        return True
    if text.word(at) in (
        "for",
        "say",
        "maybe",
        "around",
        "about",
        "para",
        "por",
        "near",
        "como",
        "sobre",
        "a",
        "from",
        "to",
    ) and not _near_time(text, at, end, previous):
        return (
            _ends_here(text, end)
            and text.word(at) not in ("from", "to")
            and (text.word(at) != "a" or (text.setting.language == "es" and text.word(at + 1) in ("las", "la")))
        )
    if before == "to" and _ends_here(text, end) and moves(text.plain[: text.symbols[at].start]):
        return True
    spelled = not any(char.isdigit() for symbol in text.symbols[at:end] for char in symbol.text)
    if text.word(at - 1) in ("make it", "make that", "make") and told.first.hour >= 1:
        return True
    if spelled and told.first.hour == 1 and not is_shown:
        return False
    if is_shown and not (spelled and text.cat(at) == "at" and text.word(end) in ("of",)):
        return True
    if _near_time(text, at, end, previous):
        return not (spelled and told.first.hour == 1 and text.cat(text.skip(end, "at")) in ("in", "the", "word"))
    if text.setting.asked in ("time", "slot", "day", "confirm") and _stands_alone(text, at, end):
        return not (spelled and told.first.hour < 3)
    return bool(after in _GOES_WITH_HOUR and text.setting.asked in ("time", "slot", "day") and not spelled)


def _near_time(text: Text, at: int, end: int, previous: Mention | None) -> bool:
    """Whether another time stands right before or after this number."""
    if previous and isinstance(previous.value, Days | PartOfDay | Hours):
        between = [text.symbols[n] for n in range(previous.end, at)]
        if all(one.category in (*_GLUE, "or", "and") or one.text == "," for one in between):
            is_list = any(one.category in ("or", "and") or one.text == "," for one in between)
            return isinstance(previous.value, Hours) or not is_list or isinstance(previous.value, PartOfDay)
    if text.cat(text.skip(end, "this")) == "part" or (
        text.word(end) == "," and text.cat(text.skip(end + 1, "this")) == "part"
    ):
        return True
    after = text.skip(end, "on", "the", "this", "or", "next", "coming")
    if text.cat(end) == "or":
        ahead = clock_times.bounded_hour(text, end + 1)
        return bool(
            ahead
            and (
                ahead[0].first.is_plain
                or _ends_here(text, ahead[1])
                or text.word(ahead[1]) in _GOES_WITH_HOUR
                or text.cat(text.skip(ahead[1], "on", "the")) in ("weekday", "relday")
            )
        )
    return text.cat(after) in ("weekday", "relday") and text.word(end) != "."


def _ends_here(text: Text, at: int) -> bool:
    return text.cat(at) in ("", "mark", "or", "and", "except")


def _stands_alone(text: Text, at: int, end: int) -> bool:
    """Whether nothing but marks and polite words stands beside the number."""
    polite = {
        "please",
        "thanks",
        "ok",
        "yes",
        "sure",
        "maybe",
        "works",
        "gracias",
        "si",
        "por",
        "favor",
        "um",
        "uh",
        "like",
        "is",
        "good",
        "fine",
        "then",
        "great",
        "yeah",
        "perfect",
    }
    others = [one for n, one in enumerate(text.symbols) if not at <= n < end]
    return all(one.category in ("mark", "at", "or", "num", "the", "and") or one.text in polite for one in others)


def _without_taken_back(text: Text, found: list[Mention]) -> list[Mention]:
    """The mentions without those that the text itself corrects (`tues, no wait wed`) or moves away from."""
    kept: list[Mention] = []
    for number, one in enumerate(found):
        way = is_taken_back(text, found[number - 1] if number else None, one)
        if way == "this":
            continue
        if way == "before":
            is_time = not isinstance(one.value, Days)
            while kept and (not is_time or not isinstance(kept[-1].value, Days)):
                kept.pop()
        kept.append(one)
    return kept


def _between(text: Text, one: Mention, other: Mention) -> list[str]:
    """Categories (or words, where they have none) of what stands between two mentions."""
    return [s.text if s.category in ("mark", "word") else s.category for s in text.symbols[one.end : other.start]]


def _joined(text: Text, found: list[Mention]) -> list[Choice]:
    choices: list[Choice] = []
    previous: Mention | None = None
    was_negated = False
    for one in found:
        between = _between(text, previous, one) if previous else []
        is_list = bool({"or", "and", "slash"} & set(between))
        is_bare_list = (
            bool(between)
            and all(part in ("or", "and", ",", "slash", "nor", "the", "on") for part in between)
            and is_list
        )
        negated = is_ruled_out(text, one, previous) or (was_negated and is_bare_list)
        one_value = _turned(one.value) if negated else one.value
        still_negated = negated and one_value is one.value
        choice_open = isinstance(one.value, Days) and text.cat(one.start) == "any"
        if isinstance(one_value, PartOfDay) and one_value.name == "tonight":
            _add(choices, Days((text.today,)), still_negated, between, is_list, False, text)
            one_value, between, is_list = PartOfDay("evening"), [], False
        _add(choices, one_value, still_negated, between, is_list, choice_open, text)
        was_negated, previous = still_negated, one
    return choices


def _turned(value: Days | Hours | PartOfDay | Instant) -> Days | Hours | PartOfDay | Instant:
    """`can't before 10` means after 10, `can't after 3` before 3."""
    ways = {"before": "after", "by": "after", "after": "before"}
    if isinstance(value, Hours) and value.kind in ways:
        return replace(value, kind=ways[value.kind])
    return value


def _add(
    choices: list[Choice],
    value: Days | Hours | PartOfDay | Instant,
    negated: bool,
    between: list[str],
    is_list: bool,
    is_open: bool,
    text: Text,
) -> None:
    last = choices[-1] if choices else None
    same = last is not None and last.is_negated == negated
    if isinstance(value, Days):
        if last and _merge_day(choices, value, negated, between, is_list):
            return
        inherited = last.time if last and same and is_list and last.is_time_first and last.day else None
        choices.append(Choice(value, inherited, negated, bool(inherited), is_open))
        return
    if last and (same or (negated and last.day and last.time is None)) and last.time is None and not _breaks(between):
        if not (negated and not last.is_negated):
            choices[-1] = replace(last, time=value)
            return
        choices.append(Choice(last.day, value, True))
        return
    if last and same and last.time is not None and not _is_alternative(between, last.time, value):
        choices[-1] = replace(last, time=_combined(last.time, value))
        return
    day = last.day if last and not _is_far(between) else None
    choices.append(Choice(day, value, negated, day is None))


def _breaks(between: list[str]) -> bool:
    return False


def _is_far(between: list[str]) -> bool:
    return len(between) > 25


def _is_alternative(between: list[str], old: object, new: object) -> bool:
    if isinstance(old, Hours) and isinstance(new, Hours):
        ways = {old.kind, new.kind}
        return not (len(ways) == 2 and ways <= {"after", "before", "by"} and "or" not in between)
    return bool({"or", "slash"} & set(between)) or (
        isinstance(old, PartOfDay) and isinstance(new, PartOfDay) and bool({"and", ","} & set(between))
    )


def _combined(old: Hours | PartOfDay | Instant, new: Hours | PartOfDay | Instant) -> Hours | PartOfDay | Instant:
    """A part of the day and an hour that belong together, `after 9` with `before 11`."""
    if isinstance(old, Hours) and isinstance(new, Hours):
        after, before = (old, new) if old.kind == "after" else (new, old)
        return Hours("between", after.first, before.first)
    part, told = (old, new) if isinstance(old, PartOfDay) else (new, old)
    if isinstance(part, PartOfDay) and isinstance(told, Hours):
        half = _HALF_OF_PART.get(part.name)
        first = told.first if told.first.half else replace(told.first, half=_half_for(told.first, half))
        last = told.last if told.last is None or told.last.half else replace(told.last, half=_half_for(told.last, half))
        return replace(told, first=first, last=last)
    return new


def _half_for(told: Hour, half: str | None) -> str | None:
    """Noon and one o'clock belong to a morning's end as little as eight belongs to the afternoon before closing."""
    return "pm" if half == "am" and told.hour == 12 else half


def _merge_day(choices: list[Choice], value: Days, negated: bool, between: list[str], is_list: bool) -> bool:
    """A day that joins what stands before it: fills hours told first, or says the same day in another way."""
    last = choices[-1]
    if last.day is None and last.is_negated == negated and last.time is not None:
        if isinstance(last.time, Instant):
            return False
        for number, choice in enumerate(choices):
            if choice.day is None and choice.is_negated == negated:
                choices[number] = replace(choice, day=value, is_time_first=True)
        return True
    if last.day is None or (last.is_negated != negated and value.weekday is None):
        return False
    if last.day.week and value.weekday is not None:
        moved = _in_week(last.day.week, value)
        if not negated and not last.is_negated and not (is_list and not last.day.is_span):
            choices[-1] = replace(last, day=moved)
        else:
            choices.append(Choice(moved, None, negated))
        return True
    if last.day.weekday is not None and value.week and not last.day.is_span:
        for number, choice in enumerate(choices):
            if choice.day and choice.day.weekday is not None and not choice.day.week:
                choices[number] = replace(choice, day=_in_week(value.week, choice.day))
        return True
    return _merge_same_day(choices, last, value, between, is_list)


def _merge_same_day(choices: list[Choice], last: Choice, value: Days, between: list[str], is_list: bool) -> bool:
    if last.day is None:
        return False
    if last.day.days == value.days:
        return True
    is_range = bool({"to", "dash", "until"} & set(between)) and len(between) <= 3
    if is_range and len(value.days) == 1 and len(last.day.days) == 1 and value.days[0] > last.day.days[0]:
        choices[-1] = replace(last, day=Days(days_until(last.day.days[0], value.days[0])))
        return True
    if not between and not is_list and len(value.days) == 1 and len(last.day.days) == 1:
        both = tuple(sorted({*last.day.days, *value.days}))
        choices[-1] = replace(last, day=Days(both, disagrees=True))
        return True
    return False


def _in_week(monday: date, value: Days) -> Days:
    from datetime import timedelta

    return Days((monday + timedelta(value.weekday or 0),), weekday=value.weekday, week=monday, part=value.part)


def _propagated(choices: list[Choice]) -> list[Choice]:
    """A time told for the last of several days is meant for those before it that have none."""
    done = list(choices)
    for number in range(len(done) - 2, -1, -1):
        one, after = done[number], done[number + 1]
        is_plain_day = one.day is not None and one.time is None and not one.is_open and not one.day.is_span
        if is_plain_day and after.time is not None and after.day is not None and one.is_negated == after.is_negated:
            if not isinstance(after.time, Instant) and not one.is_negated:
                done[number] = replace(one, time=after.time)
    return done
