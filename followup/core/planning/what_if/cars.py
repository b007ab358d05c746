"""What is known of each car today, as far as the coming half year hangs on it. Days are counted from today (0)."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import datetime

from followup.core.forecast.window import DueCurve
from followup.core.item import Item
from followup.core.planning.item_stops import item_stop
from followup.core.planning.number_rules import about_reason, stops_of_number
from followup.core.planning.picture import CarPicture, DueItem, ItemAt
from followup.core.planning.stops import BOOKING_STANDS_FOR, STOPS_OF_CAR
from followup.core.planning.walk_ins import is_free

REASON = "due_work"
# What passes by itself or is lived through here: a visit that is booked, one that is open.
_PASSES = frozenset({"booked", "visit_open"})
# Where nothing is known of how fast it goes, a visit within so many days before it is due is none too early.
USUAL_NEAR_DAYS = 30.0
# Half a year and the longest lead time; one item in a hundred of those left out is due before.
LOOKED_AHEAD_DAYS, HARDLY = 182 + 120, 0.01


@dataclass(frozen=True)
class ItemAhead:
    """One item: its due curve, made `since_days` ago, and that of its legal limit; the work with its skill and hours;
    `near_days`: so many days before it is due it lies within 1/32 or 1 mm of its limit; `shared`: the share of its
    chance that it has in common with the car's others. `may_be_told` False: it rests, or is topped off free. `near`:
    its curve of being near its limit, where that is asked for before a text."""

    at: ItemAt
    curve: DueCurve
    since_days: int
    legal: DueCurve | None
    work: str
    skill: str
    hours: float
    near_days: float = USUAL_NEAR_DAYS
    shared: float = 0.0
    may_be_told: bool = True
    near: DueCurve | None = None


@dataclass(frozen=True)
class CarAhead:
    """One car. `tries` and `last_try` are those of due work and of due work at its legal limit since the last visit
    (None: none yet); `invited` the days of all invites to the phone, `last_visit` the day on which the last one closed,
    `booked` that of a booking that stands. `may_text` False: something stops invites that does not pass by itself."""

    key: str
    phone: int
    items: tuple[ItemAhead, ...]
    tries: tuple[int, int] = (0, 0)
    last_try: tuple[int | None, int | None] = (None, None)
    invited: tuple[int, ...] = ()
    last_visit: int | None = None
    booked: int | None = None
    may_text: bool = True


def car_ahead(picture: CarPicture, items: Iterable[ItemAhead], now: datetime) -> CarAhead:
    """A car of the planner's own picture of it."""
    today = picture.day(now)

    def day(at: datetime) -> int:
        return (picture.day(at) - today).days

    closed = picture.last_closed()
    known = [one.measured_on for one in picture.due if one.measured_on]
    known += [picture.day(closed.closed_at)] if closed and closed.closed_at else []
    since = max(known, default=None)
    mine = [
        one for one in picture.invites
        if one.vehicle == picture.vehicle and one.reason == REASON and (since is None or picture.day(one.at) >= since)
    ]  # fmt: skip
    by_kind = [[one for one in mine if one.raised_by.endswith("legal limit") is is_legal] for is_legal in (False, True)]
    last = [max((day(one.at) for one in made), default=None) for made in by_kind]
    booked = [
        max(day(one.starts_at), 0) if one.starts_at else 7
        for one in picture.bookings
        if one.state in ("asked", "offered")
        or (one.state == "confirmed" and (one.starts_at is None or now < one.starts_at + BOOKING_STANDS_FOR))
    ]
    visited = day(closed.closed_at) if closed and closed.closed_at else None
    return CarAhead(
        picture.vehicle, picture.phone.id, tuple(items), (len(by_kind[0]), len(by_kind[1])), (last[0], last[1]),
        tuple(sorted(day(one.at) for one in picture.invites)), visited,
        min(booked, default=None), may_text(picture, now),
    )  # fmt: skip


def may_text(picture: CarPicture, now: datetime) -> bool:
    """Whether nothing stops invites about this car but what passes by itself. Hours are not asked for: they do."""
    of_number = stops_of_number(about_reason(REASON), picture.of_number, now)
    of_car = (stop(picture, now) for stop in STOPS_OF_CAR)
    return all(one is None or one.rule in _PASSES for one in (*of_number, *of_car))


def may_be_told(picture: CarPicture, due: DueItem, now: datetime) -> bool:
    """Whether a text about work may name this item now."""
    return not is_free(picture, due, now) and item_stop(picture, due, now) is None


def job_of(item: Item) -> tuple[str, str, float]:
    """The work, its skill and its hours."""
    return item.job.work, item.job.skill, item.job.hours


def near_days(wear_per_1000: float | None, distance_per_day: float | None) -> float:
    """Days in which the item wears by one unit (1/32 of tread, 1 mm of lining)."""
    if not wear_per_1000 or not distance_per_day:
        return USUAL_NEAR_DAYS
    return 1000.0 / (wear_per_1000 * distance_per_day)


def may_matter(item: ItemAhead) -> bool:
    """Whether it can cause a text or be near its limit within the half year and the longest lead time; most of a car
    cannot, and costs nothing."""
    near = item.curve.quantile(HARDLY)
    legal = item.legal.quantile(HARDLY) if item.legal else near
    return min(near, legal) - item.since_days - item.near_days <= LOOKED_AHEAD_DAYS
