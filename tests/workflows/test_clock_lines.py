"""Days on which clocks change, leap days, year ends, and clocks that are stepped during a run: every text once, inside
its hours by the clock as it stands when it leaves, never before it is due; and a start after days of standing still.

Hours are worked out here by `zoneinfo` alone. Sources: 47 CFR 64.1200(c)(1) (local time of who is called), the trade
rules of this project (invites Monday to Friday 10-18, Saturday 10-17; texts about visits 8-20).
"""

from __future__ import annotations

from collections import Counter as Tally
from collections.abc import Iterator
from dataclasses import dataclass, field
from datetime import UTC, datetime, time, timedelta
from random import Random
from typing import Any, cast
from zoneinfo import ZoneInfo

import pytest

from followup import points
from followup.core.segments import segments
from followup.rehearsal import crowd
from followup.storage import inbox, machine, outbox, people, tables
from followup.storage.rows import Row
from followup.storage.store import Store, make_engine
from followup.transports.transport import OutgoingText, SentReceipt, Transport
from followup.workflows.plan_texts import plan_texts
from followup.workflows.send_texts import Sender, send_texts

SECRET = "only-for-tests"
# Eastern, central and pacific: a text leaves when its hour is open at the shop and at the phone.
AREAS = {315: "America/New_York", 217: "America/Chicago", 530: "America/Los_Angeles"}
ZONES = sorted(set(AREAS.values()))
CUSTOMERS, RATE = 9, 6.0
STEP = timedelta(minutes=15)
# Evenings before (wall time at the shop) and for how many hours the clock goes on.
DAYS = {
    "spring": ("2027-03-13T19:00", 54),
    "autumn": ("2027-11-06T19:00", 54),
    "February 29": ("2028-02-28T19:00", 30),
    "year end": ("2026-12-30T19:00", 78),
}


@dataclass
class Line:
    """A shop whose customers are invited, its clock, and a provider that keeps when each text was handed to it."""

    store: Store
    zone: str
    at: datetime
    handed: list[tuple[datetime, OutgoingText]] = field(default_factory=list)
    paced_at: list[tuple[datetime, int]] = field(default_factory=list)
    due: dict[str, datetime] = field(default_factory=dict)
    rate: float | None = None
    before_taking: Any = lambda: None
    # The database's own clock: it goes on where somebody waits, whatever the shop's clock says.
    real: datetime = datetime(2026, 1, 1, tzinfo=UTC)

    name, address = "wire", "http://127.0.0.1:9"

    def send(self, text: OutgoingText) -> SentReceipt:
        self.handed.append((self.at, text))
        self.paced_at.append((self.real, segments(text.body).count))
        self.before_taking()
        return SentReceipt(f"SM{text.public_id}", "queued")

    def wait(self, seconds: float) -> None:
        self.real += timedelta(seconds=seconds)

    def send_due(self) -> None:
        """One tick of the sender, which sends all that is due."""
        sender = Sender(cast(Transport, self), "https://texts.example", True, self.rate, SECRET, self.wait)
        send_texts(self.store, 1, sender, lambda: self.at, "test", most=500)

    def rows(self) -> dict[str, Row]:
        with self.store.read() as connection:
            return {row["public_id"]: row for row in outbox.texts_of_shop(connection, 1)}

    def note_due(self) -> None:
        """Note when each text is due, as it was planned."""
        for public_id, row in self.rows().items():
            self.due.setdefault(public_id, row["due_at"])

    def plan_visit_texts(self, every: timedelta, until: datetime) -> None:
        """A text about a visit for every so many minutes of the time that comes, to one customer after the other."""
        due_at, n = self.at, 0
        with self.store.write() as connection:
            phones = people.all_phones(connection, 1)
            while due_at < until:
                phone = phones[n % len(phones)]
                made = outbox.plan_text(
                    connection, 1, "from_a_person", f"text {n}", self.at, phone_id=phone["id"], number=phone["number"],
                    language="en", facts={"message": "Your keys are at the desk."}, due_at=due_at, author_id=1,
                    valid_until=due_at + timedelta(days=2),
                )  # fmt: skip
                assert made is not None
                due_at, n = due_at + every, n + 1

    def judge(self) -> Tally[str]:
        """Nothing twice, nothing early, nothing out of hours; how many texts of each kind left."""
        rows, seen = self.rows(), Tally[str]()
        for at, text in self.handed:
            row = rows[text.public_id]
            seen[text.public_id] += 1
            assert seen[text.public_id] == 1, f"twice: {row}"
            assert at >= self.due[text.public_id], f"{at} is before it was due: {row}"
            assert at < row["valid_until"]
            for zone in {self.zone, AREAS[int(text.to[2:5])]}:
                local = at.astimezone(ZoneInfo(zone))
                assert _is_open(row["kind"], local), f"{row['kind']} left at {local} in {zone}"
        invited = Tally(text.to for _, text in self.handed if rows[text.public_id]["kind"] == "invite")
        assert all(count == 1 for count in invited.values()), "one invite a phone in 14 days"
        return Tally(rows[public_id]["kind"] for public_id in seen)


def _is_open(kind: str, local: datetime) -> bool:
    if kind == "visit":
        return time(8) <= local.time() < time(20)
    opens, closes = time(10), time(17) if local.weekday() == 5 else time(18)
    return local.weekday() < 6 and opens <= local.time() < closes and (local.month, local.day) != (1, 1)


def _at(wall: str, zone: str) -> datetime:
    return datetime.fromisoformat(wall).replace(tzinfo=ZoneInfo(zone)).astimezone(UTC)


@pytest.fixture
def line(memory_url: str, monkeypatch: pytest.MonkeyPatch) -> Iterator[Any]:
    """Call it with a zone and an evening there: the shop with its invites planned."""
    opened: list[Line] = []

    def begin(zone: str, wall: str) -> Line:
        engine = make_engine(memory_url)
        tables.metadata.create_all(engine)
        made = Line(Store(engine), zone, _at(wall, zone))
        monkeypatch.setattr(machine, "database_clock", lambda _connection: made.real)
        assert crowd.add_crowd(made.store, CUSTOMERS, SECRET, made.at, zone=zone, areas=tuple(AREAS)) == 1
        made.note_due()
        opened.append(made)
        return made

    yield begin
    points.listen(None)
    for one in opened:
        one.store.close()


@pytest.mark.parametrize("days", DAYS)
@pytest.mark.parametrize("zone", ZONES)
def test_every_text_leaves_once_and_in_its_hours_on_days_unlike_others(line: Any, zone: str, days: str) -> None:
    evening, hours = DAYS[days]
    shop: Line = line(zone, evening)
    until = shop.at + timedelta(hours=hours)
    shop.plan_visit_texts(timedelta(minutes=90), until - timedelta(hours=24))
    shop.note_due()
    planned = Tally(row["kind"] for row in shop.rows().values())
    while shop.at < until:
        shop.send_due()
        if shop.at.minute == 0:
            plan_texts(shop.store, 1, shop.at)
        shop.at += STEP
    assert shop.judge() == planned, "every planned text left"
    assert planned["invite"] == CUSTOMERS and planned["visit"] >= 4


def test_an_hour_that_does_not_exist_and_one_that_comes_twice_send_nothing_twice(line: Any) -> None:
    """Texts that are due every few minutes of both nights."""
    for days in ("spring", "autumn"):
        shop: Line = line("America/Chicago", DAYS[days][0])
        shop.plan_visit_texts(timedelta(minutes=20), shop.at + timedelta(hours=12))
        shop.note_due()
        while shop.at < _at(DAYS[days][0], "America/Chicago") + timedelta(hours=22):
            shop.send_due()
            shop.at += STEP
        assert shop.judge()["visit"] == 36


@pytest.mark.parametrize("seed", range(12))
def test_a_clock_that_is_stepped_during_a_run_sends_nothing_twice_early_or_out_of_hours(line: Any, seed: int) -> None:
    """By an hour either way: between rounds, while a text is at the provider, and at each named point of the way that
    lies before the last look at the clock."""
    random = Random(f"clock {seed}")
    shop: Line = line(random.choice(ZONES), random.choice([wall for wall, _ in DAYS.values()]))
    shop.plan_visit_texts(timedelta(minutes=45), shop.at + timedelta(hours=20))
    shop.note_due()
    jumps = 0

    def step() -> None:
        nonlocal jumps
        jumps += 1
        shop.at += random.choice((-1, 1)) * timedelta(hours=1)

    def reached(point: str) -> None:
        if point in ("expired released", "claim written", "claim kept", "in flight kept") and random.random() < 0.1:
            step()

    def while_at_the_provider() -> None:
        if random.random() < 0.2:
            step()

    points.listen(reached)
    shop.before_taking = while_at_the_provider
    for _ in range(400):
        shop.send_due()
        shop.at += random.choice((STEP, STEP, 2 * STEP))
        if random.random() < 0.05:
            step()
        if random.random() < 0.1:
            plan_texts(shop.store, 1, shop.at)
    left = shop.judge()
    print(f"seed {seed}: {jumps} jumps, left {dict(left)}")
    assert jumps > 20 and left["invite"] >= CUSTOMERS // 2 and left["visit"] >= 10


def test_a_clock_that_is_stepped_before_the_call_is_seen(line: Any, monkeypatch: pytest.MonkeyPatch) -> None:
    """Without the last look at the clock the text would leave an hour after the hours are over."""

    def run() -> Line:
        shop: Line = line("America/Chicago", "2027-03-15T14:50")

        def reached(point: str) -> None:
            if point == "in flight kept" and shop.at < _at("2027-03-15T18:00", "America/Chicago"):
                shop.at += timedelta(hours=4)

        points.listen(reached)
        shop.send_due()
        return shop

    shop = run()
    assert shop.handed == []
    assert {row["state"] for row in shop.rows().values()} == {"planned"}
    monkeypatch.setattr("followup.workflows.send_texts.hand_over.LEASE", timedelta(days=1))
    with pytest.raises(AssertionError, match="left at"):
        run().judge()


def test_after_three_days_down_what_is_stale_is_planned_anew_and_nothing_is_blasted(line: Any) -> None:
    """Fault S14. Invites are valid for three days; the pace is the number's, by the database's clock."""
    shop: Line = line("America/Chicago", "2027-03-15T09:00")
    shop.plan_visit_texts(timedelta(hours=1), shop.at + timedelta(hours=6))
    with shop.store.write() as connection:
        phone = people.all_phones(connection, 1)[0]
        inbox.keep_raw(
            connection, shop_id=1, provider_id="in", number=phone["number"], phone_id=phone["id"], body="ok", raw={},
            received_at=shop.at, handled_at=shop.at,
        )  # fmt: skip
        answer = outbox.plan_text(
            connection, 1, "help", "an answer", shop.at, phone_id=phone["id"], number=phone["number"], language="en",
            facts={},
        )  # fmt: skip
    shop.note_due()
    before = shop.rows()
    shop.at, shop.rate = _at("2027-03-18T16:00", "America/Chicago"), RATE
    # As the clock's ticks are ordered: planning, then sending.
    plan_texts(shop.store, 1, shop.at)
    shop.send_due()
    plan_texts(shop.store, 1, shop.at)
    shop.send_due()
    after = shop.rows()
    stale = {row["id"]: row for row in before.values() if row["kind"] == "invite"}
    assert stale and all(row["valid_until"] < shop.at for row in stale.values())
    for _, text in shop.handed:
        row = after[text.public_id]
        assert row["valid_until"] > shop.at, "sent past its validity"
        # The same try of the same reason, with hours of its own.
        assert row["id"] not in stale or row["planned_at"] == row["due_at"] == shop.at
    shop.note_due()
    assert shop.judge()["invite"] == CUSTOMERS
    assert all(row["id"] != answer or row["state"] == "dropped" for row in after.values())
    times = [at for at, _ in shop.paced_at]
    for first in times:
        within = sum(count for at, count in shop.paced_at if first <= at < first + timedelta(seconds=1))
        assert within <= RATE, "no sliding second holds more than the number's rate"
    assert times[-1] - times[0] > timedelta(seconds=2)
