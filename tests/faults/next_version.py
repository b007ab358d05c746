"""A version after this one, as far as its migration goes: what is added and what SQLite makes whole tables anew for."""

from __future__ import annotations

import os
import shutil
from pathlib import Path

from followup.storage import schema

REVISION = "9999"
_WHERE = "NEXT_VERSION"
_MIGRATION = '''"""What a later version may add: columns that may be missing or have a default, tables, indexes."""

import sqlalchemy as sa
from alembic import op

revision, down_revision, branch_labels, depends_on = "9999", {before!r}, None, None


def upgrade():
    for name in ("texts", "inbound", "phones", "staff_sessions"):
        with op.batch_alter_table(name) as table:
            table.add_column(sa.Column("later", sa.Integer(), server_default="0", nullable=False))
            table.create_index("ix_" + name + "_later", ["later"])
    op.add_column("persons", sa.Column("later", sa.String(200), nullable=True))
    op.create_table("later", sa.Column("id", sa.Integer(), primary_key=True),
                    sa.Column("text_id", sa.Integer(), sa.ForeignKey("texts.id")))


def downgrade():
    op.drop_table("later")
    op.drop_column("persons", "later")
    for name in ("texts", "inbound", "phones", "staff_sessions"):
        with op.batch_alter_table(name) as table:
            table.drop_index("ix_" + name + "_later")
            table.drop_column("later")
'''


def write(folder: Path) -> dict[str, str]:
    """Write it beside this version's own migrations into that folder; what a process of it has in its environment."""
    there = folder / "migrations"
    shutil.copytree(schema._HERE, there, ignore=shutil.ignore_patterns("__pycache__"))
    head = schema._scripts().get_current_head()
    (there / "versions" / "9999_later.py").write_text(_MIGRATION.format(before=head), encoding="utf-8")
    return {_WHERE: str(there)}


def install() -> None:
    """Make the process that calls it one of that version."""
    schema._HERE = Path(os.environ[_WHERE])
