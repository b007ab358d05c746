"""Things that work or do not on the day: lights, leaks, suspension play, windshield, exhaust. No forecast."""

from __future__ import annotations

from typing import Literal

from followup.core.item import AsFound, Field, Item, Job
from followup.core.vehicle import CORNERS, POWERTRAINS


def _as_found(
    code: str,
    words: str,
    job: Job,
    states: tuple[str, ...],
    due_now: tuple[str, ...],
    *,
    part: Literal["reception", "lift"] = "lift",
    positions: tuple[str, ...] = ("",),
    powertrains: tuple[str, ...] = POWERTRAINS,
    looks: tuple[str, ...] = ("even", "cracked", "leaking", "dirty"),
) -> Item:
    fields = (
        Field("found_as", "choice", "Found", choices=states),
        Field("looks", "choice", "Looks", choices=looks),
    )
    return Item(
        code=code,
        words=words,
        part=part,
        fields=fields,
        models=(AsFound(states, due_now),),
        job=job,
        positions=positions,
        powertrains=powertrains,
        is_brakes_or_tires=False,
    )


ITEMS = (
    _as_found(
        "lights",
        "Lights",
        Job("mend the lights", "electric", 0.3),
        ("works", "dim", "does_not_work"),
        ("does_not_work",),
        part="reception",
    ),
    _as_found(
        "leaks", "Leaks underneath", Job("find the leak", "general", 0.5), ("dry", "damp", "dripping"), ("dripping",)
    ),
    _as_found(
        "suspension_play",
        "Suspension play",
        Job("look closer at the suspension", "general", 0.5),
        ("tight", "some_play", "loose"),
        ("loose",),
        positions=CORNERS,
    ),
    # What is changed is seen by the label of the set; here stands where the other one is.
    _as_found(
        "set_change",
        "Other set of tires",
        Job("change to the other set of tires", "tires", 0.6),
        ("stored_here", "with_customer", "none", "to_be_changed"),
        ("to_be_changed",),
        looks=("even", "cracked"),
        part="reception",
    ),
    _as_found(
        "windshield",
        "Windshield",
        Job("mend or replace the windshield", "general", 1.0),
        ("clear", "chip", "crack", "crack_in_view"),
        ("crack_in_view",),
        part="reception",
    ),
    _as_found(
        "exhaust",
        "Exhaust",
        Job("mend the exhaust", "general", 0.8),
        ("tight", "rusty", "leaking", "loose"),
        ("leaking", "loose"),
        powertrains=tuple(one for one in POWERTRAINS if one != "electric"),
    ),
)
