"""How one invented car of the demo wears: its true state from day to day, which the lines only tell with an error."""

from __future__ import annotations

import json
from datetime import date, timedelta
from typing import Any

from town import Dice

from followup.core.inspection import VehicleLine
from followup.core.item import DistanceWear, WearPrior
from followup.core.items import BY_CODE
from followup.core.vehicle import AXLES, CORNERS

WEARS = ("tire_tread", "brake_pad", "brake_shoe", "brake_rotor")
AGES = ("brake_fluid", "battery", "wiper_blade", "cabin_filter", "engine_air_filter")
# Where owners who come late have it done, in the item's unit.
TOO_LATE = {"tire_tread": 2.9, "brake_pad": 2.2, "brake_shoe": 1.1}

TOO_OLD = (
    ("battery", 5.0), ("brake_fluid", 3.5), ("wiper_blade", 0.8), ("cabin_filter", 1.8), ("engine_air_filter", 3.2),
)  # fmt: skip


def prior_of(item: str, vehicle: VehicleLine, position: str) -> WearPrior:
    """The catalogue's prior, so that the demo's cars are like the cars that are expected."""
    model = next(one for one in BY_CODE[item].models if isinstance(one, DistanceWear))
    return model.prior(vehicle.vehicle(), position)


class Car:
    """The true state of a car: odometer, what is left of everything that wears, how far everything is down."""

    def __init__(self, dice: Dice, told: dict[str, Any]) -> None:
        self.dice = dice
        self.line = VehicleLine.model_validate_json(json.dumps(told))
        self.day = date.fromisoformat(told["first_used_on"])
        self.plate_month = dice.whole(1, 12)
        self.tires_made_on = self.day - timedelta(days=dice.whole(60, 200))
        self.miles = 12.0
        self.miles_a_day = min(max(dice.about(29.0, 0.38), 9.0), 75.0)
        self.left: dict[tuple[str, str], float] = {}
        self.rate: dict[tuple[str, str], float] = {}
        self._fit_all()
        self.down = {"engine_oil": 0.0, "coolant": 0.1, "washer_fluid": 0.3, "diesel_exhaust_fluid": 0.1}
        self.since = dict.fromkeys(
            ("brake_fluid", "battery", "wiper_blade", "cabin_filter", "engine_air_filter"), self.day
        )
        self.oil_done: tuple[date, float] = (self.day, self.miles)
        self.oil_use = dice.about(0.09, 0.6)
        self.rotated_at = 0.0
        self.tire_set: str | None = None
        self.set_aside: dict[str, float] = {}
        self.elsewhere: list[dict[str, Any]] = []

    def _fit_all(self) -> None:
        for item in WEARS:
            own = self.dice.about(1.0, 0.28)
            for position in CORNERS:
                prior = prior_of(item, self.line, position)
                self.rate[item, position] = prior.rate_per_1000_miles * own * self.dice.about(1.0, 0.1)
                self.fit(item, position)

    def fit(self, item: str, position: str) -> None:
        """A new part at that place (both sides get the same from a caller that fits an axle)."""
        prior = prior_of(item, self.line, position)
        self.left[item, position] = prior.new_value + self.dice.between(-0.3, 0.3)

    def axles(self, item: str) -> tuple[str, ...]:
        """The axles on which the car has that item."""
        drums = self.line.rear_brakes == "drum"
        if item == "brake_shoe":
            return ("rear",) if drums else ()
        return ("front",) if drums and item in ("brake_pad", "brake_rotor") else ("front", "rear")

    def lowest(self, item: str, axle: str) -> float:
        """The lowest of both sides."""
        return min(self.left[item, side] for side in AXLES[axle])

    def drive_to(self, day: date) -> None:
        """Live until that day, in steps of three weeks; what gets too low is done elsewhere on the way."""
        while self.day < day:
            step = min(21, (day - self.day).days)
            driven = self.miles_a_day * step * self.dice.between(0.8, 1.2)
            self.day += timedelta(days=step)
            self.miles += driven
            self._wear(driven / 1000, step)
            if (day - self.day).days > 21:
                self._go_elsewhere()

    def _wear(self, thousands: float, days: int) -> None:
        for place, rate in self.rate.items():
            if place[0] in ("tire_tread", "brake_pad") or thousands:
                self.left[place] = max(self.left[place] - rate * thousands, 0.2)
        is_winter = self.day.month in (11, 12, 1, 2, 3)
        self.down["washer_fluid"] += days / (45 if is_winter else 75)
        self.down["coolant"] += days / 1_000
        self.down["engine_oil"] += self.oil_use * thousands
        self.down["diesel_exhaust_fluid"] += thousands / 8
        # Most owners see to these themselves, sooner or later.
        for fluid, most in (
            ("washer_fluid", 2.2),
            ("diesel_exhaust_fluid", 0.9),
            ("coolant", 1.9),
            ("engine_oil", 1.3),
        ):
            if self.down[fluid] > most:
                self.down[fluid] = 0.2

    def _go_elsewhere(self) -> None:
        """Work done by others; the owner tells of it at the next inspection."""
        for item in ("tire_tread", "brake_pad", "brake_shoe"):
            for axle in self.axles(item):
                if self.lowest(item, axle) < TOO_LATE[item]:
                    self.replace(item, axle)
                    told = {"item": item, "position": axle, "did": "replaced", "on": self.day.isoformat()}
                    self.elsewhere.append(told | {"odometer": int(self.miles)})
        for item, years in TOO_OLD:
            if (self.day - self.since[item]).days > 365 * years:
                self.since[item] = self.day
        if self.miles - self.oil_done[1] > 9_000:
            self.oil_done, self.down["engine_oil"] = (self.day, self.miles), 0.0

    def replace(self, item: str, axle: str) -> None:
        """New parts on both sides of an axle."""
        if item == "brake_pad" and self.left["brake_rotor", AXLES[axle][0]] < 1.2:
            self.replace("brake_rotor", axle)
        if item == "tire_tread":
            self.tires_made_on = self.day - timedelta(days=100)
        for side in AXLES[axle]:
            self.fit(item, side)

    def rotate(self) -> dict[str, str]:
        """Front to rear on the same side; returns what moved where."""
        moved = {f"front_{side}": f"rear_{side}" for side in ("left", "right")}
        moved |= {new: old for old, new in moved.items()}
        depths = {place: self.left["tire_tread", place] for place in CORNERS}
        for old, new in moved.items():
            self.left["tire_tread", new] = depths[old]
        self.rotated_at = self.miles
        return moved

    def mount(self, tire_set: str) -> None:
        """Change to the other set of tires, each with its own tread."""
        if self.tire_set not in (None, tire_set):
            on_car = {place: self.left["tire_tread", place] for place in CORNERS}
            for place in CORNERS:
                self.left["tire_tread", place] = self.set_aside.get(place, 9.6)
            self.set_aside = on_car
        self.tire_set = tire_set

    def mark(self, fluid: str) -> str:
        """The level as a word."""
        marks = {"engine_oil": (0.2, 0.8, 1.2), "diesel_exhaust_fluid": (0.2, 0.8, 0.97)}.get(fluid, (0.3, 1.4, 1.95))
        return next(
            (word for word, most in zip(("full", "ok", "low"), marks, strict=True) if self.down[fluid] < most), "empty"
        )
