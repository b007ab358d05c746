"""The owner's two switches: stop all invites and visit texts, or everything, answers too; and start again.

A switch is a rule like any other: a new version with its author, so that it can be seen when texts stood still and who
stopped them. The change and a line of the audit trail are one transaction. What is planned stays planned until it falls
due; the sender asks before each text and drops it where a switch is turned. Nothing is caught up afterwards.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime
from typing import Literal

from followup.core.shop import ShopRules
from followup.storage import shops
from followup.storage.store import Store

Switch = Literal["is_sending_stopped", "is_everything_off"]
SAID: dict[tuple[str, bool], str] = {
    ("is_sending_stopped", True): "stopped all invites and visit texts",
    ("is_sending_stopped", False): "let invites and visit texts go on",
    ("is_everything_off", True): "turned everything off, answers too",
    ("is_everything_off", False): "turned answers on again",
}


def switches(store: Store, shop_id: int) -> ShopRules:
    """The rules with the switches as they stand."""
    with store.read() as connection:
        return shops.load_shop(connection, shop_id).rules


def stop_sending(store: Store, shop_id: int, switch: Switch, is_on: bool, who: str, now: datetime) -> bool:
    """Turn a switch; False where it stands so already."""
    with store.write() as connection:
        rules = shops.load_shop(connection, shop_id).rules
        if getattr(rules, switch) == is_on:
            return False
        said = SAID[switch, is_on]
        version = shops.save_rules(connection, shop_id, _turned(rules, switch, is_on), who, now, said)
        shops.note(connection, shop_id, now, who, said, f"version {version}", not is_on, is_on)
    return True


def _turned(rules: ShopRules, switch: Switch, is_on: bool) -> ShopRules:
    if switch == "is_sending_stopped":
        return replace(rules, is_sending_stopped=is_on)
    return replace(rules, is_everything_off=is_on)
