"""What a calendar fetches at a secret address, through the program's own workflows.

Sources: RFC 5545; RFC 9110, 13.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from datetime import timedelta

import pytest
from flask import Flask
from flask.testing import FlaskClient
from sqlalchemy import update
from werkzeug.test import TestResponse

from followup.core.shop import ShopRules
from followup.storage import calendars, shops, staff, tables
from followup.web.calendars.files import MOST_WRONG, WITHIN_MINUTES
from followup.workflows import keep_feeds, settle_requests
from tests.calendar_reader import Component, read
from tests.web.conftest import token_on
from tests.web.house import TestHouse
from tests.web.test_headers import check_headers
from tests.workflows.counter import NOW, NUMBER, Counter, fill

ADVISOR_ID, OWNER_ID = 2, 4
STARTS = NOW + timedelta(days=7, hours=1)


@pytest.fixture
def counter(house: TestHouse) -> Counter:
    """One customer of the house's shop, with an inspected car; the clock stands where its workflows do."""
    house.instant = NOW
    return fill(house.store, 1, ADVISOR_ID)


def feed(counter: Counter, *, is_own: bool = False, staff_id: int = ADVISOR_ID) -> str:
    """The address of a new feed."""
    made = keep_feeds.new_feed(counter.store, 1, "the tablet", is_own=is_own, staff_id=staff_id, now=NOW)
    return f"/calendar/{made}.ics"


def fetch(app: Flask, address: str, **headers: str) -> TestResponse:
    """What a calendar program gets, without any session."""
    return app.test_client().get(address, headers=headers)


def events(answer: TestResponse) -> list[Component]:
    """The entries of a file."""
    assert answer.status_code == 200
    assert answer.headers["Content-Type"] == "text/calendar; charset=utf-8"
    return read(answer.data).inside


def confirm(counter: Counter, request_id: int, days: int = 7, hour: int = 1) -> None:
    """The advisor confirms a time."""
    version = counter.request(request_id)["version"]
    at = NOW + timedelta(days=days, hours=hour)
    settle_requests.confirm_request(counter.store, 1, request_id, version, at, counter.by, NOW, overrules=True)


def allow_links(counter: Counter) -> None:
    """The shop puts links into its confirmations."""
    with counter.store.write() as connection:
        shops.save_rules(connection, 1, ShopRules(links_visit=True), "a test", NOW, "")


def link_of(counter: Counter, request_id: int) -> str:
    """The address that the confirmation tells."""
    with counter.store.read() as connection:
        code = calendars.code_of_visit(connection, counter.shop(), counter.request(request_id))
    assert code
    return f"/v/{code}.ics"


def test_a_feed_says_when_which_car_comes_in_for_what_and_how_it_stands(app: Flask, counter: Counter) -> None:
    confirm(counter, counter.ask(needs=["wait"]))
    (event,) = events(fetch(app, feed(counter)))
    assert (event.value("DTSTART"), event.value("STATUS")) == ("20261201T160000Z", "CONFIRMED")
    assert "blue wagon" in event.text("SUMMARY") and "Brake pad" in event.text("SUMMARY")
    assert "State: confirmed" in event.text("DESCRIPTION") and "Labor: brakes 1 h" in event.text("DESCRIPTION")
    assert "wait" in event.text("DESCRIPTION")


def test_it_tells_no_name_no_number_and_nothing_that_they_wrote(app: Flask, counter: Counter) -> None:
    made = counter.ask("My brakes are grinding, Tuesday at 9", note="she smells burning")
    for step in (lambda: None, lambda: confirm(counter, made)):
        step()
        told = fetch(app, feed(counter)).text
        for secret in ("Marlow", "Ana", NUMBER[-7:], "555", "grinding", "burning", "TEST 147"):
            assert secret not in told


def test_each_state_of_a_request_is_shown_under_one_id(app: Flask, counter: Counter) -> None:
    address, made = feed(counter), counter.ask()
    asked = events(fetch(app, address))[0]
    starts = [STARTS, STARTS + timedelta(hours=2)]
    settle_requests.offer_times(counter.store, 1, made, 1, starts, counter.by, NOW)
    offered = events(fetch(app, address))
    confirm(counter, made)
    confirmed = events(fetch(app, address))
    settle_requests.close_request(counter.store, 1, made, 3, "no time fits", counter.by, NOW)
    closed = events(fetch(app, address))
    assert [len(one) for one in (offered, confirmed, closed)] == [2, 1, 1]
    told = [asked, offered[0], confirmed[0], closed[0]]
    assert [one.value("STATUS") for one in told] == ["TENTATIVE", "TENTATIVE", "CONFIRMED", "CANCELLED"]
    assert len({one.value("UID") for one in told}) == 1
    assert [int(one.value("SEQUENCE")) for one in told] == [0, 1, 2, 3]
    assert [one.text("SUMMARY").partition(":")[0] for one in told][:2] == ["Asked", "Offered"]


def test_an_advisors_feed_holds_their_customers_alone(app: Flask, counter: Counter) -> None:
    counter.ask()
    own, whole = feed(counter, is_own=True), feed(counter)
    assert (len(events(fetch(app, own))), len(events(fetch(app, whole)))) == (0, 1)
    with counter.store.write() as connection:
        connection.execute(update(tables.persons).values(advisor_id=ADVISOR_ID))
    assert len(events(fetch(app, own))) == 1


def test_what_has_not_changed_is_not_sent_again(app: Flask, counter: Counter, house: TestHouse) -> None:
    address, made = feed(counter), counter.ask()
    first = fetch(app, address)
    house.instant = NOW + timedelta(hours=5)
    again = fetch(app, address, **{"If-None-Match": first.headers["ETag"]})
    assert (again.status_code, again.data, again.headers["ETag"]) == (304, b"", first.headers["ETag"])
    confirm(counter, made)
    assert fetch(app, address, **{"If-None-Match": first.headers["ETag"]}).status_code == 200
    assert "no-cache" in first.headers["Cache-Control"] and "private" in first.headers["Cache-Control"]


def test_the_secret_is_kept_by_its_hash_alone_and_told_once(
    counter: Counter, signed_in: Callable[[str], FlaskClient]
) -> None:
    client = signed_in("advisor")
    form = {"name": "my phone", "whose": "own", "csrf_token": token_on(client, "/account")}
    (address,) = re.findall(
        r"http://127.0.0.1:8000(/calendar/[\w-]{43}\.ics)", client.post("/advisor/calendar", data=form).text
    )
    assert client.get(address).status_code == 200
    token = address.removeprefix("/calendar/").removesuffix(".ics")
    assert token not in client.get("/advisor/calendar").text
    with counter.store.read() as connection:
        assert token not in str(calendars.feeds_of_shop(connection, 1))


def test_a_withdrawn_address_tells_nothing_at_once(
    app: Flask, counter: Counter, signed_in: Callable[[str], FlaskClient]
) -> None:
    address = feed(counter)
    client = signed_in("advisor")
    assert "Withdraw the address" in client.get("/advisor/calendar/1/withdraw").text
    client.post("/advisor/calendar/1/withdraw", data={"csrf_token": token_on(client, "/account")})
    answer = fetch(app, address)
    assert answer.status_code == 404
    check_headers(answer)
    assert client.get("/advisor/calendar/1/withdraw").status_code == 404


def test_only_its_maker_or_who_leads_the_shop_withdraws(app: Flask, counter: Counter, house: TestHouse) -> None:
    address = feed(counter, staff_id=OWNER_ID)
    assert not keep_feeds.withdraw_feed(counter.store, 1, 1, ADVISOR_ID, NOW)
    assert fetch(app, address).status_code == 200
    assert keep_feeds.withdraw_feed(counter.store, 1, 1, OWNER_ID, NOW)
    other = feed(counter, staff_id=ADVISOR_ID)
    assert keep_feeds.withdraw_feed(counter.store, 1, 2, OWNER_ID, NOW)
    assert fetch(app, other).status_code == 404


def test_it_ends_with_the_account_of_its_maker(app: Flask, counter: Counter) -> None:
    address = feed(counter)
    with counter.store.write() as connection:
        staff.set_active(connection, ADVISOR_ID, False)
    assert fetch(app, address).status_code == 404


def test_it_opens_nothing_else(app: Flask, counter: Counter) -> None:
    token = feed(counter).removeprefix("/calendar/").removesuffix(".ics")
    bearer = {"Authorization": f"Bearer {token}"}
    assert app.test_client().post("/api/v1/inspections", headers=bearer, json={}).status_code == 401


def test_a_visits_link_shows_that_visit_alone_until_its_day_is_over(
    app: Flask, counter: Counter, house: TestHouse
) -> None:
    allow_links(counter)
    other, made = counter.ask("Friday"), counter.ask()
    confirm(counter, other, days=3)
    confirm(counter, made)
    answer = fetch(app, link_of(counter, made))
    (event,) = events(answer)
    assert event.value("DTSTART") == "20261201T160000Z"
    assert event.text("SUMMARY") == "Visit to Elm Street Auto" and "blue wagon" in event.text("DESCRIPTION")
    assert "brake" not in answer.text and "URL" not in event.names
    house.instant = NOW + timedelta(days=7, hours=14)
    assert fetch(app, link_of(counter, made)).status_code == 200
    house.instant = NOW + timedelta(days=7, hours=15)  # midnight at the shop
    assert fetch(app, link_of(counter, made)).status_code == 404


def test_the_link_follows_a_move_and_tells_a_visit_that_was_called_off(app: Flask, counter: Counter) -> None:
    allow_links(counter)
    made = counter.ask()
    confirm(counter, made)
    link = link_of(counter, made)
    before = events(fetch(app, link))[0]
    moved = counter.ask("Thursday instead", replaces_id=made)
    assert events(fetch(app, link))[0].value("DTSTART") == before.value("DTSTART"), "the old time stands until then"
    confirm(counter, moved, days=9)
    assert link_of(counter, moved) == link
    after = events(fetch(app, link))[0]
    assert (after.value("UID"), after.value("DTSTART")) == (before.value("UID"), "20261203T160000Z")
    assert int(after.value("SEQUENCE")) > int(before.value("SEQUENCE"))
    (whole,) = events(fetch(app, feed(counter)))
    assert (whole.value("UID"), whole.value("STATUS")) == (before.value("UID"), "CONFIRMED")
    version = counter.request(moved)["version"]
    settle_requests.close_request(counter.store, 1, moved, version, "no time fits", counter.by, NOW)
    assert events(fetch(app, link))[0].value("STATUS") == "CANCELLED"


def test_a_wish_that_came_to_nothing_is_an_entry_of_its_own(app: Flask, counter: Counter) -> None:
    made = counter.ask()
    confirm(counter, made)
    wish = counter.ask("Thursday instead", replaces_id=made)
    settle_requests.close_request(counter.store, 1, wish, 1, "no time fits", counter.by, NOW)
    again = counter.ask("Friday then", replaces_id=made)
    confirm(counter, again, days=10)
    found = {one.value("UID").partition("@")[0]: one.value("STATUS") for one in events(fetch(app, feed(counter)))}
    assert found == {f"visit-{made}": "CONFIRMED", f"visit-{wish}": "CANCELLED"}


def test_who_tries_many_addresses_is_not_looked_at(app: Flask, counter: Counter, house: TestHouse) -> None:
    address = feed(counter)
    for number in range(MOST_WRONG):
        assert fetch(app, f"/v/guess{number}.ics").status_code == 404
    refused = fetch(app, address)
    assert refused.status_code == 429
    check_headers(refused)
    assert 0 < int(refused.headers["Retry-After"]) <= WITHIN_MINUTES * 60
    elsewhere = app.test_client().get(address, environ_base={"REMOTE_ADDR": "192.0.2.7"})
    assert elsewhere.status_code == 200
    house.instant = NOW + timedelta(minutes=WITHIN_MINUTES, seconds=1)
    assert fetch(app, address).status_code == 200
