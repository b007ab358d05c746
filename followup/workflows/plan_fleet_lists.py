"""Plan the weekly lists of fleets: on its weekday, one text with the units that may be due for work.

1. Each list whose day it is (or was, up to two days ago) is looked at with its contact's cars as they stand now.
2. Where a unit belongs in it, reason and text become rows in one transaction, unique by (number, list, week): planning
   again, or in two processes, plans nothing twice. A week without such a unit has no text.

Whether it may leave (consent, a stop, the hours) is asked when it leaves. If the process dies, the next round plans
what is missing.
"""

from __future__ import annotations

from datetime import datetime

from followup.core.planning.fleet_list import ListedUnit, listed_units, week_of
from followup.core.planning.hours import next_moment, valid_until
from followup.core.shop import Shop
from followup.core.text import reason
from followup.core.wall import day_of
from followup.storage import fleet_lists, outbox, people, pictures, shops
from followup.storage.rows import Row
from followup.storage.store import Connection, Store

REASON = "fleet_list"


def plan_fleet_lists(store: Store, shop_id: int, now: datetime) -> int:
    """Plan the lists whose day it is; how many texts are new."""
    with store.read() as connection:
        shop = shops.load_shop(connection, shop_id)
        today = day_of(now, shop.zone)
        due = [row for row in fleet_lists.standing_lists(connection, shop_id) if week_of(today, row["weekday"])]
    planned = 0
    for row in due:
        week = week_of(today, row["weekday"])
        with store.write() as connection:
            planned += int(_plan(connection, shop, row, f"fleet list {row['id']}, week {week}", now) is not None)
    return planned


def _plan(connection: Connection, shop: Shop, row: Row, raised_by: str, now: datetime) -> int | None:
    phone = people.load_phone(connection, shop.id, row["phone_id"])
    person = people.load_person(connection, shop.id, row["person_id"])
    if phone is None or person is None:
        return None
    gathered = pictures.gather_for(connection, shop.id, now, phone)
    seen = pictures.pictures_of_phone(gathered, shop, phone, now, needs_registration=False)
    units = _units_by_code(connection, shop, row)
    listed = listed_units(seen, units, now)
    leaves_at = next_moment("invite", now, shop, seen[0].where) if seen else None
    if not listed or leaves_at is None:
        return None
    return outbox.plan_text(
        connection, shop.id, REASON, raised_by, now, phone_id=phone["id"], number=phone["number"],
        person_id=person["id"], language=person["language"] or phone["language"] or "en",
        facts={"units": [_fact(one) for one in listed], "because": "the week's list that a fleet agreed to"},
        due_at=leaves_at, valid_until=valid_until("invite", leaves_at), asks=reason(REASON).asks,
    )  # fmt: skip


def _units_by_code(connection: Connection, shop: Shop, row: Row) -> dict[str, str]:
    found = {}
    for vehicle_id, unit in fleet_lists.units_of(connection, row["id"]).items():
        vehicle = people.load_vehicle(connection, shop.id, vehicle_id)
        if vehicle is not None:
            found[str(vehicle["code"])] = unit
    return found


def _fact(one: ListedUnit) -> dict[str, object]:
    return {"vehicle": one.vehicle, "unit": one.unit, "reason": one.reason, "items": [list(at) for at in one.items]}
