"""The table: what was asked last x what the reply means x whether a booking stands -> what is done and answered.

It holds only what is the trade's own choice. What comes before it whatever was asked (stops, symptoms, a person in
the thread, low certainty, questions back) is `respond.py`.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from datetime import date

from followup.core.conversation.effects import (
    AlertKind,
    CancelBooking,
    ChangeRequest,
    CloseRequest,
    Effect,
    EndTie,
    GiveConsentAgain,
    KeepBooking,
    MakeRequest,
    MoveBooking,
    NoteDone,
    NoteRunningLate,
    OpenComplaint,
    RestItems,
    TakeBackConsent,
)
from followup.core.conversation.state import Conversation
from followup.core.replies.contract import ReplyOut

Deed = Callable[[ReplyOut, Conversation], Effect | None]


def ask_for_time(reply: ReplyOut, state: Conversation) -> Effect:
    """A request for the times told: a new one, the open one changed, or a move of the booking that stands."""
    if state.has_booking:
        return MoveBooking(reply.chosen)
    return ChangeRequest(reply.chosen) if state.has_open_request else MakeRequest(reply.chosen)


def rest_until_told(reply: ReplyOut, _state: Conversation) -> Effect:
    """The items rest until the day that was told; without one, by the shop's rule."""
    return RestItems("later", date.fromisoformat(reply.until) if reply.until else None)


def close_open_request(_reply: ReplyOut, state: Conversation) -> Effect | None:
    """Close the open request, if there is one."""
    return CloseRequest() if state.has_open_request else None


def always(effect: Effect) -> Deed:
    """A deed that does not depend on what was said."""
    return lambda _reply, _state: effect


KEEP, CANCEL, LATE = always(KeepBooking()), always(CancelBooking()), always(NoteRunningLate())
REST, DONE, COMPLAINT = always(RestItems("no")), always(NoteDone()), always(OpenComplaint())
GONE, STRANGER = always(EndTie("gone")), always(EndTie("stranger"))
STOP, GIVE_BACK = always(TakeBackConsent()), always(GiveConsentAgain())


@dataclass(frozen=True)
class Row:
    """What one cell of the table does. `keeps_question`: what was asked before is still open after the answer.

    `is_for_person`: the machine is silent in the thread from here on. `phone_task` goes on the phone list.
    """

    answer: str | None = None
    do: tuple[Deed, ...] = ()
    alert: AlertKind | None = None
    is_for_person: bool = False
    keeps_question: bool = False
    phone_task: str | None = None


@dataclass(frozen=True)
class Rows:
    """All cells of one meaning: `free` where no booking stands, `booked` where one does (None: the same).

    `asked` and `asked_booked` hold the cells that differ by what was asked.
    """

    free: Row
    booked: Row | None = None
    asked: Mapping[str, Row] = field(default_factory=dict)
    asked_booked: Mapping[str, Row] = field(default_factory=dict)


_NOTHING = Row(keeps_question=True)
_ASK_DAY = Row("ask_day")
_ASK_SLOT = Row("ask_slot")
_REQUEST = Row("request_noted", (ask_for_time,), "request")
_MOVE = Row("change_noted", (ask_for_time,), "request")
_STANDS = Row("booking_stands", (KEEP,))
_STOPPED = Row("stopped", (STOP,))
_WALK_IN = Row("walk_in_noted")
_UNHAPPY = Row("complaint_noted", (COMPLAINT,), "complaint", is_for_person=True)
_LEFT = Row("decline_noted", (close_open_request, REST))
_PERSON = Row("a_person_reads", (), "unclear", keeps_question=True)
_PERSON_SOON = Row("a_person_reads", (), "request", keeps_question=True)
_GO_ON = Row("resumed", (GIVE_BACK,))

TABLE: dict[str, Rows] = {
    "stop": Rows(_STOPPED),
    # The four cautions are chosen by severity and hours in `respond.py`; this is who is told and who goes on.
    "symptom": Rows(Row("caution_now_open", (), "symptom_now", is_for_person=True)),
    "stranger": Rows(Row("stranger_noted", (STRANGER,), "tie", is_for_person=True)),
    "gone": Rows(
        Row("gone_noted", (GONE,), "tie"),
        booked=Row("gone_noted", (GONE,), "tie", phone_task="the car is gone, but a booking stands"),
    ),
    "done": Rows(
        Row("done_noted", (DONE, close_open_request)),
        booked=Row("a_person_reads", (DONE,), "request", phone_task="the work has been done, but a booking stands"),
        # "all set" to the after-visit question is a yes, not a report.
        asked={"after_visit": _NOTHING},
        asked_booked={"after_visit": _NOTHING},
    ),
    "running_late": Rows(_PERSON_SOON, booked=Row("running_late_noted", (LATE,), "running_late")),
    "cancel": Rows(
        Row("cancel_noted", (close_open_request,)),
        booked=Row("cancel_noted", (CANCEL,)),
    ),
    "move": Rows(_REQUEST, booked=_MOVE),
    "choose": Rows(_REQUEST, booked=_MOVE, asked={"walk_in": _WALK_IN}),
    "accept": Rows(
        _ASK_DAY,
        booked=_STANDS,
        asked={
            "time": Row("ask_time"),
            "slot": _ASK_SLOT,
            "confirm": _PERSON_SOON,  # what we asked about no longer stands
            "odometer": Row("ask_odometer"),
            "walk_in": _WALK_IN,
            "after_visit": _NOTHING,
            "confirm_stop": _STOPPED,
        },
        asked_booked={
            "day": _ASK_DAY,
            "time": Row("ask_time"),
            "slot": _ASK_SLOT,
            "odometer": Row("ask_odometer"),
            "walk_in": _WALK_IN,
            "after_visit": _NOTHING,
            "confirm_stop": _STOPPED,
        },
    ),
    "propose": Rows(
        _REQUEST,
        booked=_MOVE,
        asked={"walk_in": _WALK_IN},
        asked_booked={"walk_in": _WALK_IN},
    ),
    "later": Rows(
        Row("later_noted", (close_open_request, rest_until_told)),
        booked=_ASK_DAY,
        asked={"odometer": _NOTHING, "after_visit": _NOTHING},
        asked_booked={"odometer": _NOTHING, "after_visit": _NOTHING, "walk_in": _WALK_IN},
    ),
    "decline": Rows(
        _LEFT,
        booked=Row("booking_stands"),
        asked={
            "slot": _ASK_DAY,
            "confirm": _PERSON_SOON,
            "odometer": Row("decline_noted"),
            "car": _PERSON_SOON,
            "after_visit": _UNHAPPY,
            "confirm_stop": _GO_ON,
        },
        asked_booked={
            "visit": _ASK_DAY,  # reads as `confirm`: a no is a wish to move
            "confirm": _ASK_DAY,
            "slot": _ASK_DAY,
            "odometer": Row("decline_noted"),
            "car": _PERSON_SOON,
            "walk_in": Row("decline_noted", (REST,)),
            "after_visit": _UNHAPPY,
            "confirm_stop": _GO_ON,
        },
    ),
    # The reading itself is kept by `respond.py` wherever one was told.
    "odometer": Rows(Row("odometer_noted", keeps_question=True), asked={"odometer": Row("odometer_noted")}),
    "complaint": Rows(_UNHAPPY),
    "call": Rows(Row("call_noted", (), "call_me", is_for_person=True)),
    "price": Rows(Row("price", (), "price", keeps_question=True)),
    "duration": Rows(Row("duration", keeps_question=True)),
    "explain": Rows(Row("explain", keeps_question=True)),
    "where": Rows(Row("where", keeps_question=True)),
    "resume": Rows(_GO_ON),
    "help": Rows(Row("help", keeps_question=True)),
    "thanks": Rows(_NOTHING),
    "unclear": Rows(_PERSON),
}


def row_for(meaning: str, asked: str | None, has_booking: bool) -> Row:
    """The cell of the table; `KeyError` for a meaning that the contract does not have."""
    rows = TABLE[meaning]
    if has_booking:
        special = rows.asked_booked.get(asked or "")
        return special or rows.booked or rows.asked.get(asked or "") or rows.free
    return rows.asked.get(asked or "") or rows.free
