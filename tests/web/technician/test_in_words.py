"""What was read last and when an item may be due, as a technician reads it beside the field. Days are written as on the
other pages (month, day, year); what is no number in the reading's own unit says what it is (common practice)."""

from __future__ import annotations

import json
from datetime import date
from types import SimpleNamespace
from typing import Any, cast

import pytest

from followup.core.forecast.window import DueWindow
from followup.core.inspection import Reading
from followup.web.sheet import said
from followup.web.technician.result import NO_DATE, due_words

READINGS: list[tuple[dict[str, Any], str]] = [
    ({"item": "tire_tread", "unit": "32nds", "across": [6, 6, 5], "looks": "cupped"}, "6/6/5 32nds, cupped"),
    ({"item": "brake_pad", "unit": "mm", "inner": 4, "outer": 5}, "inner 4, outer 5 mm"),
    ({"item": "brake_rotor", "unit": "mm", "value": 24.2, "minimum": 23}, "24.2, least 23 mm"),
    ({"item": "brake_fluid", "water_percent": 2.4, "changed_on": "2024-03-18"}, "2.4 % water, changed Mar 18, 2024"),
    (
        {"item": "oil_service", "unit": "mi", "life_percent": 29, "done_on": "2025-12-08", "done_odometer": 17_287},
        "29 % oil life left, done Dec 8, 2025, at 17,287 mi",
    ),
    ({"item": "battery", "volts": 12.6, "cca": 545, "cca_rated": 640, "verdict": "good"},
     "good, 12.6 V, 545 CCA, rated 640"),
    ({"item": "tire_age", "date_code": "3923"}, "date code 3923"),
    ({"item": "registration_sticker", "good_until": "2027-04"}, "good until Apr 2027"),
    ({"item": "tire_tread", "not_checked": "no_lift"}, "not checked: no lift"),
]  # fmt: skip


@pytest.mark.parametrize(("told", "words"), READINGS, ids=[one["item"] for one, _ in READINGS])
def test_a_reading_says_what_each_of_its_numbers_is(told: dict[str, Any], words: str) -> None:
    assert sorted(said(Reading.model_validate_json(json.dumps(told))).split(", ")) == sorted(words.split(", "))


def window(early: date | None, late: date | None) -> DueWindow:
    """A window that is not past, with these days."""
    return cast(DueWindow, SimpleNamespace(early=early, late=late, is_past=False))


def test_a_wide_window_says_from_when_it_may_be_due() -> None:
    """The reasons below the table name a likely day: `no date` beside it would contradict them."""
    assert due_words(window(date(2027, 1, 5), date(2027, 1, 30)), False) == "around Jan 2027"
    assert due_words(window(date(2027, 1, 5), date(2027, 6, 1)), False) == "between Jan 2027 and Jun 2027"
    assert due_words(window(date(2027, 1, 5), date(2029, 6, 1)), False) == "Jan 2027 or later"
    assert due_words(window(date(2027, 1, 5), None), False) == "Jan 2027 or later"
    assert due_words(window(None, None), False) == NO_DATE
