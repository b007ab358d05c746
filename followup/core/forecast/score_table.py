"""Scores of many forecasts as columns, so that those of a large shop are summed up at once."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, fields
from datetime import date
from typing import Any

import numpy as np

from followup.core.forecast.season import Array

# The columns of a kept score that are read, by the names that `ForecastScore` and the store give them.
COLUMNS = (
    "vehicle_id", "item", "how", "scored_on", "readings_used", "chance", "was_due", "place", "place_at_odometer",
    "expected", "found", "crps", "is_look_back", "is_used",
)  # fmt: skip


@dataclass(frozen=True)
class ScoreTable:
    """A row a score; NaN where a number is missing. `day` is `date.toordinal` of the reading.

    `is_look_back` where the forecast was made afterwards, from what was known then; `is_used` where a planned text
    rests on it.
    """

    car: np.ndarray
    item: np.ndarray
    how: np.ndarray
    day: np.ndarray
    readings: np.ndarray
    chance: Array
    was_due: np.ndarray
    place: Array
    place_at_odometer: Array
    expected: Array
    found: Array
    crps: Array
    is_look_back: np.ndarray
    is_used: np.ndarray

    @staticmethod
    def of(columns: Mapping[str, Sequence[Any]]) -> ScoreTable:
        """The table of columns by the names of `COLUMNS`, with days as dates and None for what is missing."""
        days: Sequence[date] = columns["scored_on"]
        return ScoreTable(
            car=np.array(columns["vehicle_id"], dtype=int),
            item=np.array(columns["item"], dtype=str),
            how=np.array(columns["how"], dtype=str),
            day=np.array([one.toordinal() for one in days], dtype=int),
            readings=np.array(columns["readings_used"], dtype=int),
            was_due=np.array([bool(one) for one in columns["was_due"]], dtype=bool),
            is_look_back=np.array(columns["is_look_back"], dtype=bool),
            is_used=np.array(columns["is_used"], dtype=bool),
            **{
                name: np.array(columns[name], dtype=float)
                for name in ("chance", "place", "place_at_odometer", "expected", "found", "crps")
            },
        )

    def only(self, rows: np.ndarray) -> ScoreTable:
        """Those rows alone."""
        return ScoreTable(**{one.name: getattr(self, one.name)[rows] for one in fields(self)})

    def __len__(self) -> int:
        """How many scores there are."""
        return len(self.car)

    @property
    def visit(self) -> np.ndarray:
        """A number for each car and day, rising with the day: what was read together hangs together."""
        if not len(self):
            return np.empty(0, dtype=int)
        both = self.day.astype(np.int64) * (int(self.car.max()) + 1) + self.car
        return np.unique(both, return_inverse=True)[1]
