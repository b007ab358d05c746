"""Every reason has a template and every item a phrase file in every language, and all pass the checks."""

import itertools
import re
import tomllib
from datetime import date
from pathlib import Path

import pytest

from followup.core.item import Item
from followup.core.items import ALL, BY_CODE
from followup.core.segments import beyond_gsm7, segments
from followup.core.text import REASONS, Reason
from followup.core.wording_checks import check_wording
from followup.core.wording_facts import EVERYWHERE, FACTS, FACTS_OF, sample_facts
from followup.wording import (
    LANGUAGES,
    check_template,
    consent_words,
    item_fact,
    item_phrases,
    measured_phrase,
    render,
    review,
    service_fact,
    shipped,
)
from followup.wording.phrases import item_name
from followup.wording.shipped import folder, phrase_file

every_language = pytest.mark.parametrize("language", LANGUAGES)
every_reason = pytest.mark.parametrize("reason", REASONS, ids=lambda reason: reason.code)
every_item = pytest.mark.parametrize("item", ALL, ids=lambda item: item.code)


@every_language
@every_reason
def test_every_reason_says_what_it_may_and_must(reason: Reason, language: str) -> None:
    assert review(shipped(language, reason.code), reason.code, language) == []


@every_language
@every_reason
def test_each_optional_fact_alone_gives_a_text_that_passes(reason: Reason, language: str) -> None:
    """All facts and none are looked at by `review`; a condition in a template may still break on one of them."""
    whole = sample_facts(reason.code, language)
    bare = sample_facts(reason.code, language, is_full=False)
    for name in (*EVERYWHERE.may, *FACTS_OF[reason.code].may):
        facts = bare | {name: whole[name]}
        text = render(reason.code, language, facts)
        assert check_wording(text, reason.code, language, facts) == [], (name, text)
        assert not re.search(r"\s[.,:?!]|\.\.|,\.|\(\)|  |[{}%]", text), (name, text)


@every_language
@every_reason
def test_no_shipped_text_leaves_the_plain_alphabet(reason: Reason, language: str) -> None:
    """Spanish too: its words are chosen among those without á, í, ó, ú, which an SMS's plain alphabet lacks."""
    assert beyond_gsm7(shipped(language, reason.code).replace("{", "").replace("}", "")) == ()


@every_reason
def test_texts_are_short(reason: Reason) -> None:
    """Aimed at: two segments for an invite, three for any other text, with all sample facts."""
    for is_full in (True, False):
        text = render(reason.code, "en", sample_facts(reason.code, "en", is_full=is_full))
        assert segments(text).count <= (2 if reason.kind == "invite" else 3)


def test_every_reason_has_its_facts_and_every_fact_a_reason() -> None:
    assert set(FACTS_OF) == {reason.code for reason in REASONS}
    used = {name for own in (EVERYWHERE, *FACTS_OF.values()) for name in (*own.needs, *own.may)}
    assert used == set(FACTS)


@every_language
def test_no_template_lies_there_without_a_reason(language: str) -> None:
    assert {path.stem for path in (folder() / language).glob("*.txt")} == {reason.code for reason in REASONS}
    assert {path.stem for path in (folder() / language / "items").glob("*.toml")} == {item.code for item in ALL}


def test_every_language_has_the_same_phrases() -> None:
    first, *others = (phrase_file(language, "phrases") for language in LANGUAGES)
    for other in others:
        assert first.keys() == other.keys()
        for key in ("positions", "units", "found", "amounts", "needs"):
            assert first[key].keys() == other[key].keys()


@every_language
@every_item
def test_every_item_reads_well_in_every_text_that_names_items(item: Item, language: str) -> None:
    looked_on, due_on = date(2026, 3, 2), date(2026, 7, 1)
    value = measured_phrase(language, item, 5.0, item.unit)
    lines = [
        item_fact(language, item, positions=item.positions[:1], measured=value, measured_on=looked_on, due_on=due_on),
        item_fact(language, item, positions=item.positions, done_on=looked_on, due_on=due_on),
        item_fact(language, item, positions=item.positions, measured=value, measured_on=looked_on, is_at_limit=True),
    ]
    for line, reason_code in itertools.product(lines, ("due_work", "explain", "judgment", "done_noted")):
        facts = sample_facts(reason_code, language) | {"items": [line]}
        text = render(reason_code, language, facts)
        assert check_wording(text, reason_code, language, facts) == [], text
        assert not re.search(r"[{}]|\s[.,:?!]|  ", text)
    assert all(line["what"] and line["why"] and line["work"] for line in lines)


@every_language
@every_item
def test_everything_that_can_be_found_has_words(item: Item, language: str) -> None:
    found = phrase_file(language, "phrases")["found"]
    for field in item.fields:
        # What kind of spare there is, is nothing that was found out about it.
        if field.kind == "choice" and field.name != "kind":
            assert set(field.choices) <= set(found), field.name
    assert item.unit is None or item.unit in phrase_file(language, "phrases")["units"]


def test_an_item_at_its_positions() -> None:
    assert item_name("en", BY_CODE["tire_tread"], ("front_left",)) == "driver's side front tire"
    assert item_name("en", BY_CODE["tire_tread"], ("front_left",), drives_on_right=False) == "passenger side front tire"
    assert item_name("en", BY_CODE["tire_tread"], ("front_right", "front_left")) == "front tires"
    assert item_name("en", BY_CODE["tire_tread"], ("rear_left", "front_left", "rear_right", "front_right")) == "tires"
    assert item_name("en", BY_CODE["brake_pad"], ("rear_left",)) == "rear brake pads"
    assert item_name("es", BY_CODE["tire_tread"], ("front_left",)) == "llanta delantera del conductor"
    assert item_name("es", BY_CODE["tire_tread"], ("rear_left", "rear_right")) == "llantas traseras"
    assert item_name("es", BY_CODE["brake_rotor"], ("front_left",)) == "discos de freno delanteros"


def test_a_reading_in_words() -> None:
    assert measured_phrase("en", BY_CODE["tire_tread"], 5.0, "32nds") == "5/32"
    assert measured_phrase("es", BY_CODE["brake_pad"], 4.0, "mm") == "4 mm"
    assert measured_phrase("en", BY_CODE["wiper_blade"], "streaks") == "leaving streaks"
    # A percentage never stands in a text: the line then says only when the item was looked at.
    assert measured_phrase("en", BY_CODE["battery"], 70.0, "percent") == ""
    line = item_fact("en", BY_CODE["battery"], measured="", measured_on=date(2026, 3, 2), due_on=date(2026, 11, 5))[
        "line"
    ]
    assert line == "Battery: checked on March 2, may be due around November"


def test_that_is_where_points_at_a_number_and_falls_away_without_one() -> None:
    seen = date(2026, 9, 25)
    line = item_fact("en", BY_CODE["brake_fluid"], measured_on=seen, is_at_limit=True)["line"]
    assert line == "Brake fluid: checked on September 25, we suggest new fluid"
    line = item_fact("es", BY_CODE["brake_pad"], measured="3 mm", measured_on=seen, is_at_limit=True)["line"]
    assert line == "Pastillas de freno: 3 mm el 25 de septiembre, con eso sugerimos el cambio"


def test_a_free_service_says_how_much() -> None:
    assert service_fact("en", BY_CODE["washer_fluid"]) == {"name": "washer fluid", "amount": "up to full"}
    assert service_fact("es", BY_CODE["engine_oil"], "up to 1 quart") == {
        "name": "aceite del motor",
        "amount": "hasta 1 cuarto",
    }


@every_language
def test_the_consent_form_names_the_shop_and_what_is_agreed_to(language: str) -> None:
    """What the agreement has to hold: 47 CFR 64.1200(f)(9), and the carriers' messaging principles (CTIA, 5)."""
    words = consent_words(language, "Quill Lane Garage", "(312) 555-0147")
    assert words.version
    assert "Quill Lane Garage" in words.visits and "Quill Lane Garage" in words.upkeep
    assert "(312) 555-0147" in words.notes
    everything = " ".join((words.visits, words.upkeep, words.notes, words.own_number))
    assert "{" not in everything
    for said in {
        "en": ("automatic system", "not have to agree", "rates", "STOP", "HELP", "how many", "my own", "adult"),
        "es": ("sistema automático", "No es condición", "tarifas", "ALTO", "AYUDA", "cantidad", "mío", "mayor de edad"),
    }[language]:
        assert said.lower() in everything.lower()


def test_templates_are_found_inside_a_wheel_too() -> None:
    """The wheel's table of contents puts them where `folder` looks first."""
    told = tomllib.loads((Path(__file__).parents[2] / "pyproject.toml").read_text(encoding="utf-8"))
    sources = told["tool"]["hatch"]["build"]["targets"]["wheel"]["sources"]
    assert sources["message_templates"] == "followup/_shipped/message_templates"
    assert folder().is_dir()


@every_reason
def test_every_shipped_template_passes_the_allow_list(reason: Reason) -> None:
    for language in LANGUAGES:
        assert check_template(shipped(language, reason.code), reason.code) == []


@every_language
@every_item
def test_phrase_files_hold_no_unknown_key(item: Item, language: str) -> None:
    known = {*item_phrases(language, item).__dataclass_fields__, "by_axle", "units"}
    assert set(phrase_file(language, f"items/{item.code}")) <= known
