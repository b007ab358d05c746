"""Look at the items of a shop: those that are shipped, and its own. Reads only."""

from __future__ import annotations

from followup.core.item import Catalogue
from followup.core.items import catalogue_of
from followup.storage import shops
from followup.storage.store import Store


def look_at_catalogue(store: Store, shop_id: int) -> Catalogue:
    """The shop's items by their codes, switched-off ones too."""
    with store.read() as connection:
        return catalogue_of(shops.load_shop(connection, shop_id))
