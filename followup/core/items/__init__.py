"""The catalogue: every item there is. Form, forecast, planner, demo and documentation walk `ALL`; nobody else lists.

To add an item, write its file beside these and its line here.
"""

from __future__ import annotations

from followup.core.item import Item
from followup.core.items import brakes, fluids, oil, tires, wipers

ALL: tuple[Item, ...] = (*tires.ITEMS, *brakes.ITEMS, *oil.ITEMS, *fluids.ITEMS, *wipers.ITEMS)
BY_CODE: dict[str, Item] = {one.code: one for one in ALL}


def item(code: str) -> Item:
    """The item of that code; `KeyError` where there is none."""
    return BY_CODE[code]
