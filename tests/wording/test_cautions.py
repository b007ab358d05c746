"""What each caution must hold, by open or closed, alert accepted or not, a person on call or none."""

import itertools
import re

import pytest

from followup.core.segments import segments
from followup.core.wording_checks import Fault, check_wording
from followup.core.wording_facts import FACTS_OF, Facts, sample_facts
from followup.wording import LANGUAGES, render

CAUTIONS = [code for code in FACTS_OF if code.startswith("caution")]
# Facts that stand or not at the moment in which a caution leaves.
SWITCHES = ("alerted", "on_call", "is_open")
every_language = pytest.mark.parametrize("language", LANGUAGES)
every_caution = pytest.mark.parametrize("code", CAUTIONS)

ALERTED = {"en": "have alerted", "es": "avisamos"}
NOBODY = {"en": "nobody reads this", "es": "nadie lee esto"}


def situations(code: str, language: str) -> list[Facts]:
    """The sample facts of that caution in every situation that its facts can tell apart."""
    whole = sample_facts(code, language)
    switches = [name for name in SWITCHES if name in whole]
    return [
        whole | dict(zip(switches, values, strict=True))
        for values in itertools.product((True, False), repeat=len(switches))
    ]


def said(code: str, language: str, facts: Facts) -> tuple[str, list[Fault]]:
    text = render(code, language, facts)
    return text, check_wording(text, code, language, facts)


def test_there_are_five_cautions() -> None:
    assert len(CAUTIONS) == 5


@every_language
@every_caution
def test_in_every_situation_a_caution_holds_what_it_must(code: str, language: str) -> None:
    for facts in situations(code, language):
        text, faults = said(code, language, facts)
        assert faults == [], text
        assert segments(text).count <= 3
        is_closed = code.endswith("_closed") or facts.get("is_open") is False
        may_say = bool(facts["alerted"]) and (not is_closed or bool(facts["on_call"]))
        assert (ALERTED[language] in text) is may_say
        assert (NOBODY[language] in text) is (is_closed and not may_say)
        assert str(facts["shop_phone"]) in text


def test_the_stop_now_text_word_for_word() -> None:
    facts = sample_facts("caution_now_closed", "en") | {"alerted": False, "on_call": False}
    assert render("caution_now_closed", "en", facts) == (
        "Quill Lane Garage: This is an automatic reply. Please do not drive your blue pickup. If you are on the road, "
        "stop as soon as it is safe. In an emergency call 911. For roadside help call (312) 555-0190. "
        "We are closed and nobody reads this until Tuesday, March 3 at 7:30 AM. We will call you when we open. "
        "Our number: (312) 555-0147."
    )


@every_language
@every_caution
def test_no_sentence_of_a_caution_can_be_left_out(code: str, language: str) -> None:
    """Each sentence is there because something must be said: without it, a check speaks up.

    Only where the facts leave it out may a caution lack one: so each sentence is taken out in every situation.
    """
    free = {"en": ("Call us now", "In a", "Our number"), "es": ("Llame ya", "Taller")}[language]
    for facts in situations(code, language):
        text = render(code, language, facts)
        for sentence in re.split(r"(?<=[.]) (?=[A-Z])", text.partition(": ")[2]):
            if sentence.startswith(free) or sentence.startswith(("Call us at", "Llame al")):
                continue  # holds a number, which the checks look for by itself
            cut = text.replace(sentence, "")
            assert check_wording(cut, code, language, facts), (sentence, text)


# What must stand in a caution, as the shipped texts say it, and the caution that has to say it.
MUST_STAND = [
    ("automatic", "un sistema, no una persona", CAUTIONS),
    ("do not drive", "no maneje", ["caution_now_open", "caution_now_closed"]),
    ("as soon as it is safe", "en cuanto sea seguro", CAUTIONS),
    ("do not wait for your visit", "no espere a su cita", ["caution_today_open", "caution_today_closed"]),
    ("nobody reads", "nadie lee", ["caution_now_closed", "caution_today_closed", "caution_run_flat"]),
    ("We will call", "le llamamos", ["caution_now_closed", "caution_today_closed", "caution_run_flat"]),
    ("roadside", "en el camino", ["caution_now_closed"]),
    ("50 miles", "50 millas", ["caution_run_flat"]),
    ("50 mph", "50 mph", ["caution_run_flat"]),
    ("handbook", "manual", ["caution_run_flat"]),
]


@pytest.mark.parametrize(("english", "spanish", "codes"), MUST_STAND)
def test_no_words_that_must_stand_can_be_changed(english: str, spanish: str, codes: list[str]) -> None:
    for code, (language, words) in itertools.product(codes, (("en", english), ("es", spanish))):
        facts = sample_facts(code, language) | {name: False for name in SWITCHES if name in FACTS_OF[code].may}
        text = render(code, language, facts)
        assert words in text
        assert check_wording(text.replace(words, "so it goes"), code, language, facts), (code, language, words)


@every_language
@every_caution
def test_no_number_of_a_caution_can_be_left_out(code: str, language: str) -> None:
    for facts in situations(code, language):
        text = render(code, language, facts)
        for name in ("shop_phone", "emergency_number", "roadside_phone"):
            if facts.get(name):
                assert check_wording(text.replace(str(facts[name]), "-"), code, language, facts), name


@every_language
@every_caution
def test_a_caution_claims_no_alert_that_was_not_accepted(code: str, language: str) -> None:
    lie = {"en": " We have alerted our team.", "es": " Ya avisamos a nuestro equipo."}[language]
    for facts in situations(code, language):
        text, _ = said(code, language, facts)
        if ALERTED[language] not in text:
            assert any(fault.rule == "caution" for fault in check_wording(text + lie, code, language, facts))


@pytest.mark.parametrize(
    ("language", "too_much"),
    [
        ("en", "Thank you."), ("en", "Thanks."), ("en", "Pump the pedal."), ("en", "Use the parking brake."),
        ("en", "Pull over."), ("en", "Which day suits you?"), ("en", "You are booked."), ("en", "It costs $80."),
        ("en", "The problem is the pump."), ("en", "Then it is safe."),
        ("es", "Gracias."), ("es", "Maneje despacio."), ("es", "Use el freno de mano."),
        ("es", "¿Qué fecha le queda bien?"), ("es", "Cuesta $80."), ("es", "El problema es la bomba."),
        ("es", "Es seguro."),
    ],
)  # fmt: skip
def test_a_caution_says_no_more_than_it_must(language: str, too_much: str) -> None:
    for code in CAUTIONS:
        facts = sample_facts(code, language)
        text = render(code, language, facts)
        assert check_wording(f"{text} {too_much}", code, language, facts), code


def test_the_fixed_phrase_is_for_cautions_alone() -> None:
    facts = sample_facts("decline_noted", "en")
    text = "Quill Lane Garage: Stop as soon as it is safe."
    assert {fault.rule for fault in check_wording(text, "decline_noted", "en", facts)} == {"safe"}


@every_language
def test_the_run_flat_text_gives_the_makers_usual_distance_and_speed(language: str) -> None:
    """Run-flat after a puncture: about 50 miles at up to 50 mph, the handbook decides (makers' owner information and
    two motoring organizations; a flat tire: stop as soon as it is safe, Highway Code Annex 6)."""
    text, _ = said("caution_run_flat", language, sample_facts("caution_run_flat", language))
    assert re.search(r"50 (?:miles|millas).*50 mph.*(?:handbook|manual)", text)
