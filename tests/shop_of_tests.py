"""A shop in an empty database, for tests of what comes in."""

from __future__ import annotations

from datetime import UTC, datetime
from pathlib import Path

import pytest
from pydantic import SecretStr

from followup.settings import Settings
from followup.storage import shops, tables
from followup.storage.store import Store
from followup.wiring import House, open_house

BEGIN = datetime(2026, 11, 24, 15, 0, tzinfo=UTC)


def add_shop(store: Store, code: str = "elm", texts_from: str = "+13125550100") -> int:
    """The tables, and one shop in Chicago; its id."""
    tables.metadata.create_all(store.engine)
    facts = {
        "name": f"{code.title()} Street Auto", "zone": "America/Chicago", "phone": "+13125550101",
        "texts_from": texts_from, "state": "IL",
    }  # fmt: skip
    with store.write() as connection:
        return shops.add_shop(connection, BEGIN, code, facts)


def open_test_house(database_url: str, folder: Path, monkeypatch: pytest.MonkeyPatch) -> tuple[House, int]:
    """The real house on that database, with its one shop; the clock stands at `BEGIN`, texts stay on this machine."""
    clock_file = folder / "clock"
    clock_file.write_text(BEGIN.isoformat().replace("+00:00", "Z"), encoding="utf-8")
    monkeypatch.setenv("FOLLOWUP_CLOCK", str(clock_file))
    secret = "only-for-tests-0123456789abcdef"
    given = {"database_url": database_url, "secret_key": SecretStr(secret), "ledger_hash_key": SecretStr(secret)}
    house = open_house(Settings.model_validate(given))
    return house, add_shop(house.store)
