"""`followup forecast`: due windows of the cars in a file, one JSON line an item. Needs no database.

The contract: inspections come in as for `followup import`; what stands later than `--as-of` is not looked at.
"""

from __future__ import annotations

import gc
import json
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from datetime import UTC, date, datetime
from pathlib import Path
from typing import TYPE_CHECKING, Any, Literal

import click

from followup.core.forecast.priors import PUBLISHED, ShopPriors
from followup.core.forecast.window import HORIZON_DAYS, DueWindow

if TYPE_CHECKING:
    # At run time only where lines are read: `--help` stays quick.
    from followup.core.forecast.history import CarHistory
    from followup.core.inspection import InspectionLine, VisitLine
    from followup.core.item import Catalogue, Item

# A forecast asks no clock: a line of any day is read, and `--as-of` says what is looked at.
_ANY_DAY = datetime(9000, 1, 1, tzinfo=UTC)
_CARS_AT_ONCE = 1_000


ROWS_OF_ITEMS = """\b
A row of --items is one JSON object, as the shop's page of an item shows it:
  {"code": "own_hitch_shoe", "name": "Hitch shoe", "part": "lift",
   "kind": "distance", "unit": "mm", "direction": "falls", "least": 0,
   "most": 12, "new_value": 4.5, "per_1000_miles": 0.035,
   "action_limit": 2, "positions": ["rear_left", "rear_right"],
   "work": "replace the hitch shoe", "skill": "general", "hours": 0.5}
\b
kind is one of
  distance  unit, least, most, new_value, action_limit, per_1000_miles
  year      the same with per_year
  life      months, and miles if they count too
  interval  months or miles, or both
  level     months or miles from the mark to low
  looks     looks: a list of what it may look like besides even
  found     found: works, tight, dry, clear or there
part: reception or lift; skill: general, tires, brakes or electric.
May be left out: code (made from the name: own_hitch_shoe), positions (the
car as a whole), direction (falls), legal_limit, looks, powertrains (all),
spreads, is_in_use, and the customers' words (en, es).
"""


def _as_of(context: click.Context, option: click.Parameter, typed: str) -> date | str:
    """The day, or "last"."""
    if typed == "last":
        return typed
    try:
        return date.fromisoformat(typed)
    except ValueError:
        raise click.BadParameter(f'{typed} is neither a day like 2026-03-02 nor "last"', context, option) from None


def _quantiles(context: click.Context, option: click.Parameter, typed: str) -> tuple[tuple[str, float], ...]:
    """The chances as typed, with their numbers."""
    found = []
    for one in filter(None, typed.split(",")):
        try:
            chance = float(one)
        except ValueError:
            raise click.BadParameter(f"{one} is no number", context, option) from None
        if not 0 < chance < 1:
            raise click.BadParameter(f"{one} does not lie between 0 and 1", context, option)
        found.append((one.strip(), chance))
    return tuple(found)


@click.command(name="forecast", epilog=ROWS_OF_ITEMS)
@click.option(
    "--inspections",
    "file",
    required=True,
    type=click.Path(exists=True, dir_okay=False, path_type=Path),
    help="Inspections, one JSON object a line, or CSV.",
)
@click.option(
    "--as-of",
    required=True,
    callback=_as_of,
    metavar="DATE|last",
    help="A day, or each car as of its own latest inspection.",
)
@click.option(
    "--learn",
    type=click.Path(exists=True, dir_okay=False, path_type=Path),
    help="Fit the shop's own priors from this file first; kept part by part where they foretell it no worse.",
)
@click.option(
    "--items",
    "items_file",
    type=click.Path(exists=True, dir_okay=False, path_type=Path),
    help="The shop's own items, one row a line (see below).",
)
@click.option("--horizon-days", type=click.IntRange(min=1), default=HORIZON_DAYS, show_default=True)
@click.option(
    "--quantiles",
    callback=_quantiles,
    default="",
    metavar="0.05,0.10,...",
    help="Also tell the days until these chances.",
)
@click.option("--limit", type=click.Choice(["action", "legal"]), default="action", show_default=True)
def forecast(
    file: Path,
    as_of: date | Literal["last"],
    learn: Path | None,
    items_file: Path | None,
    horizon_days: int,
    quantiles: tuple[tuple[str, float], ...],
    limit: Literal["action", "legal"],
) -> None:
    """When each item of each car will be due, from a file of inspections."""
    from followup.core.forecast.history import history_of_lines

    catalogue = _catalogue(items_file)
    with _without_collector():
        priors, bad_to_learn = (PUBLISHED, 0) if learn is None else _learned(learn, as_of, catalogue)
        lines, bad = _read(file, catalogue)
        histories = history_of_lines(lines, catalogue)
        _answer_all(histories, as_of, limit, horizon_days, quantiles, priors)
    sys.exit(1 if bad or bad_to_learn else 0)


def _learned(file: Path, as_of: date | Literal["last"], catalogue: Catalogue) -> tuple[ShopPriors, int]:
    """The priors of the shop that wrote this file, and how many lines were bad; what was learned is told as it goes.

    What stands later than the day of the forecast is not looked at.
    """
    from followup.core.forecast.history import history_of_lines
    from followup.core.forecast.learn import PASSES, learn
    from followup.core.forecast.learned import sentences

    lines, bad = _read(file, catalogue)
    cars = history_of_lines(lines, catalogue)
    if isinstance(as_of, date):
        cars = [one.until(as_of) for one in cars]
    with click.progressbar(length=PASSES * len(cars), label="learning", file=sys.stderr) as bar:
        learned = learn(cars, progress=bar.update)
        bar.update(bar.length or 0)
    for told in sentences(learned, catalogue):
        click.echo(told, err=True)
    return learned.priors, bad


def _catalogue(items_file: Path | None) -> Catalogue:
    """The items by which lines are read: those that are shipped, and those of the file."""
    from followup.core.items import BY_CODE

    if items_file is None:
        return BY_CODE
    from followup.core.own_item import item_of
    from followup.core.own_item_check import BadItem, read_own_item

    found: dict[str, Item] = dict(BY_CODE)
    wrong = []
    for number, text in _lines_of(items_file):
        try:
            own = read_own_item(_object(text), found, needs_words=False)
            found[own.code] = item_of(own)
        except ValueError as unreadable:
            wrong.append(f"line {number}: {unreadable}")
        except BadItem as bad:
            wrong += [f"line {number}: {one.field}: {one.says}" for one in bad.faults]
    if wrong:
        raise click.UsageError("\n".join([f"{items_file} cannot be taken:", *wrong]))
    return found


def _object(text: str) -> dict[str, Any]:
    """One JSON object; `ValueError` says what else it is."""
    try:
        told = json.loads(text)
    except (ValueError, RecursionError):
        told = None
    if not isinstance(told, dict):
        raise ValueError("this is not one JSON object on one line: write it anew")
    return told


@contextmanager
def _without_collector() -> Iterator[None]:
    """Lines and histories hold no cycles: looking for some among millions of values costs a fifth of the time."""
    gc.disable()
    try:
        yield
    finally:
        gc.enable()


def _answer_all(
    histories: list[CarHistory],
    as_of: date | Literal["last"],
    limit: Literal["action", "legal"],
    horizon_days: int,
    quantiles: tuple[tuple[str, float], ...],
    priors: ShopPriors,
) -> None:
    """Write the answers, some cars at a time."""
    from followup.core.forecast.due import forecast_cars

    chances = tuple(chance for _, chance in quantiles)
    with click.progressbar(length=len(histories), label="forecasting", file=sys.stderr) as bar:
        for begin in range(0, len(histories), _CARS_AT_ONCE):
            some = histories[begin : begin + _CARS_AT_ONCE]
            windows = forecast_cars(some, as_of, limit, horizon_days=horizon_days, quantiles=chances, priors=priors)
            sys.stdout.write("".join(f"{json.dumps(_answer(one, quantiles))}\n" for one in windows))
            bar.update(len(some))


def _read(file: Path, catalogue: Catalogue) -> tuple[list[InspectionLine | VisitLine], int]:
    """The good lines; the bad ones are told on standard error and counted."""
    from followup.core.inspection import BadLine, read_line

    lines: list[InspectionLine | VisitLine] = []
    bad = 0
    with click.progressbar(_lines_of(file), label="reading", file=sys.stderr) as bar:
        for number, text in bar:
            try:
                lines.append(read_line(text, _ANY_DAY, catalogue))
            except BadLine as fault:
                bad += 1
                click.echo(f"line {number}: {fault}", err=True)
    return lines, bad


def _lines_of(file: Path) -> list[tuple[int, str]]:
    """The lines of the file with their numbers; a CSV file's as the same JSON."""
    told = file.read_text(encoding="utf-8-sig", errors="replace")
    if file.suffix.lower() == ".csv":
        from followup.core.inspection_csv import csv_lines

        return [(line.row, line.text) for line in csv_lines(told)]
    return [(number, text) for number, text in enumerate(told.split("\n"), start=1) if text.strip()]


def _answer(window: DueWindow, quantiles: tuple[tuple[str, float], ...]) -> dict[str, Any]:
    """One line of the contract."""
    limit, because = window.limit, window.because
    answer: dict[str, Any] = {
        "vehicle": window.vehicle,
        "item": window.item,
        "position": window.position,
        "as_of": window.as_of.isoformat(),
        "limit": None if limit is None else {"value": limit.value, "unit": limit.unit, "kind": limit.kind},
        "now": window.now,
        "due": {"early": _day(window.early), "likely": _day(window.likely), "late": _day(window.late)},
        "chance_due_within_days": {str(days): round(chance, 4) for days, chance in window.chances},
        "beyond_horizon": round(window.beyond_horizon, 4),
        "because": {
            "wear_per_1000": _rounded(because.wear_per_1000, 4),
            "unit": because.unit,
            "distance_per_day": _rounded(because.distance_per_day, 1),
            "readings_used": because.readings_used,
            "since": {"on": _day(because.since_on), "how": because.since_how},
            "model": because.model,
        },
    }
    if quantiles:
        days = [found for _, found in window.quantiles]
        answer["quantiles"] = {typed: _rounded(found, 1) for (typed, _), found in zip(quantiles, days, strict=True)}
    return answer


def _day(day: date | None) -> str | None:
    return None if day is None else day.isoformat()


def _rounded(value: float | None, digits: int) -> float | None:
    return None if value is None else round(value, digits)
