"""Sending: every outcome of a transport moves the row where it belongs, and doubt never sends twice.

States: this project's rules; classes of refusals: the provider's error pages (21610 opted out, 21211 bad number,
20429 too many requests).
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import datetime, timedelta
from typing import cast

import pytest

from followup.core.segments import segments
from followup.core.text import TEXT_MOVES, TEXT_STATES
from followup.core.wording_checks.length import MOST_SEGMENTS
from followup.storage import alerts, consents, machine, outbox, people, shops
from followup.storage.rows import Row
from followup.transports.transport import (
    AccountRefused,
    BadNumber,
    Found,
    NotAccepted,
    OptedOut,
    OutcomeUnknown,
    OutgoingText,
    RateLimited,
    SentReceipt,
    StatusReport,
    Transport,
)
from followup.workflows.keep_status import keep_status
from followup.workflows.look_up_unknown import look_up_unknown
from followup.workflows.send_texts import Sender, send_texts
from followup.workflows.send_texts.body import facts_of
from tests.workflows.demo import Demo

AT_ELEVEN = "2026-11-23T11:00"


class Wire:
    """A provider in this process: it does what the test says, and counts the texts that it was handed."""

    name = "wire"
    address = "http://127.0.0.1:9"

    def __init__(self, does: Callable[[OutgoingText], SentReceipt]) -> None:
        self.does = does
        self.handed: list[OutgoingText] = []
        self.listed: list[Found] = []

    def send(self, text: OutgoingText) -> SentReceipt:
        self.handed.append(text)
        return self.does(text)

    def find_sent(self, to: str, sender: str, body: str, since: datetime) -> list[Found]:
        return [one for one in self.listed if (one.to, one.body) == (to, body) and one.created_at >= since]


def _as_transport(wire: Wire) -> Transport:
    """The parts of a transport that sending and looking up use."""
    return cast(Transport, wire)


def _sender(wire: Wire, *, is_registered: bool = True) -> Sender:
    transport = _as_transport(wire)
    return Sender(transport, "https://texts.example", is_registered, None, "a secret for tests", lambda _seconds: None)


def _send(demo: Demo, wire: Wire, most: int = 1, **how: bool) -> None:
    send_texts(demo.house.store, demo.shop_id, _sender(wire, **how), demo.house.now, "test", most)


def _first(demo: Demo, wire: Wire) -> Row:
    with demo.house.store.read() as connection:
        row = outbox.text_of_public_id(connection, wire.handed[0].public_id)
    assert row is not None
    return row


def _taken(text: OutgoingText) -> SentReceipt:
    return SentReceipt(f"SM{text.public_id}", "queued")


def test_a_taken_text_is_sent_with_its_receipt(demo: Demo) -> None:
    demo.at(AT_ELEVEN)
    wire = Wire(_taken)
    _send(demo, wire)
    row = _first(demo, wire)
    assert (row["state"], row["provider_id"], row["delivery"]) == ("sent", f"SM{row['public_id']}", "queued")
    assert wire.handed[0].status_callback_url.endswith(f"/hooks/status/{row['public_id']}/1")
    # Nothing may land after the allowed hours: 18:00 for invites, and ten hours at most.
    assert wire.handed[0].valid_seconds <= 7 * 3600


def test_no_text_lands_after_the_allowed_hours_however_late_it_is_taken(demo: Demo) -> None:
    """Invites have until 18:00 at the shop (trade); the provider may take a text as late as the lease ends."""
    demo.at("2026-11-23T17:50")
    wire = Wire(_taken)
    _send(demo, wire)
    assert 0 < wire.handed[0].valid_seconds <= 10 * 60 - 60
    demo.at("2026-11-23T17:59:30")
    _send(demo, wire, most=200)
    assert len([one for one in wire.handed if "invite" in _kind(demo, one)]) == 1
    # What came too late leaves in the next hours.
    demo.at("2026-11-24T10:30")
    _send(demo, wire, most=200)
    assert len(wire.handed) > 20


def _kind(demo: Demo, text: OutgoingText) -> str:
    with demo.house.store.read() as connection:
        row = outbox.text_of_public_id(connection, text.public_id)
    assert row is not None
    return str(row["kind"])


def test_in_flight_is_on_the_disk_before_the_first_byte(demo: Demo) -> None:
    demo.at(AT_ELEVEN)
    seen: list[str] = []

    def look(text: OutgoingText) -> SentReceipt:
        with demo.house.store.read() as connection:
            row = outbox.text_of_public_id(connection, text.public_id)
        assert row is not None
        seen.append(f"{row['state']}, {row['body'] == text.body}")
        return _taken(text)

    _send(demo, Wire(look))
    assert seen == ["in_flight, True"]


def test_doubt_is_looked_up_and_never_sent_again(demo: Demo) -> None:
    demo.at(AT_ELEVEN)

    def silent(_text: OutgoingText) -> SentReceipt:
        raise OutcomeUnknown

    wire = Wire(silent)
    _send(demo, wire)
    row = _first(demo, wire)
    assert row["state"] == "unknown"
    number = row["number"]
    for minutes in (1, 5, 20, 90):
        demo.at(f"2026-11-23T{11 + minutes // 60:02d}:{minutes % 60:02d}")
        look_up_unknown(demo.house.store, _as_transport(wire), demo.shop_id, demo.house.now())
    assert _first(demo, wire)["state"] == "held"
    _send(demo, wire, most=200)
    assert sum(one.public_id == row["public_id"] for one in wire.handed) == 1
    assert [one.to for one in wire.handed].count(number) == 1


def test_a_text_of_doubt_is_found_in_the_providers_list(demo: Demo) -> None:
    demo.at(AT_ELEVEN)

    def accepted_then_silent(text: OutgoingText) -> SentReceipt:
        wire.listed.append(Found("SMfound", text.to, text.sender, text.body, demo.house.now(), "sent"))
        raise OutcomeUnknown

    wire = Wire(accepted_then_silent)
    _send(demo, wire)
    demo.at("2026-11-23T11:01")
    assert look_up_unknown(demo.house.store, _as_transport(wire), demo.shop_id, demo.house.now()) == 1
    assert (_first(demo, wire)["state"], _first(demo, wire)["provider_id"]) == ("sent", "SMfound")


def test_a_report_settles_doubt_and_ranks_only_rise(demo: Demo) -> None:
    demo.at(AT_ELEVEN)

    def silent(_text: OutgoingText) -> SentReceipt:
        raise OutcomeUnknown

    wire = Wire(silent)
    _send(demo, wire)
    public_id = wire.handed[0].public_id
    for status in ("delivered", "sent", "queued", "delivered"):
        keep_status(demo.house.store, public_id, 1, StatusReport("SMx", status), demo.house.now(), "secret for tests")
    row = _first(demo, wire)
    assert (row["state"], row["provider_id"], row["delivery"]) == ("sent", "SMx", "delivered")


def test_too_many_requests_wait_and_go_out_once(demo: Demo) -> None:
    demo.at(AT_ELEVEN)
    answers = iter([RateLimited(20429, "slow down", 30)])

    def once_limited(text: OutgoingText) -> SentReceipt:
        for refusal in answers:
            raise refusal
        return _taken(text)

    wire = Wire(once_limited)
    _send(demo, wire)
    row = _first(demo, wire)
    assert row["state"] == "planned"
    assert row["due_at"] - demo.house.now() == timedelta(seconds=30)


@pytest.mark.parametrize("refusal", [RateLimited(20429, retry_after_seconds=60), AccountRefused(20003), NotAccepted()])
def test_a_refusal_that_every_text_would_meet_is_met_once_and_the_number_rests(demo: Demo, refusal: Exception) -> None:
    demo.at(AT_ELEVEN)

    def refuse(_text: OutgoingText) -> SentReceipt:
        raise refusal

    wire = Wire(refuse)
    done = send_texts(demo.house.store, demo.shop_id, _sender(wire), demo.house.now, "test")
    assert (done.sent, done.other, len(wire.handed)) == (0, 1, 1)
    assert done.rests_until is not None and done.rests_until > demo.house.now()
    resting = replace(_sender(wire), rests_until=done.rests_until)
    send_texts(demo.house.store, demo.shop_id, resting, demo.house.now, "test")
    assert len(wire.handed) == 1
    demo.at("2026-11-23T11:02")
    wire.does = _taken
    assert send_texts(demo.house.store, demo.shop_id, resting, demo.house.now, "test").sent > 20


def test_a_provider_that_is_away_for_hours_ends_no_text(demo: Demo) -> None:
    """Six hours without a connection: every text is still planned, and few requests were made."""

    def refuse(_text: OutgoingText) -> SentReceipt:
        raise NotAccepted

    wire, rests = Wire(refuse), None
    planned = len(_queued(demo))
    for minute in range(0, 6 * 60, 3):
        demo.at(f"2026-11-23T{10 + minute // 60}:{minute % 60:02d}")
        sender = replace(_sender(wire), rests_until=rests)
        rests = send_texts(demo.house.store, demo.shop_id, sender, demo.house.now, "test").rests_until
    assert len(_queued(demo)) == planned
    assert 60 < len(wire.handed) <= 120
    wire.does = _taken
    demo.at("2026-11-23T16:05")
    assert send_texts(demo.house.store, demo.shop_id, _sender(wire), demo.house.now, "test").sent > 20


@pytest.mark.parametrize("refusal", [OptedOut(21610), BadNumber(21211)])
def test_permanent_refusals_act_and_are_never_retried(demo: Demo, refusal: Exception) -> None:
    demo.at(AT_ELEVEN)

    def refuse(_text: OutgoingText) -> SentReceipt:
        raise refusal

    wire = Wire(refuse)
    _send(demo, wire)
    row = _first(demo, wire)
    assert row["state"] == "failed"
    with demo.house.store.read() as connection:
        phone = people.find_phone(connection, demo.shop_id, row["number"])
        stopped = consents.standing_of(connection, demo.shop_id, row["number"]).is_stopped
    assert phone is not None
    assert (stopped, bool(phone["bad_because"])) == (isinstance(refusal, OptedOut), isinstance(refusal, BadNumber))


def test_without_registration_nothing_reaches_us_numbers(demo: Demo) -> None:
    demo.at(AT_ELEVEN)
    wire = Wire(_taken)
    _send(demo, wire, most=200, is_registered=False)
    assert wire.handed == []


def test_a_claim_that_ran_out_is_planned_again_and_the_late_worker_changes_nothing(
    demo: Demo, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(machine, "database_now", lambda _connection: demo.house.now())
    demo.at(AT_ELEVEN)
    with demo.house.store.write() as connection:
        row = outbox.due_texts(connection, demo.shop_id, demo.house.now(), 1)[0]
        attempt = outbox.claim(connection, row["id"], "paused", timedelta(seconds=60))
    assert attempt == 1
    demo.at("2026-11-23T11:02")
    wire = Wire(_taken)
    _send(demo, wire, most=200)
    assert [one.public_id for one in wire.handed].count(row["public_id"]) == 1
    with demo.house.store.write() as connection:
        assert not outbox.move(connection, row["id"], attempt, "claimed", "in_flight")


def test_everything_stops_at_the_owners_switch(demo: Demo) -> None:
    with demo.house.store.write() as connection:
        rules = replace(shops.load_shop(connection, demo.shop_id).rules, is_sending_stopped=True)
        shops.save_rules(connection, demo.shop_id, rules, "test", demo.house.now(), "stop")
    demo.at(AT_ELEVEN)
    wire = Wire(_taken)
    _send(demo, wire, most=200)
    assert wire.handed == []


def test_every_state_has_its_moves() -> None:
    assert set(TEXT_MOVES) == set(TEXT_STATES)
    assert all(to in TEXT_STATES for moves in TEXT_MOVES.values() for to in moves)


def test_no_invite_of_the_demo_is_longer_than_a_phone_likes(demo: Demo) -> None:
    """Limits: `core/wording_checks/length.py`, which a shop's own wording must keep too."""
    demo.run("2026-11-23T12:00")
    with demo.house.store.read() as connection:
        numbers = [one["number"] for one in people.all_phones(connection, demo.shop_id)]
    sent = [row for number in numbers for row in demo.texts_to(number) if row["kind"] == "invite" and row["body"]]
    assert len(sent) > 20
    for row in sent:
        cut = segments(row["body"])
        assert cut.count <= MOST_SEGMENTS[cut.encoding]["invite"], row["body"]


def test_a_confirmation_reads_back_the_main_work_and_no_list_of_orders(demo: Demo) -> None:
    """Trade: a yes is a time, never an order; at most three works are named, those at their limit first."""
    invite = next(
        row for row in _queued(demo) if row["kind"] == "invite" and len({i for i, _ in row["facts"]["items"]}) > 3
    )
    work = _work_of(demo, invite, "confirmation")
    assert work and work.count(",") + work.count(" and ") == 2
    assert len(_work_of(demo, invite, "duration")) > len(work)


def _queued(demo: Demo) -> list[Row]:
    with demo.house.store.read() as connection:
        return outbox.queued_texts(connection, demo.shop_id)


def _work_of(demo: Demo, row: Row, reason: str) -> str:
    with demo.house.store.read() as connection:
        shop = shops.load_shop(connection, demo.shop_id)
        facts = facts_of(connection, shop, {**row, "reason": reason, "language": "en"}, demo.house.now())
    return str(facts["work"])


def test_a_replayed_report_does_not_undo_a_consent_given_since(demo: Demo) -> None:
    demo.at(AT_ELEVEN)
    wire = Wire(_taken)
    _send(demo, wire)
    row = _first(demo, wire)
    report = StatusReport(row["provider_id"], "undelivered", 21610, OptedOut)

    def stands() -> bool:
        with demo.house.store.read() as connection:
            return consents.standing_of(connection, demo.shop_id, row["number"]).is_stopped

    keep_status(demo.house.store, row["public_id"], 1, report, demo.house.now(), "secret for tests")
    assert stands()
    demo.at("2026-11-23T12:00")
    demo.write(row["number"], "START")
    assert not stands()
    demo.at("2026-11-23T12:05")
    keep_status(demo.house.store, row["public_id"], 1, report, demo.house.now(), "secret for tests")
    assert not stands()


@pytest.mark.parametrize(("body", "is_called"), [("where are you exactly?", True), ("STOP", False)])
def test_who_got_no_answer_in_time_is_called(demo: Demo, body: str, is_called: bool) -> None:
    """While the provider is away an answer outlives its half hour: who asked would hear nothing at all."""
    demo.at(AT_ELEVEN)
    number = demo.a_planned_invite()["number"]
    demo.write(number, body)
    demo.house.answer(demo.shop_id)
    demo.at("2026-11-23T11:40")
    demo.run()
    (answer,) = [row for row in demo.texts_to(number) if row["kind"] == "answer"]
    assert (answer["state"], answer["state_because"]) == ("dropped", "its time is over")
    with demo.house.store.read() as connection:
        tasks = alerts.open_of_kind(connection, demo.shop_id, "phone_task")
    assert [row["phone_id"] for row in tasks if "could not be told" in row["says"]] == [answer["phone_id"]] * is_called
