"""Lays out the picture of the hours of a day: a bar for each, as high as what a text that leaves then promises.

Hours in which invites may leave are filled, the others only outlined, so that they differ by more than color; what is
promised stands above each bar. Across, everything is in per cent of the width, down in pixels, as in the due chart.
Pure: hours in, places out. `templates/hours_chart.html` draws it.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

TOP_PX, BARS_PX, FOOT_PX = 18, 110, 22
_SHARE_OF_COLUMN = 0.7


@dataclass(frozen=True)
class Bar:
    """An hour's bar: its middle and left edge and width in per cent, its top and height in pixels."""

    hour: int
    middle: float
    x: float
    width: float
    y: float
    height: float
    words: str
    is_open: bool


@dataclass(frozen=True)
class HoursChart:
    """Everything that the template draws."""

    bars: tuple[Bar, ...]
    base: int = TOP_PX + BARS_PX
    height: int = TOP_PX + BARS_PX + FOOT_PX


def lay_out(hours: Sequence[tuple[int, float, bool]]) -> HoursChart:
    """Place the hours: (hour, of 100 texts, may invites leave then); the highest bar fills the height."""
    most = max((value for _, value, _ in hours), default=0.0) or 1.0
    column = 100.0 / max(len(hours), 1)
    bars = []
    for at, (hour, value, is_open) in enumerate(hours):
        high = BARS_PX * max(value, 0.0) / most
        bars.append(
            Bar(hour, column * (at + 0.5), column * (at + (1 - _SHARE_OF_COLUMN) / 2), column * _SHARE_OF_COLUMN,
                TOP_PX + BARS_PX - high, high, f"{value:.0f}", is_open)
        )  # fmt: skip
    return HoursChart(tuple(bars))
