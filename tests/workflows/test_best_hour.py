"""The learned hour from texts and answers that were kept, over the plan, to the pages that say why."""

from __future__ import annotations

from datetime import UTC, datetime, timedelta
from typing import Any

import pytest

from followup.storage import answer_hours, inbox, outbox, rows, tables
from followup.workflows.change_rules import change_rules
from followup.workflows.look_at_car import look_at_car
from followup.workflows.look_at_hours import look_at_hours
from followup.workflows.look_at_thread import look_at_thread
from followup.workflows.plan_texts import look_at_plan, plan_texts
from tests.workflows import counter as counters
from tests.workflows.counter import NOW, Counter

# A Wednesday, 1:00 in the morning at the shop: the usual hour is 10:00 of that day.
NIGHT = datetime(2026, 12, 2, 7, 0, tzinfo=UTC)
# The car is due in May: this shop writes long before.
EARLY = {"lead_days": 120}
DAY = timedelta(days=1)


@pytest.fixture
def counter(database_url: str) -> Counter:
    """The shop with its customer, and 120 other phones that were invited at every hour and answered at 17:20."""
    found = counters.open_counter(database_url)
    _set(found, EARLY)
    with found.store.write() as connection:
        for number in range(120):
            phone_id = rows.add(connection, tables.phones, shop_id=found.shop_id, number=f"+1312555{1000 + number}",
                                zones=["America/Chicago"], created_at=NOW)  # fmt: skip
            # 10:00 to 17:00 at the shop, in weeks of standard time.
            left_at = datetime(2026, 1, 12, 16, 0, tzinfo=UTC) + timedelta(days=number % 40, hours=number % 8)
            _sent(connection, found, phone_id, left_at)
            _wrote(connection, found, phone_id, left_at.replace(hour=23, minute=20))
    return found


def _sent(connection: Any, counter: Counter, phone_id: int, left_at: datetime, **facts: Any) -> None:
    made = outbox.plan_text(connection, counter.shop_id, "free_service", f"test {left_at}", left_at, phone_id=phone_id,
                            number=f"+1312555{phone_id}", language="en", facts=facts)  # fmt: skip
    assert made is not None
    outbox.change_text(connection, made, state="sent", sent_at=left_at)


def _wrote(connection: Any, counter: Counter, phone_id: int, at: datetime, *meanings: str) -> None:
    meaning = {"meanings": list(meanings or ("accept",)), "certainty": 0.9, "language": "en"}
    assert inbox.keep_raw(connection, shop_id=counter.shop_id, provider_id=f"in {phone_id} {at}", number="+1312555",
                          phone_id=phone_id, body="ok", raw={}, received_at=at, handled_at=at,
                          meaning=meaning)  # fmt: skip


def _set(counter: Counter, rules: dict[str, Any]) -> None:
    version = counter.shop().rules_version
    answer = change_rules(counter.store, counter.shop_id, ["timing"], rules, version, "Theo", "", NOW)
    assert answer.version, answer.wrong


def test_as_shipped_an_invite_leaves_at_the_usual_hour_and_the_page_shows_what_was_learned(counter: Counter) -> None:
    assert plan_texts(counter.store, counter.shop_id, NIGHT) == 1
    (invite,) = counter.texts("planned")
    assert invite["due_at"] == datetime(2026, 12, 2, 16, 0, tzinfo=UTC)
    assert "hour" not in invite["facts"]
    seen = look_at_hours(counter.store, counter.shop_id, NIGHT)
    assert (seen.is_on, seen.texts, seen.answers, seen.groups) == (False, 120, 120, ())
    assert seen.best is not None and seen.best.hour in (15, 16, 17)
    assert {one.hour: one.answers for one in seen.hours if one.answers} == {17: 120}


def test_turned_on_it_leaves_shortly_before_customers_answer_and_every_page_says_why(counter: Counter) -> None:
    _set(counter, {"learns_hours": True})
    (ahead,) = [one.decision.text for one in look_at_plan(counter.store, counter.shop_id, NIGHT)]
    assert plan_texts(counter.store, counter.shop_id, NIGHT) == 1
    (invite,) = counter.texts("planned")
    assert invite["facts"]["hour"] == "learned", "the draw of this text; another one in ten keeps the usual hour"
    # 15:00 to 17:45 at the shop: within three hours of 17:20, and not in the last minutes of the allowed hours.
    assert datetime(2026, 12, 2, 21, 0, tzinfo=UTC) <= invite["due_at"] < datetime(2026, 12, 2, 23, 45, tzinfo=UTC)
    assert ahead is not None and ahead.leaves_at == invite["due_at"], "what the page told before is what was planned"
    says = "at this hour, because a quick answer is likeliest then (120 answers)"
    car = look_at_car(counter.store, counter.shop_id, counter.vehicle_id, NIGHT)
    assert car is not None
    assert [(one.at, one.hour_says) for one in car.ahead] == [(invite["due_at"], says)]
    thread = look_at_thread(counter.store, counter.shop_id, counter.phone_id, NIGHT)
    assert thread is not None and thread.lines[-1].because.endswith(says)


def test_a_customers_own_answers_move_the_own_text(counter: Counter) -> None:
    _set(counter, {"learns_hours": True})
    with counter.store.write() as connection:
        for number in range(8):
            left_at = datetime(2026, 3, 16, 15, 0, tzinfo=UTC) + 25 * number * DAY
            _sent(connection, counter, counter.phone_id, left_at)
            # 12:10 at the shop, in weeks of summer time.
            _wrote(connection, counter, counter.phone_id, left_at.replace(hour=17, minute=10))
    with counter.store.read() as connection:
        habits = answer_hours.learned_habits(connection, counter.shop(), NIGHT)
    own = habits.of_phone(counter.phone_id).habit
    other = habits.of_phone(-1).habit
    assert own.own_answers == 8 and own.own[12] > 2 > other.own[12] == 1.0
    assert own.own[10] < 1, "texts lay unanswered then"
    assert own.own[17] == 1, "nothing is known of it: noon had answered"


def test_a_stop_is_no_answer(counter: Counter) -> None:
    with counter.store.write() as connection:
        _sent(connection, counter, counter.phone_id, NIGHT - 20 * DAY)
        _wrote(connection, counter, counter.phone_id, NIGHT - 20 * DAY + timedelta(minutes=5), "stop")
        heard = answer_hours.heard_of_invites(connection, counter.shop_id, NIGHT)
    (mine,) = [one for _, one in heard if one.phone_id == counter.phone_id]
    assert mine.answered_at is None and mine.until == NIGHT - 20 * DAY + timedelta(minutes=5)


def test_the_page_holds_learned_hours_against_the_usual_one(counter: Counter) -> None:
    with counter.store.write() as connection:
        for number, (how, quick) in enumerate([("learned", True)] * 40 + [("usual", False)] * 40 + [("few", True)] * 9):
            phone_id = rows.add(connection, tables.phones, shop_id=counter.shop_id, number=f"+1312556{1000 + number}",
                                zones=[], created_at=NOW)  # fmt: skip
            _sent(connection, counter, phone_id, NIGHT - 9 * DAY, hour=how)
            _wrote(connection, counter, phone_id, NIGHT - 9 * DAY + timedelta(hours=1 if quick else 7))
        _sent(connection, counter, counter.phone_id, NIGHT - timedelta(hours=1), hour="learned")
    seen = look_at_hours(counter.store, counter.shop_id, NIGHT)
    assert [(one.words, one.texts, one.quick, one.median_hours) for one in seen.groups] == [
        ("learned hour", 40, 40, 1.0), ("usual hour, by lot", 40, 0, 7.0),
    ]  # fmt: skip
    assert seen.gain is not None and seen.gain[0] > 0.8
