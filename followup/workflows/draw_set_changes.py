"""Draw the week's tranche of a season of set changes, and end the season when its last day is over.

1. Where a season is open, not paused, and this week was not drawn yet: what the coming weeks hold is read, with
   bookings and what is expected of the texts that are out and of the invites that are placed.
2. Of the cars that change to that set and may be invited now, as many are drawn as fit (`pacing/tranche.py`).
3. They are kept in one transaction with the mark that the week is drawn: two processes draw it once.

`plan_texts` writes to whoever was drawn. If the process dies in between, the next tick draws the week.
"""

from __future__ import annotations

from datetime import datetime

from followup.core.planning.pacing.board import Board
from followup.core.planning.pacing.tranche import tranche
from followup.core.planning.pacing.weeks import monday_of
from followup.core.shop import Shop
from followup.core.wall import day_of
from followup.storage import paced, room, set_seasons, shops
from followup.storage.lead_times import with_learned_lead
from followup.storage.rows import Row
from followup.storage.set_waiting import waiting_cars
from followup.storage.store import Connection, Store

OVER = "the season's last day is over"


def draw_set_changes(store: Store, shop_id: int, now: datetime, *, needs_registration: bool = False) -> int:
    """Draw this week, where it is due; how many cars were drawn."""
    with store.read() as connection:
        season = set_seasons.open_season(connection, shop_id)
        if season is None:
            return 0
        shop = with_learned_lead(connection, shops.load_shop(connection, shop_id), now)
        today = day_of(now, shop.zone)
        is_over, week_on = today > season["until_on"], monday_of(today)
        is_due = season["paused_at"] is None and (season["drawn_on"] is None or season["drawn_on"] < week_on)
        found = [] if is_over or not is_due else _drawn(connection, shop, season, now, needs_registration)
    if is_over:
        with store.write() as connection:
            set_seasons.change(connection, shop_id, season["id"], ended_at=now, ended_because=OVER)
        return 0
    if not is_due:
        return 0
    with store.write() as connection:
        return set_seasons.keep_drawn(connection, season, week_on, found)


def _drawn(
    connection: Connection, shop: Shop, season: Row, now: datetime, needs_registration: bool
) -> list[tuple[int, int]]:
    due = set_seasons.as_value(season, shop.zone)
    there, used = room.look_at_room(connection, shop, now)
    placed = list(paced.placed_invites(connection, shop.id, now).values()) if shop.rules.paces_invites else []
    board = Board(there, room.with_placed(connection, shop, there, used, placed, now))
    waiting = waiting_cars(connection, shop, season, now, needs_registration=needs_registration)
    found = tranche(waiting.may, due, board, now)
    return [(one.phone.id, waiting.cars[one.vehicle]) for one in found]
