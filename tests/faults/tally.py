"""Counts trials over all processes of tests, in the file that FAULTS_TALLY names, and says one line at the end.

`python -m tests.faults.tally FILE` prints it; `sh deploy/check --faults` ends with it.
"""

from __future__ import annotations

import json
import os
import sys
from dataclasses import asdict
from pathlib import Path

from followup.rehearsal.faults.judge import Verdict


def add_to_tally(verdict: Verdict) -> None:
    """Add one line; a short write at the end of a file is one step, so that processes do not mix theirs."""
    named = os.environ.get("FAULTS_TALLY")
    if named:
        with Path(named).open("a", encoding="utf-8") as file:
            file.write(json.dumps(asdict(verdict)) + "\n")


def line_of(lines: list[str], seed: str) -> str:
    """The closing line."""
    found = [json.loads(line) for line in lines]
    lost, duplicated, still_open = (sum(one[name] for one in found) for name in ("lost", "duplicated", "open"))
    return f"runs {len(found)} lost {lost} duplicated {duplicated} open {still_open} seed {seed}"


if __name__ == "__main__":
    tally = Path(sys.argv[1])
    kept = tally.read_text(encoding="utf-8").splitlines() if tally.exists() else []
    print(line_of(kept, os.environ.get("FAULTS_SEED", "1")))
