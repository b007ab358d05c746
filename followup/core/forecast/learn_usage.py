"""How far a shop's customers drive: the hyper-parameters of `usage.py` from their odometers.

The likelihood of a car's intervals is a Student t of eight degrees of freedom, so that a wrong odometer entry does not
pass for a driver; the posterior is brought to its top with L-BFGS.
"""

from __future__ import annotations

from dataclasses import replace

import numpy as np
from scipy.optimize import minimize
from scipy.special import gammaln

from followup.core.forecast.priors import UsagePrior
from followup.core.forecast.season import Array
from followup.core.forecast.usage import OdometerIntervals, interval_covariance

_FREEDOM = 8.0
# A Student t of that many degrees of freedom has so many times the variance of its scale.
_VARIANCE_OF_SCALE = _FREEDOM / (_FREEDOM - 2)
# Weak priors on the published values: standard deviations of the log of each (assumptions).
_SPREADS = {
    "log_miles_per_day": 0.25,
    "between_drivers": 0.4,
    "within_driver": 0.5,
    "wander_days": 0.7,
    "noise_days": 1.0,
}


def log_likelihood(intervals: OdometerIntervals, prior: UsagePrior) -> Array:
    """Log density of each car's intervals (cars,) under a Student t with the covariance of `usage.py` as its scale."""
    scale = interval_covariance(intervals, prior)
    surprise = np.where(intervals.is_there, intervals.log_rate - prior.log_miles_per_day, 0.0)
    root = np.linalg.cholesky(scale)
    solved = np.linalg.solve(root, surprise[:, :, None])[:, :, 0]
    # Padding is an identity row but for the tiny variance that keeps all of them regular.
    logs = np.where(intervals.is_there, np.log(np.einsum("cii->ci", root)), 0.0)
    count = intervals.is_there.sum(axis=1)
    constant = gammaln((_FREEDOM + count) / 2) - gammaln(_FREEDOM / 2) - count / 2 * np.log(_FREEDOM * np.pi)
    return np.asarray(
        constant - logs.sum(axis=1) - (_FREEDOM + count) / 2 * np.log1p((solved**2).sum(axis=1) / _FREEDOM)
    )


def learn_usage(intervals: OdometerIntervals, published: UsagePrior) -> UsagePrior:
    """The most probable hyper-parameters, as the variances of the normal model that `usage.py` predicts with."""
    names = list(_SPREADS)
    as_scales = _with_variances_times(published, 1 / _VARIANCE_OF_SCALE)
    start = np.array([getattr(as_scales, name) for name in names])
    start[1:] = np.log(start[1:])
    spreads = np.array(list(_SPREADS.values()))
    some = intervals.is_there.any(axis=1)
    told = OdometerIntervals(*(getattr(intervals, name)[some] for name in vars(intervals)))
    if not some.any():
        return published

    def as_prior(point: Array) -> UsagePrior:
        values = [float(point[0]), *(float(one) for one in np.exp(point[1:]))]
        return replace(published, **dict(zip(names, values, strict=True)))

    def cost(point: Array) -> float:
        weak = float((((point - start) / spreads) ** 2).sum()) / 2
        return weak - float(log_likelihood(told, as_prior(point)).sum())

    bounds = list(zip(start - 3 * spreads, start + 3 * spreads, strict=True))
    found = as_prior(minimize(cost, start, method="L-BFGS-B", bounds=bounds).x)
    return _with_variances_times(found, _VARIANCE_OF_SCALE)


def _with_variances_times(prior: UsagePrior, factor: float) -> UsagePrior:
    """The scales of a Student t as standard deviations of a normal of the same variance, or back."""
    return replace(
        prior,
        between_drivers=prior.between_drivers * float(np.sqrt(factor)),
        within_driver=prior.within_driver * float(np.sqrt(factor)),
        noise_days=prior.noise_days * factor,
    )
