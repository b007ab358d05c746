"""The words of the advisor's pages: kinds of alerts, states, needs, parts, items at their positions, readings."""

from __future__ import annotations

import re
from collections.abc import Iterable
from datetime import date, datetime
from typing import Any

from followup.core.day_words import day_words, month_words
from followup.core.forecast.first_due import FirstDue
from followup.core.item import NOT_CHECKED
from followup.core.items import BY_CODE
from followup.core.own_item import PREFIX
from followup.core.replies.contract import TimeWindow
from followup.core.told_times import phrase_window
from followup.core.vehicle import WALKING_ORDER
from followup.web.advisor.blueprint import blueprint
from followup.web.words import MONTHS, catalogue, clock_time, day, local, number

ALERT_KINDS = {
    "symptom_now": "Symptom, stop now",
    "symptom_today": "Symptom, today",
    "legal_words": "Serious matter",
    "death": "The customer may have died",
    "texts_refused": "The provider refuses all texts",
    "many_stops": "More customers than usual stop the texts",
    "call_me": "Wants a call",
    "complaint": "Complaint",
    "running_late": "Running late",
    "judgment": "Asks for a judgment",
    "price": "Asks for a price",
    "person_thread": "Wrote back to a person",
    "request": "Asked for a time",
    "tie": "Number or car no longer theirs",
    "unclear": "Could not be read",
    "phone_task": "To call",
    "listed": "To look at by the end of the day",
}
BOOKING_STATES = {
    "asked": "asked for",
    "offered": "times offered",
    "confirmed": "confirmed",
    "kept": "kept",
    "missed": "missed",
    "closed": "closed",
}
TEXT_STATES = {
    "planned": "planned",
    "claimed": "about to leave",
    "in_flight": "leaving",
    "sent": "sent",
    "failed": "could not be sent",
    "unknown": "being looked up",
    "held": "not sure it went out",
    "dropped": "not sent",
}
DELIVERIES = {
    "delivered": "delivered",
    "read": "read",
    "undelivered": "not delivered",
    "failed": "not delivered",
    "canceled": "not delivered",
}
KINDS = {"invite": "invite", "visit": "about a visit", "answer": "answer"}
NEEDS = {
    "wait": "waits here",
    "ride": "needs a ride",
    "loaner": "needs a loaner",
    "early_drop": "drops the car off before opening",
    "late_pickup": "picks the car up late",
}
PARTS = {
    "unknown": "not asked yet",
    "not_needed": "not needed",
    "in_stock": "in stock",
    "order": "to be ordered",
    "ordered": "ordered",
}
CAME_FROM = {"text": "by text", "phone": "by phone", "counter": "at the counter"}
MEANINGS = {
    "stop": "stop the texts",
    "symptom": "a symptom",
    "stranger": "not their number",
    "gone": "the car is gone",
    "done": "done already",
    "running_late": "running late",
    "cancel": "calls the booking off",
    "move": "another time",
    "choose": "took an offered time",
    "accept": "yes",
    "propose": "named a time",
    "later": "later",
    "decline": "no for now",
    "odometer": "told the odometer",
    "complaint": "a complaint",
    "call": "wants a call",
    "price": "asks what it costs",
    "duration": "asks how long it takes",
    "explain": "asks what it is",
    "where": "asks where or when open",
    "resume": "texts on again",
    "help": "help",
    "thanks": "thanks",
    "unclear": "unclear",
}
COVERS = {"visits": "visits", "upkeep": "upkeep of the car", "offers": "offers and free services"}
CONSENT_EVENTS = {
    "given": "agreed",
    "narrowed": "took a part back",
    "taken_back": "stopped all texts",
    "given_again": "texts on again",
}
HOW_GIVEN = {
    "signed_paper": "on signed paper",
    "tablet": "on the tablet",
    "web_form": "on the web form",
    "text_in": "by text",
    "spoken": "spoken",
    "imported_unproven": "imported without proof",
}
DECISIONS = {"approved": "approved", "declined": "not now", "later": "later", "no_answer": "no answer yet"}
DECIDED_BECAUSE = {"price": "the price", "time": "no time", "elsewhere": "done elsewhere", "think": "wants to think"}
POSITIONS = {
    "front_left": "LF",
    "rear_left": "LR",
    "rear_right": "RR",
    "front_right": "RF",
    "front": "front",
    "rear": "rear",
    "spare": "spare",
    "": "",
}
UNITS = {
    "32nds": "/32",
    "percent": " %",
    "C": " °C",
    "F": " °F",
    "ppm": " ppm",
    "mm": " mm",
    "in": " in",
    "psi": " psi",
}
WORDS_OF_READING = ("looks", "level", "found_as", "verdict", "lamp", "kind", "date_code", "good_until", "due_on")
_NOT_CHECKED = {code: code.replace("_", " ") for code in NOT_CHECKED}


def item(code: str, position: str = "") -> str:
    """`Brake pad LF`."""
    known = catalogue()
    words = known[code].words if code in known else code.replace("_", " ")
    return f"{words} {POSITIONS.get(position, position)}".strip()


def items(found: Iterable[tuple[str, str]]) -> str:
    """`Brake pad LF, RF; Tire tread LR`: each item once, with its positions in walking order."""
    by_code: dict[str, list[str]] = {}
    for code, position in found:
        by_code.setdefault(code, []).append(position)
    return "; ".join(_at_positions(code, positions) for code, positions in by_code.items())


def _at_positions(code: str, positions: list[str]) -> str:
    places = [POSITIONS.get(one, one) for one in sorted(positions, key=walking)]
    return f"{item(code)} {', '.join(one for one in places if one)}".strip()


def first_due(first: FirstDue | None) -> str:
    """`Brake pad LF, now`, or the month in which the first item is likely due; `no date yet`."""
    if first is None or first.likely is None:
        return "no date yet"
    when = "now" if first.is_now else f"likely {MONTHS[first.likely.month - 1]} {first.likely.year}"
    return f"{item(first.item, first.position)}, {when}"


def first_due_span(first: FirstDue | None) -> str:
    """The early and the late day beside it; "" where it is due now or has no date."""
    if first is None or first.is_now or first.early is None:
        return ""
    late = f"late {day(first.late)}" if first.late else "late beyond ten years"
    return f"early {day(first.early)}, {late}"


def walking(position: str) -> int:
    """A position's place in walking order."""
    return WALKING_ORDER.index(position) if position in WALKING_ORDER else len(WALKING_ORDER)


def measured(seen: Any) -> str:
    """The number of a reading as it was entered, or its words; `-` where it says nothing."""
    if seen.measured is not None:
        unit = seen.measured.unit
        amount = f"{_plain(seen.measured.value)}{UNITS.get(unit, f' {unit}' if unit else '')}"
        # A rotor is told by what is left of it: the number alone would be read as its thickness.
        return f"{amount} above discard" if seen.item == "brake_rotor" else amount
    if seen.reading.not_checked is not None:
        return "-"
    told = [getattr(seen.reading, name) for name in WORDS_OF_READING]
    return ", ".join(_in_words(one) for one in told if one is not None) or "-"


def _in_words(told: object) -> str:
    """A word without underscores, a month or a day as pages write it."""
    if isinstance(told, date):
        return day_words(told)
    text = str(told)
    return month_words(text) if re.fullmatch(r"\d{4}-\d{2}", text) else text.replace("_", " ")


def not_checked(seen: Any) -> str:
    """Why it was not checked; "" where it was."""
    return _NOT_CHECKED.get(seen.reading.not_checked or "", "")


def _plain(value: float) -> str:
    return number(round(value, 1))


def window(found: TimeWindow) -> str:
    """`Tuesday, March 3 1:00 PM-5:00 PM`."""
    return phrase_window(found, "en")


def at(instant: datetime) -> str:
    """`Tue, Nov 24, 2026, 2:05 pm`, an instant at the shop, for buttons."""
    here = local(instant)
    return f"{day(here.date())}, {clock_time(here)}"


def wall(here: datetime) -> str:
    """The same for a wall time."""
    return f"{day(here.date())}, {clock_time(here)}"


def certainty(share: float | None) -> str:
    """How surely a reply was understood, in words: staff decide by words, not by decimals."""
    if share is None:
        return ""
    return "surely" if share >= 0.85 else "probably" if share >= 0.7 else "doubtful: read it yourself"


def status(booking: Any) -> str:
    """iCalendar's word first, then where it stands, if that says more: `tentative, times offered`."""
    state = BOOKING_STATES[booking.state]
    return booking.status if state in (booking.status, "closed") else f"{booking.status}, {state}"


def about(alert: Any) -> str:
    """What the program adds to an alert; "" where it only says again what its kind says."""
    is_more = alert.says and alert.says != alert.verbatim and not alert.says.startswith("says: ")
    return in_plain(alert.says) if is_more else ""


def names_told(alert: Any) -> str:
    """Who was told of an alert, each once, in order."""
    return ", ".join(dict.fromkeys(one.name for one in alert.told))


_DAY = re.compile(r"\b\d{4}-\d{2}-\d{2}\b")
# Those of the program, and any that a shop may have given to its own items.
_CODES = "|".join([*sorted(BY_CODE, key=len, reverse=True), rf"{PREFIX}[a-z0-9_]+"])
_PLACES = "|".join(one for one in WALKING_ORDER if one)
_ITEM = re.compile(rf"\b({_CODES})\b(?: ({_PLACES})\b)?")
_ITEMS = re.compile(rf"{_ITEM.pattern}(?:, {_ITEM.pattern})*")


def in_plain(words: str) -> str:
    """What the planner says, with items and days as they stand on pages."""
    named = _ITEMS.sub(lambda found: items((one[1], one[2] or "") for one in _ITEM.finditer(found[0])), words)
    return _DAY.sub(lambda found: day(date.fromisoformat(found[0])), named)


def plain(code: str | None) -> str:
    """A code without its underscores."""
    return (code or "").replace("_", " ")


@blueprint.context_processor
def _words() -> dict[str, Any]:
    """Every template of this folder has these as `say`."""
    import followup.web.advisor.said as say

    return {"say": say}
