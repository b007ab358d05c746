"""What a text is like: for each meaning a linear score over its words, fitted on labeled replies.

The word lists of the meanings say what is certain; this says what is likely where they are silent or at odds. A score
is the sum of fitted weights over the signs of a text (its words, pairs of words, pieces of words, and what had been
asked), as a share of the length of the text; above 0 speaks for a meaning. `likeness_weights/` holds the weights, one
file a meaning, made by `python -m tests.replies.fit_likeness`.
"""

from __future__ import annotations

import re
from collections import Counter
from collections.abc import Iterator
from dataclasses import dataclass
from functools import lru_cache
from math import sqrt

from followup.core.replies.likeness_weights import ALL
from followup.core.replies.said import Said
from followup.core.replies.words import kinds_english, kinds_spanish

PIECE = 4
"""Letters of a piece of a word."""
AS_WEIGHT = 0.01
"""The weights stand in hundredths."""
_WORD = re.compile(r"[a-z]+")


@dataclass(frozen=True)
class Likeness:
    """The score of every meaning, and the share of the words that stood in any labeled reply."""

    scores: dict[str, float]
    known: float


def signs(said: Said) -> Iterator[str]:
    """What the weights look at: words, pairs, skipped pairs, pieces, and the context where it is not the usual one."""
    words = _WORD.findall(said.text)
    for before, word in zip(["^", *words], [*words, "$"], strict=True):
        yield f"{before}_{word}"
    for word, after in zip(words, words[2:], strict=False):
        yield f"{word}__{after}"
    kinds = [kind for word in words for kind in kinds_of(word)]
    yield from (f"%{kind}" for kind in kinds)
    for kind in sorted(set(kinds)):
        for other in sorted(set(kinds)):
            if kind < other:
                yield f"%{kind}%{other}"
    for word in words:
        yield word
        for at in range(len(word) - PIECE + 1):
            yield f"#{word[at : at + PIECE]}"
    asked = "offers" if said.offers else (said.asked or "nothing")
    if asked != "visit":
        yield from (f"@{asked}",) * 2
        if len(words) <= SHORT:
            yield f"@{asked}_{'_'.join(words)}"
    for name, holds in (("times", said.has_times), ("later", said.has_later), ("reading", said.has_reading)):
        if holds:
            yield from (f"@{name}",) * 2
    if said.has_question:
        yield "@?"


@lru_cache(maxsize=8192)
def kinds_of(word: str) -> tuple[str, ...]:
    """The kinds of a word or of its stem."""
    for end in ("", *_ENDINGS):
        stem = word.removesuffix(end)
        if word.endswith(end) and stem in _KINDS:
            return _KINDS[stem]
    return ()


def _kinds() -> dict[str, tuple[str, ...]]:
    found: dict[str, tuple[str, ...]] = {}
    for kinds in (kinds_english.KINDS, kinds_spanish.KINDS):
        for kind, words in kinds.items():
            for word in words.split():
                if kind not in found.get(word, ()):
                    found[word] = (*found.get(word, ()), kind)
    return found


_KINDS = _kinds()
_ENDINGS = ("s", "ed", "ing", "es", "d", "er", "ly")
SHORT = 2
"""A text of so few words is an answer: it counts together with what had been asked."""


def weighed(said: Said) -> dict[str, float]:
    """The signs of a text, each by how often it stands there, to the length one."""
    counts = Counter(signs(said))
    length = sqrt(sum(count * count for count in counts.values())) or 1.0
    return {sign: count / length for sign, count in counts.items()}


@lru_cache(maxsize=1)
def _weights() -> tuple[dict[str, str], ...]:
    """The weights of each meaning by sign, as written."""
    tokens = (iter(one.WEIGHTS.replace(":", " ").split()) for one in ALL)
    return tuple(dict(zip(one, one, strict=True)) for one in tokens)


@lru_cache(maxsize=1)
def _weighed_signs() -> frozenset[str]:
    """Every sign that has a weight: most of a long text has none."""
    return frozenset().union(*_weights())


@lru_cache(maxsize=20_000)
def _weights_of(sign: str) -> tuple[tuple[int, float], ...]:
    """The weights that a sign has, with the number of their meaning."""
    return tuple((number, int(one[sign]) * AS_WEIGHT) for number, one in enumerate(_weights()) if sign in one)


@lru_cache(maxsize=64)
def likeness(said: Said) -> Likeness:
    """The score of every meaning for this text."""
    scores = [one.BIAS * AS_WEIGHT for one in ALL]
    has_weight = _weighed_signs()
    for sign, share in weighed(said).items():
        if sign in has_weight:
            for number, weight in _weights_of(sign):
                scores[number] += weight * share
    words = _WORD.findall(said.text)
    known = sum(word in has_weight for word in words) / len(words) if words else 0.0
    return Likeness({one.CODE: score for one, score in zip(ALL, scores, strict=True)}, known)
