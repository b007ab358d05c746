"""Keep a fleet's weekly list: who agreed to it in writing, on which weekday it leaves, which car is which unit.

The list and that its contact is a fleet's are kept in one transaction, with the line of the audit trail; invites to
the contact that are queued are dropped with it, because the list takes their place. Consent is the ledger's: without
one for upkeep, or after a stop, no list leaves.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date, datetime

from followup.core.consent import WRITTEN
from followup.core.shop import WEEKDAYS
from followup.core.wall import day_of
from followup.storage import consents, fleet_lists, outbox, people, shops
from followup.storage.rows import Row
from followup.storage.seen import car_words, staff_name
from followup.storage.store import Connection, Store

LONGEST_UNIT = 12


@dataclass(frozen=True)
class FleetCar:
    """A car of the contact, with its unit number ("" where it is not in the list)."""

    vehicle_id: int
    words: str
    unit: str


@dataclass(frozen=True)
class FleetPage:
    """A contact with their cars and the list that stands. `why_not`: why no list would leave as things stand."""

    person_id: int
    name: str
    phone_id: int | None
    number: str | None
    cars: tuple[FleetCar, ...]
    weekday: int | None
    agreed_on: date | None
    how: str | None
    why_not: str | None


def look_at_fleet(store: Store, shop_id: int, person_id: int) -> FleetPage | None:
    """A customer as a fleet's contact; None where the shop has no such customer."""
    with store.read() as connection:
        person = people.load_person(connection, shop_id, person_id)
        if person is None:
            return None
        phone = _phone(connection, person_id)
        stands = fleet_lists.list_of_person(connection, shop_id, person_id)
        units = fleet_lists.units_of(connection, stands["id"]) if stands else {}
        cars = tuple(
            FleetCar(one["id"], car_words(one), units.get(one["id"], ""))
            for one in people.vehicles_of_persons(connection, [person_id])
        )
        return FleetPage(
            person_id, person["name"] or "a customer without a name", phone["id"] if phone else None,
            phone["number"] if phone else None, cars, stands["weekday"] if stands else None,
            stands["agreed_on"] if stands else None, stands["how"] if stands else None,
            _why_not(connection, shop_id, phone),
        )  # fmt: skip


def keep_fleet_list(
    store: Store,
    shop_id: int,
    person_id: int,
    weekday: int,
    agreed_on: date,
    how: str,
    units: Mapping[int, str],
    staff_id: int,
    now: datetime,
) -> dict[str, str]:
    """Keep it; else what is wrong, in words by field ("unit_7" for a car's number)."""
    with store.write() as connection:
        shop = shops.load_shop(connection, shop_id)
        phone = _phone(connection, person_id)
        if people.load_person(connection, shop_id, person_id) is None or phone is None:
            return {"": "This customer has no phone to send a list to."}
        mine = {one["id"] for one in people.vehicles_of_persons(connection, [person_id])}
        wanted = {one: unit.strip() for one, unit in units.items() if unit.strip() and one in mine}
        wrong = _wrong(weekday, agreed_on, how, wanted, day_of(now, shop.zone))
        if wrong:
            return wrong
        fleet_lists.keep_list(
            connection, shop_id, person_id, phone["id"], weekday, agreed_on, how, staff_id, now, wanted
        )
        people.change_person(connection, person_id, is_fleet=True)
        outbox.drop_planned(
            connection, shop_id, "the contact gets a weekly list", number=phone["number"], kinds=("invite",)
        )
        who = staff_name(connection, shop_id, staff_id)
        after = {"weekday": WEEKDAYS[weekday], "agreed_on": agreed_on.isoformat(), "how": how, "units": len(wanted)}
        shops.note(connection, shop_id, now, who, "kept a fleet's weekly list", f"person {person_id}", after=after)
    return {}


def end_fleet_list(store: Store, shop_id: int, person_id: int, staff_id: int, now: datetime) -> bool:
    """End it; the contact gets invites like others again. False where none stood."""
    with store.write() as connection:
        stands = fleet_lists.list_of_person(connection, shop_id, person_id)
        if stands is None or not fleet_lists.end_list(connection, shop_id, person_id, now):
            return False
        people.change_person(connection, person_id, is_fleet=False)
        phone = people.load_phone(connection, shop_id, stands["phone_id"])
        if phone is not None:
            outbox.drop_planned(
                connection, shop_id, "the weekly list was ended", number=phone["number"], kinds=("invite",),
                reason_codes=("fleet_list",),
            )  # fmt: skip
        who = staff_name(connection, shop_id, staff_id)
        shops.note(connection, shop_id, now, who, "ended a fleet's weekly list", f"person {person_id}")
    return True


def _phone(connection: Connection, person_id: int) -> Row | None:
    return next(iter(people.phones_of_person(connection, person_id)), None)


def _why_not(connection: Connection, shop_id: int, phone: Row | None) -> str | None:
    if phone is None:
        return "There is no phone to send it to."
    standing = consents.standing_of(connection, shop_id, phone["number"])
    if standing.is_stopped:
        return "The number asked us to stop texting."
    return None if standing.allows("upkeep") else "There is no written consent for texts about upkeep."


def _wrong(weekday: int, agreed_on: date, how: str, units: Mapping[int, str], today: date) -> dict[str, str]:
    wrong = {}
    if not 0 <= weekday < len(WEEKDAYS) - 1:
        wrong["weekday"] = "Choose a day from Monday to Saturday: no invite leaves on a Sunday."
    if agreed_on > today:
        wrong["agreed_on"] = "This day is yet to come."
    if how not in WRITTEN:
        wrong["how"] = "Choose how it was agreed to in writing."
    for vehicle_id, unit in units.items():
        if len(unit) > LONGEST_UNIT or not unit.isprintable():
            wrong[f"unit_{vehicle_id}"] = f"A unit number has at most {LONGEST_UNIT} characters."
    if len(set(units.values())) < len(units):
        wrong[""] = "Two cars have the same unit number."
    if not units:
        wrong[""] = "Give at least one car its unit number."
    return wrong
