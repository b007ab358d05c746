"""The parts that pages are built of: WCAG A and AA by axe, no sideways scroll at 360 px, by keyboard."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import timedelta
from pathlib import Path

import pytest
from flask import Flask, render_template_string
from playwright.sync_api import Page

from followup.web import due_chart
from followup.web.app import create_app
from followup.web.security import for_everyone_signed_in, public
from tests.browser import look
from tests.browser.look import check_page, sign_in
from tests.browser.served import served
from tests.web.hostile import HOSTILE, MARK
from tests.web.house import BEGIN, PASSWORD, build
from tests.web.test_hostile_texts import EVERY_PART

TODAY = BEGIN.date()
CHART = """
{% extends "page.html" %}{% import "due_chart.html" as due %}{% import "parts.html" as parts %}
{% block title %}A car{% endblock %}
{% block main %}
{{ parts.page_head("The gray wagon", "48,210 mi on Tue, Nov 24, 2026") }}
{% call parts.readings() %}
{{ parts.reading("LF pad", "4.5 mm", "keep an eye on it", "8.0 mm in May") }}
{{ parts.reading("LR pad", "7 mm", "fine") }}
{{ parts.reading("RR pad", "not measured", "not checked", "locked lug") }}
{{ parts.reading("RF pad", "3 mm", "due now") }}
{% endcall %}
<h2>When each is due</h2>
{{ due.chart(layout, "due", "Brakes and tires") }}
<h2>What was written</h2>
{% call parts.dated_lines("What was written") %}
{{ parts.dated_line(at, "Elm Street Auto", "Elm Street Auto: your wagon's front pads may be due around February.") }}
{{ parts.dated_line(at, "Rosa K.", "ok martes por la tarde?", "Understood as: a day and a time, Tue, Dec 1, after noon",
  lang="es", is_theirs=true) }}
{% endcall %}
{% endblock %}
"""
PARTS = '{% extends "page.html" %}{% block title %}Parts{% endblock %}{% block main %}' + EVERY_PART + "{% endblock %}"


@pytest.fixture
def app(tmp_path: Path) -> Flask:
    """The pages, and two that show every part: with a car's likely content, and with a hostile text."""
    app = create_app(build(f"sqlite+pysqlite:///{tmp_path / 'pages.db'}"))

    @app.get("/every-part/<int:number>")
    @for_everyone_signed_in
    def every_part(number: int) -> str:
        return render_template_string(PARTS.replace("<title>{{ text }}</title>", ""), text=HOSTILE[number], at=BEGIN)

    @app.get("/a-chart")
    @for_everyone_signed_in
    def a_chart() -> str:
        return render_template_string(CHART, layout=_a_layout(), at=BEGIN)

    @app.get("/breaks")
    @public
    def breaks() -> str:
        raise RuntimeError

    return app


def _a_layout() -> due_chart.DueChart:
    def item(label: str, first: int, step: int, known: int = 20) -> due_chart.DueDots:
        days = [TODAY + timedelta(days=first + n * step + (n - 10) ** 2 // 3) for n in range(20)]
        return due_chart.DueDots(
            label, tuple(day if n < known else None for n, day in enumerate(days)), days[2], days[10], days[17]
        )

    items = [
        item("Front pads", 20, 8),
        item("Tires, LF", 150, 24),
        item("Wiper blades", -40, 3),
        item("Coolant", 500, 40, 9),
    ]
    marks = [
        due_chart.DueMark(TODAY + timedelta(days=12), "text", "text about due work"),
        due_chart.DueMark(TODAY + timedelta(days=33), "booking", "drop-off, confirmed"),
        due_chart.DueMark(TODAY + timedelta(days=400), "text", "text about tires"),
    ]
    return due_chart.lay_out(items, marks, TODAY)


@pytest.fixture
def base(app: Flask) -> Iterator[str]:
    """Where the pages are served."""
    with served(app) as address:
        yield address


def test_every_part(base: str, page: Page) -> None:
    sign_in(page, base, "owner", PASSWORD)
    faults = check_page(page, f"{base}/a-chart") + check_page(page, f"{base}/every-part/{len(HOSTILE) - 1}")
    assert not faults, "\n".join(faults)


def test_pages_without_a_session(base: str, page: Page) -> None:
    faults = []
    for path, status in (("sign-in", 200), ("there-is-nothing", 404), ("breaks", 500)):
        faults += check_page(page, f"{base}/{path}", status)
    assert not faults, "\n".join(faults)


def test_a_form_with_faults(base: str, page: Page) -> None:
    sign_in(page, base, "owner", PASSWORD)
    page.goto(f"{base}/owner/staff")
    page.get_by_label("Sign-in name").fill("has space")
    page.get_by_label("Name", exact=True).fill("Rosa K.")
    page.get_by_label("Advisor").check()
    page.get_by_label("First password").fill("password1")
    page.get_by_role("button", name="Make the account").click()
    page.get_by_role("alert").get_by_role("link").first.click()
    assert page.evaluate("document.activeElement.name") == "login"
    assert page.get_by_label("Name", exact=True).input_value() == "Rosa K."
    assert page.get_by_label("First password").input_value() == ""


def test_no_hostile_text_acts_in_a_browser(base: str, page: Page) -> None:
    sign_in(page, base, "technician", PASSWORD)
    said: list[str] = []
    asked: list[str] = []
    page.on("dialog", lambda dialog: (said.append(dialog.message), dialog.dismiss()))
    page.on("console", lambda message: said.append(message.text) if message.type == "error" else None)
    page.on("request", lambda request: asked.append(request.url))
    page.set_viewport_size({"width": 360, "height": 740})
    for number, text in enumerate(HOSTILE):
        page.goto(f"{base}/every-part/{number}")
        assert MARK in page.inner_text("main"), text
        assert not look.sideways(page), text
        assert not said, text
    assert all(url.startswith(base) for url in asked)


def test_by_keyboard_the_first_stop_leads_past_the_links(base: str, page: Page) -> None:
    sign_in(page, base, "owner", PASSWORD)
    page.goto(f"{base}/owner/staff")
    page.keyboard.press("Tab")
    assert page.evaluate("document.activeElement.textContent") == "Skip to the page"
    outline = page.evaluate("getComputedStyle(document.activeElement).outlineStyle")
    assert outline != "none"
    page.keyboard.press("Enter")
    assert page.evaluate("document.activeElement.id") == "main"


def test_the_look_itself_finds_faults(base: str, page: Page) -> None:
    page.goto(f"{base}/sign-in")
    page.evaluate("document.querySelector('label').remove()")
    page.evaluate("document.querySelector('h1').textContent = 'W'.repeat(400)")
    page.evaluate("document.body.style.overflowWrap = 'normal'")
    page.evaluate(look.engine())
    assert any("label" in fault for fault in look.axe(page))
    assert look.sideways(page)
