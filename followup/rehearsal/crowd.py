"""A shop with as many customers as are wanted, each with one car whose brakes and tires are due: its queue is long.

Everything is made by the program's own workflows; names and numbers are invented (555-0100 to 555-0199 of each area).
"""

from __future__ import annotations

import json
from collections.abc import Iterator, Sequence
from datetime import UTC, datetime, timedelta

from followup.storage import shops, staff
from followup.storage.store import Store
from followup.workflows.forecast_windows import forecast_windows
from followup.workflows.keep_inspections import keep_inspections
from followup.workflows.plan_texts import plan_texts

# A Tuesday, 11:00 in the morning at the shop: invites may leave to every number of the crowd.
OPENS_AT = datetime(2026, 11, 24, 17, 0, tzinfo=UTC)
TEXTS_FROM = "+13125550101"
# Illinois and its neighbors of the central time zone.
_AREAS = (
    217, 224, 309, 312, 331, 618, 630, 708, 773, 815, 847, 872, 262, 414, 608, 920, 319, 515, 563, 641, 314, 573, 636,
    816, 612, 651, 763, 952,
)  # fmt: skip
_INSPECTED_BEFORE = timedelta(days=30)


def add_crowd(
    store: Store,
    customers: int,
    secret: str,
    now: datetime = OPENS_AT,
    *,
    zone: str = "America/Chicago",
    areas: Sequence[int] = _AREAS,
) -> int:
    """Add a shop with so many customers, and plan their invites; its id. Their numbers go through the areas in turn."""
    with store.write() as connection:
        shop_id = shops.add_shop(
            connection, now, "many", {"name": "Many Roads Auto", "zone": zone, "phone": "+13125550100",
                                      "texts_from": TEXTS_FROM, "state": "IL"},
        )  # fmt: skip
        staff.add(connection, shop_id, "sam", "Sam Field", "owner", "no password", now)
    for kept in keep_inspections(store, shop_id, _lines(customers, areas, now), now, "a rehearsal", secret):
        if kept.outcome != "new":
            raise ValueError(f"a line of the crowd was not kept: {kept}")
    forecast_windows(store, shop_id, now)
    if plan_texts(store, shop_id, now) != customers:
        raise ValueError("not every customer of the crowd is invited")
    return shop_id


def number_of(customer: int, areas: Sequence[int] = _AREAS) -> str:
    """The number of a customer by their place in the crowd; the shop's own numbers are nobody's."""
    free = [area for area in areas if area != int(TEXTS_FROM[2:5])]
    return f"+1{free[customer % len(free)]}55501{customer // len(free):02d}"


def _lines(customers: int, areas: Sequence[int], now: datetime) -> Iterator[str]:
    for n in range(customers):
        yield json.dumps(
            {
                "inspection": f"I-{n}",
                "inspected_at": f"{(now - _INSPECTED_BEFORE).date()}T09:10",
                "odometer": 48_210 + n,
                "unit": "mi",
                "customer": {"id": f"C-{n}", "name": f"Ana {n}", "phone": number_of(n, areas), "language": _language(n),
                             "consent": _consent(_language(n))},
                "vehicle": {"id": f"V-{n}", "label": "blue wagon", "class": "car", "powertrain": "gasoline",
                            "first_used_on": "2021-05-01"},
                "readings": [
                    {"item": "tire_tread", "position": "front_left", "unit": "32nds", "value": 3},
                    {"item": "tire_tread", "position": "rear_left", "unit": "32nds", "value": 5},
                    {"item": "brake_pad", "position": "front_left", "unit": "mm", "value": 3},
                ],
            }
        )  # fmt: skip


def _language(customer: int) -> str:
    return "es" if customer % 4 == 0 else "en"


def _consent(language: str) -> dict[str, object]:
    words = "I agree." if language == "en" else "Acepto."
    return {
        "covers": ["visits", "upkeep", "offers"], "given_on": "2026-01-12", "how": "tablet", "words": words,
        "words_version": "1", "language": language, "number_is_own_and_adult": True,
    }  # fmt: skip
