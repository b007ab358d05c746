"""Staff, their sessions, and the failed tries to sign in."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from datetime import datetime, timedelta
from typing import Any, Literal, cast

from sqlalchemy import Connection, Row, delete, func, or_, select, update

from followup.storage import rows
from followup.storage.tables import shops, sign_in_failures, staff, staff_sessions

Role = Literal["technician", "advisor", "manager", "owner"]


@dataclass(frozen=True)
class StaffMember:
    """Somebody with an account. The password's hash stays in the store."""

    id: int
    shop_id: int
    login: str
    name: str
    role: Role
    is_active: bool = True


@dataclass(frozen=True)
class StaffSession:
    """A stay on the pages, from signing in to its end."""

    id: int
    created_at: datetime
    seen_at: datetime


@dataclass(frozen=True)
class ShopHead:
    """The shop's name and IANA zone: what the head of each page and every time on it need."""

    name: str
    zone: str


_MEMBER = (staff.c.id, staff.c.shop_id, staff.c.login, staff.c.name, staff.c.role, staff.c.is_active)


def _member(row: Row[*tuple[Any, ...]]) -> StaffMember:
    return StaffMember(row.id, row.shop_id, row.login, row.name, cast(Role, row.role), row.is_active)


def shop_named(connection: Connection, code: str) -> int | None:
    """The shop with this code; with "" the only shop, None where there are several or none."""
    if code:
        found = connection.scalar(select(shops.c.id).where(shops.c.code == code))
        return cast("int | None", found)
    ids = connection.scalars(select(shops.c.id).limit(2)).all()
    return ids[0] if len(ids) == 1 else None


def first_shop(connection: Connection) -> int | None:
    """The oldest shop: what is tried against a shop that does not exist is written down there."""
    return cast("int | None", connection.scalar(select(func.min(shops.c.id))))


def has_several_shops(connection: Connection) -> bool:
    """True where people must say which shop they sign in to."""
    return len(connection.scalars(select(shops.c.id).limit(2)).all()) > 1


def shop_head(connection: Connection, shop_id: int) -> ShopHead:
    """What the head of each page says about the shop."""
    row = connection.execute(select(shops.c.name, shops.c.zone).where(shops.c.id == shop_id)).one()
    return ShopHead(row.name, row.zone)


def with_login(connection: Connection, shop_id: int, login: str) -> tuple[StaffMember, str | None] | None:
    """The member with this login and the password's hash."""
    query = select(*_MEMBER, staff.c.password_hash).where(staff.c.shop_id == shop_id, staff.c.login == login)
    row = connection.execute(query).one_or_none()
    return None if row is None else (_member(row), row.password_hash)


def member(connection: Connection, shop_id: int, staff_id: int) -> StaffMember | None:
    """The member with this id, in this shop only."""
    row = connection.execute(select(*_MEMBER).where(staff.c.shop_id == shop_id, staff.c.id == staff_id)).one_or_none()
    return None if row is None else _member(row)


def of_shop(connection: Connection, shop_id: int) -> Sequence[StaffMember]:
    """Everybody who has or had an account, by name."""
    rows = connection.execute(select(*_MEMBER).where(staff.c.shop_id == shop_id).order_by(staff.c.name, staff.c.id))
    return [_member(row) for row in rows]


def add(
    connection: Connection, shop_id: int, login: str, name: str, role: Role, password_hash: str, now: datetime
) -> int:
    """A new account; its id."""
    values = {"shop_id": shop_id, "login": login, "name": name, "role": role, "password_hash": password_hash}
    return rows.add(connection, staff, **values, is_active=True, created_at=now)


def set_hash(connection: Connection, staff_id: int, password_hash: str) -> None:
    """Keep a new password's hash."""
    connection.execute(update(staff).where(staff.c.id == staff_id).values(password_hash=password_hash))


def set_active(connection: Connection, staff_id: int, is_active: bool) -> None:
    """Open or close an account."""
    connection.execute(update(staff).where(staff.c.id == staff_id).values(is_active=is_active))


def count_active_owners(connection: Connection, shop_id: int) -> int:
    """How many owners can sign in."""
    query = select(func.count()).where(staff.c.shop_id == shop_id, staff.c.role == "owner", staff.c.is_active)
    return connection.scalar(query) or 0


# Sessions -------------------------------------------------------------------------------------------------------


def begin_session(connection: Connection, of: StaffMember, token_hash: str, now: datetime) -> None:
    """Keep a session by its token's hash."""
    values = {"shop_id": of.shop_id, "staff_id": of.id, "token_hash": token_hash, "created_at": now, "seen_at": now}
    rows.add(connection, staff_sessions, **values)


def standing_session(connection: Connection, token_hash: str) -> tuple[StaffMember, StaffSession] | None:
    """The session that has not been ended, and whose it is; None also where the account is closed."""
    query = (
        select(*_MEMBER, staff_sessions.c.id.label("session"), staff_sessions.c.created_at, staff_sessions.c.seen_at)
        .join(staff_sessions, staff_sessions.c.staff_id == staff.c.id)
        .where(staff_sessions.c.token_hash == token_hash, staff_sessions.c.ended_at.is_(None), staff.c.is_active)
    )
    row = connection.execute(query).one_or_none()
    return None if row is None else (_member(row), StaffSession(row.session, row.created_at, row.seen_at))


def see_session(connection: Connection, session_id: int, now: datetime) -> None:
    """Write down that the session is in use."""
    connection.execute(update(staff_sessions).where(staff_sessions.c.id == session_id).values(seen_at=now))


def shift_sessions(connection: Connection, by: timedelta) -> None:
    """The clock is moved for a demonstration: to whoever is signed in no time goes by."""
    query = select(staff_sessions.c.id, staff_sessions.c.created_at, staff_sessions.c.seen_at).where(
        staff_sessions.c.ended_at.is_(None)
    )
    for row in connection.execute(query).all():
        rows.change(connection, staff_sessions, row.id, created_at=row.created_at + by, seen_at=row.seen_at + by)


def end_session(connection: Connection, token_hash: str, now: datetime) -> None:
    """End one session."""
    query = update(staff_sessions).where(staff_sessions.c.token_hash == token_hash, staff_sessions.c.ended_at.is_(None))
    connection.execute(query.values(ended_at=now))


def end_sessions(connection: Connection, staff_id: int, now: datetime) -> None:
    """End every session of a member."""
    query = update(staff_sessions).where(staff_sessions.c.staff_id == staff_id, staff_sessions.c.ended_at.is_(None))
    connection.execute(query.values(ended_at=now))


def sessions_of(connection: Connection, staff_id: int) -> Sequence[StaffSession]:
    """The sessions that were not ended, newest first."""
    query = (
        select(staff_sessions.c.id, staff_sessions.c.created_at, staff_sessions.c.seen_at)
        .where(staff_sessions.c.staff_id == staff_id, staff_sessions.c.ended_at.is_(None))
        .order_by(staff_sessions.c.created_at.desc(), staff_sessions.c.id.desc())
    )
    return [StaffSession(row.id, row.created_at, row.seen_at) for row in connection.execute(query)]


# Failed tries ---------------------------------------------------------------------------------------------------


def count_try(
    connection: Connection, shop_id: int, login: str, address: str, now: datetime, since: datetime, limit: int
) -> int | None:
    """Write down a try before its password is looked at; its id, or None where there were more than `limit`.

    The shop's row is locked, so that tries at the same moment count each other (SQLite has one writer anyway).
    """
    connection.execute(select(shops.c.id).where(shops.c.id == shop_id).with_for_update())
    values = {"shop_id": shop_id, "login": login, "address": address, "at": now}
    this_try = rows.add(connection, sign_in_failures, **values)
    if _most_failures(connection, shop_id, login, address, since) <= limit:
        return this_try
    forget_failure(connection, this_try)
    return None


def _most_failures(connection: Connection, shop_id: int, login: str, address: str, since: datetime) -> int:
    """The tries since then for this login or from this address, whichever are more."""
    of_login = (sign_in_failures.c.shop_id == shop_id) & (sign_in_failures.c.login == login)
    of_address = sign_in_failures.c.address == address
    counts = [
        connection.scalar(select(func.count()).where(which, sign_in_failures.c.at > since))
        for which in (of_login, of_address)
    ]
    return max(count or 0 for count in counts)


def forget_failure(connection: Connection, failure_id: int) -> None:
    """The try was none: it was right, or never looked at."""
    connection.execute(delete(sign_in_failures).where(sign_in_failures.c.id == failure_id))


def forget_failures_of(connection: Connection, shop_id: int, login: str) -> None:
    """The right password was given: the account's failures no longer count."""
    which = (sign_in_failures.c.shop_id == shop_id) & (sign_in_failures.c.login == login)
    connection.execute(delete(sign_in_failures).where(which))


def forget_old(connection: Connection, before: datetime) -> None:
    """Failures and ended sessions of long ago."""
    connection.execute(delete(sign_in_failures).where(sign_in_failures.c.at < before))
    ended = or_(staff_sessions.c.ended_at < before, staff_sessions.c.created_at < before)
    connection.execute(delete(staff_sessions).where(ended))


def alert_phone(connection: Connection, shop_id: int, staff_id: int) -> str | None:
    """The number to which alerts for this member are texted; None where they did not agree to it or have left."""
    query = select(staff.c.phone).where(
        staff.c.shop_id == shop_id, staff.c.id == staff_id, staff.c.takes_alert_texts, staff.c.is_active
    )
    return cast("str | None", connection.scalar(query))


def set_alert_phone(connection: Connection, staff_id: int, phone: str | None) -> None:
    """The member agrees to be texted about alerts at this number; None takes it back."""
    values = {"phone": phone, "takes_alert_texts": phone is not None}
    connection.execute(update(staff).where(staff.c.id == staff_id).values(**values))
