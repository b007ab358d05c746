"""A small grammar that says a visit time in words, in English and Spanish: what is said must be read back as it was.

`python -m followup.rehearsal.bench.said_times COUNT` writes sentences with what they mean.
"""

from __future__ import annotations

import random
import sys
from dataclasses import dataclass
from datetime import date, datetime, timedelta

OPENS, CLOSES = 450, 1080
"""The shop of these tests, Monday to Friday, in minutes of the day."""

_DAYS = {
    "en": ("Monday", "Tuesday", "Wednesday", "Thursday", "Friday"),
    "es": ("lunes", "martes", "miércoles", "jueves", "viernes"),
}
_MONTHS = {
    "en": [
        "January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November",
        "December",
    ],
    "es": [
        "enero", "febrero", "marzo", "abril", "mayo", "junio", "julio", "agosto", "septiembre", "octubre", "noviembre",
        "diciembre",
    ],
}  # fmt: skip
_NUMBERS = {
    "en": ["one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"],
    "es": ["una", "dos", "tres", "cuatro", "cinco", "seis", "siete", "ocho", "nueve", "diez", "once", "doce"],
}
_PARTS = {
    "morning": (OPENS, 720), "afternoon": (720, 1020), "lunch": (690, 810), "first thing": (OPENS, OPENS + 60),
    "end of day": (CLOSES - 60, CLOSES),
}  # fmt: skip
_PART_WORDS = {
    "en": {name: name for name in _PARTS} | {"morning": "in the morning", "afternoon": "in the afternoon",
                                            "lunch": "at lunch"},
    "es": {"morning": "por la mañana", "afternoon": "por la tarde", "lunch": "a la hora del almuerzo",
           "first thing": "a primera hora", "end of day": "al final del día"},
}  # fmt: skip
_AROUND = {
    "en": (
        "{}", "{} please", "how about {}?", "yes, {}", "can you do {}", "{} works for me", "i could come {}",
        "{} would be great thanks", "ok {}", "do you have anything {}", "Let's do {}!",
    ),
    "es": (
        "{}", "{} por favor", "qué tal {}?", "sí, {}", "puedo ir {}", "{} está bien", "me queda bien {}",
        "tienen algo {}?", "mejor {}", "quiero ir {}",
    ),
}  # fmt: skip


@dataclass(frozen=True)
class Spoken:
    """A sentence and the window that it names: minutes of the day, the last None for a point, both None for a day."""

    text: str
    day: date
    first: int | None
    last: int | None
    language: str


def _ordinal(day: int) -> str:
    ending = "th" if day in (11, 12, 13) else {1: "st", 2: "nd", 3: "rd"}.get(day % 10, "th")
    return f"{day}{ending}"


def say_day(day: date, now: date, language: str, pick: random.Random) -> str:
    """A working day in words; the ways that fit how far it is from today."""
    ahead = (day - now).days
    month, name = _MONTHS[language][day.month - 1], _DAYS[language][day.weekday()]
    if language == "en":
        ways = [f"{month} {day.day}", f"{month} {_ordinal(day.day)}", f"the {_ordinal(day.day)} of {month}",
                f"{day.day} {month}", f"{day.month}/{day.day}", f"{name} {month} {day.day}", f"{month[:3]} {day.day}",
                f"{day:%Y-%m-%d}", f"in {ahead} days"]  # fmt: skip
        ways += ["tomorrow", "tmrw"] if ahead == 1 else ["the day after tomorrow"] if ahead == 2 else []
        ways += [name, f"on {name}", name[:3].lower(), f"this coming {name}"] if 0 < ahead <= 7 else []
        ways += [f"next {name}"] if _weeks_on(day, now) == 1 else []
        ways += [f"the {_ordinal(day.day)}", f"{name} the {_ordinal(day.day)}"] if ahead < 27 else []
        return pick.choice(ways)
    ways = [f"el {day.day} de {month}", f"el {name} {day.day} de {month}", f"el día {day.day} de {month}",
            f"{day.month}/{day.day}"]  # fmt: skip
    ways += [f"en {ahead} días"] if ahead not in (8, 15) else []
    ways += ["mañana"] if ahead == 1 else ["pasado mañana"] if ahead == 2 else []
    ways += [f"el {name}", f"el {name} que viene", f"el próximo {name}"] if 0 < ahead <= 7 else []
    ways += [f"el {name} de la próxima semana"] if _weeks_on(day, now) == 1 else []
    ways += [f"el {day.day}", f"el {name} {day.day}"] if ahead < 27 else []
    return pick.choice(ways)


def _weeks_on(day: date, now: date) -> int:
    return ((day - timedelta(day.weekday())) - (now - timedelta(now.weekday()))).days // 7


def say_clock(minute: int, language: str, pick: random.Random) -> str:
    """A clock time in words, without `at`."""
    hour, minutes = divmod(minute, 60)
    twelve = (hour - 1) % 12 + 1
    half = "am" if hour < 12 else "pm"
    word, following = _NUMBERS[language][twelve - 1], _NUMBERS[language][twelve % 12]
    ways = [f"{twelve}:{minutes:02d}", f"{twelve}:{minutes:02d}{half}", f"{hour}:{minutes:02d}"]
    if language == "en":
        if minutes == 0:
            ways += [f"{twelve}", f"{twelve}{half}", f"{twelve} {half}", word, f"{twelve} o'clock"]
        named = {15: f"quarter past {twelve}", 30: f"half past {word}", 45: f"quarter to {following}"}
    else:
        if minutes == 0:
            ways += [f"{twelve}", f"{twelve}{half}", word, f"{word} en punto"]
        named = {15: f"{word} y cuarto", 30: f"{word} y media", 45: f"{following} menos cuarto"}
    return pick.choice([*ways, named[minutes]] if minutes in named else ways)


def _at(clock: str, language: str) -> str:
    if language == "en":
        return f"at {clock}"
    is_one = clock.startswith(("1:", "una", "1am", "1pm")) or clock == "1"
    return f"a la {clock}" if is_one else f"a las {clock}"


def speak(pick: random.Random, now: datetime, language: str) -> Spoken:
    """One sentence that names a window in the opening hours within the next fifty days."""
    day = now.date() + timedelta(pick.randrange(1, 50))
    while day.weekday() > 4:
        day += timedelta(1)
    when = say_day(day, now.date(), language, pick)
    kind = pick.choice(("day", "point", "point", "part", "after", "before", "between"))
    minute = pick.randrange(OPENS + 60, CLOSES - 60, 15)
    first: int | None
    last: int | None
    if kind == "day":
        first = last = None
        said = when
    elif kind == "part":
        name = pick.choice(sorted(_PARTS))
        first, last = _PARTS[name]
        said = f"{when} {_PART_WORDS[language][name]}"
    else:
        said, first, last = _bounded(kind, minute, when, language, pick)
    return Spoken(pick.choice(_AROUND[language]).format(said), day, first, last, language)


def _bounded(
    kind: str, minute: int, when: str, language: str, pick: random.Random
) -> tuple[str, int | None, int | None]:
    clock = say_clock(minute, language, pick)
    the = "" if language == "en" else "la " if _at(clock, language).startswith("a la ") else "las "
    if kind == "point":
        return f"{when} {_at(clock, language)}", minute, None
    if kind == "after":
        return f"{when} {'after' if language == 'en' else 'después de'} {the}{clock}", minute, CLOSES
    if kind == "before":
        return f"{when} {'before' if language == 'en' else 'antes de'} {the}{clock}", OPENS, minute
    hour = pick.randrange(8, 15)
    first, last = hour * 60, (hour + 2) * 60
    ends = [(at // 60 - 1) % 12 + 1 for at in (first, last)]
    joined = f"between {ends[0]} and {ends[1]}" if language == "en" else f"entre las {ends[0]} y las {ends[1]}"
    return f"{when} {joined}", first, last


def main() -> None:
    """Write sentences with what they mean, one a line."""
    pick = random.Random(1)
    now = datetime.fromisoformat("2026-03-04T10:00")
    for _ in range(int(sys.argv[1]) if len(sys.argv) > 1 else 20):
        print(speak(pick, now, pick.choice(("en", "es"))))


if __name__ == "__main__":
    main()
