"""What a judge reads of a simulated shop: the program's database, what the provider was asked, what really happened."""

from __future__ import annotations

from bisect import bisect_left
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from functools import cached_property
from typing import Any, TypeVar

from followup.core.booking import STATES
from followup.core.consent import ConsentEntry
from followup.core.shop import Shop
from followup.rehearsal.faults.provider import Post, Provider, Written
from followup.rehearsal.week.staff import Stay
from followup.rehearsal.week.troubles import Troubles
from followup.storage import consents, outbox, people, requests, rows, shops, tables
from followup.storage.rows import Row
from followup.storage.store import Connection, Store

One = TypeVar("One", Post, Written)
# What is judged of a few days rests on what was planned and written so long before.
_A_WHOLE_DAY = timedelta(days=1)
_PLANNED_BEFORE, _WRITTEN_BEFORE = timedelta(days=10), timedelta(days=60)


@dataclass
class Recorded:
    """`posts`, `written`, `stays` and `troubles` are in true time, all rows in that of the program's clock."""

    shop: Shop
    ends_at: datetime
    posts: list[Post]
    written: list[Written]
    stays: list[Stay]
    troubles: Troubles
    texts: list[Row]
    inbound: list[Row]
    phones: list[Row]
    ledger: dict[str, list[ConsentEntry]]
    alerts: list[Row]
    tellings: dict[int, list[Row]]
    requests: list[Row]
    reported: set[str] = field(default_factory=set)
    refused_hooks: list[int] = field(default_factory=list)
    reasons_without_text: list[int] = field(default_factory=list)

    @cached_property
    def text_of(self) -> dict[str, Row]:
        """The texts by their public id."""
        return {row["public_id"]: row for row in self.texts}

    @cached_property
    def wrote_at(self) -> dict[str, list[datetime]]:
        """When each number wrote."""
        found: dict[str, list[datetime]] = {}
        for one in self.written:
            found.setdefault(one.sender, []).append(one.at)
        return found

    def taken(self, *kinds: str) -> list[tuple[Post, Row]]:
        """What the provider took, with the program's row, of those kinds (all, without any named)."""
        found = ((post, self.text_of[post.public_id]) for post in self.posts if post.sid and self.has_row(post))
        return [(post, row) for post, row in found if not kinds or row["kind"] in kinds]

    def has_row(self, post: Post) -> bool:
        """Whether the program knows what it asked for."""
        return post.public_id in self.text_of

    def wrong_by(self, at: datetime) -> timedelta:
        """By how much the program's clock was wrong at that true instant."""
        wrong = (one.clock_wrong_by for one in self.troubles.each if one.clock_wrong and one.clock_wrong.holds(at))
        return next(wrong, timedelta(0))

    def read_as(self, at: datetime) -> datetime:
        """What the program's clock read at that true instant."""
        return at + self.wrong_by(at)


def record(
    store: Store,
    shop_id: int,
    provider: Provider,
    stays: list[Stay],
    troubles: Troubles,
    now: datetime,
    since: datetime | None = None,
) -> Recorded:
    """Read all of it; or what is needed to judge what left since then, and the invites of whoever was invited."""
    if since is None:
        posts, written = list(provider.posts), list(provider.written)
    else:
        posts = _later(provider.posts, since - _PLANNED_BEFORE)
        written = _later(provider.written, since - _WRITTEN_BEFORE)
    with store.read() as connection:
        texts = outbox.texts_of_shop(connection, shop_id, since and since - _PLANNED_BEFORE)
        if since is not None:
            known = {row["public_id"] for row in texts}
            posts = [one for one in posts if one.at >= since or one.public_id in known]
            posts, texts = _with_earlier_invites(connection, shop_id, provider, posts, texts)
        inbound, found, tellings = _of_phones(connection, shop_id, since)
        if since is None:
            phones = people.all_phones(connection, shop_id)
            numbers = {row["number"] for row in phones}
        else:
            numbers = {one.to for one in posts}
            phones = list(people.phones_of_numbers(connection, shop_id, numbers).values())
        return Recorded(
            shop=shops.load_shop(connection, shop_id), ends_at=now, posts=posts, written=written,
            stays=[one for one in stays if since is None or one.closed_at is None or one.closed_at >= since],
            troubles=troubles, texts=texts, inbound=inbound, phones=phones,
            ledger=consents.ledgers(connection, shop_id, numbers),
            alerts=found, tellings={row["id"]: tellings.get(row["id"], []) for row in found},
            requests=_bookings(connection, shop_id, since),
            reported={public_id for _, public_id, _ in provider.reported},
            refused_hooks=list(provider.refused_reports),
            reasons_without_text=[row["id"] for row in outbox.reasons_without_text(connection, shop_id)],
        )  # fmt: skip


def _bookings(connection: Connection, shop_id: int, since: datetime | None) -> list[Row]:
    """All requests; or those of whole days since then, for what a day holds is given away until that day is over."""
    if since is None:
        return requests.requests_of_shop(connection, shop_id, STATES)
    return requests.bookings_since(connection, shop_id, STATES, since - _A_WHOLE_DAY)


def _later(of: list[One], since: datetime) -> list[One]:
    """Those since then of what is in the order of time."""
    return of[bisect_left(of, since, key=lambda one: one.at) :]


def _with_earlier_invites(
    connection: Connection, shop_id: int, provider: Provider, posts: list[Post], texts: list[Row]
) -> tuple[list[Post], list[Row]]:
    """Beside what left lately, all invites of the phones that were invited lately: how often is promised for a year."""
    recent = {row["public_id"] for row in texts}
    invited = {row["phone_id"]: row["number"] for row in texts if row["kind"] == "invite" and row["phone_id"]}
    table = tables.texts
    by_phone = rows.grouped(connection, table, "phone_id", shop_id, list(invited), table.c.kind == "invite")
    earlier = [row for found in by_phone.values() for row in found if row["public_id"] not in recent]
    wanted = {row["public_id"] for row in (*earlier, *texts)}
    known = {id(post) for post in posts}
    before = [post for number in invited.values() for post in provider.posts_to(number)
              if post.public_id in wanted and id(post) not in known]  # fmt: skip
    return [*before, *posts], [*earlier, *texts]


def _of_phones(
    connection: Connection, shop_id: int, since: datetime | None
) -> tuple[list[Row], list[Row], dict[int, list[Row]]]:
    """What phones wrote, the alerts about them, and who was told of each."""
    inbound, about = tables.inbound, tables.alerts
    came: list[Any] = [] if since is None else [inbound.c.received_at >= since - _WRITTEN_BEFORE]
    raised: list[Any] = [] if since is None else [
        about.c.closed_at.is_(None) | (about.c.raised_at >= since - _WRITTEN_BEFORE)
    ]  # fmt: skip
    kept = rows.grouped(connection, inbound, "phone_id", shop_id, None, *came)
    found = rows.grouped(connection, about, "phone_id", shop_id, None, *raised)
    # In the order in which pages show them: the newest first.
    of_alerts = [row for one in found.values() for row in reversed(one)]
    wanted = None if since is None else [row["id"] for row in of_alerts]
    tellings = rows.grouped(connection, tables.alert_tellings, "alert_id", shop_id, wanted)
    return [row for one in kept.values() for row in one], of_alerts, tellings
