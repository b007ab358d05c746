"""Tell who is on duty of what needs a person, by the clocks of `core/duty.py`, until somebody says "I am calling".

1. Alerts whose next step has come are taken; a step is counted in the transaction that plans its texts, so that no
   other process tells the same people again.
2. Each person of the step who takes alert texts gets one; all see the alert on their pages.
3. When nobody is left to be told, the alert stays open on the pages.

Alerts to staff leave at any hour and before all else in the queue.
"""

from __future__ import annotations

import logging
import secrets
from datetime import datetime, timedelta

from followup.core.duty import CLOCKS, Alert, Roster, Telling, next_step
from followup.core.shop import Shop
from followup.storage import alerts, outbox, people, shops, staff
from followup.storage.rows import Row
from followup.storage.store import DATABASE_TROUBLE, Connection, Store

# What a member of staff reads on the phone; who and what stands on the page, not in a text.
WORDS = {
    "symptom_now": "SYMPTOM, stop now: a customer must be called at once",
    "symptom_today": "Symptom: a customer must be called today",
    "legal_words": "A serious matter in a thread: call, and write nothing before",
    "death": "A customer may have died: no text leaves",
    "texts_refused": "The provider refuses all texts",
    "many_stops": "More customers than usual stop the texts",
    "call_me": "A customer wants to be called",
    "complaint": "A complaint",
    "judgment": "A customer asks for a judgment: call within the hour",
    "price": "A customer asks for a price",
    "request": "A booking request waits",
    "running_late": "A customer is running late",
    "person_thread": "A customer wrote back in your thread",
    "tie": "A number or a car is no longer theirs: look at it",
    "unclear": "A reply that nobody could read",
}
# A text about it would not leave either.
ON_PAGES_ALONE = ("texts_refused",)
_VALID = timedelta(hours=12)
_LOG = logging.getLogger(__name__)


def tell_staff(store: Store, shop_id: int, now: datetime) -> int:
    """Tell whoever is due to be told now; how many steps were taken."""
    with store.read() as connection:
        due = alerts.due_alerts(connection, shop_id, now)
        if not due:
            # Asked every second or two, and mostly nobody is.
            return 0
        shop = shops.load_shop(connection, shop_id)
        roster = shops.load_roster(connection, shop_id)
    done = 0
    for alert in due:
        try:
            with store.write() as connection:
                done += tell_one(connection, shop, roster, alert, now)
        except DATABASE_TROUBLE:
            raise
        except Exception:
            # One alert that cannot be told must not silence the next.
            _LOG.exception("alert %s could not be told", alert["id"])
    return done


def tell_one(connection: Connection, shop: Shop, roster: Roster, alert: Row, now: datetime) -> int:
    """Take every step of one alert that has come by now; how many."""
    taken, steps = 0, alert["step"]
    while True:
        telling = _next(alert, steps, roster, shop)
        at = telling.at if telling else None
        if telling is None or telling.at > now:
            alerts.step(connection, {**alert, "step": alert["step"]}, steps, at)
            return taken
        _tell(connection, shop, alert, telling, now)
        steps, taken = telling.steps_done, taken + 1


def _next(alert: Row, steps: int, roster: Roster, shop: Shop) -> Telling | None:
    if alert["kind"] not in CLOCKS:
        return None
    return next_step(Alert(alert["kind"], alert["raised_at"], steps), roster, shop)


def _tell(connection: Connection, shop: Shop, alert: Row, telling: Telling, now: datetime) -> None:
    for staff_id in telling.told:
        alerts.add_telling(
            connection, shop_id=shop.id, alert_id=alert["id"], staff_id=staff_id, at=now, how=f"page, {telling.how}"
        )
        number = staff.alert_phone(connection, shop.id, staff_id)
        if number is None or alert["kind"] in ON_PAGES_ALONE:
            continue
        made = alerts.add_telling(
            connection,
            shop_id=shop.id,
            alert_id=alert["id"],
            staff_id=staff_id,
            at=now,
            how=f"text, step {telling.steps_done}",
        )
        if made is not None:
            _plan_text(connection, shop, alert, number, telling.steps_done, now)


def _plan_text(connection: Connection, shop: Shop, alert: Row, number: str, step: int, now: datetime) -> None:
    reason_id = outbox.raise_reason(
        connection, shop.id, "alert", f"alert:{alert['id']}", now, phone_id=None, person_id=alert["person_id"]
    )
    outbox.add_text(
        connection, shop_id=shop.id, public_id=secrets.token_urlsafe(16), phone_id=None, number=number, kind="alert",
        reason_id=reason_id, reason="alert", try_no=step, language="en", planned_at=now, due_at=now,
        valid_until=now + _VALID, alert_id=alert["id"], facts={"words": _words(connection, shop, alert)},
    )  # fmt: skip


def _words(connection: Connection, shop: Shop, alert: Row) -> str:
    """Kind, first name and car: enough to act on, no number, and no word of what the customer wrote."""
    person = people.load_person(connection, shop.id, alert["person_id"]) if alert["person_id"] else None
    vehicle = people.load_vehicle(connection, shop.id, alert["vehicle_id"]) if alert["vehicle_id"] else None
    who = str(person["name"]).split()[0] if person and person["name"] else "unknown customer"
    car = people.vehicle_of(vehicle).label if vehicle else None
    about = f"{who}, {car}" if car else who
    return f"{shop.name}: {WORDS[alert['kind']]} ({about}). Open followup and press I am calling."
