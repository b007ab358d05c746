"""An invented shop, phone, person and car that the planning tests start from, all well and with consent."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from typing import Any

from followup.core.consent import ConsentStanding
from followup.core.customer import Person, Phone
from followup.core.planning.picture import CarPicture, DueItem
from followup.core.shop import Shop, ShopRules
from followup.core.visit import Visit

# A Tuesday, 11:00 in Chicago.
NOW = datetime(2026, 3, 10, 16, 0, tzinfo=UTC)
SHOP = Shop(1, "Elm Street Garage", "America/Chicago", "+13125550100", "+13125550101", state="IL")
PHONE = Phone(1, "+13125550147", ("America/Chicago",), "mobile")
PERSON = Person(1, "P1", "Ada")
ALL_COVERS = ConsentStanding(frozenset({"visits", "upkeep", "offers"}), False, None)
MEASURED_ON = date(2025, 10, 6)
LAST_VISIT = Visit("V1", datetime(2025, 10, 6, 14, 0, tzinfo=UTC), datetime(2025, 10, 6, 20, 0, tzinfo=UTC))
DUE_TIRE = DueItem("tire_tread", "front_left", 0.4, 0.7, MEASURED_ON, date(2026, 4, 1))
FAR_PAD = DueItem("brake_pad", "rear", 0.01, 0.05, MEASURED_ON, date(2027, 9, 1))
LOW_WASHER = DueItem("washer_fluid", "", 0.6, 0.9, MEASURED_ON, date(2026, 3, 1), is_free_top_off=True)


def car(**changes: Any) -> CarPicture:
    """A car whose one tire is due, and nothing against a text about it."""
    well = CarPicture(SHOP, PHONE, PERSON, "C1", ALL_COVERS, due=(DUE_TIRE, FAR_PAD), visits=(LAST_VISIT,))
    return replace(well, **changes)


def shop(**rules: Any) -> Shop:
    """The shop with other rules."""
    return replace(SHOP, rules=ShopRules(**rules))


def days_ago(days: float) -> datetime:
    """An instant so many days before `NOW`."""
    return NOW - timedelta(days=days)
