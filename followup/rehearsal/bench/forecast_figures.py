"""How right the forecast is on fleets whose truth is known: scores, and the same for the rules of thumb."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from datetime import date

import numpy as np

from followup.core.forecast.due import forecast_cars, worn_axles
from followup.core.forecast.first_of_several import first_of_windows
from followup.core.forecast.history import CarHistory
from followup.core.forecast.priors import PUBLISHED, ShopPriors
from followup.core.forecast.score import calibration_error, coverage, crps_of_quantiles
from followup.core.forecast.season import Array
from followup.core.forecast.window import DueWindow
from followup.rehearsal.bench.naive_rules import RULES, Seen, fitted_bands, points_of, seen_by_rules, with_bands
from followup.rehearsal.fleet.build import Fleet, Key
from followup.rehearsal.fleet.living import HORIZON_DAYS

LEVELS: Array = (np.arange(50) + 0.5) / 50
# Bounds of the 50, 80 and 90 % windows, the median, and the quantile that a text goes by.
_BOUNDS = (0.05, 0.10, 0.20, 0.25, 0.50, 0.75, 0.90, 0.95)
WINDOWS = {50: (0.25, 0.75), 80: (0.10, 0.90), 90: (0.05, 0.95)}
_LATE_BY, _SENT_AHEAD_DAYS = 0.20, 14
# Beyond it a truth is not followed, and a forecast not asked.
_FAR = 20_000
SOON_DAYS = 730


@dataclass(frozen=True)
class FirstJudged:
    """The first item of each car (rows): truth, quantiles at the bounds of the 80 % window and the median.

    `apart` are the same as if the items of a car had nothing in common.
    """

    truth: Array
    together: Array
    apart: Array

    def held(self, quantiles: Array) -> float:
        """Share of the truths within the 80 % window, of cars likely due within two years by these quantiles."""
        soon = quantiles[:, 1] < SOON_DAYS
        return coverage(quantiles[soon, 0], quantiles[soon, 2], self.truth[soon])


@dataclass(frozen=True)
class Judged:
    """Items of one fleet (rows): truth, our quantiles at `LEVELS` and at the bounds, chances within so many days."""

    keys: tuple[Key, ...]
    truth: Array
    quantiles: Array
    at: dict[float, Array]
    chances: dict[int, Array]
    first: FirstJudged

    @property
    def is_soon(self) -> np.ndarray:
        """Where the forecast itself says that it is likely due within two years."""
        return np.asarray(self.at[0.50] < SOON_DAYS)

    @property
    def crps(self) -> Array:
        """Days, a row."""
        return crps_of_quantiles(LEVELS, self.quantiles, self.truth)


def judge(fleet: Fleet, histories: Sequence[CarHistory], priors: ShopPriors = PUBLISHED) -> Judged:
    """Forecast every car as of its last visit and lay the truth beside it; both end at the horizon."""
    asked = (*(float(level) for level in LEVELS), *_BOUNDS)
    windows = forecast_cars(histories, "last", horizon_days=_FAR, quantiles=asked, priors=priors)
    known = [one for one in windows if (one.vehicle, one.item, one.position) in fleet.due_days]
    keys = tuple((one.vehicle, one.item, one.position) for one in known)
    days = np.array([[np.inf if day is None else day for _, day in one.quantiles] for one in known])
    days = np.minimum(days, HORIZON_DAYS)
    chances = np.array([[chance for _, chance in one.chances] for one in known])
    within = [asked_days for asked_days, _ in known[0].chances]
    return Judged(
        keys,
        np.array([fleet.due_days[key] for key in keys]),
        days[:, : len(LEVELS)],
        {bound: days[:, len(LEVELS) + place] for place, bound in enumerate(_BOUNDS)},
        {asked_days: chances[:, place] for place, asked_days in enumerate(within)},
        _first_of(known, fleet),
    )


def _first_of(windows: Sequence[DueWindow], fleet: Fleet) -> FirstJudged:
    first, cars = first_of_windows(windows)
    truth = dict.fromkeys(cars, np.inf)
    for (car, _, _), days in fleet.due_days.items():
        truth[car] = min(truth.get(car, np.inf), days)
    alone = replace(first, shared=np.zeros(len(first.shared)))
    together, apart = (
        np.stack([np.minimum(one.quantile(chance), HORIZON_DAYS) for chance in (0.1, 0.5, 0.9)], axis=1)
        for one in (first, alone)
    )
    return FirstJudged(np.array([truth[car] for car in cars]), together, apart)


def joined(parts: Sequence[Judged]) -> Judged:
    """Several fleets as one."""
    return Judged(
        tuple(key for part in parts for key in part.keys),
        np.concatenate([part.truth for part in parts]),
        np.concatenate([part.quantiles for part in parts]),
        {bound: np.concatenate([part.at[bound] for part in parts]) for bound in parts[0].at},
        {days: np.concatenate([part.chances[days] for part in parts]) for days in parts[0].chances},
        FirstJudged(
            np.concatenate([part.first.truth for part in parts]),
            np.concatenate([part.first.together for part in parts]),
            np.concatenate([part.first.apart for part in parts]),
        ),
    )


def coverage_of(judged: Judged, percent: int, rows: np.ndarray) -> float:
    """Share of the truths within the window of so many percent."""
    low, high = WINDOWS[percent]
    return coverage(judged.at[low][rows], judged.at[high][rows], judged.truth[rows])


def late_share(judged: Judged, rows: np.ndarray) -> float:
    """Share of items that were due before a text sent two weeks ahead of the 20 % point."""
    sent = np.maximum(judged.at[_LATE_BY] - _SENT_AHEAD_DAYS, 0.0)
    return float((sent > judged.truth)[rows].mean())


def calibration_of(judged: Judged, days: int) -> float:
    """Expected calibration error of the chance of being due within so many days, all items."""
    return calibration_error(judged.chances[days], (judged.truth <= days).astype(float))


class Rules:
    """The rules of thumb, with bands fitted on one fleet, to be asked of others."""

    def __init__(self, fleet: Fleet, histories: Sequence[CarHistory]) -> None:
        seen = seen_by_rules(fleet, histories)
        truth, visits = np.array(list(fleet.due_days.values())), _visits(seen)
        self._bands = {
            name: fitted_bands(points_of(rule, seen, HORIZON_DAYS), truth, visits, LEVELS)
            for name, rule in RULES.items()
        }

    def crps(
        self, fleet: Fleet, histories: Sequence[CarHistory], keys: Sequence[Key]
    ) -> dict[str, tuple[Array, Array]]:
        """By rule: CRPS with band and of the point alone, rows in the order of `keys`."""
        all_seen = seen_by_rules(fleet, histories)
        seen = {key: all_seen[key] for key in keys}
        truth, visits = np.array([fleet.due_days[key] for key in keys]), _visits(seen)
        found = {}
        for name, rule in RULES.items():
            points = points_of(rule, seen, HORIZON_DAYS)
            quantiles = with_bands(points, visits, self._bands[name], HORIZON_DAYS)
            found[name] = (crps_of_quantiles(LEVELS, quantiles, truth), np.abs(points - truth))
        return found


def _visits(seen: dict[Key, Seen]) -> np.ndarray:
    return np.array([one.visits for one in seen.values()])


@dataclass(frozen=True)
class ResetsFound:
    """Of pairs of readings: untold replacements (how many, how many of them seen), and pairs where nothing was done."""

    replaced: int
    seen: int
    unchanged: int
    alarms: int


def resets_found(fleet: Fleet, histories: Sequence[CarHistory], item: str) -> ResetsFound:
    """How many untold replacements of that item were seen in the readings, and how many were seen where none was."""
    seen_on = {
        (axle.car.history.vehicle.code, axle.sides[0].position.split("_")[0], date.fromordinal(int(one.since_day)))
        for axle in worn_axles(histories, "last")
        if axle.item.code == item
        for one in axle.sets
        if one.since_how == "seen" and one.since_day is not None
    }
    untold = [one for one in fleet.pairs if one.item == item and one.did == "replaced" and not one.is_told]
    calm = [one for one in fleet.pairs if one.item == item and not one.did]
    return ResetsFound(
        len(untold),
        sum((one.car, one.axle, one.after) in seen_on for one in untold),
        len(calm),
        sum((one.car, one.axle, one.after) in seen_on for one in calm),
    )
