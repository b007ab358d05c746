"""Which items trigger a text and which join it, so that one visit does what belongs together."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from followup.core.planning.picture import DueItem, ItemAt
from followup.core.planning.worth import is_worth_a_text
from followup.core.shop import ShopRules
from followup.core.vehicle import WALKING_ORDER


@dataclass(frozen=True)
class Joined:
    """The items of one text: the triggers and what joins them; legal limits first, then by chance and around the car.

    `chance` is the greatest chance of a trigger. `is_legal`: a trigger is at its legal limit by the send rule.
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


def is_trigger(due: DueItem, rules: ShopRules) -> bool:
    """True where the item alone is worth a text, by its chances within the lead time, or its legal limit comes."""
    return is_worth_a_text(due.chance_by_lead, due.chance_near, rules) or is_at_legal(due, rules)


def join(allowed: Iterable[DueItem], rules: ShopRules, asked_again: Iterable[ItemAt] = ()) -> Joined | None:
    """The text that these items make together; None where none of them triggers one.

    `asked_again`: items whose day, named by the customer, has come: they trigger whatever their chance.
    """
    items, again = list(allowed), set(asked_again)
    triggers = [one for one in items if is_trigger(one, rules) or one.at in again]
    if not triggers:
        return None
    joining = [one for one in items if one in triggers or one.chance_joined >= rules.join_at_chance]
    ordered = tuple(sorted(joining, key=lambda one: _order(one, rules)))
    is_legal = any(is_at_legal(one, rules) for one in triggers)
    return Joined(ordered, tuple(triggers), is_legal, max(one.chance_by_lead for one in triggers))


def _order(due: DueItem, rules: ShopRules) -> tuple[bool, float, str, int]:
    place = WALKING_ORDER.index(due.position) if due.position in WALKING_ORDER else len(WALKING_ORDER)
    return not is_at_legal(due, rules), -round(due.chance_by_lead, 2), due.item, place
