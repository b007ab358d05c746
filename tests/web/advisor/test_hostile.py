"""Texts from outside never act on the advisor's pages. Source of the demand: OWASP ASVS 5.0, 1.2.1."""

from __future__ import annotations

import json
from collections.abc import Callable

import pytest
from flask.testing import FlaskClient

from followup.storage import inbox
from tests.web import hostile
from tests.web.advisor.conftest import ADVISOR_ID, Advisor
from tests.web.house import TestHouse
from tests.workflows.counter import NOW, Counter, fill, line

# What a phone, a person's keyboard or an import can put where; the contract takes names of at most 120 characters.
LONGEST_NAME = 120


@pytest.mark.parametrize("text", hostile.HOSTILE)
def test_no_text_acts(house: TestHouse, signed_in: Callable[[str], FlaskClient], text: str) -> None:
    name = text.strip()[:LONGEST_NAME]
    told = json.loads(line(name=name, label=name))
    told["vehicle"] |= {"plate": name, "vin": name}
    counter = fill(house.store, 1, ADVISOR_ID, json.dumps(told))
    _put_everywhere(counter, text)
    advisor = Advisor(signed_in("advisor"))
    pages = {
        address: advisor.page(address)
        for address in (
            "/advisor/", "/advisor/requests", "/advisor/requests/1", "/advisor/alerts/1", "/advisor/alerts/2",
            "/advisor/calls", "/advisor/find", "/advisor/threads/1", "/advisor/cars/1", "/advisor/cars/1/book",
            "/advisor/visits/1",
        )
    }  # fmt: skip
    pages["typed again"] = advisor.press("/advisor/cars/1/recalls", code=text, done_by="").text
    pages["searched"] = advisor.client.get("/advisor/find", query_string={"q": text}).text
    pages["not sent"] = advisor.press("/advisor/threads/1/write", words=text + "x" * 601).text
    for address, page in pages.items():
        assert not hostile.faults(page), (address, hostile.faults(page))
        assert hostile.MARK in page, address
        assert "{{" not in text or f"{hostile.MARK}{hostile.MARK}" not in page


def _put_everywhere(counter: Counter, text: str) -> None:
    counter.ask(text, closed_because=None, note=text)
    counter.alert("symptom_now", text, inbound_id=counter.write_in(f"{text} again"))
    counter.alert("phone_task", f"{text} to call")
    held = counter.hold()
    counter.plan("from_a_person", facts={"message": text, "because": text})
    with counter.store.write() as connection:
        inbox.add_dead_letter(connection, counter.shop_id, NOW, text[:200], {"from": text, "body": text})
    assert held
