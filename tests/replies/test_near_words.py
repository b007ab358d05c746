"""The distance between words, held against rapidfuzz, and words near each other found without missing any."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st
from rapidfuzz.distance import OSA

from followup.core.replies.near_words import NearWords, osa_distance

words = st.text(alphabet="abcdemnos", min_size=1, max_size=9)


@given(one=words, other=words)
def test_the_distance_is_that_of_the_library(one: str, other: str) -> None:
    # source: rapidfuzz, OSA.distance
    assert osa_distance(one, other) == OSA.distance(one, other)


@given(listed=st.lists(words, max_size=12, unique=True), word=words, errors=st.integers(1, 2))
def test_no_near_word_is_missed(listed: list[str], word: str, errors: int) -> None:
    # source: rapidfuzz, OSA.distance
    expected = sorted((OSA.distance(word, one), one) for one in listed if OSA.distance(word, one) <= errors)
    assert NearWords(listed).near(word, errors) == expected
