"""Texts from outside never act on a page. Source of the demand: OWASP ASVS 5.0, 1.2.1."""

from __future__ import annotations

from datetime import UTC, datetime

import pytest
from flask import Flask, g, render_template_string

from followup.storage import staff, tables
from tests.web import hostile
from tests.web.conftest import token_on
from tests.web.house import PASSWORD, TestHouse

EVERY_PART = """
{% import "parts.html" as parts %}
{% import "due_chart.html" as due %}
<title>{{ text }}</title>
{{ parts.page_head(text, text) }}
{{ parts.what_is_wrong({"": text}) }}{{ parts.what_is_wrong({"name": text}) }}
{% call parts.notice() %}{{ text }}{% endcall %}
{% call parts.nothing_yet() %}{{ text }}{% endcall %}
{% call parts.form("/x", text) %}
{{ parts.field("a", text, {"a": text}, {"a": text}, hint=text, unit=text, was=text) }}
{{ parts.text_area("b", text, {"b": text}, {"b": text}, hint=text) }}
{{ parts.select("c", text, [(text, text)], {"c": text}, {"c": text}, hint=text) }}
{% call parts.choices("d", text, {"d": text}, hint=text) %}
{{ parts.choice("d", text, text, {"d": text}, hint=text) }}
{% endcall %}
{{ parts.tick("e", text, {}, {"e": text}, hint=text) }}
{% endcall %}
{{ parts.press("/x", text, about=text, hidden={"f": text}) }}
{% call(row) parts.table(text, (text,), [text]) %}{% call parts.cell(text) %}{{ row }}{% endcall %}{% endcall %}
{{ parts.facts([(text, text)]) }}
{% call parts.readings() %}{{ parts.reading(text, text, text, text) }}{% endcall %}
{% call parts.dated_lines(text) %}{{ parts.dated_line(at, text, text, text, lang="es", is_theirs=true) }}{% endcall %}
{% call parts.confirm(text, "/x", text, "/y", hidden={"g": text}) %}{{ text }}{% endcall %}
<time>{{ text|phone_number }}</time>
"""


@pytest.mark.parametrize("text", hostile.HOSTILE)
def test_no_part_of_a_page_lets_a_text_act(app: Flask, house: TestHouse, text: str) -> None:
    with app.test_request_context("/"):
        g.shop_head = staff.ShopHead("Elm", "America/Chicago")
        page = render_template_string(EVERY_PART, text=text, at=datetime(2026, 11, 24, tzinfo=UTC))
    hostile.check_shown(page, text)


@pytest.mark.parametrize("text", hostile.HOSTILE)
def test_names_on_the_pages_of_staff(app: Flask, house: TestHouse, text: str) -> None:
    with house.store.write() as connection:
        connection.execute(tables.shops.update().values(name=text[:200]))
        connection.execute(tables.staff.update().where(tables.staff.c.login == "owner").values(name=text[:200]))
    client = app.test_client()
    form = {"login": "owner", "password": PASSWORD, "csrf_token": token_on(client, "/sign-in")}
    client.post("/sign-in", data=form)
    for address in ("/account", "/owner/staff", "/advisor/"):
        hostile.check_shown(client.get(address).text, text)


@pytest.mark.parametrize("text", hostile.HOSTILE)
def test_what_was_typed_comes_back_harmless(app: Flask, text: str) -> None:
    client = app.test_client()
    form = {"login": text, "password": "x", "next": text, "csrf_token": token_on(client, "/sign-in")}
    hostile.check_shown(client.post("/sign-in", data=form).text, text)


@pytest.mark.parametrize(
    "page",
    [
        "<p onclick=x>",
        "<script>x</script>",
        "<script src='https://evil.example/x.js'></script>",
        "<a href='javascript:x'>",
        "<a href='//evil.example'>",
        "<p style='color:red'>",
        "<iframe src=/x></iframe>",
        "<base href=/x>",
    ],
)
def test_the_check_itself_finds_what_acts(page: str) -> None:
    assert hostile.faults(page)
