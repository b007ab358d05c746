"""The demo shop for tests: filled once, copied for each test, with a clock that the test moves.

Its steps are those of the real program: texts come in by the signed hook's way, and the ticks run what is due.
"""

from __future__ import annotations

import fcntl
import os
import shutil
from collections.abc import Callable
from dataclasses import dataclass
from datetime import datetime, timedelta
from pathlib import Path
from tempfile import mkdtemp

import pytest
from werkzeug.datastructures import MultiDict

from followup import clock, scheduler
from followup.core.wall import to_utc, to_wall
from followup.rehearsal import demo_shop
from followup.storage import installation, outbox, people, shops, staff, test_phone, windows
from followup.storage.rows import Row
from followup.transports.local_phone import inbound_fields
from followup.wiring import House, open_house

PORT = 8000


@dataclass
class Demo:
    """A copy of the demo shop. Wall times are the shop's."""

    house: House
    shop_id: int

    @property
    def zone(self) -> str:
        return self.house.shop(self.shop_id).zone

    def at(self, wall: str) -> datetime:
        """Move the clock to a wall time of the shop, and tell the instant."""
        instant = to_utc(datetime.fromisoformat(wall), self.zone)
        clock.move_to(instant)
        return instant

    def run(self, until: str | None = None) -> None:
        """Run every tick that is due now, or step the clock through all up to a wall time."""
        instant = to_utc(datetime.fromisoformat(until), self.zone) if until else self.house.now()
        scheduler.run_until(self.house, instant)

    def run_weekly(self, weeks: int) -> None:
        """Let weeks pass on their Tuesdays alone: what became due by then is planned and leaves within its hours.

        A machine that ran all the time would send the same texts a few days earlier, and take many times as long.
        """
        today = to_wall(self.house.now(), self.zone).date()
        tuesday = today + timedelta(days=(1 - today.weekday()) % 7 or 7)
        for week in range(weeks):
            day = tuesday + timedelta(weeks=week)
            self.at(f"{day}T10:05")
            self.run(f"{day}T18:00")

    def write(self, number: str, body: str) -> None:
        """The customer of that number writes."""
        to = self.house.shop(self.shop_id).texts_from
        assert self.house.receive_text(MultiDict(inbound_fields(number, to, body)))

    def texts_to(self, number: str) -> list[Row]:
        """All texts of our own to that number, oldest first."""
        with self.house.store.read() as connection:
            phone = people.find_phone(connection, self.shop_id, number)
            assert phone is not None
            return outbox.texts_of_phone(connection, phone["id"])

    def shown(self, number: str) -> list[Row]:
        """What the test phone of that number shows."""
        with self.house.store.read() as connection:
            found = test_phone.texts_of(connection, self.shop_id, number)
        return [row for row in found if row["direction"] == "to_phone"]

    def owner(self) -> tuple[int, str]:
        """The owner's id and the number that alerts go to."""
        with self.house.store.read() as connection:
            member = next(one for one in staff.of_shop(connection, self.shop_id) if one.role == "owner")
            number = staff.alert_phone(connection, self.shop_id, member.id)
        assert number is not None
        return member.id, number

    def a_planned_invite(self) -> Row:
        """The first invite that the demo's first morning planned."""
        with self.house.store.read() as connection:
            return next(row for row in outbox.queued_texts(connection, self.shop_id) if row["kind"] == "invite")

    def windows(self, vehicle_id: int) -> list[Row]:
        """The present due windows of a car."""
        with self.house.store.read() as connection:
            return windows.windows_of(connection, vehicle_id)


def make_once(shared: Path, name: str, fill: Callable[[Path], None]) -> Path:
    """A folder that `fill` fills, made once for all processes of tests that share the folder above it."""
    made = shared / name
    with (shared / f"{name}.lock").open("w") as lock, pytest.MonkeyPatch.context() as patch:
        fcntl.flock(lock, fcntl.LOCK_EX)
        if not made.exists():
            # The set-up makes the demo's settings those of this process; here they must not outlive it.
            patch.setattr(os, "environ", os.environ.copy())
            making = Path(mkdtemp(dir=shared))
            fill(making)
            making.rename(made)
    return made


def set_up_demo(folder: Path) -> None:
    """The demo shop as it begins."""
    demo_shop.set_up(folder, PORT, lambda _words: None)


def open_copy(template: Path, folder: Path, monkeypatch: pytest.MonkeyPatch) -> Demo:
    """A copy of a demo shop in that folder, at the instant at which its clock stands."""
    for file in template.iterdir():
        shutil.copy(file, folder / file.name)
    for name, value in demo_shop.environment_of(folder, PORT).items():
        monkeypatch.setenv(name, value)
    house = open_house()
    with house.store.write() as connection:
        # A copy sends nothing until it is told to.
        if not installation.move_in(connection, house.now()).sends:
            installation.say(connection, "here", house.now(), "a test", place=installation.place(connection))
        shop_id = shops.shop_codes(connection)[0][0]
    return Demo(house, shop_id)


def open_demo(template: Path, folder: Path, monkeypatch: pytest.MonkeyPatch) -> Demo:
    """A copy of the demo shop in that folder, on its first morning (Monday, November 23, 2026, 9:00 AM)."""
    opened = open_copy(template, folder, monkeypatch)
    clock.move_to(demo_shop.BEGINS_AT)
    return opened
