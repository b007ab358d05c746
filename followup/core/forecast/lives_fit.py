"""Fit log-normal lives to what was seen of them: some ended, most are still good, some ended between two looks.

Maximum likelihood. A life adds the log of the chance of what was seen of it (Meeker & Escobar, Statistical Methods for
Reliability Data, 1998, chapter 8; from memory): the density where the end is known to the day, S(good until) where it
is still good, S(good until) - S(over by) where it ended in between; all given that it was met at `entered`, still good.
Heavy (numpy, scipy).
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from scipy.optimize import minimize
from scipy.special import log_ndtr

from followup.core.forecast.season import Array

# A spread under this is a rule, not a life; over that nothing is known of it.
_LEAST_LOG_SPREAD, _MOST_LOG_SPREAD = 0.02, 3.0
_HALF_LOG_TWO_PI = 0.5 * float(np.log(2 * np.pi))


class TooFewLives(Exception):
    """No life has ended yet: nothing can be learned of how long they last."""


@dataclass(frozen=True)
class SeenLives:
    """Lives as they were seen, a row each, in days or miles since the part was put on.

    `good_until` is the age at the last look at which it was good, `over_by` the age at which it was found over:
    infinite where it is still good, the same as `good_until` where its end is known exactly. `entered` is the age at
    which it was first met (0 where it was seen from the beginning): those that did not live so long were never met.
    """

    good_until: Array
    over_by: Array
    entered: Array

    @property
    def ended(self) -> int:
        """How many of them have ended."""
        return int(np.isfinite(self.over_by).sum())


@dataclass(frozen=True)
class UsualLife:
    """What is expected before: median and log spread, worth `lives` lives that ended so."""

    median: float
    log_spread: float
    lives: float


@dataclass(frozen=True)
class LifeFit:
    """A log-normal life: exp(`log_median` + `log_spread` z). `log_likelihood` is without the pseudo-lives."""

    log_median: float
    log_spread: float
    log_likelihood: float
    ended: int

    @property
    def median(self) -> float:
        """Half of them last longer."""
        return float(np.exp(self.log_median))


def fit_lives(seen: SeenLives, usual: UsualLife | None = None) -> LifeFit:
    """The likeliest log-normal life; `usual` draws it to what is expected, the more the fewer lives there are.

    Raises `TooFewLives` where none has ended and nothing is expected.
    """
    if usual is None and not seen.ended:
        raise TooFewLives("no life has ended yet: give what is usual, or wait until some have")
    ends = np.where(np.isfinite(seen.over_by), seen.over_by, seen.good_until)
    start = (
        [float(np.log(np.maximum(ends, 1e-9)).mean()), -0.7]
        if usual is None
        else [float(np.log(usual.median)), float(np.log(usual.log_spread))]
    )

    def cost(at: Array) -> float:
        spread = float(np.clip(np.exp(at[1]), _LEAST_LOG_SPREAD, _MOST_LOG_SPREAD))
        return -log_likelihood(seen, float(at[0]), spread) - _log_pseudo(usual, float(at[0]), spread)

    bounds = [(start[0] - 6, start[0] + 6), (np.log(_LEAST_LOG_SPREAD), np.log(_MOST_LOG_SPREAD))]
    rough = minimize(cost, start, method="L-BFGS-B", bounds=bounds)
    # Differences in place of a gradient end a little early: the simplex walks the rest of the way.
    fine = minimize(cost, rough.x, method="Nelder-Mead", bounds=bounds, options={"xatol": 1e-7, "fatol": 1e-9})
    log_median, log_spread = float(fine.x[0]), float(np.exp(fine.x[1]))
    return LifeFit(log_median, log_spread, log_likelihood(seen, log_median, log_spread), seen.ended)


def log_likelihood(seen: SeenLives, log_median: float, log_spread: float) -> float:
    """Log of the chance of what was seen, if lives are so."""

    def score(age: Array) -> Array:
        return np.asarray((np.log(np.maximum(age, 1e-9)) - log_median) / log_spread)

    good = score(seen.good_until)
    is_exact = seen.over_by <= seen.good_until
    is_between = np.isfinite(seen.over_by) & ~is_exact
    log_alive = log_ndtr(-good)
    over = score(np.where(is_between, seen.over_by, seen.good_until + 1.0))
    share = np.where(is_between, np.exp(np.minimum(log_ndtr(-over) - log_alive, -1e-12)), 0.0)
    density = -(good**2) / 2 - _HALF_LOG_TWO_PI - np.log(log_spread) - np.log(np.maximum(seen.good_until, 1e-9))
    met = np.where(seen.entered > 0, log_ndtr(-score(seen.entered)), 0.0)
    return float((np.where(is_exact, density, log_alive + np.log1p(-share)) - met).sum())


def _log_pseudo(usual: UsualLife | None, log_median: float, log_spread: float) -> float:
    """The mean log density of lives that ended as usual, so many times."""
    if usual is None:
        return 0.0
    miss = (float(np.log(usual.median)) - log_median) ** 2 + usual.log_spread**2
    return -usual.lives * (float(np.log(log_spread)) + miss / (2 * log_spread**2))
