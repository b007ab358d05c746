"""A time window of the reply contract in words: what a customer asked for, read back with its full date."""

from __future__ import annotations

from datetime import date, datetime, time

from followup.core.phrasing import phrase_clock, phrase_date, phrase_day, phrase_time
from followup.core.replies.contract import TimeWindow

_WORDS = {
    "en": {"from": "{day} from {start}", "span": "{day}, {start}-{end}", "week": "the week of {day}"},
    "es": {"from": "{day} desde las {start}", "span": "{day} de {start} a {end}", "week": "la semana del {day}"},
}


# A day that is nearly a year ahead was perhaps meant for the one just over: its year is said.
FAR_DAYS = 300
_YEAR = {"en": "{day}, {year}", "es": "{day} de {year}"}


def phrase_window(window: TimeWindow, language: str, today: date | None = None) -> str:
    """ "Tuesday, March 3 at 9:00 AM" for a point, "Tuesday, March 3, 1:00 PM-5:00 PM" for a part, the full date for a
    whole day, "the week of March 2" for a week; an hour without a day is the hour alone. A day far after `today` is
    said with its year."""
    said, day = _phrase(window, language), day_of_window(window)
    if day is None or today is None or (day - today).days < FAR_DAYS:
        return said
    plain = phrase_day(day, language)
    return said.replace(plain, _YEAR[language].format(day=plain, year=day.year), 1)


def _phrase(window: TimeWindow, language: str) -> str:
    if window.start.startswith("T"):
        return phrase_clock(time.fromisoformat(window.start[1:]))
    start = datetime.fromisoformat(window.start)
    if window.grain == "time":
        return phrase_time(start, language)
    if window.grain == "day":
        return phrase_date(start, language)
    if window.grain == "week":
        return _WORDS[language]["week"].format(day=phrase_day(start, language))
    words = _WORDS[language]["span" if window.end else "from"]
    end = phrase_clock(datetime.fromisoformat(window.end)) if window.end else ""
    return words.format(day=phrase_date(start, language), start=phrase_clock(start), end=end)


def day_of_window(window: TimeWindow) -> date | None:
    """The day that the window names or begins on; None for an hour alone."""
    return None if window.start.startswith("T") else datetime.fromisoformat(window.start).date()
