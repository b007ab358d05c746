"""When a worn value reaches its limit: the distribution of the first passage, in effective days from the end.

Far from the limit it is one log-normal; near it (less than four standard deviations, about one item in five) it is
integrated over the rate, so that "may be due already" comes out right.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property

import numpy as np
from scipy.special import ndtr, ndtri

from followup.core.forecast.season import Array
from followup.core.forecast.usage import UsageAhead
from followup.core.forecast.wear import WearBelief

_FAR = 4.0
# Where the nodes of the rate lie further apart than the spread at each of them, the chance would climb in stairs: up to
# this share of the rate's variance is then taken along each node's tangent instead.
_ALONG_TANGENT = 0.15
_NODES, _raw_weights = np.polynomial.hermite_e.hermegauss(9)
_WEIGHTS = _raw_weights / _raw_weights.sum()
# No date beyond this many days: a parked car gets "no date", not the year 2400.
LONGEST_DAYS = 20_000.0


@dataclass(frozen=True)
class Passage:
    """First-passage times of rows of items: what is needed to read chances and quantiles off them.

    `log_days`, `log_spread` describe the far rows; `speed`, `left`, `left_spread` (rows, nodes) the near ones, in units
    a day and units. `speed_slope`, `left_slope` (rows, 1) say how speed (as a share) and left change along the tangent.
    """

    is_near: np.ndarray
    log_days: Array
    log_spread: Array
    speed: Array
    left: Array
    left_spread: Array
    speed_slope: Array
    left_slope: Array

    def chance_by(self, days: Array) -> Array:
        """P(due by `days`), rows; `days` (rows,), 0 or more."""
        far = ndtr((np.log(np.maximum(days, 1e-9)) - self.log_days) / self.log_spread)
        chance = np.where(days > 0, far, 0.0)
        near, of_near = self._near
        if len(near):
            chance[near] = of_near._chance_near(np.asarray(days)[near])
        return chance

    def quantile(self, chance: float) -> Array:
        """Days by which an item is due with that chance; 0 where it is due already, infinite beyond 20,000 days."""
        far = np.exp(np.minimum(self.log_days + self.log_spread * ndtri(chance), 30.0))
        days = far.copy()
        near, of_near = self._near
        if len(near):
            days[near] = of_near._quantile_near(chance)
        return np.where(days > LONGEST_DAYS, np.inf, days)

    def only(self, rows: np.ndarray) -> Passage:
        """These rows alone."""
        return Passage(
            self.is_near[rows],
            self.log_days[rows],
            self.log_spread[rows],
            self.speed[rows],
            self.left[rows],
            self.left_spread[rows],
            self.speed_slope[rows],
            self.left_slope[rows],
        )

    @cached_property
    def _near(self) -> tuple[np.ndarray, Passage]:
        """Which rows are near, and these alone: they are asked again for every point of a window."""
        near = np.nonzero(self.is_near)[0]
        return near, self.only(near)

    @cached_property
    def _already(self) -> Array:
        """P(due already) of near rows."""
        return self._chance_near(np.zeros(len(self.is_near)))

    def _chance_near(self, days: Array) -> Array:
        return np.asarray(ndtr(self._score(days)[0]) @ _WEIGHTS)

    def _score(self, days: Array) -> tuple[Array, Array]:
        """By how many standard deviations each node is worn past the limit after `days`, and its change by log days."""
        gone = self.speed * np.asarray(days)[:, None]
        along = self.speed_slope * gone - self.left_slope
        own = self.left_spread**2
        variance = own + along**2
        spread = np.sqrt(variance)
        score = (gone - self.left) / spread
        bend = own + along * (self.speed_slope * self.left - self.left_slope)
        # A power of 1.5 would take longer than all the rest.
        return score, gone * bend / (variance * spread)

    def _quantile_near(self, chance: float) -> Array:
        """Safeguarded Newton steps on the probit scale, where the chance is nearly a straight line in log days."""
        target = float(ndtri(chance))
        low, high = self.log_days - 6 * self.log_spread - 4, self.log_days + 6 * self.log_spread + 3
        at = np.clip(self.log_days + self.log_spread * target, low, high)
        for _ in range(6):
            score, change = self._score(np.exp(at))
            reached = ndtri(np.clip(ndtr(score) @ _WEIGHTS, 1e-9, 1 - 1e-9))
            density = (np.exp(-(score**2) / 2) * change) @ _WEIGHTS
            slope = np.maximum(density / np.exp(-(reached**2) / 2), 1e-9)
            low, high = np.where(reached < target, at, low), np.where(reached < target, high, at)
            step = at - np.clip((reached - target) / slope, -1.2, 1.2)
            # The converged point may lie on the bound itself: a strict test would throw it away.
            at = np.where((step >= low - 1e-9) & (step <= high + 1e-9), step, (low + high) / 2)
        return np.where(self._already >= chance, 0.0, np.exp(at))


def first_passage(
    belief: WearBelief,
    limit: Array,
    replaced_at: Array,
    replaced_spread: Array,
    usage: UsageAhead,
    car: np.ndarray,
) -> Passage:
    """Passage of each row through `limit`; `car` is its row in `usage` (log miles per effective day)."""
    belief = still_in_use(belief, replaced_at, replaced_spread)
    left = belief.value - limit
    guess_days = np.maximum(left, 0.3) * 1000 / np.exp(belief.log_rate + usage.at_reference(car))
    log_miles, miles_variance = usage.at(car, guess_days)
    log_thousands = log_miles - np.log(1000)
    spread = np.sqrt(belief.value_variance)
    is_near = left < _FAR * spread
    far_left = np.where(is_near, 1.0, left)
    ratio = np.where(is_near, 0.0, belief.value_variance / far_left**2)
    far_log = np.log(far_left) - ratio / 2 - 3 * ratio**2 / 8 - belief.log_rate - log_thousands
    far_variance = (
        ratio + 1.25 * ratio**2 + belief.log_rate_variance - 2 * belief.covariance / far_left + miles_variance
    )
    both = belief.log_rate_variance + miles_variance
    near_log = np.log(np.maximum(left, 0.15)) - belief.log_rate - log_thousands
    near_spread = np.sqrt(np.minimum(belief.value_variance / np.maximum(left, 0.3) ** 2, 1.0) + both)
    step = np.sqrt(both)
    pull = belief.covariance / step
    node_spread = np.sqrt(np.maximum(belief.value_variance - belief.covariance**2 / both, 1e-4))
    needed = 0.5 * np.abs(step * left - pull)
    tangent = np.where(left > 0, _ALONG_TANGENT, 0.0) * np.clip(
        1 - (node_spread / np.maximum(needed, 1e-9)) ** 2, 0.0, 1.0
    )
    nodes = np.sqrt(1 - tangent)[:, None] * _NODES
    return Passage(
        is_near,
        np.where(is_near, near_log, far_log),
        np.where(is_near, near_spread, np.sqrt(np.maximum(far_variance, 1e-6))),
        np.exp((belief.log_rate + log_thousands)[:, None] + step[:, None] * nodes),
        left[:, None] + pull[:, None] * nodes,
        node_spread[:, None],
        (np.sqrt(tangent) * step)[:, None],
        (np.sqrt(tangent) * pull)[:, None],
    )


def still_in_use(belief: WearBelief, replaced_at: Array, replaced_spread: Array) -> WearBelief:
    """The belief, given that the part is still on the car: what is worn far down is usually replaced."""
    scale = np.sqrt(belief.value_variance + replaced_spread**2)
    score = (belief.value - replaced_at) / scale
    inverse_mills = np.exp(-(score**2) / 2) / np.sqrt(2 * np.pi) / np.maximum(ndtr(score), 1e-9)
    shift = belief.value_variance / scale * inverse_mills
    cut = belief.value_variance**2 / scale**2 * inverse_mills * (score + inverse_mills)
    variance = np.maximum(belief.value_variance - cut, 0.02 * belief.value_variance)
    pull = belief.covariance / belief.value_variance
    kept = variance / belief.value_variance
    return WearBelief(
        belief.log_rate + pull * shift,
        np.maximum(belief.log_rate_variance - belief.covariance * pull * (1 - kept), 1e-5),
        belief.value + shift,
        variance,
        belief.covariance * kept,
        belief.chances,
    )
