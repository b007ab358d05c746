"""A bad week: the demo's shop lives on while its provider, its server, its clock and its worker fail, and keeps what is
promised. What is promised stands in `rehearsal/week/promises*.py`, written from the trade's rules and the law; that the
judge sees it broken is shown by `test_planted_breaches.py`.
"""

from __future__ import annotations

from pathlib import Path

import pytest

from followup.rehearsal.week.promises import broken_promises
from followup.rehearsal.week.record import Recorded
from tests.faults.ground import SEED
from tests.faults.weeks import live


def test_a_bad_day_breaks_no_promise(short_week: Recorded) -> None:
    assert broken_promises(short_week) == []
    kinds = {row["kind"] for _, row in short_week.taken()}
    assert {"invite", "visit", "answer", "alert"} <= kinds
    assert any(one.acknowledged_at for one in short_week.written)


@pytest.mark.faults
@pytest.mark.parametrize("number", range(20))
def test_a_bad_week_breaks_no_promise(demo_template: Path, number: int) -> None:
    assert broken_promises(live(demo_template, SEED * 100 + number, 7, 7)) == []
