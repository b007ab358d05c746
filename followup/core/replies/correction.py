"""A reading that a person put right: the text with its context, what was read, what was meant, and replaying it."""

from __future__ import annotations

from followup.core.replies.contract import Correction, Meant, Replayed, ReplyOut, Verdict
from followup.core.replies.understand import understand

ACTED_ON_FROM = 0.7
"""The certainty from which the program acts by itself, where a shop did not set another."""


def replay(correction: Correction) -> Replayed:
    """Read the text again and say whether the reading is the same, better, worse or only another one.

    Better and worse go by what matters to the customer, in this order: the meaning, the time, and, where the reading
    is wrong, that the program does not act on it (a person reads it, or it asks back).
    """
    now = understand(correction.reply)
    then_worth, now_worth = _worth(correction.read, correction.meant), _worth(now, correction.meant)
    verdict: Verdict = "better" if now_worth > then_worth else "worse" if now_worth < then_worth else "other"
    if _told(now) == _told(correction.read):
        verdict = "same"
    return Replayed(text=correction.reply.text, meant=correction.meant, then=correction.read, now=now, verdict=verdict)


def _worth(out: ReplyOut, meant: Meant) -> tuple[bool, bool, bool]:
    is_meant = out.meanings[0] == meant.meaning
    has_time = meant.start is None or any(one.start.startswith(meant.start) for one in out.times)
    is_right = is_meant and has_time
    return is_meant, has_time, is_right or out.handoff or bool(out.question) or out.certainty < ACTED_ON_FROM


def _told(out: ReplyOut) -> ReplyOut:
    """A reading without its certainty, which may move a little from one version to the next."""
    return out.model_copy(update={"certainty": 0.0})
