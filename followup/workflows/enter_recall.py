"""Enter a recall for a car, or end it. The text about one says "may have"; who does the work is told with it."""

from __future__ import annotations

from datetime import datetime

from followup.core.wall import day_of
from followup.storage import inspections, people, shops
from followup.storage.store import Store


def enter_recall(store: Store, shop_id: int, vehicle_id: int, code: str, done_by: str, who: str, now: datetime) -> bool:
    """Keep a recall that staff found for a car; False where it was entered before, or there is no such car.

    `done_by` is who does the work at no charge, as the customer is told.
    """
    with store.write() as connection:
        if people.load_vehicle(connection, shop_id, vehicle_id) is None:
            return False
        on = day_of(now, shops.load_shop(connection, shop_id).zone)
        made = inspections.add_recall(
            connection, shop_id=shop_id, vehicle_id=vehicle_id, code=code, entered_on=on, done_by=done_by,
            entered_by=who,
        )  # fmt: skip
        if made is None:
            return False
        shops.note(connection, shop_id, now, who, "entered a recall", f"car {vehicle_id}", after={"code": code})
    return True
