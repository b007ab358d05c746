"""What is known of texts that are about to leave, read for all of them at once in the transaction that lets them."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from datetime import datetime

from followup.core.shop import Shop
from followup.storage import numbers, outbox, pictures, trials, wordings
from followup.storage.rows import Row
from followup.storage.store import Connection


@dataclass(frozen=True)
class Sight:
    """Rows about several texts of one shop; `gathered` where an invite is among them."""

    known: numbers.Known
    gathered: pictures.Gathered | None
    reasons: dict[int, Row]
    _wordings: dict[tuple[str, str], tuple[Row | None, Row | None]] = field(default_factory=dict)

    def wording(self, connection: Connection, shop: Shop, text: Row) -> Row | None:
        """The shop's own wording of the text's reason, or what a trial draws for the phone; both are read once for each
        reason and language."""
        key = (text["reason"], text["language"])
        if key not in self._wordings:
            trial = trials.open_trial(connection, shop.id, *key)
            self._wordings[key] = (trial, wordings.in_use(connection, shop.id, *key))
        trial, own = self._wordings[key]
        drawn = trials.drawn_wording(connection, trial, text["phone_id"])
        return drawn.wording if drawn else own

    def vehicle(self, text: Row) -> Row | None:
        """The text's car, where it was read already."""
        return self.gathered.vehicle(text["vehicle_id"]) if self.gathered and text["vehicle_id"] else None

    def windows(self, vehicle_id: int) -> list[Row] | None:
        """The car's present windows, where they were read already."""
        return self.gathered.windows.get(vehicle_id) if self.gathered else None


def look(connection: Connection, shop: Shop, texts: Sequence[Row], now: datetime, secret: str) -> Sight:
    """Read what decides about these texts. `secret` finds what the ledger keeps of a number by its hash alone."""
    asked = [text for text in texts if text["kind"] != "alert"]
    kinds = {text["kind"] for text in asked}
    wanted = [text["number"] for text in asked]
    known = numbers.know(connection, shop.id, wanted, now, secret=secret, kinds=kinds)
    invites = [text for text in asked if text["kind"] == "invite"]
    if not invites:
        return Sight(known, None, {})
    gathered = pictures.gather_known(connection, shop.id, known)
    return Sight(known, gathered, outbox.load_reasons(connection, [text["reason_id"] for text in invites]))
