"""A due window in one plain sentence for staff: how much is left, how fast it goes, how far the car is driven."""

from __future__ import annotations

from followup.core.forecast.window import Because, DueWindow

_UNIT_WORDS = {"32nds": "/32", "mm": " mm", "percent": " %", "years": " years", "mi": " miles", "qt": " qt"}
_SINCE_WORDS = {
    "first_use": "on the car since it was new",
    "told": "on since {on}",
    "seen": "a new set seen by {on}",
    "unknown": "nobody knows since when",
}


def explain(window: DueWindow) -> str:
    """Why an item is due when it is, such as "about 5/32 now, wearing 1/32 every 4,700 miles, about 33 miles a day"."""
    said = [_now(window)] if window.now is not None else []
    if window.is_past:
        return ", ".join([*said, "measured or found due"])
    because = window.because
    if because.wear_per_1000 is not None and window.limit is not None:
        said.append(_wear(because, window.limit.unit))
    if because.distance_per_day is not None:
        said.append(f"driven about {because.distance_per_day:.0f} miles a day")
    said.append(_since(because))
    return ", ".join(said)


def _now(window: DueWindow) -> str:
    if isinstance(window.now, str):
        return window.now.replace("_", " ") + " when last looked at"
    assert window.now is not None
    unit = window.limit.unit if window.limit else ""
    digits = 0 if unit in ("32nds", "mi", "percent") else 1
    return f"about {window.now:.{digits}f}{_UNIT_WORDS.get(unit, '')} now"


def _wear(because: Because, unit: str) -> str:
    assert because.wear_per_1000 is not None
    if because.distance_per_day is None:
        return f"rising about {because.wear_per_1000:.1f}{_UNIT_WORDS.get(unit, '')} a year"
    miles = round(1000 / because.wear_per_1000, -2)
    return f"wearing 1{_UNIT_WORDS.get(unit, '')} every {miles:,.0f} miles"


def _since(because: Because) -> str:
    day = "" if because.since_on is None else f"{because.since_on:%b} {because.since_on.day}, {because.since_on.year}"
    words = _SINCE_WORDS[because.since_how].format(on=day)
    days = because.readings_used
    return f"{words}, read on {days} day{'' if days == 1 else 's'}"
