"""The catalogue: every item there is. Form, forecast, planner, demo and documentation walk `ALL`; nobody else lists.

To add an item, write its file beside these and its line here.
"""

from __future__ import annotations

from followup.core.item import Item
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

__all__ = [
    "ALL",
    "BY_CODE",
    "Measured",
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
BY_CODE: dict[str, Item] = {one.code: one for one in ALL}


def item(code: str) -> Item:
    """The item of that code; `KeyError` where there is none."""
    return BY_CODE[code]
