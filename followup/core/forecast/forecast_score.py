"""The score of one due window: how it came out when its item was next looked at. Plain values without numpy."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from typing import Literal

# `measured`: held against a number; `looked_at`: found due or not; the others end a window without scoring it: work
# that changed or moved the part before it was read, numbers that only untold work explains, another set of tires.
How = Literal["measured", "looked_at", "changed", "moved", "seems_changed", "seems_moved", "other_set"]
ENDINGS: tuple[How, ...] = (
    "measured", "looked_at", "changed", "moved", "seems_changed", "seems_moved", "other_set",
)  # fmt: skip
# Pads and tires are held against the number that was read; others are read too seldom.
MEASURED_ITEMS = ("brake_pad", "tire_tread")


@dataclass(frozen=True)
class ForecastScore:
    """How one window came out on `scored_on`.

    `chance` is what it gave to being found due by then, `was_due` what was found; `place` the chance that it gave to a
    reading of that value or less, `place_at_odometer` the same with the distance known; `expected`, `found` and `crps`
    are in the item's unit. None where that cannot be said.
    """

    item: str
    position: str
    forecast_on: date
    scored_on: date
    how: How
    readings_used: int
    chance: float | None = None
    was_due: bool | None = None
    place: float | None = None
    place_at_odometer: float | None = None
    expected: float | None = None
    found: float | None = None
    crps: float | None = None


@dataclass(frozen=True)
class Held:
    """Of `count` windows that said `said` (a chance), `held` held.

    They are worth `worth` that would not hang together. `low`, `high` is where the true share may lie (95 %, Wilson),
    `chance_low`, `chance_high` between which shares chance alone leaves a forecast that is as good as it says.
    """

    said: float
    count: int
    held: int
    worth: float
    low: float
    high: float
    chance_low: float
    chance_high: float

    @property
    def share(self) -> float:
        """The share that held."""
        return self.held / self.count if self.count else 0.0

    @property
    def is_telling(self) -> bool:
        """False where chance alone explains almost any share."""
        return self.worth >= ENOUGH


# Below this many, chance alone makes 69 to 91 % of 80 % and more.
ENOUGH = 50
