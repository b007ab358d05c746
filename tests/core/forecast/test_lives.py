"""Lives, intervals and amounts, against numbers and integrals worked out apart."""

import math

import numpy as np
import pytest
from scipy.integrate import quad
from scipy.stats import lognorm, norm

from followup.core.forecast.lives import (
    Amounts,
    Intervals,
    Lives,
    chance_given_age,
    chance_of_unknown_age,
)

MEDIAN, SPREAD = 4.5 * 365.25, 0.35


def one(value: float) -> np.ndarray:
    """An array of one row."""
    return np.array([value], dtype=float)


@pytest.mark.parametrize(("age", "chance"), [(1461.0, 0.205679), (4383.0, 0.304127)])
def test_battery_of_known_age(age: float, chance: float) -> None:
    # Source: worked out by a program apart from this one when the model was designed.
    found = chance_given_age(one(age), one(180.0), one(math.log(MEDIAN)), one(SPREAD))
    assert found[0] == pytest.approx(chance, abs=1e-6)
    # And by scipy's log-normal, which knows nothing of the formula.
    life = lognorm(s=SPREAD, scale=MEDIAN)
    assert found[0] == pytest.approx((life.cdf(age + 180) - life.cdf(age)) / life.sf(age), rel=1e-9)


@pytest.mark.parametrize("days", [30.0, 365.0, 2000.0, 6000.0])
def test_unknown_age_is_the_integral_of_survival(days: float) -> None:
    """Time left of what is met at random: integral of S over the mean life (Cox, Renewal Theory, 1962; from memory)."""
    life = lognorm(s=SPREAD, scale=MEDIAN)
    expected = quad(life.sf, 0, days)[0] / life.mean()
    found = chance_of_unknown_age(one(days), one(math.log(MEDIAN)), one(SPREAD))
    assert found[0] == pytest.approx(expected, rel=1e-6)


def lives(age_days: float, age_miles: float, median_miles: float = math.inf, is_known: bool = True) -> Lives:
    """One cabin filter or battery, driven 30 miles a day without spread."""
    return Lives(
        one(math.log(548.0)), one(math.log(median_miles) if math.isfinite(median_miles) else math.inf), one(0.35),
        one(age_days), one(age_miles), np.array([is_known]), one(0.0), one(math.log(30.0)), one(1e-12),
    )  # fmt: skip


def test_whichever_comes_first_days_or_miles() -> None:
    # 15,000 miles at 30 a day are 500 days: less than 548, so the miles decide.
    by_miles = lives(0.0, 0.0, 15_000.0)
    by_days = lives(0.0, 0.0, 30_000.0)
    assert by_miles.quantile(0.5)[0] == pytest.approx(500.0, rel=0.01)
    assert by_days.quantile(0.5)[0] == pytest.approx(548.0, rel=0.01)


@pytest.mark.parametrize("chance", [0.05, 0.2, 0.5, 0.8, 0.95])
def test_quantile_of_a_life_gives_its_chance_back(chance: float) -> None:
    for life in (lives(200.0, 4_000.0), lives(200.0, 4_000.0, 15_000.0), lives(0.0, 0.0, is_known=False)):
        assert life.chance_by(life.quantile(chance))[0] == pytest.approx(chance, abs=0.004)


def test_interval_in_closed_form() -> None:
    """F(t) = 1 - (1 - Phi((ln t + ln 30 - ln 6000) / .2)) 1[t < 250], by scipy's own normal."""
    interval = Intervals(one(250.0), one(6_000.0), one(math.log(30.0)), one(0.04), np.array([True]))
    for days in (100.0, 180.0, 200.0, 249.0):
        expected = norm.cdf((math.log(days) + math.log(30.0) - math.log(6_000.0)) / 0.2)
        assert interval.chance_by(one(days))[0] == pytest.approx(expected, abs=1e-12)
    assert interval.chance_by(one(250.0))[0] == 1.0
    assert interval.quantile(0.5)[0] == pytest.approx(200.0)
    assert interval.quantile(0.999)[0] == 250.0


def test_interval_that_is_over_is_due() -> None:
    interval = Intervals(one(-3.0), one(100.0), one(math.log(30.0)), one(0.04), np.array([True]))
    assert interval.chance_by(one(0.0))[0] == 1.0
    assert interval.quantile(0.1)[0] == 0.0


def test_interval_of_unknown_begin_is_due_evenly_over_its_length() -> None:
    interval = Intervals(one(240.0), one(math.inf), one(math.log(30.0)), one(0.04), np.array([False]))
    assert interval.chance_by(one(60.0))[0] == pytest.approx(0.25)
    assert interval.quantile(0.5)[0] == pytest.approx(120.0)


def test_amount_runs_out_at_its_median() -> None:
    amount = Amounts(np.log([70.0, 70.0]), np.array([0.6, 0.6]), np.array([False, True]))
    assert amount.quantile(0.5) == pytest.approx([70.0, 0.0])
    assert amount.chance_by(np.array([70.0, 0.0])) == pytest.approx([0.5, 1.0])
