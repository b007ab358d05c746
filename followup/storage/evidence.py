"""What the present windows of a car rest on, for pages that show why; the windows themselves are in `windows.py`.

Only the present ones are kept: planning and scoring never read them. Windows of tires that are stored, not on the car,
are kept here too, beside their evidence.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Any

from sqlalchemy import Connection, delete, select

from followup.core.forecast.window import DueWindow
from followup.storage import rows, tables, windows
from followup.storage.rows import Row

_FORGET = delete(tables.due_evidence).where(tables.due_evidence.c.vehicle_id.in_(rows.among("vehicle_ids")))
_ADD = tables.due_evidence.insert()
_WINDOW_FIELDS = set(DueWindow.__dataclass_fields__)


@dataclass(frozen=True)
class KeptEvidence:
    """The evidence of one window; `window` is the window itself where it is of a stored set."""

    item: str
    position: str
    stored_set: str | None
    evidence: dict[str, Any]
    window: dict[str, Any] | None = None


def replace_evidence(connection: Connection, shop_id: int, cars: Mapping[int, list[KeptEvidence]]) -> None:
    """Keep this, by car, in place of what was kept of these cars."""
    connection.execute(_FORGET, {"vehicle_ids": list(cars)})
    made = [
        {
            "shop_id": shop_id, "vehicle_id": vehicle_id, "item": one.item, "position": one.position,
            "stored_set": one.stored_set or "", "evidence": one.evidence, "stored_window": one.window,
        }
        for vehicle_id, kept in cars.items()
        for one in kept
    ]  # fmt: skip
    if made:
        connection.execute(_ADD, made)


def windows_with_evidence(connection: Connection, vehicle_id: int) -> list[DueWindow]:
    """The present windows of a car, each with its evidence where some was kept; those of stored sets at the end."""
    table = tables.due_evidence
    query = select(table).where(table.c.vehicle_id == vehicle_id).order_by(table.c.id)
    kept = {(row["item"], row["position"], row["stored_set"]): row for row in rows.every(connection, query)}
    present = [
        _window(row["body"], kept.get((row["item"], row["position"], "")))
        for row in windows.windows_of(connection, vehicle_id)
    ]
    return present + [_window(row["stored_window"], row) for row in kept.values() if row["stored_window"] is not None]


def _window(body: dict[str, Any], kept: Row | None) -> DueWindow:
    """The window of a kept body; what stands beside it there is left out."""
    told = {name: value for name, value in body.items() if name in _WINDOW_FIELDS}
    return DueWindow.from_json(told | {"evidence": kept["evidence"] if kept else None})
