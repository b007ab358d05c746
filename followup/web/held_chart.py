"""Lays out the picture of what was said against what held: a line each, on one axis of per cent.

On each line: a band within which chance alone leaves a forecast that is right, an upright mark at what was said, a dot
at what held. A dot outside its band is what to look at; nothing depends on color. Across, everything is in per cent of
the width, down in pixels, as in the due chart. Pure: shares in, places out. `templates/held_chart.html` draws it.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from followup.core.forecast.forecast_score import Held

LEFT_PERCENT, RIGHT_PERCENT = 2.0, 98.0
HEAD_PX, LABEL_PX, LINE_PX, GAP_PX, FOOT_PX = 26, 20, 20, 10, 6
# Words that begin farther to the right would leave a narrow picture.
LAST_LABEL_PERCENT = 84.0
_STEPS = (0.1, 0.2, 0.25)
_MOST_TICKS = 5


@dataclass(frozen=True)
class HeldRow:
    """One line to draw: its words and its count."""

    label: str
    held: Held


@dataclass(frozen=True)
class PlacedRow:
    """A line's places: label, middle, band, said and held, across in per cent and down in pixels."""

    row: HeldRow
    label_y: float
    y: float
    band_x: float
    band_width: float
    said_x: float
    held_x: float
    is_outside: bool


@dataclass(frozen=True)
class ShareTick:
    """A share on the axis and its words."""

    x: float
    words: str
    is_last: bool


@dataclass(frozen=True)
class HeldChart:
    """Everything that the template draws; lines without a count are left out."""

    rows: tuple[PlacedRow, ...]
    ticks: tuple[ShareTick, ...]
    height: float

    @property
    def outside(self) -> int:
        """How many dots lie outside their band."""
        return sum(one.is_outside for one in self.rows)


def lay_out(rows: Sequence[HeldRow]) -> HeldChart:
    """Place every line that has a count; the axis begins at the tenth below all that is drawn."""
    counted = [one for one in rows if one.held.count]
    lowest = min((min(one.held.share, one.held.chance_low) for one in counted), default=0.0)
    begin = max(int(lowest * 10) / 10, 0.0) if lowest < 0.9 else 0.8
    placed, y = [], float(HEAD_PX)
    for one in counted:
        held = one.held
        left, right = _x(held.chance_low, begin), _x(held.chance_high, begin)
        middle = y + LABEL_PX + LINE_PX / 2
        is_outside = not held.chance_low <= held.share <= held.chance_high
        placed.append(
            PlacedRow(one, y + LABEL_PX - 5, middle, left, right - left, _x(held.said, begin), _x(held.share, begin),
                      is_outside)
        )  # fmt: skip
        y += LABEL_PX + LINE_PX + GAP_PX
    return HeldChart(tuple(placed), _ticks(begin), y + FOOT_PX)


def _x(share: float, begin: float) -> float:
    inside = min(max((share - begin) / (1 - begin), 0.0), 1.0)
    return LEFT_PERCENT + inside * (RIGHT_PERCENT - LEFT_PERCENT)


def _ticks(begin: float) -> tuple[ShareTick, ...]:
    """Round shares from the begin of the axis to 100 %, a handful at most."""
    step = next((step for step in _STEPS if (1 - begin) / step <= _MOST_TICKS), _STEPS[-1])
    count = int(round((1 - begin) / step, 6))
    shares = [1 - number * step for number in range(count, -1, -1)]
    return tuple(
        ShareTick(_x(share, begin), f"{100 * share:.0f} %", _x(share, begin) > LAST_LABEL_PERCENT) for share in shares
    )
