"""A reply as it was understood, and what a step of a conversation did: shared by the conversation's tests."""

from __future__ import annotations

from datetime import UTC, datetime
from typing import Any, TypeVar

from followup.core.conversation import Around, Heard, Step
from followup.core.conversation.effects import Answer, RaiseAlert
from followup.core.replies.contract import ReplyOut, TimeWindow
from followup.core.replies.meaning import ASKED, HANDED_OVER

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
