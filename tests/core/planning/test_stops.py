"""Each condition that stops an invite, one by one, and that nothing is ever planned against one.

The conditions and their days are this project's own rules, after common practice of the trade.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from followup.core.consent import ConsentStanding
from followup.core.planning.decide import decide
from followup.core.planning.number_rules import about_reason, stops_of_number
from followup.core.planning.picture import BookingSeen, EarlierInvite, Rest
from followup.core.planning.stops import stops_against
from followup.core.visit import Recommendation, Visit, Work
from tests.core.planning.cars import (
    DUE_TIRE,
    LAST_VISIT,
    LOW_WASHER,
    MEASURED_ON,
    NOW,
    PERSON,
    PHONE,
    SHOP,
    days_ago,
    shop,
)
from tests.core.planning.cars import car as a_car

TODAY = date(2026, 3, 10)
STOPPED = ConsentStanding(frozenset(), True, None)
VISITS_ONLY = ConsentStanding(frozenset({"visits"}), False, None)


def invite(days: float, raised_by: str = "other", reason: str = "due_work", **more: Any) -> EarlierInvite:
    return EarlierInvite(reason, raised_by, 1, days_ago(days), more.get("vehicle", "C1"), more.get("items", ()))


def closed(days: float) -> Visit:
    return Visit("V2", days_ago(days + 0.2), days_ago(days))


def advised(decision: str, days: int, because: str | None = None, until: date | None = None) -> Recommendation:
    return Recommendation("tire_tread", "front_left", decision, TODAY - timedelta(days=days), because, until)


# Each case: the rule that must speak, and what is wrong with an otherwise well car.
STOPS: list[tuple[str, dict[str, Any]]] = [
    ("stopped_by_owner", {"shop": shop(is_sending_stopped=True)}),
    ("stopped_by_owner", {"shop": shop(is_everything_off=True)}),
    ("registration", {"needs_registration": True}),
    # A note on the shop's page is no registration: the sender goes by the settings alone.
    ("registration", {"needs_registration": True, "shop": replace(SHOP, registration="B1234 C1234")}),
    ("bad_number", {"phone": replace(PHONE, bad_because="21614 not a mobile number")}),
    ("landline", {"phone": replace(PHONE, line="landline")}),
    ("landline", {"phone": replace(PHONE, line="fixed_voip")}),
    ("stop", {"consent": STOPPED}),
    ("no_consent", {"consent": VISITS_ONLY}),
    ("deceased", {"person": replace(PERSON, is_deceased=True)}),
    ("fleet", {"person": replace(PERSON, is_fleet=True)}),
    ("paused", {"person": replace(PERSON, paused_until=date(2026, 3, 11))}),
    ("gone", {"is_tie_over": True}),
    ("stranger", {"is_tie_held": True}),
    ("symptom", {"has_open_symptom": True}),
    ("complaint", {"has_open_complaint": True}),
    ("with_a_person", {"is_with_a_person": True}),
    ("visit_open", {"visits": (LAST_VISIT, Visit("V2", days_ago(0.1)))}),
    ("just_closed", {"visits": (closed(13),)}),
    ("just_closed", {"visits": (closed(29),), "complained_on": TODAY - timedelta(days=28)}),
    ("booked", {"bookings": (BookingSeen("B1", "asked", None, days_ago(2)),)}),
    ("booked", {"bookings": (BookingSeen("B1", "offered", None, days_ago(2)),)}),
    ("booked", {"bookings": (BookingSeen("B1", "confirmed", NOW + timedelta(days=3), days_ago(2)),)}),
    ("hours", {"phone": replace(PHONE, zones=("Asia/Tokyo",))}),
    ("spacing", {"invites": (invite(13.9),)}),
    ("spacing", {"invites": (invite(200), invite(13.9))}),
    ("cap_30", {"invites": (invite(29, "a"), invite(15, "b"))}),
    ("cap_365", {"invites": tuple(invite(31 + 40 * n, str(n)) for n in range(8))}),
    ("done", {"work": (Work("tire_tread", "front_left", "replaced", date(2026, 2, 1)),)}),
    ("done", {"rests": (Rest("tire_tread", "front_left", "done", date(2026, 2, 1)),)}),
    ("said_no", {"rests": (Rest("tire_tread", "front_left", "no", TODAY - timedelta(days=89)),)}),
    ("later", {"rests": (Rest("tire_tread", "front_left", "later", date(2026, 3, 1), date(2026, 3, 11)),)}),
    ("declined", {"recommendations": (advised("declined", 29, "time"),)}),
    ("declined", {"recommendations": (advised("later", 60, None, date(2026, 3, 11)),)}),
    ("declined_price", {"recommendations": (advised("declined", 90, "price"),)}),
    ("approved", {"recommendations": (advised("approved", 40),)}),
    (
        "declined_legal",
        {"due": (replace(DUE_TIRE, is_past_legal=True),), "recommendations": (advised("declined", 90, "think"),)},
    ),
]
# The day after a stop ends, or the case that only looks like one: nothing stops.
NO_STOPS: list[dict[str, Any]] = [
    {},
    {"needs_registration": True, "phone": replace(PHONE, number="+447700900123")},
    {"person": replace(PERSON, paused_until=date(2026, 3, 10))},
    {"visits": (closed(14.1),)},
    {"visits": (closed(30.1),), "complained_on": TODAY - timedelta(days=30)},
    {"visits": (closed(14.1),), "complained_on": TODAY - timedelta(days=200)},
    {"bookings": (BookingSeen("B1", "closed", NOW + timedelta(days=3), days_ago(2)),)},
    {"bookings": (BookingSeen("B1", "kept", days_ago(150), days_ago(160)),)},
    {"visits": ()},
    {"invites": (invite(14.1),)},
    {"invites": (invite(31, "a"), invite(15, "b"))},
    {"invites": tuple(invite(31 + 40 * n, str(n)) for n in range(7))},
    {"work": (Work("tire_tread", "front_left", "repaired", MEASURED_ON),)},
    {"work": (Work("brake_pad", "front", "replaced", date(2026, 2, 1)),)},
    {"work": (Work("wiper_blades", "", "replaced", date(2026, 2, 1)),)},
    {"work": (Work("tire_tread", "rear_left", "replaced", date(2026, 2, 1)),)},
    {"rests": (Rest("tire_tread", "front_left", "no", TODAY - timedelta(days=90)),)},
    {"rests": (Rest("tire_tread", "front_left", "done", date(2025, 9, 1)),)},
    {"rests": (Rest("tire_tread", "front_left", "later", date(2026, 3, 1), date(2026, 3, 10)),)},
    {"recommendations": (advised("declined", 30, "time"),)},
    {"recommendations": (advised("no_answer", 1),)},
    {"recommendations": (advised("later", 60, None, date(2026, 3, 10)),)},
    {"recommendations": (advised("declined", 400, "price"),)},  # a newer reading has overtaken it
]


@pytest.mark.parametrize(("rule", "changes"), STOPS, ids=[f"{rule}-{n}" for n, (rule, _) in enumerate(STOPS)])
def test_a_stop_stops_in_its_own_words(rule: str, changes: dict[str, Any]) -> None:
    decision = decide(a_car(**changes), NOW)
    assert decision.text is None
    assert rule in {one.rule for one in decision.why_not}
    assert all(one.says for one in decision.why_not)


@pytest.mark.parametrize("changes", NO_STOPS, ids=range(len(NO_STOPS)))
def test_nothing_stops_once_it_is_over(changes: dict[str, Any]) -> None:
    decision = decide(a_car(**changes), NOW)
    assert decision.text is not None, decision.why_not


def test_the_stop_of_a_number_is_told_for_any_cover() -> None:
    visit, invite = about_reason("reminder"), about_reason("due_work")
    assert [one.rule for one in stops_of_number(visit, a_car(consent=STOPPED).of_number, NOW)] == ["stop"]
    assert [one.rule for one in stops_of_number(invite, a_car(consent=VISITS_ONLY).of_number, NOW)] == ["no_consent"]
    assert list(stops_of_number(visit, a_car(consent=VISITS_ONLY).of_number, NOW)) == []


def test_the_after_visit_question_alone_comes_within_the_days_of_rest() -> None:
    picture = a_car(visits=(closed(2),))
    assert [one.rule for one in stops_against(picture, "due_work", NOW)] == ["just_closed"]
    assert list(stops_against(picture, "after_visit", NOW)) == []
    text = decide(picture, NOW).text
    assert text is not None and text.reason == "after_visit"
    complained = replace(picture, complained_on=TODAY - timedelta(days=1))
    assert decide(complained, NOW).text is None


def test_price_and_the_legal_limit_are_a_persons_to_bring_up() -> None:
    price = decide(a_car(recommendations=(advised("declined", 90, "price"),)), NOW)
    assert [one.items for one in price.phone_tasks] == [(DUE_TIRE.at,)]
    other = replace(DUE_TIRE, position="rear_left")
    by_place = tuple(
        replace(advised("declined", 90, "price"), position=one) for one in (other.position, DUE_TIRE.position)
    )
    (one_call,) = decide(a_car(due=(other, DUE_TIRE), recommendations=by_place), NOW).phone_tasks
    assert one_call.items == (DUE_TIRE.at, other.at), "two tires that were declined on one day are one call"
    assert one_call.key == price.phone_tasks[0].key
    legal = decide(a_car(due=(replace(DUE_TIRE, is_past_legal=True),), recommendations=(advised("later", 9),)), NOW)
    assert legal.text is None and "legal limit" in legal.phone_tasks[0].says
    assert decide(a_car(recommendations=(advised("declined", 90, "time"),)), NOW).phone_tasks == ()


def test_a_declined_item_is_told_once_and_never_again() -> None:
    told = EarlierInvite("due_work", "older", 1, days_ago(40), "C1", (DUE_TIRE.at,))
    decision = decide(a_car(recommendations=(advised("declined", 90, "time"),), invites=(told,)), NOW)
    assert decision.text is None and "has been sent" in decision.why_not[0].says


WRONG = st.lists(st.sampled_from([changes for _, changes in STOPS]), min_size=1, max_size=4)


@given(WRONG, st.integers(0, 60 * 24 * 6), st.booleans())
def test_nothing_is_planned_against_a_stop(wrong: list[dict[str, Any]], minutes: int, is_washer_low: bool) -> None:
    """Whatever else is wrong or late: a text that is planned had no stop of its own at that instant."""
    now = NOW + timedelta(minutes=minutes)
    changes: dict[str, Any] = {}
    for one in wrong:
        changes |= one
    picture = a_car(**changes)
    if is_washer_low:
        picture = replace(picture, due=(*picture.due, LOW_WASHER))
    text = decide(picture, now).text
    if text is not None:
        assert list(stops_against(picture, text.reason, now)) == []
        assert not picture.consent.is_stopped
        assert not any(visit.closed_at is None for visit in picture.visits)
