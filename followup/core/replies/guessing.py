"""What a text is taken for that no word list knows: what it resembles most among our examples, else unclear."""

from __future__ import annotations

import re

from followup.core.replies.decision import Decision
from followup.core.replies.intents import move
from followup.core.replies.meaning import MEANINGS
from followup.core.replies.resemblance import resembles
from followup.core.replies.situation import Situation

# Not what depends on offers, readings, times or a booking, which are read, not resembled; nor what gives a consent.
_GUESSED = frozenset(MEANINGS) - {"choose", "odometer", "propose", "cancel", "move", "running_late", "resume", "accept"}
_WITH_BOOKING = frozenset({"cancel", "move", "running_late"})
LEAST_SHARE, LEAST_KNOWN = 0.6, 0.5
# Many a question that no meaning names begins like one that a meaning does; and to take the consent back on a
# likeness alone needs more: `text` and `phone` stand in much that is no stop.
LEAST_SHARES = {
    "stop": 0.95, "stranger": 0.9, "gone": 0.8, "complaint": 0.75, "price": 0.9, "duration": 0.9, "explain": 0.9,
    "where": 0.9, "help": 0.9, "call": 0.9, "thanks": 0.9,
}  # fmt: skip
_DENIED = re.compile(
    r"\b(?:no|not|dont|never|without|any|sin|ningun\w*|todo bien|all good|fine|bien|stuck (?:in|at)|traffic)\b"
)
"""Beside such a word a likeness to a stop or a symptom is no ground to say one: the word lists read what is denied."""


def guess(now: Situation, made: Decision) -> None:
    """Gives a decision without a meaning the one that its text resembles, with a doubt; else `unclear`."""
    made.codes = {"unclear"}
    found = resembles(now.reply.text, _GUESSED | (_WITH_BOOKING if now.booked else frozenset()))
    if found is None or now.asked in ("odometer", "car") or now.plain.is_emoji_only or now.read.other:
        return
    if now.booked is None and move.speaks_of_moving(now.text):
        return
    if found.code in ("stop", "symptom") and _DENIED.search(now.text):
        return
    if found.share >= LEAST_SHARES.get(found.code, LEAST_SHARE) and found.known >= LEAST_KNOWN:
        made.codes = {found.code}
        made.doubts.append("guessed")
