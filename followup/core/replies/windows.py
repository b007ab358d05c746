"""From days and hours as said to visit windows: opening hours, half-days, what is past, and what must be asked back."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime, time
from zoneinfo import ZoneInfo

from followup.core.replies.contract import Grain, TimeWindow
from followup.core.replies.mentions import Days, Hour, Hours, Instant, PartOfDay, Setting
from followup.core.replies.opening import Span

NOON, ONE_HOUR, HALF_HOUR = 720, 60, 30

_PLAIN_PARTS: dict[str, tuple[int | None, int | None]] = {
    "first_thing": (None, None), "early": (None, NOON), "morning": (None, NOON), "late_morning": (600, NOON),
    "lunch": (690, 810), "afternoon": (NOON, 1020), "after_lunch": (780, 1020), "late_afternoon": (900, None),
    "end_of_day": (None, None), "evening": (1020, None), "tonight": (1020, None), "dawn": (0, 360),
}  # fmt: skip
"""Bounds in minutes of the day; None is opening (first) or closing (second)."""


@dataclass(frozen=True)
class Resolved:
    """Windows of one choice, the question that they leave open, and whether the shop is closed on that day."""

    windows: tuple[TimeWindow, ...]
    question: str | None = None
    is_closed: bool = False


@dataclass(frozen=True)
class Choice:
    """One visit time as said: a day, a time of the day, or both."""

    day: Days | None = None
    time: Hours | PartOfDay | Instant | None = None
    is_negated: bool = False
    is_time_first: bool = False
    is_open: bool = False
    """Any time of the day is meant, so a time told for the next day is not for this one."""
    is_inherited: bool = False
    """The time stood before an earlier day of a list, and gives way to one told for this day."""
    has_borrowed_day: bool = False
    """The day is the one named before, and gives way to one told right after the hour."""
    is_any_day: bool = False
    """The time is meant for any day (`any day after 4`), so not for today or the day under discussion."""
    is_again: bool = False
    """The day is one of several named before, told once more (`alternatives.py`)."""


def moment(day: date, minute: int, zone: str = "") -> datetime:
    """The wall time at a minute of the day; one that daylight saving skips moves to the next that exists."""
    at = datetime.combine(day, time(minute // 60 % 24, minute % 60))
    if zone and minute < 240:
        here = at.replace(tzinfo=ZoneInfo(zone))
        back = here.astimezone(ZoneInfo("UTC")).astimezone(ZoneInfo(zone)).replace(tzinfo=None)
        return back if back > at else at
    return at


def iso(at: datetime) -> str:
    """`2026-03-05T09:30`."""
    return at.isoformat(timespec="minutes")


def point(at: datetime) -> TimeWindow:
    """A point in time as a visit time."""
    return TimeWindow(start=iso(at), end=None, grain="time")


def window(day: date, first: int, last: int | None, grain: Grain) -> TimeWindow:
    """A window on one day from and to a minute of the day."""
    return TimeWindow(start=iso(moment(day, first)), end=None if last is None else iso(moment(day, last)), grain=grain)


def resolve(choice: Choice, setting: Setting, about: date | None, zone: str = "") -> Resolved:
    """The windows that a choice means."""
    if isinstance(choice.time, Instant):
        return _at_instant(choice.time, setting)
    days = choice.day
    if days is None and choice.is_any_day:
        return _on_any_day(choice.time, setting)
    if days is None:
        return _without_day(choice.time, setting, about)
    if days.is_impossible or not days.days:
        return Resolved((), "day" if days.is_impossible else None)
    if days.bound == "by" and days.anchor and isinstance(choice.time, Hours) and choice.time.kind == "at":
        return _on_day(days.anchor, choice.time, setting, zone)
    if days.is_span:
        return _over_span(days, choice.time, setting)
    part = choice.time or (PartOfDay(days.part) if days.part else None)
    wanted = days.days
    if days.is_open_days:
        wanted = tuple(day for day in wanted if setting.hours.left_of(day, setting.now)) or wanted[:1]
    each = [_on_day(day, part, setting, zone) for day in wanted]
    windows = tuple(entry for one in each for entry in one.windows)
    if days.disagrees:
        return Resolved(windows, "day")
    is_open_beside = any(one.windows and not one.is_closed for one in each)
    questions = [one.question for one in each if one.question and not (one.is_closed and is_open_beside)]
    return Resolved(windows, questions[0] if questions else None, all(one.is_closed for one in each))


def _at_instant(told: Instant, setting: Setting) -> Resolved:
    day, minute = told.at.date(), told.at.hour * 60 + told.at.minute
    span = setting.hours.on(day)
    if span is None:
        return closed_day(day)
    if span[0] <= minute < span[1]:
        return Resolved((window(day, minute, None, "time"),))
    return _whole_day(day, setting, "time")


def closed_day(day: date) -> Resolved:
    """A day on which the shop is closed: kept as said, and asked about."""
    return Resolved((TimeWindow(start=iso(moment(day, 0)), end=iso(moment(day, 0)), grain="day"),), "day", True)


def _whole_day(day: date, setting: Setting, question: str | None = None) -> Resolved:
    span = setting.hours.left_of(day, setting.now)
    if span is None:
        return closed_day(day)
    return Resolved((window(day, span[0], span[1], "day"),), question)


def _on_day(day: date, told: Hours | PartOfDay | Instant | None, setting: Setting, zone: str) -> Resolved:
    span = setting.hours.left_of(day, setting.now)
    if span is None:
        return closed_day(day)
    if told is None or isinstance(told, Instant):
        return _whole_day(day, setting)
    full = setting.hours.on(day) or span
    if isinstance(told, PartOfDay):
        return _part_on_day(day, told.name, span, full, setting)
    return _hours_on_day(day, told, span, full, setting, zone)


def _part_on_day(day: date, name: str, span: Span, full: Span, setting: Setting) -> Resolved:
    if name in ("noon", "midnight"):
        return _hours_on_day(day, Hours("at", Hour(12, 0, "pm" if name == "noon" else "am")), span, full, setting, "")
    if name == "first_thing":
        first, last = full[0], min(full[0] + ONE_HOUR, full[1])
    elif name == "end_of_day":
        first, last = max(full[1] - ONE_HOUR, full[0]), full[1]
    else:
        low, high = _PLAIN_PARTS[name]
        first = full[0] if low is None else max(low, full[0])
        last = full[1] if high is None else min(high, full[1])
    first = max(first, span[0])
    if first >= last:
        return _whole_day(day, setting, "time")
    return Resolved((window(day, first, last, "part"),))


def _hours_on_day(day: date, told: Hours, span: Span, full: Span, setting: Setting, zone: str) -> Resolved:
    spans = time_spans(told, span)
    if not spans:
        return _whole_day(day, setting, "time")
    windows = tuple(
        TimeWindow(
            start=iso(moment(day, first, zone)),
            end=None if last is None else iso(moment(day, last)),
            grain="time" if last is None else "part",
        )
        for first, last in spans
    )
    return Resolved(windows, "am_or_pm" if len(spans) > 1 else None)


def time_spans(told: Hours, span: Span) -> list[tuple[int, int | None]]:
    """The spans within these opening hours that hours as said can mean, a point with no end."""
    opens, closes = span
    starts = [minute for minute in told.first.minutes() if opens <= minute < closes]
    if told.kind == "at":
        return [(minute, None) for minute in starts]
    if told.kind == "after":
        return [(minute, closes) for minute in starts]
    if told.kind in ("before", "by"):
        return [(opens, minute) for minute in told.first.minutes() if opens < minute <= closes]
    if told.kind == "around":
        return [(max(opens, minute - HALF_HOUR), min(closes, minute + HALF_HOUR)) for minute in starts]
    return _between(told, span, starts)


def _between(told: Hours, span: Span, starts: list[int]) -> list[tuple[int, int | None]]:
    if told.last is None:
        return []
    opens, closes = span
    ends = [minute for minute in told.last.minutes() if opens < minute <= closes]
    early = [minute for minute in told.first.minutes() if minute < opens]
    late = [first for first in starts for last in told.last.minutes() if closes < last and last - first < 720]
    pairs = [(first, last) for first in starts for last in ends if last > first]
    if not pairs:
        pairs = [(opens, last) for first in early for last in ends if last - first < 720]
        longest = max((last - first for first, last in pairs), default=0)
        if late and closes - late[0] > longest:
            return [(late[0], closes)]
    if not pairs:
        return []
    nearest: dict[int, tuple[int, int]] = {}
    for first, last in pairs:
        if first not in nearest or last < nearest[first][1]:
            nearest[first] = (first, last)
    best = sorted(nearest.values(), key=lambda pair: pair[1] - pair[0])
    shortest = best[0][1] - best[0][0]
    same = sorted(pair for pair in best if pair[1] - pair[0] == shortest)
    return list(same)


def _over_span(days: Days, told: Hours | PartOfDay | Instant | None, setting: Setting) -> Resolved:
    """A week or another span of days: from its first opening to its last close, or the part of each open day."""
    is_point = (isinstance(told, Hours) and told.kind == "at") or told == PartOfDay("noon")
    if days.anchor and days.bound == "before" and is_point and days.is_up_to:
        return _on_day(days.anchor, told, setting, "")
    first, last = days.days[0], days.days[-1]
    first = max(first, setting.now.date())
    there = setting.hours.open_days(first, last, setting.now) if first <= last else []
    if not there:
        return closed_day(max(days.days[-1], setting.now.date()))
    if isinstance(told, Hours | PartOfDay) and len(there) <= 7:
        each = [_on_day(day, told, setting, "") for day in there]
        fitting = [one for one in each if one.question != "time"] or each
        question = next((one.question for one in fitting if one.question), None)
        return Resolved(tuple(entry for one in fitting for entry in one.windows), question)
    opens = setting.hours.left_of(there[0], setting.now) or (0, 0)
    closes = setting.hours.on(there[-1]) or (0, 0)
    start = moment(there[0], opens[0])
    if days.bound in ("before", "by"):
        start = max(start, setting.now.replace(second=0, microsecond=0)) if there[0] == setting.now.date() else start
    return Resolved((TimeWindow(start=iso(start), end=iso(moment(there[-1], closes[1])), grain="week"),))


def _without_day(told: Hours | PartOfDay | Instant | None, setting: Setting, about: date | None) -> Resolved:
    today = setting.now.date()
    if isinstance(told, PartOfDay) and told.name == "tonight":
        return _on_day(today, told, setting, "")
    if about is not None:
        return _on_day(about, told, setting, "")
    if isinstance(told, PartOfDay):
        return _part_alone(told.name, setting)
    if not isinstance(told, Hours):
        return Resolved(())
    span = setting.hours.left_of(today, setting.now)
    if span and time_spans(told, span):
        ahead = [pair for pair in time_spans(told, span) if _is_ahead(pair, told, setting)]
        if ahead:
            return _hours_on_day(today, told, span, span, setting, "")
    return _hours_alone(told, setting)


def _on_any_day(told: Hours | PartOfDay | Instant | None, setting: Setting) -> Resolved:
    if isinstance(told, PartOfDay):
        return _part_alone(told.name, setting)
    return _hours_alone(told, setting) if isinstance(told, Hours) else Resolved(())


def _is_ahead(pair: tuple[int, int | None], told: Hours, setting: Setting) -> bool:
    now = setting.now.hour * 60 + setting.now.minute
    bound = pair[1] if told.kind in ("before", "by") and pair[1] is not None else pair[0]
    return bound > now


def _clock(minute: int) -> str:
    return f"T{minute // 60:02d}:{minute % 60:02d}"


def _part_alone(name: str, setting: Setting) -> Resolved:
    if name in ("noon", "midnight"):
        return Resolved((TimeWindow(start="T12:00" if name == "noon" else "T00:00", end=None, grain="time"),), "day")
    opens, closes = setting.hours.usual
    low, high = _PLAIN_PARTS[name]
    if name == "first_thing":
        low, high = opens, opens + ONE_HOUR
    elif name == "end_of_day":
        low = closes - ONE_HOUR
    start = opens if low is None else low
    return Resolved((TimeWindow(start=_clock(start), end=None if high is None else _clock(high), grain="part"),), "day")


def _hours_alone(told: Hours, setting: Setting) -> Resolved:
    """Hours with no day known: read against the usual opening hours, the day asked."""
    spans = time_spans(told, setting.hours.usual)
    for span in setting.hours.spans:
        spans = spans or time_spans(told, span)
    if not spans:
        minutes = told.first.minutes()
        spans = [(minute, None) for minute in minutes] if told.kind == "at" else []
    ends_open = {"after"}
    windows = tuple(
        TimeWindow(
            start=_clock(first),
            end=None if last is None or told.kind in ends_open else _clock(last),
            grain="time" if last is None else "part",
        )
        for first, last in spans
    )
    return Resolved(windows, "day")


def overlaps(chosen: datetime, entry: TimeWindow) -> bool:
    """Whether an offered start lies in a window (of a day, or of hours alone)."""
    if entry.start.startswith("T"):
        minute = f"T{chosen:%H:%M}"
        return minute == entry.start if entry.grain == "time" else entry.start <= minute < (entry.end or "T24:00")
    start = datetime.fromisoformat(entry.start)
    if entry.grain == "time" or entry.end is None:
        return chosen == start
    end = datetime.fromisoformat(entry.end)
    return start <= chosen < end or (start == end and chosen.date() == start.date())


def day_of(entry: TimeWindow) -> date | None:
    """The day on which a window begins, None for hours alone."""
    return None if entry.start.startswith("T") else datetime.fromisoformat(entry.start).date()
