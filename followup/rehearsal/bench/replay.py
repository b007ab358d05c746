"""The planner itself, day by day, in the worlds of a what-if: the slow way to the same numbers.

Every car has a real `CarPicture`; each day at noon `decide_for_phone` is asked about the cars of every phone in which
something could be a reason for a text, and what it plans leaves that day. Chance is that of the what-if's own draws.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, field, replace
from datetime import date, datetime, time, timedelta

import numpy as np

from followup.core.consent import ConsentStanding
from followup.core.forecast.window import DueCurve
from followup.core.planning.decide import decide_for_phone
from followup.core.planning.joining import triggers
from followup.core.planning.picture import BookingSeen, CarPicture, DueItem, EarlierInvite
from followup.core.planning.what_if.cars import REASON, CarAhead, ItemAhead
from followup.core.planning.what_if.draws import DAYS, WEEKS, Draws
from followup.core.planning.what_if.odds import Odds
from followup.core.planning.what_if.plan import Plan
from followup.core.shop import Shop, ShopRules, instant
from followup.core.visit import Visit

_STOPPED = ConsentStanding(frozenset(), True, None)


@dataclass(frozen=True)
class Replayed:
    """Counts by world: arrays (worlds,), and texts by week (worlds, weeks)."""

    texts: np.ndarray
    prompted: np.ndarray
    own: np.ndarray
    stops: np.ndarray
    wasted: np.ndarray


@dataclass
class _Item:
    """An item while the days pass: its windows count from the day `made_on`; `measured_on` as the planner is told."""

    about: ItemAhead
    curve: DueCurve
    legal: DueCurve | None
    made_on: int
    measured_on: date | None
    due: float
    legal_due: float
    is_done: bool = False
    near: DueCurve | None = None

    def seen(self, day: int, rules: ShopRules) -> DueItem:
        """As the planner sees it that day."""
        since = day - self.made_on
        return DueItem(
            *self.about.at, self.curve.chance(since + rules.lead_days),
            self.curve.chance(since + rules.lead_days + rules.joined_within_days), self.measured_on,
            chance_legal=self.legal.chance(since + rules.lead_days) if self.legal else 0.0,
            chance_near=self.near.chance(since + rules.lead_days) if self.near else None,
        )  # fmt: skip


@dataclass
class _Car:
    picture: CarPicture
    items: list[_Item]
    own: list[int]
    booked: int | None
    sent: int = 0
    is_prompted: bool = False


@dataclass
class _World:
    """One world of one plan."""

    shop: Shop
    plan: Plan
    odds: Odds
    draws: Draws
    number: int
    today: date
    cars: list[_Car]
    texts: np.ndarray = field(default_factory=lambda: np.zeros(WEEKS))
    counts: dict[str, int] = field(default_factory=lambda: dict.fromkeys(("prompted", "own", "stops", "wasted"), 0))

    def live(self) -> None:
        """Let all the days pass."""
        phones: dict[int, list[int]] = {}
        for at, car in enumerate(self.cars):
            phones.setdefault(car.picture.phone.id, []).append(at)
        for day in range(DAYS):
            now = instant(self.today + timedelta(days=day), time(12), self.shop.zone)
            for car in self.cars:
                if car.booked == day or day in car.own:
                    self._visit(car, day, now)
            for of_phone in phones.values():
                self._plan(of_phone, day, now)

    def _visit(self, car: _Car, day: int, now: datetime) -> None:
        near = [one for one in car.items if not one.is_done and one.due - day <= one.about.near_days]
        prompted = car.booked == day and car.is_prompted
        self.counts["prompted" if prompted else "own"] += 1
        self.counts["wasted"] += prompted and not near
        for one in near:
            one.is_done = True
        measured_on = self.today + timedelta(days=day)
        for one in car.items:
            median = one.curve.quantile(0.5)
            one.near = _around(one.near, one.due - day, median) if one.near else None
            one.curve = _around(one.curve, one.due - day, median)
            if one.legal:
                one.legal = _around(one.legal, one.legal_due - day, one.legal.quantile(0.5))
            one.made_on, one.measured_on = day, measured_on
        bookings: tuple[BookingSeen, ...] = car.picture.bookings
        if car.booked == day:
            car.booked, car.is_prompted, bookings = None, False, ()
        visits = (*car.picture.visits, Visit(f"day {day}", now, now))
        car.picture = replace(car.picture, visits=visits, bookings=bookings)

    def _plan(self, of_phone: list[int], day: int, now: datetime) -> None:
        rules, cars = self.plan.rules, [self.cars[at] for at in of_phone]
        for car in cars:
            seen = tuple(one.seen(day, rules) for one in car.items if not one.is_done and one.about.may_be_told)
            car.picture = replace(car.picture, due=seen)
        if not any(triggers(car.picture.due, rules) for car in cars):
            return
        decided = decide_for_phone([car.picture for car in cars], now)
        for at, (_, decision) in zip(of_phone, decided, strict=True):
            text = decision.text
            if text is not None and text.reason == REASON and text.leaves_at <= now:
                self._send(at, of_phone, text.raised_by, text.try_number, day, now)

    def _send(self, at: int, of_phone: list[int], raised_by: str, number: int, day: int, now: datetime) -> None:
        car = self.cars[at]
        answer = self.draws.answer[self.number, at, car.sent]
        delay = int(self.draws.delay[self.number, at, car.sent])
        car.sent += 1
        self.texts[day // 7] += 1
        invite = EarlierInvite(REASON, raised_by, number, now, car.picture.vehicle)
        for other in (self.cars[one] for one in of_phone):
            other.picture = replace(other.picture, invites=(*other.picture.invites, invite))
        if answer < self.odds.booked[min(number, 2) - 1]:
            car.booked, car.is_prompted = int(self.plan.open_on[day + delay]), True
            at_noon = instant(self.today + timedelta(days=car.booked), time(12), self.shop.zone)
            car.picture = replace(car.picture, bookings=(BookingSeen("1", "confirmed", at_noon, now),))
        elif answer >= 1 - self.odds.stopped:
            self.counts["stops"] += 1
            for other in (self.cars[one] for one in of_phone):
                other.picture = replace(other.picture, consent=_STOPPED)


def _around(curve: DueCurve, left: float, median: float) -> DueCurve:
    """The window of a new reading: around the days that are truly left, as wide as before in proportion to the even
    day of being due."""
    if np.isinf(left):
        return DueCurve.certain(float("inf"))
    if left <= 0 or median <= 0 or np.isinf(median):
        return DueCurve.certain(max(left, 0.0))
    return DueCurve(0.0, tuple(min(day / median, 1e6) * left for day in curve.days))


def replay(
    shop: Shop,
    pictures: Sequence[CarPicture],
    cars: Sequence[CarAhead],
    plan: Plan,
    draws: Draws,
    odds: Odds,
    today: date,
    progress: Callable[[int], object] = lambda _: None,
) -> Replayed:
    """Every world of `draws` under `plan.rules`; `pictures` and `cars` are the same cars in the same order."""
    shop = replace(shop, rules=plan.rules)
    worlds = []
    for number in range(draws.worlds):
        world = _World(shop, plan, odds, draws, number, today, _begin(shop, pictures, cars, plan, draws, number))
        world.live()
        worlds.append(world)
        progress(number + 1)
    counts = {name: np.array([one.counts[name] for one in worlds]) for name in worlds[0].counts}
    return Replayed(texts=np.array([one.texts for one in worlds]), **counts)


def _begin(
    shop: Shop, pictures: Sequence[CarPicture], cars: Sequence[CarAhead], plan: Plan, draws: Draws, number: int
) -> list[_Car]:
    found = []
    for at, (picture, car) in enumerate(zip(pictures, cars, strict=True)):
        measured = {one.at: one.measured_on for one in picture.due}
        items = [
            _Item(one, one.curve, one.legal, -one.since_days, measured.get(one.at), float(draws.due[number, at, place]),
                  float(draws.legal[number, at, place]), near=one.near)
            for place, one in enumerate(car.items)
        ]  # fmt: skip
        own: list[int] = []
        for drawn in draws.own[number, at]:
            day = max(int(np.ceil(drawn)), own[-1] + 1 if own else 0)
            if day < DAYS:
                own.append(int(plan.open_on[day]))
        found.append(_Car(replace(picture, shop=shop), items, own, car.booked))
    return found
