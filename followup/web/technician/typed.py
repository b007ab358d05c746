"""A line of the inspection contract as it would be typed into the form: to correct what was kept."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from datetime import date
from typing import Any

from werkzeug.datastructures import MultiDict

from followup.core.inspection import InspectionLine
from followup.core.item import Catalogue
from followup.web.sheet import GROOVES, Part, Row
from followup.web.technician.entered import ADVICE, ROTATIONS, WORK, read_sheet


def shows_all(line: InspectionLine, parts: tuple[Part, ...]) -> bool:
    """True where the form can hold all that the line says, so that a correction loses nothing of it."""
    told = line.told()
    sent = MultiDict({**as_typed(told, parts), "stay": "open" if line.visit else "day"})
    again = read_sheet(sent, parts, line.technician or "", line.vehicle.id, "")
    if again.wrong:
        return False
    if not line.technician:
        del again.line["technician"]
    typed = InspectionLine.model_validate_json(again.text).told()
    items = _items(parts)
    return content(typed, items) == content({**told, "customer": {"id": line.customer.id}}, items)


def _items(parts: tuple[Part, ...]) -> Catalogue:
    """The items that the sheet asks for."""
    return {row.item.code: row.item for part in parts for row in part.rows}


def content(line: Mapping[str, Any], items: Catalogue) -> dict[str, Any]:
    """What a line says, whatever the order of its lists: an axle is its two sides, and a unit stands only where there
    is a choice that the line has not made already."""
    readings = [
        {name: value for name, value in {**told, "position": side}.items() if value != "" and name != "unit"}
        | _own_unit(told, items)
        for told in line["readings"]
        for side in _places(told, items)
    ]
    lists = {"readings": readings}
    for part in ("work_done", "recommended"):
        entries = ({name: value for name, value in one.items() if value} for one in line.get(part, ()))
        usual = (("unit", line.get("unit")), ("decision", "no_answer"))
        lists[part] = [{name: value for name, value in one.items() if (name, value) not in usual} for one in entries]
    found = {name: value for name, value in line.items() if value != ""}
    return {**found, **{part: sorted(map(repr, map(_sorted, entries))) for part, entries in lists.items()}}


def _sorted(told: Mapping[str, Any]) -> list[tuple[str, Any]]:
    return sorted((name, sorted(value.items()) if isinstance(value, dict) else value) for name, value in told.items())


def _places(told: Mapping[str, Any], items: Catalogue) -> tuple[str, ...]:
    """The places of a reading; as it was told where the sheet has no such item."""
    position = told.get("position", "")
    return items[told["item"]].places(position) if told["item"] in items else (position,)


def _own_unit(told: Mapping[str, Any], items: Catalogue) -> dict[str, Any]:
    fields = items[told["item"]].fields if told["item"] in items else ()
    chosen = (one for one in fields if len(one.units) > 1 and not one.name.endswith("odometer"))
    return {"unit": told["unit"]} if "unit" in told and any(one.name in told for one in chosen) else {}


def as_typed(line: Mapping[str, Any], parts: tuple[Part, ...]) -> dict[str, str]:
    """The fields of the page that would make this line (as `told()` gives it): to correct what was kept."""
    typed = {
        name: _typed(line[name]) for name in ("inspection", "odometer", "unit", "tire_set", "visit") if name in line
    }
    typed["inspected_at"] = str(line["inspected_at"])[:16]
    typed["customer"] = line["customer"]["id"]
    typed |= {f"vehicle.{name}": _typed(value) for name, value in line["vehicle"].items() if name != "id"}
    items = _items(parts)
    rows = {(row.item.code, row.position): row for part in parts for row in part.rows}
    for told in line["readings"]:
        for position in (at for at in _places(told, items) if (told["item"], at) in rows):
            typed |= _typed_reading(told, rows[told["item"], position])
    lists = (("work", WORK, line.get("work_done", ())), ("advice", ADVICE, line.get("recommended", ())))
    for prefix, names, entries in lists:
        for number, told in enumerate(_plain(entries, typed)):
            typed |= {f"{prefix}.{number}.{name}": _typed(told[name]) for name in names if name in told}
    return typed


def _plain(entries: Iterable[Mapping[str, Any]], typed: dict[str, str]) -> Iterator[Mapping[str, Any]]:
    """Entries for the rows at the end; a rotation has a field of its own."""
    for told in entries:
        pattern = next((name for name, (_, moved) in ROTATIONS.items() if moved == told.get("moved")), None)
        if told.get("did") == "rotated" and pattern:
            typed["rotation"] = pattern
        else:
            yield told


def _typed_reading(told: Mapping[str, Any], row: Row) -> dict[str, str]:
    typed: dict[str, str] = {}
    if "not_checked" in told:
        typed[f"n.{row.key}"] = told["not_checked"]
    if "how" in told:
        typed[f"h.{row.key}"] = told["how"]
    for entry in row.entries:
        name, _, number = entry.name.partition(f"r.{row.key}.")[2].partition(".")
        if name not in told:
            continue
        if entry.family and "unit" in told and entry.family != "unit":
            typed[entry.family] = told["unit"]
        value = told[name]
        if number:
            if int(number) <= len(value) <= GROOVES:
                typed[entry.name] = _typed(value[int(number) - 1])
        else:
            typed[entry.name] = _typed(value)
    return typed


def _typed(value: Any) -> str:
    if isinstance(value, bool):
        return "yes" if value else "no"
    if isinstance(value, float):
        return f"{value:g}" if abs(value) < 1e5 else f"{value:.1f}".removesuffix(".0")
    return value.isoformat() if isinstance(value, date) else str(value)
