"""What became of texts that were handed over: proofs, doubt, and what is looked at next.

A receipt or a delivery report proves that a text was taken; the provider's list proves it too, but two texts of the
same words look alike in it, so that it yields to both. Nothing proves that a text was not taken but a refusal, or the
process that knows that it handed nothing over.
"""

from __future__ import annotations

from collections.abc import Mapping
from datetime import datetime, timedelta
from typing import Any

from sqlalchemy import Connection, or_, select

from followup.core.text import DELIVERY_RANK
from followup.storage import machine, rows, tables
from followup.storage.outbox import move, move_all
from followup.storage.rows import Row

_NOT_KNOWN = ("in_flight", "unknown", "held")
FOUND_IN_LIST = "found in the provider's list"
_TEXTS = tables.texts.c
_FLYING = select(_TEXTS.id, _TEXTS.attempt).where(
    _TEXTS.id.in_(rows.among("text_ids")), _TEXTS.state == "in_flight", _TEXTS.claimed_until > rows.given("enough")
)
_LOST = (
    select(_TEXTS.id)
    .where(_TEXTS.shop_id == rows.given("shop_id"), _TEXTS.state == "in_flight")
    .where(_TEXTS.claimed_until <= rows.given("now"))
    .with_for_update(skip_locked=True)
)
_TO_LOOK_UP = (
    select(tables.texts)
    .where(_TEXTS.shop_id == rows.given("shop_id"), _TEXTS.state == "unknown")
    .where(or_(_TEXTS.look_at.is_(None), _TEXTS.look_at <= rows.given("now")))
)
_HELD = select(_TEXTS.id).where(_TEXTS.id.in_(rows.among("text_ids"))).order_by(_TEXTS.id).with_for_update()
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
    """Texts in flight whose worker is gone: we do not know, so they are `unknown` and looked up. How many there were;
    one that somebody decides about at this moment (its report comes, say) is left to the next look."""
    found = rows.every(connection, _LOST, shop_id=shop_id, now=machine.database_now(connection))
    doubt = {"state": "unknown", "state_because": "the process that sent it ended", "look_at": first_look}
    return rows.change_all(connection, tables.texts, [row["id"] for row in found], doubt)


def unknown_texts(connection: Connection, shop_id: int, now: datetime) -> list[Row]:
    """Texts of unknown outcome whose next look has come."""
    # Put in order here: asked for in that of their ids, SQLite looks through all that ever left instead of the queue.
    return sorted(rows.every(connection, _TO_LOOK_UP, shop_id=shop_id, now=now), key=lambda row: int(row["id"]))


def keep_receipt(
    connection: Connection, text_id: int, attempt: int, provider_id: str, status: str, now: datetime
) -> bool:
    """The provider took this attempt: sent, also where its lease ran out meanwhile. False where the row went on.

    First `give_up_found`, for it and those that are kept with it.
    """
    return move(connection, text_id, attempt, _NOT_KNOWN, "sent", **_receipt(provider_id, status, now))


def keep_receipts(
    connection: Connection, receipts: Mapping[tuple[int, int], tuple[str, str, datetime]]
) -> set[int]:  # fmt: skip
    """The same for several: (provider_id, status, now) by (text_id, attempt). Those that did not go on before."""
    if len(receipts) == 1:
        (((text_id, attempt), said),) = receipts.items()
        return {text_id} if keep_receipt(connection, text_id, attempt, *said) else set()
    news = {text_id: _receipt(*said) for (text_id, _), said in receipts.items()}
    return move_all(connection, dict(receipts.keys()), _NOT_KNOWN, "sent", news)


def _receipt(provider_id: str, status: str, now: datetime) -> dict[str, Any]:
    return {"sent_at": now, "provider_id": provider_id, "delivery": status, "state_because": None}


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
    found = rows.every(connection, _FOUND, provider_ids=list(owners))
    if found:
        # Their own rows first, as a report holds its text's: else two of them might wait for each other.
        rows.every(connection, _HELD, text_ids=list(owners.values()))
    for row in found:
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
