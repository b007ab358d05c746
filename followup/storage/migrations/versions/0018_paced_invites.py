"""Which week invites about due work are paced into, night by night."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

from followup.storage.columns import UtcDateTime

revision = "0018"
down_revision = "0017"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Bring the database to this version."""
    op.create_table(
        "pacing_runs",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("shop_id", sa.Integer(), nullable=False),
        sa.Column("on", sa.Date(), nullable=False),
        sa.Column("rules_version", sa.Integer(), nullable=False),
        sa.Column("at", UtcDateTime(), nullable=False),
        sa.Column("ended_at", UtcDateTime(), nullable=True),
        sa.Column("how", sa.String(length=200), nullable=True),
        sa.Column("body", sa.JSON(none_as_null=True), nullable=True),
        sa.ForeignKeyConstraint(["shop_id"], ["shops.id"], name=op.f("fk_pacing_runs_shop_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_pacing_runs")),
        sa.UniqueConstraint("shop_id", "on", "rules_version", name=op.f("uq_pacing_runs_shop_id_on_rules_version")),
    )
    with op.batch_alter_table("pacing_runs") as table:
        table.create_index(op.f("ix_pacing_runs_shop_id"), ["shop_id"])
    op.create_table(
        "paced_invites",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("shop_id", sa.Integer(), nullable=False),
        sa.Column("run_id", sa.Integer(), nullable=False),
        sa.Column("phone_id", sa.Integer(), nullable=False),
        sa.Column("vehicle_id", sa.Integer(), nullable=False),
        sa.Column("reason", sa.String(length=200), nullable=False),
        sa.Column("first_on", sa.Date(), nullable=False),
        sa.Column("begins_on", sa.Date(), nullable=True),
        sa.Column("says", sa.Text(), nullable=True),
        sa.Column("is_legal", sa.Boolean(), nullable=False),
        sa.Column("chance", sa.Float(), nullable=False),
        sa.Column("hours", sa.JSON(none_as_null=True), nullable=False),
        sa.Column("made_at", UtcDateTime(), nullable=False),
        *(
            sa.ForeignKeyConstraint([column], [f"{table}.id"], name=op.f(f"fk_paced_invites_{column}"))
            for column, table in (
                ("shop_id", "shops"), ("run_id", "pacing_runs"), ("phone_id", "phones"), ("vehicle_id", "vehicles"),
            )
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_paced_invites")),
        sa.UniqueConstraint(
            "run_id", "phone_id", "vehicle_id", "reason",
            name=op.f("uq_paced_invites_run_id_phone_id_vehicle_id_reason"),
        ),
    )  # fmt: skip
    with op.batch_alter_table("paced_invites") as table:
        for column in ("shop_id", "phone_id", "vehicle_id"):
            table.create_index(op.f(f"ix_paced_invites_{column}"), [column])


def downgrade() -> None:
    """Take this version back."""
    op.drop_table("paced_invites")
    op.drop_table("pacing_runs")
