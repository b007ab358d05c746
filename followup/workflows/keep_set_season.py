"""Begin a season of set changes, pause it, let it go on, end it.

Each is one transaction with its line in the audit trail. While a season is paused nobody is drawn, and what is planned
and has not left is dropped when its moment comes, because its reason no longer stands; whoever was drawn is written to
once it goes on.
"""

from __future__ import annotations

from datetime import date, datetime, timedelta
from typing import Any, Literal

from followup.core.wall import day_of
from followup.storage import set_seasons, shops
from followup.storage.store import Store

ALREADY = "A season is open already: end it first."
LONGEST = timedelta(days=120)
Step = Literal["pause", "go_on", "end"]
_DID = {"pause": "paused a season of set changes", "go_on": "let a season of set changes go on",
        "end": "ended a season of set changes"}  # fmt: skip


def begin_season(
    store: Store, shop_id: int, to_set: Literal["winter", "summer"], until_on: date, staff_id: int, who: str,
    now: datetime,
) -> str | None:  # fmt: skip
    """Begin one; why not, in words, or None where it began."""
    with store.write() as connection:
        today = day_of(now, shops.load_shop(connection, shop_id).zone)
        if not today < until_on <= today + LONGEST:
            return f"Give a last day after today, {LONGEST.days} days ahead at most."
        made = set_seasons.begin(
            connection, shop_id, to_set=to_set, until_on=until_on, begun_at=now, begun_by=staff_id
        )  # fmt: skip
        if made is None:
            return ALREADY
        shops.note(connection, shop_id, now, who, "began a season of set changes", str(made), None,
                   {"to_set": to_set, "until_on": until_on.isoformat()})  # fmt: skip
    return None


def change_season(store: Store, shop_id: int, season_id: int, step: Step, who: str, now: datetime) -> bool:
    """Pause it, let it go on, or end it; False where it is none that is open."""
    news: dict[Step, dict[str, Any]] = {
        "pause": {"paused_at": now},
        "go_on": {"paused_at": None},
        "end": {"ended_at": now, "ended_because": f"{who} ended it"},
    }
    with store.write() as connection:
        if not set_seasons.change(connection, shop_id, season_id, **news[step]):
            return False
        shops.note(connection, shop_id, now, who, _DID[step], str(season_id), None, None)
    return True
