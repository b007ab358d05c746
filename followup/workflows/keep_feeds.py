"""Addresses at which a calendar reads the bookings: made, told once, withdrawn.

The address holds 256 random bits; the store has their SHA-256 alone. It opens nothing but the list of bookings, and it
ends with a press, or when whoever made it leaves. Making and withdrawing stand in the audit trail, in the same
transaction.
"""

from __future__ import annotations

import secrets
from dataclasses import dataclass
from datetime import datetime

from followup.storage import calendars, shops, staff
from followup.storage.seen import staff_name
from followup.storage.store import Store

LONGEST_NAME = 60


class FeedNameUnusable(Exception):
    """Say in 1 to 60 characters where the address will be used, so that it can be told from others."""


@dataclass(frozen=True)
class Feed:
    """One address, without its secret. `advisor` None: of the whole shop; `may_withdraw`: by the one who looks."""

    id: int
    name: str
    advisor: str | None
    made_by: str
    made_at: datetime
    withdrawn_at: datetime | None
    may_withdraw: bool


def new_feed(store: Store, shop_id: int, name: str, *, is_own: bool, staff_id: int, now: datetime) -> str:
    """Make an address for the bookings of the shop, or (`is_own`) of one's own customers; its secret part is returned
    this once. Raises `FeedNameUnusable`."""
    name = name.strip()
    if not name or len(name) > LONGEST_NAME or not name.isprintable():
        raise FeedNameUnusable(FeedNameUnusable.__doc__)
    token = secrets.token_urlsafe(32)
    with store.write() as connection:
        who = staff_name(connection, shop_id, staff_id)
        advisor_id = staff_id if is_own else None
        calendars.add_feed(connection, shop_id, name, advisor_id, calendars.hash_of(token), staff_id, now)
        shops.note(connection, shop_id, now, who, "made a calendar address", name)
    return token


def withdraw_feed(store: Store, shop_id: int, feed_id: int, staff_id: int, now: datetime) -> bool:
    """End an address at once; False where it had ended, or is neither one's own nor a manager's to end."""
    with store.write() as connection:
        member = staff.member(connection, shop_id, staff_id)
        feed = next((one for one in calendars.feeds_of_shop(connection, shop_id) if one["id"] == feed_id), None)
        if member is None or feed is None or not _may_withdraw(member.role, staff_id, feed["made_by"]):
            return False
        done = calendars.withdraw_feed(connection, shop_id, feed_id, now)
        if done:
            shops.note(connection, shop_id, now, member.name, "withdrew a calendar address", feed["name"])
    return done


def feeds_of(store: Store, shop_id: int, staff_id: int) -> list[Feed]:
    """Every address of a shop, as that member of staff sees it, the newest first."""
    with store.read() as connection:
        member = staff.member(connection, shop_id, staff_id)
        return [
            Feed(
                row["id"], row["name"],
                staff_name(connection, shop_id, row["advisor_id"]) if row["advisor_id"] else None,
                staff_name(connection, shop_id, row["made_by"]), row["made_at"], row["withdrawn_at"],
                bool(member and row["withdrawn_at"] is None and _may_withdraw(member.role, staff_id, row["made_by"])),
            )
            for row in calendars.feeds_of_shop(connection, shop_id)
        ]  # fmt: skip


def _may_withdraw(role: str, staff_id: int, made_by: int) -> bool:
    return role in ("manager", "owner") or staff_id == made_by
