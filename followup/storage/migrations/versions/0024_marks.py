"""Marks of what changed since planning and the forecast looked last, set by triggers, so that no round reads all."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

from followup.storage.columns import UtcDateTime
from followup.storage.mark_triggers import statements, trigger_names

revision = "0024"
down_revision = "0023"
branch_labels = None
depends_on = None

# Where the rules begin in what was known of a car when it was forecast.
_RULES = {
    "sqlite": "CASE WHEN instr(known, 'rules ') > 0 THEN substr(known, instr(known, 'rules ')) ELSE '' END",
    "postgresql": "coalesce(substring(known from 'rules .*$'), '')",
}


def upgrade() -> None:
    """Bring the database to this version."""
    _make_tables()
    dialect = op.get_bind().dialect.name
    # The earlier version, which may still run, keeps no rules: its forecasts are then looked at once more.
    op.add_column("forecast_vehicles", sa.Column("rules", sa.String(length=200), nullable=False, server_default=""))
    op.execute(f"UPDATE forecast_vehicles SET rules = {_RULES[dialect]}")
    op.create_index("ix_forecast_vehicles_rules", "forecast_vehicles", ["shop_id", "rules"])
    # Everybody is looked at once; whatever is known of a car is asked once more.
    op.execute(
        "INSERT INTO plan_looks (shop_id, phone_id, word, look_at, version) "
        "SELECT shop_id, id, '', '1970-01-01 00:00:00', 0 FROM phones ORDER BY id"
    )
    op.execute(
        "INSERT INTO forecast_marks (shop_id, vehicle_id) "
        "SELECT DISTINCT shop_id, vehicle_id FROM inspections WHERE is_current IS TRUE"
    )
    for one in statements(dialect):
        op.execute(sa.text(one))


def _make_tables() -> None:
    about = [sa.Column(one, sa.Integer(), nullable=True) for one in ("phone_id", "person_id", "vehicle_id")]
    for name, columns in (
        ("plan_marks", about),
        ("forecast_marks", [sa.Column("vehicle_id", sa.Integer(), nullable=False)]),
    ):
        op.create_table(
            name,
            sa.Column("id", sa.Integer(), nullable=False),
            sa.Column("shop_id", sa.Integer(), nullable=False),
            *columns,
            sa.ForeignKeyConstraint(["shop_id"], ["shops.id"], name=op.f(f"fk_{name}_shop_id")),
            sa.PrimaryKeyConstraint("id", name=op.f(f"pk_{name}")),
            sqlite_autoincrement=True,
        )
        op.create_index(op.f(f"ix_{name}_shop_id"), name, ["shop_id"])
        op.create_index(op.f(f"ix_{name}_vehicle_id"), name, ["vehicle_id"])
    op.create_table(
        "plan_looks",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("shop_id", sa.Integer(), nullable=False),
        sa.Column("phone_id", sa.Integer(), nullable=False),
        sa.Column("word", sa.String(length=200), nullable=False),
        sa.Column("look_at", UtcDateTime(), nullable=True),
        sa.Column("version", sa.Integer(), nullable=False),
        sa.ForeignKeyConstraint(["phone_id"], ["phones.id"], name=op.f("fk_plan_looks_phone_id")),
        sa.ForeignKeyConstraint(["shop_id"], ["shops.id"], name=op.f("fk_plan_looks_shop_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_plan_looks")),
        sa.UniqueConstraint("phone_id", name=op.f("uq_plan_looks_phone_id")),
    )
    op.create_index("ix_plan_looks_due", "plan_looks", ["shop_id", "word", "look_at"])


def downgrade() -> None:
    """Take this version back."""
    is_postgresql = op.get_bind().dialect.name == "postgresql"
    for name, table in trigger_names().items():
        op.execute(f"DROP TRIGGER {name} ON {table}" if is_postgresql else f"DROP TRIGGER {name}")
        if is_postgresql:
            op.execute(f"DROP FUNCTION {name}()")
    for name in ("plan_looks", "forecast_marks", "plan_marks"):
        op.drop_table(name)
    op.drop_index("ix_forecast_vehicles_rules", "forecast_vehicles")
    with op.batch_alter_table("forecast_vehicles") as changed:
        changed.drop_column("rules")
