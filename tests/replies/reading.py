"""Reading a reply in the tests: a usual context, and results in a short form that is easy to read beside a text."""

from __future__ import annotations

from datetime import date, datetime
from typing import Any

from followup.core.replies.contract import KnownOdometer, ReplyIn, ReplyOut, TimeWindow
from followup.core.replies.understand import understand

NOW = datetime.fromisoformat("2026-03-04T10:00")
"""A Wednesday morning; the shop is open 07:30-18:00, Saturdays 08:00-14:00."""
OFFERED = (datetime.fromisoformat("2026-03-05T09:00"), datetime.fromisoformat("2026-03-06T14:00"))
"""Thursday at 9, Friday at 2."""
BOOKED = datetime.fromisoformat("2026-03-05T09:00")
SAME_DAY = (datetime.fromisoformat("2026-03-05T08:00"), datetime.fromisoformat("2026-03-05T15:30"))
THREE = (*OFFERED, datetime.fromisoformat("2026-03-09T10:30"))
KNOWN = KnownOdometer(value=47000, unit="mi", on=date(2026, 1, 3), per_day=20)
"""60 days ago: 48,200 is expected now."""

CONTEXTS: dict[str, dict[str, Any]] = {
    "visit": {},
    "day": {"asked": "day"},
    "time": {"asked": "time", "about": date(2026, 3, 5)},
    "slot": {"asked": "slot", "offered": OFFERED},
    "one slot": {"asked": "slot", "offered": OFFERED[:1]},
    "same day": {"asked": "slot", "offered": SAME_DAY},
    "three": {"asked": "slot", "offered": THREE},
    "confirm": {"asked": "confirm", "booked": BOOKED},
    "odometer": {"asked": "odometer", "odometer": KNOWN},
    "known": {"odometer": KNOWN},
    "car": {"asked": "car", "cars": ("blue sedan", "white truck")},
    "cars": {"cars": ("blue sedan", "white truck")},
    "walk_in": {"asked": "walk_in"},
    "after_visit": {"asked": "after_visit"},
    "confirm_stop": {"asked": "confirm_stop"},
    "nothing": {"asked": None},
    "booked": {"asked": None, "booked": BOOKED},
    "today": {"asked": "confirm", "booked": NOW},
}


def read(text: str, context: str = "visit", **more: Any) -> ReplyOut:
    """The meaning of a text in one of the contexts."""
    return understand(ReplyIn(**{"text": text, "now": NOW, **CONTEXTS[context], **more}))


def short(window: TimeWindow) -> str:
    """`2026-03-05T09:00` as `3-5 9:00`, windows with their end, whole days and weeks by their grain."""

    def one(moment: str) -> str:
        day, _, clock = moment.partition("T")
        return f"{int(day[5:7])}-{int(day[8:10])} {clock}" if day else clock

    if window.grain == "time":
        return one(window.start)
    if window.grain == "day":
        closed = " closed" if window.start == window.end else ""
        return one(window.start).split(" ")[0] + closed
    if window.grain == "week":
        return f"{one(window.start).split(' ')[0]}..{one(window.end or '').split(' ')[0]}"
    end = window.end.partition("T")[2] if window.end else ""
    return f"{one(window.start)}-{end}"


def times(out: ReplyOut) -> list[str]:
    """The visit times in short form."""
    return [short(one) for one in out.times]


def avoided(out: ReplyOut) -> list[str]:
    """The times ruled out in short form."""
    return [short(one) for one in out.avoid]
