"""Pages that are killed around their commits while texts come in: what was acknowledged is stored, and counts once.

Source: fault I2 of this project's list. That a provider posts again is no more than possible (its page on connection
overrides: one retry), so nothing rests on it but that it does no harm.
"""

from __future__ import annotations

import pytest

from followup.rehearsal.faults.hooks import HooksVerdict, kill_hooks
from tests.faults.ground import SEED, Ground

AT_A_TIME = 20


def _kill(ground: Ground, kind: str, kills: int, seed: int) -> HooksVerdict:
    with ground.shop(kind, is_planned=True) as shop:
        verdict = kill_hooks(shop, ground.nursery, kills, SEED * 100_000 + seed)
        assert verdict.is_clean, (verdict, (shop.folder / "web.log").read_text(errors="replace")[-2000:])
    print(kind, verdict)
    assert verdict.kills == kills and verdict.acknowledged > kills
    return verdict


@pytest.mark.parametrize(("kind", "kills"), [("sqlite", 6), ("postgresql", 4)])
def test_ten_kills_lose_nothing_that_was_acknowledged(both: Ground, kind: str, kills: int) -> None:
    _kill(both, kind, kills, 0)


@pytest.mark.parametrize("change", ["acknowledge_first", "count_each_post"])
def test_a_naive_design_is_caught(ground: Ground, change: str) -> None:
    with ground.shop("sqlite", is_planned=True) as shop:
        naive = kill_hooks(shop, ground.nursery, 4, 1, change=f"tests.faults.naive:{change}")
    assert naive.lost > 0 if change == "acknowledge_first" else naive.doubled > 0


@pytest.mark.faults
@pytest.mark.parametrize("kind", ["sqlite", "postgresql"])
@pytest.mark.parametrize("seed", range(1, 1 + 200 // AT_A_TIME))
def test_two_hundred_kills_lose_nothing_that_was_acknowledged(both: Ground, kind: str, seed: int) -> None:
    verdict = _kill(both, kind, AT_A_TIME, seed)
    assert verdict.unacknowledged > 0
