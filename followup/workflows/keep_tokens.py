"""Tokens of other programs: made, told once, looked up by their hash, revoked.

A token is 256 random bits; the store has its SHA-256 alone. Making and revoking one stand in the audit trail, in the
same transaction. A name is used once, so that what a program brought in can always be told from another's.
"""

from __future__ import annotations

import hashlib
import secrets
from dataclasses import dataclass
from datetime import datetime

from followup.storage import shops, tokens
from followup.storage.store import Store

LONGEST_NAME = 60


class TokenNameUnusable(Exception):
    """A token's name has 1 to 60 characters and was not used before: choose another one."""


@dataclass(frozen=True)
class Token:
    """One token of a shop; `revoked_at` None while it stands."""

    shop_id: int
    name: str
    created_at: datetime
    revoked_at: datetime | None = None


def new_token(store: Store, shop_id: int, name: str, now: datetime, who: str) -> str:
    """Make a token of that name; it is returned this once and never shown again. Raises `TokenNameUnusable`."""
    name = name.strip()
    if not name or len(name) > LONGEST_NAME or not name.isprintable():
        raise TokenNameUnusable(TokenNameUnusable.__doc__)
    token = secrets.token_urlsafe(32)
    with store.write() as connection:
        if not tokens.add_token(connection, shop_id, name, _hash(token), now):
            raise TokenNameUnusable(TokenNameUnusable.__doc__)
        shops.note(connection, shop_id, now, who, "made a token", name)
    return token


def revoke_token(store: Store, shop_id: int, name: str, now: datetime, who: str) -> bool:
    """End a token at once; False where none of that name stands."""
    with store.write() as connection:
        done = tokens.revoke_token(connection, shop_id, name.strip(), now)
        if done:
            shops.note(connection, shop_id, now, who, "revoked a token", name.strip())
    return done


def standing_token(store: Store, token: str) -> Token | None:
    """Whose token this is; None where it is unknown or was revoked."""
    with store.read() as connection:
        row = tokens.find_token(connection, _hash(token))
    return None if row is None or row["revoked_at"] else Token(row["shop_id"], row["name"], row["created_at"])


def tokens_of(store: Store, shop_id: int) -> list[Token]:
    """Every token of a shop, by name."""
    with store.read() as connection:
        rows = tokens.tokens_of_shop(connection, shop_id)
    return [Token(row["shop_id"], row["name"], row["created_at"], row["revoked_at"]) for row in rows]


def _hash(token: str) -> str:
    return hashlib.sha256(token.encode()).hexdigest()
