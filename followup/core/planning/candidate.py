"""One reason to write about a car: what `send_rule` finds and `decide` chooses from."""

from __future__ import annotations

from dataclasses import dataclass

from followup.core.planning.picture import ItemAt


@dataclass(frozen=True)
class Candidate:
    """One reason to write; `raised_by` is the inspection, visit or day that raised it, as a key that stays the same
    however often it is planned; `advised` the keys of the advisories that are told along."""

    reason: str
    raised_by: str
    says: str
    items: tuple[ItemAt, ...] = ()
    is_legal: bool = False
    chance: float = 0.0
    advised: tuple[str, ...] = ()
