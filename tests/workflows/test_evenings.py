"""What happens at 22:40, when nobody is in the shop: symptoms and stops do not wait for the morning.

Bars: a symptom is answered within 60 s and alerts whoever is on call; a stop is confirmed within five minutes
(47 CFR 64.1200(a)(12)) and nothing else leaves to the number.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta

from followup.core.wall import to_wall
from followup.storage import alerts, consents, shops
from followup.storage.rows import Row
from tests.workflows.demo import Demo

LATE = "2026-11-23T22:40"
SYMPTOM = "my brakes feel soft and the pedal goes to the floor"


def _alerts(demo: Demo, kind: str) -> list[Row]:
    with demo.house.store.read() as connection:
        return [row for row in alerts.open_alerts(connection, demo.shop_id) if row["kind"] == kind]


def test_a_symptom_at_night_is_answered_and_wakes_the_on_call_person(demo: Demo) -> None:
    number = demo.a_planned_invite()["number"]
    _, owners_phone = demo.owner()
    received_at = demo.at(LATE)
    demo.write(number, SYMPTOM)
    demo.run("2026-11-23T22:41")
    answer = demo.texts_to(number)[-1]
    assert answer["reason"] == "caution_now_closed"
    assert answer["state"] == "sent"
    assert answer["sent_at"] - received_at <= timedelta(seconds=60)
    assert "stop as soon as it is safe" in answer["body"]
    assert "911" in answer["body"]
    # It may say so because the alert was accepted before: staff alerts leave first.
    assert "We have alerted our on-call person" in answer["body"]
    told = demo.shown(owners_phone)
    assert len(told) == 1
    assert told[0]["at"] <= answer["sent_at"]
    assert "brakes" not in told[0]["body"]


def test_a_caution_never_overtakes_its_alert(demo: Demo) -> None:
    """The hook answers between two ticks: a sender that came first wrote "nobody reads this" to whom somebody read."""
    number = demo.a_planned_invite()["number"]
    demo.at(LATE)
    demo.write(number, SYMPTOM)
    demo.house.send(demo.shop_id)
    assert "We have alerted our on-call person" in demo.texts_to(number)[-1]["body"]


def test_without_anybody_on_call_it_says_that_nobody_reads_and_is_the_first_call_of_the_morning(demo: Demo) -> None:
    with demo.house.store.write() as connection:
        roster = shops.load_roster(connection, demo.shop_id)
        shops.save_duty(connection, demo.shop_id, replace(roster, on_call=None), "test", demo.house.now())
    number = demo.a_planned_invite()["number"]
    demo.at(LATE)
    demo.write(number, SYMPTOM)
    demo.run("2026-11-23T22:41")
    answer = demo.texts_to(number)[-1]
    assert answer["reason"] == "caution_now_closed"
    assert "nobody reads this until" in answer["body"]
    assert "alerted" not in answer["body"]
    waiting = _alerts(demo, "symptom_now")
    assert len(waiting) == 1
    opens = to_wall(waiting[0]["next_at"], demo.zone)
    assert (opens.isoformat(), waiting[0]["step"]) == ("2026-11-24T07:30:00", 0)
    demo.run("2026-11-24T07:31")
    assert _alerts(demo, "symptom_now")[0]["step"] >= 1


def test_the_next_is_told_until_somebody_says_that_they_are_calling(demo: Demo) -> None:
    number = demo.a_planned_invite()["number"]
    demo.at("2026-11-23T11:00")
    demo.write(number, SYMPTOM)
    demo.run("2026-11-23T11:01")
    assert _alerts(demo, "symptom_now")[0]["step"] == 1
    demo.run("2026-11-23T11:06")
    assert _alerts(demo, "symptom_now")[0]["step"] == 2
    owner_id, _ = demo.owner()
    with demo.house.store.write() as connection:
        assert alerts.acknowledge(
            connection, demo.shop_id, _alerts(demo, "symptom_now")[0]["id"], owner_id, demo.house.now()
        )
    demo.run("2026-11-23T11:30")
    assert _alerts(demo, "symptom_now")[0]["step"] == 2


def test_after_a_symptom_the_machine_is_silent(demo: Demo) -> None:
    number = demo.a_planned_invite()["number"]
    demo.at("2026-11-23T09:30")
    demo.write(number, SYMPTOM)
    demo.run("2026-11-23T09:31")
    count = len(demo.shown(number))
    demo.write(number, "ok what day can i come")
    demo.run("2026-11-23T18:00")
    # Nor does the invite of that morning leave.
    assert len(demo.shown(number)) == count


def test_a_stop_at_night_is_confirmed_at_once_and_nothing_else_leaves(demo: Demo) -> None:
    number = demo.a_planned_invite()["number"]
    received_at = demo.at(LATE)
    demo.write(number, "STOP")
    demo.run("2026-11-23T22:41")
    shown = demo.texts_to(number)
    stopped = [row for row in shown if row["reason"] == "stopped"]
    assert len(stopped) == 1
    assert stopped[0]["state"] == "sent"
    assert stopped[0]["sent_at"] - received_at <= timedelta(minutes=5)
    with demo.house.store.read() as connection:
        assert consents.standing_of(connection, demo.shop_id, number).is_stopped
    demo.write(number, "stop")
    demo.run_weekly(4)
    left = [row for row in demo.texts_to(number) if row["state"] == "sent" and row["sent_at"] >= received_at]
    assert [row["reason"] for row in left] == ["stopped"]


def test_a_stop_between_planning_and_sending_is_in_time(demo: Demo) -> None:
    invite = demo.a_planned_invite()
    demo.at("2026-11-23T09:59")
    demo.write(invite["number"], "stop")
    demo.run("2026-11-23T12:00")
    assert [row["reason"] for row in demo.texts_to(invite["number"]) if row["state"] == "sent"] == ["stopped"]
