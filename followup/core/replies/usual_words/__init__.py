"""The words that replies usually hold, and which of them a word that is none of them was surely meant to be.

One slip is mended where it is of a kind that thumbs make: a letter left out, struck twice, swapped with its neighbor or
taken from the key beside; never the first letter and never the last one alone, which carries the form of a word. A
word that is two usual words without the space between them is parted.
"""

from __future__ import annotations

from functools import lru_cache

from followup.core.replies.usual_words import english, spanish
from followup.core.replies.words.entry import word_set

SHORTEST, MOST_LETTERS = 4, 20
_LEAST_FOR_A_KEY = 5
"""Letters of a word that the key beside may have spoiled: shorter ones have too many neighbors."""
_LEAST_PART = 3
_LEAST_TAIL = {"en": 3, "es": 4}
"""Letters of a second part: shorter ones are endings (`casados`)."""
_LONG_PART = 5
_OFTEN_PARTS = 600
"""Parts of a word are among so many of the most frequent words, or both long and frequent at all."""
_ROWS = ("qwertyuiop", "asdfghjkl", "zxcvbnm")
_HEADS = {
    "en": word_set("at by my to in is it we on of no so do if am i"),
    "es": word_set("el la lo me de mi un su ya si no es en te se al le y"),
}
"""Short words that run into the next one; behind a word they are mostly its ending."""


def _keys_beside() -> dict[str, str]:
    """The letters on the keys around each letter, as on a phone."""
    found: dict[str, set[str]] = {}
    for row, keys in enumerate(_ROWS):
        for at, key in enumerate(keys):
            around = {keys[one] for one in (at - 1, at + 1) if 0 <= one < len(keys)}
            if row:
                around |= set(_ROWS[row - 1][at : at + 2])
            for other in around:
                found.setdefault(key, set()).add(other)
                found.setdefault(other, set()).add(key)
    return {key: "".join(sorted(around)) for key, around in found.items()}


BESIDE = _keys_beside()
"""The letters on the keys around each letter."""


class Usual:
    """The usual words of one language; `often` are the frequent ones, the most frequent first."""

    def __init__(self, others: frozenset[str], often: tuple[str, ...], language: str) -> None:
        self.often = often
        self.words = others | frozenset(often)
        self._heads = _HEADS[language]
        self._least_tail = _LEAST_TAIL[language]
        self._rank = {word: number for number, word in enumerate(often)}
        self._parts = frozenset(one for one in often[:_OFTEN_PARTS] if len(one) >= _LEAST_PART)
        self._long_parts = frozenset(one for one in often if len(one) >= _LONG_PART)
        self._shortened: dict[str, str] = {}
        for word in often:
            if len(word) > SHORTEST:
                for at in range(1, len(word) - 1):
                    self._shortened.setdefault(word[:at] + word[at + 1 :], word)

    def is_often(self, word: str) -> bool:
        """Whether the word is a frequent one."""
        return word in self._rank

    def near(self, word: str) -> str | None:
        """The most frequent word that `word` is one slip from; None where there is none."""
        likely = [self._shortened[word]] if word in self._shortened else []
        for at in range(1, len(word)):
            if at < len(word) - 1:
                head, tail = word[:at], word[at + 1 :]
                if len(word) >= _LEAST_FOR_A_KEY:
                    likely += [one for key in BESIDE[word[at]] if (one := head + key + tail) in self._rank]
                if word[at + 1] != word[at]:
                    swapped = word[:at] + word[at + 1] + word[at] + word[at + 2 :]
                    likely += [swapped] if swapped in self._rank else []
            if word[at] == word[at - 1] and (once := word[:at] + word[at + 1 :]) in self._rank:
                likely.append(once)
        return min((one for one in likely if len(one) >= SHORTEST), key=self._rank.__getitem__, default=None)

    def parted(self, word: str) -> str | None:
        """The two usual words that `word` is without the space between them."""
        found = []
        for cut in range(1, len(word) - self._least_tail + 1):
            head, tail = word[:cut], word[cut:]
            is_short = tail in self._parts and (
                head in self._parts or (head in self._heads and len(tail) > _LEAST_PART)
            )
            if is_short or (head in self._long_parts and tail in self._long_parts):
                found.append((self._rank.get(head, 0) + self._rank[tail], f"{head} {tail}"))
        return min(found)[1] if found else None


@lru_cache(maxsize=2)
def usual(language: str) -> Usual:
    """The usual words of `en` or `es`."""
    held = spanish if language == "es" else english
    return Usual(frozenset(held.OTHERS.split()), tuple(held.OFTEN.split()), language)
