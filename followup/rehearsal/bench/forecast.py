"""`followup bench forecast`: how right and how fast the forecast is, beside rules of thumb, in one run."""

from __future__ import annotations

import math
from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace

import numpy as np

from followup.core.forecast.history import CarHistory
from followup.core.forecast.learn import learn
from followup.core.forecast.priors import EVERY, PUBLISHED, ShopPriors, WearLesson
from followup.rehearsal.bench.figures import Figure, at_least, at_most, beside, within
from followup.rehearsal.bench.forecast_figures import (
    WINDOWS,
    Judged,
    ResetsFound,
    Rules,
    calibration_of,
    coverage_of,
    joined,
    judge,
    late_share,
    resets_found,
)
from followup.rehearsal.bench.forecast_speed import Speed, measure_speed
from followup.rehearsal.fleet.build import Fleet, build_fleet
from followup.rehearsal.fleet.habits import AS_PUBLISHED, DIFFERING

Progress = Callable[[int], object]
# One fleet to fit the bands of the rules of thumb on, three to be judged by.
_FLEETS = 3
# Shops that differ: so many, each learning from so many cars.
_SHOPS, _SHOP_CARS = 3, 300
# How such a shop truly is, which none can know: what there is to be learned at all.
_AS_IT_IS = ShopPriors(
    replace(
        PUBLISHED.usage,
        log_miles_per_day=PUBLISHED.usage.log_miles_per_day
        + math.log(DIFFERING.driving.median_miles_a_year / AS_PUBLISHED.driving.median_miles_a_year),
    ),
    (
        WearLesson(
            "tire_tread",
            ((EVERY, math.log(DIFFERING.tires.pace)),),
            reading_error=DIFFERING.tread_read.error / AS_PUBLISHED.tread_read.error,
        ),
        WearLesson(
            "brake_pad",
            ((EVERY, math.log(DIFFERING.pads.pace)),),
            reading_error=DIFFERING.pads_read.error / AS_PUBLISHED.pads_read.error,
        ),
    ),
)
_SOON = "likely < 730 d"
_ECE = {90: 0.010, 180: 0.013, 365: 0.018}
_COVERAGE = {50: 4.0, 80: 4.0, 90: 3.5}
_ITEM_WORDS = {"tire_tread": "tires", "brake_pad": "pads"}
_RECALL = {"tire_tread": 0.90, "brake_pad": 0.95}
_ALARMS = {"tire_tread": 0.04, "brake_pad": 0.015}


@dataclass(frozen=True)
class Asked:
    """How many cars a fleet, and the first seed: fleets take the seeds that follow."""

    cars: int
    seed: int

    @property
    def steps(self) -> int:
        """How often `progress` is told of one car."""
        return 2 * self.cars * (_FLEETS + 1) + _SHOPS * (2 * _SHOP_CARS + 2 * self.judged_by)

    @property
    def judged_by(self) -> int:
        """How many other cars of a differing shop its own priors are judged by."""
        return self.cars // _SHOPS


def bench_forecast(asked: Asked, progress: Progress) -> list[Figure]:
    """The whole table."""
    rules = Rules(*_lived(asked.cars, asked.seed, progress))
    progress(asked.cars)
    judged: list[Judged] = []
    by_rule: list[dict[str, tuple[np.ndarray, np.ndarray]]] = []
    resets: list[dict[str, ResetsFound]] = []
    histories: list[CarHistory] = []
    for number in range(_FLEETS):
        fleet, histories = _lived(asked.cars, asked.seed + 1 + number, progress)
        judged.append(judge(fleet, histories))
        by_rule.append(rules.crps(fleet, histories, judged[-1].keys))
        resets.append({item: resets_found(fleet, histories, item) for item in _ITEM_WORDS})
        progress(asked.cars)
    ours = joined(judged)
    banded = {name: [np.concatenate([one[name][place] for one in by_rule]) for place in (0, 1)] for name in by_rule[0]}
    return [
        *_scores(ours, banded),
        *_honesty(ours),
        *_resets(resets),
        *_differing_shop(asked, progress),
        *_speed(measure_speed(histories)),
    ]


def _lived(cars: int, seed: int, progress: Progress) -> tuple[Fleet, list[CarHistory]]:
    fleet = build_fleet(AS_PUBLISHED, cars, seed, progress)
    return fleet, fleet.histories()


def _scores(ours: Judged, rules: dict[str, list[np.ndarray]]) -> list[Figure]:
    everyone, soon = np.ones(len(ours.truth), dtype=bool), ours.is_soon
    figures = [beside("items, all", len(ours.truth), 0), at_least("items likely within 730 d", soon.sum(), 20_000, 0)]
    for words, rows, bar in (("all", everyone, 0.55), (_SOON, soon, 0.50)):
        own = float(ours.crps[rows].mean())
        figures.append(beside(f"CRPS of ours, {words}", own, 1, " d"))
        best = np.inf
        for name, (with_band, point) in rules.items():
            figures.append(beside(f"CRPS of {name}, with fitted band, {words}", float(with_band[rows].mean()), 1, " d"))
            figures.append(beside(f"  its point alone, {words}", float(point[rows].mean()), 1, " d"))
            best = min(best, float(with_band[rows].mean()))
        figures.append(at_most(f"CRPS of ours over the best rule's, {words}", own / best, bar))
    return figures


def _honesty(ours: Judged) -> list[Figure]:
    """Coverage, calibration, lateness."""
    soon = ours.is_soon
    figures = [
        within(
            f"{percent} % windows hold, likely < 730 d", 100 * coverage_of(ours, percent, soon), percent, apart, 1, " %"
        )
        for percent, apart in _COVERAGE.items()
    ]
    assert set(_COVERAGE) == set(WINDOWS)
    figures += [
        at_most(f"calibration error, due within {days} d", calibration_of(ours, days), bar, 4)
        for days, bar in _ECE.items()
    ]
    figures.append(
        at_most("late: due before the text at P20 - 14 d, likely < 730 d", 100 * late_share(ours, soon), 20, 1, " %")
    )
    first = ours.first
    return [
        *figures,
        beside("first item of a car, 80 % windows hold", 100 * first.held(first.together), 1, " %"),
        beside("  the same as if its items had nothing in common", 100 * first.held(first.apart), 1, " %"),
    ]


def _resets(resets: Sequence[dict[str, ResetsFound]]) -> list[Figure]:
    figures = []
    for item, words in _ITEM_WORDS.items():
        found = [one[item] for one in resets]
        recall = sum(one.seen for one in found) / sum(one.replaced for one in found)
        alarms = sum(one.alarms for one in found) / sum(one.unchanged for one in found)
        figures.append(at_least(f"untold replacements found, {words}", recall, _RECALL[item]))
        figures.append(
            at_most(f"false alarms among unchanged pairs, {words}", 100 * alarms, 100 * _ALARMS[item], 2, " %")
        )
    return figures


def _differing_shop(asked: Asked, progress: Progress) -> list[Figure]:
    """Shops whose cars wear and drive unlike the published: own priors, learned from few cars, judged by others."""
    published, fitted, told = [], [], []
    kept = 0
    for number in range(_SHOPS):
        seed = asked.seed + 100 + 2 * number
        own = build_fleet(DIFFERING, _SHOP_CARS, seed, progress)
        learned = learn(own.histories())
        kept += learned.priors != PUBLISHED
        progress(_SHOP_CARS)
        fleet = build_fleet(DIFFERING, asked.judged_by, seed + 1, progress)
        histories = fleet.histories()
        published.append(judge(fleet, histories))
        fitted.append(judge(fleet, histories, learned.priors))
        told.append(judge(fleet, histories, _AS_IT_IS))
        progress(asked.judged_by)
    before, after, best = joined(published), joined(fitted), joined(told)
    gain = 100 * (1 - float(after.crps.mean() / before.crps.mean()))
    return [
        beside(f"shops that differ, of {_SHOP_CARS} cars, that kept what they learned", kept, 0),
        beside("  CRPS with published priors", float(before.crps.mean()), 1, " d"),
        beside("  CRPS with their own", float(after.crps.mean()), 1, " d"),
        at_least("  CRPS lower by", gain, 12, 1, " %"),
        beside("  CRPS of a shop that is told how its cars truly are", float(best.crps.mean()), 1, " d"),
        beside(
            "  80 % windows hold, published, likely < 730 d", 100 * coverage_of(before, 80, before.is_soon), 1, " %"
        ),
        beside("  80 % windows hold, own, likely < 730 d", 100 * coverage_of(after, 80, after.is_soon), 1, " %"),
    ]


def _speed(speed: Speed) -> list[Figure]:
    return [
        at_least("items a second on one core, forecast only", speed.forecast_only, 400_000, 0),
        at_least("items a second on one core, whole batch", speed.whole_batch, 150_000, 0),
        beside("items a second, loop of numpy.polyfit", speed.polyfit_loop, 0),
        beside("forecast only over the loop", speed.forecast_only / speed.polyfit_loop, 1, " x"),
    ]
