"""The shop's lead time as its texts and visits tell it, and the shop with that lead time where its manager wants it."""

from __future__ import annotations

from collections import defaultdict
from dataclasses import replace
from datetime import datetime, timedelta

from sqlalchemy import Connection, select

from followup.core.planning.lead_time import LearnedLead, Wait, learned_lead
from followup.core.shop import Shop
from followup.storage import rows, tables

# What is older says little of how long customers take now.
_LOOKS_BACK = timedelta(days=730)
# A booking came from the invite before it where it was asked for within so many days.
_FROM_TEXT_WITHIN = timedelta(days=14)
_DAY = timedelta(days=1)


def lead_of(connection: Connection, shop: Shop, now: datetime) -> LearnedLead:
    """What the visits that came from invites say; without any, the lead time of the rules."""
    return learned_lead(_waits(connection, shop.id, now), shop.rules.lead_days)


def with_learned_lead(connection: Connection, shop: Shop, now: datetime) -> Shop:
    """The shop as planning is to see it: with its own lead time where a manager has let it."""
    if not shop.rules.lead_days_learned:
        return shop
    return replace(shop, rules=replace(shop.rules, lead_days=lead_of(connection, shop, now).days))


def _waits(connection: Connection, shop_id: int, now: datetime) -> list[Wait]:
    texts, requests = tables.texts, tables.booking_requests
    sent = select(texts.c.phone_id, texts.c.sent_at).where(
        texts.c.shop_id == shop_id, texts.c.state == "sent", texts.c.kind == "invite",
        texts.c.sent_at >= now - _LOOKS_BACK,
    )  # fmt: skip
    invited: dict[int, list[datetime]] = defaultdict(list)
    for row in rows.every(connection, sent):
        invited[row["phone_id"]].append(row["sent_at"])
    asked = select(requests.c.phone_id, requests.c.asked_at, requests.c.slot_at, requests.c.state).where(
        requests.c.shop_id == shop_id, requests.c.state.in_(("asked", "offered", "confirmed", "kept")),
        requests.c.asked_at >= now - _LOOKS_BACK,
    )  # fmt: skip
    waits = []
    for row in rows.every(connection, asked):
        before = [at for at in invited.get(row["phone_id"], ()) if at <= row["asked_at"] <= at + _FROM_TEXT_WITHIN]
        if before:
            came_at = row["slot_at"] if row["state"] == "kept" else None
            waits.append(Wait(max(((came_at or now) - max(before)) / _DAY, 0.0), came_at is not None))
    return waits
