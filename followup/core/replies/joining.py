"""Joining of mentions to visit times: a day with its hours, alternatives, and what a later word corrects."""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta

from followup.core.replies import calendar_days as cal
from followup.core.replies.alternatives import is_said_again
from followup.core.replies.calendar_days import days_until
from followup.core.replies.judging import is_ruled_out
from followup.core.replies.mentions import Days, Hour, Hours, Instant, Mention, PartOfDay, Text
from followup.core.replies.windows import Choice

_HALF_OF_PART = {
    "first_thing": "am", "early": "am", "morning": "am", "late_morning": "am", "afternoon": "pm", "after_lunch": "pm",
    "late_afternoon": "pm", "evening": "pm", "tonight": "pm", "end_of_day": "pm", "lunch": "pm", "noon": "pm",
}  # fmt: skip


def stands_between(text: Text, one: Mention, other: Mention) -> list[str]:
    """Categories (or words, where they have none) of what stands between two mentions."""
    between = [s.text if s.category in ("mark", "word") else s.category for s in text.symbols[one.end : other.start]]
    if between == ["at"] and text.word(one.end) in ("a", "al"):
        return ["to"]
    is_opened = "between" in (text.cat(one.start), text.cat(one.start - 1), text.cat(one.start - 2))
    return ["to"] if is_opened and between in (["and"], ["and", "the"]) else between


def join_mentions(text: Text, found: list[Mention]) -> list[Choice]:
    """The visit times that the mentions make together, in the order in which they stand."""
    choices: list[Choice] = []
    previous: Mention | None = None
    was_negated = False
    for one, is_out in zip(found, _ruled_out(text, found), strict=True):
        between = stands_between(text, previous, one) if previous else []
        is_list = bool({"or", "and", "slash"} & set(between))
        negated = is_out or (was_negated and _is_bare_list(between))
        one_value = _turned(one.value) if negated else one.value
        still_negated = negated and one_value is one.value
        choice_open = isinstance(one.value, Days) and text.cat(one.start) == "any"
        if isinstance(one_value, PartOfDay) and one_value.name == "tonight":
            _add(choices, Days((text.today,)), still_negated, between, is_list, False, text)
            one_value, between, is_list = PartOfDay("evening"), [], False
        _add(choices, one_value, still_negated, between, is_list, choice_open, text)
        was_negated, previous = still_negated, one
    return choices


def _is_bare_list(between: list[str]) -> bool:
    """Whether only the words of a list stand between two mentions."""
    is_list = bool({"or", "and", "slash"} & set(between))
    return is_list and all(part in ("or", "and", ",", "slash", "nor", "the", "on") for part in between)


_WITHIN_ONE_TIME = {"at", "on", "in", "the", "of", "around", "from", "this"}


def _ruled_out(text: Text, found: list[Mention]) -> list[bool]:
    """For each mention whether it is ruled out; a day and its hour go together: `not Friday at 3` rules out the hour.

    A bound leaves the day as it is: `can't Friday before 10` is Friday after 10.
    """
    told: list[bool] = []
    for number, one in enumerate(found):
        before = found[number - 1] if number else None
        is_whole = before is not None and told[-1] and _turned(before.value) is before.value
        is_listed = before is not None and is_whole and _is_bare_list(stands_between(text, before, one))
        told.append(is_ruled_out(text, one, before) or is_listed)
    first = 0
    for number in range(1, len(found) + 1):
        if number < len(found) and _are_one_time(text, found[number - 1], found[number]):
            continue
        group = range(first, number)
        if len(group) > 1 and any(told[n] for n in group):
            is_bound = any(_turned(found[n].value) is not found[n].value for n in group)
            for n in group:
                told[n] = not (is_bound and isinstance(found[n].value, Days))
        first = number
    return told


def _are_one_time(text: Text, one: Mention, following: Mention) -> bool:
    """Whether a day and an hour, or two words for the time of day, stand together as one time."""
    if isinstance(one.value, Days) and isinstance(following.value, Days):
        return one.start == following.start
    return set(stands_between(text, one, following)) <= _WITHIN_ONE_TIME


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
        if last and same and last.has_borrowed_day and set(between) <= {"on"}:
            choices[-1] = replace(last, day=value, has_borrowed_day=False)
            return
        if is_said_again(choices, value, negated, between):
            choices.append(Choice(value, is_again=True))
            return
        if last and _merge_day(choices, value, negated, between, is_list):
            return
        inherited = last.time if last and same and is_list and last.is_time_first and last.day else None
        choices.append(Choice(value, inherited, negated, bool(inherited), is_open, is_inherited=bool(inherited)))
        return
    if last and same and last.is_inherited and isinstance(value, Hours | PartOfDay):
        choices[-1] = replace(last, time=value, is_inherited=False)
        return
    if last and last.is_negated and not negated and _fill_open(choices, value, between):
        return
    if last and (same or (negated and last.day and last.time is None)) and last.time is None:
        if not (negated and not last.is_negated):
            choices[-1] = replace(last, time=value)
            return
        choices.append(Choice(last.day, value, True))
        return
    if last and same and last.time is not None and not _is_alternative(between, last.time, value):
        choices[-1] = replace(last, time=_combined(last.time, value))
        return
    day = last.day if last and not _is_far(between) else None
    choices.append(Choice(day, value, negated, day is None, has_borrowed_day=day is not None))


def _fill_open(choices: list[Choice], value: Hours | PartOfDay | Instant, between: list[str]) -> bool:
    """`Friday not Thursday, 11am`: the hour belongs to the wanted day that has none yet."""
    if between[:1] != [","]:
        return False
    wanted = [number for number, one in enumerate(choices) if not one.is_negated]
    if len(wanted) != 1 or choices[wanted[0]].day is None or choices[wanted[0]].time is not None:
        return False
    choices[wanted[0]] = replace(choices[wanted[0]], time=value)
    return True


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
        if part.name in ("noon", "midnight") and told.first.hour != 12 and not told.first.is_plain:
            return part
        first = told.first if told.first.half else replace(told.first, half=_half_for(told.first, part.name))
        last = told.last
        if last and not last.half:
            last = replace(last, half=_half_for(last, part.name))
        return replace(told, first=first, last=last)
    return new


def _half_for(told: Hour, part: str) -> str | None:
    """The half-day of an hour in a part of the day: eleven is before lunch, three at night is no afternoon."""
    half = _HALF_OF_PART.get(part)
    if half == "am" and told.hour == 12:
        return "pm"
    if part == "lunch" and 4 <= told.hour <= 9:
        return None  # the meal that is meant, not the time at which it is had
    is_before_noon = (part == "lunch" and told.hour in (10, 11)) or (
        part in ("tonight", "evening") and told.hour in (12, 1, 2, 3)
    )
    return "am" if is_before_noon else half


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
    if last.day.is_open_days and value.week and not negated and set(between) <= {"in", "of", "the"}:
        choices[-1] = replace(last, day=Days((value.week + timedelta(5), value.week + timedelta(6)), is_open_days=True))
        return True
    if last.day.is_open_days and value.month and not is_list and not negated:
        choices[-1] = replace(last, day=value)
        return True
    seven = last.day.days if last.day.is_span and not (last.day.week or last.day.bound) else ()
    if seven and (seven[-1] - seven[0]).days == 6 and value.weekday is not None and not (negated or is_list):
        day = seven[0] + timedelta((value.weekday - seven[0].weekday()) % 7)
        choices[-1] = replace(last, day=Days((day,), weekday=value.weekday, part=value.part))
        return True
    if last.day.week and value.weekday is not None:
        moved = _in_week(last.day.week, value)
        if not negated and not last.is_negated and not (is_list and not last.day.is_span):
            choices[-1] = replace(last, day=moved, is_time_first=last.time is not None)
        else:
            time = last.time if last.is_time_first and is_list and not negated else None
            choices.append(Choice(moved, time, negated, bool(time), is_inherited=bool(time)))
        return True
    if last.day.week and last.day.is_span and _is_date_of(last.day, value) and not (negated or last.is_negated):
        choices[-1] = replace(last, day=value)
        return True
    if last.day.weekday is not None and value.week and not last.day.is_span:
        for number, choice in enumerate(choices):
            if choice.day and choice.day.weekday is not None and not choice.day.week:
                choices[number] = replace(choice, day=_in_week(value.week, choice.day))
        if value.weekday is not None:
            choices.append(Choice(value, None, negated))
        return True
    return _merge_same_day(choices, last, value, between, is_list)


def _is_date_of(span: Days, value: Days) -> bool:
    """Whether a date lies in a week that was named before it (`next week, Tuesday the 10th`)."""
    return len(value.days) == 1 and not value.week and span.days[0] <= value.days[0] <= span.days[-1]


def _merge_same_day(choices: list[Choice], last: Choice, value: Days, between: list[str], is_list: bool) -> bool:
    if last.day is None:
        return False
    if last.day.days == value.days:
        return True
    is_range = bool({"to", "dash", "until"} & set(between)) and len(between) <= 3 and "," not in between
    if is_range and len(value.days) == 1 and len(last.day.days) == 1:
        value = _next_after(last.day.days[0], value)
    if is_range and len(value.days) == 1 and len(last.day.days) == 1 and value.days[0] > last.day.days[0]:
        choices[-1] = replace(last, day=Days(days_until(last.day.days[0], value.days[0])))
        return True
    are_weekdays = value.weekday is not None and last.day.weekday is not None
    if not between and not is_list and not are_weekdays and len(value.days) == 1 and len(last.day.days) == 1:
        both = tuple(sorted({*last.day.days, *value.days}))
        choices[-1] = replace(last, day=Days(both, disagrees=True))
        return True
    return False


def _next_after(first: date, value: Days) -> Days:
    """The last day of a range, which comes after its first: `Monday to Thursday`, `the 28th to the 3rd`."""
    day = value.days[0]
    is_plain = value.month in (None, first.replace(day=1)) and not value.is_later
    if day > first or not is_plain or value.part or value.disagrees:
        return value
    told = cal.next_day_of_month(first, day.day) if value.weekday is None else cal.next_weekday(first, value.weekday)
    return replace(value, days=(told or day,))


def _in_week(monday: date, value: Days) -> Days:
    return Days((monday + timedelta(value.weekday or 0),), weekday=value.weekday, week=monday, part=value.part)


def spread_times(choices: list[Choice]) -> list[Choice]:
    """A time told for the last of several days is meant for those before it that have none."""
    done = list(choices)
    for number in range(len(done) - 2, -1, -1):
        one, after = done[number], done[number + 1]
        is_plain_day = one.day is not None and one.time is None and not one.is_open and not one.day.is_span
        is_wanted = not one.is_negated and not after.is_negated
        has_time = after.day is not None and after.time is not None and not isinstance(after.time, Instant)
        if is_plain_day and is_wanted and has_time and not after.is_again:
            done[number] = replace(one, time=after.time)
    return done
