"""Weekly lists of fleets, with the unit numbers of their cars."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

from followup.storage.columns import UtcDateTime

revision = "0020"
down_revision = "0019"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Bring the database to this version."""
    op.create_table(
        "fleet_lists",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("shop_id", sa.Integer(), nullable=False),
        sa.Column("person_id", sa.Integer(), nullable=False),
        sa.Column("phone_id", sa.Integer(), nullable=False),
        sa.Column("weekday", sa.Integer(), nullable=False),
        sa.Column("agreed_on", sa.Date(), nullable=False),
        sa.Column("how", sa.String(length=200), nullable=False),
        sa.Column("made_by", sa.Integer(), nullable=False),
        sa.Column("made_at", UtcDateTime(), nullable=False),
        sa.Column("ended_at", UtcDateTime(), nullable=True),
        sa.CheckConstraint("how IN ('signed_paper', 'tablet', 'web_form')", name=op.f("ck_fleet_lists_how_known")),
        sa.ForeignKeyConstraint(["made_by"], ["staff.id"], name=op.f("fk_fleet_lists_made_by")),
        sa.ForeignKeyConstraint(["person_id"], ["persons.id"], name=op.f("fk_fleet_lists_person_id")),
        sa.ForeignKeyConstraint(["phone_id"], ["phones.id"], name=op.f("fk_fleet_lists_phone_id")),
        sa.ForeignKeyConstraint(["shop_id"], ["shops.id"], name=op.f("fk_fleet_lists_shop_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_fleet_lists")),
    )
    with op.batch_alter_table("fleet_lists") as table:
        for column in ("shop_id", "person_id", "phone_id"):
            table.create_index(op.f(f"ix_fleet_lists_{column}"), [column])
    op.create_table(
        "fleet_units",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("shop_id", sa.Integer(), nullable=False),
        sa.Column("list_id", sa.Integer(), nullable=False),
        sa.Column("vehicle_id", sa.Integer(), nullable=False),
        sa.Column("unit", sa.String(length=200), nullable=False),
        sa.ForeignKeyConstraint(["list_id"], ["fleet_lists.id"], name=op.f("fk_fleet_units_list_id")),
        sa.ForeignKeyConstraint(["shop_id"], ["shops.id"], name=op.f("fk_fleet_units_shop_id")),
        sa.ForeignKeyConstraint(["vehicle_id"], ["vehicles.id"], name=op.f("fk_fleet_units_vehicle_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_fleet_units")),
        sa.UniqueConstraint("list_id", "vehicle_id", name=op.f("uq_fleet_units_list_id_vehicle_id")),
    )
    with op.batch_alter_table("fleet_units") as table:
        for column in ("shop_id", "list_id"):
            table.create_index(op.f(f"ix_fleet_units_{column}"), [column])


def downgrade() -> None:
    """Take this version back."""
    op.drop_table("fleet_units")
    op.drop_table("fleet_lists")
