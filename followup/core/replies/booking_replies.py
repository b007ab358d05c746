"""What a reply means for the booking that stands: late for it, called off, moved, or still fine."""

from __future__ import annotations

import re
from datetime import datetime, timedelta

from followup.core.replies import visit_times
from followup.core.replies.contract import TimeWindow
from followup.core.replies.decision import Decision
from followup.core.replies.intents import running_late
from followup.core.replies.said import phrases
from followup.core.replies.situation import Situation
from followup.core.replies.windows import iso, overlaps, point, window
from followup.core.replies.yes_words import has_yes_word

LONGEST_SHIFT_MINUTES = 28 * 24 * 60
_OTHER_TIME = phrases(
    r"re ?-?sched\w*",
    r"reprogram\w*",
    r"reagend\w*",
    r"mov(?:e|ing|er\w*|erl[ao])",
    r"another (?:day|time|date)",
    r"otr[oa] (?:dia|hora|fecha)",
    r"different (?:day|time|date)",
    r"push",
    r"cambiar\w*",
    r"pasar(?:l[ao])?",
    r"switch",
    r"postpone",
    r"pospon\w*",
    r"instead",
    r"rain check",
)
_NOT_WANTED = phrases(
    r"(?:dont|no longer|do not) need",
    r"not interested",
    r"forget (?:it|about it)",
    r"never ?mind",
    r"no longer (?:want|interested)",
    r"(?:dont|do not) want",
    r"ya no (?:quiero|necesito|voy)",
    r"no me interesa",
    r"no hace falta",
    r"elsewhere",
    r"myself",
    r"otro taller",
    r"changed my mind",
    r"olvid\w+lo",
    r"no gracias",
)


def settle_booking(now: Situation, made: Decision) -> None:
    """The reply against the standing booking; without one, calling off or moving is said of nothing."""
    if now.booked is None:
        _without_booking(now, made)
    elif "running_late" in made.codes and (_is_there(now) or _says_yes_on_time(now)):
        made.become("accept", ("running_late", "move", "cancel", "propose", "decline", "later", "choose"))
        made.times, made.avoid, made.question, made.is_settled = (), (), None, True
    elif "running_late" in made.codes and not made.has("stop"):
        made.drop(("move", "cancel", "propose", "accept", "decline", "later", "choose"))
        made.times, made.avoid, made.until = visit_times.arrival(now, now.booked), (), None
        if made.times and all(entry.start < iso(now.booked) for entry in made.times) and not _speaks_of_late(now):
            made.become("move", ("running_late",))
    elif made.has("stop", "choose", "stranger"):
        made.drop(("move",))
    else:
        _settle_standing(now, made, now.booked)


def _speaks_of_late(now: Situation) -> bool:
    """Whether words say so; an arrival before the booked start is a wish for another hour otherwise."""
    return (
        now.booked is None
        or now.booked <= now.reply.now
        or not _CAN_BE.search(now.text)
        or bool(_LATE.search(now.text))
    )


_LATE = phrases(r"late", r"behind", r"traffic", r"on (?:my|our|the) way", r"stuck", r"tarde", r"trafico", r"en camino")
_CAN_BE = phrases(r"(?:can|could) (?:be|get|come|make it) (?:there|in|over)", r"puedo (?:estar|llegar|ir)")


def _is_there(now: Situation) -> bool:
    """Whether who was on the way is there already."""
    return bool(_HERE.search(now.text)) and not running_late.tells_lateness(now.said)


def _says_yes_on_time(now: Situation) -> bool:
    """Whether who is on the way says yes, and nothing of coming late."""
    return now.asked == "confirm" and has_yes_word(now.said) and not running_late.tells_lateness(now.said)


_HERE = phrases(
    r"(?:im|i am|were|we are|already|just) (?:\w+ )?(?:here|outside|parked)",
    r"(?:pulled|pulling|pullin) (?:in|into|up)(?: \w+){0,3}",
    r"in (?:your|the) (?:parking )?lot",
    r"(?:ya )?(?:estoy|ando|estamos) (?:aqui|afuera)(?: afuera)?",
    r"aqui (?:estoy|ando|afuera|estamos)",
    r"en (?:el|su) (?:parking|estacionamiento)",
)


def _without_booking(now: Situation, made: Decision) -> None:
    made.drop(("running_late", "move"))
    if "cancel" in made.codes and made.times:
        made.drop(("cancel",))


def _settle_standing(now: Situation, made: Decision, booked: datetime) -> None:
    names_another = made.times and not all(overlaps(booked, entry) for entry in made.times)
    if len(made.times) == 1 and _CALLS_OFF_DAY.search(now.text):
        names_another = False
    if "cancel" in made.codes and (names_another or ("move" in made.codes and _OTHER_TIME.search(now.text))):
        made.become("move", ("cancel",))
    if "cancel" in made.codes:
        made.drop(("move", "accept", "decline") if made.until else ("move", "accept", "decline", "later"))
        made.forget_times()
        made.until = made.until if made.until and made.until > booked.date() else None
    elif made.has("gone", "done", "later") and not made.times:
        made.drop(("move",))
    elif "move" in made.codes and not _is_same_time(made, booked):
        _move(now, made, booked)
    elif now.asked in ("confirm", None):
        made.drop(("move",))
        _confirm(now, made, booked)


def _is_same_time(made: Decision, booked: datetime) -> bool:
    return bool(made.times) and all(overlaps(booked, entry) for entry in made.times) and "accept" in made.codes


def _move(now: Situation, made: Decision, booked: datetime) -> None:
    made.become("move", ("propose", "accept", "decline", "later", "cancel"))
    made.until = None
    made.avoid = tuple(entry for entry in made.avoid if entry.start[:10] != iso(booked)[:10])
    first, *others = made.times or (None,)
    if first and others and first.grain == "day" and first.start[:10] == iso(booked)[:10]:
        made.times = tuple(others)  # the day that is left: `tomorrow turned bad, switch me to Friday`
    is_of_that_day = all(one.grain == "day" and one.start[:10] == iso(booked)[:10] for one in made.times)
    beside = _day_beside(now, booked) if is_of_that_day else None
    if beside:
        made.times, made.question = (beside,), None
    shifted = _shifted(now.text, booked)
    at_the_same_time(now, made, booked)
    if shifted and not any(not entry.start.startswith(iso(booked)[:10]) for entry in made.times):
        made.times, made.question = (shifted,), None


def _confirm(now: Situation, made: Decision, booked: datetime) -> None:
    """A reply to `is the booking still fine`, or one that comes while a booking stands."""
    is_of_booked = bool(made.times) and all(overlaps(booked, entry) for entry in made.times)
    is_question = made.has("price", "duration") and not made.has("accept", "decline") and len(now.said.parts) == 1
    if is_of_booked and is_question:
        made.forget_times()  # the day of the question: `how much will I owe on Thursday`
        return
    is_farewell = made.times and all(entry.start[:10] == iso(booked)[:10] for entry in made.times)
    if is_farewell and has_yes_word(now.said) and _SEE_YOU_EARLY.search(now.text):
        made.become("accept", ("propose", "decline", "move"))
        made.times, made.question, made.is_settled = (), None, True
        return
    if made.times or "propose" in made.codes:
        if made.times and all(overlaps(booked, entry) for entry in made.times):
            made.become("accept", ("propose", "decline"))
            made.times, made.question = (), None
        elif made.times:
            _move(now, made, booked)
    elif "accept" in made.codes:
        made.avoid, made.question, made.is_settled = (), None, True
    elif "decline" in made.codes and now.asked == "confirm":
        if re.search(r"\b(?:all set|im good|im all good|were good)\b", now.text):
            made.become("accept", ("decline",))
            made.is_settled = True
        elif _NOT_WANTED.search(now.text) and not made.avoid:
            made.become("cancel", ("decline",))
        else:
            _move(now, made, booked)
            made.question = "day"


_SEE_YOU_EARLY = phrases(
    r"(?:see|catch) (?:you|u|ya|yall)(?: \w+){0,2} (?:bright and early|first thing|early|in the morning|in the "
    r"afternoon)"
)
"""A farewell that names the part of the day of the visit."""


_DAY_AFTER = phrases(
    r"(?:the )?(?:day after|next day|following day)(?! (?:tomorrow|that i|pick ?up))", r"one day (?:later|after)"
)
_DAY_BEFORE = phrases(r"the day before(?! yesterday)", r"one day (?:earlier|before|sooner)")


def _day_beside(now: Situation, booked: datetime) -> TimeWindow | None:
    """The day after or before the booked one, where the shop is open on it (`can we do the day after instead`)."""
    way = 1 if _DAY_AFTER.search(now.text) else -1 if _DAY_BEFORE.search(now.text) else 0
    day = booked.date() + timedelta(days=way)
    hours = now.setting.hours.on(day)
    return window(day, *hours, "day") if way and hours and day > now.today else None


def at_the_same_time(now: Situation, made: Decision, at: datetime) -> None:
    """Whole days that are wanted at the `same time` as a start that stands or was offered."""
    if _SAME_TIME.search(now.text) and made.times and all(entry.grain == "day" for entry in made.times):
        days = (datetime.fromisoformat(entry.start).date() for entry in made.times)
        made.times, made.question = tuple(point(datetime.combine(day, at.time())) for day in days), None


_CALLS_OFF_DAY = re.compile(
    r"\b(?:cancel|scrap|nix|scratch|drop|strike|take|remove)(?: (?!to\b|until\b|and\b)\w+){0,5}? "
    r"(?:(?:mon|tues|wednes|thurs|fri|satur|sun)day|today|tomorrow|the \d+)(?:s page|s visit|s appointment)?\W*$"
)
"""The day called off itself, whichever day stands in our book."""
_SAME_TIME = phrases(r"same (?:time|hour)", r"(?:la |a la )?misma hora")
_SHIFT = re.compile(
    r"\b(?P<count>\d{1,3}|an?|one|two|half an|una|un|dos|media|a couple(?: of)?) ?(?P<unit>hours?|"
    r"hrs?|min\w*|horas?|days?|dias?|weeks?|semanas?)\b"
)
_LATER = phrases(
    r"push", r"back", r"later", r"delay", r"bump", r"mas tarde", r"atras\w*", r"recorr\w*", r"despues", r"postpone"
)
_EARLIER = phrases(
    r"earlier", r"sooner", r"move (?:it |my \w+ |the \w+ )?up", r"forward", r"mas temprano", r"antes", r"adelant\w*"
)
_COUNTS = {"a": 1, "an": 1, "one": 1, "una": 1, "un": 1, "two": 2, "dos": 2, "a couple": 2, "a couple of": 2}


def _shifted(text: str, booked: datetime) -> TimeWindow | None:
    """The booked start moved by what is told (`push it back an hour`); None where no distance is told."""
    match = _SHIFT.search(text)
    if not match or not (_LATER.search(text) or _EARLIER.search(text)):
        return None
    count, is_hours = match["count"], match["unit"].startswith("h")
    if count in ("half an", "media"):
        minutes = 30
    else:
        minutes = (int(count) if count.isdigit() else _COUNTS[count]) * (60 if is_hours else 1)
    if match["unit"][0] in "dws":
        minutes = minutes * 24 * 60 * (1 if match["unit"].startswith("d") else 7)
    if minutes > (600 if is_hours or match["unit"].startswith("min") else LONGEST_SHIFT_MINUTES):
        return None
    way = -1 if _EARLIER.search(text) and not re.search(r"\bpush\b|\bback\b", text) else 1
    return point(booked + timedelta(minutes=way * minutes))
