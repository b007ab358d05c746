"""The consent ledger: append-only; what stands is played from it by `core/consent.py`."""

from __future__ import annotations

import hashlib
import hmac
from datetime import date, datetime

from sqlalchemy import Connection, select

from followup.core.consent import ConsentEntry, ConsentStanding, standing
from followup.storage import outbox, rows, tables
from followup.storage.rows import Row


def hash_number(number: str, secret: str) -> str:
    """The keyed hash under which the ledger keeps a number without end."""
    return hmac.new(secret.encode(), number.encode(), hashlib.sha256).hexdigest()


def append(connection: Connection, shop_id: int, entry: ConsentEntry, secret: str, kept_by: str) -> int | None:
    """Append one line; a consent counts once by (number, given_on, words): the same again is None."""
    table = tables.consents
    if entry.event == "given":
        same = select(table.c.id).where(
            table.c.shop_id == shop_id,
            table.c.number == entry.number,
            table.c.event == "given",
            table.c.given_on == entry.given_on,
            table.c.words == entry.words,
        )
        if rows.first(connection, same):
            return None
    return rows.add(
        connection,
        table,
        shop_id=shop_id,
        number=entry.number,
        number_hash=hash_number(entry.number, secret),
        event=entry.event,
        covers=list(entry.covers),
        at=entry.at,
        given_on=entry.given_on,
        how=entry.how,
        words=entry.words,
        words_version=entry.words_version,
        language=entry.language,
        is_own_and_adult=entry.is_own_and_adult,
        because=entry.because,
        kept_by=kept_by,
    )


def take_back_for_provider(
    connection: Connection, shop_id: int, number: str, now: datetime, on: date, secret: str
) -> None:
    """The provider keeps the number as opted out: a stop like any other, and nothing queued leaves."""
    because = "the provider keeps it opted out"
    entry = ConsentEntry(number, "taken_back", (), now, on, "text_in", because=because)
    append(connection, shop_id, entry, secret, "provider")
    outbox.drop_planned(connection, shop_id, "the customer stopped the texts", number=number)


def entry_of(row: Row) -> ConsentEntry:
    """The plain value of a line of the ledger."""
    return ConsentEntry(
        row["number"] or "", row["event"], tuple(row["covers"]), row["at"], row["given_on"], row["how"], row["words"],
        row["words_version"], row["language"], row["is_own_and_adult"], row["because"],
    )  # fmt: skip


def ledger(connection: Connection, shop_id: int, number: str) -> list[ConsentEntry]:
    """Every line of that number, oldest first."""
    table = tables.consents
    query = select(table).where(table.c.shop_id == shop_id, table.c.number == number)
    return [entry_of(row) for row in rows.every(connection, query.order_by(table.c.at, table.c.id))]


def standing_of(connection: Connection, shop_id: int, number: str) -> ConsentStanding:
    """What the ledger of that number allows now."""
    return standing(ledger(connection, shop_id, number))


def standings(connection: Connection, shop_id: int) -> dict[str, ConsentStanding]:
    """What stands for every number of the shop, in one read."""
    table = tables.consents
    played: dict[str, list[ConsentEntry]] = {}
    query = select(table).where(table.c.shop_id == shop_id, table.c.number.is_not(None))
    for row in rows.every(connection, query.order_by(table.c.at, table.c.id)):
        played.setdefault(row["number"], []).append(entry_of(row))
    return {number: standing(entries) for number, entries in played.items()}
