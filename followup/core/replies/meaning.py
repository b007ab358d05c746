"""The meanings that a reply can hold, in their order of rank, and the closed lists of the reply contract."""

from __future__ import annotations

from collections.abc import Iterable

MEANINGS: tuple[str, ...] = (
    "stop",
    "symptom",
    "stranger",
    "gone",
    "done",
    "running_late",
    "cancel",
    "move",
    "choose",
    "accept",
    "propose",
    "later",
    "decline",
    "odometer",
    "complaint",
    "call",
    "price",
    "duration",
    "explain",
    "where",
    "resume",
    "help",
    "thanks",
    "unclear",
)
"""Every meaning, the most important first: the first one that a text holds leads."""

ASKED: tuple[str, ...] = (
    "visit",
    "day",
    "time",
    "slot",
    "confirm",
    "odometer",
    "car",
    "walk_in",
    "after_visit",
    "confirm_stop",
)
"""What our last message can have asked."""

NEEDS: tuple[str, ...] = ("wait", "ride", "loaner", "early_drop", "late_pickup")
"""What a customer can need beside the visit itself."""

QUESTIONS: tuple[str, ...] = ("day", "time", "am_or_pm", "slot", "car", "odometer", "confirm_stop")
"""What can be asked back when one more word would settle a reply."""

HANDED_OVER: frozenset[str] = frozenset({"symptom", "complaint", "stranger", "call", "unclear"})
"""The meanings that a person must read."""

LANGUAGES: tuple[str, ...] = ("en", "es")
"""The languages that replies are read in."""

_RANK = {code: rank for rank, code in enumerate(MEANINGS)}


def in_rank(codes: Iterable[str]) -> tuple[str, ...]:
    """The codes once each, the most important first; `unclear` where there is none."""
    return tuple(sorted(set(codes), key=_RANK.__getitem__)) or ("unclear",)


def is_for_a_person(codes: Iterable[str]) -> bool:
    """Whether a person must read a reply with these meanings."""
    return not HANDED_OVER.isdisjoint(codes)
