"""The cars of a simulated shop: what is true of them in each week, and the lines that a technician writes at a visit.

The world is that of `rehearsal/policies`, lived once; here texts leave and visits come by the real program.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import date, timedelta
from typing import Any

import numpy as np

from followup.rehearsal.fleet.driving import WEEK
from followup.rehearsal.policies.cars import DONE_WITHIN, ITEMS, PLACES, LivedCars, Read, entered
from followup.rehearsal.policies.world import BEGINS_ON, People, build_world
from followup.rehearsal.years.crowd import consent_of, language_of, phone_of

# So long the cars live before the shop opens its books; who did not come by then comes once in this time.
KNOWN_WEEKS = 52
# Some weeks more than are lived, for whoever looks ahead.
_AHEAD_WEEKS = 8
_AXLES = ("front", "rear")
_ROTATED = {"front_left": "rear_left", "front_right": "rear_right", "rear_left": "front_left",
            "rear_right": "front_right"}  # fmt: skip


@dataclass
class Counted:
    """What came of it: visits, and days past the action limit of each tire and each brake."""

    own: int = 0
    prompted: int = 0
    idle: int = 0
    wasted: int = 0
    overdue_days: float = 0.0


@dataclass
class LivingFleet:
    """So many cars, one for each customer; `begins_on` is the first day of the shop."""

    cars: LivedCars
    counted: Counted = field(default_factory=Counted)
    _written: int = 0
    # What would be written of every car in that week, and which were worked on since it was drawn.
    _read: tuple[int, Read] | None = None
    _worked_on: set[int] = field(default_factory=set)

    @staticmethod
    def drawn(count: int, weeks: int, seed: int) -> LivingFleet:
        """The same for the same seed."""
        world = build_world(count, (seed,), KNOWN_WEEKS + weeks + _AHEAD_WEEKS, People())
        return LivingFleet(LivedCars.begin(world, 1))

    @property
    def count(self) -> int:
        """How many cars there are."""
        return self.cars.world.customers

    @property
    def begins_on(self) -> date:
        """The day on which the shop opens its books, a Monday."""
        return BEGINS_ON + timedelta(weeks=KNOWN_WEEKS)

    def live_before(self) -> list[dict[str, Any]]:
        """The weeks before the shop opens its books: the lines of all visits in them, each car's at least once."""
        world, lines = self.cars.world, []
        comes = world.comes[:KNOWN_WEEKS].copy()
        never = np.nonzero(~comes.any(axis=0))[0]
        comes[np.random.default_rng((world.seeds[0], KNOWN_WEEKS)).integers(0, KNOWN_WEEKS, len(never)), never] = True
        for week in range(KNOWN_WEEKS):
            self.cars.live_a_week()
            on = BEGINS_ON + timedelta(weeks=week)
            for car in np.nonzero(comes[week])[0].tolist():
                lines.append(self._visit(car, f"{on + timedelta(days=car % 5)}T{9 + car % 7:02d}:{car % 60:02d}")[0])
        return lines

    def live_a_week(self) -> list[int]:
        """One week more: the cars that come by themselves in it."""
        self.cars.live_a_week()
        self.counted.overdue_days += WEEK * float((self.cars.value <= self.cars.action).sum())
        return [int(car) for car in np.nonzero(self.cars.world.comes[self.cars.week])[0]]

    def visit(self, car: int, visit_code: str, wall: str, is_prompted: bool) -> dict[str, Any]:
        """What the technician writes at a visit; the work that is near its limit is done."""
        is_near = bool((self.cars.value[car] <= self.cars.action + DONE_WITHIN).any())
        line, is_found = self._visit(car, wall)
        self.counted.own += not is_prompted
        self.counted.prompted += is_prompted
        self.counted.idle += is_prompted and not is_found
        self.counted.wasted += is_prompted and not is_near
        return {**line, "visit": visit_code}

    def miles(self, car: int) -> float:
        """What the odometer truly shows."""
        return float(self.cars.odometer[car])

    def _visit(self, car: int, wall: str) -> tuple[dict[str, Any], bool]:
        row, read = np.array([car]), self._reading(car)
        done, rotated = self.cars.do(row, read)
        self._worked_on.add(car)
        self._written += 1
        readings = [
            entered(item, place, value).model_dump(mode="json", exclude_defaults=True)
            for item, of_item in zip(ITEMS, read.value[car], strict=True)
            for place, value in zip(PLACES, of_item.tolist(), strict=True)
        ]
        work: list[dict[str, Any]] = [
            {"item": item, "position": _AXLES[axle], "did": "replaced"}
            for item, of_item in zip(ITEMS, done[0], strict=True)
            for axle in np.nonzero(of_item)[0].tolist()
        ]
        if rotated[0]:
            work.append({"item": ITEMS[0], "did": "rotated", "moved": _ROTATED})
        line = {
            "inspection": f"I-{self._written}", "inspected_at": wall, "odometer": int(read.odometer[car]), "unit": "mi",
            "customer": self._customer(car), "vehicle": self._vehicle(car), "readings": readings, "work_done": work,
        }  # fmt: skip
        return line, bool(done.any())

    def _reading(self, car: int) -> Read:
        """Drawn once a week for all, since it is the same by the week's seed; anew for a car that is here again."""
        week = self.cars.week
        if self._read is None or self._read[0] != week:
            self._read = week, self.cars.read()
            self._worked_on.clear()
        return self.cars.read() if car in self._worked_on else self._read[1]

    def _customer(self, car: int) -> dict[str, Any]:
        consent = consent_of(car, BEGINS_ON)
        return {
            "id": f"C-{car}", "name": f"Ana {car}", "phone": phone_of(car), "language": language_of(car),
            **({"consent": consent} if consent else {}),
        }  # fmt: skip

    def _vehicle(self, car: int) -> dict[str, Any]:
        known = self.cars.world.vehicles[car]
        assert known.first_used_on is not None
        return {
            "id": vehicle_code(car), "label": "blue wagon", "class": known.vehicle_class, "driven": known.driven,
            "powertrain": known.powertrain, "first_used_on": known.first_used_on.isoformat(),
        }  # fmt: skip


def vehicle_code(car: int) -> str:
    """The shop's name for a car."""
    return f"V-{car}"


def car_of(code: str) -> int:
    """The car of that name."""
    return int(code.removeprefix("V-"))
