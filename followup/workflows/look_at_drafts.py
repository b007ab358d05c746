"""Half-filled inspection forms: whose they are, since when, how long they are kept. Only looks."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import datetime, timedelta

from followup.core.shop import Shop
from followup.core.wall import to_wall
from followup.storage import drafts, inspections, people, shops
from followup.storage.rows import Row
from followup.storage.store import Connection, Store

_NAMES = ("vehicle.label", "vehicle.plate", "vehicle.id")


@dataclass(frozen=True)
class DraftSeen:
    """A draft. `name` is the car's in words; times are wall times at the shop; it is kept `until` then."""

    draft_id: int
    revision: int
    staff_id: int
    who: str
    vehicle_id: int | None
    part: str | None
    corrects: int | None
    fields: Mapping[str, str]
    name: str
    begun_at: datetime
    kept_at: datetime
    until: datetime


def look_at_drafts(store: Store, shop_id: int, now: datetime) -> list[DraftSeen]:
    """Every draft of the shop that still counts, the newest first."""
    with store.read() as connection:
        shop = shops.load_shop(connection, shop_id)
        found = drafts.drafts_of_shop(connection, shop_id, shop.drafts_count_from(now))
        return list(_seen(connection, shop, found))


def look_at_draft(store: Store, shop_id: int, draft_id: int, now: datetime) -> DraftSeen | None:
    """One draft that still counts; None where the shop has none of that id."""
    return next((one for one in look_at_drafts(store, shop_id, now) if one.draft_id == draft_id), None)


def _seen(connection: Connection, shop: Shop, found: list[Row]) -> Iterator[DraftSeen]:
    lasts = timedelta(days=shop.rules.drafts_kept_days)
    for row in found:
        current = inspections.current_part(connection, shop.id, row["code"], row["part"])
        if (current["id"] if current else None) != row["corrects"]:
            continue
        yield DraftSeen(
            row["id"], row["revision"], row["staff_id"], row["who"], row["vehicle_id"], row["part"] or None,
            row["corrects"], row["fields"], _name(connection, shop.id, row), to_wall(row["begun_at"], shop.zone),
            to_wall(row["kept_at"], shop.zone), to_wall(row["kept_at"] + lasts, shop.zone),
        )  # fmt: skip


def _name(connection: Connection, shop_id: int, row: Row) -> str:
    vehicle = people.load_vehicle(connection, shop_id, row["vehicle_id"]) if row["vehicle_id"] else None
    if vehicle:
        facts = people.vehicle_of(vehicle)
        return facts.label or facts.code
    return next((row["fields"][one] for one in _NAMES if row["fields"].get(one)), "a new car")
