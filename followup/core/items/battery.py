"""The 12 V battery, which electric cars have too."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

from followup.core.item import AsFound, Field, Item, Job, Life, Limit, Looks


def share_of_rating(entered: Mapping[str, Any]) -> float | None:
    """Measured cold-cranking amperes in percent of the rated ones; None where one of the two is missing."""
    cca, rated = entered.get("cca"), entered.get("cca_rated")
    return 100 * cca / rated if cca is not None and rated else None


BATTERY = Item(
    code="battery",
    words="12 V battery",
    part="reception",
    fields=(
        Field("verdict", "choice", "The tester says", choices=("good", "recharge", "replace")),
        Field("cca", "number", "Cold-cranking amperes, measured", ("A",), 0, 2000),
        Field("cca_rated", "number", "Cold-cranking amperes, rated", ("A",), 100, 2000),
        Field("volts", "number", "Voltage at rest", ("V",), 0, 20),
        Field("looks", "choice", "Looks", choices=("even", "dirty", "cracked", "leaking")),
        Field("changed_on", "date", "Last replaced on"),
    ),
    models=(
        AsFound(("good", "recharge", "replace"), ("replace",), field="verdict"),
        # Under 80 % of its rating a year and a half less is expected; at the action limit it is due now.
        Life(median_days=4.5 * 365.25, log_spread=0.35, weak_below=80, weak_shift_days=-548),
        Looks(),
    ),
    job=Job("replace the 12 V battery", "electric", 0.4),
    unit="percent",
    action_limit=Limit(75, "percent"),
    measured_by=(),
    measure=share_of_rating,
)

ITEMS = (BATTERY,)
