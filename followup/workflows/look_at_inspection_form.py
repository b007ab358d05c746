"""What the inspection form and its result page show of a car: facts, last readings, open visit, due windows.

Only looks; nothing here knows a phone number.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, datetime

from followup.core.advisories import Advisory
from followup.core.forecast.window import DueWindow, condition_of
from followup.core.inspection import InspectionLine, Reading
from followup.core.item import Catalogue, Condition, Item, Limit
from followup.core.items import catalogue_of, present_condition
from followup.core.items.readings import WORST_FIRST
from followup.core.shop import Shop
from followup.core.vehicle import WALKING_ORDER, Vehicle
from followup.core.wall import day_of, to_wall
from followup.storage import evidence, inspections, people, shops
from followup.storage.advisories import advisories_of_vehicle
from followup.storage.rows import Row
from followup.storage.store import Connection, Store

MOST_FOUND = 20


@dataclass(frozen=True)
class CarSeen:
    """A car in a list. `open_part` names the part that is still to do where the other one was filled."""

    vehicle_id: int
    vehicle: Vehicle
    names: tuple[str, ...]
    visit: str | None = None
    visit_id: int | None = None
    inspection: str | None = None
    open_part: str | None = None


@dataclass(frozen=True)
class PersonSeen:
    """A person who owns or drives the car, by the shop's own id."""

    person_id: int
    code: str
    name: str | None


@dataclass(frozen=True)
class FormPicture:
    """All that the form shows of a car; `last` holds the last reading of each (item, position) with its day.

    `now` is the wall time at the shop; `unit` is that in which the odometer was last read; `last_odometer` is in miles.
    """

    shop: Shop
    now: datetime
    car: CarSeen | None = None
    people: tuple[PersonSeen, ...] = ()
    last: dict[tuple[str, str], tuple[Reading, date]] | None = None
    last_odometer: tuple[float, date] | None = None
    unit: str = "mi"


@dataclass(frozen=True)
class ItemSeen:
    """One item of the result: what was read (None: not this time), its condition, and when it may be due.

    `legal` is its legal limit.
    """

    item: Item
    position: str
    reading: Reading | None
    condition: Condition
    window: DueWindow | None
    legal: Limit | None = None


@dataclass(frozen=True)
class ResultPicture:
    """An inspection as it was kept, with the car's present due windows and advisories, as of `today`.

    `current_id` is the id of its present version.
    """

    car: CarSeen
    people: tuple[PersonSeen, ...]
    line: InspectionLine
    items: tuple[ItemSeen, ...]
    catalogue: Catalogue
    advisories: tuple[Advisory, ...]
    stored: tuple[ItemSeen, ...]
    today: date
    current_id: int


def find_cars(store: Store, shop_id: int, words: str) -> list[CarSeen]:
    """Cars whose plate, label, id or driver's name holds every word; the plate counts without its spaces."""
    wanted = words.casefold().split()
    if not wanted:
        return []
    with store.read() as connection:
        found = [
            seen
            for row in people.all_vehicles(connection, shop_id)
            if (seen := _car(connection, row)) and _holds(seen, wanted, words)
        ]
    return found[:MOST_FOUND]


def cars_in_shop(store: Store, shop_id: int) -> list[CarSeen]:
    """Cars whose visit is open, the first to come first."""
    with store.read() as connection:
        rows = [
            people.load_vehicle(connection, shop_id, visit["vehicle_id"])
            for visit in inspections.open_visits(connection, shop_id)
        ]
        return list({row["id"]: _car(connection, row) for row in rows if row}.values())


def look_at_form(store: Store, shop_id: int, vehicle_id: int | None, now: datetime) -> FormPicture | None:
    """The form's picture of a car, or of none yet; None where the shop has no such car."""
    with store.read() as connection:
        shop = shops.load_shop(connection, shop_id)
        wall = to_wall(now, shop.zone).replace(microsecond=0)
        if vehicle_id is None:
            return FormPicture(shop, wall)
        row = people.load_vehicle(connection, shop_id, vehicle_id)
        if row is None:
            return None
        bodies = inspections.bodies_of_vehicle(connection, vehicle_id)
        told = [(one["on"], one["miles"]) for one in inspections.odometers_told(connection, vehicle_id)]
        known = [(one["inspected_on"], one["odometer_miles"]) for one in bodies if one["odometer_miles"] is not None]
        newest = max([*told, *known], default=None)
        return FormPicture(
            shop=shop,
            now=wall,
            car=_car(connection, row),
            people=_people(connection, vehicle_id),
            last=_last_readings(bodies, catalogue_of(shop)),
            last_odometer=(newest[1], newest[0]) if newest else None,
            unit=next((one["body"]["unit"] for one in reversed(bodies) if "unit" in one["body"]), "mi"),
        )


def look_at_result(store: Store, shop_id: int, inspection_id: int, now: datetime) -> ResultPicture | None:
    """An inspection that was kept; None where the shop has none of that id."""
    with store.read() as connection:
        row = inspections.load_inspection(connection, shop_id, inspection_id)
        vehicle = people.load_vehicle(connection, shop_id, row["vehicle_id"]) if row else None
        if row is None or vehicle is None:
            return None
        shop = shops.load_shop(connection, shop_id)
        line = _line(row)
        kept = evidence.windows_with_evidence(connection, vehicle["id"])
        made = {(one.item, one.position): one for one in kept if one.stored_set is None}
        car, today = _car(connection, vehicle), day_of(now, shop.zone)
        items = tuple(_items(shop, car.vehicle, line, made, today))
        stored = tuple(_stored(shop, kept, today))
        advised = advisories_of_vehicle(connection, shop, vehicle["id"], today)
        people_of_car = _people(connection, vehicle["id"])
        current = inspections.current_part(connection, shop_id, row["code"], row["part"]) or row
        return ResultPicture(
            car, people_of_car, line, items, catalogue_of(shop), advised, stored, today, current["id"]
        )  # fmt: skip


def _stored(shop: Shop, kept: list[DueWindow], today: date) -> Iterator[ItemSeen]:
    """The tires that are not on the car."""
    rules, catalogue = shop.rules, catalogue_of(shop)
    for window in (one for one in kept if one.stored_set is not None and one.item in catalogue):
        condition = condition_of(window, rules.lead_days, rules.send_at_chance, today)
        item = catalogue[window.item]
        yield ItemSeen(item, window.position, None, condition, window, item.limit("legal", rules.legal_limits))


def _items(
    shop: Shop, vehicle: Vehicle, line: InspectionLine, made: dict[tuple[str, str], DueWindow], today: date
) -> Iterator[ItemSeen]:
    """Every item that was read, and those with a window besides: in walking order, then in the catalogue's."""
    catalogue = catalogue_of(shop)
    read = {(one.item, at): one for one in line.readings for at in _places(catalogue, one)}
    for position in WALKING_ORDER:
        for item in catalogue.values():
            reading = read.get((item.code, position))
            window = made.get((item.code, position)) if item.is_in_use else None
            if reading is None and window is None:
                continue
            rules = shop.rules
            ahead = condition_of(window, rules.lead_days, rules.send_at_chance, today)
            found = (
                present_condition(item, reading, vehicle, rules.action_limits, line.inspected_at.date(), line.tires_on)
                if reading
                else "not checked"
            )
            legal = item.limit("legal", rules.legal_limits)
            yield ItemSeen(item, position, reading, min(ahead, found, key=WORST_FIRST.index), window, legal)


def _places(catalogue: Catalogue, reading: Reading) -> tuple[str, ...]:
    return catalogue[reading.item].places(reading.position) if reading.item in catalogue else ()


def _car(connection: Connection, row: Row) -> CarSeen:
    names = tuple(one["name"] for one in people.drivers_of_vehicle(connection, row["id"]) if one["name"])
    visit = next(
        (one for one in reversed(inspections.visits_of_vehicle(connection, row["id"])) if one["closed_at"] is None),
        None,
    )
    seen = CarSeen(row["id"], people.vehicle_of(row), names)
    if visit is None:
        return seen
    parts = [one for one in inspections.bodies_of_vehicle(connection, row["id"]) if one["visit_id"] == visit["id"]]
    filled = {one["part"] for one in parts if one["part"]}
    is_half = len(filled) == 1
    return CarSeen(
        row["id"], seen.vehicle, names, visit["code"], visit["id"], parts[-1]["code"] if is_half else None,
        "lift" if filled == {"reception"} else "reception" if is_half else None,
    )  # fmt: skip


def _holds(car: CarSeen, wanted: list[str], words: str) -> bool:
    vehicle = car.vehicle
    text = " ".join(filter(None, (vehicle.label, vehicle.plate, vehicle.code, *car.names))).casefold()
    plate = "".join((vehicle.plate or "").split()).casefold()
    return all(word in text for word in wanted) or (plate != "" and plate == "".join(words.split()).casefold())


def _people(connection: Connection, vehicle_id: int) -> tuple[PersonSeen, ...]:
    rows = people.drivers_of_vehicle(connection, vehicle_id)
    return tuple(PersonSeen(row["id"], row["code"], row["name"]) for row in rows)


def _last_readings(bodies: list[Row], catalogue: Catalogue) -> dict[tuple[str, str], tuple[Reading, date]]:
    """The newest reading of each place that says something."""
    last: dict[tuple[str, str], tuple[Reading, date]] = {}
    for row in bodies:
        for reading in _line(row).readings:
            item = catalogue.get(reading.item)
            if item is None or reading.not_checked:
                continue
            for place in item.places(reading.position):
                last[item.code, place] = (reading, row["inspected_on"])
    return last


def _line(row: Row) -> InspectionLine:
    import json

    return InspectionLine.model_validate_json(json.dumps(row["body"]))
