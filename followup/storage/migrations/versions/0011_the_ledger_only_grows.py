"""The consent ledger is append-only by the database itself; numbers that are held until a person looked."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0011"
down_revision = "0010"
branch_labels = None
depends_on = None

_KEPT = (
    "id, shop_id, number_hash, event, covers, at, given_on, how, words_version, language, is_own_and_adult, because, "
    "kept_by"
)
_SAYS = "the consent ledger only grows"


def upgrade() -> None:
    """Bring the database to this version."""
    op.add_column("phones", sa.Column("held_because", sa.String(length=200), nullable=True))
    op.add_column("phones", sa.Column("reassigned", sa.String(length=200), nullable=True))
    op.add_column("phones", sa.Column("reassigned_asked_on", sa.Date(), nullable=True))
    if op.get_bind().dialect.name == "sqlite":
        raises = f"BEGIN SELECT RAISE(ABORT, '{_SAYS}'); END"
        op.execute(f"CREATE TRIGGER consents_unchanged BEFORE UPDATE OF {_KEPT} ON consents {raises}")
        op.execute(f"CREATE TRIGGER consents_kept BEFORE DELETE ON consents {raises}")
        return
    op.execute(
        "CREATE OR REPLACE FUNCTION consents_only_grow() RETURNS trigger LANGUAGE plpgsql AS "
        f"'BEGIN RAISE EXCEPTION ''{_SAYS}''; END'"
    )
    raises = "FOR EACH ROW EXECUTE FUNCTION consents_only_grow()"
    op.execute(f"CREATE TRIGGER consents_unchanged BEFORE UPDATE OF {_KEPT} ON consents {raises}")
    op.execute(f"CREATE TRIGGER consents_kept BEFORE DELETE ON consents {raises}")


def downgrade() -> None:
    """Take this version back."""
    on = "" if op.get_bind().dialect.name == "sqlite" else " ON consents"
    op.execute(f"DROP TRIGGER consents_kept{on}")
    op.execute(f"DROP TRIGGER consents_unchanged{on}")
    if on:
        op.execute("DROP FUNCTION consents_only_grow()")
    for column in ("reassigned_asked_on", "reassigned", "held_because"):
        op.drop_column("phones", column)
