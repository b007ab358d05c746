"""What became of texts that were handed over: proofs, doubt, and what is looked at next.

A receipt or a delivery report proves that a text was taken; the provider's list proves it too, but two texts of the
same words look alike in it, so that it yields to both. Nothing proves that a text was not taken but a refusal, or the
process that knows that it handed nothing over.
"""

from __future__ import annotations

from collections.abc import Mapping
from datetime import datetime, timedelta
from typing import Any

from sqlalchemy import Connection, or_, select, update

from followup.core.text import DELIVERY_RANK
from followup.storage import machine, rows, tables
from followup.storage.outbox import move
from followup.storage.rows import Row

FOUND_IN_LIST = "found in the provider's list"
_TEXTS = tables.texts.c
_FLYING = select(_TEXTS.id, _TEXTS.attempt).where(
    _TEXTS.id.in_(rows.among("text_ids")), _TEXTS.state == "in_flight", _TEXTS.claimed_until > rows.given("enough")
)
_FOUND = select(_TEXTS.id, _TEXTS.provider_id).where(
    _TEXTS.provider_id.in_(rows.among("provider_ids")), _TEXTS.state_because == FOUND_IN_LIST
)


def with_time_left(connection: Connection, attempts: Mapping[int, int], needs: timedelta) -> set[int]:
    """Which of these texts are still in flight in their attempts, with a lease that lasts for as long as handing them
    over may take."""
    enough = machine.database_now(connection) + needs
    flying = rows.every(connection, _FLYING, text_ids=list(attempts), enough=enough)
    return {row["id"] for row in flying if row["attempt"] == attempts[row["id"]]}


def mark_lost_in_flight(connection: Connection, shop_id: int, first_look: datetime) -> int:
    """Texts in flight whose worker is gone: we do not know, so they are `unknown` and looked up."""
    table, now = tables.texts, machine.database_now(connection)
    done = connection.execute(
        update(table)
        .where(table.c.shop_id == shop_id, table.c.state == "in_flight", table.c.claimed_until < now)
        .values(state="unknown", state_because="the process that sent it ended", look_at=first_look)
    )
    return done.rowcount


def unknown_texts(connection: Connection, shop_id: int, now: datetime) -> list[Row]:
    """Texts of unknown outcome whose next look has come."""
    table = tables.texts
    query = select(table).where(
        table.c.shop_id == shop_id, table.c.state == "unknown", or_(table.c.look_at.is_(None), table.c.look_at <= now)
    )
    return rows.every(connection, query.order_by(table.c.id))


def keep_receipt(
    connection: Connection, text_id: int, attempt: int, provider_id: str, status: str, now: datetime
) -> bool:
    """The provider took this attempt: sent, also where its lease ran out meanwhile. False where the row went on.

    First `give_up_found`, for it and those that are kept with it.
    """
    return move(
        connection, text_id, attempt, ("in_flight", "unknown", "held"), "sent", sent_at=now, provider_id=provider_id,
        delivery=status, state_because=None,
    )  # fmt: skip


def bind_delivery(
    connection: Connection, text_id: int, attempt: int, provider_id: str, status: str, error_code: str | None,
    now: datetime,
) -> None:  # fmt: skip
    """Take over a delivery report about an attempt: ranks only rise, and it proves that the text was sent."""
    table = tables.texts
    found = rows.first(connection, select(table).where(table.c.id == text_id).with_for_update())
    if found is None or not _is_about(found, attempt, provider_id):
        return
    settles = _is_proof(found, attempt) or found["provider_id"] not in (None, provider_id)
    if not settles and found["provider_id"] is None:
        return
    news: dict[str, Any] = {}
    if DELIVERY_RANK.get(status, 0) > DELIVERY_RANK.get(found["delivery"] or "", 0):
        news.update(delivery=status, error_code=error_code)
    if settles:
        give_up_found(connection, {provider_id: text_id}, now)
        left_at = found["sent_at"] or found["in_flight_at"] or now
        news.update(
            state="sent", sent_at=left_at, provider_id=provider_id, look_at=None,
            state_because="its delivery report came",
        )  # fmt: skip
    if news:
        rows.change(connection, table, text_id, **news)


def _is_about(text: Row, attempt: int, provider_id: str) -> bool:
    """Whether a report speaks of what this row is bound to, or may bind it."""
    if text["provider_id"] in (None, provider_id):
        return attempt <= int(text["attempt"])
    return attempt == int(text["attempt"]) and str(text["state_because"]) == FOUND_IN_LIST


def _is_proof(text: Row, attempt: int) -> bool:
    """Whether a report about that attempt settles the row. A later attempt that is under way settles itself."""
    if text["state"] == "in_flight":
        return attempt == int(text["attempt"])
    if text["state"] == "claimed":
        return attempt < int(text["attempt"])
    if text["state"] == "dropped":
        return text["in_flight_at"] is not None
    return text["state"] in ("unknown", "held", "planned")


def give_up_found(connection: Connection, owners: Mapping[str, int], now: datetime) -> None:
    """Take each id of the provider back from any text but its owner that had it from the list alone: that one is looked
    up again."""
    for row in rows.every(connection, _FOUND, provider_ids=list(owners)):
        if row["id"] != owners[row["provider_id"]]:
            rows.change(
                connection, tables.texts, row["id"], state="unknown", provider_id=None, sent_at=None, delivery=None,
                look_at=now, state_because="what the list showed was another text",
            )  # fmt: skip


def held_texts(connection: Connection, shop_id: int) -> list[Row]:
    """Texts of which nobody knows whether they went out."""
    table = tables.texts
    query = select(table).where(table.c.shop_id == shop_id, table.c.state == "held").order_by(table.c.id)
    return rows.every(connection, query)


def is_bound(connection: Connection, provider_id: str) -> bool:
    """True where a text of ours already has that id of the provider: it cannot be another one's proof."""
    table = tables.texts
    return rows.first(connection, select(table.c.id).where(table.c.provider_id == provider_id)) is not None
