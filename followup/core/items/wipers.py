"""Wiper blades."""

from __future__ import annotations

from followup.core.item import Field, Item, Job, Life, Looks

WIPER_BLADE = Item(
    code="wiper_blade",
    words="Wiper blades",
    part="reception",
    fields=(
        Field("looks", "choice", "Looks", choices=("even", "streaks", "cracked", "dirty")),
        Field("changed_on", "date", "Last changed on"),
    ),
    models=(
        Looks(),
        Life(median_days=274, log_spread=0.35),
    ),
    job=Job("replace the wiper blades", "general", 0.2),
    positions=("front", "rear"),
)

ITEMS = (WIPER_BLADE,)
