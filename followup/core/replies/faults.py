"""Reports of a fault, made of words that stand near each other: a part and what is wrong with it, a sound and when.

The words of a clause are tagged with their classes once; every rule then asks for two classes within some words.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from functools import lru_cache

from followup.core.replies.driving import ELSEWHERE, STRONG
from followup.core.replies.fault_rules import DENIABLE, RULES, Kind, Rule
from followup.core.replies.fault_words import CLASSES, fails

_TOKEN = re.compile(r"[a-z]+|\d+")
_BIT = {name: 1 << number for number, name in enumerate((*CLASSES, "FAILS", "SITUATION", "ONOMATOPOEIA"))}
_LONGEST_PHRASE = 4
_PLAIN_REPEATS = frozenset(
    [
        "very",
        "really",
        "so",
        "no",
        "yes",
        "yeah",
        "ha",
        "haha",
        "bye",
        "ok",
        "stop",
        "please",
        "way",
        "far",
        "much",
        "many",
        "never",
        "ever",
        "too",
        "bla",
        "blah",
        "la",
        "el",
        "ya",
        "si",
        "muy",
        "mucho",
        "bien",
        "poco",
        "poquito",
        "ja",
        "jaja",
        "jajaja",
        "no",
        "nada",
        "mas",
        "menos",
        "uno",
        "dos",
        "cada",
        "hey",
        "wait",
        "hi",
        "baja",
        "alto",
        "thank",
        "thanks",
        "sorry",
        "tick",
        "knock",
        "lol",
        "left",
        "right",
        "front",
        "back",
        "rear",
        "that",
        "had",
        "is",
        "was",
    ]
) - {"tick", "knock"}


@dataclass(frozen=True)
class Found:
    """A report in a clause: where it stands, how soon a person must act, and whether a `not` is a part of it."""

    start: int
    end: int
    fault: int
    """Where the word stands that a `no` would deny."""
    kind: Kind
    is_negative: bool

    def moved(self, offset: int) -> Found:
        """The same so many characters further on."""
        return Found(self.start + offset, self.end + offset, self.fault + offset, self.kind, self.is_negative)


@dataclass(frozen=True)
class _Token:
    start: int
    end: int
    at: int
    classes: int


def _entries() -> tuple[dict[str, int], dict[str, int], frozenset[str]]:
    words: dict[str, int] = {}
    stems: dict[str, int] = {}
    for name, line in CLASSES.items():
        for one in line.split():
            known, key = (stems, one[:-1]) if one.endswith("*") else (words, one.replace("_", " "))
            known[key] = known.get(key, 0) | _BIT[name]
    for phrase in fails():
        words[phrase] = words.get(phrase, 0) | _BIT["FAILS"]
    return words, stems, frozenset(one.split()[0] for one in words if " " in one)


_WORDS, _STEMS, _FIRST = _entries()
_SHORTEST_STEM, _LONGEST_STEM = min(map(len, _STEMS)), max(map(len, _STEMS))


@lru_cache(maxsize=8192)
def _classes_of(word: str) -> int:
    found = _WORDS.get(word, 0)
    for length in range(_SHORTEST_STEM, min(len(word), _LONGEST_STEM) + 1):
        found |= _STEMS.get(word[:length], 0)
    return found


def _tagged(clause: str) -> list[_Token]:
    words = [(match.start(), match.end(), match.group()) for match in _TOKEN.finditer(clause)]
    made: list[_Token] = []
    at = 0
    while at < len(words):
        start, end, word = words[at]
        length = 1
        classes = 0
        if word in _FIRST:
            for more in range(min(_LONGEST_PHRASE, len(words) - at), 1, -1):
                phrase = " ".join(one[2] for one in words[at : at + more])
                if phrase in _WORDS:
                    length, classes, end = more, _WORDS[phrase], words[at + more - 1][1]
                    break
        if length == 1:
            classes = _classes_of(word)
            if at + 1 < len(words) and words[at + 1][2] == word and len(word) > 2 and word not in _PLAIN_REPEATS:
                classes |= _BIT["ONOMATOPOEIA"]
        if classes:
            made.append(_Token(start, end, at, classes))
        at += length
    return made


def _with_situations(clause: str, tokens: list[_Token]) -> list[_Token]:
    if ELSEWHERE.search(clause):
        return tokens
    starts = [match.start() for match in _TOKEN.finditer(clause)]
    for match in STRONG.finditer(clause):
        at = sum(start < match.start() for start in starts)
        tokens.append(_Token(match.start(), match.end(), at, _BIT["SITUATION"]))
    return tokens


_MASKS = tuple((rule, _BIT[rule.needs[0]], _BIT[rule.needs[1]], _BIT.get(rule.unless, 0)) for rule in RULES)


def found_in(clause: str) -> Iterator[Found]:
    """The reports of a clause in plain words."""
    tokens = _tagged(clause)
    if not tokens:
        return
    tokens = _with_situations(clause, tokens)
    if len(tokens) < 2:
        return
    held = 0
    for token in tokens:
        held |= token.classes
    for rule, first, second, unless in _MASKS:
        if held & first and held & second and not held & unless:
            yield from _pairs(rule, first, second, tokens)


def _pairs(rule: Rule, first: int, second: int, tokens: list[_Token]) -> Iterator[Found]:
    ones = [token for token in tokens if token.classes & first]
    others = [token for token in tokens if token.classes & second]
    for one in ones:
        for other in others:
            distance = other.at - one.at
            if one is other or abs(distance) > rule.within or (rule.is_ordered and distance < 0):
                continue
            start, end = min(one.start, other.start), max(one.end, other.end)
            fault = one if rule.needs[0] in DENIABLE else other
            yield Found(start, end, fault.start, rule.kind, "NOT" in rule.needs or "FAILS" in rule.needs)
