"""What too early and too late cost: the chance to send at, the least loss that is left, and what a reading would save.

With c_e a day too early and c_l a day too late, the best day is the quantile q = c_e / (c_e + c_l) of the due date. The
manager sets q; here a day too early costs 1, so a day too late costs (1 - q) / q.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import exp, log, sqrt
from statistics import NormalDist

from followup.core.forecast.window import DueCurve

_NORMAL = NormalDist()
# Between the 10 and the 90 % point of a normal distribution lie so many standard deviations.
_TEN_TO_NINETY = _NORMAL.inv_cdf(0.9) - _NORMAL.inv_cdf(0.1)
_LEAST_VARIANCE = 1e-6


@dataclass(frozen=True)
class DueIn:
    """Days until due as a log-normal time: its `median`, and the standard deviation of its logarithm."""

    median: float
    log_spread: float

    @property
    def mean(self) -> float:
        """The mean, in days."""
        return self.median * exp(self.log_spread**2 / 2)

    def best_days(self, early: float, late: float) -> float:
        """The days after which a visit costs least on the mean."""
        return self.median * exp(self.log_spread * _NORMAL.inv_cdf(chance_of(early, late)))

    def least_loss(self, early: float, late: float) -> float:
        """What it then costs on the mean: (c_e + c_l) M (q - Phi(z_q - s)), M the mean, s the log spread."""
        chance = chance_of(early, late)
        return (early + late) * self.mean * (chance - _NORMAL.cdf(_NORMAL.inv_cdf(chance) - self.log_spread))

    def narrowed(self, variance_gained: float) -> DueIn:
        """The same time, known better: what is expected of it stays as it is."""
        left = max(self.log_spread**2 - max(variance_gained, 0.0), _LEAST_VARIANCE)
        return DueIn(self.mean * exp(-left / 2), sqrt(left))


def chance_of(early: float, late: float) -> float:
    """The chance of being due to send at, where a day too early and a day too late cost that much."""
    return early / (early + late)


def late_over_early(chance: float) -> float:
    """How many days too early weigh as much as one day too late, where it is sent at that chance."""
    return (1 - chance) / chance


def balance_in_words(chance: float) -> str:
    """The same for a page."""
    days = late_over_early(chance)
    if days < 1:
        return f"one day too early counts as much as {1 / days:.3g} days too late"
    return f"one day too late counts as much as {days:.3g} days too early"


def due_in(curve: DueCurve) -> DueIn | None:
    """The curve as a log-normal time; None where it is due by now or has no date."""
    early, median, late = (curve.quantile(chance) for chance in (0.1, 0.5, 0.9))
    if not 0 < early < late < float("inf"):
        return None
    return DueIn(median, log(late / early) / _TEN_TO_NINETY)


def days_saved(curve: DueCurve, variance_gained: float, chance: float) -> float:
    """How much less it costs, in days too early, once the odometer is told: L*(s0) - L*(s1), s1^2 = s0^2 - gained.

    `variance_gained` is known before the answer: the variance of the distance ahead does not depend on it.
    """
    known = due_in(curve)
    if known is None:
        return 0.0
    late = late_over_early(chance)
    return known.least_loss(1.0, late) - known.narrowed(variance_gained).least_loss(1.0, late)
