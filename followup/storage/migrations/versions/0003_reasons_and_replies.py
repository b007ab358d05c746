"""Why a text is sent and in which words, and what comes back."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0003"
down_revision = "0002"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Make the tables, those first that others point at."""
    _create_reasons()
    _create_wordings()
    _create_inbound()
    _create_rests()
    _create_conversations()
    _create_dead_letters()
    _create_status_reports()
    _create_test_phone_texts()


def downgrade() -> None:
    """Drop them again, with all they hold."""
    op.drop_table("test_phone_texts")
    op.drop_table("status_reports")
    op.drop_table("dead_letters")
    op.drop_table("conversations")
    op.drop_table("rests")
    op.drop_table("inbound")
    op.drop_table("wordings")
    op.drop_table("reasons")


def _create_reasons() -> None:
    op.create_table(
        "reasons",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("shop_id", sa.Integer(), nullable=False),
        sa.Column("kind", sa.String(length=200), nullable=False),
        sa.Column("phone_id", sa.Integer(), nullable=True),
        sa.Column("person_id", sa.Integer(), nullable=True),
        sa.Column("vehicle_id", sa.Integer(), nullable=True),
        sa.Column("raised_by", sa.String(length=200), nullable=False),
        sa.Column("raised_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("items", sa.JSON(none_as_null=True), nullable=False),
        sa.Column("ended_at", sa.DateTime(timezone=True), nullable=True),
        sa.Column("ended_because", sa.String(length=200), nullable=True),
        sa.ForeignKeyConstraint(["person_id"], ["persons.id"], name=op.f("fk_reasons_person_id")),
        sa.ForeignKeyConstraint(["phone_id"], ["phones.id"], name=op.f("fk_reasons_phone_id")),
        sa.ForeignKeyConstraint(["shop_id"], ["shops.id"], name=op.f("fk_reasons_shop_id")),
        sa.ForeignKeyConstraint(["vehicle_id"], ["vehicles.id"], name=op.f("fk_reasons_vehicle_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_reasons")),
        sa.UniqueConstraint(
            "shop_id", "kind", "phone_id", "raised_by", name=op.f("uq_reasons_shop_id_kind_phone_id_raised_by")
        ),
    )
    op.create_index(op.f("ix_reasons_person_id"), "reasons", ["person_id"], unique=False)
    op.create_index(op.f("ix_reasons_phone_id"), "reasons", ["phone_id"], unique=False)
    op.create_index(op.f("ix_reasons_shop_id"), "reasons", ["shop_id"], unique=False)
    op.create_index(op.f("ix_reasons_vehicle_id"), "reasons", ["vehicle_id"], unique=False)


def _create_wordings() -> None:
    op.create_table(
        "wordings",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("shop_id", sa.Integer(), nullable=False),
        sa.Column("reason", sa.String(length=200), nullable=False),
        sa.Column("language", sa.String(length=200), nullable=False),
        sa.Column("version", sa.Integer(), nullable=False),
        sa.Column("source", sa.Text(), nullable=False),
        sa.Column("author_id", sa.Integer(), nullable=False),
        sa.Column("written_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("looked_at_by", sa.Integer(), nullable=True),
        sa.Column("looked_at", sa.DateTime(timezone=True), nullable=True),
        sa.Column("ended_at", sa.DateTime(timezone=True), nullable=True),
        sa.ForeignKeyConstraint(["author_id"], ["staff.id"], name=op.f("fk_wordings_author_id")),
        sa.ForeignKeyConstraint(["looked_at_by"], ["staff.id"], name=op.f("fk_wordings_looked_at_by")),
        sa.ForeignKeyConstraint(["shop_id"], ["shops.id"], name=op.f("fk_wordings_shop_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_wordings")),
        sa.UniqueConstraint(
            "shop_id", "reason", "language", "version", name=op.f("uq_wordings_shop_id_reason_language_version")
        ),
    )
    op.create_index(op.f("ix_wordings_author_id"), "wordings", ["author_id"], unique=False)
    op.create_index(op.f("ix_wordings_looked_at_by"), "wordings", ["looked_at_by"], unique=False)
    op.create_index(op.f("ix_wordings_shop_id"), "wordings", ["shop_id"], unique=False)


def _create_inbound() -> None:
    op.create_table(
        "inbound",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("shop_id", sa.Integer(), nullable=False),
        sa.Column("provider_id", sa.String(length=200), nullable=False),
        sa.Column("number", sa.String(length=200), nullable=False),
        sa.Column("phone_id", sa.Integer(), nullable=True),
        sa.Column("body", sa.Text(), nullable=False),
        sa.Column("raw", sa.JSON(none_as_null=True), nullable=False),
        sa.Column("received_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("handled_at", sa.DateTime(timezone=True), nullable=True),
        sa.Column("context", sa.JSON(none_as_null=True), nullable=True),
        sa.Column("meaning", sa.JSON(none_as_null=True), nullable=True),
        sa.Column("outcome", sa.String(length=200), nullable=True),
        sa.Column("pictures", sa.Integer(), nullable=False),
        sa.ForeignKeyConstraint(["phone_id"], ["phones.id"], name=op.f("fk_inbound_phone_id")),
        sa.ForeignKeyConstraint(["shop_id"], ["shops.id"], name=op.f("fk_inbound_shop_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_inbound")),
        sa.UniqueConstraint("provider_id", name=op.f("uq_inbound_provider_id")),
    )
    op.create_index(op.f("ix_inbound_phone_id"), "inbound", ["phone_id"], unique=False)
    op.create_index(op.f("ix_inbound_shop_id"), "inbound", ["shop_id"], unique=False)
    op.create_index("ix_inbound_unhandled", "inbound", ["shop_id", "handled_at"], unique=False)


def _create_rests() -> None:
    op.create_table(
        "rests",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("shop_id", sa.Integer(), nullable=False),
        sa.Column("vehicle_id", sa.Integer(), nullable=False),
        sa.Column("item", sa.String(length=200), nullable=False),
        sa.Column("position", sa.String(length=200), nullable=False),
        sa.Column("because", sa.String(length=200), nullable=False),
        sa.Column("from_on", sa.Date(), nullable=False),
        sa.Column("until", sa.Date(), nullable=True),
        sa.Column("inbound_id", sa.Integer(), nullable=True),
        sa.CheckConstraint("because IN ('no', 'later', 'done')", name=op.f("ck_rests_because_known")),
        sa.ForeignKeyConstraint(["inbound_id"], ["inbound.id"], name=op.f("fk_rests_inbound_id")),
        sa.ForeignKeyConstraint(["shop_id"], ["shops.id"], name=op.f("fk_rests_shop_id")),
        sa.ForeignKeyConstraint(["vehicle_id"], ["vehicles.id"], name=op.f("fk_rests_vehicle_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_rests")),
    )
    op.create_index(op.f("ix_rests_inbound_id"), "rests", ["inbound_id"], unique=False)
    op.create_index(op.f("ix_rests_shop_id"), "rests", ["shop_id"], unique=False)
    op.create_index(op.f("ix_rests_vehicle_id"), "rests", ["vehicle_id"], unique=False)


def _create_conversations() -> None:
    op.create_table(
        "conversations",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("shop_id", sa.Integer(), nullable=False),
        sa.Column("phone_id", sa.Integer(), nullable=False),
        sa.Column("state", sa.JSON(none_as_null=True), nullable=False),
        sa.Column("thread", sa.JSON(none_as_null=True), nullable=False),
        sa.Column("changed_at", sa.DateTime(timezone=True), nullable=False),
        sa.ForeignKeyConstraint(["phone_id"], ["phones.id"], name=op.f("fk_conversations_phone_id")),
        sa.ForeignKeyConstraint(["shop_id"], ["shops.id"], name=op.f("fk_conversations_shop_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_conversations")),
        sa.UniqueConstraint("phone_id", name=op.f("uq_conversations_phone_id")),
    )
    op.create_index(op.f("ix_conversations_phone_id"), "conversations", ["phone_id"], unique=False)
    op.create_index(op.f("ix_conversations_shop_id"), "conversations", ["shop_id"], unique=False)


def _create_dead_letters() -> None:
    op.create_table(
        "dead_letters",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("shop_id", sa.Integer(), nullable=True),
        sa.Column("at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("because", sa.String(length=200), nullable=False),
        sa.Column("body", sa.JSON(none_as_null=True), nullable=False),
        sa.Column("settled_at", sa.DateTime(timezone=True), nullable=True),
        sa.ForeignKeyConstraint(["shop_id"], ["shops.id"], name=op.f("fk_dead_letters_shop_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_dead_letters")),
    )
    op.create_index(op.f("ix_dead_letters_shop_id"), "dead_letters", ["shop_id"], unique=False)


def _create_status_reports() -> None:
    op.create_table(
        "status_reports",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("shop_id", sa.Integer(), nullable=False),
        sa.Column("public_id", sa.String(length=200), nullable=False),
        sa.Column("provider_id", sa.String(length=200), nullable=False),
        sa.Column("status", sa.String(length=200), nullable=False),
        sa.Column("error_code", sa.String(length=200), nullable=True),
        sa.Column("at", sa.DateTime(timezone=True), nullable=False),
        sa.ForeignKeyConstraint(["shop_id"], ["shops.id"], name=op.f("fk_status_reports_shop_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_status_reports")),
        sa.UniqueConstraint("provider_id", "status", name=op.f("uq_status_reports_provider_id_status")),
    )
    op.create_index(op.f("ix_status_reports_public_id"), "status_reports", ["public_id"], unique=False)
    op.create_index(op.f("ix_status_reports_shop_id"), "status_reports", ["shop_id"], unique=False)


def _create_test_phone_texts() -> None:
    op.create_table(
        "test_phone_texts",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("shop_id", sa.Integer(), nullable=False),
        sa.Column("number", sa.String(length=200), nullable=False),
        sa.Column("direction", sa.String(length=200), nullable=False),
        sa.Column("body", sa.Text(), nullable=False),
        sa.Column("at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("provider_id", sa.String(length=200), nullable=False),
        sa.Column("status_url", sa.String(length=200), nullable=True),
        sa.ForeignKeyConstraint(["shop_id"], ["shops.id"], name=op.f("fk_test_phone_texts_shop_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_test_phone_texts")),
    )
    op.create_index(op.f("ix_test_phone_texts_number"), "test_phone_texts", ["number"], unique=False)
    op.create_index(op.f("ix_test_phone_texts_shop_id"), "test_phone_texts", ["shop_id"], unique=False)
