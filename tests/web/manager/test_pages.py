"""The manager's pages: each renders, each form does what it says, what is wrong is told in words where it was typed.

Rules of who may what are this project's own (technician: no numbers, no threads; a second person's look by anybody but
the author).
"""

from __future__ import annotations

import re
from collections.abc import Callable
from html import unescape

import pytest
from werkzeug.datastructures import MultiDict

from followup.core.shop import RULES
from followup.storage import shops
from followup.web.manager import rules_form
from tests.web.manager.conftest import Member
from tests.workflows.counter import NUMBER, Counter
from tests.workflows.test_keep_wording import OWN

Members = Callable[[str], Member]
PAGES = (
    "/manager/", "/manager/?days=7", "/manager/?days=none", "/manager/timing", "/manager/wording",
    "/manager/wording/due_work/en", "/manager/wording/free_service/en",
    "/manager/wording/caution_now_open/es", "/manager/duty",
    f"/advisor/may-text?number=%2B{NUMBER[1:]}", "/advisor/may-text?number=(312)+555-0199",
    "/manager/forecasts", "/manager/forecasts?days=all", "/manager/forecasts?days=none",
    "/manager/learned",
)  # fmt: skip


def fields_of(page: str) -> MultiDict[str, str]:
    """What a browser would send of the page's long form, untouched."""
    sent: MultiDict[str, str] = MultiDict()
    form = page[page.index('<form class="fields"') :]
    form = form[: form.index("</form>")]
    for tag in re.findall(r"<input [^>]*>", form):
        found = {name: unescape(value) for name, value in re.findall(r'(\w+)="([^"]*)"', tag)}
        if found.get("type") == "checkbox" and " checked" not in tag:
            continue
        sent.add(found["name"], found.get("value", ""))
    for name, value in re.findall(r'<textarea [^>]*name="([^"]+)"[^>]*>\n(.*?)</textarea>', form, re.DOTALL):
        sent.add(name, unescape(value))
    for name, options in re.findall(r'<select [^>]*name="([^"]+)"[^>]*>(.*?)</select>', form, re.DOTALL):
        chosen = re.findall(r'<option value="([^"]*)" selected', options) or re.findall(r'value="([^"]*)"', options)
        sent.add(name, unescape(chosen[0]))
    return sent


@pytest.mark.parametrize("role", ["manager", "owner"])
def test_every_page_renders(member: Members, role: str) -> None:
    one = member(role)
    for address in PAGES:
        assert "<main" in one.page(address), address


def test_technicians_see_none_of_them_and_advisors_only_what_they_need(member: Members) -> None:
    technician, advisor = member("technician"), member("advisor")
    for address in PAGES:
        assert technician.client.get(address).status_code == 403, address
        may = address.startswith(("/manager/wording", "/advisor/may-text"))
        assert advisor.client.get(address).status_code == (200 if may else 403), address
    assert "Keep as a new version" not in advisor.page("/manager/wording/due_work/en")


@pytest.mark.parametrize("page", ["/manager/wording/nothing/en", "/manager/wording/due_work/fr",
                                  "/manager/wording/from_a_person/en"])  # fmt: skip
def test_there_is_no_page_of_what_there_is_not(member: Members, page: str) -> None:
    assert member("manager").client.get(page).status_code == 404


def test_every_rule_of_timing_has_its_field_and_the_untouched_form_changes_nothing(member: Members) -> None:
    manager = member("manager")
    page = manager.page("/manager/timing")
    for rule in (one for one in RULES if one.metadata["page"] == "timing"):
        for entry in rules_form.rule_field(rule.name).entries:
            assert f'name="{entry.name}"' in page, entry.name
    answer = manager.client.post("/manager/timing", data=fields_of(page))
    assert (answer.status_code, "Nothing is changed" in answer.text) == (422, True)


def test_a_change_is_a_version_and_one_press_leads_back(member: Members, counter: Counter) -> None:
    manager = member("manager")
    sent = fields_of(manager.page("/manager/timing"))
    sent["lead_days"], sent["send_at_chance"], sent["because"] = "30", "40", "winter"
    sent["invite_hours.sat.from"] = sent["invite_hours.sat.to"] = ""
    assert manager.client.post("/manager/timing", data=sent).status_code == 303
    rules = counter.shop().rules
    assert (rules.lead_days, rules.send_at_chance, "sat" in rules.invite_hours) == (30, 0.4, False)
    sent = fields_of(manager.page("/manager/timing"))
    sent["lead_days"] = "14"
    assert manager.client.post("/manager/timing", data=sent).status_code == 303
    page = manager.page("/manager/timing")
    assert "Version 1: winter" in page
    assert "30 became 14" in page
    assert manager.press("/manager/timing/versions/1/back", based_on="2").status_code == 303
    assert counter.shop().rules.lead_days == 30
    assert manager.press("/manager/timing/versions/77/back", based_on="3").status_code == 404


def test_what_is_out_of_range_is_told_where_it_was_typed(member: Members, counter: Counter) -> None:
    manager = member("manager")
    sent = fields_of(manager.page("/manager/timing"))
    sent["lead_days"], sent["send_at_chance"] = "900", "99"
    sent["invite_hours.mon.from"] = "05:00"
    sent["visit_text_hours.mon.to"] = ""
    answer = manager.client.post("/manager/timing", data=sent)
    assert answer.status_code == 422
    assert "give both times, or none" in answer.text
    sent["visit_text_hours.mon.to"] = "20:00"
    answer = manager.client.post("/manager/timing", data=sent)
    for words in ("Give 1 to 120.", "Give 5 to 90 %.", "no texts before 08:00", 'value="900"', "3 fields need"):
        assert words in answer.text, words
    assert counter.shop().rules_version == 0


def test_an_unknown_field_is_no_page_of_ours(member: Members) -> None:
    manager = member("manager")
    sent = fields_of(manager.page("/manager/timing"))
    sent["is_sending_stopped"] = "yes"
    assert manager.client.post("/manager/timing", data=sent).status_code == 422


def test_a_wording_is_shown_kept_looked_at_and_ended(member: Members) -> None:
    manager, advisor = member("manager"), member("advisor")
    address = "/manager/wording/due_work/en"
    shown = manager.press(address, source=OWN, about="", does="look")
    assert "a note on your blue pickup" in shown.text
    assert "It passes every check." in shown.text
    assert "sent in 2 parts" in shown.text
    refused = manager.press(address, source=OWN.replace("note on", "guaranteed fix for"), about="", does="keep")
    assert (refused.status_code, "Promise nothing" in refused.text) == (422, True)
    assert manager.press(address, source=OWN, about="", does="keep").status_code == 303
    assert "somebody else looks at it" in manager.page(address)
    manager.press(f"{address}/1/look")
    assert "waits for a second look" in manager.page(address)
    assert advisor.press(f"{address}/1/look").status_code == 303
    assert "The shop&#39;s own version 1 is in use." in manager.page(address)
    assert "the shop's own" in unescape(manager.page("/manager/wording"))
    assert manager.press(f"{address}/1/end").status_code == 303
    assert "The text that comes with the program is in use." in manager.page(address)
    assert manager.press(f"{address}/1/end").status_code == 404
    assert advisor.press(f"{address}/9/look").status_code == 404


def test_a_preview_for_a_real_car_names_it(member: Members, counter: Counter) -> None:
    text_id = counter.plan("car_ready", "ready")
    page = member("manager").press(
        "/manager/wording/car_ready/en", source="{{ shop }}: your {{ car }} is ready. Call {{ shop_phone }}.",
        about=str(text_id), does="look",
    )  # fmt: skip
    assert "Elm Street Auto: your blue wagon is ready. Call (312) 555-0100." in page.text
    assert "Ana Marlow, blue wagon" in page.text


def test_the_price_text_passes_the_checks_first(member: Members, counter: Counter) -> None:
    manager = member("manager")
    version = counter.shop().rules_version
    wrong = manager.press("/manager/wording/price", price_text="Cheap and safe.", because="", based_on=version)
    assert (wrong.status_code, "never that a car is safe" in wrong.text) == (422, True)
    kept = manager.press(
        "/manager/wording/price", price_text="An oil service is $60.", because="new list", based_on=version
    )
    assert kept.status_code == 303
    assert counter.shop().rules.price_text == "An oil service is $60."


def test_gaps_of_duty_are_shown_until_somebody_watches(member: Members, counter: Counter) -> None:
    manager = member("manager")
    page = manager.page("/manager/duty")
    assert "nobody is told" in page
    sent = fields_of(page)
    for day in ("mon", "tue", "wed", "thu", "fri", "sat"):
        sent[f"{day}_1_from"], sent[f"{day}_1_to"], sent[f"{day}_1_told_1"] = "07:00", "18:30", "2"
    answer = manager.client.post("/manager/duty", data=sent)
    assert answer.status_code == 303
    assert "Every open hour of the next two weeks has somebody." in manager.page("/manager/duty")
    with counter.store.read() as connection:
        assert shops.load_roster(connection, 1).watches["mon"][0].told == (2,)
    sent = fields_of(manager.page("/manager/duty"))
    sent["mon_1_to"] = "06:00"
    wrong = manager.client.post("/manager/duty", data=sent)
    assert (wrong.status_code, "must be later" in wrong.text) == (422, True)
    assert manager.press("/manager/duty/rules", write_back_minutes="45", because="", based_on="0").status_code == 303
    assert counter.shop().rules.write_back_minutes == 45


def test_may_we_text_says_why_not_and_shows_the_ledger(member: Members) -> None:
    page = member("manager").page(f"/advisor/may-text?number=%2B{NUMBER[1:]}")
    for words in ("Ana Marlow", "I agree.", "This line decided last."):
        assert words in page
    unknown = member("manager").page("/advisor/may-text?number=(312)+555-0199")
    assert "no consent for upkeep" in unknown
    answer = member("manager").client.get("/advisor/may-text?number=12")
    assert (answer.status_code, "no phone number that exists" in answer.text) == (422, True)
