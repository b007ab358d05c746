"""Fluids that run low: coolant, washer fluid, diesel exhaust fluid."""

from __future__ import annotations

from followup.core.item import AMOUNTS_BELOW_FULL, Field, Item, Job, Level, Limit, Looks

MARKS = ("full", "ok", "low", "empty", "not_readable")

COOLANT = Item(
    code="coolant",
    words="Coolant",
    part="reception",
    fields=(
        Field("level", "choice", "Level", choices=MARKS),
        Field("freeze_point", "number", "Protects down to", ("F", "C"), -90, 40),
        Field("looks", "choice", "Looks", choices=("even", "dirty", "leaking")),
        Field("changed_on", "date", "Last changed on"),
    ),
    models=(
        Level(AMOUNTS_BELOW_FULL, due_at="low", amount_per_day=1 / 548, log_spread=0.6),
        Looks(),
    ),
    job=Job("top off the coolant", "general", 0.1),
    unit="F",
    falls=False,
    # Half and half protects to -34 F; warmer than the region's winter is due. The region is the shop's setting.
    action_limit=Limit(-20, "F"),
    is_top_off_free=True,
    measured_by=("freeze_point",),
)

WASHER_FLUID = Item(
    code="washer_fluid",
    words="Washer fluid",
    part="reception",
    fields=(Field("level", "choice", "Level", choices=MARKS),),
    models=(Level(AMOUNTS_BELOW_FULL, due_at="low", amount_per_day=1 / 70, log_spread=0.6, winter_factor=70 / 40),),
    job=Job("top off the washer fluid", "general", 0.1),
    is_top_off_free=True,
    measured_by=(),
)

DIESEL_EXHAUST_FLUID = Item(
    code="diesel_exhaust_fluid",
    words="Diesel exhaust fluid",
    part="reception",
    fields=(
        Field("level", "choice", "Level", choices=MARKS),
        Field("range_left", "number", "Range on the display", ("mi", "km"), 0, 30_000),
    ),
    # Share of a tank; a tank lasts about 8,000 mi (from memory).
    models=(
        Level(
            amounts=(("full", 0.0), ("ok", 0.4), ("low", 0.8), ("empty", 1.0)),
            due_at="low",
            amount_per_1000_miles=0.125,
            log_spread=0.4,
        ),
    ),
    job=Job("top off the diesel exhaust fluid", "general", 0.2),
    unit="mi",
    action_limit=Limit(1_000, "mi"),
    powertrains=("diesel",),
    measured_by=("range_left",),
)

ITEMS = (COOLANT, WASHER_FLUID, DIESEL_EXHAUST_FLUID)
