"""When we may ask again: the date that a `later` tells, or the day on which the odometer will show a reading."""

from __future__ import annotations

from datetime import date, datetime, timedelta

from followup.core.replies import odometer_reading
from followup.core.replies.decision import Decision
from followup.core.replies.mentions import Days
from followup.core.replies.said import phrases
from followup.core.replies.situation import Situation

_ASK_AGAIN = phrases(
    r"(?:ask|remind|bug|nudge|poke|holler|shout|text|message|contact|hit|reach|ping|circle|follow up|touch base|"
    r"talk)(?: \w+){0,4}",
    r"check (?:back|again|with (?:me|us)|in with)(?: \w+){0,4}",
    r"try (?:me|us|back|again (?:next|in|after|some\w*|around|later))(?: \w+){0,4}",
    r"get back (?:to|with)",
    r"let (?:you|u|yall|ya) know",
    r"(?:ill|i will|well|can|gonna|going to|we will) (?:call|text|contact|know|decide|check|reach|"
    r"be in touch|get back)(?: \w+)*",
    r"(?:recuerd|recorde|avis|escrib|pregunt|mand|contact|busqu|busc|habl|text)\w*(?:me|nme|eme|"
    r"nos)?",
    r"(?:les|le|te|yo) (?:aviso|llamo|digo|confirmo|marco|hablo)(?: \w+)*",
)
_HINDERED = phrases(
    r"paid",
    r"pay ?day",
    r"pay ?check",
    r"afford",
    r"money",
    r"think (?:about|it over|on it)",
    r"to think",
    r"paguen",
    r"pagan",
    r"cobr[oe]",
    r"dinero",
    r"pensar",
    r"quincena",
    r"not (?:right )?now",
    r"(?:ahora|ahorita) no",
    r"busy",
    r"ocupad[oa]",
    r"out of (?:the )?(?:town|state|country|city|office)",
    r"travel\w*",
    r"(?:im|were|we are|ill be|well be|shall be|am|are) gone",
    r"abroad",
    r"overseas",
    r"deployed",
    r"(?:back|return\w*|home) (?:on|by|the|from)",
    r"regres\w+",
    r"vuelvo",
    r"away",
    r"de viaje",
    r"vacation",
    r"vacaciones",
    r"fuera",
    r"wait",
)
_TARGET = phrases(
    r"at",
    r"hits?",
    r"reach\w*",
    r"gets?",
    r"closer",
    r"turns?",
    r"lleg\w+",
    r"tenga",
    r"marque",
    r"a l[oa]s",
    r"til+",
    r"a las?",
    r"until",
    r"hasta",
)
_CAN_IT_WAIT = phrases(r"can (?:it|this|that|they) wait", r"(?:se )?puede esperar", r"would it be ok to wait")
_STILL = phrases(
    r"how about",
    r"any ?(?:day|time)",
    r"cualquier (?:dia|hora)",
    r"(?:free|open|available|libres?|disponibles?)",
    r"change (?:it|that|this|the|my)",
    r"make it",
    r"schedule",
    r"book",
    r"what about",
    r"instead",
    r"can (?:i|we|you)",
    r"puedo",
    r"que tal",
    r"could",
    r"works?",
    r"is (?:good|better|fine)",
)


def settle_later(now: Situation, made: Decision) -> None:
    """What `later` makes of the times that stand beside it, and the date from which we may ask again."""
    if "later" not in made.codes:
        return
    told = next((days.days[0] for days in now.read.later if days.days), None) or _told_beside(now)
    if made.times and told is None:
        told = _told_by_visit_times(now, made)
        if told is None:
            made.drop(("later",))
            return
    elif made.times and not _ASK_AGAIN.search(now.text):
        made.drop(("later",))
        return
    made.until = _from_odometer(now) or told
    is_other_time = now.booked is not None and made.has("move", "cancel") and made.until is None
    if is_other_time or "resume" in made.codes or _CAN_IT_WAIT.search(now.text):
        made.drop(("later",))
        made.until = None
        return
    if now.said.is_any and told is None and made.until is None and not _ASK_AGAIN.search(now.text):
        made.drop(("later",))
        return
    if made.until == now.today and now.asked == "odometer":
        made.until = None  # `I'll look tonight`: the answer comes by itself
    made.forget_times()
    made.drop(("move",) if now.booked else ("move", "cancel"))
    if _from_odometer(now) or (odometer_reading.target_reading(now.text) and _TARGET.search(now.text)):
        made.drop(("odometer",))


def _told_beside(now: Situation) -> date | None:
    """A day that is told for asking again or for what stands in the way, not for the visit; else None."""
    if not (_ASK_AGAIN.search(now.text) or _HINDERED.search(now.text)):
        return None
    told = (one.value for one in now.read.other if isinstance(one.value, Days) and one.value.days)
    return next((days.days[0] for days in told if days.days[0] > now.today), None)


def _told_by_visit_times(now: Situation, made: Decision) -> date | None:
    """The day of a time that is no visit time, as asking again or what stands in the way shows; else None."""
    days = [entry for entry in made.times if not entry.start.startswith("T")]
    if not days:
        return None
    if _ASK_AGAIN.search(now.text) or (_HINDERED.search(now.text) and not _STILL.search(now.text)):
        return datetime.fromisoformat(days[0].start).date()
    return None


def _from_odometer(now: Situation) -> date | None:
    """The date on which the odometer will show a reading, by the expected distance a day."""
    known = now.reply.odometer
    if not known or not known.per_day:
        return None
    target = odometer_reading.target_reading(now.text) if _TARGET.search(now.text) else None
    further = odometer_reading.further_distance(now.text)
    driven = (now.today - known.on).days * known.per_day if known.on else 0.0
    distance = target - known.value - driven if target else further
    if distance is None or distance <= 0:
        return None
    return now.today + timedelta(min(round(distance / known.per_day), 20_000))
