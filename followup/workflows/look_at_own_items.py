"""Look at the items that a shop added: the list, the versions of one, and a preview before anything is kept.

The preview shows what the technician's form, the customer's texts and the forecast would make of a row. Reads only.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from datetime import date, datetime, timedelta
from typing import Any

from followup.core.forecast.explain import explain
from followup.core.forecast.history import CarHistory
from followup.core.forecast.history import Reading as ReadingOfCar
from followup.core.forecast.window import DueWindow
from followup.core.inspection import Reading
from followup.core.item import Item
from followup.core.own_item import OwnItem, item_of
from followup.core.phrasing import phrase_phone
from followup.core.vehicle import Vehicle
from followup.core.wall import day_of
from followup.storage import own_items, shops, staff
from followup.storage.rows import Row
from followup.storage.store import Store
from followup.wording import ItemText, review_item

# The car of the example: as old, and driven so far, at its inspection.
EXAMPLE_YEARS = 3
EXAMPLE_MILES = 36_000.0


@dataclass(frozen=True)
class ItemVersion:
    """One version of a row; its words count once somebody else looked at them."""

    number: int
    own: OwnItem
    author_id: int
    author: str
    written_at: datetime
    because: str
    looked_at: datetime | None
    looked_at_by: str | None


@dataclass(frozen=True)
class OwnItemSeen:
    """An item with its versions, newest first. `says` is the version whose words texts use; None: no text names it."""

    item: Item
    versions: tuple[ItemVersion, ...]
    says: int | None

    @property
    def newest(self) -> ItemVersion:
        """The version that counts."""
        return self.versions[0]

    @property
    def waits(self) -> bool:
        """True where the newest words wait for a second look."""
        return self.newest.looked_at is None


@dataclass(frozen=True)
class Example:
    """What the forecast says of an example reading: how it was read, in words; the window; why."""

    read_as: str
    window: DueWindow | None
    because: str


@dataclass(frozen=True)
class ItemPreview:
    """How a row would look everywhere before it is kept."""

    item: Item
    texts: tuple[ItemText, ...]
    example: Example | None = field(default=None)


def look_at_own_items(store: Store, shop_id: int) -> list[OwnItemSeen]:
    """The shop's own items in the order in which they were added."""
    with store.read() as connection:
        names = {one.id: one.name for one in staff.of_shop(connection, shop_id)}
        return [_seen(rows, names) for rows in own_items.all_versions(connection, shop_id).values()]


def look_at_own_item(store: Store, shop_id: int, code: str) -> OwnItemSeen | None:
    """One of the shop's own items; None where there is none of that code."""
    with store.read() as connection:
        rows = own_items.versions(connection, shop_id, code)
        names = {one.id: one.name for one in staff.of_shop(connection, shop_id)}
    return _seen(rows, names) if rows else None


def preview_own_item(
    store: Store, shop_id: int, own: OwnItem, now: datetime, value: float | None = None, own_domain: str = ""
) -> ItemPreview:
    """The texts that would name the item, with their checks, and what a forecast says of an example reading; `value`
    is what was measured in the example."""
    with store.read() as connection:
        shop = shops.load_shop(connection, shop_id)
    item = item_of(own)
    value = _example_value(own) if value is None else value
    facts = {"shop": shop.name, "shop_phone": phrase_phone(shop.phone)}
    texts = review_item(item, value, facts, own_domain=own_domain)
    return ItemPreview(item, tuple(texts), _example(own, item, value, day_of(now, shop.zone)))


def _seen(rows: list[Row], names: dict[int, str]) -> OwnItemSeen:
    said = own_items.looked_at(rows)
    return OwnItemSeen(
        own_items.standing(rows), tuple(_version(row, names) for row in rows), said["version"] if said else None
    )


def _version(row: Row, names: dict[int, str]) -> ItemVersion:
    looked_at_by = names.get(row["looked_at_by"], "somebody who left") if row["looked_at_by"] else None
    return ItemVersion(
        row["version"], own_items.own_of(row), row["author_id"], names.get(row["author_id"], "somebody who left"),
        row["written_at"], row["because"] or "", row["looked_at"], looked_at_by,
    )  # fmt: skip


def _example_value(own: OwnItem) -> float | None:
    """Half way from new to the limit."""
    if not own.unit or own.action_limit is None:
        return None
    if own.new_value is not None:
        return round((own.new_value + own.action_limit) / 2, 2)
    return own.most if own.falls else own.least


def _example(own: OwnItem, item: Item, value: float | None, today: date) -> Example | None:
    """The window of a car that was new three years ago, was driven 12,000 miles a year, and is inspected today."""
    if not item.is_forecast:
        return None
    # Imported here: numpy and scipy take longer than a page may.
    from followup.core.forecast.due import forecast_cars

    reading, read_as = _example_reading(own, value, today)
    bought = today - timedelta(days=round(EXAMPLE_YEARS * 365.25))
    history = CarHistory(
        Vehicle("example", first_used_on=bought),
        odometers=((today, EXAMPLE_MILES),),
        readings=(ReadingOfCar(reading, today, EXAMPLE_MILES, of=item),),
        catalogue={item.code: item},
    )
    window = next(iter(forecast_cars([history], today)), None)
    return Example(read_as, window, explain(window) if window else "")


def _example_reading(own: OwnItem, value: float | None, today: date) -> tuple[Reading, str]:
    at: dict[str, Any] = {"item": own.code, "position": own.positions[0] if own.positions else ""}
    half_ago = today - timedelta(days=round((own.months or 12) * 365.25 / 24))
    if own.kind in ("distance", "year") and value is not None:
        return Reading(**at, unit=own.unit, value=value), f"{value:g} {own.unit}"
    if own.kind == "life":
        return Reading(**at, changed_on=half_ago), f"last changed on {half_ago:%Y-%m-%d}"
    if own.kind == "interval":
        return Reading(**at, done_on=half_ago), f"last done on {half_ago:%Y-%m-%d}"
    if own.kind == "level":
        return Reading(**at, level="ok"), "ok"
    worn = next((one for one in own.looks if one != "even"), "even")
    return Reading(**{**at, "looks": worn}), worn.replace("_", " ")
