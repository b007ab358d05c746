"""Before winter, from the inspection to the words and the booking, in both languages."""

from __future__ import annotations

import json
from datetime import UTC, datetime
from typing import Any

import pytest

from followup.core.wording_checks import check_wording
from followup.storage.rows import Row
from followup.workflows.change_rules import change_rules
from followup.workflows.forecast_windows import forecast_windows
from followup.workflows.keep_inspections import keep_inspections
from followup.workflows.keep_top_off import keep_top_off
from followup.workflows.plan_texts import plan_texts
from followup.workflows.send_texts.body import body_of, facts_of
from tests.workflows import counter as counters
from tests.workflows.counter import NOW, SECRET, Counter

# A Tuesday, 11:00 at the shop, in the last third of the weeks that the manager set.
LEAVES = datetime(2027, 1, 19, 17, 0, tzinfo=UTC)
# Tires and pads are worn, and not to be what is written about.
DAYS = {"winter_from": "11-26", "winter_until": "01-31", "send_worn_at_chance": 0.9, "near_at_chance": 0.99}
# Tested at 78 % of its rating: near the limit of 75 %.
WEAK_BATTERY = {"item": "battery", "verdict": "good", "changed_on": "2023-06-01", "cca": 470, "cca_rated": 600}


@pytest.fixture
def counter(database_url: str) -> Counter:
    """The shop with its customer, its winter days set by hand."""
    found = counters.open_counter(database_url)
    answer = change_rules(found.store, found.shop_id, ["timing"], DAYS, found.shop().rules_version, "Theo", "", NOW)
    assert answer.version, answer.wrong
    return found


def _invite(counter: Counter, language: str, *readings: dict[str, Any]) -> Row:
    told = json.loads(counters.line(inspection="I-2", inspected_at="2026-11-02T09:10", readings=list(readings)))
    told["customer"]["language"] = language
    kept = list(keep_inspections(counter.store, counter.shop_id, [json.dumps(told)], NOW, "test", SECRET,
                                 accepts_doubtful=True))  # fmt: skip
    assert [one.outcome for one in kept] == ["new"], kept
    forecast_windows(counter.store, counter.shop_id, NOW, [counter.vehicle_id])
    plan_texts(counter.store, counter.shop_id, LEAVES)
    (invite,) = [one for one in counter.texts() if one["kind"] == "invite"]
    return invite


def _words(counter: Counter, row: Row) -> str:
    with counter.store.read() as connection:
        text = body_of(connection, counter.shop(), row, LEAVES).text
        facts = facts_of(connection, counter.shop(), row, LEAVES)
    assert check_wording(text, row["reason"], row["language"], facts) == []
    return text


WASHER_LINES = {
    "en": "before winter we top off washer fluid (up to full) on your blue wagon at no charge. Just come by",
    "es": "antes del invierno le ponemos a su blue wagon agua del limpiaparabrisas (hasta llenar) sin costo.",
}


@pytest.mark.parametrize("language", ["en", "es"])
def test_washer_fluid_before_winter(counter: Counter, language: str) -> None:
    row = _invite(counter, language, {"item": "lights", "found_as": "works"})
    assert (row["reason"], row["asks"]) == ("winter_top_off", "walk_in")
    assert WASHER_LINES[language] in _words(counter, row)
    assert plan_texts(counter.store, counter.shop_id, LEAVES) == 0
    assert (
        keep_top_off(counter.store, counter.shop_id, counter.vehicle_id, ["washer_fluid"], "", None, "Noor", LEAVES)
        == {}
    )
    assert [one["state"] for one in counter.texts() if one["id"] == row["id"]] == ["dropped"]


@pytest.mark.parametrize("language", ["en", "es"])
def test_a_look_at_the_battery_is_booked_as_a_look(counter: Counter, language: str) -> None:
    row = _invite(counter, language, WEAK_BATTERY)
    assert (row["reason"], row["asks"]) == ("winter_battery", "visit")
    check = {"en": "We can check it for you.", "es": "La revisamos si gusta."}[language]
    assert check in _words(counter, row)
    request_id = counter.ask(items=[["battery", ""]], reason_id=row["reason_id"], state="confirmed", slot_at=LEAVES)
    counter.plan("confirmation", "booked", request_id=request_id)
    (confirmation,) = [one for one in counter.texts() if one["reason"] == "confirmation"]
    assert ", for a battery check." in _words(counter, {**confirmation, "language": "en"})
