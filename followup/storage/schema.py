"""Makes the database what the program needs: upgrades it by migrations and says whether it is up to date."""

from __future__ import annotations

from pathlib import Path
from typing import Any

from sqlalchemy import Connection, Engine

from followup.storage import installation

_HERE = Path(__file__).parent / "migrations"


def _config(connection: Connection | None) -> Any:
    from alembic.config import Config

    config = Config()
    config.set_main_option("script_location", str(_HERE).replace("%", "%%"))
    config.attributes["connection"] = connection
    return config


def upgrade(engine: Engine) -> None:
    """Run every migration that the database has not seen, in one transaction; one that was moved away stays."""
    with engine.begin() as connection:
        if not installation.is_closed(connection):
            upgrade_within(connection)


def upgrade_within(connection: Connection) -> None:
    """The same within a transaction."""
    from alembic import command

    command.upgrade(_config(connection), "head")


def differences(connection: Connection) -> list[str]:
    """What the database has otherwise than the tables say; empty when all is well."""
    from alembic.autogenerate import compare_metadata
    from alembic.runtime.migration import MigrationContext

    from followup.storage.tables import metadata

    context = MigrationContext.configure(connection, opts={"compare_type": True})
    return [str(difference) for difference in compare_metadata(context, metadata)]


def is_up_to_date(engine: Engine) -> bool:
    """True where every migration has run."""
    from alembic.runtime.migration import MigrationContext
    from alembic.script import ScriptDirectory

    with engine.connect() as connection:
        present = MigrationContext.configure(connection).get_current_revision()
    return present == ScriptDirectory.from_config(_config(None)).get_current_head()


def write_migration(engine: Engine, message: str, revision: str) -> None:
    """Write a migration file for what the tables have and the database lacks (for developers)."""
    from alembic import command

    with engine.begin() as connection:
        command.revision(_config(connection), message=message, rev_id=revision, autogenerate=True)
