"""Free services for who was not seen for long: this project's trade rules (once a year, walk-in, offers)."""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from typing import Any

import pytest

from followup.core.consent import ConsentStanding
from followup.core.planning.decide import decide
from followup.core.planning.picture import BookingSeen, CarPicture, EarlierInvite
from followup.core.text import reason
from followup.core.visit import Visit, Work
from tests.core.planning.cars import FAR_PAD, LAST_VISIT, NOW, shop
from tests.core.planning.cars import car as a_car

# Nine months after the last visit on 6 October 2025; a Tuesday, noon in Chicago.
LONG_AFTER = datetime(2026, 7, 7, 17, 0, tzinfo=UTC)


def _away(**changes: Any) -> CarPicture:
    return a_car(**{"due": (FAR_PAD,), "free_top_offs": ("coolant", "washer_fluid"), **changes})


def test_it_comes_once_the_months_are_over_and_names_what_the_shop_gives() -> None:
    text = decide(_away(), LONG_AFTER).text
    assert text is not None and text.reason == "long_unseen"
    assert text.items == (("coolant", ""), ("washer_fluid", ""))
    assert (reason(text.reason).cover, reason(text.reason).asks) == ("offers", "walk_in")
    assert decide(_away(), LONG_AFTER - timedelta(days=2)).text is None
    sooner = decide(_away(shop=shop(unseen_months=5)), NOW).text
    assert sooner is not None and sooner.reason == "long_unseen"
    washer = decide(_away(shop=shop(free_services={"washer_fluid": ""})), LONG_AFTER).text
    assert washer is not None and washer.items == (("washer_fluid", ""),)


@pytest.mark.parametrize(
    "against",
    [
        {"free_top_offs": ()},
        {"shop": shop(invites_unseen=False)},
        {"bookings": (BookingSeen("B1", "confirmed", LONG_AFTER + timedelta(days=3), NOW),)},
        {"has_open_complaint": True},
        {"is_tie_over": True},
        {"is_tie_held": True},
        {"work": (Work("washer_fluid", "", "topped_off", date(2026, 1, 5)),)},
        {"visits": (), "due": ()},
        {"consent": ConsentStanding(frozenset({"visits", "upkeep"}), False, None)},
        {"invites": (EarlierInvite("due_work", "x", 1, LONG_AFTER - timedelta(days=13), "C2"),)},
    ],
    ids=lambda changes: next(iter(changes)),
)
def test_what_speaks_against_it(against: dict[str, Any]) -> None:
    assert decide(_away(**against), LONG_AFTER).text is None


def test_once_a_time_away_and_at_most_once_a_year() -> None:
    first = decide(_away(), LONG_AFTER).text
    assert first is not None
    told = (EarlierInvite(first.reason, first.raised_by, 1, LONG_AFTER, "C1", first.items),)
    for days in (15, 100, 364, 380):
        later = LONG_AFTER + timedelta(days=days)
        assert decide(_away(invites=told, shop=shop(writes_before_winter=False)), later).text is None, days
    seen_again = datetime(2026, 9, 1, 15, 0, tzinfo=UTC)
    visits = (LAST_VISIT, Visit("V2", seen_again, seen_again + timedelta(hours=2)))
    away = _away(invites=told, visits=visits, shop=shop(unseen_months=3, writes_before_winter=False))
    assert decide(away, LONG_AFTER + timedelta(days=300)).text is None, "not yet a year"
    again = decide(replace(away), LONG_AFTER + timedelta(days=366)).text
    assert again is not None and again.raised_by != first.raised_by
