"""Advisories and the rotation of a car as plain lines, for the technician's and the advisor's pages."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date

from followup.core.advisories import Advisory, words
from followup.core.vehicle import Vehicle


@dataclass(frozen=True)
class AdvisoryLine:
    """What it is about, what was measured and when, the rule with what is done about it, and how sure it is."""

    title: str
    measured: str
    asks_for: str
    certainty: str


def advisory_lines(advisories: Iterable[Advisory], vehicle: Vehicle, today: date) -> list[AdvisoryLine]:
    """One line an advisory, in their order."""
    return [
        AdvisoryLine(words.title(one), words.measured(one, today), words.asks_for(one, vehicle), words.certainty(one))
        for one in advisories
    ]
