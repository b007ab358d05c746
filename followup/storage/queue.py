"""When something is due next, whatever it is: what a stepped clock goes to."""

from __future__ import annotations

from datetime import datetime

from sqlalchemy import Connection, func, or_, select

from followup.storage import tables


def is_anything_waiting(connection: Connection, shop_id: int, now: datetime) -> bool:
    """Whether at `now` a planned text is due, something that came in is not handled, or an alert is to be told."""
    texts, alerts, inbound = tables.texts, tables.alerts, tables.inbound
    asked = (
        (texts, texts.c.state == "planned", texts.c.due_at <= now),
        (inbound, inbound.c.handled_at.is_(None)),
        (
            alerts, alerts.c.closed_at.is_(None), alerts.c.acknowledged_at.is_(None),
            or_(alerts.c.next_at.is_(None), alerts.c.next_at <= now),
        ),
    )  # fmt: skip
    return any(
        connection.execute(select(table.c.id).where(table.c.shop_id == shop_id, *told).limit(1)).first() is not None
        for table, *told in asked
    )


def next_instants(connection: Connection, now: datetime) -> list[datetime]:
    """The next instants after `now` at which a text, a look-up, the end of a claim, an alert or a held offer is due."""
    texts, alerts, requests = tables.texts, tables.alerts, tables.booking_requests
    asked = (
        select(func.min(texts.c.due_at)).where(texts.c.state == "planned", texts.c.due_at > now),
        select(func.min(texts.c.look_at)).where(texts.c.state == "unknown", texts.c.look_at > now),
        select(func.min(texts.c.claimed_until)).where(
            texts.c.state.in_(("claimed", "in_flight")), texts.c.claimed_until > now
        ),
        select(func.min(alerts.c.next_at)).where(
            alerts.c.closed_at.is_(None), alerts.c.acknowledged_at.is_(None), alerts.c.next_at > now
        ),
        select(func.min(requests.c.offered_until)).where(requests.c.state == "offered", requests.c.offered_until > now),
    )
    found = [connection.execute(query).scalar() for query in asked]
    return [one for one in found if one is not None]
