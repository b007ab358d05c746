"""The consent ledger: append-only; what stands is played from it by `core/consent.py`.

Whoever writes a line and whoever lets a text leave holds the number's lock until its transaction ends: so a text is
in flight before a stop is kept, or it finds the stop.
"""

from __future__ import annotations

import hashlib
import hmac
from collections.abc import Collection, Iterable

from sqlalchemy import Connection, or_, select, text, update

from followup.core.consent import ConsentEntry, ConsentStanding, standing
from followup.storage import people, rows, tables
from followup.storage.rows import Row


def hash_number(number: str, secret: str) -> str:
    """The keyed hash under which the ledger keeps a number without end."""
    return hmac.new(secret.encode(), number.encode(), hashlib.sha256).hexdigest()


# A database takes only so many values in one statement.
_AT_ONCE = 500
_LEDGER = tables.consents.c
_LINES = (
    select(tables.consents)
    .where(
        rows.beside(_LEDGER.shop_id) == rows.given("shop_id"),
        or_(_LEDGER.number.in_(rows.among("numbers")), _LEDGER.number_hash.in_(rows.among("hashes"))),
    )
    .order_by(_LEDGER.at, _LEDGER.id)
)
_KNOW_AGAIN = (
    update(tables.consents)
    .where(
        _LEDGER.shop_id == rows.given("of_shop"), _LEDGER.number_hash == rows.given("hashed"), _LEDGER.number.is_(None)
    )
    .values(number=rows.given("found_again"))
)  # fmt: skip
_LOCK = text("SELECT pg_advisory_xact_lock(hashtextextended(named, 0)) FROM unnest(CAST(:names AS text[])) AS named")


def lock(connection: Connection, shop_id: int, *numbers: str) -> None:
    """Wait for whoever decides about these numbers, and keep others waiting until this transaction ends.

    SQLite has one writer at a time anyway. Several are locked in one order, so that nobody waits for each other.
    """
    if numbers and connection.dialect.name == "postgresql":
        connection.execute(_LOCK, {"names": [_name(shop_id, number) for number in sorted(set(numbers))]})


_LOCK_FREE = text(
    "SELECT number, pg_try_advisory_xact_lock(hashtextextended(name, 0)) "
    "FROM unnest(CAST(:numbers AS text[]), CAST(:names AS text[])) AS asked(number, name)"
)


def lock_free(connection: Connection, shop_id: int, numbers: Iterable[str]) -> set[str]:
    """The same without waiting, for those of several numbers about which nobody else decides now: who holds some of
    their locks must not wait for more, since others take theirs in another order."""
    asked = list(dict.fromkeys(numbers))
    if connection.dialect.name != "postgresql":
        return set(asked)
    found = connection.execute(_LOCK_FREE, {"numbers": asked, "names": [_name(shop_id, one) for one in asked]})
    return {number for number, is_mine in found if is_mine}


def lock_car(connection: Connection, shop_id: int, vehicle_id: int) -> None:
    """Lock the numbers of all who have the car: who opens a visit holds them, so that an invite is in flight before
    the visit is kept, or it finds the visit."""
    lock(connection, shop_id, *people.numbers_of_vehicle(connection, vehicle_id))


def _name(shop_id: int, number: str) -> str:
    return f"consent of {number} at shop {shop_id}"


def know_again(connection: Connection, shop_id: int, number: str, secret: str) -> None:
    """Give a number that comes in again the lines that its hash alone had kept: a stop has no end."""
    hashed = hash_number(number, secret)
    connection.execute(_KNOW_AGAIN, {"of_shop": shop_id, "hashed": hashed, "found_again": number})


def append(connection: Connection, shop_id: int, entry: ConsentEntry, secret: str, kept_by: str) -> int | None:
    """Append one line; a consent counts once by (number, given_on, words): the same again is None."""
    table = tables.consents
    lock(connection, shop_id, entry.number)
    know_again(connection, shop_id, entry.number, secret)
    if entry.event == "given":
        same = select(table.c.id).where(
            rows.beside(table.c.shop_id) == shop_id,
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


def entry_of(row: Row) -> ConsentEntry:
    """The plain value of a line of the ledger."""
    return ConsentEntry(
        row["number"] or "", row["event"], tuple(row["covers"]), row["at"], row["given_on"], row["how"], row["words"],
        row["words_version"], row["language"], row["is_own_and_adult"], row["because"],
    )  # fmt: skip


def ledger(connection: Connection, shop_id: int, number: str, secret: str | None = None) -> list[ConsentEntry]:
    """Every line of that number, oldest first; with the secret also those of a number that only its hash knows."""
    hashes = [] if secret is None else [hash_number(number, secret)]
    found = rows.every(connection, _LINES, shop_id=shop_id, numbers=[number], hashes=hashes)
    return [entry_of(row) for row in found]


def ledgers(connection: Connection, shop_id: int, numbers: Collection[str]) -> dict[str, list[ConsentEntry]]:
    """The same of several numbers, some at a time; a number without a line has an empty one."""
    found = {number: list[ConsentEntry]() for number in numbers}
    every = sorted(found)
    for begin in range(0, len(every), _AT_ONCE):
        some = every[begin : begin + _AT_ONCE]
        for row in rows.every(connection, _LINES, shop_id=shop_id, numbers=some, hashes=[]):
            found[row["number"]].append(entry_of(row))
    return found


def standings_of(
    connection: Connection, shop_id: int, numbers: Iterable[str], secret: str | None = None
) -> dict[str, ConsentStanding]:
    """What the ledger allows each of these numbers, in one read."""
    lines = {number: list[ConsentEntry]() for number in numbers}
    by_hash = {hash_number(number, secret): number for number in lines} if secret is not None else {}
    for row in rows.every(connection, _LINES, shop_id=shop_id, numbers=list(lines), hashes=list(by_hash)):
        for number in {row["number"], by_hash.get(row["number_hash"])} & lines.keys():
            lines[number].append(entry_of(row))
    return {number: standing(entries) for number, entries in lines.items()}


def standing_of(connection: Connection, shop_id: int, number: str, secret: str | None = None) -> ConsentStanding:
    """What the ledger of that number allows now."""
    return standing(ledger(connection, shop_id, number, secret))


def standings(connection: Connection, shop_id: int) -> dict[str, ConsentStanding]:
    """What stands for every number of the shop, in one read."""
    table = tables.consents
    played: dict[str, list[ConsentEntry]] = {}
    query = select(table).where(table.c.shop_id == shop_id, table.c.number.is_not(None))
    for row in rows.every(connection, query.order_by(table.c.at, table.c.id)):
        played.setdefault(row["number"], []).append(entry_of(row))
    return {number: standing(entries) for number, entries in played.items()}
