"""Every rule of the shop stands on the page that it names: a rule that nobody could change fails here."""

from __future__ import annotations

import pytest

from followup.core.shop import RULES
from followup.rehearsal.demo_shop import PASSWORD
from followup.web.app import create_app
from followup.web.manager import rules_form
from followup.web.owner.shop import SWITCHES
from tests.web.conftest import token_on
from tests.web.full_shop import LOGINS
from tests.workflows.demo import Demo

ADDRESSES = {"timing": "/manager/timing", "wording": "/manager/wording", "duty": "/manager/duty"}


@pytest.mark.parametrize("of", ADDRESSES)
def test_every_rule_of_a_page_has_its_fields_there(full: Demo, of: str) -> None:
    client = create_app(full.house).test_client()
    form = {"login": LOGINS["manager"], "password": PASSWORD, "csrf_token": token_on(client, "/sign-in")}
    client.post("/sign-in", data=form)
    shown = client.get(ADDRESSES[of]).text
    rules = [rule.name for rule in RULES if rule.metadata["page"] == of]
    assert rules
    for name in rules:
        entries = rules_form.rule_field(name).entries
        assert entries, name
        assert [entry.name for entry in entries if f'name="{entry.name}"' not in shown] == []


def test_the_other_rules_are_the_owners_switches() -> None:
    assert {rule.name for rule in RULES if rule.metadata["page"] not in ADDRESSES} == set(SWITCHES.values())
