"""Readings of texts that an advisor put right."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0006"
down_revision = "0005"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Make the table."""
    op.create_table(
        "reading_corrections",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("shop_id", sa.Integer(), nullable=False),
        sa.Column("inbound_id", sa.Integer(), nullable=False),
        sa.Column("reply", sa.JSON(none_as_null=True), nullable=False),
        sa.Column("reading", sa.JSON(none_as_null=True), nullable=False),
        sa.Column("meant", sa.JSON(none_as_null=True), nullable=False),
        sa.Column("corrected_by", sa.Integer(), nullable=False),
        sa.Column("corrected_at", sa.DateTime(timezone=True), nullable=False),
        sa.ForeignKeyConstraint(["corrected_by"], ["staff.id"], name=op.f("fk_reading_corrections_corrected_by")),
        sa.ForeignKeyConstraint(["inbound_id"], ["inbound.id"], name=op.f("fk_reading_corrections_inbound_id")),
        sa.ForeignKeyConstraint(["shop_id"], ["shops.id"], name=op.f("fk_reading_corrections_shop_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_reading_corrections")),
        sa.UniqueConstraint("inbound_id", name=op.f("uq_reading_corrections_inbound_id")),
    )
    op.create_index(op.f("ix_reading_corrections_corrected_by"), "reading_corrections", ["corrected_by"], unique=False)
    op.create_index(op.f("ix_reading_corrections_shop_id"), "reading_corrections", ["shop_id"], unique=False)


def downgrade() -> None:
    """Drop it again, with the corrections that it holds: export them first."""
    op.drop_table("reading_corrections")
