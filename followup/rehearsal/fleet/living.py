"""An invented fleet from new until five years after each car's last visit: what was true at every visit, and after."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from followup.core.forecast.season import DAYS_A_YEAR, Array
from followup.rehearsal.fleet.driving import WEEK, weekly_miles
from followup.rehearsal.fleet.habits import FleetHabits
from followup.rehearsal.fleet.wearing import Parts, do_the_work, fresh_parts, wear_a_week

# How long the truth is followed after the last visit: what is due later counts as this.
HORIZON_DAYS = 1_825.0
_HORIZON_WEEKS = int(HORIZON_DAYS // WEEK) + 1
# Kind, class by the contract, new tread in 32nds, share, and shares of driven wheels (front, all, rear).
_KINDS = (
    ("compact", "car", 10.0, 0.30, (0.90, 0.07, 0.03)),
    ("midsize", "car", 10.3, 0.30, (0.80, 0.12, 0.08)),
    ("suv", "suv", 11.0, 0.30, (0.40, 0.60, 0.00)),
    ("pickup", "pickup", 12.5, 0.10, (0.00, 0.60, 0.40)),
)
# Driven wheels, and 32nds per 1,000 miles of front and rear axle; the fleet's own truth, whatever the catalogue says.
_DRIVEN = ("front", "all", "rear")
_TREAD_RATES = np.array([(0.21, 0.13), (0.18, 0.165), (0.17, 0.185)])
# New pads in mm and mm per 1,000 miles, at each wheel.
_NEW_PADS = np.array([11.0, 11.0, 9.5, 9.5])
_PAD_RATES = np.array([0.165, 0.165, 0.115, 0.115])
# Last visits lie in the two years before this day, 2026-06-30.
_LATEST_DAY = 739_797
_WINTER = (319, 95)


@dataclass(frozen=True)
class Cars:
    """The cars as built: arrays (cars,). `visit_weeks` (cars, visits) are weeks of life, -1 where there was none."""

    kind: np.ndarray
    driven: np.ndarray
    born: Array
    visit_weeks: np.ndarray
    last_week: np.ndarray
    has_winter_set: np.ndarray
    is_labeled: np.ndarray

    @property
    def count(self) -> int:
        """How many."""
        return len(self.kind)


@dataclass(frozen=True)
class Lived:
    """A fleet that was lived to its end; `miles_seen` (cars, visits), `winter_on` (cars, visits) at the visits.

    `winter_of` (cars,) is the row of a car in `winter`, -1 where it has no such set.
    """

    cars: Cars
    tires: Parts
    winter: Parts
    winter_of: np.ndarray
    pads: Parts
    miles_seen: Array
    winter_on: np.ndarray
    odometer: Array


def live(habits: FleetHabits, count: int, random: np.random.Generator) -> Lived:
    """Build `count` cars and live their weeks."""
    cars = build_cars(habits, count, random)
    weeks = int(cars.last_week.max()) + _HORIZON_WEEKS + 1
    miles = weekly_miles(habits.driving, cars.born, weeks, random)
    tires, winter, pads = fit_parts(habits, cars, random)
    winter_cars = np.nonzero(cars.has_winter_set)[0]
    is_winter = _winter_weeks(cars, weeks, random)
    visits = cars.visit_weeks.shape[1]
    winter_on = np.zeros((count, visits), dtype=bool)
    always = np.ones(count, dtype=bool)
    for week in range(weeks):
        on = is_winter[week]
        sets = (
            (tires, miles[week], cars.last_week, cars.visit_weeks, ~on),
            (
                winter,
                miles[week, winter_cars],
                cars.last_week[winter_cars],
                cars.visit_weeks[winter_cars],
                on[winter_cars],
            ),
            (pads, miles[week], cars.last_week, cars.visit_weeks, always),
        )
        for parts, driven, last_week, visit_weeks, is_on in sets:
            wear_a_week(parts, driven, week, last_week, is_on)
            at_visit = np.nonzero(visit_weeks == week)
            parts.seen[at_visit] = parts.value[at_visit[0]]
            do_the_work(parts, driven, week, last_week, is_on)
        car, visit = np.nonzero(cars.visit_weeks == week)
        winter_on[car, visit] = on[car]
    odometer = np.cumsum(miles, axis=0)
    seen = np.take_along_axis(odometer, np.maximum(cars.visit_weeks.T, 0), axis=0).T
    winter_of = np.full(count, -1)
    winter_of[winter_cars] = np.arange(len(winter_cars))
    return Lived(cars, tires, winter, winter_of, pads, seen, winter_on, odometer)


def build_cars(habits: FleetHabits, count: int, random: np.random.Generator) -> Cars:
    kind = random.choice(len(_KINDS), count, p=[one[3] for one in _KINDS])
    shares = np.array([one[4] for one in _KINDS])[kind].cumsum(axis=1)
    driven = (random.random(count)[:, None] > shares).sum(axis=1)
    first = np.clip(np.exp(random.normal(np.log(3.2), 0.7, count)), 0.3, 12.0) * DAYS_A_YEAR
    many = len(habits.visits)
    visits = 1 + random.choice(many, count, p=habits.visits)
    gaps = np.maximum(np.exp(random.normal(np.log(habits.visit_gap_days), 0.45, (count, many - 1))), 4 * WEEK)
    days = np.concatenate([first[:, None], first[:, None] + gaps.cumsum(axis=1)], axis=1)
    weeks = np.where(np.arange(many) < visits[:, None], (days // WEEK).astype(int), -1)
    last_week = weeks.max(axis=1)
    born = _LATEST_DAY - random.integers(0, 730, count) - last_week * WEEK
    has_winter = random.random(count) < habits.winter_share
    is_labeled = random.random(count) < habits.winter_labeled_share
    return Cars(kind, driven, born.astype(float), weeks, last_week, has_winter, is_labeled)


def fit_parts(habits: FleetHabits, cars: Cars, random: np.random.Generator) -> tuple[Parts, Parts, Parts]:
    """Tires, winter tires of those who have some, and pads, on new cars."""
    visits = cars.visit_weeks.shape[1]
    hard = random.normal(0.0, 1.0, cars.count)
    own = random.normal(0.0, 1.0, cars.count)
    together = habits.tires_with_pads
    on_tires = habits.tires.between_drivers * hard
    on_pads = habits.pads.between_drivers * (together * hard + np.sqrt(1 - together**2) * own)
    tread_rate = np.repeat(_TREAD_RATES[cars.driven], 2, axis=1)
    new_tread = np.array([one[2] for one in _KINDS])[cars.kind]
    tires = fresh_parts(habits.tires, new_tread, tread_rate, on_tires, visits, random)
    some = cars.has_winter_set
    winter = fresh_parts(habits.tires, new_tread[some], tread_rate[some], on_tires[some], visits, random)
    pad_rate, new_pads = (np.broadcast_to(one, (cars.count, 4)) for one in (_PAD_RATES, _NEW_PADS))
    pads = fresh_parts(habits.pads, new_pads, pad_rate, on_pads, visits, random)
    return tires, winter, pads


def _winter_weeks(cars: Cars, weeks: int, random: np.random.Generator) -> np.ndarray:
    """Weeks (weeks, cars) in which the winter set is on: from about mid November to early April."""
    puts_on = _WINTER[0] + random.normal(0.0, 12.0, cars.count)
    takes_off = _WINTER[1] + random.normal(0.0, 12.0, cars.count)
    of_year = (cars.born[None, :] + np.arange(weeks)[:, None] * WEEK - 730_120.0) % DAYS_A_YEAR
    return np.asarray(((of_year >= puts_on) | (of_year < takes_off)) & cars.has_winter_set)


def kind_of(cars: Cars, car: int) -> tuple[str, str]:
    """Class and driven wheels of a car, in the words of the contract."""
    return _KINDS[int(cars.kind[car])][1], _DRIVEN[int(cars.driven[car])]
