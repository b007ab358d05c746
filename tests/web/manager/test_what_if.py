"""What if on the manager's page: what it would change is told beside today's rules, and nothing is kept by looking."""

from __future__ import annotations

import re
from collections.abc import Callable

from werkzeug.datastructures import MultiDict

from tests.web.manager.conftest import Member
from tests.web.manager.test_pages import fields_of
from tests.workflows.counter import Counter

Members = Callable[[str], Member]


def test_it_tells_what_would_change_and_keeps_nothing(member: Members, counter: Counter) -> None:
    manager = member("manager")
    sent = fields_of(manager.page("/manager/timing"))
    sent["lead_days"] = "35"
    page = manager.client.post("/manager/timing/what-if", data=sent).get_data(as_text=True)
    assert "Lead time from a text to the visit, days: 21 would become 35" in page
    assert page.count("would become") == 1
    assert "100 %" in page and page.index("100 %") < page.index("Half a year, side by side")
    assert counter.shop().rules.lead_days == 21
    row = re.search(r"Texts a week</th>(.*?)</tr>", page, re.DOTALL)
    assert row and len(re.findall(r"\d+ \(\d", row.group(1).replace(".", ""))) == 3


def test_what_was_tried_is_kept_by_the_button_below_and_taken_back_by_one_press(
    member: Members, counter: Counter
) -> None:
    manager = member("manager")
    sent = fields_of(manager.page("/manager/timing"))
    sent["lead_days"] = "35"
    page = manager.client.post("/manager/timing/what-if", data=sent).get_data(as_text=True)
    form = page[page.index("<h2>And now</h2>") :]
    again = dict(re.findall(r'<input type="hidden" name="([^"]+)" value="([^"]*)"', form))
    assert manager.client.post("/manager/timing", data=MultiDict({**sent.to_dict(), **again})).status_code == 303
    assert counter.shop().rules.lead_days == 35
    version = counter.shop().rules_version
    assert manager.press("/manager/timing/versions/0/back", based_on=version).status_code == 303
    assert counter.shop().rules.lead_days == 21


def test_what_may_not_be_kept_is_not_tried_either(member: Members) -> None:
    manager = member("manager")
    sent = fields_of(manager.page("/manager/timing"))
    sent["lead_days"] = "500"
    answer = manager.client.post("/manager/timing/what-if", data=sent)
    assert answer.status_code == 422 and "Give 1 to 120." in answer.get_data(as_text=True)


def test_it_can_be_changed_further_from_what_was_tried(member: Members) -> None:
    manager = member("manager")
    sent = fields_of(manager.page("/manager/timing"))
    sent["lead_days"] = "35"
    assert 'value="35"' in manager.client.post("/manager/timing/again", data=sent).get_data(as_text=True)
