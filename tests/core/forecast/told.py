"""Cars for tests of the forecast, told through the inspection contract as a shop would."""

from datetime import date, datetime
from typing import Any

from followup.core.forecast.due import forecast_cars
from followup.core.forecast.history import CarHistory, history_of_lines
from followup.core.forecast.window import DueWindow
from followup.core.inspection import read_line
from followup.core.items import BY_CODE
from tests.core.lines import line_text

NOW = datetime(2026, 11, 24, 12, 0)  # noqa: DTZ001  # wall time at the shop


def tread(value: float | list[float], position: str = "front_left", unit: str = "32nds", **more: Any) -> dict[str, Any]:
    """A reading of one tire."""
    depth = {"across": value} if isinstance(value, list) else {"value": value}
    return {"item": "tire_tread", "position": position, "unit": unit, **depth, **more}


def pad(value: float, position: str = "front_left", unit: str = "mm", **more: Any) -> dict[str, Any]:
    """A reading of one pad."""
    return {"item": "brake_pad", "position": position, "unit": unit, "value": value, **more}


def visit(on: str, miles: float | None, *readings: dict[str, Any], **more: Any) -> dict[str, Any]:
    """One inspection of the car V-1, first used on 2020-01-01 unless `vehicle` says otherwise."""
    told: dict[str, Any] = {
        "inspection": f"I-{on}",
        "inspected_at": f"{on}T09:00",
        "vehicle": {"id": "V-1", "class": "car", "driven": "front", "first_used_on": "2020-01-01"},
        "readings": list(readings),
    }
    if miles is not None:
        told |= {"odometer": miles, "unit": "mi"}
    return told | more


def history(*visits: dict[str, Any]) -> CarHistory:
    """The history of one car."""
    found = history_of_lines(read_line(line_text(**one), NOW, BY_CODE) for one in visits)
    assert len(found) == 1
    return found[0]


def windows(*visits: dict[str, Any], as_of: str = "last", **more: Any) -> dict[tuple[str, str], DueWindow]:
    """Due windows of one car by item and position."""
    on = date.fromisoformat(as_of) if as_of != "last" else "last"
    found = forecast_cars([history(*visits)], on, **more)  # type: ignore[arg-type]  # mypy widens the literal "last"
    return {(one.item, one.position): one for one in found}


def window(*visits: dict[str, Any], as_of: str = "last", **more: Any) -> DueWindow:
    """The one due window of a car with a single reading place."""
    found = windows(*visits, as_of=as_of, **more)
    assert len(found) == 1, list(found)
    return next(iter(found.values()))
