"""Where this database is the shop. A copy of it finds itself in another place and sends nothing until told to.

The place of a SQLite database is its file (path, inode, machine), that of a PostgreSQL database the server's own
identifier, the database's number in it and the server's line of history, which a restored server leaves. Nobody has to
mark a copy, however it was made; backups of our own are marked all the same, so that one that is laid over the old
file is known too.

A database that was moved away refuses every write by itself, so that also a process that knows nothing of the move
keeps nothing there that would be lost.
"""

from __future__ import annotations

import hashlib
import secrets
from dataclasses import dataclass
from datetime import datetime, timedelta
from pathlib import Path
from typing import Any

from sqlalchemy import Connection, inspect, select, text, update
from sqlalchemy.exc import DBAPIError

from followup.storage import machine, rows, tables
from followup.storage.rows import Row

SAYS_MOVED = "this database was moved away"
MOVE_LEASE = "move"
HELD_BECAUSE = "the shop goes on from a copy: it may have gone out before"
# What becomes due within a copy's gap is planned where the shop was before, and by the copy's first rounds.
_PLANS_ANEW_FOR = timedelta(days=1)
# Alerts are told again until somebody answers; silence would be worse than twice.
_MAY_BE_TWICE = ("alert",)
_MACHINE = Path("/etc/machine-id")
_ROW = select(tables.installation).where(tables.installation.c.id == 1)


@dataclass(frozen=True)
class Standing:
    """How this database stands. `state`: new, here, copy, elsewhere (a copy that nobody marked), moving, moved,
    arriving. `gap_from_at`: since when a copy knows nothing of the shop."""

    state: str
    code: str = ""
    other: str = ""
    at: datetime | None = None
    gap_from_at: datetime | None = None

    @property
    def sends(self) -> bool:
        """True where texts may leave from it."""
        return self.state == "here"


def standing(connection: Connection) -> Standing:
    """How this database stands here and now."""
    found = row(connection)
    if found is None:
        return Standing("new")
    state, gap = _state(connection, found), found["gap_from_at"]
    if state in ("here", "moving") and found["place"] != place(connection):
        state, gap = "elsewhere", machine.last_beats(connection).get("send")
    return Standing(state, found["code"], found["other"] or "", found["at"], gap)


def move_in(connection: Connection, now: datetime) -> Standing:
    """The same; a database of which nobody ever said where it is, is the shop here from now on."""
    found = standing(connection)
    if found.state != "new":
        return found
    values = {"code": new_code(), "state": "here", "place": place(connection), "at": now, "who": "its first process"}
    rows.add_new(connection, tables.installation, id=1, **values)
    return standing(connection)


def sends(connection: Connection) -> bool:
    """Whether texts may leave, by its row alone: for who asked `move_in` a moment ago."""
    found = row(connection)
    return found is not None and _state(connection, found) == "here"


def is_there(connection: Connection) -> bool:
    """True where the database has the table of where it is: an empty one, or one of an early version, has not."""
    return bool(inspect(connection).has_table(tables.installation.name))


def is_closed(connection: Connection) -> bool:
    """True where this database was moved away, so that not even a migration may change it."""
    found = row(connection) if is_there(connection) else None
    return found is not None and found["state"] == "moved"


def plans_anew(connection: Connection, now: datetime) -> bool:
    """Whether what is planned now may have been planned, and have left, where the shop was before: it goes on from a
    copy since less than a day."""
    found = standing(connection)
    is_copy = found.state == "here" and found.gap_from_at is not None and found.at is not None
    return is_copy and found.at is not None and found.at <= now < found.at + _PLANS_ANEW_FOR


def say(connection: Connection, state: str, now: datetime, who: str, **values: Any) -> None:
    """Write how this database stands from now on."""
    table, news = tables.installation, {"state": state, "at": now, "who": who, **values}
    if not connection.execute(update(table).where(table.c.id == 1).values(**news)).rowcount:
        connection.execute(table.insert().values(id=1, **{"code": new_code(), **news}))


def take_over(connection: Connection, now: datetime, who: str) -> int:
    """This is the shop now; how many texts are held, because they may have left from where it was before.

    What was planned for a moment that has passed may have gone out there since the copy was made: nobody but a person
    sends it again. After a move that was broken off nothing left anywhere, so nothing is held.
    """
    before = standing(connection)
    if before.state == "moved":
        open_again(connection)
    news: dict[str, Any] = {"place": place(connection), "other": None, "gap_from_at": before.gap_from_at}
    if before.state in ("copy", "elsewhere"):
        news["code"] = new_code()
    say(connection, "here", now, who, **news)
    if before.state in ("new", "here", "moving"):
        return 0
    table = tables.texts
    done = connection.execute(
        update(table)
        .where(table.c.state.in_(("planned", "claimed")), table.c.due_at <= now, table.c.kind.not_in(_MAY_BE_TWICE))
        .values(state="held", state_because=HELD_BECAUSE, claimed_by=None, claimed_until=None)
    )
    return done.rowcount


def place(connection: Connection) -> str:
    """Where this database lies, as a word that no other place has."""
    return hashlib.sha256(repr(_told_place(connection)).encode()).hexdigest()


def new_code() -> str:
    """A name for an installation that no other has."""
    return secrets.token_hex(8)


def close_for_ever(connection: Connection) -> None:
    """Let this SQLite database refuse every write but the word of who takes it over again."""
    for name in _guarded():
        for what in ("INSERT", "UPDATE", "DELETE"):
            raises = f"BEGIN SELECT RAISE(ABORT, '{SAYS_MOVED}'); END"
            connection.exec_driver_sql(
                f"CREATE TRIGGER IF NOT EXISTS moved_{name}_{what.lower()} BEFORE {what} ON {name} {raises}"
            )


def open_again(connection: Connection) -> None:
    """The other way."""
    for name in _guarded():
        for what in ("insert", "update", "delete"):
            connection.exec_driver_sql(f"DROP TRIGGER IF EXISTS moved_{name}_{what}")


def _guarded() -> list[str]:
    # Leases are the processes' own: those that still run stand down by them.
    free = (tables.installation, tables.leases)
    return [one.name for one in tables.metadata.sorted_tables if one not in free]


def row(connection: Connection) -> Row | None:
    """What is written of where it is."""
    return rows.first(connection, _ROW)


def _state(connection: Connection, found: Row) -> str:
    """A move counts for as long as its lease: whoever began it and died must not silence the shop."""
    is_over = found["state"] == "moving" and not machine.is_leased(connection, MOVE_LEASE)
    return "here" if is_over else str(found["state"])


def _told_place(connection: Connection) -> tuple[object, ...]:
    if connection.dialect.name != "sqlite":
        return _place_of_server(connection)
    file = connection.engine.url.database
    if file in (None, "", ":memory:"):
        return ("memory",)
    path = Path(str(file)).resolve()
    machine_id = _MACHINE.read_text(encoding="utf-8").strip() if _MACHINE.is_file() else ""
    return (str(path), path.stat().st_ino, machine_id)


def _place_of_server(connection: Connection) -> tuple[object, ...]:
    number = connection.execute(text("SELECT oid FROM pg_database WHERE datname = current_database()")).scalar_one()
    try:
        with connection.begin_nested():
            server = text("SELECT system_identifier, timeline_id FROM pg_control_system(), pg_control_checkpoint()")
            return (number, *connection.execute(server).one())
    except DBAPIError:
        # A server that does not tell its identifier: its address must do.
        url = connection.engine.url
        return (number, url.host, url.port, url.database)
