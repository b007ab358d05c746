"""The visit times of a reply: its choices resolved to windows, what it rules out, when a late customer arrives."""

from __future__ import annotations

import re
from dataclasses import replace
from datetime import datetime, timedelta

from followup.core.replies.contract import TimeWindow
from followup.core.replies.decision import Decision
from followup.core.replies.mentions import Days, Instant, PartOfDay
from followup.core.replies.situation import Situation
from followup.core.replies.windows import Choice, Resolved, point, resolve

_ORDER_OF_QUESTIONS = ("day", "am_or_pm", "time")


def resolve_times(now: Situation, made: Decision) -> None:
    """Fills times, avoid and the question that the times leave open."""
    zone = now.reply.zone
    wanted = [_on_that_day(now, choice) for choice in now.read.choices if not choice.is_negated]
    if not now.read.choices and now.about and now.asked == "time" and _is_all_of_that_day(now):
        wanted = [Choice(Days((now.about,)))]
    about = now.pick.near.date() if now.pick.near else now.about
    resolved = [resolve(choice, now.setting, about, zone) for choice in wanted]
    ruled_out = [resolve(choice, now.setting, now.about, zone) for choice in now.read.choices if choice.is_negated]
    made.times = _unique(resolved)
    made.avoid = tuple(entry for entry in _unique(ruled_out) if entry not in made.times)
    made.question = _question(resolved)
    if not now.read.choices and now.about and now.asked == "time" and _is_whole_day(now.text):
        told = resolve(Choice(Days((now.about,))), now.setting, now.about, zone)
        made.times, made.question = told.windows, told.question
        made.codes -= {"later", "accept"}
    is_impossible = any(choice.day and choice.day.is_impossible for choice in wanted)
    if made.times or is_impossible:
        made.codes |= {"propose"}
    elif now.said.has_times and not now.read.is_any:
        made.codes -= {"propose"}
    if any(choice.day and choice.day.disagrees for choice in wanted):
        made.doubts.append("disagrees")


_HOUR_UNTOLD = re.compile(
    r"^(?:probably |maybe |sometime |any ?time |right |just )*(?:after|once|whenever|when|as soon as|before) "
    r"(?:(?:im|i am|i|we|my|the|her|his)\b)(?! (?:get|am|is|are|was)? ?(?:paid|pay|back|better|well|money|refund))"
)
_ANY_HOUR_OF_IT = re.compile(
    r"\bany ?(?:time|hour)(?: (?:at all))? (?:that|the same|on that) day\b|\ball day (?:long )?works\b"
)


def _is_whole_day(text: str) -> bool:
    """Whether an hour is told that cannot be (`after I drop the kids`), or any hour of the day suits."""
    return bool(_HOUR_UNTOLD.search(text) or _ANY_HOUR_OF_IT.search(text))


_THAT_DAY = re.compile(r"\b(?:that|the same|same) day\b|\b(?:ese(?: mismo)?|el mismo) dia\b")


_UNTOLD_HOUR = re.compile(
    r"\b(?:after|once|as soon as|when|despues de(?: que)?|en cuanto|cuando|luego de) (?:\w+ ){0,3}"
    r"(?:drop\w*|get|pick\w*|take|dej(?:e|ar|o)\w*|recoj\w+|recoger|lleve|llevar|entregue) (?:\w+ ){0,4}"
    r"(?:kids?|child\w*|sons?|daughters?|school|daycare|bus|nin[oa]s?|hij[oa]s?|escuela|kinder|guarderia|nietos?)\b"
)
"""An hour that cannot be told: any of the day under discussion."""


def _is_all_of_that_day(now: Situation) -> bool:
    return bool(_UNTOLD_HOUR.search(now.text) or (now.read.is_any and _THAT_DAY.search(now.text)))


def _on_that_day(now: Situation, choice: Choice) -> Choice:
    """`at 11 that day`, where several days are under discussion: not today, so the day is asked."""
    if choice.day or now.about or not _THAT_DAY.search(now.text):
        return choice
    return replace(choice, is_any_day=True)


def _unique(resolved: list[Resolved]) -> tuple[TimeWindow, ...]:
    return tuple(dict.fromkeys(entry for one in resolved for entry in one.windows))


def _question(resolved: list[Resolved]) -> str | None:
    is_open_beside = any(one.windows and not one.is_closed for one in resolved)
    asked = [one.question for one in resolved if one.question and not (one.is_closed and is_open_beside)]
    return min(asked, key=_ORDER_OF_QUESTIONS.index) if asked else None


_MINUTES_LATE = re.compile(
    r"\b(?P<count>\d{1,3}) ?(?:-|to|or)? ?(?P<more>\d{1,3})? ?(?:more |extra |short |quick |or so )?(?P<unit>min\w*|"
    r"hours?|hrs?|hora\w*|late|behind|tarde)"
)
_BARE_MINUTES = re.compile(
    r"\b(?:in|en)(?: about| around| like| como| unos)* (?P<count>\d{1,2})(?! ?(?::|am\b|pm\b|\d|[/-]))"
)
_HALF_HOUR = re.compile(r"\bhalf (?:an )?hour\b|\bmedia hora\b")
_QUARTER_HOUR = re.compile(r"\bquarter (?:of an )?hour\b|\bcuarto de hora\b")
_FROM_BOOKED = re.compile(r"\b(?:late|behind|tarde|retras\w*|atras\w*|demor\w*)\b")
_FROM_NOW = re.compile(
    r"\bin (?:about |like |around )?(?:\d|half|a)|\ben (?:unos |como )?(?:\d|media)|(?:min\w*|hours?|hrs?|\d) "
    r"(?:away|out)\b|\bdentro\b"
)


_IN_THE = re.compile(
    r"\b(?:in|this|en|por|esta) (?:the |la )?(?:morning|afternoon|evening|tarde|noche|manana)\b|\bnoon\b"
)
"""`llego tarde` is late, no afternoon."""


def arrival(now: Situation, booked: datetime) -> tuple[TimeWindow, ...]:
    """When a late customer arrives, where that is told: minutes late from the booking, else from now, or an hour."""
    text = now.text
    match = _MINUTES_LATE.search(text)
    minutes = 30 if _HALF_HOUR.search(text) else 15 if _QUARTER_HOUR.search(text) else None
    if match:
        count = int(match["more"] or match["count"])
        minutes = count * (60 if match["unit"][0] == "h" else 1)
    bare = _BARE_MINUTES.search(text)
    if minutes is None and bare:
        minutes = int(bare["count"])
    if minutes is not None and minutes <= 360:
        is_from_booked = _FROM_BOOKED.search(text) and not _FROM_NOW.search(text)
        start = booked if is_from_booked else now.reply.now
        return (point(start + timedelta(minutes=minutes)),)
    told = [choice for choice in now.read.choices if not choice.is_negated and not isinstance(choice.time, Instant)]
    if not _IN_THE.search(text):
        told = [choice for choice in told if not isinstance(choice.time, PartOfDay)]
    windows = _unique([resolve(choice, now.setting, booked.date(), now.reply.zone) for choice in told if choice.time])
    return windows[:1] or _pair_of_numbers(now)


_HOUR_AND_MINUTE = re.compile(
    r"\b(?:there|eta|says|said|shows|at|by|around|about|like|alla|ahi|llego|las|dice)(?: (?:its|it is|like|about|"
    r"around|at|by|a las|como))* "
    r"(?P<hour>1[0-2]|[1-9]) ?(?P<minute>[0-5]\d)(?= ?(?:$|[.,!]|sorry|now|instead|thanks|perdon|yall|guys|maybe|or "
    r"so))"
)
"""`be there 1020`, `gps says 10 35`"""


def _pair_of_numbers(now: Situation) -> tuple[TimeWindow, ...]:
    """The arrival told as an hour and its minutes without a mark between them, today from now on."""
    match = _HOUR_AND_MINUTE.search(now.text)
    if not match:
        return ()
    at = now.reply.now.replace(hour=int(match["hour"]) % 12, minute=int(match["minute"]), second=0, microsecond=0)
    at = at if at >= now.reply.now else at + timedelta(hours=12)
    return (point(at),) if at >= now.reply.now else ()
