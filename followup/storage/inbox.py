"""What came in: the raw text first, then what was understood; status reports; what fits no shop (dead letters)."""

from __future__ import annotations

from collections.abc import Collection, Mapping
from datetime import datetime, timedelta
from typing import Any

from sqlalchemy import Connection, and_, bindparam, case, desc, func, select, update
from sqlalchemy.dialects import postgresql, sqlite

from followup.storage import machine, rows, tables
from followup.storage.rows import Row

# Whoever wrote within this time may be unheard, and nothing but answers need leave meanwhile.
HEARD_WITHIN = timedelta(minutes=10)
# Databases limit how many values a question may hold.
_ASKED_AT_ONCE = 500


# Made once: a hook is answered in a few milliseconds, of which making a statement would be one.
_KEEP = {
    name: dialect.insert(tables.inbound).on_conflict_do_nothing().returning(tables.inbound.c.id)
    for name, dialect in (("sqlite", sqlite), ("postgresql", postgresql))
}
_IS_THEIRS = and_(tables.phones.c.shop_id == tables.shops.c.id, tables.phones.c.number == bindparam("sender"))
_WHO_WRITES = (
    select(
        tables.shops.c.id.label("shop_id"), tables.shops.c.country, tables.phones.c.id.label("phone_id"),
        tables.phones.c.bad_because,
    )
    .select_from(tables.shops.outerjoin(tables.phones, _IS_THEIRS))
    .where(tables.shops.c.texts_from == bindparam("to"))
)  # fmt: skip


# In one statement: two processes may speak with a phone for the first time at once.
_SPOKEN = {
    name: (first := dialect.insert(tables.conversations)).on_conflict_do_update(
        index_elements=["phone_id"],
        set_={column: first.excluded[column] for column in ("state", "thread", "changed_at")},
    )
    for name, dialect in (("sqlite", sqlite), ("postgresql", postgresql))
}


_READ = tables.inbound.c
_UNREAD = case((_READ.handled_at.is_(None), _READ.received_at))
_TIMES = (
    select(_READ.phone_id, func.max(_READ.received_at).label("last"), func.min(_UNREAD).label("unread"))
    .where(_READ.phone_id.in_(rows.among("phone_ids")))
    .group_by(_READ.phone_id)
)
_THREADS = tables.conversations.c
_NEWEST_FIRST = select(tables.conversations).order_by(desc(_THREADS.changed_at))
_CONVERSATIONS = _NEWEST_FIRST.where(_THREADS.shop_id == rows.given("shop_id"))
_CONVERSATIONS_OF = _NEWEST_FIRST.where(
    rows.beside(_THREADS.shop_id) == rows.given("shop_id"), _THREADS.phone_id.in_(rows.among("phone_ids"))
)

_INBOUND = tables.inbound.c
_WAITING = (
    select(_INBOUND.id, _INBOUND.number, _INBOUND.body)
    .where(_INBOUND.shop_id == rows.given("shop_id"), _INBOUND.handled_at.is_(None))
    .order_by(_INBOUND.received_at, _INBOUND.id)
)


def keep_raw(connection: Connection, **values: Any) -> int | None:
    """Keep an inbound text as it came; None where the provider's id was kept before (a duplicate has no effect)."""
    found = connection.execute(_KEEP[connection.dialect.name], values).first()
    return int(found[0]) if found else None


def who_writes(connection: Connection, to: str, sender: str) -> Row | None:
    """The shop that texts from that number (`shop_id`, `country`), with the sender's `phone_id` and `bad_because`
    where it is known there; None where there is no such shop."""
    found = connection.execute(_WHO_WRITES, {"to": to, "sender": sender}).mappings().first()
    return {str(name): value for name, value in found.items()} if found is not None else None


def provider_ids(connection: Connection, shop_id: int) -> list[str]:
    """The provider's ids of all that came in, oldest first."""
    table = tables.inbound
    query = select(table.c.provider_id).where(table.c.shop_id == shop_id).order_by(table.c.id)
    return list(connection.execute(query).scalars())


def unhandled(connection: Connection, shop_id: int) -> list[int]:
    """Ids of inbound texts that nothing answered yet, oldest first."""
    table = tables.inbound
    query = select(table.c.id).where(table.c.shop_id == shop_id, table.c.handled_at.is_(None)).order_by(table.c.id)
    return [row["id"] for row in rows.every(connection, query)]


def waiting(connection: Connection, shop_id: int) -> list[Row]:
    """The same texts (`id`, `number`, `body`) in the order in which they were written: one that was fetched late may
    have been written before one that was kept before it."""
    return rows.every(connection, _WAITING, shop_id=shop_id)


def known_ids(connection: Connection, provider_ids: list[str]) -> set[str]:
    """Which of the provider's ids were kept before, as a text or as a dead letter."""
    known: set[str] = set()
    for first in range(0, len(provider_ids), _ASKED_AT_ONCE):
        asked = provider_ids[first : first + _ASKED_AT_ONCE]
        for column in (tables.inbound.c.provider_id, tables.dead_letters.c.provider_id):
            known.update(connection.execute(select(column).where(column.in_(asked))).scalars())
    return known


def heard_at(connection: Connection, shop_id: int) -> datetime | None:
    """When the provider was last asked what customers of the shop wrote, and answered; None where it never did."""
    return machine.last_beats(connection).get(_heard(shop_id))


def note_heard(connection: Connection, shop_id: int, at: datetime) -> None:
    """All that the provider could show at that instant is kept."""
    machine.beat(connection, [_heard(shop_id)], at)


def _heard(shop_id: int) -> str:
    return f"heard for shop {shop_id}"


def times_of_phone(connection: Connection, phone_id: int) -> tuple[datetime | None, datetime | None]:
    """When the phone last wrote, and when the oldest text of it came that nothing has read yet."""
    return times_of_phones(connection, [phone_id]).get(phone_id, (None, None))


def times_of_phones(
    connection: Connection, phone_ids: Collection[int]
) -> dict[int, tuple[datetime | None, datetime | None]]:
    """The same for those of several phones that ever wrote."""
    found = rows.every(connection, _TIMES, phone_ids=phone_ids)
    return {row["phone_id"]: (row["last"], row["unread"]) for row in found}


def unread_by_phone(connection: Connection, shop_id: int) -> dict[int, datetime]:
    """When the oldest text came that nothing has read yet, by the phones that have one."""
    table = tables.inbound
    query = select(table.c.phone_id, table.c.received_at).where(
        table.c.shop_id == shop_id, table.c.handled_at.is_(None), table.c.phone_id.is_not(None)
    )
    newest_first = rows.every(connection, query.order_by(desc(table.c.received_at)))
    return {row["phone_id"]: row["received_at"] for row in newest_first}


def begin_handling(connection: Connection, inbound_id: int, now: datetime) -> Row | None:
    """Take an inbound text in this transaction; None where another process was first."""
    table = tables.inbound
    done = connection.execute(
        update(table).where(table.c.id == inbound_id, table.c.handled_at.is_(None)).values(handled_at=now)
    )
    if done.rowcount != 1:
        return None
    return rows.first(connection, select(table).where(table.c.id == inbound_id))


def keep_meaning(connection: Connection, inbound_id: int, context: Any, meaning: Any, outcome: str) -> None:
    """Keep what was understood, from which context, and what came of it."""
    rows.change(connection, tables.inbound, inbound_id, context=context, meaning=meaning, outcome=outcome)


def inbound_of_phone(connection: Connection, phone_id: int) -> list[Row]:
    """All texts from a phone, oldest first."""
    table = tables.inbound
    return rows.every(
        connection, select(table).where(table.c.phone_id == phone_id).order_by(table.c.received_at, table.c.id)
    )


def load_inbound(connection: Connection, inbound_id: int) -> Row | None:
    """One inbound text."""
    return rows.first(connection, select(tables.inbound).where(tables.inbound.c.id == inbound_id))


def keep_status(connection: Connection, **values: Any) -> int | None:
    """Keep a delivery report; None where the same came before."""
    return rows.add_new(connection, tables.status_reports, **values)


def add_dead_letter(
    connection: Connection, shop_id: int | None, now: datetime, because: str, body: Any, provider_id: str | None = None
) -> None:
    """Keep what could not be matched to a shop or text, for a person to look at; once for each id of the provider."""
    values = {"at": now, "because": because, "body": body, "provider_id": provider_id}
    rows.add_new(connection, tables.dead_letters, shop_id=shop_id, **values)


def dead_letters(connection: Connection, shop_id: int | None) -> list[Row]:
    """What waits for a person's look at that shop; None: what fits no shop of this machine."""
    table = tables.dead_letters
    of_shop = table.c.shop_id.is_(None) if shop_id is None else table.c.shop_id == shop_id
    return rows.every(connection, select(table).where(of_shop, table.c.settled_at.is_(None)).order_by(desc(table.c.at)))


def settle_dead_letter(connection: Connection, shop_id: int | None, letter_id: int, now: datetime) -> bool:
    """A person looked at it; False where there is none, or somebody did before."""
    table = tables.dead_letters
    of_shop = table.c.shop_id.is_(None) if shop_id is None else table.c.shop_id == shop_id
    done = connection.execute(
        update(table).where(table.c.id == letter_id, of_shop, table.c.settled_at.is_(None)).values(settled_at=now)
    )
    return done.rowcount == 1


def conversation_of(connection: Connection, phone_id: int) -> tuple[dict[str, Any], dict[str, Any]]:
    """The phone's conversation: its state and what it is about; both empty before its first text."""
    table = tables.conversations
    found = rows.first(connection, select(table).where(table.c.phone_id == phone_id))
    return (dict(found["state"]), dict(found["thread"])) if found else ({}, {})


def keep_conversation(
    connection: Connection, shop_id: int, phone_id: int, now: datetime, state: dict[str, Any], thread: dict[str, Any]
) -> None:
    """Set the phone's conversation."""
    keep_conversations(connection, shop_id, now, {phone_id: (state, thread)})


def keep_conversations(
    connection: Connection, shop_id: int, now: datetime, said: Mapping[int, tuple[dict[str, Any], dict[str, Any]]]
) -> None:
    """The same for several phones: state and thread by the phone."""
    every = {"shop_id": shop_id, "changed_at": now}
    values = [{**every, "phone_id": phone_id, "state": state, "thread": said[phone_id][1]}
              for phone_id, (state, _) in sorted(said.items())]  # fmt: skip
    if values:
        connection.execute(_SPOKEN[connection.dialect.name], values)


def conversations_of_shop(connection: Connection, shop_id: int, phone_ids: Collection[int] | None = None) -> list[Row]:
    """Every conversation (or those of these phones), the latest changed first."""
    if phone_ids is None:
        return rows.every(connection, _CONVERSATIONS, shop_id=shop_id)
    return rows.every(connection, _CONVERSATIONS_OF, shop_id=shop_id, phone_ids=phone_ids)
