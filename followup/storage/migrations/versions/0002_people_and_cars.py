"""People, their phones and consents, their cars, and what was measured on these."""

from __future__ import annotations

import sqlalchemy as sa
from alembic import op

revision = "0002"
down_revision = "0001"
branch_labels = None
depends_on = None


def upgrade() -> None:
    """Make the tables, those first that others point at."""
    _create_phones()
    _create_persons()
    _create_person_phones()
    _create_vehicles()
    _create_ties()
    _create_consents()
    _create_visits()
    _create_inspections()
    _create_work_done()
    _create_recommendations()
    _create_recalls()
    _create_due_windows()
    _create_odometer_tellings()


def downgrade() -> None:
    """Drop them again, with all they hold."""
    op.drop_table("odometer_tellings")
    op.drop_table("due_windows")
    op.drop_table("recalls")
    op.drop_table("recommendations")
    op.drop_table("work_done")
    op.drop_table("inspections")
    op.drop_table("visits")
    op.drop_table("consents")
    op.drop_table("ties")
    op.drop_table("vehicles")
    op.drop_table("person_phones")
    op.drop_table("persons")
    op.drop_table("phones")


def _create_phones() -> None:
    op.create_table(
        "phones",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("shop_id", sa.Integer(), nullable=False),
        sa.Column("number", sa.String(length=200), nullable=False),
        sa.Column("zones", sa.JSON(none_as_null=True), nullable=False),
        sa.Column("line", sa.String(length=200), nullable=False),
        sa.Column("language", sa.String(length=200), nullable=True),
        sa.Column("bad_because", sa.String(length=200), nullable=True),
        sa.Column("created_at", sa.DateTime(timezone=True), nullable=False),
        sa.ForeignKeyConstraint(["shop_id"], ["shops.id"], name=op.f("fk_phones_shop_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_phones")),
        sa.UniqueConstraint("shop_id", "number", name=op.f("uq_phones_shop_id_number")),
    )
    op.create_index(op.f("ix_phones_shop_id"), "phones", ["shop_id"], unique=False)


def _create_persons() -> None:
    op.create_table(
        "persons",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("shop_id", sa.Integer(), nullable=False),
        sa.Column("code", sa.String(length=200), nullable=False),
        sa.Column("name", sa.String(length=200), nullable=True),
        sa.Column("language", sa.String(length=200), nullable=True),
        sa.Column("paused_until", sa.Date(), nullable=True),
        sa.Column("is_deceased", sa.Boolean(), nullable=False),
        sa.Column("is_fleet", sa.Boolean(), nullable=False),
        sa.Column("advisor_id", sa.Integer(), nullable=True),
        sa.Column("told_on", sa.Date(), nullable=True),
        sa.Column("created_at", sa.DateTime(timezone=True), nullable=False),
        sa.ForeignKeyConstraint(["advisor_id"], ["staff.id"], name=op.f("fk_persons_advisor_id")),
        sa.ForeignKeyConstraint(["shop_id"], ["shops.id"], name=op.f("fk_persons_shop_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_persons")),
        sa.UniqueConstraint("shop_id", "code", name=op.f("uq_persons_shop_id_code")),
    )
    op.create_index(op.f("ix_persons_advisor_id"), "persons", ["advisor_id"], unique=False)
    op.create_index(op.f("ix_persons_shop_id"), "persons", ["shop_id"], unique=False)


def _create_person_phones() -> None:
    op.create_table(
        "person_phones",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("shop_id", sa.Integer(), nullable=False),
        sa.Column("person_id", sa.Integer(), nullable=False),
        sa.Column("phone_id", sa.Integer(), nullable=False),
        sa.Column("from_on", sa.Date(), nullable=True),
        sa.Column("to_on", sa.Date(), nullable=True),
        sa.Column("ended_because", sa.String(length=200), nullable=True),
        sa.ForeignKeyConstraint(["person_id"], ["persons.id"], name=op.f("fk_person_phones_person_id")),
        sa.ForeignKeyConstraint(["phone_id"], ["phones.id"], name=op.f("fk_person_phones_phone_id")),
        sa.ForeignKeyConstraint(["shop_id"], ["shops.id"], name=op.f("fk_person_phones_shop_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_person_phones")),
        sa.UniqueConstraint("person_id", "phone_id", name=op.f("uq_person_phones_person_id_phone_id")),
    )
    op.create_index(op.f("ix_person_phones_person_id"), "person_phones", ["person_id"], unique=False)
    op.create_index(op.f("ix_person_phones_phone_id"), "person_phones", ["phone_id"], unique=False)
    op.create_index(op.f("ix_person_phones_shop_id"), "person_phones", ["shop_id"], unique=False)


def _create_vehicles() -> None:
    op.create_table(
        "vehicles",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("shop_id", sa.Integer(), nullable=False),
        sa.Column("code", sa.String(length=200), nullable=False),
        sa.Column("facts", sa.JSON(none_as_null=True), nullable=False),
        sa.Column("created_at", sa.DateTime(timezone=True), nullable=False),
        sa.ForeignKeyConstraint(["shop_id"], ["shops.id"], name=op.f("fk_vehicles_shop_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_vehicles")),
        sa.UniqueConstraint("shop_id", "code", name=op.f("uq_vehicles_shop_id_code")),
    )
    op.create_index(op.f("ix_vehicles_shop_id"), "vehicles", ["shop_id"], unique=False)


def _create_ties() -> None:
    op.create_table(
        "ties",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("shop_id", sa.Integer(), nullable=False),
        sa.Column("person_id", sa.Integer(), nullable=False),
        sa.Column("vehicle_id", sa.Integer(), nullable=False),
        sa.Column("role", sa.String(length=200), nullable=False),
        sa.Column("from_on", sa.Date(), nullable=True),
        sa.Column("to_on", sa.Date(), nullable=True),
        sa.Column("ended_because", sa.String(length=200), nullable=True),
        sa.CheckConstraint("role IN ('owner', 'driver', 'payer')", name=op.f("ck_ties_role_known")),
        sa.ForeignKeyConstraint(["person_id"], ["persons.id"], name=op.f("fk_ties_person_id")),
        sa.ForeignKeyConstraint(["shop_id"], ["shops.id"], name=op.f("fk_ties_shop_id")),
        sa.ForeignKeyConstraint(["vehicle_id"], ["vehicles.id"], name=op.f("fk_ties_vehicle_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_ties")),
        sa.UniqueConstraint("person_id", "vehicle_id", "role", name=op.f("uq_ties_person_id_vehicle_id_role")),
    )
    op.create_index(op.f("ix_ties_person_id"), "ties", ["person_id"], unique=False)
    op.create_index(op.f("ix_ties_shop_id"), "ties", ["shop_id"], unique=False)
    op.create_index(op.f("ix_ties_vehicle_id"), "ties", ["vehicle_id"], unique=False)


def _create_consents() -> None:
    op.create_table(
        "consents",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("shop_id", sa.Integer(), nullable=False),
        sa.Column("number", sa.String(length=200), nullable=True),
        sa.Column("number_hash", sa.String(length=200), nullable=False),
        sa.Column("event", sa.String(length=200), nullable=False),
        sa.Column("covers", sa.JSON(none_as_null=True), nullable=False),
        sa.Column("at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("given_on", sa.Date(), nullable=False),
        sa.Column("how", sa.String(length=200), nullable=False),
        sa.Column("words", sa.Text(), nullable=False),
        sa.Column("words_version", sa.String(length=200), nullable=False),
        sa.Column("language", sa.String(length=200), nullable=False),
        sa.Column("is_own_and_adult", sa.Boolean(), nullable=False),
        sa.Column("because", sa.String(length=200), nullable=False),
        sa.Column("kept_by", sa.String(length=200), nullable=False),
        sa.CheckConstraint(
            "event IN ('given', 'narrowed', 'taken_back', 'given_again')", name=op.f("ck_consents_event_known")
        ),
        sa.ForeignKeyConstraint(["shop_id"], ["shops.id"], name=op.f("fk_consents_shop_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_consents")),
    )
    op.create_index(op.f("ix_consents_number_hash"), "consents", ["number_hash"], unique=False)
    op.create_index(op.f("ix_consents_shop_id"), "consents", ["shop_id"], unique=False)


def _create_visits() -> None:
    op.create_table(
        "visits",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("shop_id", sa.Integer(), nullable=False),
        sa.Column("code", sa.String(length=200), nullable=False),
        sa.Column("vehicle_id", sa.Integer(), nullable=False),
        sa.Column("opened_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("closed_at", sa.DateTime(timezone=True), nullable=True),
        sa.Column("odometer_miles", sa.Float(), nullable=True),
        sa.Column("content_hash", sa.String(length=200), nullable=True),
        sa.ForeignKeyConstraint(["shop_id"], ["shops.id"], name=op.f("fk_visits_shop_id")),
        sa.ForeignKeyConstraint(["vehicle_id"], ["vehicles.id"], name=op.f("fk_visits_vehicle_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_visits")),
        sa.UniqueConstraint("shop_id", "code", name=op.f("uq_visits_shop_id_code")),
    )
    op.create_index(op.f("ix_visits_shop_id"), "visits", ["shop_id"], unique=False)
    op.create_index(op.f("ix_visits_vehicle_id"), "visits", ["vehicle_id"], unique=False)


def _create_inspections() -> None:
    op.create_table(
        "inspections",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("shop_id", sa.Integer(), nullable=False),
        sa.Column("code", sa.String(length=200), nullable=False),
        sa.Column("part", sa.String(length=200), nullable=False),
        sa.Column("version", sa.Integer(), nullable=False),
        sa.Column("is_current", sa.Boolean(), nullable=False),
        sa.Column("vehicle_id", sa.Integer(), nullable=False),
        sa.Column("person_id", sa.Integer(), nullable=False),
        sa.Column("visit_id", sa.Integer(), nullable=True),
        sa.Column("inspected_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("inspected_on", sa.Date(), nullable=False),
        sa.Column("odometer_miles", sa.Float(), nullable=True),
        sa.Column("technician", sa.String(length=200), nullable=True),
        sa.Column("body", sa.JSON(none_as_null=True), nullable=False),
        sa.Column("content_hash", sa.String(length=200), nullable=False),
        sa.Column("received_at", sa.DateTime(timezone=True), nullable=False),
        sa.Column("received_by", sa.String(length=200), nullable=False),
        sa.ForeignKeyConstraint(["person_id"], ["persons.id"], name=op.f("fk_inspections_person_id")),
        sa.ForeignKeyConstraint(["shop_id"], ["shops.id"], name=op.f("fk_inspections_shop_id")),
        sa.ForeignKeyConstraint(["vehicle_id"], ["vehicles.id"], name=op.f("fk_inspections_vehicle_id")),
        sa.ForeignKeyConstraint(["visit_id"], ["visits.id"], name=op.f("fk_inspections_visit_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_inspections")),
        sa.UniqueConstraint(
            "shop_id", "code", "part", "version", name=op.f("uq_inspections_shop_id_code_part_version")
        ),
    )
    op.create_index(op.f("ix_inspections_person_id"), "inspections", ["person_id"], unique=False)
    op.create_index(op.f("ix_inspections_shop_id"), "inspections", ["shop_id"], unique=False)
    op.create_index(op.f("ix_inspections_vehicle_id"), "inspections", ["vehicle_id"], unique=False)
    op.create_index(op.f("ix_inspections_visit_id"), "inspections", ["visit_id"], unique=False)


def _create_work_done() -> None:
    op.create_table(
        "work_done",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("shop_id", sa.Integer(), nullable=False),
        sa.Column("vehicle_id", sa.Integer(), nullable=False),
        sa.Column("inspection_id", sa.Integer(), nullable=True),
        sa.Column("visit_id", sa.Integer(), nullable=True),
        sa.Column("item", sa.String(length=200), nullable=False),
        sa.Column("position", sa.String(length=200), nullable=False),
        sa.Column("did", sa.String(length=200), nullable=False),
        sa.Column("on", sa.Date(), nullable=False),
        sa.Column("odometer_miles", sa.Float(), nullable=True),
        sa.Column("moved", sa.JSON(none_as_null=True), nullable=True),
        sa.Column("kept_at", sa.DateTime(timezone=True), nullable=False),
        sa.ForeignKeyConstraint(["inspection_id"], ["inspections.id"], name=op.f("fk_work_done_inspection_id")),
        sa.ForeignKeyConstraint(["shop_id"], ["shops.id"], name=op.f("fk_work_done_shop_id")),
        sa.ForeignKeyConstraint(["vehicle_id"], ["vehicles.id"], name=op.f("fk_work_done_vehicle_id")),
        sa.ForeignKeyConstraint(["visit_id"], ["visits.id"], name=op.f("fk_work_done_visit_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_work_done")),
    )
    op.create_index(op.f("ix_work_done_inspection_id"), "work_done", ["inspection_id"], unique=False)
    op.create_index(op.f("ix_work_done_shop_id"), "work_done", ["shop_id"], unique=False)
    op.create_index(op.f("ix_work_done_vehicle_id"), "work_done", ["vehicle_id"], unique=False)
    op.create_index(op.f("ix_work_done_visit_id"), "work_done", ["visit_id"], unique=False)


def _create_recommendations() -> None:
    op.create_table(
        "recommendations",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("shop_id", sa.Integer(), nullable=False),
        sa.Column("vehicle_id", sa.Integer(), nullable=False),
        sa.Column("inspection_id", sa.Integer(), nullable=True),
        sa.Column("visit_id", sa.Integer(), nullable=True),
        sa.Column("item", sa.String(length=200), nullable=False),
        sa.Column("position", sa.String(length=200), nullable=False),
        sa.Column("decision", sa.String(length=200), nullable=False),
        sa.Column("because", sa.String(length=200), nullable=True),
        sa.Column("until", sa.Date(), nullable=True),
        sa.Column("told_by", sa.String(length=200), nullable=True),
        sa.Column("on", sa.Date(), nullable=False),
        sa.ForeignKeyConstraint(["inspection_id"], ["inspections.id"], name=op.f("fk_recommendations_inspection_id")),
        sa.ForeignKeyConstraint(["shop_id"], ["shops.id"], name=op.f("fk_recommendations_shop_id")),
        sa.ForeignKeyConstraint(["vehicle_id"], ["vehicles.id"], name=op.f("fk_recommendations_vehicle_id")),
        sa.ForeignKeyConstraint(["visit_id"], ["visits.id"], name=op.f("fk_recommendations_visit_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_recommendations")),
    )
    op.create_index(op.f("ix_recommendations_inspection_id"), "recommendations", ["inspection_id"], unique=False)
    op.create_index(op.f("ix_recommendations_shop_id"), "recommendations", ["shop_id"], unique=False)
    op.create_index(op.f("ix_recommendations_vehicle_id"), "recommendations", ["vehicle_id"], unique=False)
    op.create_index(op.f("ix_recommendations_visit_id"), "recommendations", ["visit_id"], unique=False)


def _create_recalls() -> None:
    op.create_table(
        "recalls",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("shop_id", sa.Integer(), nullable=False),
        sa.Column("vehicle_id", sa.Integer(), nullable=False),
        sa.Column("code", sa.String(length=200), nullable=False),
        sa.Column("entered_on", sa.Date(), nullable=False),
        sa.Column("done_by", sa.String(length=200), nullable=False),
        sa.Column("entered_by", sa.String(length=200), nullable=False),
        sa.Column("ended_at", sa.DateTime(timezone=True), nullable=True),
        sa.ForeignKeyConstraint(["shop_id"], ["shops.id"], name=op.f("fk_recalls_shop_id")),
        sa.ForeignKeyConstraint(["vehicle_id"], ["vehicles.id"], name=op.f("fk_recalls_vehicle_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_recalls")),
        sa.UniqueConstraint("vehicle_id", "code", name=op.f("uq_recalls_vehicle_id_code")),
    )
    op.create_index(op.f("ix_recalls_shop_id"), "recalls", ["shop_id"], unique=False)
    op.create_index(op.f("ix_recalls_vehicle_id"), "recalls", ["vehicle_id"], unique=False)


def _create_due_windows() -> None:
    op.create_table(
        "due_windows",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("shop_id", sa.Integer(), nullable=False),
        sa.Column("vehicle_id", sa.Integer(), nullable=False),
        sa.Column("item", sa.String(length=200), nullable=False),
        sa.Column("position", sa.String(length=200), nullable=False),
        sa.Column("as_of", sa.Date(), nullable=False),
        sa.Column("body", sa.JSON(none_as_null=True), nullable=False),
        sa.Column("is_current", sa.Boolean(), nullable=False),
        sa.Column("made_at", sa.DateTime(timezone=True), nullable=False),
        sa.ForeignKeyConstraint(["shop_id"], ["shops.id"], name=op.f("fk_due_windows_shop_id")),
        sa.ForeignKeyConstraint(["vehicle_id"], ["vehicles.id"], name=op.f("fk_due_windows_vehicle_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_due_windows")),
    )
    op.create_index("ix_due_windows_current", "due_windows", ["vehicle_id", "is_current"], unique=False)
    op.create_index(op.f("ix_due_windows_shop_id"), "due_windows", ["shop_id"], unique=False)
    op.create_index(op.f("ix_due_windows_vehicle_id"), "due_windows", ["vehicle_id"], unique=False)


def _create_odometer_tellings() -> None:
    op.create_table(
        "odometer_tellings",
        sa.Column("id", sa.Integer(), nullable=False),
        sa.Column("shop_id", sa.Integer(), nullable=False),
        sa.Column("vehicle_id", sa.Integer(), nullable=False),
        sa.Column("on", sa.Date(), nullable=False),
        sa.Column("miles", sa.Float(), nullable=False),
        sa.Column("told_by", sa.String(length=200), nullable=False),
        sa.Column("told_at", sa.DateTime(timezone=True), nullable=False),
        sa.ForeignKeyConstraint(["shop_id"], ["shops.id"], name=op.f("fk_odometer_tellings_shop_id")),
        sa.ForeignKeyConstraint(["vehicle_id"], ["vehicles.id"], name=op.f("fk_odometer_tellings_vehicle_id")),
        sa.PrimaryKeyConstraint("id", name=op.f("pk_odometer_tellings")),
    )
    op.create_index(op.f("ix_odometer_tellings_shop_id"), "odometer_tellings", ["shop_id"], unique=False)
    op.create_index(op.f("ix_odometer_tellings_vehicle_id"), "odometer_tellings", ["vehicle_id"], unique=False)
