"""Look at the season of set changes: so many invited, so many booked, so many still to go. Reads only."""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass
from datetime import date, datetime

from followup.core.planning.pacing.weeks import monday_of
from followup.core.planning.set_change import changes_to, usual_set, usual_until, weeks_left
from followup.core.wall import day_of
from followup.storage import seen, set_seasons, shops
from followup.storage.rows import Row
from followup.storage.seen import Whom
from followup.storage.set_waiting import Waiting, waiting_cars
from followup.storage.store import Connection, Store

MOST_NAMED = 40
# What ends by itself within weeks: such a car is still to go.
_PASSES = frozenset({"spacing", "try_spacing", "cap_30", "just_closed", "paused", "hours"})
_STANDS = frozenset({"asked", "offered", "confirmed", "kept"})


@dataclass(frozen=True)
class WeekDrawn:
    """A week's tranche: how many were drawn, of them invited by now, booked since (by any way), and here since."""

    week_on: date
    drawn: int
    invited: int
    booked: int
    came: int


@dataclass(frozen=True)
class NotReached:
    """A car that cannot be invited now, and why."""

    vehicle_id: int
    whom: Whom
    says: str


@dataclass(frozen=True)
class SeasonSeen:
    """A season: `to_go` wait for their turn, those among them whose phone was just invited to something else;
    `not_reached` cannot be invited as things stand (the first of `not_reached_count`), `alone` have no customer's
    phone; `weeks_left` may be drawn yet."""

    id: int
    to_set: str
    begun_on: date
    until_on: date
    is_paused: bool
    weeks: tuple[WeekDrawn, ...]
    to_go: int
    not_reached: tuple[NotReached, ...]
    not_reached_count: int
    alone: int
    weeks_left: int
    is_drawn_this_week: bool

    def total(self, name: str) -> int:
        """The sum of that count over the weeks."""
        return sum(int(getattr(one, name)) for one in self.weeks)


@dataclass(frozen=True)
class SeasonPast:
    """A season that has ended."""

    to_set: str
    begun_on: date
    ended_on: date
    because: str
    drawn: int


@dataclass(frozen=True)
class SetsPage:
    """Everything of the page; `changing` counts the cars that change to the set that comes next, by what is known."""

    season: SeasonSeen | None
    past: tuple[SeasonPast, ...]
    next_set: str
    next_until: date
    changing: int
    with_label: int


def look_at_sets(store: Store, shop_id: int, now: datetime, *, needs_registration: bool = False) -> SetsPage:
    """The season that is open, and those before."""
    with store.read() as connection:
        shop = shops.load_shop(connection, shop_id)
        today = day_of(now, shop.zone)
        row = set_seasons.open_season(connection, shop_id)
        known = set_seasons.sets_known(connection, shop_id)
        state = shop.state if shop.country == "US" else None
        next_set = usual_set(state, today)
        season = None
        if row is not None:
            waiting = waiting_cars(connection, shop, row, now, needs_registration=needs_registration)
            season = _season(connection, shop_id, row, waiting, shop.zone, today)
        return SetsPage(
            season=season,
            past=tuple(
                _past(connection, one, shop.zone) for one in set_seasons.seasons(connection, shop_id) if one["ended_at"]
            ),
            next_set=next_set,
            next_until=usual_until(today),
            changing=sum(changes_to(one, next_set, shop.state) for one in known.values()),
            with_label=len(known),
        )


def _season(connection: Connection, shop_id: int, row: Row, waiting: Waiting, zone: str, today: date) -> SeasonSeen:
    stopped = [(car, because) for car, because in waiting.why_not.items() if because.rule not in _PASSES]
    return SeasonSeen(
        id=row["id"],
        to_set=row["to_set"],
        begun_on=day_of(row["begun_at"], zone),
        until_on=row["until_on"],
        is_paused=row["paused_at"] is not None,
        weeks=_weeks(connection, shop_id, row),
        to_go=len(waiting.may) + len(waiting.why_not) - len(stopped),
        not_reached=tuple(
            NotReached(car, seen.whom(connection, shop_id, {"vehicle_id": car}), because.says)
            for car, because in stopped[:MOST_NAMED]
        ),
        not_reached_count=len(stopped),
        alone=waiting.alone,
        weeks_left=weeks_left(today, row["until_on"]),
        is_drawn_this_week=row["drawn_on"] is not None and row["drawn_on"] >= monday_of(today),
    )


def _weeks(connection: Connection, shop_id: int, row: Row) -> tuple[WeekDrawn, ...]:
    drawn = set_seasons.drawn(connection, row["id"])
    texts = {one["vehicle_id"] for one in set_seasons.texts_of_season(connection, shop_id, row["id"]) if one["sent_at"]}
    booked = {
        car for car, state in set_seasons.booked_since(connection, shop_id, row["begun_at"]).items() if state in _STANDS
    }
    came = set_seasons.came_since(connection, shop_id, row["begun_at"])
    counts: dict[str, Counter[date]] = {name: Counter() for name in ("drawn", "invited", "booked", "came")}
    for one in drawn:
        car, week = one["vehicle_id"], one["week_on"]
        for name, is_so in (
            ("drawn", True),
            ("invited", car in texts),
            ("booked", car in booked),
            ("came", car in came),
        ):
            counts[name][week] += is_so
    return tuple(
        WeekDrawn(week, *(counts[name][week] for name in ("drawn", "invited", "booked", "came")))
        for week in sorted(counts["drawn"])
    )


def _past(connection: Connection, row: Row, zone: str) -> SeasonPast:
    drawn = len(set_seasons.drawn(connection, row["id"]))
    return SeasonPast(
        row["to_set"], day_of(row["begun_at"], zone), day_of(row["ended_at"], zone), row["ended_because"] or "", drawn
    )
