"""What texts bring, learned: the published rates where little was counted, the shop's own where much was.

The usual values are those of the project's design: 35 and 20 in 100 texts; 35, 30, 20 and 15 % of visits in the weeks.
"""

from __future__ import annotations

from dataclasses import replace

import pytest
from hypothesis import given
from hypothesis import strategies as st

from followup.core.planning.pacing.board import Board
from followup.core.planning.pacing.brought import USUAL, Brought, learn_brought
from tests.core.planning.pacing.drawn import message, room


def test_without_texts_it_is_what_is_usual() -> None:
    assert learn_brought((), ()) == USUAL
    assert (USUAL.booked, USUAL.landing) == ((0.35, 0.20), (0.35, 0.30, 0.20, 0.15))
    assert (USUAL.chance(1), USUAL.chance(2), USUAL.chance(3)) == (0.35, 0.20, 0.20)


def test_a_hundred_texts_count_as_much_as_what_is_usual() -> None:
    """By hand: 15 of 100 and 35 of 100 make 50 of 200; 35 visits in the second week beside the 35 usual ones."""
    found = learn_brought([(1, number < 15) for number in range(100)], [8.0] * 35)
    assert found.booked == pytest.approx((0.25, 0.20))
    assert found.landing == pytest.approx((0.175, 0.65, 0.10, 0.075))
    assert (found.texts, found.visits) == ((100, 0), 35)


def test_many_texts_are_the_shops_own() -> None:
    found = learn_brought([(2, number % 2 == 0) for number in range(20_000)], [1.0] * 10_000)
    assert found.chance(2) == pytest.approx(0.5, abs=0.01)
    assert found.landing[0] == pytest.approx(1.0, abs=0.01)


@given(st.lists(st.tuples(st.integers(1, 4), st.booleans()), max_size=60), st.lists(st.floats(-2, 300), max_size=60))
def test_shares_sum_to_one_and_chances_are_chances(texts: list[tuple[int, bool]], days: list[float]) -> None:
    found = learn_brought(texts, days)
    assert sum(found.landing) == pytest.approx(1.0)
    assert all(0 < one < 1 for one in (*found.booked, *found.landing))


def test_pacing_goes_by_it() -> None:
    """A shop whose customers all come in the first week may invite fewer at once than one whose visits are spread."""

    def fits(brought: Brought) -> int:
        board = Board(replace(room({"tires": 10.0}), brought=brought))
        count = 0
        while board.fits(one := message(count, {"tires": 1.0}, 1.0, brought.chance(1)), 0) and count < 500:
            board.put(one, 0)
            count += 1
        return count

    at_once = Brought(landing=(1.0, 0.0, 0.0, 0.0))
    # From Tuesday on: 6 of 7 visits in the first calendar week, 0.35 hours a text.
    assert fits(at_once) == int(10 / (0.35 * 6 / 7))
    assert fits(USUAL) > 2 * fits(at_once)
    assert fits(replace(USUAL, booked=(0.70, 0.20))) == pytest.approx(fits(USUAL) / 2, abs=1)
