"""Which week invites are paced into: a night's placing is a run, and counts once it has ended.

A run that was begun and not ended (its process died) is begun anew under the same key: its rows go, and all are made
again. So long the run before it counts.
"""

from __future__ import annotations

from collections.abc import Collection, Iterable, Sequence
from datetime import date, datetime, timedelta
from typing import Any

from sqlalchemy import Connection, delete, desc, func, insert, select, update

from followup.core.planning.paced import PACED_REASON
from followup.core.planning.pacing.message import Message
from followup.core.planning.pacing.pace import why_it_waits
from followup.core.planning.pacing.room import Room
from followup.core.planning.pacing.weeks import POSTPONED
from followup.storage import rows, tables
from followup.storage.rows import Row

# Where no night has placed anything for so long, something is wrong, and nothing waits for what it once said.
COUNTS_FOR = timedelta(days=3)


def begin_run(connection: Connection, shop_id: int, on: date, rules_version: int, now: datetime) -> Row | None:
    """The night's run, begun now or begun anew; None where it has ended already."""
    table = tables.pacing_runs
    rows.add_new(connection, table, shop_id=shop_id, on=on, rules_version=rules_version, at=now)
    query = select(table).where(
        table.c.shop_id == shop_id, table.c.on == on, table.c.rules_version == rules_version, table.c.ended_at.is_(None)
    )
    run = rows.first(connection, query)
    if run is not None:
        connection.execute(delete(tables.paced_invites).where(tables.paced_invites.c.run_id == run["id"]))
    return run


def has_ended(connection: Connection, shop_id: int, on: date, rules_version: int) -> bool:
    """Whether that night's run has ended."""
    table = tables.pacing_runs
    query = select(table.c.id).where(
        table.c.shop_id == shop_id, table.c.on == on, table.c.rules_version == rules_version,
        table.c.ended_at.is_not(None),
    )  # fmt: skip
    return rows.first(connection, query) is not None


def row_of(
    run: Row, message: Message, week: int, full: Sequence[str], room: Room, vehicle_id: int, now: datetime
) -> dict[str, Any]:
    """A placed invite as its row."""
    phone_id, _, reason = message.key
    return {
        "shop_id": run["shop_id"], "run_id": run["id"], "phone_id": phone_id, "vehicle_id": vehicle_id,
        "reason": reason, "first_on": room.begin_of(message.first_week),
        "begins_on": None if week == POSTPONED else room.begin_of(week),
        "says": why_it_waits(room, week, full) if week > message.first_week else None,
        "is_legal": message.is_legal, "chance": message.chance, "hours": dict(message.hours), "made_at": now,
    }  # fmt: skip


def keep(connection: Connection, found: Iterable[dict[str, Any]]) -> None:
    """Keep placed invites; one that the run placed before is replaced."""
    table = tables.paced_invites
    for row in found:
        mine = [table.c[name] == row[name] for name in ("run_id", "phone_id", "vehicle_id", "reason")]
        connection.execute(delete(table).where(*mine))
        connection.execute(insert(table).values(**row))


def keep_new(connection: Connection, found: list[dict[str, Any]]) -> None:
    """Keep what a run places for the first time."""
    if found:
        connection.execute(insert(tables.paced_invites), found)


def end_run(connection: Connection, run: Row, now: datetime, how: str, body: dict[str, Any]) -> bool:
    """Let the run count from now on; False where another process ended it."""
    table = tables.pacing_runs
    ended = update(table).where(table.c.id == run["id"], table.c.ended_at.is_(None))
    if connection.execute(ended.values(ended_at=now, how=how, body=body)).rowcount != 1:
        return False
    older = tables.paced_invites
    connection.execute(delete(older).where(older.c.shop_id == run["shop_id"], older.c.run_id < run["id"]))
    return True


def current_run(connection: Connection, shop_id: int, now: datetime) -> Row | None:
    """The run that counts; None before the first, and where the last is too long ago."""
    table = tables.pacing_runs
    query = select(table).where(table.c.shop_id == shop_id, table.c.ended_at.is_not(None))
    run = rows.first(connection, query.order_by(desc(table.c.id)).limit(1))
    return run if run is not None and run["ended_at"] > now - COUNTS_FOR else None


def placed_invites(
    connection: Connection, shop_id: int, now: datetime, phone_ids: Collection[int] | None = None
) -> dict[tuple[int, int], Row]:
    """What the run that counts has placed, by phone and car: of the whole shop, or of these phones."""
    run = current_run(connection, shop_id, now)
    if run is None:
        return {}
    table = tables.paced_invites
    query = select(table).where(table.c.run_id == run["id"], table.c.reason == PACED_REASON)
    if phone_ids is not None:
        query = query.where(table.c.phone_id.in_(phone_ids))
    return {(row["phone_id"], row["vehicle_id"]): row for row in rows.every(connection, query)}


def still_placed(connection: Connection, shop_id: int, now: datetime) -> list[Row]:
    """The same of the whole shop, without those whose car was forecast anew since: they are news."""
    placed, made = placed_invites(connection, shop_id, now), tables.due_windows
    cars = select(tables.paced_invites.c.vehicle_id).where(tables.paced_invites.c.shop_id == shop_id)
    query = select(made.c.vehicle_id, func.max(made.c.made_at)).group_by(made.c.vehicle_id)
    query = query.where(made.c.vehicle_id.in_(cars), made.c.is_current.is_(True))
    made_at: dict[int, datetime] = {car: at for car, at in connection.execute(query)}  # noqa: C416  # rows, not pairs
    return [row for (_, car_id), row in placed.items() if car_id not in made_at or made_at[car_id] <= row["made_at"]]
