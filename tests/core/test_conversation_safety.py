"""The conversation where a mistake would hurt: stops, symptoms, legal words, a death, people, anything at all.

What must hold is this project's own trade rules; law is named where it decides.
"""

from __future__ import annotations

import itertools
from dataclasses import replace
from datetime import timedelta

import pytest
from hypothesis import given
from hypothesis import strategies as st

from followup.core.conversation import Around, Conversation, Heard, respond
from followup.core.conversation.effects import (
    AddPhoneTask,
    Answer,
    CancelBooking,
    EndTie,
    FreezeThread,
    GiveConsentAgain,
    HoldForStop,
    ListForEndOfDay,
    MakeRequest,
    NarrowConsent,
    OpenSymptom,
    RaiseAlert,
    TakeBackConsent,
    TurnAllOff,
)
from followup.core.conversation.listen import hear, is_reaction
from followup.core.replies.meaning import MEANINGS
from followup.core.text import LEAVES_IN_SPITE_OF_A_STOP
from tests.core.replied import CLOSED, EVERY_ASKED, NOW, OPEN, TUESDAY, alerts, answers, of, said


# Stops ---------------------------------------------------------------------------------------------------------
def test_a_stop_is_taken_at_once_and_confirmed_once_within_five_minutes() -> None:
    # 47 CFR 64.1200(a)(12): one confirmation within five minutes; (a)(10): no further text.
    step = respond(Conversation("visit", NOW), said("stop"), CLOSED, NOW)
    assert of(step, TakeBackConsent) and of(step, Answer) == [Answer("stopped", valid_minutes=5)]
    assert step.state.is_stopped
    second = respond(step.state, said("stop"), CLOSED, NOW + timedelta(minutes=1))
    assert of(second, TakeBackConsent) and answers(second) == [], "none for a second STOP"


def test_a_stop_that_the_provider_confirmed_is_not_confirmed_again() -> None:
    step = respond(Conversation("visit", NOW), said("stop"), replace(OPEN, is_stop_confirmed=True), NOW)
    assert of(step, TakeBackConsent) and answers(step) == []


def test_a_stop_with_a_booking_or_a_symptom_makes_a_phone_task_and_keeps_the_slot() -> None:
    for state in (Conversation(has_booking=True), Conversation(open_symptom="today")):
        step = respond(state, said("stop", "cancel"), OPEN, NOW)
        assert of(step, AddPhoneTask) and not of(step, CancelBooking)
        assert answers(step) == ["stopped"]


def test_after_a_stop_only_help_the_confirmation_and_the_way_back_leave() -> None:
    for asked, meaning in itertools.product(EVERY_ASKED, MEANINGS):
        step = respond(Conversation(asked, NOW, is_stopped=True), said(meaning, times=(TUESDAY,)), OPEN, NOW)
        if meaning == "resume" or (asked == "confirm_stop" and meaning == "decline"):
            assert of(step, GiveConsentAgain) and answers(step) == ["resumed"]
            continue
        assert set(answers(step)) <= LEAVES_IN_SPITE_OF_A_STOP, (asked, meaning)
        assert not of(step, GiveConsentAgain), "a bare yes never gives consent again"
    helped = respond(Conversation(is_stopped=True), said("help"), OPEN, NOW)
    assert answers(helped) == ["help"], "CTIA Messaging Principles 5.1.3: HELP whatever the subscription"


def test_a_stop_that_may_mean_a_part_holds_all_until_it_is_answered() -> None:
    # 47 CFR 64.1200(a)(12): until answered all kinds are off, silence means all.
    asked = respond(Conversation("visit", NOW), said("decline", question="confirm_stop"), OPEN, NOW)
    assert of(asked, HoldForStop) and answers(asked) == ["ask_confirm_stop"]
    assert asked.state.is_stopped and asked.state.asked == "confirm_stop"
    yes = respond(asked.state, said("stop"), OPEN, NOW)
    assert of(yes, TakeBackConsent) and answers(yes) == ["stopped"] and yes.state.is_stopped
    no = respond(asked.state, said("decline"), OPEN, NOW)
    assert of(no, GiveConsentAgain) and answers(no) == ["resumed"] and not no.state.is_stopped
    other = respond(asked.state, said("propose", times=(TUESDAY,)), OPEN, NOW)
    assert answers(other) == []
    assert MakeRequest() in other.effects and of(other, AddPhoneTask)
    narrow = respond(asked.state, said("decline", question="confirm_stop"), OPEN, NOW)
    assert of(narrow, NarrowConsent) == [NarrowConsent(("upkeep", "offers"))]


# Symptoms, legal words, a death --------------------------------------------------------------------------------
@pytest.mark.parametrize(
    ("severity", "run_flat", "is_open", "text", "alert"),
    [
        ("now", False, True, "caution_now_open", "symptom_now"),
        ("now", False, False, "caution_now_closed", "symptom_now"),
        ("today", False, True, "caution_today_open", "symptom_today"),
        ("today", True, False, "caution_today_closed", "symptom_today"),
        ("flat", True, False, "caution_run_flat", "symptom_now"),
        ("flat", False, True, "caution_now_open", "symptom_now"),
        (None, False, True, "caution_now_open", "symptom_now"),
    ],
)
def test_a_symptom_gets_its_caution_and_an_alert(
    severity: str | None, run_flat: bool, is_open: bool, text: str, alert: str
) -> None:
    around = Around(is_open, is_run_flat=run_flat)
    step = respond(Conversation("visit", NOW), said("symptom", "accept", symptom=severity), around, NOW)
    assert answers(step) == [text] and alerts(step) == [alert]
    answer = of(step, Answer)[0]
    assert answer.valid_minutes is None and answer.waits_for_alert
    kinds = [type(effect) for effect in step.effects]
    assert kinds.index(RaiseAlert) < kinds.index(Answer), "the alert is accepted before the text may say so"
    assert not of(step, MakeRequest), "never a slot beside a caution"


def test_after_a_caution_the_machine_is_silent_but_for_a_stricter_one() -> None:
    today = respond(Conversation("visit", NOW), said("symptom", symptom="today"), OPEN, NOW).state
    for meaning in MEANINGS:
        step = respond(today, said(meaning, symptom="today", times=(TUESDAY,)), OPEN, NOW + timedelta(days=9))
        expected = {"stop": ["stopped"], "help": ["help"]}.get(meaning, [])
        assert answers(step) == expected, meaning
        assert meaning in ("help", "thanks", "stop") or alerts(step), "a person is told"
    stricter = respond(today, said("symptom", symptom="now"), OPEN, NOW)
    assert answers(stricter) == ["caution_now_open"] and stricter.state.open_symptom == "now"
    again = respond(stricter.state, said("symptom", symptom="now"), OPEN, NOW)
    assert answers(again) == [] and alerts(again) == ["symptom_now"]


def test_a_symptom_from_a_stopped_number_is_told_by_phone() -> None:
    step = respond(Conversation(is_stopped=True), said("symptom", symptom="now"), OPEN, NOW)
    assert answers(step) == [] and alerts(step) == ["symptom_now"] and of(step, AddPhoneTask)


def test_legal_words_freeze_the_thread() -> None:
    step = respond(Conversation("visit", NOW), said("complaint", has_legal_words=True), OPEN, NOW)
    assert of(step, FreezeThread) and alerts(step) == ["legal_words"] and answers(step) == []
    after = respond(step.state, said("accept"), OPEN, NOW + timedelta(days=30))
    assert answers(after) == [] and alerts(after) == ["person_thread"]
    both = respond(Conversation("visit", NOW), said("symptom", symptom="now", has_legal_words=True), OPEN, NOW)
    assert answers(both) == ["caution_now_open"] and "legal_words" in alerts(both)


def test_a_death_turns_every_text_off() -> None:
    step = respond(Conversation("visit", NOW), said("stranger", tells_of_death=True), OPEN, NOW)
    assert of(step, TurnAllOff) and alerts(step) == ["death"] and answers(step) == []


# People --------------------------------------------------------------------------------------------------------
@pytest.mark.parametrize(
    ("meaning", "text", "alert"),
    [
        ("call", "call_noted", "call_me"),
        ("complaint", "complaint_noted", "complaint"),
        ("stranger", "stranger_noted", "tie"),
    ],
)
def test_what_is_a_persons_goes_to_a_person(meaning: str, text: str, alert: str) -> None:
    step = respond(Conversation("visit", NOW), said(meaning), OPEN, NOW)
    assert answers(step) == [text] and alerts(step) == [alert] and step.state.is_with_a_person(NOW)


def test_a_time_with_a_complaint_is_noted_and_a_person_calls() -> None:
    step = respond(Conversation("visit", NOW), said("propose", "complaint", times=(TUESDAY,)), OPEN, NOW)
    assert of(step, MakeRequest) and answers(step) == ["request_noted", "complaint_noted"]
    asks = respond(Conversation("visit", NOW), said("accept", "call", question="day"), OPEN, NOW)
    assert answers(asks) == ["call_noted"], "nothing is asked where a person calls"


def test_a_part_that_cannot_be_read_is_listed_and_the_rest_goes_on() -> None:
    step = respond(Conversation("visit", NOW), said("propose", "unclear", times=(TUESDAY,)), OPEN, NOW)
    assert answers(step) == ["request_noted"] and alerts(step) == ["request", "unclear"]
    assert not step.state.is_with_a_person(NOW)


def test_silence_ends_after_a_day_without_a_word() -> None:
    state = Conversation("day", NOW, person_at=NOW)
    wrote = respond(state, said("propose", times=(TUESDAY,)), OPEN, NOW + timedelta(hours=23, minutes=59))
    assert answers(wrote) == [] and alerts(wrote) == ["person_thread"]
    assert wrote.state.person_at == NOW + timedelta(hours=23, minutes=59)
    after = respond(state, said("propose", times=(TUESDAY,)), OPEN, NOW + timedelta(hours=24))
    assert answers(after) == ["request_noted"]
    assert not state.given_back().is_with_a_person(NOW)


def test_a_stranger_and_a_car_that_is_gone_end_the_tie() -> None:
    assert of(respond(Conversation("visit", NOW), said("gone"), OPEN, NOW), EndTie) == [EndTie("gone")]
    assert of(respond(Conversation("visit", NOW), said("stranger"), OPEN, NOW), EndTie) == [EndTie("stranger")]
    booked = respond(Conversation("visit", NOW, has_booking=True), said("gone"), OPEN, NOW)
    assert of(booked, AddPhoneTask)


def test_reactions_alert_nobody() -> None:
    step = respond(Conversation("visit", NOW), said("unclear", is_reaction=True), OPEN, NOW)
    assert of(step, ListForEndOfDay) and not alerts(step) and not answers(step)
    frozen = Conversation("confirm", NOW, has_booking=True, is_frozen=True)
    thumbs = said("accept", certainty=0.6, is_reaction=True)
    confirmed = respond(Conversation("confirm", NOW, has_booking=True), thumbs, OPEN, NOW)
    assert answers(confirmed) == ["booking_stands"] and not alerts(confirmed)
    for silent in (Conversation("confirm", NOW, has_booking=True, is_stopped=True), frozen):
        assert answers(respond(silent, thumbs, OPEN, NOW)) == []
    for meaning in ("stop", "symptom", "resume", "complaint"):
        quoted = respond(Conversation("visit", NOW), said(meaning, is_reaction=True), OPEN, NOW)
        assert quoted.effects == (ListForEndOfDay("a reaction to a text"),), "quoted words of ours never count"


@pytest.mark.parametrize(
    ("text", "is_one"),
    [
        ("Liked “Your Civette is due”", True),
        ('Reacted 👍 to "See you Tuesday"', True),
        ('Le gustó "Su coche"', True),
        ("Loved the work you did", False),
        ('Liked "Your car is due" but my brakes just failed', False),
        ("I liked Tuesday better", False),
        ("👍", False),
    ],
)
def test_a_phones_reaction_is_told_from_words(text: str, is_one: bool) -> None:
    assert is_reaction(text) is is_one


@pytest.mark.parametrize(
    ("text", "symptom", "legal", "death", "judgment"),
    [
        ("the pedal went to the floor", "now", False, False, False),
        ("I have a flat", "flat", False, False, False),
        ("flat tire and the steering wobbles", "now", False, False, False),
        ("it makes a clicking noise", "today", False, False, False),
        ("my lawyer will write to you", None, True, False, False),
        ("this was my husbands car, he passed away", None, False, True, False),
        ("mi esposo falleció en enero", None, False, True, False),
        ("the battery died", "today", False, False, False),
        ("she died on me on the highway", "today", False, False, False),
        ("is it safe to drive to the lake?", None, False, False, True),
    ],
)
def test_what_the_word_lists_hear(text: str, symptom: str | None, legal: bool, death: bool, judgment: bool) -> None:
    heard = hear(text, said("unclear").reply)
    assert heard.symptom == symptom
    assert (heard.has_legal_words, heard.tells_of_death, heard.is_judgment) == (legal, death, judgment)


# Anything at all -----------------------------------------------------------------------------------------------
states = st.builds(
    Conversation,
    asked=st.sampled_from(EVERY_ASKED),
    asked_at=st.sampled_from([NOW, NOW - timedelta(days=5)]),
    questions_back=st.integers(0, 3),
    has_booking=st.booleans(),
    has_open_request=st.booleans(),
    is_stopped=st.booleans(),
    person_at=st.sampled_from([None, NOW - timedelta(hours=1)]),
    open_symptom=st.sampled_from([None, "today", "now"]),
    is_frozen=st.booleans(),
)
replies = st.builds(
    said,
    st.sampled_from(MEANINGS),
    st.sampled_from(MEANINGS),
    certainty=st.floats(0, 1),
    question=st.sampled_from([None, "day", "time", "am_or_pm", "slot", "car", "odometer", "confirm_stop"]),
    times=st.sampled_from([(), (TUESDAY,)]),
    has_legal_words=st.booleans(),
    is_judgment=st.booleans(),
    is_reaction=st.booleans(),
    tells_of_death=st.sampled_from([False, False, False, True]),
)


@given(states, replies, st.booleans(), st.booleans())
def test_no_reply_is_lost_and_no_rule_is_broken(state: Conversation, heard: Heard, is_open: bool, past: bool) -> None:
    step = respond(state, heard, Around(is_open, past), NOW)
    meanings, texts = heard.reply.meanings, answers(step)
    if heard.is_reaction:
        assert set(texts) <= {"booking_stands"} and not alerts(step)
        return
    if heard.tells_of_death:
        assert texts == []
    elif "stop" in meanings and heard.reply.question != "confirm_stop":
        assert step.state.is_stopped and set(texts) <= {"stopped"}
    if state.is_stopped and not of(step, GiveConsentAgain):
        assert set(texts) <= LEAVES_IN_SPITE_OF_A_STOP
    if "symptom" in meanings and not heard.tells_of_death:
        assert {"symptom_now", "symptom_today"} & set(alerts(step))
        assert not of(step, MakeRequest)
    if past:
        assert "explain" not in texts
    if state.is_frozen or state.open_symptom:
        allowed = {"help", "stopped", "resumed", "ask_confirm_stop", "a_person_reads"}
        assert {one for one in texts if not one.startswith("caution_now")} <= allowed
    assert len(texts) == len(set(texts)) <= 4
    assert len(alerts(step)) == len(set(alerts(step))) and len(of(step, AddPhoneTask)) <= 1, "nobody is told twice"
    assert of(step, OpenSymptom) == [] or "symptom" in meanings
