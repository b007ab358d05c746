"""Keep a text that came in, as it came, before anything is done with it.

1. The transport reads the posted form (its signature was checked by the hook).
2. The number it was sent to names the shop; what fits no shop is kept as a dead letter for a person to look at.
3. The raw text is kept under the provider's id. The same id again has no effect: a provider posts twice, and a captured
   request can be replayed for ever.

When this returns, the text is on the disk: only then may the hook say "received". Answering it is
`answer_inbound`; if the process dies in between, the clock's tick answers it.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from followup.phone_numbers import NotANumber, read_number
from followup.storage import consents, inbox, people, shops
from followup.storage.store import Store
from followup.transports.transport import InboundText


@dataclass(frozen=True)
class KeptText:
    """`inbound_id` None where it was a duplicate, or nothing can be answered."""

    shop_id: int | None
    inbound_id: int | None


def keep_inbound(store: Store, text: InboundText, now: datetime) -> KeptText:
    """Keep one inbound text; see the module's words."""
    raw = {"from": text.sender, "to": text.to, "body": text.body, "media": text.media_count}
    raw["caught"] = text.provider_caught
    with store.write() as connection:
        shop_id = shops.shop_of_number(connection, text.to)
        if shop_id is None:
            inbox.add_dead_letter(connection, None, now, "no shop texts from the number it was sent to", raw)
            return KeptText(None, None)
        try:
            read = read_number(text.sender, shops.load_shop(connection, shop_id).country)
        except NotANumber:
            inbox.add_dead_letter(connection, shop_id, now, "it came from no number that can be answered", raw)
            return KeptText(shop_id, None)
        # A text of ours to that number is in flight before this is kept, or it waits until this was read.
        consents.lock(connection, shop_id, read.e164)
        phone_id = people.keep_phone(connection, shop_id, read.e164, read.zones, read.line, now)
        # Whoever writes can be written to, whatever a provider said of the number before.
        people.change_phone(connection, phone_id, bad_because=None)
        inbound_id = inbox.keep_raw(
            connection, shop_id=shop_id, provider_id=text.provider_id, number=read.e164, phone_id=phone_id,
            body=text.body, raw=raw, received_at=text.received_at or now, pictures=text.media_count,
        )  # fmt: skip
    return KeptText(shop_id, inbound_id)
