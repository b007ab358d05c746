"""Questions of the customer's beside what else a text says: one never takes the place of the other."""

from __future__ import annotations

import re

from followup.core.replies.guessing import Second
from followup.core.replies.intents import ALL, decline
from followup.core.replies.other_questions import is_named
from followup.core.replies.said import Said
from followup.core.replies.situation import Situation

ASIDES = frozenset({"price", "duration", "explain", "where", "help"})
"""Questions of the customer's that we answer before we ask our own."""
_STANDS_APART = frozenset({"gone", "later", "decline", "move", "cancel", "complaint", "running_late"})
"""What keeps its place where a clause of its own says it."""
_MOST_PARTS = 12
"""How many clauses of one text are looked at."""
_BESIDE = ASIDES | {"call"}
_ASKED_FOR = frozenset({"price", "duration", "where"})
"""Questions that are told apart by their words; two of them in one text are two."""
_CALL_OFF = re.compile(r"\bcall\w* (?:\w+ ){0,3}off\b")


def kept_apart(now: Situation, codes: set[str], second: Second) -> Second:
    """What a likeness changes, less what the words say apart from the question beside it."""
    dropped = second.dropped
    if second.added <= _BESIDE | {"unclear"}:
        dropped = dropped - _said_apart(now, dropped)
    dropped = dropped - _ASKED_FOR if len(codes & _ASKED_FOR) > 1 else dropped
    no_more = {"call"} if _CALL_OFF.search(now.text) else set()
    if codes & {"accept", "choose"} and not decline.starts_with_no(now.said):
        no_more = no_more | {"decline"}
    return Second(second.added - no_more, dropped)


def _said_apart(now: Situation, dropped: frozenset[str]) -> set[str]:
    """Which of these a clause without a question says by itself: `not now, but how much is it` puts off and asks."""
    found = {"unclear"} if is_named(now.text) else set()
    lost = [one for one in ALL if one.CODE in dropped & _STANDS_APART]
    if not lost or len(now.said.parts) < 2:
        return found
    for part in now.said.parts[:_MOST_PARTS]:
        alone = Said(text=part, asked=now.asked, has_booking=now.booked is not None, offers=now.said.offers)
        if not any(one.holds(alone) for one in ALL if one.CODE in _BESIDE):
            found |= {one.CODE for one in lost if one.holds(alone)}
    return found
