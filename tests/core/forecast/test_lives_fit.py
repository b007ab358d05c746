"""Log-normal lives fitted to censored data, against a published data set and scipy's own fit of censored data.

Source of the data: distances (km) to failure of vehicle shock absorbers, 11 failures and 27 units still good, O'Connor,
Practical Reliability Engineering (1985); table C.2 of Meeker & Escobar, Statistical Methods for Reliability Data
(1998). The book's Weibull fit is 10.23 and 0.316 for the log distance (from memory), so eta 27,718.7 km, beta 3.1605;
the log-normal one is 10.1448 and .53007 (worked out from the same data by a program apart from this one).
"""

import math

import numpy as np
import pytest
from scipy.stats import CensoredData, lognorm, norm, weibull_min

from followup.core.forecast.lives_fit import LifeFit, SeenLives, TooFewLives, UsualLife, fit_lives, log_likelihood

FAILED = (6700, 9120, 12200, 13150, 14300, 17520, 20100, 20900, 22700, 26510, 27490)
STILL_GOOD = (
    6950, 7820, 8790, 9660, 9820, 11310, 11690, 11850, 11880, 12140, 12870, 13330, 13470, 14040, 17540, 17890, 18450,
    18960, 18980, 19410, 20100, 20150, 20320, 23490, 27410, 27890, 28100,
)  # fmt: skip
ABSORBERS = CensoredData(uncensored=list(FAILED), right=list(STILL_GOOD))


def seen(ended: object = (), good: object = (), entered: object = None) -> SeenLives:
    """Ended exactly at `ended`, the rest still good at `good`."""
    over, until = np.array(ended, dtype=float), np.array(good, dtype=float)
    rows = len(over) + len(until)
    met = np.zeros(rows) if entered is None else np.array(entered, dtype=float)
    return SeenLives(np.concatenate([over, until]), np.concatenate([over, np.full(len(until), np.inf)]), met)


def test_table_is_the_published_one() -> None:
    """38 units, 11 failures; scipy's Weibull fit of them is the book's, so the table was typed rightly."""
    assert (len(FAILED), len(FAILED) + len(STILL_GOOD)) == (11, 38)
    shape, _, scale = weibull_min.fit(ABSORBERS, floc=0)
    assert scale == pytest.approx(27_718.7, rel=2e-4)
    assert shape == pytest.approx(3.1605, rel=5e-4)
    assert (math.log(scale), 1 / shape) == pytest.approx((10.23, 0.316), abs=0.005)


def test_shock_absorbers_as_published() -> None:
    fit = fit_lives(seen(FAILED, STILL_GOOD))
    assert fit.log_median == pytest.approx(10.1448, abs=1e-4)
    assert fit.log_spread == pytest.approx(0.53007, abs=1e-4)
    assert fit.ended == 11


def test_shock_absorbers_as_scipy_fits_them() -> None:
    spread, _, median = lognorm.fit(ABSORBERS, floc=0)
    fit = fit_lives(seen(FAILED, STILL_GOOD))
    assert fit.median == pytest.approx(median, rel=1e-3)
    assert fit.log_spread == pytest.approx(spread, rel=1e-3)
    # Neither finds a likelier one than the other.
    life = lognorm(s=spread, scale=median)
    expected = life.logpdf(FAILED).sum() + life.logsf(STILL_GOOD).sum()
    assert fit.log_likelihood == pytest.approx(expected, abs=1e-4)


def test_all_ended_is_mean_and_deviation_of_the_logs() -> None:
    """Closed form: without censoring the likeliest are the mean and the (biased) standard deviation of the logs."""
    days = lognorm(s=0.4, scale=1500).rvs(60, random_state=np.random.default_rng(5))
    fit = fit_lives(seen(days))
    assert fit.log_median == pytest.approx(np.log(days).mean(), abs=1e-5)
    assert fit.log_spread == pytest.approx(np.log(days).std(), abs=1e-5)


def test_ended_between_two_looks_as_scipy_fits_it() -> None:
    random = np.random.default_rng(6)
    life = lognorm(s=0.35, scale=1600).rvs(300, random_state=random)
    low = np.floor(life / 365) * 365
    late = low >= 1800
    lives = SeenLives(
        np.where(late, 1825.0, np.maximum(low, 1.0)), np.where(late, np.inf, low + 365.0), np.zeros(len(life))
    )
    fit = fit_lives(lives)
    intervals = [(max(begin, 1.0), begin + 365.0) for begin in low[~late]]
    spread, _, median = lognorm.fit(CensoredData(interval=intervals, right=[1825.0] * int(late.sum())), floc=0)
    assert fit.median == pytest.approx(median, rel=2e-3)
    assert fit.log_spread == pytest.approx(spread, rel=5e-3)
    assert fit.median == pytest.approx(1600, rel=0.06)


def test_parts_met_late_do_not_seem_to_last_longer() -> None:
    """Drawn (seeded) batteries are met at a random age, those that died before never: with `entered` the truth comes
    back, without it they seem to last longer than they do."""
    random = np.random.default_rng(7)
    life, met = lognorm(s=0.35, scale=1600).rvs(6000, random_state=random), random.uniform(0, 2500, 6000)
    is_met = life > met
    life, met = life[is_met], met[is_met]
    end = np.minimum(life, met + 700)
    over = np.where(life <= met + 700, life, np.inf)
    fit = fit_lives(SeenLives(end, over, met))
    assert fit.median == pytest.approx(1600, rel=0.03)
    assert fit.log_spread == pytest.approx(0.35, rel=0.06)
    blind = fit_lives(SeenLives(end, over, np.zeros(len(end))))
    assert blind.median > 1.1 * fit.median


def test_likelihood_of_a_life_met_late_is_that_of_the_rest() -> None:
    """log f(t) - log S(entered), by scipy's own log-normal."""
    life = lognorm(s=0.3, scale=1000)
    found = log_likelihood(seen((1200.0,), (), (800.0,)), math.log(1000), 0.3)
    assert found == pytest.approx(life.logpdf(1200) - life.logsf(800), abs=1e-9)


def test_few_lives_stay_near_what_is_usual_and_many_do_not() -> None:
    """Closed form with everything ended: the mean of the logs, weighted with the pseudo-lives."""
    days, usual = np.array([900.0, 1100.0, 1300.0]), UsualLife(1643.6, 0.35, 20.0)
    fit = fit_lives(seen(days), usual)
    expected = (np.log(days).sum() + 20 * math.log(1643.6)) / 23
    assert fit.log_median == pytest.approx(expected, abs=1e-5)
    around = ((np.log(days) - expected) ** 2).sum() + 20 * ((math.log(1643.6) - expected) ** 2 + 0.35**2)
    assert fit.log_spread == pytest.approx(math.sqrt(around / 23), abs=1e-5)
    many = fit_lives(seen(np.tile(days, 400)), usual)
    assert many.median == pytest.approx(np.exp(np.log(days).mean()), rel=0.01)


def test_none_ended_is_what_is_usual_or_nothing() -> None:
    good = seen((), (200.0, 300.0))
    with pytest.raises(TooFewLives, match="no life has ended"):
        fit_lives(good)
    fit = fit_lives(good, UsualLife(1643.6, 0.35, 20.0))
    assert isinstance(fit, LifeFit)
    assert fit.median == pytest.approx(1643.6, rel=0.02)
    assert fit.median >= 1643.6 * 0.999


def test_quantiles_of_the_fit_are_those_of_its_normal() -> None:
    fit = fit_lives(seen(FAILED, STILL_GOOD))
    ten = lognorm(s=fit.log_spread, scale=fit.median).ppf(0.1)
    assert ten == pytest.approx(math.exp(fit.log_median + fit.log_spread * norm.ppf(0.1)))
