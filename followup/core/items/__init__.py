"""The catalogue: every item that is shipped. Demo and documentation walk `ALL`; what belongs to a shop (form, forecast,
planner, pages) walks `catalogue_of(shop)`, in which the shop's own items stand after them. Nobody else lists items.

To add an item, write its file beside these and its line here.
"""

from __future__ import annotations

from followup.core.item import Catalogue, Item
from followup.core.items import as_found, battery, belts, brakes, filters, fluids, oil, stickers, tires, wipers
from followup.core.items.readings import (
    Measured,
    is_at_limit,
    last_day_of,
    made_on,
    measured,
    present_condition,
    reading_value,
)
from followup.core.shop import Shop

__all__ = [
    "ALL",
    "BY_CODE",
    "Measured",
    "catalogue_of",
    "is_at_limit",
    "item",
    "last_day_of",
    "made_on",
    "measured",
    "present_condition",
    "reading_value",
]

ALL: tuple[Item, ...] = (
    *tires.ITEMS,
    *brakes.ITEMS,
    *oil.ITEMS,
    *fluids.ITEMS,
    *battery.ITEMS,
    *wipers.ITEMS,
    *filters.ITEMS,
    *belts.ITEMS,
    *as_found.ITEMS,
    *stickers.ITEMS,
)
BY_CODE: Catalogue = {one.code: one for one in ALL}


def catalogue_of(shop: Shop) -> Catalogue:
    """The items of a shop by their codes: those that are shipped, then its own; switched-off ones too (`is_in_use`)."""
    return {**BY_CODE, **{one.code: one for one in shop.own_items}} if shop.own_items else BY_CODE


def item(code: str) -> Item:
    """The shipped item of that code; `KeyError` where there is none."""
    return BY_CODE[code]
