"""Keep a visit at the counter: open it, write down work and advice with what was decided, close it.

Opening drops the car's queued invites in the same transaction. Work and advice are kept as they are written, so that
nothing is lost where the visit is closed later; the work is news for the forecast (call `forecast_windows` then).
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import date, datetime

from followup.core.item import DID
from followup.core.items import catalogue_of
from followup.core.shop import Shop
from followup.core.visit import DECISIONS, DECLINED_BECAUSE
from followup.core.wall import day_of, to_wall
from followup.storage import consents, inspections, outbox, people, seen, shops
from followup.storage.rows import Row
from followup.storage.seen import Whom
from followup.storage.store import Connection, Store

NO_PLACE = "This item has no such position: choose another, or leave it empty for all of them."


@dataclass(frozen=True)
class WorkDone:
    """A line of work."""

    item: str
    position: str
    did: str


@dataclass(frozen=True)
class Advice:
    """A recommendation with what was decided; `because` only where it was declined, `until` only for `later`."""

    item: str
    position: str
    decision: str
    because: str | None
    until: date | None
    told_by: str | None


@dataclass(frozen=True)
class VisitPage:
    """A visit with its lines."""

    id: int
    code: str
    whom: Whom
    opened_at: datetime
    closed_at: datetime | None
    odometer_miles: float | None
    work: tuple[WorkDone, ...]
    advice: tuple[Advice, ...]


def look_at_visit(store: Store, shop_id: int, visit_id: int) -> VisitPage | None:
    """One visit; None where the shop has none of that id."""
    with store.read() as connection:
        row = inspections.load_visit(connection, shop_id, visit_id)
        if row is None:
            return None
        work = inspections.work_of_vehicle(connection, row["vehicle_id"])
        advice = inspections.recommendations_of_vehicle(connection, row["vehicle_id"])
        return VisitPage(
            id=row["id"],
            code=row["code"],
            whom=seen.whom(connection, shop_id, row),
            opened_at=row["opened_at"],
            closed_at=row["closed_at"],
            odometer_miles=row["odometer_miles"],
            work=tuple(
                WorkDone(one["item"], one["position"], one["did"]) for one in work if one["visit_id"] == visit_id
            ),
            advice=tuple(
                Advice(one["item"], one["position"], one["decision"], one["because"], one["until"], one["told_by"])
                for one in advice
                if one["visit_id"] == visit_id
            ),
        )


def open_visit(
    store: Store, shop_id: int, vehicle_id: int, odometer_miles: float | None, who: str, now: datetime
) -> int | None:
    """The id of the car's open visit, opened now where there was none; None where the shop has no such car."""
    with store.write() as connection:
        vehicle = people.load_vehicle(connection, shop_id, vehicle_id)
        if vehicle is None:
            return None
        consents.lock_car(connection, shop_id, vehicle_id)
        for row in inspections.visits_of_vehicle(connection, vehicle_id):
            if row["closed_at"] is None:
                return int(row["id"])
        wall = to_wall(now, shops.load_shop(connection, shop_id).zone)
        code = f"{wall:%Y-%m-%d %H:%M:%S} {vehicle['code']}"
        visit_id = inspections.keep_visit(connection, shop_id, code, vehicle_id, now, None, odometer_miles)
        outbox.drop_planned(connection, shop_id, "the car is in the shop", vehicle_id=vehicle_id, kinds=("invite",))
        shops.note(connection, shop_id, now, who, "opened a visit", f"visit {visit_id}")
        return visit_id


def add_work(store: Store, shop_id: int, visit_id: int, done: WorkDone, who: str, now: datetime) -> dict[str, str]:
    """Write down a line of work; what is wrong with it, by field."""
    if done.did not in DID:
        return {"did": "Choose one of these."}
    with store.write() as connection:
        shop = shops.load_shop(connection, shop_id)
        if wrong := _wrong_place(shop, done.item, done.position):
            return wrong
        visit = _open(connection, shop_id, visit_id)
        if visit is None:
            return {"": "This visit is closed."}
        on = day_of(now, shop.zone)
        inspections.add_work(
            connection, shop_id=shop_id, vehicle_id=visit["vehicle_id"], inspection_id=None, visit_id=visit_id,
            item=done.item, position=done.position, did=done.did, on=on, odometer_miles=visit["odometer_miles"],
            moved=None, kept_at=now,
        )  # fmt: skip
        shops.note(connection, shop_id, now, who, "wrote down work", f"visit {visit_id}")
    return {}


def add_advice(store: Store, shop_id: int, visit_id: int, advice: Advice, who: str, now: datetime) -> dict[str, str]:
    """Write down a recommendation with what was decided; what is wrong with it, by field."""
    if advice.decision not in DECISIONS:
        return {"decision": "Choose one of these."}
    if advice.because is not None and advice.because not in DECLINED_BECAUSE:
        return {"because": "Choose one of these."}
    if advice.decision == "later" and advice.until is None:
        return {"until": "Give the day on which to ask again."}
    with store.write() as connection:
        shop = shops.load_shop(connection, shop_id)
        if wrong := _wrong_place(shop, advice.item, advice.position):
            return wrong
        visit = _open(connection, shop_id, visit_id)
        if visit is None:
            return {"": "This visit is closed."}
        on = day_of(now, shop.zone)
        inspections.add_recommendation(
            connection, shop_id=shop_id, vehicle_id=visit["vehicle_id"], inspection_id=None, visit_id=visit_id,
            item=advice.item, position=advice.position, decision=advice.decision,
            because=advice.because if advice.decision == "declined" else None,
            until=advice.until if advice.decision == "later" else None, told_by=advice.told_by, on=on,
        )  # fmt: skip
        shops.note(connection, shop_id, now, who, "wrote down advice", f"visit {visit_id}")
    return {}


def close_visit(
    store: Store, shop_id: int, visit_id: int, odometer_miles: float | None, who: str, now: datetime
) -> int | None:
    """Close a visit; the car's id, or None where somebody was first or there is none."""
    with store.write() as connection:
        visit = _open(connection, shop_id, visit_id)
        if visit is None or not inspections.close_visit(connection, shop_id, visit_id, now):
            return None
        if odometer_miles is not None:
            inspections.keep_visit(
                connection, shop_id, visit["code"], visit["vehicle_id"], visit["opened_at"], now, odometer_miles,
                content_hash=visit["content_hash"],
            )  # fmt: skip
        shops.note(connection, shop_id, now, who, "closed a visit", f"visit {visit_id}")
        return int(visit["vehicle_id"])


def _open(connection: Connection, shop_id: int, visit_id: int) -> Row | None:
    visit = inspections.load_visit(connection, shop_id, visit_id)
    return visit if visit is not None and visit["closed_at"] is None else None


def _wrong_place(shop: Shop, code: str, position: str) -> dict[str, str]:
    item = catalogue_of(shop).get(code)
    if item is None:
        return {"item": "Choose one of these."}
    return {} if item.places(position) else {"position": NO_PLACE}
