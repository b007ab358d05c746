"""The picture of said and held: every mark at its share, inside the picture, and told in the table too."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from followup.core.forecast.forecast_score import Held
from followup.core.forecast.score import chance_range, wilson_interval
from followup.web.held_chart import LEFT_PERCENT, RIGHT_PERCENT, HeldRow, lay_out


def held(said: float, count: int, how_many: int) -> Held:
    share = how_many / count if count else 0.0
    return Held(said, count, how_many, count, *wilson_interval(share, count), *chance_range(said, count))


counts = st.integers(0, 400).flatmap(
    lambda count: st.tuples(st.sampled_from([0.02, 0.5, 0.8, 0.9]), st.just(count), st.integers(0, count))
)


@given(st.lists(counts, max_size=12))
def test_everything_lies_inside_and_only_what_was_counted(rows: list[tuple[float, int, int]]) -> None:
    chart = lay_out([HeldRow(str(number), held(*one)) for number, one in enumerate(rows)])
    assert [one.row.label for one in chart.rows] == [str(number) for number, one in enumerate(rows) if one[1]]
    for one in chart.rows:
        ends = (one.band_x, one.band_x + one.band_width, one.said_x, one.held_x)
        assert all(LEFT_PERCENT - 1e-9 <= x <= RIGHT_PERCENT + 1e-9 for x in ends)
        # A dot lies beyond the band's end exactly where chance does not explain it.
        beyond = one.held_x < one.band_x - 1e-9 or one.held_x > one.band_x + one.band_width + 1e-9
        assert beyond == one.is_outside
        assert one.y < chart.height
    assert all(later.y - one.y >= 40 for one, later in zip(chart.rows, chart.rows[1:], strict=False))


def test_shares_stand_in_proportion() -> None:
    """The axis from 70 to 100 %: 80 % stands a third of the way, 90 % two thirds."""
    chart = lay_out([HeldRow("a", held(0.8, 400, 360))])
    one = chart.rows[0]
    width = RIGHT_PERCENT - LEFT_PERCENT
    assert [tick.words for tick in chart.ticks] == ["70 %", "80 %", "90 %", "100 %"]
    assert one.said_x == pytest.approx(LEFT_PERCENT + width / 3)
    assert one.held_x == pytest.approx(LEFT_PERCENT + 2 * width / 3)
    assert one.is_outside and chart.outside == 1


@given(st.floats(0, 1))
def test_ticks_are_round_and_few(lowest: float) -> None:
    chart = lay_out([HeldRow("a", held(0.8, 1000, round(lowest * 1000)))])
    assert 3 <= len(chart.ticks) <= 6
    assert chart.ticks[-1].words == "100 %"
    assert all(int(tick.words.split()[0]) % 5 == 0 for tick in chart.ticks)


def test_nothing_counted_is_an_empty_picture() -> None:
    assert lay_out([HeldRow("none", held(0.8, 0, 0))]).rows == ()
