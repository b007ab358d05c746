"""The conversation: every state answers every meaning; stops, symptoms, silence, certainty, questions back.

What must hold is this project's own contract and trade rules; law is named where it decides.
"""

from __future__ import annotations

import itertools
from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from typing import Any, TypeVar, get_args

import pytest
from hypothesis import given
from hypothesis import strategies as st

from followup.core.conversation import Around, Conversation, Heard, Step, respond
from followup.core.conversation.effects import (
    AddOdometer,
    AddPhoneTask,
    AlertKind,
    Answer,
    CancelBooking,
    ChangeRequest,
    DropUnsentQuestions,
    EndTie,
    FreezeThread,
    GiveConsentAgain,
    HoldForStop,
    KeepBooking,
    ListForEndOfDay,
    MakeRequest,
    MoveBooking,
    NarrowConsent,
    OpenSymptom,
    RaiseAlert,
    RestItems,
    TakeBackConsent,
    TurnAllOff,
)
from followup.core.conversation.listen import hear, is_reaction
from followup.core.conversation.respond import LEAVES_IN_SPITE_OF_A_STOP
from followup.core.conversation.table import TABLE, row_for
from followup.core.duty import CLOCKS
from followup.core.replies.contract import OdometerReading, ReplyOut, TimeWindow
from followup.core.replies.meaning import ASKED, HANDED_OVER, MEANINGS
from followup.core.text import REASON_BY_CODE

NOW = datetime(2026, 3, 10, 16, 0, tzinfo=UTC)
OPEN, CLOSED = Around(is_open=True), Around(is_open=False)
TUESDAY = TimeWindow(start="2026-03-17T09:00", end=None, grain="time")
EVERY_ASKED = (None, *ASKED)
Kind = TypeVar("Kind")


def said(*meanings: str, **more: Any) -> Heard:
    """A reply with these meanings, read with certainty."""
    lists = {name: more.pop(name) for name in list(more) if name in Heard.__dataclass_fields__}
    found = ReplyOut(
        meanings=meanings, certainty=more.pop("certainty", 0.95), handoff=not HANDED_OVER.isdisjoint(meanings), **more
    )
    return Heard(found, **lists)


def of(step: Step, kind: type[Kind]) -> list[Kind]:
    """The effects of that kind."""
    return [effect for effect in step.effects if isinstance(effect, kind)]


def answers(step: Step) -> list[str]:
    """The reasons of the texts that answer."""
    return [answer.reason for answer in of(step, Answer)]


def alerts(step: Step) -> list[str]:
    """The kinds of the alerts raised."""
    return [alert.kind for alert in of(step, RaiseAlert)]


# The walk ------------------------------------------------------------------------------------------------------
WALK = list(itertools.product(EVERY_ASKED, MEANINGS, (False, True), (0, 1, 2), (False, True), (0.95, 0.6, 0.2)))


@pytest.mark.parametrize("asked", EVERY_ASKED)
def test_every_state_answers_every_meaning(asked: str | None) -> None:
    for where, meaning, booked, back, person, certainty in WALK:
        if where != asked:
            continue
        state = Conversation(asked, NOW - timedelta(hours=1), None, back, booked, person_at=NOW if person else None)
        step = respond(state, said(meaning, certainty=certainty), OPEN, NOW)
        what = f"{meaning} to {asked}, booked {booked}, {back} back, person {person}, certainty {certainty}"
        is_silent_by_right = meaning == "thanks" or (asked == "after_visit" and meaning in ("accept", "done", "later"))
        is_silent_by_right |= asked == "odometer" and meaning == "later"
        assert step.effects or is_silent_by_right, what
        assert all(answer.reason in REASON_BY_CODE for answer in of(step, Answer)), what
        assert all(answer.asks in (*ASKED, None) for answer in of(step, Answer)), what
        assert step.state.questions_back <= 3, what
        if meaning in HANDED_OVER:
            assert alerts(step), what
        if person and meaning not in ("stop", "help", "symptom") and not _is_about_the_stop(asked, meaning):
            assert answers(step) == [], what


def _is_about_the_stop(asked: str | None, meaning: str) -> bool:
    return asked == "confirm_stop" and meaning == "accept"


def test_the_table_has_a_row_for_every_meaning_and_only_known_texts() -> None:
    assert set(TABLE) == set(MEANINGS)
    for asked, meaning, booked in itertools.product(EVERY_ASKED, MEANINGS, (False, True)):
        row = row_for(meaning, asked, booked)
        assert row.answer is None or REASON_BY_CODE[row.answer].kind == "answer"
        assert row.answer or row.do or row.alert or row.keeps_question


def test_every_alert_has_its_clocks() -> None:
    assert set(get_args(AlertKind)) == set(CLOCKS)


# Bookings ------------------------------------------------------------------------------------------------------
def test_the_way_from_an_invite_to_a_request() -> None:
    asked = respond(Conversation("visit", NOW), said("accept", question="day"), OPEN, NOW)
    assert answers(asked) == ["ask_day"] and asked.state.asked == "day"
    step = respond(asked.state, said("propose", times=(TUESDAY,)), OPEN, NOW)
    assert of(step, MakeRequest) and answers(step) == ["request_noted"] and alerts(step) == ["request"]
    assert step.state.asked is None and step.state.has_open_request
    changed = respond(step.state, said("propose", times=(TUESDAY,)), OPEN, NOW)
    assert of(changed, ChangeRequest) and not of(changed, MakeRequest)


def test_a_yes_with_a_time_is_a_request_at_once() -> None:
    step = respond(Conversation("visit", NOW), said("accept", "propose", times=(TUESDAY,)), OPEN, NOW)
    assert of(step, MakeRequest) and answers(step) == ["request_noted"]


def test_a_move_keeps_the_old_time() -> None:
    step = respond(Conversation("confirm", NOW, has_booking=True), said("move", times=(TUESDAY,)), OPEN, NOW)
    assert of(step, MoveBooking) and not of(step, CancelBooking)
    assert answers(step) == ["change_noted"] and step.state.has_booking
    bare = respond(Conversation("confirm", NOW, has_booking=True), said("move", question="day"), OPEN, NOW)
    assert answers(bare) == ["ask_day"] and not of(bare, MoveBooking)


def test_a_yes_to_the_reminder_keeps_and_a_cancel_frees_the_slot() -> None:
    booked = Conversation("confirm", NOW, has_booking=True)
    kept = respond(booked, said("accept"), OPEN, NOW)
    assert of(kept, KeepBooking) and answers(kept) == ["booking_stands"]
    called_off = respond(booked, said("cancel"), OPEN, NOW)
    assert of(called_off, CancelBooking) and not called_off.state.has_booking


def test_a_yes_three_days_after_the_offer_is_read_back_before_it_counts() -> None:
    chosen = said("choose", chosen=TUESDAY.start, times=(TUESDAY,))
    fresh = respond(Conversation("slot", NOW - timedelta(days=2, hours=23)), chosen, OPEN, NOW)
    assert of(fresh, MakeRequest) == [MakeRequest(TUESDAY.start)]
    state = Conversation("slot", NOW - timedelta(days=3))
    old = respond(state, chosen, OPEN, NOW)
    assert not of(old, MakeRequest)
    assert of(old, Answer) == [Answer("ask_slot", "slot", (TUESDAY.start,))]
    again = respond(old.state, chosen, OPEN, NOW + timedelta(minutes=1))
    assert of(again, MakeRequest) == [MakeRequest(TUESDAY.start)]


def test_a_no_rests_the_items_and_later_rests_them_until_the_day() -> None:
    no = respond(Conversation("visit", NOW), said("decline"), OPEN, NOW)
    assert of(no, RestItems) == [RestItems("no")] and answers(no) == ["decline_noted"]
    later = respond(Conversation("visit", NOW), said("later", until="2026-05-01"), OPEN, NOW)
    assert of(later, RestItems) == [RestItems("later", date(2026, 5, 1))]


def test_a_walk_in_asks_nothing() -> None:
    for meaning in ("accept", "propose", "choose"):
        step = respond(Conversation("walk_in", NOW), said(meaning, times=(TUESDAY,)), OPEN, NOW)
        assert answers(step) == ["walk_in_noted"] and not of(step, MakeRequest)


def test_two_answers_that_cross_are_answers_to_what_was_read() -> None:
    state = Conversation("slot", asked_at=NOW, asked_before="day")
    assert state.asked_when_written(NOW - timedelta(seconds=5)) == "day"
    assert state.asked_when_written(NOW + timedelta(seconds=1)) == "day", "nobody reads and writes in a second"
    assert state.asked_when_written(NOW + timedelta(seconds=30)) == "slot"
    late = respond(replace(state, asked="day"), said("propose", times=(TUESDAY,)), OPEN, NOW)
    assert isinstance(late.effects[0], DropUnsentQuestions), "our question that has not left is not asked any more"


# Questions both ways -------------------------------------------------------------------------------------------
def test_at_most_two_questions_back_then_a_person() -> None:
    state = Conversation("visit", NOW)
    for count in (1, 2):
        step = respond(state, said("accept", question="day"), OPEN, NOW)
        state = step.state
        assert answers(step) == ["ask_day"] and state.questions_back == count
    step = respond(state, said("accept", question="day"), OPEN, NOW)
    assert answers(step) == ["a_person_reads"] and alerts(step) == ["request"] and of(step, MakeRequest)
    assert step.state.is_with_a_person(NOW)


def test_a_question_of_theirs_is_answered_first_and_ours_stands() -> None:
    step = respond(Conversation("visit", NOW), said("accept", "duration"), OPEN, NOW)
    assert answers(step) == ["duration", "ask_day"]
    alone = respond(Conversation("slot", NOW), said("where"), OPEN, NOW)
    assert answers(alone) == ["where"] and alone.state.asked == "slot" and alone.state.questions_back == 0


@pytest.mark.parametrize(
    ("certainty", "back", "text", "kinds"),
    [
        (0.70, 0, "request_noted", ["request"]),
        (0.69, 0, "ask_again", []),
        (0.40, 0, "ask_again", []),
        (0.39, 0, "a_person_reads", ["unclear"]),
        (0.69, 2, "a_person_reads", ["unclear"]),
    ],
)
def test_certainty_decides_who_asks(certainty: float, back: int, text: str, kinds: list[str]) -> None:
    state = Conversation("day", NOW, questions_back=back)
    step = respond(state, said("propose", times=(TUESDAY,), certainty=certainty), OPEN, NOW)
    assert answers(step) == [text] and alerts(step) == kinds
    assert bool(of(step, MakeRequest)) == (text == "request_noted")


def test_an_unclear_text_is_answered_once_and_never_in_a_circle() -> None:
    first = respond(Conversation("visit", NOW), said("unclear"), OPEN, NOW)
    assert answers(first) == ["a_person_reads"] and alerts(first) == ["unclear"]
    second = respond(first.state, said("unclear"), OPEN, NOW)
    assert answers(second) == [] and alerts(second) == ["unclear"], "it may be another machine"
    clear = respond(second.state, said("propose", times=(TUESDAY,)), OPEN, NOW)
    assert of(clear, MakeRequest)


def test_a_judgment_is_never_answered() -> None:
    asks = said("explain", is_judgment=True)
    assert answers(respond(Conversation("visit", NOW), asks, OPEN, NOW)) == ["judgment"]
    assert alerts(respond(Conversation("visit", NOW), asks, OPEN, NOW)) == ["judgment"]
    plain = respond(Conversation("visit", NOW), said("explain"), OPEN, NOW)
    assert answers(plain) == ["explain"] and alerts(plain) == []
    past = respond(Conversation("visit", NOW), said("explain"), replace(OPEN, is_past_limit=True), NOW)
    assert answers(past) == ["judgment"], "at or past the action limit every explain is one"
    beside = respond(
        Conversation("visit", NOW), said("propose", "explain", times=(TUESDAY,), is_judgment=True), OPEN, NOW
    )
    assert answers(beside) == ["judgment", "request_noted"]
    unclear = respond(Conversation("visit", NOW), said("unclear", is_judgment=True), OPEN, NOW)
    assert answers(unclear) == ["judgment"] and alerts(unclear) == ["judgment"]


def test_an_odometer_reading_is_kept_whatever_it_stands_beside() -> None:
    reading = OdometerReading(value=48_200, unit="mi")
    for meanings in (("odometer",), ("accept", "odometer"), ("complaint", "odometer")):
        step = respond(Conversation("odometer", NOW), said(*meanings, odometer=reading), OPEN, NOW)
        assert AddOdometer(48_200, "mi") in step.effects, meanings
    doubtful = respond(Conversation("odometer", NOW), said("odometer", question="odometer"), OPEN, NOW)
    assert answers(doubtful) == ["ask_odometer"]


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
    thumbs = said("accept", certainty=0.6, is_reaction=True)
    confirmed = respond(Conversation("confirm", NOW, has_booking=True), thumbs, OPEN, NOW)
    assert answers(confirmed) == ["booking_stands"] and not alerts(confirmed)


@pytest.mark.parametrize(
    ("text", "is_one"),
    [
        ("Liked “Your Civette is due”", True),
        ('Reacted 👍 to "See you Tuesday"', True),
        ('Le gustó "Su coche"', True),
        ("Loved the work you did", False),
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
    assert of(step, OpenSymptom) == [] or "symptom" in meanings
