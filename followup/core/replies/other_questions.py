"""Questions that no meaning names (`do you take cards?`): a person answers them."""

from __future__ import annotations

import re

from followup.core.replies.intents import ALL
from followup.core.replies.needs import find_needs
from followup.core.replies.offers import pick_offers
from followup.core.replies.said import Said
from followup.core.replies.situation import Situation
from followup.core.replies.times import read_times

_SENTENCE = re.compile(r"(?<![^.!?;\n])[^.!?;\n]+\?")
_OPENER = re.compile(
    r"^(?:(?:yes|yeah|ok|sure|and|also|but|hi|hello|si|y|hola|pero|great|perfect|thanks|"
    r"no|so|well|btw|by the way|hey|oh|quick question|perfecto|bueno|oiga|disculpe|tambien) )*(?:do "
    r"(?:you|u|yall|ya)|do (?:i|we) (?:need to |have to |got to )?(?:bring|sign|leave|park|make|print|show)|"
    r"should (?:i|we) (?:bring|take|leave|park|sign|clean|empty|fill)|"
    r"does (?:the|it|your|that)|(?:can|could|would|will) (?:you|u|"
    r"yall|i|we|they)|is there|are there|who (?:will|would|is (?:going|doing|working))|is it (?:ok|okay|"
    r"alright|fine) (?:if|for|to)|is (?:the|your|my)|have you|did you|are you (?:able|"
    r"guys able)|(?:se )?(?:pueden?|podrian?) \w+|tienen|hay|aceptan|me pueden|puedo|ustedes|"
    r"hacen|dan|venden|manejan|tendran?|(?:tambien )?(?:quitan|sacan|arreglan|reparan|pintan|polarizan|lavan|rentan|"
    r"reciben))\b"
)
_ANSWER = re.compile(
    r"^\W*(?:(?:yes|yeah|yep|ok|sure|no|nope|si|claro|bueno|great|perfect|thanks|gracias|hi|hello|hola|btw|please)"
    r"(?: please| thanks| gracias| por favor)?\b[ ,.!]*)+"
)
"""A yes, a no or a greeting before the question itself."""
_LEAST_WORDS = 3
_MOST_ASKED = 12
"""How many questions of one text are looked at."""


_OWN_BOOKING = re.compile(
    r"\b(?:what time|what day|when|which day)(?: \w+)? (?:(?:am|are) (?:i|we) (?:down|scheduled|booked|set|supposed|"
    r"coming)|(?:is|was) (?:my|our) "
    r"(?:appointment|appt|visit|booking)|do (?:i|we) (?:come in|need to be there|have to be there))\b"
    r"|\b(?:a )?que (?:hora|dia) (?:es|era|tengo|me toca)(?: (?:mi|la|lo mio|que|cita)\b|(?: manana| hoy| el \w+)?\W*$)"
)
"""What our own book tells; without a booking it is a wish to have one."""
_NAMED = re.compile(
    r"\b(?:what|anything|something|which papers?) (?:do|should|must|can|am|would|that)? ?(?:i|we) (?:\w+ ){0,3}bring\b"
    r"|\b(?:can|could|may|do) (?:i|we|you) (?:\w+ )?(?:pay|take|accept|use) (?:\w+ ){0,2}(?:cash|cards?|checks?|credit|"
    r"debit|amex|visa|discover|apple pay)\b"
    r"|\b(?:tienen?|tendran?|hay|habra) (?:\w+ ){0,2}donde (?:\w+ )?(?:\w+[aei]r(?:me|nos|se|lo)?|est[ae]n|jueguen|"
    r"pueda\w*|se queden?)\b"
    r"|\bque (?:papeles |cosas |documentos )?(?:llevo|traigo|(?:tengo|hay) que (?:llevar|traer)|ocupo llevar)\b"
    r"|\b(?:aceptan|reciben|agarran|toman|puedo pagar|se puede pagar|cobran) (?:(?:con|en|pagos?|la|mi|de) ){0,3}"
    r"(?:tarjetas?|efectivo|cash|cheques?|credito|debito)\b"
)
"""Questions of this kind that stand in the middle of a sentence."""


def is_named(plain: str) -> bool:
    """Whether it asks what to bring or how to pay."""
    return bool(_NAMED.search(plain))


def asks_for_booking(now: Situation) -> bool:
    """Whether it asks when the booking is that stands."""
    return now.booked is not None and bool(_OWN_BOOKING.search(now.text))


def asks_something_else(now: Situation) -> bool:
    """Whether a sentence asks something that is neither a visit time, a need nor one of the meanings."""
    if is_named(now.text) or asks_for_booking(now):
        return True
    asked = [match.group() for match in _SENTENCE.finditer(now.text)]
    asked += [part for part in now.said.parts if _OPENER.match(part)]
    return any(_is_unknown(one, now) for one in dict.fromkeys(_ANSWER.sub("", one) for one in asked[:_MOST_ASKED]))


def _is_unknown(sentence: str, now: Situation) -> bool:
    if len(re.findall(r"[a-z\d]+", sentence)) < _LEAST_WORDS or find_needs(sentence):
        return False
    read, _ = read_times(sentence, now.setting)
    if read.choices or read.later or read.is_any or read.other:
        return False
    alone = Said(
        text=sentence,
        asked=now.asked,
        has_booking=now.booked is not None,
        offers=now.said.offers,
        picked=len(pick_offers(sentence, read, now.setting, now.reply.offered, now.reply.zone).named),
        has_reading=now.said.has_reading,
        has_car=now.said.has_car,
    )
    return not any(intent.holds(alone) for intent in ALL if intent.CODE not in ("thanks", "unclear"))
