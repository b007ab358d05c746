"""How far readings of one car may lie apart before the shop says something: the usual bounds, each with its source.

They are the shop's settings (`ShopRules.advisory_bounds`); the car's handbook comes before them.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass

from followup.core.item import converted
from followup.core.shop import ShopRules

# Where the rule itself says "at": even odds that the bound is truly reached are enough.
EVEN_ODDS = 0.5


@dataclass(frozen=True)
class Bound:
    """One rule: its code, what is compared (words for the manager's page), and the usual bound in `unit`.

    `is_over`: only more than the bound counts; else the bound itself does.
    """

    code: str
    words: str
    value: float
    unit: str
    is_over: bool = True


BOUNDS: tuple[Bound, ...] = (
    # Practice of the trade: over 2 mm, slides or caliper.
    Bound("pad_inner_outer", "Inner against outer pad, over", 2.0, "mm"),
    Bound("pad_sides", "Left against right pad, over", 2.0, "mm"),
    # Practice: all four within 2/32 to 3/32, here its middle; the handbook decides.
    Bound("tire_four", "All-wheel drive: between the four tires, over", 2.5, "32nds"),
    # Practice: more than 2/32 across one tire, or between the tires of one axle.
    Bound("tire_across", "Across one tire, over", 2.0, "32nds"),
    Bound("tire_axle", "Between the tires of one axle, over", 2.0, "32nds"),
    # Practice: a rotation at 2/32 between the axles.
    Bound("tire_rotation", "Rotation: front against rear, from", 2.0, "32nds", is_over=False),
)
BOUND_BY_CODE: Mapping[str, Bound] = {one.code: one for one in BOUNDS}


def bound_in(code: str, unit: str, rules: ShopRules) -> float:
    """The shop's bound in the unit that was entered: readings are compared as they are, the bound is turned."""
    usual = BOUND_BY_CODE[code]
    return converted(rules.advisory_bounds.get(code, usual.value), usual.unit, unit)


def is_beyond(code: str, difference: float, bound: float, chance: float, rules: ShopRules) -> bool:
    """True where the measured difference is beyond the bound, and truly so with the chance that the shop asks for.

    Millionths are rounding, not wear.
    """
    over = round(difference - bound, 6)
    if BOUND_BY_CODE[code].is_over:
        return over > 0 and chance >= rules.advise_at_chance
    return over >= 0 and round(chance, 6) >= min(EVEN_ODDS, rules.advise_at_chance)
