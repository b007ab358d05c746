"""Take a consent back that a customer took back in person (at the counter, by phone, by e-mail) or in a
text that was read as something else.

1. The stop is a line of the ledger; it binds the number, whoever it belongs to.
2. All that is queued for the number is dropped in the same transaction.
3. A booking or a symptom that stands is not touched: it goes to the phone list, since no text may leave any more.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import datetime
from typing import Literal

from followup.core.consent import ConsentEntry
from followup.core.wall import day_of
from followup.storage import people, shops, stops
from followup.storage.store import Store

BUT_VISITS = ("upkeep", "offers")
How = Literal["counter", "phone", "e-mail", "text"]


def take_back_consent(
    store: Store,
    shop_id: int,
    phone_id: int,
    how: How,
    words: str,
    who: str,
    now: datetime,
    secret: str,
    *,
    keeps_visits: bool = False,
) -> bool:
    """Write a stop for the number, or take everything but texts about visits back; False where the shop has no such
    phone. `secret` keys the hash of the ledger."""
    with store.write() as connection:
        phone = people.load_phone(connection, shop_id, phone_id)
        if phone is None:
            return False
        zone = shops.load_shop(connection, shop_id).zone
        entry = ConsentEntry(
            phone["number"], "taken_back", (), now, day_of(now, zone), how, words, because=f"told by {how}"
        )
        if keeps_visits:
            stops.narrow(connection, shop_id, replace(entry, event="narrowed", covers=BUT_VISITS), secret, who)
            return True
        stops.take_back(connection, shop_id, entry, secret, who)
        stops.list_what_stands(connection, shop_id, phone["number"], now)
    return True
