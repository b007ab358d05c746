"""What is known of one car: its odometer, what was measured and what was done, in the order of time."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field, replace
from datetime import date
from functools import cached_property

from followup.core.inspection import InspectionLine, VisitLine
from followup.core.inspection import Reading as Entered
from followup.core.item import Catalogue, Item
from followup.core.items import BY_CODE, Measured, measured, reading_value
from followup.core.vehicle import AXLES, Vehicle
from followup.core.visit import Work


@dataclass(frozen=True)
class Reading:
    """One reading as it was entered, with its day and the car's odometer then (miles; None where not told).

    `distance_unit` is that of the line's odometer ("mi" or "km"): other odometers in the reading are in it too.
    `of` is the item of the catalogue that it was read by; None: the shipped one.
    """

    entered: Entered
    on: date
    odometer_miles: float | None = None
    tire_set: str | None = None
    distance_unit: str = "mi"
    of: Item | None = None

    @property
    def item(self) -> str:
        """The code of the item."""
        return self.entered.item

    @cached_property
    def number(self) -> Measured | None:
        """The number that counts, in the unit that it was entered in; None for words."""
        return measured(self.of or BY_CODE[self.item], self.entered)

    @cached_property
    def value(self) -> float | None:
        """The same in the item's own unit: what wear is computed with."""
        item, number = self.of or BY_CODE[self.item], self.number
        if number is None or number.unit == item.unit:
            return None if number is None else number.value
        return reading_value(item, self.entered)

    @property
    def several(self) -> tuple[float, ...]:
        """The numbers of one part, in the unit entered: grooves of a tire, inner and outer lining; () where but one."""
        entered = self.entered
        if len(entered.across) > 1:
            return entered.across
        return () if entered.inner is None or entered.outer is None else (entered.inner, entered.outer)

    @property
    def position(self) -> str:
        """The position as entered: a place, an axle, or ""."""
        return self.entered.position


@dataclass(frozen=True)
class CarHistory:
    """One car with its odometer readings (day, miles), readings and work; `catalogue` is that of its shop."""

    vehicle: Vehicle
    odometers: tuple[tuple[date, float], ...] = ()
    readings: tuple[Reading, ...] = ()
    work: tuple[Work, ...] = ()
    catalogue: Catalogue = field(default_factory=lambda: BY_CODE, repr=False, compare=False)

    @property
    def last_inspected_on(self) -> date | None:
        """The day of its latest reading."""
        return max((reading.on for reading in self.readings), default=None)

    def until(self, as_of: date) -> CarHistory:
        """What was known on that day, in the order of time; nothing later."""
        return replace(
            self,
            odometers=tuple(sorted(one for one in self.odometers if one[0] <= as_of)),
            readings=tuple(sorted((one for one in self.readings if one.on <= as_of), key=lambda one: one.on)),
            work=tuple(sorted((one for one in self.work if one.on <= as_of), key=lambda one: one.on)),
        )


def touches(work_position: str, position: str) -> bool:
    """True where work told at one position concerns the other: the same, a side of it, or nowhere in particular."""
    return (
        work_position == position
        or not work_position
        or not position
        or position in AXLES.get(work_position, ())
        or work_position in AXLES.get(position, ())
    )


def axle_of(position: str) -> str:
    """The axle of a position: "front" of "front_left"; other positions are their own."""
    return position.split("_")[0] if position.split("_")[0] in AXLES else position


def history_of_lines(lines: Iterable[InspectionLine | VisitLine], catalogue: Catalogue = BY_CODE) -> list[CarHistory]:
    """Histories by car, in the order of their first lines; `catalogue` is that by which the lines were read.

    A line that repeats an inspection (the same part of it) is a correction and takes the place of the earlier one;
    what a line leaves out of its car was told before.
    """
    found: dict[tuple[str, ...], InspectionLine | VisitLine] = {}
    for line in lines:
        if isinstance(line, InspectionLine):
            found[("inspection", line.inspection, line.part or "")] = line
        else:
            state = "closed" if line.closed_at else "opened"
            found[("visit", line.vehicle, line.visit, state)] = line
    cars: dict[str, list[InspectionLine | VisitLine]] = {}
    for line in found.values():
        code = line.vehicle.id if isinstance(line, InspectionLine) else line.vehicle
        cars.setdefault(code, []).append(line)
    return [_history(code, of_car, catalogue) for code, of_car in cars.items()]


def _history(code: str, lines: list[InspectionLine | VisitLine], catalogue: Catalogue) -> CarHistory:
    lines = sorted(lines, key=_at)
    vehicle = Vehicle(code=code)
    odometers: list[tuple[date, float]] = []
    readings: list[Reading] = []
    work: list[Work] = []
    for line in lines:
        on = date.fromisoformat(_at(line)[:10])
        if line.odometer_miles is not None:
            odometers.append((on, line.odometer_miles))
        work += [one.work(on, line.odometer_miles, line.unit) for one in line.work_done]
        if isinstance(line, InspectionLine):
            vehicle = _with_told(vehicle, line.vehicle.vehicle())
            readings += [
                Reading(one, on, line.odometer_miles, line.tires_on, line.unit or "mi", catalogue.get(one.item))
                for one in line.readings
            ]
    return CarHistory(vehicle, tuple(odometers), tuple(readings), tuple(work), catalogue)


def _at(line: InspectionLine | VisitLine) -> str:
    """When a line speaks of, as sortable text; a visit that tells no time comes first."""
    at = line.inspected_at if isinstance(line, InspectionLine) else line.closed_at or line.opened_at
    return at.isoformat() if at else "0001-01-01"


def _with_told(before: Vehicle, told: Vehicle) -> Vehicle:
    """The car with what the later line told; what it left out stays."""
    changes = {name: value for name, value in vars(told).items() if value is not None}
    return replace(before, **changes)
