"""Move the shop from SQLite to an empty PostgreSQL database while its queue lives.

1. Refused where this database is not the shop, where the target holds anything, or where something does not fit.
2. It is written that the shop moves: from then on nothing is put in flight, and what is in flight has until the end of
   a lease to end. If the process dies, the lease ends, and this database sends as before.
3. In one transaction here, which keeps every other writer waiting: what is claimed is planned again, what is still in
   flight is unknown. In one transaction there: the tables, every row, read back and compared; then it says that a move
   arrives. If the process dies, nothing has changed here; what may be there sends nothing, and the next move empties
   it.
4. This database says that it was moved and refuses every write from then on, so that a process that knows nothing of
   the move keeps and sends nothing.
5. The new one says that it is the shop. If the process dies before, none of both sends until the move is run again,
   which then only does this.

If two move at once, the lease lets one of them.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from datetime import datetime, timedelta

from followup.points import reached
from followup.storage import installation, machine, moving, schema, shops
from followup.storage.installation import Standing
from followup.storage.moving import MovedTable
from followup.storage.store import Connection, Store, make_engine

DID = "moved the shop to this database"
# Longer than a call to the provider may take.
_LEASE_LASTS = timedelta(seconds=45)
_LOOK_EVERY_SECONDS = 0.2
# As after any call of which nobody knows how it ended.
_FIRST_LOOK = timedelta(seconds=30)


class MoveRefused(RuntimeError):
    """The database cannot be moved so."""


@dataclass(frozen=True)
class Moved:
    """What moved: each table, and how many texts are looked up because they were in flight. No tables: an earlier move
    had brought them, and what was left of it is done now."""

    tables: tuple[MovedTable, ...] = ()
    in_doubt: int = 0


@dataclass(frozen=True)
class _Task:
    source: Store
    target: Store
    code: str
    now: datetime
    who: str
    told: Callable[[str], object]


def move_database(
    source: Store, url: str, now: datetime, who: str, told: Callable[[str], object], wait: Callable[[float], object]
) -> Moved:
    """Move it to the database of that address. `told` hears how far it is, `wait` waits for seconds.

    Raises MoveRefused; then this database is the shop as before.
    """
    target = Store(make_engine(url))
    try:
        if source.engine.dialect.name != "sqlite" or target.engine.dialect.name != "postgresql":
            raise MoveRefused("A shop moves from SQLite to PostgreSQL (postgresql+psycopg://...).")
        task = _Task(source, target, installation.new_code(), now, who, told)
        with source.read() as connection:
            before = installation.standing(connection)
        if before.state == "moved":
            _finish(task, before)
            return Moved()
        _begin(task, before)
        try:
            _let_calls_end(task, wait)
            return _move(task)
        finally:
            with source.write() as connection:
                machine.give_back_lease(connection, installation.MOVE_LEASE, task.code)
    finally:
        target.close()


def _begin(task: _Task, before: Standing) -> None:
    if before.state not in ("new", "here", "moving"):
        raise MoveRefused("This database is not the shop: see `followup doctor`.")
    with task.target.read() as connection:
        _refuse_foreign(moving.standing_there(connection), before)
    with task.source.write() as connection:
        unfit = moving.does_not_fit(connection)
        if unfit:
            raise MoveRefused("PostgreSQL does not take this: " + "; ".join(unfit))
        if machine.take_lease(connection, installation.MOVE_LEASE, task.code, _LEASE_LASTS) is None:
            raise MoveRefused("Another process is moving this database, or was a minute ago.")
        installation.move_in(connection, task.now)
        installation.say(connection, "moving", task.now, task.who, other=task.code)
    reached("move begun")


def _refuse_foreign(there: Standing | None, here: Standing) -> None:
    is_ours = there is not None and there.state == "arriving" and there.other == here.code
    if there is not None and not is_ours:
        raise MoveRefused("The target is not empty: make a new database and name that.")


def _let_calls_end(task: _Task, wait: Callable[[float], object]) -> None:
    """Whoever is handing a text over may keep what came of it, so that fewer are in doubt."""
    is_told = False
    while True:
        with task.source.read() as connection:
            under_way = moving.texts_under_way(connection)
            is_in_time = machine.is_leased(connection, installation.MOVE_LEASE)
        if not under_way or not is_in_time:
            return
        if not is_told:
            task.told(f"waiting until {under_way} texts that are being handed over have ended")
            is_told = True
        wait(_LOOK_EVERY_SECONDS)


def _move(task: _Task) -> Moved:
    with task.source.write() as connection:
        here = installation.row(connection)
        if here is None or here["state"] != "moving" or here["other"] != task.code:
            raise MoveRefused("Somebody said meanwhile that the shop stays here, or began another move.")
        in_doubt = moving.settle_under_way(connection, task.now + _FIRST_LOOK)
        compared = _bring(task, connection, here["code"])
        moving.close(connection, task.now, task.who, task.code)
        reached("closing written")
    reached("closed")
    _arrive(task)
    return Moved(tuple(compared), in_doubt)


def _bring(task: _Task, source: Connection, code: str) -> list[MovedTable]:
    """Fill the target, in one transaction of its own."""
    with task.target.write() as connection:
        there = moving.standing_there(connection)
        if there is not None:
            _refuse_foreign(there, Standing("moving", code))
            moving.empty(connection)
        schema.upgrade_within(connection)
        reached("tables made")
        compared = moving.copy(source, connection, task.told)
        other = [one.name for one in compared if not one.is_same]
        if other:
            raise MoveRefused(f"What was read back is not what was written: {', '.join(other)}. Nothing was moved.")
        installation.say(connection, "arriving", task.now, task.who, code=task.code, other=code)
        reached("rows copied")
    reached("target kept")
    return compared


def _finish(task: _Task, before: Standing) -> None:
    """An earlier move died between its last two steps, or was whole."""
    with task.target.read() as connection:
        there = moving.standing_there(connection)
    if there is None or there.code != before.other:
        raise MoveRefused("This database was moved to another one than that.")
    if there.state == "arriving":
        _arrive(task)


def _arrive(task: _Task) -> None:
    with task.target.write() as connection:
        place = installation.place(connection)
        installation.say(connection, "here", task.now, task.who, place=place)
        for shop_id, _ in shops.shop_codes(connection):
            shops.note(connection, shop_id, task.now, task.who, DID, "", None, None)
        reached("arrival written")
    reached("arrived")
