"""Rows of deleted customers and of their phones stay as nobody's."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0015"
down_revision = "0014"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Bring the database to this version."""
    for table in ("persons", "phones"):
        op.add_column(table, sa.Column("forgotten_at", sa.DateTime(timezone=True), nullable=True))


def downgrade() -> None:
    """Take this version back."""
    for table in ("persons", "phones"):
        op.drop_column(table, "forgotten_at")
