"""Which items trigger a text and which join it, so that one visit does what belongs together."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from followup.core.planning.picture import DueItem, ItemAt
from followup.core.planning.worth import Worn, are_reasons, first_due, is_worth_a_text, worn_are_worth_a_text
from followup.core.shop import ShopRules
from followup.core.vehicle import WALKING_ORDER


@dataclass(frozen=True)
class Joined:
    """The items of one text: the triggers and what joins them; legal limits first, then by chance and around the car.

    `chance` is the greatest chance of a trigger, or that the first of those that wear is due. `is_legal`: a trigger is
    at its legal limit by the send rule.
    """

    items: tuple[DueItem, ...]
    triggers: tuple[DueItem, ...]
    is_legal: bool
    chance: float

    @property
    def at(self) -> tuple[ItemAt, ...]:
        """Items and positions in their order."""
        return tuple(one.at for one in self.items)


def is_at_legal(due: DueItem, rules: ShopRules) -> bool:
    """True where the legal limit is passed, or comes due within the lead time by the same rule as any other limit."""
    return due.is_past_legal or due.chance_legal >= rules.send_at_chance


def triggers(items: Iterable[DueItem], rules: ShopRules) -> tuple[DueItem, ...]:
    """Those of one car's items that are a reason for a text: each by its own chance or its legal limit, tires and pads
    where they are worth a text together, the likeliest of them."""
    items = list(items)
    reasons = [one for one in items if one.chance_near is None and is_worth_a_text(one.chance_by_lead, rules)]
    of_worn, worn = [one for one in items if one.chance_near is not None], _worn(items)
    if worn_are_worth_a_text(worn, rules):
        reasons += [one for one, is_reason in zip(of_worn, are_reasons(worn), strict=True) if is_reason]
    return tuple(one for one in items if one in reasons or is_at_legal(one, rules))


def _worn(items: Iterable[DueItem]) -> list[Worn]:
    return [
        Worn(one.chance_by_lead, one.chance_near, one.chance_joined) for one in items if one.chance_near is not None
    ]


def join(allowed: Iterable[DueItem], rules: ShopRules, asked_again: Iterable[ItemAt] = ()) -> Joined | None:
    """The text that these items make together; None where none of them triggers one.

    `asked_again`: items whose day, named by the customer, has come: they trigger whatever their chance.
    """
    items, again = list(allowed), set(asked_again)
    reasons = set(triggers(items, rules))
    chosen = [one for one in items if one in reasons or one.at in again]
    if not chosen:
        return None
    joining = [one for one in items if one in chosen or one.chance_joined >= rules.join_at_chance]
    ordered = tuple(sorted(joining, key=lambda one: _order(one, rules)))
    is_legal = any(is_at_legal(one, rules) for one in chosen)
    return Joined(ordered, tuple(chosen), is_legal, _chance(items, chosen))


def _chance(items: Iterable[DueItem], chosen: Iterable[DueItem]) -> float:
    """That of the likeliest, or that the first of what wears is due where any of that triggers."""
    chances = [one.chance_by_lead for one in chosen]
    if any(one.chance_near is not None for one in chosen):
        chances.append(first_due(_worn(items)))
    return max(chances)


def _order(due: DueItem, rules: ShopRules) -> tuple[bool, float, str, int]:
    place = WALKING_ORDER.index(due.position) if due.position in WALKING_ORDER else len(WALKING_ORDER)
    return not is_at_legal(due, rules), -round(due.chance_by_lead, 2), due.item, place
