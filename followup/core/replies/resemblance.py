"""What a text that no word list knows resembles most among our own examples: a guess, kept apart from what is read.

Every example of every meaning is counted once, by its words, its pairs of words and the four-letter pieces of its
words (naive Bayes with the counts smoothed by `SMOOTHING`, every meaning equally likely beforehand). Pure and made
from `EXAMPLES` alone: who adds an example teaches the guess.
"""

from __future__ import annotations

import re
import unicodedata
from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass
from functools import lru_cache
from math import exp, log

from followup.core.replies.plain import LONGEST_TEXT

SMOOTHING = 0.05
PIECE = 4


@dataclass(frozen=True)
class Guess:
    """The meaning that a text resembles most, and how clearly (0 to 1, the share beside all others)."""

    code: str
    share: float
    known: float
    """The share of its words that stand in any example."""
    shares: dict[str, float]
    """The same for every meaning that it was held against."""


@dataclass(frozen=True)
class _Model:
    """For each feature what it adds to the score of each meaning that has it, beside a feature that it never saw."""

    codes: tuple[str, ...]
    unseen: tuple[float, ...]
    gains: dict[str, list[tuple[int, float]]]


def words_of(received: str) -> list[str]:
    """The words of a text as received: lower case, no accents, marks or numbers."""
    folded = unicodedata.normalize("NFKD", received[:LONGEST_TEXT].lower().replace("'", "").replace("\u2019", ""))
    return re.findall(r"[a-z]+", "".join(char for char in folded if not unicodedata.combining(char)))


def features(words: list[str]) -> Iterator[str]:
    """The words, pairs of words and pieces of words."""
    for before, word in zip(["^", *words], [*words, "$"], strict=True):
        yield f"{before} {word}"
    for word in words:
        yield word
        for at in range(len(word) - PIECE + 1):
            yield f"#{word[at : at + PIECE]}"


@lru_cache(maxsize=1)
def _model() -> _Model:
    from followup.core.replies.intents import ALL

    counts = [
        Counter(one for lines in intent.EXAMPLES.values() for text in lines for one in features(words_of(text)))
        for intent in ALL
    ]
    size = SMOOTHING * len({one for count in counts for one in count})
    totals = [count.total() + size for count in counts]
    gains: dict[str, list[tuple[int, float]]] = {}
    for number, count in enumerate(counts):
        for one, times in count.items():
            gains.setdefault(one, []).append((number, log((times + SMOOTHING) / SMOOTHING)))
    codes = tuple(intent.CODE for intent in ALL)
    return _Model(codes, tuple(log(SMOOTHING / total) for total in totals), gains)


def resembles(received: str, among: frozenset[str]) -> Guess | None:
    """The guess among these meanings; None for a text without words."""
    model, words = _model(), words_of(received)
    if not words:
        return None
    found = list(features(words))
    scores = [one * len(found) for one in model.unseen]
    for feature in found:
        for number, gain in model.gains.get(feature, ()):
            scores[number] += gain
    each = {
        code: score / len(found) * len(words) for code, score in zip(model.codes, scores, strict=True) if code in among
    }
    best = max(each, key=lambda code: (each[code], code))
    over = sum(exp(score - each[best]) for score in each.values())
    shares = {code: exp(score - each[best]) / over for code, score in each.items()}
    return Guess(best, shares[best], sum(word in model.gains for word in words) / len(words), shares)
