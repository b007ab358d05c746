"""When a number may send its next text: kept for all processes that send from it."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

from followup.storage.columns import UtcDateTime

revision = "0014"
down_revision = "0013"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Bring the database to this version."""
    op.create_table(
        "paces",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("shop_id", sa.Integer(), nullable=False),
        sa.Column("number", sa.String(length=200), nullable=False),
        sa.Column("free_at", UtcDateTime(), nullable=False),
        sa.ForeignKeyConstraint(["shop_id"], ["shops.id"], name=op.f("fk_paces_shop_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_paces")),
        sa.UniqueConstraint("shop_id", "number", name=op.f("uq_paces_shop_id_number")),
    )
    with op.batch_alter_table("paces") as table:
        table.create_index(op.f("ix_paces_shop_id"), ["shop_id"])


def downgrade() -> None:
    """Take this version back."""
    op.drop_table("paces")
