"""Add a member of staff from the command line: how the first owner comes in, with the shop where it is new.

One transaction: shop, rules and member, or nothing.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from typing import cast

from followup import passwords
from followup.core.shop import ShopRules
from followup.phone_numbers import NotANumber, read_number
from followup.storage import shops, staff
from followup.storage.staff import Role
from followup.storage.store import Connection, Store


class ShopUnusable(Exception):
    """The shop cannot be made or the member cannot be added."""


@dataclass(frozen=True)
class NewShop:
    """What a shop needs that does not exist yet; the texts leave from the number in the settings."""

    name: str | None
    zone: str
    phone: str | None
    texts_from: str


def add_first_staff(
    store: Store, code: str, new: NewShop, login: str, name: str, role: str, password: str, now: datetime
) -> str:
    """Add the member, and the shop if it is new; the shop's code. Raises `ShopUnusable`."""
    weak = passwords.why_not(password, login, name)
    if weak:
        raise ShopUnusable(weak)
    hashed = passwords.hash_password(password)
    with store.write() as connection:
        shop_id = staff.shop_named(connection, code) or _make_shop(connection, code, new, now)
        if staff.with_login(connection, shop_id, login) is not None:
            raise ShopUnusable(f"There is a member with the login {login} already: choose another.")
        staff.add(connection, shop_id, login, name, cast(Role, role), hashed, now)
        shops.note(connection, shop_id, now, "the command line", "added staff", login)
    return code


def _make_shop(connection: Connection, code: str, new: NewShop, now: datetime) -> int:
    from zoneinfo import available_timezones

    if not new.name or not new.phone:
        raise ShopUnusable(f"There is no shop {code} yet: say --shop-name and --phone to make it.")
    if new.zone not in available_timezones():
        raise ShopUnusable(f"There is no time zone {new.zone}: use a name like America/Chicago.")
    try:
        phone = read_number(new.phone).e164
    except NotANumber as wrong:
        raise ShopUnusable(f"{new.phone} is no phone number: write it like +13125550100.") from wrong
    facts = {"name": new.name, "zone": new.zone, "phone": phone, "texts_from": new.texts_from}
    shop_id = shops.add_shop(connection, now, code, facts)
    shops.save_rules(connection, shop_id, ShopRules(), "the command line", now, "as it begins")
    return shop_id
