"""What an intent looks at: the plain text, its sentences, and what had been asked."""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import lru_cache

_SENTENCE_END = re.compile(r"[.!?;\n]+")
_POLITE = re.compile(
    r"\b(?:please|por favor|thanks|thank you|gracias|now|already|ya|me|this|all|ok|hi|hello|hola|hey|sir|guys)\b"
)


@dataclass(frozen=True)
class Said:
    """A reply as the intents see it."""

    text: str
    """The plain text."""
    asked: str | None = "visit"
    has_booking: bool = False
    offers: int = 0
    has_times: bool = False
    """Whether it names visit times."""
    has_avoid: bool = False
    has_later: bool = False

    @property
    def sentences(self) -> tuple[str, ...]:
        """The sentences without their marks."""
        return tuple(part.strip(" ,:-\"'()") for part in _SENTENCE_END.split(self.text) if part.strip(" ,:-\"'()"))

    @property
    def bare(self) -> tuple[str, ...]:
        """The sentences without marks and polite words, for keywords that must stand alone."""
        return tuple(" ".join(_POLITE.sub(" ", re.sub(r"[^a-z\d ]+", " ", one)).split()) for one in self.sentences)

    @property
    def has_question(self) -> bool:
        """Whether a question mark stands in it."""
        return "?" in self.text


@lru_cache(maxsize=512)
def phrases(*lines: str) -> re.Pattern[str]:
    """One pattern of phrases that stand as whole words; each line is a regular expression of its own."""
    return re.compile(r"\b(?:" + "|".join(lines) + r")(?![a-z\d])")
