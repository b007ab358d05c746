"""All scores of a shop summed up: how many windows held, by item, by number of readings, over time; and drift.

Counts are plain counts; how much they tell allows for what hangs together (`score.effective_count`): a car shows eight
pads and tires on one day, worn by one driver.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date
from itertools import pairwise

import numpy as np

from followup.core.forecast.drift import Drift, find_drift
from followup.core.forecast.forecast_score import Held
from followup.core.forecast.score import brier, calibration_error, chance_range, effective_count, wilson_interval
from followup.core.forecast.score_table import ScoreTable
from followup.core.forecast.season import Array
from followup.core.items import BY_CODE

SAID = (0.5, 0.8, 0.9)
USUAL = 0.8
# Chances in bands that a person can tell apart; texts leave from a quarter on unless the shop says otherwise.
_BANDS = (0.0, 0.05, 0.25, 0.5, 0.75, 1.0)
_MOST_READINGS = 4
_UNTOLD = ("seems_changed", "seems_moved")


@dataclass(frozen=True)
class Part:
    """The 80 % windows of one part of all: `name` is an item's code, a number of readings, a quarter's first day."""

    name: str
    held: Held


@dataclass(frozen=True)
class ItemPart:
    """One item. `held`, `mean_error` (found less expected, in its unit), `crps` where it is measured; how often it was
    looked at, found due, and how often that was to be expected."""

    item: str
    held: Held | None
    mean_error: float | None
    crps: float | None
    looked_at: int
    found_due: int
    expected_due: float


@dataclass(frozen=True)
class ChanceBand:
    """Pads and tires with a chance of being found due in [`low`, `high`); `due.said` is their mean chance, `due.held`
    how many were found due."""

    low: float
    high: float
    due: Held


@dataclass(frozen=True)
class ScoreCard:
    """Everything that page and command tell.

    `held` are the 50, 80 and 90 % windows; `by_wear` the 80 % with the distance known; `with_untold` the 80 % with
    those as misses that only untold work explains. `more_worn`, `less_worn` are what the misses of the 80 % were.
    `looked_back`, `as_made`, `texted` are parts of the 80 %: forecast afterwards, when it was due, and under a text.
    `endings` counts windows by how they ended; `since_on`, `until_on` are the first and last reading's day.
    """

    held: tuple[Held, ...]
    by_wear: Held
    with_untold: Held
    more_worn: int
    less_worn: int
    by_item: tuple[ItemPart, ...]
    by_readings: tuple[Part, ...]
    by_quarter: tuple[Part, ...]
    as_made: Held
    looked_back: Held
    texted: Held
    bands: tuple[ChanceBand, ...]
    calibration_error: float | None
    brier: float | None
    drift: Drift | None
    endings: dict[str, int]
    since_on: date | None
    until_on: date | None

    @property
    def usual(self) -> Held:
        """The 80 % windows."""
        return next(one for one in self.held if one.said == USUAL)


def sum_up(scores: ScoreTable) -> ScoreCard:
    """The card of all these scores."""
    measured = scores.only(scores.how == "measured")
    judged = measured.only(~np.isnan(measured.chance))
    places = measured.place
    return ScoreCard(
        held=tuple(_held(measured, said) for said in SAID),
        by_wear=_held(measured, USUAL, measured.place_at_odometer),
        with_untold=_held(scores.only(np.isin(scores.how, ("measured", *_UNTOLD))), USUAL),
        more_worn=int((places < (1 - USUAL) / 2).sum()),
        less_worn=int((places > (1 + USUAL) / 2).sum()),
        by_item=tuple(_of_item(item, scores) for item in _in_order(set(scores.item.tolist()))),
        by_readings=_parts(measured, [str(one) for one in np.minimum(measured.readings, _MOST_READINGS).tolist()]),
        by_quarter=_parts(measured, _quarters(measured.day)),
        as_made=_held(measured.only(~measured.is_look_back), USUAL),
        looked_back=_held(measured.only(measured.is_look_back), USUAL),
        texted=_held(measured.only(measured.is_used), USUAL),
        bands=_bands(judged),
        calibration_error=calibration_error(judged.chance, judged.was_due) if len(judged) else None,
        brier=brier(judged.chance, judged.was_due) if len(judged) else None,
        drift=_drift(measured),
        endings={str(how): int(count) for how, count in zip(*np.unique(scores.how, return_counts=True), strict=True)},
        since_on=date.fromordinal(int(scores.day.min())) if len(scores) else None,
        until_on=date.fromordinal(int(scores.day.max())) if len(scores) else None,
    )


def quarter_of(on: date) -> date:
    """The first day of the quarter of a year."""
    return date(on.year, 3 * ((on.month - 1) // 3) + 1, 1)


def _quarters(days: np.ndarray) -> list[str]:
    known = {day: quarter_of(date.fromordinal(day)).isoformat() for day in set(days.tolist())}
    return [known[day] for day in days.tolist()]


def _in_order(items: set[str]) -> list[str]:
    """By the catalogue; a shop's own items, and what is no longer in it, come last."""
    return [*(code for code in BY_CODE if code in items), *sorted(items - set(BY_CODE))]


def _is_held(places: Array, said: float) -> np.ndarray:
    return np.asarray((places >= (1 - said) / 2) & (places <= (1 + said) / 2))


def _held(scores: ScoreTable, said: float, places: Array | None = None) -> Held:
    places = scores.place if places is None else places
    is_known = ~np.isnan(places)
    return _counted(said, _is_held(places[is_known], said), scores.visit[is_known])


def _counted(said: float, right: np.ndarray, visits: np.ndarray) -> Held:
    worth = effective_count(right, visits)
    share = float(right.mean()) if len(right) else 0.0
    true, by_chance = wilson_interval(share, worth), chance_range(said, worth)
    return Held(said, len(right), int(right.sum()), worth, *true, *by_chance)


def _parts(scores: ScoreTable, names: list[str]) -> tuple[Part, ...]:
    given = np.array(names, dtype=str)
    return tuple(Part(name, _held(scores.only(given == name), USUAL)) for name in sorted(set(names)))


def _of_item(item: str, scores: ScoreTable) -> ItemPart:
    mine = scores.only(scores.item == item)
    measured = mine.only(mine.how == "measured")
    looked = mine.only(np.isin(mine.how, ("measured", "looked_at")) & ~np.isnan(mine.chance))
    return ItemPart(
        item,
        _held(measured, USUAL) if len(measured) else None,
        float(np.mean(measured.found - measured.expected)) if len(measured) else None,
        float(np.mean(measured.crps)) if len(measured) else None,
        len(looked),
        int(looked.was_due.sum()),
        float(looked.chance.sum()),
    )


def _bands(judged: ScoreTable) -> tuple[ChanceBand, ...]:
    found = []
    for low, high in pairwise(_BANDS):
        inside = judged.only((judged.chance >= low) & ((judged.chance < high) | (high == 1.0)))
        if len(inside):
            due = _counted(float(inside.chance.mean()), inside.was_due, inside.visit)
            found.append(ChanceBand(low, high, due))
    return tuple(found)


def _drift(measured: ScoreTable) -> Drift | None:
    """By visits in the order of time: what one car showed on one day is one entry."""
    visit = measured.visit
    size = np.maximum(np.bincount(visit), 1)
    day = np.zeros(len(size), dtype=int)
    day[visit] = measured.day
    held = np.bincount(visit, _is_held(measured.place, USUAL)) / size
    return find_drift([date.fromordinal(one) for one in day.tolist()], held, np.bincount(visit, measured.place) / size)
