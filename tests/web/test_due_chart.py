"""The due chart's places: dots where their dates are, stacked where they would touch, inside the picture."""

from __future__ import annotations

from datetime import date, timedelta
from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from followup.web import due_chart
from followup.web.due_chart import DOT_PERCENT, DueDots, DueMark, lay_out, stack

TODAY = date(2026, 11, 24)


def _item(*days: int | None) -> DueDots:
    dates = tuple(None if day is None else TODAY + timedelta(days=day) for day in days)
    return DueDots("front pads", dates)


@given(st.lists(st.floats(2, 98), max_size=20))
def test_stacks_keep_every_dot_and_never_touch(places: list[float]) -> None:
    stacks = stack(places)
    assert sorted(place for _, held in stacks for place in held) == sorted(places)
    middles = [middle for middle, _ in stacks]
    assert all(right - left >= DOT_PERCENT - 1e-9 for left, right in pairwise(middles))
    assert all(len(held) <= due_chart.HIGHEST_STACK for _, held in stacks)
    assert not middles or middles[-1] <= 98 + 1e-9


@given(st.lists(st.floats(20, 80), min_size=20, max_size=20))
def test_a_dot_stands_near_its_date(places: list[float]) -> None:
    # Twenty dots in stacks of at most seven push each other by at most a few widths, never by months.
    for middle, held in stack(places):
        assert all(abs(middle - place) <= 4 * DOT_PERCENT for place in held)


def test_dots_far_apart_stand_exactly_at_their_dates() -> None:
    spread = [10.0, 20.0, 30.0]
    assert [middle for middle, _ in stack(spread)] == spread


def test_wilkinsons_example_dots_within_one_width_share_a_stack_at_their_mean() -> None:
    # Wilkinson, "Dot Plots", The American Statistician 53 (1999): the rule, from memory; the numbers are ours.
    assert stack([10, 11, 12, 14]) == [(11, [10, 11, 12]), (14, [14])]


def test_what_is_past_the_horizon_is_counted_and_not_drawn() -> None:
    chart = lay_out([_item(*range(30, 330, 30), *([None] * 10))], [], TODAY)
    assert len(chart.rows[0].dots) == 10
    assert chart.rows[0].later == 10


def test_a_date_beyond_thirty_months_counts_as_later() -> None:
    chart = lay_out([_item(*range(30, 600, 30), 2_000)], [], TODAY)
    assert chart.rows[0].later == 1


def test_the_order_of_dots_is_the_order_of_dates() -> None:
    chart = lay_out([_item(*range(40, 640, 30))], [], TODAY)
    across = [dot.x for dot in chart.rows[0].dots]
    assert across == sorted(across)
    assert chart.today_x < across[0]


def test_a_mark_stands_over_its_day() -> None:
    booked = TODAY + timedelta(days=100)
    chart = lay_out([_item(*[100 + n * 20 for n in range(20)])], [DueMark(booked, "booking", "Drop-off")], TODAY)
    first = chart.rows[0].dots[0]
    assert chart.marks[0].x == pytest.approx(first.x, abs=DOT_PERCENT / 2)


def test_marks_that_would_touch_stand_under_each_other() -> None:
    days = [TODAY + timedelta(days=day) for day in (12, 14, 16, 300)]
    chart = lay_out([_item(*range(30, 630, 30))], [DueMark(day, "text", "due work") for day in days], TODAY)
    places = [(mark.x, mark.y) for mark in chart.marks]
    assert all(
        abs(one[0] - other[0]) >= due_chart.MARK_PERCENT or abs(one[1] - other[1]) >= 16
        for n, one in enumerate(places)
        for other in places[:n]
    )
    assert all(mark.y + 16 <= chart.rows[0].label_y for mark in chart.marks)


def test_what_is_overdue_for_long_stands_at_the_left_edge() -> None:
    chart = lay_out([_item(*[-1_000] * 20)], [], TODAY)
    assert min(dot.x for dot in chart.rows[0].dots) >= due_chart.LEFT_PERCENT
    assert chart.begins_on == date(2025, 11, 1)


def test_ticks_are_few_enough_for_a_phone() -> None:
    for months in (1, 5, 11, 17, 29):
        chart = lay_out([_item(*[months * 30 + n for n in range(20)])], [], TODAY)
        assert 1 <= len(chart.ticks) <= due_chart.MOST_TICKS + 1


def test_rows_do_not_overlap() -> None:
    chart = lay_out([_item(*[30] * 20), _item(*range(30, 630, 30)), _item(*[None] * 20)], [], TODAY)
    for above, below in pairwise(chart.rows):
        assert below.label_y > above.base_y + 10
        assert all(dot.y > above.base_y for dot in below.dots)
    assert chart.height > chart.rows[-1].base_y


def test_an_item_without_twenty_dates_is_refused() -> None:
    with pytest.raises(ValueError, match="3 dates in place of 20"):
        lay_out([_item(1, 2, 3)], [], TODAY)
