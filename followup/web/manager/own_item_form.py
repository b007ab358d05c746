"""The form of an item that a shop adds: what was typed as a row, and a row as it would be typed."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import Any

from pydantic import TypeAdapter, ValidationError
from werkzeug.datastructures import MultiDict

from followup.core.inspection_check import Fault
from followup.core.item import LOOKS
from followup.core.own_item import FOUND, KINDS, LANGUAGES, SKILLS, UNITS, OwnItem, Spreads
from followup.core.own_item_check import ENDINGS, OF_A_KIND, TAKES, WORD_LENGTHS
from followup.core.vehicle import CORNERS, POWERTRAINS, WALKING_ORDER
from followup.web import forms
from followup.web.security import CSRF_FIELD

WHERE = {
    "car": "the car as a whole",
    "axles": "each axle: front, rear",
    "wheels": "each of the four wheels",
    "some": "only the places ticked here",
}
PLACES_OF = {"car": (), "axles": ("front", "rear"), "wheels": CORNERS}
NUMBERS = (
    "hours", "least", "most", "action_limit", "legal_limit", "new_value", "per_1000_miles", "per_year", "months",
    "miles",
)  # fmt: skip
TEXTS = ("name", "unit", "work", "part", "kind", "skill", "direction", "found")
TICKS = ("by_axle", "is_top_off_free")
LISTS = ("positions", "looks", "powertrains")
# Words of the fields that hold numbers; what is wrong with one begins with them.
LABELS = {
    "least": "Least that can be read",
    "most": "Most that can be read",
    "action_limit": "Recommend work at",
    "legal_limit": "Legal limit, if there is one",
    "new_value": "Measures when new",
    "per_1000_miles": "Wears so much in 1,000 miles",
    "per_year": "Goes so much in a year",
    "months": "Months",
    "miles": "Miles",
    "hours": "Labor hours",
    "example": "An example of what is measured, to look at",
    "spreads.log_spread": "Lives or rates, log standard deviation",
    "spreads.between_cars": "Between cars, log standard deviation",
    "spreads.between_items": "Between places of a car, the same",
    "spreads.new_spread": "New ones, standard deviation",
    "spreads.reading_error": "One reading, standard deviation",
    "spreads.gauge_step": "Step of the gauge",
    "spreads.mate_error": "Between the two sides",
    "spreads.replaced_at": "Usually replaced at",
    "spreads.replaced_spread": "The same, standard deviation",
}
BESIDE = ("where", "because", "based_on", "does", "example")
SPREADS = tuple(f"spreads.{name}" for name in Spreads.__dataclass_fields__)
WORDS = tuple(f"{language}.{name}" for language in LANGUAGES for name in WORD_LENGTHS)
NAMES = frozenset((CSRF_FIELD, *NUMBERS, *TEXTS, *TICKS, *LISTS, *BESIDE, *SPREADS, *WORDS))
DOES_NOT_FIT = "The page and the program do not fit together. Load the page again."
USUAL = {
    "part": "reception",
    "kind": "distance",
    "skill": "general",
    "direction": "falls",
    "where": "car",
    "hours": "0.5",
}
_NUMBER: TypeAdapter[float] = TypeAdapter(forms.Number)


def fits(sent: MultiDict[str, str]) -> bool:
    """False where the page sent what the form does not have, or one field twice."""
    return set(sent) <= NAMES and all(len(sent.getlist(name)) == 1 for name in sent if name not in LISTS)


def row_of(sent: MultiDict[str, str]) -> dict[str, Any]:
    """What was typed, as `read_own_item` takes it. What belongs to another kind of item is left out, not lost: it
    stands on the page again where the kind is chosen back."""
    takes = TAKES.get(sent.get("kind", ""), ())  # type: ignore[call-overload]  # any text may be sent
    row: dict[str, Any] = {name: sent.get(name, "").strip() for name in TEXTS}
    row |= {name: number(sent.get(name, "")) for name in NUMBERS}
    row |= {name: sent.get(name) == "yes" for name in TICKS}
    row |= {name: sent.getlist(name) for name in LISTS}
    if sent.get("where") in PLACES_OF:
        row["positions"] = list(PLACES_OF[sent["where"]])
    spreads = {name: number(sent.get(f"spreads.{name}", "")) for name in Spreads.__dataclass_fields__}
    row["spreads"] = {name: value for name, value in spreads.items() if value != ""}
    row = {name: value for name, value in row.items() if name not in OF_A_KIND or name in takes}
    for language in LANGUAGES:
        row[language] = {name: sent.get(f"{language}.{name}", "").strip() for name in WORD_LENGTHS}
    return row


def number(text: str) -> float | str:
    """A typed number; "" where nothing was typed, and the text itself where it is none, so that it is told."""
    plain = text.strip()
    try:
        return _NUMBER.validate_python(plain) if plain else ""
    except ValidationError:
        return plain


def shown(own: OwnItem | None) -> dict[str, Any]:
    """What stands in the fields: by field, as it would be typed."""
    if own is None:
        return {**USUAL, "positions": [], "looks": [], "powertrains": list(POWERTRAINS)}
    row = own.row()
    given: dict[str, Any] = {name: row.get(name, "") for name in TEXTS}
    given |= {name: f"{row[name]:g}" for name in NUMBERS if name in row}
    given |= {name: bool(row.get(name)) for name in TICKS}
    given |= {name: list(row.get(name, [])) for name in LISTS}
    given["where"] = next((where for where, places in PLACES_OF.items() if set(places) == set(own.positions)), "some")
    given |= {f"spreads.{name}": f"{value:g}" for name, value in row.get("spreads", {}).items()}
    for language in LANGUAGES:
        given |= {f"{language}.{name}": text for name, text in row.get(language, {}).items()}
    return given


def typed(sent: MultiDict[str, str]) -> dict[str, Any]:
    """What the person had typed, to fill the form again."""
    given: dict[str, Any] = {name: value for name, value in forms.shown_again(sent).items() if name in NAMES}
    return {**given, **{name: sent.getlist(name) for name in LISTS}}


def by_field(faults: Iterable[Fault]) -> dict[str, str]:
    """Faults by the field of the page that they belong to; those of the words as a whole by their language."""
    said: dict[str, str] = {}
    for fault in faults:
        label = LABELS.get(fault.field)
        words = f"{label}: {fault.says}" if label else fault.says[:1].upper() + fault.says[1:]
        words = words if words.endswith((".", "!", "?")) else f"{words}."
        place = fault.field if fault.field in NAMES or fault.field in ("", *LANGUAGES) else ""
        said[place] = f"{said[place]} {words}" if place in said else words
    return said


def choices() -> Mapping[str, Any]:
    """Every list of the page, in words."""
    return {
        "kinds": list(KINDS.items()),
        "where": list(WHERE.items()),
        "places": [(one, one.replace("_", " ")) for one in WALKING_ORDER if one],
        "units": list(UNITS),
        "skills": [(one, one) for one in SKILLS],
        "looks": [(one, one.replace("_", " ")) for one in LOOKS if one != "even"],
        "found": [
            ("", "-"),
            *((name, ", ".join(one.replace("_", " ") for one in states)) for name, states in FOUND.items()),
        ],
        "powertrains": [(one, one.replace("_", "-")) for one in POWERTRAINS],
        "endings": [(one, f"delanter{one}" if one else "-") for one in ENDINGS],
    }
