"""What a forecast believed of a worn value, kept with its window so that the next reading can be held against it.

Plain values without numpy, as windows are; `next_reading.py` does the arithmetic.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date
from typing import Any


@dataclass(frozen=True)
class ValueAhead:
    """The value and its wear as believed on the car's last day `on`, given that the part is still on the car.

    `value` is in the item's unit; `log_rate` the log of the unit per thousand miles; both are jointly normal.
    `reading_error` is the standard deviation of one reading, `gauge_step` the width it is rounded to. `miles` are
    (effective days ahead, log of miles per effective day, its variance).
    """

    on: date
    value: float
    value_variance: float
    log_rate: float
    log_rate_variance: float
    covariance: float
    reading_error: float
    gauge_step: float
    miles: tuple[tuple[float, float, float], ...]

    def to_json(self) -> dict[str, Any]:
        """As plain JSON; numbers to six digits behind the point."""
        kept = {name: round(value, 6) if isinstance(value, float) else value for name, value in vars(self).items()}
        kept["miles"] = [[round(one, 6) for one in entry] for entry in self.miles]
        return kept | {"on": self.on.isoformat()}

    @staticmethod
    def from_json(kept: Mapping[str, Any]) -> ValueAhead:
        """What `to_json` made."""
        miles = tuple((float(days), float(log), float(variance)) for days, log, variance in kept["miles"])
        return ValueAhead(**(dict(kept) | {"on": date.fromisoformat(kept["on"]), "miles": miles}))
