"""Before winter: when, where, what and how often. Days of winter tires and the seasons of the two hemispheres: common
practice and geography, from memory; once a season and the consents: this project's trade rules."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from typing import Any

import pytest

from followup.core.consent import ConsentStanding
from followup.core.planning.decide import decide, still_wanted
from followup.core.planning.picture import CarPicture, DueItem, EarlierInvite, PlannedText
from followup.core.planning.seasonal import Season, before_winter
from followup.core.shop import Shop, ShopRules
from followup.core.text import reason
from followup.core.visit import Recommendation, Visit, Work
from tests.core.planning.cars import DUE_TIRE, MEASURED_ON, SHOP
from tests.core.planning.cars import car as a_car

# A Tuesday, noon in Chicago, past the half of the weeks before winter: every phone's day has come.
OCTOBER = datetime(2026, 10, 13, 17, 0, tzinfo=UTC)
IN_JUNE = Visit("V2", datetime(2026, 6, 2, 14, 0, tzinfo=UTC), datetime(2026, 6, 2, 20, 0, tzinfo=UTC))
WASHER = DueItem("washer_fluid", "", 0.05, 0.2, MEASURED_ON, is_free_top_off=True)
BATTERY = DueItem("battery", "", 0.12, 0.3, MEASURED_ON, date(2027, 4, 1))


def _washer_car(**changes: Any) -> CarPicture:
    return a_car(**{"free_top_offs": ("washer_fluid",), "visits": (IN_JUNE,), **changes})


def _planned(picture: CarPicture, now: datetime = OCTOBER) -> PlannedText | None:
    return decide(picture, now).text


def _sent(text: PlannedText, at: datetime) -> EarlierInvite:
    return EarlierInvite(text.reason, text.raised_by, text.try_number, at, text.vehicle, text.items)


def test_washer_fluid_is_offered_only_where_the_shop_tops_it_off_free() -> None:
    text = _planned(_washer_car(due=(WASHER,)))
    assert text is not None and (text.reason, text.items) == ("winter_top_off", (WASHER.at,))
    assert (reason(text.reason).cover, reason(text.reason).asks) == ("offers", "walk_in")
    paid = replace(SHOP, rules=ShopRules(free_services={"coolant": ""}))
    assert _planned(_washer_car(due=(WASHER,), shop=paid)) is None
    without = a_car(due=(WASHER,))
    assert _planned(without) is None, "the car has none"
    unread = _planned(_washer_car(due=()))
    assert unread is not None and unread.items == (WASHER.at,), "it need not have been read before"


@pytest.mark.parametrize(("joined", "offered"), [(0.2499, False), (0.25, True)])
def test_a_battery_is_named_only_where_its_due_window_is_near(joined: float, offered: bool) -> None:
    text = _planned(a_car(due=(replace(BATTERY, chance_joined=joined),)))
    assert (text is not None) is offered
    if text:
        assert (text.reason, text.items, reason(text.reason).cover) == ("winter_battery", (BATTERY.at,), "upkeep")


def test_a_battery_that_is_due_anyway_is_due_work() -> None:
    text = _planned(a_car(due=(replace(BATTERY, chance_by_lead=0.25),)))
    assert text is not None and text.reason == "due_work"


def test_each_needs_its_own_consent() -> None:
    both = (BATTERY, WASHER)
    offers = ConsentStanding(frozenset({"visits", "offers"}), False, None)
    text = _planned(_washer_car(due=both, consent=offers))
    assert text is not None and text.reason == "winter_top_off"
    upkeep = ConsentStanding(frozenset({"visits", "upkeep"}), False, None)
    assert _planned(_washer_car(due=(WASHER,), consent=upkeep)) is None


def test_one_text_a_car_and_winter() -> None:
    both = _washer_car(due=(BATTERY, WASHER))
    first = _planned(both)
    assert first is not None and first.reason == "winter_battery"
    for days in (1, 13, 15):
        later = OCTOBER + timedelta(days=days)
        assert _planned(replace(both, invites=(_sent(first, OCTOBER),)), later) is None
    next_year = _planned(replace(both, invites=(_sent(first, OCTOBER),)), OCTOBER + timedelta(days=364))
    assert next_year is not None and next_year.raised_by != first.raised_by


def test_never_beside_another_invite_within_the_spacing() -> None:
    other = EarlierInvite("due_work", "car C2", 1, OCTOBER - timedelta(days=13), "C2")
    refused = decide(_washer_car(due=(WASHER,), invites=(other,)), OCTOBER)
    assert refused.text is None and [one.rule for one in refused.why_not] == ["spacing"]
    assert _planned(_washer_car(due=(WASHER,), invites=(replace(other, at=OCTOBER - timedelta(days=14)),)))
    beside = _planned(_washer_car(due=(DUE_TIRE, WASHER)))
    assert beside is not None and beside.reason == "due_work", "due work is more pressing"


def test_what_was_named_looked_at_or_refused_lately_is_no_reason() -> None:
    told = EarlierInvite("due_work", "x", 1, OCTOBER - timedelta(days=20), "C1", (BATTERY.at,))
    assert _planned(a_car(due=(BATTERY,), invites=(told,))) is None
    topped = Work("washer_fluid", "", "topped_off", date(2026, 9, 1))
    fresh = replace(WASHER, measured_on=date(2026, 9, 1))
    assert _planned(_washer_car(due=(fresh,), work=(topped,))) is None
    assert _planned(_washer_car(due=(replace(fresh, measured_on=date(2026, 8, 1)),)))
    declined = Recommendation("battery", "", "declined", date(2026, 10, 1), "price", None, "Noor")
    assert _planned(a_car(due=(BATTERY,), recommendations=(declined,))) is None


@pytest.mark.parametrize(
    ("country", "state", "inside", "outside"),
    [
        ("US", "IL", ("2026-09-17", "2026-11-01"), ("2026-09-16", "2026-11-02", "2026-05-01")),
        ("US", "MN", ("2026-09-01", "2026-10-16"), ("2026-08-31", "2026-10-17")),
        ("US", "FL", (), ("2026-10-13", "2026-05-01")),
        ("NZ", None, ("2026-03-18", "2026-05-02"), ("2026-10-13", "2026-05-03")),
    ],
)
def test_the_days_follow_from_where_the_shop_is(
    country: str, state: str | None, inside: tuple[str, ...], outside: tuple[str, ...]
) -> None:
    there = replace(SHOP, country=country, state=state)
    assert all(before_winter(there, date.fromisoformat(day)) for day in inside)
    assert not any(before_winter(there, date.fromisoformat(day)) for day in outside)


def test_the_manager_sets_other_days_or_switches_it_off() -> None:
    florida = replace(SHOP, state="FL", rules=ShopRules(winter_from="12-01", winter_until="01-15"))
    expected = Season(date(2026, 12, 1), date(2027, 1, 15))
    assert before_winter(florida, date(2026, 12, 1)) == before_winter(florida, date(2027, 1, 15)) == expected
    assert before_winter(florida, date(2027, 1, 16)) is None
    off = replace(SHOP, rules=ShopRules(writes_before_winter=False))
    assert _planned(_washer_car(due=(WASHER, BATTERY), shop=off)) is None


def test_phones_begin_on_days_spread_over_the_first_half() -> None:
    season = before_winter(SHOP, OCTOBER.date())
    assert season is not None
    days = [season.opens_for(phone) for phone in range(2000)]
    half = season.from_on + (season.until_on - season.from_on) / 2
    assert min(days) == season.from_on and max(days) == half
    assert max(days.count(day) for day in set(days)) < 2 * 2000 / len(set(days)), "no day has a crowd"
    early = datetime(2026, 9, 17, 17, 0, tzinfo=UTC)
    mine = season.opens_for(1)
    assert (_planned(_washer_car(due=(WASHER,)), early) is not None) is (mine <= early.date())


def test_a_planned_one_is_dropped_where_it_was_topped_off_since() -> None:
    picture = _washer_car(due=(WASHER,))
    text = _planned(picture)
    assert text is not None and still_wanted(text, picture, OCTOBER, OCTOBER) is None
    since = replace(picture, work=(Work("washer_fluid", "", "topped_off", OCTOBER.date()),))
    assert still_wanted(text, since, OCTOBER, OCTOBER) is not None


def test_a_shop_without_a_known_place_goes_by_what_is_usual() -> None:
    nowhere: Shop = replace(SHOP, state=None)
    assert before_winter(nowhere, OCTOBER.date()) == before_winter(SHOP, OCTOBER.date())
