"""Kills and stops where four texts are put in flight in one transaction and handed over beside each other: nothing is
lost or sent twice, and no more are in doubt after a kill than were handed over at once."""

from __future__ import annotations

from functools import partial

import pytest

from followup.rehearsal.faults import trial
from followup.rehearsal.faults.judge import Struck
from followup.rehearsal.faults.shop import Shop
from tests.faults.ground import Ground

AT_ONCE = 4


# A few with every check, more of them in the long runs.
@pytest.mark.parametrize(("kills", "stops"), [(3, 1), pytest.param(10, 2, marks=pytest.mark.faults)])
@pytest.mark.parametrize("kind", ["sqlite", "postgresql"])
def test_several_at_once_are_neither_lost_nor_sent_twice(
    both: Ground, kind: str, kills: int, stops: int, monkeypatch: pytest.MonkeyPatch
) -> None:
    alone = Shop.environment

    def several(self: Shop, provider: str, **others: str) -> dict[str, str]:
        return alone(self, provider, **{"FOLLOWUP_SENDER_TEXTS_AT_ONCE": str(AT_ONCE), **others})

    monkeypatch.setattr(Shop, "environment", several)
    monkeypatch.setattr(trial, "Struck", partial(Struck, in_flight_each=AT_ONCE))
    verdicts = both.run_all("kill", kind, range(300, 300 + kills)) + both.run_all("stop", kind, range(300, 300 + stops))
    assert sum(one.kills for one in verdicts) >= kills - 2
