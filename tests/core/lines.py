"""Lines of the inspection contract for tests, small and changeable."""

import json
from typing import Any


def line_told(**changes: Any) -> dict[str, Any]:
    """A small inspection as it was told, with `changes` on top; a change to None leaves the key out."""
    told: dict[str, Any] = {
        "inspection": "I-1",
        "inspected_at": "2026-03-02T09:10",
        "customer": {"id": "C-1"},
        "vehicle": {"id": "V-1"},
        "readings": [{"item": "washer_fluid", "level": "low"}],
    }
    told |= changes
    return {name: value for name, value in told.items() if value is not None}


def line_text(**changes: Any) -> str:
    """The same as one line of JSON."""
    return json.dumps(line_told(**changes))
