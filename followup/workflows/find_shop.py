"""Find the shop that a command or a token means."""

from __future__ import annotations

from followup.storage import staff
from followup.storage.store import Store


class NoSuchShop(Exception):
    """There is no such shop; where there are several, name one by its code."""


def find_shop(store: Store, code: str) -> int:
    """The id of the shop with that code; with "" the only shop. Raises `NoSuchShop`."""
    with store.read() as connection:
        found = staff.shop_named(connection, code)
    if found is None:
        raise NoSuchShop(NoSuchShop.__doc__)
    return found
