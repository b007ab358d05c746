"""The weeks of the comparison: cars wear, customers come by themselves or are invited, and it is counted what came."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field
from datetime import date, timedelta

import numpy as np

from followup.core.forecast.season import DAYS_A_YEAR, Array
from followup.core.shop import ShopRules
from followup.rehearsal.fleet.driving import WEEK
from followup.rehearsal.policies.cars import DONE_WITHIN, LivedCars, Read
from followup.rehearsal.policies.forecast import text_days
from followup.rehearsal.policies.history import File
from followup.rehearsal.policies.overdue import WHY, why_overdue
from followup.rehearsal.policies.policies import POLICIES, SIX_MONTHS, Known, Policy, foreseen, guessed_days
from followup.rehearsal.policies.rule import Told
from followup.rehearsal.policies.world import BEGINS_ON, People, World, build_world

WARM_UP_WEEKS, COUNTED_WEEKS = 104, 104
Progress = Callable[[int], object]


@dataclass(frozen=True)
class Counts:
    """Sums over the counted weeks, by way and seed: arrays (ways, seeds).

    `idle` are prompted visits at which nothing was found within 1/32 or 1 mm of its action limit, `wasted` those at
    which nothing truly was; `overdue_days` and `legal_days` are days past the action and the legal limit of each tire
    and each brake, `why` (reasons of `overdue.WHY`, ways, seeds) the former by what was known and said of the car.
    """

    texts: Array
    own: Array
    prompted: Array
    idle: Array
    wasted: Array
    overdue_days: Array
    legal_days: Array
    why: Array


@dataclass(frozen=True)
class Compared:
    """What came of each way of inviting; `years` are customer-years of one way and seed."""

    policies: tuple[Policy, ...]
    seeds: tuple[int, ...]
    years: float
    counts: Counts

    def a_year(self, what: Array) -> Array:
        """A count per customer-year, (ways,)."""
        return np.asarray(what.mean(axis=1) / self.years)

    def row(self, name: str) -> int:
        """The number of the way of that name."""
        return next(number for number, one in enumerate(self.policies) if one.name == name)


def compare(
    customers: int,
    seeds: tuple[int, ...],
    progress: Progress,
    policies: tuple[Policy, ...] = POLICIES,
    people: People | None = None,
    rules: ShopRules | None = None,
) -> Compared:
    """Let every way of inviting meet the same world; `progress` is told of each week."""
    weeks = WARM_UP_WEEKS + COUNTED_WEEKS
    # Those at the end still look some weeks ahead.
    world = build_world(customers, seeds, weeks + 8, people or People())
    shop = _Shop.begin(world, policies, rules or ShopRules())
    for week in range(weeks):
        shop.live_a_week(is_counted=week >= WARM_UP_WEEKS)
        progress(1)
    return Compared(policies, seeds, customers * COUNTED_WEEKS * WEEK / DAYS_A_YEAR, shop.counted())


@dataclass
class _Shop:
    """The world as often as there are ways of inviting: rows are way x customers + customer."""

    world: World
    policies: tuple[Policy, ...]
    rules: ShopRules
    cars: LivedCars
    told: Told
    known: Known
    booked_in: np.ndarray
    due_on: Array
    legal_on: Array
    files: dict[int, File]
    sums: dict[str, Array] = field(default_factory=dict)

    @staticmethod
    def begin(world: World, policies: tuple[Policy, ...], rules: ShopRules) -> _Shop:
        rows, count = len(policies) * world.customers, world.customers
        ours = [way for way, one in enumerate(policies) if one.kind == "ours"]
        files = {way * count + car: File(world.vehicles[car]) for way in ours for car in range(count)}
        never = np.full(rows, np.inf)
        return _Shop(
            world, policies, rules, LivedCars.begin(world, len(policies)), Told.nobody(rows, rules),
            Known.nothing(rows), np.full(rows, -1), never.copy(), never.copy(), files,
        )  # fmt: skip

    def live_a_week(self, is_counted: bool) -> None:
        """Wear, visits, then texts of one week."""
        self.cars.live_a_week()
        came, prompted = self._who_comes()
        near = (self.cars.value <= self.cars.action + DONE_WITHIN).any(axis=(1, 2))
        found = self._visit(np.nonzero(came)[0])
        sent = self._write()
        if is_counted:
            value = self.cars.value
            self._count("own", came & ~prompted)
            self._count("prompted", prompted)
            self._count("idle", prompted & ~found)
            self._count("wasted", prompted & ~near)
            self._count("texts", sent)
            overdue = WEEK * (value <= self.cars.action).sum(axis=(1, 2))
            why = why_overdue(self.told, self.booked_in > self.cars.week)
            self._count("overdue_days", overdue)
            for number, reason in enumerate(WHY):
                self._count(reason, np.where(why == number, overdue, 0.0))
            self._count("legal_days", WEEK * (value <= self.cars.legal).sum(axis=(1, 2)))

    @property
    def _on(self) -> date:
        return BEGINS_ON + timedelta(weeks=self.cars.week)

    def _who_comes(self) -> tuple[np.ndarray, np.ndarray]:
        """Rows that come this week, and those of them that were booked from a text."""
        prompted = self.booked_in == self.cars.week
        own = np.tile(self.world.comes[self.cars.week], len(self.policies))
        return own | prompted, prompted

    def _visit(self, rows: np.ndarray) -> np.ndarray:
        """These rows come: read, do the work, write both down, and say from when each is to be told again.

        True where work was found, all rows.
        """
        read, day = self.cars.read(), float(self._on.toordinal())
        done, rotated = self.cars.do(rows, read)
        is_told = np.tile(self.world.tells[self.cars.week], len(self.policies))[rows]
        told, rotated = done & is_told[:, None, None], rotated & is_told
        self.known.note_work(rows, told, read.odometer[rows])
        self.booked_in[rows] = -1
        self.told.note_visits(day, rows)
        self.due_on[rows] = self.legal_on[rows] = np.inf
        self.due_on[rows[(self._is("reminder") | self._is("repeated"))[rows]]] = day + SIX_MONTHS
        self._guess(rows[self._is("guess")[rows]], read, day)
        ours = [place for place, row in enumerate(rows.tolist()) if row in self.files]
        for place in ours:
            row, was_rotated = int(rows[place]), bool(rotated[place])
            self.files[row].note_visit(self._on, float(read.odometer[row]), read.value[row], told[place], was_rotated)
        self._foretell(rows[ours])
        found = np.zeros(len(self.due_on), dtype=bool)
        found[rows] = done.any(axis=(1, 2))
        return found

    def _write(self) -> np.ndarray:
        """The texts of this week, and who books; True where one left, all rows."""
        week, ways, day = self.cars.week, len(self.policies), float(self._on.toordinal())
        due, legal = day >= self.due_on, day >= self.legal_on
        # An oracle knows the parts, but like everybody else only those of cars that came before.
        oracle = self._is("oracle") & np.isfinite(self.told.visited)
        if oracle.any():
            truly_due, truly_legal = foreseen(self.cars, self.rules)
            due, legal = np.where(oracle, truly_due, due), np.where(oracle, truly_legal, legal)
        # Another half year is a reason of its own for a reminder that comes each half year.
        self.told.begin_anew(self._is("repeated") & (day >= self.told.last[:, 0] + SIX_MONTHS))
        sent = self.told.may_send(day, due, legal, self.booked_in > week)
        chance = np.array(self.world.people.books)[np.minimum(self.told.since_visit, 1)]
        books = sent & (np.tile(self.world.draw[week], ways) < chance)
        self.booked_in = np.where(books, week + np.tile(self.world.lead_weeks[week], ways), self.booked_in)
        self.told.note_texts(day, sent, legal)
        return sent

    def _guess(self, rows: np.ndarray, read: Read, day: float) -> None:
        for limits, into in ((self.cars.action, self.due_on), (self.cars.legal, self.legal_on)):
            into[rows] = day + guessed_days(self.cars, self.known, rows, read, limits) - self.rules.lead_days

    def _foretell(self, rows: np.ndarray) -> None:
        if not len(rows):
            return
        rules = [self.policies[row // self.world.customers].rules for row in rows.tolist()]
        histories = [self.files[row].history() for row in rows.tolist()]
        self.due_on[rows], self.legal_on[rows] = text_days(histories, rules)

    def _is(self, kind: str) -> np.ndarray:
        return np.repeat([one.kind == kind for one in self.policies], self.world.customers)

    def _count(self, name: str, of: np.ndarray) -> None:
        ways = of.reshape(len(self.policies), -1)
        by_seed = np.stack([ways[:, self.world.seed == seed].sum(axis=1) for seed in range(len(self.world.seeds))], 1)
        self.sums[name] = self.sums.get(name, 0.0) + by_seed.astype(float)

    def counted(self) -> Counts:
        """What was counted."""
        others = {name: sums for name, sums in self.sums.items() if name not in WHY}
        return Counts(**others, why=np.stack([self.sums[reason] for reason in WHY]))
