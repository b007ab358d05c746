"""Look at the shop's rules: those that stand, and every version with its author and what it changed. Reads only."""

from __future__ import annotations

from dataclasses import asdict, dataclass
from datetime import datetime
from typing import Any

from followup.core.planning.lead_time import LearnedLead
from followup.core.shop import RULES, Shop, ShopRules, plain
from followup.storage import shops
from followup.storage.lead_times import lead_of
from followup.storage.rows import Row
from followup.storage.store import Store


@dataclass(frozen=True)
class Change:
    """One rule that a version changed; values as `ShopRules` holds them."""

    rule: str
    before: Any
    after: Any


@dataclass(frozen=True)
class RulesVersion:
    """One version of the rules; the first is told apart from the rules as shipped."""

    number: int
    author: str
    at: datetime
    because: str
    changes: tuple[Change, ...]


@dataclass(frozen=True)
class Timing:
    """The shop with its present rules, and all versions, newest first."""

    shop: Shop
    versions: tuple[RulesVersion, ...]


def look_at_lead(store: Store, shop_id: int, now: datetime) -> LearnedLead:
    """How long customers took from a text to the visit that it led to, and what that makes of the lead time."""
    with store.read() as connection:
        return lead_of(connection, shops.load_shop(connection, shop_id), now)


def look_at_timing(store: Store, shop_id: int) -> Timing:
    """Rules and their versions, in one view."""
    with store.read() as connection:
        shop = shops.load_shop(connection, shop_id)
        rows = shops.versions(connection, shop_id, "rules")
    bodies = [_whole(row) for row in rows]
    before = [*bodies[1:], asdict(ShopRules())][: len(bodies)]
    return Timing(shop, tuple(_version(row, body, old) for row, body, old in zip(rows, bodies, before, strict=True)))


def _whole(row: Row) -> dict[str, Any]:
    """A version's rules; those that it does not know yet as they are by default."""
    return {**asdict(ShopRules()), **{one.name: row["body"][one.name] for one in RULES if one.name in row["body"]}}


def _version(row: Row, body: dict[str, Any], old: dict[str, Any]) -> RulesVersion:
    changes = (
        Change(one.name, old[one.name], body[one.name])
        for one in RULES
        if plain(old[one.name]) != plain(body[one.name])
    )
    return RulesVersion(row["version"], row["author"], row["at"], row["because"] or "", tuple(changes))
