"""What a customer reads of an advisory: numbers with their day and a suggestion, no cause and no fright."""

from __future__ import annotations

import itertools
import re
from datetime import date

import pytest

from followup.core.advisories import BOUNDS, Advisory
from followup.core.segments import beyond_gsm7
from followup.core.wording_checks import check_wording
from followup.core.wording_facts import sample_facts
from followup.wording import LANGUAGES, advisory_fact, render
from followup.wording.shipped import phrase_file
from tests.core.advisories.cars import ALL_WHEEL, CAR, found, in_mm, pad, tread

every_language = pytest.mark.parametrize("language", LANGUAGES)
TODAY = date(2026, 3, 20)
CAUSES = {
    "en": ("toe", "camber", "inflat", "seized", "stuck", "bent", "caus", "wrong", "bad", "worn"),
    "es": ("convergencia", "camber", "presi", "pegad", "trabad", "chuec", "causa", "mal ", "gastad"),
}


def _all_of_them() -> list[Advisory]:
    uneven = [tread("front_left", 7, 7, 3), tread("front_right", 8), tread("rear_left", 8), tread("rear_right", 8)]
    pads = [pad("front_left", inner=4, outer=7.5), pad("front_right", value=8), pad("rear_right", inner=6, outer=3)]
    metric = [tread("rear_left", *(round(in_mm(one), 1) for one in (9, 5, 9)), unit="mm")]
    return [
        *found(*uneven, *pads, car=ALL_WHEEL),
        *found(*metric),
        *found(*[tread(place, depth) for place, depth in (("front_left", 4), ("front_right", 5), ("rear_left", 8),
                                                          ("rear_right", 7))], car=CAR),
    ]  # fmt: skip


def test_every_rule_has_its_words_in_every_language() -> None:
    for language in LANGUAGES:
        phrases = phrase_file(language, "advisories")
        assert set(phrases) == {one.code for one in BOUNDS}
        assert all(set(one) == {"item", "line", "work"} for one in phrases.values())
    assert {one.code for one in _all_of_them()} == {one.code for one in BOUNDS}


@every_language
def test_each_reads_well_wherever_items_are_named(language: str) -> None:
    for advisory, reason in itertools.product(_all_of_them(), ("due_work", "explain", "judgment", "done_noted")):
        fact = advisory_fact(language, advisory, drives_on_right=True, today=TODAY)
        assert set(fact) == set(sample_facts("due_work", language)["items"][0])
        for entries in ([fact], [*sample_facts(reason, language)["items"], fact]):
            facts = sample_facts(reason, language) | {"items": entries}
            text = render(reason, language, facts)
            assert check_wording(text, reason, language, facts) == [], text
            assert not re.search(r"[{}]|\s[.,:?!]|  ", text), text
            assert beyond_gsm7(text) == (), text


@every_language
def test_none_names_a_cause(language: str) -> None:
    for advisory in _all_of_them():
        fact = advisory_fact(language, advisory, drives_on_right=True, today=TODAY)
        said = f"{fact['line']} {fact['work']}".lower()
        assert not [one for one in CAUSES[language] if one in said], said
        assert "%" not in said


@pytest.mark.parametrize(
    ("key", "en", "es"),
    [
        (
            "pad_inner_outer front_left",
            "Front brake pads: 4 mm and 7.5 mm on March 2, we suggest a look at both",
            "Pastillas de freno delanteras: 4 mm y 7.5 mm el 2 de marzo, sugerimos ver las dos",
        ),
        (
            "tire_across front_left",
            "Driver's side front tire: 3/32 to 7/32 on March 2, we suggest an alignment check",
            "Llanta delantera del conductor: de 3/32 a 7/32 el 2 de marzo, sugerimos ver si toca alinear",
        ),
        (
            "tire_across rear_left",
            "Driver's side rear tire: 4 mm to 7.1 mm on March 2, we suggest an alignment check",
            "Llanta trasera del conductor: de 4 mm a 7.1 mm el 2 de marzo, sugerimos ver si toca alinear",
        ),
        (
            "tire_axle front",
            "Front tires: 3/32 and 8/32 on March 2, we suggest an alignment check",
            "Llantas delanteras: 3/32 y 8/32 el 2 de marzo, sugerimos ver si toca alinear",
        ),
        (
            "tire_four",
            "Tires: 3/32 to 8/32 on March 2, the four go together, so we suggest measuring them again",
            "Llantas: de 3/32 a 8/32 el 2 de marzo, las cuatro van juntas y sugerimos medir otra vez",
        ),
        (
            "tire_rotation",
            "Tires: 4/32 in front and 7/32 at the rear on March 2, we suggest a rotation",
            "Llantas: 4/32 en las delanteras y 7/32 en las traseras el 2 de marzo, sugerimos rotar",
        ),
    ],
)
def test_what_was_measured_is_told_with_its_day(key: str, en: str, es: str) -> None:
    advisory = next(one for one in reversed(_all_of_them()) if one.key == key)
    assert advisory_fact("en", advisory, drives_on_right=True, today=TODAY)["line"] == en
    assert advisory_fact("es", advisory, drives_on_right=True, today=TODAY)["line"] == es


def test_where_people_drive_on_the_left_the_driver_sits_on_the_right() -> None:
    (advisory,) = found(tread("front_left", 7, 7, 3))
    line = advisory_fact("en", advisory, drives_on_right=False, today=TODAY)["line"]
    assert line.startswith("Passenger side front tire")
