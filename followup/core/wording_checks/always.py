"""What every text says, what the text of one reason must say, and how numbers and dates stand in it."""

from __future__ import annotations

import re
from collections.abc import Iterable

from followup.core.phrasing import MONTH_NAMES
from followup.core.readability import sentences_of
from followup.core.wording_checks.checked import CheckedText, Fault
from followup.core.wording_checks.never import CAUTION_PHRASE
from followup.core.wording_facts import FACTS_OF

_HOW_TO_STOP = {"en": re.compile(r"\bSTOP\b"), "es": re.compile(r"\b(?:ALTO|STOP)\b")}
# What holds a car on the road: a text about it gives the phone number, at a limit or not (the stricter of the two).
_HOLDS_THE_ROAD = {
    "en": re.compile(r"\b(?:brakes?|braking|steering|tires?|rotors?)\b", re.IGNORECASE),
    "es": re.compile(r"\b(?:frenos?|frenan?|llantas?|volante|direcci[oó]n|discos?)\b", re.IGNORECASE),
}
_A_CAR = {
    "en": re.compile(r"\b(?:your|the) (?:car|truck|van|vehicle|pickup|suv)\b", re.IGNORECASE),
    "es": re.compile(r"\b(?:su|el|la) (?:auto|carro|coche|camioneta|veh[ií]culo|van)\b", re.IGNORECASE),
}
_ABOUT_ONE_CAR = frozenset(
    {"due_work", "odometer_question", "missed_visit", "after_visit", "recall", "parts_in", "car_ready"}
)
# These speak of texts in general, of items in general, or in a person's own words, before any one car is meant.
_ABOUT_NO_CAR = frozenset({"opted_in", "help", "stopped", "resumed", "explain", "from_a_person"})
# Facts that are read back with their full date wherever the reason has one.
_READ_BACK = ("time", "old_time", "day")


def always_faults(one: CheckedText) -> Iterable[Fault]:
    """What every text says: shop first, the car, how to stop, the phone, the full date; what its reason asks for."""
    shop, phone, car = one.fact("shop"), one.fact("shop_phone"), one.fact("car")
    if not one.said.startswith(shop):
        yield Fault("shop first", "It must begin with the shop's name: write {{ shop }} first.")
    if one.reason.offers_way_out and not _HOW_TO_STOP[one.language].search(one.said):
        says = "Reply STOP to stop texts." if one.language == "en" else "Responda ALTO para no recibir mensajes."
        yield Fault("how to stop", f"An invite ends with how to stop: “{says}”")
    needs_phone = one.reason.needs_phone_number or _HOLDS_THE_ROAD[one.language].search(one.bare)
    if needs_phone and phone not in one.said:
        yield Fault("phone number", "The shop's phone number must stand in it: write {{ shop_phone }}.")
    if car and car not in one.said and _speaks_of_a_car(one):
        yield Fault("car", "Name the car in the customer's words: write {{ car }}.")
    for name in _READ_BACK:
        if name in FACTS_OF[one.reason_code].needs and one.fact(name) not in one.said:
            yield Fault("full date", f"The full date must be read back: write {{{{ {name} }}}}.")
    for pattern, words in MUST_SAY[one.language].get(one.reason_code, ()):
        if not re.search(pattern, one.said, re.IGNORECASE | re.DOTALL):
            yield Fault("must say", f"This text must say: “{words}”")


def _speaks_of_a_car(one: CheckedText) -> bool:
    if one.reason_code in _ABOUT_ONE_CAR:
        return True
    if one.reason_code in _ABOUT_NO_CAR:
        return False
    return bool(_A_CAR[one.language].search(CAUTION_PHRASE[one.language].sub("", one.said)))


# What the text of a reason must say: patterns of which each must be found, with the words to write.
MUST_SAY: dict[str, dict[str, tuple[tuple[str, str], ...]]] = {
    "en": {
        "confirmation": ((r"\bno paid work starts\b.*\bprice\b", "No paid work starts until you approve a price."),),
        "opted_in": (
            (r"\b(?:how many|how often|a year|a month)\b", "How many depends on your visits."),
            (r"\brates\b", "Message and data rates may apply."),
            (r"\bHELP\b", "Reply HELP for help."),
            (r"\bSTOP\b", "Reply STOP to stop texts."),
        ),
        "help": ((r"\bSTOP\b", "Reply STOP to stop texts."),),
        "judgment": ((r"\bcannot judge\b.*\bby text\b", "We cannot judge that by text."),),
        "recall": ((r"\bmay have an open recall\b", "Your car may have an open recall."),),
    },
    "es": {
        "confirmation": ((r"\bcosto\b.*\bprecio\b", "No se hace nada con costo hasta que usted acepte un precio."),),
        "opted_in": (
            (r"\b(?:depende de|al año|al mes)\b", "La cantidad depende de sus visitas."),
            (r"\btarifas\b", "Puede haber tarifas de mensajes y datos."),
            (r"\bAYUDA\b", "Responda AYUDA para ayuda."),
            (r"\bALTO\b", "Responda ALTO para no recibir mensajes."),
        ),
        "help": ((r"\bALTO\b", "Responda ALTO para no recibir mensajes."),),
        "judgment": ((r"\bno podemos juzgar\b.*\bpor mensaje\b", "No podemos juzgar eso por mensaje."),),
        "recall": ((r"\bpuede tener un llamado\b", "Su auto puede tener un llamado a taller."),),
    },
}

_A_READING = re.compile(r"(?<![\d/])\d+(?:\.\d+)?(?:/32|\s?(?:mm|ppm|psi|cca|volts?|voltios|kpa|bar)\b)", re.IGNORECASE)
_MONTHS = {language: "|".join(names) for language, names in MONTH_NAMES.items()}
_A_DAY = {
    "en": re.compile(rf"\b(?:{_MONTHS['en']}) \d{{1,2}}\b|\btoday\b"),
    "es": re.compile(rf"\b\d{{1,2}} de (?:{_MONTHS['es']})\b|\bhoy\b"),
}
_A_MONTH = {
    "en": re.compile(rf"\b(?:{_MONTHS['en']})\b(?! \d)"),
    "es": re.compile(rf"(?<!\d de )\b(?:{_MONTHS['es']})\b"),
}
# In English "may" is small and the month is not.
_IS_ONLY_MAYBE = {
    "en": re.compile(r"\b(?:may|around|about)\b"),
    "es": re.compile(r"\b(?:puede|pueden|posible|alrededor|hacia)\b", re.IGNORECASE),
}


def number_faults(one: CheckedText) -> Iterable[Fault]:
    """A number stands with its day; what is ahead stands with "may" or "around" beside its month."""
    if one.is_a_persons:
        return
    for sentence in sentences_of(one.said):
        if (hit := _A_READING.search(sentence)) and not _A_DAY[one.language].search(sentence):
            yield Fault("number with its day", f"“{hit.group()}” stands without its day: say when it was measured.")
        if (hit := _A_MONTH[one.language].search(sentence)) and not _IS_ONLY_MAYBE[one.language].search(sentence):
            yield Fault("what is ahead", f"“{hit.group()}” is ahead: say “may” or “around” with it.")
