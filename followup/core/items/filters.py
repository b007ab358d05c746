"""Filters of the cabin's and the engine's air."""

from __future__ import annotations

from followup.core.item import Field, Item, Job, Life, Looks
from followup.core.vehicle import POWERTRAINS

FIELDS = (
    Field("looks", "choice", "Looks", choices=("even", "dirty")),
    Field("changed_on", "date", "Last changed on"),
    Field("done_odometer", "number", "Odometer then", ("mi", "km"), 0, 2_000_000),
)

CABIN_FILTER = Item(
    code="cabin_filter",
    words="Cabin air filter",
    part="reception",
    fields=FIELDS,
    models=(Looks(), Life(median_days=548, log_spread=0.35, median_miles=15_000)),
    job=Job("replace the cabin air filter", "general", 0.2),
)

ENGINE_AIR_FILTER = Item(
    code="engine_air_filter",
    words="Engine air filter",
    part="reception",
    fields=FIELDS,
    models=(Looks(), Life(median_days=1096, log_spread=0.35, median_miles=25_000)),
    job=Job("replace the engine air filter", "general", 0.2),
    powertrains=tuple(one for one in POWERTRAINS if one != "electric"),
)

ITEMS = (CABIN_FILTER, ENGINE_AIR_FILTER)
