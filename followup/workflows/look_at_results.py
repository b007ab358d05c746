"""Look at how it went: what was sent, what came of it, what waits. Counts only, with what each one counts. Reads only.

A booking came from a text where the customer asked for it by text within `FROM_TEXT_WITHIN` after an invite to that
phone. Those who call or come by instead are not in it, and some of those who are would have come anyway.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from datetime import date, datetime, time, timedelta

from followup.core.items import catalogue_of
from followup.core.shop import Shop, closed_because, instant
from followup.core.text import REASON_BY_CODE
from followup.core.wall import day_of
from followup.storage import results, shops, windows
from followup.storage.rows import Row
from followup.storage.store import Connection, Store

FROM_TEXT_WITHIN = timedelta(days=14)
ANSWER_WITHIN = timedelta(days=7)
# Fewer texts than this say nothing about a rate: one stop in thirty texts may be chance (rule of three: even none in
# a hundred leaves up to 3 in a hundred possible).
ENOUGH_TEXTS = 100
ENOUGH_INVITES = 30
_WEEK = timedelta(weeks=1)
_DAY = timedelta(days=1)


@dataclass(frozen=True)
class Brought:
    """Bookings that came from our texts: asked for, confirmed by now, kept, missed; labor hours of those confirmed or
    kept."""

    asked: int
    confirmed: int
    kept: int
    missed: int
    hours: float


@dataclass(frozen=True)
class Week:
    """Labor hours that are booked in a week, of those that are planned for its open days."""

    begins_on: date
    sold: float
    planned: float


@dataclass(frozen=True)
class Wait:
    """How long something waited at worst; `is_open` where it still does; None of it: `count` 0."""

    count: int
    worst: timedelta | None
    is_open: bool


@dataclass(frozen=True)
class Results:
    """Everything of the page. `reasons` are (words, sent) by reason; moves count bookings by any way."""

    days: int
    invites: int
    invites_answered: int
    visit_texts: int
    answers: int
    reasons: tuple[tuple[str, str, int], ...]
    replies: int
    asked_by: dict[str, int]
    moved_to: dict[str, int]
    brought: Brought
    stops: int
    complaints: int
    reply_wait: Wait
    symptom_wait: Wait
    cars_past_limit: int
    cars_past_legal: int
    weeks: tuple[Week, ...]

    @property
    def outgoing(self) -> int:
        """Texts that we started: what stops and complaints are counted against."""
        return self.invites + self.visit_texts

    def per_100(self, count: int) -> float | None:
        """`count` for each 100 texts that we started; None where there are too few to tell."""
        return count * 100 / self.outgoing if self.outgoing >= ENOUGH_TEXTS else None

    @property
    def has_enough_invites(self) -> bool:
        """False where what invites bring cannot be told yet."""
        return self.invites >= ENOUGH_INVITES


def look_at_results(store: Store, shop_id: int, now: datetime, days: int) -> Results:
    """Counts of the last `days` days, and what stands now."""
    since = now - timedelta(days=days)
    with store.read() as connection:
        shop = shops.load_shop(connection, shop_id)
        # An invite of before may have brought a booking of now.
        earlier = results.texts_sent(connection, shop_id, since - FROM_TEXT_WITHIN)
        replies = results.replies(connection, shop_id, since)
        asked = results.requests_since(connection, shop_id, since)
        moves = results.moves_since(connection, shop_id, since)
        raised = results.alerts_since(connection, shop_id, since)
        stops = results.stops_since(connection, shop_id, since)
        past, legal = _past_limit(connection, shop)
        weeks = tuple(_weeks(connection, shop, now))
    sent = [row for row in earlier if row["sent_at"] >= since]
    kinds = Counter(row["kind"] for row in sent)
    invites = [row for row in sent if row["kind"] == "invite"]
    return Results(
        days=days,
        invites=kinds["invite"],
        invites_answered=sum(_is_answered(one, replies) for one in invites),
        visit_texts=kinds["visit"],
        answers=kinds["answer"],
        reasons=tuple(_reasons(sent)),
        replies=len(replies),
        asked_by=dict(Counter(row["came_from"] for row in asked)),
        moved_to=dict(Counter(row["to_state"] for row in moves)),
        brought=_brought([row for row in earlier if row["kind"] == "invite"], asked),
        stops=len(stops),
        complaints=sum(row["kind"] == "complaint" and row["raised_at"] >= since for row in raised),
        reply_wait=_wait([row for row in raised if row["inbound_id"] is not None], now),
        symptom_wait=_wait([row for row in raised if row["kind"].startswith("symptom")], now),
        cars_past_limit=past,
        cars_past_legal=legal,
        weeks=weeks,
    )


def _reasons(sent: Iterable[Row]) -> Iterable[tuple[str, str, int]]:
    """(kind, words, how many) of each reason that left, in the order of `core/text.py`."""
    counts = Counter(row["reason"] for row in sent)
    for code, about in REASON_BY_CODE.items():
        if counts[code]:
            yield about.kind, about.words, counts[code]


def _is_answered(invite: Row, replies: Sequence[Row]) -> bool:
    begins, ends = invite["sent_at"], invite["sent_at"] + ANSWER_WITHIN
    return any(one["phone_id"] == invite["phone_id"] and begins <= one["received_at"] <= ends for one in replies)


def _brought(invites: Sequence[Row], asked: Iterable[Row]) -> Brought:
    mine = [row for row in asked if row["came_from"] == "text" and _follows_an_invite(row, invites)]
    states = Counter(row["state"] for row in mine)
    hours = sum(sum(row["hours"].values()) for row in mine if row["state"] in ("confirmed", "kept"))
    return Brought(len(mine), states["confirmed"], states["kept"], states["missed"], hours)


def _follows_an_invite(request: Row, invites: Sequence[Row]) -> bool:
    return any(
        one["phone_id"] == request["phone_id"]
        and one["sent_at"] <= request["asked_at"] <= one["sent_at"] + FROM_TEXT_WITHIN
        for one in invites
    )


def _wait(raised: Sequence[Row], now: datetime) -> Wait:
    """From raised until somebody said that they call, or it was closed; until now where neither has come."""
    waits = []
    for row in raised:
        ends = [at for at in (row["acknowledged_at"], row["closed_at"]) if at is not None]
        waits.append((min(ends, default=now) - row["raised_at"], not ends))
    worst, is_open = max(waits, default=(None, False))
    return Wait(len(waits), worst, is_open)


def _past_limit(connection: Connection, shop: Shop) -> tuple[int, int]:
    """Cars whose brakes or tires are at the recommended limit, and at the legal one, without a booking."""
    booked = results.vehicles_with_bookings(connection, shop.id)
    past, legal, catalogue = set(), set(), catalogue_of(shop)
    for vehicle_id, found in windows.all_windows(connection, shop.id).items():
        for row in found:
            item = catalogue.get(row["item"])
            if vehicle_id in booked or item is None or not (item.is_in_use and item.is_brakes_or_tires):
                continue
            if row["body"]["is_past"]:
                past.add(vehicle_id)
            if (row["body"].get("legal") or {}).get("is_past"):
                legal.add(vehicle_id)
    return len(past | legal), len(legal)


def _weeks(connection: Connection, shop: Shop, now: datetime) -> Iterable[Week]:
    """This week and the next, Monday to Sunday on the shop's clock."""
    today = day_of(now, shop.zone)
    monday = today - _DAY * today.weekday()
    planned_a_day = sum(shop.rules.labor_hours.values()) * shop.rules.labor_share
    for begins_on in (monday, monday + _WEEK):
        first, last = (instant(day, time(0), shop.zone) for day in (begins_on, begins_on + _WEEK))
        booked = results.slots_between(connection, shop.id, first, last)
        open_days = sum(closed_because(shop, begins_on + _DAY * number) is None for number in range(7))
        yield Week(begins_on, sum(sum(row["hours"].values()) for row in booked), planned_a_day * open_days)
