"""Belts and hoses of the engine."""

from __future__ import annotations

from followup.core.item import AsFound, Field, Interval, Item, Job
from followup.core.vehicle import POWERTRAINS

WITH_ENGINE = tuple(one for one in POWERTRAINS if one != "electric")
STATES = ("works", "worn", "does_not_work")

TIMING_BELT = Item(
    code="timing_belt",
    words="Timing belt",
    part="lift",
    # Never by its looks: it is behind a cover. The maker's miles and years only; the middle of 60,000-100,000 mi.
    fields=(
        Field("done_on", "date", "Last replaced on"),
        Field("done_odometer", "number", "Odometer then", ("mi", "km"), 0, 2_000_000),
        Field("due_odometer", "number", "Due at, by the maker", ("mi", "km"), 0, 2_000_000),
        Field("due_on", "date", "Due on, by the maker"),
    ),
    models=(Interval(days=8 * 365.25, miles=80_000, notice_days=90, notice_miles=3_000),),
    job=Job("replace the timing belt", "general", 4.0),
    powertrains=WITH_ENGINE,
)


def _belt_or_hose(code: str, words: str, work: str) -> Item:
    return Item(
        code=code,
        words=words,
        part="lift",
        fields=(
            Field("found_as", "choice", "Found", choices=STATES),
            Field("looks", "choice", "Looks", choices=("even", "cracked", "leaking")),
        ),
        models=(AsFound(STATES, due_now=("does_not_work",)),),
        job=Job(work, "general", 0.7),
        powertrains=WITH_ENGINE,
    )


DRIVE_BELT = _belt_or_hose("drive_belt", "Drive belt", "replace the drive belt")
HOSES = _belt_or_hose("hoses", "Hoses", "replace the hoses found")

ITEMS = (TIMING_BELT, DRIVE_BELT, HOSES)
