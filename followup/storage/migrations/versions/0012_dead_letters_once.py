"""A dead letter is kept once for each of the provider's ids, however often it is posted or fetched."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0012"
down_revision = "0011"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Bring the database to this version."""
    with op.batch_alter_table("dead_letters") as table:
        table.add_column(sa.Column("provider_id", sa.String(length=200), nullable=True))
        table.create_unique_constraint(op.f("uq_dead_letters_provider_id"), ["provider_id"])


def downgrade() -> None:
    """Take this version back."""
    with op.batch_alter_table("dead_letters") as table:
        table.drop_constraint(op.f("uq_dead_letters_provider_id"), type_="unique")
        table.drop_column("provider_id")
