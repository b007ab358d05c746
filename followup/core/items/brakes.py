"""Brakes: pads, shoes, rotors and the fluid."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from followup.core.item import DistanceWear, Field, Item, Job, Life, Limit, Looks, Rise, WearPrior
from followup.core.vehicle import CORNERS, Vehicle

REAR = ("rear_left", "rear_right")
LINING = ("mm", "32nds")
# 49 CFR 570.5(c), a guide for States: 1/32 in of lining (from memory).
LEGAL_LINING = Limit(1, "32nds", "legal")
# Electric drives brake with the motor: middle of .3-.5 and .5-.7 (from memory).
PAD_WEAR = {"electric": 0.4, "hybrid": 0.6, "plug_in": 0.6}


def pad_prior(vehicle: Vehicle, position: str) -> WearPrior:
    """What is expected of a pad at `position`, in mm (front life to 3 mm about 48,000 mi: from memory)."""
    is_rear = position.startswith("rear")
    return WearPrior(
        new_value=9.5 if is_rear else 11.0,
        new_spread=0.9,
        rate_per_1000_miles=(0.115 if is_rear else 0.165) * PAD_WEAR.get(vehicle.powertrain or "", 1.0),
        between_cars=0.40,
        between_items=0.25,
        reading_error=0.5,
        gauge_step=0.5,
        mate_error=0.4,
        usually_replaced_at=2.6,
        replaced_spread=1.2,
    )


def shoe_prior(vehicle: Vehicle, position: str) -> WearPrior:
    """What is expected of a brake shoe, in mm: 4.5 new in one maker's manual; the log spread of .45 is split."""
    del position
    return WearPrior(
        new_value=4.5,
        new_spread=0.4,
        rate_per_1000_miles=0.035 * PAD_WEAR.get(vehicle.powertrain or "", 1.0),
        between_cars=0.38,
        between_items=0.24,
        reading_error=0.4,
        gauge_step=0.5,
        mate_error=0.3,
        usually_replaced_at=1.6,
        replaced_spread=0.6,
    )


def rotor_prior(vehicle: Vehicle, position: str) -> WearPrior:
    """What is expected of a rotor, in mm over the thickness stamped on it; the log spread of .5 is split."""
    del vehicle, position
    return WearPrior(
        new_value=2.0,
        new_spread=0.3,
        rate_per_1000_miles=0.02,
        between_cars=0.42,
        between_items=0.27,
        reading_error=0.1,
        gauge_step=0.1,
        mate_error=0.1,
        usually_replaced_at=0.4,
        replaced_spread=0.3,
    )


def over_discard(entered: Mapping[str, Any]) -> float | None:
    """Thickness of a rotor over the discard thickness stamped on it, in mm; None where one of the two is missing."""
    value, minimum = entered.get("value"), entered.get("minimum")
    return value - minimum if value is not None and minimum is not None else None


BRAKE_PAD = Item(
    code="brake_pad",
    words="Brake pad",
    part="lift",
    fields=(
        Field("inner", "number", "Lining, inner", LINING, 0, 20),
        Field("outer", "number", "Lining, outer", LINING, 0, 20),
        Field("value", "number", "Lining, lowest only", LINING, 0, 20),
        Field("looks", "choice", "Looks", choices=("even", "cracked", "dirty")),
    ),
    models=(DistanceWear(pad_prior), Looks()),
    job=Job("replace the brake pads of an axle", "brakes", 1.0),
    positions=CORNERS,
    unit="mm",
    action_limit=Limit(3, "mm"),
    near=1.0,
    legal_limit=LEGAL_LINING,
    is_brakes_or_tires=True,
)

BRAKE_SHOE = Item(
    code="brake_shoe",
    words="Brake shoe",
    part="lift",
    fields=(
        Field("value", "number", "Lining, lowest", LINING, 0, 12),
        Field("looks", "choice", "Looks", choices=("even", "cracked", "dirty", "leaking")),
    ),
    models=(DistanceWear(shoe_prior), Looks()),
    job=Job("replace the brake shoes", "brakes", 1.5),
    positions=REAR,
    unit="mm",
    action_limit=Limit(2, "mm"),
    legal_limit=LEGAL_LINING,
    is_brakes_or_tires=True,
)

PARKING_BRAKE_SHOE = Item(
    code="parking_brake_shoe",
    words="Parking-brake shoe",
    part="lift",
    fields=(
        Field("value", "number", "Lining, lowest", LINING, 0, 8),
        Field("looks", "choice", "Looks", choices=("even", "cracked", "dirty", "leaking")),
    ),
    # It holds a standing car and hardly wears: looked at, not forecast from distance.
    models=(Looks(),),
    job=Job("replace the parking-brake shoes", "brakes", 1.5),
    positions=REAR,
    unit="mm",
    action_limit=Limit(1.5, "mm"),
    # One maker's manual: 2.8 mm new, 1.0 mm least.
    legal_limit=None,
    is_brakes_or_tires=True,
)

BRAKE_ROTOR = Item(
    code="brake_rotor",
    words="Brake rotor",
    part="lift",
    fields=(
        Field("value", "number", "Thickness", ("mm", "in"), 3, 60),
        Field("minimum", "number", "Stamped discard thickness", ("mm", "in"), 3, 60),
        Field("looks", "choice", "Looks", choices=("even", "scored", "rust_lip", "pitted", "heat_spots", "cracked")),
        Field("pulsates", "yes_no", "Driver feels it pulsate"),
    ),
    models=(DistanceWear(rotor_prior), Looks()),
    job=Job("replace the brake rotors of an axle with its pads", "brakes", 1.5),
    positions=CORNERS,
    unit="mm",
    action_limit=Limit(0.5, "mm"),
    is_brakes_or_tires=True,
    measured_by=(),
    measure=over_discard,
)

BRAKE_FLUID = Item(
    code="brake_fluid",
    words="Brake fluid",
    part="reception",
    fields=(
        Field("water_percent", "number", "Water", ("percent",), 0, 10),
        Field("copper_ppm", "number", "Copper", ("ppm",), 0, 2000),
        Field("boiling_point", "number", "Boiling point", ("C", "F"), 50, 350),
        Field("looks", "choice", "Looks", choices=("even", "dirty", "leaking")),
        Field("level", "choice", "Level", choices=("full", "ok", "low", "empty", "not_readable")),
        Field("changed_on", "date", "Last changed on"),
    ),
    models=(
        Rise(start=0.0, per_year=1.0, log_spread=0.3),
        Life(median_days=3 * 365.25, log_spread=0.3),
        Looks(),
    ),
    job=Job("change the brake fluid", "brakes", 0.7),
    unit="percent",
    falls=False,
    action_limit=Limit(3, "percent"),
    # A low level is never topped off before pads and leaks were looked at, and never free.
    is_top_off_free=False,
    is_brakes_or_tires=True,
    measured_by=("water_percent",),
)

ITEMS = (BRAKE_PAD, BRAKE_SHOE, PARKING_BRAKE_SHOE, BRAKE_ROTOR, BRAKE_FLUID)
