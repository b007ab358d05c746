"""Real processes on a shop's database, ended or stopped anywhere: nothing is lost, nobody is texted twice.

The provider's faults are those of its own documents and of its users' reports; forty trials here, all of them in
`test_trials_at_length.py`.
"""

from __future__ import annotations

import pytest

from followup.points import POINTS
from followup.rehearsal.faults.trial import AT_THE_PROVIDER, drawn_plan
from tests.faults.ground import Ground

SQLITE = [("kill", range(0, 8)), ("kill", range(8, 16)), ("crash", range(0, 7)), ("stop", range(0, 7))]
POSTGRESQL = [("kill", range(16, 21)), ("crash", range(7, 9)), ("stop", range(7, 10))]


def test_there_are_forty_and_they_strike_everywhere() -> None:
    drawn = [*SQLITE, *POSTGRESQL]
    assert sum(len(numbers) for _, numbers in drawn) == 40
    struck = {drawn_plan(number).strikes[0].at for what, numbers in drawn if what == "kill" for number in numbers}
    assert struck == {*POINTS, AT_THE_PROVIDER}


@pytest.mark.parametrize(("what", "numbers"), SQLITE)
def test_nothing_is_lost_or_sent_twice_on_sqlite(ground: Ground, what: str, numbers: range) -> None:
    verdicts = ground.run_all(what, "sqlite", numbers)
    assert sum(one.sent for one in verdicts) > 5 * len(numbers)
    if what != "stop":
        assert sum(one.kills for one in verdicts) >= len(numbers) - 1


@pytest.mark.parametrize(("what", "numbers"), POSTGRESQL)
def test_nothing_is_lost_or_sent_twice_on_postgresql(both: Ground, what: str, numbers: range) -> None:
    verdicts = both.run_all(what, "postgresql", numbers)
    assert sum(one.sent for one in verdicts) > 5 * len(numbers)
