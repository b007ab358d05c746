"""From which day on planning reads a due window: asked of a column with an index, not of each window's curve."""

from __future__ import annotations

import math
from datetime import date, timedelta

import sqlalchemy as sa
from alembic import op

revision = "0021"
down_revision = "0020"
branch_labels = None
depends_on = None

# The point of a curve below a chance of 10 %, and what stands for no day at all, as `storage/windows.py` had them.
_PLACE, _NEVER, _LONGEST_DAYS = 4, date(9999, 12, 31), 100_000.0
_AT_ONCE = 5_000


def upgrade() -> None:
    """Bring the database to this version."""
    op.add_column("due_windows", sa.Column("near_on", sa.Date(), nullable=True))
    _fill(op.get_bind())
    op.create_index(
        "ix_due_windows_near", "due_windows", ["shop_id", "near_on", "vehicle_id"],
        sqlite_where=sa.text("is_current IS 1"), postgresql_where=sa.text("is_current IS true"),
    )  # fmt: skip


def _fill(connection: sa.Connection) -> None:
    table = sa.table(
        "due_windows", sa.column("id", sa.Integer()), sa.column("as_of", sa.Date()), sa.column("body", sa.JSON()),
        sa.column("is_current", sa.Boolean()), sa.column("near_on", sa.Date()),
    )  # fmt: skip
    curve, legal = (table.c.body[(*path, "days", _PLACE)].as_float() for path in (("curve",), ("legal", "curve")))
    query = sa.select(table.c.id, table.c.as_of, curve, legal, table.c.body[("legal", "is_past")].as_boolean())
    query = query.where(table.c.is_current.is_(True)).order_by(table.c.id).limit(_AT_ONCE)
    keep = table.update().where(table.c.id == sa.bindparam("row")).values(near_on=sa.bindparam("day"))
    last = 0
    while found := connection.execute(query.where(table.c.id > last)).all():
        connection.execute(keep, [{"row": row_id, "day": _near_on(*known)} for row_id, *known in found])
        last = found[-1][0]


def _near_on(as_of: date, due: float | None, legal: float | None, is_past: bool | None) -> date:
    days = [one for one in (due, legal, 0.0 if is_past else None) if one is not None]
    soonest = min(days, default=math.inf)
    return _NEVER if soonest > _LONGEST_DAYS else as_of + timedelta(days=math.ceil(soonest))


def downgrade() -> None:
    """Take this version back."""
    op.drop_index("ix_due_windows_near", "due_windows")
    op.drop_column("due_windows", "near_on")
