"""Alternatives of which one is named again: with the hours that go for it alone, or as the one that is preferred."""

from __future__ import annotations

import re
from dataclasses import replace

from followup.core.replies.mentions import Days
from followup.core.replies.windows import Choice

_BREAKS = frozenset({",", ".", ";", "but", "pero", "except", "-"})
_PREFERS = re.compile(
    r"\b(?:rather|prefer\w*|ideally|better|best|first choice|mejor|prefier\w*|de preferencia|preferible\w*|mas bien)\b"
)


def is_said_again(choices: list[Choice], value: Days, negated: bool, between: list[str]) -> bool:
    """Whether a day was one of several before it and is named once more: `Wednesday or Thursday, Wednesday by 10`."""
    if negated or len(value.days) != 1 or _BREAKS.isdisjoint(between):
        return False
    whole = [one for one in choices if one.day and one.time is None and not (one.is_negated or one.is_again)]
    return len(whole) > 1 and _place(whole, value) is not None


def _place(choices: list[Choice], value: Days) -> int | None:
    """Where the day stood before; a weekday that a week has moved is still the same."""
    for number, one in enumerate(choices):
        if one.day and not one.is_again and not one.is_negated and one.time is None:
            is_moved = one.day.week is not None and not one.day.is_span and one.day.weekday == value.weekday
            if one.day.days == value.days or (is_moved and value.weekday is not None):
                return number
    return None


def prefers(plain: str) -> bool:
    """Whether words tell which of several times is preferred."""
    return bool(_PREFERS.search(plain))


def folded(plain: str, choices: list[Choice]) -> list[Choice]:
    """The choices without those that name a day again: its hours go to the day, a preference puts it first."""
    if not any(one.is_again for one in choices):
        return choices
    kept = [one for one in choices if not one.is_again]
    for again in choices:
        number = _place(kept, again.day) if again.is_again and again.day else None
        if number is None:
            continue
        if again.time is not None:
            kept[number] = replace(kept[number], time=again.time)
        elif prefers(plain):
            kept.insert(0, kept.pop(number))
    return kept
