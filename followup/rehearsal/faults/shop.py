"""The shop of a trial: a few of the demo's customers, whose texts are about to be planned, and two who have written.

It is filled once by the program's own ways; every trial works on a copy.
"""

from __future__ import annotations

import json
import os
import shutil
import socket
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from datetime import UTC, datetime
from pathlib import Path

from followup import clock
from followup.rehearsal import demo_shop
from followup.rehearsal.faults.provider import ACCOUNT, TOKEN
from followup.settings import Settings, read_settings
from followup.transports.transport import InboundText
from followup.wiring import open_house
from followup.workflows.keep_inbound import keep_inbound

# A Monday, 10:05 in the morning at the shop: invites may leave.
BEGINS_AT = datetime(2026, 11, 23, 16, 5, tzinfo=UTC)
OPENS_AT, CLOSES_AT = datetime(2026, 11, 23, 16, 0, tzinfo=UTC), datetime(2026, 11, 24, 0, 0, tzinfo=UTC)
INVITED = ("C-101", "C-104", "C-105", "C-107", "C-108", "C-145")
WROTE = {"+12065550118": "Can I come in Thursday at 9?", "+16085550129": "My brakes feel soft and the pedal sinks"}
WRITERS = ("C-109", "C-120")
_SECRET = "only-for-trials-0123456789abcdef"


@dataclass(frozen=True)
class Shop:
    """A database of its own, a folder for its clock and logs, and the port of its pages."""

    folder: Path
    url: str
    port: int

    def environment(self, provider: str, **others: str) -> dict[str, str]:
        """The settings of its processes, with the provider at that address."""
        return {
            "FOLLOWUP_DATABASE_URL": self.url, "FOLLOWUP_PUBLIC_BASE_URL": f"http://127.0.0.1:{self.port}",
            "FOLLOWUP_WEB_PORT": str(self.port), "FOLLOWUP_WEB_THREADS": "4", "FOLLOWUP_SECRET_KEY": _SECRET,
            "FOLLOWUP_LEDGER_HASH_KEY": _SECRET, "FOLLOWUP_CLOCK": str(self.folder / "clock"),
            **provider_environment(provider), **others,
        }  # fmt: skip

    def set_clock(self, instant: datetime) -> None:
        """Stop the clock of its processes at that instant."""
        stop_clock(self.folder / "clock", instant)

    def settings(self) -> Settings:
        """The settings for whoever looks at its database."""
        return read_settings(self.environment(demo_address(self.port)))


def provider_environment(provider: str) -> dict[str, str]:
    """The settings with which a shop texts through the provider of a trial."""
    return {
        "FOLLOWUP_TRANSPORT": "twilio", "FOLLOWUP_TWILIO_API_BASE": provider, "FOLLOWUP_TWILIO_ACCOUNT_SID": ACCOUNT,
        "FOLLOWUP_TWILIO_AUTH_TOKENS": TOKEN, "FOLLOWUP_SENDER_NUMBER": "+12175550101",
        "FOLLOWUP_SENDER_SEGMENTS_PER_SECOND": "1000", "FOLLOWUP_US_REGISTRATION_BRAND": "a trial",
        "FOLLOWUP_US_REGISTRATION_CAMPAIGN": "a trial", "FOLLOWUP_US_REGISTRATION_USE_CASE": "a trial",
        "FOLLOWUP_US_REGISTRATION_ON": "2026-11-01",
    }  # fmt: skip


def demo_address(port: int) -> str:
    """An address of this machine."""
    return f"http://127.0.0.1:{port}"


def stop_clock(file: Path, instant: datetime) -> None:
    """Stop the clock that is kept in that file."""
    new = file.with_name("clock.new")
    new.write_text(instant.astimezone(UTC).isoformat().replace("+00:00", "Z") + "\n", encoding="utf-8")
    new.replace(file)


@contextmanager
def kept_port() -> Iterator[int]:
    """A port that nobody else is given; connections to it are refused until a process of ours listens there."""
    with socket.socket() as kept:
        # Both ask to share the address, so that the pages may listen where this one only stands.
        kept.setsockopt(socket.SOL_SOCKET, socket.SO_REUSEADDR, 1)
        kept.bind(("127.0.0.1", 0))
        yield int(kept.getsockname()[1])


def fill_shop(shop: Shop, *, is_planned: bool) -> None:
    """Fill an empty database; with `is_planned` its texts are planned already and the two who wrote have their
    answers waiting, else the first process of the trial does that."""
    shop.set_clock(demo_shop.BEGINS_AT)
    data = shop.folder / "data"
    data.mkdir()
    _write_data(data)
    with clock_in(shop.folder / "clock"):
        house = open_house(shop.settings())
        try:
            house.upgrade_database()
            shop_id = demo_shop.fill(house, data, lambda _words: None)
            to = house.shop(shop_id).texts_from
            shop.set_clock(BEGINS_AT)
            for number, (sender, body) in enumerate(WROTE.items()):
                keep_inbound(house.store, InboundText(f"SM{'f' * 31}{number}", sender, to, body), house.now())
            if is_planned:
                house.answer(shop_id)
                house.tell(shop_id)
                house.plan(shop_id)
        finally:
            house.close()
    shutil.rmtree(data)


def _write_data(data: Path) -> None:
    source = demo_shop.demo_data()
    shutil.copy(source / "shop.json", data / "shop.json")
    staff = json.loads((source / "staff.json").read_text(encoding="utf-8"))
    # One number is told of alerts: a trial is about texts, and each telling is one more.
    told = [{**one, "phone": one["phone"] if one["role"] == "owner" else None} for one in staff]
    (data / "staff.json").write_text(json.dumps(told), encoding="utf-8")
    lines = [json.loads(line) for line in (source / "inspections.jsonl").read_text(encoding="utf-8").splitlines()]
    wanted = {*INVITED, *WRITERS}
    cars = {_car(line) for line in lines if line.get("customer", {}).get("id") in wanted}
    kept = [line for line in lines if _car(line) in cars]
    (data / "inspections.jsonl").write_text("".join(json.dumps(line) + "\n" for line in kept), encoding="utf-8")


def _car(line: dict[str, object]) -> object:
    vehicle = line.get("vehicle")
    return vehicle["id"] if isinstance(vehicle, dict) else vehicle


@contextmanager
def clock_in(file: Path) -> Iterator[None]:
    """This process reads its clock from that file while the block lasts."""
    before = os.environ.get(clock.VARIABLE)
    os.environ[clock.VARIABLE] = str(file)
    try:
        yield
    finally:
        if before is None:
            del os.environ[clock.VARIABLE]
        else:
            os.environ[clock.VARIABLE] = before
