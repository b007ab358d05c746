"""The area codes of the states whose hours narrow, held against the data of places that `phonenumbers` has."""

from __future__ import annotations

from collections import defaultdict
from importlib import import_module

import phonenumbers

from followup.core.planning.state_hours import AREA_CODES, BY_STATE, state_of

NAMES = {
    "AL": "Alabama", "CT": "Connecticut", "FL": "Florida", "KY": "Kentucky", "LA": "Louisiana", "MA": "Massachusetts",
    "MD": "Maryland", "MI": "Michigan", "MN": "Minnesota", "MS": "Mississippi", "NM": "New Mexico", "NV": "Nevada",
    "OK": "Oklahoma", "OR": "Oregon", "PA": "Pennsylvania", "RI": "Rhode Island", "SD": "South Dakota", "TX": "Texas",
    "UT": "Utah",
}  # fmt: skip


def _places() -> dict[str, set[str]]:
    """What the library calls the places of each area code, like `Texas` or `Austin, TX`."""
    found: dict[str, set[str]] = defaultdict(set)
    for number in range(4):  # the parts that hold the numbers of +1
        for prefix, words in import_module(f"phonenumbers.geodata.data{number}").data.items():
            if prefix.startswith("1") and len(prefix) >= 4:
                found[prefix[1:4]].add(words.get("en", ""))
    return found


def test_every_area_code_of_a_state_is_there_and_none_of_another() -> None:
    places = _places()
    for state, name in NAMES.items():
        listed = set(AREA_CODES[state].split())
        known = {
            area for area, words in places.items() if any(one == name or one.endswith(f", {state}") for one in words)
        }
        assert known <= listed, f"{state} has {sorted(known - listed)} too"
        for area in listed & set(places):
            assert area in known, f"{area} is not of {state}: {sorted(places[area])[:3]}"


def test_every_state_that_narrows_has_its_area_codes_once() -> None:
    assert set(AREA_CODES) == set(BY_STATE) == set(NAMES)
    codes = [area for areas in AREA_CODES.values() for area in areas.split()]
    assert len(codes) == len(set(codes))
    valid = [area for area in codes if phonenumbers.is_valid_number(phonenumbers.parse(f"+1{area}5550147"))]
    assert len(valid) >= len(codes) - 3, "three are assigned but not in use yet"


def test_only_such_numbers_have_a_state() -> None:
    assert state_of("+18595550147") == "KY"
    assert state_of("+13125550147") is None, "Illinois narrows nothing"
    assert state_of("+442079460018") is None
