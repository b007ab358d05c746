"""What customers wrote while no hook of ours was there: all of it is kept within one look at the provider's list.

Source: fault I4 of this project's list; the provider gives a hook up after one try, so what comes in during an outage
stands in its list alone (its page on error 11205).
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import timedelta
from pathlib import Path

import pytest
from sqlalchemy import select
from werkzeug.datastructures import MultiDict

from followup import clock, scheduler
from followup.storage import consents, inbox, people, tables
from followup.storage.rows import Row, every
from followup.transports.twilio import Twilio
from followup.wiring import House
from followup.workflows.look_for_trouble import look_for_trouble
from tests.transports.account import ACCOUNT
from tests.transports.loopback import Account, Loopback, answer_with
from tests.web.house import settings
from tests.workflows.counter import NOW, NUMBER, Counter, open_counter

TO = "+13125550101"
WORDS = ("Thursday at 9 works", "how much is it?", "thanks", "my brakes grind", "no", "STOP", "please stop texting me")


class _Account(Account):
    """The provider's account, whose list may be out of order."""

    fails = False

    def answer(self, connection, request):  # type: ignore[no-untyped-def]  # as the class above
        if self.fails and request.startswith(b"GET"):
            answer_with("503 Service Unavailable", b"{}")(connection, request)
            return
        super().answer(connection, request)


@dataclass
class Line:
    """A shop behind a provider on this machine."""

    counter: Counter
    house: House
    account: _Account

    def write(self, number: str, body: str, minutes: float) -> str:
        """A customer writes and no hook is there; the provider's id."""
        clock.move_to(NOW + timedelta(minutes=minutes))
        return str(self.account.add(TO, number, body, "inbound", "received")["sid"])

    def post(self, sid: str, number: str, body: str) -> None:
        """The hook comes after all."""
        form = {"AccountSid": ACCOUNT, "MessageSid": sid, "From": number, "To": TO, "Body": body}
        assert self.house.receive_text(MultiDict(form))

    def tick(self, minutes: float) -> None:
        """One look of the clock."""
        clock.move_to(NOW + timedelta(minutes=minutes))
        scheduler.run_due(self.house, "test")

    def kept(self) -> list[Row]:
        """Every text that came in."""
        with self.house.store.read() as connection:
            return every(connection, select(tables.inbound).order_by(tables.inbound.c.id))

    def taken(self) -> list[tuple[str, str]]:
        """What the provider took from us."""
        return [(one["to"], one["body"]) for one in self.account.texts if one["direction"] == "outbound-api"]

    def is_stopped(self, number: str) -> bool:
        with self.house.store.read() as connection:
            return consents.standing_of(connection, self.counter.shop_id, number).is_stopped


@pytest.fixture
def line(database_url: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Line]:
    """The counter's shop, heard of a minute ago."""
    monkeypatch.setenv("FOLLOWUP_CLOCK", str(tmp_path / "clock"))
    clock.move_to(NOW)
    counter, account = open_counter(database_url), _Account()
    with Loopback(account.answer) as provider:
        whole = settings(
            ledger_hash_key="only-for-tests-0123456789abcdef", us_registration_brand="b", us_registration_campaign="c",
            us_registration_use_case="u", us_registration_on=NOW.date(), sender_segments_per_second=1000.0,
        )  # fmt: skip
        house = House(whole, counter.store, Twilio(ACCOUNT, ["the token"], provider.address))
        yield Line(counter, house, account)
        house.close()


def _say(line: Line, words: str, minutes: float) -> None:
    line.counter.plan(
        "from_a_person", words, facts={"message": words}, author_id=line.counter.staff_id,
        due_at=NOW + timedelta(minutes=minutes), valid_until=NOW + timedelta(days=2),
    )  # fmt: skip


def test_fifty_replies_of_an_hours_outage_are_there_after_one_look_and_stops_first(line: Line) -> None:
    line.tick(0)
    sids = []
    for n in range(50):
        number = NUMBER if n == 49 else f"+1217555{100 + n:04d}"
        body = "please stop texting me" if n == 49 else WORDS[n % len(WORDS)]
        sids.append(line.write(number, body, 1 + n))
    _say(line, "We close early on Friday.", 30)
    line.tick(62)
    kept = line.kept()
    assert sorted(row["provider_id"] for row in kept) == sorted(sids), "all present within one look"
    assert all(row["handled_at"] for row in kept)
    received = {row["provider_id"]: row["received_at"] for row in kept}
    assert all(received[sid] == NOW + timedelta(minutes=1 + n) for n, sid in enumerate(sids)), "as it was written"
    stops = [row["id"] for row in kept if "stop" in row["body"].lower()]
    assert len(stops) == 15 and stops == [row["id"] for row in kept][:15], "stops first"
    assert all(line.is_stopped(row["number"]) for row in kept[:15])
    assert NUMBER not in [to for to, _ in line.taken()], "nothing left to who stopped while we were away"
    line.tick(64)
    for n, sid in enumerate(sids):
        line.post(sid, NUMBER if n == 49 else f"+1217555{100 + n:04d}", "another body")
    assert line.kept() == kept, "neither a second look nor a late hook has an effect"


def test_what_a_hook_kept_is_not_fetched_again(line: Line) -> None:
    line.post(line.write(NUMBER, "thanks", 1), NUMBER, "thanks")
    line.tick(2)
    line.tick(63)
    assert [row["body"] for row in line.kept()] == ["thanks"]


def test_the_list_is_read_over_a_day_more_because_it_lags(line: Line) -> None:
    line.tick(0)
    late = line.write(NUMBER, "call me", 1)
    hidden = line.account.texts.pop(0)
    for minutes in (2, 60, 23 * 60):
        line.tick(minutes)
    assert line.kept() == []
    line.account.texts.append(hidden)
    line.tick(23 * 60 + 2)
    assert [row["provider_id"] for row in line.kept()] == [late]


def test_nothing_but_answers_leaves_until_it_is_known_who_wrote(line: Line) -> None:
    line.tick(0)
    line.account.fails = True
    line.write(NUMBER, "STOP", 20)
    _say(line, "Your car is ready.", 25)
    line.tick(60)
    line.post("SM" + "b" * 32, "+12175550147", "HELP")
    line.tick(61)
    assert {to for to, _ in line.taken()} == {"+12175550147"}, "who just wrote is answered, all else waits"
    troubles = look_for_trouble(line.house.store, line.house.now(), False)
    assert any("could not be read since 2026-11-24 15:00 UTC" in one for one in troubles), troubles
    line.account.fails = False
    line.tick(63)
    assert line.is_stopped(NUMBER) and {to for to, _ in line.taken()} == {"+12175550147"}
    assert not any("could not be read" in one for one in look_for_trouble(line.house.store, line.house.now(), False))


@pytest.mark.parametrize("words", ["STOP", "please stop texting me"])
def test_a_stop_that_is_fetched_late_undoes_no_later_start_and_a_late_start_no_stop(line: Line, words: str) -> None:
    line.tick(0)
    line.write(NUMBER, words, 10)
    line.post("SM" + "a" * 32, NUMBER, "START")
    clock.move_to(NOW + timedelta(minutes=20))
    line.post("SM" + "b" * 32, NUMBER, "START")
    line.tick(21)
    assert len(line.kept()) == 3 and not line.is_stopped(NUMBER), "the later word counts"
    line.write(NUMBER, "START", 30)
    clock.move_to(NOW + timedelta(minutes=40))
    line.post("SM" + "c" * 32, NUMBER, words)
    assert line.is_stopped(NUMBER)
    line.tick(41)
    assert len(line.kept()) == 5 and line.is_stopped(NUMBER), "the later word counts"


def test_a_stop_and_a_start_of_one_outage_count_in_their_order(line: Line) -> None:
    line.tick(0)
    for minutes, (number, body) in enumerate(
        [("+12175550111", "START"), ("+12175550111", "STOP"), ("+12175550112", "STOP"), ("+12175550112", "START")], 5
    ):
        line.write(number, body, minutes)
    line.tick(30)
    assert line.is_stopped("+12175550111") and not line.is_stopped("+12175550112")


def test_tomorrow_is_the_day_after_it_was_written(line: Line) -> None:
    line.tick(0)
    # Ten minutes before midnight at the shop; read after midnight.
    line.write(NUMBER, "tomorrow at 9 works", 60 * 14 + 50)
    line.tick(60 * 15 + 20)
    (row,) = line.kept()
    assert [one["start"] for one in row["meaning"]["times"]] == ["2026-11-25T09:00"]


def test_whoever_wrote_before_the_number_was_the_shops_is_not_answered(line: Line) -> None:
    line.write(NUMBER, "yes", -5)
    line.tick(1)
    assert line.kept() == []


def test_a_replay_does_not_undo_that_a_number_was_called_bad(line: Line) -> None:
    line.post("SM" + "d" * 32, NUMBER, "thanks")
    with line.house.store.write() as connection:
        people.change_phone(connection, line.counter.phone_id, bad_because="the provider says so")
    line.post("SM" + "d" * 32, NUMBER, "thanks")
    with line.house.store.read() as connection:
        phone = people.load_phone(connection, line.counter.shop_id, line.counter.phone_id)
        assert phone is not None and phone["bad_because"] == "the provider says so"
        assert inbox.unhandled(connection, line.counter.shop_id) == []
