"""Doubt about a text: which proof counts for which attempt, what yields to what, and what is never done twice.

The rules are this project's own; the provider promises no order of its reports, and its list shows no attempt.
"""

from __future__ import annotations

from datetime import timedelta

import pytest

from followup.storage import machine, outbox, outcomes
from followup.storage.rows import Row
from followup.transports.transport import AccountRefused, NotAccepted, RateLimited, SentReceipt, Unreachable
from followup.workflows.send_texts.outcome import MOST_REFUSALS, Receipts, keep_doubt, keep_refusal, put_back
from tests.workflows.counter import NOW, Counter, open_counter

MINUTE = timedelta(minutes=1)


@pytest.fixture
def counter(database_url: str, monkeypatch: pytest.MonkeyPatch) -> Counter:
    """The shop with its one customer; leases go by a clock that stands."""
    monkeypatch.setattr(machine, "database_now", lambda _connection: NOW)
    return open_counter(database_url)


def in_flight(counter: Counter, cause: str = "test") -> Row:
    """A text that this test has in flight."""
    text_id = counter.plan(cause=cause)
    return fly(counter, text_id)


def fly(counter: Counter, text_id: int) -> Row:
    """The same row in its next attempt."""
    with counter.store.write() as connection:
        attempt = outbox.claim(connection, text_id, "test", MINUTE)
        assert attempt is not None
        assert outbox.move(connection, text_id, attempt, "claimed", "in_flight", in_flight_at=NOW, body="hello")
    return load(counter, text_id)


def load(counter: Counter, text_id: int) -> Row:
    """The row as it stands."""
    with counter.store.read() as connection:
        found = outbox.load_text(connection, text_id)
    assert found is not None
    return found


def report(counter: Counter, row: Row, attempt: int, provider_id: str = "SM1", status: str = "delivered") -> None:
    """A delivery report about an attempt."""
    with counter.store.write() as connection:
        outcomes.bind_delivery(connection, row["id"], attempt, provider_id, status, None, NOW)


def test_a_receipt_that_comes_after_the_lease_still_counts_for_its_attempt(counter: Counter) -> None:
    row = in_flight(counter)
    with counter.store.write() as connection:
        outbox.move(connection, row["id"], 1, "in_flight", "unknown")
    Receipts(counter.store).keep(row, SentReceipt("SM1", "queued"), NOW)
    assert (load(counter, row["id"])["state"], load(counter, row["id"])["provider_id"]) == ("sent", "SM1")


def test_receipts_that_are_kept_together_count_each_for_its_attempt(counter: Counter) -> None:
    first, second, third = (in_flight(counter, cause) for cause in ("one", "two", "three"))
    with counter.store.write() as connection:
        # The second went on: a person had it sent again.
        outbox.change_text(connection, second["id"], attempt=2)
        said = {(row["id"], 1): (f"SM{row['id']}", "queued", NOW) for row in (first, second, third)}
        assert outcomes.keep_receipts(connection, said) == {first["id"], third["id"]}
    kept = [load(counter, row["id"]) for row in (first, second, third)]
    assert [row["state"] for row in kept] == ["sent", "in_flight", "sent"]
    assert [row["provider_id"] for row in kept] == [f"SM{first['id']}", None, f"SM{third['id']}"]


def test_a_stale_worker_changes_nothing_of_a_later_attempt(counter: Counter) -> None:
    first = in_flight(counter)
    with counter.store.write() as connection:
        outbox.move(connection, first["id"], 1, "in_flight", "held")
        outbox.move(connection, first["id"], 1, "held", "planned")
    second = fly(counter, first["id"])
    Receipts(counter.store).keep(first, SentReceipt("SM1", "queued"), NOW)
    keep_doubt(counter.store, first, NOW)
    keep_refusal(counter.store, first, NotAccepted(), NOW, "secret for tests")
    put_back(counter.store, first, NOW)
    assert load(counter, first["id"]) == second
    Receipts(counter.store).keep(second, SentReceipt("SM2", "queued"), NOW)
    assert load(counter, first["id"])["provider_id"] == "SM2"


def test_a_report_about_an_earlier_attempt_spares_the_customer_the_next_one(counter: Counter) -> None:
    row = in_flight(counter)
    with counter.store.write() as connection:
        outbox.move(connection, row["id"], 1, "in_flight", "held")
        outbox.move(connection, row["id"], 1, "held", "planned")
        attempt = outbox.claim(connection, row["id"], "another", MINUTE)
    report(counter, row, 1)
    found = load(counter, row["id"])
    assert (found["state"], found["provider_id"], found["sent_at"]) == ("sent", "SM1", NOW)
    with counter.store.write() as connection:
        assert not outbox.move(connection, row["id"], attempt or 0, "claimed", "in_flight")


def test_a_report_about_an_earlier_attempt_does_not_bind_one_that_is_under_way(counter: Counter) -> None:
    row = in_flight(counter)
    with counter.store.write() as connection:
        outbox.move(connection, row["id"], 1, "in_flight", "held")
        outbox.move(connection, row["id"], 1, "held", "planned")
    second = fly(counter, row["id"])
    report(counter, second, 1)
    report(counter, second, 3)
    assert load(counter, row["id"]) == second
    report(counter, second, 2, "SM2")
    assert load(counter, row["id"])["provider_id"] == "SM2"


def test_what_was_let_be_and_did_arrive_is_known_to_have_arrived(counter: Counter) -> None:
    row = in_flight(counter)
    with counter.store.write() as connection:
        outbox.move(connection, row["id"], 1, "in_flight", "held")
        outbox.move(connection, row["id"], 1, "held", "dropped")
    report(counter, row, 1)
    assert load(counter, row["id"])["state"] == "sent"


def test_of_two_texts_alike_the_report_says_which_is_which(counter: Counter) -> None:
    mine, other = in_flight(counter, "one"), in_flight(counter, "two")
    with counter.store.write() as connection:
        for row in (mine, other):
            outbox.move(connection, row["id"], 1, "in_flight", "unknown")
        # The list showed one text of these words, and it was the other one's.
        outbox.move(
            connection, mine["id"], 1, "unknown", "sent", provider_id="SM2", state_because=outcomes.FOUND_IN_LIST
        )
    report(counter, other, 1, "SM2")
    assert (load(counter, other["id"])["state"], load(counter, other["id"])["provider_id"]) == ("sent", "SM2")
    found = load(counter, mine["id"])
    assert (found["state"], found["provider_id"], found["look_at"]) == ("unknown", None, NOW)
    report(counter, mine, 1, "SM1")
    assert load(counter, mine["id"])["provider_id"] == "SM1"


def test_who_stood_still_before_handing_over_hands_nothing_over(
    counter: Counter, monkeypatch: pytest.MonkeyPatch
) -> None:
    row = in_flight(counter)
    needs = timedelta(seconds=35)
    with counter.store.read() as connection:
        assert outcomes.with_time_left(connection, {row["id"]: 1}, needs)
        assert not outcomes.with_time_left(connection, {row["id"]: 2}, needs)
        monkeypatch.setattr(machine, "database_now", lambda _connection: NOW + timedelta(seconds=30))
        assert not outcomes.with_time_left(connection, {row["id"]: 1}, needs)
    put_back(counter.store, row, NOW)
    found = load(counter, row["id"])
    assert (found["state"], found["in_flight_at"]) == ("planned", None)


def test_waiting_in_line_is_no_refusal_and_refusals_come_to_an_end(counter: Counter) -> None:
    row = in_flight(counter)
    waits = []
    for refusal in [RateLimited(20429), AccountRefused(20003), NotAccepted()] * 6 + [Unreachable()] * MOST_REFUSALS:
        assert load(counter, row["id"])["state"] == "in_flight"
        keep_refusal(counter.store, row, refusal, NOW, "secret for tests")
        found = load(counter, row["id"])
        assert found["in_flight_at"] is None
        if found["state"] == "failed":
            break
        waits.append(found["due_at"] - NOW)
        row = fly(counter, row["id"])
    assert load(counter, row["id"])["refused_count"] == MOST_REFUSALS
    assert len(waits) == 18 + MOST_REFUSALS - 1
    # Longer each time, within bounds, and never the same for every text.
    assert min(waits) >= timedelta(seconds=30) and max(waits) <= timedelta(minutes=45)
    assert waits[18:] == sorted(waits[18:])
    assert all(wait % timedelta(seconds=1) for wait in waits)


def test_a_provider_that_says_how_long_is_believed(counter: Counter) -> None:
    row = in_flight(counter)
    keep_refusal(counter.store, row, RateLimited(20429, retry_after_seconds=77), NOW, "secret for tests")
    assert load(counter, row["id"])["due_at"] == NOW + timedelta(seconds=77)


def test_what_may_have_left_is_never_planned_anew(counter: Counter) -> None:
    """An invite takes its row again once its time is over, unless nobody knows whether it left."""
    later = NOW + timedelta(days=30)
    never, perhaps = counter.plan(cause="never left"), in_flight(counter, "may have left")["id"]
    with counter.store.write() as connection:
        outbox.drop_one(connection, never, "its time is over")
        outbox.move(connection, perhaps, 1, "in_flight", "held")
        outbox.move(connection, perhaps, 1, "held", "dropped")
        for text_id, is_planned in ((never, True), (perhaps, False)):
            row = outbox.load_text(connection, text_id)
            assert row is not None
            values = {name: row[name] for name in (
                "shop_id", "phone_id", "number", "kind", "reason_id", "reason", "try_no", "language", "facts",
            )}  # fmt: skip
            made = outbox.add_text(
                connection, **values, public_id=f"again-{text_id}", planned_at=later, due_at=later,
                valid_until=later + timedelta(days=3),
            )  # fmt: skip
            assert (made is not None) is is_planned
