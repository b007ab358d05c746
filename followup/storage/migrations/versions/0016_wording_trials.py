"""Two wordings of a reason side by side; one open trial a text and language."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0016"
down_revision = "0015"
branch_labels = None
depends_on = None

REFERS_TO = {"first_id": "wordings", "second_id": "wordings", "begun_by": "staff", "shop_id": "shops"}


def upgrade() -> None:
    """Bring the database to this version."""
    op.create_table(
        "wording_trials",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("shop_id", sa.Integer(), nullable=False),
        sa.Column("reason", sa.String(length=200), nullable=False),
        sa.Column("language", sa.String(length=200), nullable=False),
        sa.Column("first_id", sa.Integer(), nullable=True),
        sa.Column("second_id", sa.Integer(), nullable=True),
        sa.Column("draw_key", sa.String(length=200), nullable=False),
        sa.Column("planned_each", sa.Integer(), nullable=False),
        sa.Column("begun_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("begun_by", sa.Integer(), nullable=False),
        sa.Column("ended_at", sa.DateTime(timezone=True), nullable=True),
        sa.Column("ended_because", sa.Text(), nullable=True),
        *(
            sa.ForeignKeyConstraint([name], [f"{table}.id"], name=op.f(f"fk_wording_trials_{name}"))
            for name, table in REFERS_TO.items()
        ),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_wording_trials")),
    )
    for column in REFERS_TO:
        op.create_index(op.f(f"ix_wording_trials_{column}"), "wording_trials", [column], unique=False)
    is_open = sa.text("ended_at IS NULL")
    op.create_index(
        "uq_wording_trials_open", "wording_trials", ["shop_id", "reason", "language"], unique=True,
        sqlite_where=is_open, postgresql_where=is_open,
    )  # fmt: skip


def downgrade() -> None:
    """Take this version back."""
    op.drop_table("wording_trials")
