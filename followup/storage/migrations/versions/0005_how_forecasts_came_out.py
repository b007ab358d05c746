"""How forecasts came out, and which of them a planned text rests on."""

from __future__ import annotations

from typing import Any

import sqlalchemy as sa
from alembic import op

revision = "0005"
down_revision = "0004"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Make the tables."""
    _create_window_uses()
    _create_forecast_scores()
    _create_scored_vehicles()


def downgrade() -> None:
    """Drop them again, with all they hold; scores are made anew from what was read."""
    op.drop_table("scored_vehicles")
    op.drop_table("forecast_scores")
    op.drop_table("window_uses")


def _create_window_uses() -> None:
    op.create_table(
        "window_uses",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("shop_id", sa.Integer(), nullable=False),
        sa.Column("window_id", sa.Integer(), nullable=False),
        sa.Column("text_id", sa.Integer(), nullable=False),
        sa.ForeignKeyConstraint(["shop_id"], ["shops.id"], name=op.f("fk_window_uses_shop_id")),
        sa.ForeignKeyConstraint(["text_id"], ["texts.id"], name=op.f("fk_window_uses_text_id")),
        sa.ForeignKeyConstraint(["window_id"], ["due_windows.id"], name=op.f("fk_window_uses_window_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_window_uses")),
        sa.UniqueConstraint("window_id", "text_id", name=op.f("uq_window_uses_window_id_text_id")),
    )
    op.create_index(op.f("ix_window_uses_shop_id"), "window_uses", ["shop_id"], unique=False)
    op.create_index(op.f("ix_window_uses_text_id"), "window_uses", ["text_id"], unique=False)


def _columns_of_scores() -> list[sa.Column[Any]]:
    return [
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("shop_id", sa.Integer(), nullable=False),
        sa.Column("vehicle_id", sa.Integer(), nullable=False),
        sa.Column("window_id", sa.Integer(), nullable=True),
        sa.Column("item", sa.String(length=200), nullable=False),
        sa.Column("position", sa.String(length=200), nullable=False),
        sa.Column("forecast_on", sa.Date(), nullable=False),
        sa.Column("scored_on", sa.Date(), nullable=False),
        sa.Column("how", sa.String(length=200), nullable=False),
        sa.Column("readings_used", sa.Integer(), nullable=False),
        sa.Column("chance", sa.Float(), nullable=True),
        sa.Column("was_due", sa.Boolean(), nullable=True),
        sa.Column("place", sa.Float(), nullable=True),
        sa.Column("place_at_odometer", sa.Float(), nullable=True),
        sa.Column("expected", sa.Float(), nullable=True),
        sa.Column("found", sa.Float(), nullable=True),
        sa.Column("crps", sa.Float(), nullable=True),
        sa.Column("scored_at", sa.DateTime(timezone=True), nullable=False),
    ]


def _create_forecast_scores() -> None:
    op.create_table(
        "forecast_scores",
        *_columns_of_scores(),
        sa.CheckConstraint(
            "how IN ('measured', 'looked_at', 'changed', 'moved', 'seems_changed', 'seems_moved', 'other_set')",
            name=op.f("ck_forecast_scores_how_known"),
        ),
        sa.ForeignKeyConstraint(["shop_id"], ["shops.id"], name=op.f("fk_forecast_scores_shop_id")),
        sa.ForeignKeyConstraint(["vehicle_id"], ["vehicles.id"], name=op.f("fk_forecast_scores_vehicle_id")),
        sa.ForeignKeyConstraint(["window_id"], ["due_windows.id"], name=op.f("fk_forecast_scores_window_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_forecast_scores")),
        sa.UniqueConstraint(
            "vehicle_id",
            "item",
            "position",
            "forecast_on",
            name=op.f("uq_forecast_scores_vehicle_id_item_position_forecast_on"),
        ),
        sa.UniqueConstraint("window_id", name=op.f("uq_forecast_scores_window_id")),
    )
    op.create_index("ix_forecast_scores_by_day", "forecast_scores", ["shop_id", "scored_on"], unique=False)
    op.create_index(op.f("ix_forecast_scores_shop_id"), "forecast_scores", ["shop_id"], unique=False)


def _create_scored_vehicles() -> None:
    op.create_table(
        "scored_vehicles",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("shop_id", sa.Integer(), nullable=False),
        sa.Column("vehicle_id", sa.Integer(), nullable=False),
        sa.Column("known", sa.String(length=200), nullable=False),
        sa.Column("scored_at", sa.DateTime(timezone=True), nullable=False),
        sa.ForeignKeyConstraint(["shop_id"], ["shops.id"], name=op.f("fk_scored_vehicles_shop_id")),
        sa.ForeignKeyConstraint(["vehicle_id"], ["vehicles.id"], name=op.f("fk_scored_vehicles_vehicle_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_scored_vehicles")),
        sa.UniqueConstraint("vehicle_id", name=op.f("uq_scored_vehicles_vehicle_id")),
    )
    op.create_index(op.f("ix_scored_vehicles_shop_id"), "scored_vehicles", ["shop_id"], unique=False)
