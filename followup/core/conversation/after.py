"""The state that follows from what is done: nothing is remembered that no effect stands for."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from datetime import datetime

from followup.core.conversation.effects import (
    Answer,
    CancelBooking,
    ChangeRequest,
    CloseRequest,
    Effect,
    FreezeThread,
    GiveConsentAgain,
    HoldForStop,
    MakeRequest,
    MoveBooking,
    OpenSymptom,
    PassToPerson,
    TakeBackConsent,
    TurnAllOff,
)
from followup.core.conversation.state import Conversation


def state_after(state: Conversation, effects: Iterable[Effect], now: datetime) -> Conversation:
    """Play the effects on the state. `has_booking` of a confirmed request is the workflow's to set."""
    made = list(effects)
    if state.person_at is not None and state.is_with_a_person(now):
        state = replace(state, person_at=now)  # 24 h of silence count from the last word of either side
    for effect in made:
        state = _one(state, effect, now)
    return _asked_after(state, [effect for effect in made if isinstance(effect, Answer)], now)


def _one(state: Conversation, effect: Effect, now: datetime) -> Conversation:
    match effect:
        case TakeBackConsent() | HoldForStop() | TurnAllOff():
            return replace(state, is_stopped=True)
        case GiveConsentAgain():
            return replace(state, is_stopped=False)
        case MakeRequest() | ChangeRequest() | MoveBooking():
            return replace(state, has_open_request=True)
        case CancelBooking():
            return replace(state, has_booking=False)
        case CloseRequest():
            return replace(state, has_open_request=False)
        case OpenSymptom():
            return replace(state, open_symptom=effect.severity)
        case FreezeThread():
            return replace(state, is_frozen=True)
        case PassToPerson():
            return replace(state, person_at=now)
        case _:
            return state


def _asked_after(state: Conversation, answers: list[Answer], now: datetime) -> Conversation:
    if not answers:
        return state
    last = answers[-1]
    asks_back = last.reason.startswith("ask_")
    back = state.questions_back + 1 if asks_back or last.reason == "a_person_reads" else 0
    if last.asks == state.asked and not asks_back:
        # A question of theirs was answered; ours stands as it stood.
        return replace(state, questions_back=max(back, state.questions_back))
    return replace(state, asked=last.asks, asked_at=now, asked_before=state.asked, questions_back=back)
