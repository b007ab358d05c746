"""Keep a text that came in, as it came, before anything is done with it.

1. The transport reads the posted form (its signature was checked by the hook).
2. The number it was sent to names the shop; what fits no shop is kept as a dead letter for a person to look at.
3. The raw text is kept under the provider's id. The same id again has no effect: a provider posts twice, and a captured
   request can be replayed for ever.

When this returns, the text is on the disk: only then may the hook say "received". Answering it is
`answer_inbound`; if the process dies in between, the clock's tick answers it.

A hook that nobody answered is lost: no provider posts it for long. So the provider's own list is read as well
(`keep_missed`), over a day more than since it was last read, because lists lag; what is known has no effect. If the
process dies on the way, the list is read over the same time again.
"""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Any

from followup.phone_numbers import NotANumber, read_number
from followup.storage import consents, inbox, people, shops
from followup.storage.store import Store
from followup.transports.transport import InboundText, StatusReport, Transport

OVERLAP = timedelta(hours=24)


@dataclass(frozen=True)
class KeptText:
    """`inbound_id` None where it was a duplicate, or nothing can be answered."""

    shop_id: int | None
    inbound_id: int | None


def keep_inbound(store: Store, text: InboundText, now: datetime) -> KeptText:
    """Keep one inbound text; see the module's words."""
    raw, which = _raw(text), text.provider_id
    with store.write() as connection:
        who = inbox.who_writes(connection, text.to, text.sender)
        if who is None:
            because = "no shop texts from the number it was sent to"
            inbox.add_dead_letter(connection, None, now, because, raw, which)
            return KeptText(None, None)
        shop_id, number, phone_id = who["shop_id"], text.sender, who["phone_id"]
        if phone_id is None:
            try:
                read = read_number(text.sender, who["country"])
            except NotANumber:
                because = "it came from no number that can be answered"
                inbox.add_dead_letter(connection, shop_id, now, because, raw, which)
                return KeptText(shop_id, None)
            number = read.e164
        # A text of ours to that number is in flight before this is kept, or it waits until this was read.
        consents.lock(connection, shop_id, number)
        if phone_id is None:
            phone_id = people.keep_phone(connection, shop_id, number, read.zones, read.line, now)
        inbound_id = inbox.keep_raw(
            connection, shop_id=shop_id, provider_id=which, number=number, phone_id=phone_id,
            body=text.body, raw=raw, received_at=min(text.received_at or now, now), pictures=text.media_count,
        )  # fmt: skip
        if inbound_id is not None and who["bad_because"] is not None:
            # Whoever writes can be written to, whatever a provider said of the number before.
            people.change_phone(connection, phone_id, bad_because=None)
    return KeptText(shop_id, inbound_id)


def keep_foreign(store: Store, about: InboundText | StatusReport, now: datetime) -> None:
    """Keep what was signed by our provider for another account: it is no shop's of this machine."""
    if isinstance(about, InboundText):
        which, raw = about.provider_id, _raw(about)
    else:
        which, raw = f"{about.provider_id} {about.status}", {"id": about.provider_id, "status": about.status}
    with store.write() as connection:
        inbox.add_dead_letter(connection, None, now, "it was for another account at the provider", raw, which)


def keep_missed(store: Store, transport: Transport, shop_id: int, now: datetime) -> int:
    """Keep what customers wrote to the shop's number and no hook has kept; how many texts that were.

    Who wrote a stop is kept first, then who told a symptom. Raises LookUpFailed; nothing is noted then.
    """
    with store.read() as connection:
        to = shops.load_shop(connection, shop_id).texts_from
        # What was written to the number before it was this shop's is not ours to answer.
        since = max((inbox.heard_at(connection, shop_id) or now) - OVERLAP, shops.added_at(connection, shop_id))
    listed = transport.list_inbound(to, since)
    with store.read() as connection:
        known = inbox.known_ids(connection, [text.provider_id for text in listed])
    missed = [text for text in listed if text.provider_id not in known]
    # Here, since all that reads texts comes with it: the pages keep them unread, and start without.
    from followup.core.conversation.listen import stops_first

    for place in stops_first((text.sender, text.body) for text in missed):
        keep_inbound(store, missed[place], now)
    with store.write() as connection:
        inbox.note_heard(connection, shop_id, now)
    return len(missed)


def _raw(text: InboundText) -> dict[str, Any]:
    raw: dict[str, Any] = {"from": text.sender, "to": text.to, "body": text.body, "media": text.media_count}
    return {**raw, "caught": text.provider_caught}
