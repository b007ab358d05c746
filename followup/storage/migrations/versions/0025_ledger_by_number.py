"""The ledger by number: what decides about a text is found without reading the lines of the whole shop."""

from __future__ import annotations

from alembic import op

revision = "0025"
down_revision = "0024"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Bring the database to this version."""
    op.create_index(op.f("ix_consents_number"), "consents", ["number"])


def downgrade() -> None:
    """Take this version back."""
    op.drop_index(op.f("ix_consents_number"), "consents")
