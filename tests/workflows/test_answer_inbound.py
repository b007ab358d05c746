"""Whole conversations on the demo shop, as customers type: from an invite to a request, and what must not happen.

Expected answers: this project's reply contract and rules.
"""

from __future__ import annotations

from datetime import date

import pytest

from followup.storage import alerts, inspections, requests
from followup.storage.rows import Row
from tests.workflows.demo import Demo


@pytest.fixture
def number(demo: Demo) -> str:
    """A customer with one car who got the demo's first invite."""
    with demo.house.store.read() as connection:
        from followup.storage import outbox, people

        for row in outbox.queued_texts(connection, demo.shop_id):
            persons = people.persons_of_phone(connection, row["phone_id"])
            cars = people.vehicles_of_persons(connection, [one["id"] for one in persons])
            if row["reason"] == "due_work" and row["language"] == "en" and len(persons) == len(cars) == 1:
                found = str(row["number"])
                break
    demo.run("2026-11-23T11:30")
    assert demo.shown(found)[-1]["body"].endswith("Reply STOP to stop texts.")
    return found


def _say(demo: Demo, number: str, body: str) -> str:
    """Write, let the clock tick, and give back the answer ("" where the machine is silent)."""
    before = len(demo.shown(number))
    demo.write(number, body)
    demo.run()
    after = demo.shown(number)
    return str(after[-1]["body"]) if len(after) > before else ""


def _requests(demo: Demo, *states: str) -> list[Row]:
    with demo.house.store.read() as connection:
        found = requests.requests_of_shop(connection, demo.shop_id, states or requests.OPEN)
    return [row for row in found if row["came_from"] == "text"]


def _alerts(demo: Demo) -> list[str]:
    with demo.house.store.read() as connection:
        return [row["kind"] for row in alerts.open_alerts(connection, demo.shop_id) if row["inbound_id"]]


def test_a_yes_is_asked_for_a_day_and_the_day_makes_a_request(demo: Demo, number: str) -> None:
    assert "Which day" in _say(demo, number, "yes pls")
    assert _requests(demo) == []
    answer = _say(demo, number, "thursday 2pm")
    # November 26, 2026, is Thanksgiving: the shop is closed.
    assert "closed on Thursday, November 26" in answer
    answer = _say(demo, number, "friday then, at 2")
    assert "Friday, November 27 at 2:00 PM" in answer
    assert "not booked yet" in answer
    (made,) = _requests(demo)
    assert made["wanted"] == [{"start": "2026-11-27T14:00:00", "end": None, "grain": "time"}] or made["wanted"][0][
        "start"
    ].startswith("2026-11-27T14:00")
    assert "request" in _alerts(demo)


def test_a_closed_day_beside_an_open_one_is_not_read_back(demo: Demo, number: str) -> None:
    answer = _say(demo, number, "wed or thu after 3")
    assert "Wednesday, November 25" in answer
    assert "November 26" not in answer


def test_the_items_of_the_invite_stand_in_the_request_with_their_hours(demo: Demo, number: str) -> None:
    _say(demo, number, "tomorrow morning")
    (made,) = _requests(demo)
    assert made["items"]
    assert sum(made["hours"].values()) > 0
    assert made["verbatim"] == "tomorrow morning"


def test_a_no_rests_the_items_and_is_taken_at_its_word(demo: Demo, number: str) -> None:
    assert "leave it for now" in _say(demo, number, "no thanks")
    with demo.house.store.read() as connection:
        rests = inspections.rests_of_vehicle(connection, demo.texts_to(number)[-1]["vehicle_id"])
    assert rests
    assert {row["because"] for row in rests} == {"no"}
    demo.run_weekly(8)
    later = [row for row in demo.texts_to(number) if row["kind"] == "invite" and row["state"] == "sent"]
    items = {tuple(one) for one in later[0]["facts"]["items"]}
    assert all(not items & {tuple(one) for one in row["facts"]["items"]} for row in later[1:])


def test_what_was_done_is_only_what_was_named(demo: Demo, number: str) -> None:
    """Nobody who had one filter changed hears that brakes and tires are done too, nor are those left alone for it."""
    told = demo.shown(number)[-1]["body"]
    assert "Front tires:" in told and "Rear brake rotors:" in told
    answer = _say(demo, number, "already got new tires elsewhere")
    assert "it is done: front tires." in answer
    with demo.house.store.read() as connection:
        rests = inspections.rests_of_vehicle(connection, demo.texts_to(number)[-1]["vehicle_id"])
    assert {(one["item"], one["because"]) for one in rests} == {("tire_tread", "done")}


def test_later_with_a_month_is_kept(demo: Demo, number: str) -> None:
    answer = _say(demo, number, "not now, ask me again in march")
    assert "March" in answer
    with demo.house.store.read() as connection:
        rests = inspections.rests_of_vehicle(connection, demo.texts_to(number)[-1]["vehicle_id"])
    assert {row["until"] for row in rests} == {date(2027, 3, 1)}


def test_a_price_is_never_made_up(demo: Demo, number: str) -> None:
    answer = _say(demo, number, "how much would that be?")
    assert "$" not in answer
    assert "until you approve a price" in answer
    assert "price" in _alerts(demo)


def test_a_judgment_gets_what_was_measured_and_a_call(demo: Demo, number: str) -> None:
    answer = _say(demo, number, "is it safe to drive to my sisters with the kids?")
    assert "cannot judge that by text" in answer
    assert "judgment" in _alerts(demo)


def test_help_is_answered_and_changes_nothing(demo: Demo, number: str) -> None:
    assert "Reply STOP" in _say(demo, number, "HELP")
    assert "Which day" in _say(demo, number, "yes")


def test_who_asks_for_a_person_gets_one_and_the_machine_is_silent(demo: Demo, number: str) -> None:
    assert "will call you" in _say(demo, number, "can somebody call me please")
    assert "call_me" in _alerts(demo)
    assert _say(demo, number, "tuesday 9am") == ""


def test_who_says_nothing_is_written_to_again(demo: Demo, number: str) -> None:
    """The other side of the tests below: without an answer, more invites leave within the same weeks."""
    demo.run_weekly(4)
    sent = [row for row in demo.texts_to(number) if row["state"] == "sent" and row["kind"] == "invite"]
    assert len(sent) > 1


def test_a_stranger_is_written_to_no_more(demo: Demo, number: str) -> None:
    assert "wrong number" in _say(demo, number, "wrong number, dont know you")
    demo.run_weekly(4)
    sent = [row for row in demo.texts_to(number) if row["state"] == "sent" and row["kind"] == "invite"]
    assert len(sent) == 1


def test_a_sold_car_is_written_about_no_more(demo: Demo, number: str) -> None:
    assert "no more about" in _say(demo, number, "sold that car last month")
    demo.run_weekly(4)
    sent = [row for row in demo.texts_to(number) if row["state"] == "sent" and row["kind"] == "invite"]
    assert len(sent) == 1


def test_the_same_text_posted_twice_is_answered_once(demo: Demo, number: str) -> None:
    from werkzeug.datastructures import MultiDict

    from followup.transports.local_phone import inbound_fields

    form = MultiDict(inbound_fields(number, demo.house.shop(demo.shop_id).texts_from, "how long does it take"))
    before = len(demo.shown(number))
    for _ in range(3):
        assert demo.house.receive_text(form)
    demo.run()
    assert len(demo.shown(number)) == before + 1


def test_only_a_stop_is_told_after_confirm_stop_is_not_answered(demo: Demo, number: str) -> None:
    answer = _say(demo, number, "please fewer texts about tires")
    assert "Shall we stop" in answer
    demo.run_weekly(4)
    after = demo.texts_to(number)
    last = max(i for i, row in enumerate(after) if row["reason"] == "ask_confirm_stop")
    assert [row["state"] for row in after[last + 1 :] if row["state"] == "sent"] == []


def test_what_nobody_can_read_goes_to_a_person_once(demo: Demo, number: str) -> None:
    assert "One of us will read" in _say(demo, number, "qzxv wvbq ptrk")
    assert "unclear" in _alerts(demo)


def test_what_is_only_asked_for_can_be_called_off_in_two_words(demo: Demo, number: str) -> None:
    _say(demo, number, "yes, monday at 9")
    assert len(_requests(demo)) == 1
    assert _say(demo, number, "cancel it")
    assert _requests(demo) == []


def test_what_is_only_asked_for_can_be_changed(demo: Demo, number: str) -> None:
    _say(demo, number, "yes, monday at 9")
    demo.run("2026-11-23T12:00")
    assert "day" in _say(demo, number, "need to change it")
    assert "Tuesday, November 24 at 10:00 AM" in _say(demo, number, "tuesday at 10")
    (made,) = _requests(demo)
    assert [one["start"][:16] for one in made["wanted"]] == ["2026-11-24T10:00"]


def test_the_answer_is_in_the_language_that_the_customer_writes(demo: Demo, number: str) -> None:
    assert "Abrimos" in _say(demo, number, "si me interesa")
    assert "Tuesday, December 1" in _say(demo, number, "tuesday the 1st at 10 would be good for me")


def test_an_empty_text_is_read_by_a_person(demo: Demo, number: str) -> None:
    _say(demo, number, " ")
    assert "unclear" in _alerts(demo)
