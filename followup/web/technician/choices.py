"""The lists to choose from on the inspection form, in words."""

from __future__ import annotations

from datetime import date
from typing import Any

from followup.core.item import DID, Catalogue, in_use
from followup.core.vehicle import WALKING_ORDER
from followup.core.visit import DECISIONS, DECLINED_BECAUSE
from followup.web.sheet import HOW_WORDS, PLACES, REASONS, Part
from followup.web.technician.entered import ROTATIONS

Choices = list[tuple[str, str]]
NONE = ("", "-")


def options(*values: str) -> Choices:
    """Values as they are, their words without underscores; "" is "not told"."""
    return [(one, one.replace("_", "-") if one else "not told") for one in values]


def typed(value: Any) -> str:
    """A fact of the car as it stands in its field."""
    if value is None:
        return ""
    if isinstance(value, bool):
        return "yes" if value else "no"
    return value.isoformat() if isinstance(value, date) else str(value)


def for_page(parts: tuple[Part, ...], catalogue: Catalogue) -> dict[str, Any]:
    """Every list of the page; items are those that the car has."""
    there = {row.item.code for part in parts for row in part.rows}
    is_whole = len(parts) > 1
    return {
        "options": options,
        "how": [("", "not told"), *HOW_WORDS.items()],
        "reasons": [NONE, *REASONS.items()],
        "rest_reasons": [("", "no: it is left open"), *REASONS.items()],
        "items": [NONE, *((one.code, one.words) for one in in_use(catalogue) if not is_whole or one.code in there)],
        "positions": [("", "whole car")] + [(one, PLACES[one]) for one in WALKING_ORDER if one],
        "dids": [NONE] + [(one, one.replace("_", " ")) for one in DID if one != "rotated"],
        "decisions": [NONE] + [(one, one.replace("_", " ")) for one in DECISIONS],
        "whys": [("", "no reason told")] + [(one, one) for one in DECLINED_BECAUSE],
        "rotations": [("", "no")] + [(name, said) for name, (said, _) in ROTATIONS.items()],
    }
