"""A simulated shop lives for years: cars wear, customers come, are invited and answer, and a judge looks every day."""

from __future__ import annotations

import json
from collections.abc import Callable, Mapping
from dataclasses import dataclass, field, replace
from datetime import datetime, timedelta
from functools import partial
from pathlib import Path
from random import Random

from followup.core.forecast.season import DAYS_A_YEAR
from followup.core.shop import open_span
from followup.core.wall import day_of, to_wall
from followup.rehearsal.week.broken import Broken
from followup.rehearsal.week.customers import Habits
from followup.rehearsal.week.promises import broken_promises, in_one_line
from followup.rehearsal.week.shop_life import SimulatedShop
from followup.rehearsal.week.staff import Manners, Stay
from followup.rehearsal.week.troubles import Troubles, drawn_troubles
from followup.rehearsal.years.fleet import Counted, LivingFleet, car_of, vehicle_code
from followup.rehearsal.years.opening import begins_at, open_shop
from followup.storage import inspections, people
from followup.storage.rows import Row

# Planning asks for days; what the demo's ticks look at more often comes to the same a day later.
EVERY: Mapping[str, timedelta] = {
    **dict.fromkeys(("plan", "pace", "forecast", "watch_stops"), timedelta(days=1)), "settle": timedelta(hours=2),
}  # fmt: skip
WITHOUT = ("learn", "score")
# About one text a year that nobody asked for.
HABITS = Habits(unasked_a_day=0.003)
MANNERS = Manners(walk_ins_a_day=0.0, looks_every=timedelta(hours=1))
# One week in so many is a bad one, where troubles are asked for.
BAD_WEEK_EVERY = 8
_WEEK, _DAY = timedelta(weeks=1), timedelta(days=1)
_JUDGED = timedelta(days=3)
# The share of single calls to the provider that fail.
_FAULTY = 0.25
# Of the calls to the provider and from it that go as they should, one in so many goes over HTTP; the others all do.
OVER_THE_WIRE_ONE_IN = 8
Say = Callable[[str], object]


@dataclass(frozen=True)
class Years:
    """So many cars for so many years, drawn from that seed; with or without troubles, with or without pages and
    network."""

    cars: int
    years: float
    seed: int
    has_faults: bool = False
    is_direct: bool = False

    @property
    def weeks(self) -> int:
        """Whole weeks."""
        return max(round(self.years * DAYS_A_YEAR / 7), 1)

    @property
    def car_years(self) -> float:
        """One customer has one car."""
        return self.cars * self.weeks * 7 / DAYS_A_YEAR


@dataclass
class Lived:
    """What came of it."""

    asked: Years
    counted: Counted
    invites: int = 0
    broken: list[Broken] = field(default_factory=list)
    in_words: str = ""


def live_years(asked: Years, folder: Path, say: Say) -> Lived:
    """Live all of it in an empty folder; `say` is told how far it is."""
    fleet = LivingFleet.drawn(asked.cars, asked.weeks, asked.seed)
    premises = open_shop(folder, fleet, say)
    begins = begins_at(fleet)
    troubles = _troubles(asked, begins) if asked.has_faults else Troubles()
    with SimulatedShop(
        premises, asked.seed, begins, troubles=troubles, habits=HABITS, manners=MANNERS,
        faulty=_FAULTY if asked.has_faults else 0.0, without=WITHOUT, every=EVERY,
        one_in=0 if asked.is_direct else OVER_THE_WIRE_ONE_IN,
    ) as shop:  # fmt: skip
        life = _Life(asked, fleet, shop, say)
        for week in range(asked.weeks):
            life.live_a_week(begins + week * _WEEK)
            say(life.in_words(week + 1))
        return life.ended()


def _troubles(asked: Years, begins: datetime) -> Troubles:
    weeks = range(min(1, asked.weeks - 1), asked.weeks, BAD_WEEK_EVERY)
    drawn = [drawn_troubles(asked.seed + week, begins + week * _WEEK) for week in weeks]
    return replace(drawn[0], later=tuple(drawn[1:]))


class _Life:
    """One shop while it lives."""

    def __init__(self, asked: Years, fleet: LivingFleet, shop: SimulatedShop, say: Say) -> None:
        self.asked, self.fleet, self.shop, self._say = asked, fleet, shop, say
        self._random = Random(f"years {asked.seed}")
        self._invited: set[int] = set()
        # By what it says: each is told once, though several looks find it.
        self._broken: dict[str, Broken] = {}
        self._invites = 0
        with shop.store.read() as connection:
            cars = {row["code"]: row["id"] for row in people.all_vehicles(connection, shop.shop_id)}
        self._ids = [cars[vehicle_code(car)] for car in range(asked.cars)]
        self._cars = {vehicle_id: car_of(code) for code, vehicle_id in cars.items()}
        shop.staff.at_visit = self._inspect
        shop.when_read = self._note_text

    def live_a_week(self, begins: datetime) -> None:
        """One week more, and a look of the judge at the end of each day."""
        for car in self.fleet.live_a_week():
            day = begins + _DAY * self._random.randrange(6)
            if span := open_span(self.shop.shop, day_of(day, self.shop.shop.zone)):
                at = span[0] + (span[1] - span[0]) * self._random.uniform(0.05, 0.6)
                self.shop.world.call_at(at, partial(self.shop.staff.take_in, self._ids[car]))
        for number in range(7):
            until = begins + (number + 1) * _DAY
            self.shop.live(until)
            self._judge(until - _JUDGED)

    def in_words(self, weeks: int) -> str:
        """How far it is, in a line."""
        counted = self.fleet.counted
        return (
            f"week {weeks} of {self.asked.weeks}: {self._invites} invites, {counted.prompted} visits from them, "
            f"{counted.own} others, {len(self._broken)} promises broken"
        )

    def ended(self) -> Lived:
        """The judge looks at all of it once more."""
        it = self.shop.recorded()
        broken = broken_promises(it)
        self._note(broken)
        return Lived(
            self.asked, self.fleet.counted, self._invites, list(self._broken.values()), in_one_line(it, broken)
        )

    def _judge(self, since: datetime) -> None:
        self._note(broken_promises(self.shop.recorded(since)))

    def _note(self, broken: list[Broken]) -> None:
        for one in broken:
            if (which := one.in_words) not in self._broken:
                self._broken[which] = one
                self._say(f"broken: {which}, seed {self.asked.seed}")

    def _note_text(self, row: Row) -> None:
        if row["kind"] == "invite":
            self._invites += 1
            self._invited.add(row["vehicle_id"])

    def _inspect(self, stay: Stay, visit_id: int) -> None:
        """A technician looks at the car, does the work, and the line is kept by the program."""
        shop, now = self.shop, self.shop.world.program_now()
        with shop.store.read() as connection:
            visit = inspections.load_visit(connection, shop.shop_id, visit_id)
        assert visit is not None
        # A booking that followed an invite came from it, whatever the customer would have done without.
        is_prompted = stay.is_booked and stay.vehicle_id in self._invited
        self._invited.discard(stay.vehicle_id)
        wall = f"{to_wall(now, shop.shop.zone):%Y-%m-%dT%H:%M}"
        line = self.fleet.visit(self._cars[stay.vehicle_id], visit["code"], wall, is_prompted)
        kept = shop.program.house.keep_inspections(shop.shop_id, [json.dumps(line)], "Rui", accepts_doubtful=True)
        for one in kept:
            if one.outcome == "rejected":
                raise ValueError(f"a line of the fleet was refused: {one.faults}")
