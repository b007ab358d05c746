"""Planning on the demo shop: twice plans nothing twice, and what stops an invite stops it up to the last moment."""

from __future__ import annotations

from datetime import timedelta
from itertools import pairwise

import pytest
from sqlalchemy import func, select

from followup.core.text import COVERS, REASONS
from followup.core.wall import to_wall
from followup.storage import consents, inspections, outbox, people, rows, tables
from followup.workflows.plan_texts import look_at_plan, plan_texts
from tests.workflows.demo import Demo


def _count(demo: Demo) -> int:
    with demo.house.store.read() as connection:
        return int(connection.execute(select(func.count()).select_from(tables.texts)).scalar_one())


def test_planning_twice_plans_nothing_twice(demo: Demo) -> None:
    before = _count(demo)
    assert before > 0
    assert demo.house.plan(demo.shop_id) == 0
    assert _count(demo) == before


def test_the_plan_says_why_or_why_not_for_every_car(demo: Demo) -> None:
    found = list(look_at_plan(demo.house.store, demo.shop_id, demo.house.now()))
    assert len(found) > 50
    assert all(one.decision.text or one.decision.why_not for one in found)


def test_invites_leave_on_monday_within_the_hours(demo: Demo) -> None:
    demo.run("2026-11-23T12:00")
    with demo.house.store.read() as connection:
        sent = [
            row.sent_at
            for row in connection.execute(
                select(tables.texts.c.sent_at).where(tables.texts.c.state == "sent", tables.texts.c.kind == "invite")
            )
        ]
    assert sent
    # 10:00 in Chicago is 16:00 UTC in November; phones in earlier zones wait for their own ten o'clock.
    assert min(sent).hour >= 16


def test_no_invite_leaves_while_a_visit_is_open(demo: Demo) -> None:
    invite = demo.a_planned_invite()
    with demo.house.store.write() as connection:
        inspections.keep_visit(
            connection, demo.shop_id, "opened-now", invite["vehicle_id"], demo.house.now(), None, None
        )
    demo.run("2026-11-23T18:00")
    about_it = [row for row in demo.texts_to(invite["number"]) if row["vehicle_id"] == invite["vehicle_id"]]
    assert [row["state"] for row in about_it if row["kind"] == "invite"] == ["dropped"]
    assert "in the shop" in about_it[0]["state_because"]


def test_no_invite_leaves_for_an_item_just_declined(demo: Demo) -> None:
    invite = demo.a_planned_invite()
    today = demo.house.now().date()
    with demo.house.store.write() as connection:
        for item, position in invite["facts"]["items"]:
            inspections.add_recommendation(
                connection, shop_id=demo.shop_id, vehicle_id=invite["vehicle_id"], inspection_id=None, visit_id=None,
                item=item, position=position, decision="declined", because="time", until=None, told_by="Noor", on=today,
            )  # fmt: skip
    demo.run("2026-11-23T18:00")
    about_it = [row for row in demo.texts_to(invite["number"]) if row["vehicle_id"] == invite["vehicle_id"]]
    assert not [row for row in about_it if row["kind"] == "invite" and row["state"] == "sent"]


def test_each_reason_names_the_consent_that_it_needs(demo: Demo) -> None:
    """Planned invites are checked against the ledger; walks all reasons, so that a new one must name its cover."""
    for reason in REASONS:
        assert (reason.cover in COVERS) == (reason.kind != "answer"), reason.code
    covers = {reason.code: reason.cover for reason in REASONS}
    with demo.house.store.read() as connection:
        for row in outbox.queued_texts(connection, demo.shop_id):
            standing = consents.standing_of(connection, demo.shop_id, row["number"])
            assert standing.allows(covers[row["reason"]]), row["reason"]


def test_without_consent_there_is_no_invite(demo: Demo) -> None:
    with demo.house.store.read() as connection:
        standings = consents.standings(connection, demo.shop_id)
        phones = people.all_phones(connection, demo.shop_id)
    without = {phone["number"] for phone in phones} - {n for n, one in standings.items() if one.allows("upkeep")}
    assert without
    demo.run("2026-11-23T18:00")
    for number in without:
        assert not [row for row in demo.texts_to(number) if row["kind"] == "invite"]


def test_what_is_planned_is_still_wanted_when_it_leaves(demo: Demo) -> None:
    """Nobody writes and no car comes in: whatever one rule plans, the same rule lets leave, second tries too."""
    demo.run_weekly(5)
    table = tables.texts
    with demo.house.store.read() as connection:
        invites = connection.execute(select(table.c.state, table.c.try_no).where(table.c.kind == "invite")).all()
    assert {row.state for row in invites} == {"sent"}
    assert {row.try_no for row in invites} == {1, 2}


@pytest.mark.faults
def test_a_phone_gets_at_most_one_invite_in_two_weeks_and_none_on_a_sunday(demo: Demo) -> None:
    # Two weeks and four days: second tries, which come after 10 to 14 days, have left.
    demo.run("2026-12-11T18:00")
    left_on = set()
    with demo.house.store.read() as connection:
        phones = people.all_phones(connection, demo.shop_id)
        for phone in phones:
            sent = sorted(
                row["sent_at"]
                for row in outbox.texts_of_phone(connection, phone["id"])
                if row["kind"] == "invite" and row["state"] == "sent"
            )
            left_on |= {to_wall(one, demo.zone).strftime("%A") for one in sent}
            # A second try of the same reason may come after 7 (legal limit) or 10-14 days.
            assert all(b - a >= timedelta(days=7) for a, b in pairwise(sent))
            assert len([one for one in sent if one > sent[-1] - timedelta(days=30)]) <= 2 if sent else True
    assert "Monday" in left_on and "Sunday" not in left_on


def test_what_could_not_leave_in_time_was_no_try(demo: Demo) -> None:
    """A machine that was off for three weeks begins with the first text, not with "one more note" (trade: two texts a
    reason are two that were sent)."""
    before = _count(demo)
    demo.at("2026-12-14T10:30")
    assert demo.house.plan(demo.shop_id) >= before
    demo.run()
    with demo.house.store.read() as connection:
        invites = select(tables.texts.c.try_no).where(tables.texts.c.state == "sent", tables.texts.c.kind == "invite")
        sent = connection.execute(invites).scalars().all()
    assert len(sent) > before / 2
    assert set(sent) == {1}


def test_what_was_dropped_for_its_time_is_planned_anew(demo: Demo) -> None:
    planned = demo.a_planned_invite()
    demo.at("2026-12-14T09:30")
    with demo.house.store.write() as connection:
        outbox.drop_planned(connection, demo.shop_id, "its time is over", number=planned["number"])
    assert demo.house.plan(demo.shop_id) > 0
    again = [row for row in demo.texts_to(planned["number"]) if row["state"] == "planned"]
    assert [row["try_no"] for row in again] == [1]
    assert all(row["state_because"] is None and row["due_at"] > planned["valid_until"] for row in again)


def test_what_an_odometer_would_save_is_kept_with_the_windows_and_asked_along(demo: Demo) -> None:
    """In the demo shop many cars were seen months ago: their first texts about due work ask for the reading, and none
    of another reason does."""
    with demo.house.store.read() as connection:
        texts = rows.every(connection, select(tables.texts))
        windows = rows.every(connection, select(tables.due_windows).where(tables.due_windows.c.is_current.is_(True)))
    gains = [one["body"]["odometer_gains"] for one in windows if "odometer_gains" in one["body"]]
    assert gains and all(gain >= 0 for of_window in gains for _, gain in of_window)
    asking = [one for one in texts if one["facts"].get("ask_odometer")]
    assert asking and {one["reason"] for one in asking} == {"due_work"}
    assert {one["try_no"] for one in asking} == {1}


def test_planning_for_some_cars_plans_theirs_alone_and_leaves_nothing_to_the_whole(demo: Demo) -> None:
    """A car that was forecast anew is planned for at once; the others wait for the round that looks at all."""
    now, store, shop_id = demo.house.now() + timedelta(days=45), demo.house.store, demo.shop_id
    with store.read() as connection:
        cars = [row["id"] for row in people.all_vehicles(connection, shop_id)]
        phones = {one: set(people.numbers_of_vehicle(connection, one)) for one in cars}
    planned = 0
    for begin in range(0, len(cars), 7):
        some = cars[begin : begin + 7]
        before = {row["id"] for row in _texts(demo)}
        planned += plan_texts(store, shop_id, now, some)
        new = {row["number"] for row in _texts(demo) if row["id"] not in before}
        assert new <= set().union(*(phones[one] for one in some))
    assert planned > 5
    assert plan_texts(store, shop_id, now) == 0


def _texts(demo: Demo) -> list[rows.Row]:
    with demo.house.store.read() as connection:
        return rows.every(connection, select(tables.texts))
