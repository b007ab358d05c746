"""Where a conversation with one phone stands, and what was heard in the text that came in."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import datetime, timedelta
from typing import Literal

from followup.core.replies.contract import ReplyOut

Severity = Literal["now", "flat", "today"]
SEVERITY_RANK: dict[str, int] = {"today": 1, "flat": 2, "now": 3}

MOST_QUESTIONS_BACK = 2
PERSON_STAYS = timedelta(hours=24)
YES_IS_OLD_AFTER = timedelta(days=3)
# Nobody reads a text and answers it within this time: such an answer is to the question before.
CROSSED_WITHIN = timedelta(seconds=4)


@dataclass(frozen=True)
class Conversation:
    """The state of one thread. Instants are aware UTC.

    `asked` is what our last message asked and `asked_at` when it left (an offer's age counts from it); `asked_before`
    the question that stood before. `has_booking`: a confirmed one stands; `has_open_request`: asked or offered.
    `person_at`: when somebody last wrote while a person had the thread. `open_symptom` lasts until its outcome.
    """

    asked: str | None = None
    asked_at: datetime | None = None
    asked_before: str | None = None
    questions_back: int = 0
    has_booking: bool = False
    has_open_request: bool = False
    is_stopped: bool = False
    person_at: datetime | None = None
    open_symptom: Severity | None = None
    is_frozen: bool = False

    def is_with_a_person(self, now: datetime) -> bool:
        """True while the machine is silent here: a person wrote less than 24 h ago, a symptom is open, or frozen."""
        if self.is_frozen or self.open_symptom:
            return True
        return self.person_at is not None and now - self.person_at < PERSON_STAYS

    def asked_when_written(self, written_at: datetime) -> str | None:
        """The question that a text written at that instant answers: the one before, where the two crossed."""
        if self.asked_at is not None and written_at < self.asked_at + CROSSED_WITHIN:
            return self.asked_before
        return self.asked

    def given_back(self) -> Conversation:
        """The state after a person gave the thread back to the machine (a symptom stays until its outcome)."""
        return replace(self, person_at=None, is_frozen=False, questions_back=0)


@dataclass(frozen=True)
class Heard:
    """One reply: what it means by the contract, and what the safety word lists found in it.

    `symptom` None beside the meaning `symptom` counts as "now": the stricter in doubt. `is_judgment`: it asks whether
    it is safe, can wait, makes the trip. `is_reaction`: a phone's reaction to one of our texts. `pictures`: how many
    came with it.
    """

    reply: ReplyOut
    symptom: Severity | None = None
    has_legal_words: bool = False
    tells_of_death: bool = False
    is_judgment: bool = False
    is_reaction: bool = False
    pictures: int = 0


@dataclass(frozen=True)
class Around:
    """What the shop and the car are like as the reply is read.

    `is_past_limit`: an item of the thread's reason is at or past its action limit. `is_run_flat` False = not known.
    `is_stop_confirmed`: the provider has confirmed this very stop itself, so ours is off.
    """

    is_open: bool
    is_past_limit: bool = False
    is_run_flat: bool = False
    is_stop_confirmed: bool = False
    ask_below_certainty: float = 0.7
    hand_over_below_certainty: float = 0.4
