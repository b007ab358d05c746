"""The ticking clock: no shop waits for another's provider, nothing else waits for any, and the end is quick and clean.

The bars are this project's own: a wait of one tick at most beside a silent provider, a call that ends within 35 s.
"""

from __future__ import annotations

import threading
from collections.abc import Callable, Iterator
from datetime import timedelta
from pathlib import Path
from typing import cast

import pytest
from pydantic import SecretStr

from followup import clock, scheduler
from followup.settings import Settings
from followup.storage import machine, shops, staff
from followup.transports import twilio
from followup.transports.transport import OutgoingText, SentReceipt, Transport
from followup.wiring import House
from followup.workflows.send_texts import LEASE, LONGEST_CALL
from tests.workflows.counter import NOW, SECRET, Counter, fill, open_counter

ELM, OAK = "+13125550101", "+13125550102"
ONE_TICK_SECONDS = 1.0


class HalfSilent:
    """A provider that says nothing to one number's texts until it is let go, and answers the others at once."""

    name = "half silent"
    address = "http://127.0.0.1:9"

    def __init__(self) -> None:
        self.asked = {ELM: threading.Event(), OAK: threading.Event()}
        self.go_on = threading.Event()
        self.handed: list[OutgoingText] = []

    def send(self, text: OutgoingText) -> SentReceipt:
        self.handed.append(text)
        self.asked[text.sender].set()
        if text.sender == ELM:
            assert self.go_on.wait(20)
        return SentReceipt(f"SM{text.public_id}", "queued")


Two = tuple[House, HalfSilent, Counter]


@pytest.fixture
def two(
    sqlite_url: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> Iterator[tuple[House, HalfSilent, Counter]]:
    """Two shops with an answer to send each, and the first one's record."""
    (tmp_path / "clock").write_text(NOW.isoformat().replace("+00:00", "Z"), encoding="utf-8")
    monkeypatch.setenv("FOLLOWUP_CLOCK", str(tmp_path / "clock"))
    elm = open_counter(sqlite_url)
    with elm.store.write() as connection:
        facts = {"name": "Oak Road Auto", "zone": "America/Chicago", "phone": "+13125550103", "texts_from": OAK}
        oak_id = shops.add_shop(connection, NOW, "oak", facts)
        staff_id = staff.add(connection, oak_id, "blair", "Blair Lane", "advisor", "no password", NOW)
    oak = fill(elm.store, oak_id, staff_id)
    for counter in (elm, oak):
        for cause in ("first", "second"):
            counter.plan("help", cause)
    secret = SecretStr(SECRET * 3)
    settings = Settings(database_url=sqlite_url, secret_key=secret, ledger_hash_key=secret,
                        us_registration_brand="a", us_registration_campaign="b", us_registration_use_case="c",
                        us_registration_on=NOW.date(), sender_segments_per_second=1000.0)  # fmt: skip
    wire = HalfSilent()
    house = House(settings, elm.store, cast(Transport, wire))
    yield house, wire, elm
    wire.go_on.set()
    house.close()


def test_no_shop_waits_for_the_silence_of_anothers_provider(two: Two) -> None:
    house, wire, elm = two
    lanes = scheduler.Lanes()
    ticks = len(scheduler.TICKS)
    assert scheduler.run_due(house, "test", lanes) == ticks
    assert wire.asked[ELM].wait(10)
    # The call to the silent one still hangs; the other shop's texts leave, and further ticks run.
    assert wire.asked[OAK].wait(10 * ONE_TICK_SECONDS)
    _wait_until(lambda: len(wire.handed) == 3)
    clock.move_by(timedelta(seconds=30))
    assert scheduler.run_due(house, "test", lanes) > 0
    assert [text.sender for text in wire.handed].count(ELM) == 1
    wire.go_on.set()
    lanes.end()
    assert {one["state"] for one in elm.texts()} == {"sent"}


def test_at_the_end_the_text_at_hand_is_finished_and_no_other_begun(two: Two) -> None:
    house, wire, elm = two
    lanes = scheduler.Lanes()
    scheduler.run_due(house, "test", lanes)
    assert wire.asked[ELM].wait(10)
    house.stopping.set()
    wire.go_on.set()
    lanes.end()
    assert sorted(one["state"] for one in elm.texts()) == ["planned", "sent"]


def test_a_lane_that_is_busy_is_left_alone() -> None:
    lanes, go_on, ran = scheduler.Lanes(2), threading.Event(), []
    assert lanes.start(("send", 1), lambda: go_on.wait(10))
    assert not lanes.start(("send", 1), lambda: ran.append("again"))
    assert lanes.start(("send", 2), lambda: ran.append("other"))
    _wait_until(lambda: ran == ["other"])
    go_on.set()
    _wait_until(lambda: lanes.start(("send", 1), lambda: ran.append("later")))
    _wait_until(lambda: ran == ["other", "later"])
    lanes.end()


def test_a_call_ends_before_its_lease_does() -> None:
    assert twilio.CONNECT_SECONDS + twilio.READ_SECONDS <= LONGEST_CALL.total_seconds() <= 35
    assert LEASE > LONGEST_CALL


def _wait_until(holds: object) -> None:
    assert callable(holds)
    for _ in range(2000):
        if holds():
            return
        threading.Event().wait(0.005)
    pytest.fail("it did not come to be")


# One acting clock -------------------------------------------------------------------------------------------------
Ran = list[tuple[str, str]]


def _ticks(ran: Ran, within: Callable[[], None] = lambda: None) -> tuple[scheduler.Tick, ...]:
    """Two ticks that only say that they ran; something happens within the first."""

    def first(_house: House, shop_id: int) -> None:
        ran.append(("first", str(shop_id)))
        within()

    def second(_house: House, shop_id: int) -> None:
        ran.append(("second", str(shop_id)))

    every = timedelta(seconds=10)
    return (scheduler.Tick("first", every, first), scheduler.Tick("second", every, second))


def test_who_loses_the_lease_within_a_tick_stands_down_before_the_next(
    two: Two, monkeypatch: pytest.MonkeyPatch
) -> None:
    """As one that is paused there past its lease, while another process takes over (fault C2)."""
    house, _, _ = two
    ran: Ran = []

    def pause() -> None:
        if len(ran) == 1:
            monkeypatch.setattr(machine, "database_now", lambda _connection: now + scheduler.LEASE_LASTS * 2)
            assert house.take_lease("clock", "another", scheduler.LEASE_LASTS) == 2

    with house.store.read() as connection:
        now = machine.database_clock(connection)
    monkeypatch.setattr(machine, "database_now", lambda _connection: now)
    monkeypatch.setattr(scheduler, "TICKS", _ticks(ran, pause))
    assert scheduler.run_due(house, "first") == 0
    assert ran == [("first", "1")]
    # Neither did it say that its tick ran: the other one runs it.
    assert scheduler.run_due(house, "another") == 2
    assert scheduler.run_due(house, "first") == 0


def test_two_clocks_side_by_side_have_one_effect_a_tick(two: Two, monkeypatch: pytest.MonkeyPatch) -> None:
    house, _, _ = two
    ran: Ran = []
    monkeypatch.setattr(scheduler, "TICKS", _ticks(ran))
    rounds = 40
    for _ in range(rounds):
        clock.move_by(timedelta(seconds=10))
        looks = [threading.Thread(target=scheduler.run_due, args=(house, name)) for name in ("one", "two")]
        for look in looks:
            look.start()
        for look in looks:
            look.join(20)
    # Two ticks of two shops each.
    assert len(ran) == rounds * 4


def test_a_laptop_that_slept_for_eight_hours_runs_each_tick_once_and_says_so(
    two: Two, monkeypatch: pytest.MonkeyPatch, caplog: pytest.LogCaptureFixture
) -> None:
    house, _, _ = two
    ran: Ran = []
    monkeypatch.setattr(scheduler, "TICKS", _ticks(ran))
    assert scheduler.run_due(house, "test") == 2
    ran.clear()
    clock.move_by(timedelta(hours=8))
    with caplog.at_level("INFO"):
        assert scheduler.run_due(house, "test") == 2
        assert scheduler.run_due(house, "test") == 0
    assert ran == [("first", "1"), ("first", "2"), ("second", "1"), ("second", "2")]
    assert sum("caught up with" in one.message for one in caplog.records) == 2


def test_a_long_look_keeps_its_lease(two: Two, monkeypatch: pytest.MonkeyPatch) -> None:
    house, _, _ = two
    with house.store.read() as connection:
        now = machine.database_clock(connection)
    seconds = 0
    monkeypatch.setattr(machine, "database_now", lambda _connection: now + timedelta(seconds=seconds))
    acting = scheduler.Acting(house, "long")
    assert acting.begin()
    for seconds in range(0, 100, scheduler.KEEP_LEASE_EVERY_SECONDS):  # noqa: B007  # the clock reads it
        scheduler._keep_lease(acting)
        assert house.take_lease("clock", "another", scheduler.LEASE_LASTS) is None
    seconds += 20
    scheduler._keep_lease(acting)
    assert acting.term is None
    assert house.take_lease("clock", "another", scheduler.LEASE_LASTS) == 2


def test_the_news_of_a_large_shop_keep_nobody_waiting(two: Two) -> None:
    """A look does so much of a tick and goes on with the others; the next look goes on with it, shops by turns."""
    house, _, _ = two
    waiting, ran = {1: 25, 2: 4}, list[tuple[str, int, int]]()

    def some(_house: House, shop_id: int, most: int) -> int:
        done = min(waiting[shop_id], most)
        waiting[shop_id] -= done
        ran.append(("long", shop_id, done))
        return done

    ticks = (
        scheduler.Tick("long", timedelta(seconds=20), some, most=10),
        scheduler.Tick("other", timedelta(seconds=1), lambda _house, shop_id: ran.append(("other", shop_id, 0))),
    )
    lanes, acting, others = scheduler.Lanes(), scheduler.Acting(house, "test"), [("other", 1, 0), ("other", 2, 0)]
    looks = []
    for _ in range(3):
        scheduler.run_due(house, "test", lanes, acting, ticks)
        looks.append(ran.copy())
        ran.clear()
        clock.move_by(timedelta(seconds=1))
    assert looks[0] == [("long", 1, 10), *others]
    assert looks[1] == [("long", 2, 4), ("long", 1, 6), *others]
    assert looks[2] == [("long", 1, 9), *others]
    # All is done: it is its turn again when its time has come.
    scheduler.run_due(house, "test", lanes, acting, ticks)
    assert ran == others
    lanes.end()
