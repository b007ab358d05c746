"""An advisory from the inspection to the text and the booking: told in an invite that leaves anyway, in both languages,
gone where the work was done before it left."""

from __future__ import annotations

import json
from datetime import datetime
from typing import Any
from zoneinfo import ZoneInfo

import pytest

from followup.core.wording_checks import check_wording
from followup.storage import inspections, pictures
from followup.storage.advisories import advisories_of_vehicle
from followup.storage.rows import Row
from followup.workflows.keep_inspections import keep_inspections
from followup.workflows.plan_texts import look_at_plan, plan_texts
from followup.workflows.send_texts.body import body_of, facts_of
from tests.workflows import counter as counters
from tests.workflows.counter import NOW, SECRET, Counter

# A Tuesday, 11:00 at the shop: invites may leave.
LEAVES = datetime(2026, 11, 24, 17, 0, tzinfo=ZoneInfo("UTC"))
READ = [
    {"item": "tire_tread", "position": "front_left", "unit": "32nds", "across": [8, 8, 5]},
    {"item": "tire_tread", "position": "front_right", "unit": "32nds", "across": [7, 7, 7]},
    {"item": "wiper_blade", "position": "front", "looks": "streaks"},
]  # fmt: skip


@pytest.fixture
def counter(database_url: str) -> Counter:
    """The shop with its customer."""
    return counters.open_counter(database_url)


def _read(counter: Counter, language: str = "en", **others: Any) -> None:
    from followup.workflows.forecast_windows import forecast_windows

    told = json.loads(counters.line(inspection="I-2", inspected_at="2026-11-02T09:10", readings=READ, **others))
    told["customer"]["language"] = language
    kept = list(keep_inspections(counter.store, counter.shop_id, [json.dumps(told)], NOW, "test", SECRET,
                                 accepts_doubtful=True))  # fmt: skip
    assert [one.outcome for one in kept] == ["new"], kept
    forecast_windows(counter.store, counter.shop_id, NOW, [counter.vehicle_id])


def _invite(counter: Counter) -> Row:
    plan_texts(counter.store, counter.shop_id, LEAVES)
    (invite,) = [one for one in counter.texts() if one["kind"] == "invite"]
    return invite


def _words(counter: Counter, row: Row, now: datetime = LEAVES) -> str:
    with counter.store.read() as connection:
        return body_of(connection, counter.shop(), row, now).text


LINES = {
    "en": "Driver's side front tire: 5/32 to 8/32 on November 2, we suggest an alignment check.",
    "es": "Llanta delantera del conductor: de 5/32 a 8/32 el 2 de noviembre, sugerimos ver si toca alinear.",
}


@pytest.mark.parametrize("language", ["en", "es"])
def test_the_invite_tells_it_and_books_hours_for_it(counter: Counter, language: str) -> None:
    _read(counter, language)
    row = _invite(counter)
    assert row["facts"]["advised"] == ["tire_across front_left"]
    assert ["alignment", ""] in row["facts"]["items"]
    text = _words(counter, row)
    assert LINES[language] in text
    with counter.store.read() as connection:
        facts = facts_of(connection, counter.shop(), row, LEAVES)
    assert check_wording(text, "due_work", language, facts) == []
    # What the invite is about stands first.
    assert text.index({"en": "Front wiper blades", "es": "impiaparabrisas"}[language]) < text.index(LINES[language])


def test_the_plan_and_the_page_say_the_same_before_it_is_planned(counter: Counter) -> None:
    _read(counter)
    """Planned for the whole shop it is the same text as planned for the phone."""
    (plan,) = look_at_plan(counter.store, counter.shop_id, LEAVES)
    assert plan.decision.text is not None
    assert plan.decision.text.advised == ("tire_across front_left",)
    assert "told along: left front tire" in plan.decision.text.because


def test_work_that_was_done_before_it_left_is_not_told(counter: Counter) -> None:
    _read(counter)
    row = _invite(counter)
    with counter.store.write() as connection:
        inspections.add_work(
            connection, shop_id=counter.shop_id, vehicle_id=counter.vehicle_id, item="alignment", position="",
            did="adjusted", on=LEAVES.date(), odometer_miles=None, moved=None, kept_at=LEAVES, inspection_id=None,
            visit_id=None,
        )  # fmt: skip
    text = _words(counter, row)
    assert "align" not in text
    assert "iper blades" in text


def test_a_no_rests_it_and_leaves_the_rest(counter: Counter) -> None:
    _read(counter)
    said = counter.write_in("no alignment please")
    with counter.store.write() as connection:
        inspections.add_rest(
            connection, shop_id=counter.shop_id, vehicle_id=counter.vehicle_id, item="alignment", position="",
            because="no", from_on=LEAVES.date(), until=None, inbound_id=said,
        )  # fmt: skip
    row = _invite(counter)
    assert "advised" not in row["facts"]
    assert row["facts"]["items"] == [["wiper_blade", "front"]]
    assert "align" not in _words(counter, row)


def test_the_whole_shop_is_planned_without_looking_at_readings(counter: Counter) -> None:
    _read(counter)
    with counter.store.read() as connection:
        assert pictures.gather(connection, counter.shop_id, LEAVES).advisories == {}
        found = advisories_of_vehicle(connection, counter.shop(), counter.vehicle_id, LEAVES.date())
    assert [one.key for one in found] == ["tire_across front_left"]


def test_who_asks_what_it_is_gets_its_plain_words(counter: Counter) -> None:
    """The thread is about what the invite told: its note of the day, and what an alignment is."""
    _read(counter)
    invite = _invite(counter)
    asked = counter.plan("explain", "asked", facts={name: invite["facts"][name] for name in ("items", "advised")})
    row = next(one for one in counter.texts() if one["id"] == asked)
    text = _words(counter, row)
    assert "Alignment sets the angle of the wheels." in text
    assert "Our note on your blue wagon of November 2: 5/32, 8/32." in text
