"""Take a consent back that a customer took back in person (at the counter, by phone, by e-mail) or in a
text that was read as something else.

1. The stop is a line of the ledger; it binds the number, whoever it belongs to.
2. All that is queued for the number is dropped in the same transaction.
3. A booking or a symptom that stands is not touched: it goes to the phone list, since no text may leave any more.
"""

from __future__ import annotations

from datetime import datetime
from typing import Literal

from followup.core.consent import ConsentEntry
from followup.core.wall import day_of
from followup.storage import alerts, consents, outbox, people, requests, shops
from followup.storage.rows import Row
from followup.storage.store import Connection, Store

How = Literal["counter", "phone", "e-mail", "text"]
_STANDING = ("asked", "offered", "confirmed")


def take_back_consent(
    store: Store, shop_id: int, phone_id: int, how: How, words: str, who: str, now: datetime, secret: str
) -> bool:
    """Write a stop for the number; False where the shop has no such phone. `secret` keys the hash of the ledger."""
    with store.write() as connection:
        phone = people.load_phone(connection, shop_id, phone_id)
        if phone is None:
            return False
        zone = shops.load_shop(connection, shop_id).zone
        entry = ConsentEntry(
            phone["number"], "taken_back", (), now, day_of(now, zone), how, words, because=f"told by {how}"
        )
        consents.append(connection, shop_id, entry, secret, who)
        outbox.drop_planned(connection, shop_id, "the customer stopped the texts", number=phone["number"])
        _list_what_stands(connection, shop_id, phone, now)
    return True


def _list_what_stands(connection: Connection, shop_id: int, phone: Row, now: datetime) -> None:
    persons = people.persons_of_phone(connection, phone["id"])
    booked = requests.requests_of_persons(connection, [one["id"] for one in persons]) if persons else []
    for row in booked:
        is_ahead = row["state"] != "confirmed" or (row["slot_at"] and row["slot_at"] > now)
        if row["state"] in _STANDING and is_ahead:
            alerts.raise_alert(
                connection, shop_id=shop_id, kind="phone_task", phone_id=phone["id"], person_id=row["person_id"],
                vehicle_id=row["vehicle_id"], request_id=row["id"], raised_at=now,
                says="stopped the texts while a booking stands: settle it by phone, the time is kept",
                raised_by=f"stop:{phone['id']}:{now.isoformat()}:{row['id']}",
            )  # fmt: skip
