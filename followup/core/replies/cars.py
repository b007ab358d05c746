"""Which of the customer's cars a text names."""

from __future__ import annotations

import re

from followup.core.replies.near_words import osa_distance
from followup.core.replies.plain import make_plain
from followup.core.replies.usual_words import usual

_KINDS = {
    "truck": {"truck", "pickup", "troca", "troka", "trocka", "camioneta", "trocona", "pick"},
    "pickup": {"truck", "pickup", "troca"},
    "van": {"van", "minivan", "camioneta", "vagoneta"}, "minivan": {"van", "minivan"}, "suv": {"suv", "camioneta"},
    "sedan": {"sedan", "sedancito", "car", "carro"}, "car": {"car", "carro", "coche", "auto"}, "wagon": {"wagon"},
    "hatchback": {"hatchback", "hatch"}, "coupe": {"coupe"}, "convertible": {"convertible"},
    "red": {"red", "rojo", "roja", "rojito", "rojita"}, "blue": {"blue", "azul", "azulito", "azulita"},
    "white": {"white", "blanco", "blanca", "blanquito", "blanquita"},
    "black": {"black", "negro", "negra", "negrito", "negrita"}, "gray": {"gray", "grey", "gris"},
    "grey": {"gray", "grey", "gris"},
    "silver": {"silver", "plateado", "plateada", "plata"}, "green": {"green", "verde"}, "gold": {"gold", "dorado"},
    "brown": {"brown", "cafe"}, "tan": {"tan", "beige"}, "yellow": {"yellow", "amarillo", "amarilla"},
    "orange": {"orange", "naranja"},
}  # fmt: skip
_EMPTY = frozenset(["the", "my", "your", "our", "el", "la", "mi", "su", "tu", "a", "of", "de", "los", "las", "s"])
_BOTH = re.compile(
    r"\b(?:both|all of them|all (?:the |my )?cars|both cars|(?<!ninguno de )(?<!ninguna de )(?:los|las) (?:dos|2)|"
    r"ambos|ambas|"
    r"each)\b"
)
_JOINED = re.compile(r"\w (?:and|&|y) \w")
_PLACES = (
    (re.compile(r"\b(?:the )?(?:first|1 ?st) one\b|\bfirst\b$|^1$|\b(?:el|la) primer[oa]\b"), 0),
    (
        re.compile(
            r"\b(?:the )?(?:second|2 ?nd|other) (?:one|car)\b|^second$|^2$|\b(?:el|la) (?:segund[oa]|otr[oa])\b"
        ),
        1,
    ),
)


def _words(name: str) -> set[str]:
    plain = make_plain(name, None).text
    return {word for word in re.findall(r"[a-z]+|\d{2,4}", plain) if word not in _EMPTY}


def named_cars(plain: str, cars: tuple[str, ...]) -> tuple[str, ...]:
    """The cars whose own words stand in the text, those with the most words in common alone."""
    said = set(re.findall(r"[a-z]+|\d{2,4}", plain))
    said |= {word[:-1] for word in said if word.endswith("s")}  # `sedan's the one`
    said |= {word[2:] for word in said if word.isdigit() and len(word) == 4}
    scores: dict[str, int] = {}
    for car in cars:
        words = _words(car)
        scores[car] = sum(bool(said & (_KINDS.get(word, set()) | {word})) for word in words)
    best = max(scores.values(), default=0)
    return tuple(car for car, score in scores.items() if score == best) if best else ()


_ANSWER_FIRST = re.compile(
    r"^\W*(?:(?:just|do|the|my|lets|let us|please|ok|um|probably|for|its|it is|that would be|el|la|mi|seria) "
    r")*(?P<car>(?!no\b|not\b)[a-z]+(?: (?!no\b|not\b)[a-z]+)?)"
    r"(?: (?:first|please|it is|for now|today|this time|primero|por favor|por ahora|nomas))*"
    r" ?(?:[,.;]|\bcause\b|\bbecause\b|\bporque\b) ?(?!(?:and|y|or|o)\b)(?P<rest>.+)"
)
_TOO = re.compile(r"\b(?:too|also|tambien|as well)\b")


def answered_first(plain: str, cars: tuple[str, ...]) -> tuple[str, str] | None:
    """The car that a first clause names alone and what follows, where that tells of another car why; else None.

    `sedan, truck is parked till summer`
    """
    match = _ANSWER_FIRST.match(plain)
    if not match or _TOO.search(match["rest"]) or _BOTH.search(plain):
        return None
    first, other = named_cars(match["car"], cars), named_cars(match["rest"], cars)
    return (first[0], match["rest"]) if len(first) == 1 and len(other) == 1 and first != other else None


_ALL_KINDS = sorted({word for words in _KINDS.values() for word in words if len(word) >= 4})


def _with_slips_mended(plain: str) -> str:
    """The text with each word that is one slip from a kind or color of car read as that (`the tuck`)."""

    def one(match: re.Match[str]) -> str:
        word = match.group()
        if usual("en").is_often(word) or usual("es").is_often(word):
            return word
        return next((kind for kind in _ALL_KINDS if kind[0] == word[0] and osa_distance(word, kind) == 1), word)

    return re.sub(r"\b[a-z]{4,12}\b", one, plain)


_NOT_THAT = re.compile(r"\b(?:not|no) (?:the|my|el|la|mi) \w+(?: \w+)?(?=\Z|[,.;!])")
_CORRECTED = re.compile(r"\b(?:i mean|i meant|sorry|no wait|wait|digo|perdon|mejor dicho|quise decir)\b")


def _as_corrected(plain: str, cars: tuple[str, ...]) -> str:
    """What stands after `I mean` where it names a car; else the whole."""
    parts = _CORRECTED.split(plain)
    return parts[-1] if len(parts) > 1 and named_cars(parts[-1], cars) else plain


def find_car(plain: str, cars: tuple[str, ...], is_asked: bool) -> tuple[str | None, bool]:
    """The car that the text names (None without one), and whether it names them all or cannot be told apart."""
    if not cars:
        return None, False
    first = answered_first(plain, cars) if is_asked and not _CORRECTED.search(plain) else None
    if first:
        return first[0], False
    if _BOTH.search(plain):
        return None, True
    plain = _NOT_THAT.sub(" ", _as_corrected(plain, cars))
    named = named_cars(plain, cars) or (named_cars(_with_slips_mended(plain), cars) if is_asked else ())
    if len(named) == 1:
        return named[0], False
    if is_asked and len(named) == len(cars) and _JOINED.search(plain):
        return None, True
    if is_asked:
        for pattern, place in _PLACES:
            if pattern.search(plain) and place < len(cars):
                return cars[place], False
    return None, False
