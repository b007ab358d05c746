"""Find customers and cars by a name, a number, a plate or what the car is called. Reads only."""

from __future__ import annotations

from collections.abc import Iterator

from followup.storage import people, seen
from followup.storage.seen import Whom
from followup.storage.store import Connection, Store

MOST = 60
FEWEST_DIGITS = 3


def find_customers(store: Store, shop_id: int, words: str) -> tuple[Whom, ...]:
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
        return tuple(found)


def _everybody(connection: Connection, shop_id: int) -> Iterator[Whom]:
    """Each person with each car; a person without one stands alone."""
    for person in people.all_persons(connection, shop_id):
        cars = people.vehicles_of_persons(connection, [person["id"]])
        for car_id in [car["id"] for car in cars] or [None]:
            about = {"person_id": person["id"], "vehicle_id": car_id}
            yield seen.whom(connection, shop_id, about)
