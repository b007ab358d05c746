"""Alerts to staff: raised once, told until somebody says "I am calling", closed by an outcome. Also the phone list."""

from __future__ import annotations

from collections.abc import Collection
from datetime import datetime
from typing import Any

from sqlalchemy import Connection, desc, or_, select, update

from followup.storage import rows, tables
from followup.storage.rows import Row

_OF_PHONES = (
    select(tables.alerts)
    .where(tables.alerts.c.phone_id.in_(rows.among("phone_ids")))
    .order_by(desc(tables.alerts.c.id))
)

# Asked every second or two, and made once.
_ALERTS = tables.alerts.c
_DUE = (
    select(tables.alerts)
    .where(_ALERTS.shop_id == rows.given("shop_id"), _ALERTS.closed_at.is_(None), _ALERTS.acknowledged_at.is_(None))
    .where(or_(_ALERTS.next_at.is_(None), _ALERTS.next_at <= rows.given("now")))
    .order_by(_ALERTS.raised_at)
)


_IS_OPEN = (_ALERTS.shop_id == rows.given("shop_id"), _ALERTS.closed_at.is_(None))
_OPEN = select(tables.alerts).where(*_IS_OPEN).order_by(_ALERTS.raised_at, _ALERTS.id)
_OPEN_OF_KIND = select(tables.alerts).where(*_IS_OPEN, _ALERTS.kind == rows.given("kind")).order_by(_ALERTS.id)


def raise_alert(connection: Connection, **values: Any) -> int | None:
    """Raise an alert; None where the same cause raised one of that kind before."""
    return rows.add_new(connection, tables.alerts, **values)


def open_alerts(connection: Connection, shop_id: int) -> list[Row]:
    """Alerts without an outcome, oldest first."""
    return rows.every(connection, _OPEN, shop_id=shop_id)


def open_of_kind(connection: Connection, shop_id: int, kind: str) -> list[Row]:
    """Alerts of one kind without an outcome."""
    return rows.every(connection, _OPEN_OF_KIND, shop_id=shop_id, kind=kind)


def is_raised(connection: Connection, shop_id: int, kind: str, raised_by: str) -> bool:
    """True where that cause raised such an alert, open or closed."""
    table = tables.alerts
    query = select(table.c.id).where(table.c.shop_id == shop_id, table.c.kind == kind, table.c.raised_by == raised_by)
    return rows.first(connection, query) is not None


def due_alerts(connection: Connection, shop_id: int, now: datetime) -> list[Row]:
    """Alerts that nobody answered and whose next telling has come."""
    return rows.every(connection, _DUE, shop_id=shop_id, now=now)


def load_alert(connection: Connection, shop_id: int, alert_id: int) -> Row | None:
    """One alert, if it is this shop's."""
    return rows.first(connection, rows.equal(tables.alerts, "id", "shop_id"), id=alert_id, shop_id=shop_id)


def step(connection: Connection, alert: Row, next_step: int, next_at: datetime | None) -> bool:
    """Go to the next step of the clocks; False where another process was first."""
    table = tables.alerts
    done = connection.execute(
        update(table)
        .where(table.c.id == alert["id"], table.c.step == alert["step"], table.c.acknowledged_at.is_(None))
        .values(step=next_step, next_at=next_at)
    )
    return done.rowcount == 1


def acknowledge(connection: Connection, shop_id: int, alert_id: int, staff_id: int, now: datetime) -> bool:
    """ "I am calling": False where somebody said so before."""
    table = tables.alerts
    done = connection.execute(
        update(table)
        .where(table.c.id == alert_id, table.c.shop_id == shop_id, table.c.acknowledged_at.is_(None))
        .values(acknowledged_at=now, acknowledged_by=staff_id)
    )
    return done.rowcount == 1


def close(connection: Connection, shop_id: int, alert_id: int, outcome: str, now: datetime) -> bool:
    """Close an alert with its outcome; False where it is closed already."""
    table = tables.alerts
    done = connection.execute(
        update(table)
        .where(table.c.id == alert_id, table.c.shop_id == shop_id, table.c.closed_at.is_(None))
        .values(closed_at=now, outcome=outcome)
    )
    return done.rowcount == 1


def add_telling(connection: Connection, **values: Any) -> int | None:
    """Keep that a member of staff was told; None where that was done before in the same way."""
    return rows.add_new(connection, tables.alert_tellings, **values)


def tellings(connection: Connection, alert_id: int) -> list[Row]:
    """Who was told of an alert, and how."""
    table = tables.alert_tellings
    return rows.every(connection, select(table).where(table.c.alert_id == alert_id).order_by(table.c.id))


def alerts_of_phone(connection: Connection, phone_id: int) -> list[Row]:
    """All alerts about a phone, the newest first."""
    return alerts_of_phones(connection, [phone_id]).get(phone_id, [])


def alerts_of_phones(connection: Connection, phone_ids: Collection[int]) -> dict[int, list[Row]]:
    """The same for several phones, by the phone."""
    found: dict[int, list[Row]] = {}
    for row in rows.every(connection, _OF_PHONES, phone_ids=phone_ids):
        found.setdefault(row["phone_id"], []).append(row)
    return found


def is_alert_text_accepted(connection: Connection, alert_id: int) -> bool:
    """True where a text about the alert to a member of staff was accepted for sending."""
    table = tables.texts
    query = select(table.c.id).where(table.c.alert_id == alert_id, table.c.kind == "alert", table.c.state == "sent")
    return rows.first(connection, query.limit(1)) is not None


def phone_task_keys(connection: Connection, shop_id: int) -> set[str]:
    """The causes of all phone tasks, open or done: each is listed once."""
    table = tables.alerts
    query = select(table.c.raised_by).where(table.c.shop_id == shop_id, table.c.kind == "phone_task")
    return {row["raised_by"] for row in rows.every(connection, query)}
