"""How long this shop's customers take from a text to the visit that it led to: the lead time, learned.

The median comes by the product-limit estimate (Kaplan and Meier 1958), so that those who have booked and not come yet
count for as long as they have waited: without them the quick ones would be all there is.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import exp, log

# So many visits weigh as much as what is usual (assumption), and a lead time lies within these days.
USUAL_WEIGHS = 20
SHORTEST_DAYS, LONGEST_DAYS = 7, 60


@dataclass(frozen=True)
class Wait:
    """Days from a text to the visit; `is_over` False where the customer has booked, and waits for so long by now."""

    days: float
    is_over: bool


@dataclass(frozen=True)
class LearnedLead:
    """The lead time in whole days: `days` is what planning may go by, `median` what the visits alone say (None where
    less than half have come), `kept` and `waiting` how many it rests on."""

    days: int
    median: float | None
    kept: int
    waiting: int


def learned_lead(waits: Sequence[Wait], usual_days: int) -> LearnedLead:
    """The shop's own median, drawn towards what is usual as long as there are few visits."""
    kept = sum(one.is_over for one in waits)
    median = median_wait(waits)
    days = float(usual_days)
    if median is not None:
        days = exp((kept * log(max(median, 1.0)) + USUAL_WEIGHS * log(usual_days)) / (kept + USUAL_WEIGHS))
        days = min(max(days, SHORTEST_DAYS), LONGEST_DAYS)
    return LearnedLead(round(days), median, kept, len(waits) - kept)


def median_wait(waits: Sequence[Wait]) -> float | None:
    """The first day by which half of them have come; None where that day has not been seen yet."""
    left, still_waiting = len(waits), 1.0
    for days in sorted({one.days for one in waits}):
        come = sum(one.is_over and one.days == days for one in waits)
        still_waiting *= 1 - come / left
        if still_waiting <= 0.5 + 1e-12:
            return days
        left -= sum(one.days == days for one in waits)
    return None
