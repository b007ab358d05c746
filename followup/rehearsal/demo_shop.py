"""Sets up the invented shop of the demo in a folder: secrets, a clock to move, database, staff, duty, inspections."""

from __future__ import annotations

import json
import os
from collections.abc import Callable
from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from pathlib import Path
from typing import Any

from followup import clock
from followup.core.duty import Roster, Watch
from followup.core.shop import WEEKDAYS, ShopRules
from followup.passwords import hash_password
from followup.settings import write_secret
from followup.storage import shops, staff
from followup.wiring import House, open_house

# The morning on which the demo begins: the last inspections of demo_data are a few days old.
BEGINS_AT = datetime(2026, 11, 23, 15, 0, tzinfo=UTC)
# Only in the demo: everywhere else the first owner is made by `followup staff add`, with a password of their own.
PASSWORD = "walk around the car"
LATEST_WATCH = ("00:00", "23:59")

Progress = Callable[[str], object]


@dataclass(frozen=True)
class DemoShop:
    """Where the demo lives, and the environment with which its processes run."""

    folder: Path
    address: str
    environment: dict[str, str]


def demo_data() -> Path:
    """The folder of the demo's data: beside the package in a checkout, inside it where it was installed."""
    package = Path(__file__).resolve().parent.parent
    beside = package.parent / "demo_data"
    return beside if beside.is_dir() else package / "_shipped" / "demo_data"


def environment_of(folder: Path, port: int) -> dict[str, str]:
    """The settings of a demo that lives in this folder and answers at this port of this machine."""
    return {
        "FOLLOWUP_DATABASE_URL": f"sqlite+pysqlite:///{folder / 'demo.db'}",
        "FOLLOWUP_PUBLIC_BASE_URL": f"http://127.0.0.1:{port}",
        "FOLLOWUP_WEB_PORT": str(port),
        "FOLLOWUP_SECRET_KEY_FILE": str(folder / "secret_key"),
        "FOLLOWUP_LEDGER_HASH_KEY_FILE": str(folder / "ledger_hash_key"),
        "FOLLOWUP_CLOCK": str(folder / "clock"),
        "FOLLOWUP_TRANSPORT": "test_phone",
    }


def set_up(folder: Path, port: int, progress: Progress) -> DemoShop:
    """Make the demo in an empty folder; the settings of this process become the demo's."""
    environment = environment_of(folder, port)
    for name in [one for one in os.environ if one.startswith("FOLLOWUP_")]:
        del os.environ[name]
    os.environ.update(environment)
    write_secret(folder / "secret_key")
    write_secret(folder / "ledger_hash_key")
    begin_clock()
    house = open_house()
    try:
        house.upgrade_database()
        shop_id = fill(house, demo_data(), progress)
        progress("looking at what is due")
        house.plan(shop_id)
    finally:
        house.close()
    return DemoShop(folder, environment["FOLLOWUP_PUBLIC_BASE_URL"], environment)


def begin_clock() -> None:
    """Set the demo's clock to its first morning; from there it goes on."""
    clock.move_to(BEGINS_AT)
    clock.let_run()


def fill(house: House, data: Path, progress: Progress, *, is_scored: bool = True) -> int:
    """Shop, staff, duty and years of inspections; the shop's id."""
    facts: dict[str, Any] = json.loads((data / "shop.json").read_text(encoding="utf-8"))
    members: list[dict[str, Any]] = json.loads((data / "staff.json").read_text(encoding="utf-8"))
    now = house.now()
    with house.store.write() as connection:
        shop_id = shops.add_shop(connection, now, facts["code"], facts)
        shops.save_rules(connection, shop_id, ShopRules(**facts.get("rules", {})), "the demo", now, "as it begins")
        hashed = hash_password(PASSWORD)
        ids: dict[str, int] = {}
        for one in members:
            ids[one["login"]] = staff.add(connection, shop_id, one["login"], one["name"], one["role"], hashed, now)
            if one.get("phone"):
                staff.set_alert_phone(connection, ids[one["login"]], one["phone"])
        shops.save_duty(connection, shop_id, roster_of(members, ids), "the demo", now)
    lines = (data / "inspections.jsonl").read_text(encoding="utf-8").splitlines()
    for count, kept in enumerate(house.keep_inspections(shop_id, lines, "the demo", accepts_doubtful=True), start=1):
        if kept.outcome == "rejected":
            raise ValueError(f"inspections.jsonl, line {count}: {kept.faults}")
        if count % 100 == 0:
            progress(f"{count} of {len(lines)} inspections")
    progress("forecasting when each item will be due")
    house.forecast(shop_id)
    if is_scored:
        progress("looking back on how right forecasts would have been")
        house.score(shop_id)
    return shop_id


def roster_of(members: list[dict[str, Any]], ids: dict[str, int]) -> Roster:
    """Advisors are told first, then the manager; the owner takes alerts after hours."""
    advisors = [ids[one["login"]] for one in members if one["role"] == "advisor"]
    manager = next(ids[one["login"]] for one in members if one["role"] == "manager")
    owner = next(ids[one["login"]] for one in members if one["role"] == "owner")
    watches = {
        day: (Watch(*LATEST_WATCH, told=(*_turned(advisors, number), manager)),) for number, day in enumerate(WEEKDAYS)
    }
    return Roster(watches, manager=manager, owner=owner, on_call=owner)


def _turned(ids: list[int], number: int) -> list[int]:
    """Whoever is first today is second tomorrow."""
    shift = number % len(ids)
    return ids[shift:] + ids[:shift]


def later(days: float) -> datetime:
    """Move the demo's clock on."""
    clock.move_by(timedelta(days=days))
    return clock.now()
