"""Find customers and cars by a name, a number, a plate or what the car is called, and when each is first due.

Reads only.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import datetime

from followup.core.forecast.first_due import FirstDue
from followup.core.shop import Shop
from followup.core.wall import day_of
from followup.storage import people, seen, shops, windows
from followup.storage.seen import Whom
from followup.storage.store import Connection, Store

MOST = 60
FEWEST_DIGITS = 3


@dataclass(frozen=True)
class FoundCar:
    """A customer with a car (or without), and when the first of its items is due; None where nothing is known."""

    whom: Whom
    first: FirstDue | None


def find_customers(store: Store, shop_id: int, words: str, now: datetime) -> tuple[FoundCar, ...]:
    """Customers with their cars that hold all the words, by name; a number is found by any part of its digits."""
    wanted = words.casefold().split()
    digits = "".join(sign for sign in words if sign.isdigit())
    with store.read() as connection:
        found: list[Whom] = []
        for one in _everybody(connection, shop_id):
            told = " ".join(filter(None, (one.name, one.car, one.plate))).casefold()
            is_number = len(digits) >= FEWEST_DIGITS and digits in (one.number or "")
            if is_number or all(word in told for word in wanted):
                found.append(one)
            if len(found) == MOST:
                break
        if not found:
            return ()
        shop = shops.load_shop(connection, shop_id)
        return tuple(FoundCar(one, _first(connection, shop, one, now)) for one in found)


def _first(connection: Connection, shop: Shop, found: Whom, now: datetime) -> FirstDue | None:
    if found.vehicle_id is None:
        return None
    return seen.first_due_of(windows.windows_of(connection, found.vehicle_id), shop, day_of(now, shop.zone))


def _everybody(connection: Connection, shop_id: int) -> Iterator[Whom]:
    """Each person with each car; a person without one stands alone."""
    for person in people.all_persons(connection, shop_id):
        cars = people.vehicles_of_persons(connection, [person["id"]])
        for car_id in [car["id"] for car in cars] or [None]:
            about = {"person_id": person["id"], "vehicle_id": car_id}
            yield seen.whom(connection, shop_id, about)
