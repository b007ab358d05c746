"""The world that every way of inviting meets: cars of the invented fleet, when they come by themselves, who answers."""

from __future__ import annotations

from dataclasses import dataclass, fields, replace
from datetime import date
from functools import reduce
from typing import Any

import numpy as np

from followup.core.forecast.season import DAYS_A_YEAR, Array
from followup.core.vehicle import Vehicle
from followup.rehearsal.fleet.driving import WEEK, weekly_miles
from followup.rehearsal.fleet.habits import AS_PUBLISHED, FleetHabits
from followup.rehearsal.fleet.living import Cars, build_cars, fit_parts, kind_of
from followup.rehearsal.fleet.wearing import Parts, do_the_work, wear_a_week

BEGINS_ON = date(2023, 1, 2)
# No value falls below it: nobody has anything changed elsewhere.
_NEVER_CHANGED = (-1.0, -1.0)


@dataclass(frozen=True)
class People:
    """How customers behave (assumptions of the comparison, the same for every way of inviting).

    `books` is the chance that a text since the last visit leads to one: of the first, and of each later one. From the
    text to the visit it takes a log-normal time with `lead_days` as its median.
    """

    own_visits_a_year: float = 1.1
    books: tuple[float, float] = (0.35, 0.20)
    lead_days: float = 21.0
    lead_spread: float = 0.4
    work_told_share: float = 1.0


@dataclass(frozen=True)
class World:
    """Customers with one car each (rows), of several seeds; arrays (weeks, rows) count from `BEGINS_ON`.

    `draw` is what each text of that week is answered by, `lead_weeks` how long the visit takes from then on, `tells`
    whether the work of a visit is written down; `seed` (rows,) is the number of the row's seed. `tires` and `pads` are
    as the cars have them when it begins.
    """

    habits: FleetHabits
    people: People
    seed: np.ndarray
    vehicles: tuple[Vehicle, ...]
    tires: Parts
    pads: Parts
    odometer: Array
    miles: Array
    comes: np.ndarray
    draw: Array
    lead_weeks: np.ndarray
    tells: np.ndarray
    seeds: tuple[int, ...]

    @property
    def weeks(self) -> int:
        """How many weeks there are."""
        return len(self.miles)

    @property
    def customers(self) -> int:
        """How many rows."""
        return len(self.seed)


def build_world(customers: int, seeds: tuple[int, ...], weeks: int, people: People) -> World:
    """So many customers of each seed; the same for the same seeds. Their cars have lived already, without the shop."""
    # The fleet's owners go elsewhere too, and some have two sets of tires; here neither is in question.
    habits = replace(AS_PUBLISHED, winter_share=0.0)
    return reduce(_together, (_of_one_seed(habits, customers, seed, weeks, people) for seed in seeds))


def _of_one_seed(habits: FleetHabits, count: int, seed: int, weeks: int, people: People) -> World:
    random = np.random.default_rng(seed)
    cars = build_cars(habits, count, random)
    age = cars.visit_weeks[:, 0]
    born = np.asarray(BEGINS_ON.toordinal() - age * WEEK, dtype=float)
    miles = weekly_miles(habits.driving, born, int(age.max()) + weeks, random)
    tires, _, pads = fit_parts(habits, cars, random)
    _live_until(age, miles, (tires, pads))
    here = np.arange(weeks)[:, None] + age[None, :]
    told_first = born + np.round(random.uniform(-1, 1, count) * habits.first_use_error_days)
    lead = np.exp(random.normal(np.log(people.lead_days), people.lead_spread, (weeks, count)))
    return World(
        habits=habits,
        people=people,
        seed=np.zeros(count, dtype=int),
        vehicles=tuple(_vehicle(cars, car, seed, told_first[car]) for car in range(count)),
        tires=tires,
        pads=pads,
        odometer=np.asarray((miles * (np.arange(len(miles))[:, None] < age)).sum(axis=0)),
        miles=np.asarray(np.take_along_axis(miles, here, axis=0)),
        comes=random.random((weeks, count)) < people.own_visits_a_year * WEEK / DAYS_A_YEAR,
        draw=random.random((weeks, count)),
        lead_weeks=np.maximum(np.round(lead / WEEK), 1).astype(int),
        tells=random.random((weeks, count)) < people.work_told_share,
        seeds=(seed,),
    )


def _vehicle(cars: Cars, car: int, seed: int, told_first: float) -> Vehicle:
    kind, driven = kind_of(cars, car)
    first = date.fromordinal(int(told_first))
    return Vehicle(f"{seed}-{car}", vehicle_class=kind, driven=driven, first_used_on=first, powertrain="gasoline")


def _live_until(age: np.ndarray, miles: Array, kinds: tuple[Parts, ...]) -> None:
    """The weeks before it begins: parts wear, owners have them changed; from then on the shop alone changes them."""
    for week in range(int(age.max())):
        is_on = week < age
        for parts in kinds:
            wear_a_week(parts, miles[week], week, age, is_on)
            do_the_work(parts, miles[week], week, age, is_on)
    for parts in kinds:
        parts.wearing = replace(parts.wearing, owners_change_at=_NEVER_CHANGED)
        parts.change_at[:] = _NEVER_CHANGED[0]
        parts.happened.clear()


def _together(one: World, other: World) -> World:
    """Both worlds side by side."""
    joined: dict[str, Any] = {}
    for name in ("odometer", "seed"):
        joined[name] = np.concatenate([getattr(one, name), getattr(other, name) + (name == "seed") * len(one.seeds)])
    for name in ("miles", "comes", "draw", "lead_weeks", "tells"):
        joined[name] = np.concatenate([getattr(one, name), getattr(other, name)], axis=1)
    return replace(
        one,
        vehicles=one.vehicles + other.vehicles,
        tires=_parts_of((one.tires, other.tires)),
        pads=_parts_of((one.pads, other.pads)),
        seeds=one.seeds + other.seeds,
        **joined,
    )


def repeated(parts: Parts, times: int, seed: int) -> Parts:
    """The same parts so many times one below the other, with randomness of their own."""
    return replace(_parts_of((parts,) * times), random=np.random.default_rng(seed))


def _parts_of(several: tuple[Parts, ...]) -> Parts:
    names = [one.name for one in fields(Parts) if isinstance(getattr(several[0], one.name), np.ndarray)]
    arrays: dict[str, Any] = {name: np.concatenate([getattr(one, name) for one in several]) for name in names}
    return replace(several[0], happened=[], **arrays)
