"""Look at what the shop's cars taught: what forecasts go by, what the last run found, and every version. Reads only."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime

from followup.core.forecast.learned import Learned
from followup.storage import learned_priors
from followup.storage.rows import Row
from followup.storage.store import Store


@dataclass(frozen=True)
class LearnedVersion:
    """One version; `learned` is None where the shop was set back to the published values."""

    number: int
    at: datetime
    author: str
    source: str
    is_used: bool
    learned: Learned | None


@dataclass(frozen=True)
class LearnedView:
    """All versions, newest first, and the one that forecasts go by (None: the published values, from the beginning)."""

    versions: tuple[LearnedVersion, ...]
    in_use: LearnedVersion | None

    @property
    def newest(self) -> LearnedVersion | None:
        """The last version, used or not."""
        return self.versions[0] if self.versions else None

    @property
    def newest_number(self) -> int:
        """Its number; 0 before the first."""
        return self.versions[0].number if self.versions else 0

    @property
    def last_run(self) -> LearnedVersion | None:
        """The last version that came of learning."""
        return next((one for one in self.versions if one.source == "learned"), None)

    @property
    def is_set_back(self) -> bool:
        """True where somebody set the shop back to the published values: learning rests."""
        return self.in_use is not None and self.in_use.learned is None


def look_at_learned(store: Store, shop_id: int) -> LearnedView:
    """What was learned, in one view."""
    with store.read() as connection:
        found = learned_priors.versions(connection, shop_id)
        used = learned_priors.in_use(connection, shop_id)
    return LearnedView(tuple(_version(row) for row in found), _version(used) if used else None)


def _version(row: Row) -> LearnedVersion:
    learned = Learned.from_json(row["body"]) if row["body"] else None
    return LearnedVersion(row["version"], row["at"], row["author"], row["source"], row["is_used"], learned)
