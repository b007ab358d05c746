"""The closing line of the long runs adds up what every process of tests has kept."""

from __future__ import annotations

from pathlib import Path

import pytest

from followup.rehearsal.faults.judge import Verdict
from tests.faults.tally import add_to_tally, line_of


def test_the_closing_line_adds_up(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    add_to_tally(Verdict(1, lost=7))
    monkeypatch.setenv("FAULTS_TALLY", str(tmp_path / "tally"))
    for verdict in (Verdict(2), Verdict(3, lost=1, duplicated=2), Verdict(4, open=3, faults=["text 1 is still open"])):
        add_to_tally(verdict)
    lines = (tmp_path / "tally").read_text(encoding="utf-8").splitlines()
    assert line_of(lines, "9") == "runs 3 lost 1 duplicated 2 open 3 seed 9"
    assert line_of([], "1") == "runs 0 lost 0 duplicated 0 open 0 seed 1"
