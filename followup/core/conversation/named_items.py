"""Which of the items that we wrote about a customer names: `did the filter already` is about filters, not the brakes.

Words of English and Spanish, without accents, as people write them; from memory.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping

from followup.core.replies.plain import make_plain

ItemAt = tuple[str, str]

_TIRES = r"tires?|tyres?|llantas?|neumaticos?|gomas?"
_BRAKES = r"brakes?(?! (?:fluid|light))|frenos?"
_FILTER = r"(?<!oil )(?<!aceite )filters?|filtros?(?! de aceite)"
_OIL = r"oil(?! filter)|aceite"
_STICKER = r"stickers?|etiquetas?|calcomanias?"
_BELT = r"belts?|bandas?|correas?"
WORDS = {
    "tire_tread": _TIRES,
    "tire_age": _TIRES,
    "tire_pressure": rf"{_TIRES}|air|pressure|aire|presion",
    "tire_rotation": r"rotat\w*|rota(?:r|cion|ron|do)\w*",
    "alignment": r"align\w*|aline\w*",
    "brake_pad": rf"pads?|{_BRAKES}|pastillas?|balatas?",
    "brake_rotor": rf"rotors?|dis[ck]s?|{_BRAKES}|discos?",
    "brake_shoe": rf"shoes?|drums?|{_BRAKES}|zapatas?|tambor\w*",
    "parking_brake_shoe": r"parking brake|hand ?brake|freno de mano",
    "brake_fluid": r"brake fluid|fluido de frenos?|liquido de frenos?",
    "oil_service": _OIL,
    "engine_oil": _OIL,
    "coolant": r"coolant|antifreeze|refrigerante|anticongelante",
    "washer_fluid": r"washer(?: fluid)?|agua del? (?:limpia)?parabrisas",
    "diesel_exhaust_fluid": r"def|exhaust fluid|urea",
    "battery": r"battery|bateria",
    "wiper_blade": r"wipers?|blades?|escobillas?|plumillas?|limpiaparabrisas",
    "cabin_filter": _FILTER,
    "engine_air_filter": _FILTER,
    "timing_belt": _BELT,
    "drive_belt": _BELT,
    "hoses": r"hoses?|mangueras?",
    "lights": r"lights?|bulbs?|luces|luz|focos?",
    "exhaust": r"exhaust(?! fluid)|muffler|escape|mofle",
    "windshield": r"windshield|glass|parabrisas|vidrio",
    "suspension_play": r"suspension|joints?|rotulas?",
    "set_change": rf"{_TIRES}|winters|summers",
    "inspection_sticker": rf"inspection|{_STICKER}|inspeccion",
    "emissions_sticker": rf"emissions?|smog|{_STICKER}|emisiones",
    "registration_sticker": rf"registration|tags?|{_STICKER}|registro|placas?",
}
_FOUND = {code: re.compile(rf"\b(?:{words})\b") for code, words in WORDS.items()}
_LEFT_OUT = re.compile(
    r"\b(?:not|except|but|havent|didnt|still|only need|no|menos|excepto|pero|falta\w*|solo quedan?)\b[^,.;]*"
)
"""What follows is what was not done: `the tires, but not the brakes`."""


def items_named(text: str, items: Iterable[ItemAt], own_words: Mapping[str, str]) -> tuple[ItemAt, ...]:
    """Those of `items` that `text` names; () where it names none, and so may mean them all.

    `own_words` are the shop's words for each item by its code: an item of the shop's own is known by them.
    """
    plain = _LEFT_OUT.sub(" ", make_plain(text, None).text)
    return tuple(at for at in items if _is_named(at[0], plain, own_words))


def _is_named(code: str, plain: str, own_words: Mapping[str, str]) -> bool:
    if code in _FOUND:
        return bool(_FOUND[code].search(plain))
    own = make_plain(own_words.get(code, ""), None).text.strip()
    return bool(own) and own in plain
