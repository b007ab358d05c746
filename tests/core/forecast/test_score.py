"""Scores against closed forms, numerical integration and scipy."""

from __future__ import annotations

import math

import numpy as np
import pytest
from scipy import integrate, stats

from followup.core.forecast import score

LEVELS = (np.arange(50) + 0.5) / 50


def crps_of_normal(mean: float, spread: float, truth: float) -> float:
    """Gneiting & Raftery 2007, equation (21), with its sign turned: the smaller the better."""
    z = (truth - mean) / spread
    return spread * (z * (2 * stats.norm.cdf(z) - 1) + 2 * stats.norm.pdf(z) - 1 / math.sqrt(math.pi))


def test_a_normals_score_is_the_closed_form() -> None:
    means, spreads, truth = np.array([4.0, 7.5, -1.0]), np.array([0.5, 2.0, 1.0]), np.array([4.3, 3.0, -1.0])
    found = score.crps_of_normals(np.ones(1), means[:, None], spreads[:, None], truth)
    assert found == pytest.approx([crps_of_normal(*one) for one in zip(means, spreads, truth, strict=True)])


def test_a_mixtures_score_is_the_integral_over_its_curve() -> None:
    weights, means, spreads = np.array([0.2, 0.5, 0.3]), np.array([[1.0, 2.0, 4.0]]), np.array([[0.3, 0.5, 1.5]])
    for truth in (0.0, 2.2, 6.0):

        def gap(x: float, truth: float = truth) -> float:
            return float((weights @ stats.norm.cdf(x, means[0], spreads[0]) - (x >= truth)) ** 2)

        whole = integrate.quad(gap, -10, truth)[0] + integrate.quad(gap, truth, 15)[0]
        assert score.crps_of_normals(weights, means, spreads, np.array([truth]))[0] == pytest.approx(whole, rel=1e-6)


def test_fifty_quantiles_come_close_to_the_closed_form() -> None:
    truth = np.linspace(-3, 3, 13)
    quantiles = np.tile(stats.norm.ppf(LEVELS), (len(truth), 1))
    closed = [crps_of_normal(0.0, 1.0, one) for one in truth]
    assert score.crps_of_quantiles(LEVELS, quantiles, truth) == pytest.approx(closed, abs=0.02)


def test_a_point_forecast_scores_its_distance() -> None:
    """The CRPS of a certain forecast is the absolute error (Gneiting & Raftery 2007, section 4.2)."""
    truth = np.array([100.0, 250.0])
    assert score.crps_of_quantiles(LEVELS, np.full((2, 50), 180.0), truth) == pytest.approx([80.0, 70.0])


def test_the_honest_forecaster_scores_best() -> None:
    truth = np.random.default_rng(11).normal(0, 1, 20_000)
    told = {
        spread: score.crps_of_normals(np.ones(1), np.zeros((20_000, 1)), np.full((20_000, 1), spread), truth).mean()
        for spread in (0.5, 1.0, 2.0)
    }
    assert min(told, key=lambda spread: told[spread]) == 1.0


def test_unlike_shapes_are_refused() -> None:
    with pytest.raises(score.UnlikeForecasts, match="levels"):
        score.crps_of_quantiles(LEVELS, np.zeros((3, 49)), np.zeros(3))
    with pytest.raises(score.UnlikeForecasts):
        score.coverage(np.zeros(3), np.zeros(3), np.zeros(2))
    with pytest.raises(score.UnlikeForecasts):
        score.calibration_error(np.zeros(3), np.zeros(2))


def test_coverage_counts_both_ends() -> None:
    low, high = np.array([1.0, 1.0, 1.0, 1.0]), np.array([2.0, 2.0, 2.0, 2.0])
    assert score.coverage(low, high, np.array([1.0, 2.0, 0.9, 2.1])) == 0.5
    assert math.isnan(score.coverage(np.array([]), np.array([]), np.array([])))


def test_calibration_error_by_hand() -> None:
    """Two bins: .1 .1 .1 .1 with one that happened (off by .15), .8 .8 with both (off by .2)."""
    chances = np.array([0.1, 0.1, 0.1, 0.1, 0.8, 0.8])
    happened = np.array([0, 0, 0, 1, 1, 1])
    assert score.calibration_error(chances, happened) == pytest.approx((4 * 0.15 + 2 * 0.2) / 6)
    assert score.calibration_error(np.array([1.0, 0.0]), np.array([1, 0])) == 0
    assert math.isnan(score.calibration_error(np.array([]), np.array([])))


def test_calibrated_chances_err_by_chance_only() -> None:
    rng = np.random.default_rng(5)
    chances = rng.uniform(0, 1, 40_000)
    assert score.calibration_error(chances, rng.uniform(0, 1, 40_000) < chances) < 0.012
    assert score.calibration_error(chances, rng.uniform(0, 1, 40_000) < np.minimum(chances * 1.3, 1)) > 0.08


def test_brier_by_hand() -> None:
    assert score.brier(np.array([0.2, 0.9]), np.array([0, 1])) == pytest.approx((0.04 + 0.01) / 2)


@pytest.mark.parametrize(("held", "count"), [(0, 12), (3, 12), (331, 412), (40, 40)])
def test_wilson_is_scipys(held: int, count: int) -> None:
    wanted = stats.binomtest(held, count).proportion_ci(0.95, method="wilson")
    assert score.wilson_interval(held / count, count) == pytest.approx((wanted.low, wanted.high))


def test_chance_range_of_the_usual_sentence() -> None:
    """412 windows that said 80 %: chance alone gives 76 to 84 %."""
    low, high = score.chance_range(0.8, 412)
    assert (round(low, 2), round(high, 2)) == (0.76, 0.84)
    exact = stats.binom(412, 0.8).interval(0.95)
    assert (low * 412, high * 412) == pytest.approx(exact, abs=1.0)


def test_independent_forecasts_are_worth_their_count() -> None:
    held = np.random.default_rng(3).uniform(size=4_000) < 0.8
    assert score.effective_count(held, np.arange(4_000)) == pytest.approx(4_000, rel=0.01)
    assert score.effective_count(held, np.arange(4_000) // 4) > 3_500


def test_copies_are_worth_one() -> None:
    """Four that always agree are one: Kish's design effect of a group of m with correlation 1 is m."""
    held = np.repeat(np.random.default_rng(4).uniform(size=1_000) < 0.8, 4)
    assert score.effective_count(held, np.arange(4_000) // 4) == pytest.approx(1_000, rel=0.01)


def test_groups_that_hang_together_keep_their_interval_honest() -> None:
    """With the effective count the 95 % range of chance holds about 95 % of simulated shops; with the plain one not."""
    rng = np.random.default_rng(9)
    inside = {"effective": 0, "plain": 0}
    for _ in range(400):
        shared = rng.normal(size=(120, 1))
        latent = math.sqrt(0.7) * shared + math.sqrt(0.3) * rng.normal(size=(120, 8))
        held = (np.abs(latent) < stats.norm.ppf(0.9)).ravel()
        for name, count in (
            ("effective", score.effective_count(held, np.repeat(np.arange(120), 8))),
            ("plain", float(held.size)),
        ):
            low, high = score.wilson_interval(held.mean(), count)
            inside[name] += low <= 0.8 <= high
    assert inside["effective"] / 400 > 0.92
    assert inside["plain"] / 400 < 0.85


def test_too_few_groups_to_tell() -> None:
    assert score.effective_count(np.array([]), np.array([])) == 0
    assert score.effective_count(np.ones(8), np.zeros(8)) == 1
    assert score.effective_count(np.ones(8), np.repeat([0, 1], 4)) == 2
