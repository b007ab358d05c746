"""`followup score`: the sentence, the tables, the file, the exit status."""

from __future__ import annotations

import json
from pathlib import Path

import pytest
from click.testing import CliRunner

from followup.cli import main
from followup.storage import tables
from followup.workflows.look_at_scores import look_at_scores
from tests.workflows.demo import Demo


def test_the_demo_shop_looks_back(demo: Demo, tmp_path: Path) -> None:
    file = tmp_path / "score.json"
    done = CliRunner().invoke(main, ["score", "--json", str(file)])
    # What a command writes may tell of customers.
    assert file.stat().st_mode & 0o777 == 0o600
    card = look_at_scores(demo.house.store, demo.shop_id)
    assert done.exit_code == (1 if card.drift else 0)
    usual = card.usual
    assert usual.count > 800 and usual.is_telling
    first = done.stdout.splitlines()[0]
    assert first.startswith(f"Of {usual.count:,} windows that said 80 %, {usual.held:,} held (")
    assert "chance alone gives" in first
    for words in ("Brake pad", "Tire tread", "read once", "quarter from 2026-07-01", "12 V battery", "looked back on"):
        assert words in done.stdout
    told = json.loads(file.read_text(encoding="utf-8"))
    assert told["sentences"][0] == first
    assert [one["said"] for one in told["held"]] == [0.5, 0.8, 0.9]
    assert (told["held"][1]["count"], told["held"][1]["held"]) == (usual.count, usual.held)
    assert sum(one["due"]["count"] for one in told["bands"]) <= sum(told["endings"].values())


def test_since_a_day(demo: Demo) -> None:
    done = CliRunner().invoke(main, ["score", "--since", "2026-07-01"])
    assert done.exit_code in (0, 1)
    assert "quarter from 2026-07-01" in done.stdout and "quarter from 2026-04-01" not in done.stdout


def test_since_must_be_a_day(demo: Demo) -> None:
    done = CliRunner().invoke(main, ["score", "--since", "spring"])
    assert done.exit_code == 2 and "spring" in done.output


def test_what_was_not_scored_yet_is_scored_first(demo: Demo) -> None:
    with demo.house.store.write() as connection:
        connection.execute(tables.forecast_scores.delete())
        connection.execute(tables.scored_vehicles.delete())
    assert "windows that said 80 %" in CliRunner().invoke(main, ["score"]).stdout


def test_a_shop_without_readings_is_told_so(demo: Demo) -> None:
    with demo.house.store.write() as connection:
        connection.execute(tables.forecast_scores.delete())
    done = CliRunner().invoke(main, ["score"])
    assert done.exit_code == 0
    assert done.stdout.splitlines() == [
        "No window was scored yet. One is scored when its pad or tire is measured again at a later visit."
    ]


@pytest.mark.parametrize("shop", ["nowhere"])
def test_an_unknown_shop_is_refused(demo: Demo, shop: str) -> None:
    assert CliRunner().invoke(main, ["score", "--shop", shop]).exit_code == 2
