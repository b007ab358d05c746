"""A window's reasons on a page: words from outside stay words, and old windows explain themselves in less."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

import pytest
from flask import Flask, g, render_template_string

from followup.core.forecast.due import forecast_cars
from followup.storage import staff
from followup.web.why import why_shown
from tests.core.forecast.told import history, tread, visit
from tests.web import hostile

WHY = '{% import "why.html" as why with context %}{{ why.of(shown, "why-1") }}'
TODAY = date(2026, 1, 10)


@pytest.mark.parametrize("text", hostile.HOSTILE)
def test_no_name_of_an_item_acts_where_reasons_are_shown(app: Flask, text: str) -> None:
    """A shop names its own items, and whatever stood in a kept window is shown."""
    made = forecast_cars([history(visit("2026-01-10", 60_000, tread(6)))], "last", with_evidence=True)[0]
    evidence = made.evidence
    assert evidence is not None
    readings = tuple(replace(one, measured=text, measured_unit="") for one in evidence.readings)
    one = replace(made, stored_set=text, evidence=replace(evidence, readings=readings, marks=((text, 6.0),)))
    shown = why_shown(one, text, "fine", None, TODAY)
    assert shown.chart is not None
    with app.test_request_context("/"):
        g.shop_head = staff.ShopHead("Elm", "America/Chicago")
        page = render_template_string(WHY, shown=replace(shown, legend=text))
    hostile.check_shown(page, text)
