"""Inspection forms that are being filled: what was typed so far, whose it is, and which page wrote it last."""

from __future__ import annotations

from datetime import datetime
from typing import Any

from sqlalchemy import Connection, Select, delete, select, update

from followup.storage import rows, tables
from followup.storage.rows import Row


def load_draft(connection: Connection, shop_id: int, draft_id: int) -> Row | None:
    """One draft of the shop with its member's name (`who`), or None."""
    return rows.first(connection, _with_names(shop_id).where(tables.drafts.c.id == draft_id))


def draft_about(connection: Connection, shop_id: int, staff_id: int, about: str) -> Row | None:
    """A member's own draft about a thing, or None."""
    table = tables.drafts
    query = _with_names(shop_id).where(table.c.staff_id == staff_id, table.c.about == about)
    return rows.first(connection, query)


def drafts_of_shop(connection: Connection, shop_id: int, since: datetime) -> list[Row]:
    """Every draft that was kept since then, the newest first."""
    table = tables.drafts
    query = _with_names(shop_id).where(table.c.kept_at >= since)
    return rows.every(connection, query.order_by(table.c.kept_at.desc(), table.c.id.desc()))


def add_draft(connection: Connection, **values: Any) -> int | None:
    """Keep a new draft; None where the member has one about the same thing."""
    return rows.add_new(connection, tables.drafts, **values)


def change_draft(connection: Connection, seen: Row, **values: Any) -> bool:
    """Change a draft that still stands as it was seen, by its revision and member; False where it does not."""
    table = tables.drafts
    stands = (table.c.revision == seen["revision"], table.c.staff_id == seen["staff_id"])
    done = connection.execute(
        update(table).where(table.c.id == seen["id"], *stands).values(revision=seen["revision"] + 1, **values)
    )
    return done.rowcount == 1


def drop_draft(connection: Connection, seen: Row) -> bool:
    """Throw a draft away that still stands as it was seen; False where it does not."""
    table = tables.drafts
    stands = (table.c.revision == seen["revision"], table.c.staff_id == seen["staff_id"])
    return connection.execute(delete(table).where(table.c.id == seen["id"], *stands)).rowcount == 1


def forget_kept(connection: Connection, shop_id: int, code: str, part: str) -> None:
    """The inspection is kept: its drafts are no longer needed."""
    table = tables.drafts
    connection.execute(delete(table).where(table.c.shop_id == shop_id, table.c.code == code, table.c.part == part))


def are_kept_before(connection: Connection, shop_id: int, before: datetime) -> bool:
    """Whether something was last kept before then."""
    table = tables.drafts
    query = select(table.c.id).where(table.c.shop_id == shop_id, table.c.kept_at < before)
    return rows.first(connection, query.limit(1)) is not None


def forget_old(connection: Connection, shop_id: int, before: datetime) -> int:
    """Throw away what was last kept before then; how many."""
    table = tables.drafts
    return connection.execute(delete(table).where(table.c.shop_id == shop_id, table.c.kept_at < before)).rowcount


def forget_car(connection: Connection, vehicle_id: int) -> None:
    """Throw away what is being filled about a car whose customer is deleted."""
    connection.execute(delete(tables.drafts).where(tables.drafts.c.vehicle_id == vehicle_id))


def forget_typed(connection: Connection, shop_id: int, name: str | None, numbers: set[str]) -> None:
    """Throw away drafts of cars that were never here into which this name or one of these numbers was typed."""
    table = tables.drafts
    query = select(table.c.id, table.c.fields).where(table.c.shop_id == shop_id, table.c.vehicle_id.is_(None))
    for row in rows.every(connection, query):
        typed_name, typed_number = (_plain(row["fields"].get(f"customer.{one}", "")) for one in ("name", "phone"))
        # A number may be typed without its country.
        is_theirs = typed_number and any(_plain(one).endswith(typed_number) for one in numbers)
        if is_theirs or (typed_name and typed_name == _plain(name or "")):
            connection.execute(delete(table).where(table.c.id == row["id"]))


def _plain(typed: str) -> str:
    """A name or number without spaces, marks and capitals."""
    return "".join(sign for sign in typed.casefold() if sign.isalnum())


def _with_names(shop_id: int) -> Select[Any]:
    table = tables.drafts
    joined = table.join(tables.staff, tables.staff.c.id == table.c.staff_id)
    return select(table, tables.staff.c.name.label("who")).select_from(joined).where(table.c.shop_id == shop_id)
