"""Look at the test phone: whose phones got texts, and what one of them shows. Reads only."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from followup.storage import people, shops, staff, test_phone
from followup.storage.store import Connection, Store


@dataclass(frozen=True)
class Handset:
    """One phone; `whose` names who answers it, "" where nobody is known. `last_at` None: nothing was written yet."""

    number: str
    whose: str
    count: int = 0
    last_at: datetime | None = None


@dataclass(frozen=True)
class Line:
    """One text on the phone; `is_shops` where it came from the shop."""

    at: datetime
    is_shops: bool
    body: str


@dataclass(frozen=True)
class Handsets:
    """Phones with texts, the latest first, and phones of customers that got none yet, by name."""

    with_texts: tuple[Handset, ...]
    silent: tuple[Handset, ...]


@dataclass(frozen=True)
class Screen:
    """What one phone shows, the oldest line first; `shop` is the name that stands beside the shop's lines."""

    handset: Handset
    shop: str
    lines: tuple[Line, ...]


def look_at_test_phones(store: Store, shop_id: int) -> Handsets:
    """Every phone that the test phone can play."""
    with store.read() as connection:
        rows = test_phone.numbers(connection, shop_id)
        whose = _names(connection, shop_id)
        with_texts = [
            Handset(one["number"], whose.get(one["number"], ""), one["count"], one["last_at"]) for one in rows
        ]
        known = {one.number for one in with_texts}
        silent = [Handset(number, name) for number, name in whose.items() if number not in known]
    return Handsets(tuple(with_texts), tuple(sorted(silent, key=lambda one: (one.whose, one.number))))


def look_at_test_phone(store: Store, shop_id: int, number: str) -> Screen:
    """What the phone of that number (E.164) shows; an unknown one shows nothing yet."""
    with store.read() as connection:
        rows = test_phone.texts_of(connection, shop_id, number)
        whose = _names(connection, shop_id).get(number, "")
        shop = shops.load_shop(connection, shop_id).name
    lines = tuple(Line(one["at"], one["direction"] == "to_phone", one["body"]) for one in rows)
    return Screen(Handset(number, whose, len(lines), lines[-1].at if lines else None), shop, lines)


def _names(connection: Connection, shop_id: int) -> dict[str, str]:
    """Who answers each known number: customers, and staff who agreed to alerts."""
    found: dict[str, str] = {}
    for phone in people.all_phones(connection, shop_id):
        persons = [one["name"] for one in people.persons_of_phone(connection, phone["id"]) if one["name"]]
        found[phone["number"]] = " and ".join(persons)
    for member in staff.of_shop(connection, shop_id):
        number = staff.alert_phone(connection, shop_id, member.id)
        if number:
            found[number] = f"{member.name} ({member.role}, alerts)"
    return found
