"""The decision: what is joined, tries, keys, one text a phone, and the question before it leaves.

Send when the chance within the lead time reaches q, join at a quarter, legal limits first, tries and days: this
project's own rules after common practice; q is the newsvendor ratio c_early / (c_early + c_late).
"""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from typing import Any
from zoneinfo import ZoneInfo

import pytest

from followup.core.consent import ConsentStanding
from followup.core.planning.decide import decide, decide_for_phone, still_wanted
from followup.core.planning.picture import BookingSeen, CarPicture, DueItem, EarlierInvite, PlannedText, Recall, Rest
from followup.core.text import reason
from followup.core.visit import Recommendation, Visit, Work
from tests.core.planning.cars import DUE_TIRE, FAR_PAD, LAST_VISIT, LOW_WASHER, MEASURED_ON, NOW, PHONE, days_ago, shop
from tests.core.planning.cars import car as a_car

OIL = DueItem("oil_service", "", 0.10, 0.26, MEASURED_ON)


def planned(picture: CarPicture, now: datetime = NOW) -> PlannedText:
    decision = decide(picture, now)
    assert decision.text is not None, decision.why_not
    return decision.text


def sent(text: PlannedText, at: datetime) -> EarlierInvite:
    return EarlierInvite(text.reason, text.raised_by, text.try_number, at, text.vehicle, text.items)


@pytest.mark.parametrize(("chance", "leaves"), [(0.2499, False), (0.25, True), (0.9, True)])
def test_a_text_is_planned_where_the_chance_reaches_q(chance: float, leaves: bool) -> None:
    decision = decide(a_car(due=(replace(DUE_TIRE, chance_by_lead=chance),)), NOW)
    assert (decision.text is not None) is leaves
    if not leaves:
        assert decision.why_not[0].rule == "not_due" and "April 2026" in decision.why_not[0].says


@pytest.mark.parametrize(
    ("chance", "near", "leaves"), [(0.10, 0.8, True), (0.099, 0.99, False), (0.24, 0.799, False), (0.9, 0.7, False)]
)
def test_what_wears_is_told_of_early_but_only_where_the_visit_will_find_it_near(
    chance: float, near: float, leaves: bool
) -> None:
    elm = shop(send_worn_at_chance=0.10, near_at_chance=0.8)
    worn = replace(DUE_TIRE, chance_by_lead=chance, chance_near=near)
    asked = a_car(due=(worn,), shop=elm)
    decision = decide(asked, NOW)
    assert (decision.text is not None) is leaves
    if not leaves:
        assert "80% near their limit" in decision.why_not[0].says
        assert planned(replace(asked, due=(replace(worn, is_past_legal=True),))).is_legal


def test_what_comes_due_soon_after_joins_and_the_far_does_not() -> None:
    text = planned(a_car(due=(DUE_TIRE, OIL, FAR_PAD)))
    assert text.items == (DUE_TIRE.at, OIL.at)
    assert decide(a_car(due=(OIL, FAR_PAD)), NOW).text is None, "joining alone triggers nothing"


def test_a_legal_limit_comes_first_and_is_a_reason_of_its_own() -> None:
    rear = replace(DUE_TIRE, position="rear_left", chance_by_lead=0.3, chance_legal=0.25)
    text = planned(a_car(due=(DUE_TIRE, rear)))
    assert text.items[0] == rear.at and text.is_legal
    assert text.raised_by != planned(a_car()).raised_by


def test_planning_twice_is_the_same_text_and_nothing_more() -> None:
    first = planned(a_car())
    assert planned(a_car()) == first
    again = decide(a_car(invites=(sent(first, first.leaves_at),)), NOW)
    assert again.text is None and "try_spacing" in {one.rule for one in again.why_not}


def test_two_tries_twelve_days_apart_then_nothing_until_the_next_visit() -> None:
    first = planned(a_car())
    one = sent(first, NOW)
    assert decide(a_car(invites=(one,)), NOW + timedelta(days=11, hours=23)).text is None
    second = planned(a_car(invites=(one,)), NOW + timedelta(days=12))
    assert (second.try_number, second.raised_by) == (2, first.raised_by)
    two = (one, sent(second, second.leaves_at))
    for days in (26, 60, 120, 200):
        later = decide(a_car(invites=two), NOW + timedelta(days=days))
        assert later.text is None and "tries" in {one.rule for one in later.why_not}
    visit = Visit("V2", NOW + timedelta(days=60), NOW + timedelta(days=60, hours=4))
    anew = planned(a_car(invites=two, visits=(LAST_VISIT, visit)), NOW + timedelta(days=90))
    assert anew.try_number == 1 and anew.raised_by != first.raised_by


def test_a_legal_limit_is_told_again_after_seven_days_and_then_by_phone() -> None:
    legal = (replace(DUE_TIRE, is_past_legal=True),)
    one = sent(planned(a_car(due=legal)), NOW)
    assert decide(a_car(due=legal, invites=(one,)), NOW + timedelta(days=6.9)).text is None
    second = planned(a_car(due=legal, invites=(one,)), NOW + timedelta(days=7))
    two = (one, sent(second, NOW + timedelta(days=7)))
    assert decide(a_car(due=legal, invites=two), NOW + timedelta(days=13)).phone_tasks == ()
    after = decide(a_car(due=legal, invites=two), NOW + timedelta(days=14))
    assert after.text is None and len(after.phone_tasks) == 1
    booked = (BookingSeen("B1", "asked", None, NOW),)
    assert decide(a_car(due=legal, invites=two, bookings=booked), NOW + timedelta(days=14)).phone_tasks == ()


def test_a_second_try_still_waits_for_an_invite_of_another_reason() -> None:
    one = sent(planned(a_car()), days_ago(12))
    other = EarlierInvite("free_service", "car C2", 1, days_ago(2), "C2")
    rules = {why.rule for why in decide(a_car(invites=(one, other)), NOW).why_not}
    assert "spacing" in rules


def test_a_text_leaves_within_the_hours_and_is_wanted_for_three_days() -> None:
    saturday_night = datetime(2026, 3, 15, 2, 0, tzinfo=UTC)  # Saturday 21:00 in Chicago
    text = planned(a_car(), saturday_night)
    local = text.leaves_at.astimezone(ZoneInfo("America/Chicago"))
    assert (local.weekday(), local.hour, local.minute) == (0, 10, 0)
    assert text.valid_until - text.leaves_at == timedelta(days=3)


def test_free_top_offs_are_walk_ins_with_a_consent_of_their_own() -> None:
    text = planned(a_car(due=(LOW_WASHER,)))
    assert (text.reason, text.items) == ("free_service", (LOW_WASHER.at,))
    assert reason(text.reason).asks == "walk_in", "no day, no slot"
    upkeep = ConsentStanding(frozenset({"visits", "upkeep"}), False, None)
    refused = decide(a_car(due=(LOW_WASHER,), consent=upkeep), NOW)
    assert refused.text is None and refused.why_not[0].says == "no consent for offers"
    assert planned(a_car(due=(DUE_TIRE, LOW_WASHER))).items == (DUE_TIRE.at,), "a walk-in joins no visit"


def test_coolant_topped_off_twice_in_a_year_is_a_leak_check_and_not_free() -> None:
    coolant = replace(LOW_WASHER, item="coolant")
    top_offs = tuple(Work("coolant", "", "topped_off", day) for day in (date(2025, 6, 1), date(2025, 9, 1)))
    assert planned(a_car(due=(coolant,), work=top_offs[:1])).reason == "free_service"
    assert planned(a_car(due=(coolant,), work=top_offs)).reason == "due_work"
    paid = a_car(due=(LOW_WASHER,), shop=shop(free_services={}))
    assert planned(paid).reason == "due_work", "free only where the shop gives it"
    assert planned(a_car(due=(replace(LOW_WASHER, is_free_top_off=False),))).reason == "due_work"
    long_ago = (Work("coolant", "", "topped_off", date(2025, 3, 10)), top_offs[0])
    assert planned(a_car(due=(coolant,), work=long_ago)).reason == "free_service", "a year and no more"
    washer = tuple(replace(one, item="washer_fluid") for one in top_offs)
    assert planned(a_car(due=(LOW_WASHER,), work=washer)).reason == "free_service", "washer fluid is meant to run low"


def test_a_day_named_by_the_customer_triggers_one_text_whatever_the_chance() -> None:
    later = Rest("brake_pad", "rear", "later", date(2026, 1, 5), date(2026, 3, 10))
    picture = a_car(due=(FAR_PAD,), rests=(later,))
    assert decide(picture, NOW - timedelta(days=1)).text is None
    text = planned(picture)
    assert text.items == (FAR_PAD.at,) and "2026-03-10" in text.raised_by
    assert decide(replace(picture, invites=(sent(text, NOW),)), NOW + timedelta(days=20)).text is None


@pytest.mark.parametrize(("decision", "leaves"), [("later", True), ("declined", False), ("no_answer", False)])
def test_only_later_with_its_day_triggers_what_is_not_due(decision: str, leaves: bool) -> None:
    advised = Recommendation("brake_pad", "rear", decision, date(2026, 1, 5), "time", date(2026, 3, 10))
    found = decide(a_car(due=(FAR_PAD,), recommendations=(advised,)), NOW)
    assert (found.text is not None) is leaves


def test_a_missed_booking_is_told_once_while_fresh() -> None:
    missed = BookingSeen("B7", "missed", days_ago(2), days_ago(9))
    text = planned(a_car(due=(), bookings=(missed,)))
    assert (text.reason, text.raised_by) == ("missed_visit", "booking B7")
    assert decide(a_car(due=(), bookings=(missed,), invites=(sent(text, NOW),)), NOW + timedelta(days=11)).text is None
    old = BookingSeen("B7", "missed", days_ago(15), days_ago(20))
    assert decide(a_car(due=(), bookings=(old,)), NOW).text is None
    today = BookingSeen("B7", "missed", NOW - timedelta(hours=3), days_ago(9))
    assert planned(a_car(due=(), bookings=(today,))).reason == "missed_visit"
    kept = BookingSeen("B7", "kept", days_ago(2), days_ago(9))
    assert decide(a_car(due=(), bookings=(kept,)), NOW).text is None
    rebooked = BookingSeen("B8", "closed", None, days_ago(1))
    assert decide(a_car(due=(), bookings=(missed, rebooked)), NOW).text is None


def test_a_recall_stands_before_due_work_and_never_beside_it() -> None:
    text = planned(a_car(recalls=(Recall("R1", date(2026, 3, 1)),)))
    assert (text.reason, text.items) == ("recall", ())


def test_the_odometer_is_asked_alone_only_of_a_car_seen_once_long_ago() -> None:
    near = replace(DUE_TIRE, chance_by_lead=0.15)
    seen_once = a_car(due=(near,), is_odometer_worth_a_text=True)
    assert planned(seen_once).reason == "odometer_question"
    twice = (LAST_VISIT, Visit("V0", days_ago(400), days_ago(399)))
    assert decide(replace(seen_once, visits=twice), NOW).text is None
    assert decide(replace(seen_once, visits=(replace(LAST_VISIT, closed_at=days_ago(89)),)), NOW).text is None
    assert decide(replace(seen_once, due=(replace(near, chance_by_lead=0.05),)), NOW).text is None
    assert decide(a_car(due=(near,)), NOW).text is None


def test_one_text_a_phone_for_the_most_pressing_car() -> None:
    other = a_car(vehicle="C2", due=(replace(DUE_TIRE, chance_by_lead=0.3, is_past_legal=True),))
    decided = dict(decide_for_phone((a_car(), other), NOW))
    assert decided["C1"].text is None and decided["C1"].why_not[-1].rule == "other_car"
    assert decided["C2"].text is not None


@pytest.mark.parametrize(
    ("rule", "changes"),
    [
        ("measured_again", {"due": (replace(DUE_TIRE, measured_on=date(2026, 3, 11)),)}),
        ("visit_open", {"visits": (LAST_VISIT, Visit("V2", NOW + timedelta(hours=1)))}),
        ("booked", {"bookings": (BookingSeen("B1", "asked", None, NOW + timedelta(hours=1)),)}),
        ("stop", {"consent": ConsentStanding(frozenset(), True, None)}),
        ("said_no", {"rests": (Rest("tire_tread", "front_left", "no", date(2026, 3, 10)),)}),
        ("declined", {"recommendations": (Recommendation("tire_tread", "front_left", "declined", date(2026, 3, 10)),)}),
        ("reason_ended", {"due": (replace(DUE_TIRE, chance_by_lead=0.1),)}),
        (None, {}),
    ],
)
def test_it_is_asked_once_more_before_it_leaves(rule: str | None, changes: dict[str, Any]) -> None:
    text = planned(a_car())
    picture = a_car(**({"invites": (sent(text, text.leaves_at),)} | changes))
    found = still_wanted(text, picture, NOW, NOW + timedelta(hours=2))
    assert (found and found.rule) == rule


def test_a_late_text_is_dropped_and_an_early_one_waits() -> None:
    text = planned(a_car())
    assert still_wanted(text, a_car(), NOW, text.valid_until + timedelta(minutes=1)) is not None
    night = datetime(2026, 3, 11, 3, 0, tzinfo=UTC)
    found = still_wanted(text, a_car(), NOW, night)
    assert found is not None and found.rule == "hours"


def test_caps_are_the_shops_within_their_bounds() -> None:
    rules = {rule.name: rule.metadata for rule in type(shop().rules).__dataclass_fields__.values()}
    assert (rules["invites_in_30_days"]["most"], rules["invites_a_year"]["most"], rules["tries"]["most"]) == (2, 8, 2)


def test_a_line_that_takes_no_texts_is_called_about_due_work_once() -> None:
    landline = a_car(phone=replace(PHONE, line="landline"))
    first, again = decide(landline, NOW), decide(landline, NOW + timedelta(days=1))
    assert first.text is None and [one.key for one in first.phone_tasks] == [one.key for one in again.phone_tasks]
    assert "call instead" in first.phone_tasks[0].says and first.phone_tasks[0].items == (DUE_TIRE.at,)
    bad = a_car(
        phone=replace(PHONE, bad_because="21614 not a mobile number"), consent=ConsentStanding(frozenset(), False, None)
    )
    assert len(decide(bad, NOW).phone_tasks) == 1, "no text was agreed to, but a call needs no such consent"
    stopped = replace(landline, consent=ConsentStanding(frozenset(), True, None))
    assert decide(stopped, NOW).phone_tasks == (), "whoever stopped the texts is left alone"
    assert decide(replace(landline, due=(LOW_WASHER,)), NOW).phone_tasks == (), "nobody calls about a top-off"
