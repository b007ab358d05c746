"""Rows of own items for tests: one of every kind, each a shipped item entered once more with its numbers."""

from __future__ import annotations

from typing import Any

from followup.core.own_item import DAYS_A_MONTH

WORDS_EN = {
    "name": "hitch shoe", "what": "It holds the hitch.", "why": "It gets thinner with use.", "work": "a new hitch shoe",
}  # fmt: skip
WORDS_ES = {
    "name": "zapata de remolque", "what": "Sujeta el remolque.", "why": "Se gasta con el uso.", "work": "zapata nueva",
    "ending": "a",
}  # fmt: skip
USUAL: dict[str, Any] = {
    "part": "lift", "work": "replace it", "skill": "general", "hours": 0.5, "en": WORDS_EN, "es": WORDS_ES,
}  # fmt: skip

# By the shipped item that each row repeats, with its name.
ROWS: dict[str, dict[str, Any]] = {
    "brake_shoe": {
        **USUAL, "name": "Hitch shoe", "kind": "distance", "positions": ["rear_left", "rear_right"], "unit": "mm",
        "direction": "falls", "least": 0, "most": 12, "new_value": 4.5, "per_1000_miles": 0.035, "action_limit": 2,
        "legal_limit": 25.4 / 32, "looks": ["cracked", "dirty", "leaking"], "skill": "brakes", "by_axle": True,
        "spreads": {
            "new_spread": 0.4, "between_cars": 0.38, "between_items": 0.24, "reading_error": 0.4, "gauge_step": 0.5,
            "mate_error": 0.3, "replaced_at": 1.6, "replaced_spread": 0.6,
        },
    },
    "brake_fluid": {
        **USUAL, "name": "Winch fluid", "kind": "year", "part": "reception", "unit": "percent", "direction": "rises",
        "least": 0, "most": 10, "new_value": 0, "per_year": 1, "action_limit": 3, "looks": ["dirty", "leaking"],
        "skill": "brakes",
    },
    "cabin_filter": {
        **USUAL, "name": "Cargo filter", "kind": "life", "part": "reception", "months": 548 / DAYS_A_MONTH,
        "miles": 15_000, "looks": ["dirty"],
    },
    "oil_service": {
        **USUAL, "name": "Transfer case service", "kind": "interval", "part": "reception", "months": 274 / DAYS_A_MONTH,
        "miles": 7_500, "powertrains": ["gasoline", "diesel", "hybrid", "plug_in"],
    },
    "coolant": {
        **USUAL, "name": "Heater water", "kind": "level", "part": "reception", "months": 548 / DAYS_A_MONTH,
        "looks": ["dirty", "leaking"], "is_top_off_free": True,
    },
    "parking_brake_shoe": {
        **USUAL, "name": "Ramp pad", "kind": "looks", "positions": ["rear_left", "rear_right"], "unit": "mm",
        "least": 0, "most": 8, "action_limit": 1.5, "looks": ["cracked", "pitted", "dirty", "leaking"],
        "skill": "brakes",
    },
    "drive_belt": {
        **USUAL, "name": "Step motor", "kind": "found", "found": "works", "looks": ["cracked", "leaking"],
        "powertrains": ["gasoline", "diesel", "hybrid", "plug_in"],
    },
}  # fmt: skip
# A unit of the shop's own, rising with the miles: nothing that is shipped has it.
CLICKS = {
    **USUAL, "name": "Hitch play", "kind": "distance", "unit": "clicks", "direction": "rises", "least": 0, "most": 40,
    "new_value": 2, "per_1000_miles": 0.3, "action_limit": 20,
    "en": {**WORDS_EN, "number": "clicks"}, "es": {**WORDS_ES, "number": "clics"},
}  # fmt: skip
# Falls with time.
CHARGE = {
    **USUAL, "name": "Flashlight charge", "kind": "year", "part": "reception", "unit": "V", "direction": "falls",
    "least": 0, "most": 12, "new_value": 9, "per_year": 1.5, "action_limit": 6,
}  # fmt: skip
EVERY_KIND = [*ROWS.values(), CLICKS, CHARGE]


def reading(row: dict[str, Any], code: str, years: float = 0.0, miles: float = 0.0) -> dict[str, Any]:
    """A reading of that item so long after it was new, as the contract takes it."""
    told: dict[str, Any] = {"item": code}
    if row.get("positions"):
        told["position"] = row["positions"][0]
    if row["kind"] in ("distance", "year"):
        gone = row["per_1000_miles"] * miles / 1000 if row["kind"] == "distance" else row["per_year"] * years
        value = row["new_value"] + (gone if row.get("direction") == "rises" else -gone)
        return {**told, "value": round(value, 1), "unit": row["unit"]}
    if row.get("unit"):
        return {**told, "value": row["most"], "unit": row["unit"], "looks": "pitted"}
    return told | {
        "life": {"changed_on": "2024-12-01"},
        "interval": {"done_on": "2024-12-01", "done_odometer": 23_000, "unit": "mi"},
        "level": {"level": "ok"}, "found": {"found_as": "worn"}, "looks": {"looks": "cracked"},
    }[row["kind"]]  # fmt: skip
