"""When an item alone is worth a text: one rule for the planner, for pacing and for trying rules out.

q = cost of early / (cost of early + cost of late). An item whose work a visit does as soon as it lies near its limit
(`Item.near`: tires, brake pads) is told of at a smaller q, for being a little early then loses little; but only where
the visit will hardly find it too good.
"""

from __future__ import annotations

from followup.core.forecast.window import DueCurve
from followup.core.shop import ShopRules


def is_worth_a_text(chance: float, chance_near: float | None, rules: ShopRules) -> bool:
    """By the chance of being due once the lead time is over, and that of being near then; None: that is not known."""
    if chance_near is None:
        return chance >= rules.send_at_chance
    return chance >= rules.send_worn_at_chance and chance_near >= rules.near_at_chance


def days_until_worth(curve: DueCurve, near: DueCurve | None, rules: ShopRules) -> float:
    """Days from the curves' own day until the item is worth a text; infinite where never."""
    if near is None:
        due = curve.quantile(rules.send_at_chance)
    else:
        due = max(curve.quantile(rules.send_worn_at_chance), near.quantile(rules.near_at_chance))
    return due - rules.lead_days
