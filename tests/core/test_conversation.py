"""The conversation: every state answers every meaning; bookings, certainty, questions both ways.

What must hold is this project's own contract and trade rules.
"""

from __future__ import annotations

import itertools
from dataclasses import replace
from datetime import date, timedelta
from typing import get_args

import pytest

from followup.core.conversation import Conversation, respond
from followup.core.conversation.effects import (
    AddOdometer,
    AlertKind,
    Answer,
    CancelBooking,
    ChangeRequest,
    DropUnsentQuestions,
    KeepBooking,
    MakeRequest,
    MoveBooking,
    RestItems,
)
from followup.core.conversation.table import TABLE, row_for
from followup.core.duty import CLOCKS
from followup.core.replies.contract import OdometerReading
from followup.core.replies.meaning import ASKED, HANDED_OVER, MEANINGS
from followup.core.text import REASON_BY_CODE
from tests.core.replied import EVERY_ASKED, NOW, OPEN, TUESDAY, alerts, answers, of, said

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
    for meanings in (("accept", "propose"), ("accept",)):
        step = respond(Conversation("visit", NOW), said(*meanings, times=(TUESDAY,)), OPEN, NOW)
        assert of(step, MakeRequest) and answers(step) == ["request_noted"]
    open_asap = respond(Conversation("visit", NOW), said("accept", "propose"), OPEN, NOW)
    assert of(open_asap, MakeRequest), "an advisor places it"


def test_a_move_keeps_the_old_time() -> None:
    step = respond(Conversation("confirm", NOW, has_booking=True), said("move", times=(TUESDAY,)), OPEN, NOW)
    assert of(step, MoveBooking) and not of(step, CancelBooking)
    assert answers(step) == ["change_noted"] and step.state.has_booking
    bare = respond(Conversation("confirm", NOW, has_booking=True), said("move", question="day"), OPEN, NOW)
    assert answers(bare) == ["change_noted"] and not of(bare, MoveBooking), "the old time is read back, and a day asked"
    assert bare.state.asked == "day" and bare.state.has_booking
    closed = respond(
        Conversation("confirm", NOW, has_booking=True), said("move", question="day", times=(TUESDAY,)), OPEN, NOW
    )
    assert answers(closed) == ["ask_day"], "a day on which the shop is closed is named"


def test_a_yes_to_the_reminder_keeps_and_a_cancel_frees_the_slot() -> None:
    booked = Conversation("confirm", NOW, has_booking=True)
    kept = respond(booked, said("accept"), OPEN, NOW)
    assert of(kept, KeepBooking) and answers(kept) == ["booking_stands"]
    called_off = respond(booked, said("cancel"), OPEN, NOW)
    assert of(called_off, CancelBooking) and not called_off.state.has_booking
    nothing_stands = respond(Conversation("visit", NOW), said("cancel"), OPEN, NOW)
    assert answers(nothing_stands) == ["a_person_reads"] and alerts(nothing_stands) == ["unclear"]


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
    if text == "ask_again":
        assert step.state.asked == "day", "the same question once more"


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


# What comes in beside words, and what is asked again -----------------------------------------------------------------
def test_a_picture_beside_words_is_listed_for_a_person() -> None:
    from followup.core.conversation.effects import ListForEndOfDay

    heard = replace(said("accept", question="day"), pictures=1)
    step = respond(Conversation("visit", NOW), heard, OPEN, NOW)
    assert answers(step) == ["ask_day"]
    assert of(step, ListForEndOfDay)
    with_alert = respond(Conversation("visit", NOW), replace(said("unclear"), pictures=1), OPEN, NOW)
    assert alerts(with_alert) == ["unclear"] and not of(with_alert, ListForEndOfDay)


@pytest.mark.parametrize(
    ("asked", "answer", "asks", "alert"),
    [
        ("visit", "ask_again", "day", []),
        ("day", "ask_again", "day", []),
        ("slot", "ask_again", "day", []),
        ("odometer", "ask_odometer", "odometer", []),
        ("car", "ask_car", "car", []),
        ("confirm", "a_person_reads", "confirm", ["unclear"]),
        ("after_visit", "a_person_reads", "after_visit", ["unclear"]),
    ],
)
def test_an_unsure_reply_is_asked_again_for_what_was_asked(
    asked: str, answer: str, asks: str, alert: list[str]
) -> None:
    step = respond(Conversation(asked, NOW), said("later", certainty=0.5), OPEN, NOW)
    (told,) = of(step, Answer)
    assert (told.reason, told.asks, alerts(step)) == (answer, asks, alert)


def test_calling_off_what_is_only_asked_for_closes_it() -> None:
    from followup.core.conversation.effects import CloseRequest

    step = respond(Conversation(None, NOW, has_open_request=True), said("cancel"), OPEN, NOW)
    assert of(step, CloseRequest) and answers(step) == ["cancel_noted"]
    nothing = respond(Conversation(None, NOW), said("cancel"), OPEN, NOW)
    assert alerts(nothing) == ["unclear"]


def test_an_answer_weeks_later_is_still_answered() -> None:
    weeks = NOW + timedelta(days=40)
    for asked in EVERY_ASKED:
        for meaning in MEANINGS:
            step = respond(Conversation(asked, NOW), said(meaning), OPEN, weeks)
            assert step.effects or meaning in ("thanks", "accept", "done", "later"), (asked, meaning)
    old = respond(Conversation("slot", NOW), said("choose", times=(TUESDAY,)), OPEN, weeks)
    assert answers(old) == ["ask_slot"] and not of(old, MakeRequest)
