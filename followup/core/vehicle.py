"""A vehicle, as far as forecasts, forms and texts need to know it."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date

POWERTRAINS = ("gasoline", "diesel", "hybrid", "plug_in", "electric")
VEHICLE_CLASSES = ("car", "suv", "pickup", "van")
DRIVEN_WHEELS = ("front", "rear", "all")
POSITIONS = ("front_left", "front_right", "rear_left", "rear_right", "spare", "front", "rear")
CORNERS = ("front_left", "rear_left", "rear_right", "front_right")
AXLES = {"front": ("front_left", "front_right"), "rear": ("rear_left", "rear_right")}
TIRE_SETS = ("summer", "winter", "all_season")
# `CORNERS` too is in walking order.
# The order in which a technician walks around the car; every list on a page or in a text follows it.
WALKING_ORDER = ("front_left", "rear_left", "rear_right", "front_right", "front", "rear", "spare", "")
# How staff say where something is.
PLACE_WORDS = {
    "front_left": "left front", "rear_left": "left rear", "rear_right": "right rear", "front_right": "right front",
    "front": "front", "rear": "rear", "spare": "spare", "": "car",
}  # fmt: skip


@dataclass(frozen=True)
class Vehicle:
    """One car. `code` is the shop's own id; None means "not told", which each reader must bear.

    `annual_miles` is what the owner says, if asked; `label` is how the customer would call the car.
    """

    code: str
    label: str | None = None
    vehicle_class: str | None = None
    driven: str | None = None
    first_used_on: date | None = None
    powertrain: str | None = None
    run_flat: bool | None = None
    oil_check: str | None = None
    rear_brakes: str | None = None
    parking_brake: str | None = None
    tire_size_front: str | None = None
    tire_size_rear: str | None = None
    directional: bool | None = None
    plate: str | None = None
    vin: str | None = None

    @property
    def has_engine(self) -> bool:
        """True unless the car is known to be electric: an unknown powertrain has an engine until told otherwise."""
        return self.powertrain != "electric"
