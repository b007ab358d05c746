"""Learning how far customers drive: the likelihood against scipy, the fit against known hyper-parameters."""

from dataclasses import replace

import numpy as np
import pytest
from scipy.stats import multivariate_t

from followup.core.forecast.learn_check import usage_scores
from followup.core.forecast.learn_usage import learn_usage, log_likelihood
from followup.core.forecast.priors import UsagePrior
from followup.core.forecast.score import crps_of_normals
from followup.core.forecast.usage import MOST_INTERVALS, OdometerIntervals, interval_covariance

PUBLISHED = UsagePrior()
TRUE = replace(
    PUBLISHED, log_miles_per_day=3.6, between_drivers=0.30, within_driver=0.35, wander_days=250.0, noise_days=2.0
)


def intervals_of(counts: list[int], seed: int, usual: UsagePrior) -> OdometerIntervals:
    """Intervals of so many a car between visits some 150 days apart; log rates drawn from the normal model itself."""
    random = np.random.default_rng(seed)
    shape = (len(counts), MOST_INTERVALS)
    start, end, rate, is_there = np.zeros(shape), np.ones(shape), np.zeros(shape), np.zeros(shape, dtype=bool)
    for car, count in enumerate(counts):
        days = np.cumsum(np.concatenate([[0.0], random.uniform(60, 240, count)]))
        start[car, :count], end[car, :count], is_there[car, :count] = days[:-1], days[1:], True
    told = OdometerIntervals(start, end, rate, np.zeros(shape, dtype=bool), is_there)
    scale = interval_covariance(told, usual)
    for car in range(len(counts)):
        drawn = random.multivariate_normal(np.zeros(MOST_INTERVALS), scale[car])
        rate[car] = np.where(is_there[car], usual.log_miles_per_day + drawn, 0.0)
    return told


def test_the_likelihood_is_scipys_multivariate_t() -> None:
    """Source: scipy.stats.multivariate_t."""
    told = intervals_of([1, 3, 6], 11, TRUE)
    found = log_likelihood(told, TRUE)
    scale = interval_covariance(told, TRUE)
    for car, count in enumerate((1, 3, 6)):
        place = np.full(count, TRUE.log_miles_per_day)
        own = multivariate_t(loc=place, shape=scale[car, :count, :count], df=8)
        assert found[car] == pytest.approx(own.logpdf(told.log_rate[car, :count]), abs=1e-9)


def test_known_hyper_parameters_are_found_again() -> None:
    """Simulated from the model; the bands are some three standard errors of 900 cars, and the factor 8/6 of a Student
    t that is fitted to a normal (its scale is drawn to within a few percent of the normal's)."""
    found = learn_usage(intervals_of([6, 4, 3] * 300, 12, TRUE), PUBLISHED)
    assert found.log_miles_per_day == pytest.approx(3.6, abs=0.04)
    assert 0.27 < found.between_drivers < 0.37
    assert 0.32 < found.within_driver < 0.44
    assert 160 < found.wander_days < 400


def test_one_wrong_odometer_in_fifty_hardly_moves_it() -> None:
    told = intervals_of([4] * 300, 13, TRUE)
    right = learn_usage(told, PUBLISHED)
    told.log_rate[::50, 2] += 3.0
    found = learn_usage(told, PUBLISHED)
    assert found.log_miles_per_day == pytest.approx(right.log_miles_per_day, abs=0.02)
    assert found.between_drivers == pytest.approx(right.between_drivers, rel=0.1)


def test_without_any_interval_the_published_stay() -> None:
    nothing = intervals_of([0, 0], 14, TRUE)
    assert learn_usage(nothing, PUBLISHED) == PUBLISHED


def test_few_cars_stay_near_the_published() -> None:
    found = learn_usage(intervals_of([1, 1], 15, TRUE), PUBLISHED)
    assert abs(found.log_miles_per_day - PUBLISHED.log_miles_per_day) < abs(3.6 - PUBLISHED.log_miles_per_day)
    assert found.within_driver == pytest.approx(PUBLISHED.within_driver, rel=0.1)


def test_the_last_distance_is_foretold_as_by_conditioning() -> None:
    """Source: the conditional normal, K_ab K_bb^-1, worked out in blocks."""
    told = intervals_of([3], 16, TRUE)
    scale = interval_covariance(told, TRUE)[0, :3, :3]
    surprise = told.log_rate[0, :3] - TRUE.log_miles_per_day
    weights = np.linalg.solve(scale[:2, :2], scale[:2, 2])
    spread = np.sqrt(scale[2, 2] - weights @ scale[:2, 2])
    expected = crps_of_normals(np.ones(1), np.array([[weights @ surprise[:2]]]), np.array([[spread]]), surprise[2:])
    assert usage_scores(told, TRUE) == pytest.approx(expected, rel=1e-9)
