"""What a judge reads of a simulated shop: the program's database, what the provider was asked, what really happened."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field
from datetime import datetime, timedelta
from functools import cached_property

from followup.core.booking import STATES
from followup.core.consent import ConsentEntry
from followup.core.shop import Shop
from followup.rehearsal.faults.provider import Post, Provider, Written
from followup.rehearsal.week.staff import Stay
from followup.rehearsal.week.troubles import Troubles
from followup.storage import alerts, consents, inbox, outbox, people, requests, shops
from followup.storage.rows import Row
from followup.storage.store import Connection, Store


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

    def taken(self, *kinds: str) -> list[tuple[Post, Row]]:
        """What the provider took, with the program's row, of those kinds (all, without any named)."""
        found = ((post, self.text_of[post.public_id]) for post in self.posts if post.sid and self.has_row(post))
        return [(post, row) for post, row in found if not kinds or row["kind"] in kinds]

    def has_row(self, post: Post) -> bool:
        """Whether the program knows what it asked for."""
        return post.public_id in self.text_of

    def wrong_by(self, at: datetime) -> timedelta:
        """By how much the program's clock was wrong at that true instant."""
        span = self.troubles.clock_wrong
        return self.troubles.clock_wrong_by if span is not None and span.holds(at) else timedelta(0)

    def read_as(self, at: datetime) -> datetime:
        """What the program's clock read at that true instant."""
        return at + self.wrong_by(at)


def record(
    store: Store, shop_id: int, provider: Provider, stays: list[Stay], troubles: Troubles, now: datetime
) -> Recorded:
    """Read all of it."""
    with store.read() as connection:
        phones = people.all_phones(connection, shop_id)
        found = _of_phones(connection, phones, alerts.alerts_of_phone)
        return Recorded(
            shop=shops.load_shop(connection, shop_id), ends_at=now, posts=list(provider.posts),
            written=list(provider.written), stays=list(stays), troubles=troubles,
            texts=outbox.texts_of_shop(connection, shop_id),
            inbound=_of_phones(connection, phones, inbox.inbound_of_phone), phones=phones,
            ledger={row["number"]: consents.ledger(connection, shop_id, row["number"]) for row in phones},
            alerts=found, tellings={row["id"]: alerts.tellings(connection, row["id"]) for row in found},
            requests=requests.requests_of_shop(connection, shop_id, STATES),
            reported={public_id for _, public_id, _ in provider.reported},
            refused_hooks=list(provider.refused_reports),
            reasons_without_text=[row["id"] for row in outbox.reasons_without_text(connection, shop_id)],
        )  # fmt: skip


def _of_phones(connection: Connection, phones: list[Row], ask: Callable[[Connection, int], list[Row]]) -> list[Row]:
    return [row for phone in phones for row in ask(connection, phone["id"])]
