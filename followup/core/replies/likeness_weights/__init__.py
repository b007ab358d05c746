"""The fitted weights of each meaning, in the order of rank."""

from __future__ import annotations

from typing import Protocol

from followup.core.replies.likeness_weights import (
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
from followup.core.replies.likeness_weights import help as help_asked


class Weights(Protocol):
    """The weights of one meaning: `sign:hundredths` separated by spaces, and what is added to every score."""

    CODE: str
    BIAS: int
    WEIGHTS: str


ALL: tuple[Weights, ...] = (
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
