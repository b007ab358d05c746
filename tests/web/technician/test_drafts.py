"""A form that is half filled: nothing that was acknowledged is lost, nothing is kept twice, nobody overwrites anybody.

Source: trade practice; a technician is called away, the tablet sleeps, the login runs out, two share a car.
"""

from __future__ import annotations

import json
import re
from datetime import timedelta
from pathlib import Path
from typing import Any
from urllib.parse import urlsplit

import pytest
from flask.testing import FlaskClient
from sqlalchemy import func, select
from werkzeug.test import TestResponse

from followup import passwords
from followup.rehearsal.faults.shop import stop_clock
from followup.storage import inspections, people, staff, tables
from followup.workflows.keep_draft import TypedSoFar, keep_draft
from tests.core.lines import line_told
from tests.shop_of_tests import BEGIN, add_shop
from tests.web.conftest import token_on
from tests.web.house import PASSWORD
from tests.web.technician.conftest import Floor
from tests.web.technician.test_inspection_form import Fields

TREAD, PAD = "r.tire_tread.front_left.across.1", "r.brake_pad.front_left.inner"
JSON = {"Accept": "application/json"}


@pytest.fixture
def car(floor: Floor) -> int:
    """A car that is known."""
    kept = floor.house.keep_inspection(floor.shop_id, json.dumps(line_told()), "test")
    assert kept.vehicle_id
    return kept.vehicle_id


def _form(client: FlaskClient, address: str) -> dict[str, str]:
    answer = client.get(address)
    assert answer.status_code == 200, answer.text
    sent = Fields(answer.text).sent
    assert sent, "no form"
    return sent


def _keep(client: FlaskClient, car: int, sent: dict[str, str], **query: str) -> TestResponse:
    """Keep so far, as the page's script does it; the form's own draft goes on with the answer."""
    answer = client.post(f"/shop-floor/cars/{car}/draft", data=sent, query_string=query, headers=JSON)
    if answer.status_code == 200:
        sent["draft"] = answer.json["draft"]
    return answer


def _rows(floor: Floor) -> list[dict[str, Any]]:
    with floor.house.store.read() as connection:
        return [dict(row) for row in connection.execute(select(tables.drafts)).mappings()]


def _later(tmp_path: Path, **more: float) -> None:
    stop_clock(tmp_path / "clock", BEGIN + timedelta(**more))


def _went_on_at(answer: TestResponse) -> str:
    way = re.search(r'href="([^"]+draft=\d+)">Go on', answer.text)
    assert way, answer.text
    return way[1].replace("&amp;", "&")


def test_without_a_script_each_section_is_kept_as_one_goes_on(floor: Floor, car: int) -> None:
    client, address = floor.sign_in("technician"), f"/shop-floor/cars/{car}/inspect"
    page = client.get(address).text
    buttons = re.findall(r'formaction="([^"]+)"', page)
    assert len(buttons) > 6
    sent = Fields(page).sent | {TREAD: "5"}
    answer = client.post(buttons[1].replace("&amp;", "&"), data=sent)
    assert answer.status_code == 303
    back = urlsplit(answer.location)
    assert f'id="{back.fragment}"' in page, "it goes on where the next section begins"
    again = _form(client, f"{back.path}?{back.query}")
    assert again[TREAD] == "5" and again["inspection"] == sent["inspection"]
    assert "Kept at 9:00 am." in client.get(f"{back.path}?{back.query}").text
    client.post(buttons[2].replace("&amp;", "&"), data=again | {PAD: "6.5"})
    (row,) = _rows(floor)
    assert row["fields"][TREAD] == "5" and row["fields"][PAD] == "6.5"
    assert "csrf_token" not in row["fields"]


def test_the_car_opened_again_offers_to_go_on_or_to_start_anew(floor: Floor, car: int) -> None:
    client, address = floor.sign_in("technician"), f"/shop-floor/cars/{car}/inspect"
    sent = _form(client, address) | {TREAD: "5"}
    assert _keep(client, car, sent).json["says"] == "Kept at 9:00 am."
    offered = client.get(address)
    assert "Go on with what was filled in at 9:00 am" in offered.text and not Fields(offered.text).sent
    assert "half filled by you" in client.get("/shop-floor/").text
    assert _form(client, _went_on_at(offered))[TREAD] == "5"
    asked = client.get(re.search(r'href="([^"]+/drop)"', offered.text)[1])  # type: ignore[index]  # fails where it is missing
    assert "Throw away what was filled in" in asked.text and len(_rows(floor)) == 1
    press = {"csrf_token": sent["csrf_token"], "revision": "1"}
    assert client.post(re.search(r'action="([^"]+/drop)"', asked.text)[1], data=press).status_code == 303  # type: ignore[index]  # fails where it is missing
    assert not _rows(floor)
    assert _form(client, address)[TREAD] == ""


def test_more_filled_in_since_the_question_is_not_thrown_away(floor: Floor, car: int) -> None:
    client = floor.sign_in("technician")
    sent = _form(client, f"/shop-floor/cars/{car}/inspect") | {TREAD: "5"}
    _keep(client, car, sent)
    _keep(client, car, sent | {PAD: "6"})
    draft = _rows(floor)[0]["id"]
    client.post(f"/shop-floor/drafts/{draft}/drop", data={"csrf_token": sent["csrf_token"], "revision": "1"})
    assert _rows(floor)[0]["fields"][PAD] == "6"


def test_the_same_post_again_is_one_draft_and_another_page_overwrites_nothing(floor: Floor, car: int) -> None:
    """The page may not have heard the answer, so it sends what it knew before."""
    client, address = floor.sign_in("technician"), f"/shop-floor/cars/{car}/inspect"
    first, second = _form(client, address) | {TREAD: "5"}, _form(client, address) | {TREAD: "9"}
    for _ in range(3):
        assert client.post(f"/shop-floor/cars/{car}/draft", data=first, headers=JSON).status_code == 200
    refused = _keep(client, car, second)
    assert refused.status_code == 409 and "on another page" in refused.json["says"]
    (row,) = _rows(floor)
    assert row["fields"][TREAD] == "5"
    # Whoever loads it again goes on; the first page is told in its turn.
    loaded = _form(client, f"{address}?draft={row['id']}") | {TREAD: "6"}
    assert _keep(client, car, loaded).status_code == 200
    assert client.post(f"/shop-floor/cars/{car}/draft", data=first, headers=JSON).status_code == 409
    assert _rows(floor)[0]["fields"][TREAD] == "6"


@pytest.mark.parametrize("is_known", [True, False])
def test_a_form_sent_twice_makes_one_inspection_and_its_draft_goes_with_it(
    floor: Floor, car: int, is_known: bool
) -> None:
    client = floor.sign_in("technician")
    where = f"/shop-floor/cars/{car}" if is_known else "/shop-floor"
    sent = _form(client, f"{where}/inspect") | {TREAD: "5"}
    late = dict(sent)
    assert client.post(f"{where}/draft", data=sent, headers=JSON).status_code == 200
    answers = [client.post(f"{where}/inspect", data=sent) for _ in range(2)]
    assert [one.status_code for one in answers] == [303, 303]
    assert answers[0].location == answers[1].location
    with floor.house.store.read() as connection:
        kept = select(func.count()).where(tables.inspections.c.code == sent["inspection"])
        assert connection.execute(kept).scalar() == 1
        assert connection.execute(select(func.count()).select_from(tables.vehicles)).scalar() == 1 + (not is_known)
    assert not _rows(floor)
    # A post that comes late brings nothing back.
    answer = client.post(f"{where}/draft", data=late, headers=JSON)
    assert answer.status_code == 409 and answer.json["why"] == "kept"
    assert not _rows(floor)


def test_what_could_not_be_kept_yet_is_kept_as_it_was_typed(floor: Floor, car: int) -> None:
    client, address = floor.sign_in("technician"), f"/shop-floor/cars/{car}/inspect"
    sent = _form(client, address) | {TREAD: "five", PAD: "6.5"}
    assert client.post(address, data=sent).status_code == 422
    again = _form(client, _went_on_at(client.get(address)))
    assert (again[TREAD], again[PAD]) == ("five", "6.5")
    assert client.post(address, data=again | {TREAD: "5"}).status_code == 303
    assert not _rows(floor)


def test_another_technicians_form_is_shown_as_theirs_and_may_be_taken_over(floor: Floor, car: int) -> None:
    theirs, mine, address = floor.sign_in("technician"), floor.sign_in("manager"), f"/shop-floor/cars/{car}/inspect"
    sent = _form(theirs, address) | {TREAD: "5"}
    _keep(theirs, car, sent)
    draft = _rows(floor)[0]["id"]
    page = mine.get(address).text
    assert "Take it over from Technician Example" in page and "Begin one of your own" in page
    assert "half filled by Technician Example" in mine.get("/shop-floor/").text
    assert mine.get(f"{address}?draft={draft}").status_code == 303, "one reads it by taking it over"
    token = token_on(mine, "/account")
    taken = mine.post(f"/shop-floor/drafts/{draft}/take", data={"csrf_token": token, "revision": "1"})
    assert taken.status_code == 303
    own = _form(mine, taken.location)
    assert own[TREAD] == "5"
    # Their page says so, in place of keeping or sending beside it.
    for answer in (_keep(theirs, car, sent), theirs.post(address, data=sent)):
        assert answer.status_code == 409 and "Manager Example took this form over" in answer.text
    assert mine.post(address, data=own).status_code == 303
    assert not _rows(floor)


def test_a_form_that_went_on_or_beside_one_of_my_own_is_not_taken(floor: Floor, car: int) -> None:
    theirs, mine, address = floor.sign_in("technician"), floor.sign_in("manager"), f"/shop-floor/cars/{car}/inspect"
    sent = _form(theirs, address) | {TREAD: "5"}
    own = _form(mine, address) | {TREAD: "7"}
    _keep(theirs, car, sent)
    draft, token = _rows(floor)[0]["id"], own["csrf_token"]
    _keep(theirs, car, sent | {PAD: "6"})
    mine.post(f"/shop-floor/drafts/{draft}/take", data={"csrf_token": token, "revision": "1"})
    assert "went on with it just now" in mine.get("/shop-floor/").text
    assert _keep(mine, car, own).status_code == 200
    mine.post(f"/shop-floor/drafts/{draft}/take", data={"csrf_token": token, "revision": "2"})
    assert "You have a half-filled form of your own for this car" in mine.get("/shop-floor/").text
    assert {row["fields"][TREAD] for row in _rows(floor)} == {"5", "7"}
    # Each is kept for itself; the other's stays.
    assert mine.post(address, data=own).status_code == 303
    assert [row["fields"][TREAD] for row in _rows(floor)] == ["5"]


def test_it_is_kept_for_as_long_as_the_shop_says_and_the_list_says_until_when(
    floor: Floor, car: int, tmp_path: Path
) -> None:
    client, address = floor.sign_in("technician"), f"/shop-floor/cars/{car}/inspect"
    sent = _form(client, address) | {TREAD: "5"}
    _keep(client, car, sent)
    draft = _rows(floor)[0]["id"]
    assert "thrown away on Dec 1 at 9:00 am" in client.get("/shop-floor/").text
    _later(tmp_path, days=6, hours=23)
    floor.house.settle(floor.shop_id)
    client = floor.sign_in("technician")
    assert _form(client, f"{address}?draft={draft}")[TREAD] == "5"
    _later(tmp_path, days=7, minutes=1)
    assert "Half filled" not in client.get("/shop-floor/").text
    assert client.get(f"{address}?draft={draft}").status_code == 404
    floor.house.settle(floor.shop_id)
    assert not _rows(floor)
    # A tablet that slept for longer still holds its page: what it sends then is kept.
    sent["csrf_token"] = token_on(client, "/account")
    assert _keep(client, car, sent).status_code == 200 and _rows(floor)[0]["fields"][TREAD] == "5"


def test_another_shops_draft_is_not_there(floor: Floor, car: int) -> None:
    store = floor.house.store
    other = add_shop(store, "oak", "+13125550110")
    with store.write() as connection:
        member = staff.add(connection, other, "kim", "Kim", "technician", passwords.hash_password(PASSWORD), BEGIN)
    typed = TypedSoFar(None, "", "F-1", None, {TREAD: "5"}, "a page")
    draft = keep_draft(store, other, member, typed, BEGIN).draft_id
    client = floor.app.test_client()
    form = {"login": "owner", "password": PASSWORD, "shop": "elm", "csrf_token": token_on(client, "/sign-in")}
    assert client.post("/sign-in", data=form).status_code == 303
    press = {"csrf_token": token_on(client, "/account"), "revision": "1"}
    assert client.get(f"/shop-floor/inspect?draft={draft}").status_code == 404
    assert client.get(f"/shop-floor/drafts/{draft}/drop").status_code == 404
    for what in ("drop", "take"):
        assert client.post(f"/shop-floor/drafts/{draft}/{what}", data=press).status_code == 404
    # Nor does a page that names it write into it.
    sent = _form(client, f"/shop-floor/cars/{car}/inspect") | {"draft": f"{draft}.1", "page": "a page", TREAD: "9"}
    assert _keep(client, car, sent).status_code == 200
    assert {(row["shop_id"], row["fields"][TREAD]) for row in _rows(floor)} == {(other, "5"), (floor.shop_id, "9")}


@pytest.mark.parametrize("way", ["inspect", "draft"])
def test_a_login_that_ran_out_leads_back_to_the_form_with_everything_in_it(
    floor: Floor, car: int, tmp_path: Path, way: str
) -> None:
    client, address = floor.sign_in("technician"), f"/shop-floor/cars/{car}"
    sent = _form(client, f"{address}/inspect?part=lift") | {TREAD: "5", "customer.name": 'Ada "Bo" <Moreno>'}
    _later(tmp_path, hours=15)
    told = client.post(f"{address}/draft?part=lift", data=sent, headers=JSON)
    assert told.status_code == 401 and told.json == {"why": "signed_out"}
    page = client.post(f"{address}/{way}?part=lift", data=sent)
    assert page.status_code == 403 and "what you filled in is still there" in page.text
    sealed = re.search(r'name="carried" value="([^"]+)"', page.text)
    token = re.search(r'name="csrf_token" value="([^"]+)"', page.text)
    assert sealed and token
    form = {"login": "technician", "password": "wrong", "csrf_token": token[1], "carried": sealed[1]}
    again = client.post("/sign-in", data=form)
    assert again.status_code == 422 and sealed[1] in again.text, "a slip of the finger costs nothing"
    answer = client.post("/sign-in", data=form | {"password": PASSWORD})
    assert answer.status_code == 303
    shown = _form(client, answer.location)
    assert {name: shown[name] for name in sent if name not in ("csrf_token", "draft", "page")} == {
        name: value for name, value in sent.items() if name not in ("csrf_token", "draft", "page")
    }
    assert _rows(floor)[0]["part"] == "lift"


def test_what_is_carried_over_a_sign_in_is_ours_alone(floor: Floor, car: int, tmp_path: Path) -> None:
    client, address = floor.sign_in("technician"), f"/shop-floor/cars/{car}/inspect"
    sent = _form(client, address) | {TREAD: "5"}
    _later(tmp_path, hours=15)
    # Without the session's form token nothing is taken up.
    assert client.post(address, data=sent | {"csrf_token": "made-up"}).status_code == 303
    page = client.post(address, data=sent).text
    sealed = re.search(r'name="carried" value="([^"]+)"', page)[1]  # type: ignore[index]  # fails where it is missing
    for forged in (f"x{sealed}", sealed[:-1], sealed.partition(".")[0], "a.b", "é.é", "."):
        form = {"login": "technician", "password": PASSWORD, "csrf_token": token_on(client, "/sign-in")}
        answer = client.post("/sign-in", data=form | {"carried": forged})
        assert answer.status_code == 303 and answer.location == "/", forged
        client.post("/sign-out", data={"csrf_token": token_on(client, "/account")})
    assert not _rows(floor)


def test_a_form_of_the_session_before_is_shown_again_with_everything_in_it(floor: Floor, car: int) -> None:
    client, address = floor.sign_in("technician"), f"/shop-floor/cars/{car}/inspect"
    sent = _form(client, address) | {TREAD: "5"}
    form = {"login": "technician", "password": PASSWORD, "csrf_token": token_on(client, "/sign-in")}
    assert client.post("/sign-in", data=form).status_code == 303
    answer = client.post(address, data=sent)
    assert answer.status_code == 400 and "signed in anew" in answer.text
    assert not _rows(floor), "nothing is kept by a token of another session"
    shown = Fields(answer.text).sent
    assert shown[TREAD] == "5" and shown["inspection"] == sent["inspection"]
    assert client.post(address, data=shown).status_code == 303


def test_a_number_that_an_advisor_typed_is_kept_and_not_shown_to_a_technician(floor: Floor) -> None:
    advisor, technician = floor.sign_in("advisor"), floor.sign_in("technician")
    typed = {TREAD: "5", "customer.name": "Ada Moreno", "customer.phone": "+13125550147", "vehicle.id": "V-9"}
    sent = _form(advisor, "/shop-floor/inspect") | typed
    assert advisor.post("/shop-floor/draft", data=sent, headers=JSON).status_code == 200
    draft, token = _rows(floor)[0]["id"], token_on(technician, "/account")
    taken = technician.post(f"/shop-floor/drafts/{draft}/take", data={"csrf_token": token, "revision": "1"})
    page = technician.get(taken.location).text
    assert "5550147" not in page and "Ada Moreno" in page
    own = Fields(page).sent | {PAD: "6"}
    assert technician.post("/shop-floor/draft", data=own, headers=JSON).status_code == 200
    assert technician.post("/shop-floor/inspect", data=own).status_code == 303
    with floor.house.store.read() as connection:
        kept = people.find_vehicle(connection, floor.shop_id, "V-9")
        assert kept
        (body,) = inspections.bodies_of_vehicle(connection, kept["id"])
        assert body["body"]["customer"]["phone"] == "+13125550147"


def test_a_correction_that_is_half_filled_stays_a_correction(floor: Floor, car: int) -> None:
    client = floor.sign_in("technician")
    sent = _form(client, f"/shop-floor/cars/{car}/inspect") | {TREAD: "5"}
    kept = client.post(f"/shop-floor/cars/{car}/inspect", data=sent).location
    corrected = _form(client, f"{kept}/correct") | {TREAD: "6"}
    assert _keep(client, car, corrected).status_code == 200
    assert _form(client, f"/shop-floor/cars/{car}/inspect")[TREAD] == "", "a new inspection is another matter"
    again = _form(client, _went_on_at(client.get(f"{kept}/correct")))
    assert again[TREAD] == "6" and again["inspection"] == sent["inspection"]
    assert client.post(f"/shop-floor/cars/{car}/inspect", data=again).status_code == 303
    assert not _rows(floor)
    late = _keep(client, car, corrected)
    assert late.status_code == 409 and late.json["why"] == "kept"


def test_a_page_that_does_not_fit_is_told_so(floor: Floor, car: int) -> None:
    client = floor.sign_in("technician")
    sent = _form(client, f"/shop-floor/cars/{car}/inspect")
    for wrong in ({"made.up": "1"}, {"inspection": "x" * 300}, {"page": ""}, {"corrects": "1 OR 1"}):
        assert _keep(client, car, sent | wrong).status_code == 422, wrong
    assert _keep(client, car, sent | {TREAD: "5\x00\x1b[31m", "draft": "9" * 40 + ".1"}).status_code == 200
    assert _rows(floor)[0]["fields"][TREAD] == "5[31m"
