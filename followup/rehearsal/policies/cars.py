"""The cars of the world while they are lived in: wear, rotations, visits, what is read and done at them."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

import numpy as np

from followup.core.forecast.season import Array
from followup.core.inspection import Reading as Entered
from followup.core.item import converted
from followup.core.items import BY_CODE
from followup.rehearsal.fleet.reading import operators, write_down, write_odometer
from followup.rehearsal.fleet.wearing import AXLES, Parts, put_on, rotate, wear_a_week
from followup.rehearsal.policies.world import World, repeated

Place = Literal["front_left", "front_right", "rear_left", "rear_right"]
PLACES: tuple[Place, ...] = ("front_left", "front_right", "rear_left", "rear_right")
ITEMS = ("tire_tread", "brake_pad")
# What lies so near to its action limit is done at a visit, 1/32 of tread or 1 mm of lining.
DONE_WITHIN = 1.0
# A part is measured a second time before it is replaced: a reading that lies too low by so much is found out then.
_ODD = 2.0
_LONG = 10**9
_MOST_REPLACEMENTS = 8


@dataclass(frozen=True)
class Read:
    """What was read at the visits of one week, before the work: `value` (rows, 2, 4) by item and place, NaN missing."""

    value: Array
    odometer: Array


@dataclass(frozen=True)
class Fresh:
    """The parts that each customer's car is given, whatever way it is invited: (replacements, customers, 4)."""

    value: Array
    of_part: Array

    @staticmethod
    def drawn(parts: Parts, seed: int) -> Fresh:
        """Enough of them for the years of a comparison."""
        of = repeated(parts, 1, seed)
        everybody, value, of_part = np.arange(len(of.value)), [], []
        for _ in range(_MOST_REPLACEMENTS):
            for axle in range(len(AXLES)):
                put_on(of, everybody, axle)
            value.append(of.new.copy())
            of_part.append(of.of_part.copy())
        return Fresh(np.stack(value), np.stack(of_part))


@dataclass
class LivedCars:
    """The cars of the world as often as there are ways of inviting: row = way x customers + customer."""

    world: World
    ways: int
    kinds: tuple[Parts, Parts]
    fresh: tuple[Fresh, Fresh]
    replaced: np.ndarray
    odometer: Array
    week: int = -1

    @staticmethod
    def begin(world: World, ways: int) -> LivedCars:
        """As the world begins."""
        seed = world.seeds[0]
        tires, pads = repeated(world.tires, ways, seed + 1), repeated(world.pads, ways, seed + 2)
        fresh = Fresh.drawn(world.tires, seed + 3), Fresh.drawn(world.pads, seed + 4)
        replaced = np.zeros((len(tires.value), 2, 2), dtype=int)
        return LivedCars(world, ways, (tires, pads), fresh, replaced, np.tile(world.odometer, ways))

    @property
    def value(self) -> Array:
        """The true values now, (rows, 2, 4): tread in 32nds, pads in mm."""
        return np.stack([parts.value for parts in self.kinds], axis=1)

    @property
    def action(self) -> Array:
        """The limits at which work is recommended, (2, 1)."""
        return np.array([[parts.wearing.limit] for parts in self.kinds])

    @property
    def legal(self) -> Array:
        """The legal limits, (2, 1), in the same units."""
        limits = [(BY_CODE[code], BY_CODE[code].legal_limit) for code in ITEMS]
        return np.array([[converted(one.value, one.unit, item.unit or "")] for item, one in limits if one])

    def live_a_week(self) -> None:
        """One week more on the road."""
        self.week += 1
        rows = len(self.odometer)
        miles = np.tile(self.world.miles[self.week], self.ways)
        self.odometer = self.odometer + miles
        always, never = np.ones(rows, dtype=bool), np.full(rows, _LONG)
        for parts in self.kinds:
            wear_a_week(parts, miles, self.week, never, always)
        self.kinds[0].next_rotation = self.kinds[0].next_rotation - miles

    def ahead(self, weeks: int) -> Array:
        """The true values so many weeks from now if nothing is done, (rows, 2, 4); only an oracle knows them."""
        miles = np.tile(self.world.miles[self.week + 1 : self.week + 1 + weeks].sum(axis=0), self.ways)
        worn = [
            parts.pace * parts.of_part * parts.misaligned * (1 + parts.wearing.bend * (2 * parts.value / parts.new - 1))
            for parts in self.kinds
        ]
        return self.value - np.stack(worn, axis=1) * (miles / 1000)[:, None, None]

    def read(self) -> Read:
        """What a technician would write down of every car this week; the same eyes and gauges in every way."""
        seed, found = self.world.seeds[0], []
        for mine in np.split(np.arange(len(self.odometer)), self.ways):
            read = []
            for number, how in enumerate((self.world.habits.tread_read, self.world.habits.pads_read)):
                parts, random = self.kinds[number], np.random.default_rng((seed, self.week, number))
                who = operators(len(mine), 1, random)
                value = write_down(parts.value[mine, None], parts.new_value[mine], how, who, random).value[:, 0]
                again = parts.value[mine] + random.normal(0.0, how.error, value.shape)
                is_odd = (value <= parts.wearing.limit + DONE_WITHIN) & (parts.value[mine] - value > _ODD)
                read.append(np.where(is_odd, again, value))
            random = np.random.default_rng((seed, self.week, len(read)))
            odometer = write_odometer(self.odometer[mine, None], self.world.habits, random)[:, 0]
            found.append((np.stack(read, axis=1), odometer))
        return Read(*(np.concatenate(column) for column in zip(*found, strict=True)))

    def do(self, rows: np.ndarray, read: Read) -> tuple[np.ndarray, np.ndarray]:
        """The work of a visit on these rows, by what was read: (rows, 2, 2) by item and axle, what was replaced; and
        where the tires were rotated, rows."""
        near = read.value[rows] <= self.action + DONE_WITHIN
        done = np.stack([near[:, :, where].any(axis=2) for where in AXLES], axis=2)
        for number in range(len(self.kinds)):
            for axle in range(len(AXLES)):
                self._replace(number, axle, rows[done[:, number, axle]])
        tires = self.kinds[0]
        # New tires on one axle are not moved to the other in the same visit.
        rotated = tires.rotates[rows] & (tires.next_rotation[rows] < 0) & ~done[:, 0].any(axis=1)
        rotate(tires, rows[rotated])
        # By the same miles in every way, so that nothing but texts parts them.
        tires.next_rotation[rows[rotated]] = tires.wearing.rotation_miles
        return done, rotated

    def _replace(self, number: int, axle: int, rows: np.ndarray) -> None:
        parts, fresh, where = self.kinds[number], self.fresh[number], AXLES[axle]
        customer, turn = rows % self.world.customers, self.replaced[rows, number, axle] % _MOST_REPLACEMENTS
        parts.new[rows, where] = parts.value[rows, where] = fresh.value[turn, customer, where]
        parts.of_part[rows, where] = fresh.of_part[turn, customer, where]
        self.replaced[rows, number, axle] += 1


def entered(item: str, place: Place, value: float) -> Entered:
    """A reading as the inspection contract has it."""
    if np.isnan(value):
        return Entered(item=item, position=place, not_checked="no_time")
    return Entered(item=item, position=place, value=round(float(value), 2), unit=BY_CODE[item].unit)
