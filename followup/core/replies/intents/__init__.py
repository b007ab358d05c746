"""The meanings, one file each: a code, examples of our own in both languages, and how it is recognized."""

from __future__ import annotations

from typing import Protocol

from followup.core.replies.intents import (
    accept,
    call,
    cancel,
    choose,
    complaint,
    decline,
    done,
    duration,
    explain,
    gone,
    later,
    move,
    odometer,
    price,
    propose,
    resume,
    running_late,
    stop,
    stranger,
    symptom,
    thanks,
    unclear,
    where,
)
from followup.core.replies.intents import help as help_asked
from followup.core.replies.said import Said


class Intent(Protocol):
    """What every file of this folder offers."""

    CODE: str
    EXAMPLES: dict[str, tuple[str, ...]]

    def holds(self, said: Said) -> bool:
        """Whether the text says it."""
        ...


ALL: tuple[Intent, ...] = (
    stop,
    symptom,
    stranger,
    gone,
    done,
    running_late,
    cancel,
    move,
    choose,
    accept,
    propose,
    later,
    decline,
    odometer,
    complaint,
    call,
    price,
    duration,
    explain,
    where,
    resume,
    help_asked,
    thanks,
    unclear,
)
"""Every meaning, in the order of rank."""
