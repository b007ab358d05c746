"""The odometer reading that a text tells, and whether it can be right."""

from __future__ import annotations

import re
from dataclasses import dataclass
from datetime import date
from itertools import islice
from typing import Literal

from followup.core.replies.contract import KnownOdometer
from followup.core.replies.number_words import with_thousands

KM_PER_MILE = 1.609344
LARGEST_READING = 999_999
MOST_A_DAY_MI = 300.0
"""Miles a day since the last reading above which a new one is doubted."""
FIVE_DIGITS = 10_000
SURELY_A_READING = 1000
"""From here on a number that answers the question is the reading, whatever doubt stands beside it."""
UNIT_MIX_UP = 0.03
"""How near a reading may come to 1.609 times the expected one before the unit is doubted."""

DistanceUnit = Literal["mi", "km"]

_NUMBER = r"(?:\d{1,3}(?:[,. ]\d{3})+(?!\d)|\d+(?:\.\d+)?)"
_THOUSAND = r"(?: ?(?:k\b|thousand\b|thou\b|mil\b))"
_SPELLED = {
    "ten": 10, "twenty": 20, "thirty": 30, "forty": 40, "fifty": 50, "sixty": 60, "seventy": 70, "eighty": 80,
    "ninety": 90, "hundred": 100, "diez": 10, "veinte": 20, "treinta": 30, "cuarenta": 40, "cincuenta": 50,
    "sesenta": 60, "setenta": 70, "ochenta": 80, "noventa": 90, "cien": 100,
}  # fmt: skip
_ONES = {
    "one": 1, "two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "seven": 7, "eight": 8, "nine": 9, "uno": 1,
    "un": 1, "dos": 2, "tres": 3, "cuatro": 4, "cinco": 5, "seis": 6, "siete": 7, "ocho": 8, "nueve": 9,
}  # fmt: skip
_WORDS = re.compile(
    rf"\b(?P<tens>{'|'.join(_SPELLED)})(?:(?:[ -]| y )(?P<ones>{'|'.join(_ONES)}))? (?P<thousand>thousand|k|mil)\b"
)
_UNIT = (
    r"(?: (?:y pico|and change|and some|something|y algo)(?: de)?)?(?P<unit>(?: ?(?:miles?|mi|"
    r"millas?|kilometers?|kilometres?|kilometros?|kms?|kms)\b)?)"
)
_READING = re.compile(
    rf"(?<![\d$#/:.,-])(?:(?P<low>{_NUMBER})(?P<low_k>{_THOUSAND}?) ?(?:-|to|and|y|a|or|"
    rf"o) ?)?(?P<value>{_NUMBER})(?P<thousand>{_THOUSAND}?){_UNIT}"
)
_STANDS_AT = re.compile(
    r"\b(?:(?:it|its|she|shes|he|hes|odo|car|truck|van|that|thing|i|im|i am|we|we are|were|miles|odo|odometers?) "
    r"(?:is |are "
    r")?(?:only )?(?:now |right |just )?(?:at|on|reading|"
    r"showing|shows|says|has|has got|got)|(?:its|it has|ive|shes) got|"
    r"(?:miles|mileage) (?:is|are|at)|reading|sitting at|currently at|just (?:hit|passed|turned)|(?:just "
    r")?rolled(?: over| past)?|^\W*(?:just |finally )?(?:hit|passed|turned)|(?:acaba de |ya )(?:lleg\w+|pas\w+|"
    r"cumpl\w+)(?: al?)?|"
    r"va llegando(?: al?)?|"
    r"trae|lleva|marca|dice|(?:anda|ando|va|voy|esta|"
    r"vamos)(?: ya| como| mas o menos| ahorita)* (?:en|entre)|tiene)"
    r"(?: about| around| like| como| unas?| unos| las| los)* ?$"
)
"""Words before a number of five digits that make it a reading."""
_NOT_A_READING = re.compile(
    r"\b(?:in|another|every|within|next|until|till|before|per|(?<!rolled )past|(?<!rolled )over|left|warranty|last|ago|"
    r"away|when (?:it|i)|once|por|cada|dentro|otros?|hasta|cuando|faltan|drive|drives|drove|"
    r"driving|manejo|extra|more|miles (?:a|per|from|away)|tires? (?:for|with)|good for|done at|"
    r"changed at|hits|reach\w*|gets to)\b[^,.;!?]{0,22}$"
)
_AFTER_NOT = re.compile(
    r"^ ?(?:away|from|a (?:day|week|month|year)|per|more|left|ago|to go|warranty|tires?|over|"
    r"under|or so to|por|al (?:dia|ano|mes)|mas(?! o menos)|de garantia|out|later|since|off|miles away)\b"
)
_MONEY = re.compile(
    r"^ ?(?:dollars?|bucks?|\$|dolares|pesos|%|am|pm|oclock|:|/|st\b|nd\b|th\b|lbs|psi|years?|"
    r"months?|weeks?|days?|hours?|min)"
)


_SPEAKS_OF_IT = re.compile(
    r"\b(?:odometer|mileage|odometro|millaje|kilometraje|las millas|mis millas|el millaje|reading is|marca|on it|my "
    r"miles|reads|rolled over|"
    r"showing|on the (?:clock|dash)|just (?:hit|turned|passed|reached))\b"
)
MOST_NUMBERS = 24
"""Numbers of one text that are looked at: a reading stands among the first, a list of hundreds is none."""
BEFORE = 60
"""Characters before a number that are looked at for what it counts."""


_NAMED = re.compile(r"\b(?:odometer|odometro|mileage|millaje|kilometraje)\b[^\d]*$")
_CORRECTED = re.compile(
    r"\b(?:sorry|oops|wait|i meant?|scratch that|actually|make that|correction|ah no|no no|no perdon|digo|"
    r"perdon|quise decir|mejor dicho)\b"
)


@dataclass(frozen=True)
class Found:
    """A reading as told; the unit is None where none was named."""

    value: int
    unit: DistanceUnit | None
    is_range: bool = False
    span: tuple[int, int] | None = None
    """Where its number stands."""


def _spelled_out(text: str) -> str:
    """Numbers of thousands in words as digits: `forty eight thousand`."""

    def digits(match: re.Match[str]) -> str:
        return str((_SPELLED[match["tens"]] + _ONES.get(match["ones"] or "", 0)) * 1000)

    text = _SHORT_FORM.sub(_in_thousands, text)
    text = _DIGIT_BY_DIGIT.sub(lambda match: match.group().replace(" ", ""), text)
    return _AND_HUNDREDS.sub(_with_hundreds, _WORDS.sub(digits, with_thousands(text)))


_SHORT_FORM = re.compile(
    r"(?:^|(?<=^about )|(?<=^bout )|(?<=^like )|(?<=^around )|(?<=^roughly )|(?<=^como )|(?<=^unos )|(?<=^unas )|"
    r"(?<=^maybe ))(?P<whole>\d{2,3})"
    r"(?: and a (?P<half>half)| y (?P<medio>medio|media)| and (?P<change>change))(?=$|[ ,.!]+(?:or so|mas o menos|"
    r"now|ahorita|maybe|$))"
    r"|^(?P<alone>\d{2,3}\.\d)(?=\W*$)"
    r"|(?<= at )(?P<told>\d{2,3}\.\d)(?=$|[ ,!]|\.$)(?! ?(?:k|psi|mil|thousand|mi|miles|mm|percent)\b)"
)
"""`about 48 and a half`, `only at 47.8`: thousands, where the whole text or an `at` shows it."""


def _in_thousands(match: re.Match[str]) -> str:
    told = match["told"] or match["alone"]
    if told:
        return str(round(float(told) * 1000))
    return str(int(match["whole"]) * 1000 + (0 if match["change"] else 500))


_DIGIT_BY_DIGIT = re.compile(r"(?<![\d:/.,-])(?<!\d )\d(?: \d){4,5}(?! ?\d|[:/-])")
_HUNDREDS = {
    "one": 100, "two": 200, "three": 300, "four": 400, "five": 500, "six": 600, "seven": 700, "eight": 800,
    "nine": 900, "cien": 100, "ciento": 100, "doscientas": 200, "doscientos": 200, "trescientas": 300,
    "trescientos": 300, "cuatrocientas": 400, "cuatrocientos": 400, "quinientas": 500, "quinientos": 500,
    "seiscientas": 600, "seiscientos": 600, "setecientas": 700, "setecientos": 700, "ochocientas": 800,
    "ochocientos": 800, "novecientas": 900, "novecientos": 900, "half": 500, "medio": 500,
}  # fmt: skip
_AND_HUNDREDS = re.compile(
    r"(?<![\d,.])(?P<tens>\d{1,3})(?:000| ?(?:mil|thousand|k))? (?:and an? |and |y )?"
    rf"(?P<rest>\d hundred|\d{{3}}|\d{{2}}(?! ?thousand)"
    rf"|(?:{'|'.join(_HUNDREDS)})(?: hundred)?)(?! ?(?:k|mil|[ap]m)\b)(?: thousand)?\b"
    rf"(?:(?<=[a-z]) (?:and |y )?(?P<tail>\d{{2}}|(?:{'|'.join(_SPELLED)})(?:(?:[ -]| y )(?:{'|'.join(_ONES)}))?)\b)?"
)


def _with_hundreds(match: re.Match[str]) -> str:
    """`48 mil 300`, `48000 two hundred`, `48 and a half thousand` as one number; what has no thousands stays."""
    if not re.search(r"000|mil|thousand|\dk| k", match.group()):
        return match.group()
    rest = match["rest"].split()[0]
    rest = f"{rest}00" if rest.isdigit() and match["rest"].endswith("hundred") else rest
    hundreds = int(rest) if rest.isdigit() else _HUNDREDS[rest]
    tail = [word for word in re.split(r"\W", match["tail"] or "") if word != "y"]
    last = sum(int(word) if word.isdigit() else _SPELLED.get(word) or _ONES.get(word, 0) for word in tail)
    return f"{int(match['tens']) + (hundreds + last) / 1000:.4f}k"  # four digits, so that no point groups thousands


def find_reading(plain: str, asked: str | None) -> Found | None:
    """The reading that a plain text tells; a bare number only where the odometer was asked."""
    text = _spelled_out(plain)
    return _find(_SAID_BRIEFLY.sub(_as_said, text) if asked == "odometer" else text, asked)


_SAID_BRIEFLY = re.compile(
    rf"(?<![\d,.:] )\b(?P<thousands>\d{{2,3}}|(?:{'|'.join(_SPELLED)})(?:[ -](?:{'|'.join(_ONES)}))?) "
    rf"(?P<hundreds>{'|'.join(_ONES)})"
    rf"(?: hundred)?(?: (?:and )?(?P<tens>{'|'.join(_SPELLED)})(?:[ -](?P<ones>{'|'.join(_ONES)}))?)?\b(?! "
    rf"(?:thousand|k|mil)\b)"
)
"""`forty eight one`, `48 two fifty`: thousands and hundreds, said without either word."""


def _as_said(match: re.Match[str]) -> str:
    head = match["thousands"]
    words = re.split(r"[ -]", head)
    if not head.isdigit() and len(words) == 1:
        return match.group()  # `forty eight` alone is no reading
    thousands = int(head) if head.isdigit() else _SPELLED[words[0]] + _ONES[words[1]]
    rest = _SPELLED.get(match["tens"] or "", 0) + _ONES.get(match["ones"] or "", 0)
    return str(thousands * 1000 + _ONES[match["hundreds"]] * 100 + rest)


_READ_WHEN = re.compile(r" ?(?:as of )?(?:this morning|today|right now|now|tonight|hoy|ahorita|esta manana|ahora)\b")


def without_reading(plain: str, asked: str | None) -> str:
    """The text without the number of the reading and when it was read, so that no hour is taken from it."""
    found = _find(plain, asked)
    if found is None or found.value < SURELY_A_READING or found.span is None:
        return plain
    start, end = found.span
    when = _READ_WHEN.match(plain, end)
    return f"{plain[:start]} , {plain[when.end() if when else end :]}"


def _find(text: str, asked: str | None) -> Found | None:
    matches = list(islice(_READING.finditer(text), MOST_NUMBERS))
    read = [(match, found) for match in matches if (found := _read(match, text, asked))]
    if not read:
        return None
    if len(read) > 1 and _ONCE.search(text[: read[0][0].start()]) and _BY_NOW.match(text[read[-1][0].end() :]):
        return read[-1][1]
    named = [found for match, found in read if _NAMED.search(text[max(match.start() - BEFORE, 0) : match.start()])]
    corrected = [found for match, found in read[1:] if _CORRECTED.search(text[read[0][0].end() : match.start()])]
    return (corrected or named or [found for _, found in read])[-1 if corrected else 0]


_ONCE = re.compile(r"\b(?:was|were)(?: at| about| around| like)* ?$")
_BY_NOW = re.compile(r" ?(?:right )?(?:now|today|by now)\b")
"""`it was 48100 on Monday, 48200 now`: the last one counts."""


def _read(match: re.Match[str], text: str, asked: str | None) -> Found | None:
    after, left = text[match.end() : match.end() + BEFORE], text[max(match.start() - BEFORE, 0) : match.start()]
    if _MONEY.match(after) or _AFTER_NOT.match(after) or (_NOT_A_READING.search(left) and asked != "odometer"):
        return None
    unit: DistanceUnit | None = None
    if match["unit"].strip():
        unit = "km" if match["unit"].strip().startswith("k") else "mi"
    value = _number(match["value"], match["thousand"])
    is_large = value >= 1000
    if match["low"]:
        low = _number(match["low"], match["low_k"])
        if low * 1000 < value * 1.5 and low < 1000 <= value:
            low *= 1000
        if 0.5 * value < low < value:
            value, is_range = round((low + value) / 2), True
        else:
            is_range = False
    else:
        is_range = False
    if asked == "odometer":
        return (
            Found(value, unit, is_range, match.span())
            if (is_large or unit or _is_alone(text, match)) and value > 0
            else None
        )
    has_cue = value >= SURELY_A_READING and (bool(unit) or bool(_SPEAKS_OF_IT.search(text)))
    has_cue = has_cue or (value >= FIVE_DIGITS and bool(_STANDS_AT.search(left)))
    is_rounded = bool((match["thousand"] or "").strip()) or match["low_k"] or "," in match["value"]
    is_rounded = is_rounded or len(match.group().strip()) == len(text.strip(" .!")) or _GROUPED.match(match["value"])
    has_cue = has_cue or (value >= FIVE_DIGITS and bool(is_rounded) and _is_a_clause(left, after))
    return Found(value, unit, is_range, match.span()) if has_cue else None


_GROUPED = re.compile(r"\d{2,3},\d{3}$")
_CLAUSE_BEGINS = re.compile(
    r"(?:^|[.;:,!?]) ?(?:(?:si|ok|hola|ya|pues|bueno|yes|hi|hello|unas?|unos|como|about|around|roughly|like|mas o "
    r"menos|"
    r"ahorita|casi|son)[ ,]+)*$"
)
_CLAUSE_ENDS = re.compile(
    r"^ ?(?:exact\w+|ahorita|hoy en la manana|esta manana|this morning|hoy|now|today|ya|and change|y pico|mas o menos|"
    r"or so|)(?: ?[.;,!?]| and\b| y\b|$)"
)


def _is_a_clause(left: str, after: str) -> bool:
    """Whether a number of thousands stands as a clause of its own (`48.4k, book me for Tuesday`)."""
    return bool(_CLAUSE_BEGINS.search(left) and _CLAUSE_ENDS.match(after))


def _is_alone(text: str, match: re.Match[str]) -> bool:
    rest = (text[: match.start()] + text[match.end() :]).strip(" .,!?")
    return (
        not re.search(r"\b(?:monday|tuesday|wednesday|thursday|friday|am|pm|lunes|martes)\b", rest) and len(rest) < 40
    )


def _number(digits: str, thousand: str | None) -> int:
    if len(digits) > 12:
        return 10**9
    grouped = re.fullmatch(r"\d{1,3}(?:[,. ]\d{3})+", digits)
    value = float(re.sub(r"[,. ]", "", digits)) if grouped else float(digits)
    return min(round(value * 1000 if (thousand or "").strip() else value), 10**9)


def is_doubtful(value: int, unit: DistanceUnit, known: KnownOdometer | None, today: date) -> bool:
    """Whether a reading cannot be right: under the last one, too far on, or told in the other unit."""
    if not 0 < value <= LARGEST_READING or (known is None and value < 100):
        return True
    if known is None:
        return False
    in_known_unit = float(value)
    if unit != known.unit:
        in_known_unit = value / KM_PER_MILE if unit == "km" else value * KM_PER_MILE
    days = max((today - known.on).days, 0) if known.on else 0
    most_a_day = MOST_A_DAY_MI * (KM_PER_MILE if known.unit == "km" else 1)
    if in_known_unit < known.value or (known.on and in_known_unit - known.value > most_a_day * max(days, 1)):
        return True
    expected = known.value + (known.per_day or 0) * days
    mixed_up = expected * KM_PER_MILE if known.unit == "mi" else expected / KM_PER_MILE
    return known.value > 1000 and abs(in_known_unit - mixed_up) <= UNIT_MIX_UP * mixed_up


def target_reading(plain: str) -> int | None:
    """The odometer reading at which the customer wants to come (`at 50k`, `when it hits 50,000`); None without one."""
    text = _spelled_out(plain)
    match = re.search(
        rf"(?<!only )(?<!im )(?<!its )(?<!it is )(?<!shes )(?<!hes )(?<!now )(?<!are )(?<!were )"
        rf"\b(?:at|hits?|hit|reach(?:es)?|gets? to|until|till?|closer to|turns?|llegue a|"
        rf"cuando (?:tenga|llegue a|marque)|a los|a las|hasta los|hasta las)(?: about| around| like| the| las|"
        rf" los)* (?P<value>{_NUMBER})(?P<thousand>{_THOUSAND}?)(?: ?(?:miles?|millas?|km|"
        rf"kilometros))?\b",
        text,
    )
    if not match:
        return None
    value = _number(match["value"], match["thousand"])
    return value if value >= 1000 else None


def further_distance(plain: str) -> int | None:
    """The distance still to be driven before coming (`in another 2000 miles`); None without one."""
    match = re.search(
        rf"\b(?:in|after|another|dentro de|en|otras?|otros)(?: another| about| like| unas| otras|"
        rf" otros)* (?P<value>{_NUMBER})(?P<thousand>{_THOUSAND}?) ?(?:more )?(?:miles|mi|millas|km|"
        rf"kilometros)\b",
        _spelled_out(plain),
    )
    return _number(match["value"], match["thousand"]) if match else None
