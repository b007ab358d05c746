"""The first of several items of a car: limits in closed form, and drawing at random from the one-factor normal copula.

Source of the copula: Li, On Default Correlation (2000), from memory; the drawing uses numpy and scipy alone.
"""

import math
from datetime import date, timedelta

import numpy as np
import pytest
from scipy.stats import lognorm, multivariate_normal, norm

from followup.core.forecast.first_due import NODES, FirstDue, chance_of_first, first_due, shared_of
from followup.core.forecast.first_of_several import CurveTimes, FirstOfSeveral, first_of_windows
from followup.core.forecast.lives import Amounts, Dates
from followup.core.forecast.window import CURVE_CHANCES, DueCurve, DueWindow
from tests.core.forecast.told import pad, tread, visit, windows

# Median days and log spread of each item of one car.
ITEMS = ((400.0, 0.45), (520.0, 0.5), (380.0, 0.3), (900.0, 0.6))
DAYS = (60.0, 150.0, 300.0, 450.0, 800.0)


def amounts(items: tuple[tuple[float, float], ...] = ITEMS) -> Amounts:
    """Log-normal due times, a row an item."""
    median, spread = np.array(items).T
    return Amounts(np.log(median), spread, np.zeros(len(items), dtype=bool))


def first(shared: float, items: tuple[tuple[float, float], ...] = ITEMS, nodes: int = 15) -> FirstOfSeveral:
    """The first of them, all of one car."""
    return FirstOfSeveral(amounts(items), np.zeros(len(items), dtype=int), np.full(len(items), shared), nodes)


def chance(of: FirstOfSeveral, days: float) -> float:
    """Its chance by so many days."""
    return float(of.chance_by(np.array([days]))[0])


def test_nodes_are_those_of_numpy() -> None:
    at, weights = np.polynomial.hermite_e.hermegauss(15)
    assert [node for node, _ in NODES] == pytest.approx(at, abs=1e-12)
    assert [weight for _, weight in NODES] == pytest.approx(weights / weights.sum(), rel=1e-10)


@pytest.mark.parametrize("days", DAYS)
def test_one_item_alone_is_itself(days: float) -> None:
    assert chance(first(0.85, ITEMS[:1]), days) == pytest.approx(lognorm(s=0.45, scale=400).cdf(days), abs=1e-12)


@pytest.mark.parametrize("days", DAYS)
def test_nothing_in_common_is_the_product(days: float) -> None:
    each = [lognorm(s=spread, scale=median).cdf(days) for median, spread in ITEMS]
    expected = 1 - math.prod(1 - one for one in each)
    assert chance(first(0.0), days) == pytest.approx(expected, abs=1e-12)
    assert chance_of_first(each, [0.0] * len(each)) == pytest.approx(expected, abs=1e-8)


@pytest.mark.parametrize("days", DAYS)
def test_everything_in_common_is_the_earliest(days: float) -> None:
    """With all in common equal items are one item, and unlike ones are as the likeliest (the upper Frechet bound)."""
    equal = first(0.9999, ((400.0, 0.45),) * 5, nodes=400)
    assert chance(equal, days) == pytest.approx(lognorm(s=0.45, scale=400).cdf(days), abs=0.03)
    likeliest = max(lognorm(s=spread, scale=median).cdf(days) for median, spread in ITEMS)
    assert chance(first(0.9999, nodes=400), days) == pytest.approx(likeliest, abs=0.03)


@pytest.mark.parametrize("shared", [0.3, 0.6, 0.85])
def test_two_items_by_the_bivariate_normal(shared: float) -> None:
    """1 - P(both later) by scipy's own bivariate normal distribution with correlation `shared`."""
    for days in DAYS:
        probits = [(math.log(days) - math.log(median)) / spread for median, spread in ITEMS[:2]]
        both_later = multivariate_normal([0, 0], [[1, shared], [shared, 1]]).cdf([-one for one in probits])
        assert chance(first(shared, ITEMS[:2]), days) == pytest.approx(1 - both_later, abs=0.003)


@pytest.mark.parametrize("shared", [0.4, 0.85])
def test_drawn_at_random_from_the_one_factor_copula(shared: float) -> None:
    random = np.random.default_rng(18)
    common, own = random.standard_normal(200_000), random.standard_normal((200_000, len(ITEMS)))
    normal = math.sqrt(shared) * common[:, None] + math.sqrt(1 - shared) * own
    due = np.stack(
        [
            lognorm(s=spread, scale=median).ppf(norm.cdf(normal[:, number]))
            for number, (median, spread) in enumerate(ITEMS)
        ]
    ).min(axis=0)
    of = first(shared)
    for days in DAYS:
        assert chance(of, days) == pytest.approx((due <= days).mean(), abs=0.005)
    for point in (0.1, 0.5, 0.9):
        assert of.quantile(point)[0] == pytest.approx(np.quantile(due, point), rel=0.015)


def test_items_with_unlike_shares_drawn_at_random() -> None:
    """Two tires that share the driver and a battery that shares nothing."""
    shares = np.array([0.85, 0.85, 0.0])
    random = np.random.default_rng(19)
    common, own = random.standard_normal(200_000), random.standard_normal((200_000, 3))
    normal = np.sqrt(shares) * common[:, None] + np.sqrt(1 - shares) * own
    median, spread = np.array(ITEMS[:3]).T
    due = np.exp(np.log(median) + spread * normal).min(axis=1)
    of = FirstOfSeveral(amounts(ITEMS[:3]), np.zeros(3, dtype=int), shares)
    for days in DAYS:
        assert chance(of, days) == pytest.approx((due <= days).mean(), abs=0.005)


def test_chance_climbs_and_quantile_undoes_it() -> None:
    of = first(0.85)
    chances = [chance(of, days) for days in np.linspace(0, 3000, 200)]
    assert chances == sorted(chances)
    assert chances[0] == 0.0 and chances[-1] > 0.99
    for point in (0.02, 0.25, 0.5, 0.75, 0.98):
        assert chance(of, float(of.quantile(point)[0])) == pytest.approx(point, abs=1e-3)


def test_many_cars_at_once_are_each_as_alone() -> None:
    group = np.array([0, 0, 1, 2, 2, 2])
    items = (*ITEMS[:2], ITEMS[2], *ITEMS[1:])
    of = FirstOfSeveral(amounts(items), group, np.full(6, 0.85))
    alone = [first(0.85, items[:2]), first(0.85, items[2:3]), first(0.85, items[3:])]
    days = np.array([200.0, 300.0, 350.0])
    assert of.chance_by(days) == pytest.approx([chance(one, it) for one, it in zip(alone, days, strict=True)])
    assert of.quantile(0.4) == pytest.approx([one.quantile(0.4)[0] for one in alone], abs=0.05)


def test_what_is_never_due_stays_so_and_what_is_due_is() -> None:
    never = FirstOfSeveral(Dates(np.array([np.inf, np.inf])), np.zeros(2, dtype=int), np.full(2, 0.85))
    assert np.isinf(never.quantile(0.5)[0])
    now = FirstOfSeveral(Dates(np.array([np.inf, 0.0])), np.zeros(2, dtype=int), np.full(2, 0.85))
    assert now.quantile(0.5)[0] == 0.0
    assert chance(now, 0.0) == 1.0


def test_curves_as_arrays_are_the_curves() -> None:
    curves = [
        DueCurve(0.0, tuple(1000 * one for one in CURVE_CHANCES)),
        DueCurve(0.3, tuple(0.0 if one <= 0.3 else 1000 * (one - 0.3) for one in CURVE_CHANCES)),
        DueCurve.certain(40),
        DueCurve.certain(0),
        DueCurve.certain(math.inf),
        DueCurve(0.0, tuple(1000 * one if one < 0.6 else math.inf for one in CURVE_CHANCES)),
    ]
    times = CurveTimes(np.array([one.already for one in curves]), np.array([one.days for one in curves]))
    for days in (-1.0, 0.0, 0.5, 39.9, 40.0, 555.5, 998.0, 1500.0):
        found = times.chance_by(np.full(len(curves), days))
        assert found == pytest.approx([one.chance(days) for one in curves], abs=1e-12), days
    for chance_ in (0.0005, 0.1, 0.31, 0.5, 0.61, 0.9, 0.9995):
        assert times.quantile(chance_) == pytest.approx([one.quantile(chance_) for one in curves], abs=1e-9), chance_


CAR = (
    visit("2025-01-10", 50_000, tread(8), tread(8, "front_right"), pad(8)),
    visit(
        "2026-01-10", 60_000, tread(6), tread(6, "front_right"), pad(6),
        {"item": "battery", "cca": 600, "cca_rated": 640, "changed_on": "2022-01-10"},
    ),
)  # fmt: skip


def test_pages_and_arrays_agree() -> None:
    """The same car by `first_due` (plain Python) and by `first_of_windows` (arrays)."""
    ones = list(windows(*CAR).values())
    on = ones[0].as_of
    plain = first_due(ones, on)
    arrays, cars = first_of_windows(ones)
    assert cars == ("V-1",)
    assert plain is not None
    for day, point in ((plain.early, 0.1), (plain.likely, 0.5), (plain.late, 0.9)):
        assert day is not None
        assert (day - on).days == pytest.approx(arrays.quantile(point)[0], abs=1.0)
    # What goes by miles shares the driver; a battery's age shares nothing.
    assert {one.item: shared_of(one) for one in ones} == {"tire_tread": 0.85, "brake_pad": 0.85, "battery": 0.0}


def test_the_first_is_due_before_the_earliest_alone() -> None:
    ones = list(windows(visit("2026-01-10", 60_000, tread(6), tread(6.5, "front_right"), pad(9))).values())
    plain = first_due(ones, ones[0].as_of)
    earliest = min(ones, key=lambda one: one.likely or date.max)
    assert plain is not None and plain.likely is not None and earliest.likely is not None
    assert ones[0].as_of < plain.likely < earliest.likely
    assert (plain.item, plain.position) == (earliest.item, earliest.position)


def test_seen_from_a_later_day_it_counts_from_that_day() -> None:
    ones = list(windows(*CAR).values())
    now, later = ones[0].as_of, ones[0].as_of + timedelta(days=60)
    then, seen_later = first_due(ones, now), first_due(ones, later)
    assert then is not None and seen_later is not None
    assert then.likely is not None and then.likely > later
    assert seen_later.likely is not None and abs((seen_later.likely - then.likely).days) <= 1
    long_after = first_due(ones, now + timedelta(days=4000))
    assert long_after is not None and long_after.early == long_after.late == long_after.on and long_after.is_now


def test_what_was_found_due_is_first_today() -> None:
    ones = list(windows(visit("2026-01-10", 60_000, tread(7), pad(2))).values())
    found = first_due(ones, ones[0].as_of)
    assert found == FirstDue(ones[0].as_of, *(ones[0].as_of,) * 3, "brake_pad", "front_left")


def test_without_any_date_there_is_none() -> None:
    assert first_due([], date(2026, 1, 10)) is None
    one = next(iter(windows(visit("2026-01-10", 60_000, {"item": "engine_oil", "level": "not_readable"})).values()))
    found = first_due([one], one.as_of)
    assert found is not None and (found.early, found.likely, found.late) == (None, None, None)
    assert isinstance(one, DueWindow) and not found.is_now
