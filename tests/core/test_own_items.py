"""Items that a shop adds as rows: what they become, what is refused, and that a shipped item entered once more as a row
is forecast like it (an outside check of the way from a row to a window)."""

from __future__ import annotations

import json
from dataclasses import replace
from datetime import date, timedelta
from typing import Any

import pytest

from followup.core.forecast.due import forecast_cars
from followup.core.forecast.explain import explain
from followup.core.forecast.history import history_of_lines
from followup.core.forecast.window import DueWindow
from followup.core.inspection import BadLine, read_line
from followup.core.item import Catalogue, Item
from followup.core.items import ALL, BY_CODE, catalogue_of
from followup.core.own_item import FOUND, KINDS, LANGUAGES, PREFIX, UNITS, item_of
from followup.core.own_item_check import BadItem, code_of, read_own_item
from followup.core.shop import Shop
from followup.wording.shipped import LANGUAGES as TEXT_LANGUAGES
from followup.wording.shipped import phrase_file
from tests.core.forecast.told import NOW
from tests.core.lines import line_text
from tests.core.own_rows import CHARGE, CLICKS, EVERY_KIND, ROWS, USUAL, WORDS_EN, reading

every_row = pytest.mark.parametrize("row", EVERY_KIND, ids=lambda row: row["name"])
MEASURED = {**USUAL, "name": "Net", "kind": "looks", "looks": ["dirty"]}


def item(row: dict[str, Any]) -> Item:
    """The item of a row."""
    return item_of(read_own_item(row))


def faults(**changes: Any) -> dict[str, str]:
    """What is wrong with a good row after these changes, by field."""
    row = {**ROWS["brake_shoe"], **changes}
    with pytest.raises(BadItem) as bad:
        read_own_item({name: value for name, value in row.items() if value is not None})
    return {one.field: one.says for one in bad.value.faults}


def forecast(catalogue: Catalogue, readings: dict[str, list[dict[str, Any]]], **line: Any) -> list[DueWindow]:
    """The windows of one car that was read on these days; 12,000 miles a year."""
    lines = []
    for on, told in readings.items():
        miles = 12_000 * (date.fromisoformat(on) - date(2023, 1, 1)).days / 365.25
        vehicle = {"id": "V-1", "powertrain": "gasoline", "first_used_on": "2023-01-01"}
        changes = {"inspection": f"I-{on}", "inspected_at": f"{on}T09:00", "vehicle": vehicle, "readings": told, **line}
        lines.append(read_line(line_text(odometer=round(miles), unit="mi", **changes), NOW, catalogue))
    return forecast_cars(history_of_lines(lines, catalogue), date.fromisoformat(max(readings)) + timedelta(days=20))


@every_row
def test_a_row_comes_back_as_it_was_kept(row: dict[str, Any]) -> None:
    own = read_own_item(row)
    kept = json.loads(json.dumps(own.row()))
    assert read_own_item(kept) == own == type(own).of_row(kept)


def test_every_kind_has_a_row_in_these_tests() -> None:
    assert {row["kind"] for row in EVERY_KIND} == set(KINDS)
    assert LANGUAGES == TEXT_LANGUAGES


@pytest.mark.parametrize("shipped", ROWS)
def test_a_shipped_item_entered_as_a_row_is_the_same_item(shipped: str) -> None:
    """But for its code, its words, and what no row says: how it is taken where there are several ways."""
    one, own = BY_CODE[shipped], item(ROWS[shipped])
    same = ["positions", "is_brakes_or_tires", "is_top_off_free", "is_forecast", "part", "powertrains"]
    same += ["unit", "falls", "action_limit"] if own.unit else []
    assert {name: getattr(own, name) for name in same} == {name: getattr(one, name) for name in same}
    assert own.code.startswith(PREFIX)


@pytest.mark.parametrize("shipped", [code for code in ROWS if BY_CODE[code].is_forecast])
def test_a_shipped_item_entered_as_a_row_has_the_same_window(shipped: str) -> None:
    """Two readings of both, of the same car on the same days: the same dates, chances and reasons."""
    row, own = ROWS[shipped], item(ROWS[shipped])
    catalogue = {**BY_CODE, own.code: own}
    found = []
    for code in (shipped, own.code):
        first, second = reading(row, code, 2, 24_000), reading(row, code, 2.4, 28_800)
        if code == "brake_fluid":
            both = (first, second)
            first, second = ({"item": code, "unit": "percent", "water_percent": one["value"]} for one in both)
        windows = forecast(catalogue, {"2025-01-07": [first], "2025-06-01": [second]})
        found.append([replace(one, item="") for one in windows])
    assert found[0] == found[1] and len(found[0]) == 1
    assert found[0][0].early is not None and not found[0][0].is_past


def test_what_rises_with_the_miles_is_due_when_its_way_is_gone() -> None:
    """Closed form: 18 clicks at .3 in 1,000 miles are 60,000 miles, five years at 12,000 a year, from 2023-01-01; the
    medians lie near it and the window around it."""
    own = item(CLICKS)
    readings = {
        f"{year}-01-01": [reading(CLICKS, own.code, year - 2023, 12_000.0 * (year - 2023))]
        for year in (2024, 2025, 2026)
    }
    (window,) = forecast({own.code: own}, readings)
    assert window.likely is not None and window.early is not None and window.late is not None
    assert abs(window.likely - date(2028, 1, 1)) < timedelta(days=120)
    assert window.early < date(2028, 1, 1) < window.late
    assert isinstance(window.now, float) and 2 < window.now < 20
    assert window.because.unit == "clicks per 1000 mi"
    assert "wearing 1 clicks every" in explain(window)


def test_what_falls_with_time_is_due_when_its_way_is_gone() -> None:
    """Closed form: from 9 V to 6 V at 1.5 V a year are two years after its change."""
    own = item(CHARGE)
    readings = {"2026-11-01": [{**reading(CHARGE, own.code, 1), "changed_on": "2025-11-01"}]}
    (window,) = forecast({own.code: own}, readings)
    assert window.likely is not None and abs(window.likely - date(2027, 11, 1)) < timedelta(days=60)
    assert window.because.unit == "V a year"
    assert "falling about 1.5 V a year" in explain(window)
    told = {"2026-11-01": [{"item": own.code, "changed_on": "2025-11-01"}]}
    (unread,) = forecast({own.code: own}, told)
    assert unread.likely is not None and abs(unread.likely - date(2027, 11, 1)) < timedelta(days=60)


@every_row
def test_a_line_with_an_own_item_is_read_by_the_shops_catalogue_alone(row: dict[str, Any]) -> None:
    own = item(row)
    shop = Shop(1, "Elm Street Auto", "America/Chicago", "+13125550101", "+13125550100", own_items=(own,))
    line = line_text(readings=[reading(row, own.code, 1, 12_000)], vehicle={"id": "V-1", "powertrain": "gasoline"})
    assert read_line(line, NOW, catalogue_of(shop))
    with pytest.raises(BadLine, match=f'there is no item "{own.code}"'):
        read_line(line, NOW, BY_CODE)


def test_codes_are_made_from_names_and_never_collide() -> None:
    assert code_of("Roof rack bolts", ()) == "own_roof_rack_bolts"
    assert code_of("Roof  Rack; bolts!", {"own_roof_rack_bolts"}) == "own_roof_rack_bolts_2"
    assert code_of("Enganche (bola) nº 2", ()) == "own_enganche_bola_no_2"
    assert code_of("汽车", ()) == "own_item"
    assert not any(one.code.startswith(PREFIX) for one in ALL)
    taken: set[str] = set()
    for _ in range(30):
        taken.add(code_of("Brake pad", taken))
    assert len(taken) == 30 and not taken & set(BY_CODE)
    assert "code" in faults(code="brake_pad") and "code" in faults(code="own_<b>")
    with pytest.raises(BadItem, match="there already"):
        read_own_item({**ROWS["brake_shoe"], "code": "own_x"}, {"own_x"})


def test_everything_that_is_wrong_is_told_at_once_with_its_field() -> None:
    wrong = faults(name="", part="roof", unit="mm", least=12, most=0, hours=0, skill="magic", looks=["shiny"], en={})
    assert {"name", "part", "most", "hours", "skill", "looks", "en.name", "en.what", "en.why", "en.work"} <= set(wrong)


@pytest.mark.parametrize(
    ("changes", "field"),
    [
        ({"new_value": 1.5}, "new_value"),
        ({"direction": "rises"}, "new_value"),
        ({"legal_limit": 3}, "legal_limit"),
        ({"action_limit": 40}, "action_limit"),
        ({"action_limit": None}, "action_limit"),
        ({"per_1000_miles": 35}, "per_1000_miles"),
        ({"per_1000_miles": -1}, "per_1000_miles"),
        ({"per_1000_miles": "fast"}, "per_1000_miles"),
        ({"per_1000_miles": True}, "per_1000_miles"),
        ({"per_1000_miles": float("nan")}, "per_1000_miles"),
        ({"per_year": 1}, "per_year"),
        ({"months": 4}, "months"),
        ({"found": "works"}, "found"),
        ({"unit": "%"}, "unit"),
        ({"unit": "mi"}, "unit"),
        ({"unit": "<b>"}, "unit"),
        ({"unit": "clicks"}, "en.number"),
        ({"positions": ["rear", "rear_left"]}, "positions"),
        ({"positions": ["roof"]}, "positions"),
        ({"positions": "rear"}, "positions"),
        ({"positions": []}, "by_axle"),
        ({"powertrains": ["steam"]}, "powertrains"),
        ({"is_top_off_free": True}, "is_top_off_free"),
        ({"spreads": {"new_spread": 0}}, "spreads.new_spread"),
        ({"spreads": {"luck": 1}}, "spreads.luck"),
        ({"name": "a\nb"}, "name"),
        ({"name": "x" * 41}, "name"),
        ({"colour": "blue"}, "colour"),
        ({"en": {**WORDS_EN, "ahead": "may be due"}}, "en.ahead"),
        ({"en": {**WORDS_EN, "name": "{{ shop }}"}}, "en.name"),
        ({"en": {**WORDS_EN, "name": "shoe {position}"}}, "en.name"),
        ({"en": {**WORDS_EN, "slogan": "best"}}, "en.slogan"),
        ({"es": {**WORDS_EN}}, "es.ending"),
        ({"es": {**WORDS_EN, "ending": "x"}}, "es.ending"),
        ({"es": "zapata"}, "es"),
    ],
)
def test_what_cannot_be_is_refused_where_it_was_typed(changes: dict[str, Any], field: str) -> None:
    assert field in faults(**changes)


def test_a_level_takes_months_or_miles_and_an_interval_one_of_them() -> None:
    level = {**ROWS["coolant"], "miles": 8_000}
    with pytest.raises(BadItem, match="not both"):
        read_own_item(level)
    with pytest.raises(BadItem, match="months"):
        read_own_item({**ROWS["oil_service"], "months": None, "miles": None})
    assert read_own_item({**ROWS["oil_service"], "months": None}).months is None


def test_what_is_measured_but_not_forecast_needs_its_range_and_limit() -> None:
    with pytest.raises(BadItem) as bad:
        read_own_item({**MEASURED, "unit": "mm"})
    assert {"least", "most", "action_limit"} <= {one.field for one in bad.value.faults}
    assert item(MEASURED).unit is None


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_unit_and_state_that_can_be_chosen_has_words(language: str) -> None:
    shared = phrase_file(language, "phrases")
    assert {one for units in UNITS.values() for one in units} <= set(shared["units"])
    assert {one for states in FOUND.values() for one in states} <= set(shared["found"])


def test_a_row_of_a_file_needs_no_words() -> None:
    row = {name: value for name, value in ROWS["brake_shoe"].items() if name not in LANGUAGES}
    assert read_own_item(row, needs_words=False).words == {}
    assert not item_of(read_own_item(row, needs_words=False)).is_named
    assert item(ROWS["brake_shoe"]).is_named
