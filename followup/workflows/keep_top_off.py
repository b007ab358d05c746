"""Keep a top-off at the shop: fifteen seconds for whoever did it, and the forecast begins anew.

1. The odometer, where it was looked at, is held against the last one known.
2. In one transaction: a line of work for each fluid, the odometer, what and how much in the audit trail; queued
   invites to a free top-off of that car are dropped, since it has been done.
3. The car then has news: call `forecast_windows`. If the process dies before, the clock's next tick does it.

No visit is made of it: nobody is asked whether everything was all right, and no invite rests because of it.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date, datetime

from followup.core.inspection_doubts import MOST_MILES_A_DAY
from followup.core.item import Item, in_use
from followup.core.items import catalogue_of
from followup.core.shop import Shop
from followup.core.vehicle import Vehicle
from followup.core.wall import day_of
from followup.storage import inspections, outbox, people, shops
from followup.storage.store import Connection, Store


def what_is_topped_off(store: Store, shop_id: int, vehicle: Vehicle | None) -> list[tuple[Item, str | None]]:
    """Items that can be topped off on that car, the shop's free ones first, each with how much is free ("": any;
    None: not a free service of this shop)."""
    with store.read() as connection:
        shop = shops.load_shop(connection, shop_id)
    free = shop.free_services
    items = [
        one for one in in_use(catalogue_of(shop)) if one.is_top_off_free and (vehicle is None or one.exists_on(vehicle))
    ]
    return sorted(((one, free.get(one.code)) for one in items), key=lambda pair: pair[0].code not in free)


def keep_top_off(
    store: Store,
    shop_id: int,
    vehicle_id: int,
    items: Sequence[str],
    how_much: str,
    odometer_miles: float | None,
    who: str,
    now: datetime,
) -> dict[str, str]:
    """Keep it; what is wrong, by field ({} where it was kept). Fields: what, odometer, "" for the car."""
    with store.write() as connection:
        row = people.load_vehicle(connection, shop_id, vehicle_id)
        if row is None:
            return {"": "There is no such car."}
        shop = shops.load_shop(connection, shop_id)
        if wrong := _wrong(connection, people.vehicle_of(row), vehicle_id, items, odometer_miles, shop, now):
            return wrong
        on = day_of(now, shop.zone)
        for code in dict.fromkeys(items):
            inspections.add_work(
                connection, shop_id=shop_id, vehicle_id=vehicle_id, inspection_id=None, visit_id=None, item=code,
                position="", did="topped_off", on=on, odometer_miles=odometer_miles, moved=None, kept_at=now,
            )  # fmt: skip
        if odometer_miles is not None:
            inspections.add_odometer_telling(
                connection, shop_id=shop_id, vehicle_id=vehicle_id, on=on, miles=odometer_miles, told_by=who,
                told_at=now,
            )  # fmt: skip
        outbox.drop_planned(
            connection, shop_id, "topped off at the shop", vehicle_id=vehicle_id, kinds=("invite",),
            reason_codes=("free_service", "winter_top_off", "long_unseen"),
        )  # fmt: skip
        done = {"items": list(items), "how_much": how_much, "odometer_miles": odometer_miles}
        shops.note(connection, shop_id, now, who, "topped off", f"car {row['code']}", after=done)
    return {}


def _wrong(
    connection: Connection,
    vehicle: Vehicle,
    vehicle_id: int,
    items: Sequence[str],
    odometer_miles: float | None,
    shop: Shop,
    now: datetime,
) -> dict[str, str]:
    catalogue = catalogue_of(shop)
    wrong = {}
    if not items:
        wrong["what"] = "Choose what was topped off."
    for code in items:
        item = catalogue.get(code)
        if item is None or not (item.is_in_use and item.is_top_off_free) or not item.exists_on(vehicle):
            wrong["what"] = "This car has no such thing to top off."
    today = day_of(now, shop.zone)
    if odometer_miles is not None and (says := _doubt(connection, vehicle_id, odometer_miles, today)):
        wrong["odometer"] = says
    return wrong


def _doubt(connection: Connection, vehicle_id: int, odometer_miles: float, today: date) -> str | None:
    """Why the odometer cannot be right: nobody is asked twice here, it can be left out instead."""
    rows = inspections.bodies_of_vehicle(connection, vehicle_id)
    known = [(row["inspected_on"], row["odometer_miles"]) for row in rows if row["odometer_miles"] is not None]
    known += [(row["on"], row["miles"]) for row in inspections.odometers_told(connection, vehicle_id)]
    if not known:
        return None
    on, last = max(known)
    if odometer_miles < last:
        return f"Less than the {last:,.0f} mi of {on}: look again, or leave it out."
    if odometer_miles - last > MOST_MILES_A_DAY * max((today - on).days, 1):
        return f"Far more than the {last:,.0f} mi of {on}: look again, or leave it out."
    return None
