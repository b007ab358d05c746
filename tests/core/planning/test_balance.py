"""Too early against too late. Vectors: `forecast.md`, section 6, by closed form; here they are integrated as well."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from math import log

import numpy as np
import pytest

from followup.core.forecast.due import forecast_cars
from followup.core.forecast.history import CarHistory
from followup.core.forecast.odometer_gain import ASKED_AFTER_DAYS, variance_gained
from followup.core.forecast.window import CURVE_CHANCES, DueCurve
from followup.core.planning.balance import DueIn, balance_in_words, chance_of, days_saved, due_in, late_over_early
from followup.core.planning.decide import decide
from followup.rehearsal.fleet.build import build_fleet
from followup.rehearsal.fleet.habits import AS_PUBLISHED
from tests.core.planning.cars import NOW, car

VECTORS = [(200, 0.5, 1, 4, 131.303, 124.8056), (365, 0.35, 1, 9, 233.074, 188.6453)]


@pytest.mark.parametrize(("median", "spread", "early", "late", "day", "loss"), VECTORS)
def test_the_best_day_and_what_it_costs(
    median: float, spread: float, early: float, late: float, day: float, loss: float
) -> None:
    due = DueIn(median, spread)
    assert due.best_days(early, late) == pytest.approx(day, abs=5e-4)
    assert due.least_loss(early, late) == pytest.approx(loss, abs=5e-5)


@pytest.mark.parametrize(("median", "spread", "early", "late", "day", "loss"), VECTORS)
def test_no_other_day_costs_less(
    median: float, spread: float, early: float, late: float, day: float, loss: float
) -> None:
    """The definition itself, over two million draws of the due date: 0.3 % is what so many leave to chance."""
    due = np.exp(np.random.default_rng(7).normal(log(median), spread, 2_000_000))

    def costs(at: float) -> float:
        return float(np.where(at < due, early * (due - at), late * (at - due)).mean())

    assert costs(day) == pytest.approx(loss, rel=0.003)
    assert min(costs(day * 0.9), costs(day * 1.1)) > costs(day)


def test_the_balance_is_told_in_words() -> None:
    assert chance_of(1, 3) == 0.25 and late_over_early(0.25) == pytest.approx(3)
    assert balance_in_words(0.25) == "one day too late counts as much as 3 days too early"
    assert balance_in_words(0.8) == "one day too early counts as much as 4 days too late"


def _curve(median: float, spread: float) -> DueCurve:
    points = np.exp(log(median) + spread * np.array([_probit(chance) for chance in CURVE_CHANCES]))
    return DueCurve(0.0, tuple(points.tolist()))


def _probit(chance: float) -> float:
    from scipy.special import ndtri

    return float(ndtri(chance))


def test_a_curve_is_read_as_the_log_normal_that_it_is() -> None:
    found = due_in(_curve(200, 0.5))
    assert found is not None
    assert (found.median, found.log_spread) == (pytest.approx(200), pytest.approx(0.5, abs=1e-6))
    assert due_in(DueCurve.certain(0.0)) is None and due_in(DueCurve.certain(float("inf"))) is None


def test_a_reading_saves_what_the_two_losses_differ_by() -> None:
    """s0 = .5, s1 = .4: the mean stays 226.6 days, so L* falls from 1:4's 124.81 to that of a narrower time."""
    curve = _curve(200, 0.5)
    narrow = DueIn(200 * np.exp(0.125 - 0.08), 0.4)
    assert narrow.mean == pytest.approx(DueIn(200, 0.5).mean)
    assert days_saved(curve, 0.25 - 0.16, 0.2) == pytest.approx(124.8056 - narrow.least_loss(1, 4), abs=1e-3)
    assert days_saved(curve, 0.0, 0.2) == 0.0
    assert days_saved(DueCurve.certain(0.0), 0.1, 0.2) == 0.0


def test_what_a_reading_gains_is_known_before_and_is_most_for_cars_seen_once() -> None:
    """The text's own finding: a car seen once gains more than one seen often (width x .89-.91 against x .91-.95)."""
    histories = build_fleet(AS_PUBLISHED, 120, 5).histories()
    gained = variance_gained(histories, "last")
    seen = {one.vehicle.code: len(one.odometers) for one in histories}
    assert all(days == ASKED_AFTER_DAYS for days in ({tuple(d for d, _ in one) for one in gained.values()}))
    assert all(gain > 0 for one in gained.values() for _, gain in one)
    once, thrice = (np.mean([gains[1][1] for code, gains in gained.items() if seen[code] == times]) for times in (1, 3))
    assert once > 1.4 * thrice


def test_what_was_foreseen_is_the_variance_that_the_forecast_then_has() -> None:
    """The same car with the reading told: whatever it shows, the spread of its windows is what was foreseen."""
    histories = [one for one in build_fleet(AS_PUBLISHED, 40, 5).histories() if len(one.odometers) == 1]
    history = histories[0]
    last, miles = history.odometers[-1]
    asked_on = date.fromordinal(last.toordinal() + 90)
    gain = dict(variance_gained([history], asked_on)[history.vehicle.code])[90]
    before = _usage_variance(history, asked_on)
    for driven in (2_000.0, 5_000.0):
        told = replace(history, odometers=(*history.odometers, (asked_on, miles + driven)))
        assert before - _usage_variance(told, asked_on) == pytest.approx(gain, rel=0.25)


def _usage_variance(history: CarHistory, on: date) -> float:
    """The variance of the log distance over 200 days that a worn item's window rests on."""
    windows = forecast_cars([history], on, with_ahead=True)
    ahead = next(one.ahead for one in windows if one.ahead is not None)
    return next(variance for days, _, variance in ahead.miles if days == 200.0)


def test_the_odometer_is_asked_along_once_and_only_with_due_work() -> None:
    asked = decide(car(is_odometer_asked_along=True), NOW).text
    plain = decide(car(), NOW).text
    assert asked is not None and asked.asks_odometer
    assert plain is not None and not plain.asks_odometer
