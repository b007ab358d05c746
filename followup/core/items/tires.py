"""Tires: tread, age, pressure, the spare, the pressure lamp, rotation and alignment."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from followup.core.item import (
    AsFound,
    Dated,
    DistanceWear,
    Field,
    Interval,
    Item,
    Job,
    Life,
    Limit,
    Looks,
    WearPrior,
)
from followup.core.vehicle import CORNERS, Vehicle

DAYS_PER_YEAR = 365.25

# New tread by class, 32nds: trade pages for cars, common practice for the rest.
NEW_TREAD = {"car": 10.3, "suv": 11.0, "pickup": 12.5, "van": 11.0}
# 32nds per 1,000 miles, front and rear axle, by driven wheels: 1/32 per 5,000-8,000 mi; the split is from memory.
TREAD_RATES = {"front": (0.21, 0.13), "all": (0.18, 0.165), "rear": (0.17, 0.185)}
# An electric car is heavier and pulls harder (from memory).
ELECTRIC_TIRE_WEAR = 1.2


def tread_prior(vehicle: Vehicle, position: str) -> WearPrior:
    """What is expected of the tread at `position` of that car, in 32nds."""
    front, rear = TREAD_RATES.get(vehicle.driven or "front", TREAD_RATES["front"])
    rate = rear if position.startswith("rear") else front
    return WearPrior(
        new_value=NEW_TREAD.get(vehicle.vehicle_class or "car", NEW_TREAD["car"]),
        new_spread=0.9,
        rate_per_1000_miles=rate * (ELECTRIC_TIRE_WEAR if vehicle.powertrain == "electric" else 1.0),
        between_cars=0.33,
        between_items=0.22,
        reading_error=0.55,
        gauge_step=1.0,
        mate_error=0.5,
        usually_replaced_at=3.2,
        replaced_spread=1.1,
    )


def share_of_placard(entered: Mapping[str, Any]) -> float | None:
    """The pressure that was found, in percent of the door placard's."""
    found, placard = entered.get("found"), entered.get("placard")
    return 100 * found / placard if found is not None and placard else None


def _psi(name: str, words: str) -> Field:
    return Field(name, "number", words, ("psi", "kPa", "bar"), 0, 120)


TREAD_DEPTH = ("32nds", "mm")
MOST_TREAD = 24.0

TIRE_TREAD = Item(
    code="tire_tread",
    words="Tire tread",
    part="lift",
    fields=(
        Field("across", "numbers", "Tread: outer, center, inner", TREAD_DEPTH, 0, MOST_TREAD),
        Field("value", "number", "Tread, lowest only", TREAD_DEPTH, 0, MOST_TREAD),
        Field(
            "looks",
            "choice",
            "Wear pattern",
            choices=("even", "inner_edge", "outer_edge", "center", "cupped", "cracked"),
        ),
    ),
    models=(
        DistanceWear(tread_prior),
        Looks(),
    ),
    job=Job("replace the tires", "tires", 1.2),
    positions=CORNERS,
    unit="32nds",
    action_limit=Limit(4, "32nds"),
    winter_action_limit=Limit(6, "32nds"),
    near=1.0,
    goes_with_tires=True,
    # 49 CFR 570.9(a), a guide for States: at least 2/32 in (from memory).
    legal_limit=Limit(2, "32nds", "legal"),
    is_brakes_or_tires=True,
)

TIRE_AGE = Item(
    code="tire_age",
    words="Tire age",
    part="lift",
    fields=(Field("date_code", "date_code", "Date code: week and year, like 0821"),),
    # Makers' handbooks: looked at from six years, replaced at ten; nobody's law. Both are the shop's settings.
    models=(Life(median_days=6 * DAYS_PER_YEAR, log_spread=0.03),),
    job=Job("look at the tires because of their age", "tires", 0.3),
    positions=(*CORNERS, "spare"),
    unit="years",
    falls=False,
    action_limit=Limit(6, "years"),
    is_brakes_or_tires=True,
    measured_by=(),
)

TIRE_PRESSURE = Item(
    code="tire_pressure",
    words="Tire pressure",
    part="lift",
    fields=(
        _psi("found", "Found"),
        _psi("placard", "Door placard"),
        _psi("set_to", "Set to"),
    ),
    models=(AsFound(),),
    job=Job("set the tire pressures", "tires", 0.2),
    positions=(*CORNERS, "spare"),
    unit="percent",
    action_limit=Limit(90, "percent"),
    is_top_off_free=True,
    is_brakes_or_tires=True,
    measured_by=(),
    measure=share_of_placard,
)

SPARE = Item(
    code="spare",
    words="Spare or sealant kit",
    part="reception",
    fields=(
        Field("kind", "choice", "What there is", choices=("full", "temporary", "kit", "none")),
        Field("good_until", "month", "Kit good until"),
        Field("found_as", "choice", "Found", choices=("works", "does_not_work", "missing")),
    ),
    models=(Dated("good_until", notice_days=45), AsFound(("works", "does_not_work", "missing"), ("does_not_work",))),
    job=Job("see to the spare or the sealant kit", "tires", 0.2),
)

TPMS = Item(
    code="tpms",
    words="Tire pressure lamp",
    part="reception",
    fields=(Field("lamp", "choice", "Lamp", choices=("off", "on", "flashing")),),
    models=(AsFound(("off", "on", "flashing"), ("on", "flashing"), field="lamp"),),
    job=Job("look at the tire pressure sensors", "tires", 0.5),
    is_brakes_or_tires=True,
)

TIRE_ROTATION = Item(
    code="tire_rotation",
    words="Tire rotation",
    part="lift",
    fields=(
        Field("done_on", "date", "Last done on"),
        Field("done_odometer", "number", "Odometer then", ("mi", "km"), 0, 2_000_000),
    ),
    models=(Interval(days=None, miles=6_250),),
    job=Job("rotate the tires", "tires", 0.3),
    is_brakes_or_tires=True,
)

ALIGNMENT = Item(
    code="alignment",
    words="Alignment",
    part="lift",
    fields=(
        Field(
            "found_as",
            "choice",
            "Wear pattern, pull or printout",
            choices=("fine", "wear_pattern", "pulls", "out_on_printout"),
        ),
    ),
    models=(
        AsFound(("fine", "wear_pattern", "pulls", "out_on_printout"), ("wear_pattern", "pulls", "out_on_printout")),
    ),
    job=Job("check and set the alignment", "tires", 1.0),
    is_brakes_or_tires=True,
)

ITEMS = (TIRE_TREAD, TIRE_AGE, TIRE_PRESSURE, SPARE, TPMS, TIRE_ROTATION, ALIGNMENT)
