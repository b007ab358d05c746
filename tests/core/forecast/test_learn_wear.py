"""Learning how fast things wear: EM against brute force, known parameters found again, what may not speak is silent."""

import math

import numpy as np
import pytest
from scipy.integrate import quad
from scipy.optimize import minimize
from scipy.stats import norm

from followup.core.forecast.learn_errors import ErrorFactors, learn_errors, variance_factor
from followup.core.forecast.learn_table import Ends, Observations, WearTable
from followup.core.forecast.learn_wear import Rates, learn_wear, rates_of
from followup.core.forecast.priors import EVERY

# What `learn_wear.py` says of itself: share and width of slopes of something else, parts replaced though not worn,
# cars that the published spreads are worth, standard deviation of the correction of everything.
BROAD, BROAD_RATES, ANYWAY, PSEUDO, EVERY_SPREAD = 0.04, 2.0, 0.10, 50, 0.30
USUAL = math.log(0.2)


def rates(car: list[int], slopes: list[float], known: list[float], ends: list[tuple[float, float]]) -> Rates:
    """Sets with one trait; `ends` are (left, after), NaN where the set did not end."""
    left, after = np.array(ends).T
    rows = len(car)
    told = Ends(left, after, np.full(rows, 3.2), np.full(rows, 1.1))
    return Rates(
        np.array(car), np.array(slopes), np.array(known), np.full(rows, USUAL), np.ones((rows, 1)), (EVERY,), told
    )  # fmt: skip


NO_END = (math.nan, math.nan)
SMALL = rates(
    [0, 0, 1, 1, 2, 3],
    [0.30, 0.26, 0.22, 0.05, 0.35, 0.20],
    [900.0, 400.0, 1500.0, 300.0, 700.0, 0.0],
    [NO_END, NO_END, NO_END, NO_END, NO_END, (6.0, 9.0)],
)


def log_posterior(told: Rates, correction: float, between_cars: float, between_items: float) -> float:
    """By brute force over the driver's part and the set's own, from the formulas of the docstrings."""
    own, driver = np.linspace(-2.5, 2.5, 501), np.linspace(-1.8, 1.8, 361)
    logs = np.zeros(4)
    of_car = {car: norm.logpdf(driver, 0, between_cars) for car in range(4)}
    for row, car in enumerate(told.car.tolist()):
        rate = np.exp(USUAL + correction + driver[None, :] + own[:, None])
        known, slope = max(told.known[row], 1e-9), told.rate[row]
        like = (1 - BROAD) * norm.pdf(rate, slope, 1 / math.sqrt(known))
        like = like + BROAD * norm.pdf(slope, 0.2, math.sqrt(1 / known + (BROAD_RATES * 0.2) ** 2))
        if told.ends.after[row] > 0:
            left = told.ends.left[row] - rate * told.ends.after[row]
            like = like * (ANYWAY + (1 - ANYWAY) * norm.cdf((3.2 - left) / 1.1))
        weighted = like * norm.pdf(own, 0, between_items)[:, None]
        of_car[car] = of_car[car] + np.log(weighted.sum(axis=0) * (own[1] - own[0]))
    logs = np.array([np.log(np.exp(of_car[car]).sum() * (driver[1] - driver[0])) for car in range(4)])
    weak = -(correction**2) / (2 * EVERY_SPREAD**2)
    for found, published in ((between_cars, 0.33), (between_items, 0.22)):
        weak -= PSEUDO * (math.log(found) + published**2 / (2 * found**2))
    return float(logs.sum()) + weak


def test_em_finds_the_top_that_brute_force_finds() -> None:
    found = learn_wear(SMALL, 0.33, 0.22)
    best = minimize(
        lambda at: -log_posterior(SMALL, at[0], math.exp(at[1]), math.exp(at[2])),
        [0.0, math.log(0.33), math.log(0.22)],
        method="Nelder-Mead",
        options={"xatol": 1e-3, "fatol": 1e-5},
    )
    assert found.corrections[0] == pytest.approx(best.x[0], abs=0.01)
    assert found.between_cars == pytest.approx(math.exp(best.x[1]), abs=0.005)
    assert found.between_items == pytest.approx(math.exp(best.x[2]), abs=0.005)


def table_of(seed: int, cars: int, factor: float, error: float = 0.55, replaces: bool = False) -> WearTable:
    """Two axles a car, both sides read at three visits: rates are log-normal (.33 and .22), reading error as told.

    `replaces` where an axle that would be worn below 3/32 was replaced before it was read again.
    """
    random = np.random.default_rng(seed)
    entries: list[tuple[float, ...]] = []
    ends, car_of = [], []
    for car in range(cars):
        driver = random.normal(0, 0.33)
        for _ in range(2):
            rate = 0.2 * factor * math.exp(driver + random.normal(0, 0.22))
            row, end, value = len(car_of), NO_END, 7.5 if replaces else 9.0
            apart = random.normal(0, 0.5 / math.sqrt(2), 2)
            for visit in range(3):
                depth = value - rate * 7.0 * visit
                if replaces and depth < 3.0:
                    end = (value - rate * 7.0 * (visit - 1), 7.0)
                    break
                entries += [
                    (row, 14.0 - 7.0 * visit, depth + apart[side] + random.normal(0, error), 0.55**2, 0.0, 0.0, side, 1)
                    for side in (0, 1)
                ]
            ends.append(end)
            car_of.append(car)
    sets = len(car_of)
    columns = [np.array(column) for column in zip(*entries, strict=True)]
    seen = Observations(
        columns[0].astype(int), *columns[1:6], columns[6].astype(int), columns[7].astype(bool)
    )  # fmt: skip
    left, after = np.array(ends).T
    return WearTable(
        "tire_tread", (EVERY,), 0.33, 0.22, np.array(car_of), np.full(sets, USUAL), np.full(sets, 0.5),
        np.ones((sets, 1)), Ends(left, after, np.full(sets, 3.0), np.full(sets, 0.5)), seen,
    )  # fmt: skip


AS_READ = ErrorFactors(1.0, 1.0, 0, 0)


def test_known_wear_is_found_again() -> None:
    """Simulated from the model, 400 cars: the standard error of the mean log rate is about .02."""
    found = learn_wear(rates_of(table_of(21, 400, 1.4), AS_READ), 0.33, 0.22)
    assert found.corrections[0] == pytest.approx(math.log(1.4), abs=0.06)
    assert found.between_cars == pytest.approx(0.33, abs=0.04)
    assert found.between_items == pytest.approx(0.22, abs=0.04)
    assert (found.cars, found.sets) == (400, 800)


def test_what_was_replaced_speaks_too() -> None:
    """Those that are read again are the slow ones: without the others everything would seem to last."""
    told = table_of(22, 400, 1.4, replaces=True)
    is_end = told.ends.after > 0
    assert is_end.mean() > 0.3
    found = learn_wear(rates_of(told, AS_READ), 0.33, 0.22)
    told.ends.after[:] = math.nan
    deaf = learn_wear(rates_of(told, AS_READ), 0.33, 0.22)
    assert deaf.corrections[0] < found.corrections[0] - 0.02
    assert found.corrections[0] == pytest.approx(math.log(1.4), abs=0.08)


def test_few_cars_stay_nearer_to_the_published() -> None:
    few = learn_wear(rates_of(table_of(23, 4, 1.8), AS_READ), 0.33, 0.22)
    assert 0.0 < few.corrections[0] < math.log(1.8)


def test_sets_that_were_read_once_say_nothing() -> None:
    """Only slopes speak: how much is left of what may be the first set is no evidence of its wear."""
    told = table_of(24, 30, 1.4)
    once = told.observations.back == 14.0
    seen = Observations(*(getattr(told.observations, name)[once] for name in vars(told.observations)))
    alone = WearTable(**{**vars(told), "observations": seen})
    found = learn_wear(rates_of(alone, AS_READ), 0.33, 0.22)
    assert (found.cars, found.corrections[0], found.between_cars) == (0, 0.0, 0.33)


def test_the_reading_error_is_found_again() -> None:
    """Simulated: 0.36 against the published 0.55; 20 pseudo-observations of 1,600."""
    found = learn_errors(table_of(25, 400, 1.0, error=0.36))
    assert found.reading_error == pytest.approx(0.36 / 0.55, abs=0.05)
    assert found.mate_error == pytest.approx(1.0, abs=0.1)


def test_gross_errors_hardly_count() -> None:
    random = np.random.default_rng(26)
    misses = random.normal(0, 1.3, 4_000)
    misses[::100] += 9.0
    found = variance_factor(misses, np.ones(4_000), np.full(4_000, 0.69))
    assert found == pytest.approx(1.0, abs=0.12)


def test_the_clipped_square_of_a_normal() -> None:
    """Source: numerical integration (scipy.integrate.quad)."""
    from followup.core.forecast import learn_errors as own

    expected = quad(lambda z: min(z * z, own._CLIPPED_AT**2) * norm.pdf(z), -12, 12, limit=200)[0]
    assert pytest.approx(expected, abs=1e-9) == own._MEAN_CLIPPED_SQUARE
