"""Trials of wordings: intervals held against published tables and scipy, the draw against its own evenness.

Newcombe (1998), Statistics in Medicine 17:857 (single proportions, table I) and 17:873 (differences, table II, method
10), and Fleiss's size of a sample, all from memory; the single intervals also against `scipy.stats`.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import date

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.stats import binomtest, chisquare, kstest

from followup.core.planning.decide import decide
from followup.core.planning.draw import drawn, is_second, is_without_invites
from followup.core.planning.wording_trial import (
    Arm,
    customers_needed,
    difference,
    has_many_stops,
    interval,
    verdict,
)
from tests.core.planning.cars import DUE_TIRE, LOW_WASHER, NOW, shop
from tests.core.planning.cars import car as a_car


@pytest.mark.parametrize(
    ("count", "of", "low", "high"),
    [(81, 263, 0.2553, 0.3662), (15, 148, 0.0624, 0.1605), (0, 20, 0.0, 0.1611), (1, 29, 0.0061, 0.1718)],
)
def test_newcombe_single_proportions(count: int, of: int, low: float, high: float) -> None:
    assert interval(count, of) == pytest.approx((low, high), abs=5e-5)


@pytest.mark.parametrize(
    ("one", "other", "low", "high"),
    [
        ((56, 70), (48, 80), 0.0524, 0.3339),
        ((9, 10), (3, 10), 0.1705, 0.8090),
        ((10, 10), (0, 20), 0.6791, 1.0),
    ],
)
def test_newcombe_differences(one: tuple[int, int], other: tuple[int, int], low: float, high: float) -> None:
    assert difference(other, one) == pytest.approx((low, high), abs=5e-5)
    assert difference(one, other) == pytest.approx((-high, -low), abs=5e-5)


@given(st.integers(1, 2000).flatmap(lambda of: st.tuples(st.integers(0, of), st.just(of))), st.floats(0.5, 0.99))
def test_scipy_wilson_interval(counted: tuple[int, int], level: float) -> None:
    theirs = binomtest(*counted).proportion_ci(confidence_level=level, method="wilson")
    assert interval(*counted, level) == pytest.approx((theirs.low, theirs.high), abs=1e-9)


def test_fleiss_customers_needed() -> None:
    assert (customers_needed(0.10, 0.10), customers_needed(0.35, 0.10)) == (199, 376)


def test_nothing_is_concluded_early_and_a_plain_difference_late() -> None:
    first, second = Arm(40, booked=4), Arm(40, booked=20)
    early = verdict(first, second, 200)
    assert early.is_early and early.better is None and early.low > 0
    assert verdict(first, second, 40).better == "second"
    assert verdict(second, first, 40).better == "first"
    assert verdict(Arm(400, booked=100), Arm(400, booked=104), 400).better is None
    assert (verdict(Arm(), Arm(), 20).low, verdict(Arm(), Arm(), 20).high) == (-1.0, 1.0)


def test_stops_over_the_bound_are_seen_from_the_third_on() -> None:
    assert has_many_stops(Arm(90, stopped=3), 3)
    assert not has_many_stops(Arm(100, stopped=3), 3), "three of a hundred are what the bound allows"
    assert not has_many_stops(Arm(10, stopped=2), 3), "two may be chance"
    with pytest.raises(ValueError, match="5 of 4"):
        interval(5, 4)


def test_the_draw_is_even_and_the_same_each_time() -> None:
    draws = [drawn("wording a", phone) for phone in range(1, 4001)]
    assert kstest(draws, "uniform").pvalue > 0.01
    assert draws == [drawn("wording a", phone) for phone in range(1, 4001)]
    both = [(is_second("a", phone), is_second("b", phone)) for phone in range(1, 4001)]
    assert chisquare([both.count((one, other)) for one in (True, False) for other in (True, False)]).pvalue > 0.01


def test_nobody_is_left_out_for_good() -> None:
    years = [
        {one for one in range(2000) if is_without_invites(0.05, 1, date(year, 6, 1), one)} for year in (2026, 2027)
    ]
    assert all(70 <= len(found) <= 130 for found in years)
    assert len(years[0] & years[1]) < 20
    assert not any(is_without_invites(0.0, 1, date(2026, 6, 1), one) for one in range(2000))


def test_who_is_drawn_gets_no_invite_but_what_is_for_their_own_good() -> None:
    everybody = shop(without_invites_share=1.0)
    for picture in (a_car(), a_car(due=(LOW_WASHER,))):
        assert decide(picture, NOW).text is not None
        decision = decide(replace(picture, shop=everybody), NOW)
        assert decision.text is None and "without_invites" in {one.rule for one in decision.why_not}
    legal = replace(a_car(due=(replace(DUE_TIRE, chance_legal=0.5),)), shop=everybody)
    assert decide(legal, NOW).text is not None
