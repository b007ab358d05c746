"""Look at what needs a person now, the most urgent first: alerts, requests, texts that may not have gone out, the day.

Reads only; everything is seen in one transaction, so that the page fits together.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime, timedelta

from followup.core.text import reason
from followup.core.wall import day_of
from followup.storage import alerts, inbox, inspections, outcomes, requests, seen, shops
from followup.storage.rows import Row
from followup.storage.seen import SeenAlert, SeenBooking, Whom
from followup.storage.store import Connection, Store

# The most urgent first; what is told to nobody at once comes last.
URGENCY = (
    "symptom_now", "legal_words", "death", "symptom_today", "texts_refused", "call_me", "complaint", "running_late",
    "judgment", "price", "many_stops", "person_thread", "request", "tie", "unclear", "phone_task", "listed",
)  # fmt: skip
ON_THE_PHONE_LIST = ("phone_task", "listed", "unclear", "tie")
FAILED_SINCE = timedelta(days=7)


@dataclass(frozen=True)
class HeldText:
    """A text of which nobody knows whether it went out, or that could not be sent. `at` is when it was tried."""

    id: int
    whom: Whom
    reason: str
    body: str | None
    at: datetime
    because: str | None
    is_over: bool


@dataclass(frozen=True)
class OpenVisit:
    """A car that is in the shop."""

    id: int
    code: str
    whom: Whom
    opened_at: datetime


@dataclass(frozen=True)
class DeadLetter:
    """What came in and fits nobody."""

    id: int
    at: datetime
    because: str
    number: str | None
    words: str | None


@dataclass(frozen=True)
class Today:
    """The advisor's day; `days` are today's and tomorrow's bookings, each with its date."""

    alerts: tuple[SeenAlert, ...]
    requests: tuple[SeenBooking, ...]
    held: tuple[HeldText, ...]
    failed: tuple[HeldText, ...]
    days: tuple[tuple[date, tuple[SeenBooking, ...]], ...]
    in_shop: tuple[OpenVisit, ...]
    letters: tuple[DeadLetter, ...]
    calls: int


def look_at_today(store: Store, shop_id: int, now: datetime) -> Today:
    """Everything that the start page shows."""
    with store.read() as connection:
        shop = shops.load_shop(connection, shop_id)
        open_alerts = alerts.open_alerts(connection, shop_id)
        waiting = requests.open_requests(connection, shop_id)
        urgent = [one for one in open_alerts if _is_urgent(one)]
        urgent.sort(key=lambda one: (URGENCY.index(one["kind"]), one["raised_at"]))
        return Today(
            alerts=tuple(seen.see_alert(connection, shop_id, one) for one in urgent),
            requests=tuple(seen.see_booking(connection, shop_id, one) for one in waiting),
            held=tuple(_held(connection, shop_id, one, now) for one in outcomes.held_texts(connection, shop_id)),
            failed=tuple(
                _held(connection, shop_id, one, now)
                for one in seen.text_rows(connection, shop_id, "failed", now - FAILED_SINCE)
            ),
            days=_days(connection, shop_id, shop.zone, now),
            in_shop=tuple(_visit(connection, shop_id, one) for one in inspections.open_visits(connection, shop_id)),
            letters=tuple(_letter(one) for one in inbox.dead_letters(connection, shop_id)),
            calls=sum(one["kind"] in ON_THE_PHONE_LIST for one in open_alerts),
        )


def look_at_alert(store: Store, shop_id: int, alert_id: int) -> SeenAlert | None:
    """One alert, open or closed; None where the shop has none of that id."""
    with store.read() as connection:
        row = alerts.load_alert(connection, shop_id, alert_id)
        return seen.see_alert(connection, shop_id, row) if row else None


def _is_urgent(row: Row) -> bool:
    """A request's own alert is shown as the request itself; what waits for the end of the day is on the phone list."""
    if row["kind"] == "request" and row["request_id"]:
        return False
    return row["kind"] not in ON_THE_PHONE_LIST


def _held(connection: Connection, shop_id: int, row: Row, now: datetime) -> HeldText:
    is_over = row["valid_until"] is not None and row["valid_until"] <= now
    at = row["in_flight_at"] or row["due_at"]
    about = seen.whom(connection, shop_id, row)
    return HeldText(row["id"], about, reason(row["reason"]).words, row["body"], at, row["state_because"], is_over)


def _days(
    connection: Connection, shop_id: int, zone: str, now: datetime
) -> tuple[tuple[date, tuple[SeenBooking, ...]], ...]:
    today = day_of(now, zone)
    booked = requests.requests_of_shop(connection, shop_id, ("confirmed", "kept", "missed"))
    return tuple(
        (
            on,
            tuple(
                seen.see_booking(connection, shop_id, one)
                for one in booked
                if one["slot_at"] and day_of(one["slot_at"], zone) == on
            ),
        )
        for on in (today, today + timedelta(days=1))
    )


def _visit(connection: Connection, shop_id: int, row: Row) -> OpenVisit:
    return OpenVisit(row["id"], row["code"], seen.whom(connection, shop_id, row), row["opened_at"])


def _letter(row: Row) -> DeadLetter:
    body = row["body"] if isinstance(row["body"], dict) else {}
    return DeadLetter(row["id"], row["at"], row["because"], body.get("from"), body.get("body"))
