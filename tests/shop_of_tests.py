"""A shop in an empty database, for tests of what comes in."""

from __future__ import annotations

from datetime import UTC, datetime

from followup.storage import shops, tables
from followup.storage.store import Store

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
