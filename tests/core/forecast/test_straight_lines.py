"""Straight lines to a limit, held against published arithmetic: the same as tread or pad to its limit.

Sources: the GaAs laser degradation data, 15 units, of Meeker & Escobar, Statistical Methods for Reliability Data
(1998), chapter 13, whose least-squares crossing times of 10 % (lines with an intercept) are in the last column; the
Uniform Tire Quality Grading rule, 49 CFR 575.104(e)(2)(ix) (the rule from memory); numpy.polyfit.
"""

import numpy as np
import pytest

from followup.core.forecast.wear import WearSums, sum_up

HOURS = np.arange(0.0, 4001.0, 250.0)
# Increase in percent every 250 hours, and the hours at which the least-squares line crosses 10 %.
LASERS = [
    (
        (
            0,
            0.4741,
            0.9255,
            2.1147,
            2.7168,
            3.511,
            4.3415,
            4.9076,
            5.4782,
            5.9925,
            6.7224,
            7.1303,
            8.0006,
            8.9193,
            9.494,
            9.8675,
            10.9446,
        ),
        3702,
    ),
    (
        (
            0,
            0.7078,
            1.2175,
            1.8955,
            2.2954,
            2.865,
            3.7454,
            4.4192,
            4.9894,
            5.5148,
            6.0668,
            6.6385,
            7.1615,
            7.7778,
            8.4242,
            8.9092,
            9.2834,
        ),
        4194,
    ),
    (
        (
            0,
            0.7074,
            1.1651,
            1.7253,
            1.9888,
            2.5325,
            2.9695,
            3.2977,
            3.9354,
            4.1613,
            4.4459,
            4.889,
            5.2696,
            5.6913,
            6.0216,
            6.4485,
            6.8849,
        ),
        5847,
    ),
    (
        (
            0,
            0.3634,
            0.6161,
            1.3597,
            1.9525,
            2.2995,
            2.9468,
            3.3871,
            3.7863,
            4.1116,
            4.5013,
            4.7209,
            4.9766,
            5.2812,
            5.615,
            5.9503,
            6.1438,
        ),
        6172,
    ),
    (
        (
            0,
            0.2707,
            0.6144,
            1.1093,
            1.773,
            2.0625,
            2.5835,
            2.9863,
            3.3765,
            4.0491,
            4.626,
            5.237,
            5.6191,
            6.0449,
            6.3167,
            7.0952,
            7.5941,
        ),
        5301,
    ),
    (
        (
            0,
            0.3584,
            1.3922,
            1.9541,
            2.8617,
            3.4552,
            3.8117,
            4.533,
            5.3541,
            5.9217,
            6.7078,
            7.7027,
            8.6053,
            9.1477,
            9.951,
            10.4857,
            11.0096,
        ),
        3592,
    ),
    (
        (
            0,
            0.3637,
            0.9237,
            1.2098,
            1.4591,
            1.9323,
            2.3862,
            2.6799,
            2.9397,
            3.4183,
            4.0857,
            4.5843,
            4.8402,
            5.1145,
            5.5691,
            6.114,
            7.1723,
        ),
        6051,
    ),
    (
        (
            0,
            0.458,
            1.0678,
            1.4163,
            1.7659,
            2.1061,
            2.3969,
            2.78,
            3.0187,
            3.289,
            3.7542,
            4.1595,
            4.7575,
            5.1597,
            5.4591,
            5.8085,
            6.245,
        ),
        6538,
    ),
    (
        (
            0,
            0.5098,
            0.9308,
            1.5713,
            1.9576,
            2.5871,
            3.2892,
            3.6075,
            4.1148,
            4.5964,
            4.913,
            5.3408,
            5.8418,
            6.3961,
            6.8441,
            7.2037,
            7.8848,
        ),
        5110,
    ),
    (
        (
            0,
            0.4136,
            1.488,
            2.381,
            2.995,
            3.835,
            4.501,
            5.251,
            6.256,
            7.051,
            7.803,
            8.321,
            8.93,
            9.554,
            10.45,
            11.28,
            12.21,
        ),
        3306,
    ),
    (
        (
            0,
            0.4435,
            0.9978,
            1.5738,
            1.9584,
            2.5093,
            2.8436,
            3.4682,
            4.007,
            4.5124,
            4.8018,
            5.2042,
            5.6556,
            6.1951,
            6.5405,
            6.9626,
            7.4238,
        ),
        5326,
    ),
    (
        (
            0,
            0.3864,
            0.7988,
            1.3521,
            1.741,
            2.979,
            3.5871,
            4.0315,
            4.4393,
            4.7906,
            5.2205,
            5.4848,
            5.9639,
            6.2276,
            6.9877,
            7.3671,
            7.8841,
        ),
        4995,
    ),
    (
        (
            0,
            0.3034,
            0.7448,
            1.5225,
            1.8548,
            2.3897,
            2.9473,
            3.5104,
            3.9207,
            5.0316,
            5.4708,
            5.8362,
            6.4962,
            6.9372,
            7.3883,
            7.8472,
            8.087,
        ),
        4721,
    ),
    (
        (
            0,
            0.438,
            0.6979,
            1.0515,
            1.3526,
            1.7998,
            2.5514,
            2.8274,
            3.3908,
            3.7159,
            4.0906,
            4.8296,
            5.4145,
            5.759,
            6.1419,
            6.5086,
            6.8823,
        ),
        5689,
    ),
    (
        (
            0,
            0.5056,
            0.8349,
            1.2864,
            1.5191,
            1.9148,
            2.2697,
            2.7763,
            3.4153,
            3.7814,
            4.1053,
            4.3754,
            4.6295,
            5.3831,
            5.8391,
            6.1618,
            6.6247,
        ),
        6102,
    ),
]


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


@pytest.mark.parametrize(("base_rate", "monitoring_rate", "life"), [(1.34, 1.34, 40_492.3), (1.5, 1.8, 48_430.8)])
def test_projected_mileage_of_tire_grading(base_rate: float, monitoring_rate: float, life: float) -> None:
    thousand_miles = np.arange(0.0, 6.4, 0.8)
    mils = 320 - 6.5 * thousand_miles
    sums = line(thousand_miles, mils)
    rate = (sums.slope_sum / sums.spread)[0]
    intercept = sums.value[0] + rate * (thousand_miles[-1] - sums.distance[0])
    adjusted = rate * base_rate / monitoring_rate
    assert 1000 * (intercept - 62) / adjusted + 800 == pytest.approx(life, abs=0.05)
