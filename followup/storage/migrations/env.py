"""Alembic's entry point: runs the migrations on the connection that `schema.py` hands in."""

from __future__ import annotations

from typing import Any, Literal

from alembic import context

from followup.points import reached
from followup.storage.columns import UtcDateTime
from followup.storage.tables import metadata


def plain_instant(kind: str, column_type: Any, _context: Any) -> str | Literal[False]:
    """Migrations name the database's own type, so that they stay true when the program's class changes."""
    return "sa.DateTime(timezone=True)" if kind == "type" and isinstance(column_type, UtcDateTime) else False


connection = context.config.attributes["connection"]
context.configure(
    connection=connection,
    target_metadata=metadata,
    render_as_batch=True,
    compare_type=True,
    render_item=plain_instant,
    transaction_per_migration=False,
    on_version_apply=lambda **_about: reached("version written"),
)
with context.begin_transaction():
    context.run_migrations()
