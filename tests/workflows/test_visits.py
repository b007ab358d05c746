"""A visit from the confirmation to its end: reminder, move, cancel, missed and asked once more, and its calendar link.

Everything goes through the workflows: the customer writes, the clock plans and sends, an advisor settles. Source: the
trade rules of this project.
"""

from __future__ import annotations

import re
from datetime import datetime, timedelta
from typing import cast

import pytest

from followup.core.segments import segments
from followup.core.shop import ShopRules
from followup.core.wording_checks import MOST_SEGMENTS, check_wording
from followup.storage import requests, shops
from followup.storage.rows import Row
from followup.transports.transport import InboundText, Transport
from followup.workflows import keep_visit, settle_requests
from followup.workflows.answer_inbound import answer_waiting
from followup.workflows.change_rules import change_rules
from followup.workflows.keep_inbound import keep_inbound
from followup.workflows.plan_texts import plan_texts
from followup.workflows.send_texts import Sender, send_texts
from followup.workflows.settle_over_time import settle_over_time
from tests.workflows.counter import NOW, NUMBER, SECRET, Counter, Wire, open_counter

# Tuesday, December 1, 2026, 10:00 AM at the shop.
STARTS = NOW + timedelta(days=7, hours=1)
DAY = timedelta(days=1)
BASE = "https://texts.example.com"


@pytest.fixture
def counter(memory_url: str) -> Counter:
    """A shop with one customer who agreed to everything."""
    return open_counter(memory_url)


def send(counter: Counter, now: datetime, link_base: str = "") -> list[str]:
    """Let everything leave that may at that moment; the bodies."""
    wire = Wire()
    sender = Sender(
        cast(Transport, wire), "https://texts.example", True, None, SECRET, lambda _s: None, link_base=link_base
    )
    send_texts(counter.store, counter.shop_id, sender, lambda: now, "test")
    return [text.body for text in wire.handed]


def write(counter: Counter, body: str, now: datetime) -> None:
    """The customer writes and is answered."""
    keep_inbound(counter.store, InboundText(f"in-{body}-{now}", NUMBER, "+13125550101", body), now)
    answer_waiting(counter.store, counter.shop_id, now, SECRET)


def confirm(counter: Counter, request_id: int, start: datetime = STARTS, now: datetime = NOW) -> None:
    """An advisor confirms it."""
    version = counter.request(request_id)["version"]
    settle_requests.confirm_request(counter.store, counter.shop_id, request_id, version, start, counter.by, now)


def booked(counter: Counter, link_base: str = "", **values: object) -> int:
    """A booking that was asked for by text, confirmed and told."""
    made = counter.ask(**values)
    confirm(counter, made)
    assert "You are booked for Tuesday, December 1 at 10:00 AM" in send(counter, NOW, link_base)[0]
    return made


def newest(counter: Counter) -> Row:
    """The request that was made last."""
    with counter.store.read() as connection:
        return requests.requests_of_vehicle(connection, counter.vehicle_id)[0]


def end(counter: Counter, request_id: int, how: str, now: datetime) -> None:
    """An advisor writes down how it ended."""
    version = counter.request(request_id)["version"]
    settle_requests.end_booking(counter.store, counter.shop_id, request_id, version, how, counter.by, now)


# The reminder ----------------------------------------------------------------------------------------------------
def test_the_reminder_leaves_the_day_before_and_a_yes_keeps_the_booking(counter: Counter) -> None:
    made = booked(counter)
    assert send(counter, STARTS - 2 * DAY) == []
    the_day_before = STARTS - DAY
    assert send(counter, the_day_before - timedelta(minutes=1)) == []
    (reminder,) = send(counter, the_day_before)
    assert "See you Tuesday, December 1 at 10:00 AM with your blue wagon" in reminder
    write(counter, "yes", the_day_before + timedelta(minutes=5))
    assert counter.request(made)["state"] == "confirmed"
    with counter.store.read() as connection:
        says = [move["says"] for move in requests.moves_of_request(connection, made)]
    assert "the customer says that it stands" in says
    (answer,) = send(counter, the_day_before + timedelta(minutes=5))
    assert "Tuesday, December 1 at 10:00 AM" in answer
    assert send(counter, STARTS - timedelta(hours=1)) == []


def test_a_no_to_the_reminder_asks_for_another_day_and_the_time_stands_until_then(counter: Counter) -> None:
    made = booked(counter)
    at = STARTS - DAY
    send(counter, at)
    write(counter, "no that doesn't work", at + timedelta(minutes=5))
    assert counter.request(made)["state"] == "confirmed"
    (answer,) = send(counter, at + timedelta(minutes=5))
    assert "?" in answer
    write(counter, "Thursday at 2pm", at + timedelta(minutes=9))
    wish = newest(counter)
    assert (wish["replaces_id"], wish["state"], counter.request(made)["state"]) == (made, "asked", "confirmed")


def test_whoever_was_called_off_or_came_early_is_not_reminded(counter: Counter) -> None:
    made = booked(counter)
    settle_requests.close_request(counter.store, counter.shop_id, made, 2, "no time fits", counter.by, NOW)
    assert ["is canceled" in body for body in send(counter, NOW)] == [True]
    assert send(counter, STARTS - DAY) == []


def test_the_reminder_is_no_longer_wanted_while_the_car_is_in_the_shop(counter: Counter) -> None:
    booked(counter)
    keep_visit.open_visit(counter.store, counter.shop_id, counter.vehicle_id, 49_000, "Avery Stone", STARTS - 2 * DAY)
    assert send(counter, STARTS - DAY) == []


# Moves and cancels -----------------------------------------------------------------------------------------------
def test_a_move_keeps_the_old_time_until_the_new_one_is_confirmed(counter: Counter) -> None:
    made = booked(counter)
    write(counter, "can we move it to Thursday Dec 3 at 2pm?", NOW + DAY)
    (answer,) = send(counter, NOW + DAY)
    assert "Tuesday, December 1 at 10:00 AM" in answer and "Thursday" in answer
    wish = newest(counter)
    assert (wish["replaces_id"], wish["items"], wish["hours"]) == (made, [["brake_pad", "front_left"]], {"brakes": 1.0})
    assert counter.request(made)["state"] == "confirmed"
    confirm(counter, wish["id"], STARTS + 2 * DAY + timedelta(hours=4), NOW + DAY)
    assert (counter.request(made)["state"], counter.request(made)["closed_because"]) == ("closed", "moved")
    (told,) = send(counter, NOW + DAY)
    assert "Your visit is moved. You are booked for Thursday, December 3 at 2:00 PM" in told
    assert send(counter, STARTS - DAY) == [], "no reminder of the old time"
    assert "See you Thursday, December 3 at 2:00 PM" in send(counter, STARTS + DAY)[0]


def test_a_move_within_the_day_does_not_count_its_own_hours_twice(counter: Counter) -> None:
    with counter.store.write() as connection:
        rules = ShopRules(labor_hours={"general": 12.0, "tires": 6.0, "brakes": 1.2, "electric": 3.0})
        shops.save_rules(connection, counter.shop_id, rules, "a test", NOW, "")
    booked(counter)
    write(counter, "can we move it to Tuesday at 2pm?", NOW + DAY)
    wish = newest(counter)
    confirm(counter, wish["id"], STARTS + timedelta(hours=4), NOW + DAY)
    assert counter.request(wish["id"])["state"] == "confirmed"


def test_a_cancel_frees_the_time_and_ends_a_wish_to_move_it_too(counter: Counter) -> None:
    made = booked(counter)
    write(counter, "can we move it to Thursday Dec 3 at 2pm?", NOW + DAY)
    wish = newest(counter)["id"]
    send(counter, NOW + DAY)
    write(counter, "please cancel my appointment", NOW + DAY + timedelta(minutes=10))
    assert [counter.request(one)["state"] for one in (made, wish)] == ["closed", "closed"]
    assert len(send(counter, NOW + DAY + timedelta(minutes=10))) == 1
    assert send(counter, STARTS - DAY) == []
    assert [one for one in counter.alerts() if one["kind"] == "request"] == [], "nothing waits for an advisor"


# Missed, and asked once more -------------------------------------------------------------------------------------
def test_a_missed_booking_comes_back_once_with_its_work(counter: Counter) -> None:
    # Only this is written about in those weeks: the car's tires would be told too.
    others = {"send_worn_at_chance": 0.9, "near_at_chance": 0.99}
    assert change_rules(
        counter.store, counter.shop_id, ["timing"], others, counter.shop().rules_version, "Theo", "", NOW
    ).version
    made = booked(counter)
    send(counter, STARTS - DAY)
    end(counter, made, "missed", STARTS + timedelta(hours=2))
    told: list[tuple[str, datetime]] = []
    for days in range(30):
        now = STARTS + days * DAY + timedelta(hours=3)
        plan_texts(counter.store, counter.shop_id, now)
        told += [(body, now) for body in send(counter, now) if "set aside" in body]
    assert len(told) == 1, told
    body, at = told[0]
    assert "we had Tuesday, December 1 at 10:00 AM set aside for your blue wagon" in body
    write(counter, "sorry! Thursday at 10 works", at + timedelta(minutes=20))
    again = newest(counter)
    assert again["id"] != made and again["state"] == "asked"
    assert (again["items"], again["hours"]) == ([["brake_pad", "front_left"]], {"brakes": 1.0})


def test_whoever_booked_anew_or_came_is_not_asked(counter: Counter) -> None:
    made = booked(counter)
    end(counter, made, "missed", STARTS + timedelta(hours=2))
    counter.ask("Friday at 10 then", inbound_id=counter.write_in("Friday at 10 then", STARTS + timedelta(hours=3)))
    plan_texts(counter.store, counter.shop_id, STARTS + DAY)
    assert not any("set aside" in body for body in send(counter, STARTS + DAY))


# How it ended, where nobody says ---------------------------------------------------------------------------------
def test_a_visit_that_was_opened_on_its_day_was_kept(counter: Counter) -> None:
    made = booked(counter)
    opened = STARTS + timedelta(minutes=10)
    keep_visit.open_visit(counter.store, counter.shop_id, counter.vehicle_id, 49_000, "Avery Stone", opened)
    settle_over_time(counter.store, counter.shop_id, STARTS + timedelta(hours=3))
    assert counter.request(made)["state"] == "kept"


def test_where_no_visit_was_opened_somebody_is_asked_once(counter: Counter) -> None:
    made = booked(counter)
    settle_over_time(counter.store, counter.shop_id, STARTS + timedelta(hours=3))
    assert counter.request(made)["state"] == "confirmed"
    assert not any("did they come" in one["says"] for one in counter.alerts())
    for days in (1, 2, 3):
        settle_over_time(counter.store, counter.shop_id, STARTS + days * DAY)
    (asked,) = [one for one in counter.alerts() if "did they come" in one["says"]]
    assert (asked["request_id"], counter.request(made)["state"]) == (made, "confirmed")
    end(counter, made, "missed", STARTS + 3 * DAY)
    assert not any("did they come" in one["says"] for one in counter.alerts())


# The link in the confirmation ------------------------------------------------------------------------------------
def allow_links(counter: Counter) -> None:
    """The shop puts links into its confirmations."""
    with counter.store.write() as connection:
        shops.save_rules(connection, counter.shop_id, ShopRules(links_visit=True), "a test", NOW, "")


def test_the_confirmation_holds_a_link_of_the_shops_own_and_passes_the_checks(counter: Counter) -> None:
    allow_links(counter)
    confirm(counter, counter.ask())
    (body,) = send(counter, NOW, BASE)
    assert re.search(rf"{re.escape(BASE)}/v/\w{{12}}\.ics(?!\w)", body)
    facts = {"shop": "Elm Street Auto", "shop_phone": "(312) 555-0100", "time": "Tuesday, December 1 at 10:00 AM",
             "car": "blue wagon"}  # fmt: skip
    assert check_wording(body, "confirmation", "en", facts, own_domain="texts.example.com") == []
    elsewhere = check_wording(body, "confirmation", "en", facts, own_domain="another.example")
    assert [fault.rule for fault in elsewhere] == ["link"]


@pytest.mark.parametrize("changes", ["the shop does not want it", "no public address"])
def test_there_is_none_where_it_is_not_wanted_or_leads_nowhere(counter: Counter, changes: str) -> None:
    if changes == "no public address":
        allow_links(counter)
    confirm(counter, counter.ask())
    (body,) = send(counter, NOW, BASE if changes == "the shop does not want it" else "")
    assert "http" not in body and "Calendar" not in body


def test_a_confirmation_that_would_be_too_long_does_without_it(counter: Counter) -> None:
    allow_links(counter)
    with counter.store.write() as connection:
        connection.exec_driver_sql("update shops set address = ?", ("Old Mill Road, second court, " * 7,))
    confirm(counter, counter.ask())
    (body,) = send(counter, NOW, BASE)
    assert "http" not in body
    assert segments(body).count <= MOST_SEGMENTS["GSM-7"]["visit"]
