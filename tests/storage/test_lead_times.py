"""The shop's lead time out of its texts and bookings: each booking counts from the invite that it followed."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

from sqlalchemy import select

from followup.core.shop import ShopRules
from followup.storage import lead_times, rows, tables
from tests.workflows.demo import Demo

_DAY = timedelta(days=1)


def _with_booking(demo: Demo, *, asked_after: float, came_after: float, state: str) -> None:
    """One invite of the demo shop left 60 days ago, and its phone asked for a visit so many days later."""
    now = demo.house.now()
    with demo.house.store.write() as connection:
        left = rows.every(
            connection,
            select(tables.texts).where(tables.texts.c.kind == "invite", tables.texts.c.sent_at.is_(None)),
        )[0]
        sent_at = now - 60 * _DAY
        rows.change(connection, tables.texts, left["id"], state="sent", sent_at=sent_at)
        rows.add(
            connection, tables.booking_requests, shop_id=demo.shop_id, phone_id=left["phone_id"],
            person_id=rows.every(connection, select(tables.persons))[0]["id"], vehicle_id=left["vehicle_id"],
            state=state, came_from="text", verbatim="", wanted=[], avoid=[], needs=[], items=[], hours={}, offered=[],
            slot_at=sent_at + came_after * _DAY, asked_at=sent_at + asked_after * _DAY, changed_at=now,
        )  # fmt: skip


def test_a_kept_visit_counts_from_its_invite_and_one_that_waits_until_now(demo: Demo) -> None:
    shop, now = demo.house.shop(demo.shop_id), demo.house.now()
    with demo.house.store.read() as connection:
        before = lead_times.lead_of(connection, shop, now)
    _with_booking(demo, asked_after=2, came_after=9, state="kept")
    _with_booking(demo, asked_after=3, came_after=70, state="confirmed")
    _with_booking(demo, asked_after=20, came_after=30, state="kept")
    with demo.house.store.read() as connection:
        after = lead_times.lead_of(connection, shop, now)
    # The third was asked for too late after its invite to have come from it.
    assert (after.kept - before.kept, after.waiting - before.waiting) == (1, 1)


def test_planning_goes_by_it_only_where_the_manager_lets_it(demo: Demo) -> None:
    shop, now = demo.house.shop(demo.shop_id), demo.house.now()
    for _ in range(6):
        _with_booking(demo, asked_after=1, came_after=7, state="kept")
    learned = replace(shop, rules=ShopRules(lead_days_learned=True))
    with demo.house.store.read() as connection:
        assert lead_times.with_learned_lead(connection, shop, now).rules.lead_days == 21
        assert lead_times.with_learned_lead(connection, learned, now).rules.lead_days < 21
