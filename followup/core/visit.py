"""Visits (repair orders), the work done in them and what was recommended with the customer's decision."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime

DECISIONS = ("approved", "declined", "later", "no_answer")
DECLINED_BECAUSE = ("price", "time", "elsewhere", "think")


@dataclass(frozen=True)
class Work:
    """One line of work; `position` "" where the item has none; `moved` for a rotation: from position to position."""

    item: str
    position: str
    did: str
    on: date
    odometer_miles: float | None = None
    moved: tuple[tuple[str, str], ...] = ()


@dataclass(frozen=True)
class Recommendation:
    """What was advised at a visit and what the customer decided."""

    item: str
    position: str
    decision: str
    on: date
    because: str | None = None
    until: date | None = None
    told_by: str | None = None


@dataclass(frozen=True)
class Visit:
    """One visit; `closed_at` None while the car is in the shop."""

    code: str
    opened_at: datetime
    closed_at: datetime | None = None
    odometer_miles: float | None = None
