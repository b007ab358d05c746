"""Lines that open and close visits, by the inspection contract."""

from __future__ import annotations

import json
from datetime import UTC, datetime

from followup.storage import inspections
from followup.storage.store import Store, make_engine
from followup.workflows.keep_inspections import keep_inspections
from tests.core.lines import line_told
from tests.shop_of_tests import BEGIN, add_shop


def test_a_line_that_only_closes_a_visit_leaves_its_opening_alone(database_url: str) -> None:
    store = Store(make_engine(database_url))
    shop_id = add_shop(store)
    lines = [
        line_told(),
        {"visit": "RO-1", "vehicle": "V-1", "opened_at": "2026-03-03T09:00"},
        {"visit": "RO-1", "vehicle": "V-1", "closed_at": "2026-03-04T16:30"},
    ]
    kept = keep_inspections(store, shop_id, map(json.dumps, lines), BEGIN, "test", "only-for-tests-0123456789")
    assert [one.outcome for one in kept] == ["new", "new", "corrected"]
    with store.read() as connection:
        visit = inspections.find_visit(connection, shop_id, "RO-1")
    assert visit is not None
    # Chicago is six hours behind UTC in early March.
    assert visit["opened_at"] == datetime(2026, 3, 3, 15, 0, tzinfo=UTC)
    assert visit["closed_at"] == datetime(2026, 3, 4, 22, 30, tzinfo=UTC)
