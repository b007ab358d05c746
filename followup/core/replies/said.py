"""What an intent looks at: the plain text, its sentences, and what had been asked."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cached_property, lru_cache

_SENTENCE_END = re.compile(r"[.!?;\n]+")
_CLAUSE_END = re.compile(r"[.!?;,\n]+| - |: |\b(?:but|pero|however|although|though|aunque)\b")
_FILLER = re.compile(
    r"\b(?:please|por favor|thanks|thank you|gracias|now|already|ya|just|ok|hi|hello|hola|hey|sir|guys|man|omg|ugh|lol"
    r"|oh|um|uh|well|so|jaja|haha|actually|sorry|disculpe|perdon|right|pues|mire|oiga|amigo|bro|bruh|dude|maam|"
    r"everyone|yo|seriously|jeez|dang|damn|kindly|again|immediately|people)\b"
)


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
    """Regular expressions as one pattern, compiled when it is first asked: most texts ask only some of them."""

    def __init__(self, source: str) -> None:
        self._source = source

    @cached_property
    def _compiled(self) -> re.Pattern[str]:
        return re.compile(self._source)

    def search(self, text: str, start: int = 0) -> re.Match[str] | None:
        """The first place where it stands."""
        return self._compiled.search(text, start)

    def match(self, text: str, start: int = 0) -> re.Match[str] | None:
        """Whether it stands at the start."""
        return self._compiled.match(text, start)

    def finditer(self, text: str) -> Iterator[re.Match[str]]:
        """Every place where it stands."""
        return self._compiled.finditer(text)

    def sub(self, instead: str, text: str) -> str:
        """The text with something else in its place."""
        return self._compiled.sub(instead, text)


@lru_cache(maxsize=512)
def phrases(*lines: str) -> Phrases:
    """One pattern of phrases that stand as whole words; each line is a regular expression of its own."""
    return Phrases(r"\b(?:" + "|".join(lines) + r")(?![a-z\d])")


@lru_cache(maxsize=512)
def whole(*lines: str) -> Phrases:
    """One pattern of phrases that are a whole clause or sentence."""
    return Phrases(r"(?:" + "|".join(lines) + r")\Z")
