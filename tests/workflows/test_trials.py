"""Two wordings side by side on the demo shop: who reads which, what is counted, and when it ends by itself."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from datetime import datetime, timedelta
from pathlib import Path

import pytest
from sqlalchemy import select

from followup.core.planning.draw import is_second, is_without_invites
from followup.core.wall import to_wall
from followup.storage import alerts, shops, staff, tables, trials, wordings
from followup.storage.rows import Row
from followup.workflows.change_rules import change_rules
from followup.workflows.keep_trial import ALREADY, NOT_AN_INVITE, SHIPPED, begin_trial, end_trial
from followup.workflows.keep_wording import approve_wording, end_wording, keep_wording
from followup.workflows.look_at_trials import TrialSeen, in_words, look_at_group, look_at_trials
from followup.workflows.plan_texts import CarPlan, look_at_plan
from followup.workflows.watch_stops import watch_stops
from tests.workflows.demo import Demo, make_once, open_copy, open_demo
from tests.workflows.test_keep_wording import OWN

EACH = 20


@pytest.fixture
def trial(demo: Demo) -> Row:
    """The shipped invite against a version of the shop's own, from the first morning on."""
    return begin_first(demo)


@pytest.fixture
def evening(
    shared_folder: Path, demo_template: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> Iterator[Demo]:
    """A copy of the demo shop as it stands on the evening of the first day of that trial."""

    def fill(folder: Path) -> None:
        with pytest.MonkeyPatch.context() as patch:
            demo = open_demo(demo_template, folder, patch)
            begin_first(demo)
            demo.run("2026-11-23T18:00")
            demo.house.close()

    folder = tmp_path / "evening"
    folder.mkdir()
    opened = open_copy(make_once(shared_folder, "evening-of-a-trial", fill), folder, monkeypatch)
    yield opened
    opened.house.close()


def begin_first(demo: Demo) -> Row:
    own_version(demo)
    assert begin(demo) is None
    return open_trial(demo)


def own_version(demo: Demo) -> None:
    with demo.house.store.read() as connection:
        author, other = (one for one in staff.of_shop(connection, demo.shop_id) if one.role in ("manager", "owner"))
    store, now = demo.house.store, demo.house.now()
    kept = keep_wording(store, demo.shop_id, "due_work", "en", OWN, author.id, author.name, now)
    assert kept.version is not None, kept.faults
    with store.read() as connection:
        row = wordings.versions(connection, demo.shop_id, "due_work", "en")[0]
    assert approve_wording(store, demo.shop_id, row["id"], other.id, other.name, now) is None


def begin(demo: Demo, first: int = SHIPPED, second: int = 1, reason: str = "due_work", each: int = EACH) -> str | None:
    now = demo.house.now()
    return begin_trial(demo.house.store, demo.shop_id, reason, "en", first, second, each, 1, "Theo", now)


def open_trial(demo: Demo) -> Row:
    with demo.house.store.read() as connection:
        return trials.open_trials(connection, demo.shop_id)[0]


def look(demo: Demo) -> TrialSeen:
    return look_at_trials(demo.house.store, demo.shop_id, "due_work", "en")[0]


def sent_invites(demo: Demo) -> list[Row]:
    table = tables.texts
    query = select(table).where(table.c.reason == "due_work", table.c.language == "en", table.c.state == "sent")
    with demo.house.store.read() as connection:
        return [dict(row) for row in connection.execute(query.order_by(table.c.id)).mappings()]


def test_each_customer_reads_the_wording_that_was_drawn_and_both_are_read(evening: Demo) -> None:
    trial, sent = open_trial(evening), sent_invites(evening)
    assert {row["wording_version"] for row in sent} == {None, 1}
    for row in sent:
        assert (row["wording_version"] == 1) is is_second(trial["draw_key"], row["phone_id"])
    seen = look(evening)
    assert [arm.customers for arm in seen.arms] == [
        sum(row["wording_version"] is None for row in sent), sum(row["wording_version"] == 1 for row in sent)
    ]  # fmt: skip


def test_answers_bookings_and_stops_count_for_the_wording_that_was_read(evening: Demo) -> None:
    first, second = (
        next(row for row in sent_invites(evening) if (row["wording_version"] == 1) is is_own)
        for is_own in (False, True)
    )
    evening.write(first["number"], "Thursday at 10 works for me")
    evening.write(first["number"], "or friday")
    evening.write(second["number"], "STOP")
    evening.run("2026-11-23T18:30")
    one, other = look(evening).arms
    assert (one.answered, one.booked, one.stopped) == (1, 1, 0)
    assert (other.answered, other.booked, other.stopped) == (1, 0, 1)


def test_only_what_somebody_looked_at_runs_and_one_trial_at_a_time(demo: Demo) -> None:
    assert "not in use" in str(begin(demo))
    own_version(demo)
    assert begin(demo, reason="confirmation") == NOT_AN_INVITE
    assert "different" in str(begin(demo, first=1))
    assert "Between 20" in str(begin(demo, each=3))
    assert begin(demo) is None
    assert begin(demo) == ALREADY


@pytest.mark.parametrize(("use", "counts"), [("first", False), ("second", True)])
def test_the_chosen_wording_counts_from_then_on(demo: Demo, trial: Row, use: str, counts: bool) -> None:
    assert end_trial(demo.house.store, demo.shop_id, trial["id"], use, "Theo", demo.house.now())
    assert not end_trial(demo.house.store, demo.shop_id, trial["id"], use, "Theo", demo.house.now())
    with demo.house.store.read() as connection:
        assert (wordings.in_use(connection, demo.shop_id, "due_work", "en") is not None) is counts
    demo.run("2026-11-23T18:00")
    assert {row["wording_version"] for row in sent_invites(demo)} == {1 if counts else None}


def test_it_ends_where_one_of_its_wordings_is_taken_out_of_use(demo: Demo, trial: Row) -> None:
    assert end_wording(demo.house.store, demo.shop_id, trial["second_id"], "Ines", demo.house.now())
    seen = look(demo)
    assert seen.ended_at == demo.house.now() and "Ines took one of its wordings" in str(seen.ended_because)
    demo.run("2026-11-23T18:00")
    assert {row["wording_version"] for row in sent_invites(demo)} == {None}


def test_a_wording_that_many_stop_at_ends_and_a_manager_is_told_once(evening: Demo) -> None:
    readers = [row["number"] for row in sent_invites(evening) if row["wording_version"] == 1]
    assert len(readers) >= 3, "the demo's first morning invites more than that"
    for number in readers[:3]:
        evening.write(number, "STOP")
    evening.run("2026-11-23T18:30")
    seen = look(evening)
    assert seen.ended_at is not None and "the first wording is used" in str(seen.ended_because)
    with evening.house.store.read() as connection:
        assert wordings.in_use(connection, evening.shop_id, "due_work", "en") is None
        told = [one for one in alerts.open_alerts(connection, evening.shop_id) if one["kind"] == "many_stops"]
    # One for the trial, one for the shop's invites as a whole: three stops are many here for both.
    assert sorted(one["raised_by"].split()[0] for one in told) == ["invites", "trial"]
    assert watch_stops(evening.house.store, evening.shop_id, evening.house.now()) == 0


def test_two_stops_are_chance_and_end_nothing(evening: Demo) -> None:
    for row in [row for row in sent_invites(evening) if row["wording_version"] == 1][:2]:
        evening.write(row["number"], "STOP")
    evening.run("2026-11-23T18:30")
    assert look(evening).ended_at is None and open_trial(evening)["ended_at"] is None


def test_it_says_in_words_that_nothing_can_be_concluded_yet(demo: Demo, trial: Row, evening: Demo) -> None:
    seen = look(demo)
    names = ("by the first wording", "by the second")
    assert "there is nobody" in in_words(seen.verdict, [0, 0], trial["planned_each"], "booked", names)
    seen = look(evening)
    customers = [arm.customers for arm in seen.arms]
    said = in_words(seen.verdict, customers, trial["planned_each"], "booked", names)
    assert said.startswith(f"Nothing can be concluded yet ({min(customers)} of {EACH}")


def test_the_group_without_invites_is_left_out_and_held_against_the_others(demo: Demo) -> None:
    store, now = demo.house.store, demo.house.now()
    with store.read() as connection:
        version = shops.load_shop(connection, demo.shop_id).rules_version
    share = {"without_invites_share": 0.2}
    assert change_rules(store, demo.shop_id, ["timing"], share, version, "Theo", "to measure", now).version
    on = to_wall(now, demo.zone).date()
    left_out = [one for one in look_at_plan(store, demo.shop_id, now) if _is_left_out(one)]
    assert left_out
    with store.read() as connection:
        ids = {row.number: row.id for row in connection.execute(select(tables.phones))}
    assert all(is_without_invites(0.2, demo.shop_id, on, ids[one.number]) for one in left_out)
    group = look_at_group(store, demo.shop_id, now)
    assert group.share == 0.2 and group.since == on
    assert group.without[1] > 0 and group.with_invites[1] > group.without[1]
    assert group.without[0] == group.with_invites[0] == 0, "it has just begun"
    _come(demo, group_of=lambda phone_id: is_without_invites(0.2, demo.shop_id, on, phone_id), at=now)
    later = look_at_group(store, demo.shop_id, now + timedelta(days=1))
    assert later.without == (group.without[1], group.without[1]) and later.with_invites[0] == 0


def _is_left_out(one: CarPlan) -> bool:
    return "without_invites" in {because.rule for because in one.decision.why_not}


def _come(demo: Demo, group_of: Callable[[int], bool], at: datetime) -> None:
    """Every car of the group comes for a visit."""
    with demo.house.store.write() as connection:
        phones, ties = tables.person_phones, tables.ties
        query = select(phones.c.phone_id, ties.c.vehicle_id).join(ties, ties.c.person_id == phones.c.person_id)
        for phone_id, vehicle_id in connection.execute(query).all():
            if group_of(phone_id):
                connection.execute(
                    tables.visits.insert().values(
                        shop_id=demo.shop_id, code=f"came {vehicle_id}", vehicle_id=vehicle_id, opened_at=at
                    )
                )
