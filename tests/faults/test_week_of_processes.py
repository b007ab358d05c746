"""A bad week with real processes: pages and worker are killed, the provider is on the loopback, the judge is the same.

Source: the promises of `test_bad_week.py`; that a kill within one process is as good as one of a process is not taken
on trust here.
"""

from __future__ import annotations

import tempfile
from datetime import timedelta
from pathlib import Path

import pytest

from followup.rehearsal import demo_shop
from followup.rehearsal.faults.shop import kept_port
from followup.rehearsal.week.outside import Outside, ShopOfProcesses
from followup.rehearsal.week.premises import copy_of_demo
from followup.rehearsal.week.promises import broken_promises, in_one_line
from followup.rehearsal.week.troubles import drawn_troubles
from tests.faults.ground import SEED, Ground
from tests.faults.weeks import IN_MEMORY


def _live(ground: Ground, template: Path, seed: int, days: float) -> tuple[int, int]:
    """Kills of the worker and of the pages in so many days in which no promise is broken."""
    begins_at = demo_shop.BEGINS_AT
    troubles = drawn_troubles(seed, begins_at, max(1, int(days)))
    where = IN_MEMORY if IN_MEMORY.is_dir() else None
    with tempfile.TemporaryDirectory(dir=where) as name, kept_port() as port:
        here = copy_of_demo(template, Path(name), port)
        with ShopOfProcesses(here, ground.nursery, seed, begins_at, troubles=troubles) as shop:
            shop.live(begins_at + timedelta(days=days))
            recorded, program = shop.recorded(), shop.program
        assert isinstance(program, Outside)
    broken = broken_promises(recorded)
    kills = f"killed: worker {program.kills}, pages {program.kills_of_pages}"
    print(f"seed {seed}: {troubles.in_words()}; {kills}; {in_one_line(recorded, broken)}")
    assert broken == []
    return program.kills, program.kills_of_pages


@pytest.mark.faults
@pytest.mark.parametrize("number", range(3))
def test_a_bad_week_of_processes_breaks_no_promise(ground: Ground, demo_template: Path, number: int) -> None:
    worker, pages = _live(ground, demo_template, SEED * 100 + number, 7)
    assert worker >= 3 and pages == 1
