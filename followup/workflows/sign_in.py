"""Signing in and out, and a member's own password.

To sign in:
1. Write the try down, and count the tries of the last quarter of an hour for this login and from this address, in one
   transaction, before the password is looked at: a hundred tries at once get five looks, not a hundred.
2. More than five: refuse without a look, and take the row back, so that the wait ends by itself.
3. Look at the password outside of any transaction (it takes some 20-50 ms); where there is no such account, look at
   another hash all the same, so that time and answer tell nothing.
4. Wrong: the row stays. Right: forget the account's failures, keep a better hash where the parameters have risen,
   begin a new session under a new token. Somebody closed the account in between: step 4 reads it again and refuses.
If the process dies after 1, a try counts that was none; it is forgotten with the quarter of an hour.

A session is a random token of 256 bits; the store has its SHA-256 alone. It ends when the member signs out, by a new
password, when the account is closed, unused for four hours, or fourteen hours after it began.
"""

from __future__ import annotations

import hashlib
import secrets
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta

from followup import passwords
from followup.storage import staff
from followup.storage.staff import Role, ShopHead, StaffMember, StaffSession
from followup.storage.store import Store

__all__ = ["ROLES", "Role", "ShopHead", "SignInAnswer", "StaffMember", "StaffSession"]

ROLES: tuple[Role, ...] = ("technician", "advisor", "manager", "owner")
TRIES = 5
TRIES_WITHIN = timedelta(minutes=15)
# A lunch break and a long job signs nobody out; a working day ends it, whatever happens.
ENDS_UNUSED_AFTER = timedelta(hours=4)
ENDS_AFTER = timedelta(hours=14)
# Each look at a page would be a write; once in this long is near enough for the four hours.
SEEN_EVERY = timedelta(minutes=5)
FORGOTTEN_AFTER = timedelta(days=30)

WRONG = "This sign-in name and password do not go together."
TOO_MANY = "Too many tries. Wait a quarter of an hour, then try again."


@dataclass(frozen=True)
class SignInAnswer:
    """Either a `token` for the new session and whose it is, or why not, in words for the page."""

    token: str | None = None
    member: StaffMember | None = None
    why_not: str | None = None
    has_to_wait: bool = False


def sign_in(store: Store, now: datetime, shop: str, login: str, password: str, address: str) -> SignInAnswer:
    """Check a login; `shop` is its code, "" where there is one shop only; `address` is the IP it comes from."""
    login = login.strip().lower()
    with store.write() as connection:
        shop_id = staff.shop_named(connection, shop.strip().lower())
        counted_at = shop_id or staff.first_shop(connection)
        if counted_at is None:
            return SignInAnswer(why_not=WRONG)
        since = now - TRIES_WITHIN
        this_try = staff.count_try(connection, counted_at, login, address, now, since, TRIES)
        found = staff.with_login(connection, shop_id, login) if shop_id else None
    if this_try is None:
        return SignInAnswer(why_not=TOO_MANY, has_to_wait=True)
    member, kept = found if found and found[0].is_active else (None, None)
    if not passwords.is_right(password, kept) or member is None or kept is None:
        return SignInAnswer(why_not=WRONG)
    better = passwords.hash_password(password) if passwords.needs_new_hash(kept) else None
    return _begin(store, now, member, kept, better)


def _begin(store: Store, now: datetime, member: StaffMember, kept: str, better: str | None) -> SignInAnswer:
    token = secrets.token_urlsafe(32)
    with store.write() as connection:
        again = staff.with_login(connection, member.shop_id, member.login)
        if again is None or not again[0].is_active or again[1] != kept:
            return SignInAnswer(why_not=WRONG)
        if better:
            staff.set_hash(connection, member.id, better)
        staff.forget_failures_of(connection, member.shop_id, member.login)
        staff.forget_old(connection, now - FORGOTTEN_AFTER)
        staff.begin_session(connection, member, _hash(token), now)
    return SignInAnswer(token=token, member=member)


def who_is(store: Store, now: datetime, token: str) -> StaffMember | None:
    """Whose session this token is; None where it ended, timed out or never was."""
    with store.read() as connection:
        found = staff.standing_session(connection, _hash(token))
    if found is None:
        return None
    member, session = found
    if _has_timed_out(session, now):
        return None
    if now - session.seen_at >= SEEN_EVERY:
        with store.write() as connection:
            staff.see_session(connection, session.id, now)
    return member


def sign_out(store: Store, now: datetime, token: str) -> None:
    """End this session; the token is worth nothing afterwards, wherever it was copied to."""
    with store.write() as connection:
        staff.end_session(connection, _hash(token), now)


def sessions_of(store: Store, now: datetime, member: StaffMember) -> Sequence[StaffSession]:
    """The sessions that stand, newest first."""
    with store.read() as connection:
        kept = staff.sessions_of(connection, member.id)
    return [session for session in kept if not _has_timed_out(session, now)]


def end_all_sessions(store: Store, now: datetime, member: StaffMember) -> None:
    """End every session of this member, the one that asks too."""
    with store.write() as connection:
        staff.end_sessions(connection, member.id, now)


def change_password(
    store: Store, now: datetime, member: StaffMember, old: str, new: str, address: str
) -> dict[str, str]:
    """Set a new password and end all sessions; else what is wrong, in words, by "old" or "new".

    A wrong old password counts as a failed try to sign in: a page left open is no way around the limit.
    """
    with store.write() as connection:
        since = now - TRIES_WITHIN
        this_try = staff.count_try(connection, member.shop_id, member.login, address, now, since, TRIES)
        found = staff.with_login(connection, member.shop_id, member.login)
        shop = staff.shop_head(connection, member.shop_id)
    if this_try is None:
        return {"old": TOO_MANY}
    kept = found[1] if found else None
    if not passwords.is_right(old, kept):
        return {"old": "This is not your present password."}
    why_not = passwords.why_not(new, member.login, shop.name)
    hashed = None if why_not else passwords.hash_password(new)
    with store.write() as connection:
        staff.forget_failure(connection, this_try)
        if hashed:
            staff.set_hash(connection, member.id, hashed)
            staff.end_sessions(connection, member.id, now)
    return {"new": why_not} if why_not else {}


def has_several_shops(store: Store) -> bool:
    """True where people must say which shop they sign in to."""
    with store.read() as connection:
        return staff.has_several_shops(connection)


def shop_head(store: Store, shop_id: int) -> ShopHead:
    """The shop's name and zone, for the head of the pages and the times on them."""
    with store.read() as connection:
        return staff.shop_head(connection, shop_id)


def _has_timed_out(session: StaffSession, now: datetime) -> bool:
    return now - session.seen_at >= ENDS_UNUSED_AFTER or now - session.created_at >= ENDS_AFTER


def _hash(token: str) -> str:
    return hashlib.sha256(token.encode()).hexdigest()
