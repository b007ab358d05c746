"""Tokens by which other programs prove who they are; only their hashes are kept."""

from __future__ import annotations

from datetime import datetime

from sqlalchemy import Connection, select, update

from followup.storage import rows, tables
from followup.storage.rows import Row

# Asked with each request of another program.
_OF_HASH = select(tables.api_tokens).where(tables.api_tokens.c.token_hash == rows.given("token_hash"))


def add_token(connection: Connection, shop_id: int, name: str, token_hash: str, now: datetime) -> bool:
    """Keep a token by its hash; False where the name was used before."""
    made = rows.add_new(
        connection, tables.api_tokens, shop_id=shop_id, name=name, token_hash=token_hash, created_at=now
    )
    return made is not None


def find_token(connection: Connection, token_hash: str) -> Row | None:
    """The token of that hash, revoked or not."""
    return rows.first(connection, _OF_HASH, token_hash=token_hash)


def tokens_of_shop(connection: Connection, shop_id: int) -> list[Row]:
    """Every token of a shop, by name."""
    table = tables.api_tokens
    return rows.every(connection, select(table).where(table.c.shop_id == shop_id).order_by(table.c.name))


def revoke_token(connection: Connection, shop_id: int, name: str, now: datetime) -> bool:
    """End a token; False where there is none of that name that still stands."""
    table = tables.api_tokens
    done = connection.execute(
        update(table)
        .where(table.c.shop_id == shop_id, table.c.name == name, table.c.revoked_at.is_(None))
        .values(revoked_at=now)
    )
    return done.rowcount == 1
