"""Settle booking requests: offer times, confirm, call off, book what was agreed by phone, write down how it ended.

Each verb does, in one transaction:
1. The request is taken as the advisor saw it; where somebody changed it since, nothing happens and the page says so.
2. What is asked of the shop is checked against what is free (slots, labor hours, places), unless the advisor overrules;
   who gives a time away holds the lock of the shop's times, so that no other does meanwhile.
3. The request moves; its texts become rows like any other; queued texts that no longer hold are dropped.
4. The alert that stood for the request is closed with its outcome.

If the process dies, all of a verb happened or nothing.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from typing import Any

from followup.core.items import catalogue_of
from followup.core.planning.hours import Where
from followup.core.planning.reminders import reminder_at
from followup.core.planning.slots import hours_of, why_not_free
from followup.core.planning.state_hours import state_of
from followup.core.shop import Shop
from followup.core.text import reason
from followup.core.wall import to_wall
from followup.storage import alerts, calendars, inbox, outbox, people, requests, shops, slots
from followup.storage.requests import SomebodyWasFirst
from followup.storage.rows import Row
from followup.storage.store import Connection, Store

MOST_OFFERED = 3


class NotFree(Exception):
    """That time is not free."""


@dataclass(frozen=True)
class By:
    """Who does it: a member of staff, as the audit trail names them, with their id."""

    staff_id: int
    name: str


def offer_times(
    store: Store, shop_id: int, request_id: int, version: int, starts: Sequence[datetime], by: By, now: datetime
) -> None:
    """Offer up to three times that are really free; they are held while they are offered.

    Raises `NotFree`, `SomebodyWasFirst`, `WrongMove`.
    """
    with store.write() as connection:
        slots.lock(connection, shop_id)
        shop, request = _taken(connection, shop_id, request_id, version)
        chosen = sorted(set(starts))[:MOST_OFFERED]
        for start in chosen:
            _check_free(connection, shop, request, start, now)
        offered = [to_wall(start, shop.zone).isoformat(timespec="minutes") for start in chosen]
        requests.change_request(
            connection, request, now, by.name, "offered", says="offered " + ", ".join(offered), offered=offered,
            offered_until=now + timedelta(hours=shop.rules.offer_held_hours),
        )  # fmt: skip
        _close_alerts(connection, shop_id, request_id, by, now, "times were offered")
        asked_for = request["slot_at"].isoformat() if request["slot_at"] else None
        _plan(
            connection, shop, request, "offer_times", f"request:{request_id}:{version}", now,
            offered=offered, facts={"asked_for": asked_for},
        )  # fmt: skip


def confirm_request(
    store: Store,
    shop_id: int,
    request_id: int,
    version: int,
    start: datetime,
    by: By,
    now: datetime,
    *,
    overrules: bool = False,
) -> None:
    """Confirm a time; a booking that it replaces ends with it. Raises `NotFree`, `SomebodyWasFirst`, `WrongMove`."""
    with store.write() as connection:
        slots.lock(connection, shop_id)
        shop, request = _taken(connection, shop_id, request_id, version)
        if not overrules:
            _check_free(connection, shop, request, start, now)
        _confirm(connection, shop, request, start, by, now)


def book_by_phone(
    store: Store,
    shop_id: int,
    person_id: int,
    vehicle_id: int,
    start: datetime,
    items: Sequence[tuple[str, str]],
    by: By,
    now: datetime,
    *,
    came_from: str = "phone",
    note: str = "",
    parts: str = "not_needed",
    needs: Sequence[str] = (),
    overrules: bool = False,
) -> int:
    """Book what was agreed by phone or at the counter; texts about the car stop in the same transaction."""
    with store.write() as connection:
        slots.lock(connection, shop_id)
        shop = shops.load_shop(connection, shop_id)
        catalogue = catalogue_of(shop)
        phones = people.phones_of_person(connection, person_id)
        made = requests.add_request(
            connection, now, by.name, shop_id=shop_id, phone_id=phones[0]["id"] if phones else None,
            person_id=person_id, vehicle_id=vehicle_id, state="asked", came_from=came_from, verbatim=note,
            items=[list(one) for one in items], needs=list(needs), parts=parts,
            hours=hours_of(catalogue[item] for item, _ in items if item in catalogue),
        )  # fmt: skip
        request = requests.load_request(connection, shop_id, made)
        assert request is not None
        if not overrules:
            _check_free(connection, shop, request, start, now)
        _confirm(connection, shop, request, start, by, now)
    return made


def close_request(
    store: Store, shop_id: int, request_id: int, version: int, because: str, by: By, now: datetime
) -> None:
    """Call a request or booking off; a confirmed one is told to the customer."""
    with store.write() as connection:
        shop, request = _taken(connection, shop_id, request_id, version)
        was_confirmed = request["state"] == "confirmed"
        requests.change_request(connection, request, now, by.name, "closed", because, closed_because=because)
        outbox.drop_planned(connection, shop_id, "the request was closed", request_id=request_id, kinds=("visit",))
        _close_alerts(connection, shop_id, request_id, by, now, f"closed: {because}")
        if was_confirmed:
            told = request["slot_at"].isoformat()
            _plan(
                connection,
                shop,
                request,
                "booking_closed",
                f"request:{request_id}:{version}",
                now,
                facts={"time": told},
            )


def set_parts(
    store: Store, shop_id: int, request_id: int, version: int, parts: str, parts_on: date | None, by: By, now: datetime
) -> None:
    """Write down what is known of the parts: no time is offered before they are there plus one working day."""
    with store.write() as connection:
        _, request = _taken(connection, shop_id, request_id, version)
        requests.change_request(
            connection, request, now, by.name, says=f"parts: {parts.replace('_', ' ')}", parts=parts, parts_on=parts_on
        )


def end_booking(store: Store, shop_id: int, request_id: int, version: int, end: str, by: By, now: datetime) -> None:
    """Write down that a booking was kept or missed."""
    with store.write() as connection:
        _, request = _taken(connection, shop_id, request_id, version)
        requests.change_request(connection, request, now, by.name, end)
        outbox.drop_planned(connection, shop_id, f"the booking was {end}", request_id=request_id, kinds=("visit",))
        _close_alerts(connection, shop_id, request_id, by, now, end, kind="listed")


def tell_about_visit(
    store: Store, shop_id: int, request_id: int, version: int, code: str, by: By, now: datetime
) -> None:
    """Plan "the parts are in" or "the car is ready" (`parts_in`, `car_ready`)."""
    with store.write() as connection:
        shop, request = _taken(connection, shop_id, request_id, version)
        requests.note(connection, request, now, by.name, f"told: {reason(code).words}")
        _plan(connection, shop, request, code, f"request:{request_id}:{version}:{code}", now, facts={})


def _taken(connection: Connection, shop_id: int, request_id: int, version: int) -> tuple[Shop, Row]:
    request = requests.load_request(connection, shop_id, request_id)
    if request is None:
        raise LookupError("There is no such booking request.")
    if request["version"] != version:
        raise SomebodyWasFirst(SomebodyWasFirst.__doc__)
    return shops.load_shop(connection, shop_id), request


def _check_free(connection: Connection, shop: Shop, request: Row, start: datetime, now: datetime) -> None:
    used = slots.taken(connection, shop, now, but=request)
    because = why_not_free(shop, used, slots.wanted_by(request, shop), start, now)
    if because:
        raise NotFree(f"{to_wall(start, shop.zone):%Y-%m-%d %H:%M}: {because}. Choose another time, or overrule it.")


def _confirm(connection: Connection, shop: Shop, request: Row, start: datetime, by: By, now: datetime) -> None:
    says = f"confirmed for {to_wall(start, shop.zone):%Y-%m-%d %H:%M}"
    requests.change_request(
        connection, request, now, by.name, "confirmed", says=says, slot_at=start, offered=[], offered_until=None
    )
    if request["replaces_id"]:
        old = requests.load_request(connection, shop.id, request["replaces_id"])
        if old and old["state"] == "confirmed":
            requests.change_request(connection, old, now, by.name, "closed", "moved", closed_because="moved")
            outbox.drop_planned(connection, shop.id, "the booking was moved", request_id=old["id"], kinds=("visit",))
    outbox.drop_planned(connection, shop.id, "booked", vehicle_id=request["vehicle_id"], kinds=("invite",))
    outbox.drop_planned(
        connection, shop.id, "confirmed", request_id=request["id"], kinds=("visit",), reason_codes=("offer_times",)
    )
    _close_alerts(connection, shop.id, request["id"], by, now, "confirmed")
    if shop.rules.links_visit:
        calendars.link_visit(connection, shop, request, now)
    cause = f"request:{request['id']}:{start.isoformat()}"
    _plan(connection, shop, request, "confirmation", cause, now, facts={"time": start.isoformat()}, until=start)
    _plan_reminder(connection, shop, request, cause, start, now)
    _forget_offers(connection, shop, request, now)


def _plan_reminder(
    connection: Connection, shop: Shop, request: Row, cause: str, start: datetime, now: datetime
) -> None:
    phone = people.load_phone(connection, shop.id, request["phone_id"]) if request["phone_id"] else None
    where = Where(tuple(phone["zones"]), state_of(phone["number"])) if phone else Where()
    at = reminder_at(shop, start, now, where)
    if at is not None:
        _plan(
            connection, shop, request, "reminder", cause, now, facts={"time": start.isoformat()}, due_at=at, until=start
        )


def _forget_offers(connection: Connection, shop: Shop, request: Row, now: datetime) -> None:
    """What was offered or asked before is settled: the next words are about the booking."""
    if request["phone_id"] is None:
        return
    state, thread = inbox.conversation_of(connection, request["phone_id"])
    state.update(asked=None, asked_before=state.get("asked"), asked_at=now.isoformat(), questions_back=0)
    thread.update(offered=[], vehicle_id=request["vehicle_id"])
    inbox.keep_conversation(connection, shop.id, request["phone_id"], now, state, thread)


def _close_alerts(
    connection: Connection, shop_id: int, request_id: int, by: By, now: datetime, outcome: str, kind: str = "request"
) -> None:
    for alert in alerts.open_alerts(connection, shop_id):
        if alert["request_id"] == request_id and alert["kind"] == kind:
            alerts.acknowledge(connection, shop_id, alert["id"], by.staff_id, now)
            alerts.close(connection, shop_id, alert["id"], outcome, now)


def _plan(
    connection: Connection,
    shop: Shop,
    request: Row,
    code: str,
    raised_by: str,
    now: datetime,
    *,
    facts: dict[str, Any],
    offered: list[str] | None = None,
    due_at: datetime | None = None,
    until: datetime | None = None,
) -> None:
    """Plan a visit text about a request; without a phone nothing can be texted, and the page shows that."""
    phone = people.load_phone(connection, shop.id, request["phone_id"]) if request["phone_id"] else None
    if phone is None:
        return
    person = people.load_person(connection, shop.id, request["person_id"])
    _, thread = inbox.conversation_of(connection, phone["id"])
    language = thread.get("language") or phone["language"] or (person["language"] if person else None) or "en"
    outbox.plan_text(
        connection, shop.id, code, raised_by, now, phone_id=phone["id"], number=phone["number"],
        person_id=request["person_id"], vehicle_id=request["vehicle_id"], language=language,
        facts={"items": request["items"], **facts}, due_at=due_at, valid_until=until, asks=reason(code).asks,
        offered=offered, request_id=request["id"],
    )  # fmt: skip


__all__ = [
    "By", "NotFree", "SomebodyWasFirst", "book_by_phone", "close_request", "confirm_request", "end_booking",
    "offer_times", "set_parts", "tell_about_visit",
]  # fmt: skip
