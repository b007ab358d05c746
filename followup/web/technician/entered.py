"""What was typed into the inspection form, as a line of the inspection contract.

The form checks nothing of its own but that numbers are numbers: the line goes through the same `read_line` as a file,
and the faults come back by the fields they belong to.
"""

from __future__ import annotations

import json
import re
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field
from typing import Any

from pydantic import TypeAdapter, ValidationError
from werkzeug.datastructures import MultiDict

from followup.core.inspection_check import Fault
from followup.core.rotation import PATTERNS
from followup.core.visit import DECISIONS
from followup.web import forms
from followup.web.security import CSRF_FIELD
from followup.web.sheet import DISTANCE, Part, Row

Given = Mapping[str, Any]
# Rows for work and for advice: as many as the page may send, and as many as an empty one shows.
MOST_ROWS = 30
ROWS_SHOWN = 10
VEHICLE_WORDS = (
    "label", "plate", "vin", "class", "driven", "powertrain", "first_used_on", "oil_check", "rear_brakes",
    "parking_brake", "tire_size_front", "tire_size_rear",
)  # fmt: skip
VEHICLE_YES_NO = ("run_flat", "directional")
CUSTOMER = ("name", "language", "phone")
WORK = ("item", "position", "did", "quarts", "on", "odometer", "unit")
ADVICE = ("item", "position", "decision", "why", "until", "told_by")
WORK_KINDS = {"quarts": "number", "odometer": "distance"}
HEAD = (
    "inspection", "inspected_at", "odometer", "unit", "tire_set", "visit", "stay", "lowest", "accept", "looked_at",
    "customer", "vehicle.id", "rotation", "draft", "page", "corrects",
)  # fmt: skip
STAY = ("open", "close", "day")
# Where each wheel went, by the pattern.
ROTATIONS: dict[str, tuple[str, dict[str, str]]] = {one.code: (one.words, dict(one.moves)) for one in PATTERNS}
DOES_NOT_FIT = "The page and the program do not fit together. Load the page again."
_DISTANCE = re.compile(r"(\d{1,3}(,\d{3})+|\d{1,9})(\.\d)?", re.ASCII)
_NUMBER: TypeAdapter[float] = TypeAdapter(forms.Number)


@dataclass
class Entered:
    """The line as told so far; `fields` leads from a path of the contract to the page's field."""

    line: dict[str, Any] = field(default_factory=dict)
    wrong: dict[str, str] = field(default_factory=dict)
    fields: dict[str, str] = field(default_factory=dict)

    @property
    def text(self) -> str:
        """The line as JSON."""
        return json.dumps(self.line, ensure_ascii=False)

    def say(self, faults: Iterable[Fault]) -> dict[str, str]:
        """Faults by the field of the page that they belong to; what belongs to none stands under ""."""
        said: dict[str, str] = {}
        for fault in faults:
            place = self._place(fault.field)
            words = fault.says[:1].upper() + fault.says[1:] + "."
            words = words if place or not fault.field else f"{fault.field}: {words}"
            said[place] = f"{said[place]} {words}" if place in said else words
        return said

    def _place(self, path: str) -> str:
        """The page's field for a path, or for the nearest part of it."""
        while path:
            if path in self.fields:
                return self.fields[path]
            path = path.rpartition(".")[0]
        return ""

    def _read(self, name: str, kind: str, text: str) -> Any:
        """A typed text as the contract's value; what is no number is told at its field."""
        if kind not in ("number", "distance"):
            return {"yes": True, "no": False}.get(text, text) if kind == "yes_no" else text
        if kind == "distance":
            # A comma parts thousands here: 48,210 is no 48.21.
            if not _DISTANCE.fullmatch(text):
                self.wrong[name] = "Give a whole number, like 48,210."
                return None
            text = text.replace(",", "")
        try:
            return _NUMBER.validate_python(text)
        except ValidationError as no:
            self.wrong[name] = str(no.errors()[0]["ctx"]["error"])
            return None

    def put(self, told: dict[str, Any], key: str, path: str, name: str, given: Given, kind: str = "text") -> None:
        """Move one field of the page into `told`, if anything was typed."""
        self.fields[path] = name
        text = str(given.get(name, "")).strip()
        if text and (value := self._read(name, kind, text)) is not None:
            told[key] = value


def names_of(parts: tuple[Part, ...]) -> set[str]:
    """Every field that the page may send."""
    names = {CSRF_FIELD, *HEAD}
    names |= {f"vehicle.{name}" for name in (*VEHICLE_WORDS, *VEHICLE_YES_NO)} | {f"customer.{one}" for one in CUSTOMER}
    names |= {f"work.{row}.{name}" for row in range(MOST_ROWS) for name in WORK}
    names |= {f"advice.{row}.{name}" for row in range(MOST_ROWS) for name in ADVICE}
    for part in parts:
        names |= {f"rest.{part.code}"} | {f"same.{one.position}" for one in part.stations if one.left}
        for row in part.rows:
            names |= {f"n.{row.key}", f"h.{row.key}", f"topped.{row.key}"} | {one.name for one in row.entries}
            names |= {one.family for one in row.entries if one.family}
    return names


def read_sheet(sent: MultiDict[str, str], parts: tuple[Part, ...], who: str, vehicle: str, customer: str) -> Entered:
    """The line that was typed. `vehicle` and `customer` are ids for those whose own were not typed."""
    entered = Entered()
    unknown = set(sent) - names_of(parts)
    if unknown or any(len(sent.getlist(name)) > 1 for name in sent):
        entered.wrong[""] = DOES_NOT_FIT
        return entered
    line = entered.line
    for name in ("inspection", "inspected_at", "unit", "tire_set", "visit"):
        entered.put(line, name, name, name, sent)
    entered.put(line, "odometer", "odometer", "odometer", sent, "distance")
    if "odometer" not in line and not _needs_unit(sent):
        line.pop("unit", None)
    if sent.get("stay") == "day":
        line.pop("visit", None)
    line["technician"] = who
    if len(parts) == 1:
        line["part"] = parts[0].code
    line["vehicle"] = _vehicle(entered, sent, vehicle)
    line["customer"] = _customer(entered, sent, customer)
    line["readings"] = list(_readings(entered, sent, parts))
    line["work_done"] = list(_work(entered, sent, parts))
    line["recommended"] = list(_advice(entered, sent))
    return entered


def _needs_unit(sent: Given) -> bool:
    """Without an odometer the unit of distance belongs to readings that name one."""
    return any(name.endswith(("_odometer", ".odometer", "range_left")) and sent[name] for name in sent)


def _vehicle(entered: Entered, sent: Given, code: str) -> dict[str, Any]:
    told: dict[str, Any] = {"id": str(sent.get("vehicle.id", "")).strip() or code}
    for name in VEHICLE_WORDS:
        entered.put(told, name, f"vehicle.{name}", f"vehicle.{name}", sent)
    for name in VEHICLE_YES_NO:
        entered.put(told, name, f"vehicle.{name}", f"vehicle.{name}", sent, "yes_no")
    return told


def _customer(entered: Entered, sent: Given, code: str) -> dict[str, Any]:
    chosen = str(sent.get("customer", "")).strip()
    told: dict[str, Any] = {"id": chosen or code}
    if not chosen:
        for name in CUSTOMER:
            entered.put(told, name, f"customer.{name}", f"customer.{name}", sent)
    return told


def _readings(entered: Entered, sent: Given, parts: tuple[Part, ...]) -> Iterator[dict[str, Any]]:
    count = 0
    for part in parts:
        rest = str(sent.get(f"rest.{part.code}", ""))
        told_at: dict[str, dict[str, Any]] = {}
        for station in part.stations:
            for row in station.rows:
                told = _reading(entered, sent, row, f"readings.{count}")
                if not told and sent.get(f"same.{station.position}") == "yes":
                    told = dict(told_at.get(f"{row.item.code}.{station.left}", {}))
                if not told and rest:
                    told = {"not_checked": rest}
                told_at[row.key] = told
                if told:
                    count += 1
                    position = {"position": row.position} if row.position else {}
                    yield {"item": row.item.code, **position, **told}


def _reading(entered: Entered, sent: Given, row: Row, path: str) -> dict[str, Any]:
    """One row; {} where nothing was entered."""
    told: dict[str, Any] = {}
    across: list[Any] = []
    unit = ""
    first = row.entries[0].name
    entered.fields |= {path: first, f"{path}.position": first, f"{path}.item": first, f"{path}.unit": first}
    for entry in row.entries:
        name, _, number = entry.name.partition(f"r.{row.key}.")[2].partition(".")
        found: dict[str, Any] = {}
        kind = "distance" if entry.units == DISTANCE else entry.kind
        entered.put(found, "value", f"{path}.{name}.{number}".rstrip("."), entry.name, sent, kind)
        if number == "1":
            entered.fields[f"{path}.{name}"] = entry.name
        if not found:
            continue
        if number:
            across.append(found["value"])
        else:
            told[name] = found["value"]
        unit = _unit(entry.family, entry.units, name, sent) or unit
    if across:
        told["across"] = across
    if told and unit:
        told["unit"] = unit
    entered.put(told, "not_checked", f"{path}.not_checked", f"n.{row.key}", sent)
    if told and "not_checked" not in told:
        entered.put(told, "how", f"{path}.how", f"h.{row.key}", sent)
    return told


def _unit(family: str, units: tuple[str, ...], name: str, sent: Given) -> str:
    """The unit that the reading has to say: where there is a choice, but for odometers, which take the line's."""
    if not family or name.endswith("odometer"):
        return ""
    return str(sent.get(family, "")) or units[0]


def _work(entered: Entered, sent: Given, parts: tuple[Part, ...]) -> Iterator[dict[str, Any]]:
    count = 0
    for row in (row for part in parts for row in part.rows):
        if sent.get(f"topped.{row.key}") == "yes":
            entered.fields[f"work_done.{count}"] = f"topped.{row.key}"
            position = {"position": row.position} if row.position else {}
            count += 1
            yield {"item": row.item.code, **position, "did": "topped_off"}
    rotation = str(sent.get("rotation", ""))
    if rotation:
        entered.fields[f"work_done.{count}"] = "rotation"
        count += 1
        moved = ROTATIONS[rotation][1] if rotation in ROTATIONS else {}
        yield {"item": "tire_tread", "did": "rotated", "moved": moved}
    for number in range(MOST_ROWS):
        told: dict[str, Any] = {}
        for name in WORK:
            kind = WORK_KINDS.get(name, "text")
            entered.put(told, name, f"work_done.{count}.{name}", f"work.{number}.{name}", sent, kind)
        if told.keys() - {"unit"}:
            entered.fields[f"work_done.{count}"] = f"work.{number}.item"
            count += 1
            yield told


def _advice(entered: Entered, sent: Given) -> Iterator[dict[str, Any]]:
    count = 0
    for number in range(MOST_ROWS):
        told: dict[str, Any] = {}
        for name in ADVICE:
            entered.put(told, name, f"recommended.{count}.{name}", f"advice.{number}.{name}", sent)
        if "item" not in told and told.keys() <= {"decision"}:
            continue
        entered.fields[f"recommended.{count}"] = f"advice.{number}.item"
        told.setdefault("decision", DECISIONS[-1])
        count += 1
        yield told
