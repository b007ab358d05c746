"""How fast an item wears and how much of it is left: the history of readings, weighed against what is usual.

One row is one item on one car. Distances are in thousand miles and counted backwards from the car's last odometer
reading ("the end"), values in the item's own unit (32nds of an inch, mm), the log rate is the natural log of the unit
per thousand miles. Three explanations of a history compete: the set was put on at an unknown time, it is the first set
the car ever had, or the older readings belong to another set.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np

from followup.core.forecast.season import Array

# Chance that a first set was replaced early, and that the older readings belong to another set (assumptions).
EARLY_REPLACEMENT = 0.03
VOID_READINGS = 0.03
# A reading of another set may show anything in so many units.
VALUE_RANGE = 12.0
# Variance added to what is left: the operator's own bias and wear that is not quite straight (fitted on a
# simulated fleet; Brenner, Scheiner & Kondo 1975 found tread depth against miles a straight line to 1 %).
STRAIGHTNESS_VARIANCE = 0.18
UNKNOWN_INSTALL, ORIGINAL, VOID = 0, 1, 2
_NODES = np.array([0.0, -np.sqrt(3.0), np.sqrt(3.0)])
_LOG_NODE_WEIGHTS = np.log(np.array([2 / 3, 1 / 6, 1 / 6]))
_NEVER = -1e9


@dataclass(frozen=True)
class WearSums:
    """Weighted sums of a history (rows,), all that the wear model needs of it.

    `weight` is the sum of 1/variance, `distance` and `value` the weighted means, `spread` the weighted sum of squares
    of distance about its mean, `slope_sum` that of distance times value: slope_sum / spread is the least-squares wear
    rate.
    """

    weight: Array
    distance: Array
    value: Array
    spread: Array
    slope_sum: Array


@dataclass(frozen=True)
class WearBelief:
    """Joint normal of the log wear rate and the value at the end, with the chance of each explanation (rows, 3)."""

    log_rate: Array
    log_rate_variance: Array
    value: Array
    value_variance: Array
    covariance: Array
    chances: Array


@dataclass(frozen=True)
class WearRows:
    """All that one forecast needs, a row an item: sums, the last reading, the prior.

    `original_distance` is how long ago (thousand miles) the car was new, `first_distance` its odometer at the first
    reading; both matter only where `may_be_original`. `new_value`, `new_spread` are of a new part, `replaced_at`,
    `replaced_spread` the value at which parts are usually replaced.
    """

    sums: WearSums
    last_weight: Array
    last_value: Array
    last_distance: Array
    may_be_original: np.ndarray
    original_distance: Array
    first_distance: Array
    new_value: Array
    new_spread: Array
    replaced_at: Array
    replaced_spread: Array


def sum_up(row: np.ndarray, distance: Array, value: Array, variance: Array, rows: int) -> WearSums:
    """Sums per row of readings at `distance` thousand miles before the end (>= 0), with their variances.

    Distances are counted from the end before they are summed, so that nothing cancels.
    """
    share = 1 / variance

    def total(weights: Array) -> Array:
        return np.bincount(row, weights, minlength=rows).astype(float)

    weight = np.maximum(total(share), 1e-12)
    mean_distance = total(share * distance) / weight
    mean_value = total(share * value) / weight
    spread = np.maximum(total(share * distance**2) - weight * mean_distance**2, 0.0)
    slope_sum = total(share * distance * value) - weight * mean_distance * mean_value
    return WearSums(weight, mean_distance, mean_value, spread, slope_sum)


def with_reading(sums: WearSums, distance: Array, value: Array, spread: Array) -> WearSums:
    """The sums with one reading more, `distance` before the end, of standard deviation `spread`."""
    extra = 1 / spread**2
    weight = sums.weight + extra
    lever = sums.weight * extra / weight
    away = distance - sums.distance
    return WearSums(
        weight,
        (sums.weight * sums.distance + extra * distance) / weight,
        (sums.weight * sums.value + extra * value) / weight,
        sums.spread + lever * away**2,
        sums.slope_sum + lever * away * (value - sums.value),
    )


def likeliest_log_rate(spread: Array, slope_sum: Array, mean: Array, variance: Array) -> tuple[Array, Array]:
    """Mode of the log rate and the variance of the normal around it; three Newton steps are enough."""
    slope = slope_sum / np.maximum(spread, 1e-12)
    is_telling = slope > 0.15 * np.exp(mean)
    precision = np.where(is_telling, slope_sum**2 / np.maximum(spread, 1e-12), 0.0)
    log_slope = np.log(np.where(is_telling, slope, 1.0))
    log_rate = (precision * log_slope + mean / variance) / (precision + 1 / variance)
    for _ in range(3):
        rate = np.exp(log_rate)
        gradient = (spread * rate - slope_sum) * rate + (log_rate - mean) / variance
        curvature = spread * rate**2 + 1 / variance
        log_rate = log_rate - np.clip(gradient / curvature, -0.7, 0.7)
    rate = np.exp(log_rate)
    bend = np.maximum((spread * rate - slope_sum) * rate, -spread * rate**2 / 2)
    return log_rate, 1 / np.maximum(spread * rate**2 + bend + 1 / variance, 0.25 / variance)


def _explained(
    searched: WearSums, mean: Array, variance: Array, log_likelihood: Callable[[Array], Array]
) -> tuple[Array, Array, Array]:
    """Log evidence, mean and variance of the log rate by Gauss-Hermite nodes around the mode of `searched`."""
    mode, around = likeliest_log_rate(searched.spread, searched.slope_sum, mean, variance)
    step = np.sqrt(around)
    log_rates = mode[None, :] + step[None, :] * _NODES[:, None]
    logs = np.stack([log_likelihood(np.exp(log_rate)) for log_rate in log_rates])
    logs = logs - (log_rates - mean) ** 2 / (2 * variance) + (_NODES**2 / 2 + _LOG_NODE_WEIGHTS)[:, None]
    top = logs.max(axis=0)
    shares = np.exp(logs - top)
    total = shares.sum(axis=0)
    shares = shares / total
    found = (shares * log_rates).sum(axis=0)
    found_variance = np.maximum((shares * (log_rates - found) ** 2).sum(axis=0), 1e-5)
    return top + np.log(total) + np.log(step) - 0.5 * np.log(variance), found, found_variance


def _chance_still_original(rows: WearRows, rate: Array) -> Array:
    """Chance that the first set was still on at the first reading: a logistic curve in place of the normal one."""
    scale = np.sqrt(rows.new_spread**2 + rows.replaced_spread**2)
    score = (rows.new_value - rows.replaced_at - rate * rows.first_distance) / scale
    return np.asarray((1 - EARLY_REPLACEMENT) / (1 + np.exp(-np.clip(1.702 * score, -50, 50))))


def _straight_line(sums: WearSums, rate: Array) -> Array:
    spread = np.where(sums.spread > 1e-9, sums.spread, 0.0)
    slope = sums.slope_sum / np.maximum(sums.spread, 1e-12)
    return np.asarray(-spread * (rate - slope) ** 2 / 2)


def explanations(rows: WearRows, mean: Array, variance: Array) -> tuple[Array, Array, Array]:
    """Log evidence, log rate and its variance under each explanation, arrays (3, rows).

    `mean`, `variance` are the prior of the log rate.
    """
    sums = rows.sums
    original = with_reading(sums, rows.original_distance, rows.new_value, rows.new_spread)
    log_range = np.log(np.maximum(rows.new_value - rows.replaced_at + 0.5, 0.5))
    new_variance = rows.new_spread**2 + 1 / sums.weight

    def unknown_install(rate: Array) -> Array:
        not_original = np.log1p(-_chance_still_original(rows, rate)) - log_range
        return _straight_line(sums, rate) + np.where(rows.may_be_original, not_original, 0.0)

    def is_original(rate: Array) -> Array:
        miss = sums.value + rate * (rows.original_distance - sums.distance) - rows.new_value
        fit = -(miss**2) / (2 * new_variance) - 0.5 * np.log(2 * np.pi * new_variance)
        return _straight_line(sums, rate) + np.log(_chance_still_original(rows, rate)) + fit

    first = _explained(sums, mean, variance, unknown_install)
    second = _explained(original, mean, variance, is_original)
    last_variance = np.maximum(1 / rows.last_weight, 0.05)
    void = (
        np.log(VOID_READINGS / VALUE_RANGE)
        - np.log(1 - VOID_READINGS)
        + 0.5 * np.log(4 * np.pi * last_variance)
        - np.where(rows.may_be_original, log_range, 0.0)
    )
    evidence = np.stack(
        [
            first[0],
            np.where(rows.may_be_original, second[0], _NEVER),
            np.where(sums.spread > 1e-9, void, _NEVER),
        ]
    )
    return evidence, np.stack([first[1], second[1], mean]), np.stack([first[2], second[2], variance])


def chances_of(evidence: Array) -> Array:
    """The chance of each explanation from its log evidence, arrays (3, rows)."""
    share = np.exp(np.clip(evidence - evidence.max(axis=0), -50, 0)) * (evidence > _NEVER / 2)
    return np.asarray(share / share.sum(axis=0))


def believe(
    rows: WearRows,
    mean: Array,
    variance: Array,
    chances: Array | None = None,
    straightness_variance: float | Array = STRAIGHTNESS_VARIANCE,
) -> WearBelief:
    """Log rate and value at the end over all explanations, by their moments.

    `chances` (3, rows) replaces the row's own: both sides of an axle share those of the axle.
    """
    evidence, log_rate, log_rate_variance = explanations(rows, mean, variance)
    chances = chances_of(evidence) if chances is None else chances
    sums = rows.sums
    original = with_reading(sums, rows.original_distance, rows.new_value, rows.new_spread)
    weight = np.stack([sums.weight, original.weight, rows.last_weight])
    worn = np.exp(log_rate) * np.stack([sums.distance, original.distance, rows.last_distance])
    value = np.stack([sums.value, original.value, rows.last_value]) - worn
    value_variance = 1 / weight + worn**2 * log_rate_variance + straightness_variance
    covariance = -worn * log_rate_variance
    mean_rate = (chances * log_rate).sum(axis=0)
    mean_value = (chances * value).sum(axis=0)
    return WearBelief(
        mean_rate,
        np.maximum((chances * (log_rate_variance + log_rate**2)).sum(axis=0) - mean_rate**2, 1e-5),
        mean_value,
        np.maximum((chances * (value_variance + value**2)).sum(axis=0) - mean_value**2, 1e-4),
        (chances * (covariance + log_rate * value)).sum(axis=0) - mean_rate * mean_value,
        chances,
    )
