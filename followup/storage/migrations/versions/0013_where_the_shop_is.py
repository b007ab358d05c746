"""Where this database is the shop: a copy finds itself elsewhere, and one that was moved away says so."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0013"
down_revision = "0012"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Bring the database to this version."""
    op.create_table(
        "installation",
        sa.Column("id", sa.Integer(), autoincrement=False, nullable=False),
        sa.Column("code", sa.String(length=200), nullable=False),
        sa.Column("state", sa.String(length=200), nullable=False),
        sa.Column("place", sa.String(length=200), nullable=True),
        sa.Column("other", sa.String(length=200), nullable=True),
        sa.Column("at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("who", sa.String(length=200), nullable=False),
        sa.Column("gap_from_at", sa.DateTime(timezone=True), nullable=True),
        sa.CheckConstraint(
            "state IN ('here', 'copy', 'moving', 'moved', 'arriving')", name=op.f("ck_installation_state_known")
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_installation")),
    )


def downgrade() -> None:
    """Take this version back."""
    op.drop_table("installation")
