"""When invites left and when their phones first wrote: what the hour of the next one is learned from."""

from __future__ import annotations

from bisect import bisect_left
from collections import Counter, defaultdict
from collections.abc import Iterable
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from typing import Any

from sqlalchemy import Connection, select

from followup.core.planning.answer_hours import AGES, AnswerCurve, Heard, learn_curve, learn_habit
from followup.core.planning.best_hour import HourPicture, full_hour
from followup.core.shop import Shop
from followup.storage import rows, tables
from followup.storage.rows import Row

# What is older says little of when customers look at their phones now.
LOOKS_BACK = timedelta(days=730)
_A_DAY = timedelta(hours=AGES[-1])
# Whoever writes these does not answer an invite, and nothing they might have answered comes any more.
_NO_ANSWER = frozenset({"stop", "stranger", "gone"})


@dataclass(frozen=True)
class Habits:
    """The shop's curve, what was heard of each phone, and how many invites are to leave in each hour."""

    curve: AnswerCurve
    zone: str
    by_phone: dict[int, list[Heard]]
    load: Counter[datetime] = field(default_factory=Counter)

    def of_phone(self, phone_id: int) -> HourPicture:
        """What the choice of an hour rests on for that phone."""
        return HourPicture(learn_habit(self.curve, self.by_phone.get(phone_id, ()), self.zone), self.load)

    def add(self, at: datetime) -> None:
        """One more leaves then."""
        self.load[full_hour(at, self.zone)] += 1


def learned_habits(connection: Connection, shop: Shop, now: datetime) -> Habits:
    """All of it, as it stands now."""
    table = tables.texts
    planned = select(table.c.due_at).where(
        table.c.shop_id == shop.id, table.c.kind == "invite", table.c.state.in_(("planned", "claimed")),
    )  # fmt: skip
    by_phone: dict[int, list[Heard]] = defaultdict(list)
    for _, one in heard_of_invites(connection, shop.id, now):
        by_phone[one.phone_id].append(one)
    curve = learn_curve((one for found in by_phone.values() for one in found), shop.zone)
    habits = Habits(curve, shop.zone, dict(by_phone))
    for row in rows.every(connection, planned):
        habits.add(row["due_at"])
    return habits


def habits_where_chosen(connection: Connection, shop: Shop, now: datetime) -> Habits | None:
    """The same where the shop's manager lets hours be chosen; None where not."""
    return learned_habits(connection, shop, now) if shop.rules.learns_hours else None


def heard_of_invites(connection: Connection, shop_id: int, now: datetime) -> list[tuple[Row, Heard]]:
    """Each invite of the last two years (`phone_id`, `sent_at`, `facts`) with what came of it, oldest first."""
    texts, inbound, since = tables.texts, tables.inbound, now - LOOKS_BACK
    sent = select(texts.c.phone_id, texts.c.sent_at, texts.c.facts).where(
        texts.c.shop_id == shop_id, texts.c.kind == "invite", texts.c.state == "sent", texts.c.sent_at >= since,
        texts.c.sent_at <= now, texts.c.phone_id.is_not(None),
    )  # fmt: skip
    came = select(inbound.c.phone_id, inbound.c.received_at, inbound.c.meaning).where(
        inbound.c.shop_id == shop_id, inbound.c.received_at >= since, inbound.c.phone_id.is_not(None)
    )
    wrote: dict[int, list[tuple[datetime, Any]]] = defaultdict(list)
    for row in rows.every(connection, came.order_by(inbound.c.received_at, inbound.c.id)):
        wrote[row["phone_id"]].append((row["received_at"], row["meaning"]))
    found = rows.every(connection, sent.order_by(texts.c.sent_at, texts.c.id))
    return [(row, _heard(row, wrote.get(row["phone_id"], ()), now)) for row in found]


def _heard(text: Row, wrote: Iterable[tuple[datetime, Any]], now: datetime) -> Heard:
    those, left_at = list(wrote), text["sent_at"]
    at = bisect_left(those, left_at, key=lambda one: one[0])
    if at == len(those) or those[at][0] > left_at + _A_DAY:
        return Heard(text["phone_id"], left_at, None, now)
    when, meaning = those[at]
    if _NO_ANSWER & set((meaning or {}).get("meanings", ())):
        return Heard(text["phone_id"], left_at, None, when)
    return Heard(text["phone_id"], left_at, when)
