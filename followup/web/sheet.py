"""The inspection sheet: laid out from the catalogue, in two parts, in walking order. Pure; the template draws it.

A field of the page is named by what it stands for: `r.<item>.<place>.<field>` is a reading's field, `n.<item>.<place>`
why it was not checked, `h.<item>.<place>` how it was measured; `<place>` is a position, or `car`.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import date

from followup.core.day_words import day_words, month_words
from followup.core.inspection import Reading
from followup.core.item import NOT_CHECKED, Catalogue, DistanceWear, Field, Item, in_use
from followup.core.items import BY_CODE
from followup.core.vehicle import POWERTRAINS, WALKING_ORDER, Vehicle

PARTS = {"reception": "At reception, with the owner", "lift": "On the lift"}
PLACES = {
    "front_left": "Left front", "rear_left": "Left rear", "rear_right": "Right rear", "front_right": "Right front",
    "front": "Front", "rear": "Rear", "spare": "Spare", "": "The car",
}  # fmt: skip
# Where "same as left" looks.
LEFT_OF = {"rear_right": "rear_left", "front_right": "front_left"}
REASONS = {code: code.replace("_", " ") for code in NOT_CHECKED}
HOW_WORDS = {"wheel_off": "wheel off", "wheel_on": "wheel on, an estimate", "estimate": "estimate"}
CAR = "car"
GROOVES = 3
DISTANCE = ("mi", "km")
# Units in which people read whole numbers: there a digit more decides when the next field is due.
WHOLE_UNITS = ("32nds", "psi", "kPa", "ppm", "A", "percent", "mi", "km", "F", "C")
ONE_DECIMAL_UNITS = ("mm", "bar")

Last = Mapping[tuple[str, str], tuple[Reading, date]]


@dataclass(frozen=True)
class Entry:
    """One thing to type or choose. `units` is the choice of units it is measured in, `unit` the only one.

    `mode` is "detail" for fields that lowest-only mode hides, "lowest" for those that only that mode shows.
    """

    name: str
    label: str
    kind: str
    choices: tuple[tuple[str, str], ...] = ()
    units: tuple[str, ...] = ()
    most: float | None = None
    decimals: int | None = None
    mode: str = ""

    @property
    def family(self) -> str:
        """The name of the field that holds the unit; "" where there is nothing to choose."""
        return family_of(self.units)


@dataclass(frozen=True)
class Row:
    """One item at one place; `was` is its last reading in words."""

    item: Item
    position: str
    entries: tuple[Entry, ...]
    was: str = ""

    @property
    def key(self) -> str:
        """`<item>.<place>`."""
        return key_of(self.item.code, self.position)

    @property
    def asks_how(self) -> bool:
        """Linings are measured with the wheel off, or estimated with the wheel on."""
        return self.item.job.skill == "brakes" and any(isinstance(one, DistanceWear) for one in self.item.models)

    @property
    def absent_on(self) -> tuple[str, ...]:
        """Powertrains that do not have the item: their pages hide it."""
        return tuple(one for one in POWERTRAINS if one not in self.item.powertrains)


@dataclass(frozen=True)
class Station:
    """All that is looked at in one place; `left` is the place on the left to which it can be the same."""

    position: str
    words: str
    rows: tuple[Row, ...]
    left: str | None = None


@dataclass(frozen=True)
class Part:
    """Reception or lift, its stations in walking order."""

    code: str
    words: str
    stations: tuple[Station, ...]

    @property
    def rows(self) -> Iterator[Row]:
        """Every row of the part, in order."""
        return (row for station in self.stations for row in station.rows)


def sheet(
    vehicle: Vehicle, part: str | None = None, last: Last | None = None, catalogue: Catalogue = BY_CODE
) -> tuple[Part, ...]:
    """The parts of the sheet of a car (both, or the one named); what the car does not have is not asked."""
    items = [item for item in in_use(catalogue) if item.exists_on(vehicle)]
    return tuple(
        Part(code, words, tuple(_stations([item for item in items if item.part == code], vehicle, last or {})))
        for code, words in PARTS.items()
        if part in (None, code)
    )


def families(parts: tuple[Part, ...]) -> dict[str, tuple[tuple[str, ...], str]]:
    """Each choice of units by its field's name: the units, and what is measured in them."""
    found: dict[str, tuple[tuple[str, ...], list[str]]] = {}
    for row in (row for part in parts for row in part.rows):
        for entry in row.entries:
            if entry.family and entry.units != DISTANCE:
                words = found.setdefault(entry.family, (entry.units, []))[1]
                if row.item.words.lower() not in words:
                    words.append(row.item.words.lower())
    return {name: (units, ", ".join(words)) for name, (units, words) in found.items()}


def family_of(units: tuple[str, ...]) -> str:
    """The field that says which of the units is meant; distances are in the odometer's."""
    if len(units) < 2:
        return ""
    return "unit" if units == DISTANCE else f"units.{'-'.join(units)}"


def key_of(item: str, position: str) -> str:
    """`<item>.<place>` of a field's name."""
    return f"{item}.{position or CAR}"


def _stations(items: list[Item], vehicle: Vehicle, last: Last) -> Iterator[Station]:
    for position in WALKING_ORDER:
        rows = tuple(
            Row(item, position, tuple(_entries(item, position)), _was(last.get((item.code, position))))
            for item in items
            if position in item.positions and _is_there(item, position, vehicle)
        )
        if rows:
            yield Station(position, PLACES[position], rows, LEFT_OF.get(position))


def _is_there(item: Item, position: str, vehicle: Vehicle) -> bool:
    """Disc or drum at the rear, where it is known."""
    if vehicle.rear_brakes is None or not position.startswith("rear"):
        return True
    barred = ("brake_shoe",) if vehicle.rear_brakes == "disc" else ("brake_pad", "brake_rotor")
    return item.code not in barred


def _entries(item: Item, position: str) -> Iterator[Entry]:
    has_detail = any(field.name in ("across", "inner") for field in item.fields)
    for field in item.fields:
        name = f"r.{key_of(item.code, position)}.{field.name}"
        mode = "detail" if field.name in ("across", "inner", "outer") else ""
        if field.name == "value" and has_detail:
            mode = "lowest"
        if field.kind == "numbers":
            label, _, parts = field.words.partition(": ")
            for number, words in enumerate(parts.split(", "), start=1):
                yield _entry(f"{name}.{number}", f"{label}, {words}", field, mode)
        else:
            yield _entry(name, field.words, field, mode)


def _entry(name: str, label: str, field: Field, mode: str) -> Entry:
    choices = tuple((one, one.replace("_", " ")) for one in field.choices)
    if field.kind == "yes_no":
        choices = (("yes", "yes"), ("no", "no"))
    kind = {"numbers": "number", "date_code": "digits"}.get(field.kind, field.kind)
    return Entry(name, label, kind, choices, field.units, field.most, _decimals(field), mode)


def _decimals(field: Field) -> int | None:
    """Digits after the point that people read; None where it cannot be said, so that nothing jumps on."""
    unit = field.units[0] if field.units else None
    return 0 if unit in WHOLE_UNITS else 1 if unit in ONE_DECIMAL_UNITS else None


def _was(seen: tuple[Reading, date] | None) -> str:
    if seen is None:
        return ""
    reading, on = seen
    return f"{said(reading)} on {day_words(on)}"


def said(reading: Reading) -> str:
    """What a reading says, numbers first: `6/6/5 32nds, cupped`, `inner 4, outer 5 mm`."""
    told = reading.told()
    if reason := told.get("not_checked"):
        return f"not checked: {REASONS[reason]}"
    numbers, said_of = [], []
    for name, value in told.items():
        if name in ("item", "position", "unit", "how", "note"):
            continue
        if name in _SAY_WITH:
            unit = f" {told['unit']}" if name in _DISTANCES and "unit" in told else ""
            said_of.append(_SAY_WITH[name].format(_in_words(value)) + unit)
        elif isinstance(value, list):
            numbers.append("/".join(f"{one:g}" for one in value))
        elif isinstance(value, bool):
            said_of.append(f"{name} {'yes' if value else 'no'}")
        elif isinstance(value, int | float):
            numbers.append(_number(name, value))
        else:
            said_of.append(str(value).replace("_", " "))
    of_numbers = [told["unit"]] if "unit" in told and numbers else []
    return ", ".join(filter(None, [" ".join([", ".join(numbers), *of_numbers]), *said_of]))


# What is no number in the reading's own unit says what it is.
_SAY_WITH = {
    "water_percent": "{} % water",
    "copper_ppm": "{} ppm copper",
    "life_percent": "{} % oil life left",
    "changed_on": "changed {}",
    "done_on": "done {}",
    "done_odometer": "at {}",
    "due_on": "due {}",
    "due_odometer": "due at {}",
    "good_until": "good until {}",
    "date_code": "date code {}",
    "volts": "{} V",
    "cca": "{} CCA",
    "cca_rated": "rated {}",
}


_DISTANCES = ("done_odometer", "due_odometer")


def _in_words(value: object) -> str:
    """A number as people write it, a day or a month (`2027-04`) as pages write it."""
    if isinstance(value, int | float):
        return f"{value:,g}"
    text = str(value)
    if _MONTH.fullmatch(text):
        return month_words(text)
    return day_words(date.fromisoformat(text)) if _DAY.fullmatch(text) else text


_MONTH, _DAY = re.compile(r"\d{4}-\d{2}"), re.compile(r"\d{4}-\d{2}-\d{2}")


# Beside other numbers of the same reading a number says what it is.
_SAY = {
    "inner": "inner",
    "outer": "outer",
    "minimum": "least",
    "placard": "placard",
    "set_to": "set to",
}


def _number(name: str, value: float) -> str:
    before = _SAY.get(name, "")
    return f"{before} {value:g}".strip()
