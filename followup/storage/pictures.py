"""All that planning looks at for one phone, read from the store as the plain values of `core/planning/picture.py`."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from datetime import date, datetime, timedelta
from typing import Any

from sqlalchemy import Connection

from followup.core.forecast.window import DueCurve
from followup.core.items import BY_CODE
from followup.core.planning.decide import still_wanted
from followup.core.planning.picture import (
    BookingSeen,
    CarPicture,
    DueItem,
    EarlierInvite,
    PlannedText,
    Recall,
    Rest,
)
from followup.core.shop import Shop
from followup.core.vehicle import AXLES
from followup.core.visit import Recommendation, Visit, Work
from followup.core.wall import day_of
from followup.storage import alerts, consents, inbox, inspections, outbox, people, requests, windows
from followup.storage.rows import Row

# Caps count a year of invites; a little more keeps the first day's edge.
_INVITES_SINCE = timedelta(days=400)


def pictures_of_phone(
    connection: Connection, shop: Shop, phone: Row, now: datetime, *, needs_registration: bool
) -> list[CarPicture]:
    """One picture for each car that persons of this phone own or drive, in the order of the store."""
    told_to = people.persons_of_phone(connection, phone["id"])
    if not told_to:
        return []
    invites = _invites(connection, phone["id"], now)
    about_phone = alerts.alerts_of_phone(connection, phone["id"])
    found: dict[str, CarPicture] = {}
    for person in told_to:
        for vehicle in people.vehicles_of_persons(connection, [person["id"]]):
            if vehicle["code"] not in found:
                found[vehicle["code"]] = CarPicture(
                    shop=shop,
                    phone=people.phone_of(phone),
                    person=people.person_of(person),
                    vehicle=vehicle["code"],
                    consent=consents.standing_of(connection, shop.id, phone["number"]),
                    invites=tuple(invites),
                    needs_registration=needs_registration,
                    **_car(connection, shop, vehicle, now),
                    **_thread(connection, phone["id"], about_phone, shop, now),
                )
    return list(found.values())


def why_not_any_more(connection: Connection, shop: Shop, text: Row, now: datetime) -> str | None:
    """Asked before a planned invite leaves: why it is not wanted any more, or None. Hours are asked elsewhere."""
    phone = people.load_phone(connection, shop.id, text["phone_id"])
    vehicle = people.load_vehicle(connection, shop.id, text["vehicle_id"]) if text["vehicle_id"] else None
    reason = outbox.load_reason(connection, text["reason_id"])
    if phone is None or vehicle is None or reason is None:
        return "its phone or car is gone"
    pictures = pictures_of_phone(connection, shop, phone, now, needs_registration=False)
    mine = next((one for one in pictures if one.vehicle == vehicle["code"]), None)
    if mine is None:
        return "the car is no longer theirs"
    planned = PlannedText(
        kind=text["kind"], reason=text["reason"], raised_by=reason["raised_by"], try_number=text["try_no"],
        phone_id=phone["id"], person_id=reason["person_id"], vehicle=vehicle["code"],
        items=tuple((item, position) for item, position in reason["items"]), leaves_at=text["due_at"],
        valid_until=text["valid_until"], because="",
    )  # fmt: skip
    stop = still_wanted(planned, mine, text["planned_at"], now)
    return stop.says if stop and stop.rule != "hours" else None


def _car(connection: Connection, shop: Shop, vehicle: Row, now: datetime) -> dict[str, Any]:
    """The car's part of a picture."""
    car_id = vehicle["id"]
    return {
        "due": tuple(due_items(windows.windows_of(connection, car_id), shop, day_of(now, shop.zone))),
        "visits": tuple(
            Visit(row["code"], row["opened_at"], row["closed_at"], row["odometer_miles"])
            for row in inspections.visits_of_vehicle(connection, car_id)
        ),
        "work": tuple(_work(inspections.work_of_vehicle(connection, car_id))),
        "recommendations": tuple(_advice(inspections.recommendations_of_vehicle(connection, car_id))),
        "bookings": tuple(
            BookingSeen(str(row["id"]), row["state"], row["slot_at"], row["asked_at"])
            for row in requests.requests_of_vehicle(connection, car_id)
        ),
        "rests": tuple(_rests(inspections.rests_of_vehicle(connection, car_id))),
        "recalls": tuple(
            Recall(row["code"], row["entered_on"]) for row in inspections.recalls_of_vehicle(connection, car_id)
        ),
    }


def due_items(rows: Iterable[Row], shop: Shop, today: date) -> Iterator[DueItem]:
    """The car's windows as chances of today (`today` is the shop's day)."""
    rules = shop.rules
    for row in rows:
        body, since = row["body"], (today - row["as_of"]).days
        item = BY_CODE.get(row["item"])
        curve, legal = DueCurve.from_json(body["curve"]), body.get("legal")
        legal_curve = DueCurve.from_json(legal["curve"]) if legal else None
        yield DueItem(
            item=row["item"],
            position=row["position"],
            chance_by_lead=curve.chance(since + rules.lead_days),
            chance_joined=curve.chance(since + rules.lead_days + rules.joined_within_days),
            measured_on=_day(body.get("known_on")),
            likely_on=_day(body["likely"]),
            chance_legal=legal_curve.chance(since + rules.lead_days) if legal_curve else 0.0,
            is_past_legal=bool(legal and legal["is_past"]),
            is_free_top_off=bool(item and item.is_top_off_free and row["item"] in rules.free_services),
        )


def _day(text: str | None) -> date | None:
    return date.fromisoformat(text) if text else None


def _places(item: str, position: str) -> tuple[str, ...]:
    """Work and advice may name an axle or the whole car; windows stand at single positions."""
    known = BY_CODE[item].positions if item in BY_CODE else ("",)
    if position in known:
        return (position,)
    inside = AXLES.get(position, ()) if position else known
    return tuple(one for one in known if one in inside) or (position,)


def _work(rows: Iterable[Row]) -> Iterator[Work]:
    for row in rows:
        moved = tuple(sorted((row["moved"] or {}).items()))
        for place in _places(row["item"], row["position"]):
            yield Work(row["item"], place, row["did"], row["on"], row["odometer_miles"], moved)


def _advice(rows: Iterable[Row]) -> Iterator[Recommendation]:
    for row in rows:
        for place in _places(row["item"], row["position"]):
            yield Recommendation(
                row["item"], place, row["decision"], row["on"], row["because"], row["until"], row["told_by"]
            )


def _rests(rows: Iterable[Row]) -> Iterator[Rest]:
    for row in rows:
        for place in _places(row["item"], row["position"]):
            yield Rest(row["item"], place, row["because"], row["from_on"], row["until"])


def _invites(connection: Connection, phone_id: int, now: datetime) -> Iterator[EarlierInvite]:
    for row in outbox.invites_of_phone(connection, phone_id, now - _INVITES_SINCE):
        yield EarlierInvite(
            reason=row["reason"], raised_by=row["raised_by"], try_number=row["try_no"],
            at=row["sent_at"] or row["due_at"], vehicle=row["vehicle_code"] or "",
            items=tuple((item, position) for item, position in row["items"]),
        )  # fmt: skip


def _thread(connection: Connection, phone_id: int, about_phone: list[Row], shop: Shop, now: datetime) -> dict[str, Any]:
    state, _ = inbox.conversation_of(connection, phone_id)
    complaints = [row for row in about_phone if row["kind"] == "complaint"]
    person_at = state.get("person_at")
    with_person = bool(state.get("is_frozen")) or bool(
        person_at and now - datetime.fromisoformat(person_at) < timedelta(hours=24)
    )
    return {
        "has_open_complaint": any(row["closed_at"] is None for row in complaints),
        "has_open_symptom": bool(state.get("open_symptom"))
        or any(row["closed_at"] is None and row["kind"].startswith("symptom") for row in about_phone),
        "complained_on": max((day_of(row["raised_at"], shop.zone) for row in complaints), default=None),
        "is_with_a_person": with_person,
    }
