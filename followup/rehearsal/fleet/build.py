"""An invented fleet put together: inspection lines as a shop would write them, and what was true."""

from __future__ import annotations

import json
from collections import defaultdict
from collections.abc import Callable
from dataclasses import dataclass
from datetime import UTC, date, datetime
from itertools import pairwise
from typing import Any

import numpy as np

from followup.core.forecast.history import CarHistory, history_of_lines
from followup.core.inspection import read_line
from followup.core.items import BY_CODE
from followup.rehearsal.fleet.driving import WEEK
from followup.rehearsal.fleet.habits import FleetHabits
from followup.rehearsal.fleet.living import HORIZON_DAYS, Lived, kind_of, live
from followup.rehearsal.fleet.reading import Written, operators, write_down, write_odometer
from followup.rehearsal.fleet.wearing import Happening, Parts

_PLACES = ("front_left", "front_right", "rear_left", "rear_right")
_AXLES = ("front", "rear")
_ROTATED = {
    "front_left": "rear_left",
    "front_right": "rear_right",
    "rear_left": "front_left",
    "rear_right": "front_right",
}
_ITEMS = ("tire_tread", "brake_pad")
_MM_PER_32ND = 25.4 / 32
_ANY_DAY = datetime(9000, 1, 1, tzinfo=UTC)

Key = tuple[str, str, str]


@dataclass(frozen=True)
class Pair:
    """Two readings of one axle that follow each other, and what was done in between ("": nothing).

    `is_told` where any of it was written down.
    """

    car: str
    item: str
    axle: str
    before: date
    after: date
    did: str
    is_told: bool


@dataclass(frozen=True)
class Fleet:
    """Lines of the inspection contract in the order of time, by car.

    `due_days` tells, for each (car, item, position) read above its limit at the car's last visit, the days from then
    until the truth reaches the limit if nothing is done; at most `HORIZON_DAYS`.
    """

    lines: tuple[dict[str, Any], ...]
    due_days: dict[Key, float]
    pairs: tuple[Pair, ...]

    def histories(self) -> list[CarHistory]:
        """The cars as the forecast reads them, by the way of every line that comes in."""
        return history_of_lines(read_line(json.dumps(line), _ANY_DAY, BY_CODE) for line in self.lines)


def build_fleet(habits: FleetHabits, cars: int, seed: int, progress: Callable[[int], object] | None = None) -> Fleet:
    """A fleet of so many cars; the same for the same seed."""
    random = np.random.default_rng(seed)
    lived = live(habits, cars, random)
    operator = operators(cars, len(habits.visits), random)
    tread = write_down(_tread_seen(lived), lived.tires.new, habits.tread_read, operator, random)
    pads = write_down(lived.pads.seen, lived.pads.new, habits.pads_read, operator, random)
    typed = write_odometer(lived.miles_seen, habits, random)
    told_first = lived.cars.born + np.round(random.uniform(-1, 1, cars) * habits.first_use_error_days)
    happened = _by_car(lived)
    lines: list[dict[str, Any]] = []
    due_days: dict[Key, float] = {}
    pairs: list[Pair] = []
    for car in range(cars):
        seen = _Seen(lived, car, tread, pads, typed, told_first, happened)
        lines += seen.lines()
        due_days.update(seen.due(habits))
        pairs += seen.pairs()
        if progress:
            progress(1)
    return Fleet(tuple(lines), due_days, tuple(pairs))


def _code(car: int) -> str:
    return f"V-{car + 1}"


def _tread_seen(lived: Lived) -> np.ndarray:
    """The true tread of the set that was on, (cars, visits, 4)."""
    winter = np.full_like(lived.tires.seen, np.nan)
    has = lived.winter_of >= 0
    winter[has] = lived.winter.seen[lived.winter_of[has]]
    return np.where(lived.winter_on[:, :, None], winter, lived.tires.seen)


def _by_car(lived: Lived) -> dict[tuple[int, str], list[Happening]]:
    """What happened to the main set of tires and to the pads, by (car, item); a winter set's life is its own."""
    found: dict[tuple[int, str], list[Happening]] = defaultdict(list)
    for item, parts in zip(_ITEMS, (lived.tires, lived.pads), strict=True):
        for one in parts.happened:
            found[(one.car, item)].append(one)
    return found


@dataclass(frozen=True)
class _Seen:
    """One car as the shop got to see it."""

    lived: Lived
    car: int
    tread: Written
    pads: Written
    typed: np.ndarray
    told_first: np.ndarray
    happened: dict[tuple[int, str], list[Happening]]

    @property
    def _weeks(self) -> list[int]:
        return [int(week) for week in self.lived.cars.visit_weeks[self.car] if week >= 0]

    def _day(self, week: int) -> date:
        # A visit is at the end of its week.
        return date.fromordinal(int(self.lived.cars.born[self.car] + (week + 1) * WEEK))

    def lines(self) -> list[dict[str, Any]]:
        """One inspection a visit, with the work since the last one that was written down."""
        kind, driven = kind_of(self.lived.cars, self.car)
        vehicle = {
            "id": _code(self.car), "class": kind, "driven": driven, "powertrain": "gasoline",
            "first_used_on": date.fromordinal(int(self.told_first[self.car])).isoformat(),
        }  # fmt: skip
        found, since = [], -1
        is_labeled = self.lived.cars.has_winter_set[self.car] and self.lived.cars.is_labeled[self.car]
        for visit, week in enumerate(self._weeks):
            line = {
                "inspection": f"I-{self.car + 1}-{visit + 1}",
                "inspected_at": f"{self._day(week).isoformat()}T10:00",
                "odometer": int(self.typed[self.car, visit]),
                "unit": "mi",
                "customer": {"id": f"C-{self.car + 1}"},
                "vehicle": vehicle,
                "readings": self._readings(visit),
                "work_done": self._work(since, week),
            }
            if is_labeled:
                line["tire_set"] = "winter" if self.lived.winter_on[self.car, visit] else "all_season"
            found.append(line)
            since = week
        return found

    def _readings(self, visit: int) -> list[dict[str, Any]]:
        found: list[dict[str, Any]] = []
        for side, place in enumerate(_PLACES):
            for item, written in zip(_ITEMS, (self.tread, self.pads), strict=True):
                value = written.value[self.car, visit, side]
                if np.isnan(value):
                    found.append({"item": item, "position": place, "not_checked": "no_time"})
                    continue
                in_mm = item == "brake_pad" or written.step[self.car, visit] < 1.0
                scale = _MM_PER_32ND if in_mm and item == "tire_tread" else 1.0
                shown = {"value": round(float(value * scale), 1), "unit": "mm" if in_mm else "32nds"}
                found.append({"item": item, "position": place, **shown})
        return found

    def _work(self, since: int, until: int) -> list[dict[str, Any]]:
        """What was written down of the work after the visit of week `since`, in this one's record."""
        found: dict[tuple[int, str], dict[str, Any]] = {}
        for item in _ITEMS:
            for one in self.happened.get((self.car, item), []):
                if not (one.is_told and since <= one.week < until):
                    continue
                told = {
                    "did": one.did, "on": self._day(one.week).isoformat(),
                    "odometer": int(self.lived.odometer[one.week, self.car]),
                }  # fmt: skip
                if one.did == "rotated":
                    found[(one.week, "tire_rotation")] = {"item": "tire_tread", **told, "moved": _ROTATED}
                else:
                    found[(one.week, f"{item} {one.axle}")] = {"item": item, "position": _AXLES[one.axle], **told}
        return [found[key] for key in sorted(found)]

    def _parts(self, item: str) -> tuple[Parts, int]:
        """The parts that were on at the last visit, and this car's row in them."""
        if item == "brake_pad":
            return self.lived.pads, self.car
        if self.lived.winter_on[self.car, len(self._weeks) - 1]:
            return self.lived.winter, int(self.lived.winter_of[self.car])
        return self.lived.tires, self.car

    def due(self, habits: FleetHabits) -> dict[Key, float]:
        """Days until the limit, of what was read above it at the last visit."""
        last = len(self._weeks) - 1
        found: dict[Key, float] = {}
        for item, written, limit in zip(
            _ITEMS, (self.tread, self.pads), (habits.tires.limit, habits.pads.limit), strict=True
        ):
            parts, row = self._parts(item)
            # A winter set that is known as such has a limit of its own.
            has_other_limit = parts is self.lived.winter and self.lived.cars.is_labeled[self.car]
            for side, place in enumerate(_PLACES):
                read = written.value[self.car, last, side]
                if np.isnan(read) or read <= limit or has_other_limit:
                    continue
                already = parts.seen[row, last, side] <= limit
                days = 0.0 if already else min(float(parts.due_days[row, side]), HORIZON_DAYS)
                found[(_code(self.car), item, place)] = days
        return found

    def pairs(self) -> list[Pair]:
        """The pairs of readings of each axle and what happened in between; not of cars with two sets of tires."""
        found = []
        for item, written in zip(_ITEMS, (self.tread, self.pads), strict=True):
            if item == "tire_tread" and self.lived.cars.has_winter_set[self.car]:
                continue
            for axle, sides in enumerate((slice(0, 2), slice(2, 4))):
                read = [
                    week for visit, week in enumerate(self._weeks)
                    if not np.isnan(written.value[self.car, visit, sides]).all()
                ]  # fmt: skip
                for before, after in pairwise(read):
                    between = [
                        one for one in self.happened.get((self.car, item), [])
                        if one.axle == axle and before <= one.week < after
                    ]  # fmt: skip
                    did = "replaced" if any(one.did == "replaced" for one in between) else "rotated" if between else ""
                    found.append(
                        Pair(
                            _code(self.car), item, _AXLES[axle], self._day(before), self._day(after), did,
                            any(one.is_told for one in between),
                        )
                    )  # fmt: skip
        return found
