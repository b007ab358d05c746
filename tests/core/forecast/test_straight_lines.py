"""Straight lines to a limit, held against published arithmetic: the same as tread or pad to its limit.

Sources: the GaAs laser degradation data, 15 units, of Meeker & Escobar, Statistical Methods for Reliability Data
(1998), chapter 13, whose least-squares crossing times of 10 % (lines with an intercept) are in the last column; the
Uniform Tire Quality Grading rule, 49 CFR 575.104(e)(2)(ix) (the rule from memory); numpy.polyfit.
"""

import numpy as np
import pytest

from followup.core.forecast.wear import WearSums, sum_up
from tests.core.forecast.lasers import HOURS, LASERS


def line(distance: np.ndarray, value: np.ndarray) -> WearSums:
    """The sums of one row with equal weights; the end is the last distance."""
    row = np.zeros(len(value), dtype=int)
    return sum_up(row, distance[-1] - distance, value, np.ones(len(value)), 1)


@pytest.mark.parametrize(("increase", "crossing"), LASERS)
def test_lasers_cross_ten_percent_when_the_book_says(increase: tuple[float, ...], crossing: float) -> None:
    left = 10.0 - np.array(increase)
    sums = line(HOURS, left)
    rate = sums.slope_sum / sums.spread
    left_at_end = sums.value - rate * sums.distance
    assert HOURS[-1] + (left_at_end / rate)[0] == pytest.approx(crossing, abs=0.51)


@pytest.mark.parametrize("seed", range(5))
def test_slope_is_that_of_numpy_polyfit(seed: int) -> None:
    random = np.random.default_rng(seed)
    miles = np.sort(random.uniform(0, 120, 7))
    tread = 11 - 0.2 * miles + random.normal(0, 0.5, 7)
    slope, intercept = np.polyfit(miles, tread, 1)
    sums = line(miles, tread)
    rate = sums.slope_sum / sums.spread
    assert rate[0] == pytest.approx(-slope, rel=1e-12)
    assert (sums.value - rate * sums.distance)[0] == pytest.approx(intercept + slope * miles[-1], rel=1e-12)


def test_distances_far_from_zero_do_not_cancel() -> None:
    # 300,000 miles on the clock, readings a mile apart: sums of squares about zero would lose all digits.
    miles = np.array([300.000, 300.001, 300.002])
    sums = line(miles, np.array([5.0, 4.0, 3.0]))
    assert (sums.slope_sum / sums.spread)[0] == pytest.approx(1000.0, rel=1e-6)


def projected_miles(new_mils: float, mils_per_1000: float, base_rate: float, monitoring_rate: float) -> float:
    """The rule's projected mileage of a tire that wears so: 1000 (a - 62) / b' + 800, readings every 800 miles."""
    thousand_miles = np.arange(0.0, 6.5, 0.8)
    sums = line(thousand_miles, new_mils - mils_per_1000 * thousand_miles)
    rate = (sums.slope_sum / sums.spread)[0]
    intercept = sums.value[0] + rate * (thousand_miles[-1] - sums.distance[0])
    adjusted = rate * base_rate / monitoring_rate
    return float(1000 * (intercept - 62) / adjusted + 800)


def grade(percent: float) -> int:
    """The grade: the percentage of 30,000 miles, rounded down to a multiple of 20."""
    return int(percent // 20) * 20


@pytest.mark.parametrize(
    ("new_mils", "mils_per_1000", "base_rate", "monitoring_rate", "life", "percent", "graded"),
    [
        (320, 6.5, 1.34, 1.34, 40_492.3, 134.97, 120),
        (320, 6.5, 1.5, 1.8, 48_430.8, 161.4, 160),
        (350, 5.2, 1.34, 1.34, 56_184.6, 187.28, 180),
    ],
)
def test_projected_mileage_and_grade_of_tire_grading(
    new_mils: float,
    mils_per_1000: float,
    base_rate: float,
    monitoring_rate: float,
    life: float,
    percent: float,
    graded: int,
) -> None:
    """49 CFR 575.104(e)(2)(ix) (the rule from memory); lives and percentages worked out apart from this program."""
    found = projected_miles(new_mils, mils_per_1000, base_rate, monitoring_rate)
    assert found == pytest.approx(life, abs=0.05)
    assert found / 300 == pytest.approx(percent, abs=0.05)
    assert grade(found / 300) == graded


def test_grade_by_the_base_course_wear_rate() -> None:
    """Graded by projected miles x base-course wear rate / 402, 48,430.8 at 1.5 give 180.7, so 180.

    Worked out apart from this program; this form of the rule from memory.
    """
    percent = projected_miles(320, 6.5, 1.5, 1.8) * 1.5 / 402
    assert percent == pytest.approx(180.7, abs=0.05)
    assert grade(percent) == 180


@pytest.mark.parametrize(("miles", "percent", "graded"), [(5_000, 16.67, 0), (30_000, 100.0, 100)])
def test_grades_that_a_letter_works_out(miles: float, percent: float, graded: int) -> None:
    """NHTSA interpretation letter 10811 (1995): 5,000 miles give 16.67, rounded down to grade 00; 30,000 give 100."""
    assert miles / 300 == pytest.approx(percent, abs=0.005)
    assert grade(miles / 300) == graded
