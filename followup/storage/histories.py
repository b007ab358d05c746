"""Histories of cars as the forecast reads them, from inspections, visits and odometers told by text."""

from __future__ import annotations

import json
from dataclasses import replace
from typing import Any

from sqlalchemy import Connection

from followup.core.forecast.history import CarHistory, history_of_lines
from followup.core.inspection import InspectionLine
from followup.core.items import catalogue_of
from followup.core.shop import Shop
from followup.core.visit import Work
from followup.core.wall import day_of
from followup.storage import inspections
from followup.storage.rows import Row


def history_of(connection: Connection, shop: Shop, vehicle_id: int) -> CarHistory | None:
    """All that is known of a car, as the forecast reads it; None before its first inspection."""
    lines = [_line(row["body"]) for row in inspections.bodies_of_vehicle(connection, vehicle_id)]
    if not lines:
        return None
    history = history_of_lines(lines, catalogue_of(shop))[0]
    told = [(row["on"], row["miles"]) for row in inspections.odometers_told(connection, vehicle_id)]
    visits = [
        (day_of(row["opened_at"], shop.zone), row["odometer_miles"])
        for row in inspections.visits_of_vehicle(connection, vehicle_id)
        if row["odometer_miles"] is not None
    ]
    work = [_work(row) for row in inspections.work_of_vehicle(connection, vehicle_id)]
    return replace(
        history,
        odometers=tuple(sorted({*history.odometers, *told, *visits})),
        work=tuple(dict.fromkeys(work)),
    )


def _line(body: dict[str, Any]) -> InspectionLine:
    return InspectionLine.model_validate_json(json.dumps(body))


def _work(row: Row) -> Work:
    moved = tuple(sorted((row["moved"] or {}).items()))
    return Work(row["item"], row["position"], row["did"], row["on"], row["odometer_miles"], moved)
