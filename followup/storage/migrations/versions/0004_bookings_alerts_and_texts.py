"""Booking requests, alerts, and the texts out, which point at both."""

from __future__ import annotations

from typing import Any

import sqlalchemy as sa
from alembic import op

revision = "0004"
down_revision = "0003"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Make the tables, those first that others point at."""
    _create_booking_requests()
    _create_booking_moves()
    _create_alerts()
    _create_alert_tellings()
    _create_texts()


def downgrade() -> None:
    """Drop them again, with all they hold."""
    op.drop_table("texts")
    op.drop_table("alert_tellings")
    op.drop_table("alerts")
    op.drop_table("booking_moves")
    op.drop_table("booking_requests")


def _columns_of_booking_requests() -> list[sa.Column[Any]]:
    return [
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("shop_id", sa.Integer(), nullable=False),
        sa.Column("phone_id", sa.Integer(), nullable=True),
        sa.Column("person_id", sa.Integer(), nullable=False),
        sa.Column("vehicle_id", sa.Integer(), nullable=False),
        sa.Column("state", sa.String(length=200), nullable=False),
        sa.Column("came_from", sa.String(length=200), nullable=False),
        sa.Column("inbound_id", sa.Integer(), nullable=True),
        sa.Column("reason_id", sa.Integer(), nullable=True),
        sa.Column("verbatim", sa.Text(), nullable=False),
        sa.Column("understood", sa.JSON(none_as_null=True), nullable=True),
        sa.Column("wanted", sa.JSON(none_as_null=True), nullable=False),
        sa.Column("avoid", sa.JSON(none_as_null=True), nullable=False),
        sa.Column("needs", sa.JSON(none_as_null=True), nullable=False),
        sa.Column("items", sa.JSON(none_as_null=True), nullable=False),
        sa.Column("hours", sa.JSON(none_as_null=True), nullable=False),
        sa.Column("parts", sa.String(length=200), nullable=False),
        sa.Column("parts_on", sa.Date(), nullable=True),
        sa.Column("payer", sa.String(length=200), nullable=False),
        sa.Column("slot_at", sa.DateTime(timezone=True), nullable=True),
        sa.Column("offered", sa.JSON(none_as_null=True), nullable=False),
        sa.Column("offered_until", sa.DateTime(timezone=True), nullable=True),
        sa.Column("replaces_id", sa.Integer(), nullable=True),
        sa.Column("note", sa.Text(), nullable=True),
        sa.Column("asked_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("changed_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("closed_because", sa.String(length=200), nullable=True),
        sa.Column("version", sa.Integer(), nullable=False),
    ]


def _create_booking_requests() -> None:
    op.create_table(
        "booking_requests",
        *_columns_of_booking_requests(),
        sa.CheckConstraint(
            "parts IN ('unknown', 'not_needed', 'in_stock', 'order', 'ordered')",
            name=op.f("ck_booking_requests_parts_known"),
        ),
        sa.CheckConstraint(
            "payer IN ('customer', 'warranty', 'prepaid', 'contract', 'fleet', 'insurance', 'goodwill')",
            name=op.f("ck_booking_requests_payer_known"),
        ),
        sa.CheckConstraint(
            "state IN ('asked', 'offered', 'confirmed', 'kept', 'missed', 'closed')",
            name=op.f("ck_booking_requests_state_known"),
        ),
        sa.ForeignKeyConstraint(["inbound_id"], ["inbound.id"], name=op.f("fk_booking_requests_inbound_id")),
        sa.ForeignKeyConstraint(["person_id"], ["persons.id"], name=op.f("fk_booking_requests_person_id")),
        sa.ForeignKeyConstraint(["phone_id"], ["phones.id"], name=op.f("fk_booking_requests_phone_id")),
        sa.ForeignKeyConstraint(["reason_id"], ["reasons.id"], name=op.f("fk_booking_requests_reason_id")),
        sa.ForeignKeyConstraint(["replaces_id"], ["booking_requests.id"], name=op.f("fk_booking_requests_replaces_id")),
        sa.ForeignKeyConstraint(["shop_id"], ["shops.id"], name=op.f("fk_booking_requests_shop_id")),
        sa.ForeignKeyConstraint(["vehicle_id"], ["vehicles.id"], name=op.f("fk_booking_requests_vehicle_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_booking_requests")),
    )
    op.create_index(op.f("ix_booking_requests_inbound_id"), "booking_requests", ["inbound_id"], unique=False)
    op.create_index(op.f("ix_booking_requests_person_id"), "booking_requests", ["person_id"], unique=False)
    op.create_index(op.f("ix_booking_requests_phone_id"), "booking_requests", ["phone_id"], unique=False)
    op.create_index(op.f("ix_booking_requests_reason_id"), "booking_requests", ["reason_id"], unique=False)
    op.create_index(op.f("ix_booking_requests_replaces_id"), "booking_requests", ["replaces_id"], unique=False)
    op.create_index(op.f("ix_booking_requests_shop_id"), "booking_requests", ["shop_id"], unique=False)
    op.create_index(op.f("ix_booking_requests_vehicle_id"), "booking_requests", ["vehicle_id"], unique=False)


def _create_booking_moves() -> None:
    op.create_table(
        "booking_moves",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("shop_id", sa.Integer(), nullable=False),
        sa.Column("request_id", sa.Integer(), nullable=False),
        sa.Column("at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("who", sa.String(length=200), nullable=False),
        sa.Column("from_state", sa.String(length=200), nullable=False),
        sa.Column("to_state", sa.String(length=200), nullable=False),
        sa.Column("says", sa.Text(), nullable=True),
        sa.ForeignKeyConstraint(["request_id"], ["booking_requests.id"], name=op.f("fk_booking_moves_request_id")),
        sa.ForeignKeyConstraint(["shop_id"], ["shops.id"], name=op.f("fk_booking_moves_shop_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_booking_moves")),
    )
    op.create_index(op.f("ix_booking_moves_request_id"), "booking_moves", ["request_id"], unique=False)
    op.create_index(op.f("ix_booking_moves_shop_id"), "booking_moves", ["shop_id"], unique=False)


def _create_alerts() -> None:
    op.create_table(
        "alerts",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("shop_id", sa.Integer(), nullable=False),
        sa.Column("kind", sa.String(length=200), nullable=False),
        sa.Column("phone_id", sa.Integer(), nullable=True),
        sa.Column("person_id", sa.Integer(), nullable=True),
        sa.Column("vehicle_id", sa.Integer(), nullable=True),
        sa.Column("inbound_id", sa.Integer(), nullable=True),
        sa.Column("request_id", sa.Integer(), nullable=True),
        sa.Column("says", sa.Text(), nullable=False),
        sa.Column("raised_by", sa.String(length=200), nullable=False),
        sa.Column("raised_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("next_at", sa.DateTime(timezone=True), nullable=True),
        sa.Column("step", sa.Integer(), nullable=False),
        sa.Column("acknowledged_at", sa.DateTime(timezone=True), nullable=True),
        sa.Column("acknowledged_by", sa.Integer(), nullable=True),
        sa.Column("closed_at", sa.DateTime(timezone=True), nullable=True),
        sa.Column("outcome", sa.Text(), nullable=True),
        sa.ForeignKeyConstraint(["acknowledged_by"], ["staff.id"], name=op.f("fk_alerts_acknowledged_by")),
        sa.ForeignKeyConstraint(["inbound_id"], ["inbound.id"], name=op.f("fk_alerts_inbound_id")),
        sa.ForeignKeyConstraint(["person_id"], ["persons.id"], name=op.f("fk_alerts_person_id")),
        sa.ForeignKeyConstraint(["phone_id"], ["phones.id"], name=op.f("fk_alerts_phone_id")),
        sa.ForeignKeyConstraint(["request_id"], ["booking_requests.id"], name=op.f("fk_alerts_request_id")),
        sa.ForeignKeyConstraint(["shop_id"], ["shops.id"], name=op.f("fk_alerts_shop_id")),
        sa.ForeignKeyConstraint(["vehicle_id"], ["vehicles.id"], name=op.f("fk_alerts_vehicle_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_alerts")),
        sa.UniqueConstraint("shop_id", "kind", "raised_by", name=op.f("uq_alerts_shop_id_kind_raised_by")),
    )
    op.create_index(op.f("ix_alerts_acknowledged_by"), "alerts", ["acknowledged_by"], unique=False)
    op.create_index(op.f("ix_alerts_inbound_id"), "alerts", ["inbound_id"], unique=False)
    op.create_index(op.f("ix_alerts_person_id"), "alerts", ["person_id"], unique=False)
    op.create_index(op.f("ix_alerts_phone_id"), "alerts", ["phone_id"], unique=False)
    op.create_index(op.f("ix_alerts_request_id"), "alerts", ["request_id"], unique=False)
    op.create_index(op.f("ix_alerts_shop_id"), "alerts", ["shop_id"], unique=False)
    op.create_index(op.f("ix_alerts_vehicle_id"), "alerts", ["vehicle_id"], unique=False)


def _create_alert_tellings() -> None:
    op.create_table(
        "alert_tellings",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("shop_id", sa.Integer(), nullable=False),
        sa.Column("alert_id", sa.Integer(), nullable=False),
        sa.Column("staff_id", sa.Integer(), nullable=False),
        sa.Column("at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("how", sa.String(length=200), nullable=False),
        sa.ForeignKeyConstraint(["alert_id"], ["alerts.id"], name=op.f("fk_alert_tellings_alert_id")),
        sa.ForeignKeyConstraint(["shop_id"], ["shops.id"], name=op.f("fk_alert_tellings_shop_id")),
        sa.ForeignKeyConstraint(["staff_id"], ["staff.id"], name=op.f("fk_alert_tellings_staff_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_alert_tellings")),
        sa.UniqueConstraint("alert_id", "staff_id", "how", name=op.f("uq_alert_tellings_alert_id_staff_id_how")),
    )
    op.create_index(op.f("ix_alert_tellings_alert_id"), "alert_tellings", ["alert_id"], unique=False)
    op.create_index(op.f("ix_alert_tellings_shop_id"), "alert_tellings", ["shop_id"], unique=False)
    op.create_index(op.f("ix_alert_tellings_staff_id"), "alert_tellings", ["staff_id"], unique=False)


def _columns_of_texts() -> list[sa.Column[Any]]:
    return [
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("shop_id", sa.Integer(), nullable=False),
        sa.Column("public_id", sa.String(length=200), nullable=False),
        sa.Column("phone_id", sa.Integer(), nullable=True),
        sa.Column("number", sa.String(length=200), nullable=False),
        sa.Column("kind", sa.String(length=200), nullable=False),
        sa.Column("reason_id", sa.Integer(), nullable=False),
        sa.Column("reason", sa.String(length=200), nullable=False),
        sa.Column("try_no", sa.Integer(), nullable=False),
        sa.Column("vehicle_id", sa.Integer(), nullable=True),
        sa.Column("request_id", sa.Integer(), nullable=True),
        sa.Column("alert_id", sa.Integer(), nullable=True),
        sa.Column("language", sa.String(length=200), nullable=False),
        sa.Column("facts", sa.JSON(none_as_null=True), nullable=False),
        sa.Column("body", sa.Text(), nullable=True),
        sa.Column("wording_version", sa.Integer(), nullable=True),
        sa.Column("segments", sa.Integer(), nullable=True),
        sa.Column("state", sa.String(length=200), nullable=False),
        sa.Column("state_because", sa.String(length=200), nullable=True),
        sa.Column("planned_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("due_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("valid_until", sa.DateTime(timezone=True), nullable=True),
        sa.Column("attempt", sa.Integer(), nullable=False),
        sa.Column("claimed_by", sa.String(length=200), nullable=True),
        sa.Column("claimed_until", sa.DateTime(timezone=True), nullable=True),
        sa.Column("in_flight_at", sa.DateTime(timezone=True), nullable=True),
        sa.Column("sent_at", sa.DateTime(timezone=True), nullable=True),
        sa.Column("provider_id", sa.String(length=200), nullable=True),
        sa.Column("delivery", sa.String(length=200), nullable=True),
        sa.Column("error_code", sa.String(length=200), nullable=True),
        sa.Column("looks", sa.Integer(), nullable=False),
        sa.Column("look_at", sa.DateTime(timezone=True), nullable=True),
        sa.Column("asks", sa.String(length=200), nullable=True),
        sa.Column("offered", sa.JSON(none_as_null=True), nullable=True),
        sa.Column("author_id", sa.Integer(), nullable=True),
    ]


def _create_texts() -> None:
    op.create_table(
        "texts",
        *_columns_of_texts(),
        sa.CheckConstraint("kind IN ('invite', 'visit', 'answer', 'alert')", name=op.f("ck_texts_kind_known")),
        sa.CheckConstraint(
            "state IN ('planned', 'claimed', 'in_flight', 'sent', 'failed', 'unknown', 'held', 'dropped')",
            name=op.f("ck_texts_state_known"),
        ),
        sa.ForeignKeyConstraint(["alert_id"], ["alerts.id"], name=op.f("fk_texts_alert_id")),
        sa.ForeignKeyConstraint(["author_id"], ["staff.id"], name=op.f("fk_texts_author_id")),
        sa.ForeignKeyConstraint(["phone_id"], ["phones.id"], name=op.f("fk_texts_phone_id")),
        sa.ForeignKeyConstraint(["reason_id"], ["reasons.id"], name=op.f("fk_texts_reason_id")),
        sa.ForeignKeyConstraint(["request_id"], ["booking_requests.id"], name=op.f("fk_texts_request_id")),
        sa.ForeignKeyConstraint(["shop_id"], ["shops.id"], name=op.f("fk_texts_shop_id")),
        sa.ForeignKeyConstraint(["vehicle_id"], ["vehicles.id"], name=op.f("fk_texts_vehicle_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_texts")),
        sa.UniqueConstraint("provider_id", name=op.f("uq_texts_provider_id")),
        sa.UniqueConstraint("public_id", name=op.f("uq_texts_public_id")),
        sa.UniqueConstraint(
            "shop_id", "number", "reason_id", "try_no", name=op.f("uq_texts_shop_id_number_reason_id_try_no")
        ),
    )
    op.create_index(op.f("ix_texts_alert_id"), "texts", ["alert_id"], unique=False)
    op.create_index(op.f("ix_texts_author_id"), "texts", ["author_id"], unique=False)
    op.create_index(op.f("ix_texts_phone_id"), "texts", ["phone_id"], unique=False)
    op.create_index("ix_texts_queue", "texts", ["shop_id", "state", "due_at"], unique=False)
    op.create_index(op.f("ix_texts_reason_id"), "texts", ["reason_id"], unique=False)
    op.create_index(op.f("ix_texts_request_id"), "texts", ["request_id"], unique=False)
    op.create_index(op.f("ix_texts_shop_id"), "texts", ["shop_id"], unique=False)
    op.create_index(op.f("ix_texts_vehicle_id"), "texts", ["vehicle_id"], unique=False)
