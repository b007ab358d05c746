"""What an intent looks at: the plain text, its sentences, and what had been asked."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from functools import cached_property, lru_cache

from followup.core.replies.needed_words import ANY, Signs, needed, signs_of

_SENTENCE_END = re.compile(r"[.!?;\n]+")
_CLAUSE_END = re.compile(r"[.!?;,\n]+| - |: |\b(?:but|pero|however|although|though|aunque)\b")
_FILLER = re.compile(
    r"\b(?:please|por favor|thanks|thank you|gracias|now|already|ya|just|ok|hi|hello|hola|hey|sir|guys|man|omg|ugh|lol"
    r"|oh|um|uh|well|so|jaja|haha|actually|sorry|disculpe|perdon|right|pues|mire|oiga|amigo|bro|bruh|dude|maam|"
    r"everyone|yo|seriously|jeez|dang|damn|kindly|again|immediately|people)\b"
)
_BRANCH_PARTS = re.compile(r"\\.|\[\^?\]?(?:\\.|[^\]\\])*\]|[()|]|[^\\\[()|]+")


@dataclass(frozen=True)
class Said:
    """A reply as the intents see it. `asked` is `confirm` where `visit` was asked and a booking stands."""

    text: str
    """The plain text."""
    received: str = ""
    """The text as it came, for what case shows (a name)."""
    asked: str | None = "visit"
    has_booking: bool = False
    offers: int = 0
    """How many times our last message offered."""
    picked: int = 0
    """How many of the offered times the text fits."""
    has_times: bool = False
    """Whether it names visit times."""
    is_any: bool = False
    """Whether any time suits, or the soonest."""
    has_avoid: bool = False
    has_later: bool = False
    """Whether it names a day from which to ask again."""
    has_reading: bool = False
    """Whether it tells an odometer reading."""
    has_car: bool = False
    """Whether it names one of the customer's cars (or both), asked which."""
    language: str = "en"

    @cached_property
    def sentences(self) -> tuple[str, ...]:
        """The sentences without their marks."""
        return tuple(part.strip(" ,:-\"'()") for part in _SENTENCE_END.split(self.text) if part.strip(" ,:-\"'()"))

    @cached_property
    def bare(self) -> tuple[str, ...]:
        """The sentences without marks and filling words, for keywords that must stand alone."""
        return tuple(_bared(one) for one in self.sentences)

    @cached_property
    def parts(self) -> tuple[str, ...]:
        """The parts between commas and other marks, as words."""
        words = (" ".join(re.sub(r"[^a-z\d ]+", " ", one).split()) for one in _CLAUSE_END.split(self.text))
        return tuple(one for one in words if one)

    @cached_property
    def clauses(self) -> tuple[str, ...]:
        """The parts between commas and other marks, without filling words."""
        return tuple(bared for one in _CLAUSE_END.split(self.text) if (bared := _bared(one)))

    @property
    def has_question(self) -> bool:
        """Whether a question mark stands in it."""
        return "?" in self.text


def _bared(sentence: str) -> str:
    return " ".join(_FILLER.sub(" ", re.sub(r"[^a-z\d ]+", " ", sentence)).split())


class Phrases:
    """Regular expressions as one pattern, `before`, one of the lines, `after`, of which only what may stand is tried.

    A line is compiled when a text first holds the words that it needs: most texts ask only few of them.
    """

    def __init__(self, before: str, lines: tuple[str, ...], after: str) -> None:
        self._before, self._lines, self._after = before, lines, after
        self._tried: dict[int, re.Pattern[str]] = {}

    @cached_property
    def _by_sign(self) -> dict[str, tuple[int, ...]]:
        """Which lines to try where a text shows a sign."""
        places: dict[str, list[int]] = {}
        for place, signs in enumerate(needed(self._lines)):
            for sign in signs or (ANY,):
                places.setdefault(sign, []).append(place)
        return {sign: tuple(some) for sign, some in places.items()}

    @cached_property
    def _signs(self) -> Signs:
        return frozenset(self._by_sign)

    def _likely(self, text: str) -> list[re.Pattern[str]]:
        """The lines that may stand in the text, in their order."""
        shown = signs_of(text)
        if self._signs.isdisjoint(shown):
            return []
        places = {place for sign in self._signs & shown for place in self._by_sign[sign]}
        return [self._tried.get(place) or self._line(place) for place in sorted(places)]

    def _line(self, place: int) -> re.Pattern[str]:
        self._tried[place] = re.compile(f"{self._before}(?:{self._lines[place]}){self._after}")
        return self._tried[place]

    def search(self, text: str, start: int = 0) -> re.Match[str] | None:
        """The first place where it stands."""
        return _first(self._likely(text), text, start)

    def match(self, text: str, start: int = 0) -> re.Match[str] | None:
        """Whether it stands at the start."""
        return next((found for one in self._likely(text) if (found := one.match(text, start))), None)

    def finditer(self, text: str) -> Iterator[re.Match[str]]:
        """Every place where it stands."""
        likely = self._likely(text)
        return _every(likely, text) if likely else iter(())

    def sub(self, instead: str | Callable[[re.Match[str]], str], text: str) -> str:
        """The text with something else in its place."""
        likely = self._likely(text)
        if not likely:
            return text
        kept, last = [], 0
        for found in _every(likely, text):
            kept += [text[last : found.start()], found.expand(instead) if isinstance(instead, str) else instead(found)]
            last = found.end()
        return "".join((*kept, text[last:]))


def _first(patterns: list[re.Pattern[str]], text: str, start: int) -> re.Match[str] | None:
    """What stands first; at one place what comes first in the list, as in one pattern of them all."""
    first = None
    for pattern in patterns:
        found = pattern.search(text, start)
        if found and (first is None or found.start() < first.start()):
            first = found
    return first


def _every(patterns: list[re.Pattern[str]], text: str) -> Iterator[re.Match[str]]:
    """All that stand in the text, one after the other; each pattern is searched again only behind what it found."""
    ahead = [(found.start(), place, found) for place, one in enumerate(patterns) if (found := one.search(text))]
    while ahead:
        first = min(ahead)[2]
        yield first
        end = max(first.end(), first.start() + 1)
        passed = [place for start, place, _ in ahead if start < end]
        ahead = [one for one in ahead if one[0] >= end]
        ahead += [(found.start(), at, found) for at in passed if (found := patterns[at].search(text, end))]


@lru_cache(maxsize=512)
def phrases(*lines: str) -> Phrases:
    """One pattern of phrases that stand as whole words; each line is a regular expression of its own."""
    return Phrases(r"\b", lines, r"(?![a-z\d])")


@lru_cache(maxsize=512)
def whole(*lines: str) -> Phrases:
    """One pattern of phrases that are a whole clause or sentence, to be matched from its start."""
    return Phrases("", lines, r"\Z")


def branches(source: str) -> Phrases:
    """The branches of one long regular expression as phrases that stand as whole words."""
    depth, lines = 0, [""]
    for part in _BRANCH_PARTS.findall(source):
        depth += (part == "(") - (part == ")")
        if part == "|" and not depth:
            lines.append("")
        else:
            lines[-1] += part
    return Phrases(r"\b", tuple(lines), r"\b")
