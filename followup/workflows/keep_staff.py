"""Accounts of staff: who has one, adding one, closing and opening one.

Closing an account ends its sessions in the same transaction. The last owner cannot be closed: nobody could open it
again. Two owners who close each other at the same moment: the store's writers come one after the other, and the
second finds only one owner left.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from datetime import datetime

from followup import passwords
from followup.storage import shops, staff
from followup.storage.staff import Role, StaffMember
from followup.storage.store import Store

_LOGIN = re.compile(r"[a-z0-9][a-z0-9._-]{1,39}")
LONGEST_NAME = 80
NO_ACCOUNT = "There is no such account."


def staff_of(store: Store, shop_id: int) -> Sequence[StaffMember]:
    """Everybody who has or had an account in this shop, by name."""
    with store.read() as connection:
        return staff.of_shop(connection, shop_id)


def add_staff(
    store: Store, now: datetime, shop_id: int, login: str, name: str, role: Role, password: str, by: str
) -> dict[str, str]:
    """Make an account; else what is wrong, in words, by "login", "name" or "password". `by`: who makes it."""
    login, name = login.strip().lower(), name.strip()
    with store.read() as connection:
        shop = staff.shop_head(connection, shop_id)
    wrong = {"login": _why_no_login(login), "name": _why_no_name(name)}
    wrong["password"] = passwords.why_not(password, login, shop.name)
    if said := {field: why for field, why in wrong.items() if why}:
        return said
    hashed = passwords.hash_password(password)
    with store.write() as connection:
        if staff.with_login(connection, shop_id, login) is not None:
            return {"login": "Somebody has this sign-in name already."}
        staff.add(connection, shop_id, login, name, role, hashed, now)
        shops.note(connection, shop_id, now, by, "account made", login, after={"role": role})
    return {}


def set_active(store: Store, now: datetime, shop_id: int, staff_id: int, is_active: bool, by: str) -> str | None:
    """Open or close an account of this shop; else why not, in words. `by`: who does it."""
    with store.write() as connection:
        member = staff.member(connection, shop_id, staff_id)
        if member is None:
            return NO_ACCOUNT
        if not is_active and member.role == "owner" and staff.count_active_owners(connection, shop_id) <= 1:
            return "This is the only owner who can sign in. Add another owner first."
        staff.set_active(connection, staff_id, is_active)
        if not is_active:
            staff.end_sessions(connection, staff_id, now)
        shops.note(connection, shop_id, now, by, "account opened" if is_active else "account closed", member.login)
    return None


def _why_no_login(login: str) -> str | None:
    if _LOGIN.fullmatch(login):
        return None
    return "Use 2 to 40 small letters without accents, digits, dots or dashes; begin with a letter or a digit."


def _why_no_name(name: str) -> str | None:
    if 1 <= len(name) <= LONGEST_NAME and name.isprintable():
        return None
    return f"Give the name as it should stand on the pages, at most {LONGEST_NAME} characters."
