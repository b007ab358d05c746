"""Copies of a database while it is in use: whole, for the owner alone, and marked, so that none of them sends a text.

SQLite is copied by its own backup interface: a copy of the file would miss what stands in its log. PostgreSQL is
copied by its own program. The copy takes its name only once it is whole.
"""

from __future__ import annotations

import os
import shutil
import sqlite3
import subprocess
from contextlib import closing, suppress
from datetime import datetime
from pathlib import Path

from sqlalchemy import Engine

from followup.storage import installation, rows, tables
from followup.storage.store import Store, make_engine

_PROGRAM = "pg_dump"


class BackupFailed(RuntimeError):
    """The backup was not written."""


def backup(store: Store, file: Path, now: datetime) -> str:
    """Write a copy into a file that does not exist yet, mode 0600; how it is taken back, in a sentence.

    Raises BackupFailed; then no file is left.
    """
    if file.exists():
        raise BackupFailed(f"{file} exists already: name a new file.")
    # As long as it is not whole it has another name, so that nobody takes it for a backup.
    part = file.with_name(f".{file.name}.{os.getpid()}.part")
    try:
        part.touch(mode=0o600, exist_ok=False)
        is_sqlite = store.engine.dialect.name == "sqlite"
        if is_sqlite:
            _copy_sqlite(store.engine, part, now)
        else:
            _dump(store.engine, part)
        with part.open("rb") as written:
            os.fsync(written.fileno())
        os.link(part, file)
    except (OSError, sqlite3.Error) as failed:
        raise BackupFailed(f"{file} was not written: {failed}") from failed
    finally:
        for ending in ("", "-wal", "-shm"):
            with suppress(FileNotFoundError):
                part.with_name(part.name + ending).unlink()
    if is_sqlite:
        return "To go back: stop every process, put the file where the database was, then `followup db here`."
    return f"To go back: createdb NEW, pg_restore --no-owner --dbname=NEW {file.name}, then `followup db here`."


def _copy_sqlite(engine: Engine, part: Path, now: datetime) -> None:
    database = engine.url.database
    if not database:
        raise BackupFailed("A database in memory has no backup.")
    with closing(sqlite3.connect(database)) as source, closing(sqlite3.connect(part)) as copy:
        source.backup(copy)
    _mark(part, now)
    with closing(sqlite3.connect(part)) as copy:
        told = [one[0] for one in copy.execute("PRAGMA quick_check")]
        # One file, whole in itself, until it is opened as a shop again.
        copy.execute("PRAGMA journal_mode=DELETE")
    if told != ["ok"]:
        raise BackupFailed(f"The copy is not sound ({told[0]}): look after the disk.")


def _mark(part: Path, now: datetime) -> None:
    """A copy that is laid over the old file lies in the old place; so it says itself that it is one."""
    copied = make_engine(f"sqlite+pysqlite:///{part}")
    try:
        with copied.begin() as connection:
            before = rows.first(connection, tables.installation.select())
            if before is None or before["state"] != "copy":
                installation.say(connection, "copy", now, "a backup", place=None, gap_from_at=now)
    finally:
        copied.dispose()


def _dump(engine: Engine, part: Path) -> None:
    program = shutil.which(_PROGRAM)
    if program is None:
        raise BackupFailed(
            f"PostgreSQL is copied by its own program, and there is no {_PROGRAM} here: install the client of your "
            "server's version (Debian: postgresql-client), or make the backup on the server."
        )
    url = engine.url
    given = {**url.normalized_query}
    named = {
        "PGHOST": url.host or "".join(given.get("host", ())), "PGDATABASE": url.database, "PGUSER": url.username,
        "PGPORT": str(url.port or "".join(given.get("port", ())) or ""), "PGPASSWORD": url.password,
    }  # fmt: skip
    environment = {**os.environ, **{name: str(value) for name, value in named.items() if value}}
    command = [program, "--format=custom", "--no-owner", f"--file={part}"]
    done = subprocess.run(command, env=environment, stdin=subprocess.DEVNULL, capture_output=True, check=False)
    if done.returncode:
        raise BackupFailed(done.stderr.decode(errors="replace").strip()[-500:])
