"""When an item alone is worth a text: by its chance, or by its chance and that of being near its limit at the visit."""

from __future__ import annotations

import pytest

from followup.core.forecast.window import CURVE_CHANCES, DueCurve
from followup.core.planning.worth import days_until_worth, is_worth_a_text
from followup.core.shop import ShopRules

# Due within 1,000 days times its chance; near half as late.
DUE = DueCurve(0.0, tuple(1000 * chance for chance in CURVE_CHANCES))
NEAR = DueCurve(0.0, tuple(500 * chance for chance in CURVE_CHANCES))
RULES = ShopRules(send_at_chance=0.25, send_worn_at_chance=0.1, near_at_chance=0.8, lead_days=20)


def test_what_nobody_knows_to_be_near_goes_by_the_chance_alone() -> None:
    assert is_worth_a_text(0.25, None, RULES) and not is_worth_a_text(0.249, None, RULES)
    assert days_until_worth(DUE, None, RULES) == pytest.approx(250 - 20)


def test_the_later_of_both_chances_decides() -> None:
    # Near at 80 % after 400 days; due at 10 % after 100.
    assert days_until_worth(DUE, NEAR, RULES) == pytest.approx(400 - 20)
    late = ShopRules(send_worn_at_chance=0.6, near_at_chance=0.8, lead_days=20)
    assert days_until_worth(DUE, NEAR, late) == pytest.approx(600 - 20)


@pytest.mark.parametrize("rules", [RULES, ShopRules(), ShopRules(near_at_chance=0.3, send_worn_at_chance=0.4)])
@pytest.mark.parametrize("near", [NEAR, None])
def test_days_and_chances_are_one_rule(rules: ShopRules, near: DueCurve | None) -> None:
    day = days_until_worth(DUE, near, rules)
    for on, is_worth in ((day - 0.5, False), (day + 0.5, True)):
        at = on + rules.lead_days
        assert is_worth_a_text(DUE.chance(at), near.chance(at) if near else None, rules) is is_worth


def test_what_never_comes_near_is_never_worth_it() -> None:
    assert days_until_worth(DUE, DueCurve.certain(float("inf")), RULES) == float("inf")
