"""Duty: for every open hour who is told first, second, third, and by when the next one is told.

An alert is acknowledged when somebody pressed "I am calling", and closed by its outcome. The clocks are minutes after
which the next is told while nobody has acknowledged; they are common practice and this project's own choice.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from datetime import date, datetime, timedelta
from zoneinfo import ZoneInfo

from followup.core.shop import WEEKDAYS, Shop, closes_next, instant, is_open, open_span, opens_next, wall_time


@dataclass(frozen=True)
class Clock:
    """Who is told of a kind of alert: (minutes after it was raised, to whom), in order.

    To whom: `first`, `on_duty` (all of that hour), `manager`, `owner`. `is_at_once` False: it is listed and told at
    the end of the day. `wakes_on_call`: out of hours the on-call person is told; else it waits for the opening.
    """

    steps: tuple[tuple[int, str], ...]
    is_at_once: bool = True
    wakes_on_call: bool = False


_MANAGER_IN_30 = Clock(((0, "first"), (30, "manager")))
_MANAGER_IN_60 = Clock(((0, "first"), (60, "manager")))
_END_OF_DAY = Clock(((0, "first"),), is_at_once=False)
CLOCKS: dict[str, Clock] = {
    "symptom_now": Clock(((0, "first"), (5, "on_duty"), (15, "owner")), wakes_on_call=True),
    "symptom_today": Clock(((0, "first"), (15, "manager")), wakes_on_call=True),
    "legal_words": Clock(((0, "manager"), (15, "owner")), wakes_on_call=True),
    "death": Clock(((0, "manager"), (60, "owner"))),
    "texts_refused": Clock(((0, "owner"), (60, "manager"))),
    "many_stops": Clock(((0, "manager"), (60, "owner"))),
    "call_me": _MANAGER_IN_30,
    "complaint": _MANAGER_IN_30,
    "running_late": _MANAGER_IN_30,
    "judgment": _MANAGER_IN_60,
    "price": _MANAGER_IN_60,
    "request": _MANAGER_IN_60,
    "person_thread": _MANAGER_IN_60,
    "tie": _END_OF_DAY,
    "unclear": _END_OF_DAY,
}


@dataclass(frozen=True)
class Watch:
    """One stretch of a weekday's roster: wall times "HH:MM" and the staff ids to be told, in order."""

    opens: str
    closes: str
    told: tuple[int, ...]


@dataclass(frozen=True)
class Roster:
    """Who is on duty, by weekday ("mon" ...), with the shop's manager, owner and on-call person (staff ids)."""

    watches: Mapping[str, tuple[Watch, ...]] = field(default_factory=dict)
    manager: int | None = None
    owner: int | None = None
    on_call: int | None = None

    def told_at(self, shop: Shop, at: datetime) -> tuple[int, ...]:
        """Everybody on duty at that instant (aware), in order; () where nobody is."""
        local = at.astimezone(ZoneInfo(shop.zone))
        for watch in self.watches.get(WEEKDAYS[local.weekday()], ()):
            if wall_time(watch.opens) <= local.time() < wall_time(watch.closes):
                return watch.told
        return ()


@dataclass(frozen=True)
class Alert:
    """An alert as duty sees it: `steps_done` of its clock are told already. Instants are aware UTC."""

    kind: str
    raised_at: datetime
    steps_done: int = 0
    is_acknowledged: bool = False
    is_closed: bool = False


@dataclass(frozen=True)
class Telling:
    """The next step of an alert: tell these people at that instant; then `steps_done` is the new count.

    `how` is "at once", "on call", "first call" (waited for the opening) or "end of day".
    """

    at: datetime
    told: tuple[int, ...]
    steps_done: int
    how: str


def next_step(alert: Alert, roster: Roster, shop: Shop) -> Telling | None:
    """Who is told next and when; None where it is acknowledged, closed, or everybody has been told.

    `at` may be past: then it is due now. A step whose people are nobody falls to the manager, then the owner.
    """
    if alert.is_acknowledged or alert.is_closed:
        return None
    clock = CLOCKS[alert.kind]
    if alert.steps_done >= len(clock.steps):
        return None
    begins_at, how = _begins(alert, clock, roster, shop)
    minutes, whom = clock.steps[alert.steps_done]
    if alert.kind == "request" and minutes:
        minutes = shop.rules.write_back_minutes  # the one clock that is the shop's own rule
    at = begins_at + timedelta(minutes=minutes)
    if how == "on call" and alert.steps_done == 0 and roster.on_call is not None:
        return Telling(at, (roster.on_call,), 1, how)
    # At the end of the day those are told who were on duty until then.
    asked_at = at - timedelta(seconds=1) if how == "end of day" else at
    return Telling(at, _people(whom, roster, shop, asked_at), alert.steps_done + 1, how)


def may_say_alerted(kind: str, roster: Roster, shop: Shop, now: datetime) -> bool:
    """True where somebody is told this minute, so that a text may say so once the alert was accepted."""
    telling = next_step(Alert(kind, now), roster, shop)
    return telling is not None and telling.at <= now and bool(telling.told)


def _begins(alert: Alert, clock: Clock, roster: Roster, shop: Shop) -> tuple[datetime, str]:
    """When the clock starts: at once in hours, with the on-call person out of hours, else at the next opening."""
    if not clock.is_at_once:
        return closes_next(shop, alert.raised_at) or alert.raised_at, "end of day"
    if is_open(shop, alert.raised_at):
        return alert.raised_at, "at once"
    if clock.wakes_on_call and roster.on_call is not None:
        return alert.raised_at, "on call"
    return opens_next(shop, alert.raised_at) or alert.raised_at, "first call"


def _people(whom: str, roster: Roster, shop: Shop, at: datetime) -> tuple[int, ...]:
    on_duty = roster.told_at(shop, at)
    found: dict[str, Iterable[int | None]] = {
        "first": on_duty[:1],
        "on_duty": on_duty,
        "manager": (roster.manager,),
        "owner": (roster.owner,),
    }
    people = tuple(one for one in found[whom] if one is not None)
    return people or tuple(one for one in (roster.manager, roster.owner) if one is not None)[:1]


@dataclass(frozen=True)
class Gap:
    """Open hours of a day in which nobody is on duty (aware UTC)."""

    day: date
    from_at: datetime
    to_at: datetime


def gaps(roster: Roster, shop: Shop, first: date, days: int = 14) -> list[Gap]:
    """All open hours of the days from `first` on that nobody watches: `followup doctor` fails on one."""
    found: list[Gap] = []
    for day in (first + timedelta(days=number) for number in range(days)):
        span = open_span(shop, day)
        if span:
            found += _gaps_of(day, span, roster, shop)
    return found


def _gaps_of(day: date, span: tuple[datetime, datetime], roster: Roster, shop: Shop) -> list[Gap]:
    watched = sorted(
        (instant(day, wall_time(one.opens), shop.zone), instant(day, wall_time(one.closes), shop.zone))
        for one in roster.watches.get(WEEKDAYS[day.weekday()], ())
        if one.told
    )
    found, reached = [], span[0]
    for opens, closes in watched:
        if opens > reached and reached < span[1]:
            found.append(Gap(day, reached, min(opens, span[1])))
        reached = max(reached, closes)
    if reached < span[1]:
        found.append(Gap(day, reached, span[1]))
    return found
