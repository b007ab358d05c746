"""The shop opens its books: a database with staff, duty and a year of inspections, made by the program's own ways."""

from __future__ import annotations

import json
import shutil
from collections.abc import Callable
from datetime import datetime, time
from pathlib import Path

from followup.core.shop import instant
from followup.rehearsal import demo_shop
from followup.rehearsal.faults.shop import clock_in
from followup.rehearsal.week.premises import Premises
from followup.rehearsal.years.fleet import LivingFleet
from followup.settings import read_settings, write_secret
from followup.wiring import open_house

ZONE = "America/Chicago"
# Before anybody is at work.
_OPENS = time(6)


def begins_at(fleet: LivingFleet) -> datetime:
    """The instant at which it begins to live."""
    return instant(fleet.begins_on, _OPENS, ZONE)


def open_shop(folder: Path, fleet: LivingFleet, progress: Callable[[str], object]) -> Premises:
    """Set it up in an empty folder; the fleet lives the weeks that the shop has on file."""
    premises = Premises(folder)
    for name in ("secret_key", "ledger_hash_key"):
        write_secret(folder / name)
    premises.set_clock(begins_at(fleet))
    data = folder / "data"
    data.mkdir()
    for name in ("shop.json", "staff.json"):
        shutil.copy(demo_shop.demo_data() / name, data / name)
    lines = sorted(fleet.live_before(), key=lambda line: str(line["inspected_at"]))
    text = "".join(json.dumps(line) + "\n" for line in lines)
    (data / "inspections.jsonl").write_text(text, encoding="utf-8")
    settings = read_settings(demo_shop.environment_of(folder, premises.port))
    with clock_in(premises.clock_file):
        house = open_house(settings)
        try:
            house.upgrade_database()
            demo_shop.fill(house, data, progress, is_scored=False)
        finally:
            house.close()
    shutil.rmtree(data)
    return premises
