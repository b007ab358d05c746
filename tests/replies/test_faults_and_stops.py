"""Faults and stops in other words are neither missed nor made up (rows of our own, by the reply contract)."""

from __future__ import annotations

import pytest

from tests.replies import faults_and_stops as first
from tests.replies import faults_and_stops_second as second
from tests.replies import faults_and_stops_spanish as spanish
from tests.replies import faults_and_stops_third as third
from tests.replies.reading import read


@pytest.mark.parametrize("text", (*first.FAULTS, *second.FAULTS, *third.FAULTS, *spanish.FAULTS))
@pytest.mark.parametrize("asked_in", ["visit", "confirm", "nothing"])
def test_a_fault_in_other_words_is_a_symptom(text: str, asked_in: str) -> None:
    out = read(text, asked_in)
    assert out.meanings[0] == "symptom" and out.handoff


@pytest.mark.parametrize("text", (*first.NO_FAULTS, *second.NO_FAULTS, *third.NO_FAULTS, *spanish.NO_FAULTS))
@pytest.mark.parametrize("asked_in", ["visit", "confirm"])
def test_no_fault_of_the_car_is_no_symptom(text: str, asked_in: str) -> None:
    assert "symptom" not in read(text, asked_in).meanings


@pytest.mark.parametrize("text", (*first.STOPS, *second.STOPS, *third.STOPS, *spanish.STOPS))
@pytest.mark.parametrize("asked_in", ["visit", "nothing", "after_visit"])
def test_a_stop_in_other_words_is_one(text: str, asked_in: str) -> None:
    assert read(text, asked_in).meanings[0] == "stop"


@pytest.mark.parametrize("text", (*first.NO_STOPS, *second.NO_STOPS, *third.NO_STOPS, *spanish.NO_STOPS))
@pytest.mark.parametrize("asked_in", ["visit", "booked"])
def test_what_is_short_of_a_stop_is_none(text: str, asked_in: str) -> None:
    assert "stop" not in read(text, asked_in).meanings


@pytest.mark.parametrize("text", third.YES_STOP)
def test_a_yes_in_any_words_confirms_the_stop(text: str) -> None:
    out = read(text, "confirm_stop")
    assert out.meanings[0] == "stop" and out.question is None


@pytest.mark.parametrize("text", third.KEEP)
def test_what_is_no_yes_confirms_no_stop(text: str) -> None:
    assert "stop" not in read(text, "confirm_stop").meanings


@pytest.mark.parametrize("text", third.CALLED_OFF)
@pytest.mark.parametrize("asked_in", ["booked", "confirm"])
def test_a_booking_called_off_leaves_the_consent(text: str, asked_in: str) -> None:
    assert "stop" not in read(text, asked_in).meanings


@pytest.mark.parametrize("text", third.CANCEL_BY_ITSELF)
@pytest.mark.parametrize("asked_in", ["booked", "confirm"])
def test_cancel_as_a_sentence_of_its_own_is_a_stop_and_calls_off(text: str, asked_in: str) -> None:
    # source: the reply contract, keywords that are a sentence of their own
    assert read(text, asked_in).meanings[:2] == ("stop", "cancel")


@pytest.mark.parametrize(
    "word", ["stop", "stopall", "unsubscribe", "end", "quit", "revoke", "opt out", "cancel", "baja"]
)
@pytest.mark.parametrize("beside", ["I waited three hours.", "My visit was fine.", "Call me tomorrow."])
def test_no_story_beside_a_keyword_excuses_it(word: str, beside: str) -> None:
    for text in (f"{word}. {beside}", f"{beside} {word.upper()}."):
        for asked_in in ("visit", "booked", "confirm"):
            assert read(text, asked_in).meanings[0] == "stop", (text, asked_in)
