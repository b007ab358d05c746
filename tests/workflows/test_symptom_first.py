"""A symptom among thousands of invites that wait: it is answered within seconds, and a person is told first.

Time is that of the number's pace (one segment a second, the provider's rate of a long number): it goes on only where
the sender waits, and the clock's ticks run each second of it. The bars are this project's own.
"""

from __future__ import annotations

from collections.abc import Callable
from datetime import timedelta
from typing import Any, cast

import pytest

from followup.storage import machine, outbox, people
from followup.transports.transport import InboundText, OutgoingText, SentReceipt, Transport
from followup.workflows.answer_inbound import answer_waiting
from followup.workflows.keep_inbound import keep_inbound, keep_missed
from followup.workflows.send_texts import Sender, send_texts
from followup.workflows.tell_staff import tell_staff
from tests.workflows.demo import Demo

SECRET = "only-for-tests"
QUEUED, RATE, WITHIN_SECONDS = 2_000, 1.0, 5.0
SYMPTOM = "My brakes feel soft and the pedal sinks"


class Road:
    """The sender's provider and time, and what happens on the way."""

    name, address = "wire", "http://127.0.0.1:9"

    def __init__(self, demo: Demo, monkeypatch: pytest.MonkeyPatch) -> None:
        self.demo, self.store = demo, demo.house.store
        self.begins = self.real = demo.at("2026-11-23T11:00")
        self.handed: list[tuple[float, OutgoingText]] = []
        self.written: list[InboundText] = []
        self.on_taking: Callable[[], None] = lambda: None
        monkeypatch.setattr(machine, "database_clock", lambda _connection: self.real)

    @property
    def seconds(self) -> float:
        return (self.real - self.begins).total_seconds()

    def send(self, text: OutgoingText) -> SentReceipt:
        self.handed.append((self.seconds, text))
        self.on_taking()
        return SentReceipt(f"SM{text.public_id}", "queued")

    def list_inbound(self, to: str, since: Any) -> list[InboundText]:
        return self.written

    def wait(self, seconds: float) -> None:
        """Time goes on, and with it the ticks that answer and tell."""
        while seconds > 0:
            self.real += timedelta(seconds=min(seconds, 1.0))
            seconds -= 1.0
            self.answer()

    def answer(self) -> None:
        now = self.demo.house.now()
        answer_waiting(self.store, self.demo.shop_id, now, SECRET)
        tell_staff(self.store, self.demo.shop_id, now)

    def run(self, most: int) -> None:
        sender = Sender(cast(Transport, self), "https://texts.example", True, RATE, SECRET, self.wait)
        send_texts(self.store, self.demo.shop_id, sender, self.demo.house.now, "test", most)

    def queue(self) -> str:
        """So many invites that are due; the number of a customer who has one."""
        with self.store.write() as connection:
            phones = people.all_phones(connection, self.demo.shop_id)
            first = next(row for row in outbox.queued_texts(connection, self.demo.shop_id) if row["kind"] == "invite")
            for n in range(QUEUED):
                phone = phones[n % len(phones)]
                outbox.plan_text(
                    connection, self.demo.shop_id, "due_work", f"queued {n}", self.demo.house.now(),
                    phone_id=phone["id"], number=phone["number"], vehicle_id=first["vehicle_id"], language="en",
                    facts={"items": []},
                )  # fmt: skip
        return str(first["number"])

    def kinds(self) -> list[tuple[float, str, str]]:
        """When what was handed over: its kind and reason."""
        with self.store.read() as connection:
            found = [(at, outbox.text_of_public_id(connection, text.public_id)) for at, text in self.handed]
        return [(at, row["kind"], row["reason"]) for at, row in found if row is not None]


@pytest.fixture
def road(demo: Demo, monkeypatch: pytest.MonkeyPatch) -> Road:
    return Road(demo, monkeypatch)


def test_a_symptom_behind_2_000_invites_is_answered_within_seconds(road: Road) -> None:
    number = road.queue()
    came_at: list[float] = []

    def write() -> None:
        if len(road.handed) == 4:
            came_at.append(road.seconds)
            to = road.demo.house.shop(road.demo.shop_id).texts_from
            keep_inbound(road.store, InboundText("SM-symptom", number, to, SYMPTOM), road.demo.house.now())

    road.on_taking = write
    road.run(12)
    sent = road.kinds()
    print(f"came at {came_at[0]:.2f} s; {sent}")
    assert [kind for _, kind, _ in sent[:4]] == ["invite"] * 4
    after = sent[4:]
    answer = next(at for at, kind, reason in after if reason.startswith("caution_"))
    assert answer - came_at[0] < WITHIN_SECONDS
    assert after[0][1] == "alert", "a person is told first"
    assert all(kind != "invite" for at, kind, _ in after if at < answer)


def test_one_that_is_found_late_tells_a_person_first(road: Road) -> None:
    """No hook was there when it was written, three hours ago; then the provider's list is read."""
    number = road.queue()
    house = road.demo.house
    to, written_at = house.shop(road.demo.shop_id).texts_from, house.now() - timedelta(hours=3)
    road.written = [InboundText("SM-late", number, to, SYMPTOM, received_at=written_at)]
    assert keep_missed(road.store, cast(Transport, road), road.demo.shop_id, house.now()) == 1
    road.answer()
    road.run(6)
    sent = road.kinds()
    print(sent)
    assert sent[0][1] == "alert" and road.handed[0][1].to != number
