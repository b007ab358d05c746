"""What the shop has on file of each car whose work is forecast: the same values that come out of its inspections."""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import date

import numpy as np

from followup.core.forecast.history import CarHistory, Reading
from followup.core.forecast.sets import ACROSS_AXLES
from followup.core.items import BY_CODE
from followup.core.vehicle import Vehicle
from followup.core.visit import Work
from followup.rehearsal.policies.cars import ITEMS, PLACES, entered

_ROTATED = tuple(sorted(ACROSS_AXLES.items()))
_AXLES = ("front", "rear")


@dataclass
class File:
    """One car's file."""

    vehicle: Vehicle
    odometers: list[tuple[date, float]] = field(default_factory=list)
    readings: list[Reading] = field(default_factory=list)
    work: list[Work] = field(default_factory=list)

    def note_visit(self, on: date, odometer: float, value: np.ndarray, done: np.ndarray, rotated: bool) -> None:
        """Readings (2, 4) and, where it was written down, the work of one visit: (2, 2), and a rotation."""
        self.odometers.append((on, odometer))
        for item, of_item, work in zip(ITEMS, value, done, strict=True):
            for place, one in zip(PLACES, of_item.tolist(), strict=True):
                self.readings.append(Reading(entered(item, place, one), on, odometer, of=BY_CODE[item]))
            for axle in np.nonzero(work)[0]:
                self.work.append(Work(item, _AXLES[axle], "replaced", on, odometer))

        if rotated:
            self.work.append(Work("tire_tread", "", "rotated", on, odometer, _ROTATED))

    def history(self) -> CarHistory:
        """As the forecast reads it."""
        return CarHistory(self.vehicle, tuple(self.odometers), tuple(self.readings), tuple(self.work))
