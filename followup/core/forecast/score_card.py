"""All scores of a shop summed up: how many windows held, by item, by number of readings, over time; and drift.

Counts are plain counts; how much they tell allows for what hangs together (`score.effective_count`): a car shows eight
pads and tires on one day, worn by one driver.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Hashable, Sequence
from dataclasses import dataclass
from datetime import date
from itertools import pairwise

import numpy as np

from followup.core.forecast.drift import Drift, find_drift
from followup.core.forecast.forecast_score import Held, KeptScore
from followup.core.forecast.score import brier, calibration_error, chance_range, effective_count, wilson_interval
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


def sum_up(kept: Sequence[KeptScore]) -> ScoreCard:
    """The card of all these scores, which are in the order of time."""
    measured = [one for one in kept if one.score.how == "measured"]
    untold = [one for one in kept if one.score.how in _UNTOLD]
    known = [one for one in measured if one.score.place_at_odometer is not None]
    judged = [one for one in measured if one.score.chance is not None]
    chances = np.array([one.score.chance or 0.0 for one in judged])
    happened = np.array([bool(one.score.was_due) for one in judged])
    days = [one.score.scored_on for one in kept]
    return ScoreCard(
        held=tuple(_held(measured, said) for said in SAID),
        by_wear=_held(known, USUAL, lambda one: one.score.place_at_odometer),
        with_untold=_held([*measured, *untold], USUAL),
        more_worn=sum(_place(one) < (1 - USUAL) / 2 for one in measured),
        less_worn=sum(_place(one) > (1 + USUAL) / 2 for one in measured),
        by_item=tuple(_of_item(item, kept) for item in _in_order({one.score.item for one in kept})),
        by_readings=_parts(measured, lambda one: str(min(one.score.readings_used, _MOST_READINGS))),
        by_quarter=_parts(measured, lambda one: quarter_of(one.score.scored_on).isoformat()),
        as_made=_held([one for one in measured if not one.is_look_back], USUAL),
        looked_back=_held([one for one in measured if one.is_look_back], USUAL),
        texted=_held([one for one in measured if one.is_used], USUAL),
        bands=_bands(judged),
        calibration_error=calibration_error(chances, happened) if judged else None,
        brier=brier(chances, happened) if judged else None,
        drift=_drift(measured),
        endings=dict(Counter(one.score.how for one in kept)),
        since_on=min(days, default=None),
        until_on=max(days, default=None),
    )


def quarter_of(on: date) -> date:
    """The first day of the quarter of a year."""
    return date(on.year, 3 * ((on.month - 1) // 3) + 1, 1)


def _in_order(items: set[str]) -> list[str]:
    """By the catalogue; what is no longer in it comes last."""
    return [*(code for code in BY_CODE if code in items), *sorted(items - set(BY_CODE))]


def _place(one: KeptScore) -> float:
    return 0.5 if one.score.place is None else one.score.place


def _is_held(place: float, said: float) -> bool:
    return (1 - said) / 2 <= place <= (1 + said) / 2


def _held(
    kept: Sequence[KeptScore], said: float, place_of: Callable[[KeptScore], float | None] = lambda one: one.score.place
) -> Held:
    places = [(place, one.visit) for one in kept if (place := place_of(one)) is not None]
    return _counted(said, [_is_held(place, said) for place, _ in places], [visit for _, visit in places])


def _counted(said: float, right: Sequence[bool], visits: Sequence[Hashable]) -> Held:
    flags = np.array(right, dtype=bool)
    worth = effective_count(flags, _numbers(visits))
    share = float(flags.mean()) if right else 0.0
    return Held(said, len(right), sum(right), worth, *wilson_interval(share, worth), *chance_range(said, worth))


def _numbers(names: Sequence[Hashable]) -> np.ndarray:
    known = {name: number for number, name in enumerate(dict.fromkeys(names))}
    return np.array([known[name] for name in names], dtype=int)


def _parts(kept: Sequence[KeptScore], name_of: Callable[[KeptScore], str]) -> tuple[Part, ...]:
    groups: dict[str, list[KeptScore]] = {}
    for one in kept:
        groups.setdefault(name_of(one), []).append(one)
    return tuple(Part(name, _held(groups[name], USUAL)) for name in sorted(groups))


def _of_item(item: str, kept: Sequence[KeptScore]) -> ItemPart:
    mine = [one for one in kept if one.score.item == item]
    measured = [one for one in mine if one.score.how == "measured"]
    looked = [one.score for one in mine if one.score.how in ("measured", "looked_at") and one.score.chance is not None]
    errors = [
        found - expected
        for one in measured
        if (found := one.score.found) is not None and (expected := one.score.expected) is not None
    ]
    crps = [one.score.crps for one in measured if one.score.crps is not None]
    return ItemPart(
        item,
        _held(measured, USUAL) if measured else None,
        float(np.mean(errors)) if errors else None,
        float(np.mean(crps)) if crps else None,
        len(looked),
        sum(bool(one.was_due) for one in looked),
        sum(one.chance or 0.0 for one in looked),
    )


def _bands(judged: Sequence[KeptScore]) -> tuple[ChanceBand, ...]:
    found = []
    for low, high in pairwise(_BANDS):
        inside = [one for one in judged if low <= (one.score.chance or 0.0) < high or (one.score.chance == high == 1.0)]
        if not inside:
            continue
        mean = float(np.mean([one.score.chance or 0.0 for one in inside]))
        was_due = [bool(one.score.was_due) for one in inside]
        found.append(ChanceBand(low, high, _counted(mean, was_due, [one.visit for one in inside])))
    return tuple(found)


def _drift(measured: Sequence[KeptScore]) -> Drift | None:
    """By visits in the order of time: what one car showed on one day is one entry."""
    visits: dict[tuple[int, date], list[float]] = {}
    for one in sorted(measured, key=lambda one: (one.score.scored_on, one.car)):
        visits.setdefault(one.visit, []).append(_place(one))
    held = np.array([np.mean([_is_held(place, USUAL) for place in places]) for places in visits.values()])
    return find_drift([on for _, on in visits], held, np.array([np.mean(places) for places in visits.values()]))
