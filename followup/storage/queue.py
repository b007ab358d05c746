"""When something is due next, whatever it is: what a stepped clock goes to.

Asked at every step, so that the statements are made once.
"""

from __future__ import annotations

from collections.abc import Iterator
from datetime import datetime

from sqlalchemy import ColumnElement, Connection, ScalarSelect, func, or_, select

from followup.storage import rows, tables

_TEXTS, _ALERTS, _REQUESTS = tables.texts.c, tables.alerts.c, tables.booking_requests.c
_NOW = rows.given("now")
# The indexes begin with the shop: without it all that ever left would be looked through.
_OF_SHOPS = _TEXTS.shop_id.in_(select(tables.shops.c.id))
_IS_OPEN = (_ALERTS.closed_at.is_(None), _ALERTS.acknowledged_at.is_(None))


def _waiting() -> Iterator[ColumnElement[bool]]:
    for table, *told in (
        (tables.texts, _TEXTS.state == "planned", _TEXTS.due_at <= _NOW),
        (tables.inbound, tables.inbound.c.handled_at.is_(None)),
        (tables.alerts, *_IS_OPEN, or_(_ALERTS.next_at.is_(None), _ALERTS.next_at <= _NOW)),
    ):
        yield select(table.c.id).where(table.c.shop_id == rows.given("shop_id"), *told).exists()


def _next() -> Iterator[ScalarSelect[datetime]]:
    for query in (
        select(func.min(_TEXTS.due_at)).where(_OF_SHOPS, _TEXTS.state == "planned", _TEXTS.due_at > _NOW),
        select(func.min(_TEXTS.look_at)).where(_OF_SHOPS, _TEXTS.state == "unknown", _TEXTS.look_at > _NOW),
        select(func.min(_TEXTS.claimed_until)).where(
            _OF_SHOPS, _TEXTS.state.in_(("claimed", "in_flight")), _TEXTS.claimed_until > _NOW
        ),
        select(func.min(_ALERTS.next_at)).where(*_IS_OPEN, _ALERTS.next_at > _NOW),
        select(func.min(_REQUESTS.offered_until)).where(_REQUESTS.state == "offered", _REQUESTS.offered_until > _NOW),
    ):
        yield query.scalar_subquery()


_IS_WAITING = select(or_(*_waiting()))
_NEXT = select(*_next())


def is_anything_waiting(connection: Connection, shop_id: int, now: datetime) -> bool:
    """Whether at `now` a planned text is due, something that came in is not handled, or an alert is to be told."""
    return bool(connection.execute(_IS_WAITING, {"shop_id": shop_id, "now": now}).scalar())


def next_instants(connection: Connection, now: datetime) -> list[datetime]:
    """The next instants after `now` at which a text, a look-up, the end of a claim, an alert or a held offer is due."""
    return [one for one in connection.execute(_NEXT, {"now": now}).one() if one is not None]
