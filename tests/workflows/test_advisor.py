"""What an advisor does, on a real database.

Sources: this project's rules for the trade (states, duty, consent); 47 CFR 64.1200(a)(10): a stop may be told by any
reasonable means, so one told at the counter binds like one by text.
"""

from __future__ import annotations

from collections.abc import Callable
from datetime import UTC, date, datetime, timedelta

import pytest

from followup.core.consent import ConsentEntry
from followup.core.conversation.effects import AlertKind
from followup.core.duty import CLOCKS
from followup.storage import alerts, consents, inbox, outcomes, people
from followup.storage.requests import SomebodyWasFirst
from followup.workflows import (
    answer_alert,
    enter_recall,
    find_customers,
    keep_visit,
    look_at_car,
    look_at_phone_list,
    look_at_requests,
    look_at_thread,
    look_at_today,
    note_running_late,
    pause_customer,
    settle_held_text,
    settle_requests,
    take_back_consent,
    write_to_customer,
)
from followup.workflows.keep_visit import Advice, WorkDone
from tests.workflows.counter import NOW, NUMBER, SECRET, Counter, open_counter

WHO = "Avery Stone"
# Tuesday, December 1, 9:00 in the morning in Chicago.
NINE = datetime(2026, 12, 1, 15, 0, tzinfo=UTC)


@pytest.fixture
def counter(database_url: str) -> Counter:
    """The shop with its one customer, on SQLite and where it is found on PostgreSQL."""
    return open_counter(database_url)


def test_confirming_closes_the_alert_and_plans_one_confirmation(counter: Counter) -> None:
    made = counter.ask()
    settle_requests.confirm_request(counter.store, counter.shop_id, made, 1, NINE, counter.by, NOW)
    assert [one["reason"] for one in counter.texts("planned")].count("confirmation") == 1
    assert counter.alerts() == []
    assert counter.request(made)["state"] == "confirmed"


def test_a_second_confirm_with_the_old_version_is_refused_and_changes_nothing(counter: Counter) -> None:
    made = counter.ask()
    settle_requests.confirm_request(counter.store, counter.shop_id, made, 1, NINE, counter.by, NOW)
    later = NINE + timedelta(hours=2)
    with pytest.raises(SomebodyWasFirst):
        settle_requests.confirm_request(counter.store, counter.shop_id, made, 1, later, counter.by, NOW)
    assert counter.request(made)["slot_at"] == NINE
    assert [one["reason"] for one in counter.texts("planned")].count("confirmation") == 1


@pytest.mark.parametrize("how", ["counter", "phone", "e-mail"])
def test_a_stop_while_a_booking_stands_goes_to_the_phone_list_and_keeps_the_time(
    counter: Counter, how: take_back_consent.How
) -> None:
    made = counter.ask()
    settle_requests.confirm_request(counter.store, counter.shop_id, made, 1, NINE, counter.by, NOW)
    assert _take_back(counter, how)
    listed = look_at_phone_list.look_at_phone_list(counter.store, counter.shop_id)
    assert [(one.kind, one.request_id, one.whom.name) for one in listed] == [("phone_task", made, "Ana Marlow")]
    assert (counter.request(made)["state"], counter.request(made)["slot_at"]) == ("confirmed", NINE)
    assert counter.texts("planned") == []


def test_a_stop_told_in_person_binds_the_number(counter: Counter) -> None:
    counter.plan()
    _take_back(counter, "counter")
    with counter.store.read() as connection:
        standing = consents.standing_of(connection, counter.shop_id, NUMBER)
    assert (standing.is_stopped, standing.covers) == (True, frozenset())
    assert [one["state"] for one in counter.texts()] == ["dropped"]
    assert look_at_phone_list.look_at_phone_list(counter.store, counter.shop_id) == ()


def _take_back(counter: Counter, how: take_back_consent.How) -> bool:
    return take_back_consent.take_back_consent(
        counter.store, counter.shop_id, counter.phone_id, how, "", WHO, NOW, SECRET
    )


def _write(counter: Counter, at: datetime = NOW) -> write_to_customer.Written:
    return write_to_customer.write_to_customer(
        counter.store, counter.shop_id, counter.phone_id, "See you then", counter.staff_id, at
    )


def test_own_words_never_leave_against_a_stop(counter: Counter) -> None:
    _take_back(counter, "phone")
    counter.write_in("call me", NOW + timedelta(minutes=1))
    assert "stop" in (_write(counter, NOW + timedelta(minutes=2)).why_not or "")
    assert counter.texts() == []


def test_own_words_need_the_consent_for_visits_or_a_text_of_theirs(counter: Counter) -> None:
    entry = ConsentEntry(NUMBER, "narrowed", ("visits",), NOW, date(2026, 11, 24), "text_in")
    with counter.store.write() as connection:
        consents.append(connection, counter.shop_id, entry, SECRET, "test")
    assert _write(counter).why_not
    counter.write_in("are you open?")
    assert _write(counter).leaves_at == NOW


def test_own_words_wait_for_the_hours_of_visit_texts_and_silence_the_machine(counter: Counter) -> None:
    # 22:40 in Chicago; texts about a visit leave from 8:00 on.
    late = datetime(2026, 11, 25, 4, 40, tzinfo=UTC)
    assert _write(counter, late).leaves_at == datetime(2026, 11, 25, 14, 0, tzinfo=UTC)
    assert counter.conversation()["person_at"] == late.isoformat()
    assert write_to_customer.give_back(counter.store, counter.shop_id, counter.phone_id, WHO, late)
    assert counter.conversation()["person_at"] is None
    text = counter.texts("planned")[0]
    assert (text["author_id"], text["facts"]["message"]) == (counter.staff_id, "See you then")


def test_too_many_words_are_refused_with_what_to_do(counter: Counter) -> None:
    done = write_to_customer.write_to_customer(
        counter.store, counter.shop_id, counter.phone_id, "x" * 601, counter.staff_id, NOW
    )
    assert "601" in (done.why_not or "")


def _close(counter: Counter, alert_id: int) -> bool:
    return answer_alert.close_alert(
        counter.store, counter.shop_id, alert_id, "called, is fine", counter.staff_id, WHO, NOW
    )


def test_the_outcome_of_the_last_symptom_gives_the_thread_back(counter: Counter) -> None:
    counter.remember(open_symptom="now")
    first, second = counter.alert("symptom_now", "brakes"), counter.alert("symptom_today", "a noise")
    assert _close(counter, first)
    assert counter.conversation()["open_symptom"] == "now"
    assert _close(counter, second)
    assert counter.conversation()["open_symptom"] is None
    assert not _close(counter, second)


def test_other_outcomes_end_no_symptom(counter: Counter) -> None:
    counter.remember(open_symptom="now")
    counter.alert("symptom_now", "brakes")
    _close(counter, counter.alert("complaint", "too late"))
    assert counter.conversation()["open_symptom"] == "now"


def test_whoever_says_it_first_is_calling(counter: Counter) -> None:
    alert = counter.alert("call_me", "wants a call")
    assert answer_alert.say_calling(counter.store, counter.shop_id, alert, counter.staff_id, NOW)
    assert not answer_alert.say_calling(counter.store, counter.shop_id, alert, counter.staff_id, NOW)
    seen = look_at_today.look_at_alert(counter.store, counter.shop_id, alert)
    assert seen is not None
    assert (seen.calling, seen.calling_at) == (WHO, NOW)
    with counter.store.read() as connection:
        assert alerts.due_alerts(connection, counter.shop_id, NOW) == []


def test_today_lists_alerts_by_urgency_and_leaves_calls_to_the_phone_list(counter: Counter) -> None:
    for kind in ("phone_task", "price", "call_me", "symptom_now", "listed"):
        counter.alert(kind, kind)
    counter.ask()
    seen = look_at_today.look_at_today(counter.store, counter.shop_id, NOW)
    assert [one.kind for one in seen.alerts] == ["symptom_now", "call_me", "price"]
    assert (len(seen.requests), seen.calls) == (1, 2)


def test_every_kind_of_alert_has_its_place_on_today(counter: Counter) -> None:
    kinds = {*CLOCKS, *AlertKind.__args__, "phone_task", "listed"}  # type: ignore[attr-defined]  # of a Literal
    assert kinds == set(look_at_today.URGENCY)
    assert set(look_at_phone_list.KINDS) == set(look_at_today.ON_THE_PHONE_LIST)


def test_a_booking_of_today_and_a_car_in_the_shop(counter: Counter) -> None:
    made = counter.ask()
    at = NOW + timedelta(hours=2)
    settle_requests.confirm_request(counter.store, counter.shop_id, made, 1, at, counter.by, NOW, overrules=True)
    keep_visit.open_visit(counter.store, counter.shop_id, counter.vehicle_id, None, WHO, NOW)
    seen = look_at_today.look_at_today(counter.store, counter.shop_id, NOW)
    assert [(on, [one.id for one in booked]) for on, booked in seen.days] == [
        (date(2026, 11, 24), [made]), (date(2026, 11, 25), []),
    ]  # fmt: skip
    assert [one.whom.car for one in seen.in_shop] == ["blue wagon"]


def test_times_that_the_customer_named_come_first_and_are_free(counter: Counter) -> None:
    page = look_at_requests.look_at_request(counter.store, counter.shop_id, counter.ask(), NOW)
    assert page is not None
    assert (page.free[0].start, page.free[0].is_named) == (NINE, True)
    assert dict(page.free[0].labor_left) == {"brakes": pytest.approx(8.0 * 0.85)}
    other = counter.ask("any time", wanted=[])
    settle_requests.confirm_request(counter.store, counter.shop_id, other, 1, NINE, counter.by, NOW)
    again = look_at_requests.look_at_request(counter.store, counter.shop_id, 1, NOW)
    assert again is not None
    assert NINE not in [one.start for one in again.free]


def test_unknown_parts_offer_no_time(counter: Counter) -> None:
    made = counter.ask(parts="unknown")
    page = look_at_requests.look_at_request(counter.store, counter.shop_id, made, NOW)
    assert page is not None
    assert (page.free, page.parts_known) == ((), False)
    settle_requests.set_parts(
        counter.store, counter.shop_id, made, 1, "ordered", date(2026, 12, 2), counter.by, NOW
    )  # fmt: skip
    page = look_at_requests.look_at_request(counter.store, counter.shop_id, made, NOW)
    assert page is not None
    # Parts on Wednesday plus one working day.
    assert page.parts_known
    assert min(one.start for one in page.free).date() == date(2026, 12, 3)


def test_running_late_keeps_the_booking_and_closes_its_alert(counter: Counter) -> None:
    made = counter.ask(state="confirmed", slot_at=NINE)
    counter.alert("running_late", "20 minutes")
    args = (counter.staff_id, WHO, NOW)
    assert note_running_late.note_running_late(counter.store, counter.shop_id, made, *args)
    assert (counter.request(made)["state"], counter.request(made)["version"]) == ("confirmed", 1)
    assert "running_late" not in [one["kind"] for one in counter.alerts()]
    assert not note_running_late.note_running_late(counter.store, counter.shop_id, 99, *args)


@pytest.mark.parametrize(
    ("settle", "state"), [(settle_held_text.send_again, "planned"), (settle_held_text.leave_it, "dropped")]
)
def test_a_held_text_moves_by_a_click_and_only_once(counter: Counter, settle: Callable[..., bool], state: str) -> None:
    text = counter.hold()
    assert settle(counter.store, counter.shop_id, text, WHO, NOW)
    assert counter.texts()[0]["state"] == state
    assert not settle_held_text.send_again(counter.store, counter.shop_id, text, WHO, NOW)
    assert counter.texts()[0]["state"] == state


def test_a_held_text_whose_time_ran_out_gets_a_new_one_and_its_report_still_counts(counter: Counter) -> None:
    text, later = counter.hold(), NOW + timedelta(days=30)
    assert settle_held_text.send_again(counter.store, counter.shop_id, text, WHO, later)
    assert counter.texts()[0]["valid_until"] > later
    held = counter.hold(cause="other")
    with counter.store.write() as connection:
        outcomes.bind_delivery(connection, held, 1, "SM1", "delivered", None, NOW)
    assert not settle_held_text.send_again(counter.store, counter.shop_id, held, WHO, NOW)


def test_a_letter_that_fits_nobody_is_put_away_once(counter: Counter) -> None:
    with counter.store.write() as connection:
        inbox.add_dead_letter(connection, counter.shop_id, NOW, "no such number", {"from": "123", "body": "hi"})
    seen = look_at_today.look_at_today(counter.store, counter.shop_id, NOW).letters
    assert [(one.number, one.words) for one in seen] == [("123", "hi")]
    assert settle_held_text.settle_letter(counter.store, counter.shop_id, seen[0].id, WHO, NOW)
    assert not settle_held_text.settle_letter(counter.store, counter.shop_id, seen[0].id, WHO, NOW)


def test_a_pause_drops_queued_invites_and_ends(counter: Counter) -> None:
    counter.plan()
    counter.plan("confirmation", facts={"items": [], "time": NINE.isoformat()})
    until = date(2026, 12, 24)
    assert pause_customer.pause_customer(counter.store, counter.shop_id, counter.person_id, until, WHO, NOW)
    assert [(one["reason"], one["state"]) for one in counter.texts()] == [
        ("due_work", "dropped"), ("confirmation", "planned"),
    ]  # fmt: skip
    with counter.store.read() as connection:
        assert people.person_of(people.load_person(connection, counter.shop_id, 1) or {}).paused_until == until
    assert pause_customer.pause_customer(counter.store, counter.shop_id, counter.person_id, None, WHO, NOW)
    assert not pause_customer.pause_customer(counter.store, counter.shop_id, 99, None, WHO, NOW)


def test_opening_a_visit_drops_invites_and_opens_it_once(counter: Counter) -> None:
    counter.plan()
    first = keep_visit.open_visit(counter.store, counter.shop_id, counter.vehicle_id, 49_000, WHO, NOW)
    again = keep_visit.open_visit(counter.store, counter.shop_id, counter.vehicle_id, None, WHO, NOW)
    assert first == again is not None
    assert counter.texts("planned") == []
    assert keep_visit.open_visit(counter.store, counter.shop_id, 99, None, WHO, NOW) is None


def test_what_was_written_at_a_visit_is_what_planning_sees(counter: Counter) -> None:
    """An item in the work lines or just declined gets no invite (trade rules)."""
    visit = keep_visit.open_visit(counter.store, counter.shop_id, counter.vehicle_id, None, WHO, NOW)
    assert visit is not None
    args = (counter.store, counter.shop_id, visit)
    assert keep_visit.add_work(*args, WorkDone("brake_pad", "front", "replaced"), WHO, NOW) == {}
    declined = Advice("tire_tread", "front_left", "declined", "price", None, WHO)
    assert keep_visit.add_advice(*args, declined, WHO, NOW) == {}
    assert keep_visit.close_visit(*args, 49_100, WHO, NOW) == counter.vehicle_id
    assert keep_visit.close_visit(*args, None, WHO, NOW) is None
    page = look_at_car.look_at_car(counter.store, counter.shop_id, counter.vehicle_id, NOW)
    assert page is not None
    assert [(one.item, one.did) for one in page.work] == [("brake_pad", "replaced")]
    assert [(one.item, one.because) for one in page.advice] == [("tire_tread", "price")]
    assert page.visits[0].odometer_miles == 49_100
    # The price was the reason: a person calls, no text.
    assert page.plans[0].decision.text is None
    assert [task.items for task in page.plans[0].decision.phone_tasks] == [(("tire_tread", "front_left"),)]
    assert keep_visit.add_work(*args, WorkDone("brake_pad", "front", "replaced"), WHO, NOW) == {
        "": "This visit is closed."
    }


@pytest.mark.parametrize(
    ("advice", "field"),
    [
        (Advice("brake_pad", "front", "later", None, None, None), "until"),
        (Advice("brake_pad", "spare", "approved", None, None, None), "position"),
        (Advice("no_such_item", "", "approved", None, None, None), "item"),
        (Advice("brake_pad", "front", "perhaps", None, None, None), "decision"),
        (Advice("brake_pad", "front", "declined", "weather", None, None), "because"),
    ],
)
def test_advice_that_makes_no_sense_is_refused_by_its_field(counter: Counter, advice: Advice, field: str) -> None:
    visit = keep_visit.open_visit(counter.store, counter.shop_id, counter.vehicle_id, None, WHO, NOW)
    assert visit is not None
    assert set(keep_visit.add_advice(counter.store, counter.shop_id, visit, advice, WHO, NOW)) == {field}


def test_the_thread_is_in_order_of_time_with_its_ledger(counter: Counter) -> None:
    counter.plan()
    counter.write_in("yes", NOW - timedelta(minutes=5), {"meanings": ["accept"], "certainty": 0.9})
    page = look_at_thread.look_at_thread(counter.store, counter.shop_id, counter.phone_id, NOW)
    assert page is not None
    assert [one.is_theirs for one in page.lines] == [True, False]
    assert page.lines[1].because == "brake pads are coming due"
    assert [entry.event for entry in page.ledger] == ["given"]
    assert page.may_not_write is None
    assert look_at_thread.look_at_thread(counter.store, counter.shop_id, 99, NOW) is None


def test_a_car_says_why_no_text_leaves(counter: Counter) -> None:
    _take_back(counter, "phone")
    page = look_at_car.look_at_car(counter.store, counter.shop_id, counter.vehicle_id, NOW)
    assert page is not None
    assert page.plans[0].decision.text is None
    assert page.plans[0].decision.why_not
    places = [place for place, _ in page.places]
    assert places == ["front_left", "rear_left", ""]
    conditions = {(one.item, one.position): one.condition for _, found in page.places for one in found}
    assert conditions["brake_pad", "rear_left"] == "not checked"
    assert conditions["lights", ""] == "keep an eye on it"
    assert all(len(row.dates) == 20 for row in page.due)


def test_a_car_says_when_its_first_item_is_due(counter: Counter) -> None:
    """No later than the earliest alone; what is topped off free here is no work and does not count."""
    page = look_at_car.look_at_car(counter.store, counter.shop_id, counter.vehicle_id, NOW)
    assert page is not None and page.first is not None and page.first.likely is not None
    assert page.first.on == page.today
    work = [one for one in page.due if one.item not in counter.shop().rules.free_services]
    assert page.first.likely <= min(max(one.likely_on, page.today) for one in work if one.likely_on)
    assert (page.first.item, page.first.position) in {(one.item, one.position) for one in work}
    found = find_customers.find_customers(counter.store, counter.shop_id, "", NOW)
    assert [one.first for one in found if one.whom.vehicle_id == counter.vehicle_id] == [page.first]


def test_a_recall_is_entered_once(counter: Counter) -> None:
    args = (counter.store, counter.shop_id, counter.vehicle_id, "R-1", "your dealer", WHO, NOW)
    assert enter_recall.enter_recall(*args)
    assert not enter_recall.enter_recall(*args)


def test_another_shop_sees_and_moves_nothing_of_this_one(counter: Counter) -> None:
    made, alert, text, other = counter.ask(), counter.alert("call_me", "x"), counter.hold(), counter.shop_id + 1
    assert look_at_requests.look_at_request(counter.store, other, made, NOW) is None
    assert look_at_today.look_at_alert(counter.store, other, alert) is None
    assert look_at_thread.look_at_thread(counter.store, other, counter.phone_id, NOW) is None
    assert look_at_car.look_at_car(counter.store, other, counter.vehicle_id, NOW) is None
    assert not answer_alert.close_alert(counter.store, other, alert, "x", counter.staff_id, WHO, NOW)
    assert not settle_held_text.send_again(counter.store, other, text, WHO, NOW)
    assert not pause_customer.pause_customer(counter.store, other, counter.person_id, None, WHO, NOW)
    assert find_customers.find_customers(counter.store, other, "", NOW) == ()
