"""Was a forecast right? Proper scores, coverage and calibration, and what chance alone does to counts.

A proper score is best, on average, for whoever says what they believe (Gneiting & Raftery 2007, "Strictly Proper
Scoring Rules, Prediction, and Estimation"). Everything acts on arrays; nothing here knows of cars.
"""

from __future__ import annotations

import math

import numpy as np
from scipy.special import ndtr, ndtri

from followup.core.forecast.season import Array


class UnlikeForecasts(ValueError):
    """Forecasts and what came of them do not match: give as many of one as of the other."""


def crps_of_quantiles(levels: Array, quantiles: Array, truth: Array) -> Array:
    """Continuous ranked probability score of each row, in the unit of `truth`: twice the mean pinball loss.

    `levels` (levels,) are chances in (0, 1), evenly spaced as (i + 1/2)/count for the integral over them to hold;
    `quantiles` (rows, levels); `truth` (rows,). Gneiting & Raftery 2007, section 4.2; Laio & Tamea 2007.
    """
    levels, quantiles, truth = np.asarray(levels), np.asarray(quantiles), np.asarray(truth)
    if quantiles.shape != (*truth.shape, len(levels)):
        raise UnlikeForecasts(f"{quantiles.shape} quantiles for {truth.shape} truths at {len(levels)} levels")
    return np.asarray(2 * pinball(levels, quantiles, truth[..., None]).mean(axis=-1))


def pinball(level: Array, quantile: Array, truth: Array) -> Array:
    """Loss of a quantile: `level` a unit where the truth lies above it, 1 - `level` a unit where it lies below."""
    miss = np.asarray(truth) - np.asarray(quantile)
    return np.asarray(np.maximum(level * miss, (level - 1) * miss))


def crps_of_normals(weights: Array, means: Array, spreads: Array, truth: Array) -> Array:
    """Exact CRPS of a mixture of normals a row (rows, parts); `weights` (parts,) sum to 1, `truth` (rows,).

    Grimit, Gneiting, Berrocal & Johnson 2006; with one part it is the normal's of Gneiting & Raftery 2007.
    """
    means, spreads = np.asarray(means), np.asarray(spreads)
    near = _mean_distance(np.asarray(truth)[:, None] - means, spreads)
    apart = _mean_distance(
        means[:, :, None] - means[:, None, :], np.sqrt(spreads[:, :, None] ** 2 + spreads[:, None, :] ** 2)
    )
    return np.asarray(near @ weights - np.einsum("i,nij,j->n", weights, apart, weights) / 2)


def _mean_distance(mean: Array, spread: Array) -> Array:
    """E|X| of a normal."""
    z = mean / spread
    return np.asarray(2 * spread * np.exp(-(z**2) / 2) / math.sqrt(2 * math.pi) + mean * (2 * ndtr(z) - 1))


def coverage(low: Array, high: Array, truth: Array) -> float:
    """Share of the truths within [low, high]; NaN of none."""
    low, high, truth = np.asarray(low), np.asarray(high), np.asarray(truth)
    if not low.shape == high.shape == truth.shape:
        raise UnlikeForecasts(f"{low.shape} lows, {high.shape} highs and {truth.shape} truths")
    return float(((low <= truth) & (truth <= high)).mean()) if truth.size else math.nan


def calibration_error(chances: Array, happened: Array, bins: int = 10) -> float:
    """Expected calibration error: mean over the forecasts of |share that happened - mean chance| in their bin.

    Bins are of equal width in the chance (Naeini, Cooper & Hauskrecht 2015); NaN of none.
    """
    chances, happened = np.asarray(chances, dtype=float), np.asarray(happened, dtype=float)
    if chances.shape != happened.shape:
        raise UnlikeForecasts(f"{chances.shape} chances for {happened.shape} outcomes")
    if not chances.size:
        return math.nan
    place = np.minimum((chances * bins).astype(int), bins - 1)
    apart = np.bincount(place, happened - chances, bins)
    return float(np.abs(apart).sum() / chances.size)


def brier(chances: Array, happened: Array) -> float:
    """Mean squared error of chances (Brier 1950); NaN of none."""
    chances, happened = np.asarray(chances, dtype=float), np.asarray(happened, dtype=float)
    return float(((chances - happened) ** 2).mean()) if chances.size else math.nan


def wilson_interval(share: float, count: float, level: float = 0.95) -> tuple[float, float]:
    """Where the true share may lie, given the share of `count` that was seen (Wilson 1927, by score); (0, 1) of none.

    `count` may be an effective one, below the number of forecasts, where they hang together.
    """
    if count <= 0:
        return 0.0, 1.0
    z2 = float(ndtri((1 + level) / 2)) ** 2
    middle = (share + z2 / (2 * count)) / (1 + z2 / count)
    half = math.sqrt(z2 * (share * (1 - share) + z2 / (4 * count)) / count) / (1 + z2 / count)
    return max(middle - half, 0.0), min(middle + half, 1.0)


def chance_range(share: float, count: float, level: float = 0.95) -> tuple[float, float]:
    """Between which shares chance alone leaves `count` forecasts that are right as often as they say (normal)."""
    if count <= 0:
        return 0.0, 1.0
    half = float(ndtri((1 + level) / 2)) * math.sqrt(share * (1 - share) / count)
    return max(share - half, 0.0), min(share + half, 1.0)


def effective_count(held: Array, groups: Array) -> float:
    """How many independent forecasts these are worth: what one car shows on one day hangs together.

    The count divided by Kish's design effect: the variance of the share between groups (ratio estimator over groups
    of unlike size) over that of as many independent ones; never more than the count, never less than one group's
    worth. With under two groups nothing can be told, and each group counts once.
    """
    held = np.asarray(held, dtype=float)
    _, place = np.unique(np.asarray(groups), return_inverse=True)
    count, number = held.size, int(place.max()) + 1 if held.size else 0
    if number < 2:
        return float(number)
    share = held.mean()
    usual = share * (1 - share) / (count - 1)
    apart = np.bincount(place, held - share)
    between = number / (number - 1) * float((apart**2).sum()) / count**2
    if usual <= 0:
        # All held, or none: no variance to compare; the groups are what was seen.
        return float(number)
    return float(np.clip(count * usual / between if between > 0 else count, 1.0, count))
