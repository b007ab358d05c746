"""The shop, its staff and rules, what they did, and what belongs to the machine."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0001"
down_revision = None
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Make the tables, those first that others point at."""
    _create_heartbeats()
    _create_leases()
    _create_shops()
    _create_shop_versions()
    _create_staff()
    _create_staff_sessions()
    _create_sign_in_failures()
    _create_api_tokens()
    _create_audit()


def downgrade() -> None:
    """Drop them again, with all they hold."""
    op.drop_table("audit")
    op.drop_table("api_tokens")
    op.drop_table("sign_in_failures")
    op.drop_table("staff_sessions")
    op.drop_table("staff")
    op.drop_table("shop_versions")
    op.drop_table("shops")
    op.drop_table("leases")
    op.drop_table("heartbeats")


def _create_heartbeats() -> None:
    op.create_table(
        "heartbeats",
        sa.Column("name", sa.String(length=100), nullable=False),
        sa.Column("at", sa.DateTime(timezone=True), nullable=False),
        sa.PrimaryKeyConstraint("name", name=op.f("pk_heartbeats")),
    )


def _create_leases() -> None:
    op.create_table(
        "leases",
        sa.Column("name", sa.String(length=100), nullable=False),
        sa.Column("holder", sa.String(length=200), nullable=False),
        sa.Column("term", sa.Integer(), nullable=False),
        sa.Column("until", sa.DateTime(timezone=True), nullable=False),
        sa.PrimaryKeyConstraint("name", name=op.f("pk_leases")),
    )


def _create_shops() -> None:
    op.create_table(
        "shops",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("code", sa.String(length=200), nullable=False),
        sa.Column("name", sa.String(length=200), nullable=False),
        sa.Column("zone", sa.String(length=200), nullable=False),
        sa.Column("phone", sa.String(length=200), nullable=False),
        sa.Column("texts_from", sa.String(length=200), nullable=False),
        sa.Column("address", sa.String(length=200), nullable=False),
        sa.Column("country", sa.String(length=200), nullable=False),
        sa.Column("state", sa.String(length=200), nullable=True),
        sa.Column("roadside_phone", sa.String(length=200), nullable=True),
        sa.Column("order", sa.String(length=200), nullable=False),
        sa.Column("registration", sa.String(length=200), nullable=True),
        sa.Column("created_at", sa.DateTime(timezone=True), nullable=False),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_shops")),
        sa.UniqueConstraint("code", name=op.f("uq_shops_code")),
        sa.UniqueConstraint("texts_from", name=op.f("uq_shops_texts_from")),
    )


def _create_shop_versions() -> None:
    op.create_table(
        "shop_versions",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("shop_id", sa.Integer(), nullable=False),
        sa.Column("kind", sa.String(length=200), nullable=False),
        sa.Column("version", sa.Integer(), nullable=False),
        sa.Column("author", sa.String(length=200), nullable=False),
        sa.Column("at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("body", sa.JSON(none_as_null=True), nullable=False),
        sa.Column("because", sa.Text(), nullable=True),
        sa.CheckConstraint("kind IN ('rules', 'duty')", name=op.f("ck_shop_versions_kind_known")),
        sa.ForeignKeyConstraint(["shop_id"], ["shops.id"], name=op.f("fk_shop_versions_shop_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_shop_versions")),
        sa.UniqueConstraint("shop_id", "kind", "version", name=op.f("uq_shop_versions_shop_id_kind_version")),
    )
    op.create_index(op.f("ix_shop_versions_shop_id"), "shop_versions", ["shop_id"], unique=False)


def _create_staff() -> None:
    op.create_table(
        "staff",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("shop_id", sa.Integer(), nullable=False),
        sa.Column("login", sa.String(length=200), nullable=False),
        sa.Column("name", sa.String(length=200), nullable=False),
        sa.Column("role", sa.String(length=200), nullable=False),
        sa.Column("password_hash", sa.String(length=200), nullable=True),
        sa.Column("phone", sa.String(length=200), nullable=True),
        sa.Column("takes_alert_texts", sa.Boolean(), nullable=False),
        sa.Column("is_active", sa.Boolean(), nullable=False),
        sa.Column("created_at", sa.DateTime(timezone=True), nullable=False),
        sa.CheckConstraint("role IN ('technician', 'advisor', 'manager', 'owner')", name=op.f("ck_staff_role_known")),
        sa.ForeignKeyConstraint(["shop_id"], ["shops.id"], name=op.f("fk_staff_shop_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_staff")),
        sa.UniqueConstraint("shop_id", "login", name=op.f("uq_staff_shop_id_login")),
    )
    op.create_index(op.f("ix_staff_shop_id"), "staff", ["shop_id"], unique=False)


def _create_staff_sessions() -> None:
    op.create_table(
        "staff_sessions",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("shop_id", sa.Integer(), nullable=False),
        sa.Column("staff_id", sa.Integer(), nullable=False),
        sa.Column("token_hash", sa.String(length=200), nullable=False),
        sa.Column("created_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("seen_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("ended_at", sa.DateTime(timezone=True), nullable=True),
        sa.ForeignKeyConstraint(["shop_id"], ["shops.id"], name=op.f("fk_staff_sessions_shop_id")),
        sa.ForeignKeyConstraint(["staff_id"], ["staff.id"], name=op.f("fk_staff_sessions_staff_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_staff_sessions")),
    )
    op.create_index(op.f("ix_staff_sessions_shop_id"), "staff_sessions", ["shop_id"], unique=False)
    op.create_index(op.f("ix_staff_sessions_staff_id"), "staff_sessions", ["staff_id"], unique=False)
    op.create_index(op.f("ix_staff_sessions_token_hash"), "staff_sessions", ["token_hash"], unique=False)


def _create_sign_in_failures() -> None:
    op.create_table(
        "sign_in_failures",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("shop_id", sa.Integer(), nullable=False),
        sa.Column("login", sa.String(length=200), nullable=False),
        sa.Column("address", sa.String(length=200), nullable=False),
        sa.Column("at", sa.DateTime(timezone=True), nullable=False),
        sa.ForeignKeyConstraint(["shop_id"], ["shops.id"], name=op.f("fk_sign_in_failures_shop_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_sign_in_failures")),
    )
    op.create_index(op.f("ix_sign_in_failures_address"), "sign_in_failures", ["address"], unique=False)
    op.create_index(op.f("ix_sign_in_failures_login"), "sign_in_failures", ["login"], unique=False)
    op.create_index(op.f("ix_sign_in_failures_shop_id"), "sign_in_failures", ["shop_id"], unique=False)


def _create_api_tokens() -> None:
    op.create_table(
        "api_tokens",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("shop_id", sa.Integer(), nullable=False),
        sa.Column("name", sa.String(length=200), nullable=False),
        sa.Column("token_hash", sa.String(length=200), nullable=False),
        sa.Column("created_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("revoked_at", sa.DateTime(timezone=True), nullable=True),
        sa.ForeignKeyConstraint(["shop_id"], ["shops.id"], name=op.f("fk_api_tokens_shop_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_api_tokens")),
        sa.UniqueConstraint("shop_id", "name", name=op.f("uq_api_tokens_shop_id_name")),
    )
    op.create_index(op.f("ix_api_tokens_shop_id"), "api_tokens", ["shop_id"], unique=False)
    op.create_index(op.f("ix_api_tokens_token_hash"), "api_tokens", ["token_hash"], unique=False)


def _create_audit() -> None:
    op.create_table(
        "audit",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("shop_id", sa.Integer(), nullable=False),
        sa.Column("at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("who", sa.String(length=200), nullable=False),
        sa.Column("did", sa.String(length=200), nullable=False),
        sa.Column("subject", sa.String(length=200), nullable=False),
        sa.Column("before", sa.JSON(none_as_null=True), nullable=True),
        sa.Column("after", sa.JSON(none_as_null=True), nullable=True),
        sa.ForeignKeyConstraint(["shop_id"], ["shops.id"], name=op.f("fk_audit_shop_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_audit")),
    )
    op.create_index(op.f("ix_audit_shop_id"), "audit", ["shop_id"], unique=False)
