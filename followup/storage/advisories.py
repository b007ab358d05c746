"""The advisories of a car as its readings and its work stand: worked out when they are asked for, kept nowhere."""

from __future__ import annotations

from datetime import date

from sqlalchemy import Connection

from followup.core.advisories import Advisory, advisories_of
from followup.core.shop import Shop
from followup.storage.histories import history_of


def advisories_of_vehicle(connection: Connection, shop: Shop, vehicle_id: int, today: date) -> tuple[Advisory, ...]:
    """What the car's present readings show on the shop's day `today`; () before its first inspection."""
    history = history_of(connection, shop, vehicle_id)
    if history is None:
        return ()
    return advisories_of(history.vehicle, history.readings, history.work, shop.rules, today)
