"""A bad week: the demo's shop lives on while its provider, its server, its clock and its worker fail, and keeps what is
promised. What is promised stands in `rehearsal/week/promises*.py`, written from the trade's rules and the law; that the
judge sees it broken is shown by `test_planted_breaches.py`, which first lives a bad day that breaks nothing.
"""

from __future__ import annotations

from pathlib import Path

import pytest

from followup.rehearsal.week.promises import broken_promises
from tests.faults.ground import SEED
from tests.faults.weeks import live


@pytest.mark.faults
@pytest.mark.parametrize("number", range(20))
def test_a_bad_week_breaks_no_promise(demo_template: Path, number: int) -> None:
    assert broken_promises(live(demo_template, SEED * 100 + number, 7, 7)) == []
