"""Who was not seen for long, from the last inspection to the words, in both languages."""

from __future__ import annotations

import json
from datetime import UTC, datetime

import pytest

from followup.core.wording_checks import check_wording
from followup.storage import tables
from followup.workflows.change_rules import change_rules
from followup.workflows.keep_inspections import keep_inspections
from followup.workflows.plan_texts import plan_texts
from followup.workflows.send_texts.body import body_of, facts_of
from tests.workflows import counter as counters
from tests.workflows.counter import NOW, SECRET, Counter

# A Tuesday, noon at the shop, more than three months after the car was there on 2 November.
LEAVES = datetime(2027, 2, 9, 18, 0, tzinfo=UTC)
LIGHTS = {"item": "lights", "found_as": "works"}
WORDS = {
    "en": "it has been a while since your blue wagon was here.",
    "es": "hace tiempo que no vemos su blue wagon.",
}
AMOUNTS = {"en": "washer fluid (up to full)", "es": "(hasta llenar)"}


@pytest.fixture
def counter(database_url: str) -> Counter:
    """The shop with its customer, where three months count as long."""
    found = counters.open_counter(database_url)
    news = {"unseen_months": 3}
    assert change_rules(found.store, found.shop_id, ["timing"], news, 0, "Theo", "", NOW).version
    return found


@pytest.mark.parametrize("language", ["en", "es"])
def test_free_services_after_a_long_time(counter: Counter, language: str) -> None:
    told = json.loads(counters.line(inspection="I-2", inspected_at="2026-11-02T09:10", readings=[LIGHTS]))
    told["customer"]["language"] = language
    kept = list(keep_inspections(counter.store, counter.shop_id, [json.dumps(told)], NOW, "test", SECRET,
                                 accepts_doubtful=True))  # fmt: skip
    assert [one.outcome for one in kept] == ["new"], kept
    with counter.store.write() as connection:
        # Nothing is due, so that nothing more pressing is written.
        connection.execute(tables.due_windows.update().values(is_current=False))
    plan_texts(counter.store, counter.shop_id, LEAVES)
    (row,) = [one for one in counter.texts() if one["kind"] == "invite"]
    assert (row["reason"], row["asks"]) == ("long_unseen", "walk_in")
    with counter.store.read() as connection:
        text = body_of(connection, counter.shop(), row, LEAVES).text
        facts = facts_of(connection, counter.shop(), row, LEAVES)
    assert check_wording(text, "long_unseen", language, facts) == []
    assert WORDS[language] in text and AMOUNTS[language] in text
    assert plan_texts(counter.store, counter.shop_id, LEAVES) == 0
