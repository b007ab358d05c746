"""Keep the items that a shop adds: a new row, a change, switched off or on, the way back; each is a version.

1. The row is read, and all that is wrong with it is told at once, by field: values, then the customers' words, which
   pass the checks of every wording in every text that names items.
2. The version that the author looked at must still be the newest: two people at once cannot undo each other.
3. The new version and a line of the audit trail are one transaction. From then on the form asks for the item and the
   cars that have readings of it are forecast anew (`forecast_windows` finds them).
4. `approve_own_item`: somebody else than the author looks at the words; until then no text names the item, or it is
   named in the words that somebody looked at before. Words that did not change were looked at already.
5. An item that is switched off is asked for, forecast and texted about no more; what was read and done stays.
"""

from __future__ import annotations

from collections.abc import Container, Mapping
from dataclasses import dataclass, replace
from datetime import datetime
from typing import Any

from followup.core.inspection_check import Fault
from followup.core.items import catalogue_of
from followup.core.own_item import OwnItem, item_of
from followup.core.own_item_check import BadItem, read_own_item
from followup.core.wording_checks import stopping
from followup.storage import own_items, shops
from followup.storage.rows import Row
from followup.storage.store import Connection, Store
from followup.wording import LANGUAGES, review_item

MOST_ITEMS = 100
SOMEBODY_ELSE = "Somebody changed this item in the meantime. Look at it again; what you typed still stands here."
NOTHING_NEW = "Nothing is changed: the item stands as it is."
TOO_MANY = f"There are {MOST_ITEMS} items of your own: switch some off, or change one of them."
NOT_THE_AUTHOR = "Somebody else must look at the words: not their author, and only once."


@dataclass(frozen=True)
class KeptItem:
    """The item's code and its new version's number; without a version what is wrong, by field."""

    code: str | None
    version: int | None
    faults: tuple[Fault, ...] = ()


def keep_own_item(
    store: Store, shop_id: int, raw: Mapping[str, Any], code: str | None, based_on: int, author_id: int, author: str,
    because: str, now: datetime, own_domain: str = "",
) -> KeptItem:  # fmt: skip
    """Keep a row as a new item (`code` None), or as the next version of one. `LookupError` where there is no such."""
    with store.write() as connection:
        found = own_items.versions(connection, shop_id, code) if code else []
        if code and not found:
            raise LookupError(f"There is no item {code}.")
        catalogue = catalogue_of(shops.load_shop(connection, shop_id))
        if not code and len(own_items.all_versions(connection, shop_id)) >= MOST_ITEMS:
            return KeptItem(None, None, (Fault("", TOO_MANY),))
        own, faults = checked({**raw, "code": code or ""}, () if code else catalogue, own_domain)
        if own is None or faults:
            return KeptItem(code, None, faults)
        if found and found[0]["version"] != based_on:
            return KeptItem(code, None, (Fault("", SOMEBODY_ELSE),))
        if found and found[0]["body"] == own.row():
            return KeptItem(code, None, (Fault("", NOTHING_NEW),))
        version = _add(connection, shop_id, own, found, author_id, author, because, now)
    return KeptItem(own.code, version)


def checked(raw: Mapping[str, Any], taken: Container[str], own_domain: str) -> tuple[OwnItem | None, tuple[Fault, ...]]:
    """The row as it was read, and everything that is wrong with it and its words."""
    try:
        own = read_own_item(raw, taken)
    except BadItem as bad:
        return None, tuple(dict.fromkeys([*bad.faults, *_faults_of_words_alone(raw, own_domain)]))
    return own, _faults_of_words(own, own_domain)


def _faults_of_words(own: OwnItem, own_domain: str) -> tuple[Fault, ...]:
    said = review_item(item_of(own), own_domain=own_domain)
    faults = [Fault(one.language, fault.says) for one in said for fault in stopping(one.faults)]
    return tuple(dict.fromkeys(faults))


def _faults_of_words_alone(raw: Mapping[str, Any], own_domain: str) -> tuple[Fault, ...]:
    """What the words of a row say wrongly although its values cannot be read yet, so that all is told at once."""
    plain = {"part": "lift", "kind": "looks", "looks": ["dirty"], "skill": "general", "hours": 1.0, "work": "look"}
    words = {language: raw.get(language) for language in LANGUAGES}
    try:
        own = read_own_item({**plain, "name": "Item", **words})
    except BadItem:
        return ()
    return _faults_of_words(own, own_domain)


def switch_own_item(
    store: Store, shop_id: int, code: str, is_in_use: bool, author_id: int, author: str, now: datetime
) -> bool:
    """Switch an item off or on again, as a version; False where it is so already. `LookupError` where there is none."""
    with store.write() as connection:
        found = _found(connection, shop_id, code)
        own = own_items.own_of(found[0])
        if own.is_in_use == is_in_use:
            return False
        because = "switched on again" if is_in_use else "switched off"
        _add(connection, shop_id, replace(own, is_in_use=is_in_use), found, author_id, author, because, now)
    return True


def bring_back_own_item(
    store: Store, shop_id: int, code: str, version: int, based_on: int, author_id: int, author: str, now: datetime,
    own_domain: str = "",
) -> KeptItem:  # fmt: skip
    """Make an item as it was in an old version, as a new one. `LookupError` where there is none of that number."""
    with store.read() as connection:
        old = next((row for row in _found(connection, shop_id, code) if row["version"] == version), None)
    if old is None:
        raise LookupError(f"There is no version {version}.")
    because = f"back to version {version}"
    return keep_own_item(store, shop_id, old["body"], code, based_on, author_id, author, because, now, own_domain)


def approve_own_item(
    store: Store, shop_id: int, code: str, version: int, staff_id: int, who: str, now: datetime, own_domain: str = ""
) -> str | None:
    """A second person lets the words be used; else why not, in words. `LookupError` where there is no such version."""
    with store.write() as connection:
        row = next((one for one in _found(connection, shop_id, code) if one["version"] == version), None)
        if row is None:
            raise LookupError(f"There is no version {version}.")
        _, faults = checked({**row["body"], "code": code}, (), own_domain)
        if faults:
            return " ".join(fault.says for fault in faults)
        if not own_items.look_at(connection, shop_id, code, version, staff_id, now):
            return NOT_THE_AUTHOR
        shops.note(connection, shop_id, now, who, "looked at the words of an item", f"{code} {version}")
    return None


def _found(connection: Connection, shop_id: int, code: str) -> list[Row]:
    found = own_items.versions(connection, shop_id, code)
    if not found:
        raise LookupError(f"There is no item {code}.")
    return found


def _add(
    connection: Connection, shop_id: int, own: OwnItem, found: list[Row], author_id: int, author: str, because: str,
    now: datetime,
) -> int:  # fmt: skip
    before = found[0]["body"] if found else None
    looked = next((row for row in found if row["looked_at"] and has_same_words(row, own)), None)
    version = own_items.add_version(connection, shop_id, own, author_id, now, because, looked)
    did = "changed an item" if found else "added an item"
    shops.note(connection, shop_id, now, author, did, f"{own.code} {version}", before, own.row())
    return version


def has_same_words(row: Row, own: OwnItem) -> bool:
    """True where a customer would read the same of both: the words, and what stands in them."""
    old = own_items.own_of(row)
    return item_of(old).phrases == item_of(own).phrases
