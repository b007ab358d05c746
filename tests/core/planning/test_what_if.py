"""What if: its draws against the windows they come from, its days against the planner asked one by one.

The planner is its oracle: `decide_for_phone` on real pictures, in the same worlds with the same answers.
"""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from scipy.stats import kstest, spearmanr

from followup.core.planning.what_if.cars import CarAhead, near_days
from followup.core.planning.what_if.draws import DAYS, WEEKS, curves_of, draw
from followup.core.planning.what_if.odds import Counted, Odds, odds_of
from followup.core.planning.what_if.outcome import live, outcomes
from followup.core.planning.what_if.plan import NEVER_DAY, plan_for
from followup.core.shop import ShopRules
from followup.rehearsal.bench.many_cars import SHOP, TODAY, many_cars
from followup.rehearsal.bench.replay import replay
from followup.rehearsal.bench.what_if import CHANGES, SKILLS, drained

NOBODY_ANSWERS = Odds((0.0, 0.0), 0.0, 1e-9)


@pytest.mark.parametrize(
    "rules", [SHOP.rules, *CHANGES.values(), replace(SHOP.rules, invite_every_days=28, rest_after_visit_days=30)]
)
def test_the_days_are_those_of_the_planner(rules: ShopRules) -> None:
    pictures, cars = many_cars(24, 5)
    plan = plan_for(SHOP, rules, cars, TODAY)
    draws = draw(curves_of(cars), Odds(), 2, np.random.default_rng(11))
    lived = replay(SHOP, pictures, cars, plan, draws, Odds(), TODAY)
    tally, _ = live(plan, draws, cars, Odds(), SKILLS)
    # A chance that is reached at noon or only by the evening parts a text here and there by a day.
    assert tally.texts.sum(axis=1) == pytest.approx(lived.texts.sum(axis=1), rel=0.03, abs=1)
    assert tally.prompted.sum(axis=1) == pytest.approx(lived.prompted, rel=0.05, abs=1)
    assert tally.own.sum(axis=1) == pytest.approx(lived.own, abs=1)
    assert tally.wasted == pytest.approx(lived.wasted, abs=1)


def test_due_days_are_drawn_as_the_windows_have_them() -> None:
    _, cars = many_cars(3, 1)
    item = cars[0].items[0]
    draws = draw(curves_of(cars), Odds(), 4000, np.random.default_rng(2))
    days = draws.due[:, 0, 0] + item.since_days
    assert kstest([item.curve.chance(float(day)) for day in days], "uniform").pvalue > 0.01


def test_what_a_car_has_in_common_is_drawn_in_common() -> None:
    _, cars = many_cars(40, 1)
    of_two = next(at for at, car in enumerate(cars) if sum(one.shared > 0.5 for one in car.items) >= 2)
    first, second = (number for number, one in enumerate(cars[of_two].items) if one.shared > 0.5)
    draws = draw(curves_of(cars), Odds(), 4000, np.random.default_rng(2)).due[:, of_two, :]
    # Of normal numbers that correlate by r the ranks correlate by 6/pi arcsin(r/2) (Pearson, from memory).
    expected = 6 / np.pi * np.arcsin(0.85 / 2)
    assert spearmanr(draws[:, first], draws[:, second]).statistic == pytest.approx(expected, abs=0.03)


def test_an_earlier_lead_time_tells_nobody_later() -> None:
    _, cars = many_cars(60, 3)
    draws = draw(curves_of(cars), NOBODY_ANSWERS, 1, np.random.default_rng(1))
    days = [
        live(plan_for(SHOP, replace(SHOP.rules, lead_days=lead), cars, TODAY), draws, cars, NOBODY_ANSWERS, SKILLS)[1]
        for lead in (21, 49)
    ]
    # One invite a phone: a car that is told earlier may keep the other of its phone waiting.
    alone = np.array([sum(other.phone == car.phone for other in cars) == 1 for car in cars])
    assert (days[1][0] <= days[0][0])[alone].all() and (days[1] < days[0]).any()


def test_no_text_leaves_on_a_sunday_or_to_who_stopped() -> None:
    _, cars = many_cars(30, 4)
    plan = plan_for(SHOP, SHOP.rules, cars, TODAY)
    sundays = [(TODAY.weekday() + day) % 7 == 6 for day in range(DAYS)]
    assert not plan.may_leave[sundays].any() and plan.may_leave.any()
    stopping = replace(Odds(), booked=(0.0, 0.0), stopped=1.0)
    tally, _ = live(plan, draw(curves_of(cars), stopping, 3, np.random.default_rng(1)), cars, stopping, SKILLS)
    phones = len({car.phone for car in cars})
    assert (tally.texts.sum(axis=1) <= phones).all() and (tally.stops == tally.texts.sum(axis=1)).all()


def test_who_may_not_be_texted_is_not() -> None:
    _, cars = many_cars(20, 4)
    silent = [replace(one, may_text=False) for one in cars]
    found = drained(outcomes([plan_for(SHOP, SHOP.rules, silent, TODAY)], silent, Odds(), SKILLS, _seeded(), worlds=4))
    assert found[0].texts.mean == 0.0 and found[0].own.mean > 0.0


def test_a_reminder_comes_half_a_year_after_the_last_visit() -> None:
    _, cars = many_cars(12, 6)
    cars = [replace(one, phone=at) for at, one in enumerate(cars)]
    plan = plan_for(SHOP, SHOP.rules, cars, TODAY, "reminder")
    _, days = live(plan, draw(curves_of(cars), NOBODY_ANSWERS, 1, _seeded()), cars, NOBODY_ANSWERS, SKILLS)
    for car, day in zip(cars, days[0], strict=True):
        assert car.last_visit is not None
        wanted = max(car.last_visit + 182, 0)
        # Over a weekend and a holiday it waits.
        assert day >= NEVER_DAY if wanted >= DAYS else wanted <= day <= wanted + 4


# Of 60 cars (seed 5) in 120 worlds (seed 9), as lives on arrays of two dimensions came to it before they were laid in
# one row: texts, prompted and own visits a week, stops, shares wasted, past the action and the legal limit, labor hours
# a week; how many cars are told, and the sum of their days. The first two are those of the rule that looks at tires and
# pads together, which came later; the reminder's, which asks no such rule, are still those from before.
CAME_TO = (
    (5.215064, 1.476282, 1.239103, 1.441667, 0.130443, 0.418725, 0.046889, 1.652628, 56, 1446),
    (5.769551, 1.627564, 1.239744, 1.625, 0.154215, 0.375782, 0.040436, 1.721474, 59, 1715),
    (3.337179, 0.976282, 1.239103, 0.991667, 0.238127, 0.493313, 0.050664, 1.19237, 60, 2314),
)


def test_the_same_seed_comes_to_the_same() -> None:
    _, cars = many_cars(60, 5)
    plans = [plan_for(SHOP, rules, cars, TODAY) for rules in (SHOP.rules, CHANGES["two weeks earlier"])]
    plans.append(plan_for(SHOP, SHOP.rules, cars, TODAY, "reminder"))
    found = drained(outcomes(plans, cars, Odds(), SKILLS, np.random.default_rng(9), worlds=120))
    for one, expected in zip(found, CAME_TO, strict=True):
        ranges = (one.texts, one.prompted, one.own, one.stops, one.wasted, one.past_action, one.past_legal)
        days = [day for day in one.first_text.values() if day is not None]
        told = [*(each.mean for each in ranges), one.hours_a_week.mean, len(days), sum(days)]
        assert told == pytest.approx(expected, abs=1e-5)


def test_an_empty_shop_has_nothing_ahead() -> None:
    found = drained(outcomes([plan_for(SHOP, SHOP.rules, [], TODAY)], [], Odds(), SKILLS, _seeded(), worlds=4))
    assert (found[0].texts.mean, found[0].first_text) == (0.0, {})
    bare = [CarAhead("C", 1, ())]
    found = drained(outcomes([plan_for(SHOP, SHOP.rules, bare, TODAY)], bare, Odds(), SKILLS, _seeded(), worlds=4))
    assert found[0].first_text == {"C": None}


def test_rates_move_from_what_is_usual_to_what_was_counted() -> None:
    assert odds_of(Counted()) == Odds()
    many = odds_of(Counted(first=(600, 1000), second=(0, 0), stops=(0, 10_000), own=(200, 100.0)))
    assert many.booked[0] == pytest.approx(0.59, abs=0.001) and many.booked[1] == pytest.approx(0.20)
    assert many.stopped < 0.001 and 1.1 < many.own_visits_a_year < 2.0


def test_near_is_one_unit_of_wear() -> None:
    # .4 mm a thousand miles at 25 miles a day: a mm in 100 days.
    assert near_days(0.4, 25.0) == pytest.approx(100.0)
    assert near_days(None, 25.0) == near_days(0.4, None) == 30.0


def _seeded() -> np.random.Generator:
    return np.random.default_rng(WEEKS)
