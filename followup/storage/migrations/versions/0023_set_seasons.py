"""Seasons in which the shop changes sets of tires, and the cars that were drawn in them."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

from followup.storage.columns import UtcDateTime

revision = "0023"
down_revision = "0022"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Bring the database to this version."""
    op.create_table(
        "set_seasons",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("shop_id", sa.Integer(), nullable=False),
        sa.Column("to_set", sa.String(length=200), nullable=False),
        sa.Column("until_on", sa.Date(), nullable=False),
        sa.Column("begun_at", UtcDateTime(), nullable=False),
        sa.Column("begun_by", sa.Integer(), nullable=False),
        sa.Column("paused_at", UtcDateTime(), nullable=True),
        sa.Column("drawn_on", sa.Date(), nullable=True),
        sa.Column("ended_at", UtcDateTime(), nullable=True),
        sa.Column("ended_because", sa.Text(), nullable=True),
        sa.CheckConstraint("to_set IN ('winter', 'summer')", name=op.f("ck_set_seasons_to_set_known")),
        sa.ForeignKeyConstraint(["begun_by"], ["staff.id"], name=op.f("fk_set_seasons_begun_by")),
        sa.ForeignKeyConstraint(["shop_id"], ["shops.id"], name=op.f("fk_set_seasons_shop_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_set_seasons")),
    )
    with op.batch_alter_table("set_seasons") as table:
        table.create_index(op.f("ix_set_seasons_shop_id"), ["shop_id"])
        table.create_index(
            "uq_set_seasons_open", ["shop_id"], unique=True, sqlite_where=sa.text("ended_at IS NULL"),
            postgresql_where=sa.text("ended_at IS NULL"),
        )  # fmt: skip
    op.create_table(
        "set_invites",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("shop_id", sa.Integer(), nullable=False),
        sa.Column("season_id", sa.Integer(), nullable=False),
        sa.Column("phone_id", sa.Integer(), nullable=False),
        sa.Column("vehicle_id", sa.Integer(), nullable=False),
        sa.Column("week_on", sa.Date(), nullable=False),
        sa.ForeignKeyConstraint(["phone_id"], ["phones.id"], name=op.f("fk_set_invites_phone_id")),
        sa.ForeignKeyConstraint(["season_id"], ["set_seasons.id"], name=op.f("fk_set_invites_season_id")),
        sa.ForeignKeyConstraint(["shop_id"], ["shops.id"], name=op.f("fk_set_invites_shop_id")),
        sa.ForeignKeyConstraint(["vehicle_id"], ["vehicles.id"], name=op.f("fk_set_invites_vehicle_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_set_invites")),
        sa.UniqueConstraint("season_id", "vehicle_id", name=op.f("uq_set_invites_season_id_vehicle_id")),
    )
    with op.batch_alter_table("set_invites") as table:
        for column in ("shop_id", "phone_id", "vehicle_id"):
            table.create_index(op.f(f"ix_set_invites_{column}"), [column])


def downgrade() -> None:
    """Take this version back."""
    op.drop_table("set_invites")
    op.drop_table("set_seasons")
