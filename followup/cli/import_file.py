"""`followup import FILE`: inspections and visits in, from JSON lines or CSV, by the inspection contract.

Good lines go in. Bad ones are told on standard error, and written beside the file as `FILE.rejected.jsonl`, each as
`{"rejected": {"line", "faults", "doubts"}, "given": ...}`. That file can be corrected and fed again: what stands under
`given` is then the line. Afterwards the due windows of every car with news are made.
"""

from __future__ import annotations

import json
import os
import sys
from collections import deque
from collections.abc import Callable, Iterable, Iterator
from contextlib import ExitStack
from dataclasses import dataclass, field, replace
from pathlib import Path
from typing import Any, TextIO

import click

from followup.cli.house import shop_id_of, shop_option, the_house
from followup.core.inspection_check import Fault
from followup.wiring import House
from followup.workflows.forecast_windows import count_cars_with_news
from followup.workflows.keep_inspections import KeptLine

WRAPPED = {"rejected", "given"}
NOT_UTF8 = "is not UTF-8: save the file as UTF-8"


@dataclass(frozen=True)
class SourceLine:
    """One line of the contract with the place in the file where it began, and how many bytes (rows) it took."""

    number: int
    text: str
    size: int
    is_readable: bool = True


@dataclass
class Tally:
    """What became of the lines so far."""

    read: int = 0
    kept: int = 0
    unchanged: int = 0
    rejected: int = 0

    def count(self, outcome: str) -> None:
        """Count one more line."""
        self.read += 1
        self.kept += outcome in ("new", "corrected")
        self.unchanged += outcome == "unchanged"
        self.rejected += outcome in ("rejected", "doubtful")

    def line(self) -> str:
        """The last line on standard output."""
        return json.dumps(vars(self))


@dataclass
class RejectedFile:
    """Writes rejected lines beside the file, readable by its owner alone; begun with the first of them."""

    path: Path
    _opened: TextIO | None = field(default=None, init=False)

    def add(self, line: SourceLine, kept: KeptLine) -> None:
        """Write one line with its reasons."""
        if self._opened is None:
            self.path.unlink(missing_ok=True)
            handle = os.open(self.path, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600)
            self._opened = os.fdopen(handle, "w", encoding="utf-8")
        told = {
            "line": line.number,
            "faults": [vars(fault) for fault in kept.faults],
            "doubts": [vars(doubt) for doubt in kept.doubts],
        }
        self._opened.write(json.dumps({"rejected": told, "given": _given(line.text)}, ensure_ascii=False) + "\n")

    def close(self) -> None:
        """Finish the file, if there is one."""
        if self._opened is not None:
            self._opened.close()


@click.command(name="import")
@click.argument("file", required=False, type=click.Path(exists=True, dir_okay=False, path_type=Path))
@click.option("--check", "is_check", is_flag=True, help="Say what would happen and keep nothing.")
@click.option("--accept-doubtful", is_flag=True, help="What is doubtful (told back otherwise) is right.")
@click.option("--template", is_flag=True, help="Write an empty CSV file to standard output.")
@shop_option
def import_file(file: Path | None, is_check: bool, accept_doubtful: bool, template: bool, shop_code: str) -> None:
    """Inspections and visits in, from FILE (JSON lines, or CSV where its name ends so)."""
    if template:
        from followup.core.inspection_csv import csv_template

        click.echo(csv_template(), nl=False)
        return
    if file is None:
        raise click.UsageError("name the FILE, or ask for an empty one with --template")
    with the_house() as house:
        shop_id = shop_id_of(house, shop_code)

        def keep(lines: Iterable[str]) -> Iterator[KeptLine]:
            return house.keep_inspections(shop_id, lines, "import", accepts_doubtful=accept_doubtful, is_check=is_check)

        tally = _import(file, keep, is_check)
        if not is_check:
            _forecast(house, shop_id)
    click.echo(tally.line())
    sys.exit(1 if tally.rejected else 0)


def _import(file: Path, keep: Callable[[Iterable[str]], Iterator[KeptLine]], is_check: bool) -> Tally:
    """Feed the lines and tell what became of each; a bad line never keeps the next from going in."""
    tally = Tally()
    rejected = RejectedFile(file.with_name(f"{file.name}.rejected.jsonl"))
    lines, size = _lines_of(file)
    waiting: deque[SourceLine] = deque()

    def texts() -> Iterator[str]:
        for line in lines:
            waiting.append(line)
            # What is no UTF-8 becomes no JSON either, so that it is refused in its place like every other bad line.
            yield line.text if line.is_readable else "not UTF-8"

    with ExitStack() as stack:
        stack.callback(rejected.close)
        bar = stack.enter_context(
            click.progressbar(length=size, label="reading", file=sys.stderr, update_min_steps=max(size // 1000, 1))
        )
        for kept in keep(texts()):
            line = waiting.popleft()
            if not line.is_readable:
                kept = replace(kept, faults=(Fault("", NOT_UTF8),))
            bar.update(line.size)
            tally.count(kept.outcome)
            if kept.outcome in ("rejected", "doubtful"):
                _tell(line, kept)
                if not is_check:
                    rejected.add(line, kept)
    if tally.rejected and not is_check:
        click.echo(f"{tally.rejected} lines are in {rejected.path}: correct them there and import that file.", err=True)
    return tally


def _tell(line: SourceLine, kept: KeptLine) -> None:
    """Every reason on standard error, by line and field."""
    for fault in (*kept.faults, *kept.doubts):
        place = f"{fault.field}: " if fault.field else ""
        click.echo(f"line {line.number}: {place}{fault.says}", err=True)


def _lines_of(file: Path) -> tuple[Iterator[SourceLine], int]:
    """The lines of the file and its length in the same measure: bytes of JSON lines, or lines of CSV."""
    if file.suffix.lower() != ".csv":
        return _json_lines(file), file.stat().st_size
    from followup.core.inspection_csv import csv_lines

    try:
        text = file.read_bytes().decode("utf-8-sig")
    except UnicodeDecodeError as unreadable:
        raise click.UsageError(f"{file} is not UTF-8: save it as CSV in UTF-8") from unreadable
    made = [SourceLine(line.row, line.text, 1) for line in csv_lines(text)]
    return iter(made), len(made)


def _json_lines(file: Path) -> Iterator[SourceLine]:
    with file.open("rb") as opened:
        for number, raw in enumerate(opened, start=1):
            if raw.strip():
                yield _source_line(number, raw)


def _source_line(number: int, raw: bytes) -> SourceLine:
    try:
        text = raw.decode("utf-8-sig" if number == 1 else "utf-8").strip()
    except UnicodeDecodeError:
        return SourceLine(number, raw.decode("utf-8", "backslashreplace").strip(), len(raw), is_readable=False)
    return SourceLine(number, _unwrapped(text), len(raw))


def _unwrapped(text: str) -> str:
    """A line of a rejected file is what stands under `given`."""
    if '"rejected"' not in text:
        return text
    try:
        told = json.loads(text)
    except (ValueError, RecursionError):
        return text
    if not isinstance(told, dict) or set(told) != WRAPPED:
        return text
    given = told["given"]
    return given if isinstance(given, str) else json.dumps(given, ensure_ascii=False)


def _given(text: str) -> Any:
    """The line as an object where it is one, so that it can be corrected without escapes; else as it stood."""
    try:
        return json.loads(text, object_pairs_hook=_whole)
    except (ValueError, RecursionError):
        return text


def _whole(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
    """An object that says a key twice would lose one of the two: it stays text."""
    found = dict(pairs)
    if len(found) != len(pairs):
        raise ValueError
    return found


def _forecast(house: House, shop_id: int) -> None:
    """Make the due windows of every car that has news."""
    count = count_cars_with_news(house.store, shop_id)
    if count:
        with click.progressbar(length=count, label="forecasting", file=sys.stderr) as bar:
            house.forecast(shop_id, bar.update)
