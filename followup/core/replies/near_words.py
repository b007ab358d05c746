"""Words that lie within two typing errors of a word, found by what both become when letters are left out."""

from __future__ import annotations

from collections.abc import Iterable
from itertools import combinations


def osa_distance(one: str, other: str) -> int:
    """Letters put in, left out, changed, or swapped with their neighbor: the optimal string alignment distance."""
    before_last: list[int] = []
    last = list(range(len(other) + 1))
    for i, letter in enumerate(one, 1):
        here = [i]
        for j, target in enumerate(other, 1):
            cost = min(last[j] + 1, here[j - 1] + 1, last[j - 1] + (letter != target))
            if i > 1 and j > 1 and letter == other[j - 2] and one[i - 2] == target:
                cost = min(cost, before_last[j - 2] + 1)
            here.append(cost)
        before_last, last = last, here
    return last[-1]


def _shortened(word: str, errors: int) -> set[str]:
    """The word with up to so many letters left out."""
    places = range(len(word))
    found = {word}
    for count in range(1, errors + 1):
        for gone in combinations(places, count):
            found.add("".join(letter for place, letter in enumerate(word) if place not in gone))
    return found


class NearWords:
    """A list of words that can be asked for those near a given one; two words that are near share a shortened form."""

    def __init__(self, words: Iterable[str]) -> None:
        self._by_form: dict[str, list[str]] = {}
        for word in words:
            for form in _shortened(word, 2):
                self._by_form.setdefault(form, []).append(word)

    def near(self, word: str, errors: int) -> list[tuple[int, str]]:
        """The words within so many errors (at most two) with their distance, the nearest first."""
        likely = {one for form in _shortened(word, errors) for one in self._by_form.get(form, ())}
        found = sorted((osa_distance(word, one), one) for one in likely)
        return [(distance, one) for distance, one in found if distance <= errors]
