"""Why a due window is where it is, in plain sentences for staff: what is known, how fast it goes, what would narrow it.

`explain` is the one sentence for a list, `explain_in_full` that and the rest, a line each. Staff read these; a customer
reads a month. Windows that were kept without their evidence say less.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Callable, Iterator
from datetime import timedelta

from followup.core.day_words import day_words
from followup.core.forecast.evidence import Apart, Evidence, ShownReading, Wide
from followup.core.forecast.window import Because, DueWindow
from followup.core.items import BY_CODE

UNIT_WORDS = {
    "32nds": "/32", "mm": " mm", "in": " in", "percent": " %", "years": " years", "mi": " miles", "km": " km",
    "qt": " qt", "F": " °F", "C": " °C", "A": " A", "ppm": " ppm", "": "",
}  # fmt: skip
_WHOLE = ("32nds", "mi", "km", "F", "C", "A", "ppm")
APART_WORDS: dict[Apart, str] = {
    "replaced": "the part was replaced since",
    "rotated": "the wheel was moved since",
    "seen": "a later reading shows another part",
    "other_set": "another set of tires was on",
    "void": "a later reading does not fit",
}
_WIDE_WORDS: dict[Wide, str] = {
    "distance": "An odometer reading would narrow this most.",
    "rate": "One more measurement would narrow this most.",
    "reading": "One more measurement would narrow this most: it is near its limit for the error of one.",
    "since": "Knowing since when it is on the car would narrow this most.",
    "life": "Such parts live very differently long: a look at each visit narrows it.",
}
_LEVEL_WIDE = {"rate": "Cars use very different amounts: the level at the next visit narrows this most."}
_A_MONTH = re.compile(r"[A-Z][a-z]{2} \d{4}")
# A range of two months needs no excuse.
_NARROW = timedelta(days=60)
# A life whose ends lie so close together is a rule, not a forecast.
_RULE_RATIO = 1.2


def explain(window: DueWindow) -> str:
    """Why an item is due when it is, in one sentence with a capital and a full stop.

    "About 5/32 now, wearing 1/32 every 4,700 miles, driven about 33 miles a day."
    """
    said = _found_due(window) if window.is_past else _SAID.get(_kind(window), _as_it_is)(window)
    return f"{said[:1].upper()}{said[1:]}."


def explain_in_full(window: DueWindow) -> tuple[str, ...]:
    """The sentence of `explain`, then everything else that is known of its reasons, a sentence or two a line."""
    return (explain(window), *(line for line in _more(window) if line))


def amount(value: float, unit: str) -> str:
    """`5/32`, `5.6 mm`, `1.9 %`."""
    digits = 0 if unit in _WHOLE else 1
    return f"{value:,.{digits}f}{UNIT_WORDS.get(unit, f' {unit}')}"


def measured_words(reading: ShownReading) -> str:
    """What was entered, in words: `6/32`, `rust lip`."""
    if isinstance(reading.measured, str):
        return reading.measured.replace("_", " ")
    return exactly(reading.measured, reading.measured_unit)


def exactly(value: float, unit: str) -> str:
    """A number as it was typed: `3 mm`, `5.25 mm`."""
    return f"{round(value, 2):,g}{UNIT_WORDS.get(unit, f' {unit}')}"


def _kind(window: DueWindow) -> str:
    return window.because.model.partition("/")[0]


def _found_due(window: DueWindow) -> str:
    last = _last(window)
    limit = "" if window.limit is None else f", recommended at {exactly(window.limit.value, window.limit.unit)}"
    if last is not None:
        is_number = not isinstance(last.measured, str)
        return f"{measured_words(last) or 'found due'} on {day_words(last.on)}{limit if is_number else ': due now'}"
    return f"{_now(window)}, measured or found due" if window.now is not None else "measured or found due"


def _last(window: DueWindow) -> ShownReading | None:
    readings = window.evidence.readings if window.evidence else ()
    return readings[-1] if readings else None


def _now(window: DueWindow) -> str:
    if isinstance(window.now, str):
        return f"{window.now.replace('_', ' ')} when last looked at"
    assert window.now is not None
    return f"about {amount(window.now, window.limit.unit if window.limit else '')} now"


def _of_distance_wear(window: DueWindow) -> str:
    because, item = window.because, BY_CODE.get(window.item)
    said = [f"{_now(window)}{' over the stamped minimum' if item and item.measure else ''}"]
    if because.wear_per_1000 is not None and window.limit is not None:
        said.append(f"wearing {_a_unit(window.limit.unit)} every {_every(because.wear_per_1000)} miles")
    if because.distance_per_day is not None:
        said.append(f"driven about {because.distance_per_day:.0f} miles a day")
    return ", ".join(said)


def _a_unit(unit: str) -> str:
    return f"1{UNIT_WORDS.get(unit, f' {unit}')}"


def _every(per_1000: float) -> str:
    """Miles for one unit, to the hundred."""
    return f"{round(1000 / per_1000, -2):,.0f}"


def _of_time_wear(window: DueWindow) -> str:
    rate, limit = window.because.wear_per_1000 or 0.0, window.limit
    is_above = limit is not None and isinstance(window.now, float) and window.now > limit.value
    unit = UNIT_WORDS.get(limit.unit, f" {limit.unit}") if limit else ""
    return f"{_now(window)}, {'falling' if is_above else 'rising'} about {rate:.1f}{unit} a year"


def _of_life(window: DueWindow) -> str:
    because, evidence = window.because, window.evidence
    since = _on_since(because)
    age = "" if because.since_on is None else f", {_span((window.as_of - because.since_on).days)} old"
    if evidence is None or evidence.life_days is None:
        return f"by what is usual for its age: {since}{age}"
    low, median, high = evidence.life_days
    if high / low < _RULE_RATIO:
        made = "" if because.since_on is None else f": made or put on {day_words(because.since_on)}{age}"
        return f"looked at from {_span(median)} on, by rule{made}"
    miles = evidence.interval[1] if evidence.interval else None
    or_miles = "" if miles is None else f" or {miles:,.0f} miles"
    between = f"8 of 10 between {_span(low)} and {_span(high)}"
    return f"usually lasts about {_span(median)}{or_miles} ({between}); {since}{age}"


def _on_since(because: Because) -> str:
    if because.since_how == "unknown" or because.since_on is None:
        return "nobody knows since when this one is on"
    if because.since_how == "first_use":
        return f"taken for the first one, on since {day_words(because.since_on)}"
    return f"this one is on since {day_words(because.since_on)}"


def _span(days: float) -> str:
    """`9 months`, `4.5 years`, `70 days`."""
    if days < 100:
        return f"{days:.0f} days"
    return f"{days / 30.44:.0f} months" if days < 700 else f"{days / 365.25:.1f} years".replace(".0 ", " ")


def _of_interval(window: DueWindow) -> str:
    because, evidence = window.because, window.evidence
    if evidence is None or evidence.interval is None:
        return f"done at regular distances; {_done(because)}"
    days, miles = evidence.interval
    parts = [f"{_span(days)}" if days else "", f"{miles:,.0f} miles" if miles else ""]
    every = " or ".join(filter(None, parts))
    first = ", whichever comes first" if all(parts) else ""
    if said := _said_on_it(window):
        return f"every {every}{first}; {said}"
    if not evidence.lines:
        return f"every {every}{first}; {_done(because)}, so one day is as likely as another"
    driven = f", driven about {because.distance_per_day:.0f} miles a day" if miles and because.distance_per_day else ""
    return f"every {every}{first}; {_done(because)}{driven}"


def _said_on_it(window: DueWindow) -> str:
    """What a display or a sticker said, where that is the latest that is known."""
    last, since = _last(window), window.because.since_on
    if last is None or (since is not None and since >= last.on):
        return ""
    if not isinstance(last.measured, str):
        return f"the display said {measured_words(last)} left on {day_words(last.on)}"
    return f"the sticker says {last.measured}" if last.measured.startswith("due ") else ""


def _done(because: Because) -> str:
    if because.since_how == "unknown" or because.since_on is None:
        return "nobody told when it was last done"
    if because.since_how == "first_use":
        return f"not done since the car was new, {day_words(because.since_on)}"
    return f"last done {day_words(because.since_on)}"


def _of_level(window: DueWindow) -> str:
    because = window.because
    filled = because.since_how == "told" and because.since_on is not None and window.now == "full"
    if filled and because.since_on is not None:
        begun = f"full since {day_words(because.since_on)}"
    elif isinstance(window.now, str):
        begun = f"{window.now.replace('_', ' ')} when last looked at"
    else:
        begun = f"{window.now:,.0f} miles left by the display" if window.now is not None else "last seen level unknown"
    driven = f", driven about {because.distance_per_day:.0f} miles a day" if because.distance_per_day else ""
    return f"{begun}; from there it goes down at the usual pace{driven}"


def _of_date(window: DueWindow) -> str:
    readings = window.evidence.readings if window.evidence else ()
    months = [one.measured for one in readings if isinstance(one.measured, str) and _A_MONTH.fullmatch(one.measured)]
    return f"the date is the one written on it{f': {months[-1]}' if months else ''}"


def _of_looks(window: DueWindow) -> str:
    last = _last(window)
    on = "" if last is None else f" on {day_words(last.on)}"
    found = window.now.replace("_", " ") if isinstance(window.now, str) else "looked at"
    if window.likely is None:
        return f"{found}{on}: judged by its looks alone, so there is no date; it is looked at again at the next visit"
    return f"{found}{on}: to be looked at again half a year later"


def _as_it_is(window: DueWindow) -> str:
    return _now(window) if window.now is not None else "no reason was kept"


_SAID: dict[str, Callable[[DueWindow], str]] = {
    "distance-wear": _of_distance_wear,
    "time-wear": _of_time_wear,
    "life": _of_life,
    "interval": _of_interval,
    "level": _of_level,
    "date": _of_date,
    "looks": _of_looks,
}


def _more(window: DueWindow) -> Iterator[str]:
    if window.stored_set:
        label = window.stored_set.replace("_", "-")
        yield f"These are the {label} tires, which were not on the car when it was last looked at."
    is_worn = _kind(window) in ("distance-wear", "time-wear")
    evidence = window.evidence
    yield _known(window, is_worn)
    if evidence is None:
        return
    yield from _not_counted(evidence)
    if is_worn:
        yield _whose(window, evidence)
    yield from _driven(window, evidence)
    yield _season(evidence)
    yield _why_wide(window, evidence)


def _known(window: DueWindow, is_worn: bool) -> str:
    """When it was last looked at, how often, and since when it is on."""
    because, last = window.because, _last(window)
    days = because.readings_used
    often = f"read on {days} day{'' if days == 1 else 's'}" if days else "not read since it is on"
    said = often[:1].upper() + often[1:]
    if last is not None and days:
        miles = "" if last.odometer_miles is None else f" at {last.odometer_miles:,.0f} mi"
        what = "measured" if is_worn else "looked at"
        word = measured_words(last)
        said = f"Last {what} {day_words(last.on)}{miles}{f': {word}' if word else ''}; {often}"
    is_moved = window.evidence is not None and any(one.apart == "rotated" for one in window.evidence.readings)
    return f"{said}. {_since(because, is_moved)}" if is_worn else f"{said}."


def _since(because: Because, is_moved: bool) -> str:
    on = "" if because.since_on is None else day_words(because.since_on)
    if is_moved and because.since_how == "told":
        return f"At this place since {on}, as the work says; before that it wore at another."
    return {
        "told": f"On the car since {on}, as the work says.",
        "seen": f"Another part is seen by {on}: the reading had grown, and no work was told.",
        "first_use": "Taken for the car's first: the readings fit what was new then.",
        "unknown": "Nobody told since when it is on.",
    }[because.since_how]


def _not_counted(evidence: Evidence) -> Iterator[str]:
    for apart, count in Counter(one.apart for one in evidence.readings if one.apart).items():
        readings = "1 reading does" if count == 1 else f"{count} readings do"
        yield f"{readings} not count: {APART_WORDS[apart]}."


def _whose(window: DueWindow, evidence: Evidence) -> str:
    """Whether the wear rate is this part's own measurement or what is usual."""
    known, own = evidence.known_share, evidence.own_share
    if known is None or own is None:
        return ""
    if window.because.readings_used <= 1 and known < 0.5:
        count = "One reading only" if window.because.readings_used else "Not measured yet"
        return f"{count}: mostly what is usual for such cars."
    if known < 0.4:
        return "Mostly what is usual for such cars: its own readings say little yet."
    if known < 0.6:
        return "Half its own wear, half what is usual for such cars."
    if own >= known / 2 or window.because.since_how == "first_use":
        return "Its own wear counts for most of this."
    return "How the other places of this car wear counts for most of this."


def _driven(window: DueWindow, evidence: Evidence) -> Iterator[str]:
    use, between = evidence.odometer, evidence.miles_a_day_between
    if use is None:
        return
    middle = window.because.distance_per_day
    if between is not None and middle is not None:
        count = len(use.used)
        whence = "no odometer was ever told, so this is what is usual at its age"
        if count:
            on, miles = use.used[-1]
            rest = "" if count == 1 else f" and {count - 1} entr{'y' if count == 2 else 'ies'} before it"
            whence = f"from {miles:,.0f} mi on {day_words(on)}{rest}"
        ahead = f"8 of 10 between {between[0]:.0f} and {between[1]:.0f} over the time ahead"
        yield f"About {middle:.0f} miles a day, {ahead}: {whence}."
    for on, typed, taken in use.put_right:
        yield f"{typed:,.0f} on {day_words(on)} was taken for kilometers: {taken:,.0f} mi."
    for on, miles in use.left_out:
        yield f"{miles:,.0f} mi on {day_words(on)} was left out: it does not fit the other entries."


def _season(evidence: Evidence) -> str:
    season = evidence.season
    if season is None:
        return ""
    label, day = season.label.replace("_", "-").capitalize(), day_words(season.changes_on)
    if season.is_on:
        return f"{label} tires: they come off around {day} and do not wear until they are on again."
    return f"{label} tires: off the car in this season; they do not wear before about {day}."


def _why_wide(window: DueWindow, evidence: Evidence) -> str:
    if evidence.wide is None or window.is_past or window.early is None:
        return ""
    if window.late is not None and window.late - window.early <= _NARROW:
        return ""
    if evidence.life_days is not None and evidence.life_days[2] < _RULE_RATIO * evidence.life_days[0]:
        return ""
    if _kind(window) == "level" and evidence.wide in _LEVEL_WIDE:
        return _LEVEL_WIDE[evidence.wide]
    return _WIDE_WORDS[evidence.wide]
