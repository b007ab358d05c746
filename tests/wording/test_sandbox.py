"""Hostile templates are refused before they are compiled, and what is rendered is plain, short and filled in."""

import contextlib

import pytest
from hypothesis import given
from hypothesis import strategies as st

from followup.core.wording_facts import WrongFacts, complete, sample_facts
from followup.wording import CannotRender, check_template, render
from followup.wording.syntax import FILTERS, NODES

# Each is a known way out of a template sandbox, a way to burn memory or time, or simply no part of a text.
HOSTILE = {
    "class of a fact": "{{ shop.__class__ }}",
    "subclasses": "{{ ''.__class__.__mro__[1].__subclasses__() }}",
    "globals of a function": "{{ render.__globals__ }}",
    "attribute filter": "{{ shop|attr('__class__') }}",
    "format field": "{{ '{0.__class__}'.format(shop) }}",
    "format map": "{{ '{shop.__class__}'.format_map(shop) }}",
    "indirect format": "{{ ('{0.__class__.__init__}'.format)(shop) }}",
    "format of a great width": "{{ '{:>999999999}'.format(1) }}",
    "center": "{{ shop|center(999999999) }}",
    "percent width": "{{ '%999999999d' % 1 }}",
    "format filter": "{{ '%999999999d'|format(1) }}",
    "many times a letter": "{{ 'a' * 1000000000 }}",
    "folded at compile time": "{{ ('a' * 100000000) and shop }}",
    "power": "{{ 9 ** 9 ** 9 }}",
    "nested ranges": "{% for a in range(99999) %}{% for b in range(99999) %}x{% endfor %}{% endfor %}",
    "a range": "{% for a in range(10) %}x{% endfor %}",
    "lipsum": "{{ lipsum(200000) }}",
    "cycler": "{{ cycler.__init__.__globals__.os }}",
    "doubling": "{% set ns = namespace(a='x') %}{% for i in items %}{% set ns.a = ns.a ~ ns.a %}{% endfor %}",
    "assignment": "{% set a = shop %}{{ a }}",
    "block of an assignment": "{% set a %}{{ shop }}{% endset %}{{ a }}",
    "macro": "{% macro m() %}{{ m() }}{% endmacro %}{{ m() }}",
    "recursive loop": "{% for a in items recursive %}{{ loop(items) }}{% endfor %}",
    "recursive loop without a call": "{% for a in items recursive %}x{% endfor %}",
    "loop in a loop": "{% for a in items %}{% for b in items %}x{% endfor %}{% endfor %}",
    "loop over letters": "{% for a in shop %}{{ a }}{% endfor %}",
    "loop with a filter": "{% for a in items if a.name %}{{ a.name }}{% endfor %}",
    "loop over a dictionary's method": "{% for a in items %}{{ a.items() }}{% endfor %}",
    "method of a dictionary": "{% for a in items %}{{ a.values }}{% endfor %}",
    "item by key": "{% for a in items %}{{ a['name'] }}{% endfor %}",
    "slice": "{{ shop[:3] }}",
    "call of a method": "{{ shop.upper() }}",
    "list changed": "{{ items.append(1) }}",
    "include": "{% include 'help.txt' %}",
    "import": "{% import 'x' as x %}",
    "from import": "{% from 'x' import y %}",
    "inheritance": "{% extends 'x' %}",
    "block": "{% block a %}{{ shop }}{% endblock %}",
    "call block": "{% call shop() %}x{% endcall %}",
    "filter block": "{% filter upper %}x{% endfilter %}",
    "with": "{% with a = shop %}{{ a }}{% endwith %}",
    "autoescape": "{% autoescape true %}{{ shop }}{% endautoescape %}",
    "sum": "{{ try_no + 1 }}",
    "glued": "{{ shop ~ shop }}",
    "list": "{{ [shop, shop] }}",
    "dictionary": "{{ {'a': shop} }}",
    "a test": "{{ shop is string }}",
    "replace grows": "{{ 'aa'|replace('a', 'aaaaaaaaaa')|replace('a', 'aaaaaaaaaa') }}",
    "joins grow": "{{ 'aaaa'|join('bbbbbbbb')|join('cccccccc') }}",
    "join by attribute": "{{ items|join(', ', attribute='__class__') }}",
    "filter with a fact": "{{ times|join(shop) }}",
    "map": "{{ items|map(attribute='__class__')|list }}",
    "pprint": "{{ items|pprint }}",
    "tojson": "{{ items|tojson }}",
    "unknown name": "{{ customer }}",
    "fact of another reason": "{{ emergency_number }}",
    "private name": "{{ _shop }}",
    "self": "{{ self }}",
    "a fact shadowed": "{% for shop in items %}{{ shop.name }}{% endfor %}",
    "loop outside of a loop": "{{ loop.index }}",
    "loop's inner parts": "{% for a in items %}{{ loop.previtem }}{% endfor %}",
    "open braces": "{{ shop",
    "no end": "{% if shop %}x",
    "deep": "{{ " + "(" * 600 + "shop" + ")" * 600 + " }}",
    "deep nots": "{{ " + "not " * 400 + "shop }}",
    "too long": "x" * 2001,
    "huge number": "{{ " + "9" * 1900 + ".0 }}",
}


@pytest.mark.parametrize("source", HOSTILE.values(), ids=HOSTILE.keys())
def test_a_hostile_template_is_refused_with_plain_words(source: str) -> None:
    faults = check_template(source, "due_work")
    assert faults
    assert all(fault.is_stopping and len(fault.says) > 20 for fault in faults)
    with pytest.raises(CannotRender):
        render("due_work", "en", sample_facts("due_work", "en"), source)


def test_the_allow_list_is_short() -> None:
    assert len(NODES) == 15
    assert len(FILTERS) == 10


def test_an_honest_template_of_a_shop_is_taken() -> None:
    source = """{{ shop }}: {% if who %}Hi {{ who|title }}, {% else %}Hi, {% endif %}about your {{ car }}.
    {% for item in items %}{{ loop.index }}. {{ item.line }}{{ "." if loop.last else ";" }} {% endfor %}
    {{ times|join(" or ")|upper }} {% if not ask_odometer or try_no == 2 %}Call{% endif %} {{ shop_phone }}."""
    assert check_template(source, "due_work") == []
    assert render("due_work", "en", sample_facts("due_work", "en"), source).startswith("Quill Lane Garage: Hi Dana,")


@given(st.text(alphabet="{}%| .()[]'\"~*+-_abcshopitemsforinifend\n", max_size=60))
def test_whatever_is_typed_is_refused_or_rendered(typed: str) -> None:
    """Nothing but the two known outcomes, whatever stands in the box."""
    facts = sample_facts("stopped", "en")
    if check_template(typed, "stopped"):
        with pytest.raises(CannotRender):
            render("stopped", "en", facts, typed)
        return
    with contextlib.suppress(CannotRender):
        assert len(render("stopped", "en", facts, typed)) <= 1600


def test_a_line_break_is_a_space_and_an_empty_line_a_line_break() -> None:
    source = "{{ shop }}:\n  We are  open .\n\n\n{% if who %}\nHi {{ who }}\n{% endif %}\nSee you"
    assert render("stopped", "en", sample_facts("stopped", "en"), source) == (
        "Quill Lane Garage: We are open.\nHi Dana See you"
    )


def test_typographic_characters_are_replaced_in_facts_too() -> None:
    facts = sample_facts("from_a_person", "en") | {"message": "Don\u2019t worry \u2013 it\u2019s\u00a0here\u2026"}
    assert render("from_a_person", "en", facts) == "Quill Lane Garage: Don't worry - it's here..."


def test_braces_in_a_fact_are_only_words() -> None:
    facts = sample_facts("from_a_person", "en") | {"message": "{{ shop.__class__ }}{% for a in b %}"}
    assert render("from_a_person", "en", facts) == "Quill Lane Garage: {{ shop.__class__ }}{% for a in b %}"


def test_no_text_is_longer_than_a_provider_takes() -> None:
    """1,600 characters: the provider's documents, error 21617."""
    facts = sample_facts("from_a_person", "en")
    with pytest.raises(CannotRender):
        render("from_a_person", "en", facts | {"message": "a" * 1600})
    with pytest.raises(CannotRender):
        render("from_a_person", "en", facts | {"message": "a " * 100_000})


def test_an_empty_text_is_refused() -> None:
    with pytest.raises(CannotRender):
        render("stopped", "en", sample_facts("stopped", "en"), "{% if not shop %}x{% endif %}")


@pytest.mark.parametrize(
    ("changed", "words"),
    [
        ({"plate": "x"}, "does not know plate"),
        ({"time": ""}, "needs time"),
        ({"car": 5}, "car"),
        ({"needs": "wait"}, "needs"),
        ({"needs": [object()]}, "needs"),
        ({"is_moved": "yes"}, "is_moved"),
    ],
)
def test_facts_are_those_of_the_reason_and_plain(changed: dict[str, object], words: str) -> None:
    facts: dict[str, object] = {**sample_facts("confirmation", "en"), **changed}
    with pytest.raises(WrongFacts, match=words):
        render("confirmation", "en", facts)  # type: ignore[arg-type] # wrong on purpose


def test_a_string_with_methods_of_its_own_is_no_plain_fact() -> None:
    class Loud(str):
        pass

    with pytest.raises(WrongFacts):
        complete("stopped", {"shop": Loud("Quill Lane Garage"), "shop_phone": "(312) 555-0147"})


def test_a_car_without_a_name_is_still_spoken_of() -> None:
    facts = sample_facts("car_ready", "en", is_full=False)
    assert "Your car is ready" in render("car_ready", "en", facts)
    assert "su auto" in render("car_ready", "es", facts)
