"""Shops, and what they decide, kept in versions: rules and the duty roster."""

from __future__ import annotations

from dataclasses import asdict, fields
from datetime import datetime
from typing import Any
from weakref import WeakKeyDictionary

from sqlalchemy import Connection, Engine, Select, desc, func, select

from followup.core.duty import Roster, Watch
from followup.core.shop import FORECAST_RULES, Shop, ShopRules
from followup.storage import own_items, rows, tables
from followup.storage.rows import Row

_FACTS = (
    "name",
    "zone",
    "phone",
    "texts_from",
    "address",
    "country",
    "state",
    "roadside_phone",
    "order",
    "registration",
)
_VERSIONS = (
    select(tables.shop_versions)
    .where(tables.shop_versions.c.shop_id == rows.given("shop_id"), tables.shop_versions.c.kind == rows.given("kind"))
    .order_by(desc(tables.shop_versions.c.version))
)
_NEWEST = _VERSIONS.limit(1)
_CODES = select(tables.shops.c.id, tables.shops.c.code).order_by(tables.shops.c.id)

_KNOWN: WeakKeyDictionary[Engine, dict[int, tuple[tuple[Any, ...], Shop]]] = WeakKeyDictionary()


def _state_of_shop() -> Select[Any]:
    """The shop's row, and what is another value as soon as its rules or own items are others: they are only added to,
    and looked at once."""
    ours, versions_of, own = tables.shops, tables.shop_versions, tables.own_items
    newest = select(func.max(versions_of.c.id)).where(versions_of.c.shop_id == ours.c.id, versions_of.c.kind == "rules")
    added = select(func.max(own.c.id)).where(own.c.shop_id == ours.c.id)
    looked_at = select(func.count(own.c.looked_at)).where(own.c.shop_id == ours.c.id)
    parts = (("newest", newest), ("added", added), ("looked_at", looked_at))
    told = [one.correlate(ours).scalar_subquery().label(f"state_{name}") for name, one in parts]
    return select(ours, *told).where(ours.c.id == rows.given("shop_id"))


_STATE_OF_SHOP = _state_of_shop()


def add_shop(connection: Connection, now: datetime, code: str, facts: dict[str, Any]) -> int:
    """Add a shop; `facts` are the fields of `core.shop.Shop` but id and rules."""
    return rows.add(connection, tables.shops, code=code, created_at=now, **{k: facts[k] for k in _FACTS if k in facts})


def change_shop(connection: Connection, shop_id: int, **facts: Any) -> None:
    """Change who the shop is (name, phone, address ...)."""
    rows.change(connection, tables.shops, shop_id, **facts)


def shop_codes(connection: Connection) -> list[tuple[int, str]]:
    """Every shop's id and code."""
    return [(shop_id, code) for shop_id, code in connection.execute(_CODES)]


def load_shop(connection: Connection, shop_id: int) -> Shop:
    """The shop with its present rules; fields that a version does not hold yet take their defaults.

    It is asked for with every text and tick, and hardly ever another one: what was read before is given back where
    neither the shop's row nor the newest of its versions and own items is another.
    """
    found = _state(connection, shop_id)
    known, state = _KNOWN.setdefault(connection.engine, {}), tuple(found.values())
    if shop_id in known and known[shop_id][0] == state:
        return known[shop_id][1]
    shop = _read_shop(connection, shop_id, found)
    if connection.get_execution_options().get("followup_reader", False):
        # What a transaction that writes sees of its own may be undone.
        known[shop_id] = (state, shop)
    return shop


def state_of_shop(connection: Connection, shop_id: int) -> tuple[Any, ...]:
    """The shop's row and which of its versions and own items is the newest: another one where the shop is."""
    return tuple(_state(connection, shop_id).values())


def _state(connection: Connection, shop_id: int) -> Row:
    found = rows.first(connection, _STATE_OF_SHOP, shop_id=shop_id)
    if found is None:
        raise LookupError(f"There is no shop {shop_id}.")
    return found


def _read_shop(connection: Connection, shop_id: int, found: Row) -> Shop:
    version = newest_version(connection, shop_id, "rules")
    names = {one.name for one in fields(ShopRules)}
    body = {key: value for key, value in (version["body"] if version else {}).items() if key in names}
    return Shop(
        id=shop_id,
        rules=ShopRules(**body),
        rules_version=version["version"] if version else 0,
        own_items=own_items.items_of(connection, shop_id),
        **{key: found[key] for key in _FACTS},
    )


def added_at(connection: Connection, shop_id: int) -> datetime:
    """When the shop was added."""
    found = rows.first(connection, select(tables.shops.c.created_at).where(tables.shops.c.id == shop_id))
    assert found is not None, "a shop that was asked for by its id"
    at: datetime = found["created_at"]
    return at


def shop_of_number(connection: Connection, number: str) -> int | None:
    """The shop that texts from this number."""
    found = rows.first(connection, select(tables.shops.c.id).where(tables.shops.c.texts_from == number))
    return found["id"] if found else None


def save_rules(connection: Connection, shop_id: int, rules: ShopRules, author: str, now: datetime, because: str) -> int:
    """Keep a new version of the rules and return its number."""
    return _save(connection, shop_id, "rules", asdict(rules), author, now, because)


def save_duty(connection: Connection, shop_id: int, roster: Roster, author: str, now: datetime) -> int:
    """Keep a new version of the duty roster and return its number."""
    body = asdict(roster)
    return _save(connection, shop_id, "duty", body, author, now, "")


def _save(
    connection: Connection, shop_id: int, kind: str, body: dict[str, Any], author: str, now: datetime, because: str
) -> int:
    newest = newest_version(connection, shop_id, kind)
    version = newest["version"] + 1 if newest else 1
    rows.add(
        connection,
        tables.shop_versions,
        shop_id=shop_id,
        kind=kind,
        version=version,
        author=author,
        at=now,
        body=body,
        because=because,
    )
    return version


def load_roster(connection: Connection, shop_id: int) -> Roster:
    """The duty roster in its newest version; an empty one before the first."""
    found = newest_version(connection, shop_id, "duty")
    if found is None:
        return Roster()
    return roster_of(found["body"])


def roster_of(body: dict[str, Any]) -> Roster:
    """The roster that a version's body holds."""
    watches = {
        day: tuple(Watch(one["opens"], one["closes"], tuple(one["told"])) for one in kept)
        for day, kept in body["watches"].items()
    }
    return Roster(watches, body.get("manager"), body.get("owner"), body.get("on_call"))


def newest_version(connection: Connection, shop_id: int, kind: str) -> Row | None:
    """The newest version of that kind ("rules" or "duty"), or None."""
    return rows.first(connection, _NEWEST, shop_id=shop_id, kind=kind)


def versions(connection: Connection, shop_id: int, kind: str) -> list[Row]:
    """All versions, newest first."""
    return rows.every(connection, _VERSIONS, shop_id=shop_id, kind=kind)


def forecast_rules_changed_at(connection: Connection, shop_id: int) -> datetime | None:
    """When a rule that due windows are computed with (a limit, say) or an own item last changed; None where none ever
    did."""
    changed_at, before = own_items.changed_at(connection, shop_id), ShopRules()
    known = {one.name for one in fields(ShopRules)}
    for version in reversed(versions(connection, shop_id, "rules")):
        rules = ShopRules(**{key: value for key, value in version["body"].items() if key in known})
        if any(getattr(rules, name) != getattr(before, name) for name in FORECAST_RULES):
            changed_at = max(version["at"], changed_at or version["at"])
        before = rules
    return changed_at


def note(
    connection: Connection,
    shop_id: int,
    now: datetime,
    who: str,
    did: str,
    subject: str,
    before: Any = None,
    after: Any = None,
) -> None:
    """Write a line of the audit trail, in the transaction of the change that it tells of."""
    rows.add(
        connection, tables.audit, shop_id=shop_id, at=now, who=who, did=did, subject=subject, before=before, after=after
    )
