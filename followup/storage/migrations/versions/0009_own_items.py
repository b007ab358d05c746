"""Items that a shop added, in versions."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0009"
down_revision = "0008"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Bring the database to this version."""
    op.create_table(
        "own_items",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("shop_id", sa.Integer(), nullable=False),
        sa.Column("code", sa.String(length=200), nullable=False),
        sa.Column("version", sa.Integer(), nullable=False),
        sa.Column("body", sa.JSON(none_as_null=True), nullable=False),
        sa.Column("author_id", sa.Integer(), nullable=False),
        sa.Column("written_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("because", sa.Text(), nullable=True),
        sa.Column("looked_at_by", sa.Integer(), nullable=True),
        sa.Column("looked_at", sa.DateTime(timezone=True), nullable=True),
        sa.ForeignKeyConstraint(["author_id"], ["staff.id"], name=op.f("fk_own_items_author_id")),
        sa.ForeignKeyConstraint(["looked_at_by"], ["staff.id"], name=op.f("fk_own_items_looked_at_by")),
        sa.ForeignKeyConstraint(["shop_id"], ["shops.id"], name=op.f("fk_own_items_shop_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_own_items")),
        sa.UniqueConstraint("shop_id", "code", "version", name=op.f("uq_own_items_shop_id_code_version")),
    )
    for column in ("author_id", "looked_at_by", "shop_id"):
        op.create_index(op.f(f"ix_own_items_{column}"), "own_items", [column], unique=False)


def downgrade() -> None:
    """Take this version back."""
    op.drop_table("own_items")
