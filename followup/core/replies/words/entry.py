"""One entry of a word list: what the words mean to the grammar."""

from __future__ import annotations

import re
from dataclasses import dataclass


@dataclass(frozen=True)
class Entry:
    """A phrase of one or more words, its category in the grammar, and its value there."""

    phrase: tuple[str, ...]
    category: str
    value: int | str


def entries(category: str, value: int | str, phrases: str) -> tuple[Entry, ...]:
    """The entries of phrases written `one|another phrase`."""
    parted = (re.sub(r"(?<=\d)(?=[a-z])", " ", phrase) for phrase in phrases.split("|"))
    return tuple(Entry(tuple(phrase.split()), category, value) for phrase in parted)


def word_set(*lines: str) -> frozenset[str]:
    """The words of lines in which they stand one after the other."""
    return frozenset(word for line in lines for word in line.split())
