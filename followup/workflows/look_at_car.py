"""Look at one car: readings in walking order, due windows with their reasons, what is planned and why not, its history.

Reads only; the decision is the planner's own, on everything as it stands now.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, replace
from datetime import date, datetime, timedelta

from followup.core.advisories import Advisory
from followup.core.forecast.first_due import FirstDue
from followup.core.forecast.window import DueWindow
from followup.core.item import Item, Limit, in_use
from followup.core.items import catalogue_of, present_condition
from followup.core.planning.decide import decide_for_phone
from followup.core.planning.picture import Decision
from followup.core.shop import Shop
from followup.core.text import reason
from followup.core.vehicle import WALKING_ORDER, Vehicle
from followup.core.visit import Recommendation, Work
from followup.core.wall import day_of
from followup.storage import evidence, inspections, outbox, people, pictures, requests, seen, shops, windows
from followup.storage.advisories import advisories_of_vehicle
from followup.storage.answer_hours import habits_where_chosen
from followup.storage.rows import Row
from followup.storage.seen import SeenBooking, SeenReading, Whom
from followup.storage.store import Connection, Store


@dataclass(frozen=True)
class ReadItem:
    """An item at a position: its last reading, its condition today in a word, and the work on it since then."""

    item: str
    position: str
    reading: SeenReading
    condition: str
    since: Work | None = None


@dataclass(frozen=True)
class DueRow:
    """A due window of today: its dates, twenty equally likely dates (None: past the horizon), and what it rests on.

    `legal` is the legal limit, for the picture.
    """

    item: str
    position: str
    condition: str
    early_on: date | None
    likely_on: date | None
    late_on: date | None
    dates: tuple[date | None, ...]
    window: DueWindow
    legal: Limit | None


@dataclass(frozen=True)
class TextAhead:
    """A planned text about the car; `hour_says` why it leaves at that hour, where that was chosen."""

    at: datetime
    words: str
    because: str
    hour_says: str = ""


@dataclass(frozen=True)
class PhonePlan:
    """What the planner would do about this car by one of its phones."""

    phone_id: int
    number: str
    name: str | None
    decision: Decision


@dataclass(frozen=True)
class SeenVisit:
    """A visit of the car."""

    id: int
    code: str
    opened_at: datetime
    closed_at: datetime | None
    odometer_miles: float | None


@dataclass(frozen=True)
class CarPage:
    """All that is known of a car."""

    vehicle_id: int
    vehicle: Vehicle
    whom: Whom
    drivers: tuple[Whom, ...]
    odometer: tuple[date, float] | None
    places: tuple[tuple[str, tuple[ReadItem, ...]], ...]
    due: tuple[DueRow, ...]
    advisories: tuple[Advisory, ...]
    stored: tuple[DueRow, ...]
    first: FirstDue | None
    ahead: tuple[TextAhead, ...]
    plans: tuple[PhonePlan, ...]
    bookings: tuple[SeenBooking, ...]
    visits: tuple[SeenVisit, ...]
    work: tuple[Work, ...]
    advice: tuple[Recommendation, ...]
    recalls: tuple[tuple[str, date, str], ...]
    today: date

    @property
    def open_visit(self) -> SeenVisit | None:
        """The visit that the car is here for now."""
        return next((one for one in self.visits if one.closed_at is None), None)


def look_at_car(
    store: Store, shop_id: int, vehicle_id: int, now: datetime, *, needs_registration: bool = False
) -> CarPage | None:
    """One car; None where the shop has none of that id."""
    with store.read() as connection:
        row = people.load_vehicle(connection, shop_id, vehicle_id)
        if row is None:
            return None
        shop = shops.load_shop(connection, shop_id)
        today = day_of(now, shop.zone)
        kept = windows.windows_of(connection, vehicle_id)
        found = tuple(_due(evidence.windows_with_evidence(connection, vehicle_id), shop, today))
        due = tuple(one for one in found if one.window.stored_set is None)
        drivers = people.drivers_of_vehicle(connection, vehicle_id)
        return CarPage(
            vehicle_id=vehicle_id,
            vehicle=people.vehicle_of(row),
            whom=seen.whom(connection, shop_id, {"vehicle_id": vehicle_id}),
            drivers=tuple(
                seen.whom(connection, shop_id, {"vehicle_id": vehicle_id, "person_id": one["id"]}) for one in drivers
            ),
            odometer=_odometer(connection, vehicle_id),
            places=_places(connection, row, due, shop, today),
            due=due,
            advisories=advisories_of_vehicle(connection, shop, vehicle_id, today),
            stored=tuple(one for one in found if one.window.stored_set is not None),
            first=seen.first_due_of(kept, shop, today),
            ahead=tuple(_ahead(connection, shop, vehicle_id)),
            plans=tuple(_plans(connection, shop, row, drivers, now, needs_registration)),
            bookings=tuple(
                seen.see_booking(connection, shop_id, one)
                for one in requests.requests_of_vehicle(connection, vehicle_id)
            ),
            visits=tuple(
                SeenVisit(one["id"], one["code"], one["opened_at"], one["closed_at"], one["odometer_miles"])
                for one in reversed(inspections.visits_of_vehicle(connection, vehicle_id))
            ),
            work=tuple(_work(one) for one in reversed(inspections.work_of_vehicle(connection, vehicle_id))),
            advice=tuple(
                _advice(one) for one in reversed(inspections.recommendations_of_vehicle(connection, vehicle_id))
            ),
            recalls=tuple(
                (one["code"], one["entered_on"], one["done_by"])
                for one in inspections.recalls_of_vehicle(connection, vehicle_id)
            ),
            today=today,
        )


def _odometer(connection: Connection, vehicle_id: int) -> tuple[date, float] | None:
    known = [
        (one["inspected_on"], one["odometer_miles"])
        for one in inspections.bodies_of_vehicle(connection, vehicle_id)
        if one["odometer_miles"] is not None
    ]
    known += [(one["on"], one["miles"]) for one in inspections.odometers_told(connection, vehicle_id)]
    return max(known, default=None)


def _due(found: list[DueWindow], shop: Shop, today: date) -> Iterator[DueRow]:
    """The windows in the order of the catalogue, each item in walking order."""
    catalogue = {one.code: one for one in in_use(catalogue_of(shop))}
    codes = list(catalogue)
    known = [one for one in found if one.item in catalogue]
    known.sort(key=lambda one: (codes.index(one.item), WALKING_ORDER.index(one.position)))
    for window in known:
        yield DueRow(
            item=window.item,
            position=window.position,
            condition=window.condition(shop.rules.lead_days, shop.rules.send_at_chance, today),
            early_on=window.early,
            likely_on=window.likely,
            late_on=window.late,
            dates=tuple(_on(window.as_of, days) for days in window.curve.dots()),
            window=window,
            legal=catalogue[window.item].limit("legal", shop.rules.legal_limits),
        )


def _on(as_of: date, days: float) -> date | None:
    return None if days == float("inf") else as_of + timedelta(days=round(days))


def _places(
    connection: Connection, row: Row, due: tuple[DueRow, ...], shop: Shop, today: date
) -> tuple[tuple[str, tuple[ReadItem, ...]], ...]:
    """The last readings by place, as one walks around the car; "" is the car as a whole."""
    ahead = {(one.item, one.position): one.condition for one in due}
    vehicle, limits = people.vehicle_of(row), shop.rules.action_limits
    work = [_work(one) for one in inspections.work_of_vehicle(connection, row["id"])]
    by_place: dict[str, list[ReadItem]] = {}
    catalogue = catalogue_of(shop)
    for at, last in seen.last_readings(connection, row["id"], catalogue).items():
        item = catalogue[at[0]]
        condition = ahead.get(at) or present_condition(item, last.reading, vehicle, limits, today)
        by_place.setdefault(at[1], []).append(ReadItem(*at, last, condition, _since(work, last, item)))
    codes = list(catalogue)
    return tuple(
        (place, tuple(sorted(by_place[place], key=lambda one: codes.index(one.item))))
        for place in WALKING_ORDER
        if place in by_place
    )


def _since(work: list[Work], last: SeenReading, item: Item) -> Work | None:
    """The last work on the item after it was read: on the same day it came after the reading."""
    places = item.places
    found = [
        one for one in work if one.item == last.item and one.on >= last.on and last.position in places(one.position)
    ]
    return found[-1] if found else None


def _ahead(connection: Connection, shop: Shop, vehicle_id: int) -> Iterator[TextAhead]:
    for row in outbox.queued_texts(connection, shop.id):
        if row["vehicle_id"] == vehicle_id and row["kind"] != "alert":
            because, hour = (str(row["facts"].get(name, "")) for name in ("because", "hour_says"))
            yield TextAhead(row["due_at"], reason(row["reason"]).words, because, hour)


def _plans(
    connection: Connection, shop: Shop, vehicle: Row, drivers: list[Row], now: datetime, needs_registration: bool
) -> Iterator[PhonePlan]:
    looked_at = set()
    habits = habits_where_chosen(connection, shop, now)
    for person in drivers:
        for phone in people.phones_of_person(connection, person["id"]):
            if phone["id"] in looked_at:
                continue
            looked_at.add(phone["id"])
            gathered = replace(pictures.gather_for(connection, shop.id, now, phone), habits=habits)
            found = pictures.pictures_of_phone(gathered, shop, phone, now, needs_registration=needs_registration)
            for code, decision in decide_for_phone(found, now):
                if code == vehicle["code"]:
                    yield PhonePlan(phone["id"], phone["number"], person["name"], decision)


def _work(row: Row) -> Work:
    return Work(row["item"], row["position"], row["did"], row["on"], row["odometer_miles"])


def _advice(row: Row) -> Recommendation:
    return Recommendation(
        row["item"], row["position"], row["decision"], row["on"], row["because"], row["until"], row["told_by"]
    )
