"""The units of a fleet's weekly list as its text names them: those whose car is not booked or in the shop by now."""

from __future__ import annotations

from typing import Any

from followup.core.phrasing import phrase_list
from followup.core.wording_facts import FactValue
from followup.storage import inspections, people, requests
from followup.storage.rows import Row
from followup.storage.store import Connection
from followup.wording import item_fact
from followup.wording.shipped import phrase_file
from followup.workflows.send_texts.telling import Telling


def units_left(connection: Connection, text: Row) -> list[dict[str, Any]]:
    """The planned units that still wait for a visit."""
    return [one for one in text["facts"].get("units", []) if _waits(connection, text["shop_id"], one["vehicle"])]


def _waits(connection: Connection, shop_id: int, code: str) -> bool:
    vehicle = people.find_vehicle(connection, shop_id, code)
    if vehicle is None or inspections.is_in_shop(connection, vehicle["id"]):
        return False
    found = requests.requests_of_vehicle(connection, vehicle["id"])
    return not any(one["state"] in (*requests.OPEN, "confirmed") for one in found)


def units_of_text(told: Telling) -> FactValue:
    """A line for each unit: its number, and what it may need."""
    return [f"{one['unit']}: {_needs(told, one['items'])}" for one in units_left(told.connection, told.row)]


def _needs(told: Telling, items: list[list[str]]) -> str:
    places: dict[str, list[str]] = {}
    for item, position in items:
        if item in told.catalogue:
            places.setdefault(item, []).append(position)
    names = [item_fact(told.language, told.catalogue[item], positions=at)["name"] for item, at in places.items()]
    return phrase_list(names, told.language) or str(phrase_file(told.language, "phrases")["a_new_time"])
