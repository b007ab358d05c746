"""Change who the shop is to its customers: name, address, numbers, zone, country, registration.

1. Numbers are read and written one way (E.164); a zone, a country and a state must exist.
2. The change and a line of the audit trail are one transaction. No two shops text from the same number: the store
   refuses it, and so does this, in words.
"""

from __future__ import annotations

from collections.abc import Mapping
from datetime import datetime
from zoneinfo import available_timezones

from followup.core.shop import Shop
from followup.phone_numbers import NotANumber, read_number
from followup.storage import shops
from followup.storage.store import Store

ORDERS = ("month-first", "day-first")
LONGEST = {"name": 60, "address": 120, "registration": 120}
# Numbers that are needed, and those that may be left out.
NUMBERS = {"phone": True, "texts_from": True, "roadside_phone": False}
FACTS = (
    "name",
    "address",
    "phone",
    "texts_from",
    "roadside_phone",
    "zone",
    "country",
    "state",
    "order",
    "registration",
)


def look_at_shop(store: Store, shop_id: int) -> Shop:
    """The shop as it stands."""
    with store.read() as connection:
        return shops.load_shop(connection, shop_id)


def change_shop(store: Store, shop_id: int, given: Mapping[str, str], who: str, now: datetime) -> dict[str, str]:
    """Keep the facts, all of `FACTS` as typed; else what is wrong, in words, by fact."""
    facts: dict[str, str | None] = {name: given[name].strip() for name in FACTS}
    facts["country"], facts["state"] = (facts["country"] or "").upper(), (facts["state"] or "").upper() or None
    wrong = {name: why for name in FACTS if (why := _why_not(name, facts[name] or ""))}
    for name, is_needed in NUMBERS.items():
        written = facts[name] or ""
        if not written and not is_needed:
            facts[name] = None
            continue
        try:
            facts[name] = read_number(written, facts["country"] or "US").e164
        except NotANumber:
            wrong.setdefault(name, "This is no phone number that exists.")
    if wrong:
        return wrong
    facts["registration"] = facts["registration"] or None
    with store.write() as connection:
        owner = shops.shop_of_number(connection, str(facts["texts_from"]))
        if owner not in (None, shop_id):
            return {"texts_from": "Another shop texts from this number."}
        shop = shops.load_shop(connection, shop_id)
        before = {name: getattr(shop, name) for name in FACTS if getattr(shop, name) != facts[name]}
        if not before:
            return {}
        shops.change_shop(connection, shop_id, **facts)
        after = {name: facts[name] for name in before}
        shops.note(connection, shop_id, now, who, "changed the shop", ", ".join(before), before, after)
    return {}


def _why_not(name: str, value: str) -> str | None:
    if name in LONGEST and (len(value) > LONGEST[name] or not value.isprintable()):
        return f"Give at most {LONGEST[name]} characters in one line."
    if name == "name" and not value:
        return "Every text begins with the shop's name: fill this in."
    if name == "zone" and value not in available_timezones():
        return "There is no such zone. Write it like America/Chicago."
    if name == "order" and value not in ORDERS:
        return "Choose one of these."
    if name == "country" and not (len(value) == 2 and value.isascii() and value.isalpha()):
        return "Give the two letters of the country, like US."
    if name == "state" and value and not (1 <= len(value) <= 3 and value.isascii() and value.isalnum()):
        return "Give the letters of the state, like IL, or leave it empty."
    return None
