"""Every page of the advisor renders what it must, for those who may see it, and each press does what it says."""

from __future__ import annotations

import re
from collections.abc import Callable
from datetime import date, datetime, timedelta

import pytest
from flask.testing import FlaskClient

from followup.core.forecast.first_due import FirstDue
from followup.web.advisor import said as say
from followup.workflows.look_at_car import look_at_car
from tests.web.advisor.conftest import Advisor
from tests.workflows.counter import NOW, Counter

PAGES = (
    "/advisor/", "/advisor/requests", "/advisor/requests/1", "/advisor/alerts/1", "/advisor/calls",
    "/advisor/find?q=ana", "/advisor/threads/1", "/advisor/cars/1", "/advisor/cars/1/book", "/advisor/visits/1",
)  # fmt: skip


@pytest.fixture
def busy(counter: Counter) -> Counter:
    """A bit of everything that these pages show."""
    counter.ask()
    counter.alert("symptom_now", "brakes", inbound_id=counter.write_in("my brakes are making a noise"))
    counter.alert("phone_task", "front pads past the legal limit, told at the last visit")
    counter.hold()
    counter.plan(cause="planned")
    return counter


def test_every_page_renders(busy: Counter, advisor: Advisor) -> None:
    for address in PAGES:
        assert "<main" in advisor.page(address)


def test_technicians_see_none_of_them(busy: Counter, signed_in: Callable[[str], FlaskClient]) -> None:
    client = signed_in("technician")
    for address in PAGES:
        assert client.get(address).status_code == 403, address


def test_today_begins_with_what_is_most_urgent(busy: Counter, advisor: Advisor) -> None:
    page = advisor.page("/advisor/")
    order = [
        page.index(words) for words in ("my brakes are making a noise", "Booking requests that wait", "Not sure it")
    ]
    assert order == sorted(order)
    for words in ("Ana Marlow", "blue wagon", "(312) 555-0147", "I am calling", "1 call"):
        assert words in page


def test_calling_then_the_outcome_closes_the_alert(busy: Counter, advisor: Advisor) -> None:
    busy.remember(open_symptom="now")
    alert = next(row["id"] for row in busy.alerts() if row["kind"] == "symptom_now")
    assert advisor.press(f"/advisor/alerts/{alert}/calling").headers["Location"] == f"/advisor/alerts/{alert}"
    assert "Advisor of Elm is calling" in advisor.page("/advisor/")
    assert advisor.press(f"/advisor/alerts/{alert}/outcome", outcome="").status_code == 422
    assert advisor.press(f"/advisor/alerts/{alert}/outcome", outcome="towed in, looked at today").status_code == 303
    assert "my brakes are making a noise" not in advisor.page("/advisor/")
    assert busy.conversation()["open_symptom"] is None


def test_a_request_shows_asked_beside_understood_and_confirms_in_one_press(counter: Counter, advisor: Advisor) -> None:
    made = counter.ask("Tuesday at 9 works")
    page = advisor.page(f"/advisor/requests/{made}")
    for words in ("Tuesday at 9 works", "Tuesday, December 1 at 9:00 AM", "4 mm", "surely", "tentative", "brakes"):
        assert words in page, words
    start = "2026-12-01T15:00:00+00:00"
    assert f'value="{start}"' in page
    assert advisor.press(f"/advisor/requests/{made}/confirm", version=1, start=start).status_code == 303
    assert counter.request(made)["state"] == "confirmed"
    assert "Dec 1, 2026, 9:00 am" in advisor.page(f"/advisor/requests/{made}")


def test_somebody_was_first_is_said_and_changes_nothing(counter: Counter, advisor: Advisor) -> None:
    made = counter.ask()
    fields = {"version": 1, "start": "2026-12-01T15:00:00+00:00"}
    advisor.press(f"/advisor/requests/{made}/confirm", **fields)
    advisor.press(f"/advisor/requests/{made}/close", version=1, because="no time fits")
    assert "Somebody changed this" in advisor.page(f"/advisor/requests/{made}")
    assert counter.request(made)["state"] == "confirmed"


def test_a_time_that_is_not_free_is_said_with_what_was_typed(counter: Counter, advisor: Advisor) -> None:
    made = counter.ask()
    fields = {"version": 1, "day": "2026-11-29", "time": "09:00", "does": "confirm"}
    answer = advisor.press(f"/advisor/requests/{made}/other-time", **fields)
    assert answer.status_code == 409
    assert "the shop is closed then" in answer.text
    assert 'value="2026-11-29"' in answer.text
    assert advisor.press(f"/advisor/requests/{made}/other-time", **fields, overrules="yes").status_code == 303
    assert counter.request(made)["state"] == "confirmed"


def test_parts_are_asked_once_before_a_time(counter: Counter, advisor: Advisor) -> None:
    made = counter.ask(parts="unknown")
    assert "No time is free until" in advisor.page(f"/advisor/requests/{made}")
    advisor.press(f"/advisor/requests/{made}/parts", version=1, parts="in_stock")
    assert "Confirm" in advisor.page(f"/advisor/requests/{made}")
    assert advisor.press(f"/advisor/requests/{made}/parts", version=2, parts="ordered", parts_on="").status_code == 422


def test_up_to_three_times_are_offered(counter: Counter, advisor: Advisor) -> None:
    made = counter.ask()
    starts = [f"2026-12-0{day}T15:00:00+00:00" for day in (1, 2, 3, 4)]
    advisor.press(f"/advisor/requests/{made}/offer", version=1, starts=starts)
    assert counter.request(made)["state"] == "asked"
    advisor.press(f"/advisor/requests/{made}/offer", version=1, starts=starts[:3])
    assert len(counter.request(made)["offered"]) == 3
    assert "times offered" in advisor.page(f"/advisor/requests/{made}")


def test_the_thread_tells_why_and_what_was_understood(counter: Counter, advisor: Advisor) -> None:
    counter.plan()
    counter.write_in("yes please", meaning={"meanings": ["accept"], "certainty": 0.75, "language": "en"})
    page = advisor.page(f"/advisor/threads/{counter.phone_id}")
    for words in ("Why did they get this?", "brake pads are coming due", "yes please", "Understood as: yes (probably)"):
        assert words in page, words


def test_own_words_leave_and_the_thread_is_given_back(counter: Counter, advisor: Advisor) -> None:
    address = f"/advisor/threads/{counter.phone_id}"
    assert advisor.press(f"{address}/write", words="Come any time").status_code == 303
    assert [one["reason"] for one in counter.texts("planned")] == ["from_a_person"]
    assert "Give the thread back" in advisor.page(address)
    advisor.press(f"{address}/give-back")
    assert "Give the thread back" not in advisor.page(address)


def test_taking_consent_back_by_phone_closes_the_pen(counter: Counter, advisor: Advisor) -> None:
    address = f"/advisor/threads/{counter.phone_id}"
    assert advisor.press(f"{address}/take-back", how="phone").status_code == 303
    page = advisor.page(address)
    assert "The number asked us to stop texting: taken back on" in page
    assert "Call instead." in page
    assert "stopped all texts" in page
    assert advisor.press(f"{address}/write", words="Hello").status_code == 422
    assert counter.texts("planned") == []


def test_a_pause_of_a_month(counter: Counter, advisor: Advisor) -> None:
    address = f"/advisor/threads/{counter.phone_id}"
    advisor.press(f"{address}/pause", person_id=counter.person_id, does="pause")
    assert "invites paused until" in advisor.page(address)
    advisor.press(f"{address}/pause", person_id=counter.person_id, does="end")
    assert "invites may leave" in advisor.page(address)


def test_the_car_shows_the_number_first_then_the_word(counter: Counter, advisor: Advisor) -> None:
    page = advisor.page(f"/advisor/cars/{counter.vehicle_id}")
    assert page.index("Left front") < page.index("Left rear") < page.index("The whole car")
    assert page.index("5/32") < page.index("4 mm")
    for words in (
        "keep an eye on it",
        "not checked",
        "drum",
        "48,210 mi",
        "TEST 147",
        "A text now?",
        "one chance in twenty",
    ):
        assert words in page, words


def test_booked_by_phone_in_two_presses(counter: Counter, advisor: Advisor) -> None:
    invite = counter.plan()
    address = f"/advisor/cars/{counter.vehicle_id}/book"
    assert "Brake pad LF" in advisor.page(address)
    fields = {"person_id": counter.person_id, "day": "2026-12-02", "time": "10:00", "came_from": "phone"}
    answer = advisor.press(address, **fields, items=["brake_pad@front_left"])
    assert answer.status_code == 303
    booked = counter.request(int(answer.headers["Location"].rsplit("/", 1)[1]))
    assert (booked["state"], booked["items"]) == ("confirmed", [["brake_pad", "front_left"]])
    assert invite in [one["id"] for one in counter.texts("dropped")]


def test_a_free_time_is_booked_and_without_any_nothing(counter: Counter, advisor: Advisor) -> None:
    address = f"/advisor/cars/{counter.vehicle_id}/book"
    start = re.search(r'name="start" value="([^"]+)"', advisor.page(address))
    assert start
    fields = {"person_id": counter.person_id, "came_from": "counter", "items": ["brake_pad@front_left"]}
    answer = advisor.press(address, **fields)
    assert (answer.status_code, "Take one of the free times" in answer.text) == (422, True)
    assert advisor.press(address, **fields, start="tomorrow").status_code == 400
    assert advisor.press(address, **fields, start=start[1]).status_code == 303
    assert counter.request(1)["slot_at"] == datetime.fromisoformat(start[1])


def test_a_visit_from_opening_to_closing(counter: Counter, advisor: Advisor) -> None:
    answer = advisor.press(f"/advisor/cars/{counter.vehicle_id}/visits", odometer="49,000")
    visit = answer.headers["Location"]
    assert "Cars in the shop" in advisor.page("/advisor/")
    advisor.press(f"{visit}/work", item="wiper_blade", position="", did="replaced")
    answer = advisor.press(f"{visit}/work", item="wiper_blade", position="spare", did="replaced")
    assert (answer.status_code, "no such position" in answer.text) == (422, True)
    advice = {"advised_item": "brake_pad", "advised_position": "front", "decision": "later"}
    assert advisor.press(f"{visit}/advice", **advice, until="").status_code == 422
    assert advisor.press(f"{visit}/advice", **advice, until="2027-02-01").status_code == 303
    assert advisor.press(f"{visit}/close", odometer="49010").status_code == 303
    page = advisor.page(f"/advisor/cars/{counter.vehicle_id}")
    for words in ("49,010 mi", "replaced", "later, until", "told by Advisor of Elm"):
        assert words in page, words


def test_a_held_text_is_left_or_sent_by_a_click_alone(counter: Counter, advisor: Advisor) -> None:
    one, other = counter.hold(cause="one"), counter.hold(cause="other")
    advisor.press(f"/advisor/texts/{one}/again")
    advisor.press(f"/advisor/texts/{other}/leave")
    states = {row["id"]: row["state"] for row in counter.texts()}
    assert (states[one], states[other]) == ("planned", "dropped")
    advisor.press(f"/advisor/texts/{one}/leave")
    assert "settled in the meantime" in advisor.page("/advisor/")


def test_search_finds_by_name_plate_number_and_label(counter: Counter, advisor: Advisor) -> None:
    for asked in ("marlow", "TEST 147", "5550147", "(312) 555-0147", "wagon blue", ""):
        assert "Ana Marlow" in advisor.page(f"/advisor/find?q={asked}"), asked
    assert "Nobody fits" in advisor.page("/advisor/find?q=zzz")


def test_the_first_that_is_due_stands_on_the_car_and_in_the_list(counter: Counter, advisor: Advisor) -> None:
    seen = look_at_car(counter.store, counter.shop_id, counter.vehicle_id, NOW)
    assert seen is not None
    words = say.first_due(seen.first)
    for path in ("/advisor/find?q=ana", "/advisor/cars/1"):
        assert words in advisor.page(path), path


@pytest.mark.parametrize(
    ("early", "likely", "late", "words", "span"),
    [
        (NOW.date(), NOW.date(), date(2027, 1, 5), "Brake pad LF, now", ""),
        (date(2026, 12, 24), date(2027, 2, 3), date(2027, 4, 1), "Brake pad LF, likely Feb 2027",
         "early Thu, Dec 24, 2026, late Thu, Apr 1, 2027"),
        (date(2029, 1, 1), date(2032, 2, 3), None, "Brake pad LF, likely Feb 2032",
         "early Mon, Jan 1, 2029, late beyond ten years"),
        (None, None, None, "no date yet", ""),
    ],
)  # fmt: skip
def test_the_first_that_is_due_in_words(
    early: date | None, likely: date | None, late: date | None, words: str, span: str
) -> None:
    first = FirstDue(NOW.date(), early, likely, late, "brake_pad", "front_left")
    assert (say.first_due(first), say.first_due_span(first)) == (words, span)


def test_the_visit_that_is_past_is_noted_as_kept_or_missed(counter: Counter, advisor: Advisor) -> None:
    made = counter.ask(state="confirmed", slot_at=NOW + timedelta(days=7))
    advisor.press(f"/advisor/requests/{made}/late", version=1)
    assert "running late" in advisor.page(f"/advisor/requests/{made}")
    advisor.press(f"/advisor/requests/{made}/end", version=1, end="missed")
    assert counter.request(made)["state"] == "missed"
