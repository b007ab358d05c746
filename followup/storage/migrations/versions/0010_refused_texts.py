"""How often a text was provably refused: waiting in line is none of them, so the attempts do not tell it."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0010"
down_revision = "0009"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Bring the database to this version."""
    with op.batch_alter_table("texts") as table:
        table.add_column(sa.Column("refused_count", sa.Integer(), server_default="0", nullable=False))


def downgrade() -> None:
    """Take this version back."""
    with op.batch_alter_table("texts") as table:
        table.drop_column("refused_count")
