"""Dates, times, months, phone numbers and lists in words, as a text to a customer says them, in both languages.

No locale library: its times hold a narrow no-break space (U+202F), which turns a whole text into UCS-2.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, datetime, time, timedelta

from followup.core.shop import WEEKDAYS, OpenHours, wall_time

WEEKDAY_NAMES = {
    "en": ("Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday"),
    "es": ("lunes", "martes", "miércoles", "jueves", "viernes", "sábado", "domingo"),
}
MONTH_NAMES = {
    "en": (
        "January", "February", "March", "April", "May", "June",
        "July", "August", "September", "October", "November", "December",
    ),
    "es": (
        "enero", "febrero", "marzo", "abril", "mayo", "junio",
        "julio", "agosto", "septiembre", "octubre", "noviembre", "diciembre",
    ),
}  # fmt: skip
# A day of another year is taken for one of this year unless it was some weeks ago: "checked on December 20".
_YEAR_NEEDLESS_FOR = timedelta(days=90)
_AND = {"en": " and ", "es": " y "}
_OR = {"en": " or ", "es": " o "}


def phrase_month(day: date, language: str) -> str:
    """The month alone: "July", "julio"."""
    return MONTH_NAMES[language][day.month - 1]


def phrase_day(day: date, language: str) -> str:
    """Day and month, as a number's day is said: "March 2", "2 de marzo"."""
    month = phrase_month(day, language)
    return f"{month} {day.day}" if language == "en" else f"{day.day} de {month}"


def phrase_past_day(day: date, today: date, language: str) -> str:
    """A day that is over, with its year where it could be taken for another: "December 20, 2025", "2 de marzo"."""
    said = phrase_day(day, language)
    if day.year == today.year or today - day < _YEAR_NEEDLESS_FOR:
        return said
    return f"{said}, {day.year}" if language == "en" else f"{said} de {day.year}"


def phrase_date(day: date, language: str) -> str:
    """The full date of a visit: "Tuesday, March 3", "martes 3 de marzo". A datetime's wall date counts."""
    weekday = WEEKDAY_NAMES[language][day.weekday()]
    return f"{weekday}, {phrase_day(day, language)}" if language == "en" else f"{weekday} {phrase_day(day, language)}"


def phrase_clock(at: time | datetime) -> str:
    """A wall time: "9:00 AM"; written alike in both languages, as is usual in US Spanish."""
    hour = at.hour % 12 or 12
    return f"{hour}:{at.minute:02d} {'AM' if at.hour < 12 else 'PM'}"


def phrase_time(at: datetime, language: str) -> str:
    """Full date and time of a visit, `at` in the shop's wall time: "Tuesday, March 3 at 9:00 AM"."""
    if language == "en":
        return f"{phrase_date(at, 'en')} at {phrase_clock(at)}"
    article = "a la" if at.hour % 12 == 1 else "a las"
    return f"{phrase_date(at, 'es')} {article} {phrase_clock(at)}"


def phrase_phone(number: str) -> str:
    """A number of the North American plan printed as is usual there: "(312) 555-0147"; any other stays E.164."""
    if number.startswith("+1") and len(number) == 12 and number[1:].isdigit():
        return f"({number[2:5]}) {number[5:8]}-{number[8:]}"
    return number


def phrase_list(words: Sequence[str], language: str, *, any_of: bool = False) -> str:
    """ "a, b and c"; with `any_of`, "a, b or c"."""
    if len(words) < 2:
        return "".join(words)
    joint = (_OR if any_of else _AND)[language]
    if language == "es":
        joint = _before_same_sound(joint, words[-1])
    return ", ".join(words[:-1]) + joint + words[-1]


def _before_same_sound(joint: str, following: str) -> str:
    """Spanish "y" becomes "e" before an i sound and "o" becomes "u" before an o sound."""
    start = following.lower().removeprefix("h")
    if joint == " y " and start.startswith(("i", "í")) and not start.startswith(("ia", "ie")):
        return " e "
    if joint == " o " and start.startswith(("o", "ó")):
        return " u "
    return joint


def phrase_number(value: float, language: str = "en") -> str:
    """A number without needless decimals: 4.0 is "4", 4.25 is "4.3", 41230 is "41,230" (US usage in both languages)."""
    rounded = round(value, 1)
    return f"{int(rounded):,}" if rounded == int(rounded) else f"{rounded:,.1f}"


def phrase_duration(hours: float, language: str) -> str:
    """How long work takes, rounded up to half hours: "about half an hour", "about 2 hours", "unas 2 horas"."""
    halves = max(1, -int(-hours * 2 // 1))
    whole, half = divmod(halves, 2)
    if language == "en":
        if not whole:
            return "about half an hour"
        if whole == 1:
            return "about an hour and a half" if half else "about an hour"
        return f"about {whole} and a half hours" if half else f"about {whole} hours"
    if not whole:
        return "una media hora"
    if whole == 1:
        return "una hora y media" if half else "una hora"
    return f"unas {whole} horas y media" if half else f"unas {whole} horas"


def phrase_hours(hours: OpenHours, language: str) -> str:
    """Opening hours, days of the same hours joined: "Monday-Friday 7:30 AM-6:00 PM, Saturday 8:00 AM-2:00 PM"."""
    runs: list[tuple[int, int, tuple[str, str]]] = []
    for number, key in enumerate(WEEKDAYS):
        found = hours.get(key)
        if not found:
            continue
        if runs and runs[-1][1] == number - 1 and runs[-1][2] == tuple(found):
            runs[-1] = (runs[-1][0], number, runs[-1][2])
        else:
            runs.append((number, number, (found[0], found[1])))
    return ", ".join(_phrase_run(first, last, found, language) for first, last, found in runs)


def _phrase_run(first: int, last: int, found: tuple[str, str], language: str) -> str:
    names = WEEKDAY_NAMES[language]
    opens, closes = (phrase_clock(wall_time(one)) for one in found)
    if language == "en":
        days = names[first] if first == last else f"{names[first]}-{names[last]}"
        return f"{days} {opens}-{closes}"
    days = names[first] if first == last else f"{names[first]} a {names[last]}"
    return f"{days} {opens} a {closes}"
