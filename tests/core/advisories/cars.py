"""Readings of an invented car for the tests of advisories, as they are entered."""

from __future__ import annotations

from datetime import date
from typing import Any

from followup.core.advisories import Advisory, advisories_of
from followup.core.forecast.history import Reading
from followup.core.inspection import Reading as Entered
from followup.core.item import MM_PER_32ND
from followup.core.shop import ShopRules
from followup.core.vehicle import Vehicle
from followup.core.visit import Work

READ_ON = date(2026, 3, 2)
TODAY = date(2026, 3, 20)
SIZE = "235/50R18"
CAR = Vehicle("V-1", driven="front", directional=False, tire_size_front=SIZE, tire_size_rear=SIZE)
ALL_WHEEL = Vehicle("V-2", driven="all", directional=False, tire_size_front=SIZE, tire_size_rear=SIZE)


def tread(position: str, *grooves: float, unit: str = "32nds", on: date = READ_ON, **more: Any) -> Reading:
    """One tire: several grooves from the outer to the inner edge, or the lowest alone."""
    numbers: dict[str, Any] = {"across": grooves} if len(grooves) > 1 else {"value": grooves[0]}
    kept = {name: more.pop(name) for name in ("odometer_miles", "tire_set") if name in more}
    return Reading(Entered(item="tire_tread", position=position, unit=unit, **numbers, **more), on, **kept)


def in_mm(depth_32nds: float) -> float:
    """The very same depth in mm: 1/32 in is 25.4/32 mm."""
    return depth_32nds * MM_PER_32ND


def pad(position: str, unit: str = "mm", on: date = READ_ON, **numbers: Any) -> Reading:
    """One wheel's pads: inner and outer, or the value of the lowest."""
    return Reading(Entered(item="brake_pad", position=position, unit=unit, **numbers), on)


def found(
    *readings: Reading, car: Vehicle = CAR, work: tuple[Work, ...] = (), on: date = TODAY, **rules: Any
) -> tuple[Advisory, ...]:
    """The advisories of that car with these readings."""
    return advisories_of(car, readings, work, ShopRules(**rules), on)


def keys(*readings: Reading, **more: Any) -> list[str]:
    """Their keys: rule and place."""
    return [one.key for one in found(*readings, **more)]
