"""What the shop's cars taught, in versions."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0008"
down_revision = "0007"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Make the table."""
    op.create_table(
        "learned_priors",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("shop_id", sa.Integer(), nullable=False),
        sa.Column("version", sa.Integer(), nullable=False),
        sa.Column("at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("author", sa.String(length=200), nullable=False),
        sa.Column("source", sa.String(length=200), nullable=False),
        sa.Column("is_used", sa.Boolean(), nullable=False),
        sa.Column("cars", sa.Integer(), nullable=False),
        sa.Column("body", sa.JSON(none_as_null=True), nullable=True),
        sa.CheckConstraint(
            "source IN ('learned', 'published', 'brought_back')", name=op.f("ck_learned_priors_source_known")
        ),
        sa.ForeignKeyConstraint(["shop_id"], ["shops.id"], name=op.f("fk_learned_priors_shop_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_learned_priors")),
        sa.UniqueConstraint("shop_id", "version", name=op.f("uq_learned_priors_shop_id_version")),
    )
    op.create_index(op.f("ix_learned_priors_shop_id"), "learned_priors", ["shop_id"], unique=False)


def downgrade() -> None:
    """Drop it again; forecasts then go by the published values until the cars are learned from anew."""
    op.drop_table("learned_priors")
