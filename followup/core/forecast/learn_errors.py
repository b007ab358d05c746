"""How exactly a shop reads, from the two sides of an axle that were read on the same day.

The difference of the two sides stays what it is from one visit to the next, but for errors of reading: its changes
tell the reading error, and what is then left of the difference itself is how far mates are apart. A bias of whoever
reads both sides is not seen in it, that the sides wear apart is: on a simulated fleet the two made up for each other.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from scipy.optimize import brentq
from scipy.special import ndtr

from followup.core.forecast.learn_table import WearTable
from followup.core.forecast.season import Array

# Differences beyond so many standard deviations count as if they lay there: a slip of the pen is no error of reading.
_CLIPPED_AT = 2.5
# What a normal variable's square comes to on the mean, so clipped: int of min(z^2, c^2).
_MEAN_CLIPPED_SQUARE = float(
    2 * ndtr(_CLIPPED_AT)
    - 1
    - 2 * _CLIPPED_AT * np.exp(-(_CLIPPED_AT**2) / 2) / np.sqrt(2 * np.pi)
    + 2 * _CLIPPED_AT**2 * ndtr(-_CLIPPED_AT)
)
# The published values count as so many differences of the shop's own.
_PSEUDO_OBSERVATIONS = 20
_LEAST_FACTOR, _MOST_FACTOR = 0.3, 3.0


@dataclass(frozen=True)
class ErrorFactors:
    """How many times the published errors this shop's are; `changes` and `pairs` is what they were learned from."""

    reading_error: float
    mate_error: float
    changes: int
    pairs: int


@dataclass(frozen=True)
class _Pairs:
    """Left less right of one set on one day; variances are those of the difference."""

    of_set: np.ndarray
    difference: Array
    own: Array
    rounding: Array


def learn_errors(table: WearTable) -> ErrorFactors:
    """Reading error and mate error of one item, each drawn towards the published one."""
    pairs = _pairs(table)
    follows = pairs.of_set[1:] == pairs.of_set[:-1]
    own = (pairs.own[1:] + pairs.own[:-1])[follows]
    rounding = (pairs.rounding[1:] + pairs.rounding[:-1])[follows]
    change = (pairs.difference[1:] - pairs.difference[:-1])[follows]
    reading = _shrunk(variance_factor(change, own, rounding), len(change))
    mate = table.mate_error[pairs.of_set] ** 2
    rest = reading * pairs.own + pairs.rounding
    mates = _shrunk(variance_factor(pairs.difference, mate, rest), len(np.unique(pairs.of_set)))
    return ErrorFactors(_as_factor(reading), _as_factor(mates), len(change), len(mate))


def variance_factor(differences: Array, scaled: Array, fixed: Array) -> float:
    """The f for which the differences look like N(0, f scaled + fixed), gross errors clipped; 1 without any.

    Huber's proposal 2 (1964, "Robust Estimation of a Location Parameter"), for a scale in part known.
    """
    if len(differences) == 0:
        return 1.0

    def excess(factor: float) -> float:
        squares = differences**2 / (factor * scaled + fixed)
        return float(np.minimum(squares, _CLIPPED_AT**2).mean()) - _MEAN_CLIPPED_SQUARE

    least, most = _LEAST_FACTOR**2, _MOST_FACTOR**2
    if excess(least) <= 0:
        return least
    return most if excess(most) >= 0 else float(brentq(excess, least, most, xtol=1e-6))


def _shrunk(factor: float, count: int) -> float:
    return (count * factor + _PSEUDO_OBSERVATIONS) / (count + _PSEUDO_OBSERVATIONS)


def _as_factor(variance: float) -> float:
    return float(np.clip(np.sqrt(variance), _LEAST_FACTOR, _MOST_FACTOR))


def _pairs(table: WearTable) -> _Pairs:
    """Both sides of a set on one day, by set and in the order of time."""
    seen = table.observations
    order = np.lexsort((seen.side, -seen.back, seen.of_set))
    order = order[seen.is_reading[order] & (seen.side[order] >= 0)]
    of_set, back, side = seen.of_set[order], seen.back[order], seen.side[order]
    is_pair = (of_set[1:] == of_set[:-1]) & (back[1:] == back[:-1]) & (side[1:] == 1) & (side[:-1] == 0)
    left, right = order[:-1][is_pair], order[1:][is_pair]
    return _Pairs(
        seen.of_set[left],
        seen.value[left] - seen.value[right],
        seen.own[left] + seen.own[right],
        seen.rounding[left] + seen.rounding[right],
    )
