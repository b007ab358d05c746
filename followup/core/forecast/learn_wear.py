"""How fast things wear at a shop: EM over the wear rates of sets of parts.

Sets that were replaced speak too, by having been replaced: those that are read again are the ones that wear slowly, and
leaving the others out would make everything seem to last.

The log rate of a set is the published one, plus a correction for each of its traits, plus what is its driver's
(between cars) and its own (between items). Only slopes speak here, never how much is left of what may be the first set:
whether it is the first is itself judged by the rate, and such a rate would confirm itself.

Both hidden parts live on grids. A step of EM widens the model by a mean of the driver's part and folds it back into
the corrections (Liu, Rubin & Wu 1998, "Parameter Expansion to Accelerate EM"): plain EM would creep.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from scipy.special import ndtr

from followup.core.forecast.learn_errors import ErrorFactors
from followup.core.forecast.learn_table import Ends, WearTable
from followup.core.forecast.priors import EVERY
from followup.core.forecast.season import Array
from followup.core.forecast.wear import WearSums, sum_up

# Log rate less the usual one, and the driver's part of it.
_RATES: Array = np.linspace(-2.1, 1.8, 66)
_DRIVERS: Array = np.linspace(-1.2, 1.2, 41)
# A set whose slope is known worse than this (spread times the usual rate squared) tells nothing.
_LEAST_KNOWN = 0.5
# So many slopes are of something else: an untold rotation, a slip of the pen. They may lie anywhere within twice the
# usual rate.
_BROAD_SHARE, _BROAD_RATES = 0.04, 2.0
# A part may be replaced without being worn: an accident, another wheel, a careful owner (assumption).
_REPLACED_ANYWAY = 0.10
# The published spreads count as so many cars, and sets, of the shop's own.
_PSEUDO_OBSERVATIONS = 50
# How far a shop's corrections lie from nothing (log standard deviations, assumptions): everything it reads, an axle,
# an axle of other cars, a class of car or a powertrain.
_CORRECTION_SPREADS = {EVERY: 0.30, "axle": 0.08, "driven": 0.06, "class": 0.06, "powertrain": 0.15}
_LEAST_SPREAD, _MOST_SPREAD = 0.08, 0.60
_STEPS, _SETTLED = 60, 2e-4


@dataclass(frozen=True)
class Rates:
    """What sets tell of their wear rates, rows by car; `car` counts 0, 1, 2 ... in order.

    `rate` is the least-squares rate, `known` one over its variance (0 where none is known); `ends` as in the table.
    """

    car: np.ndarray
    rate: Array
    known: Array
    usual: Array
    has_trait: Array
    traits: tuple[str, ...]
    ends: Ends


@dataclass(frozen=True)
class WearFit:
    """Corrections of the log rate by trait, and both spreads; `cars`, `sets` is what they were learned from."""

    corrections: Array
    between_cars: float
    between_items: float
    cars: int
    sets: int


def rates_of(table: WearTable, errors: ErrorFactors) -> Rates:
    """What the sets of one item tell, weighed by the reading error that was learned."""
    sums = _sums(table, errors)
    is_known = sums.spread * np.exp(2 * table.log_rate) > _LEAST_KNOWN
    rows = np.nonzero(is_known | (table.ends.after > 0))[0]
    rows = rows[np.argsort(table.car[rows], kind="stable")]
    known = np.where(is_known, sums.spread, 0.0)[rows]
    rate = np.where(is_known, sums.slope_sum / np.maximum(sums.spread, 1e-12), np.exp(table.log_rate))[rows]
    return Rates(
        np.unique(table.car[rows], return_inverse=True)[1],
        rate,
        known,
        table.log_rate[rows],
        table.has_trait[rows],
        table.traits,
        Ends(*(getattr(table.ends, name)[rows] for name in vars(table.ends))),
    )


def _sums(table: WearTable, errors: ErrorFactors) -> WearSums:
    seen = table.observations
    variance = seen.own * errors.reading_error**2 + seen.rounding + seen.doubt
    mate = (table.mate_error[seen.of_set] * errors.mate_error) ** 2 / 2
    variance = variance + np.where(seen.is_reading & (seen.side >= 0), mate, 0.0)
    return sum_up(seen.of_set, seen.back, seen.value, variance, len(table.car))


def learn_wear(rates: Rates, between_cars: float, between_items: float) -> WearFit:
    """The most probable corrections and spreads; `between_cars`, `between_items` are the published ones."""
    published = (between_cars, between_items)
    corrections = np.zeros(len(rates.traits))
    cars, sets = int(rates.car.max(initial=-1)) + 1, len(rates.car)
    if not sets:
        return WearFit(corrections, between_cars, between_items, 0, 0)
    weak = np.array([_CORRECTION_SPREADS[_kind(trait)] for trait in rates.traits])
    for _ in range(_STEPS):
        hidden = _expect(rates, corrections, between_cars, between_items)
        new, mean = _corrected(rates, corrections, hidden, weak, between_cars, between_items)
        moved = rates.has_trait @ (new - corrections)
        own = hidden.own_square - 2 * moved * hidden.own + moved**2
        driver = hidden.driver_square - 2 * mean * hidden.driver + mean**2
        spreads = (_spread(driver, published[0]), _spread(own, published[1]))
        new[rates.traits.index(EVERY)] += mean
        change = max(np.abs(new - corrections).max(), abs(spreads[0] - between_cars), abs(spreads[1] - between_items))
        corrections, (between_cars, between_items) = new, spreads
        if change < _SETTLED:
            break
    return WearFit(corrections, between_cars, between_items, cars, sets)


def _kind(trait: str) -> str:
    """Which kind of correction a trait has: `axle=rear driven=all` is of the kind `driven`."""
    return trait.split()[-1].split("=")[0]


def _spread(squares: Array, published: float) -> float:
    mean = (squares.sum() + _PSEUDO_OBSERVATIONS * published**2) / (len(squares) + _PSEUDO_OBSERVATIONS)
    return float(np.clip(np.sqrt(mean), _LEAST_SPREAD, _MOST_SPREAD))


@dataclass(frozen=True)
class _Hidden:
    """First and second moments of the driver's part (cars,) and of the set's own part (sets,)."""

    driver: Array
    driver_square: Array
    own: Array
    own_square: Array


def _expect(rates: Rates, corrections: Array, between_cars: float, between_items: float) -> _Hidden:
    """Moments of the hidden parts given the rates."""
    likelihood = _likelihood(rates, rates.usual + rates.has_trait @ corrections)
    own = _RATES[:, None] - _DRIVERS[None, :]
    weight = np.exp(-((own / between_items) ** 2) / 2)
    weight = weight / weight.sum(axis=0)
    total = np.maximum(likelihood @ weight, 1e-300)
    begins = np.searchsorted(rates.car, np.arange(rates.car[-1] + 1))
    logs = np.add.reduceat(np.log(total), begins, axis=0) - (_DRIVERS / between_cars) ** 2 / 2
    chance = np.exp(logs - logs.max(axis=1, keepdims=True))
    chance = chance / chance.sum(axis=1, keepdims=True)
    of_set = chance[rates.car] / total
    return _Hidden(
        chance @ _DRIVERS,
        chance @ _DRIVERS**2,
        (of_set * (likelihood @ (weight * own))).sum(axis=1),
        (of_set * (likelihood @ (weight * own**2))).sum(axis=1),
    )


def _likelihood(rates: Rates, usual: Array) -> Array:
    """Of what each set tells at each rate of the grid (sets, rates), up to a factor of the set."""
    rate = np.exp(usual[:, None] + _RATES)
    return _of_slope(rates, rate) * _of_end(rates.ends, rate)


def _of_slope(rates: Rates, rate: Array) -> Array:
    known = np.maximum(rates.known, 1e-9)
    narrow = np.sqrt(known)[:, None] * np.exp(-known[:, None] * (rate - rates.rate[:, None]) ** 2 / 2)
    published = np.exp(rates.usual)
    broad_variance = 1 / known + (_BROAD_RATES * published) ** 2
    broad = np.exp(-((rates.rate - published) ** 2) / (2 * broad_variance)) / np.sqrt(broad_variance)
    return np.asarray((1 - _BROAD_SHARE) * narrow + _BROAD_SHARE * broad[:, None])


def _of_end(ends: Ends, rate: Array) -> Array:
    """The chance that it was worn enough to be replaced by then; 1 where it was not replaced."""
    is_end = ends.after > 0
    left = np.where(is_end, ends.left, 0.0)[:, None] - rate * np.where(is_end, ends.after, 0.0)[:, None]
    worn = ndtr((ends.replaced_at[:, None] - left) / ends.replaced_spread[:, None])
    return np.where(is_end[:, None], _REPLACED_ANYWAY + (1 - _REPLACED_ANYWAY) * worn, 1.0)


def _corrected(
    rates: Rates, corrections: Array, hidden: _Hidden, weak: Array, between_cars: float, between_items: float
) -> tuple[Array, float]:
    """The corrections and the mean of the drivers' parts that fit the moments best: one ridge regression."""
    traits, every = len(corrections), rates.traits.index(EVERY)
    target = rates.has_trait @ corrections + hidden.own
    matrix, right = np.zeros((traits + 1, traits + 1)), np.zeros(traits + 1)
    matrix[:traits, :traits] = rates.has_trait.T @ rates.has_trait / between_items**2 + np.diag(1 / weak**2)
    right[:traits] = rates.has_trait.T @ target / between_items**2
    # The mean of the drivers' parts is a part of what is usual at the shop: both are held by its weak prior.
    matrix[every, traits] = matrix[traits, every] = 1 / weak[every] ** 2
    matrix[traits, traits] = len(hidden.driver) / between_cars**2 + 1 / weak[every] ** 2
    right[traits] = hidden.driver.sum() / between_cars**2
    found = np.linalg.solve(matrix, right)
    return np.asarray(found[:traits], dtype=float), float(found[traits])
