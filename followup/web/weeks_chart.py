"""Lays out the picture of the coming weeks: a line each, on one axis of hours.

On each line, end to end: what is booked, what is expected of texts that left, what is expected of invites that are
placed; an upright mark at what the week holds. The three differ by more than color. Across, everything is in per cent
of the width, down in pixels, as in the due chart. Pure: hours in, places out. `templates/weeks_chart.html` draws it.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

LEFT_PERCENT, RIGHT_PERCENT = 0.5, 99.5
LABEL_PX, LINE_PX, GAP_PX, FOOT_PX = 18, 16, 8, 6


@dataclass(frozen=True)
class Part:
    """One part of a bar: which, where it begins and how wide it is in per cent."""

    kind: str
    x: float
    width: float


@dataclass(frozen=True)
class PlacedWeek:
    """A week's line: where its label and its bar stand, and the mark at what it holds."""

    begins_on: date
    label_y: float
    y: float
    parts: tuple[Part, ...]
    holds_x: float


@dataclass(frozen=True)
class WeeksChart:
    """Everything that the template draws."""

    weeks: tuple[PlacedWeek, ...]
    height: float
    line_px: int = LINE_PX


def lay_out(weeks: Sequence[tuple[date, float, float, float, float]]) -> WeeksChart:
    """Place the weeks: (begins on, holds, booked, of texts out, of placed invites); the axis ends at the most."""
    most = max((max(holds, booked + out + placed) for _, holds, booked, out, placed in weeks), default=0.0) or 1.0
    found, y = [], 0.0
    for begins_on, holds, booked, out, placed in weeks:
        parts, at = [], 0.0
        for kind, hours in (("booked", booked), ("out", out), ("placed", placed)):
            if hours > 0:
                parts.append(Part(kind, _x(at, most), _x(at + hours, most) - _x(at, most)))
                at += hours
        found.append(PlacedWeek(begins_on, y + LABEL_PX - 4, y + LABEL_PX, tuple(parts), _x(holds, most)))
        y += LABEL_PX + LINE_PX + GAP_PX
    return WeeksChart(tuple(found), y + FOOT_PX)


def _x(hours: float, most: float) -> float:
    return LEFT_PERCENT + min(max(hours / most, 0.0), 1.0) * (RIGHT_PERCENT - LEFT_PERCENT)
