"""May we text, on the page: every rule with the row that decided, a held number, a line, and the file of answers."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from io import BytesIO

from flask.testing import FlaskClient

from followup.storage import people, shops
from tests.web.advisor.conftest import Advisor
from tests.web.conftest import token_on
from tests.workflows.counter import NOW, NUMBER, Counter

ADDRESS = f"/advisor/may-text?number=%2B{NUMBER[1:]}"


def test_an_advisor_sees_each_cover_with_the_line_that_decides(advisor: Advisor) -> None:
    page = advisor.page(ADDRESS)
    for words in (
        "Ana Marlow",
        "Consent: consent for visits stands: given on 2026-01-12 (tablet",
        "An answer, if they",
    ):
        assert words in page
    assert "no consent for upkeep" in advisor.page("/advisor/may-text?number=(312)+555-0199")


def test_a_stop_is_named_with_its_day_and_way(advisor: Advisor, counter: Counter) -> None:
    told = advisor.press(f"/advisor/threads/{counter.phone_id}/take-back", how="e-mail", what="all")
    assert told.status_code == 303
    assert "A stop: the number asked us to stop texting: taken back on" in advisor.page(ADDRESS)
    assert "(e-mail; told by e-mail)" in advisor.page(ADDRESS)


def test_a_part_is_taken_back_on_the_thread(advisor: Advisor, counter: Counter) -> None:
    advisor.press(f"/advisor/threads/{counter.phone_id}/take-back", how="counter", what="but_visits")
    page = advisor.page(ADDRESS)
    assert "no consent for upkeep; a part was taken back" in page and "consent for visits stands" in page


def test_the_owners_switch_stands_with_its_version(advisor: Advisor, counter: Counter) -> None:
    with counter.store.write() as connection:
        rules = replace(shops.load_shop(connection, counter.shop_id).rules, is_sending_stopped=True)
        version = shops.save_rules(connection, counter.shop_id, rules, "Ines", NOW, "a check")
    assert f"the owner has stopped all texts of the shop (rules, version {version})" in advisor.page(ADDRESS)


def test_a_line_is_marked_and_a_held_number_is_settled(advisor: Advisor, counter: Counter) -> None:
    assert advisor.press(f"/advisor/numbers/{counter.phone_id}/line", line="fixed_voip").status_code == 303
    assert "the number is a fixed line over the internet: call instead" in advisor.page(ADDRESS)
    advisor.press(f"/advisor/numbers/{counter.phone_id}/line", line="mobile")
    with counter.store.write() as connection:
        people.change_phone(connection, counter.phone_id, held_because="the check says yes")
    assert "Still theirs" in advisor.page(ADDRESS) and "a person looks first" in advisor.page(ADDRESS)
    assert advisor.press(f"/advisor/numbers/{counter.phone_id}/whose", whose="theirs").status_code == 303
    assert "Still theirs" not in advisor.page(ADDRESS)
    assert advisor.press(f"/advisor/numbers/{counter.phone_id}/whose", whose="theirs").status_code == 404
    assert advisor.press(f"/advisor/numbers/{counter.phone_id}/whose", whose="nobody").status_code == 400


def test_a_manager_brings_the_answers_of_the_check(
    signed_in: Callable[[str], FlaskClient], advisor: Advisor, counter: Counter
) -> None:
    client = signed_in("manager")
    asked = client.get("/manager/reassigned/numbers")
    assert asked.headers["Content-Type"].startswith("text/csv") and NUMBER[2:] in asked.text
    assert advisor.client.get("/manager/reassigned/numbers").status_code == 403
    answers = (
        asked.text.replace("consent_on", "consent_on,answer").replace("2026-01-12", "2026-01-12,yes") + "12,x,no\n"
    )
    sent = {"csrf_token": token_on(client, "/account"), "answers": (BytesIO(answers.encode()), "answers.csv")}
    page = client.post("/manager/reassigned/answers", data=sent, content_type="multipart/form-data")
    assert page.status_code == 200 and "1 yes and held" in page.text and "Line 3: this is no phone number" in page.text
    assert "Reassigned number: the check of reassigned numbers says" in advisor.page(ADDRESS)
    nothing = {"csrf_token": token_on(client, "/account")}
    assert client.post("/manager/reassigned/answers", data=nothing).status_code == 422
