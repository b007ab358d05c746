"""`followup forecast --items`: the shop's own items from a file of rows."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import pytest
from click.testing import CliRunner, Result

from followup.cli import main
from tests.core.lines import line_text
from tests.core.own_rows import ROWS, reading


def run(folder: Path, items: list[str], lines: list[str]) -> Result:
    """How the command ended."""
    rows, inspections = folder / "items.jsonl", folder / "inspections.jsonl"
    rows.write_text("\n".join(items), encoding="utf-8")
    inspections.write_text("\n".join(lines), encoding="utf-8")
    options = ["forecast", "--inspections", str(inspections), "--as-of", "2026-03-02", "--items", str(rows)]
    return CliRunner().invoke(main, options)


def line(*readings: dict[str, Any]) -> str:
    """One inspection at 36,000 miles."""
    return line_text(
        readings=list(readings), odometer=36_000, unit="mi", vehicle={"id": "V-1", "first_used_on": "2023-03-02"}
    )


@pytest.mark.parametrize("has_code", [True, False])
def test_own_items_are_forecast_from_a_file_without_a_database(tmp_path: Path, has_code: bool) -> None:
    row = {name: value for name, value in ROWS["brake_shoe"].items() if name not in ("en", "es")}
    code = "own_hitch_shoe"
    told = [json.dumps({**row, "code": code} if has_code else row)]
    ended = run(tmp_path, told, [line(reading(row, code, 3, 36_000), {**reading(row, "brake_shoe", 3, 36_000)})])
    assert ended.exit_code == 0, ended.output
    shipped, own = (json.loads(one) for one in ended.stdout.splitlines())
    assert (shipped["item"], own["item"]) == ("brake_shoe", code)
    assert {**own, "item": ""} == {**shipped, "item": ""}


def test_every_fault_of_the_file_is_told_by_line_and_field_and_nothing_is_answered(tmp_path: Path) -> None:
    good = json.dumps(ROWS["brake_shoe"])
    wrong = json.dumps({**ROWS["brake_shoe"], "hours": "long", "part": "roof", "code": "own_b"})
    ended = run(tmp_path, [good, "{", wrong, json.dumps([1])], [line(reading(ROWS["brake_shoe"], "own_hitch_shoe"))])
    assert ended.exit_code == 2
    for told in (
        "line 2: this is not one JSON object",
        "line 3: hours: give a number",
        "line 3: part: use one of",
        "line 4:",
    ):
        assert told in ended.stderr
    assert not ended.stdout


def test_a_code_that_comes_twice_is_refused(tmp_path: Path) -> None:
    row = json.dumps({**ROWS["brake_shoe"], "code": "own_b"})
    ended = run(tmp_path, [row, row], [])
    assert ended.exit_code == 2 and "own_b is there already" in ended.stderr


def test_an_unknown_item_is_still_refused(tmp_path: Path) -> None:
    ended = run(tmp_path, [json.dumps(ROWS["brake_shoe"])], [line({"item": "own_nothing", "value": 3, "unit": "mm"})])
    assert ended.exit_code == 1 and 'there is no item "own_nothing"' in ended.stderr


def test_the_help_says_what_a_row_holds() -> None:
    said = CliRunner().invoke(main, ["forecast", "--help"]).output
    for name in ("per_1000_miles", "per_year", "action_limit", "positions", "own_hitch_shoe"):
        assert name in said
