"""The miles of every week of an invented fleet."""

from __future__ import annotations

import numpy as np
from scipy.signal import lfilter

from followup.core.forecast.season import DAYS_A_YEAR, Array
from followup.rehearsal.fleet.habits import Driving

WEEK = 7.0


def weekly_miles(driving: Driving, born: Array, weeks: int, random: np.random.Generator) -> Array:
    """Miles (weeks, cars) of each week since the car was new; `born` (cars,) are days as of `date.toordinal`."""
    cars = len(born)
    age_years = np.arange(weeks)[:, None] * WEEK / DAYS_A_YEAR
    keeps = np.exp(-WEEK / driving.wander_days)
    steps = random.normal(0.0, driving.wander, (weeks, cars))
    steps[1:] *= np.sqrt(1 - keeps**2)
    wander = lfilter([1.0], [1.0, -keeps], steps, axis=0)
    jumps = random.random((weeks, cars)) < driving.jumps_a_year * WEEK / DAYS_A_YEAR
    level = np.cumsum(jumps * random.normal(0.0, driving.jump, (weeks, cars)), axis=0)
    aging = -driving.decline_a_year * np.maximum(age_years - driving.full_use_years, 0.0)
    of_year = (born[None, :] + np.arange(weeks)[:, None] * WEEK - 730_120.0) % DAYS_A_YEAR
    season = 1 + driving.summer_share * np.cos(2 * np.pi * (of_year - driving.busiest_day) / DAYS_A_YEAR)
    shape = WEEK / driving.daily_variation**2
    noise = random.gamma(shape, 1 / shape, (weeks, cars))
    usual = np.log(driving.median_miles_a_year / DAYS_A_YEAR * WEEK)
    driver = random.normal(0.0, driving.between_drivers, cars)
    return np.asarray(np.exp(usual + driver + wander + level + aging) * season * noise)
