"""The bench of pacing: what it draws is alike for one seed, its figures tell what was missed."""

from __future__ import annotations

import json
import random
from pathlib import Path

import pytest
from click.testing import CliRunner

from followup.cli.bench import bench
from followup.rehearsal.bench import pacing


def test_one_seed_draws_one_set_and_arrival_is_the_dearest() -> None:
    first, again = (pacing._round(random.Random("7 200"), 200, 0.6) for _ in range(2))
    assert (first.costs, first.bound) == (again.costs, again.bound)
    assert first.least < first.bound <= first.costs["program"]
    assert max(first.costs["regret"], first.costs["program"]) < first.costs["arrival"]
    assert first.over == pytest.approx(0.0, abs=1e-6)


def test_the_table_says_where_a_bar_is_missed(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """No gap at all is asked for: greedy misses it, which the exit status tells."""
    monkeypatch.setattr(pacing, "SIZES", (150,))
    monkeypatch.setattr(pacing, "GAP_AT_MOST_PERCENT", 0.0)
    to = tmp_path / "figures.json"
    ran = CliRunner().invoke(bench, ["pacing", "--rounds", "1", "--json", str(to)])
    assert ran.exit_code == 1, ran.output
    figures = {one["check"]: one for one in json.loads(to.read_text())}
    assert figures["150 messages, 0.6 of the room: greedy by regret above the program, worst"]["holds"] is False
    assert figures["150 messages, 0.6 of the room: hours expected above free, at most"]["holds"] is True
