"""The same trials at length: 200 kills at named points, 100 crashes at any commit and 40 pauses on each database."""

from __future__ import annotations

import pytest

from tests.faults.ground import Ground

pytestmark = pytest.mark.faults

IN_ALL = {"kill": 200, "crash": 100, "stop": 40}
AT_A_TIME = 20
DRAWN = [
    (what, range(first, first + AT_A_TIME)) for what, count in IN_ALL.items() for first in range(0, count, AT_A_TIME)
]


@pytest.mark.parametrize("kind", ["sqlite", "postgresql"])
@pytest.mark.parametrize(("what", "numbers"), DRAWN)
def test_nothing_is_lost_or_sent_twice(both: Ground, what: str, kind: str, numbers: range) -> None:
    both.run_all(what, kind, numbers)
