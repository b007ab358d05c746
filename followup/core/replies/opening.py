"""The shop's opening hours as minutes of the day, for the reading of times."""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from functools import lru_cache

from followup.core.replies.contract import WEEKDAYS

Span = tuple[int, int]
"""Opening and closing minute of a day; the opening minute is open, the closing minute is not."""


@dataclass(frozen=True)
class OpeningHours:
    """When the shop is open: a span for each weekday (Monday first, None is closed), and the days closed besides."""

    by_weekday: tuple[Span | None, ...]
    closed_on: frozenset[date]

    def on(self, day: date) -> Span | None:
        """The open span of this day, None where the shop is closed."""
        return None if day in self.closed_on else self.by_weekday[day.weekday()]

    def left_of(self, day: date, now: datetime) -> Span | None:
        """The open span of this day that is still ahead at `now`; None where nothing is left."""
        span = self.on(day)
        if span is None or day != now.date():
            return span
        minute = now.hour * 60 + now.minute
        return (max(span[0], minute), span[1]) if minute < span[1] else None

    @property
    def usual(self) -> Span:
        """The span that most weekdays have: what an hour without a day is read against."""
        spans = [span for span in self.by_weekday if span]
        return Counter(spans).most_common(1)[0][0] if spans else (450, 1080)

    @property
    def spans(self) -> tuple[Span, ...]:
        """The spans of the open weekdays, each once."""
        return tuple(dict.fromkeys(span for span in self.by_weekday if span))

    def open_days(self, first: date, last: date, now: datetime) -> list[date]:
        """The days from `first` to `last` on which something of the opening hours is still ahead."""
        days = [first + timedelta(n) for n in range(min((last - first).days, 800) + 1)]
        return [day for day in days if day >= now.date() and self.left_of(day, now)]


def _minute(clock: str) -> int:
    return int(clock[:2]) * 60 + int(clock[3:5])


@lru_cache(maxsize=256)
def _opening_hours(hours: tuple[tuple[str, tuple[str, str]], ...], closed_on: tuple[date, ...]) -> OpeningHours:
    spans = {day: (_minute(opens), _minute(closes)) for day, (opens, closes) in hours}
    return OpeningHours(tuple(spans.get(day) for day in WEEKDAYS), frozenset(closed_on))


def opening_hours(hours: dict[str, tuple[str, str]], closed_on: tuple[date, ...]) -> OpeningHours:
    """The opening hours of the contract, `{"mon": ("07:30", "18:00")}`, as minutes; a missing day is closed."""
    return _opening_hours(tuple(hours.items()), closed_on)
