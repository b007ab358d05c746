"""When a text may leave: the window must be open in every zone where the phone may be, and in the shop's own.

Order of what narrows: the shop's hours for that kind, the legal bound of 8:00-21:00 to the second
(47 CFR 64.1200(c)(1)), the rows of the states, and for invites Sundays and holidays. Answers leave at any hour.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date, datetime, time, timedelta
from functools import lru_cache
from zoneinfo import ZoneInfo

from followup.core.planning.state_hours import narrowed_by
from followup.core.shop import Shop, hours_on, instant, public_holidays
from followup.core.text import VALID_FOR

LEGAL_FROM, LEGAL_TO = time(8), time(21)  # 47 CFR 64.1200(c)(1): local time at the called party's location
SUNDAY = 6
LOOK_AHEAD_DAYS = 21
_MOSTLY_WITHIN_DAYS = 3
Span = tuple[datetime, datetime]
States = tuple[str | None, str | None]
_DAY = timedelta(days=1)


@dataclass(frozen=True)
class Where:
    """Where a phone may be: all candidate IANA zones (() = unknown: the shop's alone) and, where known, its state."""

    zones: tuple[str, ...] = ()
    state: str | None = None


@dataclass(frozen=True)
class Verdict:
    """Whether a text may leave then; `rule` and `says` name what decided, in words for a page."""

    may: bool
    rule: str
    says: str


def may_leave(kind: str, at: datetime, shop: Shop, where: Where) -> Verdict:
    """May a text of that kind leave at that instant (aware UTC)? From the first second on, not at the last."""
    if kind == "answer":
        return Verdict(True, "hours", "answers leave at any hour")
    for zone in _zones(shop, where):
        local = at.astimezone(ZoneInfo(zone))
        span = _span(kind, local.date(), zone, shop, where)
        if span is None or not span[0] <= at < span[1]:
            return Verdict(False, "hours", _why_not(kind, local, zone, shop, where))
    return Verdict(True, "hours", "within the hours of every zone where the phone may be")


def next_moment(kind: str, after: datetime, shop: Shop, where: Where) -> datetime | None:
    """The first instant at or after `after` (aware UTC) at which it may leave; None: no hour fits all zones, so the
    text is held and shown."""
    if kind == "answer":
        return after
    # Mostly within days; the rest of the three weeks is worked out only where it is not.
    for days in (_MOSTLY_WITHIN_DAYS, LOOK_AHEAD_DAYS):
        for opens, closes in open_spans(kind, after, shop, where, days):
            if closes > after:
                return max(opens, after)
    return None


def lands_by(kind: str, at: datetime, shop: Shop, where: Where) -> datetime | None:
    """Until when a text that leaves at `at` may still reach the phone: its validity ends with the allowed hours.

    None where it may not leave at `at`; answers have `VALID_FOR`.
    """
    if kind == "answer":
        return at + VALID_FOR["answer"]
    spans = open_spans(kind, at, shop, where, 1)
    return next((closes for opens, closes in spans if opens <= at < closes), None)


def valid_until(kind: str, leaves_at: datetime, visit_at: datetime | None = None) -> datetime | None:
    """When a planned text is no longer wanted: an invite after 3 days, a visit text at the visit, an answer after
    30 minutes; None: as long as the reason lasts."""
    if kind == "visit":
        return visit_at
    return leaves_at + VALID_FOR[kind]


def open_spans(
    kind: str, after: datetime, shop: Shop, where: Where, look_ahead_days: int = LOOK_AHEAD_DAYS
) -> list[Span]:
    """All spans (aware UTC) of the three weeks (or so many days) from `after` on in which that kind may leave in every
    zone at once."""
    common: list[Span] | None = None
    for zone in _zones(shop, where):
        first = after.astimezone(ZoneInfo(zone)).date() - _DAY
        days = (first + _DAY * number for number in range(look_ahead_days + 2))
        spans = [span for day in days if (span := _span(kind, day, zone, shop, where))]
        common = spans if common is None else list(_overlap(common, spans))
    return common or []


def _zones(shop: Shop, where: Where) -> tuple[str, ...]:
    return tuple(dict.fromkeys((shop.zone, *where.zones)))


def _why_not(kind: str, local: datetime, zone: str, shop: Shop, where: Where) -> str:
    states = (shop.state, where.state)
    closed = _closed_because(kind, local.date(), shop.country, states)
    if closed:
        return f"{closed} in {zone}"
    window = _window(kind, local.date(), _hours_of(kind, local.date(), shop), shop.country, states)
    return f"it is {local:%H:%M:%S} in {zone}; {_in_words(kind, window)}"


def _hours_of(kind: str, day: date, shop: Shop) -> tuple[time, time] | None:
    return hours_on(shop.rules.invite_hours if kind == "invite" else shop.rules.visit_text_hours, day)


def _span(kind: str, day: date, zone: str, shop: Shop, where: Where) -> Span | None:
    return _span_of(kind, day, zone, _hours_of(kind, day, shop), shop.country, (shop.state, where.state))


@lru_cache(maxsize=4096)
def _span_of(
    kind: str, day: date, zone: str, hours: tuple[time, time] | None, country: str, states: States
) -> Span | None:
    """Kept, since numbers share their zones and states, and each text asks for its hours three times."""
    window = None if _closed_because(kind, day, country, states) else _window(kind, day, hours, country, states)
    return (instant(day, window[0], zone), instant(day, window[1], zone)) if window else None


def _overlap(one: Iterable[Span], other: list[Span]) -> Iterable[Span]:
    for opens, closes in one:
        for from_at, to_at in other:
            if max(opens, from_at) < min(closes, to_at):
                yield max(opens, from_at), min(closes, to_at)


def _closed_because(kind: str, day: date, country: str, states: States) -> str | None:
    """Sundays and holidays are closed for invites everywhere, whatever hours the shop sets: those of the country and
    of both states."""
    if kind != "invite":
        return None
    if day.weekday() == SUNDAY:
        return "no invites on a Sunday"
    for state in dict.fromkeys(states):
        name = public_holidays(country, state, day.year).get(day)
        if name:
            return f"no invites on a holiday ({name})"
    return None


def _window(
    kind: str, day: date, hours: tuple[time, time] | None, country: str, states: States
) -> tuple[time, time] | None:
    if hours is None:
        return None
    opens, closes = max(hours[0], LEGAL_FROM), min(hours[1], LEGAL_TO)
    if country == "US":
        opens, closes = narrowed_by(states, day, opens, closes, is_invite=kind == "invite")
    return (opens, closes) if opens < closes else None


def _in_words(kind: str, window: tuple[time, time] | None) -> str:
    what = "invites" if kind == "invite" else "texts about visits"
    return f"{what} leave {window[0]:%H:%M}-{window[1]:%H:%M}" if window else f"no {what} on that day"
