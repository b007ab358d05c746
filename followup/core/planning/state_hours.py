"""Hours that single states narrow further than the federal rule: one row a state, each with its source.

They are facts with a day on which they were last checked, shown on the manager's page; a shop asks its own counsel.
Dialing rules are written for calls; they are kept for texts too, since the careful reading costs little.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date, time


@dataclass(frozen=True)
class StateHours:
    """What one state allows, as wall times. `days` says in words which days it rules out: Sundays and holidays are
    closed for invites everywhere (`hours.py`), so only `sunday_from` (texts about visits on a Sunday, not before) and
    `is_weekdays_only` (invites on Monday to Friday alone) narrow further."""

    state: str
    opens: time
    closes: time
    source: str
    days: str = ""
    sunday_from: time | None = None
    is_weekdays_only: bool = False
    checked_on: date = date(2026, 11, 24)


_GUIDES = "dialing guides, quoted"
_MEMORY = "from memory"
_DAYS_QUOTED = "days: dialing guides, quoted; hours: from memory"


def _row(state: str, opens: int, closes: int, source: str = _GUIDES, days: str = "") -> StateHours:
    return StateHours(state, time(opens), time(closes), source, days)


STATE_HOURS: tuple[StateHours, ...] = (
    _row("AL", 8, 20, _DAYS_QUOTED, "no Sundays, no holidays"),
    _row("CT", 9, 20),
    _row("FL", 8, 20, "Fla. Stat. 501.059, quoted"),
    _row("KY", 10, 21),
    _row("LA", 8, 20, _DAYS_QUOTED, "no Sundays, no holidays"),
    _row("MA", 8, 20),
    _row("MD", 8, 20),
    _row("MI", 9, 21),
    _row("MN", 9, 21),
    _row("MS", 8, 20, _DAYS_QUOTED, "no Sundays"),
    _row("NM", 9, 21),
    _row("NV", 9, 20),
    _row("OK", 8, 20),
    _row("OR", 8, 20, "OR HB 3865, quoted"),
    _row("PA", 8, 21, _DAYS_QUOTED, "no holidays"),
    StateHours("RI", time(9), time(18), _GUIDES, "weekdays only", is_weekdays_only=True),
    _row("SD", 9, 21, _MEMORY, "no Sundays"),
    StateHours("TX", time(9), time(21), _MEMORY, "Sundays from noon", sunday_from=time(12)),
    _row("UT", 9, 21, _MEMORY, "no Sundays"),
)
BY_STATE = {row.state: row for row in STATE_HOURS}


def narrowed_by(
    states: Iterable[str | None], day: date, opens: time, closes: time, *, is_invite: bool
) -> tuple[time, time]:
    """The window (wall times) after the rows of these states; empty (`opens >= closes`) where a day is closed."""
    for state in dict.fromkeys(states):
        row = BY_STATE.get(state or "")
        if row is None:
            continue
        opens, closes = max(opens, row.opens), min(closes, row.closes)
        if day.weekday() == 6 and row.sunday_from:
            opens = max(opens, row.sunday_from)
        if is_invite and row.is_weekdays_only and day.weekday() > 4:
            return closes, closes
    return opens, closes
