"""Inspections as CSV: one row a reading, turned into lines of the contract that `read_line` then checks.

Columns bear the contract's names, inner objects with a dot (`customer.phone`). Rows with the same `inspection` belong
together; columns of the inspection, customer and car may be filled in the first of them only. A row with `did` is work,
one with `decision` a recommendation. `odometer_unit` is the unit of the odometer; a `unit` of mi or km is read as that
too. Rows with a `visit` and no `inspection` open or close a visit.
"""

from __future__ import annotations

import csv
import json
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, field
from typing import Any, get_args

from followup.core.inspection import (
    ConsentLine,
    CustomerLine,
    InspectionLine,
    Reading,
    RecommendedLine,
    VehicleLine,
    VisitLine,
    WorkLine,
)

Told = dict[str, Any]
HEAD = tuple(
    name
    for name in dict.fromkeys((*InspectionLine.model_fields, *VisitLine.model_fields))
    if name not in ("customer", "vehicle", "readings", "work_done", "recommended", "unit")
)
MODELS = (Reading, WorkLine, RecommendedLine, InspectionLine, VisitLine, VehicleLine, CustomerLine, ConsentLine)
YES_NO = {"true": True, "yes": True, "false": False, "no": False}
DISTANCE = ("mi", "km")


@dataclass
class _Together:
    """The rows that make one line."""

    head: Told = field(default_factory=dict)
    entries: list[tuple[str, Told]] = field(default_factory=list)
    first_row: int = 0


@dataclass(frozen=True)
class CsvLine:
    """One line of the contract as JSON, and the row of the file (the header is row 1) in which it began."""

    row: int
    text: str


def csv_columns() -> tuple[str, ...]:
    """Every column that is understood, in the order of the template."""
    inner = [f"customer.{name}" for name in CustomerLine.model_fields if name != "consent"]
    inner += [f"customer.consent.{name}" for name in ConsentLine.model_fields]
    inner += [f"vehicle.{info.alias or name}" for name, info in VehicleLine.model_fields.items()]
    entries = [*Reading.model_fields, *WorkLine.model_fields, *RecommendedLine.model_fields]
    at = HEAD.index("odometer") + 1
    return tuple(dict.fromkeys((*HEAD[:at], "odometer_unit", *HEAD[at:], *inner, *entries)))


def csv_template() -> str:
    """An empty file: the header alone."""
    return ",".join(csv_columns()) + "\r\n"


def csv_lines(text: str) -> Iterator[CsvLine]:
    """The lines of a CSV file, in the order in which they begin. Commas, semicolons or tabs part the columns.

    Nothing is checked here: what cannot be a number stays text, what is told twice becomes a list, and `read_line`
    refuses both.
    """
    lines = text.removeprefix("\ufeff").splitlines(keepends=True)
    first = lines[0] if lines else ""
    delimiter = max(",;\t", key=first.count)
    rows = csv.reader(lines, delimiter=delimiter)
    header = [name.strip() for name in next(rows, [])]
    for together in _together(header, rows):
        yield CsvLine(together.first_row, json.dumps(_line(together), ensure_ascii=False))


def _together(header: list[str], rows: Iterable[list[str]]) -> Iterable[_Together]:
    groups: dict[tuple[str, str, str], _Together] = {}
    last: tuple[str, str, str] | None = None
    for number, row in enumerate(rows, start=2):
        cells = [(name, cell.strip()) for name, cell in zip(header, row, strict=False) if name and cell.strip()]
        if not cells:
            continue
        last = _key(dict(cells), last, groups)
        group = groups.setdefault(last, _Together(first_row=number))
        _add_row(group, cells)
    return groups.values()


def _key(
    cells: dict[str, str], last: tuple[str, str, str] | None, known: Iterable[tuple[str, str, str]]
) -> tuple[str, str, str]:
    """Which line a row belongs to: its inspection and part, or its visit; a row that names neither, the one above."""
    name, part, visit = (cells.get(column, "") for column in ("inspection", "part", "visit"))
    if name and not part:
        part = next((key[1] for key in reversed(list(known)) if key[0] == name), "")
    if name:
        return (name, part, "")
    if visit:
        return ("", "", visit)
    return last or ("", "", "")


def _add_row(group: _Together, cells: list[tuple[str, str]]) -> None:
    entry: Told = {}
    own = dict(cells)
    for name, cell in cells:
        if name == "odometer_unit" or (name == "unit" and cell in DISTANCE and not _is_distance(own)):
            _tell(group.head, "unit", cell)
        elif name == "odometer" and "did" in own and group.head.get("odometer") not in (None, _value(name, cell)):
            entry[name] = _value(name, cell)  # The work's own odometer: it differs from the inspection's.
        elif name in HEAD or "." in name:
            _tell(group.head, name, _value(name, cell))
        else:
            entry[name] = _value(name, cell)
    if entry:
        kind = "work_done" if "did" in entry else "recommended" if "decision" in entry else "readings"
        group.entries.append((kind, entry))


def _is_distance(cells: dict[str, str]) -> bool:
    """True where the row's own reading is a distance, so that its unit is the reading's."""
    return any(name in cells for name in ("range_left", "done_odometer", "due_odometer"))


def _tell(head: Told, name: str, value: Any) -> None:
    """Keep a cell of the head; a second, different one makes a list, which no field takes."""
    if name in head and head[name] != value:
        head[name] = [head[name], value]
    else:
        head[name] = value


def _line(together: _Together) -> Told:
    line: Told = {}
    for name, value in together.head.items():
        *path, leaf = name.split(".")
        inside = line
        for step in path:
            inside = inside.setdefault(step, {})
        inside[leaf] = value
    if "inspection" not in line and isinstance(line.get("vehicle"), dict):
        line["vehicle"] = line["vehicle"].get("id")
    for kind, entry in together.entries:
        line.setdefault(kind, []).append(entry)
    return line


def _value(column: str, cell: str) -> Any:
    """A cell as the value that its field takes; what cannot be one stays text."""
    name = column.rpartition(".")[2]
    if name == "moved":
        return dict(pair.partition(">")[::2] for pair in cell.split("/"))
    if name in ("across", "covers"):
        return [_number(one) if name == "across" else one for one in cell.split("/")]
    for model in MODELS:
        info = model.model_fields.get(name)
        if info is not None and _holds(info.annotation, bool):
            return YES_NO.get(cell.lower(), cell)
        if info is not None and _holds(info.annotation, float):
            return _number(cell)
    return cell


def _number(cell: str) -> float | str:
    try:
        return float(cell)
    except ValueError:
        return cell


def _holds(annotation: Any, kind: type) -> bool:
    return annotation is kind or any(_holds(inner, kind) for inner in get_args(annotation))
