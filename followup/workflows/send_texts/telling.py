"""What the facts of one text are made from."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date, datetime
from typing import Any

from followup.core.item import Catalogue, in_use
from followup.core.items import catalogue_of
from followup.core.shop import Shop
from followup.core.vehicle import Vehicle
from followup.core.wall import day_of
from followup.storage import people, windows
from followup.storage.rows import Row
from followup.storage.store import Connection
from followup.workflows.send_texts.sight import Sight


@dataclass(frozen=True)
class Telling:
    """The text's row with its shop, car and booking request; `now` is when it leaves. `link_base` is the public address
    that links begin with, "" where the pages have none."""

    connection: Connection
    shop: Shop
    row: Row
    now: datetime
    vehicle: Vehicle | None
    request: Row | None
    sight: Sight | None = None
    link_base: str = ""

    @property
    def persons(self) -> list[Row]:
        """Who uses the phone now."""
        phone_id = self.row["phone_id"]
        known = self.sight.known.persons_by_phone.get(phone_id) if self.sight else None
        return people.persons_of_phone(self.connection, phone_id) if known is None else known

    @property
    def windows(self) -> list[Row]:
        """The present due windows of the car."""
        vehicle_id = self.row["vehicle_id"]
        known = self.sight.windows(vehicle_id) if self.sight else None
        return windows.windows_of(self.connection, vehicle_id) if known is None else known

    @property
    def language(self) -> str:
        """The language of the text."""
        return str(self.row["language"])

    @property
    def today(self) -> date:
        """The shop's day."""
        return day_of(self.now, self.shop.zone)

    @property
    def catalogue(self) -> Catalogue:
        """The items that a text may name: the shop's, but for those that it switched off or that have no words yet."""
        return {one.code: one for one in in_use(catalogue_of(self.shop)) if one.is_named}

    @property
    def raw(self) -> Mapping[str, Any]:
        """What was decided of the text: items, times, needs ..."""
        facts: Mapping[str, Any] = self.row["facts"]
        return facts
