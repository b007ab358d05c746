"""Wall time of a place and instants: arithmetic happens in UTC, people read and write wall time."""

from __future__ import annotations

from datetime import UTC, date, datetime, time
from functools import lru_cache
from zoneinfo import ZoneInfo


def to_utc(wall: datetime, zone: str) -> datetime:
    """The instant of a naive wall time. A time that the clock skips in spring is read with the offset before it, so
    that 02:30 becomes 03:30; a time that comes twice in autumn is its first."""
    return wall.replace(tzinfo=ZoneInfo(zone), fold=0).astimezone(UTC)


def to_wall(at: datetime, zone: str) -> datetime:
    """The naive wall time of an aware instant."""
    return at.astimezone(ZoneInfo(zone)).replace(tzinfo=None)


@lru_cache(maxsize=4096)
def day_of(at: datetime, zone: str) -> date:
    """The day that the calendar shows there at that instant."""
    return to_wall(at, zone).date()


def start_of(day: date, zone: str) -> datetime:
    """The first instant of that day."""
    return to_utc(datetime.combine(day, time()), zone)
