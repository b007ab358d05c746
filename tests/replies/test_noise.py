"""Slips of the thumb change no reading: words mended, words that must stay, and shares over labeled replies.

The replies are our own; the shares are what they showed when the mending was last changed, less what chance does.
"""

from __future__ import annotations

import pytest

from followup.core.replies.spelling import lone_keyword, mended
from tests.replies.labeled_sets import WHOLE, lines
from tests.replies.noise import is_kept, noisy
from tests.replies.reading import read, times
from tests.replies.spared_words import SPARED

EVERY = 48


@pytest.mark.parametrize(
    ("language", "word", "meant"),
    [
        ("en", "grindng", "grinding"),
        ("en", "tihng", "thing"),
        ("en", "surre", "sure"),
        ("en", "tomorrowmorning", "tomorrow morning"),
        ("es", "ellunes", "el lunes"),
        ("es", "frneos", "frenos"),
        ("es", "biernes", "viernes"),
        ("es", "aseptan", "aceptan"),
    ],
)
def test_a_slip_in_a_usual_word_is_mended(language: str, word: str, meant: str) -> None:
    assert mended(word, language) == meant


@pytest.mark.parametrize("language", SPARED)
def test_words_of_their_own_stay(language: str) -> None:
    assert [word for word in SPARED[language].split() if mended(word, language) != word] == []


@pytest.mark.parametrize("word", ["stpop", "dtop", "stoop", "unsubscribbe", "cancelaar", "bajja", "prar", "st0p"])
def test_a_stop_that_is_the_whole_text_is_heard_with_a_slip(word: str) -> None:
    assert read(word).meanings == ("stop",)
    assert read(f"{word.upper()} please").meanings == ("stop",)


@pytest.mark.parametrize("word", ["shop", "step", "soap", "slow", "bajo", "alta", "auto", "pasar", "salsa", "baya"])
def test_a_word_of_its_own_is_no_stop(word: str) -> None:
    assert lone_keyword(word) == word
    assert "stop" not in read(word).meanings


def test_a_kind_of_car_that_was_asked_about_is_told_with_a_slip() -> None:
    assert read("the tuck", "car").car == "white truck"
    assert read("el sedn", "car").car == "blue sedan"


def test_what_a_voice_says_first_is_left_out() -> None:
    assert times(read("um, tuesday at 10")) == ["3-10 10:00"]
    assert read("uh huh").meanings == ("accept",)


@pytest.mark.parametrize(
    ("kind", "language", "least"),
    [
        ("swapped", "English", 94),
        ("swapped", "Spanish", 88),
        ("joined", "English", 84),
        ("joined", "Spanish", 76),
        ("shouted", "English", 100),
        ("shouted", "Spanish", 100),
    ],
)
def test_noise_costs_few_readings(kind: str, language: str, least: int) -> None:
    cases = [case for name in WHOLE[language] for case in lines(name)][::EVERY]
    held = [is_kept(*one) for one in noisy(kind, language, cases)]
    assert 100 * sum(held) >= least * len(held)
