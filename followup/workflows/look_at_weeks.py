"""Look at the coming twelve weeks: what each holds, what is booked, what is expected of texts, and who waits for room.

Reads only; it is what pacing goes by, as everything stands now.
"""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass
from datetime import date, datetime

from followup.core.planning.pacing.brought import Brought
from followup.core.planning.pacing.weeks import WEEKS
from followup.storage import paced, people, room, seen, shops
from followup.storage.rows import Row
from followup.storage.seen import Whom
from followup.storage.store import Connection, Store

MOST_WAITING = 50


@dataclass(frozen=True)
class WeekOf:
    """One week of one thing that is used up, in hours (check-in: times). `out` is expected of texts that left, `placed`
    of invites that are placed and have not left."""

    begins_on: date
    holds: float
    booked: float
    out: float
    placed: float

    @property
    def used(self) -> float:
        """What is booked and expected of it."""
        return self.booked + self.out + self.placed

    @property
    def is_over(self) -> bool:
        """Whether more is booked and expected than the week holds."""
        return self.used > self.holds + 1e-6


@dataclass(frozen=True)
class Waiting:
    """An invite that waits for room; `begins_on` None: past the weeks that are paced."""

    vehicle_id: int
    whom: Whom
    first_on: date
    begins_on: date | None
    says: str


@dataclass(frozen=True)
class WeeksPage:
    """`weeks` by what is used up; `leaving` counts the invites of each week. `placed_at` None: nothing is paced yet."""

    weeks: dict[str, tuple[WeekOf, ...]]
    is_paced: bool
    placed_at: datetime | None
    how: str
    leaving: tuple[int, ...]
    postponed: int
    waiting: tuple[Waiting, ...]
    waiting_count: int
    brought: Brought


def look_at_weeks(store: Store, shop_id: int, now: datetime) -> WeeksPage:
    """The twelve weeks from this one on; of this week what is left from tomorrow."""
    with store.read() as connection:
        shop = shops.load_shop(connection, shop_id)
        there, out = room.look_at_room(connection, shop, now)
        run = paced.current_run(connection, shop_id, now) if shop.rules.paces_invites else None
        rows = list(paced.placed_invites(connection, shop_id, now).values()) if run else []
        ahead = room.not_out_yet(connection, shop, rows, now)
        placed = room.expected_of_rows(there, ahead)
        waiting = sorted(
            (one for one in ahead if one["says"]), key=lambda one: (one["begins_on"] or date.max, one["id"])
        )
        leaving = Counter(max(one["begins_on"], there.begins_on) for one in ahead if one["begins_on"])
        return WeeksPage(
            weeks={
                name: tuple(
                    WeekOf(there.begin_of(week), there.planned[name][week], there.booked[name][week], out[name][week],
                           placed[name][week])
                    for week in range(WEEKS)
                )
                for name in there.planned
            },
            is_paced=shop.rules.paces_invites,
            placed_at=run["at"] if run else None,
            how=run["how"] if run else "",
            leaving=tuple(leaving[there.begin_of(week)] for week in range(WEEKS)),
            postponed=sum(one["begins_on"] is None for one in ahead),
            waiting=tuple(_waiting(connection, shop_id, one) for one in waiting[:MOST_WAITING]),
            waiting_count=len(waiting),
            brought=there.brought,
        )  # fmt: skip


def _waiting(connection: Connection, shop_id: int, row: Row) -> Waiting:
    persons = people.persons_of_phone(connection, row["phone_id"])
    whom = {
        "phone_id": row["phone_id"],
        "vehicle_id": row["vehicle_id"],
        "person_id": persons[0]["id"] if persons else None,
    }
    return Waiting(
        row["vehicle_id"], seen.whom(connection, shop_id, whom), row["first_on"], row["begins_on"], row["says"]
    )
