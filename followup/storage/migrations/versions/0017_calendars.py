"""Addresses at which calendars read bookings: of the shop or an advisor, and of one visit."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

from followup.storage.columns import UtcDateTime

revision = "0017"
down_revision = "0016"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Bring the database to this version."""
    op.create_table(
        "calendar_feeds",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("shop_id", sa.Integer(), nullable=False),
        sa.Column("name", sa.String(length=200), nullable=False),
        sa.Column("advisor_id", sa.Integer(), nullable=True),
        sa.Column("token_hash", sa.String(length=200), nullable=False),
        sa.Column("made_by", sa.Integer(), nullable=False),
        sa.Column("made_at", UtcDateTime(), nullable=False),
        sa.Column("withdrawn_at", UtcDateTime(), nullable=True),
        sa.ForeignKeyConstraint(["advisor_id"], ["staff.id"], name=op.f("fk_calendar_feeds_advisor_id")),
        sa.ForeignKeyConstraint(["made_by"], ["staff.id"], name=op.f("fk_calendar_feeds_made_by")),
        sa.ForeignKeyConstraint(["shop_id"], ["shops.id"], name=op.f("fk_calendar_feeds_shop_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_calendar_feeds")),
        sa.UniqueConstraint("token_hash", name=op.f("uq_calendar_feeds_token_hash")),
    )
    with op.batch_alter_table("calendar_feeds") as table:
        for column in ("shop_id", "advisor_id", "made_by"):
            table.create_index(op.f(f"ix_calendar_feeds_{column}"), [column])
    op.create_table(
        "visit_links",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("shop_id", sa.Integer(), nullable=False),
        sa.Column("request_id", sa.Integer(), nullable=False),
        sa.Column("code", sa.String(length=200), nullable=False),
        sa.Column("made_at", UtcDateTime(), nullable=False),
        sa.ForeignKeyConstraint(["request_id"], ["booking_requests.id"], name=op.f("fk_visit_links_request_id")),
        sa.ForeignKeyConstraint(["shop_id"], ["shops.id"], name=op.f("fk_visit_links_shop_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_visit_links")),
        sa.UniqueConstraint("code", name=op.f("uq_visit_links_code")),
        sa.UniqueConstraint("request_id", name=op.f("uq_visit_links_request_id")),
    )
    with op.batch_alter_table("visit_links") as table:
        table.create_index(op.f("ix_visit_links_shop_id"), ["shop_id"])


def downgrade() -> None:
    """Take this version back."""
    op.drop_table("visit_links")
    op.drop_table("calendar_feeds")
