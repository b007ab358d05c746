"""Half-filled inspection forms."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

from followup.storage.columns import UtcDateTime

revision = "0022"
down_revision = "0021"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Bring the database to this version."""
    op.create_table(
        "drafts",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("shop_id", sa.Integer(), nullable=False),
        sa.Column("staff_id", sa.Integer(), nullable=False),
        sa.Column("vehicle_id", sa.Integer(), nullable=True),
        sa.Column("about", sa.String(length=200), nullable=False),
        sa.Column("part", sa.String(length=200), nullable=False),
        sa.Column("code", sa.String(length=200), nullable=False),
        sa.Column("corrects", sa.Integer(), nullable=True),
        sa.Column("fields", sa.JSON(none_as_null=True), nullable=False),
        sa.Column("page", sa.String(length=200), nullable=False),
        sa.Column("revision", sa.Integer(), nullable=False),
        sa.Column("begun_at", UtcDateTime(), nullable=False),
        sa.Column("kept_at", UtcDateTime(), nullable=False),
        sa.ForeignKeyConstraint(["shop_id"], ["shops.id"], name=op.f("fk_drafts_shop_id")),
        sa.ForeignKeyConstraint(["staff_id"], ["staff.id"], name=op.f("fk_drafts_staff_id")),
        sa.ForeignKeyConstraint(["vehicle_id"], ["vehicles.id"], name=op.f("fk_drafts_vehicle_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_drafts")),
        sa.UniqueConstraint("shop_id", "staff_id", "about", name=op.f("uq_drafts_shop_id_staff_id_about")),
    )
    with op.batch_alter_table("drafts") as table:
        for column in ("shop_id", "staff_id", "vehicle_id", "code"):
            table.create_index(op.f(f"ix_drafts_{column}"), [column])


def downgrade() -> None:
    """Take this version back."""
    op.drop_table("drafts")
