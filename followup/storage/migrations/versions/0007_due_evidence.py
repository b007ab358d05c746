"""What the present due windows rest on, and the windows of tires that are stored."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0007"
down_revision = "0006"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Make the table; it fills with the next forecast of each car."""
    op.create_table(
        "due_evidence",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("shop_id", sa.Integer(), nullable=False),
        sa.Column("vehicle_id", sa.Integer(), nullable=False),
        sa.Column("item", sa.String(length=200), nullable=False),
        sa.Column("position", sa.String(length=200), nullable=False),
        sa.Column("stored_set", sa.String(length=200), nullable=False),
        sa.Column("evidence", sa.JSON(none_as_null=True), nullable=False),
        sa.Column("stored_window", sa.JSON(none_as_null=True), nullable=True),
        sa.ForeignKeyConstraint(["shop_id"], ["shops.id"], name=op.f("fk_due_evidence_shop_id")),
        sa.ForeignKeyConstraint(["vehicle_id"], ["vehicles.id"], name=op.f("fk_due_evidence_vehicle_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_due_evidence")),
    )
    op.create_index(op.f("ix_due_evidence_shop_id"), "due_evidence", ["shop_id"], unique=False)
    op.create_index(op.f("ix_due_evidence_vehicle_id"), "due_evidence", ["vehicle_id"], unique=False)


def downgrade() -> None:
    """Drop it again: it can be reckoned anew."""
    op.drop_table("due_evidence")
