"""What a step of a conversation asks to be done: typed effects, which a workflow carries out in one transaction.

They are carried out in the order in which they stand. An effect holds only what the conversation decided; what was
said (times, needs, verbatim words) is the reply itself, which the workflow has.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from typing import Literal

AlertKind = Literal[
    "symptom_now", "symptom_today", "legal_words", "death", "call_me", "complaint", "judgment", "price", "request",
    "running_late", "person_thread", "texts_refused", "many_stops", "tie", "unclear",
]  # fmt: skip


@dataclass(frozen=True)
class Answer:
    """Send the text of that reason (a code of `core/text.py`) at once.

    `asks` is what the conversation has asked once it left; `offered` the start times (ISO local) that it lists.
    `valid_minutes` count from when the customer's text was received (a stop is never confirmed late); None = until a
    person took over (a caution). `waits_for_alert`: the text may say that somebody was
    alerted only if an alert of this step was accepted before it is rendered.
    """

    reason: str
    asks: str | None = None
    offered: tuple[str, ...] = ()
    valid_minutes: int | None = 30
    waits_for_alert: bool = False


@dataclass(frozen=True)
class DropUnsentQuestions:
    """Drop answers of this thread that ask something and have not left: the customer was faster."""


@dataclass(frozen=True)
class MakeRequest:
    """Make a booking request out of the reply's times, choice, needs and car. `chosen` is an offered start, if one."""

    chosen: str | None = None


@dataclass(frozen=True)
class ChangeRequest:
    """Put the reply's times into the request that is already open (offered goes back to asked)."""

    chosen: str | None = None


@dataclass(frozen=True)
class MoveBooking:
    """Ask for another time for the booking that stands; the old time stands until the new one is confirmed."""

    chosen: str | None = None


@dataclass(frozen=True)
class KeepBooking:
    """The customer said that the booking stands."""


@dataclass(frozen=True)
class CancelBooking:
    """Close the booking that stands, called off by the customer; the slot is free."""


@dataclass(frozen=True)
class CloseRequest:
    """Close the open request, called off by the customer."""


@dataclass(frozen=True)
class NoteRunningLate:
    """The customer is late for the booking that stands; the reply's times may hold the arrival."""


@dataclass(frozen=True)
class TakeBackConsent:
    """Write a stop for the number: every car, person and cover; drop all that is queued for it."""

    because: str = "stop"


@dataclass(frozen=True)
class HoldForStop:
    """Write the stop now, before it is asked whether it was meant: so that silence is a stop without any clock."""


@dataclass(frozen=True)
class GiveConsentAgain:
    """Give back the covers that stood at the stop."""


@dataclass(frozen=True)
class NarrowConsent:
    """Take away these covers."""

    covers: tuple[str, ...]


@dataclass(frozen=True)
class RestItems:
    """The items of the thread's reason rest: a no (days None = the shop's rule), or asked again from `until` on."""

    because: Literal["no", "later"]
    until: date | None = None


@dataclass(frozen=True)
class NoteDone:
    """The items of the thread's reason have been done; the day is not known, at the latest today."""


@dataclass(frozen=True)
class EndTie:
    """Nothing leaves on this tie until a person looked: the number is a stranger's, or the car is gone."""

    because: Literal["stranger", "gone"]


@dataclass(frozen=True)
class TurnAllOff:
    """The person died: every text off, for good."""


@dataclass(frozen=True)
class AddOdometer:
    """Keep the reading that was told."""

    value: int
    unit: Literal["mi", "km"]


@dataclass(frozen=True)
class NameCar:
    """The conversation is about that car from now on (one of our names for it)."""

    car: str


@dataclass(frozen=True)
class OpenComplaint:
    """A complaint is open until its outcome is written down; no invite before that."""


@dataclass(frozen=True)
class OpenSymptom:
    """A symptom is open until its outcome is written down; the machine is silent and no invite leaves."""

    severity: Literal["now", "flat", "today"]


@dataclass(frozen=True)
class FreezeThread:
    """No automatic text in this thread until a person gives it back (legal words, a death)."""


@dataclass(frozen=True)
class PassToPerson:
    """The thread is a person's now: the machine is silent until given back or after 24 h of silence."""


@dataclass(frozen=True)
class RaiseAlert:
    """Tell who is on duty; clocks by kind in `core/duty.py`."""

    kind: AlertKind
    words: str


@dataclass(frozen=True)
class AddPhoneTask:
    """Put the customer on the phone list with the reason, since no text may say it."""

    because: str


@dataclass(frozen=True)
class ListForEndOfDay:
    """List the reply for the end of the day; nobody is alerted."""

    because: str


Effect = (
    Answer
    | DropUnsentQuestions
    | MakeRequest
    | ChangeRequest
    | MoveBooking
    | KeepBooking
    | CancelBooking
    | CloseRequest
    | NoteRunningLate
    | TakeBackConsent
    | HoldForStop
    | GiveConsentAgain
    | NarrowConsent
    | RestItems
    | NoteDone
    | EndTie
    | TurnAllOff
    | AddOdometer
    | NameCar
    | OpenComplaint
    | OpenSymptom
    | FreezeThread
    | PassToPerson
    | RaiseAlert
    | AddPhoneTask
    | ListForEndOfDay
)
