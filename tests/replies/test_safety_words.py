"""What a person must hear of beside the meaning: questions for a judgment, words of the law (our rules)."""

from __future__ import annotations

import pytest

from followup.core.replies.symptoms import has_legal_words, judgment, severity


@pytest.mark.parametrize(
    "text",
    ["is it safe to drive?", "can it wait", "can i wait until march?", "ok for a road trip?", "puede esperar?",
     "es seguro manejarlo con mis hijos?", "puedo esperar hasta enero?"],
)  # fmt: skip
def test_a_question_for_a_judgment_is_heard(text: str) -> None:
    assert judgment(text)


@pytest.mark.parametrize(
    "text",
    ["friday works, can i wait there", "can i wait in the shop?", "puedo esperar ahi?", "how much is it", "tuesday"],
)
def test_a_wish_to_wait_in_the_shop_is_none(text: str) -> None:
    assert not judgment(text)


@pytest.mark.parametrize("text", ["i will sue you", "talk to my lawyer", "we had an accident", "hablen con mi abogado"])
def test_words_of_the_law_are_heard(text: str) -> None:
    assert has_legal_words(text)


@pytest.mark.parametrize("text", ["Sue called me, tuesday ok", "my mom is in the hospital, later please", "next issue"])
def test_names_and_other_troubles_are_none(text: str) -> None:
    assert not has_legal_words(text)


@pytest.mark.parametrize(
    "text",
    ["los frenos estan blandos", "siento los frenos flojos", "el pedal esta blando", "las llantas estan flojas",
     "la direccion esta rara", "my brakes are soft", "wheel is wobbling"],
)  # fmt: skip
def test_in_any_gender_and_number_it_is_a_symptom_to_stop_for(text: str) -> None:
    assert severity(text) == "stop_now"
