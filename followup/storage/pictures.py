"""All that planning looks at for one phone, read from the store as the plain values of `core/planning/picture.py`."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field, replace
from datetime import date, datetime, timedelta
from typing import Any

from sqlalchemy import ColumnElement, Connection, Table

from followup.core.advisories import Advisory
from followup.core.consent import ConsentStanding, standing
from followup.core.forecast.window import DueCurve
from followup.core.item import Catalogue, in_use
from followup.core.items import catalogue_of
from followup.core.planning.balance import days_saved
from followup.core.planning.decide import still_wanted
from followup.core.planning.pacing.ahead import Curves, may_come_up
from followup.core.planning.picture import (
    BookingSeen,
    CarPicture,
    EarlierInvite,
    ItemAt,
    Paced,
    PlannedText,
    Recall,
    SetChange,
)
from followup.core.planning.send_rule import ODOMETER_FROM_CHANCE, lowest_chance
from followup.core.shop import Shop
from followup.core.vehicle import Vehicle
from followup.core.visit import Visit
from followup.core.wall import day_of
from followup.storage import consents, inbox, numbers, outbox, paced, people, rows, set_seasons, shops, tables, windows
from followup.storage.advisories import advisories_of_vehicle
from followup.storage.answer_hours import Habits
from followup.storage.due import curves_of, due_items, iso_day
from followup.storage.picture_rows import advice_of, rests_of, work_of
from followup.storage.rows import Row

# A line in an invite that leaves anyway costs little; below this it would tell nothing.
ODOMETER_LINE_SAVES_DAYS = 5.0
# A database takes only so many values in one statement.
_PHONES_AT_ONCE = 500
_PRESENT, _OPEN = tables.due_windows.c.is_current.is_(True), tables.recalls.c.ended_at.is_(None)


@dataclass(frozen=True)
class _Contacts:
    """Phones, who uses them, and what was said with them."""

    phones: list[Row]
    persons: dict[int, list[Row]]
    invites: dict[int, list[Row]]
    alerts: dict[int, list[Row]]
    states: dict[int, dict[str, Any]]
    standings: dict[str, ConsentStanding]


@dataclass(frozen=True)
class Gathered(_Contacts):
    """Rows by what they belong to, read in a dozen queries however many phones there are.

    `advisories` are worked out only for a single phone: whether there is a text never hangs on them.
    """

    vehicles: dict[int, list[Row]]
    windows: dict[int, list[Row]]
    visits: dict[int, list[Row]]
    work: dict[int, list[Row]]
    advice: dict[int, list[Row]]
    rests: dict[int, list[Row]]
    recalls: dict[int, list[Row]]
    bookings: dict[int, list[Row]]
    advisories: dict[int, tuple[Advisory, ...]] = field(default_factory=dict)
    placed: dict[tuple[int, int], Row] = field(default_factory=dict)
    habits: Habits | None = None
    set_changes: dict[tuple[int, int], SetChange] = field(default_factory=dict)

    def vehicle(self, vehicle_id: int) -> Row | None:
        """A car by its id, where one of these persons has it."""
        return next((one for found in self.vehicles.values() for one in found if one["id"] == vehicle_id), None)

    def placed_row(self, phone_id: int, vehicle_id: int) -> Row | None:
        """Where the car's invite was placed; None where it was not, or the car was forecast anew since: it is news."""
        row = self.placed.get((phone_id, vehicle_id))
        made = max((one["made_at"] for one in self.windows.get(vehicle_id, [])), default=None)
        return None if row is None or (made is not None and made > row["made_at"]) else row


def gather(
    connection: Connection, shop_id: int, now: datetime, near: Shop | None = None, ahead: timedelta = timedelta(0)
) -> Gathered:
    """Everything that planning looks at, for the whole shop.

    With `near`, the shop by whose rules it is planned, windows are left out that can be in no text of the coming days
    (`ahead`): which texts and calls there are is the same without them. Why there is none is told by all of them.
    """
    contacts = _Contacts(
        phones=people.all_phones(connection, shop_id),
        persons=people.persons_by_phone(connection, shop_id),
        invites=outbox.invites_by_phone(connection, shop_id, now - numbers.INVITES_SINCE, now),
        alerts=rows.grouped(connection, tables.alerts, "phone_id", shop_id, None),
        states={row["phone_id"]: row["state"] for row in inbox.conversations_of_shop(connection, shop_id)},
        standings=consents.standings(connection, shop_id),
    )
    due = None if near is None else _near_windows(connection, near, now, ahead)
    gathered = _gather(connection, shop_id, contacts, people.vehicles_by_person(connection, shop_id, None), None, due)
    return replace(gathered, placed=paced.placed_invites(connection, shop_id, now))


def _near_windows(
    connection: Connection, shop: Shop, now: datetime, ahead: timedelta, cars: list[int] | None = None
) -> dict[int, list[Row]]:
    """The windows that any rule of planning may ask for: each asks whether a chance is reached within some days."""
    within = ahead.days + near_within(shop)
    return windows.near_windows(connection, shop.id, day_of(now, shop.zone), within, lowest_chance(shop.rules), cars)


def near_within(shop: Shop) -> int:
    """Within how many days from today planning asks whether a chance is reached."""
    return shop.rules.lead_days + max(shop.rules.joined_within_days, 0)


def gather_for(
    connection: Connection,
    shop_id: int,
    now: datetime,
    phone: Row,
    advisories: dict[int, tuple[Advisory, ...]] | None = None,
) -> Gathered:
    """The same for one phone, with the advisories of its cars, where they were not worked out before."""
    known = numbers.know(connection, shop_id, [phone["number"]], now)
    gathered = gather_known(connection, shop_id, known)
    placed = paced.placed_invites(connection, shop_id, now, [phone["id"]])
    if advisories is None:
        advisories = advisories_for(connection, shop_id, gathered, phone, now)
    return replace(gathered, advisories=advisories, placed=placed)


def gather_near(connection: Connection, shop: Shop, now: datetime, wanted: list[str]) -> Gathered:
    """As `gather` with `near`, for these numbers alone; what was placed is left out."""
    return gather_known(connection, shop.id, numbers.know(connection, shop.id, wanted, now), (shop, now))


def gather_ahead(connection: Connection, shop: Shop, now: datetime, ahead: timedelta) -> Iterator[Gathered]:
    """As `gather` with `near`, for the phones alone with a car about whose due work there may be an invite in that
    time, some phones at a time; what was placed is left out."""
    due, today = _near_windows(connection, shop, now, ahead), day_of(now, shop.zone)
    cars = windows.cars_asked_again(connection, shop.id, today + ahead)
    for car, of_car in due.items():
        is_past = any((row["body"].get("legal") or {}).get("is_past") for row in of_car)
        if is_past or may_come_up((curve for _, curve in curves_of(of_car, today)), shop.rules, ahead.days):
            cars.add(car)
    wanted = people.numbers_of_vehicles(connection, cars)
    for begin in range(0, len(wanted), _PHONES_AT_ONCE):
        known = numbers.know(connection, shop.id, wanted[begin : begin + _PHONES_AT_ONCE], now)
        yield gather_known(connection, shop.id, known, due=due)


def gather_known(
    connection: Connection,
    shop_id: int,
    known: numbers.Known,
    near: tuple[Shop, datetime] | None = None,
    due: dict[int, list[Row]] | None = None,
) -> Gathered:
    """The same, without advisories, for the phones of whose numbers all is known; `near`: as `gather` with it. `due`
    are the windows, where they were read already."""
    persons = known.persons_by_phone
    contacts = _Contacts(
        phones=sorted(known.phones.values(), key=lambda one: one["id"]),
        persons=persons,
        invites=known.invites,
        alerts=known.alerts,
        states={phone_id: state for phone_id, (state, _) in known.conversations.items()},
        standings=known.standings,
    )
    person_ids = list({one["id"] for found in persons.values() for one in found})
    vehicles = people.vehicles_by_person(connection, shop_id, person_ids)
    cars = list({one["id"] for found in vehicles.values() for one in found})
    due = _near_windows(connection, *near, timedelta(0), cars) if near else due
    return _gather(connection, shop_id, contacts, vehicles, cars, due)


def _gather(
    connection: Connection,
    shop_id: int,
    contacts: _Contacts,
    vehicles: dict[int, list[Row]],
    cars: list[int] | None,
    due: dict[int, list[Row]] | None = None,
) -> Gathered:
    def of_cars(table: Table, *conditions: ColumnElement[bool]) -> dict[int, list[Row]]:
        return rows.grouped(connection, table, "vehicle_id", shop_id, cars, *conditions)

    return Gathered(
        **vars(contacts),
        vehicles=vehicles,
        windows=of_cars(tables.due_windows, _PRESENT) if due is None else due,
        visits=of_cars(tables.visits),
        work=of_cars(tables.work_done),
        advice=of_cars(tables.recommendations),
        rests=of_cars(tables.rests),
        recalls=of_cars(tables.recalls, _OPEN),
        bookings=of_cars(tables.booking_requests),
        set_changes=set_seasons.drawn_cars(connection, shop_id, cars),
    )


def advisories_for(
    connection: Connection, shop_id: int, gathered: Gathered, phone: Row, now: datetime
) -> dict[int, tuple[Advisory, ...]]:
    """The advisories of a phone's cars: their inspections are read for them."""
    persons = gathered.persons.get(phone["id"], [])
    cars = {car["id"] for person in persons for car in gathered.vehicles.get(person["id"], [])}
    if not cars:
        return {}
    shop = shops.load_shop(connection, shop_id)
    return {one: advisories_of_vehicle(connection, shop, one, day_of(now, shop.zone)) for one in cars}


def pictures_of_phone(
    gathered: Gathered, shop: Shop, phone: Row, now: datetime, *, needs_registration: bool
) -> list[CarPicture]:
    """One picture for each car that persons of this phone own or drive, in the order of the store."""
    found: dict[str, CarPicture] = {}
    hour = gathered.habits.of_phone(phone["id"]) if gathered.habits else None
    for person in gathered.persons.get(phone["id"], []):
        for vehicle in gathered.vehicles.get(person["id"], []):
            if vehicle["code"] not in found:
                found[vehicle["code"]] = CarPicture(
                    shop=shop,
                    phone=people.phone_of(phone),
                    person=people.person_of(person),
                    vehicle=vehicle["code"],
                    consent=gathered.standings.get(phone["number"]) or standing(()),
                    invites=tuple(_invites(gathered.invites.get(phone["id"], []))),
                    needs_registration=needs_registration,
                    hour=hour,
                    set_change=gathered.set_changes.get((phone["id"], vehicle["id"])),
                    paced=_paced(gathered.placed_row(phone["id"], vehicle["id"])),
                    free_top_offs=_free_top_offs(shop, people.vehicle_of(vehicle)),
                    **_car(gathered, shop, vehicle["id"], now),
                    **_thread(gathered, phone["id"], shop, now),
                )
    return list(found.values())


def _free_top_offs(shop: Shop, vehicle: Vehicle) -> tuple[str, ...]:
    """What the shop tops off free on such a car: an electric one has no engine oil."""
    free = shop.free_services
    items = in_use(catalogue_of(shop))
    return tuple(
        one.code
        for one in items
        if one.code in free and one.is_top_off_free and one.is_named and one.exists_on(vehicle)
    )


def _paced(row: Row | None) -> Paced | None:
    """Only what waits for room: what comes up by itself comes up when it does."""
    return Paced(row["begins_on"], row["says"], row["is_legal"]) if row is not None and row["says"] else None


def curves_of_phone(gathered: Gathered, phone_id: int, today: date) -> dict[str, Curves]:
    """The due curves of each car of a phone, by its code."""
    return {
        vehicle["code"]: dict(curves_of(gathered.windows.get(vehicle["id"], []), today))
        for person in gathered.persons.get(phone_id, [])
        for vehicle in gathered.vehicles.get(person["id"], [])
    }


def why_not_any_more(gathered: Gathered, shop: Shop, text: Row, reason: Row | None, now: datetime) -> str | None:
    """Asked before a planned invite leaves: why it is not wanted any more, or None. Hours are asked elsewhere."""
    phone = next((one for one in gathered.phones if one["id"] == text["phone_id"]), None)
    if phone is None or text["vehicle_id"] is None or reason is None:
        return "its phone or car is gone"
    pictures = pictures_of_phone(gathered, shop, phone, now, needs_registration=False)
    vehicle = gathered.vehicle(text["vehicle_id"])
    mine = next((one for one in pictures if vehicle and one.vehicle == vehicle["code"]), None)
    if vehicle is None or mine is None:
        return "the car is no longer theirs"
    if _is_about_nothing(text, catalogue_of(shop)):
        return "the shop no longer looks at what it is about, or has no words for it yet"
    planned = PlannedText(
        kind=text["kind"], reason=text["reason"], raised_by=reason["raised_by"], try_number=text["try_no"],
        phone_id=phone["id"], person_id=reason["person_id"], vehicle=vehicle["code"],
        items=_items_of(text), leaves_at=text["due_at"], valid_until=text["valid_until"], because="",
    )  # fmt: skip
    stop = still_wanted(planned, mine, text["planned_at"], now)
    return stop.says if stop and stop.rule != "hours" else None


def _is_about_nothing(text: Row, catalogue: Catalogue) -> bool:
    """True where it named items, and the shop has switched each of them off since."""
    named = [catalogue[code] for code, _ in _items_of(text) if code in catalogue]
    return bool(named) and not any(one.is_in_use and one.is_named for one in named)


def _car(gathered: Gathered, shop: Shop, car_id: int, now: datetime) -> dict[str, Any]:
    """The car's part of a picture."""
    catalogue = catalogue_of(shop)
    windows, today = gathered.windows.get(car_id, []), day_of(now, shop.zone)
    due = tuple(due_items(windows, shop, today))
    saved = _days_saved_by_odometer(windows, shop, today)
    near = [saved.get(one.at, 0.0) for one in due if one.chance_by_lead >= ODOMETER_FROM_CHANCE]
    return {
        "due": due,
        "is_odometer_worth_a_text": max(near, default=0.0) > shop.rules.odometer_text_saves_days,
        "is_odometer_asked_along": max(saved.values(), default=0.0) >= ODOMETER_LINE_SAVES_DAYS,
        "advisories": gathered.advisories.get(car_id, ()),
        "visits": tuple(
            Visit(row["code"], row["opened_at"], row["closed_at"], row["odometer_miles"])
            for row in gathered.visits.get(car_id, [])
        ),
        "work": tuple(work_of(catalogue, gathered.work.get(car_id, []))),
        "recommendations": tuple(advice_of(catalogue, gathered.advice.get(car_id, []))),
        "bookings": tuple(
            BookingSeen(
                str(row["id"]),
                row["state"],
                row["slot_at"],
                row["asked_at"],
                tuple((one, at) for one, at in row["items"]),
            )
            for row in gathered.bookings.get(car_id, [])
        ),
        "rests": tuple(rests_of(catalogue, gathered.rests.get(car_id, []))),
        "recalls": tuple(Recall(row["code"], row["entered_on"]) for row in gathered.recalls.get(car_id, [])),
    }


def _days_saved_by_odometer(rows_of_car: Iterable[Row], shop: Shop, today: date) -> dict[ItemAt, float]:
    """What a reading told today would save of each item, in days of being too early; nothing where the last one is too
    recent to tell anything."""
    saved = {}
    for row in rows_of_car:
        body = row["body"]
        read_on = iso_day(body.get("odometer_on"))
        since = (today - read_on).days if read_on else 0
        gains = [gain for days, gain in body.get("odometer_gains", ()) if since >= days]
        if gains:
            curve = DueCurve.from_json(body["curve"])
            saved[row["item"], row["position"]] = days_saved(curve, gains[-1], shop.rules.send_at_chance)
    return saved


def _invites(rows_of_phone: Iterable[Row]) -> Iterator[EarlierInvite]:
    for row in rows_of_phone:
        yield EarlierInvite(
            reason=row["reason"], raised_by=row["raised_by"], try_number=row["try_no"],
            at=row["sent_at"] or row["due_at"], vehicle=row["vehicle_code"] or "",
            items=_items_of(row),
        )  # fmt: skip


def _items_of(text: Row) -> tuple[tuple[str, str], ...]:
    """What this very text names: a second try of a reason may name other items than the first."""
    return tuple((item, position) for item, position in text["facts"].get("items", ()))


def _thread(gathered: Gathered, phone_id: int, shop: Shop, now: datetime) -> dict[str, Any]:
    state, about = gathered.states.get(phone_id, {}), gathered.alerts.get(phone_id, [])
    complaints = [day_of(row["raised_at"], shop.zone) for row in about if row["kind"] == "complaint"]
    return {"complained_on": max(complaints, default=None), **numbers.thread_facts(state, about, now)}
