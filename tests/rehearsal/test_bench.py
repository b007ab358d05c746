"""The benchmarks run, print a table, and say by their exit status whether a bar was missed."""

from __future__ import annotations

import json
from pathlib import Path

import numpy as np
import pytest
from click.testing import CliRunner

from followup.cli.bench import bench
from followup.rehearsal.bench.figures import as_table, at_least, at_most, beside, within
from followup.rehearsal.bench.naive_rules import RULES, Seen, fitted_bands, with_bands


def test_figures_say_what_holds() -> None:
    figures = [at_most("a", 0.5, 0.5), at_least("b", 1.0, 2.0), within("c", 78.9, 80, 4), beside("d", 3.0)]
    assert [one.holds for one in figures] == [True, False, True, None]
    assert "MISSED" in as_table(figures)


def test_rules_of_thumb_reckon_as_a_pencil_would() -> None:
    """Two points 100 days and 1/32 apart, 7/32 now, 4/32 the limit: 300 days; new minus now by the odometer."""
    seen = Seen(np.array([0.0, 100.0]), np.array([8.0, 7.0]), 33_000.0, 10.3, 4.0, 2)
    found = {name: rule(seen, 1825.0) for name, rule in RULES.items()}
    assert found["line through the last two readings"] == pytest.approx(300)
    assert found["least squares over all readings"] == pytest.approx(300)
    assert found["new minus now, 12,000 miles a year"] == pytest.approx(3.0 / (3.3 / 33_000) / 12_000 * 365.25)
    flat = Seen(np.array([0.0, 100.0]), np.array([7.0, 7.0]), 33_000.0, 10.3, 4.0, 2)
    assert RULES["line through the last two readings"](flat, 1825.0) == 1825.0


def test_a_fitted_band_holds_on_what_it_was_fitted_on() -> None:
    random = np.random.default_rng(4)
    points, visits, levels = random.uniform(100, 900, 500), np.repeat([1, 2], 250), np.array([0.1, 0.5, 0.9])
    truth = points * random.lognormal(0, 0.5, 500)
    band = with_bands(points, visits, fitted_bands(points, truth, visits, levels), 1e9)
    assert (truth <= band[:, 0]).mean() == pytest.approx(0.1, abs=0.01)
    assert (truth <= band[:, 2]).mean() == pytest.approx(0.9, abs=0.01)


def test_bench_forecast_prints_its_table_and_writes_it(tmp_path: Path) -> None:
    """Few cars: figures stray, and the bar of 20,000 items is missed, which the exit status tells."""
    to = tmp_path / "figures.json"
    ran = CliRunner().invoke(bench, ["forecast", "--cars", "200", "--seed", "11", "--json", str(to)])
    assert ran.exit_code == 1, ran.output
    figures = {one["check"]: one for one in json.loads(to.read_text())}
    assert figures["items likely within 730 d"]["holds"] is False
    assert figures["CRPS of ours over the best rule's, all"]["holds"] is True
    assert "MISSED" in ran.stdout
