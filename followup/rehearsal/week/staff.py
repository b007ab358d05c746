"""The staff of a simulated shop: they call, settle booking requests, take cars in and give them back.

They do what the pages do, by the same workflows; while the pages are down they wait.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from functools import partial
from random import Random
from typing import Any

from followup.core.planning.slots import Wanted, free_times
from followup.core.shop import Shop, open_span
from followup.core.wall import day_of
from followup.rehearsal.week.world import World
from followup.storage import alerts, people, requests, shops, slots, staff
from followup.storage.rows import Row
from followup.storage.store import Store
from followup.workflows.answer_alert import close_alert, say_calling
from followup.workflows.keep_visit import WorkDone, add_work, close_visit, open_visit
from followup.workflows.settle_requests import (
    By,
    NotFree,
    SomebodyWasFirst,
    close_request,
    confirm_request,
    end_booking,
    offer_times,
    set_parts,
)

WAITS_FOR_PAGES = timedelta(minutes=10)
# How far ahead times are looked for.
AHEAD = timedelta(days=21)


@dataclass
class Stay:
    """A car in the shop, in true time; `is_booked` where it was expected."""

    vehicle_id: int
    opened_at: datetime
    closed_at: datetime | None = None
    is_booked: bool = False


@dataclass(frozen=True)
class Manners:
    """How often staff do what they should: answer a telling, settle a request at a look, find who booked arriving."""

    calls: float = 0.8
    settles: float = 0.8
    arrives: float = 0.85
    walk_ins_a_day: float = 3.0
    looks_every: timedelta = timedelta(minutes=20)


@dataclass
class Staff:
    """Everybody at work. `pages_open` says whether the pages can be used; `at_visit` is what a technician keeps of a
    car while it is here (the visit's id)."""

    store: Store
    shop_id: int
    world: World
    random: Random
    pages_open: Callable[[], bool]
    manners: Manners = field(default_factory=Manners)
    at_visit: Callable[[Stay, int], object] | None = None
    stays: list[Stay] = field(default_factory=list)
    _expected: set[tuple[int, datetime]] = field(default_factory=set)
    _here: set[int] = field(default_factory=set)

    def __post_init__(self) -> None:
        with self.store.read() as connection:
            members = staff.of_shop(connection, self.shop_id)
            self.phones = {staff.alert_phone(connection, self.shop_id, one.id): one.id for one in members}
            self.cars = [row["id"] for row in people.all_vehicles(connection, self.shop_id)]
        advisor = next(one for one in members if one.role == "advisor")
        self.by = By(advisor.id, advisor.name)

    def shop(self) -> Shop:
        """The shop with its present rules."""
        with self.store.read() as connection:
            return shops.load_shop(connection, self.shop_id)

    def begin_day(self) -> None:
        """Put the looks of that day and who walks in on the agenda; nothing where the shop is closed."""
        shop = self.shop()
        span = open_span(shop, day_of(self.world.at, shop.zone))
        if span is None:
            return
        at = span[0] + timedelta(minutes=5)
        while at < span[1]:
            self.world.call_at(at, self.look)
            at += self.manners.looks_every
        for _ in range(_about(self.manners.walk_ins_a_day, self.random)):
            comes_at = span[0] + (span[1] - span[0]) * self.random.uniform(0.05, 0.85)
            self.world.call_at(comes_at, partial(self.take_in, self.random.choice(self.cars)))

    def look(self) -> bool:
        """Look at the pages once, as an advisor does between two customers."""
        if not self.pages_open():
            return False
        did = [self._settle(row) for row in self._rows(requests.open_requests) if row["state"] == "asked"]
        did += [self._expect(row) for row in self._rows(requests.requests_of_shop, ("confirmed",))]
        did += [self._attend(row) for row in self._rows(alerts.open_alerts)]
        return any(did)

    def read(self, number: str, alert_id: int) -> bool:
        """A member of staff reads a text about an alert and mostly calls soon."""
        if self.random.random() < self.manners.calls:
            soon = self.world.at + timedelta(minutes=self.random.uniform(1, 12))
            self.world.call_at(soon, partial(self._call, alert_id, self.phones[number]))
        return False

    def _rows(self, ask: Callable[..., list[Row]], *more: Any) -> list[Row]:
        with self.store.read() as connection:
            return ask(connection, self.shop_id, *more)

    def _now(self) -> datetime:
        return self.world.program_now()

    def _call(self, alert_id: int, staff_id: int) -> bool:
        if not self.pages_open():
            self.world.call_at(self.world.at + WAITS_FOR_PAGES, partial(self._call, alert_id, staff_id))
            return False
        say_calling(self.store, self.shop_id, alert_id, staff_id, self._now())
        self.world.call_at(
            self.world.at + timedelta(minutes=self.random.uniform(15, 90)), partial(self._close, alert_id, staff_id)
        )
        return False

    def _close(self, alert_id: int, staff_id: int) -> bool:
        if self.pages_open():
            return close_alert(self.store, self.shop_id, alert_id, "called", staff_id, "staff", self._now())
        self.world.call_at(self.world.at + WAITS_FOR_PAGES, partial(self._close, alert_id, staff_id))
        return False

    def _attend(self, alert: Row) -> bool:
        if alert["kind"] == "request" or self.random.random() > self.manners.settles / 2:
            return False
        if alert["acknowledged_at"] is None:
            return self._call(alert["id"], self.by.staff_id)
        return self._close(alert["id"], self.by.staff_id)

    def _settle(self, request: Row) -> bool:
        """Confirm the first time that suits, else offer what is free, else call it off."""
        if self.random.random() > self.manners.settles:
            return False
        shop_id, now = self.shop_id, self._now()
        if request["parts"] == "unknown":
            set_parts(self.store, shop_id, request["id"], request["version"], "not_needed", None, self.by, now)
        with self.store.read() as connection:
            shop = shops.load_shop(connection, shop_id)
            fresh = requests.load_request(connection, shop_id, request["id"])
            assert fresh is not None
            wanted, used = slots.wanted_by(fresh, shop), slots.taken(connection, shop, now, but=fresh)
        try:
            suits = free_times(shop, used, wanted, now, now + AHEAD, 3) if wanted.windows else []
            if suits:
                confirm_request(self.store, shop_id, fresh["id"], fresh["version"], suits[0], self.by, now)
                return True
            free = free_times(shop, used, Wanted(wanted.hours, wanted.needs, wanted.parts), now, now + AHEAD, 40)
            if free:
                offered = sorted(self.random.sample(free, min(3, len(free))))
                offer_times(self.store, shop_id, fresh["id"], fresh["version"], offered, self.by, now)
            else:
                close_request(self.store, shop_id, fresh["id"], fresh["version"], "no time is free", self.by, now)
        except (NotFree, SomebodyWasFirst):
            return False
        return True

    def _expect(self, request: Row) -> bool:
        key = (request["id"], request["slot_at"])
        if key not in self._expected:
            self._expected.add(key)
            self.world.call_at(request["slot_at"], partial(self._arrive, *key))
        return False

    def _arrive(self, request_id: int, slot_at: datetime) -> bool:
        """Who booked arrives, or does not."""
        if not self.pages_open():
            self.world.call_at(self.world.at + WAITS_FOR_PAGES, partial(self._arrive, request_id, slot_at))
            return False
        with self.store.read() as connection:
            request = requests.load_request(connection, self.shop_id, request_id)
        if request is None or request["state"] != "confirmed" or request["slot_at"] != slot_at:
            return False
        comes = self.random.random() < self.manners.arrives
        if comes:
            self.take_in(request["vehicle_id"], is_booked=True)
        end = "kept" if comes else "missed"
        end_booking(self.store, self.shop_id, request_id, request["version"], end, self.by, self._now())
        return True

    def take_in(self, vehicle_id: int, *, is_booked: bool = False) -> bool:
        """A car comes; False where it cannot be taken in."""
        if not self.pages_open() or vehicle_id in self._here:
            return False
        visit_id = open_visit(self.store, self.shop_id, vehicle_id, None, self.by.name, self._now())
        if visit_id is None:
            return False
        stay = Stay(vehicle_id, self.world.at, is_booked=is_booked)
        self.stays.append(stay)
        self._here.add(vehicle_id)
        back_at = self.world.at + timedelta(hours=self.random.uniform(0.5, 5))
        self.world.call_at(back_at, partial(self._give_back, stay, visit_id))
        return True

    def _give_back(self, stay: Stay, visit_id: int) -> bool:
        if not self.pages_open():
            self.world.call_at(self.world.at + WAITS_FOR_PAGES, partial(self._give_back, stay, visit_id))
            return False
        now = self._now()
        if self.at_visit is not None:
            self.at_visit(stay, visit_id)
        elif self.random.random() < 0.5:
            done = WorkDone("oil_service", "", "serviced")
            add_work(self.store, self.shop_id, visit_id, done, self.by.name, now)
        close_visit(self.store, self.shop_id, visit_id, None, self.by.name, now)
        stay.closed_at = self.world.at
        self._here.discard(stay.vehicle_id)
        return True


def _about(mean: float, random: Random) -> int:
    """A whole number that is `mean` on the average."""
    return int(mean) + (random.random() < mean - int(mean))
