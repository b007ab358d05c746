"""What was known of a car when it was forecast last: an instant misses what is kept meanwhile."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0019"
down_revision = "0018"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Bring the database to this version."""
    op.create_table(
        "forecast_vehicles",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("shop_id", sa.Integer(), nullable=False),
        sa.Column("vehicle_id", sa.Integer(), nullable=False),
        sa.Column("known", sa.String(length=200), nullable=False),
        sa.Column("forecast_at", sa.DateTime(timezone=True), nullable=False),
        sa.ForeignKeyConstraint(["shop_id"], ["shops.id"], name=op.f("fk_forecast_vehicles_shop_id")),
        sa.ForeignKeyConstraint(["vehicle_id"], ["vehicles.id"], name=op.f("fk_forecast_vehicles_vehicle_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_forecast_vehicles")),
        sa.UniqueConstraint("vehicle_id", name=op.f("uq_forecast_vehicles_vehicle_id")),
    )
    with op.batch_alter_table("forecast_vehicles") as table:
        table.create_index(op.f("ix_forecast_vehicles_shop_id"), ["shop_id"])


def downgrade() -> None:
    """Take this version back."""
    op.drop_table("forecast_vehicles")
