"""When an item, or the tires and brakes of a car together, are worth a text.

One is as likely as itself; of several the first is due sooner, by the copula of `first_due`, which has its own tests.
"""

from __future__ import annotations

import pytest

from followup.core.forecast.first_due import SHARED_BY_MILES, chance_of_first
from followup.core.forecast.window import CURVE_CHANCES, DueCurve
from followup.core.planning.send_rule import lowest_chance
from followup.core.planning.worth import (
    COUNTS_FROM,
    Worn,
    WornAhead,
    are_reasons,
    days_until_worn_worth,
    days_until_worth,
    first_due,
    is_worth_a_text,
    worn_are_worth_a_text,
)
from followup.core.shop import ShopRules

# Due within 1,000 days times its chance; near half as late.
DUE = DueCurve(0.0, tuple(1000 * chance for chance in CURVE_CHANCES))
NEAR = DueCurve(0.0, tuple(500 * chance for chance in CURVE_CHANCES))
RULES = ShopRules(send_at_chance=0.25, send_worn_at_chance=0.1, near_at_chance=0.8, lead_days=20)
NEVER = DueCurve.certain(float("inf"))


def test_what_nobody_knows_to_be_near_goes_by_the_chance_alone() -> None:
    assert is_worth_a_text(0.25, RULES) and not is_worth_a_text(0.249, RULES)
    assert days_until_worth(DUE, RULES) == pytest.approx(250 - 20)


def test_of_one_alone_the_later_of_both_chances_decides() -> None:
    # Near at 80 % after 400 days; due at 10 % after 100.
    assert days_until_worn_worth([WornAhead(DUE, NEAR)], RULES) == pytest.approx(400 - 20, abs=0.3)
    late = ShopRules(send_worn_at_chance=0.6, near_at_chance=0.8, lead_days=20)
    assert days_until_worn_worth([WornAhead(DUE, NEAR)], late) == pytest.approx(600 - 20, abs=0.3)
    assert days_until_worn_worth([WornAhead(DUE, NEAR, since_days=50)], late) == pytest.approx(550 - 20, abs=0.3)


@pytest.mark.parametrize("rules", [RULES, ShopRules(), ShopRules(near_at_chance=0.3, send_worn_at_chance=0.4)])
@pytest.mark.parametrize("count", [1, 2, 8])
def test_days_and_chances_are_one_rule(rules: ShopRules, count: int) -> None:
    worn = [WornAhead(DUE, NEAR, 7.0 * number) for number in range(count)]
    day = days_until_worn_worth(worn, rules)
    for on, is_worth in ((day - 0.5, False), (day + 0.5, True)):
        seen = [one.on(on + rules.lead_days, rules) for one in worn]
        assert worn_are_worth_a_text(seen, rules) is is_worth


@pytest.mark.parametrize("nights", [1, 7, 60])
def test_asked_some_nights_later_the_day_is_the_same_day(nights: int) -> None:
    """Curves that nobody made anew name one day of the calendar, whenever it is asked."""
    rules = ShopRules()
    worn = [WornAhead(DUE, NEAR, 7.0 * number) for number in range(4)]
    later = [WornAhead(one.curve, one.near, one.since_days + nights) for one in worn]
    assert days_until_worn_worth(later, rules) == days_until_worn_worth(worn, rules) - nights


def test_several_are_worth_it_sooner_than_one() -> None:
    rules = ShopRules(send_worn_at_chance=0.35, near_at_chance=0.6)
    assert not worn_are_worth_a_text([Worn(0.3, 0.55, 0.5)], rules)
    assert worn_are_worth_a_text([Worn(0.3, 0.55, 0.5)] * 4, rules)
    both = chance_of_first([0.3, 0.2], [SHARED_BY_MILES] * 2)
    assert first_due([Worn(0.3, 0.55, 0.5), Worn(0.2, 0.5, 0.5)]) == pytest.approx(both) and 0.3 < both < 0.5


def test_what_is_hardly_due_does_not_count_for_planning_does_not_read_it() -> None:
    """What stays under `send_rule.lowest_chance` by the lead time and the days of joining is not read."""
    assert first_due([Worn(0.3, 0.55, 0.5), Worn(0.05, 0.5, 0.099)]) == first_due([Worn(0.3, 0.55, 0.5)])
    assert not worn_are_worth_a_text([], RULES)
    assert not worn_are_worth_a_text([Worn(0.09, 0.9, 0.5)] * 4, RULES), "together 10 %, each alone hardly"
    for rules in (RULES, ShopRules(), ShopRules(send_worn_at_chance=0.01)):
        assert lowest_chance(rules) <= COUNTS_FROM


def test_the_likeliest_are_the_reason() -> None:
    worn = [Worn(0.4, 0.9, 0.9), Worn(0.2, 0.7, 0.3), Worn(0.19, 0.7, 0.3), Worn(0.0, 0.05, 0.05)]
    assert are_reasons(worn) == [True, True, False, False]


def test_what_never_comes_near_is_never_worth_it() -> None:
    assert days_until_worn_worth([WornAhead(DUE, NEVER)], RULES) == float("inf")
    assert days_until_worn_worth([], RULES) == float("inf")
