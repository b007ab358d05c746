"""What single states narrow further than the federal rule: one row a state, each with its source.

They are facts with a day on which they were last checked, shown on the manager's page; a shop asks its own counsel.
Dialing rules are written for calls; they are kept for texts too, since the careful reading costs little. A number
counts as one of the state whose area code it has, beside the shop's own: where its owner lives nobody knows.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date, time


@dataclass(frozen=True)
class StateHours:
    """What one state allows, as wall times. `days` says in words which days it rules out: Sundays and holidays are
    closed for invites everywhere (`hours.py`), so only `sunday_from` (texts about visits on a Sunday, not before) and
    `is_weekdays_only` (invites on Monday to Friday alone) narrow further. `most_in_24_hours`: texts about one
    subject."""

    state: str
    opens: time
    closes: time
    source: str
    days: str = ""
    sunday_from: time | None = None
    is_weekdays_only: bool = False
    checked_on: date = date(2026, 11, 24)
    most_in_24_hours: int | None = None

    @property
    def says(self) -> str:
        """The row in words, with its source."""
        days = f", {self.days}" if self.days else ""
        return f"{self.state}: {self.opens:%H:%M}-{self.closes:%H:%M}{days} ({self.source})"


_GUIDES = "dialing guides, quoted"
_MEMORY = "from memory"
_DAYS_QUOTED = "days: dialing guides, quoted; hours: from memory"


def _row(
    state: str, opens: int, closes: int, source: str = _GUIDES, days: str = "", most: int | None = None
) -> StateHours:
    return StateHours(state, time(opens), time(closes), source, days, most_in_24_hours=most)


STATE_HOURS: tuple[StateHours, ...] = (
    _row("AL", 8, 20, _DAYS_QUOTED, "no Sundays, no holidays"),
    _row("CT", 9, 20),
    _row("FL", 8, 20, "Fla. Stat. 501.059, quoted", most=3),
    _row("KY", 10, 21),
    _row("LA", 8, 20, _DAYS_QUOTED, "no Sundays, no holidays"),
    _row("MA", 8, 20),
    _row("MD", 8, 20),
    _row("MI", 9, 21),
    _row("MN", 9, 21),
    _row("MS", 8, 20, _DAYS_QUOTED, "no Sundays"),
    _row("NM", 9, 21),
    _row("NV", 9, 20),
    _row("OK", 8, 20, most=3),
    _row("OR", 8, 20, "OR HB 3865, quoted", most=3),
    _row("PA", 8, 21, _DAYS_QUOTED, "no holidays"),
    StateHours("RI", time(9), time(18), _GUIDES, "weekdays only", is_weekdays_only=True),
    _row("SD", 9, 21, _MEMORY, "no Sundays"),
    StateHours("TX", time(9), time(21), _MEMORY, "Sundays from noon", sunday_from=time(12)),
    _row("UT", 9, 21, _MEMORY, "no Sundays"),
)
BY_STATE = {row.state: row for row in STATE_HOURS}

# Area codes of the states above (the North American numbering plan; a test holds them against `phonenumbers`).
AREA_CODES: dict[str, str] = {
    "AL": "205 251 256 334 659 938",
    "CT": "203 475 860 959",
    "FL": "239 305 321 324 352 386 407 448 561 645 656 689 727 728 754 772 786 813 850 863 904 941 954",
    "KY": "270 364 502 606 859",
    "LA": "225 318 337 504 985",
    "MA": "339 351 413 508 617 774 781 857 978",
    "MD": "227 240 301 410 443 667",
    "MI": "231 248 269 313 517 586 616 734 810 906 947 989",
    "MN": "218 320 507 612 651 763 924 952",
    "MS": "228 471 601 662 769",
    "NM": "505 575",
    "NV": "702 725 775",
    "OK": "405 539 572 580 918",
    "OR": "458 503 541 971",
    "PA": "215 223 267 272 412 445 484 570 582 610 717 724 814 835 878",
    "RI": "401",
    "SD": "605",
    "TX": "210 214 254 281 325 346 361 409 430 432 469 512 621 682 713 726 737 806 817 830 832 903 915 936 940 945 956 "
    "972 979",
    "UT": "385 435 801",
}
_STATE_OF_AREA = {area: state for state, areas in AREA_CODES.items() for area in areas.split()}


def state_of(number: str) -> str | None:
    """The state of a number's area code, where that state narrows anything; None otherwise (E.164)."""
    return _STATE_OF_AREA.get(number[2:5]) if number.startswith("+1") and len(number) == 12 else None


def most_in_24_hours(states: Iterable[str | None]) -> tuple[int, StateHours] | None:
    """The fewest texts about one subject in 24 hours that these states allow, with the row that says so."""
    rows = [row for state in states if (row := BY_STATE.get(state or "")) and row.most_in_24_hours]
    return min(((row.most_in_24_hours or 0, row) for row in rows), key=lambda found: found[0], default=None)


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
