"""Numbers of thousands said in words, as digits: `forty eight thousand one hundred and five`, `48 mil ciento cinco`."""

from __future__ import annotations

import re


def _counted(words: str, first: int, step: int = 1) -> dict[str, int]:
    """The words of a line with the numbers that they tell, one after the other."""
    return {word: first + step * place for place, word in enumerate(words.split())}


_SMALL = {
    **_counted("one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen", 1),
    **_counted("seventeen eighteen nineteen", 17),
    **_counted("twenty thirty forty fifty sixty seventy eighty ninety", 20, 10),
    **_counted("uno dos tres cuatro cinco seis siete ocho nueve diez once doce trece catorce quince dieciseis", 1),
    **_counted("diecisiete dieciocho diecinueve veinte veintiuno veintidos veintitres veinticuatro veinticinco", 17),
    **_counted("veintiseis veintisiete veintiocho veintinueve", 26),
    **_counted("treinta cuarenta cincuenta sesenta setenta ochenta noventa", 30, 10),
    "un": 1,
    "fourty": 40,
}
_HUNDREDS = {
    **_counted("cien doscientos trescientos cuatrocientos quinientos seiscientos setecientos ochocientos", 100, 100),
    **_counted("ciento doscientas trescientas cuatrocientas quinientas seiscientas setecientas ochocientas", 100, 100),
    **_counted("novecientos", 900),
    **_counted("novecientas", 900),
}
_TOKEN = re.compile(r"\d+|[a-z]+|[^\sa-z\d]")
_THOUSAND = ("thousand", "mil")
_ANDS = ("and", "y", "-")
_LEAST_THOUSANDS = 10
_GOES_ON = re.compile(
    r"\W*(?:$|[.,;!?)]|(?:miles?|millas?|mi|kms?|kilometers?|kilometros?|now|today|ahorita|hoy|i|and)\b)"
)


def with_thousands(text: str) -> str:
    """The text with every number of ten thousand and more that words tell to the last digit written in digits."""
    if not any(word in text for word in _THOUSAND):
        return text
    tokens = [(found.group(), found.start(), found.end()) for found in _TOKEN.finditer(text)]
    for at in range(len(tokens) - 1, 0, -1):
        if tokens[at][0] not in _THOUSAND:
            continue
        first, last = _reach(tokens, at, -1), _reach(tokens, at, 1)
        head, tail = _value([one[0] for one in tokens[first:at]]), _value([one[0] for one in tokens[at + 1 : last + 1]])
        if head is None or tail is None or head < _LEAST_THOUSANDS:
            continue
        if not _is_told_whole([one[0] for one in tokens[at + 1 : last + 1]], text[tokens[last][2] :]):
            continue
        text = f"{text[: tokens[first][1]]}{head},{tail:03d}{text[tokens[last][2] :]}"
    return text


def _is_number(word: str) -> bool:
    return word in _SMALL or word in _HUNDREDS or word == "hundred" or (word.isdigit() and len(word) <= 3)


def _reach(tokens: list[tuple[str, int, int]], at: int, way: int) -> int:
    """The place of the last token of the number on this side of `at`."""
    last, place = at, at + way
    while 0 <= place < len(tokens) and (_is_number(tokens[place][0]) or tokens[place][0] in _ANDS):
        if tokens[place][0] not in _ANDS:
            last = place
        place += way
    return last


def _value(words: list[str]) -> int | None:
    """The number under a thousand that the words tell; None where they tell none, or several."""
    value, below = 0, 1000
    for word in words:
        if word in _ANDS:
            continue
        if word == "hundred":
            if not 0 < value < 10:
                return None
            value, below = value * 100, 100
            continue
        told = int(word) if word.isdigit() else _SMALL.get(word) or _HUNDREDS[word]
        if told >= below or told == 0:
            return None
        value += told
        below = 100 if told >= 100 else 10 if told >= 20 and told % 10 == 0 else 1
    return value or None


def _is_told_whole(tail: list[str], rest: str) -> bool:
    """Whether what follows the thousands belongs to them: hundreds do, smaller numbers where nothing is counted."""
    has_hundreds = any(word == "hundred" or word in _HUNDREDS or (word.isdigit() and len(word) == 3) for word in tail)
    return has_hundreds or bool(_GOES_ON.match(rest))
