"""The shop moves to PostgreSQL while senders work on its queue, and the move is killed on the way.

Source: this project's own bars (nothing unsent is lost, nothing is sent twice, counts and checksums equal).
"""

from __future__ import annotations

import pytest

from followup.rehearsal.faults.judge import Verdict
from followup.rehearsal.faults.moving import MovePlan, drawn_move, run_move
from tests.faults.ground import SEED, Ground
from tests.faults.tally import add_to_tally


def _move_all(ground: Ground, numbers: range) -> list[Verdict]:
    assert ground.postgresql is not None
    verdicts, wrong = [], []
    for number in numbers:
        plan = drawn_move(SEED * 100_000 + number)
        with ground.shop("sqlite") as shop:
            verdict = run_move(plan, shop, ground.postgresql.new_database(), ground.nursery)
        add_to_tally(verdict)
        verdicts.append(verdict)
        if not verdict.is_clean:
            wrong.append(f"{plan}: {verdict}")
    if wrong:
        pytest.fail("\n".join([f"seed {SEED}", *wrong]))
    return verdicts


def test_a_move_with_a_live_queue_loses_nothing_and_doubles_nothing(both: Ground) -> None:
    verdicts = _move_all(both, range(3))
    assert sum(one.sent for one in verdicts) > 10
    assert sum(one.kills for one in verdicts) == 2


def test_a_move_that_leaves_the_old_place_open_sends_twice(both: Ground) -> None:
    """The harness shows what it is there to show."""
    assert both.postgresql is not None
    plans = [MovePlan(seed, 1, 1, None, "tests.faults.naive:copy_and_go_on") for seed in (1, 2, 3)]
    duplicated = 0
    for plan in plans:
        with both.shop("sqlite") as shop:
            duplicated += run_move(plan, shop, both.postgresql.new_database(), both.nursery).duplicated
    assert duplicated > 0


@pytest.mark.faults
def test_forty_moves_most_of_them_killed(both: Ground) -> None:
    verdicts = _move_all(both, range(3, 43))
    print(
        f"moves {len(verdicts)}, kills {sum(one.kills for one in verdicts)}, sent {sum(one.sent for one in verdicts)}"
    )
    assert sum(one.kills for one in verdicts) >= 20
