"""A plain text cut into symbols of the grammar of dates and times: numbers, names of days, parts of the day, glue.

A symbol is the longest phrase of the word lists that stands at its place, a number, or a mark. Symbols keep their span
in the plain text, so that what stands before and after a time can be looked at.
"""

from __future__ import annotations

import re
from dataclasses import dataclass

from followup.core.replies.words import english, spanish
from followup.core.replies.words.entry import Entry, word_set

Lexicon = dict[str, list[tuple[tuple[str, ...], str, int | str]]]


@dataclass(frozen=True, slots=True)
class Symbol:
    """One symbol: its category, its value, its text and its span in the plain text."""

    category: str
    value: int | str
    text: str
    start: int
    end: int
    numbers: tuple[int, ...] = ()
    """The parts of a numeric date or clock time, in the order as written."""


def _lexicon(entries: tuple[Entry, ...]) -> Lexicon:
    """The entries by first word, the longest phrases first; of equal phrases the later entry counts."""
    by_phrase = {entry.phrase: entry for entry in entries}
    lexicon: Lexicon = {}
    for entry in by_phrase.values():
        lexicon.setdefault(entry.phrase[0], []).append((entry.phrase, entry.category, entry.value))
    for phrases in lexicon.values():
        phrases.sort(key=lambda phrase: -len(phrase[0]))
    return lexicon


_LEXICONS: dict[str, Lexicon] = {"en": _lexicon(english.ENTRIES), "es": _lexicon(spanish.ENTRIES)}
_TOKEN = re.compile(
    r"(?P<iso>\b\d{4}[-/.]\d{1,2}[-/.]\d{1,2}\b(?!\d))"
    r"|(?P<date3>\b\d{1,2}(?P<mark>[-/.])\d{1,2}(?P=mark)\d{2}(?:\d{2})?\b)"
    r"|(?P<date2>\b\d{1,2}/\d{1,2}\b)"
    r"|(?P<clock>\b\d{1,2}[:;]\d{2}(?::\d{2})?\b)"
    r"|(?P<grouped>\b\d{1,3}(?:,\d{3})+\b)"
    r"|(?P<decimal>\b\d+[.,]\d+\b)"
    r"|(?P<num>\d+)"
    r"|(?P<word>[a-z]+(?:\.[a-z](?![a-z]))?)"
    r"|(?P<mark1>[^\s])"
)
_SUFFIXES = {"st", "nd", "rd", "th", "ro", "do", "ero", "er"}
_MARKS = {"@": "at", "&": "and", "-": "dash", "/": "slash", "+": "and"}


_GOING_BACK = word_set("go going come coming bring bringing swing drop head stop")
"""Before `back on`: the way to the shop again, not the return from a trip."""


_IS_COMING = word_set("im am are were be is was not ill keep")
"""Before `coming`: the verb, not the coming Monday."""


_COUNTED = ("unit", "weekday", "weekend")
"""Before `from today`: days that are counted from it; after anything else it is the first of the days."""


def read_symbols(text: str, language: str) -> list[Symbol]:
    """The symbols of a plain text; words of the other language count where they are long enough to be no accident."""
    tokens = [(match.lastgroup or "", match.group(), match.start(), match.end()) for match in _TOKEN.finditer(text)]
    tokens = [("date3" if kind == "mark" else kind, word, start, end) for kind, word, start, end in tokens]
    symbols: list[Symbol] = []
    at = 0
    while at < len(tokens):
        symbol, taken = _read_one(tokens, at, language)
        if symbol.text == "back on" and symbols and symbols[-1].text in _GOING_BACK:
            symbol = Symbol("on", 0, "on", symbol.end - 2, symbol.end)
        if symbol.text == "coming" and symbols and symbols[-1].text in _IS_COMING:
            symbol = Symbol("word", 0, "coming", symbol.start, symbol.end)
        if symbol.text == "from today" and not (symbols and symbols[-1].category in _COUNTED):
            symbol = Symbol("relday", 0, "today", symbol.start, symbol.end)
        if symbol.text == "fourth of july" and symbols and symbols[-1].value in (20, "20"):
            symbol, taken = Symbol("ordinal", 4, "fourth", symbol.start, symbol.start + len("fourth")), 1
        symbols.append(symbol)
        at += taken
    return symbols


def _read_one(tokens: list[tuple[str, str, int, int]], at: int, language: str) -> tuple[Symbol, int]:
    kind, word, start, end = tokens[at]
    found = _phrase(tokens, at, language)
    if found:
        phrase, category, value = found
        last = tokens[at + len(phrase) - 1][3]
        return Symbol(category, value, " ".join(phrase), start, last), len(phrase)
    if kind in ("iso", "date3", "date2", "clock"):
        numbers = tuple(int(part) for part in re.split(r"\D", word) if part)
        return Symbol({"clock": "clock"}.get(kind, "date"), len(numbers), word, start, end, numbers), 1
    if kind == "num":
        return _number(tokens, at)
    if kind in ("grouped", "decimal"):
        return Symbol(kind, 0, word, start, end, tuple(int(part[:6]) for part in re.split(r"\D", word))), 1
    if kind == "word":
        return Symbol("word", 0, word, start, end), 1
    return Symbol(_MARKS.get(word, "mark"), 0, word, start, end), 1


def _number(tokens: list[tuple[str, str, int, int]], at: int) -> tuple[Symbol, int]:
    """A number, with an ordinal's ending where one is joined to it."""
    _, word, start, end = tokens[at]
    value = int(word[:7])
    if at + 1 < len(tokens) and len(word) <= 2:
        _, tail, tail_start, tail_end = tokens[at + 1]
        if tail in _SUFFIXES and tail_start - end <= 1:
            return Symbol("ordinal", value, word + tail, start, tail_end), 2
    return Symbol("num", value, word, start, end), 1


def _phrase(
    tokens: list[tuple[str, str, int, int]], at: int, language: str
) -> tuple[tuple[str, ...], str, int | str] | None:
    """The longest phrase of the word lists at this place, the text's own language first."""
    word = tokens[at][1]
    other = "es" if language == "en" else "en"
    for tongue in (language, other):
        for phrase, category, value in _LEXICONS[tongue].get(word, ()):
            if tongue == other and len(phrase) == 1 and len(word) < 5:
                continue
            if all(at + n < len(tokens) and tokens[at + n][1] == part for n, part in enumerate(phrase[1:], 1)):
                return phrase, category, value
    return None
