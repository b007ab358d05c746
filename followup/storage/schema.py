"""Makes the database what the program needs: upgrades it by migrations and says whether it is up to date.

A migration is one transaction: a process that dies in it leaves the version that was there. Processes of the earlier
version may go on meanwhile: migrations add, and what they add has a default or may be missing. A process finds a
database of a later version as it is and leaves it so.
"""

from __future__ import annotations

import threading
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Any

from sqlalchemy import Connection, Engine, inspect, text
from sqlalchemy.exc import OperationalError

from followup.points import reached
from followup.storage import installation

_HERE = Path(__file__).parent / "migrations"
# One process at a time migrates a PostgreSQL database.
_TURN = "SELECT pg_advisory_xact_lock(hashtextextended('followup migrations', 0))"
# Shorter than PostgreSQL's own look for deadlocks (a second): whoever reads pages is never the one to be ended.
_WAIT_FOR_A_TABLE = "SET LOCAL lock_timeout = '400ms'"
_NOT_AVAILABLE = "55P03"
_TRIES = 60
_TRY_EVERY_SECONDS = 0.25


def _config(connection: Connection | None) -> Any:
    from alembic.config import Config

    config = Config()
    config.set_main_option("script_location", str(_HERE).replace("%", "%%"))
    config.attributes["connection"] = connection
    return config


def upgrade(engine: Engine) -> None:
    """Run every migration that the database has not seen, in one transaction; one that was moved away, or is of a later
    version, stays as it is."""
    if _is_done(engine):
        return
    for tried in range(_TRIES):
        try:
            with migrating(engine) as connection:
                if not installation.is_closed(connection) and _knows(connection):
                    upgrade_within(connection)
            reached("migrated")
            return
        except OperationalError as busy:
            if getattr(busy.orig, "sqlstate", None) != _NOT_AVAILABLE or tried == _TRIES - 1:
                raise
            threading.Event().wait(_TRY_EVERY_SECONDS)


def upgrade_within(connection: Connection) -> None:
    """The same within a transaction."""
    from alembic import command

    command.upgrade(_config(connection), "head")


@contextmanager
def migrating(engine: Engine) -> Iterator[Connection]:
    """A transaction in which tables may change. SQLite makes many a table anew: what refers to it is looked at when
    all is done, not while it is away."""
    with engine.connect() as connection:
        is_sqlite = connection.dialect.name == "sqlite"
        driver: Any = connection.connection.dbapi_connection
        try:
            if is_sqlite:
                # Without effect within a transaction.
                driver.execute("PRAGMA foreign_keys=OFF")
            with connection.begin():
                if not is_sqlite:
                    connection.execute(text(_TURN))
                    connection.execute(text(_WAIT_FOR_A_TABLE))
                yield connection
                if is_sqlite:
                    _refuse_dangling(connection)
        finally:
            if is_sqlite:
                driver.execute("PRAGMA foreign_keys=ON")


class Dangling(RuntimeError):
    """A migration would leave rows that refer to nothing: nothing was changed."""


def _refuse_dangling(connection: Connection) -> None:
    found = connection.exec_driver_sql("PRAGMA foreign_key_check").first()
    if found is not None:
        raise Dangling(f"{Dangling.__doc__} The first is in {found[0]}.")


def _is_done(engine: Engine) -> bool:
    """Asked without the right to write, so that a process that starts waits for nobody."""
    with engine.connect().execution_options(followup_reader=True) as connection:
        if _is_newest(connection):
            return True
        return not _knows(connection) or _present(connection) == _scripts().get_current_head()


def _is_newest(connection: Connection) -> bool:
    """Whether it stands at the newest migration, by its row and the files' names alone: to import what migrates, and to
    read every migration, takes as long as all else that a start needs."""
    if not inspect(connection).has_table("alembic_version"):
        return False
    newest = max(one.name for one in (_HERE / "versions").glob("[0-9]*_*.py")).partition("_")[0]
    return list(connection.execute(text("SELECT version_num FROM alembic_version")).scalars()) == [newest]


def _knows(connection: Connection) -> bool:
    """False where the database is of a version that is later than this program's."""
    present = _present(connection)
    return present is None or any(one.revision == present for one in _scripts().walk_revisions())


def _scripts() -> Any:
    from alembic.script import ScriptDirectory

    return ScriptDirectory.from_config(_config(None))


def _present(connection: Connection) -> str | None:
    from alembic.runtime.migration import MigrationContext

    return MigrationContext.configure(connection).get_current_revision()


def differences(connection: Connection) -> list[str]:
    """What the database has otherwise than the tables say; empty when all is well."""
    from alembic.autogenerate import compare_metadata
    from alembic.runtime.migration import MigrationContext

    from followup.storage.tables import metadata

    context = MigrationContext.configure(connection, opts={"compare_type": True})
    return [str(difference) for difference in compare_metadata(context, metadata)]


def is_up_to_date(engine: Engine) -> bool:
    """True where every migration has run."""
    with engine.connect() as connection:
        return bool(_present(connection) == _scripts().get_current_head())


def write_migration(engine: Engine, message: str, revision: str) -> None:
    """Write a migration file for what the tables have and the database lacks (for developers)."""
    from alembic import command

    with engine.begin() as connection:
        command.revision(_config(connection), message=message, rev_id=revision, autogenerate=True)
