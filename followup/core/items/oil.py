"""Engine oil: the service that changes it, and its level in between."""

from __future__ import annotations

from followup.core.item import Field, Interval, Item, Job, Level, Limit, Looks
from followup.core.vehicle import POWERTRAINS

WITH_ENGINE = tuple(one for one in POWERTRAINS if one != "electric")

OIL_SERVICE = Item(
    code="oil_service",
    words="Oil service",
    part="reception",
    fields=(
        Field("done_on", "date", "Last done on"),
        Field("done_odometer", "number", "Odometer then", ("mi", "km"), 0, 2_000_000),
        Field("life_percent", "number", "Oil life on the display", ("percent",), 0, 100),
        Field("due_on", "date", "Due on, by the sticker"),
        Field("due_odometer", "number", "Due at, by the sticker", ("mi", "km"), 0, 2_000_000),
    ),
    # Middle of 5,000-10,000 mi and 6-12 months.
    models=(Interval(days=274, miles=7_500, notice_days=30, notice_miles=500),),
    job=Job("change the oil and its filter", "general", 0.4),
    unit="percent",
    action_limit=Limit(15, "percent"),
    powertrains=WITH_ENGINE,
    measured_by=("life_percent",),
)

ENGINE_OIL = Item(
    code="engine_oil",
    words="Engine oil level",
    part="reception",
    fields=(
        Field("level", "choice", "Level", choices=("full", "ok", "low", "empty", "not_readable")),
        Field("looks", "choice", "Looks", choices=("even", "dirty", "leaking")),
    ),
    # Quarts below full at each mark; 1 qt per 4,000 mi (common practice).
    models=(
        Level(
            amounts=(("full", 0.0), ("ok", 0.4), ("low", 0.9), ("empty", 1.3)),
            due_at="low",
            amount_per_1000_miles=0.25,
            log_spread=0.7,
        ),
        Looks(),
    ),
    job=Job("top off the engine oil", "general", 0.1),
    unit="qt",
    powertrains=WITH_ENGINE,
    is_top_off_free=True,
    measured_by=(),
)

ITEMS = (OIL_SERVICE, ENGINE_OIL)
